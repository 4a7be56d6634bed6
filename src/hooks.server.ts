import type { Handle } from '@sveltejs/kit';
import { directionOf } from '#i18n/locales.ts';

/** Stamps the page's language and reading direction into the prerendered page, for readers without script. */
export const handle: Handle = ({ event, resolve }) => {
  const locale = event.params.locale ?? 'en';
  return resolve(event, {
    transformPageChunk: ({ html }) => html.replace('%lang%', locale).replace('%dir%', directionOf(locale)),
  });
};
