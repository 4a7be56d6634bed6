/** What to offer at this minute: the idea kept for the next hard moment, and three for now. */
import { brokenIn, latestEnd, minuteRange } from '../play/feasible.ts';
import { baseOf } from '../play/objective.ts';
import {
  FAMILIES,
  type DayMinute,
  type DayProblem,
  type HardMoment,
  type Idea,
  type OrdinaryWindow,
  type Placement,
  type PlayWindow,
} from '../play/types.ts';
import { ALONE } from './bed.ts';

/** So many minutes before a hard moment what is kept for it is not used up. Source: design 4-play, H15. */
export const KEPT_BEFORE = 180;
const NOW_MINUTES = 30;

const endOf = ({ from, minutes }: { from: DayMinute; minutes: number }) => from + minutes;

/** The next hard moment from this minute on, or the one that is going on, with what is kept for it. */
export function nextMoment(
  problem: Pick<DayProblem, 'windows'>,
  placements: readonly Placement[],
  minute: DayMinute,
): { moment: HardMoment; kept: readonly Placement[] } | undefined {
  const moment = problem.windows.find(
    (window): window is HardMoment => window.kind === 'hard' && endOf(window) > minute,
  );
  return moment && { moment, kept: placements.filter(({ window }) => window === moment.id) };
}

/** What holds at the bed at this minute, as whoever asks sees it. */
export interface AtTheBed {
  grownUp: boolean;
  propped: boolean;
  quiet: boolean;
  energy: 1 | 2 | 3;
}

/** What the day says about this minute; without a window the more careful of everything. */
export function atMinute(problem: Pick<DayProblem, 'windows'>, minute: DayMinute): AtTheBed {
  const window = problem.windows.find((one) => one.from <= minute && endOf(one) > minute);
  if (!window) return { grownUp: false, propped: false, quiet: false, energy: 2 };
  const { grownUp, propped, quiet, energy } = window;
  return { grownUp, propped, quiet, energy };
}

/** Whether a minute lies before waking or after lights-out: then the night's own short list is offered. */
export const inDarkHours = (
  { wake, lightsOut }: { wake: DayMinute; lightsOut: DayMinute },
  minute: DayMinute,
): boolean => minute < wake || minute >= lightsOut;

const windowNow = (at: AtTheBed, minute: DayMinute): OrdinaryWindow => ({
  kind: 'ordinary',
  id: 'now',
  from: minute,
  minutes: NOW_MINUTES,
  ...at,
});

/** Ideas kept for a hard moment that begins within three hours, or is going on. */
function keptIdeas(problem: DayProblem, placements: readonly Placement[], minute: DayMinute): Set<string> {
  const soon = new Set(
    problem.windows
      .filter(
        (window) => window.kind === 'hard' && endOf(window) > minute && window.from - minute < KEPT_BEFORE,
      )
      .map(({ id }) => id),
  );
  return new Set(placements.filter(({ window }) => soon.has(window)).map(({ idea }) => idea));
}

function best(problem: DayProblem, window: PlayWindow, without: ReadonlySet<string>): Idea[] {
  return problem.ideas
    .filter(
      (idea) =>
        !without.has(idea.id) &&
        minuteRange(idea)[0] <= window.minutes &&
        window.from + minuteRange(idea)[0] <= latestEnd(problem, idea) &&
        !brokenIn(problem, idea, window).length,
    )
    .map((idea) => ({ idea, worth: baseOf(problem, idea, window) }))
    .sort((a, b) => b.worth - a.worth || (a.idea.id < b.idea.id ? -1 : 1))
    .map(({ idea }) => idea);
}

/** The first of the list, each of another family of kinds as long as there are others. */
function ofDifferentFamilies(ideas: readonly Idea[], count: number): Idea[] {
  const chosen: Idea[] = [];
  const take = (fits: (idea: Idea) => boolean) => {
    for (const idea of ideas)
      if (chosen.length < count && !chosen.includes(idea) && fits(idea)) chosen.push(idea);
  };
  take((idea) => !chosen.some((other) => FAMILIES[other.kind] === FAMILIES[idea.kind]));
  take(() => true);
  return chosen;
}

/**
 * Ideas that may begin at this minute: what the plan holds now first, then the best, each of another family. None that
 * is kept for a hard moment within three hours, and none that was done today.
 *
 * Shape: at most `count` idea ids.
 * @example ideasForNow(problem, plan.placements, 14 * 60, { grownUp: true, propped: false, quiet: false, energy: 2 })
 */
export function ideasForNow(
  problem: DayProblem,
  placements: readonly Placement[],
  minute: DayMinute,
  at: AtTheBed,
  count = 3,
): string[] {
  const kept = keptIdeas(problem, placements, minute);
  const done = (problem.done ?? []).map(({ idea }) => idea);
  const window = windowNow(at, minute);
  const planned = placements.find((one) => one.from <= minute && minute < endOf(one))?.idea;
  // a child who is bored is offered something to do
  const idle = problem.bored && planned !== ALONE ? [ALONE] : [];
  const found = best(problem, window, new Set([...kept, ...done, ...idle]));
  const first = found.filter(({ id }) => id === planned);
  return ofDifferentFamilies([...first, ...found.filter(({ id }) => id !== planned)], count).map(
    ({ id }) => id,
  );
}
