/** A child's head seen from the front, at any size and turned any way: used lying in bed and large. */
import type { DrawnAge, Face, Hair } from '../spec.ts';
import { oval, type Point, type Shape } from '../shapes.ts';

export interface HeadLook {
  face: Face;
  hair: Hair;
  age: DrawnAge;
}

/** Shapes of a head centred on `center`; `radius` is half the face height; positive degrees turn clockwise. */
export function drawHead(center: Point, radius: number, angleDegrees: number, _look: HeadLook): Shape[] {
  return [{ d: oval(center, radius * 0.86, radius, angleDegrees), fill: 'skin', line: 'ink' }];
}
