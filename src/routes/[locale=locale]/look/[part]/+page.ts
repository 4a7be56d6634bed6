import { error } from '@sveltejs/kit';
import { PART_IDS, type PartId } from '#content/parts.ts';
import { loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const part = PART_IDS.find((id): id is PartId => id === params.part);
  if (!part) error(404);
  return { part, words: await loadWords(params.locale, ['look', 'steps', 'signs']) };
}
