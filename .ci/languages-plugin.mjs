// Gives the site its list of languages and the review state of each area, read from locales/ and the ward's
// settings when the site is built. A ward that hides unreviewed languages never ships them.
import path from 'node:path';
import { reviewOf, shownLanguages } from './locales.mjs';
import { wardValues } from './ward-plugin.mjs';

const NAME = 'virtual:languages';
/** Apart, since most areas are no part of a first load. */
const REST = 'virtual:review-of-the-rest';
/** The areas of the way from a part to an answer, as in src/i18n/words.ts. */
const FIRST_AREAS = ['common', 'look', 'steps', 'signs', 'say'];
const root = path.resolve(import.meta.dirname, '..');
/** @param {{ hideUnreviewed?: boolean }} [override] for tests */
export function languageData(override = {}) {
  const ward = wardValues();
  const hideUnreviewed = process.env.BARE_TOES_HIDE_UNREVIEWED
    ? process.env.BARE_TOES_HIDE_UNREVIEWED === 'true'
    : (override.hideUnreviewed ?? ward.hideUnreviewed);
  const review = reviewOf(root);
  const statusOf = (lang) => {
    const all = Object.fromEntries(
      Object.entries(review[lang] ?? {}).map(([area, row]) => [area, row.status]),
    );
    // what is said where there is no call button may stand on any page: `common`, which is on each, speaks for both
    const worst = ['stale', 'draft'].find((state) => all.common === state || all.called === state);
    return { ...all, ...(worst && { common: worst }) };
  };
  // the ward's own language is always there: the nurse's sentence needs it
  const ready = shownLanguages(root, { hideUnreviewed, always: ward.wardLanguage });
  const shown = ward.languages.filter((lang) => ready.includes(lang));
  return { shown, review: Object.fromEntries(shown.map((lang) => [lang, statusOf(lang)])) };
}

/** The review states of some areas: language -> area -> state. */
const statesOf = (review, wanted) =>
  Object.fromEntries(
    Object.entries(review).map(([lang, areas]) => [
      lang,
      Object.fromEntries(Object.entries(areas).filter(([area]) => wanted(area))),
    ]),
  );

/** @returns {import('vite').Plugin} */
export function languagesPlugin() {
  return {
    name: 'bare-toes-languages',
    resolveId: (id) => (id === NAME || id === REST ? '\0' + id : undefined),
    load(id) {
      if (id !== '\0' + NAME && id !== '\0' + REST) return undefined;
      const { shown, review } = languageData();
      const isFirst = (area) => FIRST_AREAS.includes(area);
      return id === '\0' + NAME
        ? `export const shown = ${JSON.stringify(shown)}, review = ${JSON.stringify(statesOf(review, isFirst))};`
        : `export const review = ${JSON.stringify(statesOf(review, (area) => !isFirst(area)))};`;
    },
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
        : `export const sceneMarkup = () => ' ';export const thingMarkup = () => ' ';`;
    },
  };
}
