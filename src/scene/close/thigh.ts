/** The thigh of the pulled leg from the side, between hip and bandage: its shape against this morning's. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  hatch,
  mix,
  ring,
  smooth,
  straight,
  type Picture,
  type Point,
  type Shape,
  type View,
} from '../shapes.ts';
import { FOOT_BUILD } from '../parts/foot.ts';
import { drawBed } from './bed.ts';
import { along, alongWith, arc, hump, inked, limb, profile, quiet, rise, type Profile } from './strokes.ts';
import { bulging, drawSkinAtEdges, drawWrap, type Wrap } from './wrap.ts';

const SHEET = 282;
const AXIS = 190;
const BREAK = 236;
const PEN = 424;

/** Where thigh and knee lie in the picture of the thigh. */
export function layoutThigh(spec: SceneSpec, view: View) {
  const full = mix(1, FOOT_BUILD[spec.age].full, 0.7);
  const thick = spec.thigh === 'thick' ? 1 : 0;
  const bent = spec.thigh === 'bent' ? 1 : 0;
  const tent = (x: number) => bent * 74 * Math.max(0, 1 - Math.abs(x - BREAK) / 124) ** 0.9;
  const about = (points: [number, number][], out: -1 | 1): Profile => {
    const line = profile(points.map(([x, y]) => at(x, AXIS + (y - AXIS) * full)));
    return (x) =>
      line(x) + out * thick * (out < 0 ? 52 : 14) * hump(x, BREAK, 78) - tent(x) * (out < 0 ? 1 : 0.86);
  };
  const upper = about(
    [
      [0, 112],
      [80, 108],
      [160, 112],
      [250, 120],
      [316, 130],
      [352, 129],
      [378, 126],
      [402, 134],
      [430, 146],
      [480, 148],
    ],
    -1,
  );
  const lower = about(
    [
      [0, 276],
      [80, 276],
      [160, 274],
      [250, 263],
      [316, 247],
      [366, 240],
      [410, 244],
      [480, 258],
    ],
    1,
  );
  const edge = PEN + spec.bandTop * 34;
  const bare = {
    upper: bulging(upper, edge, -1, -1, spec, 0.7),
    lower: bulging(lower, edge, -1, 1, spec, 0.7),
  };
  const busy = [...(spec.bandTight > 0 ? [edge] : []), ...(bent ? [BREAK] : [])];
  const facing = ((34 - spec.legRoll) * Math.PI) / 180;
  return {
    front: alongWith(bare.upper, 0, view.width, busy, 63),
    back: alongWith(bare.lower, 0, view.width, busy, 63),
    bandEdge: at(edge, AXIS),
    gownHem: at(118 + spec.slide * 14, AXIS),
    kneecap: at(368, 190 - 62 * full * Math.cos(facing) + 4),
    kneecapHeight: 3 + 14 * Math.abs(Math.sin(facing)),
    middle: at(BREAK, mix(bare.upper(BREAK), bare.lower(BREAK), 0.46)),
    top: at(BREAK, bare.upper(BREAK)),
    kneeBack: at(368, bare.lower(368)),
  };
}
export type ThighGeometry = ReturnType<typeof layoutThigh>;

/** The thigh close by: as usual, thick, bent or stained, and what is marked on it. */
export function drawThigh(spec: SceneSpec, g: ThighGeometry, view: View): Picture {
  const lines = { upper: profile(g.front), lower: profile(g.back) };
  const dent = spec.thigh === 'thick' ? 14 : 0;
  const sheet: Profile = (x) => SHEET + dent * hump(x, BREAK, 90);
  const wrap: Wrap = { ...lines, from: g.bandEdge.x, to: view.width, penFrom: PEN, pitch: 27, size: 0.72 };
  const shapes: Shape[] = [
    ...drawBed(sheet, view.width, view.height),
    { d: limb(g.front, g.back), fill: 'skin' },
    inked(smooth(g.front) + smooth(g.back)),
    ...drawKneecap(g),
  ];
  // taut or bent skin has no quiet lines
  if (spec.thigh === 'usual' || spec.thigh === 'stained') shapes.push(...drawEase(lines));
  if (spec.thigh === 'thick') shapes.push(...drawTaut(lines));
  if (spec.thigh === 'bent') shapes.push(...drawBend(lines));
  if (spec.thigh === 'stained') shapes.push(...drawDressing(g.middle));
  shapes.push(...drawSkinAtEdges(spec, wrap), ...drawWrap(spec, wrap), ...drawGown(g, lines));
  if (spec.mark === 'jump-zigzag') shapes.push(...drawJump(g, lines));
  return { ...view, shapes };
}

function drawKneecap({ kneecap: c, kneecapHeight: h, kneeBack: b }: ThighGeometry): Shape[] {
  const below = smooth([
    at(c.x - 30, c.y + h * 0.7),
    at(c.x - 8, c.y + h + 7),
    at(c.x + 16, c.y + h + 6),
    at(c.x + 32, c.y + h * 0.8),
  ]);
  const bend =
    smooth([at(b.x - 14, b.y - 2), at(b.x - 2, b.y - 11), at(b.x + 3, b.y - 22)]) +
    smooth([at(b.x + 14, b.y - 2), at(b.x + 19, b.y - 9), at(b.x + 22, b.y - 17)]);
  return [
    { d: smooth(ring(c, 25, h, 4, 12), true), fill: 'skin', line: 'skin-shade', weight: 2 },
    { d: below + bend, line: 'skin-shade', weight: 2 },
  ];
}

const line = (lines: { upper: Profile; lower: Profile }, from: number, to: number, depth: number): Point[] =>
  along((x) => mix(lines.upper(x), lines.lower(x), depth), from, to, 26);

/** The long quiet lines of a muscle at rest. */
const drawEase = (lines: { upper: Profile; lower: Profile }): Shape[] => [
  {
    d: smooth(line(lines, 190, 300, 0.3)) + smooth(line(lines, 200, 316, 0.74)),
    line: 'skin-shade',
    weight: 2,
  },
];

function drawTaut(lines: { upper: Profile; lower: Profile }): Shape[] {
  const field = [...line(lines, 150, 322, 0.04), ...line(lines, 322, 150, 0.96)].map((p) => at(p.x, p.y));
  const shine = [
    smooth(line(lines, 186, 262, 0.13)),
    smooth(line(lines, 276, 290, 0.15)),
    smooth(line(lines, 204, 244, 0.23)),
  ];
  const around = [160, 184, 210, 236, 262, 288, 312].map((x) => {
    const [y, slope] = [lines.upper(x), (lines.upper(x + 3) - lines.upper(x - 3)) / 6];
    const long = Math.hypot(1, slope);
    return straight([at(x + (slope / long) * 9, y - 9 / long), at(x + (slope / long) * 22, y - 22 / long)]);
  });
  return [
    quiet(hatch(field, 9, 58), 'ink', 1.5),
    { d: shine.join(''), line: 'white', weight: 6 },
    { d: around.join(''), line: 'mark', weight: 4 },
  ];
}

function drawBend(lines: { upper: Profile; lower: Profile }): Shape[] {
  const peak = at(BREAK, mix(lines.upper(BREAK), lines.lower(BREAK), 0.5));
  const field = [...line(lines, BREAK - 34, BREAK + 34, 0.04), ...line(lines, BREAK + 34, BREAK - 34, 0.96)];
  const ends = [
    at(128, mix(lines.upper(128), lines.lower(128), 0.5)),
    at(350, mix(lines.upper(350), lines.lower(350), 0.5)),
  ] as const;
  return [
    quiet(hatch(field, 8, 60), 'ink', 1.5),
    { d: straight([ends[0], ends[1]]), line: 'sheet', weight: 5 },
    { d: straight([ends[0], ends[1]]), line: 'ink', weight: 2.4, dash: '7 7' },
    { d: straight([ends[0], peak, ends[1]]), line: 'sheet', weight: 11 },
    { d: straight([ends[0], peak, ends[1]]), line: 'mark', weight: 6 },
  ];
}

function drawDressing(c: Point): Shape[] {
  const pad = [
    at(c.x - 52, c.y - 40),
    at(c.x + 50, c.y - 44),
    at(c.x + 54, c.y + 36),
    at(c.x - 50, c.y + 40),
  ];
  const spot = ring(at(c.x + 2, c.y - 1), 36, 28, -8, 11).map((p, i) =>
    at(mix(c.x, p.x, [1, 0.82, 1.06][i % 3]!), mix(c.y, p.y, [0.94, 1.05, 0.86][i % 3]!)),
  );
  return [
    inked(smooth(pad, true, 0.25), 'white'),
    inked(smooth(spot, true), 'red', 1.8),
    quiet(hatch(spot, 6, 45), 'ink', 1.2),
    quiet(
      smooth(
        spot.map((p) => at(mix(c.x, p.x, 0.6), mix(c.y, p.y, 0.6))),
        true,
      ),
      'ink',
      1.4,
    ),
  ];
}

/** The gown that covers the hip. */
function drawGown({ gownHem }: ThighGeometry, lines: { upper: Profile; lower: Profile }): Shape[] {
  const x = gownHem.x;
  const top = along((v) => lines.upper(v) - 9, 0, x, 20);
  const bottom = along((v) => Math.min(SHEET + 3, lines.lower(v) + 9), 0, x, 20);
  const hem = [
    top[top.length - 1]!,
    at(x + 5, 150),
    at(x - 5, 192),
    at(x + 7, 236),
    bottom[bottom.length - 1]!,
  ];
  const d = `${smooth(top)}${smooth(hem).replace(/^M/, 'L')}${smooth([...bottom].reverse()).replace(/^M/, 'L')}`;
  const folds =
    smooth([at(x - 16, 132), at(x - 50, 150), at(x - 84, 152)]) +
    smooth([at(x - 12, 214), at(x - 44, 206), at(x - 88, 214)]) +
    smooth([at(x - 20, 250), at(x - 48, 246), at(x - 66, 252)]);
  const seam = smooth(hem.map((p) => at(p.x - 8, p.y)));
  return [
    { d: d + 'Z', fill: 'gown' },
    inked(d),
    quiet(folds, 'ink', 1.5),
    { d: seam, line: 'soft', weight: 1.6, dash: '5 4' },
  ];
}

/** The leg jerks by itself: its outline again and again above where it lies, arcs over and under it. */
function drawJump({ gownHem }: ThighGeometry, lines: { upper: Profile; lower: Profile }): Shape[] {
  const hem = gownHem.x + 12;
  const echo = (k: number) =>
    smooth(along((x) => Math.max(14, lines.upper(x) - k * 28 * rise(x, hem - 30, hem + 120)), hem, 476, 30));
  const over = [230, 372].flatMap((x) =>
    [0, 12, 24].map((out) => smooth(arc(at(x, Math.max(100, lines.upper(x) - 30)), 58 + out, -116, -64, 4))),
  );
  const under = [230, 360].flatMap((x) =>
    [0, 11, 22].map((out) => smooth(arc(at(x, SHEET - 40), 56 + out, 62, 118, 4))),
  );
  return [
    { d: echo(1), line: 'ink', weight: 3, dash: '11 7' },
    { d: echo(2), line: 'ink', weight: 2.4, dash: '8 8' },
    { d: over.join('') + under.join(''), line: 'mark', weight: 3.8 },
  ];
}
