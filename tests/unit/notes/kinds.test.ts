import { describe, expect, test } from 'vitest';
import { OWN_WORDS_LENGTH, parseEntry, type NewEntry } from '#domain/notes/entries.ts';
import { CHOICES, MARKS, QUESTIONS, WRITERS, type ChoiceKind } from '#domain/notes/kinds.ts';

const COMMON = { id: 'aaaaaa-1', t: 29_900_000, off: 60 };
const read = (row: object) => parseEntry(JSON.parse(JSON.stringify({ ...COMMON, ...row })));
const KINDS = Object.keys(CHOICES) as ChoiceKind[];
/** Every combination of words of a kind. */
const combinations = (kind: ChoiceKind): Record<string, string>[] =>
  Object.entries<readonly string[]>(CHOICES[kind]).reduce<Record<string, string>[]>(
    (rows, [field, words]) => rows.flatMap((row) => words.map((word) => ({ ...row, [field]: word }))),
    [{}],
  );
const more = (kind: ChoiceKind) => (kind === 'answer' ? { question: 'bbbbbb-4' } : {});

describe('a note of chosen words', () => {
  test.each(KINDS)('%s: every combination comes back as it was written, and not one thing more', (kind) => {
    for (const words of combinations(kind)) {
      const row = { ...COMMON, kind, ...words, ...more(kind) };
      expect(read({ ...row, title: 'x', raw: 1 })).toEqual(row);
    }
  });

  test.each(KINDS)(
    '%s: a word this version does not know, or none, is kept as unknown and counts',
    (kind) => {
      for (const field of Object.keys(CHOICES[kind]))
        for (const word of ['a-later-word', 'toString', '', null, 0, ['half']]) {
          const row = { kind, ...combinations(kind)[0], ...more(kind), [field]: word };
          expect(read(row)).toMatchObject({ kind: 'unknown', raw: { ...COMMON, ...row } });
        }
      expect(read({ kind })).toMatchObject({ kind: 'unknown' });
    },
  );

  test.each(KINDS)('%s: a list that holds the name of the kind is not its name', (kind) => {
    const row = { ...COMMON, ...combinations(kind)[0], ...more(kind), kind: [kind] };
    expect(read(row)).toMatchObject({ kind: 'unknown', raw: row });
  });

  test.each(KINDS)('%s: left after the first of two words it says so; no other kind does', (kind) => {
    for (const field of Object.keys(CHOICES[kind])) {
      const row = { ...COMMON, kind, ...combinations(kind)[0], ...more(kind), [field]: 'not-said' };
      if (kind === 'drink' || kind === 'wee') expect(read(row)).toEqual(row);
      else expect(read(row)).toMatchObject({ kind: 'unknown', raw: row });
    }
  });

  test('an answer without its question is unknown', () => {
    expect(read({ kind: 'answer', what: 'yes' })).toMatchObject({ kind: 'unknown' });
    expect(read({ kind: 'answer', what: 'yes', question: '' })).toMatchObject({ kind: 'unknown' });
  });

  test('no id stands twice in a list, and none has a letter that a code could not hold', () => {
    const lists = [
      WRITERS,
      QUESTIONS,
      MARKS,
      KINDS,
      ...KINDS.flatMap((kind) => Object.values(CHOICES[kind])),
    ];
    for (const list of lists) {
      expect(new Set<string>(list).size).toBe(list.length);
      for (const id of list) expect(id).toMatch(/^[a-z][a-z-]*[a-z]$/);
    }
    expect(QUESTIONS).toHaveLength(24);
  });
});

describe('marks, soreness, play, questions', () => {
  test.each(MARKS)('%s holds nothing of its own', (kind) => {
    expect(read({ kind, value: 7 })).toEqual({ ...COMMON, kind });
  });

  test('numbers go from 0 to 10, steps from 0 to 3; anything else is unknown and so is not lost', () => {
    for (let value = -1; value <= 11; value++)
      for (const scale of ['numbers', 'steps']) {
        const row = { kind: 'sore', value, scale, when: 'rest' };
        const known = value >= 0 && value <= (scale === 'numbers' ? 10 : 3);
        expect(read(row).kind).toBe(known ? 'sore' : 'unknown');
        if (known) expect(read(row)).toEqual({ ...COMMON, ...row });
      }
    for (const change of [
      { value: 2.5 },
      { value: '2' },
      { scale: 'other' },
      { when: 'asleep' },
      { when: undefined },
    ])
      expect(read({ kind: 'sore', value: 2, scale: 'steps', when: 'rest', ...change }).kind).toBe('unknown');
  });

  test('an idea that was tried says whether it shall come again', () => {
    const row = { kind: 'play', idea: 'dot-grid', again: false };
    expect(read(row)).toEqual({ ...COMMON, ...row });
    expect(read({ ...row, again: 'no' }).kind).toBe('unknown');
    expect(read({ ...row, idea: '' }).kind).toBe('unknown');
  });

  test('a question is one of the list, one of a later list, or the family’s own words of a bounded length', () => {
    for (const ask of [...QUESTIONS, 'a-later-question'])
      expect(read({ kind: 'question', ask })).toEqual({ ...COMMON, kind: 'question', ask });
    const own = 'x'.repeat(OWN_WORDS_LENGTH);
    expect(read({ kind: 'question', own })).toEqual({ ...COMMON, kind: 'question', own });
    for (const bad of [`${own}x`, '   ', '', 7, undefined])
      expect(read({ kind: 'question', own: bad }).kind).toBe('unknown');
  });

  test('own words say in which language they were written; what is no language tag is left out, the words stay', () => {
    const row = { kind: 'question', own: 'Wann darf ich aufstehen?' };
    for (const tag of ['de', 'fil', 'pt-BR', 'zh-Hant', 'zh-Hant-TW', 'es-419'])
      expect(read({ ...row, in: tag })).toStrictEqual({ ...COMMON, ...row, in: tag });
    for (const tag of [
      '',
      'd',
      'deut',
      'DE',
      '1de',
      'de-',
      'de-A',
      'de-Latn-DE-x9',
      'de_DE',
      'de\n',
      7,
      ['de'],
      null,
    ])
      expect(read({ ...row, in: tag })).toStrictEqual({ ...COMMON, ...row });
  });

  test('who wrote it is one of the roles; any other word is left out, and the note stays', () => {
    for (const by of WRITERS) expect(read({ kind: 'bell', by })).toEqual({ ...COMMON, kind: 'bell', by });
    expect(read({ kind: 'bell', by: 'somebody' })).toEqual({ ...COMMON, kind: 'bell' });
  });
});

describe('notes about notes', () => {
  test('a pair names two notes and whether they are one', () => {
    const row: NewEntry = { kind: 'pair', first: 'aaaaaa-1', second: 'bbbbbb-1', same: true };
    expect(read(row)).toEqual({ ...COMMON, ...row });
    for (const change of [{ first: '' }, { second: 7 }, { same: 'yes' }])
      expect(read({ ...row, ...change }).kind).toBe('unknown');
  });

  test('a clock correction is in whole minutes, up to a whole note number', () => {
    const row: NewEntry = { kind: 'clock', device: 'bbbbbb', upTo: 12, minutes: -7 };
    expect(read(row)).toEqual({ ...COMMON, ...row });
    for (const change of [{ upTo: -1 }, { upTo: 1.5 }, { minutes: 0.5 }, { minutes: 1e15 }, { device: '' }])
      expect(read({ ...row, ...change }).kind).toBe('unknown');
  });
});
