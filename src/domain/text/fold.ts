/** How a typed word is compared: as people type it, without the marks that a keyboard or a hurry leaves out. */

/** Letters that no decomposition brings back to their plain form. */
const PLAIN: Readonly<Record<string, string>> = { ł: 'l', ø: 'o', đ: 'd', ħ: 'h', ß: 'ss', æ: 'ae', œ: 'oe' };
/** Forms of one Arabic letter that are typed for each other. */
const ARABIC: Readonly<Record<string, string>> = {
  ...{ أ: 'ا', إ: 'ا', آ: 'ا', ٱ: 'ا', ى: 'ي', ئ: 'ي', ؤ: 'و', ة: 'ه' },
};

/**
 * A text in its plainest letters: small, without accents, dots, vowel signs and stretching, digits as 0–9.
 *
 * Shape: any text -> a text of the same words; empty for a text of marks alone.
 * Source: Unicode canonical decomposition (UAX #15); the Arabic forms are those typed for each other (common practice).
 *
 * @example folded('Łóżko') // 'lozko'
 */
export function folded(text: string): string {
  return (
    [...text.toLowerCase()]
      .map((letter) => ARABIC[letter] ?? PLAIN[letter] ?? letter)
      .join('')
      .normalize('NFD')
      // accents, vowel signs, and the line that stretches an Arabic word
      .replace(/[\p{M}\u0640]/gu, '')
      .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
  );
}
