/** Heel and ankle from the side, large: does the heel hang free over its thin pad, and is the skin smooth? */
import { degrees } from '#domain/units.ts';
import type { SceneSpec } from '../spec.ts';
import {
  at,
  hatch,
  INK,
  mix,
  ring,
  smooth,
  straight,
  type Picture,
  type Point,
  type Shape,
} from '../shapes.ts';
import { drawSideFoot, FOOT_BUILD, SHANK, sideFoot, type Pen } from '../parts/foot.ts';
import { drawBed, drawPad } from './bed.ts';
import { drawCord, drawPlate, drawTape, layoutPlate } from './foot.ts';
import {
  alongWith,
  cropField,
  cropLine,
  dense,
  hump,
  inked,
  profile,
  quiet,
  rays,
  rise,
  round,
  type Profile,
} from './strokes.ts';
import { bulging, drawSkinAtEdges, drawWrap, type Wrap } from './wrap.ts';

interface View {
  width: number;
  height: number;
}
const SCALE = { 2: 2.5, 5: 2.6, 9: 2.66, 14: 2.7 } as const;
const SHEET = 274;
const AXIS = 160;
const DENT = 14;
/** How far the heel has sunk when it meets the sheet. */
const TOUCHES = 0.62;
/** The toes stand higher than the page. */
const onPage = (points: readonly Point[]) => points.every((p) => p.y > 24);
const CROPPED: Pen = {
  open: (points, fill, weight = INK) =>
    onPage(points)
      ? [{ d: smooth(points), fill, line: 'ink', weight }]
      : [
          { d: straight(cropField(dense(points)), true), fill },
          { d: cropLine(dense(points)), line: 'ink', weight },
        ],
  line: (points) => (onPage(points) ? smooth(points) : cropLine(dense(points))),
  field: (points, ease) =>
    onPage(points) ? smooth(points, true, ease) : straight(cropField(dense(points, true)), true),
  kept: (points) => cropField(points),
};

export function layoutHeel(spec: SceneSpec, view: View) {
  const scale = SCALE[spec.age];
  const { full } = FOOT_BUILD[spec.age];
  const sunk = 1 - spec.heelGap;
  const ankle = at(214 + spec.slide * 14, AXIS + sunk * (SHEET + DENT + 6 - AXIS - 29 * scale));
  const foot = sideFoot({ ankle, scale, look: spec, floor: SHEET + DENT * rise(sunk, TOUCHES, 1) });
  const axis = (x: number) => mix(AXIS, ankle.y, rise(x, 20, ankle.x - 25 * scale));
  const front = profile([
    at(0, -25 * full * scale),
    at(90, -19 * full * scale),
    at(ankle.x - 24 * scale, -SHANK.front * full * scale),
  ]);
  const back = profile([
    at(0, 34 * full * scale),
    at(50, 32 * full * scale),
    at(110, 24 * full * scale),
    at(ankle.x - 24 * scale, SHANK.back * full * scale),
  ]);
  const edge = ankle.x - 33 * scale;
  const slipped = edge - spec.bandFoot * 74;
  const bare = {
    upper: bulging((x) => front(x) + axis(x), slipped, 1, -1, spec, 0.7),
    lower: bulging(
      (x) => Math.min(back(x) + axis(x), SHEET - 13 * (1 - rise(x, 100, ankle.x - 25 * scale))),
      slipped,
      1,
      1,
      spec,
      0.7,
    ),
  };
  const busy = spec.bandTight > 0 ? [slipped] : [];
  const legEnd = ankle.x - 25 * scale;
  const pull = ankle.y + 9 * scale;
  const sole = foot.outline.slice(8).filter((p) => p.y > 0);
  return {
    scale,
    foot,
    ankle,
    front: alongWith(bare.upper, 0, legEnd, busy, 63),
    back: alongWith(bare.lower, 0, legEnd, busy, 63),
    bandEdge: at(slipped, axis(slipped)),
    pen: at(edge, axis(edge)),
    // not what this picture is about: a crooked plate leans a little, so that it stays on the page
    ...layoutPlate(
      { plateGap: spec.plateGap, plateTilt: degrees(spec.plateTilt * 0.3) },
      sole,
      at(ankle.x, pull),
      scale,
      436,
    ),
    tapeStart: at(slipped - 4, axis(slipped) + 8 * scale),
    cordEnd: at(view.width, mix(AXIS, ankle.y, 0.8) + 9 * scale),
  };
}
export type HeelGeometry = ReturnType<typeof layoutHeel>;

export function drawHeel(spec: SceneSpec, g: HeelGeometry, view: View): Picture {
  const { scale, foot } = g;
  const sunk = 1 - spec.heelGap;
  const sheet: Profile = (x) => SHEET + DENT * rise(sunk, TOUCHES, 1) * hump(x, foot.heel.x - 4, 52);
  const lines = { upper: profile(g.front), lower: profile(g.back) };
  const wrap: Wrap = { ...lines, from: 0, to: g.bandEdge.x, penTo: g.pen.x, pitch: 38, size: 0.8 };
  const shapes: Shape[] = [
    ...drawBed(sheet, view.width, view.height),
    ...drawPad(8, 132, (x) => lines.lower(x) + 4, sheet),
    ...drawSideFoot(foot, g.front, g.back, spec, CROPPED),
    ...drawSkinAtEdges(spec, wrap),
    ...drawTape(g.tapeStart, g.plateMiddle, scale * 6.4),
    ...drawWrap(spec, wrap),
    ...drawPlate({ plate: cropPlate(g.plate) }, scale),
    ...drawCord(g.plateBack, g.cordEnd, scale * 0.8),
  ];
  if (sunk > TOUCHES) shapes.push(...drawPressed(foot.heel, sheet, rise(sunk, TOUCHES, 1)));
  else shapes.push(...drawDaylight(foot.heel, sheet));
  if (spec.mark === 'heel-rays') shapes.push(...drawSoreHeel(foot.heel, scale));
  if (spec.mark === 'skin-patch') {
    const strap = mix(g.tapeStart.y, g.plateMiddle.y, 0.4) - scale * 3.2;
    shapes.push(...drawPatch(foot.ankleMiddle, strap, scale));
  }
  return { ...view, shapes };
}

/** The page ends below the upper end of the plate. */
function cropPlate([a, b, c, d]: readonly Point[]): Point[] {
  const cut = (low: Point, high: Point) =>
    high.y < 0 ? at(mix(low.x, high.x, low.y / (low.y - high.y)), 0) : high;
  return [cut(d!, a!), cut(c!, b!), c!, d!];
}

/** The sheet gives way under a heel that lies on it. */
function drawPressed(heel: Point, sheet: Profile, how: number): Shape[] {
  const folds = [-1, 1].flatMap((way) =>
    [34, 54].map((reach, i) =>
      smooth([
        at(heel.x + way * reach - 4, sheet(heel.x + way * reach) + 7 + i * 3),
        at(heel.x + way * (reach - 14), sheet(heel.x) + 9 + i * 6),
        at(heel.x + way * (reach - 30), sheet(heel.x) + 11 + i * 7),
      ]),
    ),
  );
  return [quiet(folds.join(''), 'ink', 1.6 * how + 0.2)];
}

/** The shadow of a heel that hangs free. */
function drawDaylight(heel: Point, sheet: Profile): Shape[] {
  return [{ d: round(at(heel.x, sheet(heel.x) + 11), 44, 5), fill: 'floor' }];
}

function drawSoreHeel(heel: Point, scale: number): Shape[] {
  const c = at(heel.x - 2, heel.y - 6 * scale);
  const sore = ring(at(c.x, c.y + 1.5 * scale), 13 * scale, 6.6 * scale, 0, 12);
  return [
    { d: smooth(sore, true), fill: 'skin-shade' },
    quiet(hatch(sore, 6, 45), 'ink', 1.5),
    inked(rays(c, 15.5 * scale, Math.min(38 * scale, 357 - c.y), -14, 194, 9, 15), 'mark', 1.6),
  ];
}

const RAW = [1, 0.9, 1.06, 0.94, 1.1, 0.88, 1.02, 0.95, 1.08, 0.9] as const;

/** Raw skin along the edge of the strap: an uneven field, sore and wet in its middle, with a soft halo. */
function drawPatch(c: Point, strap: number, scale: number): Shape[] {
  const uneven = (rx: number, ry: number, middle: Point, shift: number) =>
    ring(middle, rx, ry, -7, RAW.length).map((p, i) => {
      const k = RAW[(i + shift) % RAW.length]!;
      return at(mix(middle.x, p.x, k), Math.min(strap + 2, mix(middle.y, p.y, k)));
    });
  const middle = at(c.x - 1 * scale, strap - 9 * scale);
  const halo = uneven(25 * scale, 15 * scale, middle, 3);
  const raw = uneven(17 * scale, 11 * scale, at(middle.x, middle.y + 0.5 * scale), 0);
  // three small open places, not one, which would look like an eye
  const open = [
    [-8, 2, 2.6],
    [1, -2.5, 3.6],
    [8, 4, 2.4],
  ].map(([x, y, r]) =>
    uneven(r! * 1.5 * scale, r! * scale, at(middle.x + x! * scale, middle.y + y! * scale), 5),
  );
  return [
    { d: smooth(halo, true), fill: 'skin-shade', line: 'mark', weight: 2.8, dash: '2 7' },
    { d: smooth(raw, true), fill: 'flush' },
    quiet(hatch(raw, 10, 58), 'ink', 1.6),
    { d: open.map((o) => smooth(o, true)).join(''), fill: 'red', line: 'ink', weight: 1.2 },
  ];
}
