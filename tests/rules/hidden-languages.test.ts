import { describe, expect, it } from 'vitest';
import { languageData } from '../../.ci/languages-plugin.mjs';
import { reviewOf } from '../../.ci/locales.mjs';
import { SAFETY_AREAS } from '../../.ci/locales.mjs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

describe('a ward that hides languages nobody has signed', () => {
  it('shows every language of its settings when it does not hide', () => {
    expect(languageData({ hideUnreviewed: false }).shown).toEqual(['en', 'es', 'pl', 'ar']);
  });

  it('ships only its own language and those whose safety texts are all signed when it hides', () => {
    const review = reviewOf(root);
    const signed = (lang: string) =>
      SAFETY_AREAS.every((area) => review[lang]?.[area]?.status === 'reviewed');
    const hidden = languageData({ hideUnreviewed: true });
    expect(hidden.shown).toEqual(['en', 'es', 'pl', 'ar'].filter((lang) => lang === 'en' || signed(lang)));
    expect(Object.keys(hidden.review)).toEqual(hidden.shown);
  });

  it('tells each page the worst state of the words on it, so that the ribbon can show', () => {
    for (const areas of Object.values(languageData().review))
      for (const status of Object.values(areas)) expect(['reviewed', 'draft', 'stale']).toContain(status);
  });
});
