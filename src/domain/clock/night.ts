/** The ward's night, 22:00 to 06:00 local time, in universal minutes. */
import { DAY_MINUTES, instant, type Instant, type Minutes } from '../units.ts';

/** Local minutes after midnight at which the night begins and ends. */
export const NIGHT = { from: 22 * 60, to: 6 * 60 } as const;

/**
 * What the wall shows at a moment, in a place `offset` minutes ahead of universal time.
 * Units: minutes since midnight, 0 to 1439.
 * @example localMinute(instant(-30), minutes(60)) // 30
 */
export const localMinute = (at: Instant, offset: Minutes): number =>
  (((at + offset) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;

/** Whether a moment lies in the night, for a place `offset` minutes ahead of universal time. */
export function isNight(at: Instant, offset: Minutes): boolean {
  const minute = localMinute(at, offset);
  return minute >= NIGHT.from || minute < NIGHT.to;
}

/** Minutes of daytime (06:00–22:00 local) from midnight of day 0 up to a local minute count. */
function dayMinutesUpTo(local: number): number {
  const days = Math.floor(local / DAY_MINUTES);
  const within = local - days * DAY_MINUTES;
  return days * (NIGHT.from - NIGHT.to) + Math.min(Math.max(within - NIGHT.to, 0), NIGHT.from - NIGHT.to);
}

/** The first moment at which `count` minutes of daytime have passed since `from`. */
export function momentAfterDayMinutes(from: Instant, count: Minutes, offset: Minutes): Instant {
  if (count <= 0) return from;
  const target = dayMinutesUpTo(from + offset) + count;
  const perDay = NIGHT.from - NIGHT.to;
  const days = Math.floor(target / perDay);
  const within = target - days * perDay;
  // a full day of daytime ends at 22:00, not at the next morning
  const local = within === 0 ? (days - 1) * DAY_MINUTES + NIGHT.from : days * DAY_MINUTES + NIGHT.to + within;
  return instant(local - offset);
}
