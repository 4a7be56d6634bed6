/** The sheet every picture of the day is drawn on: a square, its curves made light before they are sent. */
import { extent, lighter } from '../lighter.ts';
import { heldInside } from '../parts/points.ts';
import type { Shape } from '../shapes.ts';

/** Width and height of every picture of the day, in scene units. */
export const DAY_SIZE = 120;

/** How far, in scene units, a lighter curve may leave the one that was drawn: a quarter of a pixel in a list. */
const STRAY = 0.3;
/** A shape wider or higher than this lies on whole units, a smaller one on halves. */
const WIDE = 14;
/** A line shorter than this is a speck in a list of pictures. */
const SPECK = 2.6;

const held = (shapes: readonly Shape[]) => heldInside(shapes, DAY_SIZE, DAY_SIZE);

/** Held inside the square, and light. */
export function framed(shapes: readonly Shape[]): Shape[] {
  const light = held(shapes).flatMap((shape): Shape[] => {
    const size = extent(shape.d);
    const speck = !shape.fill && size > 0 && size < SPECK;
    return speck ? [] : [{ ...shape, d: lighter(shape.d, size > WIDE ? 1 : 0.5, STRAY) }];
  });
  return held(light);
}
