import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CARD_CHOICES, type BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, encodeBedCard, stillHolds, type Decoded } from '#domain/bed-card/code.ts';
import { ALPHABET, checkOf, written } from '#domain/bed-card/letters.ts';
import { faultsOf, handedOver, missingFrom } from '#domain/bed-card/limits.ts';
import { instant, minutes } from '#domain/units.ts';
import { anyCard, CARD } from '../../helpers/bed-cards.ts';

const REASONS = ['damaged', 'foreign', 'too-new', 'incomplete'];
const plain = (code: string) => code.replaceAll('-', '');
const values = (code: string) => [...plain(code)].map((letter) => ALPHABET.indexOf(letter));
/** Letters with a right check, as another version or a wrong program could write them. */
const withCheck = (content: readonly number[]) => written([...content, ...checkOf(content)]);
const reason = (decoded: Decoded) => (decoded.ok ? 'read as a card' : decoded.reason);

const ANY_TIME = instant(Date.UTC(2026, 10, 25) / 60_000);
const SHORT: BedCard = {
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
const THREE = [SHORT, { ...SHORT, wardLanguage: 'pt-BR' }, LONG].map(encodeBedCard);

describe('a card that is handed over', () => {
  test('arrives as it was set up, its times in quarter hours', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        expect(decodeBedCard(encodeBedCard(card))).toEqual({ ok: true, card: handedOver(card) });
      }),
      { numRuns: 3000 },
    );
  });

  test('a permission never lasts longer than was said, a ban or a block never ends sooner', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        const read = handedOver(card);
        const late = (field: 'headUntil' | 'numbingUntil' | 'nothingByMouthUntil' | 'madeAt') =>
          card[field] === undefined ? 0 : read[field]! - card[field];
        for (const field of ['headUntil', 'madeAt'] as const) {
          expect(late(field)).toBeLessThanOrEqual(0);
          expect(late(field)).toBeGreaterThan(-15);
        }
        for (const field of ['numbingUntil', 'nothingByMouthUntil'] as const) {
          expect(late(field)).toBeGreaterThanOrEqual(0);
          expect(late(field)).toBeLessThan(15);
        }
      }),
    );
  });

  test('every field arrives in its own place', () => {
    const read = decodeBedCard(encodeBedCard(CARD));
    expect(read).toEqual({
      ok: true,
      card: {
        ...CARD,
        headUntil: CARD.madeAt + 113,
        numbingUntil: CARD.madeAt + 458,
        nothingByMouthUntil: CARD.madeAt + 803,
        madeAt: CARD.madeAt - 7,
      },
    });
  });

  test('two codes are the same only where the cards are', () => {
    fc.assert(
      fc.property(anyCard, anyCard, (a, b) => {
        const same = JSON.stringify(handedOver(a)) === JSON.stringify(handedOver(b));
        expect(encodeBedCard(a) === encodeBedCard(b)).toBe(same);
      }),
    );
    for (const field of Object.keys(CARD_CHOICES) as (keyof typeof CARD_CHOICES)[])
      expect(
        new Set(CARD_CHOICES[field].map((choice) => encodeBedCard({ ...CARD, [field]: choice }))).size,
      ).toBe(CARD_CHOICES[field].length);
  });

  test('is six to eight groups of four letters: at most 39 bytes, the version first', () => {
    expect(THREE.map((code) => code.split('-').length)).toEqual([6, 7, 8]);
    fc.assert(
      fc.property(anyCard, (card) => {
        const code = encodeBedCard(card);
        expect(code).toMatch(/^1[0-9A-HJKMNP-TV-Z]{3}(-[0-9A-HJKMNP-TV-Z]{4}){5,7}$/);
        expect(new TextEncoder().encode(code).length).toBeLessThanOrEqual(39);
      }),
    );
  });

  test('holds nothing of the child but what a card holds', () => {
    fc.assert(
      fc.property(anyCard, fc.dictionary(fc.string(), fc.anything()), (card, more) => {
        const known = new Set<string>(Object.keys(CARD));
        const strange = Object.fromEntries(Object.entries(more).filter(([key]) => !known.has(key)));
        const typed = { weightKg: 25.9, loadKg: 2.6, bedEnd: 'strong' };
        expect(encodeBedCard({ ...strange, ...typed, ...card })).toBe(encodeBedCard(card));
      }),
    );
  });

  test('a card that was read can be handed on', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        const code = encodeBedCard(card);
        const read = decodeBedCard(code);
        expect(read.ok && encodeBedCard(read.card)).toBe(code);
      }),
    );
  });
});

describe('a code that is typed', () => {
  const FULL_WIDTH = (text: string) =>
    [...text].map((sign) => String.fromCodePoint(sign.codePointAt(0)! + 0xfee0)).join('');
  const digits = (zero: number) => (text: string) =>
    text.replace(/\d/g, (digit) => String.fromCodePoint(zero + Number(digit)));
  const WAYS: Record<string, (text: string) => string> = {
    'in small letters': (text) => text.toLowerCase(),
    'without dashes': plain,
    'with spaces': (text) => ` ${text.replaceAll('-', '  ')}\n`,
    'with long dashes': (text) => text.replaceAll('-', '–'),
    'with a hard space and a minus': (text) => text.replaceAll('-', '\u00a0\u2212'),
    'in full width': FULL_WIDTH,
    'with Arabic-Indic digits': digits(0x660),
    'with Persian digits': digits(0x6f0),
    'within marks of reading direction': (text) => `\u2067\u200e${text}\u2069`,
    'with O for 0': (text) => text.replaceAll('0', 'O'),
    'with l for 1': (text) => text.replaceAll('1', 'l'),
    'with I for 1': (text) => text.replaceAll('1', 'I'),
    'with u for V': (text) => text.replaceAll('V', 'u'),
  };
  test.each(Object.entries(WAYS))('%s is the same code', (_, way) => {
    for (const code of THREE) expect(decodeBedCard(way(code))).toEqual(decodeBedCard(code));
    fc.assert(
      fc.property(anyCard, (card) => {
        expect(decodeBedCard(way(encodeBedCard(card)))).toEqual({ ok: true, card: handedOver(card) });
      }),
      { numRuns: 200 },
    );
  });
});

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
          expect(decodeBedCard(typed)).toEqual({
            ok: false,
            reason: 'damaged',
            where: Math.floor(place / 4) + 1,
          });
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
            expect(read.ok).toBe(false);
            if (b === a + 1) expect(read).toMatchObject({ reason: 'damaged', where: Math.floor(a / 4) + 1 });
          }
      }),
      { numRuns: 30 },
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
      { numRuns: 20_000 },
    );
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
      { numRuns: 2000 },
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
    const setBits = (from: number, count: number) => {
      const changed = [...content];
      for (let bit = from; bit < from + count; bit++) changed[Math.floor(bit / 5)]! |= 16 >> (bit % 5);
      return withCheck(changed);
    };
    for (const from of [11, 27, 47]) expect(reason(decodeBedCard(setBits(from, 3)))).toBe('too-new');
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

  test('letters that follow each other and a date are not taken for a card', () => {
    for (const text of ['1234-5678-9ABC-DEFG-HJKM-NPQR', '1111-1111-1111-1111-1111-1111', '2026-11-25'])
      expect(decodeBedCard(text)).toMatchObject({ ok: false });
  });

  test('what no version writes is damaged even where its check is right', () => {
    const content = values(THREE[0]!).slice(0, -4);
    // the last bits of the last letter are empty
    expect(reason(decodeBedCard(withCheck(content.with(19, content[19]! | 1))))).toBe('damaged');
    // a letter group too much
    expect(reason(decodeBedCard(withCheck([...content, 0, 0, 0, 0])))).toBe('damaged');
    expect(reason(decodeBedCard(withCheck([0, ...content.slice(1)])))).toBe('damaged');
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
      { numRuns: 100_000 },
    );
    // texts that were not changed, or only in what does not matter, keep the other branch honest
    expect(read).toBeGreaterThan(1000);
  });

  test('letters with a right check, whatever they say, are a card within limits or none', () => {
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
      { numRuns: 10_000 },
    );
    expect(read).toBeGreaterThan(1000);
  });

  test('is answered at once, however long', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 600 }), (text) => {
        expect(decodeBedCard(text).ok).toBe(false);
      }),
      { numRuns: 5000 },
    );
  });
});

describe('a card that must not be handed over', () => {
  const WRONG: [Partial<Record<keyof BedCard, unknown>>, string][] = [
    [{ secondStepMinutes: 11 }, 'bed-card › secondStepMinutes: from 2 to 10, saw 11'],
    [{ secondStepMinutes: 2.5 }, 'bed-card › secondStepMinutes: from 2 to 10, saw 2.5'],
    [{ noWeeHours: 5 }, 'bed-card › noWeeHours: from 6 to 12, saw 5'],
    [{ medicineWaitMinutes: 91 }, 'bed-card › medicineWaitMinutes: from 30 to 90, saw 91'],
    [{ medicineWaitMinutes: NaN }, 'bed-card › medicineWaitMinutes: from 30 to 90, saw null'],
    [{ side: 'both' }, 'bed-card › side: one of left|right, saw "both"'],
    [{ compare: 1 }, 'bed-card › compare: one of true|false, saw 1'],
    [{ age: { years: 0 } }, 'bed-card › age.years: from 1 to 17, saw 0'],
    [{ age: { years: 18 } }, 'bed-card › age.years: from 1 to 17, saw 18'],
    [{ age: { years: 2, months: 12 } }, 'bed-card › age.months: from 0 to 11, saw 12'],
    [{ age: { years: 3, months: 0 } }, 'bed-card › age.months: from 0 to -1, saw 0'],
    [{ off: 841 }, 'bed-card › off: from -720 to 840, saw 841'],
    [{ madeAt: -1 }, 'bed-card › madeAt: from 0 to 62914559, saw -1'],
    [{ wardLanguage: 'e' }, 'bed-card › wardLanguage: one of xx|xxx|xx-Xxxx|xx-XX, saw "e"'],
    [
      { wardLanguage: 'zh-Hant-TW' },
      'bed-card › wardLanguage: one of xx|xxx|xx-Xxxx|xx-XX, saw "zh-Hant-TW"',
    ],
    [{ side: undefined }, 'bed-card › side: a value, saw nothing'],
    [
      { nothingByMouthUntil: ANY_TIME - 15 },
      `bed-card › nothingByMouthUntil: from ${ANY_TIME} to ${ANY_TIME + 3825}, saw ${ANY_TIME - 15}`,
    ],
    [
      { headUntil: ANY_TIME + 3840 },
      `bed-card › headUntil: from ${ANY_TIME} to ${ANY_TIME + 3825}, saw ${ANY_TIME + 3840}`,
    ],
  ];
  test.each(WRONG)('%j is refused with its place, the rule and what was seen', (wrong, message) => {
    expect(() => encodeBedCard({ ...SHORT, ...wrong } as BedCard)).toThrow(new Error(message));
  });

  test('no needed field may be missing', () => {
    const needed = Object.keys(SHORT) as (keyof BedCard)[];
    for (const field of needed) {
      const { [field]: _, ...rest } = SHORT;
      expect(missingFrom(rest)).toEqual([field]);
      expect(() => encodeBedCard(rest as BedCard)).toThrow(`bed-card › ${field}: a value, saw nothing`);
    }
    expect(needed).toHaveLength(15);
  });

  test('the last times that fit are handed over', () => {
    for (const until of [ANY_TIME, ANY_TIME + 3825]) {
      const card = { ...SHORT, headUntil: instant(until), nothingByMouthUntil: instant(until) };
      expect(decodeBedCard(encodeBedCard(card))).toMatchObject({ card });
    }
  });
});

describe('a card from two days ago', () => {
  const at = (hours: number) => stillHolds({ madeAt: ANY_TIME }, instant(ANY_TIME + hours * 60));
  test('holds for 48 hours, then asks', () => {
    expect([0, 24, 47.9].map(at)).toEqual(['holds', 'holds', 'holds']);
    expect([48, 49, 1000].map(at)).toEqual(['ask', 'ask', 'ask']);
  });

  test('is asked about where one of the clocks must be wrong', () => {
    expect([-0.5, -1].map(at)).toEqual(['holds', 'holds']);
    expect([-1.1, -48].map(at)).toEqual(['ask', 'ask']);
    expect(stillHolds({ madeAt: ANY_TIME }, instant(NaN))).toBe('ask');
  });

  test('once it asks, it goes on asking', () => {
    fc.assert(
      fc.property(fc.nat(10_000), fc.nat(10_000), (a, b) => {
        const [earlier, later] = [Math.min(a, b), Math.max(a, b)].map((age) =>
          stillHolds({ madeAt: ANY_TIME }, instant(ANY_TIME + age)),
        );
        expect(earlier === 'ask' && later === 'holds').toBe(false);
      }),
    );
  });
});
