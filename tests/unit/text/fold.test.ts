import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { folded } from '#domain/text/fold.ts';

describe('a word as it is typed in a hurry', () => {
  // Unicode canonical decompositions (UAX #15); letters without one are those of the languages of the site
  it.each([
    ['Łóżko', 'lozko'],
    ['niñez', 'ninez'],
    ['PINGÜINO', 'pinguino'],
    ['źdźbło', 'zdzblo'],
    ['أَصابِعُ', 'اصابع'],
    ['إبرة', 'ابره'],
    ['مُستشفى', 'مستشفي'],
    ['كـــبير', 'كبير'],
    ['٣ أيام', '3 ايام'],
    ['Ǿ', 'o'],
    ['İ', 'i'],
  ])('%s is found as %s', (typed, plain) => expect(folded(typed)).toBe(plain));

  it('folding twice is folding once, and capital or small letters are the same', () =>
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(folded(folded(text))).toBe(folded(text));
        expect(folded(text)).not.toMatch(/[\p{M}\u0640]/u);
      }),
    ));

  it('leaves letters and their order alone', () =>
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z0-9 ]*$/), (text) => {
        expect(folded(text)).toBe(text);
      }),
    ));
});
