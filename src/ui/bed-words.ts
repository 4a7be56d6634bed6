/** What a closed part of the bed's page says about what is ticked in it. */
import { isolated, list, number } from '#i18n/format.ts';
import type { Words } from '#i18n/words.ts';

const MOST_NAMES = 4;

/** The first names that are ticked and how many more; a word for none. */
export function tickedNames({ t, locale }: Words, names: readonly string[]): string {
  if (names.length === 0) return t('play:set.nothing');
  const shown = list(locale, names.slice(0, MOST_NAMES));
  const more = names.length - MOST_NAMES;
  return more > 0 ? t('play:set.some', { names: shown, n: isolated(number(locale, more)) }) : shown;
}

/** Parts of one line, set apart from one another. */
export const inOneLine = (parts: readonly string[]): string => parts.filter(Boolean).join(' · ');

/** What lies in a day, the earliest first. */
export const byTime = <T extends { from: number }>(list: readonly T[]): T[] =>
  [...list].sort((a, b) => a.from - b.from);
