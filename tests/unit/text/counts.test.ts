import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  countText,
  lettersIn,
  sentenceLengths,
  sentencesOf,
  sentenceWordCounts,
  wordsOf,
} from '#domain/text/counts.ts';

describe('words', () => {
  it('holds apostrophes and hyphens inside a word, never dashes', () => {
    expect(wordsOf("The nurses' desk – a nurse's set-up, please.")).toEqual([
      'The',
      'nurses',
      'desk',
      'a',
      "nurse's",
      'set-up',
      'please',
    ]);
  });

  it('holds numbers and clock times together', () => {
    expect(wordsOf('At 3:10 the weight is 2.5 kg, 10,000 g.')).toEqual([
      'At',
      '3:10',
      'the',
      'weight',
      'is',
      '2.5',
      'kg',
      '10,000',
      'g',
    ]);
  });

  it('parts words where a space was forgotten after a full stop', () => {
    expect(wordsOf('Go to bed.Then sleep,child')).toEqual(['Go', 'to', 'bed', 'Then', 'sleep', 'child']);
  });

  it('reads Arabic with vowel marks, Polish, Hindi and Urdu', () => {
    expect(wordsOf('القدمُ باردةٌ، اضغطوا الزر.')).toHaveLength(4);
    expect(wordsOf('Stopa jest zimna — wciśnij przycisk')).toHaveLength(5);
    expect(wordsOf('पैर ठंडा है।')).toHaveLength(3);
    expect(wordsOf('پاؤں ٹھنڈا ہے۔')).toHaveLength(3);
  });

  it('finds none in marks alone', () => {
    expect(wordsOf(' … – ? ')).toEqual([]);
  });
});

describe('sentences', () => {
  it('end with the marks of many scripts or a line break', () => {
    expect(sentencesOf('Wet? Tell us!\nNow')).toEqual(['Wet', 'Tell us', 'Now']);
    expect(sentencesOf('هل القدم باردة؟ اضغطوا الزر.')).toHaveLength(2);
    expect(sentencesOf('¿Está fría? Llame.')).toHaveLength(2);
    expect(sentencesOf('पैर ठंडा है। बटन दबाएँ।')).toHaveLength(2);
  });

  it('do not end inside a number', () => {
    expect(sentencesOf('The weight is 2.5 kg. It hangs.')).toHaveLength(2);
    expect(sentencesOf('It is 3. Look.')).toHaveLength(2);
  });

  it('tell their words one by one', () => {
    expect(sentenceWordCounts('Wet? Tell us. The leg bandage is wet.')).toEqual([1, 2, 5]);
    expect(sentenceLengths([1, 2, 6])).toEqual({ mean: 3, longest: 6 });
    expect(sentenceLengths([])).toEqual({ mean: 0, longest: 0 });
  });
});

describe('letters', () => {
  it('are letters of any script, no digits, no marks', () => {
    expect(lettersIn('Set-up 3')).toBe(5);
    expect(lettersIn('łóżko')).toBe(5);
    expect(lettersIn('قَدَم')).toBe(3);
  });
});

describe('a counted text', () => {
  const bySign = (word: string) => word.length; // as many syllables as letters, to see every class

  it('sorts words by their syllables and letters', () => {
    expect(countText('I am old. Take seven glasses', bySign)).toEqual({
      sentences: 2,
      words: 6,
      letters: 22,
      syllables: 22,
      monosyllables: 1,
      polysyllables: 4,
      fourSyllableWords: 3,
      longWords: 1,
    });
  });

  it('gives every word at least one syllable, also a number', () => {
    expect(countText('3 4', () => 0)).toMatchObject({ words: 2, syllables: 2, monosyllables: 2 });
  });

  it('two texts pooled have the sum of each count', () => {
    const sentence = fc
      .array(fc.constantFrom('cord', 'rueda', 'stopa', 'قدم', '3'), { minLength: 1, maxLength: 9 })
      .map((words) => `${words.join(' ')}.`);
    fc.assert(
      fc.property(sentence, sentence, (a, b) => {
        const [one, two, both] = [a, b, `${a} ${b}`].map((text) => countText(text, bySign));
        for (const name of Object.keys(both!) as (keyof typeof both & keyof ReturnType<typeof countText>)[]) {
          expect(both![name]).toBe(one![name] + two![name]);
        }
      }),
    );
  });
});
