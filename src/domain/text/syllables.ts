/** Syllables by rule, for languages whose spelling tells them. */

const STRONG = 'aeoáéó';
const WEAK = 'iuü';
const WEAK_STRESSED = 'íú';
const SPANISH_VOWELS = STRONG + WEAK + WEAK_STRESSED;

// u is silent in que, qui, gue, gui; h between vowels does not part them; y sounds as a vowel unless one follows.
function spanishSounds(word: string): string {
  return word
    .normalize('NFC')
    .toLowerCase()
    .replace(/qu(?=[eiéí])/g, 'k')
    .replace(/gu(?=[eiéí])/g, 'g')
    .replace(/(?<=[aeouáéóúiíü])h(?=[aeouáéóúiíü])/g, '')
    .replace(/y(?![aeouáéóúiíü])/g, 'i');
}

function spanishParts(before: string, after: string): boolean {
  const strong = (letter: string) => STRONG.includes(letter);
  if (strong(before) && strong(after)) return true;
  if (strong(before) && WEAK_STRESSED.includes(after)) return true;
  if (WEAK_STRESSED.includes(before) && strong(after)) return true;
  return before === after;
}

/**
 * Syllables of a Spanish word: each run of vowels is one, unless two strong vowels meet, a stressed í or ú
 * meets a strong vowel, or a vowel meets itself.
 * Source: hiatus and diphthong as in the Ortografía of the Spanish academies (2010), from memory.
 * Not: words where custom parts two weak vowels without an accent (guion counts 1, many say 2).
 * @example syllablesEs('enfermería') // 5
 */
export function syllablesEs(word: string): number {
  const sounds = spanishSounds(word);
  let count = 0;
  let before = '';
  for (const letter of sounds) {
    const vowel = SPANISH_VOWELS.includes(letter);
    if (vowel && (before === '' || spanishParts(before, letter))) count += 1;
    before = vowel ? letter : '';
  }
  return Math.max(1, count);
}

const POLISH_VOWELS = /[aąeęioóuy]/g;

/**
 * Syllables of a Polish word: one for each vowel, where i before another vowel only softens the consonant,
 * and au, eu of borrowed words are one.
 * Source: rules of Polish spelling, from memory; checked against an outside word divider in tests.
 * Not: borrowed words that speak i before a vowel apart (biologia counts 4, some say 5).
 * @example syllablesPl('pielęgniarka') // 4
 */
export function syllablesPl(word: string): number {
  const sounds = word
    .normalize('NFC')
    .toLowerCase()
    .replace(/i(?=[aąeęoóu])/g, '')
    // after the prefixes na-, za- the u is its own (zauważyć, nauczyć), elsewhere au is one sound (auto, pauza)
    .replace(/(?<!^[nz])au/g, 'a')
    .replace(/^eu|(?<=n)eu(?=r)|(?<=p)eu(?=t)/g, 'e');
  return Math.max(1, sounds.match(POLISH_VOWELS)?.length ?? 0);
}
