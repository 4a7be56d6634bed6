import { loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  return { words: await loadWords(params.locale, []) };
}
