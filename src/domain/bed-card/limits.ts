/** What a bed card may hold, and the form in which the other phone will read it. */
import { instant, minutes, type Instant } from '../units.ts';
import { CARD_CHOICES, LIMITS, type BedCard, type CardAge } from './card.ts';

/** The code counts time in these steps. */
export const STEP_MINUTES = 15;
export const UNTIL_FIELDS = ['headUntil', 'numbingUntil', 'nothingByMouthUntil'] as const;

/** A place of the card that holds a number it may not hold. */
export type NumberFault = { field: string; seen: unknown; low: number; high: number };
/** A place of the card that holds something it may not hold. */
export type Fault = NumberFault | { field: string; seen: unknown; allowed: readonly string[] };

const earlier = (at: Instant) => instant(Math.floor(at / STEP_MINUTES) * STEP_MINUTES);
const later = (at: Instant) => instant(Math.ceil(at / STEP_MINUTES) * STEP_MINUTES);

const TAG = /^([a-z]{2,3})(?:-(?:([a-z]{4})|([a-z]{2}|[0-9]{3})))?$/i;
/** Language, and script or region, each in its usual case; nothing where the tag is not of this form. */
export function partsOfTag(tag: string): { language: string; script?: string; region?: string } | undefined {
  const [, language, script, region] = TAG.exec(tag) ?? [];
  if (!language) return undefined;
  return {
    language: language.toLowerCase(),
    ...(script && { script: script[0]!.toUpperCase() + script.slice(1).toLowerCase() }),
    ...(region && { region: region.toUpperCase() }),
  };
}

/**
 * The card as the other phone will read it: times in quarter hours, the tag in its usual letters, nothing else.
 * Units: what permits (the head end) and the age of the card are rounded to earlier, what forbids or warns to later.
 * Not: what lies outside limits stays as it is; see `faultsOf`.
 * @example handedOver({ ...card, head: 'a-little', headUntil: instant(29) }).headUntil // 15
 */
export function handedOver(card: BedCard): BedCard {
  const parts = partsOfTag(card.wardLanguage);
  const { age, head, headUntil, numbingUntil, atNight, nothingByMouthUntil } = card;
  return {
    side: card.side,
    bell: card.bell,
    secondStep: card.secondStep,
    secondStepMinutes: card.secondStepMinutes,
    ...(age && { age: age.months === undefined ? { years: age.years } : { ...age } }),
    ...(head !== undefined && { head }),
    ...(headUntil !== undefined && { headUntil: earlier(headUntil) }),
    canTell: card.canTell,
    ...(numbingUntil !== undefined && { numbingUntil: later(numbingUntil) }),
    set: card.set,
    ...(atNight !== undefined && { atNight }),
    compare: card.compare,
    noWeeHours: card.noWeeHours,
    medicineWaitMinutes: card.medicineWaitMinutes,
    ...(nothingByMouthUntil !== undefined && { nothingByMouthUntil: later(nothingByMouthUntil) }),
    ownThingsOnly: card.ownThingsOnly,
    hands: card.hands,
    drip: card.drip,
    wardLanguage: parts ? Object.values(parts).join('-') : card.wardLanguage,
    madeAt: earlier(card.madeAt),
    off: minutes(Math.round(card.off / STEP_MINUTES) * STEP_MINUTES || 0),
  };
}

const outside = (
  field: string,
  seen: unknown,
  [low, high]: readonly [number, number],
  whole = true,
): NumberFault[] =>
  typeof seen === 'number' && seen >= low && seen <= high && (!whole || Number.isInteger(seen))
    ? []
    : [{ field, seen, low, high }];

/** Where an age is not one that the card can hold: whole years, and months below three years only. */
export function ageFaults(age: CardAge): NumberFault[] {
  const years = outside('age.years', age.years, LIMITS.ageYears);
  if (years.length || age.months === undefined) return years;
  return outside('age.months', age.months, age.years < 3 ? [0, 11] : [0, -1]);
}

/** Fields without which there is no code. */
const NEEDED = [
  'side',
  'bell',
  'secondStep',
  'secondStepMinutes',
  'canTell',
  'set',
  'compare',
  'noWeeHours',
  'medicineWaitMinutes',
  'ownThingsOnly',
  'hands',
  'drip',
  'wardLanguage',
  'madeAt',
  'off',
] as const satisfies readonly (keyof BedCard)[];

/**
 * Every place of a card, whole or not yet whole, that holds what it may not hold.
 * Shape: numbers come with `low` and `high` (no months at all is `low` above `high`), words with what is `allowed`.
 * Not: what is still missing; see `missingFrom`.
 * @example faultsOf({ secondStepMinutes: 11 }) // [{ field: 'secondStepMinutes', seen: 11, low: 2, high: 10 }]
 */
export function faultsOf(card: Partial<BedCard>): Fault[] {
  const faults: Fault[] = [];
  for (const [field, allowed] of Object.entries<readonly string[]>(CARD_CHOICES)) {
    const seen = card[field as keyof BedCard];
    if (seen !== undefined && !allowed.includes(seen as string)) faults.push({ field, seen, allowed });
  }
  for (const field of ['compare', 'ownThingsOnly'] as const)
    if (card[field] !== undefined && typeof card[field] !== 'boolean')
      faults.push({ field, seen: card[field], allowed: ['true', 'false'] });
  for (const field of ['secondStepMinutes', 'noWeeHours', 'medicineWaitMinutes', 'off'] as const)
    if (card[field] !== undefined) faults.push(...outside(field, card[field], LIMITS[field]));
  if (card.age !== undefined) faults.push(...ageFaults(card.age));
  if (
    card.wardLanguage !== undefined &&
    !(typeof card.wardLanguage === 'string' && partsOfTag(card.wardLanguage))
  )
    faults.push({
      field: 'wardLanguage',
      seen: card.wardLanguage,
      allowed: ['xx', 'xxx', 'xx-Xxxx', 'xx-XX'],
    });
  if (card.madeAt === undefined) return faults;
  const made = outside('madeAt', card.madeAt, [LIMITS.madeAt[0], LIMITS.madeAt[1] + STEP_MINUTES - 1], false);
  if (made.length) return [...faults, ...made];
  for (const field of UNTIL_FIELDS) {
    const until = card[field];
    if (until === undefined) continue;
    // the other phone must be able to read it, so what counts is how it will read
    const read = field === 'headUntil' ? earlier(until) : later(until);
    const [low, high] = LIMITS.untilMinutes.map((after) => earlier(card.madeAt!) + after) as [number, number];
    if (!(read >= low && read <= high)) faults.push({ field, seen: until, low, high });
  }
  return faults;
}

/** What must still be chosen before there can be a code. */
export const missingFrom = (card: Partial<BedCard>): (keyof BedCard)[] =>
  NEEDED.filter((field) => card[field] === undefined);
