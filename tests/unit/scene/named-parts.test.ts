// The set-up on paper: each part carries its name, and the line of a name ends on its part.
import { describe, expect, it } from 'vitest';
import { at, pointsOf, type Point } from '#scene/shapes.ts';
import { namedParts } from '#scene/topics/named.ts';
import { TOPIC_VIEW } from '#scene/topics/page.ts';
import { drawTopic } from '#scene/topics/pictures.ts';

/** On which side of the line from a to b a point lies. */
const turned = (a: Point, b: Point, c: Point) =>
  Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
const cross = ([a, b]: Point[], [c, d]: Point[]) =>
  turned(a!, b!, c!) * turned(a!, b!, d!) < 0 && turned(c!, d!, a!) * turned(c!, d!, b!) < 0;

describe.each(['left', 'right'] as const)('the names of the set-up, %s leg', (side) => {
  const { left, right, lines } = namedParts(side);
  const reach = drawTopic('my-set-up', side).filter((shape) => shape.reach);

  it('name each part once, half of them on each side of the picture', () => {
    expect([...left, ...right].sort()).toEqual(reach.map(({ part }) => part!).sort());
    expect(Math.abs(left.length - right.length)).toBeLessThanOrEqual(1);
  });

  it('lead from the edge where the name stands to where a finger would meet the part', () => {
    for (const [i, part] of [...left, ...right].entries()) {
      const [from, to] = pointsOf(lines[i]!) as [Point, Point];
      expect(from.x).toBe(i < left.length ? 0 : TOPIC_VIEW.width);
      const own = pointsOf(reach.find((shape) => shape.part === part)!.d);
      const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
      expect(to.x).toBeGreaterThanOrEqual(Math.min(...xs));
      expect(to.x).toBeLessThanOrEqual(Math.max(...xs));
      expect(to.y).toBeGreaterThanOrEqual(Math.min(...ys));
      expect(to.y).toBeLessThanOrEqual(Math.max(...ys));
    }
  });

  it('never cross one another: no name is read for the part of another', () => {
    expect(cross([at(0, 0), at(4, 4)], [at(0, 4), at(4, 0)])).toBe(true);
    const drawn = lines.map((d) => pointsOf(d));
    const crossing = drawn.flatMap((one, i) =>
      drawn.slice(i + 1).flatMap((other, j) => (cross(one, other) ? [`${i} × ${i + 1 + j}`] : [])),
    );
    expect(crossing).toEqual([]);
  });
});
