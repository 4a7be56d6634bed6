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

export function day(locale: string, at: Instant, offset: Minutes): string {
  return new Intl.DateTimeFormat(locale, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  }).format((at + offset) * 60_000);
}

export const number = (locale: string, value: number): string => new Intl.NumberFormat(locale).format(value);

/** From one number to another, as the language writes a range. */
export const range = (locale: string, low: number, high: number): string =>
  low === high ? number(locale, low) : new Intl.NumberFormat(locale).formatRange(low, high);

/** Names in a row, joined as the language joins them. */
export const list = (locale: string, items: readonly string[]): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(items);

/** Sets a time or number apart inside a sentence, so that neither reading direction disturbs the other. */
export const isolated = (text: string): string => `\u2068${text}\u2069`;

/** Someone's own words, set apart: signs in them that turn the direction of what stands around are left out. */
export const ownWords = (text: string): string => isolated(text.replace(/[\u202A-\u202E\u2066-\u2069]/g, ''));

/** A language by its name in the reader's own; nothing for a tag that names none. */
export function languageName(locale: string, tag: string): string | undefined {
  try {
    return new Intl.DisplayNames([locale], { type: 'language', fallback: 'none' }).of(tag);
  } catch {
    return undefined;
  }
}
