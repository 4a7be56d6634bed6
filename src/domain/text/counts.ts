/**
 * What a readability measure is fed: how many sentences, words, syllables and letters a text has.
 * Works for every script that puts spaces between words.
 *
 * Not: scripts without spaces between words (Thai, Chinese) — a whole clause would count as one word.
 */

/** How many syllables one word has. English hands one in; Spanish and Polish have their own in syllables.ts. */
export type SyllablesOf = (word: string) => number;

/** All counts of one text. Every number is a plain count, no rate. */
export interface TextCounts {
  readonly sentences: number;
  readonly words: number;
  readonly letters: number;
  readonly syllables: number;
  /** Words of one syllable. */
  readonly monosyllables: number;
  /** Words of three syllables or more. */
  readonly polysyllables: number;
  /** Words of four syllables or more. */
  readonly fourSyllableWords: number;
  /** Words of more than six letters. */
  readonly longWords: number;
}

// A letter or digit, then letters, digits, vowel marks and the joiners of some scripts; apostrophe and hyphen
// only between two letters, so "nurse's" and "Set-up" are one word each and a dash is none.
const WORD =
  /[\p{L}\p{N}][\p{L}\p{N}\p{M}\u200c\u200d]*(?:['’\-‐·.,:][\p{L}\p{N}][\p{L}\p{N}\p{M}\u200c\u200d]*)*/gu;

// "." "," ":" join digits (3.5; 10,000; 3:10) but part words ("bed.Then"), which the pattern alone cannot tell.
const PART = /(?<!\p{N})[.,:]|[.,:](?!\p{N})/u;

// Full stops of Latin, Arabic, Urdu, Devanagari, Ethiopic and Chinese script; "…" ends a sentence too.
const ENDS = '.!?…؟۔।።。！？';
const SENTENCE_END = new RegExp(`(?<!\\p{N})[${ENDS}]+|[${ENDS}]+(?!\\p{N})|\\n+`, 'u');

/**
 * The words of a text, in their order, as written.
 * @example wordsOf('Wet? No: dry.') // ['Wet', 'No', 'dry']
 */
export function wordsOf(text: string): string[] {
  return (text.match(WORD) ?? []).flatMap((run) => run.split(PART).filter((part) => part !== ''));
}

/**
 * The sentences of a text: what stands between full stops, question marks, exclamation marks or line breaks
 * and holds at least one word.
 * Not: abbreviations ("Dr.") end a sentence here; the texts of a ward should hold none.
 * @example sentencesOf('Wet? Tell us.') // ['Wet', 'Tell us']
 */
export function sentencesOf(text: string): string[] {
  return text
    .split(SENTENCE_END)
    .map((piece) => piece.trim())
    .filter((piece) => wordsOf(piece).length > 0);
}

/**
 * How many words each sentence has; needs no language, so it is the measure for Arabic and all others
 * that have no formula we trust.
 * @example sentenceWordCounts('Wet? Tell us.') // [1, 2]
 */
export function sentenceWordCounts(text: string): number[] {
  return sentencesOf(text).map((sentence) => wordsOf(sentence).length);
}

/**
 * Letters of any script; digits, accents and vowel marks are not letters.
 * @example lettersIn('Set-up 3') // 5
 */
export function lettersIn(text: string): number {
  return text.match(/\p{L}/gu)?.length ?? 0;
}

/**
 * Everything a measure may ask for, counted once. A word counts at least one syllable, also a number.
 * @example countText('Cool dogs wear da sunglasses.', syllable).syllables // 7
 */
export function countText(text: string, syllablesOf: SyllablesOf): TextCounts {
  const words = wordsOf(text);
  const syllables = words.map((word) => Math.max(1, syllablesOf(word)));
  const having = (least: number) => syllables.filter((count) => count >= least).length;
  return {
    sentences: sentencesOf(text).length,
    words: words.length,
    letters: words.reduce((sum, word) => sum + lettersIn(word), 0),
    syllables: syllables.reduce((sum, count) => sum + count, 0),
    monosyllables: syllables.filter((count) => count === 1).length,
    polysyllables: having(3),
    fourSyllableWords: having(4),
    longWords: words.filter((word) => lettersIn(word) > 6).length,
  };
}

/**
 * The mean and the greatest of a list of sentence lengths, in words. An empty list gives zeros.
 * @example sentenceLengths([1, 2, 6]) // {mean: 3, longest: 6}
 */
export function sentenceLengths(counts: readonly number[]): { mean: number; longest: number } {
  if (counts.length === 0) return { mean: 0, longest: 0 };
  return {
    mean: counts.reduce((sum, count) => sum + count, 0) / counts.length,
    longest: Math.max(...counts),
  };
}
