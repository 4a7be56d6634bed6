/** Why & how: every topic for every reader, in the length and the words that this reader can take. */
import { describe, expect, it } from 'vitest';
import { FIRST_TILES, READERS, TOPIC_IDS, areaOf, dayOf, readersOf } from '#content/topics.ts';
import { english, everyLanguage, planted } from '../helpers/locales.ts';
import { fogFaults, gradeFaults, infleszFaults, meanLengthFaults } from './readability-faults.ts';
import { cellFaults, lengthFaults, pagesFor, told } from './topic-faults.ts';

it('thirty-three topics: twelve of the first day, eighteen later, three at the end', () => {
  const on = (day: string) => TOPIC_IDS.filter((topic) => dayOf(topic) === day).length;
  expect([TOPIC_IDS.length, on('before') + on('first'), on('later'), on('end')]).toEqual([33, 12, 18, 3]);
  expect(new Set(FIRST_TILES).size).toBe(5);
});

describe.each(everyLanguage)('%s', (lang, texts) => {
  it('has every topic for every reader, with its cautions and what one can ask', () =>
    expect(cellFaults(texts)).toEqual([]));

  // a translation may need a third more words; the sentences stay short
  it('says no more than a reader takes', () =>
    expect(lengthFaults(texts, lang === 'en' ? 1 : 1.34)).toEqual([]));

  it('carries as many cautions as English, topic by topic', () => {
    for (const topic of TOPIC_IDS)
      expect(told(texts, topic, 'cautions'), topic).toHaveLength(told(english, topic, 'cautions').length);
  });

  it('tells every child that it is neither fault nor punishment', () => {
    const words = { en: /punish|fault/i, es: /castigo|culpa/i, pl: /kar[aąęy]|win[aąęy]/i, ar: /عقاب|ذنب/u }[
      lang
    ];
    if (!words) throw new Error(`${lang}: which words say "not a punishment"?`);
    for (const reader of ['from3', 'from6', 'from9', 'from13'])
      expect(told(texts, 'why-pull', reader).join(' '), reader).toMatch(words);
  });
});

describe('English', () => {
  // Flesch–Kincaid (Kincaid 1975); grade 6 for grown-ups: American Medical Association (Weiss 2003, 2007)
  it('reads at grade 6 for grown-ups, 3 from six years, 5 from nine, topic by topic', () => {
    expect(gradeFaults(pagesFor(english, 'grownUp', true), 6)).toEqual([]);
    expect(gradeFaults(pagesFor(english, 'from6', true), 3)).toEqual([]);
    expect(gradeFaults(pagesFor(english, 'from9', true), 5)).toEqual([]);
  });
});

describe('other languages, reader by reader', () => {
  const of = (lang: string) => everyLanguage.find(([name]) => name === lang)![1];
  it.each(READERS)('%s: Spanish quite easy, Polish simple, Arabic in short sentences', (reader) => {
    expect(infleszFaults(pagesFor(of('es'), reader, false))).toEqual([]);
    expect(fogFaults(pagesFor(of('pl'), reader, false))).toEqual([]);
    expect(meanLengthFaults(pagesFor(of('ar'), reader, false))).toEqual([]);
  });
});

describe('a planted fault is seen:', () => {
  const key = `${areaOf('why-pull')}:why-pull`;
  it('an empty cell, and a text for nobody', () => {
    const gone = Object.fromEntries(
      Object.entries(english).filter(([name]) => !name.startsWith(`${key}.from6`)),
    );
    expect(cellFaults(gone)).toEqual(['why-pull × from6']);
    expect(readersOf('school')).not.toContain('from1');
    expect(cellFaults(planted(english, { [`${areaOf('school')}:school.from1.1`]: 'Sing.' }))).toEqual([
      'school × from1',
    ]);
  });
  it('one sentence too many, and one word', () => {
    expect(
      lengthFaults(planted(english, { [`${key}.from3.9`]: 'A. B. C. D. E. F. G.' })).length,
    ).toBeGreaterThan(0);
    expect(
      lengthFaults(
        planted(english, { [`${key}.from3.9`]: 'One two three four five six seven eight.' }),
      ).join(),
    ).toContain('8 words');
  });
});
