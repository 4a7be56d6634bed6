/** Days for the tests: places with their clocks, days as they may be kept, the typical bed's day. */
import fc from 'fast-check';
import { DAY_EVENTS, ROUTINE } from '#content/day-events.ts';
import type { OffsetAt } from '#domain/clock/local.ts';
import { added, WHYS, type DayBook, type DayEvent } from '#domain/day/book.ts';
import { bookOf } from '#domain/day/from-bed.ts';
import { DAY_EVENT_IDS, isFiller, type DayEventTable } from '#domain/day/ids.ts';
import { pushed } from '#domain/day/doors.ts';
import { dayOf } from '#domain/day/tiles.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

export const TABLE: DayEventTable = DAY_EVENTS;
const [FIRST, LAST] = [Date.UTC(2025, 11, 25) / 60_000, Date.UTC(2028, 0, 10) / 60_000];

/**
 * The clocks of a place over two years, as the system's zone data tell them. Source: the IANA time zone database, public
 * domain, as built into the engine that runs the tests.
 */
export function place(name: string): { name: string; offsetAt: OffsetAt; wall: (at: Instant) => string } {
  const format = new Intl.DateTimeFormat('en-GB', {
    ...{ timeZone: name, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit' },
    ...{ hour: '2-digit', minute: '2-digit' },
  });
  const wall = (at: number) => {
    const part = Object.fromEntries(
      format.formatToParts(at * 60_000).map(({ type, value }) => [type, value]),
    );
    return `${part.year}-${part.month}-${part.day}T${part.hour}:${part.minute}`;
  };
  const offset = (at: number) => Date.parse(`${wall(at)}Z`) / 60_000 - at;
  const changes: { at: number; off: number }[] = [{ at: -Infinity, off: offset(FIRST) }];
  for (let at = FIRST; at < LAST; at += 1440) {
    if (offset(at + 1440) === offset(at)) continue;
    let minute = at;
    while (offset(minute) === offset(at)) minute++;
    changes.push({ at: minute, off: offset(minute) });
  }
  const offsetAt: OffsetAt = (at) => minutes(changes.filter((change) => change.at <= at).at(-1)!.off);
  return { name, offsetAt, wall };
}

/** By the hour, the half and the quarter; south of the equator; half an hour of summer; clocks that change at midnight. */
export const PLACES = [
  ...['Europe/London', 'Asia/Kolkata', 'Asia/Kathmandu', 'Pacific/Chatham', 'Australia/Lord_Howe'],
  ...['America/St_Johns', 'Asia/Beirut', 'America/Santiago', 'America/Havana', 'Pacific/Kiritimati'],
].map(place);
export const LONDON = PLACES[0]!;

/** Every date of 2026 and 2027. */
export const DATES = Array.from({ length: 730 }, (_, n) =>
  new Date(Date.UTC(2026, 0, 1 + n)).toISOString().slice(0, 10),
);

/** Dates near a change of London's clocks, of Lord Howe's, of Beirut's and Santiago's; and any other. */
export const anyDate = fc.oneof(
  fc.constantFrom(...['2026-10-25', '2027-03-28', '2026-10-04', '2027-04-04', '2026-03-29', '2026-09-06']),
  fc.constantFrom(...DATES),
);
export const anyPlace = fc.constantFrom(...PLACES);

const KINDS = DAY_EVENT_IDS.filter((kind) => !isFiller(kind));
const anyFrom = fc.integer({ min: 0, max: 286 }).map((n) => n * 5);
const anyLength = fc.integer({ min: 1, max: 24 }).map((n) => n * 5);
const mark = fc.constantFrom(undefined, true as const);
const anySpot = fc
  .record({ from: anyFrom, minutes: anyLength })
  .map(({ from, minutes: length }) => ({ from, minutes: Math.min(length, 1440 - from) }));

const anyEvent: fc.Arbitrary<DayEvent> = fc
  .record({
    kind: fc.constantFrom(...KINDS),
    spot: anySpot,
    source: fc.constantFrom('bed' as const, 'plan', 'routine', 'family', 'child'),
    ideas: fc.constantFrom(undefined, ['short-film'], ['song-swap', 'what-if']),
    ...{ hurts: mark, cameUp: fc.constantFrom(undefined, undefined, undefined, true as const) },
    ...{ private: mark, off: fc.constantFrom(undefined, undefined, undefined, true as const) },
    was: fc.option(anySpot, { nil: undefined }),
    why: fc.constantFrom(...WHYS),
    by: fc.constantFrom(undefined, 'x-ray-1'),
  })
  .map(({ kind, spot, was, off, why, by, ...rest }): DayEvent => {
    const moved = was !== undefined || off !== undefined;
    const whole = {
      ...{ id: kind, kind, ...spot, ...rest },
      ...(moved ? { was, off, why, by } : {}),
    };
    return JSON.parse(JSON.stringify(whole)) as DayEvent;
  });

/** Ids are numbered in the order of the list, so that each is used once. */
const numberedEvents = (events: readonly DayEvent[]): DayEvent[] =>
  events.map((event, n) => ({ ...event, id: `${event.kind}-${n + 1}` }));

export const anyEvents = fc.array(anyEvent, { maxLength: 14 }).map(numberedEvents);

export const anyEmpty: fc.Arbitrary<DayBook> = fc
  .record({
    day: anyDate,
    wake: fc.integer({ min: 72, max: 110 }).map((n) => n * 5),
    lightsOut: fc.integer({ min: 220, max: 264 }).map((n) => n * 5),
    quiet: fc.constantFrom(
      [],
      [{ from: 780, until: 840 }],
      [
        { from: 700, until: 720 },
        { from: 715, until: 800 },
      ],
    ),
  })
  .map((one) => ({ ...one, events: [], done: [] }));

/** Days with anything in them, all over each other; some of it pushed through the door. */
export const anyBook: fc.Arbitrary<DayBook> = fc
  .tuple(anyEmpty, anyEvents, fc.array(fc.nat(), { maxLength: 3 }))
  .map(([empty, events, picks]) => {
    const book = events.reduce(added, empty);
    return picks.reduce((kept, pick) => {
      const day = dayOf(kept, TABLE, {}, LONDON.offsetAt);
      const id = kept.events[pick % Math.max(1, kept.events.length)]?.id;
      return id === undefined ? kept : pushed(kept, day, id);
    }, book);
  });

export const TYPICAL_BOOK = bookOf(TYPICAL, TABLE, ROUTINE, 'path');
/** A moment of a day in London in winter, by the clock. */
export const inLondon = (text: string): Instant => {
  const guess = Date.parse(`${text}Z`) / 60_000;
  return instant(guess - LONDON.offsetAt(instant(guess)));
};
