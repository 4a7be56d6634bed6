import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeBedCard } from '#domain/bed-card/code.ts';
import { ALPHABET, checkOf } from '#domain/bed-card/letters.ts';
import type { Entry } from '#domain/notes/entries.ts';
import { summarise } from '#domain/notes/summarise.ts';
import { waitingFor } from '#domain/notes/waiting.ts';
import { readSpokenCode, spokenCode, spokenFacts, type SpokenFacts } from '#domain/notes/spoken.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { anyNote } from '../../helpers/entries.ts';
import { anyLetter } from '../../helpers/letters.ts';
import { cases } from '../../helpers/same-cases.ts';
import { SETTINGS } from '../../helpers/ward-days.ts';
import { momentOf, note } from '../../helpers/notes.ts';

const anyFacts: fc.Arbitrary<SpokenFacts> = fc.record({
  signs: fc.uniqueArray(fc.constantFrom<string>(...ALL_SIGN_IDS, 'unknown'), { maxLength: 3 }),
  more: fc.nat(3),
  call: fc.constantFrom('none', 'told', 'bell'),
  hours: fc.nat(31),
});
const plain = (code: string) => code.replaceAll('-', '');

describe('ten letters', () => {
  test('say what was said', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const code = spokenCode(facts);
        expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{2}$/);
        expect(readSpokenCode(code)).toEqual({ ok: true, facts });
      }),
      { numRuns: cases(2000) },
    );
  });

  test('every sign has its own place', () => {
    const codes = ALL_SIGN_IDS.map((sign) => spokenCode({ signs: [sign], more: 0, call: 'none', hours: 0 }));
    expect(new Set(codes).size).toBe(ALL_SIGN_IDS.length);
  });

  test('are read as people write and hear them', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const heard = plain(spokenCode(facts)).toLowerCase().replaceAll('0', 'o').replaceAll('1', 'l');
        expect(readSpokenCode(` ${heard.slice(0, 5)} ${heard.slice(5)}\n`)).toEqual({ ok: true, facts });
      }),
    );
  });

  test('with one to four wrong letters, or two that changed places, they say nothing', () => {
    fc.assert(
      fc.property(
        anyFacts,
        fc.uniqueArray(fc.nat(9), { minLength: 1, maxLength: 4 }),
        fc.array(fc.integer({ min: 1, max: 31 }), { minLength: 4, maxLength: 4 }),
        (facts, places, by) => {
          const letters = [...plain(spokenCode(facts))];
          places.forEach((at, i) => {
            letters[at] = ALPHABET[(ALPHABET.indexOf(letters[at]!) + by[i]!) % 32]!;
          });
          expect(readSpokenCode(letters.join(''))).toEqual({ ok: false, reason: 'damaged' });
        },
      ),
      { numRuns: cases(5000) },
    );
    fc.assert(
      fc.property(anyFacts, fc.nat(9), fc.nat(9), (facts, a, b) => {
        const letters = [...plain(spokenCode(facts))];
        fc.pre(letters[a] !== letters[b]);
        [letters[a], letters[b]] = [letters[b]!, letters[a]!];
        expect(readSpokenCode(letters.join('')).ok).toBe(false);
      }),
    );
  });

  test('a hundred thousand made-up ones: no crash, and not one in ten thousand is believed', () => {
    let believed = 0;
    fc.assert(
      fc.property(
        fc.oneof(
          { weight: 9, arbitrary: fc.array(fc.constantFrom(...ALPHABET), { minLength: 10, maxLength: 10 }) },
          { weight: 1, arbitrary: fc.array(fc.string({ unit: anyLetter }), { maxLength: 12 }) },
        ),
        (letters) => {
          believed += Number(readSpokenCode(letters.join('')).ok);
        },
      ),
      { numRuns: cases(100_000) },
    );
    expect(believed).toBeLessThan(10);
  });

  test('fewer are incomplete, others foreign, and a bed card is not one of them', () => {
    const code = spokenCode({ signs: [], more: 0, call: 'none', hours: 0 });
    for (let length = 0; length < 10; length++)
      expect(readSpokenCode(plain(code).slice(0, length))).toEqual({ ok: false, reason: 'incomplete' });
    for (const text of [`${code}0`, `${code.slice(0, -1)}*`, 'https://example.org/', '😀', 'x'.repeat(5000)])
      expect(readSpokenCode(text)).toEqual({ ok: false, reason: 'foreign' });
    expect(decodeBedCard(code).ok).toBe(false);
  });

  test.each([
    ['more', { more: 4 }, '3, saw 4'],
    ['more', { more: 0.5 }, '3, saw 0.5'],
    ['hours', { hours: -1 }, '31, saw -1'],
    ['hours', { hours: 32 }, '31, saw 32'],
    ['hours', { hours: NaN }, '31, saw NaN'],
  ])('%s out of its range is a fault of the caller', (name, change, saw) => {
    expect(() => spokenCode({ signs: [], more: 0, call: 'none', hours: 0, ...change })).toThrow(
      `spoken › ${name}: 0 to ${saw}`,
    );
  });

  test('of more than three signs the first three are written', () => {
    const facts: SpokenFacts = {
      signs: ['toes-cool', 'no-poo', 'band-wet'],
      more: 1,
      call: 'none',
      hours: 2,
    };
    expect(spokenCode({ ...facts, signs: [...facts.signs, 'heel-sore'] })).toBe(spokenCode(facts));
  });

  /** Ten letters of any thirty bits, with a check as ours are made: what a later version, or a stranger, could write. */
  const sealed = (bits: string): string => {
    const empty = [...plain(spokenCode({ signs: [], more: 0, call: 'none', hours: 0 }))].map((letter) =>
      ALPHABET.indexOf(letter),
    );
    const content = Array.from({ length: 6 }, (_, i) => Number.parseInt(bits.slice(5 * i, 5 * i + 5), 2));
    const ours = checkOf(empty.slice(0, 6)).map((letter, i) => letter ^ empty[6 + i]!);
    const check = checkOf(content).map((letter, i) => letter ^ ours[i]!);
    return [...content, ...check].map((letter) => ALPHABET[letter]).join('');
  };

  test('any thirty bits are read by their places: version, more, three signs, call, hours', () => {
    const field = (bits: number) =>
      fc.nat(2 ** bits - 1).map((value) => value.toString(2).padStart(bits, '0'));
    const place = fc.oneof(fc.constant('000000'), field(6));
    const version = fc.oneof(
      { weight: 4, arbitrary: fc.constant('001') },
      { weight: 1, arbitrary: field(3) },
    );
    fc.assert(
      fc.property(
        fc.tuple(version, field(2), fc.tuple(place, place, place), field(2), field(5)),
        ([of, more, places, call, hours]) => {
          const read = readSpokenCode(sealed([of, more, ...places, call, hours].join('')));
          const told = places.filter((bits) => bits !== '000000');
          // an empty place before a filled one was written by nobody, nor was a fourth kind of call
          const odd = places.lastIndexOf(told.at(-1) ?? '') + 1 > told.length || call === '11';
          if (of > '001') expect(read).toEqual({ ok: false, reason: 'too-new' });
          else if (of < '001' || odd) expect(read).toEqual({ ok: false, reason: 'damaged' });
          else {
            const facts = read.ok ? read.facts : undefined;
            expect(facts).toEqual({
              signs: facts?.signs,
              more: Number.parseInt(more, 2),
              call: { '00': 'none', '01': 'told', '10': 'bell' }[call],
              hours: Number.parseInt(hours, 2),
            });
            // a place that no sign has yet is read as a sign this version does not know
            facts!.signs.forEach((sign, i) => {
              const again = spokenCode({ ...facts!, signs: [sign] });
              const only = sealed(
                [of, more, sign === 'unknown' ? '111111' : told[i], '000000000000', call, hours].join(''),
              );
              expect(plain(again)).toBe(only);
            });
            expect(facts!.signs).toHaveLength(told.length);
          }
        },
      ),
      { numRuns: cases(1000) },
    );
  });

  test('a hundred letters, blanks among them, are still looked at; one more is foreign at once', () => {
    const code = spokenCode({ signs: ['toes-cool'], more: 0, call: 'none', hours: 1 });
    expect(readSpokenCode(code.padEnd(100))).toMatchObject({ ok: true });
    expect(readSpokenCode(code.padEnd(101))).toEqual({ ok: false, reason: 'foreign' });
  });

  // written when version 1 was made: it is read so for ever
  test.each([
    ['4000-00B9-0R', { signs: [], more: 0, call: 'none', hours: 0 }],
    [
      '70SZ-JZEE-ZD',
      { signs: ['toes-cool', 'belly-hurts', 'very-worried'], more: 3, call: 'bell', hours: 31 },
    ],
    ['5MFQ-X74Q-FH', { signs: ['head-hurts', 'cannot-name-it', 'unknown'], more: 1, call: 'told', hours: 7 }],
  ] as const)('%s', (code, facts) => {
    expect(spokenCode(facts)).toBe(code);
    expect(readSpokenCode(code)).toEqual({ ok: true, facts });
  });
});

describe('what is said of the notes', () => {
  const sign = (minute: number, id: string) => note(minute, { kind: 'sign', sign: id, answer: 'different' });
  const said = (notes: readonly Entry[], minute: number) =>
    spokenFacts(notes, waitingFor(summarise(notes, momentOf(minute), SETTINGS)), momentOf(minute));

  test('what soreness against medicine sets is said, though nobody reported it', () => {
    const sore = (minute: number, value: number) =>
      note(minute, { kind: 'sore', value, scale: 'numbers', when: 'rest' });
    const notes = [sore(0, 4), note(5, { kind: 'medicine-told' }), sore(90, 8)];
    expect(said(notes, 100).signs).toContain('sore-after-medicine');
    expect(said([...notes, note(99, { kind: 'nurse-looked' })], 100).signs).toEqual([]);
  });

  test('the most urgent come first, however new the others are', () => {
    const notes = ['toes-cool', 'no-poo', 'band-wet', 'heel-sore', 'head-hurts'].map((id, i) =>
      sign(i * 60, id),
    );
    const facts = said(notes, 300);
    expect(facts.signs[0]).toBe('toes-cool');
    expect(facts).toMatchObject({ more: 2, call: 'none', hours: 5 });
    expect(facts.signs).not.toContain('no-poo');
  });

  test('never says more urgent signs are fewer than they are', () => {
    fc.assert(
      fc.property(fc.array(anyNote, { maxLength: 12 }), (notes) => {
        const facts = said(notes, 0);
        expect(readSpokenCode(spokenCode(facts))).toEqual({ ok: true, facts });
        const waiting = waitingFor(summarise(notes, momentOf(0), SETTINGS));
        expect(facts.signs.length + facts.more).toBe(Math.min(6, waiting.length));
        const ranks = waiting.map(({ urgency }) => rankOf(urgency)).sort((a, b) => b - a);
        const urgencies = new Map(waiting.map(({ sign, urgency }) => [sign, urgency]));
        for (const [at, id] of facts.signs.entries())
          if (id !== 'unknown') expect(rankOf(urgencies.get(id)!)).toBe(ranks[at]);
        if (facts.more) expect(facts.signs).toHaveLength(3);
      }),
      { numRuns: cases(500) },
    );
  });

  test('a pressed button is said until a nurse looked', () => {
    const notes = [sign(0, 'toes-cool'), note(1, { kind: 'told' }), note(2, { kind: 'bell' })];
    expect(said(notes.slice(0, 2), 9).call).toBe('told');
    expect(said(notes, 9).call).toBe('bell');
    const looked = [...notes, note(3, { kind: 'nurse-looked' })];
    expect(said(looked, 900)).toEqual({ signs: [], more: 0, call: 'none', hours: 0 });
  });

  test('hours are whole ones since the first of all that is open, whichever is said first', () => {
    const notes = [sign(0, 'no-poo'), sign(100, 'toes-cool'), sign(110, 'band-wet')];
    for (const order of [notes, [...notes].reverse()])
      expect([119, 120, 121].map((minute) => said(order, minute).hours)).toEqual([1, 2, 2]);
  });

  test('a clock that was set back makes no hours less than none, and a week is 31 or more', () => {
    expect(said([sign(600, 'toes-cool')], 0).hours).toBe(0);
    expect(said([sign(0, 'toes-cool')], 7 * 24 * 60).hours).toBe(31);
  });
});
