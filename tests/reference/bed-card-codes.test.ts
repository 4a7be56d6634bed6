/**
 * Codes of bed cards that were issued, and the card each stands for: the list only ever grows. Beside our own decoder
 * it is read by a second one, written here from the description of the bits in domain/bed-card/version-1 and
 * domain/bed-card/letters, which shares nothing with them; and by a reader of printed codes that is not ours.
 */
import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import type { BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';

type Row = { code: string; card: BedCard };
const issued = JSON.parse(readFileSync(new URL('./bed-card-codes.json', import.meta.url), 'utf8')) as Record<
  string,
  Row[]
>;
const rows = Object.values(issued).flat();
const VERSION_1 = issued['1']!;

/** The alphabet of Crockford's base 32 (from memory): digits, then letters without I, L, O and U. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Product of two elements: as polynomials over two elements, then the remainder by x⁵ + x² + 1. */
function product(a: number, b: number): number {
  let sum = 0n;
  for (let i = 0n; i < 5n; i++) if ((BigInt(b) >> i) & 1n) sum ^= BigInt(a) << i;
  for (let degree = 8n; degree >= 5n; degree--) if ((sum >> degree) & 1n) sum ^= 37n << (degree - 5n);
  return Number(sum);
}
const power = (x: number, exponent: number) => Array.from({ length: exponent }, () => x).reduce(product, 1);

/** Σ letter · place^j for j = 0 to 3, the check letters at the places 28 to 31: the same four numbers in every code. */
function sums(code: string): number[] {
  const letters = [...code.replaceAll('-', '')].map((letter) => LETTERS.indexOf(letter));
  return [0, 1, 2, 3].map((j) =>
    letters.reduce((all, letter, i) => {
      const place = i < letters.length - 4 ? i : 32 - (letters.length - i);
      return all ^ product(letter, power(place, j));
    }, 0),
  );
}
/** What those four numbers are where only the fixed letters 11, 10, 27 and 14 stand at the check places. */
const OURS = [0, 1, 2, 3].map((j) =>
  [11, 10, 27, 14].reduce((all, letter, k) => all ^ product(letter, power(28 + k, j)), 0),
);

const BELL = ['cord', 'button', 'desk', 'other'];
const STEP = ['call-out', 'go-to-desk', 'second-button', 'emergency-pull'];

/** Reads the bits as one long number, from its top. */
function readAgain(code: string): Record<string, unknown> {
  const letters = [...code.replaceAll('-', '')].slice(0, -4);
  let bits = letters.map((letter) => LETTERS.indexOf(letter).toString(2).padStart(5, '0')).join('');
  const take = (count: number) => {
    const value = Number.parseInt(bits.slice(0, count), 2);
    bits = bits.slice(count);
    return value;
  };
  expect(take(5)).toBe(1);
  const [head, numbing, fasting] = [take(1), take(1), take(1)];
  const tail = take(2);
  const card: Record<string, unknown> = {
    side: ['left', 'right'][take(1)],
    bell: BELL[take(3)],
    secondStep: STEP[take(3)],
    secondStepMinutes: take(4) + 2,
  };
  const age = take(6);
  if (age > 17) card.age = { years: age < 30 ? 1 : 2, months: (age - 18) % 12 };
  else if (age > 0) card.age = { years: age };
  const position = [undefined, 'flat', 'a-little', 'propped'][take(3)];
  if (position) card.head = position;
  card.canTell = ['yes', 'partly', 'no'][take(2)];
  card.set = ['bandage', 'taped'][take(2)];
  const night = [undefined, 'grown-up', 'nobody'][take(2)];
  if (night) card.atNight = night;
  card.compare = take(1) === 1;
  card.noWeeHours = take(3) + 6;
  card.medicineWaitMinutes = take(6) + 30;
  card.ownThingsOnly = take(1) === 1;
  card.hands = ['both', 'left', 'right', 'none'][take(3)];
  card.drip = ['none', 'left', 'right'][take(3)];
  const quarter = take(22);
  card.madeAt = quarter * 15;
  card.off = take(7) * 15 - 720;
  const language = take(15);
  const places = [Math.floor(language / 729), Math.floor(language / 27) % 27, language % 27];
  card.wardLanguage = places
    .map((place) => ' abcdefghijklmnopqrstuvwxyz'[place])
    .join('')
    .trim();
  if (head) card.headUntil = (quarter + take(8)) * 15;
  if (numbing) card.numbingUntil = (quarter + take(8)) * 15;
  if (fasting) card.nothingByMouthUntil = (quarter + take(8)) * 15;
  const capital = (value: number) => 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'[value]!;
  if (tail === 1) {
    const region = take(11);
    const twoLetters = capital(Math.floor(region / 26)) + capital(region % 26);
    card.wardLanguage += `-${region < 676 ? twoLetters : String(region - 676).padStart(3, '0')}`;
  }
  if (tail === 2) {
    let script = take(19);
    let text = '';
    for (let i = 0; i < 4; i++) {
      text = capital(script % 26) + text;
      script = Math.floor(script / 26);
    }
    card.wardLanguage += `-${text[0]}${text.slice(1).toLowerCase()}`;
  }
  expect(Number(bits || '0')).toBe(0);
  return card;
}

test('the list holds every choice, and no code twice', () => {
  expect(VERSION_1.length).toBeGreaterThanOrEqual(40);
  expect(new Set(rows.map(({ code }) => code)).size).toBe(rows.length);
  const seen = (field: keyof BedCard) => new Set(VERSION_1.map(({ card }) => card[field])).size;
  expect(seen('bell')).toBe(BELL.length);
  expect(seen('secondStep')).toBe(STEP.length);
  expect([seen('side'), seen('head'), seen('canTell'), seen('set'), seen('atNight')]).toEqual([
    2, 4, 3, 2, 3,
  ]);
  expect([seen('hands'), seen('drip'), seen('compare'), seen('ownThingsOnly')]).toEqual([4, 3, 2, 2]);
  expect(new Set(VERSION_1.map(({ code }) => code.length))).toEqual(new Set([29, 34, 39]));
});

describe.each(rows)('$code, once issued,', ({ code, card }) => {
  test('is read as its card for ever', () => {
    expect(decodeBedCard(code)).toEqual({ ok: true, card });
  });

  test('is what its card is written as today', () => {
    expect(encodeBedCard(card)).toBe(code);
  });
});

describe.each(VERSION_1)('$code by a second reading', ({ code, card }) => {
  test('says the same', () => {
    expect(readAgain(code)).toEqual(card);
  });

  test('has the check of a card', () => {
    expect(sums(code)).toEqual(OURS);
  });
});

/** A printed code as a camera would see it: four points to a square, and the quiet margin around it. */
function picture(text: string): { pixels: Uint8ClampedArray; width: number; version: number } {
  const { data, size, version } = encode(text, { ecc: 'M', border: 4 });
  const width = size * 4;
  const pixels = new Uint8ClampedArray(width * width * 4);
  for (let y = 0; y < width; y++)
    for (let x = 0; x < width; x++) {
      const light = data[Math.floor(y / 4)]![Math.floor(x / 4)] ? 0 : 255;
      pixels.set([light, light, light, 255], (y * width + x) * 4);
    }
  return { pixels, width, version };
}

describe('printed as a code', () => {
  test.each(rows)('$code is read by a reader that is not ours', ({ code }) => {
    const { pixels, width } = picture(code);
    expect(jsQR(pixels, width, width)?.data).toBe(code);
  });

  test('is small: 29 squares a side at most, with a seventh of it to spare', () => {
    // Source: ISO/IEC 18004, version n has 17 + 4n squares a side; 61 capitals, digits and dashes fit version 3 at M
    for (const { code } of rows) expect(picture(code).version).toBeLessThanOrEqual(3);
  });
});
