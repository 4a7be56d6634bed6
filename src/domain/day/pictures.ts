/** One picture for each day behind: for having been here, and for nothing else. */
import { dayNumberOf } from './wall.ts';

export interface DayPicture {
  /** As 2026-01-31. */
  day: string;
  /** Which of the pictures, from 0. */
  picture: number;
}

/** Longer than anybody lies in traction; a wrong clock must not fill the page. */
const MOST_DAYS = 200;

/** The date of a day's number, for 1970 and later; counted from March, so that leap days come last. */
export function dateOf(number: number): string {
  const sinceMarch = number + 719_468;
  const era = Math.floor(sinceMarch / 146_097);
  const inEra = sinceMarch - era * 146_097;
  const yearOfEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  );
  const inYear = inEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const day = inYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const two = (value: number) => `${value}`.padStart(2, '0');
  return `${`${year}`.padStart(4, '0')}-${two(month)}-${two(day)}`;
}

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
