/** How the grown-up's day is written out: names of its parts, and what became of those that do not stand as planned. */
import type { OffsetAt } from '#domain/clock/local.ts';
import { isFiller, type DayEventId } from '#domain/day/ids.ts';
import type { Explained } from '#domain/day/tiles.ts';
import { wallMinute } from '#domain/day/wall.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import type { Instant } from '#domain/units.ts';
import type { Words } from '#i18n/words.ts';
import { dayTime, ideaName, lengthOf } from './play-words.ts';

/** What the wall shows at a moment, as the language writes it. */
export const timeAt = (locale: string, at: Instant, offsetAt: OffsetAt): string =>
  dayTime(locale, wallMinute(at, offsetAt));

/** The name of what may stand in a day. */
export const dayEventName = ({ t }: Words, kind: DayEventId): string => t(`day:event.${kind}`);

/** The name of one part of a day: play by its idea, all else by its kind. */
export function partName(
  words: Words,
  { kind, ideas = [] }: { kind: DayEventId; ideas?: readonly string[] },
  own?: PlayBed['own'],
): string {
  const [idea] = ideas;
  return kind === 'play' && idea !== undefined ? ideaName(words, idea, own) : dayEventName(words, kind);
}

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
  { how, was, is, why, by }: Explained,
  kindOf: (id: string) => DayEventId | undefined,
  offsetAt: OffsetAt,
): { how: string; why: string } {
  const first = by === undefined ? undefined : kindOf(by);
  const minutes = lengthOf(locale, is ? is.to - is.from : 0);
  return {
    how: t(`day-adult:changed.${how}`, { time: timeAt(locale, was.from, offsetAt), minutes }),
    // what came first says more than that no room was left
    why:
      first !== undefined && !isFiller(first) && (why === 'came-first' || why === 'no-room')
        ? t(`day:first.${first}`)
        : t(`day-adult:changed.${why}`),
  };
}
