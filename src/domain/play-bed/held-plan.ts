/** What of a plan still holds once the bed was ticked anew: a plan never says what the bed forbids. */
import { brokenIn, latestEnd } from '../play/feasible.ts';
import type { DayMinute, Idea, Placement } from '../play/types.ts';
import type { PlayBed } from './bed.ts';
import { problemOf } from './problem.ts';

const endOf = ({ from, minutes }: { from: DayMinute; minutes: number }) => from + minutes;

/**
 * The bed with what has not begun and no longer suits it left out of its plan: hands that are not free any more, an event
 * or a hard moment that stands there now, a fear, a thing that is gone.
 *
 * Shape: another bed, to be shown and planned from, or the same one; the plan that is kept stays as it was.
 * Units: `now` in minutes since the ward's midnight; what began before stays.
 * Not: whether the day as a whole is still the best, or keeps its share of free time.
 *
 * @example heldPlan({ ...bed, freeHands: 0 }, IDEAS, 600).plan
 */
export function heldPlan(bed: PlayBed, library: readonly Idea[], now: DayMinute): PlayBed {
  if (!bed.plan) return bed;
  const { problem } = problemOf(bed, library);
  const ideas = new Map(problem.ideas.map((idea) => [idea.id, idea]));
  const isMoment = (id: string) => bed.sketch.moments.some((moment) => moment.id === id);
  const holds = (placement: Placement) => {
    if (placement.from < now) return true;
    const idea = ideas.get(placement.idea);
    // other windows are cut anew with every event
    const window = problem.windows.find(
      (one) =>
        (isMoment(placement.window) ? one.id === placement.window : one.kind === 'ordinary') &&
        one.from <= placement.from &&
        endOf(placement) <= endOf(one),
    );
    if (!idea || !window || endOf(placement) > latestEnd(problem, idea)) return false;
    return brokenIn(problem, idea, window).length === 0;
  };
  const plan = bed.plan.filter(holds);
  return plan.length === bed.plan.length ? bed : { ...bed, plan };
}
