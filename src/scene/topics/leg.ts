/** The leg seen near: lying from the left to the foot, for what happens at bandage, heel and muscles. */
import { at, hatch, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { drawFoot, type FootLook } from '../whole/foot.ts';
import { ink } from './page.ts';
import { box } from '../play/brush.ts';
import { weight } from './things.ts';

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

/** The right foot from its outer side; the toes point up. */
const BARE = (size: number): FootLook => ({
  bigToe: 'away',
  pitch: 8,
  roll: 0,
  size,
  swell: 0,
  toneShift: 'none',
});

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

/** The skin of calf and foot; `whole/foot.ts` draws the toes. */
export const nearLeg = (leg: NearLeg): Shape[] => [
  { d: smooth(stretchOf(leg, -0.1, 1.02), false, 0.7), fill: 'skin', line: 'ink' },
  ...bareFoot(leg.from, leg.to, leg.y, leg.foot ?? leg.half / 14),
  ...nearBandage(leg),
];

/** A foot at the end of a leg that lies along the page. */
export const bareFoot = (from: number, to: number, y: number, size: number): Shape[] =>
  drawFoot(at(from, y), at(to, y), BARE(size));

/** The bandage in its half-covered turns, the wet part hatched, and the pen line at its upper edge. */
export function nearBandage(leg: NearLeg): Shape[] {
  const { y, half, band, wet } = leg;
  if (!band) return [];
  const [a, b] = band;
  const field = wet ? stretchOf(leg, b - (b - a) * wet, b, 1) : [];
  const turns = [0.14, 0.28, 0.42, 0.56, 0.7, 0.84].map((t) => {
    const s = a + (b - a) * t;
    const [up, low] = [edge(leg, -1, s - 0.015), edge(leg, 1, s + 0.03)];
    return smooth([at(up.x, up.y - 1), at((up.x + low.x) / 2 + half * 0.2, y), at(low.x, low.y + 1)]);
  });
  const pen = straight([edge(leg, -1, a - 0.025), edge(leg, 1, a - 0.025)]);
  return [
    { d: smooth(stretchOf(leg, a, b, 3), true, 0.4), fill: 'band', line: 'ink' },
    ...(wet
      ? [
          { d: smooth(field, true, 0.5), fill: 'wet' },
          { d: hatch(field, 9, 60), line: 'ink', weight: 1.3 },
        ]
      : []),
    { d: turns.join(''), line: 'band-shade', weight: 3 },
    { d: pen, line: 'pen', weight: 2.4, dash: '6 5' },
  ];
}

/** Straps from the bandage to the plate beyond the sole; the cord goes on to where it is said. */
export function plateRight(x: number, y: number, size: number, cordTo: number): Shape[] {
  const plate = x + 30 * size;
  return [
    ink.flat([x - 12 * size, y - 6, plate, y - 6, plate, y + 5, x - 12 * size, y + 5], 'band', 2.2),
    ink.rule([[plate + 8, y, cordTo, y]], 2.6, 'cord'),
    ink.flat(box(plate, y - 34 * size, plate + 8, y + 18 * size), 'plate', 2.6),
  ];
}

/** Plate, straps, cord, wheel and the hanging weight to the right of a foot whose ankle is given. */
export function pullRight(x: number, y: number, size: number, wheel: number, drop: number): Shape[] {
  const r = 13;
  return [
    ink.ring([wheel, y + r, r, r], 'metal', 2.6),
    ink.dots([wheel, y + r], 6),
    ...plateRight(x, y, size, wheel),
    ink.stroke([wheel, y, wheel + 10, y + 4, wheel + r, y + r, wheel + r, drop], 2.6, 'cord'),
    ...weight(wheel + r, drop, 0.82),
  ];
}
