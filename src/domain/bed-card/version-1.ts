/**
 * The bits of a code of version 1, for ever: what was issued once must be read in every later version.
 *
 * In this order, each number with its highest bit first: version (5 bits, of every version), shape (5 bits: which of
 * the three times follow, and what follows the language: 0 nothing, 1 a region, 2 a script), then FIELDS, then the
 * times as quarter hours after `madeAt` (8 each), then the region (11) or script (19), then zeros up to whole groups.
 */
import { instant, minutes } from '../units.ts';
import { CARD_CHOICES, type BedCard } from './card.ts';
import { faultsOf, handedOver, partsOfTag, STEP_MINUTES, UNTIL_FIELDS } from './limits.ts';
import { CHECK, GROUP } from './letters.ts';

export const VERSION = 1;
const LETTER_BITS = 5;
const SHAPE_BITS = LETTER_BITS;
const UNTIL_BITS = 8;
const TAG_END_BITS = [0, 11, 19] as const;

type ChoiceField = keyof typeof CARD_CHOICES;
/** Bits of each field, with room for later choices; `-or-none` counts from 1, and 0 is "not told". */
const FIELDS = [
  ['side', 1],
  ['bell', 3],
  ['secondStep', 3],
  ['secondStepMinutes', 4],
  ['age', 6],
  ['head', 3],
  ['canTell', 2],
  ['set', 2],
  ['atNight', 2],
  ['compare', 1],
  ['noWeeHours', 3],
  ['medicineWaitMinutes', 6],
  ['ownThingsOnly', 1],
  ['hands', 3],
  ['drip', 3],
  ['madeAt', 22],
  ['off', 7],
  ['wardLanguage', 15],
] as const;
type Field = (typeof FIELDS)[number][0];
const FIELD_BITS = FIELDS.reduce((all, [, bits]) => all + bits, 0);

/** Where each number starts to count. Fixed: they are not LIMITS, which a later version may change. */
const COUNTS_FROM = { secondStepMinutes: 2, noWeeHours: 6, medicineWaitMinutes: 30 } as const;
const MAY_BE_NONE: readonly string[] = ['head', 'atNight'];
const OFF_FROM = -48;
/** 0 not told, then 1 to 17 whole years, then the twenty-four months from the first birthday. */
const AGE_YEARS = 17;

const letterValue = (letter: string | undefined) => (letter ? letter.toLowerCase().charCodeAt(0) - 96 : 0);
const letterOf = (value: number) => String.fromCharCode(96 + value);
const REGION_LETTERS = 26 * 26;

function numberOf(card: BedCard, field: Field): number {
  switch (field) {
    case 'age': {
      if (!card.age) return 0;
      const { years, months } = card.age;
      return months === undefined ? years : AGE_YEARS + 1 + (years - 1) * 12 + months;
    }
    case 'compare':
    case 'ownThingsOnly':
      return card[field] ? 1 : 0;
    case 'madeAt':
      return card.madeAt / STEP_MINUTES;
    case 'off':
      return card.off / STEP_MINUTES - OFF_FROM;
    case 'wardLanguage':
      return [0, 1, 2].reduce(
        (all, at) => all * 27 + letterValue(partsOfTag(card.wardLanguage)!.language[at]),
        0,
      );
    case 'secondStepMinutes':
    case 'noWeeHours':
    case 'medicineWaitMinutes':
      return card[field] - COUNTS_FROM[field];
    default: {
      const choice = (CARD_CHOICES[field] as readonly string[]).indexOf(card[field] as string);
      return MAY_BE_NONE.includes(field) ? choice + 1 : choice;
    }
  }
}

/** The region or script of a tag as a number, and which of the two it is. */
function tagEnd(tag: string): { kind: 0 | 1 | 2; value: number } {
  const { script, region } = partsOfTag(tag)!;
  const inLetters = (text: string) =>
    [...text].reduce((all, letter) => all * 26 + letterValue(letter) - 1, 0);
  if (script) return { kind: 2, value: inLetters(script) };
  if (!region) return { kind: 0, value: 0 };
  return { kind: 1, value: /\d/.test(region) ? REGION_LETTERS + Number(region) : inLetters(region) };
}

/** Content letters that a shape needs: with the check they fill whole groups. */
function contentLetters(shape: number): number {
  const times = [16, 8, 4].filter((flag) => shape & flag).length;
  const bits = LETTER_BITS + SHAPE_BITS + FIELD_BITS + times * UNTIL_BITS + (TAG_END_BITS[shape & 3] ?? 0);
  return Math.ceil((Math.ceil(bits / LETTER_BITS) + CHECK) / GROUP) * GROUP - CHECK;
}

/** All letters of a code of this version, from its second letter. */
export const letterCountOf = (shape: number): number => contentLetters(shape) + CHECK;

/** The content of a code, without its check. Shape: of `handedOver`; numbers 0–31. Not: limits. */
export function pack(card: BedCard): number[] {
  const bits: number[] = [];
  const put = (value: number, count: number) => {
    for (let bit = count - 1; bit >= 0; bit--) bits.push(Math.floor(value / 2 ** bit) % 2);
  };
  const end = tagEnd(card.wardLanguage);
  const flags = UNTIL_FIELDS.reduce((all, field) => all * 2 + (card[field] === undefined ? 0 : 1), 0);
  const shape = flags * 4 + end.kind;
  put(VERSION, LETTER_BITS);
  put(shape, SHAPE_BITS);
  for (const [field, count] of FIELDS) put(numberOf(card, field), count);
  for (const field of UNTIL_FIELDS)
    if (card[field] !== undefined) put((card[field] - card.madeAt) / STEP_MINUTES, UNTIL_BITS);
  put(end.value, TAG_END_BITS[end.kind]);
  const letters = Array.from({ length: contentLetters(shape) }, () => 0);
  bits.forEach(
    (bit, at) => (letters[Math.floor(at / LETTER_BITS)]! |= bit << (LETTER_BITS - 1 - (at % LETTER_BITS))),
  );
  return letters;
}

/**
 * The card of a code whose check is right.
 * Errors: `too-new` for a choice that this version does not know, `damaged` for what no version writes.
 */
export function unpack(letters: readonly number[]): BedCard | 'too-new' | 'damaged' {
  let at = LETTER_BITS;
  const take = (count: number): number => {
    let value = 0;
    for (const end = at + count; at < end; at++)
      value =
        value * 2 + ((letters[Math.floor(at / LETTER_BITS)]! >> (LETTER_BITS - 1 - (at % LETTER_BITS))) & 1);
    return value;
  };
  const shape = take(SHAPE_BITS);
  const endBits = TAG_END_BITS[shape & 3];
  if (endBits === undefined) return 'too-new';
  if (contentLetters(shape) !== letters.length) return 'damaged';
  const seen = Object.fromEntries(FIELDS.map(([field, count]) => [field, take(count)])) as Record<
    Field,
    number
  >;
  const choices: Partial<Record<ChoiceField, string>> = {};
  for (const [field, known] of Object.entries<readonly string[]>(CARD_CHOICES)) {
    const from = MAY_BE_NONE.includes(field) ? 1 : 0;
    const value = seen[field as ChoiceField] - from;
    if (value >= known.length) return 'too-new';
    // what was not told is no choice, and `handedOver` leaves it out
    choices[field as ChoiceField] = known[value]!;
  }
  const madeAt = instant(seen.madeAt * STEP_MINUTES);
  const times: Partial<BedCard> = {};
  UNTIL_FIELDS.forEach((field, index) => {
    if (shape & (16 >> index)) times[field] = instant(madeAt + take(UNTIL_BITS) * STEP_MINUTES);
  });
  const end = take(endBits);
  while (at < letters.length * LETTER_BITS) if (take(1)) return 'damaged';

  const language = [27 * 27, 27, 1].map((place) => Math.floor(seen.wardLanguage / place) % 27);
  if (seen.wardLanguage >= 27 ** 3 || !language[0] || !language[1]) return 'damaged';
  let tag = language.filter(Boolean).map(letterOf).join('');
  const inLetters = (value: number, count: number) =>
    Array.from({ length: count }, (_, i) =>
      letterOf(1 + (Math.floor(value / 26 ** (count - 1 - i)) % 26)),
    ).join('');
  if ((shape & 3) === 1) {
    tag += `-${end < REGION_LETTERS ? inLetters(end, 2) : String(end - REGION_LETTERS).padStart(3, '0')}`;
  } else if ((shape & 3) === 2) {
    if (end >= 26 ** 4) return 'damaged';
    tag += `-${inLetters(end, 4)}`;
  }
  const months = seen.age - AGE_YEARS - 1;
  const age = months < 0 ? { years: seen.age } : { years: 1 + Math.floor(months / 12), months: months % 12 };
  const card = {
    ...choices,
    ...times,
    ...(seen.age && { age }),
    secondStepMinutes: COUNTS_FROM.secondStepMinutes + seen.secondStepMinutes,
    compare: seen.compare === 1,
    noWeeHours: COUNTS_FROM.noWeeHours + seen.noWeeHours,
    medicineWaitMinutes: COUNTS_FROM.medicineWaitMinutes + seen.medicineWaitMinutes,
    ownThingsOnly: seen.ownThingsOnly === 1,
    wardLanguage: tag,
    madeAt,
    off: minutes((OFF_FROM + seen.off) * STEP_MINUTES),
  } as BedCard;
  return faultsOf(card).length ? 'damaged' : handedOver(card);
}
