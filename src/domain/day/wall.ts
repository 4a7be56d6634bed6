/** A day on the wall of one place as moments: 23 or 25 hours long where the clocks change, and never more than once there. */
import { clockChanges, type OffsetAt } from '../clock/local.ts';
import { localMinute } from '../clock/night.ts';
import type { DayMinute } from '../play/types.ts';
import { DAY_MINUTES, instant, type Instant } from '../units.ts';

/** No place was ever further from universal time. */
const FURTHEST = 16 * 60;
/** The clocks of a place around one day, read once. */
export interface DayOnWall {
  from: Instant;
  to: Instant;
  /** As `momentOf`. */
  at(minute: DayMinute): Instant;
}

/**
 * A day of a place with all its moments: `boundsOf` and `momentOf` for who asks more than once.
 * Units: `day` as `dayNumberOf` gives it; moments are universal minutes.
 */
export function dayOnWall(day: number, offsetAt: OffsetAt): DayOnWall {
  const [begin, end] = [day * DAY_MINUTES, (day + 1) * DAY_MINUTES];
  const [early, late] = [instant(begin - FURTHEST), instant(end + FURTHEST)];
  const starts = [{ at: early, after: offsetAt(early) }, ...clockChanges(early, late, offsetAt)];
  // a time that is skipped is the moment after
  const firstAt = (local: number): Instant => {
    for (const [i, { at, after }] of starts.entries()) {
      const reached = Math.max(at, local - after);
      if (reached < (starts[i + 1]?.at ?? Infinity)) return instant(reached);
    }
    return late;
  };
  return { from: firstAt(begin), to: firstAt(end), at: (minute) => firstAt(begin + minute) };
}

/**
 * When a day begins and when the next one does. Every moment belongs to exactly one day.
 *
 * Shape: a number as `dayNumberOf` gives -> its first moment, and the first that is no longer in it. A day that a place
 * left out of its calendar has no length.
 * Units: universal minutes; 1380 or 1500 of them where the clocks go by an hour.
 * @example boundsOf(20751, london) // 1500 minutes
 */
export function boundsOf(day: number, offsetAt: OffsetAt): { from: Instant; to: Instant } {
  const { from, to } = dayOnWall(day, offsetAt);
  return { from, to };
}

/**
 * The moment at which the wall shows a minute of that day: the first of two, and where the minute is skipped, the
 * moment the clocks were put forward.
 * @example momentOf(20751, 90, london) // the earlier 01:30
 */
export const momentOf = (day: number, minute: DayMinute, offsetAt: OffsetAt): Instant =>
  dayOnWall(day, offsetAt).at(minute);

/** What the wall shows at a moment, in minutes since midnight: 0 to 1439. */
export const wallMinute = (at: Instant, offsetAt: OffsetAt): DayMinute => localMinute(at, offsetAt(at));
