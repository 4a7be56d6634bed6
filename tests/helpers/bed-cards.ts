/** Bed cards for the tests: every card that can be handed over, with times to the minute as a phone has them. */
import fc from 'fast-check';
import { CARD_CHOICES, LIMITS, type BedCard } from '#domain/bed-card/card.ts';
import { encodeBedCard, type Decoded } from '#domain/bed-card/code.ts';
import { ALPHABET, checkOf, written } from '#domain/bed-card/letters.ts';
import { instant, minutes } from '#domain/units.ts';

const MADE = instant(Date.UTC(2026, 10, 25, 9, 7) / 60_000);

/** One card with a different value in every field that has more than two. */
export const CARD: BedCard = {
  side: 'right',
  bell: 'desk',
  secondStep: 'go-to-desk',
  secondStepMinutes: 7,
  age: { years: 2, months: 9 },
  head: 'a-little',
  headUntil: instant(MADE + 123),
  canTell: 'no',
  numbingUntil: instant(MADE + 456),
  set: 'taped',
  atNight: 'nobody',
  compare: false,
  noWeeHours: 11,
  medicineWaitMinutes: 61,
  nothingByMouthUntil: instant(MADE + 789),
  ownThingsOnly: true,
  hands: 'right',
  drip: 'left',
  wardLanguage: 'pt-BR',
  madeAt: MADE,
  off: minutes(-210),
};

const from = ([min, max]: readonly [number, number]) => fc.integer({ min, max });
const oneOf = <K extends keyof typeof CARD_CHOICES>(field: K) =>
  fc.constantFrom(...(CARD_CHOICES[field] as unknown as readonly NonNullable<BedCard[K]>[]));
const letters = (length: number) =>
  fc
    .array(fc.integer({ min: 97, max: 122 }), { minLength: length, maxLength: length })
    .map((codes) => String.fromCharCode(...codes));

const anyTag: fc.Arbitrary<string> = fc
  .tuple(
    fc.oneof(letters(2), letters(3)),
    fc.oneof(
      fc.constant(''),
      letters(2).map((region) => `-${region.toUpperCase()}`),
      fc.integer({ min: 0, max: 999 }).map((area) => `-${String(area).padStart(3, '0')}`),
      letters(4).map((script) => `-${script[0]!.toUpperCase()}${script.slice(1)}`),
    ),
  )
  .map((parts) => parts.join(''));

export const anyAge = fc.oneof(
  fc.record({ years: from(LIMITS.ageYears) }),
  fc.record({ years: fc.constantFrom(1, 2), months: from([0, 11]) }),
);

/** Fields that may be missing are missing about every other time. */
export const anyCard: fc.Arbitrary<BedCard> = fc
  .record(
    {
      side: oneOf('side'),
      bell: oneOf('bell'),
      secondStep: oneOf('secondStep'),
      secondStepMinutes: from(LIMITS.secondStepMinutes),
      age: anyAge,
      head: oneOf('head'),
      headUntil: from([0, 3800]),
      canTell: oneOf('canTell'),
      numbingUntil: from([0, 3800]),
      set: oneOf('set'),
      atNight: oneOf('atNight'),
      compare: fc.boolean(),
      noWeeHours: from(LIMITS.noWeeHours),
      medicineWaitMinutes: from(LIMITS.medicineWaitMinutes),
      nothingByMouthUntil: from([0, 3800]),
      ownThingsOnly: fc.boolean(),
      hands: oneOf('hands'),
      drip: oneOf('drip'),
      wardLanguage: anyTag,
      madeAt: from(LIMITS.madeAt),
      off: from([-48, 56]).map((quarters) => minutes(quarters * 15 || 0)),
    },
    {
      requiredKeys: [
        ...(['side', 'bell', 'secondStep', 'secondStepMinutes', 'canTell', 'set', 'compare'] as const),
        ...(['noWeeHours', 'medicineWaitMinutes', 'ownThingsOnly', 'hands', 'drip'] as const),
        ...(['wardLanguage', 'madeAt', 'off'] as const),
      ],
    },
  )
  .map(({ headUntil, numbingUntil, nothingByMouthUntil, madeAt, ...rest }) => ({
    ...rest,
    madeAt: instant(madeAt),
    ...(headUntil !== undefined && { headUntil: instant(madeAt + headUntil) }),
    ...(numbingUntil !== undefined && { numbingUntil: instant(madeAt + numbingUntil) }),
    ...(nothingByMouthUntil !== undefined && { nothingByMouthUntil: instant(madeAt + nothingByMouthUntil) }),
  }));

export const plain = (code: string) => code.replaceAll('-', '');
export const values = (code: string) => [...plain(code)].map((letter) => ALPHABET.indexOf(letter));
/** Letters with a right check, as another version or a wrong program could write them. */
export const withCheck = (content: readonly number[]) => written([...content, ...checkOf(content)]);
export const reason = (decoded: Decoded) => (decoded.ok ? 'read as a card' : decoded.reason);

export const ANY_TIME = instant(Date.UTC(2026, 10, 25) / 60_000);
export const SHORT: BedCard = {
  side: 'left',
  bell: 'cord',
  secondStep: 'call-out',
  secondStepMinutes: 5,
  canTell: 'yes',
  set: 'bandage',
  compare: true,
  noWeeHours: 8,
  medicineWaitMinutes: 45,
  ownThingsOnly: false,
  hands: 'both',
  drip: 'none',
  wardLanguage: 'en',
  madeAt: ANY_TIME,
  off: minutes(60),
};
const LONG: BedCard = { ...CARD, wardLanguage: 'zh-Hant' };
/** Six, seven and eight groups. */
export const THREE = [SHORT, { ...SHORT, wardLanguage: 'pt-BR' }, LONG].map(encodeBedCard);
