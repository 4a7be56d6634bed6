/** A child's bare toes over the hem of the blanket: bold and simple, for the smallest squares. */
import { at, straight, type Shape } from '../shapes.ts';
import { pen } from './pen.ts';
import { toeRow } from './toes.ts';

/** Toes from the big one outward: middle, height of the tip, half width. */
const TOES = [
  [24.5, 11, 21],
  [57, 21, 13],
  [80, 29, 11.6],
  [99, 40, 9.4],
  [112, 53, 6.6],
] as const;

/** The app's own picture. */
export function icon(): Shape[] {
  const p = pen();
  const hem = [
    0, 73, 12, 70, 30, 67, 45, 68, 60, 70, 75, 73, 90, 75.6, 105, 75.4, 120, 73, 120, 91, 105, 93, 90, 93, 75,
    91, 60, 88, 45, 86, 30, 85, 12, 88, 0, 91,
  ];
  return [
    { d: straight([at(0, 0), at(120, 0), at(120, 120), at(0, 120)], true), fill: 'sheet' },
    ...toeRow(p, TOES, 92, 5),
    p.flat([0, 80, 120, 80, 120, 120, 0, 120], 'mark', 5),
    p.flat(hem, 'blanket', 5),
  ];
}
