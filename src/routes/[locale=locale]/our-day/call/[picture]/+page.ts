import { error } from '@sveltejs/kit';
import { CALLS, type CallId } from '#domain/day/touch.ts';
import { LOCALES } from '#i18n/locales.ts';
import { loadArea, loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const call = CALLS.find((id): id is CallId => id === params.picture);
  if (!call) error(404);
  const [words, ...says] = await Promise.all([
    loadWords(params.locale, ['day', 'steps']),
    ...LOCALES.map(async ({ code }) => ({ locale: code, text: (await loadArea(code, 'say')).child[call] })),
  ]);
  return { call, words, says, child: true };
}
