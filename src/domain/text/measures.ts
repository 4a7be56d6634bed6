/**
 * Readability measures, each a function of counts. A number says how long words and sentences are; none says
 * whether a text is understood, true or kind, and a value of one language's formula means nothing in another.
 *
 * Errors: each throws a RangeError where there is no word or no sentence.
 */
import type { TextCounts } from './counts.ts';

type Counted<Name extends keyof TextCounts> = Pick<TextCounts, Name>;

function rates(name: string, counts: Counted<'words' | 'sentences'>) {
  if (!(counts.words > 0 && counts.sentences > 0)) {
    throw new RangeError(
      `domain/text › ${name}: at least one word and one sentence, saw ${counts.words} and ${counts.sentences}`,
    );
  }
  return { wordsPerSentence: counts.words / counts.sentences };
}

function syllableRates(name: string, counts: Counted<'words' | 'sentences' | 'syllables'>) {
  return { ...rates(name, counts), syllablesPerWord: counts.syllables / counts.words };
}

/**
 * Flesch reading ease, English: 206.835 − 1.015·words/sentences − 84.6·syllables/words.
 * Units: higher is easier; 121.22 is the most, 60 to 70 plain.
 * Source: Flesch 1948, J Appl Psychol 32:221–33.
 * Not: any other language.
 * @example fleschReadingEase({ words: 5, sentences: 1, syllables: 7 }) // 83.32
 */
export function fleschReadingEase(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('fleschReadingEase', counts);
  return 206.835 - 1.015 * wordsPerSentence - 84.6 * syllablesPerWord;
}

/**
 * Flesch–Kincaid grade, English: 0.39·words/sentences + 11.8·syllables/words − 15.59.
 * Units: school years of the United States; −3.40 is the least.
 * Source: Kincaid, Fishburne, Rogers, Chissom 1975, Navy Research Branch Report 8-75.
 * Not: whether the words are known; "cord" and "adze" count the same.
 * @example fleschKincaidGrade({ words: 5, sentences: 1, syllables: 7 }) // 2.88
 */
export function fleschKincaidGrade(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('fleschKincaidGrade', counts);
  return 0.39 * wordsPerSentence + 11.8 * syllablesPerWord - 15.59;
}

/**
 * SMOG, English, precise form: 1.0430·√(polysyllables·30/sentences) + 3.1291.
 * Units: school years, ± 1.5.
 * Source: McLaughlin 1969, Journal of Reading 12(8):639–46.
 * Not: reliable below ten sentences; made for thirty.
 * @example smog({ words: 5, sentences: 1, polysyllables: 1 }) // 8.842
 */
export function smog(counts: Counted<'words' | 'sentences' | 'polysyllables'>): number {
  rates('smog', counts);
  return 1.043 * Math.sqrt((counts.polysyllables * 30) / counts.sentences) + 3.1291;
}

/**
 * SMOG by hand: the root of the nearest perfect square to the polysyllables of thirty sentences, plus 3.
 * Units: school years.
 * Source: McLaughlin 1969; the printed table gives 4 for no polysyllable at all (from memory).
 * @example smogByHand(64) // 11
 */
export function smogByHand(polysyllablesInThirtySentences: number): number {
  if (!(polysyllablesInThirtySentences >= 0)) {
    throw new RangeError(`domain/text › smogByHand: zero or more, saw ${polysyllablesInThirtySentences}`);
  }
  return polysyllablesInThirtySentences === 0 ? 4 : Math.round(Math.sqrt(polysyllablesInThirtySentences)) + 3;
}

/**
 * Fernández Huerta, Spanish: 206.84 − 60·syllables/words − 1.02·words/sentences.
 * Units: higher is easier.
 * Source: Fernández Huerta 1959, Consigna 214:29–32; read as words per sentence, not as the widespread slip
 * "sentences per 100 words" (Law 2011).
 * @example fernandezHuerta({ words: 5, sentences: 1, syllables: 7 }) // 117.74
 */
export function fernandezHuerta(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('fernandezHuerta', counts);
  return 206.84 - 60 * syllablesPerWord - 1.02 * wordsPerSentence;
}

/**
 * Szigriszt–Pazos, Spanish: 206.835 − 62.3·syllables/words − words/sentences. Its bands for health texts are
 * `inflesz` in bands.ts.
 * Units: higher is easier.
 * Source: Szigriszt 1993, thesis, Universidad Complutense de Madrid; Barrio-Cantalejo 2008, An Sist Sanit
 * Navar 31(2):135–52.
 * @example szigriszt({ words: 5, sentences: 1, syllables: 7 }) // 114.615
 */
export function szigriszt(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('szigriszt', counts);
  return 206.835 - 62.3 * syllablesPerWord - wordsPerSentence;
}

/**
 * FOG for Polish: 0.4·(words/sentences + 100·fourSyllableWords/words).
 * Units: school years.
 * Source: Gunning 1952; hard words begin at four syllables: Pisarek 1969. The body of the formula for Polish
 * is from memory.
 * Not: proper names and endings that make a known word long.
 * @example fogPl({ words: 100, sentences: 10, fourSyllableWords: 5 }) // 6
 */
export function fogPl(counts: Counted<'words' | 'sentences' | 'fourSyllableWords'>): number {
  const { wordsPerSentence } = rates('fogPl', counts);
  return 0.4 * (wordsPerSentence + (100 * counts.fourSyllableWords) / counts.words);
}

/**
 * Gulpease, Italian: 89 + (300·sentences − 10·letters)/words.
 * Units: 0 to 100, higher is easier; short sentences go above 100.
 * Source: Lucisano & Piemontese 1988.
 * Not: some programs count every mark that is no space; here only letters count.
 * @example gulpease({ words: 5, sentences: 1, letters: 24 }) // 101
 */
export function gulpease(counts: Counted<'words' | 'sentences' | 'letters'>): number {
  rates('gulpease', counts);
  return 89 + (300 * counts.sentences - 10 * counts.letters) / counts.words;
}

/**
 * LIX, made for Swedish, used for many: words/sentences + 100·longWords/words (long: more than six letters).
 * Units: below 30 very easy, above 60 very hard.
 * Source: Björnsson 1968.
 * @example lix({ words: 5, sentences: 1, longWords: 1 }) // 25
 */
export function lix(counts: Counted<'words' | 'sentences' | 'longWords'>): number {
  const { wordsPerSentence } = rates('lix', counts);
  return wordsPerSentence + (100 * counts.longWords) / counts.words;
}

/**
 * Amstad, German: 180 − words/sentences − 58.5·syllables/words.
 * Units: higher is easier, read like Flesch.
 * Source: Amstad 1978.
 * @example amstad({ words: 5, sentences: 1, syllables: 7 }) // 93.1
 */
export function amstad(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('amstad', counts);
  return 180 - wordsPerSentence - 58.5 * syllablesPerWord;
}

/**
 * First Wiener Sachtextformel, German: 0.1935·MS + 0.1672·SL + 0.1297·IW − 0.0327·ES − 0.875, where MS, IW, ES
 * are per cent of words with three syllables or more, more than six letters, one syllable, and SL is words per
 * sentence.
 * Units: school years 4 to 15.
 * Source: Bamberger & Vanecek 1984; "more than six letters" from memory, one program takes six.
 * @example wienerSachtext({ words: 5, sentences: 1, polysyllables: 1, longWords: 1, monosyllables: 4 }) // 3.809
 */
export function wienerSachtext(
  counts: Counted<'words' | 'sentences' | 'polysyllables' | 'longWords' | 'monosyllables'>,
): number {
  const { wordsPerSentence } = rates('wienerSachtext', counts);
  const percent = (part: number) => (100 * part) / counts.words;
  return (
    0.1935 * percent(counts.polysyllables) +
    0.1672 * wordsPerSentence +
    0.1297 * percent(counts.longWords) -
    0.0327 * percent(counts.monosyllables) -
    0.875
  );
}

/**
 * Ateşman, Turkish: 198.825 − 40.175·syllables/words − 2.610·words/sentences.
 * Units: 1 to 100, higher is easier.
 * Source: Ateşman 1997, TÖMER Dil Dergisi 58:71–74; the coefficients are from memory.
 * @example atesman({ words: 5, sentences: 1, syllables: 7 }) // 129.53
 */
export function atesman(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('atesman', counts);
  return 198.825 - 40.175 * syllablesPerWord - 2.61 * wordsPerSentence;
}

/**
 * Flesch for Portuguese: 248.835 − 1.015·words/sentences − 84.6·syllables/words.
 * Units: higher is easier; 50 to 75 easy, 75 and up very easy (bands from memory).
 * Source: Martins, Ghiraldelo, Nunes, Oliveira 1996, ICMSC-USP Notas 28, as quoted by others.
 * @example fleschPortuguese({ words: 5, sentences: 1, syllables: 7 }) // 125.32
 */
export function fleschPortuguese(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('fleschPortuguese', counts);
  return 248.835 - 1.015 * wordsPerSentence - 84.6 * syllablesPerWord;
}

/**
 * Oborneva, Russian: 206.835 − 1.3·words/sentences − 60.1·syllables/words; syllables are the vowels аеёиоуыэюя.
 * Units: higher is easier, read like Flesch.
 * Source: Oborneva 2006, as quoted by others; the original may print 206.836 (from memory).
 * @example oborneva({ words: 5, sentences: 1, syllables: 7 }) // 116.195
 */
export function oborneva(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('oborneva', counts);
  return 206.835 - 1.3 * wordsPerSentence - 60.1 * syllablesPerWord;
}

/**
 * Kandel & Moles, French: 209 − 1.15·words/sentences − 68·syllables/words.
 * Units: higher is easier, read like Flesch.
 * Source: Kandel & Moles 1958, Cahiers d'études de radio-télévision 19:253–74 (citation from memory). Another
 * "French Flesch" with 207, 1.015 and 73.6 exists; this is not it.
 * @example kandelMoles({ words: 5, sentences: 1, syllables: 7 }) // 108.05
 */
export function kandelMoles(counts: Counted<'words' | 'sentences' | 'syllables'>): number {
  const { wordsPerSentence, syllablesPerWord } = syllableRates('kandelMoles', counts);
  return 209 - 1.15 * wordsPerSentence - 68 * syllablesPerWord;
}
