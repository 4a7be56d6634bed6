/**
 * Our syllable rules against the word dividers of the TeX hyphenation patterns (npm hyphen), on every word of
 * our own Spanish and Polish texts. A divider of lines leaves no single letter at a line's start and prefers
 * not to part two vowels, so words that begin with a vowel are held to the second law only.
 */
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { wordsOf } from '#domain/text/counts.ts';
import { syllablesEs, syllablesPl } from '#domain/text/syllables.ts';
import { readable, textsOf } from '../../.ci/locales.mjs';
import { root } from '../helpers/locales.ts';

interface Divider {
  hyphenateSync(text: string, options: { hyphenChar: string; minWordLength: number }): string;
}
const load = createRequire(import.meta.url);

describe.each([
  ['es', syllablesEs],
  ['pl', syllablesPl],
] as const)('%s', (lang, syllablesOf) => {
  const divider = load(`hyphen/${lang}`) as Divider;
  const parts = (word: string) =>
    divider.hyphenateSync(word, { hyphenChar: '.', minWordLength: 1 }).split('.');
  const words = [
    ...new Set(Object.values(textsOf(root, lang)).flatMap((text) => wordsOf(readable(text).toLowerCase()))),
  ].filter((word) => /^\p{L}+$/u.test(word));
  const share = (list: readonly string[], agrees: (word: string) => boolean) =>
    list.filter(agrees).length / list.length;
  const print = (what: string, rate: number) =>
    console.info(`${lang}: ${what} in ${(100 * rate).toFixed(1)} % of words`);

  it('has some hundred words to compare', () => {
    expect(words.length).toBeGreaterThan(300);
  });

  it('counts as many syllables as the divider has parts, in nine of ten words that begin with a consonant', () => {
    const plain = words.filter((word) => !/^[aeiouyąęóáéíúü]/.test(word));
    expect(plain.length).toBeGreaterThan(200);
    const rate = share(plain, (word) => parts(word).length === syllablesOf(word));
    print('same count', rate);
    expect(rate).toBeGreaterThanOrEqual(0.9);
  });

  it('lets every cut of the divider fall between two syllables', () => {
    const cutBetween = (word: string) =>
      parts(word).reduce((sum, part) => sum + syllablesOf(part), 0) === syllablesOf(word);
    const rate = share(words, cutBetween);
    print('every cut between two syllables', rate);
    expect(rate).toBeGreaterThanOrEqual(0.99);
  });
});
