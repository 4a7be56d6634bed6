/** The bandaged leg between knee and ankle, large: its edges against the pen lines, and what happened to it. */
import type { SceneSpec } from '../spec.ts';
import { at, mix, ring, smooth, straight, type Picture, type Point, type Shape } from '../shapes.ts';
import { FOOT_BUILD } from '../parts/foot.ts';
import { drawBed, drawPad } from './bed.ts';
import { drawTape } from './foot.ts';
import {
  alongWith,
  drop,
  inked,
  limb,
  onCircle,
  profile,
  quiet,
  rays,
  round,
  type Profile,
} from './strokes.ts';
import { bulging, drawSkinAtEdges, drawWrap, smellLines, wrapSpot, type Wrap } from './wrap.ts';

interface View {
  width: number;
  height: number;
}
const AXIS = 176;
const SHEET = 292;
const PEN = { from: 172, to: 408 } as const;

export function layoutBandage(spec: SceneSpec, view: View) {
  const full = mix(1, FOOT_BUILD[spec.age].full, 0.6);
  const dip = (x: number) => (1 - spec.heelGap) * 22 * (x / view.width) ** 2;
  const about = (points: [number, number][]) =>
    profile(points.map(([x, y]) => at(x, AXIS + (y - AXIS) * full + dip(x))));
  const upper = about([
    [0, 96],
    [36, 93],
    [66, 88],
    [98, 92],
    [132, 106],
    [200, 110],
    [300, 119],
    [400, 131],
    [480, 136],
  ]);
  const lower = about([
    [0, 262],
    [50, 256],
    [96, 246],
    [140, 247],
    [210, 262],
    [290, 255],
    [390, 228],
    [440, 219],
    [480, 216],
  ]);
  const from = PEN.from + spec.bandTop * 118;
  const to = PEN.to - spec.bandFoot * 58;
  const bare = {
    upper: bulging(bulging(upper, from, -1, -1, spec), to, 1, -1, spec, 0.5),
    lower: bulging(bulging(lower, from, -1, 1, spec), to, 1, 1, spec, 0.5),
  };
  const busy = spec.bandTight > 0 ? [from, to] : [];
  /** The kneecap sits on top and goes over the far side when the leg rolls outward. */
  const facing = 34 - spec.legRoll;
  const cap = at(76, AXIS - (AXIS - upper(76)) * Math.cos((facing * Math.PI) / 180) * 0.98 + 4);
  return {
    front: alongWith(bare.upper, 0, view.width, busy, 72),
    back: alongWith(bare.lower, 0, view.width, busy, 72),
    edgeTop: at(from, upper(from)),
    edgeFoot: at(to, upper(to)),
    kneecap: cap,
    kneecapHeight: 3 + 17 * Math.abs(Math.sin((facing * Math.PI) / 180)),
    spot: wrapSpot({ from, to }, bare.upper, bare.lower),
    tape: [at(to - 6, 182 + dip(to)), at(480, 180 + dip(480))] as [Point, Point],
  };
}
export type BandageGeometry = ReturnType<typeof layoutBandage>;

export function drawBandage(spec: SceneSpec, g: BandageGeometry, view: View): Picture {
  const sheet: Profile = () => SHEET;
  const lines = { upper: profile(g.front), lower: profile(g.back) };
  const wrap: Wrap = {
    ...lines,
    from: g.edgeTop.x,
    to: g.edgeFoot.x,
    penFrom: PEN.from,
    penTo: PEN.to,
    pitch: 34,
    size: 1,
  };
  const shapes: Shape[] = [
    ...drawBed(sheet, view.width, view.height),
    ...drawPad(196, 372, (x) => lines.lower(x) + 7, sheet),
    { d: limb(g.front, g.back), fill: 'skin' },
    inked(smooth(g.front) + smooth(g.back)),
    ...drawKnee(g),
    ...drawSkinAtEdges(spec, wrap),
    ...drawTape(...g.tape, 26),
    ...drawWrap(spec, wrap),
  ];
  if (spec.bandWet > 0) shapes.push(...drawPuddle(spec.bandWet));
  if (spec.smell) shapes.push(smellLines(at(g.spot.x, 96), 1));
  if (spec.mark === 'burn-rays') shapes.push(...drawBurn(g.spot));
  if (spec.mark === 'itch-dots') shapes.push(...drawItch(g.spot));
  return { ...view, shapes };
}

function drawKnee({ kneecap: c, kneecapHeight: h }: BandageGeometry): Shape[] {
  const rim = ring(c, 29, h, 2, 12);
  const below = smooth([
    at(c.x - 34, c.y + h * 0.6),
    at(c.x - 12, c.y + h + 7),
    at(c.x + 16, c.y + h + 6),
    at(c.x + 38, c.y + h * 0.7),
  ]);
  const bend =
    smooth([at(70, 246), at(84, 232), at(92, 218)]) + smooth([at(104, 244), at(112, 233), at(116, 224)]);
  return [
    { d: smooth(rim, true), fill: 'skin', line: 'skin-shade', weight: 2 },
    { d: below + bend, line: 'skin-shade', weight: 2 },
  ];
}

function drawPuddle(wet: number): Shape[] {
  const w = 30 + 40 * wet;
  const c = at(312, 305);
  return [
    inked(round(c, w, 7 + 4 * wet, 0), 'wet', 1.8),
    quiet(
      smooth([at(c.x - w * 0.5, c.y + 1), at(c.x - w * 0.1, c.y + 4), at(c.x + w * 0.4, c.y + 1)]),
      'white',
      2,
    ),
    inked(drop(at(c.x - 6, c.y - 18), 5.5), 'wet', 1.6),
  ];
}

/** One spot that burns: it lies under the bandage, so its rim is broken, and its rays come through. */
function drawBurn(c: Point): Shape[] {
  return [
    inked(rays(c, 32, 92, 0, 330, 12, 17), 'mark', 1.8),
    { d: round(c, 24, 24), fill: 'mark', line: 'ink', weight: 2 },
    { d: round(c, 13, 13), fill: 'band', line: 'ink', weight: 2, dash: '4 4' },
  ];
}

const DOTS: readonly (readonly [number, number])[] = [
  [-88, -22],
  [-70, 16],
  [-58, -40],
  [-46, 44],
  [-34, -8],
  [-16, 28],
  [-12, -34],
  [4, 2],
  [16, 48],
  [24, -26],
  [38, 20],
  [52, -44],
  [58, -4],
  [72, 38],
  [86, -20],
  [100, 10],
  [-2, -54],
  [-82, 46],
  [96, 40],
];

function drawItch(c: Point): Shape[] {
  const dots = DOTS.map(([x, y], i) =>
    round(at(c.x + x, c.y + y), i % 3 ? 4.2 : 5.6, i % 3 ? 4.2 : 5.6),
  ).join('');
  const scratches = [
    [-50, 10],
    [4, -22],
    [44, 34],
  ]
    .map(([x, y]) => squiggle(at(c.x + x!, c.y + y!)))
    .join('');
  return [
    { d: dots, fill: 'mark', line: 'ink', weight: 1.2 },
    { d: scratches, line: 'ink', weight: 2.6 },
  ];
}

const squiggle = (p: Point): string =>
  smooth(Array.from({ length: 7 }, (_, i) => at(p.x - 17 + i * 5.6, p.y + (i % 2 ? -8 : 8)))) +
  straight([onCircle(at(p.x + 17, p.y + 8), 4, 30), at(p.x + 17, p.y + 8)]);
