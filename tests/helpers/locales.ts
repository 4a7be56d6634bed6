import { readFileSync } from 'node:fs';
import path from 'node:path';
import { languages, textsOf, type Texts } from '../../.ci/locales.mjs';

/** The checkout's own folder. */
export const root = path.resolve(import.meta.dirname, '../..');

export const english: Texts = textsOf(root, 'en');

/** Every language with a file, and its texts under "area:key". */
export const everyLanguage: readonly (readonly [string, Texts])[] = languages(root).map(
  (lang) => [lang, textsOf(root, lang)] as const,
);

/** A copy of a language's texts with some of them replaced, to try a rule on a text that breaks it. */
export function planted(texts: Texts, change: Texts): Texts {
  return { ...texts, ...change };
}

export function readJson(file: string): unknown {
  return JSON.parse(readFileSync(path.join(root, file), 'utf8'));
}
