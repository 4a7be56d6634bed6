import { loadWords } from '#i18n/words.ts';

export const load = async ({ params }) => ({
  words: await loadWords(params.locale, ['day']),
  child: true,
  /** Told at bedtime, in a room with one small lamp. */
  dark: true,
});
