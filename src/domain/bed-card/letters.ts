/**
 * The letters of a code: how five bits are written, how what people type is read, and the check at the end.
 *
 * The check is a Reed–Solomon code over the field of 32 elements. A letter at place i is the value of one polynomial
 * at the field's element i; the last group is its value at the elements 28 to 31. Two codes that differ in fewer than
 * five letters do not exist, so up to four wrong letters, wherever they are, are always found.
 * Source: Reed and Solomon 1960, "Polynomial codes over certain finite fields" (from memory).
 */

/** No I, L, O and U: too near to 1, 1, 0 and V. */
export const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
export const GROUP = 4;
export const MOST_LETTERS = 32;
/** Letters of the check: the last group. */
export const CHECK = GROUP;
const MOST_CONTENT = MOST_LETTERS - CHECK;
/** Added to the check so that letters of another purpose, made in the same way, are not taken for a card. */
const OURS = [11, 10, 27, 14];

/** Product in the field of 32 elements, made from x⁵ + x² + 1. */
function times(a: number, b: number): number {
  let product = 0;
  for (let bit = 0; bit < 5; bit++) {
    if ((b >> bit) & 1) product ^= a << bit;
  }
  for (let bit = 8; bit >= 5; bit--) if ((product >> bit) & 1) product ^= 0b100101 << (bit - 5);
  return product;
}
const PRODUCTS = Uint8Array.from({ length: 32 * 32 }, (_, pair) => times(pair >> 5, pair & 31));
const product = (a: number, b: number): number => PRODUCTS[(a << 5) | b]!;
const ELEMENTS = Array.from({ length: 32 }, (_, element) => element);
const divided = (a: number, b: number): number =>
  ELEMENTS.findIndex((quotient) => product(quotient, b) === a);

/** What one unit at a place adds to each check letter: Lagrange's polynomials through the check places. */
const COLUMNS: readonly (readonly number[])[] = Array.from({ length: MOST_CONTENT }, (_, place) =>
  [0, 1, 2, 3].map((k) =>
    [0, 1, 2, 3]
      .filter((other) => other !== k)
      .reduce(
        (all, other) =>
          product(all, divided(place ^ (MOST_CONTENT + other), (MOST_CONTENT + k) ^ (MOST_CONTENT + other))),
        1,
      ),
  ),
);

/** The four check letters that end a code. Shape: letters as numbers 0–31, at most 28. */
export function checkOf(content: readonly number[]): number[] {
  const check = [...OURS];
  content.forEach((letter, place) => {
    for (let k = 0; k < CHECK; k++) check[k]! ^= product(letter, COLUMNS[place]![k]!);
  });
  return check;
}

/** How far the check letters are from what they should be: four zeros where the code is whole. */
function distance(letters: readonly number[]): number[] {
  const check = checkOf(letters.slice(0, -CHECK));
  return check.map((letter, k) => letter ^ letters[letters.length - CHECK + k]!);
}
/** Whether the check letters at the end are those of what stands before them. */
export const isWhole = (letters: readonly number[]): boolean => distance(letters).every((part) => part === 0);

/**
 * The place of one wrong letter, or of the first of two neighbours that changed places, where that alone explains
 * why the check fails. It only points: putting it right is left to the eye that compares.
 */
export function placeOfSlip(letters: readonly number[]): number | undefined {
  const off = distance(letters);
  const content = letters.length - CHECK;
  const column = (place: number): readonly number[] =>
    place < content ? COLUMNS[place]! : [0, 1, 2, 3].map((k) => (k === place - content ? 1 : 0));
  const explains = (parts: readonly number[]): number | undefined => {
    const k = parts.findIndex((part) => part !== 0);
    const size = divided(off[k]!, parts[k]!);
    return size && parts.every((part, at) => product(size, part) === off[at]) ? size : undefined;
  };
  const places = letters.map((_, place) => place);
  const wrong = places.find((place) => explains(column(place)) !== undefined);
  if (wrong !== undefined) return wrong;
  return places.find((place) => {
    const next = column(place + 1);
    const size = explains(column(place).map((part, k) => part ^ next[k]!));
    return size === (letters[place]! ^ letters[place + 1]!);
  });
}

/** Letters as people see them: groups of four, joined by dashes. */
export function written(letters: readonly number[]): string {
  const text = letters.map((letter) => ALPHABET[letter]).join('');
  return text.replaceAll(/.{4}(?=.)/g, '$&-');
}

/** Spaces, dashes, and marks that nobody sees, such as those that turn the reading direction. */
const BETWEEN = /[\s\p{Z}\p{Pd}\p{Cf}\u2212]/u;
/** Arabic-Indic digits, and those of Persian and Urdu. */
const DIGITS_FROM = [0x0660, 0x06f0];
const LOOKALIKES: Readonly<Record<string, string>> = { O: '0', I: '1', L: '1', U: 'V' };
/** A letter that is none of ours. */
export const STRANGE = -1;

/** What was typed, scanned or pasted, letter by letter; case, width, spaces and dashes do not matter. */
export function lettersOf(text: string): number[] {
  const letters: number[] = [];
  for (const typed of text.normalize('NFKC').toUpperCase()) {
    if (BETWEEN.test(typed)) continue;
    const point = typed.codePointAt(0)!;
    const zero = DIGITS_FROM.find((first) => point >= first && point < first + 10);
    const letter = zero === undefined ? (LOOKALIKES[typed] ?? typed) : String(point - zero);
    letters.push(ALPHABET.indexOf(letter));
  }
  return letters;
}
