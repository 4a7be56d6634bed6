/**
 * Pictures are built for one leg in numbers; the other leg is the same numbers with x counted from the other edge.
 * Doing it once, here, keeps both sides equal to the last tenth of a unit.
 */
import { mirror, type Point } from '../shapes.ts';

const isPoint = (value: object): value is Point => 'x' in value && 'y' in value;

/** A copy with every length on a fine binary grid, so that counting from the other edge and back loses nothing. */
export function settled<T>(geometry: T): T {
  if (typeof geometry === 'number') return (Math.round(geometry * 1024) / 1024) as T & number;
  if (Array.isArray(geometry)) return geometry.map((part: unknown) => settled(part)) as T;
  if (typeof geometry !== 'object' || geometry === null) return geometry;
  return Object.fromEntries(Object.entries(geometry).map(([key, part]) => [key, settled(part)])) as T;
}

/** A copy of a geometry with every named point moved to the other side; lengths stay as they are. */
export function otherSide<T>(geometry: T, width: number): T {
  if (Array.isArray(geometry)) return geometry.map((part: unknown) => otherSide(part, width)) as T;
  if (typeof geometry !== 'object' || geometry === null) return geometry;
  if (isPoint(geometry)) return mirror(geometry, width) as T & Point;
  return Object.fromEntries(
    Object.entries(geometry).map(([key, part]) => [key, otherSide(part, width)]),
  ) as T;
}
