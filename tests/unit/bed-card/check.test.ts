import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { WEIGHT_BANDS } from '#content/growth.ts';
import type { BedCard, CardAge, SetUpNumbers } from '#domain/bed-card/card.ts';
import {
  bandFor,
  checkBedCard,
  keyOf,
  retyped,
  unanswered,
  type Remark,
  type RemarkAnswer,
  type RemarkLevel,
} from '#domain/bed-card/check.ts';
import { instant, minutes } from '#domain/units.ts';
import { anyAge, anyCard, CARD } from '../../helpers/bed-cards.ts';
import { cases } from '../../helpers/same-cases.ts';

const WARD = { bands: WEIGHT_BANDS };
const LEVELS: readonly RemarkLevel[] = ['correct', 'retype', 'ask', 'know'];
const check = (numbers: SetUpNumbers, card: Partial<BedCard> = {}) => checkBedCard(numbers, card, WARD);
const ids = (numbers: SetUpNumbers, card: Partial<BedCard> = {}) => check(numbers, card).map(({ id }) => id);
const find = <I extends Remark['id']>(remarks: readonly Remark[], id: I) =>
  remarks.find((remark): remark is Extract<Remark, { id: I }> => remark.id === id);
const levelOf = (numbers: SetUpNumbers, id: Remark['id']) => find(check(numbers), id)?.level;

const tenths = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((value) => value / 10);
const anyNumbers: fc.Arbitrary<SetUpNumbers> = fc.record(
  {
    age: anyAge as fc.Arbitrary<CardAge>,
    weightKg: tenths(3, 150),
    loadKg: tenths(0.2, 10),
    bedEnd: fc.constantFrom('ordinary' as const, 'strong' as const),
  },
  { requiredKeys: [] },
);
/** Whatever a broken field could hand on. */
const anyNumber = fc.oneof(fc.double(), fc.constantFrom(NaN, Infinity, -Infinity, 0, -1, 1e308));

describe('load against weight', () => {
  test.each([
    [20, 2.0, undefined],
    [20, 1.6, undefined],
    [20, 2.4, undefined],
    [20, 1.5, 'ask'],
    [20, 2.5, 'ask'],
    [20, 1.0, 'ask'],
    [20, 3.0, 'ask'],
    [20, 0.9, 'retype'],
    [20, 3.1, 'retype'],
    // the bounds themselves, where a machine's fractions do not come out even
    [30, 2.4, undefined],
    [35, 4.2, undefined],
    [14, 0.7, 'ask'],
    [46, 6.9, 'ask'],
  ] as const)('%f kg of body weight and %f kg hanging: %s', (weightKg, loadKg, level) => {
    expect(levelOf({ weightKg, loadKg }, 'load-against-weight')).toBe(level);
  });

  test('a load further from a tenth of the weight never brings a milder remark', () => {
    const graveness = (weightKg: number, loadKg: number) =>
      [undefined, 'ask', 'retype'].indexOf(levelOf({ weightKg, loadKg }, 'load-against-weight'));
    fc.assert(
      fc.property(tenths(5, 90), tenths(0.2, 10), tenths(0.2, 10), (weightKg, a, b) => {
        const tenth = weightKg / 10;
        fc.pre(Math.sign(a - tenth) === Math.sign(b - tenth));
        const [near, far] = Math.abs(a - tenth) <= Math.abs(b - tenth) ? [a, b] : [b, a];
        expect(graveness(weightKg, far)).toBeGreaterThanOrEqual(graveness(weightKg, near));
      }),
    );
  });

  test('no number of a hanging weight is put forward, only the typed one is repeated', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        for (const remark of check(numbers)) {
          for (const [key, value] of Object.entries(remark))
            if (/load/i.test(key)) expect(value).toBe(numbers.loadKg);
          // offers are of body weight, and know nothing of the load
          if (remark.id === 'pounds' || remark.id === 'decimal') {
            const { loadKg: _, ...rest } = numbers;
            expect(check(rest)).toContainEqual(remark);
          }
        }
      }),
      { numRuns: cases(1000) },
    );
  });
});

describe('more than 5 kg on skin', () => {
  test('is asked about, 5 kg itself is not; the ward may set another bound', () => {
    expect(ids({ loadKg: 5 })).not.toContain('more-than-5-kg');
    expect(ids({ loadKg: 5.1 })).toContain('more-than-5-kg');
    const lower = checkBedCard({ loadKg: 3.1 }, {}, { ...WARD, mostLoadKg: 3 });
    expect(find(lower, 'more-than-5-kg')).toMatchObject({ level: 'ask', loadKg: 3.1, mostKg: 3 });
  });

  test('is asked about even where it is a tenth of the weight', () => {
    expect(ids({ weightKg: 60, loadKg: 6, bedEnd: 'strong' })).toEqual(['more-than-5-kg', 'not-checked']);
  });
});

describe('the strong foot end', () => {
  test.each([
    [39.5, undefined],
    [39.6, true],
    [39.9, true],
    [40, true],
    [40.4, true],
    [40.5, false],
    [90, false],
  ])('%f kg on an ordinary end: near 40 is %s', (weightKg, near40) => {
    for (const bedEnd of ['ordinary', undefined] as const) {
      const remark = find(check({ weightKg, bedEnd }), 'strong-end');
      expect(remark?.near40).toBe(near40);
      if (remark) expect(remark).toMatchObject({ level: 'ask', weightKg, fromKg: 40 });
    }
  });

  test('is asked about for every weight from 40 kg, unless it is there', () => {
    fc.assert(
      fc.property(tenths(40, 150), anyNumbers, (weightKg, numbers) => {
        expect(ids({ ...numbers, weightKg }).includes('strong-end')).toBe(numbers.bedEnd !== 'strong');
      }),
    );
  });

  test('the code waits for one of its two answers; "checked" is none', () => {
    const remarks = check({ weightKg: 45 }).filter(({ id }) => id === 'strong-end');
    const answered = (say: RemarkAnswer['say']) => unanswered(remarks, { [keyOf(remarks[0]!)]: { say } });
    expect(answered('checked')).toEqual(remarks);
    expect(answered('strong-end-fitted')).toEqual([]);
    expect(answered('staff-agree')).toEqual([]);
  });
});

describe('a weight that few children of this age have', () => {
  test('57 at eight years: to be typed once more, and 25.9 is offered', () => {
    const remarks = check({ age: { years: 8 }, weightKg: 57, loadKg: 2.6, bedEnd: 'strong' });
    expect(find(remarks, 'unusual-weight')).toEqual({
      id: 'unusual-weight',
      level: 'retype',
      weightKg: 57,
      is: 'high',
      low: 19.54,
      high: 44.04,
    });
    expect(find(remarks, 'pounds')).toMatchObject({ slip: 'in-pounds', typedKg: 57, correctedKg: 25.9 });
    expect(find(remarks, 'load-against-weight')).toMatchObject({ level: 'retype' });
    // the one tap
    expect(check({ age: { years: 8 }, weightKg: 25.9, loadKg: 2.6, bedEnd: 'strong' })).toEqual([]);
  });

  test('57 and 2.6 at eight years: everything that is said, in its order', () => {
    expect(check({ age: { years: 8 }, weightKg: 57, loadKg: 2.6 })).toEqual([
      { id: 'load-against-weight', level: 'retype', weightKg: 57, loadKg: 2.6, ratio: 0.045614 },
      { id: 'unusual-weight', level: 'retype', weightKg: 57, is: 'high', low: 19.54, high: 44.04 },
      { id: 'strong-end', level: 'ask', weightKg: 57, fromKg: 40, near40: false },
      { id: 'pounds', level: 'know', slip: 'in-pounds', typedKg: 57, correctedKg: 25.9 },
    ]);
  });

  test('11.8 at eight years may have been divided twice: 26 is offered', () => {
    const remarks = check({ age: { years: 8 }, weightKg: 11.8 });
    expect(find(remarks, 'unusual-weight')).toMatchObject({ is: 'low', level: 'retype' });
    expect(find(remarks, 'pounds')).toEqual({
      id: 'pounds',
      level: 'know',
      slip: 'divided-twice',
      typedKg: 11.8,
      correctedKg: 26,
    });
  });

  test('an offer waits for no answer', () => {
    for (const weightKg of [2.4, 240, 11.8, 57]) {
      const waits = unanswered(check({ age: { years: 7 }, weightKg }), {}).map(({ id }) => id);
      expect(waits).not.toContain('decimal');
      expect(waits).not.toContain('pounds');
    }
  });

  test('an age that no card can hold has no band, even where a row would be found by counting', () => {
    const none: CardAge[] = [
      { years: 0, months: 13 },
      { years: 1, months: 14 },
      { years: 2, months: -1 },
      { years: 18 },
    ];
    for (const age of none) {
      expect(bandFor(age, WEIGHT_BANDS)).toBeUndefined();
      expect(find(check({ age, weightKg: 10 }), 'not-checked')).toBeDefined();
    }
  });

  test('2.4 or 24, 240 or 24: the other is offered, even where the typed one is outside limits', () => {
    for (const weightKg of [2.4, 240]) {
      const remarks = check({ age: { years: 7 }, weightKg });
      expect(find(remarks, 'decimal')).toMatchObject({ typedKg: weightKg, correctedKg: 24 });
      expect(find(remarks, 'out-of-limits')).toMatchObject({ field: 'weightKg', low: 3, high: 150 });
    }
  });

  test('the bounds of the band belong to it, and beyond the outer ones it is typed once more', () => {
    fc.assert(
      fc.property(anyAge, tenths(3, 150), (age, weightKg) => {
        const [lowest, low, , high, highest] = bandFor(age, WEIGHT_BANDS)!;
        const expected =
          weightKg < lowest || weightKg > highest
            ? 'retype'
            : weightKg < low || weightKg > high
              ? 'ask'
              : undefined;
        expect(levelOf({ age, weightKg }, 'unusual-weight')).toBe(expected);
      }),
      { numRuns: cases(2000) },
    );
    const [lowest, low, , high, highest] = WEIGHT_BANDS.years[7]!;
    const at = (weightKg: number) => levelOf({ age: { years: 8 }, weightKg }, 'unusual-weight');
    expect([lowest, low, high, highest].map(at)).toEqual(['ask', undefined, undefined, 'ask']);
  });

  test('what is offered is itself a usual weight, and taking it leaves no further offer', () => {
    const RUNS = cases(2000);
    let offers = 0;
    fc.assert(
      fc.property(anyAge, tenths(1, 300), (age, weightKg) => {
        for (const offer of check({ age, weightKg })) {
          if (offer.id !== 'pounds' && offer.id !== 'decimal') continue;
          offers++;
          const [, low, , high] = bandFor(age, WEIGHT_BANDS)!;
          expect(offer.correctedKg).toBeGreaterThan(low - 0.051);
          expect(offer.correctedKg).toBeLessThan(high + 0.051);
          const again = check({ age, weightKg: offer.correctedKg });
          expect(again.filter(({ id }) => id === 'pounds' || id === 'decimal')).toEqual([]);
        }
      }),
      { numRuns: RUNS },
    );
    expect(offers).toBeGreaterThan(RUNS / 4);
  });

  test('months below three years bring a narrower band than the whole year', () => {
    expect(ids({ age: { years: 1 }, weightKg: 14.5 })).not.toContain('unusual-weight');
    expect(ids({ age: { years: 1, months: 0 }, weightKg: 14.5 })).toContain('unusual-weight');
    expect(ids({ age: { years: 1, months: 11 }, weightKg: 14.5 })).not.toContain('unusual-weight');
  });

  test('the age of the card counts where none was typed with the numbers', () => {
    expect(ids({ weightKg: 57 }, { age: { years: 8 } })).toContain('unusual-weight');
    expect(ids({ weightKg: 57, age: { years: 15 } }, { age: { years: 8 } })).not.toContain('unusual-weight');
  });
});

describe('what could not be compared', () => {
  test.each([
    [{ weightKg: 20 }, ['load-against-weight', 'unusual-weight']],
    [{ loadKg: 2 }, ['load-against-weight']],
    [{ weightKg: 20, loadKg: 2 }, ['unusual-weight']],
    [{ bedEnd: 'ordinary' as const }, ['strong-end']],
    [{}, []],
    [{ bedEnd: 'strong' as const }, ['strong-end']],
    [{ age: { years: 5 }, weightKg: 20, loadKg: 2 }, []],
  ])('%j: not checked are %j, and nothing waits', (numbers, expected) => {
    const remarks = check(numbers);
    expect(remarks.flatMap((remark) => (remark.id === 'not-checked' ? [remark.check] : []))).toEqual(
      expected,
    );
    expect(unanswered(remarks, {})).toEqual([]);
  });

  test('says what it would have needed', () => {
    const needs = (numbers: SetUpNumbers) =>
      check(numbers).map((remark) => remark.id === 'not-checked' && `${remark.check}: ${remark.needs}`);
    expect(needs({ weightKg: 20 })).toEqual(['load-against-weight: loadKg', 'unusual-weight: age']);
    expect(needs({ loadKg: 2 })).toEqual(['load-against-weight: weightKg']);
    expect(needs({ bedEnd: 'ordinary' })).toEqual(['strong-end: weightKg']);
  });

  test('without the table of weights, the code waits', () => {
    const remarks = checkBedCard({ age: { years: 5 }, weightKg: 20, loadKg: 2 });
    expect(remarks).toEqual([{ id: 'not-checked', level: 'ask', check: 'unusual-weight', needs: 'bands' }]);
    expect(unanswered(remarks, {})).toEqual(remarks);
  });

  test('every weight and every load brings either its check or the word that it was not made', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const { age, weightKg, loadKg } = numbers;
        const missed = check(numbers).flatMap((remark) =>
          remark.id === 'not-checked' ? [remark.check] : [],
        );
        const one = (weightKg === undefined) !== (loadKg === undefined);
        expect(missed.includes('load-against-weight')).toBe(one);
        expect(missed.includes('unusual-weight')).toBe(weightKg !== undefined && age === undefined);
      }),
    );
  });
});

describe('the card itself', () => {
  test('a number outside limits is named with its place and its bounds, and can only be corrected', () => {
    const remarks = check(
      { weightKg: 2.9, loadKg: 10.1, age: { years: 4, months: 3 } },
      { secondStepMinutes: 11, noWeeHours: 5 },
    );
    const outside = remarks.filter((remark) => remark.id === 'out-of-limits');
    expect(outside.map(({ field, seen }) => [field, seen])).toEqual([
      ['secondStepMinutes', 11],
      ['noWeeHours', 5],
      ['weightKg', 2.9],
      ['loadKg', 10.1],
      ['age.months', 3],
    ]);
    const all = Object.fromEntries(remarks.map((remark) => [keyOf(remark), { say: 'checked' as const }]));
    expect(unanswered(outside, all)).toEqual(outside);
  });

  test('an age outside limits is named once, although card and numbers both hold it', () => {
    const twice = check({ age: { years: 18 } }, { age: { years: 18 }, secondStepMinutes: 11 });
    expect(twice).toEqual([
      {
        ...{ id: 'out-of-limits', level: 'correct', field: 'secondStepMinutes' },
        ...{ low: 2, high: 10, seen: 11 },
      },
      { id: 'out-of-limits', level: 'correct', field: 'age.years', low: 1, high: 17, seen: 18 },
    ]);
  });

  test('what is no number is not asked about as one: the code refuses it', () => {
    expect(check({}, { side: 'both', compare: 'yes' } as unknown as Partial<BedCard>)).toEqual([]);
  });

  test('numbers for another age than the card holds are asked about', () => {
    expect(check({ age: { years: 5 } }, { age: { years: 6 } })).toEqual([
      { id: 'age-differs', level: 'ask', typed: { years: 5 }, onCard: { years: 6 } },
    ]);
    expect(ids({ age: { years: 5 } }, { side: 'left' })).toEqual([]);
    expect(ids({}, { age: { years: 6 } })).toEqual([]);
    expect(ids({ age: { years: 5 } }, { age: { years: 6 } })).toEqual(['age-differs']);
    expect(ids({ age: { years: 2 } }, { age: { years: 2, months: 1 } })).toEqual(['age-differs']);
    expect(ids({ age: { years: 2, months: 1 } }, { age: { years: 2, months: 1 } })).toEqual([]);
  });

  test('a time that is over and a card of another day are asked about', () => {
    const at = (later: number) =>
      checkBedCard({}, CARD, { ...WARD, now: instant(CARD.madeAt + later) }).map((remark) =>
        remark.id === 'past' ? remark.field : remark.id,
      );
    expect(at(0)).toEqual([]);
    expect(at(122)).toEqual([]);
    expect(at(123)).toEqual(['headUntil']);
    expect(at(456)).toEqual(['headUntil', 'numbingUntil']);
    expect(at(1440)).toContain('another-day');
    const late = checkBedCard({}, CARD, { ...WARD, now: instant(CARD.madeAt + 1440) });
    expect(late).toEqual([
      ...(['headUntil', 'numbingUntil', 'nothingByMouthUntil'] as const).map((field) => ({
        ...{ id: 'past', level: 'ask', field, until: CARD[field] },
      })),
      { id: 'another-day', level: 'ask', madeAt: CARD.madeAt },
    ]);
  });

  test('a time is over where its minute is reached, on a card not yet whole, too', () => {
    const until = instant(CARD.madeAt);
    const at = (now: number) => checkBedCard({}, { headUntil: until }, { now: instant(now) }).length;
    expect([until - 1, until, until + 1].map(at)).toEqual([0, 1, 1]);
  });

  test('a card that comes from later is asked about, on the same day, too: one of the clocks is wrong', () => {
    const at = (earlier: number) =>
      checkBedCard({}, CARD, { ...WARD, now: instant(CARD.madeAt - earlier) }).map(({ id }) => id);
    expect([60, 61].map(at)).toEqual([[], ['another-day']]);
  });

  test('the day is the one of the place where the card was made', () => {
    // made at 05:37 local time, 09:07 universal: the local day ends 1103 minutes later
    const at = (later: number) =>
      checkBedCard({}, CARD, { ...WARD, now: instant(CARD.madeAt + later) }).some(
        ({ id }) => id === 'another-day',
      );
    expect([1102, 1103].map(at)).toEqual([false, true]);
  });

  test('what can be handed over has no remark of its own on the day it is made', () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        expect(check({}, card)).toEqual([]);
      }),
    );
  });
});

describe('remarks', () => {
  test('come gravest first', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const ranks = check(numbers).map(({ level }) => LEVELS.indexOf(level));
        expect([...ranks].sort((a, b) => a - b)).toEqual(ranks);
      }),
    );
  });

  test('a number that can only be corrected stands before two that are typed once more, whatever was found first', () => {
    const found = check({ age: { years: 8 }, weightKg: 57, loadKg: 11 }, { age: { years: 9 } });
    expect(found.map(({ level, id }) => `${level} ${id}`)).toEqual([
      ...['correct out-of-limits', 'retype load-against-weight', 'retype unusual-weight'],
      ...['ask age-differs', 'ask more-than-5-kg', 'ask strong-end', 'know pounds'],
    ]);
    const light = check({ age: { years: 8 }, weightKg: 57, loadKg: 2.6, bedEnd: 'strong' });
    expect(light.map(({ level, id }) => `${level} ${id}`)).toEqual([
      ...['retype load-against-weight', 'retype unusual-weight', 'know pounds'],
    ]);
  });

  test('are facts without words, and survive a store', () => {
    fc.assert(
      fc.property(anyNumbers, fc.constantFrom({}, CARD), (numbers, card) => {
        const remarks = checkBedCard(numbers, card, { ...WARD, now: instant(CARD.madeAt + 3000) });
        expect(JSON.parse(JSON.stringify(remarks))).toEqual(remarks);
        expect(JSON.stringify(remarks)).not.toMatch(/ /);
      }),
    );
  });

  test('never fail, whatever stands in a field', () => {
    const broken = fc.record({
      weightKg: anyNumber,
      loadKg: anyNumber,
      age: fc.record({ years: anyNumber }),
    });
    fc.assert(
      fc.property(broken, (numbers) => {
        const outside = check(numbers).flatMap((remark) =>
          remark.id === 'out-of-limits' ? [remark.field] : [],
        );
        const { weightKg, loadKg } = numbers;
        expect(outside.includes('weightKg')).toBe(!(weightKg >= 3 && weightKg <= 150));
        expect(outside.includes('loadKg')).toBe(!(loadKg >= 0.2 && loadKg <= 10));
        for (const remark of check(numbers))
          if (remark.id === 'load-against-weight') expect(Number.isFinite(remark.ratio)).toBe(true);
      }),
      { numRuns: cases(1000) },
    );
  });
});

describe('whether the code may come', () => {
  test('only a number that is to be typed once more is asked for again', () => {
    const again = (numbers: SetUpNumbers) =>
      Object.fromEntries(check(numbers).map((remark) => [remark.id, retyped(remark)]));
    expect(again({ age: { years: 8 }, weightKg: 57, loadKg: 2.6 })).toEqual({
      'load-against-weight': ['weightKg', 'loadKg'],
      'unusual-weight': ['weightKg'],
      'strong-end': [],
      pounds: [],
    });
    expect(again({ weightKg: 20, loadKg: 2.5 })['load-against-weight']).toEqual([]);
  });

  test('what is said about the foot end is no answer to anything else', () => {
    const remarks = check({ loadKg: 6 }).filter(({ level }) => level === 'ask');
    expect(remarks.map(({ id }) => id)).toEqual(['more-than-5-kg']);
    for (const say of ['staff-agree', 'strong-end-fitted'] as const)
      expect(unanswered(remarks, { [keyOf(remarks[0]!)]: { say } })).toEqual(remarks);
    expect(unanswered(remarks, { [keyOf(remarks[0]!)]: { say: 'checked' } })).toEqual([]);
  });

  test('a remark has one name, in whatever order its facts were kept', () => {
    fc.assert(
      fc.property(anyNumbers, fc.infiniteStream(fc.nat()), (numbers, dice) => {
        for (const remark of check(numbers)) {
          const facts = Object.entries(remark)
            .map((fact) => [dice.next().value, fact] as const)
            .sort(([a], [b]) => a - b)
            .map(([, fact]) => fact);
          expect(keyOf(Object.fromEntries(facts) as unknown as Remark)).toBe(keyOf(remark));
          expect(keyOf({ ...remark, level: 'correct' } as Remark)).not.toBe(keyOf(remark));
        }
      }),
    );
  });

  const answerAll = (remarks: readonly Remark[]): Record<string, RemarkAnswer> =>
    Object.fromEntries(
      remarks.map((remark) => [
        keyOf(remark),
        {
          say: remark.id === 'strong-end' ? ('staff-agree' as const) : ('checked' as const),
          again: Object.fromEntries(
            retyped(remark).map((field) => [field, (remark as unknown as Record<string, number>)[field]!]),
          ),
        },
      ]),
    );

  test('side and bell alone are enough: nothing waits where no number was typed', () => {
    expect(check({})).toEqual([]);
  });

  test('with every remark answered nothing waits, within limits', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const remarks = check(numbers);
        expect(unanswered(remarks, answerAll(remarks))).toEqual([]);
      }),
    );
  });

  test('without its answer every remark waits, but for what is only shown', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const remarks = check(numbers);
        expect(unanswered(remarks, {})).toEqual(remarks.filter(({ level }) => level !== 'know'));
        for (const left of remarks) {
          const { [keyOf(left)]: _, ...others } = answerAll(remarks);
          expect(unanswered(remarks, others)).toEqual(left.level === 'know' ? [] : [left]);
        }
      }),
    );
  });

  test('"checked" is not enough where a number must be typed once more: it must be the same', () => {
    const remarks = check({ age: { years: 8 }, weightKg: 57, loadKg: 2.6, bedEnd: 'strong' });
    const [ratio, weight] = [find(remarks, 'load-against-weight')!, find(remarks, 'unusual-weight')!];
    const open = (again: RemarkAnswer['again']) =>
      unanswered(remarks, {
        [keyOf(ratio)]: { say: 'checked', again },
        [keyOf(weight)]: { say: 'checked', again },
      });
    expect(open(undefined)).toEqual([ratio, weight]);
    expect(open({ weightKg: 57 })).toEqual([ratio]);
    expect(open({ weightKg: 75, loadKg: 2.6 })).toEqual([ratio, weight]);
    expect(open({ weightKg: 57, loadKg: 2.6 })).toEqual([]);
  });

  test('an answer for one number does not hold for another', () => {
    fc.assert(
      fc.property(anyNumbers, tenths(3, 150), (numbers, weightKg) => {
        fc.pre(numbers.weightKg !== weightKg);
        const answers = answerAll(check(numbers));
        const then = check({ ...numbers, weightKg });
        const aboutWeight = then.filter((remark) => remark.level !== 'know' && 'weightKg' in remark);
        expect(unanswered(then, answers)).toEqual(expect.arrayContaining(aboutWeight));
      }),
    );
  });

  test('answers are found again after a store, and by no inherited name', () => {
    const remarks = check({ weightKg: 45 });
    expect(unanswered(remarks, JSON.parse(JSON.stringify(answerAll(remarks))))).toEqual([]);
    expect(
      unanswered(remarks, Object.create(answerAll(remarks)) as Record<string, RemarkAnswer>),
    ).not.toEqual([]);
  });
});

test('an off of a card that is not yet known does not shift its day', () => {
  const madeAt = instant(Date.UTC(2026, 10, 25, 23, 59) / 60_000);
  const at = (off: number | undefined) =>
    checkBedCard(
      {},
      { madeAt, ...(off !== undefined && { off: minutes(off) }) },
      { now: instant(madeAt + 1) },
    ).length;
  expect([undefined, 0, -60].map(at)).toEqual([1, 1, 0]);
});
