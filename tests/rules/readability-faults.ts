/**
 * How hard a language may read, as functions from texts to faults. Only sentences are pooled: a label such as
 * "Toes" is no sentence and would make its page look easier. Labels count in the limit of words.
 */
import { syllable } from 'syllable';
import { countText, sentenceLengths, sentencesOf, sentenceWordCounts, wordsOf } from '#domain/text/counts.ts';
import { fleschKincaidGrade, fogPl, szigriszt } from '#domain/text/measures.ts';
import { syllablesEs, syllablesPl } from '#domain/text/syllables.ts';
import { readable, type Texts } from '../../.ci/locales.mjs';

/** Texts read together: an area of the site, or all that is said about one sign. */
interface Page {
  readonly name: string;
  readonly pool: string;
}

const isSentence = (text: string) => /[.!?؟]$/u.test(text);
const poolOf = (texts: readonly string[]) => texts.map(readable).filter(isSentence).join(' ');

function grouped(texts: Texts, nameOf: (key: string) => string | undefined): Page[] {
  const groups = new Map<string, string[]>();
  for (const [key, text] of Object.entries(texts)) {
    const name = nameOf(key);
    if (name !== undefined) groups.set(name, [...(groups.get(name) ?? []), text]);
  }
  return [...groups].map(([name, list]) => ({ name, pool: poolOf(list) })).filter(({ pool }) => pool !== '');
}

export const areaPages = (texts: Texts) => grouped(texts, (key) => key.split(':')[0]);
export const signPages = (texts: Texts) =>
  grouped(texts, (key) => /^signs:(?!details\.)([^.]+)\./.exec(key)?.[1]);
/** Each play idea: its name and how it goes. */
export const ideaPages = (texts: Texts) =>
  grouped(texts, (key) => /^ideas:(?!cautions\.)([^.]+)\./.exec(key)?.[1]);

/** English: at most grade 6, on every area, every sign and every play idea. */
export function gradeFaults(pages: readonly Page[], most = 6): string[] {
  return pages.flatMap(({ name, pool }) => {
    const grade = fleschKincaidGrade(countText(pool, syllable));
    return grade <= most ? [] : [`${name}: grade ${grade.toFixed(1)}, at most ${most}`];
  });
}

/** Spanish: INFLESZ "quite easy" or easier. Fewer than `leastWords` words say nothing and are left out. */
export function infleszFaults(pages: readonly Page[], leastWords = 1, least = 65): string[] {
  return pages.flatMap(({ name, pool }) => {
    const counts = countText(pool, syllablesEs);
    const value = szigriszt(counts);
    return counts.words < leastWords || value >= least
      ? []
      : [`${name}: ${value.toFixed(1)}, at least ${least}`];
  });
}

/** Polish: FOG "simple" or simpler. */
export function fogFaults(pages: readonly Page[], most = 9): string[] {
  return pages.flatMap(({ name, pool }) => {
    const value = fogPl(countText(pool, syllablesPl));
    return value <= most ? [] : [`${name}: ${value.toFixed(1)}, at most ${most}`];
  });
}

/** For a language whose formulas we do not trust: short sentences on the whole. */
export function meanLengthFaults(pages: readonly Page[], most = 10): string[] {
  return pages.flatMap(({ name, pool }) => {
    const { mean } = sentenceLengths(sentenceWordCounts(pool));
    return mean <= most ? [] : [`${name}: ${mean.toFixed(1)} words a sentence, at most ${most}`];
  });
}

/** No sentence, and no label, longer than so many words. */
export function longSentenceFaults(texts: Texts, mostFor: (key: string) => number): string[] {
  return Object.entries(texts).flatMap(([key, text]) =>
    sentencesOf(readable(text)).flatMap((sentence) => {
      const words = wordsOf(sentence).length;
      return words <= mostFor(key) ? [] : [`${key}: ${words} words, at most ${mostFor(key)}: "${sentence}"`];
    }),
  );
}
