/** Night on the ward is 22:00 to 06:00. The page goes dark, what is pressed grows, skin is judged on a light panel. */
import { expect, test, type Page } from '@playwright/test';
import { forgetNotes } from '../helpers/kept-notes.ts';
import { scriptRuns, words } from '../helpers/pages.ts';

const english = words('en');

for (const [zone, offset] of [
  ['Europe/London', 0],
  ['Asia/Kathmandu', 345],
  ['America/St_Johns', -210],
] as const)
  test.describe(zone, () => {
    test.use({ timezoneId: zone });

    test(`${zone}: night begins at 22:00 and ends at 06:00 by the clock on the wall`, async ({ page }) => {
      const january = (time: string) => new Date(Date.parse(`2026-01-15T${time}:00Z`) - offset * 60_000);
      await page.clock.install({ time: january('12:00') });
      for (const [time, light] of [
        ['21:59', 'day'],
        ['22:00', 'night'],
        ['00:00', 'night'],
        ['05:59', 'night'],
        ['06:00', 'day'],
      ] as const) {
        await page.clock.setFixedTime(january(time));
        await page.goto('/en/look/');
        await scriptRuns(page);
        await expect(page.locator('html'), time).toHaveAttribute('data-light', light);
      }
    });
  });

test('a page left open turns to night by itself', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-01-15T21:58:00Z') });
  await page.goto('/en/look/');
  await scriptRuns(page);
  await expect(page.locator('html')).toHaveAttribute('data-light', 'day');
  await page.clock.fastForward(3 * 60_000);
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
});

test('the light can be switched against the clock, and stays so on the next page and the next visit', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-01-15T03:10:00Z') });
  await page.goto('/en/look/');
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
  const choice = (name: string) =>
    page.getByRole('radio', { name: english[`common:light.${name}`]!, exact: true });
  await choice('day').check();
  await expect(page.locator('html')).toHaveAttribute('data-light', 'day');
  await page.locator('main a[data-part="toes"]').tap();
  await page.waitForURL('**/look/toes/');
  await expect(page.locator('html')).toHaveAttribute('data-light', 'day');
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-light', 'day');
  await expect(choice('day')).toBeChecked();
  await choice('clock').check();
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
});

/** Relative luminance (WCAG 2) of what lies under an element: the nearest ground that is not see-through. */
const groundUnder = (page: Page, selector: string) =>
  page.locator(selector).evaluateAll((elements) =>
    elements.map((element) => {
      const probe = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
      for (let at: Element | null = element; at; at = at.parentElement) {
        probe.clearRect(0, 0, 1, 1);
        probe.fillStyle = getComputedStyle(at).backgroundColor;
        probe.fillRect(0, 0, 1, 1);
        const [red, green, blue, alpha] = probe.getImageData(0, 0, 1, 1).data;
        if (alpha! < 250) continue;
        const [r, g, b] = [red!, green!, blue!].map((part) => {
          const share = part / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
      }
      return 0;
    }),
  );

test('at night the page is dark, and every picture in which skin is judged lies on a light panel', async ({
  page,
}) => {
  await page.clock.setFixedTime(new Date('2026-01-15T03:10:00Z'));
  for (const address of [
    '/en/look/toes/',
    '/en/look/skin/',
    '/en/look/toes/toes-colour/',
    '/en/look/full/1/',
    '/en/look/full/3/',
  ]) {
    await page.goto(address);
    await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
    expect((await groundUnder(page, 'main'))[0], address).toBeLessThan(0.02);
    const judged = await groundUnder(page, 'main svg[data-camera="feet"], main svg[data-camera="close"]');
    expect(judged.length, address).toBeGreaterThan(1);
    expect(Math.min(...judged), address).toBeGreaterThan(0.75);
  }
});

test('whoever opens the page of the button sees the words to say without scrolling, and by night no bright square', async ({
  page,
}) => {
  for (const [time, language] of [
    ['2026-01-15T14:20:00Z', 'pl'],
    ['2026-01-15T03:10:00Z', 'en'],
    ['2026-01-15T03:10:00Z', 'ar'],
  ] as const) {
    await page.clock.setFixedTime(new Date(time));
    await page.goto(`/${language}/bell/`);
    await expect(page.locator('[data-say="ward"]'), language).toBeInViewport({ ratio: 1 });
    const paper = page.locator('main .paper');
    const light = Number(await paper.evaluate((element) => getComputedStyle(element).opacity));
    if (time.includes('T14')) expect(light).toBe(1);
    else expect(light).toBeLessThan(0.8);
  }
  // and on the answers that are urgent by day, in the language with the longest words
  await page.clock.setFixedTime(new Date('2026-01-15T14:20:00Z'));
  for (const language of ['es', 'pl']) {
    await page.goto(`/${language}/look/toes/toes-colour/`);
    await expect(page.locator('[data-say="ward"]'), language).toBeInViewport({ ratio: 1 });
  }
  // by night letters are larger; there they begin on the first screen, also where pictures come first
  await page.clock.setFixedTime(new Date('2026-01-15T03:10:00Z'));
  for (const language of ['pl', 'es', 'ar'])
    for (const sign of [
      'danger/breath-hard',
      'cord/load-not-free',
      'bandage/band-stained',
      'feeling/foot-droops/not-sure',
    ]) {
      // each by itself: what was reported before may call out at once
      await forgetNotes(page);
      await page.goto(`/${language}/look/${sign}/`);
      await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
      await expect(
        page.locator('section').filter({ has: page.locator('[data-say="ward"]') }),
        `${language}/${sign}`,
      ).toBeInViewport();
    }
  await page.goto('/en/look/danger/');
  await expect(page.locator('[data-picture="call-button"]')).toBeVisible();
});

test('what can be touched on the drawing is at least 44 px across, and each spot is in the list below as well', async ({
  page,
}) => {
  await page.goto('/en/look/');
  const spots = page.locator('main svg a[data-spot]');
  expect(await spots.count()).toBeGreaterThan(5);
  for (const spot of await spots.all()) {
    const box = (await spot.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
    const part = (await spot.getAttribute('href'))!.replace('/', '');
    await expect(page.locator(`main nav a[data-part="${part}"]`)).toBeVisible();
  }
});
