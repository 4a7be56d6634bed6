import { LOCALES } from '#i18n/locales.ts';
import { loadArea, loadWords } from '#i18n/words.ts';

export async function load({ params }) {
  const [words, ...says] = await Promise.all([
    loadWords(params.locale, ['look', 'steps']),
    ...LOCALES.map(async (row) => ({ locale: row.code, say: await loadArea(row.code, 'say') })),
  ]);
  return { words, says };
}
