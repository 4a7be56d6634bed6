/** A bed ticked anew after it was planned: nothing of the plan says what the bed forbids, and the rest stands. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { FEARS } from '#domain/play-bed/bed.ts';
import { heldPlan } from '#domain/play-bed/held-plan.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { checkPlan } from '#domain/play/check.ts';
import { planDay } from '#domain/play/plan.ts';
import { WARM_UP } from '#domain/play/solve.ts';
import type { Placement } from '#domain/play/types.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';
import { cases } from '../../helpers/same-cases.ts';

const planned = (bed: PlayBed): PlayBed => {
  const found = planDay(problemOf(bed, IDEAS).problem, WARM_UP);
  return { ...bed, plan: (found.kind === 'plan' ? found : found.rest).placements };
};
const DAY = planned(TYPICAL);
const endOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;

/** Rules of one placement by itself; the others are about its order or the day as a whole. */
const ALONE = /^(barred|H([13-9]|1[0-3]))$/;
/** What the second pair of eyes says of a placement where the bed as it is now would have it, or that there is no place. */
function wrongNow(bed: PlayBed, placement: Placement): string[] {
  const { problem } = problemOf({ ...bed, pins: [], done: [] }, IDEAS);
  const hard = bed.sketch.moments.some(({ id }) => id === placement.window);
  const window = problem.windows.find(
    (one) =>
      (hard ? one.id === placement.window : one.kind === 'ordinary') &&
      one.from <= placement.from &&
      endOf(placement) <= endOf(one),
  );
  if (!window) return ['no place'];
  return checkPlan(problem, { placements: [{ ...placement, window: window.id }] })
    .filter(({ idea, rule }) => idea === placement.idea && ALONE.test(rule))
    .map(({ rule }) => rule);
}

const anyChange: fc.Arbitrary<Partial<PlayBed>> = fc.oneof(
  fc.constantFrom(0 as const, 1 as const).map((freeHands) => ({ freeHands })),
  fc.constantFrom('contact' as const, 'breath' as const).map((isolation) => ({
    room: { ...DAY.room, isolation },
  })),
  fc.subarray([...FEARS], { minLength: 1 }).map((fears) => ({ fears })),
  fc.constant({ room: { ...DAY.room, things: [] } }),
  fc.constant({ eating: false }),
  fc.integer({ min: 12, max: 190 }).map((ageMonths) => ({ child: { ...DAY.child, ageMonths } })),
  fc
    .record({ from: fc.integer({ min: 84, max: 220 }), minutes: fc.integer({ min: 3, max: 18 }) })
    .map(({ from, minutes }) => ({
      sketch: {
        ...DAY.sketch,
        events: [...DAY.sketch.events, { id: 'x-ray-9', from: 5 * from, minutes: 5 * minutes }],
      },
    })),
  fc.integer({ min: 84, max: 220 }).map((from) => ({
    sketch: {
      ...DAY.sketch,
      moments: DAY.sketch.moments.map((moment, n) => (n ? moment : { ...moment, from: 5 * from })),
    },
  })),
);

describe('a plan after the bed was ticked anew', () => {
  it('loses what the bed bars now, by a second pair of eyes, and nothing else', () => {
    let gone = 0;
    fc.assert(
      fc.property(anyChange, fc.integer({ min: 0, max: 1439 }), (change, now) => {
        const bed = { ...DAY, ...change };
        const held = heldPlan(bed, IDEAS, now).plan!;
        for (const placement of bed.plan!) {
          const stands = placement.from < now || wrongNow(bed, placement).length === 0;
          expect([placement, held.includes(placement)]).toEqual([placement, stands]);
        }
        gone += bed.plan!.length - held.length;
      }),
      { numRuns: cases(300) },
    );
    expect(gone).toBeGreaterThan(100);
  });

  it('stays as it is, the bed itself, where nothing was ticked anew', () => {
    for (const bed of [DAY, FULL, TYPICAL]) expect(heldPlan(bed, IDEAS, 0)).toBe(bed);
    fc.assert(
      fc.property(anyBed, (any) => {
        const bed = planned({ ...any, pins: [], done: [] });
        expect(heldPlan(bed, IDEAS, 0)).toBe(bed);
      }),
      { numRuns: cases(25) },
    );
  });

  it('has no play in the time of an X-ray that was entered after it', () => {
    const first = DAY.plan!.find(({ window }) => !DAY.sketch.moments.some(({ id }) => id === window))!;
    const xRay = { id: 'x-ray-9', from: first.from, minutes: 60 };
    const held = heldPlan(
      { ...DAY, sketch: { ...DAY.sketch, events: [...DAY.sketch.events, xRay] } },
      IDEAS,
      0,
    );
    const inside = held.plan!.filter((one) => one.from < endOf(xRay) && endOf(one) > xRay.from);
    expect(inside).toEqual([]);
    expect(held.plan!.length).toBeGreaterThan(0);
  });
});
