import type { Handle } from '@sveltejs/kit';
import { directionOf } from '#i18n/locales.ts';

// The page reads and its links work before any script: on a slow phone its styles must not wait behind the scripts.
const scriptsAfterStyles = (html: string) =>
  html.replaceAll(' rel="modulepreload"', ' rel="modulepreload" fetchpriority="low"');

/** Stamps the page's language and reading direction into the prerendered page, for readers without script. */
export const handle: Handle = ({ event, resolve }) => {
  const locale = event.params.locale ?? 'en';
  return resolve(event, {
    transformPageChunk: ({ html }) =>
      scriptsAfterStyles(html.replace('%lang%', locale).replace('%dir%', directionOf(locale))),
  });
};
