/** Rounded bodies around a line: arms, legs, trunk. */
import { at, between, plus, xy, type Point } from '../shapes.ts';

/** A point as many times as far from 0. */
export const scale = (p: Point, by: number): Point => at(p.x * by, p.y * by);

/** The direction from one point to another, one unit long. */
export function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return at((to.x - from.x) / length, (to.y - from.y) / length);
}

/** A quarter turn to the left of the direction of travel: "up" for a limb that runs to the right. */
export const leftOf = (direction: Point): Point => at(direction.y, -direction.x);

/** A frame along a limb: `s` runs 0–1 from `from` to `to`, `n` stands off to the upper side. */
export function alongLimb(from: Point, to: Point) {
  const up = leftOf(unit(from, to));
  return (s: number, n: number): Point => plus(between(from, to, s), scale(up, n));
}

/** Outline of a limb through `spine` with a half width at each joint. Its ends lie under cloth or a hand. */
export function tube(spine: readonly Point[], widths: readonly number[]): Point[] {
  const left: Point[] = [];
  const right: Point[] = [];
  const last = spine.length - 1;
  spine.forEach((p, i) => {
    const way = unit(spine[Math.max(0, i - 1)]!, spine[Math.min(last, i + 1)]!);
    const side = scale(leftOf(way), widths[i]!);
    left.push(plus(p, side));
    right.unshift(plus(p, scale(side, -1)));
  });
  return [...left, ...right];
}

/** A bow from `from` to `to`, pulled towards `over`. */
export function bow(from: Point, over: Point, to: Point): string {
  return `M${xy(from)}Q${xy(over)} ${xy(to)}`;
}

/** Extra points between joints, so that a bent limb bends softly. */
export function soften(a: Point, b: Point, c: Point): Point[] {
  return [
    a,
    between(a, b, 0.5),
    between(between(a, b, 0.86), between(b, c, 0.14), 0.5),
    between(b, c, 0.5),
    c,
  ];
}

/** A value between listed stations, `[position, value]` in rising order, eased. */
export function profile(stations: readonly (readonly [number, number])[], s: number): number {
  const next = stations.findIndex(([position]) => position >= s);
  if (next <= 0) return next === 0 ? stations[0]![1] : stations[stations.length - 1]![1];
  const [[s0, v0], [s1, v1]] = [stations[next - 1]!, stations[next]!];
  const t = (s - s0) / (s1 - s0);
  return v0 + (v1 - v0) * t * t * (3 - 2 * t);
}
