/** Curves made light before they are sent: fewer points where the eye cannot tell. */
import { heldInside } from './parts/points.ts';
import { SQUARE } from './things/pen.ts';
import { at, pointsOf, type Point, type Shape } from './shapes.ts';

/** The longer side of the box around a path's points, in scene units. */
export function extent(d: string): number {
  const own = pointsOf(d);
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

/**
 * The same curve with one control point instead of two where the eye cannot tell, a third less to send; and a straight
 * line where the control points lie within `flat` of the chord together. The two curves are farthest apart by √3/36 of
 * the third difference of the cubic's points.
 *
 * Units: scene units; `stray` is how far the lighter curve may leave the drawn one, points lie on multiples of `grid`.
 */
export function lighter(d: string, grid: number, stray: number, flat = 0): string {
  const n = (value: number) => String(Math.round(value / grid) * grid);
  const write = (points: readonly Point[]) => points.map((p) => `${n(p.x)} ${n(p.y)}`).join(' ');
  let from: Point = at(0, 0);
  return d.replace(/([MLCQ])([-\d. ]+)/g, (_, command: string, numbers: string) => {
    const own = pointsOf(numbers);
    const start = from;
    from = own[own.length - 1]!;
    if (command !== 'C') return command + write(own);
    const [a, b, c] = own as [Point, Point, Point];
    const chord = Math.hypot(c.x - start.x, c.y - start.y);
    const off = (p: Point) =>
      Math.abs((c.x - start.x) * (p.y - start.y) - (c.y - start.y) * (p.x - start.x)) / chord;
    if (flat > 0 && chord > 0 && off(a) + off(b) < flat) return 'L' + write([c]);
    const third = Math.hypot(c.x - 3 * b.x + 3 * a.x - start.x, c.y - 3 * b.y + 3 * a.y - start.y);
    if ((third * Math.sqrt(3)) / 36 > stray) return 'C' + write(own);
    return 'Q' + write([at((3 * (a.x + b.x) - start.x - c.x) / 4, (3 * (a.y + b.y) - start.y - c.y) / 4), c]);
  });
}

/** How far, in scene units, a lighter curve of a small picture may leave the one that was drawn: a quarter of a pixel in a list. */
const STRAY = 0.3;
/** A shape wider or higher than this lies on whole units, a smaller one on halves. */
const WIDE = 14;
/** A line shorter than this is a speck in a list of pictures. */
const SPECK = 2.6;

const held = (shapes: readonly Shape[]) => heldInside(shapes, SQUARE, SQUARE);

/** A picture of play or of the day, held inside its square and light. */
export function lightSquare(shapes: readonly Shape[]): Shape[] {
  const light = held(shapes).flatMap((shape): Shape[] => {
    const long = extent(shape.d);
    const speck = !shape.fill && long > 0 && long < SPECK;
    return speck ? [] : [{ ...shape, d: lighter(shape.d, long > WIDE ? 1 : 0.5, STRAY) }];
  });
  return held(light);
}
