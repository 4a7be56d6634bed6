import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { english, everyLanguage } from '../helpers/locales.ts';
import {
  areaPages,
  fogFaults,
  gradeFaults,
  ideaPages,
  infleszFaults,
  longSentenceFaults,
  meanLengthFaults,
  signPages,
} from './readability-faults.ts';

/** Words by which a topic is found stand one after another and make no sentence. */
const FOUND_BY = /^why:topic\.[^.]+\.words$/;
/** What is said to a nurse is one breath of at most 14 words; all else of at most 12. */
const englishLimit = (key: string) => (key.startsWith('say:') ? 14 : FOUND_BY.test(key) ? 20 : 12);
const otherLimit = (key: string) => (FOUND_BY.test(key) ? 20 : 15);

const pagesOf = (lang: string) => {
  const texts = everyLanguage.find(([name]) => name === lang)?.[1] ?? {};
  return { areas: areaPages(texts), signs: signPages(texts) };
};

describe('English', () => {
  const { areas, signs } = pagesOf('en');

  it('pools every area and every sign', () => {
    expect(areas.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['common', 'look', 'pages', 'say', 'signs']),
    );
    expect(signs.map(({ name }) => name).sort()).toEqual([...ALL_SIGN_IDS].sort());
  });

  // grade 6: American Medical Association (Weiss 2003, 2007), as quoted by others
  it('reads at grade 6 or below, area by area and sign by sign', () => {
    expect(gradeFaults([...areas, ...signs])).toEqual([]);
  });

  it('tells each play idea at grade 6 or below', () => {
    const ideas = ideaPages(english);
    expect(ideas.map(({ name }) => name).sort()).toEqual(IDEAS.map(({ id }) => id).sort());
    expect(gradeFaults(ideas)).toEqual([]);
  });

  it('has no sentence over 12 words, 14 in what is said to the nurse', () => {
    expect(longSentenceFaults(english, englishLimit)).toEqual([]);
  });
});

describe('Spanish', () => {
  const { areas, signs } = pagesOf('es');

  // "bastante fácil": Barrio-Cantalejo 2008
  it('reads quite easily by INFLESZ, area by area', () => {
    expect(infleszFaults(areas)).toEqual([]);
  });

  it('and sign by sign, where a sign has thirty words', () => {
    expect(infleszFaults(signs, 30)).toEqual([]);
  });
});

describe('Polish', () => {
  it('reads simply by FOG, area by area', () => {
    expect(fogFaults(pagesOf('pl').areas)).toEqual([]);
  });
});

describe.each(everyLanguage.filter(([lang]) => lang !== 'en'))('%s', (lang, texts) => {
  it('has at most ten words a sentence on the whole, area by area', () => {
    expect(meanLengthFaults(pagesOf(lang).areas)).toEqual([]);
  });

  it('has no sentence over fifteen words', () => {
    expect(longSentenceFaults(texts, otherLimit)).toEqual([]);
  });
});

describe('a planted hard text is seen:', () => {
  const page = (text: string) => areaPages({ 'look:a': text, 'look:b': 'Toes' });

  it('English', () => {
    const hard =
      'Circumferential dressings occasionally precipitate unanticipated neurovascular complications.';
    expect(gradeFaults(page(hard))).toHaveLength(1);
    expect(gradeFaults(page('Look at the toes.'))).toEqual([]);
  });

  it('Spanish, and not where there are too few words to tell', () => {
    const hard =
      'Ocasionalmente determinadas inmovilizaciones circunferenciales desencadenan complicaciones.';
    expect(infleszFaults(page(hard))).toHaveLength(1);
    expect(infleszFaults(page(hard), 30)).toEqual([]);
    expect(infleszFaults(page('Mire los dedos del pie.'))).toEqual([]);
  });

  it('Polish', () => {
    const hard =
      'Unieruchomienie kończyny niejednokrotnie powoduje nieprzewidziane powikłania neurologiczne.';
    expect(fogFaults(page(hard))).toHaveLength(1);
    expect(fogFaults(page('Obejrzeć palce stopy.'))).toEqual([]);
  });

  it('long sentences of any script', () => {
    const word = 'قدم ';
    expect(longSentenceFaults({ 'say:a': `${word.repeat(16)}.` }, otherLimit)).toHaveLength(1);
    expect(longSentenceFaults({ 'say:a': `${word.repeat(15)}.` }, otherLimit)).toEqual([]);
    expect(longSentenceFaults({ 'look:a': `${word.repeat(13)}` }, englishLimit)).toHaveLength(1);
    expect(longSentenceFaults({ 'say:a': `${word.repeat(13)}` }, englishLimit)).toEqual([]);
    expect(meanLengthFaults(page(`${word.repeat(11)}.`))).toHaveLength(1);
    expect(meanLengthFaults(page(`${word.repeat(10)}.`))).toEqual([]);
  });

  it('a label does not soften a hard page', () => {
    const pooled = areaPages({ 'look:a': 'Look at the toes.', 'look:b': 'Toes', 'look:c': 'Feet {{count}}' });
    expect(pooled).toEqual([{ name: 'look', pool: 'Look at the toes.' }]);
  });
});
