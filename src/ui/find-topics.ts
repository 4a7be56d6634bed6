/** Finds topics by words as they are typed: in parts, with a slip, with or without accents. */
import MiniSearch from 'minisearch';
import type { TopicId } from '#content/topics.ts';
import { folded } from '#domain/text/fold.ts';

export interface Findable {
  id: TopicId;
  title: string;
  question: string;
  words: string;
}

/** Words that every question has: they find nothing by themselves. */
const LEAST_LETTERS = 2;

/** A search over topics in one language. */
export function finder(topics: readonly Findable[]): (typed: string) => TopicId[] {
  const index = new MiniSearch<Findable>({
    fields: ['title', 'question', 'words'],
    // spaces and marks end a word in every script of the site
    tokenize: (text) => text.split(/[^\p{L}\p{N}\p{M}]+/u).filter((word) => word.length >= LEAST_LETTERS),
    processTerm: (word) => folded(word) || null,
    searchOptions: {
      boost: { title: 2, question: 1.5 },
      prefix: true,
      fuzzy: (word) => (word.length > 4 ? 0.2 : false),
    },
  });
  index.addAll(topics);
  return (typed) => index.search(typed).map(({ id }) => id as TopicId);
}
