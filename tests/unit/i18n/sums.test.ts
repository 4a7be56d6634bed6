// What the sums say about soreness and poo, in every language: a number, its scale, and nothing about why.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#domain/notes/entries.ts';
import { summarise } from '#domain/notes/summarise.ts';
import { minutes } from '#domain/units.ts';
import { loadWords } from '#i18n/words.ts';
import { drinksText, pooText, soreLines, sorenessText, soreText } from '#ui/note-words.ts';
import { everyLanguage } from '../../helpers/locales.ts';
import { moment, SETTINGS } from '../../helpers/ward-days.ts';

const seen = (text: string) => text.replace(/[\u2066-\u2069]/g, '');
const english = await loadWords('en', ['notes']);
const HOUR = 60;
const NOW = 40 * HOUR;

const sore = (
  hour: number,
  value: number,
  when: 'rest' | 'moving' = 'rest',
  scale: 'numbers' | 'steps' = 'numbers',
): Entry => ({
  ...{ id: `aaaaaa-${Math.round(hour * 60) + 1}`, t: moment(NOW - 6 * HOUR + hour * HOUR), off: minutes(0) },
  ...{ kind: 'sore', value, scale, when },
});
const poo = (hoursAgo: number): Entry => ({
  ...{ id: 'aaaaaa-9000', t: moment(NOW - hoursAgo * HOUR), off: minutes(0) },
  ...{ kind: 'poo', what: 'soft' },
});
const at = (entries: readonly Entry[]) => summarise(entries, moment(NOW), SETTINGS);
const said = (entries: readonly Entry[], words = english) => soreLines(words, at(entries).soreness).map(seen);

describe('how fast soreness changes', () => {
  // the straight lines are worked out by hand
  it.each([
    ['two points more in two hours', [sore(0, 2), sore(2, 4)], ['Lying still: up 1 of 10 in an hour']],
    ['1, 2, 6 an hour apart', [sore(0, 1), sore(1, 2), sore(2, 6)], ['Lying still: up 2.5 of 10 in an hour']],
    ['less and less', [sore(0, 8), sore(4, 2)], ['Lying still: down 1.5 of 10 in an hour']],
    ['up and down again', [sore(0, 3), sore(1, 5), sore(2, 3)], ['Lying still: not up, not down']],
    [
      'lying still and when moved, each by itself',
      [sore(0, 2), sore(0.5, 6, 'moving'), sore(2, 4), sore(4.5, 4, 'moving')],
      ['Lying still: up 1 of 10 in an hour', 'When moved: down 0.5 of 10 in an hour'],
    ],
    [
      'on the stair, which has three steps',
      [sore(0, 1, 'rest', 'steps'), sore(2, 3, 'rest', 'steps')],
      ['Lying still: up 1 of 3 in an hour'],
    ],
    ['one note alone makes no line', [sore(1, 7)], []],
    ['nothing noted', [], []],
  ])('%s', (_, entries, expected) => expect(said(entries)).toEqual(expected));

  it.each(everyLanguage.map(([language]) => language))(
    'is said in %s with the number and the scale, and nothing left open',
    async (language) => {
      const words = await loadWords(language, ['notes']);
      const [up, down, level] = [4, 0, 2].map((end) => said([sore(0, 2), sore(2, end)], words)[0]!);
      for (const text of [up!, down!]) {
        expect(text).toContain(new Intl.NumberFormat(language).format(1));
        expect(text).toContain(new Intl.NumberFormat(language).format(10));
      }
      expect(new Set([up, down, level]).size).toBe(3);
      for (const text of [up, down, level]) expect(text).not.toMatch(/[{}]|notes:/);
    },
  );
});

describe('the highest soreness', () => {
  const line = (entries: readonly Entry[], words = english) => seen(soreText(words, at(entries).soreness));

  it('stands before how it changes, and alone where there is one note', () => {
    expect(line([])).toBe('');
    expect(line([sore(1, 7)])).toBe('Lying still, highest: 7 of 10');
    expect(line([sore(1, 3, 'rest', 'steps'), sore(2, 1, 'moving', 'steps')])).toBe(
      'Lying still, highest: A lot · When moved, highest: A little',
    );
    expect(line([sore(0, 8), sore(4, 2)])).toBe(
      'Lying still, highest: 8 of 10 · Lying still: down 1.5 of 10 in an hour',
    );
  });

  it.each(everyLanguage.map(([language]) => language))(
    'is the same word in %s as in the note',
    async (language) => {
      const words = await loadWords(language, ['notes']);
      const strong = sore(5, 3, 'moving', 'steps');
      const text = line([strong, sore(5.5, 1, 'moving', 'steps')], words);
      const { soreness } = at([strong]);
      const [value] = seen(sorenessText(words, soreness.strong!)).split(/[,،]/);
      expect(text).toContain(value);
      expect(text).not.toMatch(/[{}]|notes:/);
    },
  );
});

describe('since the last poo', () => {
  it('tells nights and full days of 24 hours apart', () => {
    const text = (hoursAgo: number) => seen(pooText(english, at([poo(hoursAgo)]).poo));
    // it is four in the afternoon: 17 hours ago was yesterday, and no full day
    expect(text(1)).toBe('Today');
    expect(text(17)).toBe('Yesterday');
    expect(text(24)).toBe('Yesterday, full 24 hours: 1');
    expect(text(41)).toBe('2 days ago, full 24 hours: 1');
    expect(pooText(english, at([]).poo)).toBe('');
  });
});

describe('drinks and asking for medicine', () => {
  type Amount = 'sip' | 'half' | 'full' | 'not-said';
  const drink = (n: number, amount: Amount): Entry => ({
    ...{ id: `aaaaaa-${5000 + n}`, t: moment(NOW - n * 30), off: minutes(0) },
    ...{ kind: 'drink', amount, what: 'water' },
  });
  const text = (...amounts: Amount[]) =>
    seen(drinksText(english, at(amounts.map((amount, n) => drink(n + 1, amount))).drinks));

  it('sips are counted beside the cups, and are none of them', () => {
    expect(text()).toBe('');
    expect(text('full', 'half')).toBe('Cups: 1.5');
    expect(text('full', 'sip', 'sip')).toBe('Cups: 1 · sips: 2');
    expect(text('sip')).toBe('Cups: 0 · sips: 1');
  });

  it('a drink of which nobody said how much is said to be one', () => {
    expect(text('full', 'not-said')).toBe('Cups: 1 · amount not noted: 1');
    expect(text('not-said', 'sip')).toBe('Cups: 0 · sips: 1 · amount not noted: 1');
  });

  it('how often medicine was asked for stands behind the lines of soreness', () => {
    const asked = (n: number): Entry => ({
      ...{ id: `aaaaaa-${7000 + n}`, t: moment(NOW - n * HOUR), off: minutes(0) },
      kind: 'asked-for-medicine',
    });
    expect(said([asked(1), asked(3), asked(30)])).toEqual(['Asked for medicine in 24 hours: 2']);
    expect(said([sore(0, 2), sore(2, 4), asked(1)])).toEqual([
      'Lying still: up 1 of 10 in an hour',
      'Asked for medicine in 24 hours: 1',
    ]);
  });
});
