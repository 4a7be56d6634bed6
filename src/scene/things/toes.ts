/** A row of bare toes, as they look over the hem of a blanket. */
import { oval, type Shape } from '../shapes.ts';
import type { pen } from './pen.ts';

/** Middle, height of the tip, half width. */
export type Toe = readonly [number, number, number];

/** One toe standing on y = 1, its tip at 0; round at the pad, narrower below it. */
const TOE = [-0.84, 1, -0.86, 0.52, -1, 0.3, -0.72, 0.07, 0, 0, 0.72, 0.07, 1, 0.3, 0.86, 0.52, 0.84, 1];

/** Toes in a row. */
export function toeRow(
  p: ReturnType<typeof pen>,
  toes: readonly Toe[],
  base: number,
  weight: number,
): Shape[] {
  const outline = ([x, top, w]: Toe) =>
    TOE.map((v, i) => (i % 2 === 0 ? x + v * w : v === 1 ? base : top + v * w * 4));
  const nails = toes.map(([x, top, w]) =>
    oval(p.put([x, top + w * 0.78])[0]!, w * 0.5 * p.scale, w * 0.42 * p.scale),
  );
  return [
    ...toes
      .map((toe) => p.soft(outline(toe), 'skin', weight, 0.9))
      .slice()
      .reverse(),
    { d: nails.join(''), fill: 'nail', line: 'ink', weight: weight * 0.6 },
  ];
}
