/** Moments at which the child chooses between two pictures, both truly possible. Nothing marks one of them. */
import type { Instant } from '../units.ts';
import { isDone, movedInDay, type DayBook } from './book.ts';
import type { DayEventId, DayEventTable } from './ids.ts';
import { MODES, type AgeMode } from './modes.ts';
import type { Day, Tile } from './tiles.ts';

/** Whole sets: whoever chose has another set next time. */
export const MOMENT_CHOICES = {
  'watch-or-look-away': ['watch', 'look-away'],
  'which-hand': ['left-hand', 'right-hand'],
  'who-counts': ['child-counts', 'grown-up-counts'],
} as const;
export type MomentChoiceId = keyof typeof MOMENT_CHOICES;
export type MomentOption = (typeof MOMENT_CHOICES)[MomentChoiceId][number];

export interface Choice {
  id: string;
  options: readonly [string, string];
  /** "Neither" may be chosen, too. */
  neither: boolean;
}

/** Without an answer for so long, it is offered again later. Source: design 5-day. */
export const NO_ANSWER_SECONDS = 5;
/** Later. Source: our proposal. */
const AGAIN_MINUTES = 10;
/** Who has let it pass so often has answered. Source: our proposal. */
const MOST_OFFERS = 3;

/**
 * What the child chooses at a hard moment: to watch or not, which hand to squeeze with, who counts.
 *
 * Shape: only what is truly possible: a hand where both are free, counting where a grown-up is there.
 * Not: whether the care takes place; that is no choice, and none is offered.
 */
export function momentChoices(mode: AgeMode, at: { handsToChoose: 0 | 1 | 2; grownUp: boolean }): Choice[] {
  const { choices, neither } = MODES[mode];
  if (!choices) return [];
  const possible: MomentChoiceId[] = [
    'watch-or-look-away',
    ...(at.handsToChoose === 2 ? (['which-hand'] as const) : []),
    ...(at.grownUp ? (['who-counts'] as const) : []),
  ];
  return possible.map((id) => ({ id, options: MOMENT_CHOICES[id], neither }));
}

/**
 * What opens and closes a day keeps its place, and only the planner may place an idea elsewhere. Food waits for what the
 * card says about eating.
 */
const STAYS: readonly DayEventId[] = ['wake', 'curtain-time', 'goodnight', 'play'];

/** Whether the family may put it elsewhere: movable, not yet begun, not done, no care. */
function isMovable(book: DayBook, tile: Tile, now: Instant, table: DayEventTable): boolean {
  const row = table[tile.kind];
  const free = row.place === 'movable' && row.group !== 'care' && !tile.hurts;
  return free && tile.from > now && !isDone(book, tile.id);
}

/** Two neighbours of the day, where both stand as they were told and either may begin. */
function swap(book: DayBook, day: Day, first: Tile, second: Tile): DayBook | undefined {
  const [a, b] = [first, second].map(({ id }) => book.events.find((event) => event.id === id));
  if (!a || !b || first.to !== second.from) return undefined;
  const [long, short] = [first.to - first.from, second.to - second.from];
  // what was displaced has no place of its own that it could give away
  const asTold =
    first.from - day.wake === a.from - book.wake && second.from - day.wake === b.from - book.wake;
  if (!asTold || long !== a.minutes || short !== b.minutes) return undefined;
  // a third that wants the same time would have to make room for another than before
  const until = a.from + long + short;
  const third = book.events.some(
    ({ id, off, from, minutes }) =>
      id !== a.id && id !== b.id && !off && from < until && a.from < from + minutes,
  );
  if (third) return undefined;
  const swapped = movedInDay(book, b.id, { from: a.from, minutes: short }, 'wanted');
  return movedInDay(swapped, a.id, { from: a.from + short, minutes: long }, 'wanted');
}

/**
 * Which of two things comes first, where it makes no difference to anything else: neighbours that may both be moved.
 *
 * Shape: at most one, the next of the day; its options are the ids of the two parts.
 * @example orderChoice(day, book, 'three-doors', now, DAY_EVENTS)?.options // ['r-story', 'r-song']
 */
export function orderChoice(
  day: Day,
  book: DayBook,
  mode: AgeMode,
  now: Instant,
  table: DayEventTable,
): Choice | undefined {
  const { choices, neither } = MODES[mode];
  if (!choices) return undefined;
  const isFree = (tile: Tile) =>
    isMovable(book, tile, now, table) &&
    table[tile.kind].modes.includes(mode) &&
    !STAYS.includes(tile.kind) &&
    table[tile.kind].group !== 'food';
  for (let n = 0; n + 1 < day.tiles.length; n++) {
    const [first, second] = [day.tiles[n]!, day.tiles[n + 1]!];
    if (isFree(first) && isFree(second) && swap(book, day, first, second))
      return { id: `first-${first.id}-${second.id}`, options: [first.id, second.id], neither };
  }
  return undefined;
}

/**
 * The day after the child chose which of two neighbours comes first; the other follows at once.
 * Shape: the same day where it stood first already, or where they cannot change places.
 */
export function chosenFirst(
  book: DayBook,
  day: Day,
  options: readonly [string, string],
  id: string,
): DayBook {
  const [first, second] = options.map((one) => day.tiles.find((tile) => tile.id === one));
  if (!first || !second || id !== second.id) return book;
  return swap(book, day, first, second) ?? book;
}

/** What became of an offered choice so far. */
export interface Offer {
  /** How often it was shown and let pass. */
  passed: number;
  lastAt: Instant;
}

/**
 * When a choice is offered: at once, again ten minutes after it was let pass, and after the third time no more today.
 * Letting it pass is no answer, and nothing is chosen for the child.
 */
export function offerState(offer: Offer | undefined, now: Instant): 'now' | 'later' | 'no-more' {
  if (!offer) return 'now';
  if (offer.passed >= MOST_OFFERS) return 'no-more';
  return now - offer.lastAt >= AGAIN_MINUTES ? 'now' : 'later';
}

/**
 * Whether the child may put this part of the day elsewhere: from nine, what is movable and has not begun, never a care.
 */
export const mayMove = (
  book: DayBook,
  tile: Tile,
  mode: AgeMode,
  now: Instant,
  table: DayEventTable,
): boolean => MODES[mode].ownPlan && tile.kind !== 'play' && isMovable(book, tile, now, table);
