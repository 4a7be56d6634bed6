/** A number as someone typed it, in any of the ways people write one. */

const DIGITS = [0x30, 0x660, 0x6f0, 0xff10] as const;

/**
 * Reads a typed number with a point or a comma, in Western, Arabic-Indic, Persian or full-width digits.
 * Errors: undefined where it is not one plain number; 1,234.5 is refused, for nobody here weighs a thousand.
 * @example typedNumber('٢٫٤') // 2.4
 */
export function typedNumber(text: string): number | undefined {
  const western = [...text.trim()]
    .map((letter) => {
      const code = letter.codePointAt(0)!;
      const zero = DIGITS.find((start) => code >= start && code <= start + 9);
      return zero === undefined ? letter : String(code - zero);
    })
    .join('')
    .replace(/[,٫]/u, '.');
  return /^\d{1,4}(\.\d{1,3})?$/u.test(western) ? Number(western) : undefined;
}
