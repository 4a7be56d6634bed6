/** What a plan is worth, in whole points, so that every phone agrees. */
import { needsGrownUp } from './feasible.ts';
import {
  FAMILIES,
  type DayProblem,
  type HardMoment,
  type Idea,
  type Kind,
  type Placement,
  type PlayWindow,
  type Terms,
} from './types.ts';

export const ALL_TERMS: Terms = { novelty: true, wish: true, minutes: true, day: true };
const LIKE = 3;
export const NOT_FIRST = 2;
export const SAME_KIND = 2;
export const NEAR_MINUTES = 60;
export const FAMILY = 2;
export const GROWN_UP_STEP = 15;
const MESS_BEFORE = 20;
export const BORED = 3;
export const LONG_WINDOW = 45;

/** +3 liked, −3 disliked; the idea's own word before its kind's, dislike before like. */
export function likeOf(child: DayProblem['child'], idea: Idea): number {
  for (const name of [idea.id, idea.kind]) {
    if (child.dislikes.includes(name)) return -LIKE;
    if (child.likes.includes(name)) return LIKE;
  }
  return 0;
}

function noveltyOf({ history }: DayProblem, id: string): number {
  if (history.yesterday.includes(id)) return -2;
  return history.lastThreeDays.includes(id) ? 0 : 1;
}

/**
 * What one idea is worth in one window before minutes and order: liking, energy that matches, novelty, the child's wish.
 *
 * Shape: like + 2·(2 − |energy difference|) + novelty + wish.
 * Source: design 4-play, 5.4 (our proposal).
 */
export function baseOf(problem: DayProblem, idea: Idea, window: PlayWindow): number {
  const terms = problem.terms ?? ALL_TERMS;
  const match = 2 * (2 - Math.abs(idea.energy - window.energy));
  const novelty = terms.novelty ? noveltyOf(problem, idea.id) : 0;
  const fits = window.kind === 'hard' && idea.suits.some((wish) => wish === window.wish);
  return likeOf(problem.child, idea) + match + novelty + (terms.wish && fits ? 2 : 0);
}

/**
 * What one idea or two that follow one another are worth in a moment, which counts twice, thrice where it weighs most.
 *
 * Shape: the bases of one or two.
 * Source: design 4-play, 5.4 (our proposal).
 */
export function momentWorth(window: HardMoment, [one, two]: readonly number[]): number {
  const weight = window.weight === 3 ? 3 : 2;
  return two === undefined ? weight * one! : weight * Math.floor((one! + two) / 2) - NOT_FIRST;
}

/** Points for the length of an idea in an ordinary window. */
const minutePoints = (terms: Terms, minutes: number) => (terms.minutes ? Math.floor(minutes / 10) : 0);

/** Starts of everything fixed, hard moments among them, in any order. */
export function fixedStarts({ events, windows }: DayProblem): number[] {
  const hard = windows.filter(({ kind }) => kind === 'hard').map(({ from }) => from);
  return [...events, ...hard];
}

/** Whether what ends then leaves too little time to clean up before the next fixed event. */
export const shortlyBefore = (starts: readonly number[], end: number) =>
  starts.some((start) => start >= end && start - end < MESS_BEFORE);

/** One point less for each full quarter of an hour above the grown-up's budget. */
export const grownUpCost = (minutes: number, budget: number) =>
  Math.floor(Math.max(0, minutes - budget) / GROWN_UP_STEP);

/**
 * The worth of a whole plan, counted afresh.
 *
 * Shape: placements in order of time, each in a window of the problem.
 * Errors: throws for an idea or a window that the problem does not hold.
 */
export function scoreOf(problem: DayProblem, placements: readonly Placement[]): number {
  const terms = problem.terms ?? ALL_TERMS;
  const ideas = new Map(problem.ideas.map((idea) => [idea.id, idea]));
  const ideaOf = ({ idea }: Placement) => {
    const found = ideas.get(idea);
    if (!found) throw new Error(`play › scoreOf: no such idea, saw "${idea}"`);
    return found;
  };
  let score = 0;
  for (const window of problem.windows) {
    const here = placements.filter((placement) => placement.window === window.id);
    const bases = here.map((placement) => baseOf(problem, ideaOf(placement), window));
    if (window.kind === 'hard') {
      if (here.length) score += momentWorth(window, bases);
      continue;
    }
    here.forEach(({ minutes }, n) => {
      score += bases[n]! + minutePoints(terms, minutes) - (n ? NOT_FIRST : 0);
    });
    if (terms.day && problem.bored && !here.length && window.minutes > LONG_WINDOW) score -= BORED;
  }
  return terms.day ? score + dayScore(problem, placements, ideaOf) : score;
}

function dayScore(
  problem: DayProblem,
  placements: readonly Placement[],
  ideaOf: (placement: Placement) => Idea,
): number {
  const starts = fixedStarts(problem);
  let score = 0;
  let grownUp = 0;
  let before: { kind: Kind; end: number } | undefined;
  for (const placement of placements) {
    const idea = ideaOf(placement);
    const end = placement.from + placement.minutes;
    if (before && before.kind === idea.kind && placement.from - before.end <= NEAR_MINUTES)
      score -= SAME_KIND;
    if (idea.mess > 0 && shortlyBefore(starts, end)) score -= 1;
    if (needsGrownUp(idea, problem.child.ageMonths)) grownUp += placement.minutes;
    before = { kind: idea.kind, end };
  }
  const families = new Set(placements.map((placement) => FAMILIES[ideaOf(placement).kind]));
  return score + FAMILY * families.size - grownUpCost(grownUp, problem.limits.grownUpMinutes);
}
