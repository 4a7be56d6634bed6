import { loadWords } from '#i18n/words.ts';
import { LOCALES } from '#i18n/locales.ts';

export const entries = () => LOCALES.map(({ code }) => ({ locale: code }));

export async function load({ params }) {
  return { words: await loadWords(params.locale, ['pages']) };
}
