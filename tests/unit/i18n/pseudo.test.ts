import { describe, expect, test } from 'vitest';
import { pseudo } from '#i18n/pseudo.ts';
import { english, readJson } from '../../helpers/locales.ts';

const placeholders = (text: string) => text.match(/\{\{.*?\}\}/g) ?? [];

describe.each(['en-XA', 'en-XB'])('the pseudo-language %s', (locale) => {
  test('keeps every placeholder of every text', () => {
    const held = Object.values(english).filter((text) => placeholders(text).length > 0);
    expect(held.length).toBeGreaterThan(5);
    for (const text of held) expect(placeholders(pseudo(text, locale))).toEqual(placeholders(text));
  });

  test('keeps every key and changes every text', () => {
    const words = readJson('locales/en/look.json') as Record<string, unknown>;
    const compare = (a: unknown, b: unknown): void => {
      if (typeof a === 'string') expect(b).not.toBe(a);
      else {
        expect(Object.keys(b as object)).toEqual(Object.keys(a as object));
        for (const key of Object.keys(a as object))
          compare((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]);
      }
    };
    compare(words, pseudo(words, locale));
  });
});

test('the stretched one is about a third longer, bracketed at both ends and accented', () => {
  expect(pseudo('Toes are {{count}} cold', 'en-XA')).toBe('[Ţöēš årē {{count}} çöld ·······]');
});

test('the right-to-left one sets the words from the right, and ends that again', () => {
  expect(pseudo('Toes', 'en-XB')).toBe('\u202eToes\u202c');
});
