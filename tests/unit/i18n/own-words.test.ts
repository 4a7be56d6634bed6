/** Someone's own words on a page of others: they stay what they are, and stay in their place. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseEntry, type Entry } from '#domain/notes/entries.ts';
import { ownWords } from '#i18n/format.ts';
import { loadWords } from '#i18n/words.ts';
import { noteText, questionText } from '#ui/note-words.ts';
import { signName } from '#ui/sign-words.ts';
import { anyLetter } from '../../helpers/letters.ts';

/** Marks of direction and isolation. Source: Unicode Standard Annex 9, 2.1–2.4, the explicit ones. */
const TURNS = ['\u202A', '\u202B', '\u202C', '\u202D', '\u202E', '\u2066', '\u2067', '\u2068', '\u2069'];
const hostile = fc.oneof(
  fc.constantFrom(...TURNS, '\u200B', '\u200D', '\u200E', '\u200F', '\uFEFF', '\u034F', '\u2028', '\n', '\0'),
  fc.constantFrom('\u0301', '\u0489', '\u20DD', '\u05B8', '\u0E49', '\u0652', '\uFE0F'),
  fc.constantFrom('👨‍👩‍👧‍👦', '🏴󠁧󠁢󠁥󠁮󠁧󠁿', '﷽', 'م', 'ש', 'Ż', 'W', '<b>', '&amp;', '{{text}}', '$t(common:home)', '${x}'),
  fc.string({ unit: anyLetter, maxLength: 3 }),
);
const anyWords = fc.array(hostile, { maxLength: 60 }).map((parts) => parts.join(''));
const inside = (text: string) => text.slice(1, -1);

describe('own words', () => {
  test('stand in one isolate, and nothing inside opens, closes or turns another', () => {
    fc.assert(
      fc.property(anyWords, (text) => {
        const shown = ownWords(text);
        expect(shown.startsWith('\u2068') && shown.endsWith('\u2069')).toBe(true);
        for (const turn of TURNS) expect(inside(shown)).not.toContain(turn);
        expect(inside(shown)).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
      }),
      { numRuns: 2000 },
    );
  });

  test('never heap more than four marks on one letter, seen or unseen characters between them', () => {
    fc.assert(
      fc.property(anyWords, (text) => {
        const heaps = inside(ownWords(text)).match(/[\p{Mn}\p{Me}\p{Cf}]+/gu) ?? [];
        for (const heap of heaps)
          expect([...heap].filter((one) => !/\p{Cf}/u.test(one)).length).toBeLessThanOrEqual(4);
      }),
      { numRuns: 2000 },
    );
    expect(inside(ownWords(`a${'\u0301\u200D'.repeat(70)}b`))).toBe(
      `a${'\u0301\u200D'.repeat(4)}${'\u200D'.repeat(66)}b`,
    );
  });

  test('are told once more as they were told: nothing is changed twice, nothing grows', () => {
    fc.assert(
      fc.property(anyWords, (text) => {
        const once = inside(ownWords(text));
        expect(inside(ownWords(once))).toBe(once);
        expect(once.length).toBeLessThanOrEqual(text.length);
      }),
    );
  });

  test.each([
    ['Vietnamese, taken apart', 'Bệnh viện'.normalize('NFD')],
    ['Hebrew with points', 'הַאִם זֶה כּוֹאֵב?'],
    ['Arabic with vowels', 'هَلْ يُؤْلِمُكَ ذٰلِكَ؟'],
    ['Hindi', 'क्या दर्द होता है?'],
    ['Thai', 'เจ็บไหมครับ น้ำ'],
    ['Burmese', 'နာကျင်ပါသလား ကြွေး'],
    ['Persian with its joiner', 'می‌خواهم بدانم'],
    ['a family of pictographs', '👨‍👩‍👧‍👦 1️⃣ 🏴󠁧󠁢󠁥󠁮󠁧󠁿'],
    ['markup', '<img src=x onerror="alert(1)"> & <b>'],
  ])('%s: to the letter', (_, text) => {
    expect(inside(ownWords(text))).toBe(text);
  });
});

describe('a note from a stranger’s file, written out', async () => {
  const areas = ['notes', 'signs', 'look', 'steps', 'ideas'] as const;
  const words = await Promise.all(['en', 'ar'].map((locale) => loadWords(locale, areas)));
  const common = { id: 'aaaaaa-1', t: 29_000_000, off: 0 };
  const read = (what: object): Entry => parseEntry({ ...common, ...what });
  const OUTSIDE = new RegExp(`[${TURNS.slice(0, 5).join('')}\\p{Cc}]`, 'u');

  test('own words are put in once, as text: not looked up, not filled in, not left open', () => {
    for (const own of [
      '$t(common:home)',
      '{{language}}',
      '{{text}}',
      '$t(notes:question.quoted, {"text":"x"})',
    ])
      for (const language of words)
        for (const question of [{ own }, { own, in: 'pl' }]) {
          const text = questionText(language, question);
          expect(text.split(own)).toHaveLength(2);
        }
  });

  test.each([
    'constructor',
    '__proto__',
    'toString',
    'a.b',
    'common:home',
    '{{x}}\u202Eback',
    '$t(home)',
    '\u202E\u202Eback',
  ])('an idea called %j is its own words, set apart, and no place of the program', (idea) => {
    for (const language of words)
      expect(noteText(language, read({ kind: 'play', idea, again: true }), [])).toContain(ownWords(idea));
  });

  test.each(['en-12', 'xx-Abcdefgh-99', 'zzz', 'aa-aaaaa-aaaaa', '__proto__'])(
    'a language called %j breaks nothing',
    (tag) => {
      for (const language of words)
        expect(questionText(language, { own: 'Does it hurt?', in: tag })).toContain(
          ownWords('Does it hurt?'),
        );
    },
  );

  test('is short, however much it holds: what this version does not know has one name', () => {
    const unknown = (n: number) => `x-${n}`;
    const many = Array.from({ length: 10_000 }, (_, n) => unknown(n));
    const hugeSign = read({ kind: 'sign', sign: 'toes-cool', answer: 'different', details: many });
    const hugeLook = read({
      kind: 'look',
      answers: Object.fromEntries(many.map((sign, n) => [sign, n % 2 ? 'different' : 'not-sure'])),
    });
    for (const language of words)
      for (const entry of [hugeSign, hugeLook]) {
        const text = noteText(language, entry, []);
        expect(text.length).toBeLessThan(400);
        expect(text).toContain(signName(language, 'x-1'));
      }
  });

  test('whatever it is, it can be written out, and turns nothing around it', () => {
    const anyText = fc.oneof(
      anyWords,
      fc.constantFrom('constructor', '__proto__', 'hasOwnProperty', 'toes-cool'),
    );
    const anyNote = fc.record(
      {
        kind: fc.constantFrom(
          'sign',
          'look',
          'play',
          'question',
          'answer',
          'strike',
          'sore',
          'drink',
          'song',
        ),
        sign: anyText,
        answer: anyText,
        answers: fc.dictionary(anyText, fc.constantFrom('different', 'odd', 'like-usual')),
        details: fc.oneof(anyText, fc.array(anyText)),
        idea: anyText,
        own: anyText,
        ask: anyText,
        in: anyText,
        question: anyText,
        strikes: fc.constantFrom('aaaaaa-1', '__proto__'),
        again: fc.boolean(),
        what: anyText,
        amount: anyText,
        value: fc.double(),
        scale: fc.constantFrom('numbers', 'steps'),
        when: fc.constantFrom('rest', 'moving'),
      },
      { requiredKeys: ['kind'] },
    );
    fc.assert(
      fc.property(anyNote, (what) => {
        const entry = read(what);
        for (const language of words) {
          const text = noteText(language, entry, [entry]);
          expect(text.length).toBeGreaterThan(0);
          expect(text).not.toMatch(OUTSIDE);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
