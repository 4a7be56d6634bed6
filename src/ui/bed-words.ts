/** How the bed's page says what is ticked and what lies in its day, and why a time cannot be taken. */
import type { PlayBed } from '#domain/play-bed/bed.ts';
import type { Clash } from '#domain/play-bed/clash.ts';
import { isolated, list, number } from '#i18n/format.ts';
import type { Words } from '#i18n/words.ts';
import { dayTime, eventName } from './play-words.ts';

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

/** From when until when, and what stands there, by the words of the ward. */
export function inTheDay(
  words: Words,
  { moments }: Pick<Sketch, 'moments'>,
  list: 'moments' | 'events',
  one: InTheDay,
): string {
  const { t, locale } = words;
  const moment = list === 'moments' && moments.find(({ id }) => id === one.id);
  const name = moment ? t(`play:moment.${moment.procedure}`) : eventName(words, one.id);
  return `${dayTime(locale, one.from)} – ${dayTime(locale, one.from + one.minutes)} ${name}`;
}
type Sketch = PlayBed['sketch'];
type InTheDay = { id: string; from: number; minutes: number };

/** Why a time cannot be taken, and what to do instead. */
export function clashTold(words: Words, sketch: Sketch, clash: Clash): string {
  const { t, locale } = words;
  if (clash.why === 'taken') return t('play:set.taken', { what: inTheDay(words, sketch, clash.list, clash) });
  return t('play:set.outside', {
    from: dayTime(locale, sketch.wake),
    until: dayTime(locale, sketch.lightsOut),
  });
}

/** The child's age as the language writes it: in years, under three with the months. */
export function ageTold(locale: string, ageMonths: number): string {
  const years = Math.floor(ageMonths / 12);
  const months = years < 3 ? ageMonths % 12 : 0;
  const told = (unit: 'year' | 'month', value: number) =>
    isolated(new Intl.NumberFormat(locale, { style: 'unit', unit, unitDisplay: 'long' }).format(value));
  return list(locale, [
    ...(years > 0 ? [told('year', years)] : []),
    ...(months > 0 || years === 0 ? [told('month', months)] : []),
  ]);
}
