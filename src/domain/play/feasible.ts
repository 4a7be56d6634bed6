/** Which idea may stand where: H1–H13 and H17 for one placement by itself. What several of them share is in plan.ts. */
import type { DayMinute, DayProblem, HardMoment, Idea, OrdinaryWindow, PlayWindow, RuleId } from './types.ts';

export const GRID = 5;
/** Whether a minute, or a length, lies on the grid of five. */
export const onGrid = (value: number) => Number.isInteger(value) && value % GRID === 0;
/** A day has this many windows at most; the search is made for them. */
export const MOST_WINDOWS = 16;
/** Play is planned between six in the morning and ten in the evening; the rest is night. */
export const PLAY_FROM = 6 * 60;
export const PLAY_UNTIL = 22 * 60;
/** No free cord and no screen this long before lights-out. */
const LAST_HOUR = 60;
/** After a hard moment, this long nothing livelier than the calmest starts. */
export const SETTLE = 10;
const UNDER_TWO = 24;
const UNDER_THREE = 36;
const UNDER_FIVE = 60;
const UNDER_SIX = 72;
const UNDER_THIRTEEN = 156;
/** Most screen minutes a day between two and four, whatever the family sets. */
const SMALL_CHILD_SCREEN = 60;

type Timed = { from: DayMinute };
const startOf = ({ from }: Timed) => (Number.isFinite(from) ? from : Infinity);
/** By the clock; what has no time comes last, where it upsets nothing in the order of the others. */
export const byTheClock = (a: Timed, b: Timed) => startOf(a) - startOf(b);

/**
 * The minutes an idea can take on the grid: from its shortest, rounded up, in fives.
 *
 * Errors: none; a longest below the rounded shortest counts as the shortest.
 *
 * @example minuteRange({ minutes: [2, 8] }) // [5, 5]
 */
export function minuteRange({ minutes: [least, most] }: Pick<Idea, 'minutes'>): [number, number] {
  const low = GRID * Math.max(1, Math.ceil(least / GRID));
  return [low, Math.max(low, GRID * Math.floor(most / GRID))];
}

/**
 * Whether a grown-up must be there: always under three; small parts and cords under six; whatever the idea itself asks
 * for. From six on a child may listen or watch alone though a lead hangs from the player: older children and teenagers do
 * so at home, and being watched all day is a hardship of its own. A cord stays barred under three and in the last hour
 * before lights-out, when nobody watches it.
 *
 * Source: design 4-play, H5 (our proposal).
 */
export function needsGrownUp(idea: Idea, ageMonths: number): boolean {
  return (
    ageMonths < UNDER_THREE ||
    idea.who === 'adult' ||
    (ageMonths < UNDER_SIX && idea.cautions.some((code) => code === 'small-parts' || code === 'cord')) ||
    idea.cautions.some((code) => code === 'not-in-mouth' || code === 'scissors')
  );
}

/**
 * How long after the day's first window play may go on, so that the night holds all the sleep that age needs and a nap
 * that somebody slept through is a gift.
 *
 * Shape: completed months -> minutes: 24 hours less the lower figure of sleep.
 * Source: aasm-sleep-2016: at least 11 h at one and two, 10 h from three to five, 9 h from six to twelve, 8 h from
 * thirteen on.
 */
export function playSpan(ageMonths: number): number {
  if (ageMonths < UNDER_THREE) return 13 * 60;
  if (ageMonths < UNDER_SIX) return 14 * 60;
  return ageMonths < UNDER_THIRTEEN ? 15 * 60 : 16 * 60;
}

/**
 * Screen minutes that may be planned: what the family set, never any under two, at most 60 from two to four.
 *
 * Source: who-screens-2019; above four the family decides.
 */
export function screenLimit({ child, limits }: Pick<DayProblem, 'child' | 'limits'>): number {
  if (child.ageMonths < UNDER_TWO) return 0;
  return child.ageMonths < UNDER_FIVE
    ? Math.min(SMALL_CHILD_SCREEN, limits.screenMinutes)
    : limits.screenMinutes;
}

const wanted = (list: readonly string[], idea: Idea) => list.includes(idea.id) || list.includes(idea.kind);
const tooYoung = (idea: Idea, ageMonths: number) =>
  ageMonths < 12 * idea.ages[0] || ageMonths < (idea.fromMonths ?? 0) || ageMonths >= 12 * (idea.ages[1] + 1);

/** Rules that bar an idea from this bed all day, wherever it is put. */
function brokenAtThisBed(problem: DayProblem, idea: Idea): RuleId[] {
  const { child, room, freeHands } = problem;
  const has = (code: Idea['cautions'][number]) => idea.cautions.includes(code);
  const broken: RuleId[] = [];
  if (idea.barred?.length) broken.push('barred');
  if (tooYoung(idea, child.ageMonths)) broken.push('H1');
  if (idea.hands > freeHands) broken.push('H4');
  if (
    (has('small-parts') && (child.ageMonths < UNDER_THREE || child.mouths)) ||
    (has('cord') && child.ageMonths < UNDER_THREE)
  )
    broken.push('H6');
  if (
    (room.isolation !== 'none' && idea.wipe === 'no') ||
    (room.isolation === 'breath' && has('breath')) ||
    idea.things.some((thing) => room.usedElsewhere.includes(thing))
  )
    broken.push('H7');
  if (idea.things.some((thing) => !room.things.includes(thing))) broken.push('H9');
  if (idea.screen === 'yes' && child.ageMonths < UNDER_TWO) broken.push('H11');
  if (
    wanted(child.never, idea) ||
    idea.needs.some((need) => child.lacks.includes(need)) ||
    (idea.allowedBy && !problem.permissions.includes(idea.allowedBy))
  )
    broken.push('H13');
  return broken;
}

function brokenAtMoment(idea: Idea, moment: HardMoment): boolean {
  const named =
    moment.procedure === 'other'
      ? idea.moments.includes('needle') && idea.moments.includes('bandage')
      : idea.moments.includes(moment.procedure);
  return !named || idea.hands > moment.freeHands || idea.tray;
}

/**
 * The rules an idea breaks in this window at any time of it: an empty list says that it may stand there, once its
 * minutes fit.
 *
 * Shape: idea and window of the problem -> ids of H1, H3–H13 and `barred`, each once. H11 is only the child's age here.
 */
export function brokenIn(problem: DayProblem, idea: Idea, window: PlayWindow): RuleId[] {
  const broken = brokenAtThisBed(problem, idea);
  if (idea.position === 'propped' && !window.propped) broken.push('H3');
  if (needsGrownUp(idea, problem.child.ageMonths) && !window.grownUp) broken.push('H5');
  const lit = idea.screen !== 'no' || idea.things.includes('torch');
  if (window.quiet && (idea.noise > 0 || (problem.room.shared && lit && !idea.dark))) broken.push('H8');
  if (window.kind === 'hard' && brokenAtMoment(idea, window)) broken.push('H10');
  if (idea.cautions.includes('food') && !(problem.eating && window.propped)) broken.push('H12');
  return broken;
}

/**
 * The latest minute at which an idea must be over: cords and screens are put away an hour before lights-out.
 *
 * Source: design 4-play, H6 and H11; a call with home is no screen time.
 */
export function latestEnd({ lightsOut }: Pick<DayProblem, 'lightsOut'>, idea: Idea): number {
  return idea.screen === 'yes' || idea.cautions.includes('cord') ? lightsOut - LAST_HOUR : lightsOut;
}

/** The rules broken by what is over too late: a film may hang on a lead as well. */
export const lateRules = ({ screen, cautions }: Idea): RuleId[] => [
  ...(screen === 'yes' ? (['H11'] as const) : []),
  ...(screen !== 'yes' || cautions.includes('cord') ? (['H6'] as const) : []),
];

/** How long after a hard moment this window begins; infinite where none came before. */
export function sinceMoment(windows: readonly PlayWindow[], from: number): number {
  let since = Infinity;
  for (const window of windows) {
    const gap = from - window.from - window.minutes;
    if (window.kind === 'hard' && gap >= 0) since = Math.min(since, gap);
  }
  return since;
}

/**
 * Most minutes of play in the ordinary windows: 60 in a hundred of their length, 50 under six; the rest is free.
 *
 * Units: minutes, rounded down to five.
 * Source: design 4-play, H16 (our proposal).
 */
export function playCap(windows: readonly PlayWindow[], ageMonths: number): number {
  const total = windows.reduce((sum, { kind, minutes }) => sum + (kind === 'ordinary' ? minutes : 0), 0);
  return GRID * Math.floor((total * (ageMonths < UNDER_SIX ? 5 : 6)) / (10 * GRID));
}

/** Ordinary windows in which half an hour can stay free, by the half of the day in which they begin. */
export const NOON = 12 * 60;
export const LONG_FREE = 30;
export const inMorning = (window: Pick<OrdinaryWindow, 'from'>) => window.from < NOON;
