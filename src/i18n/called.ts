/** What is said at a bed without a call button, where our words name one. Loaded at such a bed alone. */
import { LOCALES } from './locales.ts';
import { loadArea, type Areas } from './words.ts';

/** Way to call, language and key -> text, none where there is a button; a key of `common` stands without its area, as pages ask for it. */
export type CalledTexts = (
  way: Exclude<keyof Areas['called'], 'any'> | undefined,
  locale: string,
  key: string,
) => string | undefined;

/** Not: a language that cannot be loaded, as without network; pages in it keep their own words. */
export async function calledTexts(): Promise<CalledTexts> {
  const areas = new Map(
    await Promise.all(
      LOCALES.map(async ({ code }) => [code, await loadArea(code, 'called').catch(() => undefined)] as const),
    ),
  );
  return (way, locale, key) => {
    if (!way) return undefined;
    const path = (key.includes(':') ? key : `common:${key}`).split(/[:.]/);
    const at = (group: unknown): unknown =>
      path.reduce((texts, step) => (texts as Record<string, unknown> | undefined)?.[step], group);
    const area = areas.get(locale);
    const text = at(area?.[way]) ?? at(area?.any);
    return typeof text === 'string' ? text : undefined;
  };
}
