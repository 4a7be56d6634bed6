/** What every-page.spec.ts sees empty, here with a full day of play and a made card: no finding of axe, by day and by night. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test, type Page } from '@playwright/test';
import { scriptRuns, sideways } from '../helpers/pages.ts';
import { FULL } from '../helpers/play-beds.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
interface Found {
  violations: { id: string; nodes: { target: string[] }[] }[];
}
const findings = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const checker = (window as unknown as { axe: { run(root: Document, options: object): Promise<Found> } })
      .axe;
    // as it stands once every change of colour is over
    for (const change of document.getAnimations()) change.finish();
    const { violations } = await checker.run(document, { resultTypes: ['violations'], preload: false });
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
  });

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

for (const language of ['en', 'ar'])
  test(`${language}: a plan, its sheet, a moment's card, codes and a child's choice with all that stands in them`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.clock.install({ time: new Date('2026-11-25T11:40:00Z') });
    await page.addInitScript(
      (kept) => localStorage.setItem('bare-toes:play', kept),
      JSON.stringify({ open: FULL.shape, beds: [FULL] }),
    );
    for (const { at, open, seen } of PAGES) {
      await page.goto(`/${language}/${at}`);
      await scriptRuns(page);
      await open?.(page);
      await expect(page.locator(seen).first(), at).toBeVisible();
      await page.evaluate(axe);
      for (const light of ['day', 'night']) {
        await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
        expect(await findings(page), `${at} by ${light}`).toEqual([]);
        expect(await sideways(page), `${at} by ${light}`).toEqual([]);
      }
    }
  });
