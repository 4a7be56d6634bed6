/** The pulled foot from its inner side: plate, room for the toes, and whether it follows when asked. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  mix,
  smooth,
  straight,
  turn,
  type Picture,
  type Point,
  type Shape,
  type View,
} from '../shapes.ts';
import { drawSideFoot, FOOT_BUILD, SHANK, sideFoot } from '../parts/foot.ts';
import { drawBed, drawPad } from './bed.ts';
import { drawCold } from './cold.ts';
import {
  alongWith,
  arc,
  curvedArrow,
  hump,
  inked,
  onCircle,
  profile,
  quiet,
  rays,
  rise,
  round,
  strip,
  turnAll,
  type Profile,
} from './strokes.ts';
import { bulging, drawSkinAtEdges, drawWrap, type Wrap } from './wrap.ts';

const SCALE = { 2: 1.76, 5: 1.8, 9: 1.82, 14: 1.84 } as const;
const SHEET = 296;
const FAR = 80;

/** Where foot and plate lie in the picture of the foot from the side. */
export function layoutFoot(spec: SceneSpec) {
  const scale = SCALE[spec.age];
  const { full } = FOOT_BUILD[spec.age];
  const sunk = 1 - spec.heelGap;
  const ankle = at(186 + spec.slide * 20, 212 + sunk * (SHEET - 212 - 30 * scale + 5));
  const foot = sideFoot({ ankle, scale, look: spec, floor: SHEET + 4 });
  const axis = (x: number) => mix(212, ankle.y, rise(x, 0, ankle.x - 25 * scale));
  const front = profile([
    at(0, -26 * full * scale),
    at(60, -22 * full * scale),
    at(ankle.x - 24 * scale, -SHANK.front * full * scale),
  ]);
  const back = profile([
    at(0, 26 * full * scale),
    at(50, 26.5 * full * scale),
    at(ankle.x - 46 * scale, 21.5 * full * scale),
    at(ankle.x - 24 * scale, SHANK.back * full * scale),
  ]);
  const edge = ankle.x - 31 * scale;
  const slipped = edge - spec.bandFoot * 78;
  const bare = {
    upper: bulging((x) => front(x) + axis(x), slipped, 1, -1, spec, 0.55),
    lower: bulging((x) => back(x) + axis(x), slipped, 1, 1, spec, 0.55),
  };
  const busy = spec.bandTight > 0 ? [slipped] : [];
  const legEnd = ankle.x - 25 * scale;
  /** The plate stands on the line of the pull. */
  const pull = ankle.y + 9 * scale;
  const plate = layoutPlate(spec, foot.outline.slice(8), at(ankle.x, pull), scale);
  return {
    scale,
    foot,
    ankle,
    front: alongWith(bare.upper, 0, legEnd, busy, 54),
    back: alongWith(bare.lower, 0, legEnd, busy, 54),
    band: { start: at(0, 0), edge: at(slipped, axis(slipped)), pen: at(edge, axis(edge)) },
    ...plate,
    tapeStart: at(slipped - 4, axis(slipped) + 7 * scale),
    cordEnd: at(480, 212 + 9 * scale),
    sheet: SHEET,
  };
}
export type FootGeometry = ReturnType<typeof layoutFoot>;

/** Where the plate stands: it may touch the foot, never enter it. */
export function layoutPlate(
  spec: Pick<SceneSpec, 'plateTilt' | 'plateGap'>,
  sole: readonly Point[],
  onPull: Point,
  scale: number,
  limit = Infinity,
) {
  const lean = (-spec.plateTilt * Math.PI) / 180;
  const normal = at(Math.cos(lean), Math.sin(lean));
  const reach = (p: Point) => (p.x * normal.x + (p.y - onPull.y) * normal.y) / normal.x;
  const touching = sole.reduce((a, b) => (reach(b) > reach(a) ? b : a));
  const thick = 5.4 * scale;
  const near = reach(touching) + thick / 2 / normal.x + 1.5;
  const far = Math.max(onPull.x + FAR * scale, near);
  const middle = at(Math.min(limit, mix(near, far, spec.plateGap)), onPull.y);
  const [up, down] = [-84 * scale, 16 * scale];
  const box = [at(-thick / 2, up), at(thick / 2, up), at(thick / 2, down), at(-thick / 2, down)];
  const corners = turnAll(
    box.map((p) => at(middle.x + p.x, middle.y + p.y)),
    middle,
    -spec.plateTilt,
  );
  return {
    plate: corners,
    plateMiddle: middle,
    plateBack: turn(at(middle.x + thick / 2, middle.y), middle, -spec.plateTilt),
    touching,
  };
}

/** The foot close by, from the side: how it is lifted, and how it stands to the plate. */
export function drawFoot(spec: SceneSpec, g: FootGeometry, view: View): Picture {
  const { scale } = g;
  const sheet: Profile = (x) => g.sheet + (1 - spec.heelGap) * 7 * hump(x, g.foot.heel.x, 46);
  const lines = { upper: profile(g.front), lower: profile(g.back) };
  const wrap: Wrap = { ...lines, from: 0, to: g.band.edge.x, penTo: g.band.pen.x, pitch: 27, size: 0.62 };
  const shapes: Shape[] = [
    ...drawBed(sheet, view.width, view.height),
    ...drawPad(10, Math.min(112, g.ankle.x - 60), (x) => lines.lower(x) + 3, sheet),
    ...drawSideFoot(g.foot, g.front, g.back, spec),
    ...drawSkinAtEdges(spec, wrap),
    ...drawTape(g.tapeStart, g.plateMiddle, scale * 7.5),
    ...drawWrap(spec, wrap),
    ...drawPlate(g, scale),
    ...drawCord(g.plateBack, g.cordEnd, scale),
  ];
  if (spec.plateGap === 0) shapes.push(...drawPressure(g.touching, scale));
  shapes.push(...(spec.lift === 'not-asked' ? drawWave(spec, g) : drawLift(spec, g)));
  if (spec.coolMark > 0) shapes.push(...drawCold(spec, g.foot.handRest, scale / 1.84));
  return { ...view, shapes };
}

/** The tape along the side of the leg that carries the plate. */
export function drawTape(from: Point, to: Point, width: number): Shape[] {
  const field = strip(from, to, width).map((p) => at(Math.min(480, p.x), p.y));
  return [
    inked(straight(field, true), 'band', 2),
    quiet(straight([at(from.x + 3, from.y + width * 0.22), at(to.x - 1, to.y + width * 0.22)]), 'soft', 1.2),
  ];
}

/** The foot plate by its four corners, from the side. */
export function drawPlate({ plate }: { plate: Point[] }, scale: number): Shape[] {
  const [a, b, c, d] = plate as [Point, Point, Point, Point];
  const grain = (t: number) =>
    straight(
      [at(mix(a.x, b.x, t), mix(a.y, b.y, t)), at(mix(d.x, c.x, t), mix(d.y, c.y, t))].map((p, i, l) =>
        at(mix(p.x, l[1 - i]!.x, 0.08 + 0.3 * t), mix(p.y, l[1 - i]!.y, 0.08 + 0.3 * t)),
      ),
    );
  return [
    inked(straight(plate, true), 'plate', 2.4 * Math.max(1, scale / 1.8)),
    quiet(grain(0.35) + grain(0.68), 'ink', 0.9),
  ];
}

/** The cord, knotted behind the plate. */
export function drawCord(from: Point, to: Point, scale: number): Shape[] {
  const knot = at(from.x + 4 * scale, from.y);
  return [
    { d: straight([knot, to]), line: 'cord', weight: 4.4 },
    quiet(straight([knot, to]), 'sheet', 1.2),
    inked(round(knot, 4.2 * scale, 3.6 * scale), 'metal', 2),
    inked(round(at(from.x + 11 * scale, from.y), 3 * scale, 2.5 * scale), 'cord', 1.4),
  ];
}

function drawPressure(p: Point, scale: number): Shape[] {
  return [
    { d: rays(at(p.x - 2, p.y), 11 * scale, 25 * scale, 185, 280, 4, 11), fill: 'mark' },
    { d: rays(at(p.x + 6, p.y), 11 * scale, 25 * scale, -60, 0, 3, 11), fill: 'mark' },
  ];
}

/** Toes that wave; crossed out when they do not. */
function drawWave(spec: SceneSpec, g: FootGeometry): Shape[] {
  const c = g.foot.toeRoot;
  const tip = g.foot.toeTip;
  const angle = (Math.atan2(tip.y - c.y, tip.x - c.x) * 180) / Math.PI;
  const r = Math.hypot(tip.x - c.x, tip.y - c.y);
  const room = spec.wiggle * (0.25 + 0.75 * spec.plateGap);
  const half = spec.wiggle === 0 ? 16 : 26 * room;
  const arcs = [9, 18]
    .map((out, i) => smooth(arc(c, r + out, angle - 8 - half + i * 4, angle - 8 + half - i * 4, 4)))
    .join('');
  if (spec.plateGap === 0 && spec.wiggle > 0) return [];
  const shapes = [quiet(arcs, spec.wiggle === 0 ? 'ink' : 'soft', 2)];
  if (spec.wiggle === 0) {
    const m = onCircle(c, r + 14, angle - 8);
    shapes.push({
      d:
        straight([at(m.x - 15, m.y - 13), at(m.x + 15, m.y + 13)]) +
        straight([at(m.x + 15, m.y - 13), at(m.x - 15, m.y + 13)]),
      line: 'mark',
      weight: 4,
    });
  }
  return shapes;
}

function drawLift(spec: SceneSpec, g: FootGeometry): Shape[] {
  const d = curvedArrow(g.ankle, 95 * g.scale, -84, -134, 17 * g.scale);
  return spec.lift === 'follows'
    ? [inked(d, 'mark', 2.4)]
    : [{ d, fill: 'ground', line: 'mark', weight: 3, dash: '9 7' }];
}
