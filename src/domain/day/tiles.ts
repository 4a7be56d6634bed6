/** From the kept day to the day as it stands: parts that lie side by side without a gap, and what became of the rest. */
import type { OffsetAt } from '../clock/local.ts';
import { instant, type Instant } from '../units.ts';
import {
  dayOfBook,
  firstPlace,
  isDone,
  LEAST_MINUTES,
  type DayBook,
  type DayEvent,
  type Place,
  type Why,
} from './book.ts';
import { isFiller, type DayEventId, type DayEventTable, type FillerId } from './ids.ts';
import { dayOnWall } from './wall.ts';

export interface Span {
  from: Instant;
  to: Instant;
}

/** One part of the day, its end not included. */
export interface Tile extends Span {
  /** Of an event, its own; of open time, `~` and its place, so that it meets no event's. */
  id: string;
  kind: DayEventId;
  ideas?: readonly string[];
  hurts?: true;
  private?: true;
}

/** What became of something that does not stand where it stood first. */
export interface Explained {
  event: string;
  kind: DayEventId;
  how: 'moved' | 'shortened' | 'longer' | 'left-out';
  was: Span;
  /** Absent where it was left out. */
  is?: Span;
  /** `no-eating`: nothing by mouth at that time, says the card. `day-ends`: the day is over before it is. */
  why: Why | 'no-eating' | 'no-room' | 'day-ends';
  /** What came first, by id. */
  by?: string;
  private?: true;
}

export interface Day extends Span {
  wake: Instant;
  lightsOut: Instant;
  quiet: readonly Span[];
  /** In order of time: the first begins with the day, each other one where the one before ends, the last ends with it. */
  tiles: readonly Tile[];
  /** Everything that stands elsewhere than first, or nowhere; in order of when it was. */
  explained: readonly Explained[];
}

/** What the nurse's card says about this day. */
export interface DayFacts {
  /** No meal, snack or drink stands before it; `not-today` where nobody said until when. */
  eatingFrom?: Instant | 'not-today';
  /** Since when nothing may be eaten: what began before is left as it was. Absent: all day. */
  notEatingSince?: Instant;
}

/** Further away than this it is another part of the day, and somebody has to say when. Source: our proposal. */
const FURTHEST_MINUTES = 180;

type Wanted = Span & { event: DayEvent; rank: Rank };
/** Whether something may begin at a moment: a meal may not where nobody may eat. */
type MayBegin = (event: DayEvent, at: number) => boolean;

const overlaps = (a: Span, b: Span) => a.from < b.to && b.from < a.to;

/** What goes first where two things want one time. The child's own routine makes room for everything. */
const RANKS = ['came-up', 'hurts', 'ward', 'family', 'play', 'routine'] as const;
type Rank = (typeof RANKS)[number];
const placeInRank = (rank: Rank) => RANKS.indexOf(rank);

function rankOf(event: DayEvent, table: DayEventTable): Rank {
  if (event.cameUp) return 'came-up';
  if (event.kind === 'play') return 'play';
  const row = table[event.kind];
  if (event.hurts || row.hurts) return 'hurts';
  if (event.source === 'routine') return 'routine';
  return row.place === 'fixed' ? 'ward' : 'family';
}

const inRank = (a: Wanted, b: Wanted) =>
  placeInRank(a.rank) - placeInRank(b.rank) ||
  a.from - b.from ||
  a.to - b.to ||
  (a.event.id < b.event.id ? -1 : 1);

/** The earliest place behind its own in which all of it fits while the child is awake. */
function roomFor(
  wanted: Wanted,
  placed: readonly Span[],
  wake: Instant,
  lightsOut: Instant,
  mayBegin: MayBegin,
): Span | undefined {
  const minutes = wanted.to - wanted.from;
  const begins = [Math.max(wanted.from, wake), ...placed.map(({ to }) => to)]
    .filter((at) => at >= wanted.from && at >= wake && at - wanted.from <= FURTHEST_MINUTES)
    .sort((a, b) => a - b);
  for (const at of begins) {
    const span = { from: instant(at), to: instant(at + minutes) };
    const free = span.to <= lightsOut && !placed.some((other) => overlaps(other, span));
    if (free && mayBegin(wanted.event, at)) return span;
  }
  return undefined;
}

/** Its own place up to what comes first there, if that is worth beginning. */
function beginningOf(wanted: Wanted, placed: readonly Span[]): Span | undefined {
  if (placed.some(({ from, to }) => from <= wanted.from && wanted.from < to)) return undefined;
  const to = instant(Math.min(wanted.to, ...placed.map(({ from }) => from).filter((at) => at > wanted.from)));
  const least =
    wanted.rank === 'play' ? LEAST_MINUTES : Math.max(LEAST_MINUTES, (wanted.to - wanted.from) / 2);
  return to - wanted.from >= least ? { from: wanted.from, to } : undefined;
}

/** Waking up as the routine has it: whatever stands in its place tells that the child is awake. */
const isWaking = ({ kind, source }: DayEvent) => kind === 'wake' && source === 'routine';

/** A child that sleeps is woken for what the ward plans, and for nothing else. */
const isAsleep = ({ rank, from, to }: Wanted, wake: Instant, lightsOut: Instant) =>
  placeInRank(rank) >= placeInRank('family') && (from < wake || to > lightsOut);

/**
 * Gives each a place: first all that can stand where they want to, then the others around them. A care that hurts is not
 * given up for play: it finds its room before anything stands that is not the ward's.
 */
function settle(
  wanted: readonly Wanted[],
  pins: readonly Wanted[],
  wake: Instant,
  lightsOut: Instant,
  mayBegin: MayBegin,
): Wanted[] {
  const placed: Wanted[] = [...pins];
  const standing = (list: readonly Wanted[]) =>
    list.filter((one) => {
      const waits = isAsleep(one, wake, lightsOut) || placed.some((other) => overlaps(other, one));
      if (!waits) placed.push(one);
      return waits;
    });
  const around = (list: readonly Wanted[]) => {
    for (const one of list) {
      const own = isAsleep(one, wake, lightsOut) ? undefined : beginningOf(one, placed);
      // only the planner may place an idea elsewhere, and nobody wakes up later than the day begins
      const stays = one.rank === 'play' || isWaking(one.event);
      const span = own ?? (stays ? undefined : roomFor(one, placed, wake, lightsOut, mayBegin));
      if (span) placed.push({ ...one, ...span });
    }
  };
  const isWards = ({ rank }: Wanted) => placeInRank(rank) <= placeInRank('ward');
  const isCare = ({ rank }: Wanted) => rank === 'hurts';
  const waiting = standing(wanted.filter(isWards));
  around(waiting.filter(isCare));
  around([...waiting.filter((one) => !isCare(one)), ...standing(wanted.filter((one) => !isWards(one)))]);
  return placed.sort((a, b) => a.from - b.from);
}

/** What a part of the day is where nothing stands. */
function fillerAt(day: Pick<Day, 'wake' | 'lightsOut' | 'quiet'>, at: Instant): FillerId {
  if (at < day.wake || at >= day.lightsOut) return 'night';
  return day.quiet.some(({ from, to }) => from <= at && at < to) ? 'quiet-hour' : 'free-time';
}

/** Open time, quiet time and night from one moment to another, each as long as it can be. */
export function fillersBetween(
  day: Pick<Day, 'wake' | 'lightsOut' | 'quiet'> & { from: Instant },
  span: Span,
): Tile[] {
  const cuts = [day.wake, day.lightsOut, ...day.quiet.flatMap(({ from, to }) => [from, to])]
    .filter((at) => at > span.from && at < span.to)
    .sort((a, b) => a - b);
  const tiles: Tile[] = [];
  [span.from, ...cuts].forEach((from, n, all) => {
    const to = all[n + 1] ?? span.to;
    const kind = fillerAt(day, from);
    const before = tiles[tiles.length - 1];
    if (to <= from) return;
    if (before?.kind === kind) before.to = to;
    else tiles.push({ id: `~${kind}-${from - day.from}`, kind, from, to });
  });
  return tiles;
}

/**
 * The same parts, where neighbours of one kind of open time are one: no seam tells that something stood there.
 * Shape: parts in order of time, none overlapping.
 */
export function withoutSeams(tiles: readonly Tile[]): Tile[] {
  const joined: Tile[] = [];
  for (const tile of tiles) {
    const before = joined.at(-1);
    if (before && isFiller(tile.kind) && before.kind === tile.kind) before.to = tile.to;
    else joined.push({ ...tile });
  }
  return joined;
}

/**
 * The day as it stands.
 *
 * Shape: the kept day, the table of events, what the card says, and the place's clocks -> parts that cover the day
 * exactly, and what became of everything that stands elsewhere than first. Of two that want one time, what came up goes
 * first, then what hurts, then the ward's times, then the family's, then play; what makes room stands behind it within
 * three hours, is shortened to no less than half, or is named as left out. What the child does moves nothing.
 * Units: lengths are universal minutes, so half an hour of wash is half an hour in any night; the parts of a day in which
 * the clocks change are 1380 or 1500 minutes together.
 * Errors: throws a RangeError for a day that is none of the calendar.
 * Not: whether there is anybody to do it.
 *
 * @example dayOf(book, DAY_EVENTS, {}, london).tiles[0] // { id: '~night-0', kind: 'night', … }
 */
export function dayOf(book: DayBook, table: DayEventTable, facts: DayFacts, offsetAt: OffsetAt): Day {
  const { from, to, at: onWall } = dayOnWall(dayOfBook(book), offsetAt);
  const inDay = (at: number): Instant => instant(Math.min(Math.max(at, from), to));
  const moment = (minute: number) => inDay(onWall(minute));
  const wake = moment(book.wake);
  const lightsOut = instant(Math.max(wake, moment(book.lightsOut)));
  const spanOf = (place: Place): Span => {
    const begin = moment(place.from);
    return { from: begin, to: instant(begin + place.minutes) };
  };
  const quiet = book.quiet
    .map((stretch) => ({ from: moment(stretch.from), to: moment(stretch.until) }))
    .filter((stretch) => stretch.to > stretch.from);

  const mayEat = (begin: number) =>
    facts.eatingFrom === undefined ||
    begin < (facts.notEatingSince ?? -Infinity) ||
    (facts.eatingFrom !== 'not-today' && begin >= facts.eatingFrom);
  const mayBegin: MayBegin = (event, at) => table[event.kind].group !== 'food' || mayEat(at);
  const barred = new Set(
    book.events
      .filter((event) => !mayBegin(event, spanOf(event).from))
      // what was eaten was eaten
      .filter(({ id }) => !isDone(book, id))
      .map(({ id }) => id),
  );
  const standing = book.events
    .filter(({ id, off }) => !off && !barred.has(id))
    .map((event): Wanted => ({ event, ...spanOf(event), rank: rankOf(event, table) }))
    .map((one) => ({ ...one, to: inDay(one.to) }))
    .sort(inRank);
  const pins: Wanted[] = [];
  for (const mark of [...book.done].sort((a, b) => a.from - b.from || (a.event < b.event ? -1 : 1))) {
    const one = standing.find(({ event }) => event.id === mark.event);
    const span = { from: inDay(mark.from), to: inDay(mark.to) };
    if (one && span.to > span.from && !pins.some((other) => overlaps(other, span)))
      pins.push({ ...one, ...span });
  }
  const isPinned = (id: string) => pins.some(({ event }) => event.id === id);
  const free = standing.filter(({ event, from: at, to: end }) => end > at && !isPinned(event.id));
  const placed = settle(free, pins, wake, lightsOut, mayBegin);

  const shape = { wake, lightsOut, quiet, from };
  const tiles: Tile[] = [];
  let cursor = from;
  for (const one of placed) {
    tiles.push(...fillersBetween(shape, { from: cursor, to: one.from }), tileOf(one, table));
    cursor = one.to;
  }
  tiles.push(...fillersBetween(shape, { from: cursor, to }));

  const explained = book.events.flatMap((event): Explained[] => {
    const was = spanOf(firstPlace(event));
    const tile = placed.find((one) => one.event.id === event.id);
    const is = tile && { from: tile.from, to: tile.to };
    if (is && is.from === was.from && is.to === was.to) return [];
    const why = barred.has(event.id)
      ? { why: 'no-eating' as const }
      : (displaced(event, standing, placed, wake, lightsOut) ?? said(event));
    return [
      {
        ...{ event: event.id, kind: event.kind, how: howOf(was, is), was },
        ...(is ? { is } : {}),
        ...why,
        ...(isPrivate(event, table) ? { private: true as const } : {}),
      },
    ];
  });
  explained.sort((a, b) => a.was.from - b.was.from || (a.event < b.event ? -1 : 1));
  return { from, to, wake, lightsOut, quiet, tiles, explained };
}

function tileOf({ event, from, to }: Wanted, table: DayEventTable): Tile {
  const { id, kind, ideas } = event;
  return {
    ...{ id, kind, from, to },
    ...(ideas?.length ? { ideas } : {}),
    ...(event.hurts || table[kind].hurts ? { hurts: true as const } : {}),
    ...(isPrivate(event, table) ? { private: true as const } : {}),
  };
}

/** Only what the child put in itself, and never a care: nobody may miss one because it was hidden. */
export function mayBePrivate(event: DayEvent, table: DayEventTable): boolean {
  const row = table[event.kind];
  const care = row.group === 'care' || row.group === 'rare' || row.hurts || event.hurts;
  return event.source === 'child' && !care;
}
const isPrivate = (event: DayEvent, table: DayEventTable) =>
  event.private === true && mayBePrivate(event, table);

function howOf(was: Span, is: Span | undefined): Explained['how'] {
  if (!is) return 'left-out';
  if (is.from !== was.from) return 'moved';
  return is.to < was.to ? 'shortened' : 'longer';
}

type Reason = Pick<Explained, 'why' | 'by'>;
const reason = (why: Explained['why'], by?: string): Reason => ({ why, ...(by === undefined ? {} : { by }) });

/** What somebody said; of what nobody said anything, the day was over. */
const said = ({ off, why, by }: DayEvent): Reason => reason(why ?? (off ? 'not-today' : 'day-ends'), by);

/**
 * Why something does not stand where it was to stand today: the first in rank of what stands there. Told from the day as
 * it stands, so that nothing the child does changes a reason.
 */
function displaced(
  event: DayEvent,
  standing: readonly Wanted[],
  placed: readonly Wanted[],
  wake: Instant,
  lightsOut: Instant,
): Reason | undefined {
  const own = standing.findIndex((one) => one.event.id === event.id);
  const wanted = standing[own];
  if (!wanted || wanted.to <= wanted.from) return undefined;
  const is = placed.find((one) => one.event.id === event.id);
  if (is && is.from === wanted.from && is.to === wanted.to) return undefined;
  const there = placed
    .filter((one) => one.event.id !== event.id && overlaps(one, wanted))
    .map((one) => standing.findIndex(({ event: other }) => other.id === one.event.id))
    .sort((a, b) => a - b);
  const asleep = isAsleep(wanted, wake, lightsOut);
  const before = there.find((place) => place < own);
  const by = standing[before ?? (asleep ? -1 : (there[0] ?? -1))]?.event.id;
  if (!is) return reason('no-room', by);
  return reason(by === undefined && asleep ? 'asleep' : 'came-first', by);
}
