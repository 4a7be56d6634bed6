/** For every reader: no finding of axe, keyboard alone, narrow screens, large text, still pictures. */
import { createRequire } from 'node:module';
import { expect, test, type Page } from '@playwright/test';
import { chosen, resultAddress, routesOf, scriptRuns, words } from '../helpers/pages.ts';

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What axe says against a page, as "rule: place" lines. */
async function findings(page: Page, rules?: string[]): Promise<string[]> {
  return page.evaluate(async (only) => {
    const { axe } = window as unknown as {
      axe: { run(root: Document, options: object): Promise<AxeResults> };
    };
    interface AxeResults {
      violations: { id: string; nodes: { target: string[]; failureSummary: string }[] }[];
    }
    const { violations } = await axe.run(document, {
      resultTypes: ['violations'],
      ...(only ? { runOnly: only } : {}),
    });
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
  }, rules);
}

test.describe('axe', () => {
  // the page's own policy would refuse the checker
  test.use({ bypassCSP: true, contextOptions: { reducedMotion: 'reduce' } });

  for (const language of ['en', 'ar'])
    test(`${language}: no finding on any page by day, no faint text by night`, async ({ page }) => {
      test.setTimeout(240_000);
      await chosen(page, { light: 'day' });
      const found: string[] = [];
      for (const address of [...(language === 'en' ? ['/'] : []), ...routesOf(language)]) {
        await page.goto(address);
        await scriptRuns(page);
        await expect(page.locator('h1').first()).toBeVisible();
        await page.addScriptTag({ path: axeFile });
        found.push(...(await findings(page)).map((line) => `${address} ${line}`));
        await page.evaluate(() => (document.documentElement.dataset.light = 'night'));
        found.push(...(await findings(page, ['color-contrast'])).map((line) => `${address} night ${line}`));
      }
      expect(found).toEqual([]);
    });
});

test('the keyboard alone goes from the language to the result, and presses the button’s note', async ({
  page,
}) => {
  await page.goto('/');
  /** Tabs on until the focus stands on the wanted element; a ring must be seen around it. */
  async function tabTo(selector: string) {
    for (let presses = 0; presses < 60; presses += 1) {
      await page.keyboard.press('Tab');
      const there = await page.evaluate(
        (wanted) => document.activeElement?.matches(wanted) ?? false,
        selector,
      );
      if (!there) continue;
      const ring = await page.evaluate(() => {
        const style = getComputedStyle(document.activeElement!);
        return style.outlineStyle === 'none' ? 0 : Number.parseFloat(style.outlineWidth);
      });
      expect(ring, `the ring around ${selector}`).toBeGreaterThanOrEqual(2);
      return;
    }
    throw new Error(`the keyboard does not reach ${selector}`);
  }
  await tabTo('a[href="./en/"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/en/');
  await scriptRuns(page);
  await tabTo('main a[href*="look"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/en/look/');
  await tabTo('a[data-part="toes"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/look/toes/');
  await tabTo('a[data-sign="toes-colour"][data-answer="different"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/toes-colour/');
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await tabTo('[data-action="bell"]');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-pressed]')).toBeVisible();
});

test('the first stop of the keyboard is a way past the bell bar', async ({ page }) => {
  await page.goto('/en/look/');
  await scriptRuns(page);
  await page.keyboard.press('Tab');
  await expect(page.locator(':focus')).toHaveText(words('en')['common:skip']!);
  await expect(page.locator(':focus')).toBeInViewport();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
});

const sideways = (page: Page) =>
  page.evaluate(() => {
    const wide = document.scrollingElement!.scrollWidth;
    if (wide <= innerWidth) return [];
    const guilty = [...document.querySelectorAll('body *')].filter(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 || element.getBoundingClientRect().left < -1,
    );
    return [`${wide} px: ${guilty.map((e) => e.outerHTML.slice(0, 80)).slice(-1)}`];
  });

for (const language of ['en', 'pl', 'ar'])
  test.describe(`${language}, narrow`, () => {
    test.use({ viewport: { width: 320, height: 640 } });
    test(`${language}: nothing scrolls sideways at 320 px, by day or night`, async ({ page }) => {
      test.setTimeout(120_000);
      for (const address of ['/#choose', ...routesOf(language)]) {
        await page.goto(address);
        await scriptRuns(page);
        for (const light of ['day', 'night']) {
          await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
          expect(await sideways(page), `${address} ${light}`).toEqual([]);
        }
      }
    });
  });

for (const language of ['en', 'pl', 'ar'])
  test(`${language}: text at twice its size is neither cut off nor pushed sideways`, async ({ page }) => {
    for (const address of [
      `/${language}/look/`,
      `/${language}/look/toes/`,
      resultAddress(language, 'toes-colour'),
      resultAddress(language, 'band-wet'),
      resultAddress(language, 'no-poo'),
      `/${language}/bell/`,
      `/${language}/look/full/1/`,
      `/${language}/our-notes/`,
    ]) {
      await page.goto(address);
      await scriptRuns(page);
      const before = await page
        .locator('main h1')
        .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
      await page.addStyleTag({ content: 'html { font-size: 200% !important }' });
      const after = await page
        .locator('main h1')
        .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
      expect(after / before, `${address}: the text follows`).toBeCloseTo(2, 1);
      expect(await sideways(page), address).toEqual([]);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main *, .bar *')]
          .filter((e) => !e.closest('svg, .hidden-visually'))
          .filter((e) => {
            const { overflowX, overflowY } = getComputedStyle(e);
            const hides = overflowX !== 'visible' || overflowY !== 'visible';
            return hides && (e.scrollHeight > e.clientHeight + 2 || e.scrollWidth > e.clientWidth + 2);
          })
          .map((e) => e.outerHTML.slice(0, 100)),
      );
      expect(cut, address).toEqual([]);
    }
  });

test.describe('less motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });
  test('nothing moves for a reader who asked for stillness', async ({ page }) => {
    for (const address of [
      '/en/look/',
      '/en/look/feeling/',
      resultAddress('en', 'toes-still'),
      '/en/bell/',
    ]) {
      await page.goto(address);
      await scriptRuns(page);
      const moving = await page.evaluate(() => ({
        running: document.getAnimations().length,
        changing: [...document.querySelectorAll('body *')].filter((e) => {
          const style = getComputedStyle(e);
          return (
            style.transitionDuration.split(',').some((d) => Number.parseFloat(d) > 0) ||
            style.animationName !== 'none'
          );
        }).length,
        drawn: document.querySelectorAll('animate, animateTransform, animateMotion, marquee, video').length,
      }));
      expect(moving, address).toEqual({ running: 0, changing: 0, drawn: 0 });
    }
  });
});

test('every picture says what it shows, or is marked as one that the words beside it already tell', async ({
  page,
}) => {
  let named = 0;
  for (const language of ['en', 'ar'])
    for (const address of routesOf(language)) {
      await page.goto(address);
      const pictures = await page.locator('svg, img, canvas').evaluateAll((elements) =>
        elements.map((element) => {
          // the map's name stands on its drawing, beside the spots that can be touched
          const drawing = element.querySelector(':scope > g:first-child[role]') ?? element;
          return {
            hidden: drawing.closest('[aria-hidden="true"]') !== null,
            role: drawing.getAttribute('role'),
            name: drawing.getAttribute('aria-label')?.trim() ?? '',
            code: element.outerHTML.slice(0, 120),
          };
        }),
      );
      const mute = pictures.filter(
        ({ hidden, role, name }) => !hidden && !(role === 'img' && name.length > 2),
      );
      expect(mute, address).toEqual([]);
      named += pictures.filter(({ hidden }) => !hidden).length;
    }
  expect(named).toBeGreaterThan(50);
});
