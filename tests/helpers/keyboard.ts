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
 * Names that more than one button or way bears though each does something else: whoever hears them one after the other
 * cannot tell them apart. A link that leads to the same place may stand twice, and a choice is told by its group.
 */
const sameNames = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const seen = new Map<string, string>();
    const twice: string[] = [];
    for (const one of document.querySelectorAll<HTMLElement>('main :is(button, summary, a[href])')) {
      // a second way by touch to what a list below it offers is left out of the order of the keys
      if (!one.checkVisibility() || one.tabIndex < 0 || one.closest('svg, [aria-hidden="true"]')) continue;
      const pictured = [...one.querySelectorAll('svg[aria-label], [role="img"][aria-label]')];
      const named = pictured.map((picture) => picture.getAttribute('aria-label'));
      const told = one.getAttribute('aria-label') ?? [one.textContent, ...named].join(' ');
      const name = told.replace(/\s+/g, ' ').trim();
      const group = one.closest('fieldset, [role="group"]')?.textContent ?? '';
      const does = one instanceof HTMLAnchorElement ? one.href : `own ${seen.size} ${twice.length}`;
      const key = `${name} ${one.tagName === 'A' ? '' : group}`;
      const before = seen.get(key);
      if (before !== undefined && before !== does) twice.push(name);
      else seen.set(key, does);
    }
    return twice;
  });

/**
 * Tabs on until the focus stands on the wanted element, which must be ringed and have a name that nothing else on the page
 * bears. With `answering`, the first answer of every question on the way is taken with the space bar.
 */
export async function tabTo(page: Page, selector: string, answering = ''): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press('Tab');
    if (answering && (await isAt(page, answering))) await page.keyboard.press('Space');
    expect(await isCovered(page), `stop ${stop + 1} before ${selector} is hidden`).toBe(false);
    if (!(await isAt(page, selector))) continue;
    expect(await ring(page), `the ring around ${selector}`).toBeGreaterThanOrEqual(2);
    await expect(page.locator(':focus'), `the name of ${selector}`).toHaveAccessibleName(/\S/);
    expect(await sameNames(page), `names that stand twice beside ${selector}`).toEqual([]);
    return;
  }
  throw new Error(`the keyboard does not reach ${selector}`);
}
