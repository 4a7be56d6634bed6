/** A plain stair beside the bed. The higher the step, the more it hurts; a hand points at the step of now. */
import type { SceneSpec } from '../spec.ts';
import { at, plus, smooth, straight, type Point, type Shape } from '../shapes.ts';
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
const RAYS = [[], [-30, 210], [-12, -46, 226, 192], [-6, -34, 214, 186]] as const;

function painRays(top: Point, step: number): string {
  const [near, far] = [10 + step * 2.5, 15 + step * 6.5];
  return RAYS[step]!.map((degrees) => {
    const a = (degrees * Math.PI) / 180;
    const [c, s] = [Math.cos(a), Math.sin(a)];
    return straight([at(top.x + near * c, top.y - 7 + near * s), at(top.x + far * c, top.y - 7 + far * s)]);
  }).join('');
}

function arrow(from: Point, to: Point): Shape {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const barb = (side: number) =>
    at(to.x - 22 * Math.cos(along + side * 0.6), to.y - 22 * Math.sin(along + side * 0.6));
  return { d: straight([from, to]) + straight([barb(1), to, barb(-1)]), line: 'mark', weight: 7 };
}

/** How sore it was, as a plain stair beside the child; nothing where nobody said. */
export function sorenessStair(spec: SceneSpec, { lower }: ChildGeometry): Shape[] {
  if (spec.soreness === 'none') return [];
  const { before, now } = POINTED[spec.soreness];
  const floor = 350;
  const [left, wide] = [lower.left - 2, 29];
  const top = (step: number) => floor - 34 - step * 38;
  const middle = (step: number) => at(left + (step + 0.5) * wide, top(step));
  const steps = Array.from({ length: STEPS }, (_, step) => step);
  const right = left + STEPS * wide;
  const side = points([
    left,
    floor,
    ...steps.flatMap((step) => [left + step * wide, top(step), left + (step + 1) * wide, top(step)]),
    right,
    floor,
  ]);
  const tread = (step: number) => {
    const [x, y] = [left + step * wide, top(step)];
    return straight(points([x - 4, y, x + wide, y, x + wide, y + 8, x - 4, y + 8]), true);
  };
  const hand = (step: number, aside: number) =>
    drawHand(plus(middle(step), at(aside, -66)), 58, 90, 'point', 1, 'skin');
  const wrist = plus(middle(now), at(0, -66));
  const cuff = points([-18, -16, 18, -16, 20, 4, -20, 4], wrist);
  // inside the wall, clear of the treads and of the hand
  const [low, high] = [at(left + 38, floor - 13), at(right - 13, top(3) + 60)];
  const trail =
    spec.soreness === 'rising' ? [arrow(low, high)] : spec.soreness === 'falling' ? [arrow(high, low)] : [];
  return [
    // one flight seen from the side, each tread with its nose: a stair, and no chart
    { d: straight(side, true), fill: 'sheet', line: 'ink', weight: 3 },
    { d: steps.map(tread).join(''), fill: 'plate', line: 'ink', weight: 2.4 },
    ...trail,
    { d: steps.map((step) => painRays(middle(step), step)).join(''), line: 'mark', weight: 4.4 },
    ...hand(before, before === now ? -27 : 0)
      .slice(0, 1)
      .map((shape): Shape => ({ d: shape.d, line: 'ink', weight: 2.6, dash: '4 5' })),
    ...hand(now, 0),
    { d: smooth(cuff, true, 0.3), fill: 'gown', line: 'ink' },
  ];
}
