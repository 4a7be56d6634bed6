/** Short ways to write many points: flat lists of numbers, placed, scaled and mirrored. */
import { at, smooth, tenth, type Point, type Shape } from '../shapes.ts';

/** `[x, y, x, y, …]` as points, scaled and then moved to `origin`. */
export function points(
  flat: readonly number[],
  origin: Point = at(0, 0),
  scaleX = 1,
  scaleY = Math.abs(scaleX),
): Point[] {
  return Array.from({ length: flat.length / 2 }, (_, i) =>
    at(origin.x + flat[2 * i]! * scaleX, origin.y + flat[2 * i + 1]! * scaleY),
  );
}

/** A limb as one outline: a middle line and the half width at each of its points. */
export function limb(line: readonly Point[], halves: readonly number[]): Point[] {
  const offset = (sign: number) =>
    line.map((p, i) => {
      const [a, b] = [line[Math.max(0, i - 1)]!, line[Math.min(line.length - 1, i + 1)]!];
      const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
      const h = (sign * halves[i]!) / length;
      return at(p.x - (b.y - a.y) * h, p.y + (b.x - a.x) * h);
    });
  return [...offset(1), ...offset(-1).slice().reverse()];
}

/** An arc of motion or sound: part of a circle from one angle to the other, in degrees, clockwise on the page. */
export function arc(center: Point, radius: number, from: number, to: number, flatten = 1): string {
  const count = Math.max(4, Math.ceil(Math.abs(to - from) / 18) + 1);
  return smooth(
    Array.from({ length: count }, (_, i) => {
      const a = ((from + ((to - from) * i) / (count - 1)) * Math.PI) / 180;
      return at(center.x + radius * Math.cos(a), center.y + radius * flatten * Math.sin(a));
    }),
  );
}

/** The same drawing for the other side of the body: every point of every path mirrored in numbers. */
export const mirrored = (shapes: readonly Shape[], width: number): Shape[] =>
  shapes.map((shape) => ({
    ...shape,
    d: shape.d.replace(
      /(-?[\d.]+) (-?[\d.]+)/g,
      (_, x: string, y: string) => `${tenth(width - Number(x))} ${y}`,
    ),
  }));

/** Curves that swing a little over the edge of the page are held at the edge. */
export const heldInside = (shapes: readonly Shape[], width: number, height: number): Shape[] =>
  shapes.map((shape) => ({
    ...shape,
    d: shape.d.replace(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) => {
      const hold = (value: string, most: number) => tenth(Math.max(0, Math.min(most, Number(value))));
      return `${hold(x, width)} ${hold(y, height)}`;
    }),
  }));
