/**
 * The bands of content/growth against the references they are made from, and what the checks of the bed card catch
 * when a weight is typed in pounds. Formulas are written out again here: nothing is shared with the script that made
 * the bands.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { WEIGHT_BANDS } from '#content/growth.ts';
import type { CardAge } from '#domain/bed-card/card.ts';
import { bandFor, checkBedCard } from '#domain/bed-card/check.ts';

const SEXES = ['boy', 'girl'] as const;
type Sex = (typeof SEXES)[number];
type Lms = { age: number; l: number; m: number; s: number };
const table = new Map<string, Lms[]>();
for (const line of readFileSync(new URL('./data/weight-for-age.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)) {
  const [reference, sex, age, l, m, s] = line.split(',');
  const key = `${reference} ${sex}`;
  table.set(key, [...(table.get(key) ?? []), { age: Number(age), l: Number(l), m: Number(m), s: Number(s) }]);
}

const Z = { 'P0.4': -2.65207, P3: -1.880793608, P50: 0, P97: 1.880793608, 'P99.6': 2.65207 } as const;
const weightAt = ({ l, m, s }: Lms, z: number) =>
  Math.abs(l) < 1e-12 ? m * Math.exp(s * z) : m * Math.pow(1 + l * s * z, 1 / l);

/** Weight at an age that may lie between two of the reference: L, M and S on the straight line between them. */
function weight(reference: 'CDC2000' | 'WHO2006-days', sex: Sex, age: number, z: number): number {
  const rows = table.get(`${reference} ${sex}`)!;
  const above = rows.find((row) => row.age >= age)!;
  const below = rows.findLast((row) => row.age <= age)!;
  const share = above.age === below.age ? 0 : (age - below.age) / (above.age - below.age);
  const between = (key: 'l' | 'm' | 's') => below[key] * (1 - share) + above[key] * share;
  return weightAt({ age, l: between('l'), m: between('m'), s: between('s') }, z);
}
/** The middle of a completed month. */
const inMonth = (sex: Sex, month: number, z: number) =>
  month < 24
    ? weight('WHO2006-days', sex, ((month + 0.5) * 365.25) / 12, z)
    : weight('CDC2000', sex, month + 0.5, z);

describe('the values of the reference', () => {
  // Source: CDC, data file wtage.csv of the 2000 growth charts, columns P3, P50 and P97, in a public copy of it;
  // the boys of 36.5 months are also as printed in the tables on paper.
  test.each([
    ['boy', 24, 10.38209025, 12.6707633, 15.59648294],
    ['boy', 36.5, 11.81842214, 14.40262749, 18.04570363],
    ['boy', 84.5, 18.25535252, 23.16741888, 32.52599493],
    ['boy', 120.5, 24.19264433, 32.08799062, 49.41515104],
    ['boy', 215.5, 51.52981582, 67.10641956, 97.01799447],
    ['girl', 24, 9.985667562, 12.05503983, 15.00156359],
    ['girl', 47.5, 12.65131534, 15.70817017, 20.99619028],
    ['girl', 72.5, 16.01186303, 20.33635961, 28.92161906],
    ['girl', 180.5, 39.59012338, 52.13568193, 81.64830091],
    ['girl', 215.5, 44.18826162, 56.14099882, 87.34156823],
  ] as const)('give what the CDC prints for a %s of %d months', (sex, age, p3, p50, p97) => {
    for (const [z, printed] of [
      [Z.P3, p3],
      [Z.P50, p50],
      [Z.P97, p97],
    ] as const)
      expect(Math.abs(weight('CDC2000', sex, age, z) - printed)).toBeLessThan(0.005);
  });

  // Source: WHO Child Growth Standards 2006, simplified tables of weight for age at one and two years; from memory.
  test.each([
    ['boy', 12, 7.8, 9.6, 11.8],
    ['boy', 24, 9.8, 12.2, 15.1],
    ['girl', 12, 7.1, 8.9, 11.3],
    ['girl', 24, 9.2, 11.5, 14.6],
  ] as const)('give what the WHO prints for a %s of %d months', (sex, month, p3, p50, p97) => {
    const day = (month * 365.25) / 12;
    const ours = [Z.P3, Z.P50, Z.P97].map((z) => weight('WHO2006-days', sex, day, z));
    [p3, p50, p97].forEach((printed, i) => expect(Math.abs(ours[i]! - printed)).toBeLessThan(0.051));
  });
});

describe('the bands', () => {
  const made = (first: number, last: number) => {
    const both = (month: number, z: number) => SEXES.map((sex) => inMonth(sex, month, z));
    const middle = both(Math.ceil((first + last) / 2), Z.P50);
    return [
      Math.min(...both(first, Z['P0.4'])),
      Math.min(...both(first, Z.P3)),
      (middle[0]! + middle[1]!) / 2,
      Math.max(...both(last, Z.P97)),
      Math.max(...both(last, Z['P99.6'])),
    ];
  };
  const YEARS = Array.from({ length: 17 }, (_, i) => i + 1);
  const MONTHS = Array.from({ length: 24 }, (_, i) => i + 12);

  test.each(YEARS)('at %i: the lower sex at the start of the year, the higher at its end', (years) => {
    const band = bandFor({ years }, WEIGHT_BANDS)!;
    made(years * 12, years * 12 + 11).forEach((value, i) =>
      expect(Math.abs(band[i]! - value)).toBeLessThan(0.006),
    );
  });

  test.each(MONTHS)('at %i months: both sexes in the middle of the month', (month) => {
    const band = bandFor({ years: Math.floor(month / 12), months: month % 12 }, WEIGHT_BANDS)!;
    made(month, month).forEach((value, i) => expect(Math.abs(band[i]! - value)).toBeLessThan(0.006));
  });

  test('the table of the ward is the one that was agreed, to a tenth of a kilogram', () => {
    // Source: the agreed table of 8.2, P3, middle, P97, P0.4, P99.6, ages 2 to 17
    const AGREED = `
      2 10.0 13.3 17.8 9.4 20.1|3 11.4 15.1 21.0 10.6 24.5|4 12.8 17.2 24.6 11.8 29.6|5 14.3 19.4 28.6 13.3 35.2|
      6 16.0 21.8 33.0 14.8 41.4|7 17.7 24.3 38.1 16.3 48.3|8 19.5 27.3 44.0 17.8 56.1|9 21.6 30.7 50.8 19.5 64.8|
      10 24.0 34.6 58.1 21.5 74.2|11 26.6 39.0 65.3 23.9 83.7|12 29.5 43.6 71.9 26.4 93.0|13 33.0 48.2 77.3 29.4 102.0|
      14 36.7 52.4 82.7 33.0 110.9|15 39.6 56.0 88.5 36.2 120.2|16 41.8 58.8 93.4 38.6 128.0|17 43.3 60.9 97.0 40.2 129.9`;
    const rows = AGREED.split('|').map((row) => row.trim().split(' ').map(Number));
    expect(rows).toHaveLength(16);
    for (const [years, p3, middle, p97, lowest, highest] of rows) {
      const band = bandFor({ years: years! }, WEIGHT_BANDS)!;
      [lowest, p3, middle, p97, highest].forEach((agreed, i) =>
        expect(Math.abs(band[i]! - agreed!), `${years} years, column ${i}`).toBeLessThanOrEqual(0.0501),
      );
    }
  });

  test('a child who grows older is never asked about for a weight that was high enough before', () => {
    for (const rows of [WEIGHT_BANDS.years, WEIGHT_BANDS.months])
      rows.slice(1).forEach((row, i) => {
        row.forEach((value, column) => expect(value).toBeGreaterThanOrEqual(rows[i]![column]!));
        expect([...row].sort((a, b) => a - b)).toEqual(row);
      });
  });

  test('a year holds all of its months', () => {
    MONTHS.forEach((month, i) => {
      const year = WEIGHT_BANDS.years[Math.floor(month / 12) - 1]!;
      const row = WEIGHT_BANDS.months[i]!;
      expect(row[0] >= year[0] && row[1] >= year[1] && row[3] <= year[3] && row[4] <= year[4]).toBe(true);
    });
  });
});

/** Source: one international avoirdupois pound is 0.45359237 kg. */
const KG_PER_POUND = 0.45359237;
const tenth = (value: number) => Math.round(value * 10) / 10;

/** Every weight, to 0.1 kg, from the 3rd to the 97th percentile of one or both sexes in one month. */
function weightsOf(sexes: readonly Sex[], month: number): number[] {
  const from = Math.min(...sexes.map((sex) => inMonth(sex, month, Z.P3)));
  const to = Math.max(...sexes.map((sex) => inMonth(sex, month, Z.P97)));
  const first = Math.ceil(from * 10);
  return Array.from({ length: Math.floor(to * 10) - first + 1 }, (_, i) => (first + i) / 10);
}
/** Below three years a nurse may tell the months or only the years. */
const agesOf = (month: number): CardAge[] => {
  const years = Math.floor(month / 12);
  return month < 36 ? [{ years, months: month % 12 }, { years }] : [{ years }];
};

interface Caught {
  typed: number;
  unusual: number;
  retype: number;
  offered: number;
  ratio: number;
  missed: number;
}

/**
 * Weights of a year of age, typed in pounds as if they were kilograms. `ratio`: of those, caught by the load (a tenth
 * of the true weight) where it was typed in kilograms; `missed`: caught by neither where the load was in pounds, too.
 */
function inPounds(sexes: readonly Sex[], years: number): Caught {
  const caught: Caught = { typed: 0, unusual: 0, retype: 0, offered: 0, ratio: 0, missed: 0 };
  for (let month = years * 12; month < years * 12 + 12; month++)
    for (const trueKg of weightsOf(sexes, month))
      for (const age of agesOf(month)) {
        const weightKg = tenth(trueKg / KG_PER_POUND);
        const seen = (loadKg: number) =>
          checkBedCard({ age, weightKg, loadKg, bedEnd: 'strong' }, {}, { bands: WEIGHT_BANDS });
        const inKg = seen(tenth(trueKg / 10));
        const unusual = inKg.find(({ id }) => id === 'unusual-weight');
        caught.typed++;
        if (unusual) caught.unusual++;
        if (unusual?.level === 'retype') caught.retype++;
        if (inKg.some((remark) => remark.id === 'pounds' && remark.correctedKg === trueKg)) caught.offered++;
        if (inKg.some(({ id }) => id === 'load-against-weight')) caught.ratio++;
        if (
          !seen(tenth(trueKg / 10 / KG_PER_POUND)).some(
            ({ id }) => id === 'unusual-weight' || id === 'load-against-weight',
          )
        )
          caught.missed++;
      }
  return caught;
}
const share = (part: number, all: number) => ((100 * part) / all).toFixed(1).padStart(5);

describe('a weight typed in pounds as if it were kilograms', () => {
  /**
   * Per cent of all weights to 0.1 kg from the 3rd to the 97th percentile, at every month from the first birthday to
   * the eighteenth (the card holds no age after it). Unusual weight: of boys', girls', and both; then of both: to be
   * typed once more, the right number offered, caught by the load where only the weight was in pounds, and caught by
   * nothing where weight and load both were.
   */
  const RATES = `
age  boys girls  both again offer  load missed
  1 100.0 100.0 100.0  99.8 100.0 100.0    0.0
  2 100.0 100.0 100.0 100.0  99.9 100.0    0.0
  3 100.0 100.0 100.0 100.0  99.9 100.0    0.0
  4 100.0 100.0 100.0  98.1 100.0 100.0    0.0
  5 100.0 100.0 100.0  92.7 100.0 100.0    0.0
  6 100.0 100.0 100.0  85.4 100.0 100.0    0.0
  7 100.0 100.0 100.0  80.1 100.0 100.0    0.0
  8 100.0  99.7  99.7  76.0  99.7 100.0    0.3
  9  98.8  97.9  97.9  72.8  97.9 100.0    2.1
 10  96.0  96.2  96.1  71.4  96.1 100.0    3.9
 11  94.4  95.9  94.8  70.5  94.8 100.0    5.2
 12  95.7  97.2  96.0  70.4  96.0 100.0    4.0
 13  98.3  98.8  98.4  71.4  98.4 100.0    1.6
 14  99.9  99.6  99.6  70.8  99.6 100.0    0.4
 15 100.0  99.8  99.8  69.6  99.8 100.0    0.2
 16 100.0  99.8  99.8  68.2  99.8 100.0    0.2
 17 100.0  99.4  99.5  70.7  99.5 100.0    0.5`;

  test('is caught at these rates', () => {
    const lines = Array.from({ length: 17 }, (_, i) => {
      const years = i + 1;
      const [boys, girls, both] = [
        inPounds(['boy'], years),
        inPounds(['girl'], years),
        inPounds(SEXES, years),
      ];
      const unusual = [boys, girls, both].map((caught) => share(caught.unusual, caught.typed));
      const ofBoth = [both.retype, both.offered, both.ratio].map((part) => share(part, both.typed));
      const missed = share(both.missed, both.typed).padStart(6);
      return [String(years).padStart(3), ...unusual, ...ofBoth, missed].join(' ');
    });
    const printed = ['', 'age  boys girls  both again offer  load missed', ...lines].join('\n');
    console.info(printed);
    expect(printed).toBe(RATES);
  });

  test('the number offered is the true one wherever one is offered, but for the last tenth', () => {
    for (let month = 12; month < 216; month++)
      for (const trueKg of weightsOf(SEXES, month))
        for (const age of agesOf(month)) {
          const weightKg = tenth(trueKg / KG_PER_POUND);
          for (const remark of checkBedCard({ age, weightKg }, {}, { bands: WEIGHT_BANDS }))
            if (remark.id === 'pounds' && Math.abs(remark.correctedKg - trueKg) >= 0.11)
              throw new Error(`${trueKg} kg in month ${month}: ${JSON.stringify(remark)}`);
        }
  });
});

// plain conditions: a hundred thousand expectations take their time
describe('a weight typed as it is', () => {
  test('raises no question about the age anywhere between the 3rd and the 97th percentile', () => {
    for (let month = 12; month < 216; month++)
      for (const sex of SEXES)
        for (const weightKg of weightsOf([sex], month))
          for (const age of agesOf(month)) {
            const remarks = checkBedCard({ age, weightKg }, {}, { bands: WEIGHT_BANDS });
            if (remarks.some(({ id }) => id === 'unusual-weight'))
              throw new Error(`${sex}, ${weightKg} kg, ${JSON.stringify(age)}: ${JSON.stringify(remarks)}`);
          }
  });

  test('with its point one place off is always asked about, and the right number is offered', () => {
    for (let month = 12; month < 216; month++)
      for (const trueKg of weightsOf(SEXES, month))
        for (const weightKg of [tenth(trueKg * 10), Number((trueKg / 10).toFixed(2))]) {
          const age = agesOf(month)[0]!;
          const remarks = checkBedCard({ age, weightKg }, {}, { bands: WEIGHT_BANDS });
          const asked = remarks.some(({ id }) => id === 'unusual-weight');
          if (!asked || !remarks.some((one) => one.id === 'decimal' && one.correctedKg === trueKg))
            throw new Error(`${weightKg} for ${trueKg} kg in month ${month}: ${JSON.stringify(remarks)}`);
        }
  });
});
