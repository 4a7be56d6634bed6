/** Hard moments for which the plan of a bed keeps nothing, and what would open each of them. */
import { relaxationsFor } from '../play/impossible.ts';
import { fillingsOf } from '../play/model.ts';
import type { DayMinute, DayProblem, HardMoment, Idea, Placement, Relaxation } from '../play/types.ts';
import type { PlayBed } from './bed.ts';
import { problemOf } from './problem.ts';

export interface OpenMoment {
  moment: PlayBed['sketch']['moments'][number];
  /** Nothing that is still free can fill it; false where the day has only to be planned anew. */
  nothingFits: boolean;
  /** Single changes that would let something fill it, the one that opens most first. */
  relaxations: readonly Relaxation[];
}

/** Whether something could fill the moment that does not stand elsewhere for good. */
function couldBeFilled(problem: DayProblem, window: HardMoment, standing: readonly Placement[]): boolean {
  const used = standing.filter((one) => one.window !== window.id).map(({ idea }) => idea);
  const free = problem.ideas.filter(({ id }) => !used.includes(id));
  return fillingsOf(problem, free, window).length > 0;
}

/**
 * The hard moments of a planned day that are not over and have nothing kept, in order of time. It is worked out from the bed
 * as it is kept, so that it is the same after the page was closed and on a phone that took the plan as a code.
 *
 * Shape: none where no plan was made. What a fear, a language or a limit of sound bars is never proposed, only what somebody
 * ruled out by name.
 * Units: `minute` since the ward's midnight; a moment that goes on is not over.
 * Not: it changes nothing and promises nothing; see `relaxationsFor`.
 * Source: design 4-play, 5.4 ("nothing fits a hard moment": never silently empty).
 *
 * @example openMoments(bed, IDEAS, 8 * 60)[0]?.relaxations[0] // { change: 'grown-up', opens: ['hum-guess', …] }
 */
export function openMoments(bed: PlayBed, library: readonly Idea[], minute: DayMinute = 0): OpenMoment[] {
  const { plan, sketch } = bed;
  if (!plan) return [];
  const open = sketch.moments
    .filter(({ id, from, minutes }) => from + minutes > minute && !plan.some(({ window }) => window === id))
    .sort((a, b) => a.from - b.from);
  if (!open.length) return [];
  const { problem } = problemOf(bed, library);
  const moments = new Set(sketch.moments.map(({ id }) => id));
  const standing = [
    ...plan.filter(({ window, from }) => moments.has(window) || from < minute),
    ...bed.pins,
    ...bed.done,
  ];
  const said = [...bed.child.never, ...bed.notToday];
  return open.map((moment) => {
    const window = problem.windows.find(
      (one): one is HardMoment => one.kind === 'hard' && one.id === moment.id,
    );
    // one that meets something else in the day is told among the faults
    if (!window || couldBeFilled(problem, window, standing))
      return { moment, nothingFits: false, relaxations: [] };
    const relaxations = relaxationsFor(problem, window).filter(
      ({ change, what }) => change !== 'never' || (what !== undefined && said.includes(what)),
    );
    return { moment, nothingFits: true, relaxations };
  });
}
