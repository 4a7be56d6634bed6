/** A hard moment at one bed: what is kept for it, and which ideas of its card this bed, this child and this room allow. */
import { brokenIn, latestEnd, minuteRange } from '../play/feasible.ts';
import type { DayProblem, HardMoment, OrdinaryWindow, Placement } from '../play/types.ts';
import { momentCard, type Step } from './moments.ts';

/** A step of the card with those of its ideas that no rule of the day bars. */
export interface StepAtBed extends Step {
  possible: readonly string[];
}
export interface MomentAtBed {
  moment: HardMoment;
  /** What the plan keeps for it; when it is there, it goes before all that is possible. */
  kept: readonly Placement[];
  before: readonly StepAtBed[];
  during: readonly StepAtBed[];
  after: readonly StepAtBed[];
}

/** Shorter than any idea lasts at least, it would bar them all. */
const AROUND_MINUTES = 30;

/**
 * The card for a hard moment of this day, with the ideas that may be used at this bed.
 *
 * Shape: `id` of a hard moment in the problem's windows; nothing where there is no such moment. What is kept for another
 * moment of the day stays kept.
 * Not: whether an idea before or after it still fits the plan of the day; those are offered, not planned.
 *
 * @example momentAtBed(problem, plan, 'bandage-1')?.kept // [{ idea: 'short-film', … }]
 */
export function momentAtBed(
  problem: DayProblem,
  placements: readonly Placement[],
  id: string,
): MomentAtBed | undefined {
  const moment = problem.windows.find(
    (window): window is HardMoment => window.kind === 'hard' && window.id === id,
  );
  if (!moment) return undefined;
  const hard = new Set(problem.windows.filter(({ kind }) => kind === 'hard').map((window) => window.id));
  const keptElsewhere = placements
    .filter(({ window }) => hard.has(window) && window !== id)
    .map(({ idea }) => idea);
  // whoever reads the card at the bed is there
  const { propped, quiet, energy } = moment;
  const around: OrdinaryWindow = {
    ...{ kind: 'ordinary', id: 'around', from: moment.from, minutes: AROUND_MINUTES },
    ...{ propped, quiet, energy, grownUp: true },
  };
  const allowed = (window: HardMoment | OrdinaryWindow) => (step: Step) => ({
    ...step,
    possible: step.ideas.filter((one) => {
      const idea = problem.ideas.find((known) => known.id === one);
      return (
        idea !== undefined &&
        !keptElsewhere.includes(one) &&
        minuteRange(idea)[0] <= window.minutes &&
        // before sleep no cord and no screen, whatever the moment
        moment.from + moment.minutes <= latestEnd(problem, idea) &&
        !brokenIn(problem, idea, window).length
      );
    }),
  });
  const card = momentCard(problem.child.ageMonths);
  return {
    moment,
    kept: placements.filter(({ window }) => window === id),
    before: card.before.map(allowed(around)),
    during: card.during.map(allowed({ ...moment, grownUp: true })),
    after: card.after.map(allowed(around)),
  };
}
