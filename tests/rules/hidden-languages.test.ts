import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { languageData } from '../../.ci/languages-plugin.mjs';
import { reviewOf, SAFETY_AREAS } from '../../.ci/locales.mjs';
import { readJson } from '../helpers/locales.ts';

const root = path.resolve(import.meta.dirname, '../..');

afterEach(() => {
  delete process.env.BARE_TOES_WARD;
});

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

  it('keeps the ward’s own language and no other that nobody has signed, English no more than any', () => {
    const review = reviewOf(root);
    const signed = (lang: string) =>
      SAFETY_AREAS.every((area) => review[lang]?.[area]?.status === 'reviewed');
    const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-ward-'));
    process.env.BARE_TOES_WARD = path.join(folder, 'ward.json');
    const ours = readJson('src/content/ward.json') as Record<string, unknown>;
    for (const own of ['en', 'es', 'pl', 'ar']) {
      writeFileSync(process.env.BARE_TOES_WARD, JSON.stringify({ ...ours, wardLanguage: own }));
      const { shown } = languageData({ hideUnreviewed: true });
      expect(shown).toEqual(['en', 'es', 'pl', 'ar'].filter((lang) => lang === own || signed(lang)));
    }
    rmSync(folder, { recursive: true });
  });

  it('tells each page the worst state of the words on it, so that the ribbon can show', () => {
    for (const areas of Object.values(languageData().review))
      for (const status of Object.values(areas)) expect(['reviewed', 'draft', 'stale']).toContain(status);
  });
});
