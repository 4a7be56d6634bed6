/** The leg seen near: lying from the left to the foot, for what happens at bandage, heel and muscles. */
import { at, hatch, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { footFromSide } from './bed.ts';
import { ink } from './page.ts';

export interface NearLeg {
  /** Below the knee, and the ankle. */
  from: number;
  to: number;
  y: number;
  /** Half the thickness of the calf. */
  half: number;
  /** Where the bandage begins and ends, as shares of the way. */
  band?: readonly [number, number];
  /** Share of the bandage that is wet. */
  wet?: number;
  foot?: number;
}

const edge = ({ from, to, y, half }: NearLeg, side: 1 | -1, s: number): Point => {
  const shape =
    side === -1 ? 0.86 - 0.3 * s : 0.9 + 0.28 * Math.sin(Math.PI * Math.min(1, s * 1.2)) - 0.36 * s;
  return at(from + (to - from) * s, y + side * half * shape);
};

const stretchOf = (leg: NearLeg, a: number, b: number, more = 0): Point[] => {
  const along = [0, 1 / 3, 2 / 3, 1].map((t) => a + (b - a) * t);
  return [
    ...along.map((s) => edge(leg, -1, s)).map((p) => at(p.x, p.y - more)),
    ...along
      .reverse()
      .map((s) => edge(leg, 1, s))
      .map((p) => at(p.x, p.y + more)),
  ];
};

export function nearLeg(leg: NearLeg): Shape[] {
  const { to, y, half, band, wet } = leg;
  const size = leg.foot ?? half / 19;
  const shapes: Shape[] = [
    { d: smooth(stretchOf(leg, -0.1, 1.02), false, 0.7), fill: 'skin', line: 'ink' },
    ...footFromSide(at(to, y), size, 0),
  ];
  if (!band) return shapes;
  const [a, b] = band;
  shapes.push({ d: smooth(stretchOf(leg, a, b, 3), true, 0.4), fill: 'band', line: 'ink' });
  if (wet) {
    const field = stretchOf(leg, b - (b - a) * wet, b, 1);
    shapes.push(
      { d: smooth(field, true, 0.5), fill: 'wet' },
      { d: hatch(field, 9, 60), line: 'ink', weight: 1.3 },
    );
  }
  const turns = [0.14, 0.28, 0.42, 0.56, 0.7, 0.84].map((t) => {
    const s = a + (b - a) * t;
    const [up, low] = [edge(leg, -1, s - 0.015), edge(leg, 1, s + 0.03)];
    return smooth([at(up.x, up.y - 1), at((up.x + low.x) / 2 + half * 0.2, y), at(low.x, low.y + 1)]);
  });
  shapes.push(
    { d: turns.join(''), line: 'band-shade', weight: 3 },
    // the line that staff drew at the edge
    {
      d: straight([edge(leg, -1, a - 0.025), edge(leg, 1, a - 0.025)]),
      line: 'pen',
      weight: 2.4,
      dash: '6 5',
    },
  );
  return shapes;
}

/** Plate, straps, cord, wheel and the hanging weight to the right of a foot whose ankle is given. */
export function pullRight(x: number, y: number, size: number, wheel: number, drop: number): Shape[] {
  const plate = x + 30 * size;
  const r = 13;
  return [
    ink.flat([x - 12 * size, y - 6, plate, y - 6, plate, y + 5, x - 12 * size, y + 5], 'band', 2.2),
    ink.flat(
      [plate, y - 34 * size, plate + 8, y - 34 * size, plate + 8, y + 22 * size, plate, y + 22 * size],
      'plate',
      2.6,
    ),
    ink.ring([wheel, y + r, r, r], 'metal', 2.6),
    ink.dots([wheel, y + r], 6),
    ink.rule([[plate + 8, y, wheel, y]], 2.4, 'cord'),
    ink.stroke([wheel, y, wheel + 10, y + 4, wheel + r, y + r, wheel + r, drop], 2.4, 'cord'),
    ...weight(wheel + r, drop, 1),
  ];
}

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
