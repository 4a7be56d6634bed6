/** One bare foot: leg, instep, five toes with their nails, and the changes that show on its skin. */
import type { SceneSpec, ToneShift } from '../spec.ts';
import { hatch, oval, ring, smooth, straight, type Point, type Shape } from '../shapes.ts';
import type { Foot } from './layout.ts';

export interface FootLook {
  shift: ToneShift;
  swell: SceneSpec['swell'];
  numb: boolean;
  young: boolean;
}

const FINE = 1.5;

/** Round dots as one path: a line of no length with a round end. */
export const dots = (points: readonly Point[]): string => points.map((p) => straight([p, p])).join('');

const inside = (polygon: readonly Point[], p: Point): boolean => {
  let odd = false;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a.y <= p.y !== b.y <= p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  });
  return odd;
};

/** Places of an even, shifted grid inside a polygon. */
export function stipple(polygon: readonly Point[], gap: number): Point[] {
  const [xs, ys] = [polygon.map((p) => p.x), polygon.map((p) => p.y)];
  const found: Point[] = [];
  let row = 0;
  for (let y = Math.min(...ys) + gap / 2; y < Math.max(...ys); y += gap * 0.87, row++)
    for (let x = Math.min(...xs) + (row % 2 ? gap / 2 : 0); x < Math.max(...xs); x += gap)
      if (inside(polygon, { x, y })) found.push({ x, y });
  return found;
}

const blotches = (foot: Foot): Point[][] => {
  const [big, second, third, fourth, little] = foot.toes as [
    Foot['toes'][0],
    Foot['toes'][0],
    Foot['toes'][0],
    Foot['toes'][0],
    Foot['toes'][0],
  ];
  const on = (toe: Foot['toes'][0], s: number) => ({
    x: toe.base.x + (toe.tip.x - toe.base.x) * s,
    y: toe.base.y + (toe.tip.y - toe.base.y) * s,
  });
  return [
    ring(on(big, 0.3), big.width * 0.36, 13, 20),
    ring(on(big, -0.32), 21, 11, -15),
    ring(on(second, -0.25), 11, 14, 10),
    ring(on(third, 0.42), third.width * 0.4, 13, 0),
    ring(on(fourth, -0.35), 17, 11, 35),
    ring(on(little, 0.45), little.width * 0.38, 11, 0),
  ];
};

/** A change of colour is told by its own hatching too, so that it shows without colour. */
function shiftHatch(foot: Foot, shift: ToneShift): Shape[] {
  switch (shift) {
    case 'none':
      return [];
    case 'paler':
      return [{ d: hatch(foot.front, 8, 90), line: 'ink', weight: 1.3, dash: '7 6' }];
    case 'blue-grey':
      return [{ d: hatch(foot.front, 6, 45), line: 'ink', weight: 1.5 }];
    case 'dusky-dark':
      return [{ d: hatch(foot.front, 6, 40) + hatch(foot.front, 6, -40), line: 'ink', weight: 1.5 }];
    case 'blotched':
      return blotches(foot).flatMap((patch) => [
        { d: smooth(patch, true), fill: 'shift', line: 'ink', weight: 1.2, dash: '3 3' },
        { d: hatch(patch, 5, 20), line: 'ink', weight: 1.5 },
      ]);
  }
}

export function drawFoot(foot: Foot, look: FootLook): Shape[] {
  const whole = look.shift !== 'none' && look.shift !== 'blotched';
  const toeFill = whole ? 'shift' : 'skin';
  const smoothSkin = look.swell > 0;
  const outline: Pick<Shape, 'line' | 'dash'> = look.numb ? { line: 'ink', dash: '5 5' } : { line: 'ink' };
  const front = foot.toes.map((toe) => ({
    x: (toe.base.x * 2 + toe.tip.x) / 3,
    y: (toe.base.y * 2 + toe.tip.y) / 3,
  }));
  const body = smooth([...foot.inner, ...front, ...foot.outer.slice().reverse()], true, 0.9);
  const lines = foot.toes.map((toe) => smooth(toe.outline)).join('');
  return [
    { d: smooth(foot.shadow, true), fill: 'floor' },
    { d: body, fill: 'skin' },
    ...(whole
      ? [
          {
            d: smooth(
              foot.front
                .slice(-5)
                .concat(foot.outer.slice(-3), front.slice().reverse(), foot.inner.slice(-3).reverse()),
              true,
              0.7,
            ),
            fill: 'shift',
          },
        ]
      : []),
    { d: smooth(foot.inner) + smooth(foot.outer), line: 'ink' },
    ...foot.toes.map((toe) => ({ d: smooth(toe.outline) + 'Z', fill: toeFill })),
    { d: foot.toes.map((toe) => smooth(toe.pad, true)).join(''), fill: whole ? 'shift' : 'sole' },
    ...shiftHatch(foot, look.shift),
    ...(look.numb ? [{ d: dots(stipple(foot.front, 10.5)), line: 'ink', weight: 4 }] : []),
    { d: lines, ...outline },
    {
      d: foot.toes.map((toe) => smooth(toe.nail, true, 0.7)).join(''),
      fill: whole ? 'shift' : 'nail',
      line: 'ink',
      weight: FINE,
    },
    { d: foot.toes.map((toe) => smooth(toe.nailEdge)).join(''), line: 'white', weight: FINE },
    ...(smoothSkin
      ? [
          {
            d: foot.toes.map((toe) => smooth(toe.shine)).join(''),
            line: 'white',
            weight: look.swell === 2 ? 4 : 3,
          },
        ]
      : [
          {
            d: foot.toes.flatMap((toe) => toe.creases.map((c) => smooth(c))).join(''),
            line: 'ink',
            weight: 1.3,
          },
          {
            d: (look.young ? foot.folds : foot.tendons).map((t) => smooth(t)).join(''),
            line: 'skin-shade',
            weight: 2,
          },
        ]),
    { d: ankle(foot.innerAnkle, 1) + ankle(foot.outerAnkle, -1), line: 'skin-shade', weight: 2.2 },
  ];
}

/** The ankle bone shows as a soft curve under its bump; `sign` follows the page, which only matters for the curve. */
const ankle = (p: Point, sign: 1 | -1): string => {
  const arc = ring(p, 9, 11, 0, 12);
  return smooth(sign === 1 ? arc.slice(0, 5) : arc.slice(2, 7));
};
export const spot = (p: Point, r: number): string => oval(p, r, r);
