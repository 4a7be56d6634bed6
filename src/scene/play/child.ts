/** The drawn child in bed, light enough to stand in a list of ideas: lying flat, or with a tray over the lap. */
import type { DrawnAge } from '../spec.ts';
import { at, oval, plus, smooth, turn, type Point, type Shape } from '../shapes.ts';
import { hairInFront } from '../parts/hair.ts';
import { headForm, type HeadFrame } from '../parts/head.ts';
import { points } from '../parts/points.ts';
import { arm, isSleeved, type Reach } from './arms.ts';
import { brush, dots } from './brush.ts';

export type Eyes = 'open' | 'shut' | 'up' | 'down' | 'left' | 'right';
export type Mouth = 'calm' | 'smile' | 'laugh' | 'speaking' | 'wide' | 'blowing';

export interface ChildLook {
  /** Middle of the face, and half its height. */
  x: number;
  y: number;
  r: number;
  eyes?: Eyes;
  mouth?: Mouth;
  tilt?: number;
  /** Arms at the left and the right of the page; they rest on the blanket where left out. */
  left?: Reach;
  right?: Reach;
}

const WHERE: Record<Eyes, readonly [number, number]> = {
  open: [0, 0],
  shut: [0, 0],
  up: [0, -1],
  down: [0, 1],
  left: [-1, 0.1],
  right: [1, 0.1],
};

function eyes(f: HeadFrame, look: Eyes): Shape[] {
  const { spread, eyes: y } = f.form;
  const [a, b] = [f.p(-spread, y), f.p(spread, y)];
  const r = f.radius;
  if (look === 'shut')
    return [
      {
        d: [-spread, spread]
          .map((x) => smooth([f.p(x - 0.17, y), f.p(x, y + 0.1), f.p(x + 0.17, y)]))
          .join(''),
        line: 'ink',
        weight: f.weight,
      },
    ];
  if (look === 'open') return [dots([a, b], r * 0.2)];
  const [dx, dy] = WHERE[look];
  const pupils = [a, b].map((p) => plus(p, at(dx * r * 0.085, dy * r * 0.085)));
  return [dots([a, b], r * 0.42), dots([a, b], r * 0.31, 'white'), dots(pupils, r * 0.19)];
}

function mouth(f: HeadFrame, look: Mouth): Shape {
  const y = f.form.mouth;
  const open = (rx: number, ry: number, dy = 0): Shape => ({
    d: oval(f.p(0, y + dy), rx * f.radius, ry * f.radius, f.angle),
    fill: 'mouth',
    line: 'ink',
    weight: f.weight * 0.8,
  });
  const line = (flat: readonly number[]): Shape => ({
    d: smooth(points(flat).map((p) => f.p(p.x, y + p.y))),
    line: 'ink',
    weight: f.weight,
  });
  switch (look) {
    case 'calm':
      return line([-0.16, -0.01, 0, 0.04, 0.16, -0.01]);
    case 'smile':
      return line([-0.27, -0.06, 0, 0.1, 0.27, -0.06]);
    case 'laugh':
      return {
        d: smooth(
          points([-0.36, -0.14, 0, -0.04, 0.36, -0.14, 0.25, 0.14, 0, 0.25, -0.25, 0.14]).map((p) =>
            f.p(p.x, y + p.y),
          ),
          true,
          0.8,
        ),
        fill: 'mouth',
        line: 'ink',
        weight: f.weight * 0.8,
      };
    case 'speaking':
      return open(0.17, 0.12);
    case 'wide':
      return open(0.26, 0.22, 0.02);
    case 'blowing':
      return open(0.08, 0.09);
  }
}

/** The child's head: ears, face, what eyes and mouth do, hair. */
export function childHead(c: ChildLook, age: DrawnAge): Shape[] {
  const form = headForm(age);
  const [center, r, angle] = [at(c.x, c.y), c.r, c.tilt ?? 0];
  const p = (x: number, y: number): Point => turn(plus(center, at(x * r, y * r)), center, angle);
  const both = (pairs: readonly (readonly [number, number])[]): [Point[], Point[]] => [
    pairs.map(([x, y]) => p(x, y)),
    pairs.map(([x, y]) => p(-x, y)),
  ];
  const f: HeadFrame = { form, radius: r, angle, p, both, weight: Math.max(1.5, r * 0.075) };
  const half: [number, number][] = [
    [form.cheek, form.eyes],
    [form.jaw, 0.6],
    [form.chin, 0.93],
  ];
  const [right, left] = both(half);
  const brow = c.eyes === 'up' || c.mouth === 'wide' ? -0.4 : -0.3;
  const brows = both([
    [form.spread - 0.15, form.eyes + brow + 0.03],
    [form.spread, form.eyes + brow],
    [form.spread + 0.17, form.eyes + brow + 0.07],
  ]);
  const nose = [p(-0.06, form.nose), p(0, form.nose + 0.05), p(0.07, form.nose - 0.01)];
  const lobes = both([[form.cheek + 0.03, form.eyes + 0.12]]).flat();
  return [
    dots(lobes, r * 0.36 + 2),
    dots(lobes, r * 0.36 - 2, 'skin'),
    {
      d: smooth([p(0, -1), p(0.6, -0.72), ...right, ...left.reverse(), p(-0.6, -0.72)], true),
      fill: 'skin',
      line: 'ink',
      weight: 2,
    },
    ...eyes(f, c.eyes ?? 'open'),
    { d: brows.map((b) => smooth(b)).join('') + smooth(nose), line: 'ink', weight: f.weight * 0.9 },
    mouth(f, c.mouth ?? 'calm'),
    { ...hairInFront(f, 'short')[0]!, weight: 2 },
  ];
}

const CHILD = { cloth: 'gown', skin: 'skin' };

/** The child's two arms; those that do not meet are drawn as one, line by line. */
function bothArms(shoulder: (side: 1 | -1) => Point, left: Reach, right: Reach, width: number): Shape[] {
  const one = (reach: Reach, side: 1 | -1) => arm(shoulder(side), reach, side, width, CHILD);
  const [a, b] = [one(left, -1), one(right, 1)];
  if (Math.abs(left[0] - right[0]) < 24 || a.length !== b.length) return [...a, ...b];
  const both = a.map((shape, i) => ({ ...shape, d: shape.d + b[i]!.d }));
  // the two bare lines come first; of arms at rest nothing of them is seen
  const rests = isSleeved(shoulder(-1), left, -1, width) && isSleeved(shoulder(1), right, 1, width);
  return rests ? both.slice(2) : both;
}

/** The gown from its neck down to where the blanket begins. */
const gown = ({ x, r }: ChildLook, neck: number, w: number, hem: number): Shape =>
  brush().soft(
    [
      ...[x - r * 0.3, neck - 3, x - w * 0.85, neck + r * 0.15, x - w, hem],
      ...[x + w, hem, x + w * 0.85, neck + r * 0.15, x + r * 0.3, neck - 3, x, neck + r * 0.35],
    ],
    'gown',
    2.2,
    0.6,
  );

export interface BedLayers {
  behind: Shape[];
  arms: Shape[];
}

/** The child lying flat, as seen from above the bed's end: pillow, chest, blanket; arms come later. */
export function childInBed(c: ChildLook, age: DrawnAge, bedRight: number): BedLayers {
  const { x, y, r } = c;
  const p = brush();
  const [neck, hem] = [y + r * 0.95, Math.min(y + r * 1.85, 112)];
  const w = r * 1.3;
  const pillow = points(
    [-1.9, -0.75, -1.5, -1.2, 1.5, -1.2, 1.9, -0.75, 1.75, 0.9, 1.4, 1.15, -1.4, 1.15, -1.75, 0.9],
    at(x, y),
    r,
  );
  const shoulder = (side: 1 | -1) => at(x + side * w * 0.72, neck + r * 0.42);
  const rest = (side: 1 | -1): Reach => [x + side * w * 0.98, hem - 3, side === 1 ? 118 : 62];
  return {
    behind: [
      { d: smooth(pillow, true, 0.7), fill: 'pillow', line: 'ink', weight: 2.4 },
      gown(c, neck, w, 119),
      ...childHead(c, age),
      p.soft(
        [
          1.2,
          hem + 3,
          bedRight * 0.27,
          hem - 2,
          bedRight * 0.72,
          hem - 2,
          bedRight,
          hem + 3,
          bedRight,
          119,
          1.2,
          119,
        ],
        'blanket',
        2.6,
        0.5,
      ),
      ...(hem < 108
        ? [
            p.strokes(
              [[2, hem + 9, bedRight * 0.27, hem + 5, bedRight * 0.72, hem + 5, bedRight - 1, hem + 9]],
              1.6,
            ),
          ]
        : []),
    ],
    arms: bothArms(shoulder, c.left ?? rest(-1), c.right ?? rest(1), r * 0.38 + 1.4),
  };
}

/** The child against the raised head of the bed, a tray over the lap. */
export function childAtTray(c: ChildLook, age: DrawnAge): BedLayers {
  const { x, y, r } = c;
  const p = brush();
  const neck = y + r * 0.95;
  const w = r * 1.35;
  const shoulder = (side: 1 | -1) => at(x + side * w * 0.78, neck + r * 0.5);
  const rest = (side: 1 | -1): Reach => [x + side * w * 1.05, 86, side === 1 ? 112 : 68];
  return {
    behind: [
      p.soft(
        [
          x - r * 2,
          84,
          x - r * 2.1,
          y - r * 0.6,
          x - r * 1.6,
          y - r * 1.15,
          x + r * 1.6,
          y - r * 1.15,
          x + r * 2.1,
          y - r * 0.6,
          x + r * 2,
          84,
        ],
        'pillow',
        2.4,
        0.6,
      ),
      gown(c, neck, w, 90),
      ...childHead(c, age),
      p.flat([1.2, 119, 1.2, 88, 118.8, 88, 118.8, 119], 'blanket', 2.4),
      p.flat([14, 76, 106, 76, 115, 110, 5, 110], 'plate', 2.6),
      p.flat([5, 110, 115, 110, 115, 116, 5, 116], 'frame', 2.2),
    ],
    arms: bothArms(shoulder, c.left ?? rest(-1), c.right ?? rest(1), r * 0.38 + 1.4),
  };
}

/** A face close by, with the shoulders under it: no bed is seen. In a game the child's body may be of stone. */
export type NearFace = Omit<ChildLook, 'left' | 'right'> & { grown?: true; stone?: true };

/** The child on the pillow, or a grown-up with longer hair, from the front and as near as in a talk. */
export function nearFace(f: NearFace, age: DrawnAge): Shape[] {
  const { x, y, r } = f;
  const own = (flat: readonly number[], fill: string, ease: number) => ({
    d: smooth(points(flat, at(x, y), r), true, ease),
    fill,
    line: 'ink',
    weight: 2.4,
  });
  return [
    ...(f.stone
      ? []
      : f.grown
        ? [own([0, -1.2, 0.98, -0.8, 1.12, 0.2, 0.9, 1.05, -0.9, 1.05, -1.12, 0.2, -0.98, -0.8], 'hair', 0.9)]
        : [own([-1.8, -0.7, -1.4, -1.2, 1.4, -1.2, 1.8, -0.7, 1.7, 1, -1.7, 1], 'pillow', 0.6)]),
    own(
      f.stone
        ? [
            -0.32, 0.85, -1.15, 1.15, -1.3, 1.6, -0.9, 2, -0.45, 2.4, 0.45, 2.4, 0.9, 2, 1.3, 1.6, 1.15, 1.15,
            0.32, 0.85, 0, 1.1,
          ]
        : [-0.34, 0.85, -1.1, 1.2, -1.35, 4, 1.35, 4, 1.1, 1.2, 0.34, 0.85, 0, 1.25],
      f.stone ? 'metal' : f.grown ? 'bag' : 'gown',
      0.6,
    ),
    ...childHead(f, f.grown ? 14 : age),
  ];
}
