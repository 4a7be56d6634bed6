/** What is nobody's but the child's: cards to hold up, and parts of the day that no one else sees. */
import type { DayBook } from './book.ts';
import type { DayEventTable } from './ids.ts';
import { MODES, type AgeMode } from './modes.ts';
import { fillersBetween, mayBePrivate, withoutSeams, type Day, type Explained, type Tile } from './tiles.ts';

/** Cards to hold up without a word. Showing one writes nothing down. Ids never change once shipped. */
export const HOLD_UP_CARDS = [
  'without-visitors',
  'woman-nurse',
  'man-nurse',
  'period',
  'toilet-alone',
  'wash-alone',
  'curtain-closed',
  'talk-alone',
  'explain-to-me',
  'not-now',
  'sad',
  'it-hurts',
] as const;
export type HoldUpCard = (typeof HOLD_UP_CARDS)[number];

/** The cards of this age's private corner; none before thirteen. */
export const holdUpCards = (mode: AgeMode): readonly HoldUpCard[] =>
  MODES[mode].privateCorner ? HOLD_UP_CARDS : [];

/** The day with a part of it kept to the child, or shown again. What may not be kept to it stays as it is. */
export function keptPrivate(book: DayBook, id: string, table: DayEventTable, yes: boolean): DayBook {
  const events = book.events.map((event) => {
    if (event.id !== id || !mayBePrivate(event, table) || yes === Boolean(event.private)) return event;
    const { private: _private, ...rest } = event;
    return yes ? { ...rest, private: true as const } : rest;
  });
  return events.some((event, n) => event !== book.events[n]) ? { ...book, events } : book;
}

/**
 * The day as anybody but the child sees it.
 *
 * Shape: it covers the day exactly; what is the child's own is open time, and nothing tells that it moved.
 */
export function shownToOthers(day: Day): { tiles: Tile[]; explained: Explained[] } {
  const own = new Set(day.tiles.filter((tile) => tile.private).map(({ id }) => id));
  const tiles = withoutSeams(
    day.tiles.flatMap((one) => (own.has(one.id) ? fillersBetween(day, one) : [one])),
  );
  const explained = day.explained
    .filter((one) => !one.private)
    // what came first may be told, what it was may not
    .map(({ by, ...rest }) => (by === undefined || own.has(by) ? rest : { ...rest, by }));
  return { tiles, explained };
}
