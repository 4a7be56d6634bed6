import { error } from '@sveltejs/kit';
import { LOOKS, signsOfLook } from '#content/signs.ts';
import { loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const step = Number(params.step);
  const look = LOOKS[step - 1];
  if (!look || params.step !== String(step)) error(404);
  return {
    step,
    look,
    signs: signsOfLook(look),
    words: await loadWords(params.locale, ['look', 'steps', 'signs']),
  };
}
