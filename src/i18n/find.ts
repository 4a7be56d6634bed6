/** Finds by words as they are typed: in parts, with a slip, with or without accents. */
import MiniSearch from 'minisearch';
import { folded } from '#domain/text/fold.ts';

/** What can be found: its names weigh more than the words that people may type for it. */
export interface Findable {
  id: string;
  title: string;
  question: string;
  words: string;
}

/** Shorter ones stand in every question and find nothing by themselves. */
const LEAST_LETTERS = 2;
/** A word that long may have one letter in five wrong. */
const LONG = 4;

/**
 * A search over texts in one language.
 *
 * Shape: what can be found -> a function from what was typed to ids, the best first; none for nothing typed.
 */
export function finder<T extends Findable>(all: readonly T[]): (typed: string) => T['id'][] {
  const index = new MiniSearch<T>({
    fields: ['title', 'question', 'words'],
    tokenize: (text) => text.split(/[^\p{L}\p{N}\p{M}]+/u).filter((word) => word.length >= LEAST_LETTERS),
    processTerm: (word) => folded(word) || null,
    searchOptions: {
      boost: { title: 2, question: 1.5 },
      prefix: true,
      fuzzy: (word) => (word.length > LONG ? 0.2 : false),
    },
  });
  index.addAll(all);
  return (typed) => index.search(typed).map(({ id }) => id as T['id']);
}
