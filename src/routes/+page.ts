import { LOCALES } from '#i18n/locales.ts';
import { loadArea } from '#i18n/words.ts';

/** The one page before a language is chosen: every language speaks for itself. */
export async function load() {
  const languages = await Promise.all(
    LOCALES.map(async ({ code, name, direction }) => ({
      code,
      name,
      direction,
      tagline: (await loadArea(code, 'common')).tagline,
    })),
  );
  return { languages };
}
