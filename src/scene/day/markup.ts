/** A picture of the day as SVG text. */
import { pathMarkup, plainMarkup } from '../plain-markup.ts';
import type { Shape } from '../shapes.ts';
import { SQUARE } from '../things/pen.ts';

/** The line of the whole picture. */
const USUAL = 2.6;

/** Shapes from back to front, told to those who cannot see them by the label; without one they are decoration. */
export function writeDay(shapes: readonly Shape[], label: string): string {
  const paths = shapes.map((shape) => pathMarkup(shape, USUAL)).join('');
  return plainMarkup('data-day-picture', { width: SQUARE, height: SQUARE }, USUAL, paths, label);
}
