/** Names beside the picture of the set-up: on which side of it each stands, and the line that leads to its part. */
import { at, pointsOf, straight, type Point } from '../shapes.ts';
import type { Side } from '../spec.ts';
import { TOPIC_VIEW, type SetUpPart } from './page.ts';
import { drawTopic } from './pictures.ts';

export interface NamedParts {
  /** From top to bottom, in equal rows beside the picture. */
  left: SetUpPart[];
  right: SetUpPart[];
  /** A line for each name, left ones first, from the picture's edge to the middle of what a finger can meet. */
  lines: string[];
}

/**
 * Half of the parts have their names at the left of the picture, half at the right, in the order in which they stand.
 *
 * Shape: paths in the picture's own units.
 * @example namedParts('left').lines.length // 8
 */
export function namedParts(side: Side): NamedParts {
  const parts = drawTopic('my-set-up', side)
    .filter((shape) => shape.reach && shape.part)
    .map((shape) => ({ part: shape.part!, to: middleOf(shape.d) }))
    .sort((a, b) => a.to.x - b.to.x);
  const half = Math.ceil(parts.length / 2);
  const byHeight = (list: typeof parts) => [...list].sort((a, b) => a.to.y - b.to.y);
  const [left, right] = [byHeight(parts.slice(0, half)), byHeight(parts.slice(half))];
  const lead = (list: typeof parts, edge: number) =>
    list.map(({ to }, row) =>
      straight([
        at(edge, (TOPIC_VIEW.height * (row + 0.5)) / list.length),
        at(Math.round(to.x), Math.round(to.y)),
      ]),
    );
  return {
    left: left.map(({ part }) => part),
    right: right.map(({ part }) => part),
    lines: [...lead(left, 0), ...lead(right, TOPIC_VIEW.width)],
  };
}

function middleOf(d: string): Point {
  const own = pointsOf(d);
  const middle = (values: number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return at(middle(own.map((p) => p.x)), middle(own.map((p) => p.y)));
}
