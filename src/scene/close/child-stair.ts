/** A plain stair beside the bed. The higher the step, the more it hurts; a hand points at the step of now. */
import type { SceneSpec } from '../spec.ts';
import { at, plus, straight, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { points } from '../parts/points.ts';
import type { ChildGeometry } from './child-layout.ts';

const STEPS = 4;
/** The step of the look before, and of now. */
const POINTED = {
  falling: { before: 3, now: 0 },
  flat: { before: 3, now: 3 },
  rising: { before: 0, now: 3 },
} as const;

/** Rays around the middle of a step: none on the lowest, more and longer further up. */
function painRays(top: Point, step: number): string {
  const angles = [[], [-28, 208], [-14, -44, 224, 194], [-8, -32, 212, 188]][step]!;
  const [near, far] = [11 + step * 2, 15 + step * 5];
  return angles
    .map((degrees) => {
      const a = (degrees * Math.PI) / 180;
      return straight([
        at(top.x + near * Math.cos(a), top.y + near * Math.sin(a)),
        at(top.x + far * Math.cos(a), top.y + far * Math.sin(a)),
      ]);
    })
    .join('');
}

function arrow(from: Point, to: Point): Shape {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const barb = (side: number) =>
    at(to.x - 22 * Math.cos(along + side * 0.6), to.y - 22 * Math.sin(along + side * 0.6));
  return { d: straight([from, to]) + straight([barb(1), to, barb(-1)]), line: 'mark', weight: 7 };
}

export function sorenessStair(spec: SceneSpec, { lower }: ChildGeometry): Shape[] {
  if (spec.soreness === 'none') return [];
  const { before, now } = POINTED[spec.soreness];
  const floor = 350;
  const wide = (lower.right - lower.left) / STEPS;
  const top = (step: number) => floor - 34 - step * 38;
  const middle = (step: number) => at(lower.left + (step + 0.5) * wide, top(step));
  const block = (step: number) => {
    const x = lower.left + step * wide;
    return points([x, floor, x, top(step), x + wide, top(step), x + wide, floor]);
  };
  const steps = Array.from({ length: STEPS }, (_, step) => step);
  const hand = (step: number, aside: number) =>
    drawHand(plus(middle(step), at(aside, -72)), 62, 90, 'point', 1, 'skin');
  const [low, high] = [at(lower.left + 22, floor - 14), at(lower.right - 20, top(3) + 36)];
  const trail =
    spec.soreness === 'rising' ? [arrow(low, high)] : spec.soreness === 'falling' ? [arrow(high, low)] : [];
  return [
    { d: steps.map((step) => straight(block(step), true)).join(''), fill: 'sheet', line: 'ink', weight: 3 },
    ...trail,
    { d: steps.map((step) => painRays(middle(step), step)).join(''), line: 'mark', weight: 4 },
    ...hand(before, before === now ? -12 : 0)
      .slice(0, 1)
      .map((shape): Shape => ({ d: shape.d, line: 'ink', weight: 2, dash: '3 5' })),
    ...hand(now, 0),
  ];
}
