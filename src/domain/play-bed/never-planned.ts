/** Why an idea of somebody's own stands nowhere in a day, before anybody waits for it in vain. */
import { brokenIn, lateRules, latestEnd, minuteRange, screenLimit } from '../play/feasible.ts';
import type { DayProblem, Idea, PlayWindow, RuleId } from '../play/types.ts';
import type { PlayBed } from './bed.ts';
import { clashesOf, type Clash } from './heeded.ts';
import { ideaOf } from './own-idea.ts';
import { problemOf } from './problem.ts';

export interface Barring {
  /** In the order of their numbers; never more than one window's. */
  rules: readonly RuleId[];
  /** What was ticked about the child and the bed and speaks against it; `rules` then do not say H13 for that alone. */
  clashes: readonly Clash[];
}

/** Every rule that keeps an idea out of one window, whatever else stands in the day. */
function brokenThere(problem: DayProblem, idea: Idea, window: PlayWindow): RuleId[] {
  const rules = new Set(brokenIn(problem, idea, window));
  const [least] = minuteRange(idea);
  if (least > window.minutes) rules.add('H2');
  if (window.from + least > latestEnd(problem, idea)) for (const rule of lateRules(idea)) rules.add(rule);
  if (window.kind === 'ordinary' && idea.screen === 'yes' && least > screenLimit(problem)) rules.add('H11');
  return [...rules].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

/**
 * The rules for which an own idea can stand nowhere in this bed's day; nothing where it may stand somewhere, where it was
 * done today, or where the day has no room for any play.
 *
 * Shape: the rules that hold in every window; where each window has a rule of its own, those of the window with the fewest.
 * Errors: none; an id that is no own idea of the bed is not barred.
 * Not: whether the plan will choose it. Other ideas may be worth more.
 *
 * @example barringOf(bed, 'own-1', IDEAS)?.rules // ['H1', 'H6']
 */
export function barringOf(bed: PlayBed, id: string, library: readonly Idea[]): Barring | undefined {
  const own = bed.own.find((one) => one.id === id);
  if (!own || bed.done.some(({ idea }) => idea === id)) return undefined;
  const idea = ideaOf(own);
  const clashes = clashesOf(bed, idea);
  const { problem } = problemOf(bed, library);
  // what the bed's ticks say is named by itself
  const asked = clashes.length ? withoutWord(problem, bed, idea) : problem;
  const places = problem.windows.map((window) => brokenThere(asked, idea, window));
  const [first] = [...places].sort((a, b) => a.length - b.length);
  if (!first || (first.length === 0 && clashes.length === 0)) return undefined;
  const everywhere = first.filter((rule) => places.every((rules) => rules.includes(rule)));
  return { rules: everywhere.length ? everywhere : first, clashes };
}

/** The problem in which only the family's own word bars this idea. */
function withoutWord(problem: DayProblem, bed: PlayBed, idea: Idea): DayProblem {
  const said = [...bed.child.never, ...bed.notToday].includes(idea.id);
  const never = problem.child.never.filter((word) => word !== idea.id);
  return { ...problem, child: { ...problem.child, never: said ? [...never, idea.id] : never } };
}
