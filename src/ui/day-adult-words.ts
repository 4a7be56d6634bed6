/** How the grown-up's day is written out: its times, and what became of parts that do not stand as planned. */
import type { OffsetAt } from '#domain/clock/local.ts';
import type { DayEventId } from '#domain/day/ids.ts';
import type { Explained } from '#domain/day/tiles.ts';
import { wallMinute } from '#domain/day/wall.ts';
import type { Instant } from '#domain/units.ts';
import type { Words } from '#i18n/words.ts';
import { cameFirst, waits } from './day-words.ts';
import { dayTime, lengthOf } from './play-words.ts';

/** What the wall shows at a moment, as the language writes it. */
export const timeAt = (locale: string, at: Instant, offsetAt: OffsetAt): string =>
  dayTime(locale, wallMinute(at, offsetAt));

const LENGTHS = [5, 10, 15, 20, 30, 40, 45, 60, 90, 120];
/** Lengths to choose from, in minutes, with the one that holds now. */
export const lengthsWith = (minutes: number): number[] =>
  LENGTHS.includes(minutes) ? LENGTHS : [...LENGTHS, minutes].sort((a, b) => a - b);

/** Where the card for hard moments opens at this one; a moment of the bed is known there by its own id. */
export const momentHash = (event: string): string => (event.startsWith('m-') ? `#${event.slice(2)}` : '');

/**
 * What became of a part of the day, and why, as two short sentences.
 *
 * Shape: `kindOf` gives the kind of what came first, by its id, where it may be told.
 */
export function whatBecame(
  { t, locale }: Words,
  changed: Explained,
  kindOf: (id: string) => DayEventId | undefined,
  offsetAt: OffsetAt,
): { how: string; why: string } {
  const { how, was, is, why } = changed;
  const first = cameFirst(changed, kindOf);
  const minutes = lengthOf(locale, is ? is.to - is.from : 0);
  return {
    how: t(`day-adult:changed.${waits(changed) ? 'waits' : how}`, {
      time: timeAt(locale, was.from, offsetAt),
      minutes,
    }),
    why: first ? t(`day:first.${first}`) : t(`day-adult:changed.${why}`),
  };
}
