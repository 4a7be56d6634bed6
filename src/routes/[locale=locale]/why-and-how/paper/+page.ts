import { TOPIC_AREAS } from '#content/topics.ts';
import { loadWords } from '#i18n/words.ts';

export const load = async ({ params }) => ({
  words: await loadWords(params.locale, ['why', ...TOPIC_AREAS]),
});
