/** Notes of every kind for the tests: any that `parseEntry` can give, odd ids and later kinds among them. */
import fc from 'fast-check';
import { OWN_WORDS_LENGTH, parseEntry, type Entry } from '#domain/notes/entries.ts';
import {
  CHOICES,
  isTwoWordKind,
  MARKS,
  NOT_SAID,
  QUESTIONS,
  WRITERS,
  type ChoiceKind,
} from '#domain/notes/kinds.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { anyLetter } from './letters.ts';
import { anyStored } from './notes.ts';

const anyText = fc.oneof(
  fc.constantFrom(
    'a-later-word',
    'unknown',
    '__proto__',
    'constructor',
    '7',
    '-',
    '\ud800',
    'الكاحل',
    'kostka',
  ),
  fc.string({ unit: anyLetter, minLength: 1, maxLength: 80 }).map((text) => text.slice(0, 80)),
);
const anyPhone = fc.constantFrom('3fa91c', 'b07e52', '000000', 'page', '', 'A-B', 'abcdefg');
/** Mostly ids as phones write them; some that only look so. */
const anyId: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(anyPhone, fc.nat(40)).map(([phone, n]) => `${phone}-${n}`) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(anyPhone, fc.constantFrom('01', '-1', '1e3', '999999999', '1000000000', '9'.repeat(20), 'x', ''))
      .map(([phone, n]) => `${phone}-${n}`),
  },
  { weight: 1, arbitrary: anyText },
);
const anySignId = fc.oneof({ weight: 5, arbitrary: fc.constantFrom<string>(...ALL_SIGN_IDS) }, anyText);
const anyAnswer = fc.constantFrom('not-looked', 'like-usual', 'not-sure', 'different');

const choiceRows = (Object.keys(CHOICES) as ChoiceKind[]).map((kind) =>
  fc.record({
    kind: fc.constant(kind),
    ...Object.fromEntries(
      Object.entries<readonly string[]>(CHOICES[kind]).map(([field, words]) => [
        field,
        fc.constantFrom(...words, ...(isTwoWordKind(kind) ? [NOT_SAID] : [])),
      ]),
    ),
    ...(kind === 'answer' && { question: anyId }),
  }),
);

/** The content of a note, one arbitrary for each kind that this version writes. */
const CONTENTS: readonly fc.Arbitrary<object>[] = [
  fc.record(
    {
      kind: fc.constant('sign'),
      sign: anySignId,
      answer: fc.constantFrom('different', 'not-sure'),
      details: fc.array(fc.oneof(fc.constantFrom('right-off', 'wakes-child'), anyText), {
        minLength: 1,
        maxLength: 3,
      }),
    },
    { requiredKeys: ['kind', 'sign', 'answer'] },
  ),
  fc.record({ kind: fc.constant('look'), answers: fc.dictionary(anySignId, anyAnswer, { maxKeys: 6 }) }),
  ...MARKS.map((kind) => fc.constant({ kind })),
  fc.record({
    kind: fc.constant('sore'),
    value: fc.nat(10),
    scale: fc.constant('numbers'),
    when: fc.constantFrom('rest', 'moving'),
  }),
  fc.record({
    kind: fc.constant('sore'),
    value: fc.nat(3),
    scale: fc.constant('steps'),
    when: fc.constantFrom('rest', 'moving'),
  }),
  ...choiceRows,
  fc.record({ kind: fc.constant('play'), idea: anyText, again: fc.boolean() }),
  fc.record({ kind: fc.constant('question'), ask: fc.oneof(fc.constantFrom<string>(...QUESTIONS), anyText) }),
  fc.record({
    kind: fc.constant('question'),
    own: fc
      .string({ unit: anyLetter, minLength: 1, maxLength: OWN_WORDS_LENGTH })
      .map((text) => `?${text}`.slice(0, OWN_WORDS_LENGTH)),
    in: fc.option(fc.constantFrom('en', 'pt-BR', 'ar'), { nil: undefined }),
  }),
  fc.record({ kind: fc.constant('strike'), strikes: anyId }),
  fc.record({ kind: fc.constant('pair'), first: anyId, second: anyId, same: fc.boolean() }),
  fc.record({
    kind: fc.constant('clock'),
    device: fc.oneof(anyPhone.filter(Boolean), anyText),
    upTo: fc.oneof(fc.nat(99), fc.maxSafeNat()),
    minutes: fc.oneof(fc.integer({ min: -90, max: 90 }), fc.integer({ min: -1.4e11, max: 1.4e11 })),
  }),
  fc.record({ kind: fc.constant('a-later-kind'), much: fc.jsonValue() }),
];

const anyT = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 29_900_000, max: 29_900_000 + 14 * 24 * 60 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -1, 1.4e11, -1.4e11, 29_900_000.5) },
);

/** What a phone of this version or a later one wrote. */
export const anyWritten: fc.Arbitrary<Entry> = fc
  .record({
    common: fc.record(
      {
        id: anyId,
        t: anyT,
        off: fc.oneof(fc.constantFrom(60, 0, -210, 345, 765, 960, -960), fc.constant(0.5)),
        by: fc.constantFrom(...WRITERS),
      },
      { requiredKeys: ['id', 't', 'off'] },
    ),
    content: fc.oneof(...CONTENTS),
  })
  .map(({ common, content }) => parseEntry(plain({ ...common, ...content })));

/** Stored values are plain JSON; anything else is what a broken store could hand out. */
const plain = (value: unknown): unknown => {
  try {
    const text = JSON.stringify(value);
    return text === undefined ? null : (JSON.parse(text) as unknown);
  } catch {
    return null;
  }
};

/** Any entry that can be read from a store: written ones, strangers' ones, damaged ones. */
export const anyNote: fc.Arbitrary<Entry> = fc.oneof(
  { weight: 5, arbitrary: anyWritten },
  { weight: 1, arbitrary: anyStored.map((value) => parseEntry(plain(value))) },
);
