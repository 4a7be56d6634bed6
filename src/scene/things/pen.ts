/** The pen of the small pictures: a little bolder than the scene's, for they are shown small. */
import { at, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { points } from '../parts/points.ts';

/** Width and height of the square that small things, play and day are drawn in, in scene units. */
export const SQUARE = 120;
/** Its middle, across and down. */
const MIDDLE = SQUARE / 2;

export const BOLD = 3;
export const FINE = 1.8;

export interface Placement {
  /** Where the middle of the drawing's square comes to lie. */
  x: number;
  y: number;
  scale: number;
  turned: number;
}

const AS_DRAWN: Placement = { x: MIDDLE, y: MIDDLE, scale: 1, turned: 0 };

/** A pen for a drawing in the square that is placed, scaled and turned as a whole. */
export function pen(where: Partial<Placement> = {}) {
  const { x, y, scale, turned } = { ...AS_DRAWN, ...where };
  const put = (flat: readonly number[]): Point[] =>
    points(flat).map((p) =>
      turn(at(x + (p.x - MIDDLE) * scale, y + (p.y - MIDDLE) * scale), at(x, y), turned),
    );
  const thin = Math.max(0.62, Math.min(1, scale * 1.1));
  return {
    put,
    scale,
    turned,
    soft: (flat: readonly number[], fill: string, weight = BOLD, ease = 0.9): Shape => ({
      d: smooth(put(flat), true, ease),
      fill,
      line: 'ink',
      weight: weight * thin,
    }),
    flat: (flat: readonly number[], fill: string, weight = BOLD): Shape => ({
      d: straight(put(flat), true),
      fill,
      line: 'ink',
      weight: weight * thin,
    }),
    stroke: (flat: readonly number[], weight = BOLD, line = 'ink'): Shape => ({
      d: smooth(put(flat)),
      line,
      weight: weight * thin,
    }),
    strokes: (lines: readonly (readonly number[])[], weight = FINE, line = 'ink'): Shape => ({
      d: lines.map((flat) => smooth(put(flat))).join(''),
      line,
      weight: weight * thin,
    }),
  };
}
