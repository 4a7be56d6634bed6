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
  type View,
} from '../shapes.ts';
import { drawSideFoot, FOOT_BUILD, SHANK, sideFoot, type Pen } from '../parts/foot.ts';
import { drawBed, drawPad } from './bed.ts';
import { drawCord, drawPlate, drawTape, layoutPlate } from './foot.ts';
import {
  alongWith,
  arc,
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

/** Where heel, pad and mattress lie in the picture of the heel. */
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

/** The heel close by: free above the mattress or lying on it, and the skin there. */
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
    // the strip lies over the lower rim of a sore place
    ...(spec.mark === 'skin-patch' ? drawPatch(foot.ankleMiddle, scale) : []),
    ...drawSkinAtEdges(spec, wrap),
    ...drawTape(g.tapeStart, g.plateMiddle, scale * 6.4),
    ...drawWrap(spec, wrap),
    ...drawPlate({ plate: cropPlate(g.plate) }, scale),
    ...drawCord(g.plateBack, g.cordEnd, scale * 0.8),
  ];
  if (sunk > TOUCHES) shapes.push(...drawPressed(foot.heel, sheet, rise(sunk, TOUCHES, 1)));
  else shapes.push(...drawDaylight(foot.heel, sheet));
  if (spec.mark === 'heel-rays') shapes.push(...drawSoreHeel(foot.heel, scale));
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

const RAW = [1, 0.94, 1.05, 0.97, 1.06, 0.93, 1.02, 0.98] as const;

/** A sore place at the ankle bone, hatched, in a ring, and on it two blisters that shine. */
function drawPatch(ankle: Point, scale: number): Shape[] {
  const c = at(ankle.x - 1 * scale, ankle.y + 4 * scale);
  const uneven = (rx: number, ry: number, shift: number) =>
    ring(c, rx, ry, -8, RAW.length).map((p, i) => {
      const k = RAW[(i + shift) % RAW.length]!;
      return at(mix(c.x, p.x, k), mix(c.y, p.y, k));
    });
  const raw = uneven(17.5 * scale, 11.5 * scale, 0);
  const blisters = [
    { middle: at(c.x - 5 * scale, c.y - 3 * scale), r: 6.2 * scale },
    { middle: at(c.x + 8 * scale, c.y + 1 * scale), r: 3.6 * scale },
  ];
  return [
    {
      d: smooth(uneven(24 * scale, 16 * scale, 3), true),
      fill: 'skin-shade',
      line: 'mark',
      weight: 3,
      dash: '2 7',
    },
    { d: smooth(raw, true), fill: 'flush' },
    quiet(hatch(raw, 9, 58), 'ink', 1.5),
    {
      d: blisters.map((b) => round(b.middle, b.r * 1.2, b.r)).join(''),
      fill: 'sole',
      line: 'ink',
      weight: 2,
    },
    {
      d: blisters.map(({ middle: m, r }) => smooth(arc(m, r * 0.66, 190, 290, 3))).join(''),
      line: 'white',
      weight: 3.6,
    },
  ];
}
