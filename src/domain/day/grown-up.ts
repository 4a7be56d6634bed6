/** The day as a grown-up reads and edits it: one list in order of time, and the few changes that a hand makes. */
import type { OffsetAt } from '../clock/local.ts';
import { freeId } from '../play-bed/bed.ts';
import { GRID } from '../play/feasible.ts';
import type { DayMinute } from '../play/types.ts';
import { DAY_MINUTES, instant, type Instant, type Minutes } from '../units.ts';
import { added, cameUpInDay, isDone, movedInDay, type DayBook, type Place, type Why } from './book.ts';
import { MOST } from './book-store.ts';
import type { DayEventId, DayEventTable } from './ids.ts';
import { askState, asksOf, type Ask } from './medicine.ts';
import { shownToOthers } from './private.ts';
import { mayBePrivate, type Day, type Explained, type Tile } from './tiles.ts';
import { wallMinute } from './wall.ts';

export type DayRow =
  | { what: 'ask'; at: Instant; ask: Ask; state: ReturnType<typeof askState> }
  /** `became`: it does not stand as it was planned. */
  | { what: 'part'; at: Instant; tile: Tile; now: boolean; became?: Explained };

export interface GrownUpDay {
  rows: readonly DayRow[];
  /** What does not take place, with its reason; in order of when it was to be. */
  leftOut: readonly Explained[];
  /** Cares to ask about now. */
  askNow: readonly Ask[];
  /** A care that can hurt and has begun. */
  underWay?: Tile;
}

/**
 * The grown-up's day in order of time, with "ask about medicine" before each care that hurts.
 *
 * Shape: everything that is not the child's own stands in `rows` or, with its reason, in `leftOut`. The night is a row
 * only while it lasts. An ask stands before whatever begins at the same minute; one that was due yesterday stands at the
 * day's beginning.
 * Units: `askMinutes` universal minutes, set by the ward.
 * Not: a name, a dose, or whether any medicine is given.
 *
 * @example grownUpDay(day, at('14:20'), minutes(45)).askNow[0]?.care // 'm-bandage-1', at 15:00
 */
export function grownUpDay(day: Day, now: Instant, askMinutes: Minutes): GrownUpDay {
  const { tiles, explained } = shownToOthers(day);
  const asks = asksOf([day], askMinutes);
  const isNow = ({ from, to }: Tile) => from <= now && now < to;
  const rows: DayRow[] = [
    ...asks.map((ask) => ({
      ...{ what: 'ask' as const, at: instant(Math.max(ask.at, day.from)) },
      ...{ ask, state: askState(ask, now) },
    })),
    ...tiles
      .filter((tile) => tile.kind !== 'night' || isNow(tile))
      .map((tile) => {
        const became = explained.find(({ event }) => event === tile.id);
        return {
          ...{ what: 'part' as const, at: tile.from, tile, now: isNow(tile) },
          ...(became ? { became } : {}),
        };
      }),
  ];
  const underWay = tiles.find((tile) => tile.hurts && isNow(tile));
  return {
    // sorting keeps the order of equals, so an ask stands before what begins with it
    rows: rows.sort((a, b) => a.at - b.at),
    leftOut: explained.filter(({ is }) => !is),
    askNow: asks.filter((ask) => askState(ask, now) === 'now'),
    ...(underWay ? { underWay } : {}),
  };
}

/** Who says when: the ward what is fixed, the family everything else. */
const whyOf = (kind: DayEventId, table: DayEventTable): Why =>
  table[kind].place === 'fixed' ? 'ward-said' : 'wanted';

/** Whether a hand may put it elsewhere. Ideas of the play plan only the planner moves, and what is done stays. */
export const mayEdit = (book: DayBook, id: string): boolean =>
  book.events.some((event) => event.id === id && event.kind !== 'play') && !isDone(book, id);

/** The nearest place on the grid from which all of it is over by midnight. */
const within = (from: number, minutes: number): Place => ({
  from: Math.min(Math.max(0, GRID * Math.round(from / GRID)), DAY_MINUTES - minutes),
  minutes,
});

/**
 * The day with one part of it at another time, or of another length.
 *
 * Shape: what may not be edited stays; a part that was left out takes place again.
 * Units: minutes since the ward's midnight; lengths from 5 minutes to a day.
 */
export function putAt(book: DayBook, id: string, to: Place, table: DayEventTable): DayBook {
  const event = book.events.find((one) => one.id === id);
  if (!event || !mayEdit(book, id)) return book;
  const minutes = Math.min(DAY_MINUTES, Math.max(GRID, GRID * Math.round(to.minutes / GRID)));
  return movedInDay(book, id, within(to.from, minutes), whyOf(event.kind, table));
}

/**
 * The day with one part of it so many minutes later, or earlier where below 0, than it stands now.
 * @example shifted(book, day, 'e-wash', -15, DAY_EVENTS, london) // from 08:15 to 08:00
 */
export function shifted(
  book: DayBook,
  day: Day,
  id: string,
  by: number,
  table: DayEventTable,
  offsetAt: OffsetAt,
): DayBook {
  const event = book.events.find((one) => one.id === id);
  if (!event) return book;
  const tile = day.tiles.find((one) => one.id === id);
  const stands = tile ? wallMinute(tile.from, offsetAt) : event.from;
  return putAt(book, id, { from: stands + by, minutes: event.minutes }, table);
}

/**
 * The next quarter of an hour that has not begun, for who puts something into the day.
 * @example nextQuarter(at('14:20'), london) // 870, half past two
 */
export const nextQuarter = (now: Instant, offsetAt: OffsetAt): DayMinute =>
  Math.min(DAY_MINUTES - GRID, 15 * Math.ceil((wallMinute(now, offsetAt) + 1) / 15));

/** Whether the day has room for one thing more. */
export const hasRoom = (book: DayBook): boolean => book.events.length < MOST.events;

/**
 * The day with something that the family puts into it; on a full day nothing changes.
 * Units: minutes since the ward's midnight.
 */
export function putIn(book: DayBook, kind: DayEventId, from: DayMinute, minutes: number): DayBook {
  if (!hasRoom(book)) return book;
  return added(book, { id: freeId(kind, book.events), kind, ...within(from, minutes), source: 'family' });
}

/**
 * The day with something that nobody planned and that begins this minute, for as long as it usually takes.
 *
 * Shape: touched twice within five minutes it is one thing.
 */
export function comesNow(
  book: DayBook,
  kind: DayEventId,
  now: Instant,
  table: DayEventTable,
  offsetAt: OffsetAt,
): DayBook {
  const from = GRID * Math.floor(wallMinute(now, offsetAt) / GRID);
  const again = book.events.some((one) => one.kind === kind && one.cameUp && !one.off && one.from === from);
  if (again || !hasRoom(book)) return book;
  const minutes = Math.min(table[kind].minutes, DAY_MINUTES - from);
  return cameUpInDay(
    book,
    { id: freeId(kind, book.events), kind, from, minutes, source: 'family' },
    offsetAt,
  );
}

/**
 * The day with a time of the child's own, which nobody else sees; a care is never its own.
 * Units: minutes since the ward's midnight.
 */
export function ownTime(
  book: DayBook,
  kind: DayEventId,
  from: DayMinute,
  minutes: number,
  table: DayEventTable,
): DayBook {
  const source = 'child' as const;
  const event = {
    id: freeId(kind, book.events),
    kind,
    ...within(from, minutes),
    source,
    private: true as const,
  };
  return hasRoom(book) && mayBePrivate(event, table) ? added(book, event) : book;
}
