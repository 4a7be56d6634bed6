/** What this machine's Intl calls plural, against the Unicode data (npm cldr-core 48) and hand-kept rows of it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';

const file = createRequire(import.meta.url).resolve('cldr-core/supplemental/plurals.json');
const cldr = JSON.parse(readFileSync(file, 'utf8')) as {
  supplemental: { 'plurals-type-cardinal': Record<string, Record<string, string>> };
};

// CLDR 48, cardinal
const CATEGORIES = {
  en: 'one other',
  es: 'many one other',
  pt: 'many one other',
  fr: 'many one other',
  de: 'one other',
  it: 'many one other',
  pl: 'few many one other',
  ro: 'few one other',
  uk: 'few many one other',
  ru: 'few many one other',
  ar: 'few many one other two zero',
  ur: 'one other',
  fa: 'one other',
  hi: 'one other',
  bn: 'one other',
  pa: 'one other',
  so: 'one other',
  tr: 'one other',
  vi: 'other',
  zh: 'other',
  sw: 'one other',
  am: 'one other',
  ne: 'one other',
  ta: 'one other',
} as const;

describe.each(Object.entries(CATEGORIES))('%s', (lang, categories) => {
  it(`has ${categories}`, () => {
    expect(new Intl.PluralRules(lang).resolvedOptions().pluralCategories.sort().join(' ')).toBe(categories);
  });

  it('has them in the Unicode data too', () => {
    const rows = Object.keys(cldr.supplemental['plurals-type-cardinal'][lang]!);
    expect(
      rows
        .map((row) => row.replace('pluralRule-count-', ''))
        .sort()
        .join(' '),
    ).toBe(categories);
  });

  it('puts each whole number the data lists into the category it lists it under', () => {
    const rules = new Intl.PluralRules(lang);
    for (const [row, rule] of Object.entries(cldr.supplemental['plurals-type-cardinal'][lang]!)) {
      const listed = rule.match(/@integer ([^@]*)/)?.[1] ?? '';
      for (const span of listed.split(',').map((part) => part.trim())) {
        const [from, to] = span === '' ? [] : span.split('~').map(Number);
        if (from === undefined || !Number.isInteger(from)) continue;
        for (let value = from; value <= (to ?? from); value += 1) {
          expect(`${value} ${rules.select(value)}`).toBe(`${value} ${row.replace('pluralRule-count-', '')}`);
        }
      }
    }
  });
});

describe('single values', () => {
  it.each([
    [0, 'one', ['fr', 'pt', 'fa', 'hi', 'bn', 'pa', 'am']],
    [0, 'zero', ['ar']],
    [0, 'other', ['en', 'es', 'it', 'ur', 'tr', 'sw', 'so', 'ne', 'ta', 'pt-PT']],
    [0, 'few', ['ro']],
    [0, 'many', ['pl', 'uk', 'ru']],
    [2, 'two', ['ar']],
    [2, 'few', ['pl', 'uk', 'ru', 'ro']],
    [5, 'many', ['pl', 'uk', 'ru']],
    [5, 'few', ['ro', 'ar']],
    [11, 'many', ['ar', 'pl', 'uk', 'ru']],
    [11, 'few', ['ro']],
    [21, 'one', ['uk', 'ru']],
    [21, 'many', ['pl', 'ar']],
    [21, 'other', ['ro']],
    [1.5, 'one', ['fr', 'pt']],
    [1.5, 'other', ['pt-PT', 'pl', 'uk', 'ru']],
    [1.5, 'few', ['ro']],
  ] as const)('%d is %s in %j', (value, category, langs) => {
    for (const lang of langs)
      expect(`${lang} ${new Intl.PluralRules(lang).select(value)}`).toBe(`${lang} ${category}`);
  });
});
