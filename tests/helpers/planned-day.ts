/** A bed's day as scenes 12 and 13 of the design begin: ticked and planned through the pages, at 08:40. */
import { expect, type Page } from '@playwright/test';
import { scriptRuns } from './pages.ts';

export const MORNING = new Date('2026-01-15T08:40:00Z');

/** Opens the bed's page and ticks bandage care at ten. */
export async function ticked(page: Page) {
  await page.clock.install({ time: MORNING });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await page.locator('[data-fold="moment"] summary').tap();
  await page.locator('[data-field="procedure"] input[value="bandage"]').check();
  await page.locator('[data-action="add-moment"]').tap();
  await expect(page.locator('[data-moment]')).toHaveCount(1);
}

/** The same day with the best plan for it. */
export async function plannedByTaps(page: Page) {
  await ticked(page);
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  // nothing better is looked for any more
  await expect(page.locator('[data-bound]')).toBeVisible();
}

let keptOnDevice: Record<string, string> | undefined;

/** That plan on the plan page: made by taps once, and later brought back as the device kept it. */
export async function planned(page: Page) {
  if (!keptOnDevice) {
    await plannedByTaps(page);
    keptOnDevice = await page.evaluate(() => ({ ...localStorage }));
    return;
  }
  await page.clock.install({ time: MORNING });
  // any file of the site: what the device keeps belongs to its origin
  await page.goto('/manifest.webmanifest');
  await page.evaluate((kept) => void Object.assign(localStorage, kept), keptOnDevice);
  await page.goto('/en/things-to-do/plan/');
  await expect(page.locator('[data-strip] [data-idea]').first()).toBeVisible();
}
