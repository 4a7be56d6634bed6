/** The bandaged leg between knee and ankle, large: its edges against the pen lines, and what happened to it. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  hatch,
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
import { FOOT_BUILD } from '../parts/foot.ts';
import { lighter } from '../lighter.ts';
import { drawHead } from '../parts/head.ts';
import { heldInside, points } from '../parts/points.ts';
import { drawBed, drawPad } from './bed.ts';
import { drawTape } from './foot.ts';
import { drawPointing, drawScratching } from './gestures.ts';
import { alongWith, drop, inked, limb, onCircle, profile, quiet, type Profile } from './strokes.ts';
import { bulging, drawSkinAtEdges, drawWrap, smellLines, wrapSpot, type Wrap } from './wrap.ts';

const AXIS = 176;
const SHEET = 292;
const PEN = { from: 172, to: 408 } as const;

/** Where the calf, its bandage and its edges lie in the picture of the bandage. */
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

/** The bandage close by: the calf on its pad, the wrap, and what has changed on it. */
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
    ...(spec.mark === 'itch-dots' ? drawWantsToScratch(spec, lines.upper(60), view) : []),
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

/** What drips soaks into the sheet below: an uneven stain, palest at its rim. */
function drawPuddle(wet: number): Shape[] {
  const w = 34 + 46 * wet;
  const c = at(300, SHEET + 1);
  const rim = (k: number) =>
    [
      [-1, 2],
      [-0.62, 17],
      [-0.2, 14],
      [0.16, 24],
      [0.56, 15],
      [0.86, 17],
      [1.08, 2],
    ].map(([x, y]) => at(c.x + x! * w * k, c.y + y! * (0.5 + 0.5 * wet) * k));
  const soaked = (k: number) => smooth(rim(k)) + 'Z';
  return [
    { d: soaked(1.22), fill: 'tear' },
    { d: soaked(1), fill: 'wet' },
    quiet(hatch(rim(1), 11, 62), 'ink', 1.2),
    inked(drop(at(c.x + 6, c.y - 15), 6), 'wet', 1.6),
  ];
}

/** An uneven field: a window in the cloth, or what is seen in it. */
const seenThrough = (middle: Point, rx: number, ry: number) =>
  ring(middle, rx, ry, -6, RIM.length).map((p, i) =>
    at(mix(middle.x, p.x, RIM[i]!), mix(middle.y, p.y, RIM[i]!)),
  );
const RIM = [1, 0.95, 1.05, 0.97, 0.92, 1.03, 0.96, 1.06, 0.94, 1.02] as const;
/** One place under the turns, seen as through a window: hot skin, tongues that rise from it, a finger that shows it. */
function drawBurn(spot: Point): Shape[] {
  const c = at(spot.x + 14, spot.y + 14);
  const window = smooth(seenThrough(c, 84, 52), true);
  const hot = seenThrough(at(c.x, c.y + 24), 58, 22);
  const feet = [
    [-30, 20, 42, -5],
    [30, 22, 46, 6],
    [0, 28, 72, -4],
  ] as const;
  const tongues = (k: number) =>
    feet.map(([x, y, tall, sway]) => flame(at(c.x + x, c.y + y), tall * k, sway, 15 * k)).join('');
  return [
    { d: window, fill: 'skin' },
    { d: smooth(hot, true), fill: 'flush' },
    quiet(hatch(hot, 7, 76), 'ink', 1.4),
    { d: window, line: 'ink', weight: 2.4, dash: '7 6' },
    { d: tongues(1), fill: 'mark', line: 'ink', weight: 1.8 },
    // a bright heart keeps the tongues plain on every skin
    { d: tongues(0.5), fill: 'band' },
    ...drawPointing(at(c.x - 50, c.y - 34)),
  ];
}

/** A tongue of fire that stands on `foot`, `half` wide to each side, and leans with `sway`. */
const flame = (foot: Point, tall: number, sway: number, half: number): string =>
  smooth(
    [
      at(foot.x, foot.y),
      at(foot.x - half * 0.9, foot.y - tall * 0.12),
      at(foot.x - half * 0.86, foot.y - tall * 0.36),
      at(foot.x + sway * 0.4 - half * 0.3, foot.y - tall * 0.66),
      at(foot.x + sway, foot.y - tall),
      at(foot.x + sway * 0.6 + half * 0.44, foot.y - tall * 0.64),
      at(foot.x + half * 0.92, foot.y - tall * 0.34),
      at(foot.x + half * 0.8, foot.y - tall * 0.1),
    ],
    true,
    0.9,
  );

/** Where it itches under the cloth, from the middle of the window: prickles, and what tingles among them. */
const PRICKLES = [-58, -8, -24, -28, -20, 32, 32, -34, 62, -12, 16, 38] as const;
const TINGLES = [-34, 2, 4, -20, 40, 4, 2, 12, 40, 29, -48, 20] as const;
const WAVE = [-15, 2, -10, -10, -5, 1, 0, 11, 5, 0, 10, -11, 15, -1] as const;
/** A short wavy stroke, turned about its middle. */
function wave(middle: Point, degrees = 0): string {
  const [from, ...rest] = points(WAVE, middle).map((p) => turn(p, middle, degrees)) as [Point, ...Point[]];
  const xy = (p: Point) => `${Math.round(p.x)} ${Math.round(p.y)}`;
  return rest.reduce((d, p, i) => d + (i % 2 ? ' ' : 'Q') + xy(p), 'M' + xy(from));
}

function drawItch(spot: Point): Shape[] {
  const c = at(spot.x + 14, spot.y + 14);
  const window = smooth(seenThrough(c, 84, 52), true);
  // a line of no length with a round end is a dot
  const prickles = points(PRICKLES, c)
    .map((p) => straight([p, p]))
    .join('');
  const tingles = points(TINGLES, c)
    .map((p) => wave(p))
    .join('');
  const around = [158, 190, 222, 256, 290, 322].map((a) => wave(onCircle(c, 106, a, 0.68), a)).join('');
  return [
    { d: window, fill: 'skin', line: 'ink', dash: '7 6' },
    { d: prickles, line: 'ink', weight: 11 },
    { d: prickles, line: 'flush', weight: 7 },
    { d: tingles, line: 'ink', weight: 3 },
    { d: around, line: 'mark', weight: 4 },
  ];
}

/** The child looks over the knee along the leg, and scratches the air: fingers stay off the bandage. */
function drawWantsToScratch(spec: SceneSpec, knee: number, view: View): Shape[] {
  const look = { face: 'calm', hair: spec.hair, age: spec.age, worried: true } as const;
  const to = [at(284, 66), at(308, 50), at(308, 60), at(348, 60), at(348, 50), at(372, 66)];
  const fro = [at(348, 82), at(348, 72), at(308, 72), at(308, 82)];
  const shapes = [
    ...drawHead(at(60, knee - 29), 36, 12, look),
    ...drawScratching(at(112, 112), at(158, 22), at(206, 32)),
    { d: straight([...to, ...fro], true), fill: 'mark', line: 'ink' },
  ];
  const light = shapes.map((shape) => ({ ...shape, d: lighter(shape.d, 0.5, 0.4) }));
  return heldInside(light, view.width, view.height);
}
