import { error } from '@sveltejs/kit';
import { TOPIC_IDS, areaOf, type TopicId } from '#content/topics.ts';
import { loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const topic = TOPIC_IDS.find((id): id is TopicId => id === params.topic);
  if (!topic) error(404);
  return { topic, words: await loadWords(params.locale, ['why', areaOf(topic)]) };
}
