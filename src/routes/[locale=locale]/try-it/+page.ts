import { loadWords } from '#i18n/words.ts';

export const load = async ({ params }) => ({
  words: await loadWords(params.locale, ['pass', 'steps']),
});
