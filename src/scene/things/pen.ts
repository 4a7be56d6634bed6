/** The pen of the small pictures: a little bolder than the scene's, for they are shown small. */
import { at, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { points } from '../parts/points.ts';

export const BOLD = 3;
export const FINE = 1.8;

export interface Placement {
  /** Where the drawing's own point 60, 60 comes to lie. */
  x: number;
  y: number;
  scale: number;
  turned: number;
}

const AS_DRAWN: Placement = { x: 60, y: 60, scale: 1, turned: 0 };

/** A pen for a drawing in a 120 × 120 square that is placed, scaled and turned as a whole. */
export function pen(where: Partial<Placement> = {}) {
  const { x, y, scale, turned } = { ...AS_DRAWN, ...where };
  const put = (flat: readonly number[]): Point[] =>
    points(flat).map((p) => turn(at(x + (p.x - 60) * scale, y + (p.y - 60) * scale), at(x, y), turned));
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
