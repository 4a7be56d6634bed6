/** What a child sees of the day: now, next and later; the way step by step; sun and moon; what may be pushed. */
import type { OffsetAt } from '../clock/local.ts';
import { isNight } from '../clock/night.ts';
import { instant, type Instant } from '../units.ts';
import { isDone, UNDO_SECONDS, type DayBook, type DoneMark } from './book.ts';
import { isFiller, type DayEventTable } from './ids.ts';
import { MODES, modeRow, type AgeMode } from './modes.ts';
import { fillersBetween, withoutSeams, type Day, type Tile } from './tiles.ts';
import { wallMinute } from './wall.ts';

const NOON = 12 * 60;

/** Whether it is night for the child: before waking, after lights-out, or the ward's own night. */
export const isNightIn = (day: Day, now: Instant, offsetAt: OffsetAt): boolean =>
  now < day.wake || now >= day.lightsOut || isNight(now, offsetAt(now));

/** Whether the child's night has come before the ward's: it is not "still" night then. */
export const isEveningIn = (day: Day, now: Instant, offsetAt: OffsetAt): boolean =>
  isNightIn(day, now, offsetAt) && !isNight(now, offsetAt(now)) && wallMinute(now, offsetAt) >= NOON;

/** How a part of the day stands on this child's strip at this minute; open time where it does not. */
function asShown(day: Day, tile: Tile, mode: AgeMode, now: Instant, table: DayEventTable): Tile[] {
  const row = modeRow(mode);
  const { from, to } = tile;
  const inNight = from < day.wake || from >= day.lightsOut;
  // who reads a clock may know of an early X-ray; for smaller children the night is one picture
  if (!table[tile.kind].modes.includes(mode) || (inNight && row.shows !== 'clock'))
    return fillersBetween(day, { from, to });
  const ahead = row.tellAheadMinutes;
  if (!tile.hurts || ahead === undefined || from - now <= ahead) return [tile];
  return [{ id: tile.id, kind: 'surprise', from, to }];
}

/**
 * The day as this child's strip shows it now.
 *
 * Shape: it covers the day exactly, as the day itself does. What this age has no picture for is open time; a care that
 * hurts is "something new: someone will tell you first" until the minutes of the mode are reached, and then itself.
 * Not: the grown-up's day, which is `day.tiles`.
 */
export function stripOf(day: Day, mode: AgeMode, now: Instant, table: DayEventTable): Tile[] {
  return withoutSeams(day.tiles.flatMap((one) => asShown(day, one, mode, now, table)));
}

/** Pictures behind the doors. At night there is only the night. */
export interface Doors {
  now?: { tile: Tile; done: boolean };
  next?: Tile;
  later?: Tile;
  night: boolean;
}

/** What a door is for: open time between two things is no picture of its own. */
const isWorthADoor = (tile: Tile) => tile.kind !== 'free-time';

/**
 * Now, next and later at a minute of the day.
 *
 * Shape: as many as the mode has doors; a list has `now` only, to be marked in it. Outside the day there is nothing.
 * At night now is the night, and nothing is next: whatever was later waits until the child is awake.
 * What was pushed through the door is still what stands there now; `done` says that its picture is gone.
 *
 * @example doorsAt(day, book, 'three-doors', at('07:35'), DAY_EVENTS, london).now?.tile.kind // 'breakfast'
 */
export function doorsAt(
  day: Day,
  book: Pick<DayBook, 'done'>,
  mode: AgeMode,
  now: Instant,
  table: DayEventTable,
  offsetAt: OffsetAt,
): Doors {
  if (now < day.from || now >= day.to) return { night: false };
  if (isNightIn(day, now, offsetAt)) {
    // the ward's night may reach further than this child's
    const early = now < day.wake || wallMinute(now, offsetAt) < NOON;
    const from = early ? day.from : instant(Math.min(day.lightsOut, now));
    const to = early ? instant(Math.max(day.wake, now + 1)) : day.to;
    return { now: { tile: { id: '~night', kind: 'night', from, to }, done: false }, night: true };
  }
  const strip = stripOf(day, mode, now, table);
  const at = strip.findIndex((tile) => tile.from <= now && now < tile.to);
  const tile = strip[at]!;
  const doors: Doors = { now: { tile, done: isDone(book, tile.id) }, night: false };
  if (MODES[mode].doors < 3) return doors;
  const [next, later] = strip.slice(at + 1).filter(isWorthADoor);
  return { ...doors, ...(next ? { next } : {}), ...(later ? { later } : {}) };
}

/** One dot of the way. */
export interface Step {
  tile: Tile;
  at: 'behind' | 'here' | 'ahead';
  done: boolean;
}

/**
 * The whole day as a way, step by step, for a child that is awake or asks in the morning.
 *
 * Shape: steps in order of time without open time and night; at most one is `here`. Nothing where the mode has no way;
 * `when-asked` is the page's to ask.
 */
export function pathOf(
  day: Day,
  book: Pick<DayBook, 'done'>,
  mode: AgeMode,
  now: Instant,
  table: DayEventTable,
): Step[] {
  if (MODES[mode].path === 'never') return [];
  return stripOf(day, mode, now, table)
    .filter((tile) => isWorthADoor(tile) && tile.kind !== 'night')
    .map((tile) => ({
      tile,
      at: now >= tile.to ? 'behind' : now >= tile.from ? 'here' : 'ahead',
      done: isDone(book, tile.id),
    }));
}

/** How far the day is, for who reads no clock. */
export interface Sky {
  what: 'sun' | 'moon';
  /** 0 where it rises, 1 where it sets. */
  along: number;
}

/** The sun from waking to lights-out, the moon in the two parts of the night; each goes the whole way. */
export function skyAt(day: Day, now: Instant): Sky {
  const [what, from, to] =
    now < day.wake
      ? (['moon', day.from, day.wake] as const)
      : now < day.lightsOut
        ? (['sun', day.wake, day.lightsOut] as const)
        : (['moon', day.lightsOut, day.to] as const);
  return { what, along: to > from ? Math.min(1, Math.max(0, (now - from) / (to - from))) : 0 };
}

/** What the clock on the wall shows. */
export interface ClockFace {
  hour: number;
  minute: number;
  /** Turned from 12, in the way the hands go. */
  hourDegrees: number;
  minuteDegrees: number;
}

/**
 * The clock on the wall of the place, with its two hands.
 * @example clockAt(at('15:30'), london) // { hour: 15, minute: 30, hourDegrees: 105, minuteDegrees: 180 }
 */
export function clockAt(now: Instant, offsetAt: OffsetAt): ClockFace {
  const wall = wallMinute(now, offsetAt);
  const minute = wall % 60;
  return { hour: Math.floor(wall / 60), minute, hourDegrees: (wall % 720) / 2, minuteDegrees: minute * 6 };
}

/** So long before it begins, and while it lasts, a hard moment has its card. Units: minutes. */
const CARD_AHEAD = 60;

/**
 * The care that hurts whose card the child sees: the first that is near, or that has begun and is not over.
 *
 * Shape: of what the child is told of at all, as `stripOf` gives it; nothing where no such care is near.
 */
export const hardMomentNear = (strip: readonly Tile[], now: Instant): Tile | undefined =>
  strip.find(({ hurts, from, to }) => hurts && from - now <= CARD_AHEAD && now < to);

/** Why a picture stays where it is. */
export type Stays = 'night' | 'not-yet' | 'not-in-day' | 'grown-ups' | 'done';

/**
 * Whether the child may push a picture through the door: one that has begun, that is the child's to push, by day.
 *
 * Shape: `id` of a part of the day; `go`, or why it stays.
 */
export function mayPush(
  day: Day,
  book: Pick<DayBook, 'done'>,
  mode: AgeMode,
  id: string,
  now: Instant,
  table: DayEventTable,
  offsetAt: OffsetAt,
): 'go' | Stays {
  const tile = day.tiles.find((one) => one.id === id);
  if (!tile || isFiller(tile.kind) || now < day.from || now >= day.to) return 'not-in-day';
  if (!table[tile.kind].modes.includes(mode)) return 'not-in-day';
  if (isNightIn(day, now, offsetAt)) return 'night';
  if (isDone(book, id)) return 'done';
  if (tile.hurts || table[tile.kind].pushedBy === 'nobody') return 'grown-ups';
  return tile.from <= now ? 'go' : 'not-yet';
}

/**
 * The day after a picture went through the door: it stays in the part of the day it had, whatever comes up later.
 * Not: whether it may; see `mayPush`.
 */
export function pushed(book: DayBook, day: Day, id: string): DayBook {
  const tile = day.tiles.find((one) => one.id === id);
  if (!tile || isFiller(tile.kind) || isDone(book, id)) return book;
  const mark: DoneMark = { event: id, from: tile.from, to: tile.to };
  const done = [...book.done, mark].sort((a, b) => (a.event < b.event ? -1 : 1));
  return { ...book, done };
}

/**
 * The picture comes back, as long as undo is offered; afterwards what is done stays done.
 * Units: seconds since it was pushed.
 */
export function takenBack(book: DayBook, id: string, seconds: number): DayBook {
  if (!(seconds >= 0 && seconds <= UNDO_SECONDS) || !isDone(book, id)) return book;
  return { ...book, done: book.done.filter(({ event }) => event !== id) };
}
