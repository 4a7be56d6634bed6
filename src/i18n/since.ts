/** A time of which day and hour both matter; apart from the other formats, since the first page has none of these. */
import { localDay } from '#domain/clock/local.ts';
import type { Instant, Minutes } from '#domain/units.ts';
import { clockTime, dateLocale } from './format.ts';

const DAYS_WITHOUT_DATE = 6;

/**
 * A moment as one speaks of it now: the time alone if it is of today, before that or ahead of it with the weekday, and with
 * the date where that could be another week's.
 *
 * Units: both offsets in minutes, that of the wall where it was written and that of today.
 *
 * @example timeSince('en', at, minutes(0), now, minutes(0)) // '14:20', 'Wed 14:20', '7 Jan 14:20'
 */
export function timeSince(
  locale: string,
  at: Instant,
  offset: Minutes,
  now: Instant,
  nowOffset: Minutes,
): string {
  const days = Math.abs(localDay(now, nowOffset) - localDay(at, offset));
  const time = clockTime(locale, at, offset);
  if (days === 0) return time;
  const which: Intl.DateTimeFormatOptions =
    days <= DAYS_WITHOUT_DATE ? { weekday: 'short' } : { day: 'numeric', month: 'short' };
  const date = new Intl.DateTimeFormat(dateLocale(locale), { ...which, timeZone: 'UTC' });
  return `${date.format((at + offset) * 60_000)} ${time}`;
}
