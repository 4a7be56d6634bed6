/** The child's own touches. None of them is a note or a look, none moves a care, and the call button is always there. */
import type { OffsetAt } from '../clock/local.ts';
import type { Instant } from '../units.ts';
import type { DayBook } from './book.ts';
import { chosenFirst, orderChoice } from './choices.ts';
import { isNightIn, mayPush, pushed, takenBack } from './doors.ts';
import { FEELINGS, type Feeling, type FeelingPressed } from './feelings.ts';
import type { DayEventTable } from './ids.ts';
import { MODES, type AgeMode } from './modes.ts';
import { holdUpCards, type HoldUpCard } from './private.ts';
import { dayOf, type DayFacts } from './tiles.ts';

/** Always at the strip's edge, by day and by night; each opens the call button's page with its sentence. */
export const EDGE_PICTURES = ['toes-feel-funny', 'it-hurts', 'need-toilet', 'thirsty'] as const;
export type EdgePicture = (typeof EDGE_PICTURES)[number];
/** Every page that tells a child to press the call button; the last says no reason, and none is needed. */
export const CALLS = [...EDGE_PICTURES, 'please-come'] as const;
export type CallId = (typeof CALLS)[number];

/** What the child's pages hold; only the day itself is kept longer than today. */
export interface ChildDay {
  book: DayBook;
  feelings: readonly FeelingPressed[];
  /** "It hurts" was pressed today. */
  hurtsPressed: boolean;
  open: { page: 'day' } | { page: 'call-button'; sentence: EdgePicture } | { page: 'card'; card: HoldUpCard };
}

export type Tap =
  | { kind: 'push'; id: string }
  | { kind: 'take-back'; id: string; seconds: number }
  | { kind: 'edge'; picture: EdgePicture }
  | { kind: 'feel'; picture: Feeling }
  | { kind: 'first'; id: string }
  | { kind: 'hold-up'; card: HoldUpCard }
  | { kind: 'close' };

export interface AtTouch {
  mode: AgeMode;
  now: Instant;
  table: DayEventTable;
  facts: DayFacts;
  offsetAt: OffsetAt;
}

/** More than a child presses in a day; wild tapping must not fill the device. */
export const MOST_PRESSED = 50;

/** A day as a child opens it. */
export const openedDay = (book: DayBook): ChildDay => ({
  ...{ book, feelings: [], hurtsPressed: false },
  open: { page: 'day' },
});

/**
 * What one touch of the child changes.
 *
 * Shape: what is not possible now changes nothing. At night only the edge and the way back are there.
 * Not: any note; there is nowhere in it for one.
 *
 * @example touched(openedDay(book), { kind: 'edge', picture: 'thirsty' }, at).open // { page: 'call-button', … }
 */
export function touched(child: ChildDay, tap: Tap, at: AtTouch): ChildDay {
  if (tap.kind === 'edge') {
    if (!EDGE_PICTURES.includes(tap.picture)) return child;
    return {
      ...child,
      hurtsPressed: child.hurtsPressed || tap.picture === 'it-hurts',
      open: { page: 'call-button', sentence: tap.picture },
    };
  }
  if (tap.kind === 'close') return { ...child, open: { page: 'day' } };
  const { mode, now, table, offsetAt } = at;
  const { book } = child;
  // held up by day or by night: what it asks for cannot wait until morning
  if (tap.kind === 'hold-up')
    return holdUpCards(mode).includes(tap.card)
      ? { ...child, open: { page: 'card', card: tap.card } }
      : child;
  const day = dayOf(book, table, at.facts, offsetAt);
  if (isNightIn(day, now, offsetAt)) return child;
  switch (tap.kind) {
    case 'push':
      return mayPush(day, book, mode, tap.id, now, table, offsetAt) === 'go'
        ? { ...child, book: pushed(book, day, tap.id) }
        : child;
    case 'take-back':
      return { ...child, book: takenBack(book, tap.id, tap.seconds) };
    case 'feel': {
      const known = FEELINGS.includes(tap.picture) && child.feelings.length < MOST_PRESSED;
      return known ? { ...child, feelings: [...child.feelings, { picture: tap.picture, at: now }] } : child;
    }
    case 'first': {
      const choice = orderChoice(day, book, mode, now, table);
      return choice && choice.options.includes(tap.id)
        ? { ...child, book: chosenFirst(book, day, choice.options, tap.id) }
        : child;
    }
  }
}

/** Small jobs of the day for who is nine to twelve. None asks for a look, and none is graded. */
export const JOBS = [
  'toe-reporter',
  'weather-reporter',
  'question-keeper',
  'time-keeper',
  'day-writer',
] as const;
export type Job = (typeof JOBS)[number];

/**
 * The job of a day: another one each day, the same on every device.
 * Units: the number of the day, as `dayNumberOf` gives it.
 */
export const jobOf = (mode: AgeMode, day: number): Job | undefined =>
  MODES[mode].jobs ? JOBS[((day % JOBS.length) + JOBS.length) % JOBS.length] : undefined;
