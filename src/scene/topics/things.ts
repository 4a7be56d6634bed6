/** Things that stand about in the pictures of topics, each placed by its middle and its size. */
import { oval, at, straight, type Shape } from '../shapes.ts';
import { arc } from '../parts/points.ts';
import { toeRow } from '../things/toes.ts';
import { box } from '../play/brush.ts';
import { ink, small } from './page.ts';

/** The ward's handset on its lead. */
export function handset(x: number, y: number, scale: number, turned = 0): Shape[] {
  const p = small(x, y, scale, turned);
  return [
    p.stroke([60, 104, 58, 112, 46, 120, 26, 118, 4, 122], 9),
    p.stroke([60, 104, 58, 112, 46, 120, 26, 118, 4, 122], 4, 'pad'),
    p.soft([60, 8, 80, 14, 86, 34, 80, 80, 72, 104, 48, 104, 40, 80, 34, 34, 40, 14], 'sheet', 4),
    p.ring([60, 42, 19, 19], 'pad', 3.6),
    p.ring([60, 42, 12, 12], 'mark', 3.2),
  ];
}

/** A glass of water, filled up to a share of its height. */
export function glass(x: number, y: number, scale: number, full = 0.6): Shape[] {
  const p = small(x, y, scale);
  const top = 110 - 80 * full;
  const lean = (110 - top) * 0.04;
  return [
    p.flat([28, 24, 92, 24, 84, 112, 36, 112], 'white'),
    p.flat([32 + lean, top, 88 - lean, top, 83, 109, 37, 109], 'tear', 2),
  ];
}

/** A straw that bends, its lower end in a glass drawn after it. */
export const straw = (x: number, y: number, scale: number): Shape[] => {
  const p = small(x, y, scale);
  return [p.rule([[62, 96, 74, 10, 100, 0]], 10), p.rule([[62, 96, 74, 10, 100, 0]], 5, 'white')];
};

/** A mug, steaming. */
export function mug(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.stroke([88, 58, 110, 58, 106, 90, 86, 92], 7),
    p.flat([20, 44, 92, 44, 86, 114, 26, 114], 'plate', 3.4),
    p.ring([56, 44, 36, 8], 'brown', 3),
    p.strokes(
      [
        [44, 30, 50, 20, 42, 10, 48, 0],
        [66, 30, 72, 20, 64, 10, 70, 0],
      ],
      3,
      'soft',
    ),
  ];
}

/** An apple with a leaf. */
export function apple(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.soft(
      [60, 34, 86, 24, 108, 46, 102, 84, 78, 110, 60, 104, 42, 110, 18, 84, 12, 46, 34, 24],
      'red',
      4,
      0.9,
    ),
    p.stroke([60, 36, 60, 20, 68, 8], 5),
    p.soft([66, 20, 84, 8, 98, 14, 84, 24], 'wet', 3, 0.9),
  ];
}

/** An open door: the frame, what is behind it, and the leaf. */
export function door(left: number, top: number, w: number, floor: number, open = 0.4): Shape[] {
  const right = left + w;
  const leaf = right + w * open;
  return [
    ink.flat(box(left - 7, top - 7, right + 7, floor), 'frame', 2.6),
    ink.flat(box(left, top, right, floor), 'sheet', 2.6),
    ink.flat([right, top, leaf, top - 8, leaf, floor + 12, right, floor], 'plate', 2.6),
    ink.dots([leaf - 8, (top + floor) / 2 + 6], 7),
  ];
}

/** A window with four panes. */
export const windowOf = (x: number, y: number, w: number, h: number): Shape[] => [
  ink.flat(box(x, y, x + w, y + h), 'frame', 2.6),
  ink.flat(box(x + 6, y + 6, x + w - 6, y + h - 6), 'tear', 2),
  ink.rule(
    [
      [x + w / 2, y + 6, x + w / 2, y + h - 6],
      [x + 6, y + h / 2, x + w - 6, y + h / 2],
    ],
    5,
    'frame',
  ),
  ink.flat(box(x - 7, y + h, x + w + 7, y + h + 9), 'plate', 2.4),
];

/** The moon as a sickle. */
export const moon = (x: number, y: number, scale: number): Shape =>
  small(x, y, scale).soft(
    [74, 12, 50, 16, 28, 38, 26, 70, 46, 98, 80, 102, 96, 90, 70, 84, 56, 62, 58, 36],
    'band',
    4,
    0.9,
  );

/** The sun with its rays. */
export function sun(x: number, y: number, r: number): Shape[] {
  const rays = Array.from({ length: 8 }, (_, i) => {
    const a = (i / 8) * 2 * Math.PI;
    const [c, s] = [Math.cos(a), Math.sin(a)];
    return [x + c * r * 1.4, y + s * r * 1.4, x + c * r * 1.85, y + s * r * 1.85];
  });
  return [ink.rule(rays, 3), ink.ring([x, y, r, r], 'band', 2.6)];
}

/** A lamp on a table, its light below the shade. */
export function lamp(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  const light = p.flat([26, 54, 94, 54, 122, 116, -2, 116], 'band');
  return [
    { d: light.d, fill: 'band' },
    p.flat([55, 54, 65, 54, 67, 98, 80, 112, 40, 112, 53, 98], 'metal', 3),
    p.flat([42, 10, 78, 10, 98, 56, 22, 56], 'blanket', 3),
  ];
}

/** A curtain on its rail, drawn from one x to the other. */
export function curtain(from: number, to: number, top: number, bottom: number, folds = 4): Shape[] {
  const step = (to - from) / folds;
  const hem = Array.from({ length: folds * 2 + 1 }, (_, i) => [
    to - (i * step) / 2,
    bottom + (i % 2 === 0 ? -3 : 3),
  ]).flat();
  const lines = Array.from({ length: folds - 1 }, (_, i) => {
    const x = from + step * (i + 1);
    return [x, top + 4, x - 3, (top + bottom) / 2, x, bottom - 4];
  });
  const rings = Array.from({ length: folds + 1 }, (_, i) => [from + step * i, top]);
  return [
    ink.soft([from, top, to, top, ...hem], 'gown', 2.6, 0.25),
    ink.strokes(lines, 2, 'soft'),
    ink.dots(rings.flat(), 5),
  ];
}

/** The rail a curtain runs on. */
export const rail = (from: number, to: number, y: number): Shape[] => [
  ink.rule([[from, y, to, y]], 7),
  ink.rule([[from, y, to, y]], 2.6, 'metal'),
];

/** A clock's face without figures. */
export function clock(x: number, y: number, r: number): Shape[] {
  const on = (degrees: number, k: number): [number, number] => {
    const a = ((degrees - 90) * Math.PI) / 180;
    return [x + Math.cos(a) * r * k, y + Math.sin(a) * r * k];
  };
  const marks = Array.from({ length: 12 }, (_, i) => [
    ...on(i * 30, 0.9),
    ...on(i * 30, i % 3 === 0 ? 0.76 : 0.83),
  ]);
  return [ink.ring([x, y, r, r], 'white', 3), ink.rule(marks, 2.2)];
}

/** The two hands of a clock, in degrees from the top. */
export const hands = (x: number, y: number, r: number, hour: number, minute: number): Shape => {
  const on = (degrees: number, k: number) => {
    const a = ((degrees - 90) * Math.PI) / 180;
    return [x + Math.cos(a) * r * k, y + Math.sin(a) * r * k];
  };
  return ink.rule(
    [
      [x, y, ...on(hour, 0.46)],
      [x, y, ...on(minute, 0.7)],
    ],
    4.4,
  );
};

/** Toes from the big one outward: middle, tip, half width. */
const TOES = [
  [34, 50, 13.5],
  [55, 57, 8.6],
  [70, 61, 7.8],
  [83, 67, 6.8],
  [94, 75, 5.6],
] as const;

/** A bare foot's toes over a hem, seen from the foot end: 1 is the left foot, −1 the right. */
export function toes(x: number, y: number, scale: number, side: 1 | -1 = 1, weight = 3.4): Shape[] {
  const p = small(x, y, scale);
  return toeRow(
    p,
    TOES.map(([a, b, c]) => [side === 1 ? a : 120 - a, b, c] as const),
    104,
    weight,
  );
}

/** Sound, call or movement that goes out from a place. */
export const arcs = (
  x: number,
  y: number,
  radii: readonly number[],
  from: number,
  to: number,
  weight = 4,
): Shape => ({
  d: radii.map((r) => arc(at(x, y), r, from, to)).join(''),
  line: 'mark',
  weight,
});

/** An arrow along a soft line; the head is at its end. */
export function arrow(flat: readonly number[], weight = 4.4, line = 'mark', size = 9): Shape[] {
  const [x, y] = flat.slice(-2) as [number, number];
  const [px, py] = flat.slice(-4, -2) as [number, number];
  const a = Math.atan2(y - py, x - px);
  const wing = (turned: number) => [x - Math.cos(a + turned) * size, y - Math.sin(a + turned) * size];
  return [ink.stroke(flat, weight, line), ink.rule([[...wing(0.6), x, y, ...wing(-0.6)]], weight, line)];
}

/** A white field for what is said; its tail points to the mouth. */
export function bubble(x: number, y: number, w: number, h: number, toX: number, toY: number): Shape[] {
  const long = Math.hypot(toX - x, toY - y) || 1;
  const [nx, ny] = [((toY - y) / long) * 9, ((x - toX) / long) * 9];
  const tail = straight([at(x + nx, y + ny), at(toX, toY), at(x - nx, y - ny)], true);
  return [
    { d: tail, fill: 'white', line: 'ink' },
    { d: oval(at(x, y), w / 2, h / 2), fill: 'white', line: 'ink' },
    { d: tail, fill: 'white' },
  ];
}

/** A white field without a tail. */
export const bulb = (x: number, y: number, w: number, h: number): Shape => ({
  d: oval(at(x, y), w / 2, h / 2),
  fill: 'white',
  line: 'ink',
});

/** A soft toy sitting. */
export function toy(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.ring([34, 22, 14, 14, 86, 22, 14, 14], 'plate', 4),
    p.soft([60, 66, 88, 80, 92, 108, 60, 116, 28, 108, 32, 80], 'plate', 4),
    p.ring([60, 44, 36, 32], 'plate', 4),
    p.ring([60, 54, 16, 12], 'band', 3),
    p.dots([46, 38, 74, 38, 60, 50], 8),
  ];
}

/** Wall and floor behind a scene. */
export const room = (floor: number, wall = ''): Shape[] => [
  ...(wall ? [{ d: straight([at(0, 0), at(400, 0), at(400, floor), at(0, floor)], true), fill: wall }] : []),
  { d: straight([at(0, floor), at(400, floor), at(400, 300), at(0, 300)], true), fill: 'floor' },
];

/** The hanging weight below the end of its cord. */
export const weight = (x: number, y: number, k: number): Shape[] => [
  ink.ring([x, y + 5 * k, 4.4 * k, 5 * k], 'metal', 2),
  ink.soft(
    [-8, 10, 8, 10, 17, 24, 19, 48, 12, 58, -12, 58, -19, 48, -17, 24].map((v, i) => (i % 2 ? y : x) + v * k),
    'bag',
    2.6,
    0.9,
  ),
  ink.strokes([[x - 8 * k, y + 18 * k, x, y + 20 * k, x + 8 * k, y + 18 * k]], 1.8),
];
