/** A leg is never mirrored by the reading direction: left is left in every language. */
import { expect, test, type Browser, type Page } from '@playwright/test';
import { chosen, scriptRuns } from '../helpers/pages.ts';

const PICTURES = {
  whole: { address: (language: string) => `/${language}/look/drawing/`, svg: 'main .scene-holder svg' },
  map: { address: (language: string) => `/${language}/look/`, svg: 'main .scene-holder svg' },
  feet: {
    address: (language: string) => `/${language}/look/toes/`,
    svg: 'li:has(> * > a[data-sign="toes-colour"]) .different .scene-holder svg',
  },
} as const;
type PictureName = keyof typeof PICTURES;

interface Drawn {
  /** Every path in its order, as it is drawn. */
  paths: string[];
  viewBox: string | null;
  transforms: string[];
  png: Buffer;
}

/** One picture as a family with this leg sees it, in this language. */
async function drawn(browser: Browser, name: PictureName, language: string, side: string): Promise<Drawn> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await chosen(page, { side, light: 'day' });
  await page.goto(PICTURES[name].address(language));
  await scriptRuns(page);
  const svg = page.locator(PICTURES[name].svg);
  await expect(svg).toBeVisible();
  await expect(svg.locator('xpath=..')).toHaveAttribute('data-drawn-side', side);
  await expect(page.locator('html')).toHaveAttribute('dir', language === 'ar' ? 'rtl' : 'ltr');
  // a drawing of the other leg is fetched after the page: wait until it stands still
  let markup = '';
  await expect(async () => {
    const now = await svg.innerHTML();
    const still = now === markup;
    markup = now;
    expect(still).toBe(true);
  }).toPass({ intervals: [300, 300, 600] });
  const facts = await svg.evaluate((element) => {
    const chain: Element[] = [...element.querySelectorAll('*')];
    for (let at: Element | null = element; at; at = at.parentElement) chain.push(at);
    return {
      paths: [...element.querySelectorAll('path')].map(
        (path) => `${path.getAttribute('class')} ${path.getAttribute('d')}`,
      ),
      viewBox: element.getAttribute('viewBox'),
      transforms: chain.flatMap((e) => {
        const { transform, scale, rotate } = getComputedStyle(e);
        return [transform, scale, rotate, e.getAttribute('transform') ?? 'none'].filter(
          (value) => value !== 'none',
        );
      }),
    };
  });
  // the text above a picture differs by language: the same whole dots for all, and only direction is left
  await svg.locator('xpath=..').evaluate((holder) => {
    holder.setAttribute(
      'style',
      'position: fixed; top: 0; left: 0; width: 320px; z-index: 9; background: white',
    );
    document.body.append(holder);
  });
  const png = await page.locator('body > .scene-holder svg').screenshot({ animations: 'disabled' });
  await context.close();
  return { ...facts, png };
}

/** Where the points of each path lie, from left to right: the mean of its x values, by shape. */
async function balance(page: Page, paths: string[]): Promise<number[]> {
  return page.evaluate((all) => {
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    document.body.append(svg);
    return all.map((line) => {
      const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
      path.setAttribute('d', line.slice(line.search(/ M/i) + 1));
      svg.append(path);
      const box = path.getBBox();
      return box.x + box.width / 2;
    });
  }, paths);
}

for (const name of Object.keys(PICTURES) as PictureName[])
  test(`${name}: left and right are two pictures, and each is the same in both reading directions`, async ({
    browser,
    page,
  }) => {
    const [leftEn, leftAr, rightEn, rightAr] = [
      await drawn(browser, name, 'en', 'left'),
      await drawn(browser, name, 'ar', 'left'),
      await drawn(browser, name, 'en', 'right'),
      await drawn(browser, name, 'ar', 'right'),
    ];
    for (const picture of [leftEn, leftAr, rightEn, rightAr]) {
      expect(picture.paths.length).toBeGreaterThan(10);
      expect(picture.transforms).toEqual([]);
    }
    // the same leg: the same paths, and the same picture to the last dot
    expect(leftAr.paths).toEqual(leftEn.paths);
    expect(rightAr.paths).toEqual(rightEn.paths);
    expect(leftAr.viewBox).toBe(leftEn.viewBox);
    expect(leftAr.png.equals(leftEn.png), `${name}: left leg, ltr and rtl`).toBe(true);
    expect(rightAr.png.equals(rightEn.png), `${name}: right leg, ltr and rtl`).toBe(true);
    // the other leg: other paths, another picture
    expect(rightEn.paths).not.toEqual(leftEn.paths);
    expect(rightEn.png.equals(leftEn.png)).toBe(false);

    if (name !== 'feet') return;
    // the feet are mirrored: what lies at x on the left lies at width − x on the right, shape by shape
    const width = Number(leftEn.viewBox!.split(' ')[2]);
    const [left, right] = [await balance(page, leftEn.paths), await balance(page, rightEn.paths)];
    const byPlace = (a: number, b: number) => a - b;
    const mirrored = right.map((x) => width - x).sort(byPlace);
    left.sort(byPlace).forEach((x, index) => expect(Math.abs(x - mirrored[index]!)).toBeLessThan(2));
    expect(left.some((x) => Math.abs(x - width / 2) > 10)).toBe(true);
  });
