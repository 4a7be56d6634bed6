/** The day as it is kept: what stands in it, where it stood first, what the child has pushed through the door. */
import { dayNumberOf } from '../clock/calendar.ts';
import type { OffsetAt } from '../clock/local.ts';
import type { DayMinute } from '../play/types.ts';
import type { Instant } from '../units.ts';
import { isFiller, type DayEventId } from './ids.ts';
import { momentOf } from './wall.ts';

/** Why something no longer stands where it stood. */
export const WHYS = ['came-first', 'asleep', 'ward-said', 'wanted', 'not-today', 'planned-anew'] as const;
export type Why = (typeof WHYS)[number];
/** Who put it into the day. */
export const SOURCES = ['bed', 'plan', 'routine', 'family', 'child'] as const;
export type EventSource = (typeof SOURCES)[number];

export interface Place {
  from: DayMinute;
  minutes: number;
}

export interface DayEvent extends Place {
  id: string;
  kind: DayEventId;
  source: EventSource;
  /** The idea of the plan that is played; for a hard moment, what is kept for it. */
  ideas?: readonly string[];
  /** Hurts although its kind need not. */
  hurts?: true;
  /** It happened, or is happening, and nobody asked the plan: everything else makes room. */
  cameUp?: true;
  /** Nobody's but the child's: on no print and in no grown-up's day. */
  private?: true;
  /** Where it stood before it was first changed. */
  was?: Place;
  why?: Why;
  /** What came first, by id. */
  by?: string;
  /** It does not take place today; it is told, not forgotten. */
  off?: true;
}

/** A picture that went through the door, with the part of the day it had: there it stays. */
export interface DoneMark {
  event: string;
  from: Instant;
  to: Instant;
}

export interface DayBook {
  /** The ward's day, as 2026-01-31. */
  day: string;
  wake: DayMinute;
  lightsOut: DayMinute;
  quiet: readonly { from: DayMinute; until: DayMinute }[];
  /** By id, in the order of the alphabet: whoever wrote first, it is the same day. */
  events: readonly DayEvent[];
  done: readonly DoneMark[];
}

/** Undo is offered for so long. Source: design 5-day. */
export const UNDO_SECONDS = 10;
/** Shorter than this no part of a day is: what comes up ends what was going on, but never to nothing. */
export const LEAST_MINUTES = 5;

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
/** Whether its picture went through the door. */
export const isDone = (book: Pick<DayBook, 'done'>, id: string): boolean =>
  book.done.some(({ event }) => event === id);

/** The number of the book's day. */
export function dayOfBook(book: Pick<DayBook, 'day'>): number {
  const number = dayNumberOf(book.day);
  if (number === undefined)
    throw new RangeError(`domain/day › book › day: a day of the calendar, saw "${book.day}"`);
  return number;
}

/**
 * The day with one thing more. In whatever order things are added, it is the same day.
 *
 * Shape: an id that is there already changes nothing, and nobody adds open time or the night.
 */
export function added(book: DayBook, event: DayEvent): DayBook {
  if (isFiller(event.kind) || book.events.some(({ id }) => id === event.id)) return book;
  return { ...book, events: [...book.events, event].sort(byId) };
}

/**
 * Something came up: it is true, so it stands where it is, and what was pushed through the door before it ends there.
 *
 * Not: when it will be over; the length is what somebody guessed.
 */
export function cameUpInDay(book: DayBook, event: DayEvent, offsetAt: OffsetAt): DayBook {
  const next = added(book, { ...event, cameUp: true });
  if (next === book) return book;
  const at = momentOf(dayOfBook(book), event.from, offsetAt);
  const cut = (mark: DoneMark): DoneMark =>
    mark.from + LEAST_MINUTES <= at && at < mark.to ? { ...mark, to: at } : mark;
  return { ...next, done: book.done.map(cut) };
}

function changed(book: DayBook, id: string, change: (event: DayEvent) => DayEvent): DayBook {
  if (isDone(book, id)) return book;
  const events = book.events.map((event) => (event.id === id ? change(event) : event));
  return events.some((event, n) => event !== book.events[n]) ? { ...book, events } : book;
}

/** Where it stood first. */
export const firstPlace = ({ was, from, minutes }: DayEvent): Place => was ?? { from, minutes };

function unchanged(event: DayEvent): DayEvent {
  const { was, why: _why, by: _by, off: _off, ...rest } = event;
  return { ...rest, ...(was ?? {}) };
}

/**
 * The day with something put elsewhere; where it stood first is kept, and why it went.
 *
 * Shape: what is done already stays where it was.
 * Units: minutes since the ward's midnight.
 * @example movedInDay(book, 'wash', { from: 600, minutes: 30 }, 'came-first', 'x-ray-1')
 */
export function movedInDay(book: DayBook, id: string, to: Place, why: Why, by?: string): DayBook {
  return changed(book, id, (event) => {
    const first = firstPlace(event);
    const plain = unchanged(event);
    if (first.from === to.from && first.minutes === to.minutes) return plain;
    return {
      ...plain,
      from: to.from,
      minutes: to.minutes,
      was: first,
      why,
      ...(by === undefined ? {} : { by }),
    };
  });
}

/** The day without something that was planned; it is told with its reason. What is done already stays. */
export function takenOff(book: DayBook, id: string, why: Why, by?: string): DayBook {
  return changed(book, id, (event) => ({
    ...unchanged(event),
    ...{ off: true as const, why },
    ...(by === undefined ? {} : { by }),
  }));
}

/** Something stands again where it stood first. */
export function asPlanned(book: DayBook, id: string): DayBook {
  return changed(book, id, unchanged);
}

const meets = (a: Place, b: Place) => a.from < b.from + b.minutes && b.from < a.from + a.minutes;
const samePlace = (a: Place, b: Place) => a.from === b.from && a.minutes === b.minutes;
/** Reasons that come from the bed's day, not from somebody's wish: only these does a new bed's day take back. */
const OF_THE_BED: readonly (Why | undefined)[] = ['came-first', 'planned-anew', 'asleep'];

/** What came up for this event: a new part of the day that stands in its first place, the earliest of them. */
function cause(event: DayEvent, news: readonly DayEvent[]): { why: Why; by?: string } {
  const first = firstPlace(event);
  const by = news
    .filter((one) => one.source === 'bed' && one.id !== event.id && meets(one, first))
    .sort((a, b) => a.from - b.from || byId(a, b))[0];
  if (!by) return { why: 'planned-anew' };
  return { why: by.kind === 'nap' ? 'asleep' : 'came-first', by: by.id };
}

/**
 * The kept day after the bed's day or its plan changed: what is new came up, what moved or went is explained, what the
 * family or the child put in stays, and so does everything that is done.
 *
 * Shape: `fresh` is the day as the bed tells it now; a later day's begins anew, and one that a clock set back calls earlier
 * changes nothing. Once more with the same, the same day.
 * With `lost`, parts of the kept day could not be read: what is missing is put back where the bed has it, and pushes
 * nothing away, since nobody can tell whether it is new.
 */
export function renewed(book: DayBook, fresh: DayBook, offsetAt: OffsetAt, lost = false): DayBook {
  if (book.day !== fresh.day) return book.day > fresh.day ? book : fresh;
  const news = fresh.events.filter(({ id }) => !book.events.some((event) => event.id === id));
  // what explains a change may have come up at an earlier time
  const arrived = [...(lost ? [] : news), ...book.events.filter(({ cameUp }) => cameUp)];
  let next: DayBook = { ...book, wake: fresh.wake, lightsOut: fresh.lightsOut, quiet: fresh.quiet };
  for (const event of news)
    next = event.source === 'bed' && !lost ? cameUpInDay(next, event, offsetAt) : added(next, event);
  for (const event of book.events) {
    if (event.source === 'family' || event.source === 'child') continue;
    const now = fresh.events.find(({ id }) => id === event.id);
    const ofTheBed = event.why === undefined || OF_THE_BED.includes(event.why);
    if (!now) {
      if (ofTheBed && !event.off) {
        const { why, by } = cause(event, arrived);
        next = takenOff(next, event.id, why, by);
      }
    } else if (samePlace(now, firstPlace(event))) {
      if (ofTheBed && event.why) next = asPlanned(next, event.id);
    } else if (ofTheBed && (event.off || !samePlace(now, event))) {
      const { why, by } = cause(event, arrived);
      next = movedInDay(next, event.id, now, why, by);
    }
    if (now) next = withIdeas(next, event.id, now);
  }
  return next;
}

/** What is kept for a hard moment may change without its time changing. */
function withIdeas(book: DayBook, id: string, { ideas }: DayEvent): DayBook {
  return changed(book, id, (event) => {
    if (`${event.ideas ?? ''}` === `${ideas ?? ''}`) return event;
    const { ideas: _ideas, ...rest } = event;
    return ideas ? { ...rest, ideas } : rest;
  });
}
