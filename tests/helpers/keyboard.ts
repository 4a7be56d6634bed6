/** A reader with nothing but a keyboard: where it comes to is seen by its ring and told by its name. */
import { expect, type Page } from '@playwright/test';

const MOST_STOPS = 120;

/** Whether the element with the focus is one of these. */
const isAt = (page: Page, selector: string) =>
  page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector);

/** Pixels of the ring around what has the focus, or around the label that stands for it. */
const ring = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement!;
    const rings = [at, at.closest('label')].flatMap((element) => {
      if (!element) return [];
      const style = getComputedStyle(element);
      return style.outlineStyle === 'none' ? [] : [Number.parseFloat(style.outlineWidth)];
    });
    return Math.max(0, ...rings);
  });

/** Whether what has the focus is wholly hidden behind something that stays on the screen. Source: WCAG 2.2, 2.4.11. */
const isCovered = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement!;
    const part = at.closest('label') ?? at;
    const { left, right, top, bottom } = part.getBoundingClientRect();
    const across = [left + 2, (left + right) / 2, right - 2];
    const down = [top + 2, (top + bottom) / 2, bottom - 2];
    return !across.some((x) =>
      down.some((y) => {
        const seen = document.elementFromPoint(x, y);
        return seen !== null && (part.contains(seen) || seen.contains(part));
      }),
    );
  });

/**
 * Tabs on until the focus stands on the wanted element, which must be ringed and have a name. With `answering`, the first
 * answer of every question on the way is taken with the space bar.
 */
export async function tabTo(page: Page, selector: string, answering = ''): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press('Tab');
    if (answering && (await isAt(page, answering))) await page.keyboard.press('Space');
    expect(await isCovered(page), `stop ${stop + 1} before ${selector} is hidden`).toBe(false);
    if (!(await isAt(page, selector))) continue;
    expect(await ring(page), `the ring around ${selector}`).toBeGreaterThanOrEqual(2);
    await expect(page.locator(':focus'), `the name of ${selector}`).toHaveAccessibleName(/\S/);
    return;
  }
  throw new Error(`the keyboard does not reach ${selector}`);
}
