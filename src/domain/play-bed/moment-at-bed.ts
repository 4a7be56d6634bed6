/** A hard moment at one bed: what is kept for it, and which ideas of its card this bed, this child and this room allow. */
import { brokenIn, latestEnd, minuteRange } from '../play/feasible.ts';
import type { DayProblem, HardMoment, OrdinaryWindow, Placement, PlayWindow } from '../play/types.ts';
import { momentCard, type Step } from './moments.ts';

/** A step of the card with those of its ideas that no rule of the day bars. */
export interface StepAtBed extends Step {
  possible: readonly string[];
}
export interface CardAtBed {
  before: readonly StepAtBed[];
  during: readonly StepAtBed[];
  after: readonly StepAtBed[];
}
export interface MomentAtBed extends CardAtBed {
  moment: HardMoment;
  /** What the plan keeps for it; when it is there, it goes before all that is possible. */
  kept: readonly Placement[];
}

/** Shorter than any idea lasts at least, it would bar them all. */
const AROUND_MINUTES = 30;

/**
 * How a step may be said at a bed: in its own words, which may name each of its ideas; by the names of those that are
 * possible; or not at all, since what it names is barred there.
 *
 * Shape: a step of which nobody knows the bed is said in its own words.
 */
export function sayingOf(step: Step & { possible?: readonly string[] }): 'own-words' | 'by-name' | 'unsaid' {
  const { ideas, possible = ideas, anyOfThem } = step;
  if (possible.length === ideas.length || (anyOfThem && possible.length > 0)) return 'own-words';
  return possible.length > 0 ? 'by-name' : 'unsaid';
}

/** The steps that are said: where ideas are kept, those stand in place of the steps that name others. */
export const saidSteps = <Said extends Step & { possible?: readonly string[] }>(
  steps: readonly Said[],
  isKept = false,
): Said[] => steps.filter((step) => (isKept ? step.ideas.length === 0 : sayingOf(step) !== 'unsaid'));

/** A step with what is possible in a window until an end, but for what is kept elsewhere. */
function stepIn(problem: DayProblem, window: PlayWindow, end: number, keptElsewhere: readonly string[] = []) {
  return (step: Step): StepAtBed => ({
    ...step,
    possible: step.ideas.filter((one) => {
      const idea = problem.ideas.find((known) => known.id === one);
      return (
        idea !== undefined &&
        !keptElsewhere.includes(one) &&
        minuteRange(idea)[0] <= window.minutes &&
        // before sleep no cord and no screen, whatever the moment
        end <= latestEnd(problem, idea) &&
        !brokenIn(problem, idea, window).length
      );
    }),
  });
}

/** Nothing small stands on the card of a child who puts things into the mouth. */
const givable = ({ child }: DayProblem, steps: readonly Step[]) =>
  steps.filter(({ smallParts }) => !smallParts || !child.mouths);

/**
 * The card of the child's age with what this bed allows at any time of its day, where no hard moment is told yet.
 *
 * Not: what only the time or the kind of a moment would bar; see `momentAtBed`.
 */
export function cardAtBed(problem: DayProblem): CardAtBed {
  const any: OrdinaryWindow = {
    ...{ kind: 'ordinary', id: 'any', from: 0, minutes: AROUND_MINUTES },
    ...{ propped: false, quiet: false, energy: 2, grownUp: true },
  };
  const { before, during, after } = momentCard(problem.child.ageMonths);
  const at = (steps: readonly Step[]) => givable(problem, steps).map(stepIn(problem, any, AROUND_MINUTES));
  return { before: at(before), during: at(during), after: at(after) };
}

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
  const card = momentCard(problem.child.ageMonths);
  const at = (steps: readonly Step[], window: PlayWindow) =>
    givable(problem, steps).map(stepIn(problem, window, moment.from + moment.minutes, keptElsewhere));
  return {
    moment,
    kept: placements.filter(({ window }) => window === id),
    before: at(card.before, around),
    during: at(card.during, { ...moment, grownUp: true }),
    after: at(card.after, around),
  };
}
