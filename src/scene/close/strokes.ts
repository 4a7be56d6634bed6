/** Small strokes that several close pictures share: profiles, rays, arrows, waves and crops. */
import {
  at,
  between,
  distance,
  INK,
  mix,
  ring,
  smooth,
  straight,
  turn,
  type Point,
  type Shape,
} from '../shapes.ts';

/** The height of an outline at an x. */
export type Profile = (x: number) => number;

const slope = (a: Point, b: Point) => (b.y - a.y) / (b.x - a.x);

/** A soft outline through points that run from left to right. */
export function profile(points: readonly Point[]): Profile {
  return (x) => {
    const last = points.length - 1;
    if (x <= points[0]!.x) return points[0]!.y;
    if (x >= points[last]!.x) return points[last]!.y;
    const i = points.findIndex((p) => p.x >= x) - 1;
    const [a, b] = [points[i]!, points[i + 1]!];
    const m0 = slope(points[Math.max(0, i - 1)]!, b);
    const m1 = slope(a, points[Math.min(last, i + 2)]!);
    const w = b.x - a.x;
    const t = (x - a.x) / w;
    return (
      a.y * (2 * t ** 3 - 3 * t ** 2 + 1) +
      b.y * (3 * t ** 2 - 2 * t ** 3) +
      m0 * w * (t ** 3 - 2 * t ** 2 + t) +
      m1 * w * (t ** 3 - t ** 2)
    );
  };
}

/** Points of a profile from one x to another, about `step` apart. */
export function along(f: Profile, from: number, to: number, step = 24): Point[] {
  const count = Math.max(1, Math.round(Math.abs(to - from) / step));
  return Array.from({ length: count + 1 }, (_, i) => mix(from, to, i / count)).map((x) => at(x, f(x)));
}

/** The same, with points close together only around the places where a line changes quickly. */
export function alongWith(
  f: Profile,
  from: number,
  to: number,
  busy: readonly number[],
  reach: number,
): Point[] {
  const calm = (x: number) => x === from || x === to || busy.every((b) => Math.abs(x - b) > reach + 6);
  const xs = new Set(
    along(f, from, to, 30)
      .map((p) => p.x)
      .filter(calm),
  );
  for (const x of busy)
    for (let d = -reach; d <= reach; d += 9) if (x + d > from + 20 && x + d < to - 20) xs.add(x + d);
  const sorted = [...xs].sort((a, b) => a - b);
  // two points nearly on one place would bend the soft line
  return sorted.filter((x, i) => x === from || x === to || x - sorted[i - 1]! > 4).map((x) => at(x, f(x)));
}

/** A circle or ellipse in four curves. */
export const round = (center: Point, rx: number, ry: number = rx, degrees = 0): string =>
  smooth(ring(center, rx, ry, degrees, 4), true, 1.657);

/** 0 far away, 1 at the middle: a soft hump. */
export const hump = (x: number, middle: number, width: number): number =>
  Math.exp(-(((x - middle) / width) ** 2));

/** Soft rise from 0 to 1 between two values. */
export function rise(x: number, from: number, to: number): number {
  const t = Math.max(0, Math.min(1, (x - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

/** A point on a circle, or on one that is squashed. Units: degrees, clockwise from the right. */
export const onCircle = (c: Point, r: number, degrees: number, squash = 1): Point => {
  const a = (degrees * Math.PI) / 180;
  return at(c.x + r * Math.cos(a), c.y + r * Math.sin(a) * squash);
};

/** Arc points about a centre; degrees clockwise from the right of the page. */
export const arc = (c: Point, r: number, from: number, to: number, count = 6): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => onCircle(c, r, mix(from, to, i / count)));

/** Short wedges that burst from a spot: something hurts or burns here. */
export function rays(
  c: Point,
  inner: number,
  outer: number,
  from: number,
  to: number,
  count: number,
  width = 9,
): string {
  return Array.from({ length: count }, (_, i) => {
    const a = mix(from, to, count === 1 ? 0.5 : i / (count - 1));
    const long = i % 2 === 0 ? outer : mix(inner, outer, 0.72);
    const half = ((width / 2 / inner) * 180) / Math.PI;
    return straight([onCircle(c, inner, a - half), onCircle(c, long, a), onCircle(c, inner, a + half)], true);
  }).join('');
}

/** A broad curved arrow about a centre. */
export function curvedArrow(c: Point, r: number, from: number, to: number, width: number): string {
  const way = Math.sign(to - from);
  const neck = to - way * ((width * 1.5) / r) * 57.3;
  const [outer, inner] = [arc(c, r + width / 2, from, neck, 6), arc(c, r - width / 2, neck, from, 6)];
  const head = [onCircle(c, r + width * 1.15, neck), onCircle(c, r, to), onCircle(c, r - width * 1.15, neck)];
  return (
    smooth(outer) + straight([...head, inner[0]!]).replace('M', 'L') + smooth(inner).replace('M', 'L') + 'Z'
  );
}

/** Lines that rise and sway: a smell. */
export function waves(foot: Point, height: number, sway: number, count: number, apart: number): string {
  return Array.from({ length: count }, (_, i) => {
    const x = foot.x + (i - (count - 1) / 2) * apart;
    const tall = i === (count - 1) / 2 ? height : height * 0.78;
    return smooth(
      Array.from({ length: 6 }, (_, k) => at(x + (k % 2 === 0 ? -sway : sway), foot.y - (tall * k) / 5)),
    );
  }).join('');
}

/** A drop hanging with its point up. */
export const drop = (p: Point, r: number): string =>
  smooth(
    [
      at(p.x, p.y - r * 1.9),
      at(p.x + r * 0.8, p.y - r * 0.3),
      at(p.x + r * 0.55, p.y + r * 0.75),
      at(p.x, p.y + r),
      at(p.x - r * 0.55, p.y + r * 0.75),
      at(p.x - r * 0.8, p.y - r * 0.3),
    ],
    true,
    0.8,
  );

/** A strip of even width along a straight line. */
export function strip(a: Point, b: Point, width: number): Point[] {
  const k = width / 2 / (distance(a, b) || 1);
  const [nx, ny] = [-(b.y - a.y) * k, (b.x - a.x) * k];
  return [at(a.x + nx, a.y + ny), at(b.x + nx, b.y + ny), at(b.x - nx, b.y - ny), at(a.x - nx, a.y - ny)];
}

/** Points from one given point to the next. */
const DENSE = 4;
/** Points of the soft line `smooth` would draw, close together, so that it can be cropped. */
export function dense(points: readonly Point[], closed = false): Point[] {
  const count = points.length;
  const pick = (i: number) =>
    closed ? points[(i + count) % count]! : points[Math.max(0, Math.min(count - 1, i))]!;
  const out: Point[] = [];
  for (let i = 0; i < (closed ? count : count - 1); i++) {
    const [p0, p1, p2, p3] = [pick(i - 1), pick(i), pick(i + 1), pick(i + 2)];
    for (let k = 0; k < DENSE; k++) {
      const t = k / DENSE;
      const blend = (a: number, b: number, c: number, d: number) =>
        0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t ** 2 + (3 * b - a - 3 * c + d) * t ** 3);
      out.push(at(blend(p0.x, p1.x, p2.x, p3.x), blend(p0.y, p1.y, p2.y, p3.y)));
    }
  }
  if (!closed) out.push(points[count - 1]!);
  return out;
}

/** Where a line between two points meets the upper edge of the page. */
const crossing = (a: Point, b: Point) => between(a, b, a.y / (a.y - b.y));

/** The part of a field below the upper edge of the page. */
export function cropField(points: readonly Point[]): Point[] {
  return points.flatMap((p, i) => {
    const next = points[(i + 1) % points.length]!;
    const own = p.y >= 0 ? [p] : [];
    return p.y >= 0 !== next.y >= 0 ? [...own, crossing(p, next)] : own;
  });
}

/** The part of a line below the upper edge of the page. */
export function cropLine(points: readonly Point[]): string {
  const runs: Point[][] = [];
  let run: Point[] = [];
  points.forEach((p, i) => {
    const before = points[i - 1];
    if (before && before.y >= 0 !== p.y >= 0) run.push(crossing(before, p));
    if (p.y >= 0) run.push(p);
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  });
  runs.push(run);
  return runs
    .filter((r) => r.length > 1)
    .map((r) => straight(r))
    .join('');
}

/** The same points, turned about a pivot. Units: degrees, clockwise. */
export const turnAll = (points: readonly Point[], pivot: Point, degrees: number): Point[] =>
  points.map((p) => turn(p, pivot, degrees));

/** Pieces of line that begin where the one before ends, as one path with its corners kept. */
export const joined = (...pieces: string[]): string =>
  pieces
    .filter((piece) => piece !== '')
    .map((piece, i) => (i === 0 ? piece : piece.replace(/^M/, 'L')))
    .join('');

/** The field between two outlines that run the same way. */
export const limb = (front: readonly Point[], back: readonly Point[]): string =>
  joined(smooth(front), smooth([...back].reverse())) + 'Z';

/** Quiet second line. */
export const quiet = (d: string, line = 'soft', weight = 1.4): Shape => ({ d, line, weight });
/** A path in ink, filled where a fill is named. */
export const inked = (d: string, fill?: string, weight = INK): Shape =>
  fill ? { d, fill, line: 'ink', weight } : { d, line: 'ink', weight };
