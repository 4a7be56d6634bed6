// What a note is called, with a translator that gives back its keys.
import { expect, it } from 'vitest';
import type { Entry } from '#domain/notes/entries.ts';
import { LOCALES } from '#i18n/locales.ts';
import type { Words } from '#i18n/words.ts';
import { noteText, writtenText } from '#ui/note-words.ts';

const wordsOf = (locale: string) =>
  ({ locale, t: (key: string) => key, review: 'draft' }) as unknown as Words;
const noted = (note: object) => ({ id: 'a1b2c3-1', t: 0, off: 0, ...note }) as unknown as Entry;

it('two words of a note stand apart by the comma of their language', () => {
  const drink = noted({ kind: 'drink', amount: 'half', what: 'water' });
  for (const { code } of LOCALES)
    expect(noteText(wordsOf(code), drink, [])).toBe(
      `notes:kind.drink: notes:choice.drink.amount.half${code === 'ar' ? '،' : ','} notes:choice.drink.what.water`,
    );
});

it('that no nurse has been told is said of what a family saw, and not of what a nurse did or heard', () => {
  const says = (note: object) => writtenText(wordsOf('en'), noted(note));
  for (const note of [
    ...['told', 'nurse-came', 'nurse-looked', 'medicine-told'].map((kind) => ({ kind })),
    ...['bandage', 'sheets', 'x-ray', 'physio', 'round', 'explained'].map((what) => ({ kind: 'care', what })),
    { kind: 'answer', question: 'a1b2c3-2', what: 'later' },
  ])
    expect(says(note), JSON.stringify(note)).toBe('common:written.only');
  for (const note of [
    { kind: 'sign', sign: 'toes-cool', answer: 'different' },
    { kind: 'sore', value: 2, scale: 'steps', when: 'rest' },
    { kind: 'care', what: 'wash' },
    ...['bell', 'asked-for-medicine', 'wee', 'question', 'bed-note', 'of-a-later-version'].map((kind) => ({
      kind,
    })),
  ])
    expect(says(note), JSON.stringify(note)).toBe('steps:written.done');
});
