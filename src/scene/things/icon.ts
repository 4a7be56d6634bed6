/** A child's bare toes over the hem of the blanket: bold and simple, for the smallest squares. */
import { at, oval, straight, type Shape } from '../shapes.ts';
import { pen } from './pen.ts';

/** Toes from the big one outward: middle, height of the tip, half width. */
const TOES = [
  [27, 27, 17],
  [54, 30, 11.5],
  [75, 36, 10.5],
  [92.5, 44, 9.5],
  [107, 54, 8.5],
] as const;

export function icon(): Shape[] {
  const p = pen();
  const toes = TOES.map(([x, top, w]) =>
    p.soft(
      [
        x - w,
        84,
        x - w,
        top + w * 1.1,
        x - w * 0.72,
        top + w * 0.3,
        x,
        top,
        x + w * 0.72,
        top + w * 0.3,
        x + w,
        top + w * 1.1,
        x + w,
        84,
      ],
      'skin',
      5,
      0.9,
    ),
  );
  const nails = TOES.map(([x, top, w]) => oval(at(x, top + w * 0.72), w * 0.5, w * 0.4));
  return [
    { d: straight([at(0, 0), at(120, 0), at(120, 120), at(0, 120)], true), fill: 'sheet' },
    ...toes.toReversed(),
    { d: nails.join(''), fill: 'nail', line: 'ink', weight: 3 },
    p.soft([0, 72, 30, 66, 60, 70, 90, 74, 120, 72, 120, 120, 0, 120], 'blanket', 5, 0.4),
    p.stroke([0, 90, 30, 84, 60, 88, 90, 92, 120, 90], 4),
  ];
}
