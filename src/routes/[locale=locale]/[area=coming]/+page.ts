import { error } from '@sveltejs/kit';
import { COMING, type ComingArea } from '../../../params/coming.ts';
import { loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const area = COMING.find((name): name is ComingArea => name === params.area);
  if (!area) error(404);
  return { area, words: await loadWords(params.locale, ['pages']) };
}
