import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CARD_CHOICES, type BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';
import { stillHolds } from '#domain/bed-card/holds.ts';
import { faultsOf, handedOver, missingFrom } from '#domain/bed-card/limits.ts';
import { instant, minutes } from '#domain/units.ts';
import { ANY_TIME, anyCard, CARD, plain, SHORT, THREE } from '../../helpers/bed-cards.ts';
import { cases } from '../../helpers/same-cases.ts';

describe('a card that is handed over', () => {
  test('arrives as it was set up, its times in quarter hours', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        expect(decodeBedCard(encodeBedCard(card))).toEqual({ ok: true, card: handedOver(card) });
      }),
      { numRuns: cases(3000) },
    );
  });

  test('what was not told is not on the card that arrives, not even as an empty field', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        expect(decodeBedCard(encodeBedCard(card))).toStrictEqual({
          ...{ ok: true, card: JSON.parse(JSON.stringify(handedOver(card))) as BedCard },
        });
      }),
      { numRuns: cases(100) },
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
    [...text].map((one) => String.fromCodePoint(one.codePointAt(0)! + 0xfee0)).join('');
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
      { numRuns: cases(200) },
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
    [{ wardLanguage: ['en'] }, 'bed-card › wardLanguage: one of xx|xxx|xx-Xxxx|xx-XX, saw ["en"]'],
    [{ madeAt: '100' }, 'bed-card › madeAt: from 0 to 62914559, saw "100"'],
    [{ ownThingsOnly: 'no' }, 'bed-card › ownThingsOnly: one of true|false, saw "no"'],
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

  // each bound as the ward reads it, and one beyond
  test.each([
    ['secondStepMinutes', 2, 10],
    ['noWeeHours', 6, 12],
    ['medicineWaitMinutes', 30, 90],
    ['off', -12 * 60, 14 * 60],
    ['madeAt', 0, 62_914_559],
  ] as const)('%s may be %d and %d, and nothing beyond', (field, low, high) => {
    const allowed = (value: number) => faultsOf({ [field]: value }).length === 0;
    expect([low - 1, low, high, high + 1].map(allowed)).toEqual([false, true, true, false]);
  });

  test('an age may be 1 to 17 years, and has months below three years only', () => {
    const allowed = (years: number, months?: number) =>
      faultsOf({ age: months === undefined ? { years } : { years, months } }).length === 0;
    expect([0, 1, 17, 18, 1.5].map((years) => allowed(years))).toEqual([false, true, true, false, false]);
    for (const years of [1, 2])
      expect([-1, 0, 11, 12, 0.5].map((months) => allowed(years, months))).toEqual([
        ...[false, true, true],
        ...[false, false],
      ]);
    for (const months of [-1, 0, 11]) expect(allowed(3, months)).toBe(false);
  });

  test('every fault is named, the moment it was made and what came before it, too', () => {
    const places = (card: Record<string, unknown>) =>
      faultsOf(card as Partial<BedCard>).map(({ field }) => field);
    const wrong = { side: 'up', compare: 'x', noWeeHours: 5, age: { years: 0 }, wardLanguage: '?' };
    const all = ['side', 'compare', 'noWeeHours', 'age.years', 'wardLanguage'];
    expect(places(wrong)).toEqual(all);
    expect(places({ ...wrong, madeAt: -1 })).toEqual([...all, 'madeAt']);
    expect(places({ ...wrong, madeAt: 0, headUntil: -1, numbingUntil: 9999 })).toEqual([
      ...all,
      'headUntil',
      'numbingUntil',
    ]);
  });

  test('a card that is only begun has no fault', () => {
    expect(faultsOf({})).toEqual([]);
    expect(faultsOf({ side: 'left', headUntil: ANY_TIME })).toEqual([]);
    expect(faultsOf({ madeAt: instant(100.5) })).toEqual([]);
    expect(missingFrom({})).toHaveLength(15);
  });

  test.each([
    ['EN', 'en'],
    ['pt-br', 'pt-BR'],
    ['ZH-hANT', 'zh-Hant'],
    ['es-419', 'es-419'],
    ['ckb', 'ckb'],
  ])('the tag %s is handed over as %s', (typed, usual) => {
    expect(handedOver({ ...SHORT, wardLanguage: typed }).wardLanguage).toBe(usual);
    expect(faultsOf({ wardLanguage: typed })).toEqual([]);
  });

  test.each([
    '',
    'e',
    'engl',
    'en-',
    'en-G',
    'en-GBR',
    'en-41',
    'en-4190',
    'en-Latin',
    'xen-GB-x',
    '-en',
    'en GB',
  ])('%j is no tag', (tag) => {
    expect(faultsOf({ wardLanguage: tag }).map(({ field }) => field)).toEqual(['wardLanguage']);
  });

  test('an hour of the place is handed over in quarters, and never as less than nothing', () => {
    const read = (off: number) => handedOver({ ...SHORT, off: minutes(off) }).off;
    expect([0, 7, 8, -7, -8, 346].map(read)).toEqual([0, 0, 15, 0, -15, 345]);
  });

  test('months that nobody told are not handed over', () => {
    const age = { years: 5, months: undefined } as unknown as NonNullable<BedCard['age']>;
    expect(Object.keys(handedOver({ ...SHORT, age }).age!)).toEqual(['years']);
  });

  test('the last times that fit are handed over', () => {
    for (const until of [ANY_TIME, ANY_TIME + 3825]) {
      const card = { ...SHORT, headUntil: instant(until), nothingByMouthUntil: instant(until) };
      expect(decodeBedCard(encodeBedCard(card))).toMatchObject({ card });
    }
  });
});

describe('times near the end of what fits', () => {
  test('count as the other phone will read them', () => {
    const fits = (field: 'headUntil' | 'numbingUntil', after: number) =>
      faultsOf({ madeAt: instant(ANY_TIME + 14), [field]: instant(ANY_TIME + after) }).length === 0;
    // a quarter hour that has begun is read as its start for a permission, as its end for what warns
    expect([-1, 0, 3839, 3840].map((after) => fits('headUntil', after))).toEqual([false, true, true, false]);
    expect([-15, -14, 3825, 3826].map((after) => fits('numbingUntil', after))).toEqual([
      false,
      true,
      true,
      false,
    ]);
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
