/** What every-page.spec.ts sees empty, here with all that may stand there: no finding of axe, by day and by night. */
import { expect, test, type Page } from '@playwright/test';
import { instant, minutes } from '#domain/units.ts';
import { madeUpNotes } from '#content/made-up.ts';
import { findings } from '../helpers/axe.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';
import { chosen, scriptRuns, sideways } from '../helpers/pages.ts';
import { FULL } from '../helpers/play-beds.ts';

const NOW = new Date('2026-11-25T11:40:00Z');
/** Each page, what has to stand on it before it is looked at, and what is opened first. */
const PAGES: readonly { at: string; open?: (page: Page) => Promise<void>; seen: string }[] = [
  {
    at: 'things-to-do/',
    open: (page) => page.locator('[data-action="choose-two"]').tap(),
    seen: '[data-choice] [data-choose]',
  },
  {
    at: 'things-to-do/bed/',
    open: (page) => page.locator('[data-moment] [data-change]').first().tap(),
    seen: '[data-open-row] [data-step]',
  },
  {
    at: 'things-to-do/plan/',
    open: (page) => page.locator('[data-edit]').last().tap(),
    seen: '[data-editing] [data-because]',
  },
  { at: `things-to-do/moment/#${FULL.sketch.moments[1]!.id}`, seen: '[data-moment]' },
  { at: 'things-to-do/paper/', seen: '[data-row="moment"]' },
  { at: 'things-to-do/code/', seen: '[data-code]' },
  {
    at: 'bed-card/',
    open: async (page) => {
      await page.locator('[data-field="side"] input').first().check();
      await page.locator('[data-field="bell"] input').first().check();
      await page.locator('[data-action="make-code"]').tap();
    },
    seen: '[data-code]',
  },
];

// the rules of axe are the same in every language: the second is for `npm run access`
for (const language of process.env.BARE_TOES_WHOLE === 'yes' ? ['en', 'ar'] : ['en'])
  test(`${language}: a plan, its sheet, a moment's card, codes and a child's choice with all that stands in them`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.clock.install({ time: NOW });
    await page.addInitScript(
      (kept) => localStorage.setItem('bare-toes:play', kept),
      JSON.stringify({ open: FULL.shape, beds: [FULL] }),
    );
    for (const { at, open, seen } of PAGES) {
      await page.goto(`/${language}/${at}`);
      await scriptRuns(page);
      await open?.(page);
      await expect(page.locator(seen).first(), at).toBeVisible();
      for (const light of ['day', 'night']) {
        await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
        expect(await findings(page), `${at} by ${light}`).toEqual([]);
        expect(await sideways(page), `${at} by ${light}`).toEqual([]);
      }
    }
  });

for (const language of ['es', 'ar'])
  test(`${language}: what staff read of a week of notes, in the ward's language and the family's`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.clock.install({ time: NOW });
    await chosen(page, { wardLanguage: 'pl' });
    await leaveNotes(page, [
      ...madeUpNotes(instant(NOW.getTime() / 60_000), minutes(0)),
      noted(NOW, 20, { kind: 'sign', sign: 'band-wet', answer: 'different' }, 'zzzzzz-1'),
    ]);
    for (const at of ['for-staff/', 'for-staff/round/', 'for-staff/ask/']) {
      await page.goto(`/${language}/${at}`);
      await scriptRuns(page);
      await expect(page.locator('h1 [lang="pl"]').first()).toBeVisible();
      if (at === 'for-staff/ask/') {
        await page.locator('[data-staff-question]:not([data-staff-question="where"])').first().tap();
        await page.locator('[data-staff-answer]').first().tap();
      }
      await expect(
        page.locator(at === 'for-staff/round/' ? '[data-open-sign]' : '[aria-pressed="true"]').first(),
      ).toBeVisible();
      for (const light of ['day', 'night']) {
        await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
        expect(await findings(page), `${at} by ${light}`).toEqual([]);
        expect(await sideways(page), `${at} by ${light}`).toEqual([]);
      }
    }
  });
