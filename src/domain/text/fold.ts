/** How a typed word is compared: as people type it, without the marks that a keyboard or a hurry leaves out. */

/** Letters that no decomposition brings back to their plain form. */
const PLAIN: Readonly<Record<string, string>> = { ł: 'l', ø: 'o', đ: 'd', ħ: 'h', ß: 'ss', æ: 'ae', œ: 'oe' };
/** Accents, vowel marks, and the line that stretches an Arabic word. */
const MARKS = /[\p{M}\u0640]/gu;
/** Forms of one Arabic letter that are typed for each other. */
const ARABIC: Readonly<Record<string, string>> = { ٱ: 'ا', ى: 'ي', ة: 'ه' };

/**
 * A text in its plainest letters: small, without accents, dots, vowel marks and stretching, digits as 0–9.
 *
 * Shape: any text -> a text of the same words; empty for a text of marks alone.
 * Source: Unicode canonical decomposition (UAX #15); the Arabic forms are those typed for each other (common practice).
 *
 * @example folded('Łóżko') // 'lozko'
 */
export function folded(text: string): string {
  // taken apart first: a letter with two marks may hide one that is in the lists
  return [...text.toLowerCase().normalize('NFD')]
    .map((letter) => ARABIC[letter] ?? PLAIN[letter] ?? letter)
    .join('')
    .replace(MARKS, '')
    .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660));
}
