/** What happens to a code on its way from hand to hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';
import { ALPHABET, checkOf, written } from '#domain/bed-card/letters.ts';
import { faultsOf, missingFrom } from '#domain/bed-card/limits.ts';
import { anyCard, CARD, plain, reason, THREE, values, withCheck } from '../../helpers/bed-cards.ts';
import { anyLetter } from '../../helpers/letters.ts';
import { cases } from '../../helpers/same-cases.ts';

const { headUntil: _head, numbingUntil: _block, nothingByMouthUntil: _mouth, ...CARD_WITHOUT_TIMES } = CARD;
/** The letters with a number told in so many bits from a bit on, the highest first. */
const told = (letters: readonly number[], from: number, count: number, value: number) =>
  letters.map((letter, at) =>
    [0, 1, 2, 3, 4].reduce((all, place) => {
      const k = at * 5 + place - from;
      const old = (letter >> (4 - place)) & 1;
      return all * 2 + (k >= 0 && k < count ? Math.floor(value / 2 ** (count - 1 - k)) % 2 : old);
    }, 0),
  );
const REASONS = ['damaged', 'foreign', 'too-new', 'incomplete'];

describe('a slip of the finger', () => {
  test('every single wrong letter is found, and the group it is in is named', () => {
    let slips = 0;
    for (const code of THREE) {
      const right = values(code);
      right.forEach((letter, place) => {
        for (let wrong = 0; wrong < 32; wrong++) {
          if (wrong === letter) continue;
          slips++;
          const typed = written(right.with(place, wrong));
          const read = decodeBedCard(typed);
          // plain conditions: thousands of expectations take their time
          const named = !read.ok && read.reason === 'damaged' && read.where === Math.floor(place / 4) + 1;
          if (!named) throw new Error(`${typed} is ${JSON.stringify(read)}`);
        }
      });
    }
    expect(slips).toBe((24 + 28 + 32) * 31);
  });

  test('every swap of two letters, neighbours or not, is found; of neighbours, the group is named', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        const right = values(encodeBedCard(card));
        for (let a = 0; a < right.length; a++)
          for (let b = a + 1; b < right.length; b++) {
            if (right[a] === right[b]) continue;
            const read = decodeBedCard(written(right.with(a, right[b]!).with(b, right[a]!)));
            const named = !read.ok && read.reason === 'damaged' && read.where === Math.floor(a / 4) + 1;
            if (read.ok || (b === a + 1 && !named))
              throw new Error(`${a} and ${b} give ${JSON.stringify(read)}`);
          }
      }),
      { numRuns: cases(30) },
    );
  });

  test('every two wrong letters are found', () => {
    const right = values(THREE[2]!);
    const check = checkOf(right.slice(0, -4));
    let found = 0;
    // the check of a sum is the sum of the checks, so what one wrong letter does to it says all about two
    const zero = checkOf([]);
    const marks = right.map((_, place) =>
      Array.from({ length: 32 }, (_, by) =>
        place < 28
          ? checkOf(Array.from({ length: 28 }, (_, at) => (at === place ? by : 0))).map(
              (c, k) => c ^ zero[k]!,
            )
          : [0, 1, 2, 3].map((k) => (k === place - 28 ? by : 0)),
      ),
    );
    expect(checkOf(right.slice(0, -4).with(3, right[3]! ^ 9))).toEqual(
      check.map((c, k) => c ^ marks[3]![9]![k]!),
    );
    for (let a = 0; a < 32; a++)
      for (let b = a + 1; b < 32; b++)
        for (let byA = 1; byA < 32; byA++)
          for (let byB = 1; byB < 32; byB++)
            if (marks[a]![byA]!.some((part, k) => part !== marks[b]![byB]![k])) found++;
    expect(found).toBe(((32 * 31) / 2) * 31 * 31);
  });

  test('three and four wrong letters are found wherever they are', () => {
    fc.assert(
      fc.property(
        anyCard,
        fc.uniqueArray(fc.record({ place: fc.nat(31), by: fc.integer({ min: 1, max: 31 }) }), {
          minLength: 3,
          maxLength: 4,
          selector: ({ place }) => place,
        }),
        (card, slips) => {
          const typed = values(encodeBedCard(card));
          for (const { place, by } of slips) typed[place % typed.length]! ^= by;
          fc.pre(written(typed) !== encodeBedCard(card));
          expect(decodeBedCard(written(typed)).ok).toBe(false);
        },
      ),
      { numRuns: cases(20_000) },
    );
  });

  test('a group is named only where one slip explains it', () => {
    const right = values(THREE[0]!);
    // two neighbours, each wrong in the same way, have not changed places
    const typed = right.with(7, right[7]! ^ 9).with(8, right[8]! ^ 9);
    expect(right[7]! ^ right[8]!).not.toBe(9);
    expect(decodeBedCard(written(typed))).toEqual({ ok: false, reason: 'damaged' });
  });

  test('a letter that does not exist in any code is pointed at', () => {
    for (const code of THREE)
      [...plain(code)].forEach((_, place) => {
        const typed = [...plain(code)].with(place, '?').join('');
        expect(decodeBedCard(typed)).toEqual({
          ok: false,
          reason: 'damaged',
          where: Math.floor(place / 4) + 1,
        });
      });
  });

  test('a letter too much or too few in the middle is never read as a card', () => {
    fc.assert(
      fc.property(anyCard, fc.nat(31), fc.nat(31), (card, place, letter) => {
        const right = values(encodeBedCard(card));
        expect(decodeBedCard(written(right.toSpliced(place, 0, letter))).ok).toBe(false);
        expect(decodeBedCard(written(right.toSpliced(place % right.length, 1))).ok).toBe(false);
      }),
      { numRuns: cases(2000) },
    );
  });
});

describe('a code that cannot be read', () => {
  test('a code of which the end is missing is incomplete, at the group where typing stopped', () => {
    for (const code of THREE)
      for (let length = 0; length < plain(code).length; length++)
        expect(decodeBedCard(plain(code).slice(0, length))).toEqual({
          ok: false,
          reason: 'incomplete',
          where: Math.floor(length / 4) + 1,
        });
  });

  test('a code of a later version is too new, whatever it holds', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 31 }),
        fc.integer({ min: 1, max: 7 }),
        fc.infiniteStream(fc.nat(31)),
        (version, groups, stream) => {
          const content = [version, ...[...stream.take(groups * 4 - 1)]];
          expect(reason(decodeBedCard(withCheck(content)))).toBe('too-new');
        },
      ),
    );
  });

  test('a choice that this version does not know is too new, never another choice', () => {
    // bits of version 1: bell begins at bit 11, head at 27, hands at 47; their highest number is not given out
    const content = values(THREE[0]!).slice(0, -4);
    for (const from of [11, 27, 47])
      expect(reason(decodeBedCard(withCheck(told(content, from, 3, 7))))).toBe('too-new');
    expect(reason(decodeBedCard(withCheck(content.with(1, 3))))).toBe('too-new');
  });

  test.each([
    'https://example.org/en/bed-card/#1001-G00A',
    'hello',
    'Zimmer',
    '{"side":"left"}',
    '+49 30 1234567',
    '0044 20 7946 0000',
    'левая нога',
    'الساق اليسرى',
    '٠٠٠٠',
    '😀😀😀',
    '0',
    '\u0000',
    '1'.repeat(401),
    'x'.repeat(100_000),
  ])('%j is foreign', (text) => {
    expect(reason(decodeBedCard(text))).toBe('foreign');
  });

  test('a letter no code has is a slip of the finger in one of eight letters, and more make it another text', () => {
    // letters before the strange ones, so many strange ones, and what the first letter is
    const read = (length: number, strange: number, first = '1') =>
      decodeBedCard(first + '7'.repeat(length - strange - 1) + '?'.repeat(strange));
    const slip = (where: number) => ({ ok: false, reason: 'damaged', where });
    const foreign = { ok: false, reason: 'foreign' };
    expect([read(7, 1), read(8, 1)]).toEqual([foreign, slip(2)]);
    expect([read(15, 2), read(16, 2)]).toEqual([foreign, slip(4)]);
    expect([read(32, 4), read(32, 5)]).toEqual([slip(8), foreign]);
    expect([read(32, 1), read(33, 1)]).toEqual([slip(8), foreign]);
    // a version is a number from 1 to 9
    expect(['0', '1', '9', 'A', 'Z'].map((first) => read(24, 1, first))).toEqual([
      ...[foreign, slip(6), slip(6), foreign, foreign],
    ]);
    // where the first letter is the strange one, the rest must be as long as the shortest code
    expect([23, 24].map((length) => decodeBedCard('?' + '7'.repeat(length - 1)))).toEqual([foreign, slip(1)]);
  });

  test('a check that is right counts at the end of whole groups only, behind at least one letter', () => {
    const later = (length: number) => withCheck([2, ...Array.from({ length: length - 5 }, () => 7)]);
    expect([8, 24, 32].map((length) => reason(decodeBedCard(later(length))))).toEqual([
      ...['too-new', 'too-new', 'too-new'],
    ]);
    for (const length of [9, 10, 23, 25, 31]) expect(reason(decodeBedCard(later(length)))).toBe('damaged');
    expect(decodeBedCard(withCheck([]))).toEqual({ ok: false, reason: 'foreign' });
    for (const length of [33, 36, 40]) expect(reason(decodeBedCard('1'.repeat(length)))).toBe('damaged');
  });

  test('only a number from 1 to 9 begins a code; of version 1 it is known when letters are missing', () => {
    const read = (text: string) => decodeBedCard(text);
    expect(['0777', 'A777', 'Z777'].map((text) => reason(read(text)))).toEqual([
      ...['foreign', 'foreign', 'foreign'],
    ]);
    expect(['9777', '2777', '2'].map((text) => reason(read(text)))).toEqual([
      ...['damaged', 'damaged', 'damaged'],
    ]);
    expect(read('1')).toEqual({ ok: false, reason: 'incomplete', where: 1 });
    // the second letter says how long it will be: at least twenty-four letters, with three times more
    const incomplete = (text: string) => read(text).ok === false && reason(read(text)) === 'incomplete';
    expect([23, 24].map((length) => incomplete('10' + '7'.repeat(length - 2)))).toEqual([true, false]);
    expect([31, 32].map((length) => incomplete('1W' + '7'.repeat(length - 2)))).toEqual([true, false]);
  });

  test('a text of four hundred characters is looked into, a longer one is not', () => {
    const code = THREE[0]!;
    expect(decodeBedCard(code.padEnd(400)).ok).toBe(true);
    expect(decodeBedCard(code.padEnd(401))).toEqual({ ok: false, reason: 'foreign' });
  });

  test('letters that follow each other and a date are not taken for a card', () => {
    for (const text of ['1234-5678-9ABC-DEFG-HJKM-NPQR', '1111-1111-1111-1111-1111-1111', '2026-11-25'])
      expect(decodeBedCard(text)).toMatchObject({ ok: false });
  });

  test('what no version writes is damaged even where its check is right', () => {
    const content = values(THREE[0]!).slice(0, -4);
    // the last bits of the last letter are empty
    expect(reason(decodeBedCard(withCheck(content.with(19, content[19]! | 1))))).toBe('damaged');
    // a region beyond the last one: eleven bits, all set, after the language
    const region = values(THREE[1]!).slice(0, -4);
    expect(reason(decodeBedCard(withCheck(told(region, 97, 11, 2 ** 11 - 1))))).toBe('damaged');
    // a letter group too much
    expect(reason(decodeBedCard(withCheck([...content, 0, 0, 0, 0])))).toBe('damaged');
    expect(reason(decodeBedCard(withCheck([0, ...content.slice(1)])))).toBe('damaged');
  });

  test('a language is two or three letters of twenty-six, a script four: no other number is one', () => {
    const read = (content: number[]) => decodeBedCard(withCheck(content));
    // fifteen bits from bit 82 on, three letters of 1 to 26 each in twenty-seven; the third may be missing
    const plain = values(encodeBedCard({ ...CARD_WITHOUT_TIMES, wardLanguage: 'pl' })).slice(0, -4);
    const language = (value: number) => read(told(plain, 82, 15, value));
    const tag = (...letters: number[]) => language(letters.reduce((all, letter) => all * 27 + letter, 0));
    expect(tag(26, 26, 26)).toMatchObject({ ok: true, card: { wardLanguage: 'zzz' } });
    expect(tag(1, 1, 0)).toMatchObject({ ok: true, card: { wardLanguage: 'aa' } });
    for (const none of [tag(0, 1, 1), tag(1, 0, 1), tag(27, 1, 1), language(2 ** 15 - 1)])
      expect(none).toEqual({ ok: false, reason: 'damaged' });
    // nineteen bits behind it, four letters in twenty-six each
    const scripted = values(encodeBedCard({ ...CARD_WITHOUT_TIMES, wardLanguage: 'zh-Hant' })).slice(0, -4);
    const script = (value: number) => read(told(scripted, 97, 19, value));
    expect(script(26 ** 4 - 1)).toMatchObject({ ok: true, card: { wardLanguage: 'zh-Zzzz' } });
    for (const none of [26 ** 4, 26 ** 4 + 1, 2 ** 19 - 1])
      expect(script(none)).toEqual({ ok: false, reason: 'damaged' });
  });
});

describe('any text at all', () => {
  /** Whatever happened to it on the way: letters changed, lost, doubled, joined with another code. */
  const anyMutation = fc.oneof(
    fc.record({
      kind: fc.constant('change' as const),
      at: fc.nat(40),
      to: fc.string({ unit: 'grapheme', maxLength: 2 }),
    }),
    fc.record({ kind: fc.constant('letter' as const), at: fc.nat(40), to: fc.constantFrom(...ALPHABET) }),
    fc.record({ kind: fc.constant('lose' as const), at: fc.nat(40), to: fc.nat(6).map(String) }),
    fc.record({ kind: fc.constant('double' as const), at: fc.nat(40), to: fc.nat(6).map(String) }),
    fc.record({ kind: fc.constant('join' as const), at: fc.nat(40), to: fc.constantFrom(...THREE) }),
  );
  const mutated = (code: string, changes: { kind: string; at: number; to: string }[]) =>
    changes.reduce((text, { kind, at, to }) => {
      const [before, after] = [text.slice(0, at), text.slice(at)];
      if (kind === 'change' || kind === 'letter') return before + to + after.slice(1);
      if (kind === 'lose') return before + after.slice(Number(to));
      if (kind === 'double') return before + after.slice(0, Number(to)) + after;
      return before + to.slice(at);
    }, code);

  test('is either a card within limits with this very code, or a reason and nothing else', () => {
    const RUNS = cases(100_000);
    let read = 0;
    fc.assert(
      fc.property(fc.constantFrom(...THREE), fc.array(anyMutation, { maxLength: 3 }), (code, changes) => {
        const text = mutated(code, changes);
        const decoded = decodeBedCard(text);
        // plain conditions: a hundred thousand expectations take their time
        if (decoded.ok) {
          read++;
          const { card } = decoded;
          return !faultsOf(card).length && !missingFrom(card).length && THREE.includes(encodeBedCard(card));
        }
        const { ok, reason, where, ...rest } = decoded;
        const group = where === undefined || (Number.isInteger(where) && where >= 1 && where <= 9);
        return !ok && REASONS.includes(reason) && group && Object.keys(rest).length === 0;
      }),
      { numRuns: RUNS },
    );
    // texts that were not changed, or only in what does not matter, keep the other branch honest
    expect(read).toBeGreaterThan(RUNS / 100);
  });

  test('letters with a right check, whatever they say, are a card within limits or none', () => {
    const RUNS = cases(10_000);
    let read = 0;
    fc.assert(
      fc.property(
        anyCard,
        fc.array(fc.tuple(fc.integer({ min: 1, max: 27 }), fc.nat(31)), { minLength: 1, maxLength: 5 }),
        (card, changes) => {
          const content = values(encodeBedCard(card)).slice(0, -4);
          for (const [place, letter] of changes) content[place % content.length] = letter;
          const text = withCheck([1, ...content.slice(1)]);
          const decoded = decodeBedCard(text);
          if (!decoded.ok) return;
          read++;
          expect(faultsOf(decoded.card)).toEqual([]);
          expect(encodeBedCard(decoded.card)).toBe(text);
        },
      ),
      { numRuns: RUNS },
    );
    expect(read).toBeGreaterThan(RUNS / 10);
  });

  test('is answered at once, however long', () => {
    fc.assert(
      fc.property(fc.string({ unit: anyLetter, maxLength: 600 }), (text) => {
        expect(decodeBedCard(text).ok).toBe(false);
      }),
      { numRuns: cases(5000) },
    );
  });
});
