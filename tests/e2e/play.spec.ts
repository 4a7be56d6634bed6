/** Scenes 12–14 of the design: a bed is ticked, its day planned, changed by hand, and something comes up. */
import { expect, test, type Page } from '@playwright/test';
import { keptNotes, scriptRuns, words } from '../helpers/pages.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';

const english = words('en');
const MORNING = new Date('2026-01-15T08:40:00Z');
const strip = (page: Page) => page.locator('[data-strip] [data-idea]');

/** Opens the bed's page and ticks a hard moment at ten. */
async function ticked(page: Page) {
  await page.clock.install({ time: MORNING });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await page.locator('[data-fold="moment"] summary').tap();
  await page.locator('[data-field="procedure"] input[value="bandage"]').check();
  await page.locator('[data-action="add-moment"]').tap();
  await expect(page.locator('[data-moment]')).toHaveCount(1);
}
async function planned(page: Page) {
  await ticked(page);
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  // nothing better is looked for any more
  await expect(page.locator('[data-bound]')).toBeVisible();
}

test('a good plan stands while the best is looked for; what is changed meanwhile is not undone', async ({
  page,
}) => {
  // the best plan is held back until the page says so
  await page.addInitScript(() => {
    const add = Worker.prototype.addEventListener;
    const held: (() => void)[] = [];
    Object.assign(window, { letBestCome: () => held.splice(0).forEach((come) => come()) });
    Worker.prototype.addEventListener = function (
      this: Worker,
      type: string,
      listen: (event: Event) => void,
    ) {
      const late = (event: Event) => {
        if ((event as MessageEvent<{ early?: true }>).data.early) listen(event);
        else held.push(() => listen(event));
      };
      add.call(this, type, type === 'message' ? late : listen);
    };
  });
  const bestComes = () => page.evaluate(() => (window as unknown as { letBestCome(): void }).letBestCome());
  await ticked(page);
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  await expect(strip(page).first()).toBeVisible();
  await expect(page.getByText(english['play:planning.busy']!)).toBeVisible();
  await expect(page.locator('[data-bound]')).toHaveCount(0);

  const idea = strip(page).first();
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await idea.locator('[data-action="ban"]').tap();
  await expect.poll(async () => (await bestComes(), page.locator('[data-bound]').count())).toBe(1);
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toHaveCount(0);
  await expect(page.getByText(english['play:planning.busy']!)).toHaveCount(0);
});

test('scene 12: a hard moment is ticked, the day is planned, and the moment has its idea', async ({
  page,
}) => {
  await planned(page);
  const moment = page.locator('[data-row="moment"]');
  await expect(moment).toContainText(english['play:moment.bandage']!);
  await expect(moment).toContainText('10:00');
  // what is kept for it stands right under it
  await expect(moment.locator('xpath=following-sibling::li[1]')).toHaveAttribute('data-row', 'idea');
  await expect(page.locator('[data-bound]')).toBeVisible();
  // and it waits on the first page, too
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-next-moment] [data-idea]').first()).toBeVisible();
  expect(await page.locator('[data-now] [data-idea]').count()).toBeGreaterThan(0);
});

test('each idea says why it stands there and why others do not; what is kept by hand stays', async ({
  page,
}) => {
  await planned(page);
  const idea = strip(page).nth(1);
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await expect(idea.locator('[data-because]').first()).toBeVisible();
  await expect(idea.locator('[data-other]').first()).toBeVisible();
  await idea.locator('[data-action="pin"]').tap();
  await expect(idea).toContainText(english['play:planning.pinned']!);
  await page.reload();
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toContainText(
    english['play:planning.pinned']!,
  );
});

test('an idea that is not for today goes, and the page says what changed', async ({ page }) => {
  await planned(page);
  const idea = strip(page).last();
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await idea.locator('[data-action="ban"]').tap();
  await expect(page.locator('[data-changed]')).toBeVisible();
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toHaveCount(0);
});

test('scene 13: an X-ray comes; nothing is planned into it, and what has begun stays', async ({ page }) => {
  await planned(page);
  await page.locator('[data-came="x-ray"]').tap();
  await page.locator('[data-minutes="60"]').tap();
  await expect(page.locator('[data-changed]')).toBeVisible();
  await expect(page.locator('[data-row="event"]', { hasText: english['play:event.x-ray']! })).toHaveCount(1);
});

test('sore now opens the way to the look, and is no note', async ({ page }) => {
  await planned(page);
  await page.locator('[data-came="sore"]').tap();
  await expect(page.locator('[data-sore] a')).toHaveAttribute('href', /\/en\/look\/$/);
  expect(await keptNotes(page)).toEqual([]);
});

test('while something waits that rings now, no game is offered', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await leaveNotes(page, [
    noted(MORNING, 5, { kind: 'sign', sign: 'toes-colour', answer: 'different' }, 'a1b2c3-1'),
  ]);
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-rings-now]')).toBeVisible();
  await expect(page.locator('[data-action="begin-bed"]')).toHaveCount(0);
});

test('the library narrows to what can be done flat, with no hand and nobody there', async ({ page }) => {
  await page.goto('/en/things-to-do/ideas/');
  await scriptRuns(page);
  const count = async () => Number(await page.locator('[data-found]').getAttribute('data-found'));
  const all = await count();
  await page.locator('[data-field="hands"] input[value="0"]').check();
  await page.locator('[data-field="head"] input[value="flat"]').check();
  await page.locator('[data-field="who"] input[value="alone"]').check();
  await expect.poll(count).toBeLessThan(all);
  expect(await count()).toBeGreaterThan(3);
  await page.locator('[data-idea] summary').first().tap();
  await expect(page.locator('[data-idea-details]').first()).toBeVisible();
});

test('a broken bed in the store is named, and the others are kept', async ({ page }) => {
  await planned(page);
  await page.evaluate(() => {
    const kept = JSON.parse(localStorage.getItem('bare-toes:play')!) as { beds: unknown[] };
    kept.beds.push({ shape: 'star', day: 'rubbish' });
    localStorage.setItem('bare-toes:play', JSON.stringify(kept));
  });
  await page.goto('/en/things-to-do/bed/');
  await expect(page.locator('[data-fault]').first()).toBeVisible();
  await expect(page.locator('[data-bed]')).toHaveCount(1);
});
