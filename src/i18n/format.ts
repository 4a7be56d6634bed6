/** Times, dates and numbers in a page's language, always by Intl; a page sets them in `<bdi>`. */
import type { Instant, Minutes } from '#domain/units.ts';

/** A moment as the clock on the wall showed it when it was written: its own offset, not today's. */
export function clockTime(locale: string, at: Instant, offset: Minutes): string {
  return new Intl.DateTimeFormat(locale, {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZone: 'UTC',
  }).format((at + offset) * 60_000);
}

/** Our English says nappy and colour: its dates are British, too. */
export const dateLocale = (locale: string) => (locale === 'en' ? 'en-GB' : locale);

/** The day of a moment on the wall where it was written: weekday, day and month. */
export function day(locale: string, at: Instant, offset: Minutes): string {
  return new Intl.DateTimeFormat(dateLocale(locale), {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  }).format((at + offset) * 60_000);
}

/** A number as the language writes it. */
export const number = (locale: string, value: number): string => new Intl.NumberFormat(locale).format(value);

/** Days of the calendar before today, as one speaks of them: "Today", "Yesterday", "3 days ago". */
export function daysAgo(locale: string, days: number): string {
  const said = new Intl.RelativeTimeFormat(dateLocale(locale), { numeric: 'auto' }).format(-days, 'day');
  return said.charAt(0).toLocaleUpperCase(locale) + said.slice(1);
}

/** From one number to another, as the language writes a range. */
export const range = (locale: string, low: number, high: number): string =>
  low === high ? number(locale, low) : new Intl.NumberFormat(locale).formatRange(low, high);

/** Names in a row, joined as the language joins them. */
export const list = (locale: string, items: readonly string[]): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(items);

/** The mark that the language sets between two things in a row, without what stands after it. */
function comma(locale: string): string {
  const parts = new Intl.ListFormat(locale, { type: 'unit' }).formatToParts(['1', '2', '3']);
  // some languages join "and" to the mark
  return (
    parts
      .find(({ type }) => type === 'literal')
      ?.value.trim()
      .charAt(0) || ','
  );
}

/** Things one after the other, with the mark of the language between them and no "and". */
export const inARow = (locale: string, items: readonly string[]): string => items.join(`${comma(locale)} `);

/** The day and the clock of a moment on the wall where it was written. */
export const dayAndTime = (locale: string, at: Instant, offset: Minutes): string =>
  inARow(locale, [day(locale, at, offset), clockTime(locale, at, offset)]);

/** Sets a time or number apart inside a sentence, so that neither reading direction disturbs the other. */
export const isolated = (text: string): string => `\u2068${text}\u2069`;

/** No writing heaps more marks on one letter; a pile of them would stand in the lines above and below. */
const MOST_MARKS = 4;
const MARK = /[\p{Mn}\p{Me}]/u;
const UNSEEN = /\p{Cf}/u;
/** Characters that turn the direction of what stands around them, end a line or a page, or ring a bell. */
const UNRULY = /[\p{Cc}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]+/gu;

/**
 * Someone's own words, set apart: what in them could reach out of their place is left out.
 * Not: markup. It is text to a page, and stays as it was typed.
 * @example ownWords('a\u202Eb') // 'ab' in an isolate
 */
export function ownWords(text: string): string {
  let marks = 0;
  const kept = [...text.replace(UNRULY, (run) => (/[\s\p{Zl}\p{Zp}]/u.test(run) ? ' ' : ''))].filter(
    (character) => {
      if (MARK.test(character)) return (marks += 1) <= MOST_MARKS;
      // what nobody sees does not part the marks before it from those behind
      if (!UNSEEN.test(character)) marks = 0;
      return true;
    },
  );
  return isolated(kept.join(''));
}

/** A language by its name in the reader's own; nothing for a tag that names none. */
export function languageName(locale: string, tag: string): string | undefined {
  try {
    return new Intl.DisplayNames([locale], { type: 'language', fallback: 'none' }).of(tag);
  } catch {
    return undefined;
  }
}
