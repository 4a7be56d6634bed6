import { loadWords } from '#i18n/words.ts';

export const load = async ({ params }) => ({
  words: await loadWords(params.locale, ['play', 'ideas']),
  /** Opened before ten, it is for a dark room all the same. */
  dark: true,
});
