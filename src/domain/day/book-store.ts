/** Reads a day that a device kept: whatever cannot be read is named and left out, the rest is kept. */
import { dayNumberOf } from '../clock/calendar.ts';
import { blame, eachOnce, fieldsOf, type Fields } from '../play-bed/fields.ts';
import { readStretch } from '../play-bed/stretches.ts';
import { GRID, PLAY_FROM, PLAY_UNTIL } from '../play/feasible.ts';
import type { Fault } from '../play/types.ts';
import { DAY_MINUTES, instant } from '../units.ts';
import { SOURCES, WHYS, type DayBook, type DayEvent, type DoneMark, type Place } from './book.ts';
import { ADDABLE } from './ids.ts';

/** A day planned full, with everything that came up in it. */
export const MOST = { events: 120, quiet: 6, ideas: 6 } as const;
const LONGEST_ID = 80;
const ID = /^[a-z]+(?:-[a-z0-9]+)*$/;

function placeOf(fields: Fields): Place | undefined {
  const from = fields.whole('from', 0, DAY_MINUTES - GRID, GRID);
  const minutes = fields.whole('minutes', GRID, DAY_MINUTES, GRID);
  if (from === undefined || minutes === undefined) return undefined;
  return from + minutes <= DAY_MINUTES ? { from, minutes } : fields.refuse('minutes', 'over by midnight');
}

/** A mark that is there or not; one that cannot be read counts as `otherwise`. */
function markOf(fields: Fields, name: string, otherwise: boolean): boolean {
  return fields.has(name) ? (fields.yes(name) ?? otherwise) : false;
}

function eventOf(value: unknown, where: string, faults: Fault[]): DayEvent | undefined {
  const fields = fieldsOf(value, where, faults, [
    ...['id', 'kind', 'from', 'minutes', 'source', 'ideas', 'hurts', 'cameUp', 'private'],
    ...['was', 'why', 'by', 'off'],
  ]);
  const id = fields?.text('id', ID, 'an id', LONGEST_ID);
  const place = fields && placeOf(fields);
  if (!fields || id === undefined || !place) return undefined;
  // something that nobody can name is still something: new to the child, and asked about as if it hurt
  const kind = fields.choice('kind', ADDABLE);
  // what cannot be read stays with the day when the bed's day is told anew
  const source = fields.choice('source', SOURCES) ?? 'family';
  const ideas = fields.list('ideas', MOST.ideas, (idea, at, bad) =>
    typeof idea === 'string' && idea.length <= LONGEST_ID && ID.test(idea)
      ? idea
      : blame(bad, at, 'the id of an idea', idea),
  );
  const hurts = markOf(fields, 'hurts', true) || kind === undefined;
  const kept = markOf(fields, 'private', true);
  const cameUp = markOf(fields, 'cameUp', false);
  const off = markOf(fields, 'off', false);
  const wasFields = fields.has('was') ? fields.inner('was', ['from', 'minutes']) : undefined;
  const was = wasFields && placeOf(wasFields);
  const why = fields.has('why') ? (fields.choice('why', WHYS) ?? 'not-today') : undefined;
  const by = fields.has('by') ? fields.text('by', ID, 'an id', LONGEST_ID) : undefined;
  return {
    ...{ id, kind: kind ?? 'surprise', ...place, source },
    ...(ideas.length ? { ideas } : {}),
    ...(hurts ? { hurts } : {}),
    ...(cameUp ? { cameUp } : {}),
    ...(kept ? { private: kept } : {}),
    ...(was ? { was } : {}),
    ...(why ? { why } : {}),
    ...(by === undefined ? {} : { by }),
    ...(off ? { off } : {}),
  };
}

function markIn(events: readonly DayEvent[], day: number) {
  return (value: unknown, where: string, faults: Fault[]): DoneMark | undefined => {
    const fields = fieldsOf(value, where, faults, ['event', 'from', 'to']);
    // wherever the place lies, its day is within a day of the universal one
    const [least, most] = [(day - 1) * DAY_MINUTES, (day + 2) * DAY_MINUTES];
    const event = fields?.text('event', ID, 'an id', LONGEST_ID);
    const from = fields?.whole('from', least, most);
    const to = fields?.whole('to', least, most);
    if (!fields || event === undefined || from === undefined || to === undefined) return undefined;
    if (!events.some(({ id }) => id === event)) return fields.refuse('event', 'an event of this day');
    return to > from ? { event, from: instant(from), to: instant(to) } : fields.refuse('to', 'after from');
  };
}

/**
 * Reads a kept day.
 *
 * Shape: any value -> the day, without what cannot be read; nothing where its date, waking or lights-out cannot. An event
 * of a kind that nobody can read is "something new", asked about as if it hurt.
 * Errors: none; `faults` names each place, the rule and what was seen.
 *
 * @example readDayBook({ ...book, events: [{ id: 'wash' }] }).faults[0]?.where // 'day › events › 1 › from'
 */
export function readDayBook(value: unknown): { book?: DayBook; faults: Fault[] } {
  const faults: Fault[] = [];
  const fields = fieldsOf(value, 'day', faults, ['day', 'wake', 'lightsOut', 'quiet', 'events', 'done']);
  if (!fields) return { faults };
  const day = fields.day('day');
  const number = day === undefined ? undefined : dayNumberOf(day);
  const wake = fields.whole('wake', PLAY_FROM, PLAY_UNTIL, GRID);
  const lightsOut = fields.whole('lightsOut', PLAY_FROM, PLAY_UNTIL, GRID);
  const awake = wake !== undefined && lightsOut !== undefined && wake < lightsOut;
  if (wake !== undefined && lightsOut !== undefined && !awake) fields.refuse('lightsOut', 'after waking');
  const quiet = fields.list('quiet', MOST.quiet, readStretch);
  const events = eachOnce(fields.list('events', MOST.events, eventOf), ({ id }) => id, fields, 'events');
  if (day === undefined || number === undefined || !awake) return { faults };
  const marks = fields.list('done', MOST.events, markIn(events, number));
  const done = eachOnce(marks, ({ event }) => event, fields, 'done');
  return {
    faults,
    book: {
      ...{ day, wake, lightsOut },
      quiet: [...quiet].sort((a, b) => a.from - b.from || a.until - b.until),
      events: [...events].sort((a, b) => (a.id < b.id ? -1 : 1)),
      done: [...done].sort((a, b) => (a.event < b.event ? -1 : 1)),
    },
  };
}
