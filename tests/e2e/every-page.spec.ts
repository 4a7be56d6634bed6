/**
 * What holds for every page, in one visit, in English for each kind and for each kind in one of the other languages:
 * nothing is asked of another origin and nothing is refused, no finding of axe, every picture says what it shows, whatever
 * is pressed is large enough, nothing scrolls sideways on the narrowest phone; by day and by night. The child's day stands
 * there for every age in the language with the shortest words. With
 * BARE_TOES_WHOLE=yes (`npm run access`): every page in every language with all rules of axe by day and by night, the
 * pages that change with the child's age once for each.
 */
import { readdirSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { AGE_MODES } from '#domain/day/modes.ts';
import { findings } from '../helpers/axe.ts';
import {
  chosen,
  kindsOf,
  LANGUAGES,
  routesOf,
  scriptRuns,
  sideways,
  type Language,
} from '../helpers/pages.ts';

/** Everything that can be pressed and is smaller than that. */
const tooSmall = (page: Page, light: 'day' | 'night', least: number) =>
  page.locator('body').evaluate(
    (body, [now, size]) => {
      // at the turn of a minute the page sets its own light again
      document.documentElement.dataset.light = now;
      return (
        [...body.querySelectorAll('a:not(.skip), button, label, summary')]
          // the spots on the drawing are a second way to the list below it
          .filter((element) => !element.closest('svg') && (element as HTMLElement).offsetParent !== null)
          // a link that only a keyboard comes to grows when it is reached
          .filter((element) => getComputedStyle(element).clipPath !== 'inset(50%)')
          .map((element) => {
            const { width, height } = element.getBoundingClientRect();
            return { width, height, name: `${element.tagName} ${element.textContent?.trim().slice(0, 40)}` };
          })
          .filter(({ width, height }) => Math.min(width, height) < size - 0.5)
          .map(({ name, width, height }) => `${name}: ${Math.round(width)} × ${Math.round(height)}`)
      );
    },
    [light, least] as const,
  );

/** Pictures that neither say what they show nor are marked as told by the words beside them; and how many do say it. */
const pictures = (page: Page) =>
  page.locator('svg, img, canvas').evaluateAll((elements) => {
    const seen = elements.map((element) => {
      // the map's name stands on its drawing, beside the spots that can be touched
      const drawing = element.querySelector(':scope > g:first-child[role]') ?? element;
      return {
        hidden: drawing.closest('[aria-hidden="true"]') !== null,
        named:
          drawing.getAttribute('role') === 'img' &&
          (drawing.getAttribute('aria-label')?.trim() ?? '').length > 2,
        code: element.outerHTML.slice(0, 120),
      };
    });
    return {
      mute: seen.filter(({ hidden, named }) => !hidden && !named).map(({ code }) => code),
      named: seen.filter(({ hidden, named }) => !hidden && named).length,
    };
  });

/** What opens, and shows by no mark that it does: neither the browser's own nor one of ours. */
const unmarked = (page: Page) =>
  page.locator('summary:visible').evaluateAll((all) =>
    all
      .filter((one) => {
        const own =
          getComputedStyle(one).display === 'list-item' && getComputedStyle(one).listStyleType !== 'none';
        const ours = ['::before', '::after'].some((part) => /[+–]/.test(getComputedStyle(one, part).content));
        return !own && !ours;
      })
      .map((one) => (one as HTMLElement).innerText),
  );

const turnTo = (page: Page, light: 'day' | 'night') =>
  page.evaluate((value) => (document.documentElement.dataset.light = value), light);

/** Ten minutes of a small machine; what is left out otherwise differs by its words alone. */
const WHOLE = process.env.BARE_TOES_WHOLE === 'yes';
/** From the next page on, the child is drawn so old, and its day is shown so. */
const ofAge = (page: Page, { age, mode }: (typeof AGES)[number]) =>
  page.addInitScript(
    ([years, way]) => {
      const read = (place: string) => JSON.parse(localStorage.getItem(place) ?? '{}') as { ways?: object };
      const keep = (place: string, value: object) => localStorage.setItem(place, JSON.stringify(value));
      const day = read('bare-toes:day');
      keep('bare-toes:family', { ...read('bare-toes:family'), age: years });
      keep('bare-toes:day', { ...day, ways: { ...day.ways, mode: way } });
    },
    [age, mode] as const,
  );

/** Both reading directions, the second on every fourth page: what axe looks at is otherwise the same in every language. */
const withAxe = (language: Language, share: number): boolean =>
  WHOLE || language === 'en' || (language === 'ar' && share === 0);
/** The five ways in which a child's pages are shown, each with the drawn age nearest to it. Source: design 5-day, age modes. */
const AGES = AGE_MODES.map((mode, n) => ({ mode, age: [2, 5, 9, 9, 14][n]! }));
/** Every page as it was built, and those that an address alone makes. */
const allOf = (language: Language) => [
  ...new Set([
    ...readdirSync(new URL(`../../build/${language}`, import.meta.url), { recursive: true, encoding: 'utf8' })
      .filter((file) => /(^|\/)index\.html$/.test(file))
      .map((file) => `/${language}/${file.slice(0, -'index.html'.length)}`)
      .sort(),
    ...routesOf(language),
  ]),
];
const CHANGES_WITH_AGE = /\/(our-day|things-to-do|why-and-how)\//;
/** Shown for every age: a child's own day, in the language of the shortest words, has the narrowest buttons. */
const everyAge = (address: string) => (WHOLE ? CHANGES_WITH_AGE.test(address) : address === '/ar/our-day/');
/** Walks in parallel: each test opens every fourth page. Arabic opens half of the kinds, Spanish and Polish a quarter each. */
const ALL = [0, 1, 2, 3];
const SHARES: Readonly<Record<Language, readonly number[]>> = {
  en: ALL,
  ...(WHOLE ? { ar: ALL, es: ALL, pl: ALL } : { ar: [0, 2], es: [1], pl: [3] }),
};
/** Of how many shares each is one. */
const PARTS = 4;

for (const language of LANGUAGES)
  for (const share of SHARES[language])
    test(`${language}, ${WHOLE ? 'every page' : 'every kind of page'} (${share + 1} of ${PARTS}): own origin alone, no finding, named pictures, large enough to press, nothing sideways`, async ({
      page,
      baseURL,
    }) => {
      if (WHOLE) test.setTimeout(3_600_000);
      const own = new URL(baseURL!).origin;
      const asked: URL[] = [];
      const wrong: string[] = [];
      page.context().on('request', (request) => asked.push(new URL(request.url())));
      page.on('console', (message) => {
        if (message.type() === 'error') wrong.push(`${page.url()} says ${message.text()}`);
      });
      page.on('pageerror', (error) => wrong.push(`${page.url()} breaks: ${String(error)}`));
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await chosen(page, { light: 'day', side: 'left' });
      const pages = ['/#choose', ...(WHOLE ? allOf : kindsOf)(language)].filter(
        (_, at) => at % PARTS === share,
      );
      const shown = pages.flatMap((address) =>
        (everyAge(address) ? AGES : AGES.slice(1, 2)).map((age) => ({ address, age })),
      );
      let named = 0;
      for (const { address, age } of shown) {
        const add = (what: string, found: readonly string[]) =>
          wrong.push(...found.map((line) => `${address} ${age.mode} ${what}: ${line}`));
        await ofAge(page, age);
        await page.setViewportSize({ width: 360, height: 740 });
        await page.goto(address);
        await scriptRuns(page);
        await expect(page.locator('h1').first()).toBeVisible();
        const checked = withAxe(language, share);
        if (checked) {
          add('axe', await findings(page));
        }
        add('too small by day', await tooSmall(page, 'day', 56));
        add('opens, and shows it by no mark', await unmarked(page));
        const drawn = await pictures(page);
        add('picture without a name', drawn.mute);
        named += drawn.named;
        await turnTo(page, 'night');
        // colours are the same in every language
        if (WHOLE) add('axe by night', await findings(page));
        else if (language === 'en') add('axe by night', await findings(page, ['color-contrast']));
        add('too small by night', await tooSmall(page, 'night', 72));
        await page.setViewportSize({ width: 320, height: 640 });
        add('sideways by night', await sideways(page));
        await turnTo(page, 'day');
        add('sideways by day', await sideways(page));
      }
      expect(wrong).toEqual([]);
      expect(named, 'pictures that say what they show').toBeGreaterThan(2);
      expect(asked.length).toBeGreaterThan(20);
      expect(
        asked
          .filter(({ origin, protocol, search }) => (origin !== own && protocol !== 'data:') || search)
          .map(String),
      ).toEqual([]);
    });
