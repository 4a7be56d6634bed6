/** The drawn child in bed, and the grown-up beside it, light enough to stand in a list of ideas. */
import type { DrawnAge } from '../spec.ts';
import { at, oval, plus, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { headForm, type HeadFrame } from '../parts/head.ts';
import { hairInFront } from '../parts/hair.ts';
import { drawHand, type HandPose } from '../parts/hand.ts';
import { points } from '../parts/points.ts';
import { brush, dots } from './brush.ts';

export type Eyes = 'open' | 'shut' | 'up' | 'down' | 'left' | 'right';
export type Mouth = 'calm' | 'smile' | 'speaking' | 'wide' | 'blowing';
/** Wrist, direction of the fingers in degrees, and what the hand does; a resting hand where left out. */
export type Reach = readonly [x: number, y: number, points: number, pose?: HandPose | 'none'];

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

/** A hand so small that its fingers would run together. */
const MITT = [
  0, -0.27, 0.5, -0.35, 0.97, -0.22, 1.04, 0.06, 0.78, 0.29, 0.64, 0.32, 0.62, 0.5, 0.42, 0.48, 0, 0.27,
];

function smallHand(
  [x, y, angle, pose = 'rest']: Reach,
  length: number,
  thumb: 1 | -1,
  fill: string,
): Shape[] {
  if (pose === 'none') return [];
  const wrist = at(x, y);
  if (pose !== 'rest')
    return drawHand(wrist, length * 1.15, angle, pose, thumb, fill)
      .slice(0, 1)
      .map((s) => ({ ...s, weight: 2 }));
  const outline = points(MITT, at(0, 0), length, thumb * length).map((p) =>
    turn(plus(wrist, p), wrist, angle),
  );
  return [{ d: smooth(outline, false, 0.9), fill, line: 'ink', weight: 2 }];
}

/** An arm as two lines, the wide one in ink: sleeve down to the elbow, then bare to the wrist. */
export function arm(
  shoulder: Point,
  reach: Reach,
  side: 1 | -1,
  width: number,
  colours: { cloth: string; skin: string },
): Shape[] {
  const wrist = at(reach[0], reach[1]);
  const long = Math.hypot(wrist.x - shoulder.x, wrist.y - shoulder.y);
  const elbow = at(
    (shoulder.x + wrist.x) / 2 + side * Math.min(9, width * 0.9),
    (shoulder.y + wrist.y) / 2 + Math.max(2, 12 - long * 0.2),
  );
  const on = (t: number) =>
    at(
      (1 - t) ** 2 * shoulder.x + 2 * t * (1 - t) * elbow.x + t * t * wrist.x,
      (1 - t) ** 2 * shoulder.y + 2 * t * (1 - t) * elbow.y + t * t * wrist.y,
    );
  const bare = smooth([on(0.3), on(0.65), wrist]);
  const sleeve = smooth([shoulder, on(0.25), on(0.5)]);
  return [
    { d: bare, line: 'ink', weight: width },
    { d: bare, line: colours.skin, weight: width - 4 },
    ...smallHand(reach, width * 1.45, thumbOf(reach, side), colours.skin),
    { d: sleeve, line: 'ink', weight: width + 5 },
    { d: sleeve, line: colours.cloth, weight: width + 1 },
  ];
}

/** The thumb lies on the side of the middle of the body. */
const thumbOf = ([, , angle]: Reach, side: 1 | -1): 1 | -1 => {
  const up = Math.sin((angle * Math.PI) / 180) < -0.3;
  return (up ? -side : side) as 1 | -1;
};

const CHILD = { cloth: 'gown', skin: 'skin' };

/** Two arms that do not meet are drawn as one, line by line. */
function bothArms(left: Shape[], right: Shape[], apart: number): Shape[] {
  if (apart < 24 || left.length !== right.length) return [...left, ...right];
  return left.map((shape, i) => ({ ...shape, d: shape.d + right[i]!.d }));
}

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
      p.soft(
        [
          x - r * 0.3,
          neck - 3,
          x - w * 0.85,
          neck + r * 0.15,
          x - w,
          119,
          x + w,
          119,
          x + w * 0.85,
          neck + r * 0.15,
          x + r * 0.3,
          neck - 3,
          x,
          neck + r * 0.35,
        ],
        'gown',
        2.2,
        0.6,
      ),
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
    arms: bothArms(
      arm(shoulder(-1), c.left ?? rest(-1), -1, r * 0.38 + 1.4, CHILD),
      arm(shoulder(1), c.right ?? rest(1), 1, r * 0.38 + 1.4, CHILD),
      Math.abs((c.left ?? rest(-1))[0] - (c.right ?? rest(1))[0]),
    ),
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
      p.soft(
        [
          x - r * 0.3,
          neck - 3,
          x - w * 0.85,
          neck + r * 0.15,
          x - w,
          90,
          x + w,
          90,
          x + w * 0.85,
          neck + r * 0.15,
          x + r * 0.3,
          neck - 3,
          x,
          neck + r * 0.35,
        ],
        'gown',
        2.2,
        0.6,
      ),
      ...childHead(c, age),
      p.flat([1.2, 119, 1.2, 88, 118.8, 88, 118.8, 119], 'blanket', 2.4),
      p.flat([14, 76, 106, 76, 115, 110, 5, 110], 'plate', 2.6),
      p.flat([5, 110, 115, 110, 115, 116, 5, 116], 'frame', 2.2),
    ],
    arms: bothArms(
      arm(shoulder(-1), c.left ?? rest(-1), -1, r * 0.38 + 1.4, CHILD),
      arm(shoulder(1), c.right ?? rest(1), 1, r * 0.38 + 1.4, CHILD),
      Math.abs((c.left ?? rest(-1))[0] - (c.right ?? rest(1))[0]),
    ),
  };
}

export interface GrownLook {
  /** Middle of the head; at the right edge, level with the child, where left out. */
  x?: number;
  y?: number;
  mouth?: 'shut' | 'speaking' | 'wide' | 'blowing';
  /** How far the head is bowed over the bed, in degrees. */
  bow?: number;
  eyes?: 'open' | 'shut';
  hand?: Reach;
  /** A nurse is known by the plain tunic and the knot of hair. */
  nurse?: true;
  /** The face is not seen: a cloth is in front of it. */
  hidden?: true;
  /** The child leans on the grown-up and is drawn over them. */
  held?: true;
}

const LIPS = {
  shut: [-0.8, 0.36, -0.74, 0.43, -0.8, 0.5],
  speaking: [-0.83, 0.34, -0.6, 0.43, -0.77, 0.55],
  wide: [-0.82, 0.26, -0.4, 0.42, -0.72, 0.68],
  blowing: [-0.94, 0.37, -0.84, 0.43, -0.92, 0.5],
} as const;

/** The grown-up at the right side of the bed, from the side, turned to the child. */
export function grownUp(g: GrownLook): { behind: Shape[]; arm: Shape[] } {
  const { x = 99, y = 42, bow = 0, mouth: lips = 'shut' } = g;
  const r = 18;
  const p = brush();
  const center = at(x, y);
  const put = (flat: readonly number[]) => points(flat, center, r).map((q) => turn(q, center, -bow));
  const cloth = g.nurse ? 'wet' : 'bag';
  const skin = g.nurse ? 'hand' : 'skin';
  const drop = lips === 'wide' ? 0.12 : 0;
  const face = [
    0.34,
    1.05,
    0.4,
    0.5,
    0.4,
    -0.7,
    -0.4,
    -0.85,
    -0.7,
    -0.42,
    -0.7,
    -0.08,
    -0.92,
    0.18,
    -0.76,
    0.27,
    ...LIPS[lips],
    -0.72,
    0.82 + drop,
    -0.5,
    0.96 + drop,
    -0.24,
    0.86 + drop,
    -0.2,
    1.1,
  ];
  const hair = g.nurse
    ? [
        0.06, 0.3, 0.4, 0.5, 0.8, 0.36, 0.98, -0.2, 0.66, -0.92, 0, -1.14, -0.6, -0.92, -0.76, -0.5, -0.14,
        -0.5, 0.04, -0.16,
      ]
    : [
        0.1, 0.12, 0.34, 0.4, 0.64, 0.66, 0.94, 0, 0.68, -0.9, 0, -1.14, -0.6, -0.94, -0.8, -0.56, -0.1,
        -0.52, 0.02, -0.16,
      ];
  const eye = put([-0.46, -0.1]);
  const reach = g.hand;
  const shoulder = at(Math.min(x + 3, 108), y + 40);
  return {
    behind: [
      p.soft(
        [
          x - 9,
          119,
          x - 12,
          y + 46,
          x - 8,
          y + 26,
          x + 4,
          y + 20,
          Math.min(x + 18, 118.8),
          y + 26,
          118.8,
          y + 40,
          118.8,
          119,
        ],
        cloth,
        2.6,
        0.5,
      ),
      ...(g.nurse ? [p.ring([x + 20, y - 6, 5.4, 6.2], 'hair', 2.2)] : []),
      { d: smooth(put(face), false, 0.8), fill: skin, line: 'ink', weight: 2.2 },
      { d: smooth(put(hair), true, 0.9), fill: 'hair', line: 'ink', weight: 2.2 },
      ...(g.hidden
        ? []
        : g.eyes === 'shut'
          ? [{ d: smooth(put([-0.62, -0.08, -0.48, 0, -0.34, -0.08])), line: 'ink', weight: 1.7 }]
          : [dots(eye, 3)]),
      { d: smooth(put([-0.34, -0.32, -0.48, -0.38, -0.64, -0.32])), line: 'ink', weight: 1.6 },
    ],
    arm: reach ? arm(shoulder, reach, 1, 11, { cloth, skin }) : [],
  };
}

/** Whose hand is seen close, which pose, the wrist, its length, where its fingers point. */
export type NearHand = readonly [
  who: 'child' | 'grown' | 'nurse' | 'bare',
  pose: HandPose,
  x: number,
  y: number,
  length: number,
  points: number,
  thumb?: 1 | -1,
];

/** Nails tell the back of a hand from its palm: hand lengths from the wrist, along each finger's end. */
const NAILS: Record<HandPose, readonly number[]> = {
  rest: [0.9, -0.22, 0.99, -0.07, 1, 0.07, 0.89, 0.17],
  spread: [0.58, -0.53, 0.95, -0.35, 1.02, 0.03, 0.85, 0.35, 0.32, 0.65],
  point: [1.03, -0.16],
  fist: [],
};

const SLEEVE = { child: 'gown', grown: 'bag', nurse: 'wet', bare: 'gown' } as const;

/** Hands close by, each with its arm and sleeve coming in from the edge of the picture. */
export function nearHand([who, pose, x, y, length, angle, thumb = 1]: NearHand): Shape[] {
  const wrist = at(x, y);
  const fill = who === 'nurse' ? 'hand' : 'skin';
  const hand = drawHand(wrist, length, angle, pose, thumb, fill).map((s, i): Shape => ({
    ...s,
    weight: i === 0 ? 2.6 : 1.5,
  }));
  const nails = points(NAILS[pose], at(0, 0), length, thumb * length).map((p) =>
    turn(plus(wrist, p), wrist, angle),
  );
  if (nails.length > 0) hand.push(dots(nails, Math.max(2.6, length * 0.08), 'nail'));
  if (who === 'bare') return hand;
  const a = (angle * Math.PI) / 180;
  const along = at(Math.cos(a), Math.sin(a));
  const away = [
    along.x > 0 ? x / along.x : (x - 120) / along.x,
    along.y > 0 ? y / along.y : (y - 120) / along.y,
  ].filter((t) => Number.isFinite(t));
  const edge = Math.min(...away) - 1;
  const quad = (from: number, to: number, half: number, spread = half) =>
    straight(
      [
        [from, -spread],
        [to, -half],
        [to, half],
        [from, spread],
      ].map(([s, t]) => turn(at(x - s! * 1, y + t!), wrist, angle)),
      true,
    );
  const cuff = Math.min(length * 0.22, edge * 0.6);
  const end = edge + length * 0.3;
  return [
    { d: quad(end, -length * 0.14, length * 0.25), fill, line: 'ink', weight: 2.6 },
    ...hand,
    { d: quad(end, cuff, length * 0.36, length * 0.42), fill: SLEEVE[who], line: 'ink', weight: 2.6 },
  ];
}
