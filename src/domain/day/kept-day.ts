/** All that one device keeps of a child's day: the day, what was pressed today, and how the family wants it shown. */
import { blame, fieldsOf, type Fields } from '../play-bed/fields.ts';
import type { Fault } from '../play/types.ts';
import { instant, type Instant } from '../units.ts';
import type { DayBook } from './book.ts';
import { readDayBook } from './book-store.ts';
import { mouthWordIn, olderMouthWordIn, type MouthWord } from './by-mouth.ts';
import type { Offer } from './choices.ts';
import { FEELINGS, type FeelingPressed } from './feelings.ts';
import { AGE_MODES, type AgeMode } from './modes.ts';
import { EDGE_PICTURES, MOST_PRESSED, type EdgePicture } from './touch.ts';

/** A picture of the edge, and the minute it was pressed. It is no note and no look. */
export interface EdgePressed {
  picture: EdgePicture;
  at: Instant;
}

/** Of one day only; with the next day it is gone. */
export interface Today {
  /** The ward's day it belongs to, as 2026-01-31. */
  day: string;
  feelings: readonly FeelingPressed[];
  edge: readonly EdgePressed[];
  /** By choice: how often it was let pass. */
  offers: Readonly<Record<string, Offer>>;
  /** By choice: what the child chose, or `neither`. */
  chosen: Readonly<Record<string, string>>;
}

/** How this family wants the child's pages. */
export interface Ways {
  /** Chosen by the family; absent: by age. */
  mode?: AgeMode;
  leftHand: boolean;
  /** One key moves, one key presses. */
  oneKey: boolean;
  sound: boolean;
  /** A picture for each day behind, for who is thirteen or older. */
  dayPictures: boolean;
}

export interface KeptDay {
  book?: DayBook;
  /** The first day this device was there, as 2026-01-31. */
  firstDay?: string;
  today?: Today;
  /** It belongs to no day: a new one does not end it. */
  nothingByMouth?: MouthWord;
  ways: Ways;
}

/** Sound may be heard by the next bed, so a ward's own tablet is silent until somebody asks for it. */
export const usualWays = (shared: boolean): Ways => ({
  ...{ leftHand: false, oneKey: false, sound: !shared, dayPictures: false },
});

/** A day as nobody has touched it yet. */
export const untouched = (day: string): Today => ({
  ...{ day, feelings: [], edge: [], offers: {}, chosen: {} },
});

const MOST_CHOICES = 60;
const LONGEST_ID = 200;
const CHOICE_ID = /^[a-z0-9-]+(?:\/[a-z0-9-]+)?$/;

/**
 * Today with one more press at the edge; the same picture in the same minute is one press.
 * Not: a note. The grown-up sees picture and minute, and only today.
 */
export function pressedAtEdge(today: Today, picture: EdgePicture, at: Instant): Today {
  const twice = today.edge.some((one) => one.picture === picture && one.at === at);
  if (twice || today.edge.length >= MOST_PRESSED) return today;
  return { ...today, edge: [...today.edge, { picture, at }] };
}

const pressIn =
  <T extends string>(allowed: readonly T[]) =>
  (value: unknown, where: string, faults: Fault[]): { picture: T; at: Instant } | undefined => {
    const fields = fieldsOf(value, where, faults, ['picture', 'at']);
    const picture = fields?.choice('picture', allowed);
    const at = fields?.whole('at', 0, Number.MAX_SAFE_INTEGER);
    return picture === undefined || at === undefined ? undefined : { picture, at: instant(at) };
  };

/** Rows by the id of a choice; what cannot be read is left out. */
function byChoice<T>(
  fields: Fields,
  name: string,
  each: (value: unknown, where: string) => T | undefined,
): Record<string, T> {
  const value = fields.raw(name);
  if (value === undefined) return {};
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    fields.refuse(name, 'answers by choice');
    return {};
  }
  const rows = Object.entries(value);
  if (rows.length > MOST_CHOICES) fields.refuse(name, `at most ${MOST_CHOICES}`);
  const read: Record<string, T> = {};
  for (const [id, one] of rows.slice(0, MOST_CHOICES)) {
    const where = `${fields.where} › ${name}`;
    if (id.length > LONGEST_ID || !CHOICE_ID.test(id)) blame(fields.faults, where, 'the id of a choice', id);
    else {
      const row = each(one, `${where} › ${id}`);
      if (row !== undefined) read[id] = row;
    }
  }
  return read;
}

function todayOf(fields: Fields): Today | undefined {
  const day = fields.day('day');
  if (day === undefined) return undefined;
  const { faults } = fields;
  return {
    day,
    feelings: fields.list('feelings', MOST_PRESSED, pressIn(FEELINGS)),
    edge: fields.list('edge', MOST_PRESSED, pressIn(EDGE_PICTURES)),
    offers: byChoice(fields, 'offers', (value, where) => {
      const row = fieldsOf(value, where, faults, ['passed', 'lastAt']);
      const passed = row?.whole('passed', 0, MOST_PRESSED);
      const lastAt = row?.whole('lastAt', 0, Number.MAX_SAFE_INTEGER);
      return passed === undefined || lastAt === undefined ? undefined : { passed, lastAt: instant(lastAt) };
    }),
    chosen: byChoice(fields, 'chosen', (value, where) =>
      typeof value === 'string' && value.length <= LONGEST_ID && CHOICE_ID.test(value)
        ? value
        : blame(faults, where, 'what was chosen', value),
    ),
  };
}

function waysOf(fields: Fields | undefined, usual: Ways): Ways {
  if (!fields) return usual;
  const mode = fields.has('mode') ? fields.choice('mode', AGE_MODES) : undefined;
  const yes = (name: 'leftHand' | 'oneKey' | 'sound' | 'dayPictures') =>
    fields.has(name) ? (fields.yes(name) ?? usual[name]) : usual[name];
  return {
    ...(mode ? { mode } : {}),
    ...{ leftHand: yes('leftHand'), oneKey: yes('oneKey') },
    ...{ sound: yes('sound'), dayPictures: yes('dayPictures') },
  };
}

/**
 * Reads what a device keeps of the child's day.
 *
 * Shape: any value -> the day, today's touches and the ways, each without what cannot be read; the rest is kept. Nothing
 * kept is no fault.
 * Errors: none; `faults` names each place, the rule and what was seen.
 *
 * @example readKeptDay({ firstDay: 'once' }, usualWays(false)).faults[0]?.where // 'day › firstDay'
 */
export function readKeptDay(value: unknown, usual: Ways): { kept: KeptDay; faults: Fault[] } {
  const faults: Fault[] = [];
  if (value === undefined || value === null) return { kept: { ways: usual }, faults };
  const fields = fieldsOf(value, 'day', faults, ['book', 'firstDay', 'today', 'nothingByMouth', 'ways']);
  if (!fields) {
    // a text that breaks off may have told of it
    const said = typeof value === 'string' && value.includes('"nothingByMouth"');
    return { kept: { ...(said ? { nothingByMouth: {} } : {}), ways: usual }, faults };
  }
  const read = fields.has('book') ? readDayBook(fields.raw('book')) : undefined;
  faults.push(...(read?.faults ?? []));
  const firstDay = fields.has('firstDay') ? fields.day('firstDay') : undefined;
  const inner = (name: string, known: readonly string[]) =>
    fields.has(name) ? fields.inner(name, known) : undefined;
  const touches = inner('today', [
    'day',
    'feelings',
    'edge',
    'offers',
    'chosen',
    'nothingByMouth',
    'nothingByMouthSince',
  ]);
  const today = touches && todayOf(touches);
  const nothingByMouth = mouthWordIn(fields) ?? (touches && olderMouthWordIn(touches));
  const ways = waysOf(inner('ways', ['mode', 'leftHand', 'oneKey', 'sound', 'dayPictures']), usual);
  return {
    faults,
    kept: {
      ...(read?.book ? { book: read.book } : {}),
      ...(firstDay === undefined ? {} : { firstDay }),
      ...(today ? { today } : {}),
      ...(nothingByMouth ? { nothingByMouth } : {}),
      ways,
    },
  };
}

/** Parts of a kept day as the grown-up's page shows them. */
export type DayPart = 'list' | 'pressed' | 'eating' | 'ways';
/** The part that a fault of `readKeptDay` lies in. */
export function dayPartOf({ where }: Pick<Fault, 'where'>): DayPart {
  const [, part] = where.split(' › ');
  if (part === 'today') return 'pressed';
  return part === 'nothingByMouth' ? 'eating' : part === 'ways' ? 'ways' : 'list';
}
