/** The word "nothing by mouth": it holds over midnight and whatever a clock shows, until a person takes it back. */
import type { BedCard } from '../bed-card/card.ts';
import type { Fields } from '../play-bed/fields.ts';
import { instant, type Instant } from '../units.ts';

/** Somebody of the ward said "nothing by mouth", and the family noted it here. */
export interface MouthWord {
  /** When it was noted; absent where it is not known. */
  since?: Instant;
  /** When the card that lay on this device then was made; absent where there was none. */
  cardMadeAt?: Instant;
}

/**
 * Whether the word still holds: no day ends it, only the family on a nurse's word, or a card that a nurse made after it.
 *
 * Shape: a card that was there when the word was noted, or was made before it, ends nothing; of a word without its moment
 * nobody can tell which came first, so it holds.
 * Not: what the new card says instead.
 */
export function wordHolds(word: MouthWord | undefined, card: Pick<BedCard, 'madeAt'> | undefined): boolean {
  if (!word) return false;
  if (!card || word.since === undefined) return true;
  return card.madeAt <= Math.max(word.since, word.cardMadeAt ?? 0);
}

/**
 * Whether nothing may be eaten now: the word holds, or the card's time for it is not over.
 * Units: universal minutes.
 */
export const nothingByMouth = (
  word: MouthWord | undefined,
  card: Pick<BedCard, 'madeAt' | 'nothingByMouthUntil'> | undefined,
  now: Instant,
): boolean => wordHolds(word, card) || (card?.nothingByMouthUntil ?? -Infinity) > now;

const momentIn = (fields: Fields, name: string): Instant | undefined => {
  const at = fields.has(name) ? fields.whole(name, 0, Number.MAX_SAFE_INTEGER) : undefined;
  return at === undefined ? undefined : instant(at);
};

/** Reads a kept word; what cannot be read of it is nothing by mouth. */
export function mouthWordIn(fields: Fields): MouthWord | undefined {
  if (!fields.has('nothingByMouth')) return undefined;
  const word = fields.inner('nothingByMouth', ['since', 'cardMadeAt']);
  const since = word && momentIn(word, 'since');
  const cardMadeAt = word && momentIn(word, 'cardMadeAt');
  return { ...(since === undefined ? {} : { since }), ...(cardMadeAt === undefined ? {} : { cardMadeAt }) };
}

/** The same as it was kept at first, among what was pressed on one day. */
export function olderMouthWordIn(today: Fields): MouthWord | undefined {
  const held = today.has('nothingByMouth') && (today.yes('nothingByMouth') ?? true);
  const since = momentIn(today, 'nothingByMouthSince');
  if (!held) return undefined;
  return since === undefined ? {} : { since };
}
