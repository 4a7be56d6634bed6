/**
 * The leg seen from the foot end and a little from above: the kneecap is a round mark that should look at the
 * ceiling. For the left leg the outer side is on the right of the page.
 */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  mix,
  ring,
  smooth,
  straight,
  turn,
  type Picture,
  type Point,
  type Shape,
  type View,
} from '../shapes.ts';
import { FOOT_BUILD, shiftHatch } from '../parts/foot.ts';
import { turnEdges } from '../parts/turns.ts';
import { drawCold } from './cold.ts';
import { hump, inked, joined, limb, profile, quiet, round, strip } from './strokes.ts';

const AXIS = 224;
/** How much of a height above the bed this view keeps. */
const HEIGHT = 0.72;
const KNEE = 108;
const ANKLE = 262;

const SOLE: readonly (readonly [number, number])[] = [
  [0, -40],
  [17, -37],
  [27, -24],
  [27, -4],
  [25, 20],
  [29, 46],
  [36, 68],
  [37, 84],
  [26, 95],
  [6, 102],
  [-16, 104],
  [-34, 98],
  [-39, 82],
  [-34, 62],
  [-21, 40],
  [-16, 18],
  [-21, -6],
  [-26, -24],
  [-17, -37],
];
/** Middle, half width and half length of each toe, the big one first: it lies on the inner side. */
const TOES: readonly (readonly [number, number, number, number])[] = [
  [-24, 119, 15, 19],
  [1, 120, 9.4, 14],
  [17, 113, 8.8, 13],
  [30, 103, 8.2, 12],
  [41, 90, 8, 11],
];

/** Where knee, kneecap and foot lie as seen from above. */
export function layoutKnee(spec: SceneSpec, view: View) {
  const { full, long } = FOOT_BUILD[spec.age];
  const roll = (spec.legRoll * Math.PI) / 180;
  const wide = 0.5 + 0.5 * full;
  const shift = spec.slide * 14;
  const half = profile(
    [
      [0, 82],
      [40, 74],
      [86, 61],
      [112, 60],
      [140, 54],
      [186, 61],
      [228, 45],
      [262, 35],
      [278, 27],
    ].map(([y, w]) => at(y!, w! * wide)),
  );
  const edge = 150 + spec.bandTop * 40;
  const tight = spec.bandTight * 6;
  // a leg that rolls outward lies over on its outer side from hip to foot
  const leaning = (y: number) => AXIS + Math.sin(roll) * 40 * (y / ANKLE);
  const rows = tight ? 28 : 12;
  const sideOf = (way: -1 | 1) =>
    Array.from({ length: rows + 1 }, (_, i) => (i / rows) * (ANKLE + 16)).map((y) =>
      at(
        leaning(y) + way * (half(y) + tight * (hump(y, edge - 14, 11) - 0.8 * hump(y, edge + 2, 8))),
        Math.max(0, y + shift * (y / ANKLE)),
      ),
    );
  const r = half(KNEE) * 0.86;
  const centre = at(AXIS, KNEE + shift * 0.4);
  const cap = at(leaning(KNEE) + r * 0.5 * Math.sin(roll), centre.y + r * 0.16 * (1 - Math.cos(roll)));
  const looks = (from: Point, reach: number, angle: number) =>
    at(from.x + reach * Math.sin(angle), from.y - reach * HEIGHT * Math.cos(angle));
  const ankle = at(leaning(ANKLE), ANKLE + shift + (1 - spec.heelGap) * 8);
  // a foot that droops comes toward the eye and looks longer and lower
  const droop = Math.sin(((spec.footPitch - 5) * Math.PI) / 180);
  const tall = HEIGHT * (1 - 0.5 * Math.max(0, droop)) * long;
  const thick = [1, 1.15, 1.3][spec.swell]!;
  const place = (a: number, b: number): Point => {
    const p = turn(at(a * wide, -b), at(0, 0), spec.legRoll);
    return at(ankle.x + p.x, ankle.y + p.y * tall + Math.max(0, droop) * Math.max(0, b) * 0.2);
  };
  const plate = at(AXIS, 319);
  // the plate hangs on the leg by its strips and turns with it, as far as the page allows
  const plateTurn = Math.max(-30, Math.min(30, spec.plateTilt + spec.legRoll * 0.5));
  return {
    inner: sideOf(-1),
    outer: sideOf(1),
    /** How much lower the outer side of every line across the leg stands. */
    tilt: Math.round(Math.sin(roll) * 22 * 16) / 16 || 0,
    bandEdge: at(AXIS, edge),
    pen: at(AXIS, 150),
    bandEnd: at(AXIS, 246 - spec.bandFoot * 30),
    kneecap: cap,
    kneecapRest: at(centre.x, centre.y),
    kneecapWidth: r * 0.56 * (0.62 + 0.38 * Math.cos(roll)),
    kneecapHeight: r * 0.5,
    pointer: [looks(cap, r * 0.62, roll), looks(cap, 106, roll)] as [Point, Point],
    ceiling: [centre, at(centre.x, 6)] as [Point, Point],
    sole: SOLE.map(([a, b]) => place(a, b)),
    toes: TOES.map(([a, b, w, h]) => ring(at(0, 0), w * thick, h, 0, 6).map((p) => place(a + p.x, b + p.y))),
    ball: [
      [-30, 66],
      [-12, 74],
      [10, 72],
      [30, 62],
    ].map(([a, b]) => place(a!, b!)),
    heelRim: [
      [-17, -18],
      [-8, -10],
      [8, -10],
      [18, -18],
    ].map(([a, b]) => place(a!, b!)),
    archRim: [
      [-13, 42],
      [-7, 24],
      [-11, 6],
    ].map(([a, b]) => place(a!, b!)),
    handRest: place(-24, 119),
    plate,
    plateBox: [at(-56, -12), at(56, -12), at(56, 12), at(-56, 12)].map((p) =>
      turn(at(plate.x + p.x, plate.y + p.y - (1 - spec.plateGap) * 22), plate, plateTurn),
    ),
    cordEnd: at(AXIS, view.height),
    padTop: at(AXIS, 170),
  };
}
export type KneeGeometry = ReturnType<typeof layoutKnee>;

/** A bowed line across the leg, from inner to outer side. */
function across(g: KneeGeometry, y: number, out: number, own = 0): Point[] {
  const lean = own + g.tilt;
  const [inner, outer] = [g.inner, g.outer].map((side) => profile(side.map((p) => at(p.y, p.x))));
  const [a, b] = [inner!(y - lean) - out, outer!(y + lean) + out];
  return [0, 0.33, 0.67, 1].map((t) =>
    at(mix(a, b, t), y + (t - 0.5) * 2 * lean - 8 * Math.sin(Math.PI * t)),
  );
}

/** The knee close by, from above: which way the kneecap points. */
export function drawKnee(spec: SceneSpec, g: KneeGeometry, view: View): Picture {
  const shapes: Shape[] = [...drawSheet(view), ...drawPadFromAbove(g)];
  const [innerEnd, outerEnd] = [g.inner.at(-1)!, g.outer.at(-1)!];
  shapes.push(
    { d: limb(g.inner, g.outer), fill: 'skin' },
    inked(
      smooth(g.inner) +
        smooth(g.outer) +
        smooth([innerEnd, at((innerEnd.x + outerEnd.x) / 2, innerEnd.y + 9), outerEnd]),
    ),
  );
  const pen = smooth(across(g, g.pen.y - 7, -2));
  shapes.push({ d: pen, line: 'sole', weight: 7.6 }, { d: pen, line: 'pen', weight: 3.6 });
  shapes.push(...drawBand(g), ...drawCap(g), ...drawPlateAndTapes(g), ...drawSole(spec, g), ...drawLook(g));
  if (spec.coolMark > 0) shapes.push(...drawCold(spec, g.handRest, 0.9));
  return { ...view, shapes };
}

function drawSheet(view: View): Shape[] {
  const corners = [at(0, 0), at(view.width, 0), at(view.width, view.height), at(0, view.height)];
  const folds = [
    [30, 40, 58, 130, 40, 210],
    [404, 60, 430, 150, 416, 240],
    [70, 300, 120, 316, 150, 312],
    [340, 30, 356, 80, 350, 120],
  ];
  return [
    { d: straight(corners, true), fill: 'sheet' },
    quiet(
      folds.map(([a, b, c, d, e, f]) => smooth([at(a!, b!), at(c!, d!), at(e!, f!)])).join(''),
      'soft',
      1.6,
    ),
  ];
}

function drawPadFromAbove({ padTop: c }: KneeGeometry): Shape[] {
  const [w, h] = [102, 64];
  const rim = [
    at(c.x - w, c.y + 4),
    at(c.x - w + 8, c.y),
    at(c.x, c.y + 3),
    at(c.x + w - 8, c.y),
    at(c.x + w, c.y + 4),
    at(c.x + w - 2, c.y + h / 2),
    at(c.x + w, c.y + h - 4),
    at(c.x, c.y + h),
    at(c.x - w, c.y + h - 4),
    at(c.x - w + 2, c.y + h / 2),
  ];
  return [inked(smooth(rim, true, 0.7), 'pad')];
}

function drawBand(g: KneeGeometry): Shape[] {
  const [from, to] = [g.bandEdge.y, g.bandEnd.y];
  const side = (points: Point[], out: number, low: number, high: number) =>
    points.filter((p) => p.y > low + 4 && p.y < high - 4).map((p) => at(p.x + out, p.y));
  const [first, last] = [across(g, from, 6), across(g, to, 6)];
  const d =
    joined(
      smooth(first),
      smooth([first[3]!, ...side(g.outer, 6, first[3]!.y, last[3]!.y), last[3]!]),
      smooth([...last].reverse()),
      smooth([last[0]!, ...side(g.inner, -6, first[0]!.y, last[0]!.y).reverse(), first[0]!]),
    ) + 'Z';
  const turns = turnEdges(from, to, 19);
  const strips = turns
    .map((y) => joined(smooth(across(g, y, 5, 5)), smooth(across(g, y + 5, 5, 5).reverse())) + 'Z')
    .join('');
  return [
    { d, fill: 'band' },
    { d: strips, fill: 'band-shade' },
    quiet(turns.map((y) => smooth(across(g, y, 5, 5))).join(''), 'soft', 1.7),
    inked(d),
  ];
}

/** A kneecap is broad above and narrower towards the shin, with a hollow at each side. */
function drawCap({ kneecap: c, kneecapWidth: w, kneecapHeight: h, tilt }: KneeGeometry): Shape[] {
  const place = (x: number, y: number) => turn(at(c.x + x * w, c.y + y * h), c, tilt);
  const rim = [
    [0, -1],
    [0.66, -0.84],
    [1, -0.2],
    [0.74, 0.52],
    [0, 1],
    [-0.74, 0.52],
    [-1, -0.2],
    [-0.66, -0.84],
  ].map(([x, y]) => place(x!, y!));
  const line = (points: readonly (readonly [number, number])[]) =>
    smooth(points.map(([x, y]) => place(x, y)));
  const hollows = [-1, 1]
    .map((way) =>
      line([
        [way * 1.3, -0.7],
        [way * 1.44, 0],
        [way * 1.2, 0.8],
      ]),
    )
    .join('');
  const shine = line([
    [-0.5, -0.36],
    [-0.1, -0.58],
    [0.36, -0.5],
  ]);
  return [
    { d: hollows, line: 'skin-shade', weight: 2.4 },
    inked(smooth(rim, true), 'sole', 2.6),
    { d: shine, line: 'skin-shade', weight: 2 },
  ];
}

/** The dashed line stays where the ceiling is; the arrow shows where the knee looks. */
function drawLook({ ceiling, pointer: [from, to] }: KneeGeometry): Shape[] {
  const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const head = [at(to.x - 20, to.y - 12), to, at(to.x - 20, to.y + 12)].map((p) => turn(p, to, angle));
  const neck = at(mix(to.x, from.x, 0.24), mix(to.y, from.y, 0.24));
  return [
    { d: straight(ceiling), line: 'sole', weight: 6 },
    { d: straight(ceiling), line: 'ink', weight: 2.4, dash: '7 7' },
    { d: straight([from, neck]) + straight(head, true), line: 'sheet', weight: 12 },
    inked(straight(strip(from, neck, 7), true), 'mark', 1.6),
    inked(straight(head, true), 'mark', 1.8),
  ];
}

function drawPlateAndTapes(g: KneeGeometry): Shape[] {
  const [a, b, c, d] = g.plateBox as [Point, Point, Point, Point];
  // the strips come out of the bandage at both sides of the leg
  const ends = across(g, g.bandEnd.y - 9, 0);
  const tapes = [
    [ends[0]!, at(mix(a.x, d.x, 0.4) + 8, mix(a.y, d.y, 0.4))],
    [ends[3]!, at(mix(b.x, c.x, 0.4) - 8, mix(b.y, c.y, 0.4))],
  ].map(([p, q]) => straight(strip(p!, q!, 13), true));
  const knot = at((a.x + b.x + c.x + d.x) / 4, (a.y + b.y + c.y + d.y) / 4);
  return [
    inked(tapes.join(''), 'band', 2),
    { d: straight([knot, g.cordEnd]), line: 'cord', weight: 4.4 },
    inked(straight(g.plateBox, true), 'plate'),
    inked(round(knot, 7, 6), 'metal', 2),
  ];
}

function drawSole(spec: SceneSpec, g: KneeGeometry): Shape[] {
  const shifted = spec.toneShift !== 'none' && spec.toneShift !== 'blotched';
  const shapes: Shape[] = [
    inked(g.toes.map((t) => smooth(t, true, 1.24)).join(''), shifted ? 'shift' : 'sole', 2.2),
  ];
  if (spec.toneShift !== 'none')
    shapes.push(quiet(g.toes.map((t) => shiftHatch(t, spec.toneShift, 5)).join(''), 'ink', 1.2));
  shapes.push(inked(smooth(g.sole, true), 'sole'));
  const folds = spec.swell === 2 ? [g.heelRim] : [g.ball, g.heelRim, g.archRim];
  shapes.push({ d: folds.map((f) => smooth(f)).join(''), line: 'skin-shade', weight: 2 });
  return shapes;
}
