import { describe, expect, it } from 'vitest';
import { dueKeys, flatten, sourceKeyOf, textsOf } from '../../.ci/locales.mjs';
import { english, everyLanguage, planted, readJson, root } from '../helpers/locales.ts';
import {
  emptyFaults,
  keyFaults,
  markupFaults,
  negationFaults,
  numberFaults,
  placeholderFaults,
  scriptFaults,
} from './locale-faults.ts';

const cldr = readJson('node_modules/cldr-core/supplemental/plurals.json') as {
  supplemental: { 'plurals-type-cardinal': Record<string, Record<string, string>> };
};
const cldrCategories = (lang: string) =>
  Object.keys(cldr.supplemental['plurals-type-cardinal'][lang] ?? {})
    .map((name) => name.replace('pluralRule-count-', ''))
    .sort();

it.each(['en', 'es', 'pl', 'ar'])('%s is one of the languages', (lang) => {
  expect(everyLanguage.map(([name]) => name)).toContain(lang);
});

describe.each(everyLanguage)('%s', (lang, texts) => {
  it('has every key, each plural in all its categories, and no key besides', () => {
    expect(keyFaults(lang, texts, english)).toEqual([]);
  });

  it('asks for the plural categories that the Unicode data names', () => {
    expect(new Intl.PluralRules(lang).resolvedOptions().pluralCategories.sort()).toEqual(
      cldrCategories(lang),
    );
  });

  it('has no empty text', () => {
    expect(emptyFaults(texts)).toEqual([]);
  });

  it('has the placeholders of English', () => {
    expect(placeholderFaults(texts, english)).toEqual([]);
  });

  it('keeps the numbers of English', () => {
    expect(numberFaults(lang, texts, english)).toEqual([]);
  });

  it('keeps every no', () => {
    expect(negationFaults(lang, texts, english)).toEqual([]);
  });

  it('ends no reason of an urgency with a stop: behind it stand a colon and the signs', () => {
    const reasons = Object.entries(texts).filter(([key]) => key.startsWith('steps:reasons.'));
    expect(reasons.length).toBeGreaterThan(10);
    expect(reasons.filter(([, text]) => /[.!?:\u061f]$/.test(text))).toEqual([]);
  });

  it('has no markup', () => {
    expect(markupFaults(texts)).toEqual([]);
  });

  it('is written in its own script', () => {
    expect(scriptFaults(lang, texts)).toEqual([]);
  });
});

describe('a planted fault is seen:', () => {
  const of = (lang: string) => textsOf(root, lang);
  const pluralKey = 'steps:result.minutesSince_other';

  it('there is a plural to check', () => {
    expect(Object.keys(english)).toContain(pluralKey);
  });

  it('a key taken away', () => {
    const { 'look:parts.toes': _gone, ...rest } = english;
    expect(keyFaults('en', rest, english)).toEqual(['look:parts.toes: missing']);
  });

  it('a key too many, and a plural category too many', () => {
    const more = planted(english, { 'look:parts.ear': 'Ear', 'steps:result.minutesSince_few': 'few' });
    expect(keyFaults('en', more, english)).toHaveLength(2);
  });

  it('a plural category too few', () => {
    const arabic = dueKeys('ar', english);
    expect(arabic.filter((key) => key.startsWith('steps:result.minutesSince_'))).toHaveLength(6);
    const texts = Object.fromEntries(arabic.map((key) => [key, 'x']));
    delete texts['steps:result.minutesSince_two'];
    expect(keyFaults('ar', texts, english)).toEqual(['steps:result.minutesSince_two: missing']);
  });

  it('a plural of another language points at English "other"', () => {
    expect(sourceKeyOf('steps:result.minutesSince_few', english)).toBe('steps:result.minutesSince_other');
    expect(sourceKeyOf('steps:result.minutesSince_one', english)).toBe('steps:result.minutesSince_one');
    expect(sourceKeyOf('look:parts.toes_few', english)).toBeUndefined();
    expect(sourceKeyOf('say:toes-cool_left', english)).toBe('say:toes-cool_left');
  });

  it('an empty text, and one with loose spaces', () => {
    expect(emptyFaults({ 'a:b': '', 'a:c': ' ', 'a:d': 'x ', 'a:e': 'x' })).toHaveLength(3);
  });

  it('a text that is a list', () => {
    expect(() => flatten({ a: ['x'] as unknown as string })).toThrow('locales › a');
  });

  it('a placeholder lost or misspelt', () => {
    const bad = { 'steps:written.done': 'Escrito a las {{hora}}.', 'steps:result.pressedAt': 'Pulsado.' };
    expect(placeholderFaults(bad, english)).toHaveLength(2);
  });

  it.each([
    ['en', 'within some minutes', 1],
    ['en', 'within 10 minutes', 0],
    ['es', 'en 15 minutos', 2],
    ['es', 'en diez minutos', 0],
    ['pl', 'w ciągu dziesięciu minut', 0],
    ['pl', 'w ciągu pięciu minut', 1],
    ['ar', 'خلال ١٠ دقائق', 0],
    ['ar', 'خلال عشر دقائق', 0],
    ['ar', 'خلال دقائق', 1],
  ])('a number changed: %s "%s" has %i faults', (lang, text, faults) => {
    expect(numberFaults(lang, { 'a:b': text }, { 'a:b': 'within 10 minutes' })).toHaveLength(faults);
  });

  it('"three days" that became two', () => {
    expect(numberFaults('es', { 'a:b': 'dos días' }, { 'a:b': 'three days' })).toHaveLength(1);
  });

  it.each([
    ['es', 'Afloje la venda.', 2],
    ['es', 'No afloje la venda.', 0],
    ['pl', 'Poluzować bandaż.', 2],
    ['pl', 'Nie luzować bandaża.', 0],
    ['ar', 'أرخوا الضمادة.', 2],
    ['ar', 'لا ترخوا الضمادة.', 0],
  ])('a "do not" that became a "do": %s "%s" has %i faults', (lang, text, faults) => {
    expect(
      negationFaults(lang, { 'a:x.doNot': text }, { 'a:x.doNot': 'Do not loosen the leg bandage.' }),
    ).toHaveLength(faults);
  });

  it('one of two prohibitions lost', () => {
    const source = { 'a:x.doNot': 'No rubbing. No hot bottle.' };
    expect(negationFaults('es', { 'a:x.doNot': 'No frote. Ponga una bolsa caliente.' }, source)).toHaveLength(
      1,
    );
    expect(negationFaults('es', { 'a:x.doNot': 'No frote. Sin bolsa caliente.' }, source)).toEqual([]);
  });

  it('a denial lost outside a prohibition', () => {
    const bad = planted(of('en'), { 'common:urgencyShort.none': 'Reported' });
    expect(negationFaults('en', bad, english)).toHaveLength(1);
  });

  it('a language nobody listed negations or a script for', () => {
    expect(negationFaults('xx', {}, english)).toHaveLength(1);
    expect(scriptFaults('zh', {})).toHaveLength(1);
  });

  it('markup, an entity, a mark of emphasis', () => {
    const bad = {
      'a:a': '<b>Look</b>',
      'a:b': 'a &amp; b',
      'a:c': '**Look**',
      'a:d': '[x](y)',
      'a:e': 'under 3, 2 < 3',
    };
    expect(markupFaults(bad)).toHaveLength(4);
  });

  it('a text of another script', () => {
    expect(scriptFaults('ar', { 'a:b': 'اضغطوا the زر', 'a:c': 'Bare Toes {{count}} زر' })).toHaveLength(1);
    expect(scriptFaults('pl', { 'a:b': 'пальцы' })).toHaveLength(1);
  });
});
