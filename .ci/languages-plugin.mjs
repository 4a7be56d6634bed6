// Gives the site its list of languages and the review state of each area, read from locales/ and the ward's
// settings when the site is built. A ward that hides unreviewed languages never ships them.
import { readFileSync } from 'node:fs';
import path from 'node:path';

const NAME = 'virtual:languages';
const root = path.resolve(import.meta.dirname, '..');
/** Areas that carry safety texts: a language shows only where these are signed, if the ward says so. */
export const SAFETY_AREAS = ['common', 'look', 'signs', 'say'];

/** @param {{ hideUnreviewed?: boolean }} [override] for tests */
export async function languageData(override = {}) {
  const { reviewOf } = await import(path.join(root, '.ci/locales.mjs'));
  const ward = JSON.parse(readFileSync(path.join(root, 'src/content/ward.json'), 'utf8'));
  const hide = process.env.BARE_TOES_HIDE_UNREVIEWED
    ? process.env.BARE_TOES_HIDE_UNREVIEWED === 'true'
    : (override.hideUnreviewed ?? ward.hideUnreviewed);
  const review = reviewOf(root);
  const statusOf = (lang) =>
    Object.fromEntries(Object.entries(review[lang] ?? {}).map(([area, r]) => [area, r.status]));
  const shown = ward.languages.filter((lang) => {
    const status = statusOf(lang);
    return !hide || lang === ward.wardLanguage || SAFETY_AREAS.every((area) => status[area] === 'reviewed');
  });
  return { shown, review: Object.fromEntries(shown.map((lang) => [lang, statusOf(lang)])) };
}

/** @returns {import('vite').Plugin} */
export function languagesPlugin() {
  return {
    name: 'bare-toes-languages',
    resolveId: (id) => (id === NAME ? '\0' + NAME : undefined),
    load: async (id) =>
      id === '\0' + NAME ? `export const { shown, review } = ${JSON.stringify(await languageData())};` : undefined,
  };
}

const DRAWING = 'virtual:first-drawing';

/**
 * The drawing code is large and its first pictures are already in the prerendered pages, so the browser's first
 * load leaves it out: there this module draws nothing, and scene/TractionScene.svelte fetches it when needed.
 * @returns {import('vite').Plugin}
 */
export function firstDrawingPlugin() {
  return {
    name: 'bare-toes-first-drawing',
    resolveId: (id) => (id === DRAWING ? '\0' + DRAWING : undefined),
    load: (id, options) => {
      if (id !== '\0' + DRAWING) return undefined;
      return options?.ssr
        ? `export { sceneMarkup, thingMarkup } from '/src/scene/markup.ts';`
        : `export const sceneMarkup = () => '';export const thingMarkup = () => '';`;
    },
  };
}
