/**
 * The one hand every picture is drawn with: points become smooth ink outlines and flat fills. Path data uses
 * only absolute M, L, C, Q and Z, so that a test can read every point of a picture.
 */
export interface Point {
  x: number;
  y: number;
}

/** A drawn line or field. Colours are token names; the style sheet knows the values for day and night. */
export interface Shape {
  d: string;
  /** Token of the fill, for example `skin`, `sheet`, `band`. */
  fill?: string;
  /** Token of the line; `ink` for nearly everything. */
  line?: string;
  /** Line width in scene units; `INK` where left out. */
  weight?: number;
  /** Scene units of dash and gap. */
  dash?: string;
}

export interface Picture {
  width: number;
  height: number;
  shapes: Shape[];
  /** Places to touch on the `whole` picture, by part id. */
  spots?: Record<string, { x: number; y: number; r: number }>;
}

/** Width and height of a picture, in scene units. */
export interface View {
  width: number;
  height: number;
}
/** Size of every scene. */
export const VIEW: View = { width: 480, height: 360 };

/** Weight of the one ink line. */
export const INK = 2.4;

/** A point of a picture; x grows to the right, y downwards. */
export const at = (x: number, y: number): Point => ({ x, y });
/** A point moved by another. */
export const plus = (a: Point, b: Point): Point => at(a.x + b.x, a.y + b.y);
/** A point on the way from one to another: 0 at the first, 1 at the second. */
export const between = (a: Point, b: Point, t: number): Point =>
  at(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);
/** How far two points are from each other. */
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
/** A number on the way from one to another: 0 at the first, 1 at the second. */
export const mix = (a: number, b: number, t: number): number => a + (b - a) * t;

/** Turns a point about a pivot; positive degrees turn clockwise on the page (y points down). */
export function turn(p: Point, pivot: Point, angleDegrees: number): Point {
  const angle = (angleDegrees * Math.PI) / 180;
  const [dx, dy] = [p.x - pivot.x, p.y - pivot.y];
  return at(
    pivot.x + dx * Math.cos(angle) - dy * Math.sin(angle),
    pivot.y + dx * Math.sin(angle) + dy * Math.cos(angle),
  );
}

/** The other side of the body: anatomy is mirrored here, in numbers, and never by reading direction. */
export const mirror = (p: Point, width: number): Point => at(width - p.x, p.y);

/** A number to its nearest tenth: as fine as a path is written. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;
/** A point as it stands in a path. */
export const xy = (p: Point): string => `${tenth(p.x)} ${tenth(p.y)}`;

/** A straight-edged line or polygon. */
export function straight(points: readonly Point[], closed = false): string {
  return (
    points.map((p, i) => (i === 0 ? 'M' : 'L') + xy(p)).join('') + (closed && points.length > 0 ? 'Z' : '')
  );
}

/** A soft line or field through every point (Catmull–Rom as cubics). `ease` 0 is straight, 1 is round. */
export function smooth(points: readonly Point[], closed = false, ease = 1): string {
  const count = points.length;
  if (count < 3) return straight(points, closed);
  const pick = (i: number) =>
    closed ? points[(i + count) % count]! : points[Math.max(0, Math.min(count - 1, i))]!;
  const k = ease / 6;
  let d = 'M' + xy(points[0]!);
  const segments = closed ? count : count - 1;
  for (let i = 0; i < segments; i++) {
    const [p0, p1, p2, p3] = [pick(i - 1), pick(i), pick(i + 1), pick(i + 2)];
    const c1 = at(p1.x + (p2.x - p0.x) * k, p1.y + (p2.y - p0.y) * k);
    const c2 = at(p2.x - (p3.x - p1.x) * k, p2.y - (p3.y - p1.y) * k);
    d += `C${xy(c1)} ${xy(c2)} ${xy(p2)}`;
  }
  return closed ? d + 'Z' : d;
}

/** Points of an ellipse, turned by `angleDegrees`. */
export function ring(center: Point, rx: number, ry: number, angleDegrees = 0, count = 12): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const a = (i / count) * 2 * Math.PI;
    return turn(at(center.x + rx * Math.cos(a), center.y + ry * Math.sin(a)), center, angleDegrees);
  });
}

/** A closed ellipse as four cubics, turned by `angleDegrees`. */
export function oval(center: Point, rx: number, ry: number, angleDegrees = 0): string {
  const k = 0.5523;
  const p = (x: number, y: number) =>
    xy(turn(at(center.x + x * rx, center.y + y * ry), center, angleDegrees));
  return (
    `M${p(1, 0)}C${p(1, k)} ${p(k, 1)} ${p(0, 1)}C${p(-k, 1)} ${p(-1, k)} ${p(-1, 0)}` +
    `C${p(-1, -k)} ${p(-k, -1)} ${p(0, -1)}C${p(k, -1)} ${p(1, -k)} ${p(1, 0)}Z`
  );
}

/**
 * Hatching for change: parallel lines clipped to a polygon (even–odd), as one path.
 * `gap` is the distance of the lines in scene units.
 */
export function hatch(polygon: readonly Point[], gap = 6, angleDegrees = 45): string {
  const origin = at(0, 0);
  const flat = polygon.map((p) => turn(p, origin, -angleDegrees));
  const ys = flat.map((p) => p.y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  let d = '';
  for (let y = low + gap / 2; y < high; y += gap) {
    const xs: number[] = [];
    flat.forEach((a, i) => {
      const b = flat[(i + 1) % flat.length]!;
      if (a.y <= y !== b.y <= y) xs.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
    });
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const [from, to] = [
        turn(at(xs[i]!, y), origin, angleDegrees),
        turn(at(xs[i + 1]!, y), origin, angleDegrees),
      ];
      d += straight([from, to]);
    }
  }
  return d;
}

/** Every number pair of a path, control points included. */
export function pointsOf(d: string): Point[] {
  const numbers = (d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, i) => at(numbers[2 * i]!, numbers[2 * i + 1]!));
}
