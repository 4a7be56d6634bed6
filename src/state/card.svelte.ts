/** The nurse's card on this phone: taken, asked about after 48 hours, put away. */
import { otherWay, type BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, type Decoded } from '#domain/bed-card/code.ts';
import { stillHolds } from '#domain/bed-card/holds.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { WARD } from '#content/ward.ts';
import { browserCardPlace } from '#device/card-place.ts';
import { DRAWN_AGES } from '#scene/spec.ts';
import { chooseFamily, currentFamily, type Family } from './family.svelte.ts';

interface Held {
  code: string;
  card: BedCard;
  confirmedAt: Instant | undefined;
}
let held = $state.raw<Held | undefined>(undefined);
let unreadable = $state(false);

/** The card on this phone, as it was last read or taken. */
export const currentCard = (): BedCard | undefined => held?.card;
/** A card lies on this device that this version cannot read. */
export const cardUnreadable = (): boolean => unreadable;

/** Whether to ask "still right?": from 48 hours after it was made, or after the nurse last said so. */
export const cardAsks = (now: Instant): boolean =>
  held !== undefined && stillHolds({ madeAt: held.confirmedAt ?? held.card.madeAt }, now) === 'ask';

/** Reads the card that this phone keeps. */
export function loadCard(): void {
  const place = browserCardPlace();
  const kept = place.read();
  const read = kept && decodeBedCard(kept.code);
  unreadable = place.damaged() || (read !== undefined && !read.ok);
  held =
    kept && read?.ok
      ? {
          code: kept.code,
          card: read.card,
          confirmedAt: kept.confirmedAt === undefined ? undefined : instant(kept.confirmedAt),
        }
      : undefined;
}

/** The drawn child that comes nearest to an age. */
const drawnAge = (years: number): Family['age'] =>
  DRAWN_AGES.reduce((best, age) => (Math.abs(age - years) < Math.abs(best - years) ? age : best));

/** What the card says, as the looks and the drawing use it. */
export function familyOf(card: BedCard): Partial<Family> {
  return {
    side: card.side,
    canTell: card.canTell,
    ...(card.age && { under3: card.age.years < 3, age: drawnAge(card.age.years) }),
    // a ward language this site does not have leaves the family's own choice as it is
    ...(WARD.languages.includes(card.wardLanguage) && { wardLanguage: card.wardLanguage }),
    bed: {
      secondStep: card.secondStep,
      secondStepMinutes: minutes(card.secondStepMinutes),
      medicineWaitMinutes: minutes(card.medicineWaitMinutes),
      compare: card.compare,
      madeAt: card.madeAt,
      ...(otherWay(card) && { way: otherWay(card) }),
      ...(card.numbingUntil !== undefined && { numbingUntil: card.numbingUntil }),
    },
  };
}

export type Taken = { ok: true } | { ok: false; reason: 'not-kept' } | Extract<Decoded, { ok: false }>;

/**
 * Takes a card over; where the code cannot be read or kept, nothing is changed. One that lies here and cannot be read is
 * put aside before.
 */
export function takeCard(code: string): Taken {
  const read = decodeBedCard(code);
  if (!read.ok) return read;
  const place = browserCardPlace();
  // another tab may have kept one since
  loadCard();
  if ((unreadable && !place.putAside()) || !place.write({ code })) return { ok: false, reason: 'not-kept' };
  unreadable = false;
  held = { code, card: read.card, confirmedAt: undefined };
  chooseFamily(familyOf(read.card));
  return { ok: true };
}

/** The nurse said that the card is still right; false where it could not be kept, or another lies here by now. */
export function confirmCard(now: Instant): boolean {
  const place = browserCardPlace();
  const kept = place.read();
  if (!kept || kept.code !== held?.code) return false;
  if (!place.write({ ...kept, confirmedAt: now })) return false;
  held = { ...held, confirmedAt: now };
  const { bed } = currentFamily();
  if (bed) chooseFamily({ bed: { ...bed, madeAt: now } });
  return true;
}

/** Takes the card off this device; false where it is still there. */
export function forgetCard(): boolean {
  held = undefined;
  unreadable = false;
  return browserCardPlace().clear();
}
