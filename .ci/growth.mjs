// Writes src/content/growth.ts from the LMS values. node .ci/growth.mjs
// A completed month m is taken at its middle, m + 0.5: below 24 months WHO 2006, from 24 months CDC 2000.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { toolFile } from './install.mjs';

const root = path.resolve(import.meta.dirname, '..');
const DAYS_A_MONTH = 365.25 / 12;
/** z of the percentiles 0.4, 3, 50, 97 and 99.6 of the normal distribution. */
const Z = [-2.652069808, -1.880793608, 0, 1.880793608, 2.652069808];
const [P50, LAST] = [2, 4];

const rows = readFileSync(path.join(root, 'tests/reference/data/weight-for-age.csv'), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','))
  .map(([reference, sex, ...values]) => ({ reference, sex, values: values.map(Number) }));

/** L, M and S at an age, on the straight line between the two ages that the reference gives. */
function lms(reference, sex, age) {
  const own = rows.filter((row) => row.reference === reference && row.sex === sex);
  const next = own.findIndex(({ values }) => values[0] >= age);
  const [a, b] = [own[Math.max(next - 1, 0)].values, own[next].values];
  const share = a === b ? 0 : (age - a[0]) / (b[0] - a[0]);
  return a.slice(1).map((value, i) => value + (b[i + 1] - value) * share);
}

/** Weight of boys and of girls in the middle of a completed month. */
const weights = (month, z) =>
  ['boy', 'girl'].map((sex) => {
    const [l, m, s] =
      month < 24 ? lms('WHO2006-days', sex, (month + 0.5) * DAYS_A_MONTH) : lms('CDC2000', sex, month + 0.5);
    return l === 0 ? m * Math.exp(s * z) : m * (1 + l * s * z) ** (1 / l);
  });

/** Both sexes in one: the lower of the two at the first month, the higher at the last, and between them the middle. */
const band = (first, last) =>
  Z.map((z, column) => {
    const middle = Math.ceil((first + last) / 2);
    const value =
      column === P50
        ? weights(middle, z).reduce((a, b) => a + b) / 2
        : column < P50
          ? Math.min(...weights(first, z))
          : Math.max(...weights(last, z));
    return Number(value.toFixed(2));
  });

const listed = (bands) => `[\n${bands.map((row) => `[${row.slice(0, LAST + 1).join(', ')}],`).join('\n')}\n]`;
const months = Array.from({ length: 24 }, (_, i) => band(12 + i, 12 + i));
const years = Array.from({ length: 17 }, (_, i) => band((i + 1) * 12, (i + 1) * 12 + 11));

const file = path.join(root, 'src/content/growth.ts');
writeFileSync(
  file,
  `/**
 * Usual weights for age, boys and girls in one band, for the question "is this weight right?" and for nothing else.
 * Made by .ci/growth.mjs; not to be edited by hand.
 * Shape: each row is the percentiles 0.4, 3, 50, 97 and 99.6: of the lower sex at the start of the age below, of the
 * higher sex at its end above, the mean of both in its middle. Every age a card can hold has its own row; nothing
 * lies between rows.
 * Units: kilograms.
 * Source: below 24 months WHO Child Growth Standards 2006, from 24 months CDC 2000 growth charts (United States).
 */
import type { WeightBands } from '#domain/bed-card/check.ts';

export const WEIGHT_BANDS: WeightBands = {
  /** Whole years, from 1 to 17. */
  years: ${listed(years)},
  /** Completed months, from 12 to 35. */
  months: ${listed(months)},
};
`,
);
execFileSync(process.execPath, [toolFile('prettier', 'prettier'), '--write', '--log-level', 'warn', file], {
  cwd: root,
  stdio: 'inherit',
});
