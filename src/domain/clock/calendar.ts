/** Days of the calendar by name and by number, without a time zone: what day it is, a place's clock has said before. */

/** No card, bed or day is older, and none is needed later. */
const YEARS = { first: 2020, last: 2147 } as const;
const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
/** From 1 March of the year 0 to 1 January 1970; counted from March, leap days come last. */
const MARCH_TO_1970 = 719_468;

function daysSince1970(year: number, month: number, day: number): number {
  const inYear = month > 2 ? year : year - 1;
  const fromMarch = (month + 9) % 12;
  const leapDays = Math.floor(inYear / 4) - Math.floor(inYear / 100) + Math.floor(inYear / 400);
  return inYear * 365 + leapDays + Math.floor((fromMarch * 153 + 2) / 5) + day - 1 - MARCH_TO_1970;
}

/**
 * A date as its number, and nothing for what is no day of the calendar.
 *
 * Units: days since 1 January 1970, for the years 2020 to 2147.
 * Source: Gregorian calendar (ISO 8601).
 * @example dayNumberOf('2026-10-25') // 20751
 */
export function dayNumberOf(text: string): number | undefined {
  const [, year, month, day] = (DATE.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return undefined;
  if (year < YEARS.first || year > YEARS.last || month < 1 || month > 12 || day < 1) return undefined;
  const next = month === 12 ? daysSince1970(year + 1, 1, 1) : daysSince1970(year, month + 1, 1);
  const number = daysSince1970(year, month, day);
  return number < next ? number : undefined;
}

/**
 * The date of a day's number.
 *
 * Units: days since 1 January 1970, 0 and more.
 * @example dateOf(20751) // '2026-10-25'
 */
export function dateOf(number: number): string {
  const sinceMarch = number + MARCH_TO_1970;
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
