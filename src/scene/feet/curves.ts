/** Few-point curves: feet have many small rounded parts, and a picture must stay small. */
import { at, straight, tenth, type Point } from '../shapes.ts';

/** A path through cubics given as start, then two handles and an end for each piece. */
export function curves(points: readonly Point[]): string {
  const [start, ...rest] = points.map((p) => straight([p]).slice(1));
  let d = 'M' + start;
  for (let i = 0; i + 2 < rest.length; i += 3) d += `C${rest[i]} ${rest[i + 1]} ${rest[i + 2]}`;
  return d;
}

/** One bend from the first point through the second to the third. */
export function bend([a, b, c]: readonly [Point, Point, Point] | readonly Point[]): string {
  if (!a || !b || !c) throw new Error('bend: three points, saw fewer');
  const handle = at(2 * b.x - (a.x + c.x) / 2, 2 * b.y - (a.y + c.y) / 2);
  return straight([a]) + 'Q' + straight([handle, c]).slice(1).replace('L', ' ');
}

/** Goes on where another path ended. */
export const onward = (d: string): string => 'L' + d.slice(1);

/** Places along the cubics of `curves`, for hatching. */
export function along(points: readonly Point[], steps = 4): Point[] {
  const found: Point[] = [points[0]!];
  for (let i = 0; i + 3 < points.length; i += 3) {
    const [a, b, c, d] = [points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!];
    for (let k = 1; k <= steps; k++) {
      const t = k / steps;
      const weigh = (p: number, q: number, r: number, s: number) =>
        (1 - t) ** 3 * p + 3 * (1 - t) ** 2 * t * q + 3 * (1 - t) * t * t * r + t ** 3 * s;
      found.push(at(weigh(a.x, b.x, c.x, d.x), weigh(a.y, b.y, c.y, d.y)));
    }
  }
  return found;
}

/** A path with each of its points moved. */
export function moved(d: string, move: (x: number, y: number) => [number, number]): string {
  return d.replace(/(-?\d+(?:\.\d+)?) (-?\d+(?:\.\d+)?)/g, (_, x: string, y: string) =>
    move(Number(x), Number(y)).map(tenth).join(' '),
  );
}

/** A large soft path on whole units, which is a third shorter to write down and looks the same. */
export const coarse = (d: string): string => moved(d, (x, y) => [Math.round(x), Math.round(y)]);
