/** One picture for each day behind: for having been here, and for nothing else. */
import { dateOf, dayNumberOf } from '../clock/calendar.ts';

export interface DayPicture {
  /** As 2026-01-31. */
  day: string;
  /** Which of the pictures, from 0. */
  picture: number;
}

/** Longer than anybody lies in traction; a wrong clock must not fill the page. */
const MOST_DAYS = 200;

/**
 * The row of day pictures from the first day here to today.
 *
 * Shape: one for each day of the calendar, opened or not, good or bad; no two alike until all were there. It reads no
 * note and nothing the child did. At most 200, the newest.
 * Errors: an empty row where a day is none of the calendar or the first is after today.
 * @example dayPictures('2026-11-24', '2026-11-25', 12) // two pictures
 */
export function dayPictures(first: string, today: string, howMany: number): DayPicture[] {
  const [from, to] = [dayNumberOf(first), dayNumberOf(today)];
  if (from === undefined || to === undefined || from > to || howMany < 1) return [];
  const begin = Math.max(from, to - MOST_DAYS + 1);
  return Array.from({ length: to - begin + 1 }, (_, n) => ({
    day: dateOf(begin + n),
    picture: (begin + n - from) % howMany,
  }));
}
