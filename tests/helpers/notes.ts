/** Notes for the tests: short writers, and arbitrary ones as they come from a device or from a stranger. */
import fc from 'fast-check';
import { parseEntry, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import type { Answer } from '#domain/signs/types.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { anySign } from './reports.ts';

const WRITTEN_FROM = instant(Date.UTC(2026, 10, 25) / 60_000);

/** One note of a phone, `minute` minutes after midnight. */
export const note = (minute: number, what: NewEntry, id = `aaaaaa-${minute + 1}`): Entry =>
  ({ id, t: instant(WRITTEN_FROM + minute), off: minutes(0), ...what }) as Entry;
export const momentOf = (minute: number): Instant => instant(WRITTEN_FROM + minute);

const anyAnswer = fc.constantFrom<Answer>('not-looked', 'like-usual', 'not-sure', 'different');
const anyKind: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({
    kind: fc.constant('sign' as const),
    sign: anySign,
    answer: fc.constantFrom('different' as const, 'not-sure' as const),
  }),
  fc.record({
    kind: fc.constant('look' as const),
    answers: fc.dictionary(anySign, anyAnswer, { maxKeys: 3 }),
  }),
  fc.constantFrom<NewEntry>({ kind: 'bell' }, { kind: 'told' }, { kind: 'nurse-looked' }),
  fc.record({
    kind: fc.constant('strike' as const),
    strikes: fc.tuple(fc.constantFrom('aaaaaa', 'bbbbbb'), fc.nat(5)).map(([phone, n]) => `${phone}-${n}`),
  }),
);

/** Two phones whose notes fall close together, often within one minute, and sometimes with one id twice. */
export const anyEntry: fc.Arbitrary<Entry> = fc
  .record({
    phone: fc.constantFrom('aaaaaa', 'bbbbbb', 'bbbbb'),
    count: fc.constantFrom('1', '2', '3', '10', '01', 'x', ''),
    minute: fc.integer({ min: 0, max: 6 }),
    off: fc.constantFrom(-210, 0, 60, 345, 765),
    what: anyKind,
  })
  .map(({ phone, count, minute, off, what }) => ({
    ...note(minute, what, count ? `${phone}-${count}` : phone),
    off: minutes(off),
  }));

const KEYS = [
  'id',
  't',
  'off',
  'kind',
  'sign',
  'answer',
  'answers',
  'details',
  'strikes',
  'raw',
  '__proto__',
  'x',
];
const KINDS = ['sign', 'look', 'bell', 'told', 'nurse-looked', 'strike', 'unknown', 'constructor', 'song'];

/** What a broken disk, a stranger or a later version could leave: any value, often nearly a note. */
export const anyStored: fc.Arbitrary<unknown> = fc.oneof(
  fc.anything({ withBigInt: true, withNullPrototype: true, withDate: true, withMap: true }),
  fc.dictionary(fc.constantFrom(...KEYS), fc.anything()),
  fc.record(
    {
      id: fc.oneof(fc.constantFrom('aaaaaa-1', '', 'y'.repeat(99), '__proto__'), fc.anything()),
      t: fc.oneof(fc.integer(), fc.double(), fc.constantFrom(1e300, 1.44e11, -1.44e11)),
      off: fc.oneof(fc.integer({ min: -1000, max: 1000 }), fc.anything()),
      kind: fc.constantFrom(...KINDS),
      sign: fc.oneof(anySign, fc.constantFrom('__proto__', 'constructor', 'a-later-sign', ''), fc.anything()),
      answer: fc.oneof(anyAnswer, fc.anything()),
      answers: fc.oneof(
        fc.dictionary(fc.oneof(anySign, fc.constant('__proto__')), fc.anything()),
        fc.anything(),
      ),
      details: fc.oneof(fc.array(fc.oneof(fc.string(), fc.anything())), fc.anything()),
      strikes: fc.anything(),
      raw: fc.anything(),
    },
    { requiredKeys: [] },
  ),
);

/** Values that survive a store: plain JSON only. */
export const anyStoredJson: fc.Arbitrary<Entry> = fc
  .oneof(fc.jsonValue(), fc.dictionary(fc.constantFrom(...KEYS), fc.jsonValue()))
  .map((value) => parseEntry(JSON.parse(JSON.stringify(value))));
