/** Own ideas for the tests: every one that a play specialist could write. */
import fc from 'fast-check';
import { CAUTION_QUESTIONS, type CautionQuestion, type OwnIdea } from '#domain/play-bed/bed.ts';
import { BARRED, KINDS } from '#domain/play/types.ts';

export const QUESTIONS = Object.keys(CAUTION_QUESTIONS) as CautionQuestion[];

/** A different value in every field that has more than two. */
export const OWN: OwnIdea = {
  id: 'own-7',
  title: 'Whales on the ceiling',
  kind: 'imagine',
  minutes: [10, 25],
  position: 'flat',
  hands: 0,
  energy: 2,
  noise: 1,
  mess: 0,
  who: 'either',
  wipe: 'leave',
  moments: ['bandage'],
  tray: false,
  cautions: ['feelings'],
  barred: [],
};

const WRITING = [...'abcdefghij KLMNOP 0123', 'é', 'ß', 'ż', 'م', 'ر', 'ח', '画', '読', '🐋', 'ñ', '-', '!'];
const anyTitle = fc
  .array(fc.constantFrom(...WRITING), { minLength: 0, maxLength: 58 })
  .map((characters) => `A${characters.join('')}z`);

export const anyOwn: fc.Arbitrary<OwnIdea> = fc.record({
  id: fc.integer({ min: 1, max: 99 }).map((n) => `own-${n}`),
  title: anyTitle,
  kind: fc.constantFrom(...KINDS),
  minutes: fc
    .tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 60 }))
    .map(([a, b]): [number, number] => [Math.min(a, b), Math.max(a, b)]),
  position: fc.constantFrom('flat' as const, 'propped' as const, 'both' as const),
  hands: fc.constantFrom(0 as const, 1 as const, 2 as const),
  energy: fc.constantFrom(1 as const, 2 as const, 3 as const),
  noise: fc.constantFrom(0 as const, 1 as const, 2 as const),
  mess: fc.constantFrom(0 as const, 1 as const, 2 as const),
  who: fc.constantFrom('alone' as const, 'adult' as const, 'either' as const),
  wipe: fc.constantFrom('yes' as const, 'leave' as const, 'no' as const),
  moments: fc.subarray(['needle' as const, 'bandage' as const]),
  tray: fc.boolean(),
  cautions: fc.subarray(QUESTIONS),
  barred: fc.oneof(
    { weight: 3, arbitrary: fc.constant<(typeof BARRED)[number][]>([]) },
    fc.subarray([...BARRED]),
  ),
});
