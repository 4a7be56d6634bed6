import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { TextCounts } from '#domain/text/counts.ts';
import * as measures from '#domain/text/measures.ts';

const { smogByHand, ...ofCounts } = measures;
const all = Object.entries(ofCounts) as [string, (counts: TextCounts) => number][];

/** Measures that rise when a text gets harder; the others fall. */
const GRADES = new Set(['fleschKincaidGrade', 'smog', 'fogPl', 'lix', 'wienerSachtext']);

const counts = fc
  .record({ sentences: fc.integer({ min: 1, max: 50 }), perSentence: fc.integer({ min: 1, max: 40 }) })
  .chain(({ sentences, perSentence }) => {
    const words = sentences * perSentence;
    return fc.record({
      sentences: fc.constant(sentences),
      words: fc.constant(words),
      letters: fc.integer({ min: words, max: words * 9 }),
      syllables: fc.integer({ min: words, max: words * 4 }),
      monosyllables: fc.integer({ min: 0, max: words }),
      polysyllables: fc.integer({ min: 0, max: words }),
      fourSyllableWords: fc.integer({ min: 0, max: words }),
      longWords: fc.integer({ min: 0, max: words }),
    });
  });

describe.each(all)('%s', (name, measure) => {
  it('refuses a text without words or sentences, and names itself', () => {
    const empty: TextCounts = {
      sentences: 0,
      words: 0,
      letters: 0,
      syllables: 0,
      monosyllables: 0,
      polysyllables: 0,
      fourSyllableWords: 0,
      longWords: 0,
    };
    expect(() => measure(empty)).toThrow(name);
    expect(() => measure({ ...empty, words: 3 })).toThrow(RangeError);
  });

  it('longer words never make a text easier', () => {
    fc.assert(
      fc.property(counts, (text) => {
        const longer: TextCounts = {
          ...text,
          letters: text.letters + 5,
          syllables: text.syllables + 2,
          monosyllables: Math.max(0, text.monosyllables - 1),
          polysyllables: text.polysyllables + 1,
          fourSyllableWords: text.fourSyllableWords + 1,
          longWords: text.longWords + 1,
        };
        const change = measure(longer) - measure(text);
        expect(GRADES.has(name) ? change : -change).toBeGreaterThan(0);
      }),
    );
  });

  it('one full stop fewer never makes a text easier', () => {
    fc.assert(
      fc.property(counts, (text) => {
        fc.pre(text.sentences > 1);
        const change = measure({ ...text, sentences: text.sentences - 1 }) - measure(text);
        expect(GRADES.has(name) ? change : -change).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('smogByHand', () => {
  it('refuses less than nothing', () => {
    expect(() => smogByHand(-1)).toThrow('smogByHand');
    expect(() => smogByHand(Number.NaN)).toThrow(RangeError);
  });
});
