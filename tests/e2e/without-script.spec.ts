import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { PART_IDS } from '#content/parts.ts';
import { signsOfPart } from '#content/signs.ts';
import {
  built,
  directionOf,
  kindsOf,
  LANGUAGES,
  RESULTS,
  resultAddress,
  scriptRuns,
  words,
} from '../helpers/pages.ts';

/** Only below "ring now" can a page without script say too little; there, and only there, it says so. */
async function expectLowerBound(page: Page, urgency: string, own: Record<string, string>) {
  const line = page.locator('[data-lower-bound]');
  if (urgency === 'ring-now') {
    await expect(line).toHaveCount(0);
  } else {
    await expect(line).toBeVisible();
    await expect(line).toHaveText(own['steps:result.under3']!);
  }
}

/** One for each reading direction; the pages of all four are read as they lie on the server, below. */
const TAPPED = ['en', 'ar'] as const;

/**
 * Opened without script, one language for each reading direction, English all kinds and the others a part of them,
 * each what the others leave out.
 */
const isOpened = (language: string, at: number): boolean =>
  language === 'en' || at % 3 === ['ar', 'es', 'pl'].indexOf(language);

for (const language of TAPPED) {
  const own = words(language);

  test.describe(`${language}, no script`, () => {
    test.use({ javaScriptEnabled: false, locale: language });

    test('the first sign of each place is reached by plain links alone', async ({ page }) => {
      for (const part of PART_IDS) {
        await page.goto(`/${language}/look/`);
        if (part === 'more') await page.locator('main a[data-part="child"]').tap();
        if (part !== 'worry') await page.locator(`main a[data-part="${part}"]`).tap();
        const sign = signsOfPart(part)[0]!;
        await page.locator(`main a[data-sign="${sign}"][data-answer="different"]`).tap();
        const result = page.locator('article[data-urgency]');
        await expect(result, sign).toHaveAttribute('data-sign', sign);
        await expect(result.locator('h1')).toBeVisible();
        await expect(result.locator('[data-say="ward"]')).toBeVisible();
        await expectLowerBound(page, (await result.getAttribute('data-urgency'))!, own);
      }
    });

    test('the bell page opens from every look page, and from the language chooser in two taps', async ({
      page,
    }) => {
      await page.goto(`/${language}/look/toes/`);
      await page.locator(`a[href$="/${language}/bell/"]`).first().tap();
      await page.waitForURL(`**/${language}/bell/`);
      await expect(page.locator('main h1')).toHaveText(own['steps:bell.title']!);
      await expect(page.locator('main')).toContainText(own['steps:bell.text']!);
      await expect(page.locator('main svg').first()).toBeVisible();

      await page.goto('/');
      await page.locator(`a[lang="${language}"], [lang="${language}"] a`).first().tap();
      await page.waitForURL(`**/${language}/`);
      await page.locator(`a[href$="/${language}/bell/"], a[href="./bell/"], a[href="bell/"]`).first().tap();
      await page.waitForURL(`**/${language}/bell/`);
    });
  });
}

/** What stands in a page as it lies on the server, read without running any of its script. */
interface Plain {
  lang: string | null;
  dir: string | null;
  heading: string;
  links: {
    href: string;
    part: string | null;
    sign: string | null;
    answer: string | null;
    detail: string | null;
  }[];
  result?: {
    sign: string | null;
    urgency: string | null;
    heading: string;
    ward: string;
    family: string | undefined;
    doNot: string;
    lowerBound: string | undefined;
  };
}
async function plainPages(page: Page, addresses: readonly string[]): Promise<Record<string, Plain>> {
  await page.goto('/icon.svg');
  return page.evaluate(async (all) => {
    const clean = (node: Element | null | undefined) => node?.textContent?.replace(/\s+/g, ' ').trim();
    const read = async (address: string): Promise<Plain> => {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
      const html = new DOMParser().parseFromString(await answer.text(), 'text/html');
      const article = html.querySelector('article[data-urgency]');
      return {
        lang: html.documentElement.getAttribute('lang'),
        dir: html.documentElement.getAttribute('dir'),
        heading: clean(html.querySelector('h1')) ?? '',
        links: [...html.querySelectorAll('main a')].map((link) => ({
          href: new URL(link.getAttribute('href')!, new URL(address, location.href)).pathname,
          part: link.getAttribute('data-part'),
          sign: link.getAttribute('data-sign'),
          answer: link.getAttribute('data-answer'),
          detail: link.getAttribute('data-detail'),
        })),
        ...(article && {
          result: {
            sign: article.getAttribute('data-sign'),
            urgency: article.getAttribute('data-urgency'),
            heading: clean(article.querySelector('h1')) ?? '',
            ward: clean(article.querySelector('[data-say="ward"]')) ?? '',
            family: clean(article.querySelector('[data-say="family"]')),
            doNot: clean(article.querySelector('[data-do-not]')) ?? '',
            lowerBound: clean(html.querySelector('[data-lower-bound]')),
          },
        }),
      };
    };
    const found: Record<string, Plain> = {};
    for (const address of all) found[address] = await read(address);
    return found;
  }, addresses);
}

for (const language of LANGUAGES) {
  const own = words(language);
  const ward = words('en');
  const flat = (text: string) => text.replace(/\s+/g, ' ').trim();

  test(`${language}: each place links to each sign, and each result says its class, its sentences and what not to do, before any script`, async ({
    page,
  }) => {
    const look = `/${language}/look/`;
    const partPage = (part: string) => (part === 'worry' ? look : `${look}${part}/`);
    const pages = await plainPages(page, [
      look,
      ...PART_IDS.filter((part) => part !== 'worry').map(partPage),
      ...RESULTS.map(({ sign, answer }) => resultAddress(language, sign, answer)),
    ]);
    const linked = (from: string, to: string) =>
      expect(
        pages[from]!.links.map(({ href }) => href),
        `${from} leads to ${to}`,
      ).toContain(to);
    for (const part of PART_IDS.filter((id) => id !== 'worry'))
      linked(part === 'more' ? partPage('child') : look, partPage(part));
    for (const { sign, answer, part, urgency } of RESULTS) {
      const address = resultAddress(language, sign, answer);
      const isDetail = answer !== 'different' && answer !== 'not-sure';
      linked(isDetail ? resultAddress(language, sign) : partPage(part), address);
      const { result, lang, dir } = pages[address]!;
      expect(lang, address).toBe(language);
      expect(dir, address).toBe(directionOf(language));
      expect(result?.sign, address).toBe(sign);
      expect(result?.urgency, address).toBe(urgency);
      expect(result?.heading, address).toBe(flat(own[`common:urgency.${urgency}`]!));
      expect(result?.doNot, address).toContain(flat(own[`signs:${sign}.doNot`]!));
      expect(result?.lowerBound, address).toBe(
        urgency === 'ring-now' ? undefined : flat(own['steps:result.under3']!),
      );
      const say = isDetail
        ? `say:details.${sign}/${answer}`
        : answer === 'not-sure'
          ? `say:notSure.${part}`
          : `say:${sign}`;
      expect(result?.ward, address).toBe(flat(ward[say]!));
      if (language !== 'en') expect(result?.family, address).toBe(flat(own[say]!));
    }
  });

  test.describe(`${language}, every page without script`, () => {
    test.use({ javaScriptEnabled: false, locale: language });
    // one address of every kind, in two languages together; every-page.spec.ts opens them with script
    test(`${language}: every kind of page is stamped with its language and reading direction`, async ({
      page,
    }) => {
      for (const address of kindsOf(language).filter((_, at) => isOpened(language, at))) {
        await page.goto(address);
        await expect(page.locator('html'), address).toHaveAttribute('lang', language);
        await expect(page.locator('html'), address).toHaveAttribute('dir', directionOf(language));
        await expect(page.locator('h1').first(), address).toBeVisible();
        // an area of words that a page forgot to load would show its keys
        expect(await page.locator('body').innerText(), address).not.toMatch(
          /\b[a-zA-Z]+[:.][a-zA-Z]+\.[a-zA-Z-]+\b/u,
        );
        // nothing that needs script stands there as if it worked
        await expect(page.locator('button:visible'), address).toHaveCount(0);
        // no frame waits for a picture that only script draws
        await expect(
          page.locator(':is(.play-picture, .topic-picture, .day-picture, .care-picture):visible'),
          address,
        ).toHaveCount(0);
      }
    });
  });
}

test('at a wrong address nothing touches the edge of the screen', async ({ page }) => {
  await page.goto('/404.html');
  const heading = (await page.locator('h1').boundingBox())!;
  expect(Math.min(heading.x, heading.y)).toBeGreaterThanOrEqual(8);
});

test('with script the line that it may be more goes, once script knows what else was noted', async ({
  page,
}) => {
  await page.goto(resultAddress('en', 'band-wet'));
  await scriptRuns(page);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'tell-nurse');
  await expect(page.locator('[data-lower-bound]')).not.toBeVisible();
});

test('each page, as it lies on the server, names the style sheets of all that stands in it', () => {
  const scopes = (text: string) => new Set(text.match(/\bsvelte-[a-z0-9]+/g));
  const folder = path.join(built, '_app/immutable/assets');
  const sheets = readdirSync(folder).filter((name) => name.endsWith('.css'));
  const styled = new Map(sheets.map((name) => [name, scopes(readFileSync(path.join(folder, name), 'utf8'))]));
  const pages = readdirSync(built, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  const unstyled: string[] = [];
  let dressed = 0;
  for (const page of pages) {
    const text = readFileSync(path.join(built, page), 'utf8');
    const named = new Set([...text.matchAll(/\/([^"/]+\.css)" rel="stylesheet"/g)].map(([, name]) => name!));
    if (named.size) dressed++;
    for (const scope of new Set(
      [...text.matchAll(/class="([^"]*)"/g)].flatMap(([, all]) => [...scopes(all!)]),
    )) {
      const needed = sheets.filter((name) => styled.get(name)!.has(scope));
      if (needed.length && !needed.some((name) => named.has(name))) unstyled.push(`${page}: ${needed}`);
    }
  }
  expect(unstyled).toEqual([]);
  expect(dressed).toBeGreaterThan(600);
});
