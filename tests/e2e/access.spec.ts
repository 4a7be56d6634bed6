/** For every reader: keyboard alone, large text, still pictures. What holds for every page is in every-page.spec.ts. */
import { expect, test, type Page } from '@playwright/test';
import { usualWays } from '#domain/day/kept-day.ts';
import { AGE_MODES } from '#domain/day/modes.ts';
import { contrast } from '../helpers/contrast.ts';
import { tabTo } from '../helpers/keyboard.ts';
import { brokenWords, resultAddress, routesOf, scriptRuns, sideways, words } from '../helpers/pages.ts';
import { FULL } from '../helpers/play-beds.ts';

test('the keyboard alone goes from the language to the result, and presses the button’s note', async ({
  page,
}) => {
  await page.goto('/');
  await tabTo(page, 'a[href="./en/"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/en/');
  await scriptRuns(page);
  await tabTo(page, 'main a[href*="look"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/en/look/');
  await tabTo(page, 'a[data-part="toes"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/look/toes/');
  await tabTo(page, 'a[data-sign="toes-colour"][data-answer="different"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/toes-colour/');
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await tabTo(page, '[data-action="bell"]');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-pressed]')).toBeVisible();
});

test('the keyboard alone looks at all six places, makes a bed card, plans play, writes a note and hands the notes on', async ({
  page,
}) => {
  const press = async (selector: string, answering?: string) => {
    await tabTo(page, selector, answering);
    await page.keyboard.press('Enter');
  };
  await page.goto('/en/look/full/');
  await scriptRuns(page);
  await press('main a[href*="full/1"], main a[href$="1/"]');
  for (let step = 1; step <= 6; step += 1) {
    await page.waitForURL(`**/look/full/${step}/`);
    await press('[data-next]', 'input[type="radio"]:not(:checked)');
  }
  await page.waitForURL('**/look/full/end/');
  await expect(page.locator('[data-urgency]').first()).toBeVisible();
  await expect(page.locator('[data-nothing-looked]')).toHaveCount(0);

  await page.goto('/en/bed-card/');
  await scriptRuns(page);
  await press(
    '[data-action="make-code"]',
    '[data-field="side"] input:not(:checked), [data-field="bell"] input:not(:checked)',
  );
  await expect(page.locator('[data-code]')).toBeVisible();

  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await press('[data-action="plan"]');
  await page.waitForURL('**/things-to-do/plan/');
  await expect(page.locator('[data-strip] [data-idea]').first()).toBeVisible();
  await expect(page.locator('[data-bound]')).toBeVisible();

  await page.goto('/en/our-notes/');
  await scriptRuns(page);
  await press('[data-note-kind="told"]');
  await expect(page.locator('[data-entry="told"]')).toBeVisible();
  await page.goto('/en/pass-it-on/');
  await scriptRuns(page);
  await press('[data-action="show"]');
  await expect(page.locator('[data-frame]')).toBeVisible();
  await page.goto('/en/for-staff/');
  await expect(page.locator('[data-entry="told"]').first()).toBeVisible();
});

test('the keyboard alone changes a plan: longer, kept, another in its place, not today; the focus lands on what changed', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-01-15T08:40:00Z') });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await tabTo(page, '[data-action="plan"]');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/things-to-do/plan/');
  await expect(page.locator('[data-bound]')).toBeVisible();
  interface Placed {
    idea: string;
    from: number;
    minutes: number;
  }
  const kept = () =>
    page.evaluate(
      () =>
        (
          JSON.parse(localStorage.getItem('bare-toes:play')!) as {
            beds: { plan: Placed[]; pins: Placed[]; notToday: string[] }[];
          }
        ).beds[0]!,
    );
  const press = async (selector: string) => {
    await tabTo(page, selector);
    await page.keyboard.press('Enter');
  };
  const changed = async (selector: string) => {
    await press(selector);
    await expect(page.locator('[data-changed]')).toBeFocused();
    await expect(page.getByText(words('en')['play:planning.busy']!)).toHaveCount(0);
  };
  /** The first idea of the plan whose opened changes hold this. */
  const openOneWith = async (wanted: string): Promise<Placed> => {
    for (const one of (await kept()).plan) {
      await press(`[data-edit="${one.idea}"]`);
      await expect(page.locator(':focus')).toHaveAccessibleName(
        new RegExp(`^${words('en')['play:planning.edit']!}.*\\d.*${words('en')[`ideas:${one.idea}.name`]!}`),
      );
      await expect(page.locator('[data-editing]')).toBeVisible();
      if (await page.locator(`[data-editing] ${wanted}`).count()) return one;
      await page.keyboard.press('Enter');
    }
    throw new Error(`no idea of the plan offers ${wanted}`);
  };

  const long = await openOneWith('[data-action="longer"]');
  await changed('[data-action="longer"]');
  expect((await kept()).plan.find(({ idea }) => idea === long.idea)?.minutes).toBe(long.minutes + 5);
  await changed('[data-editing] [data-action="pin"]');
  expect((await kept()).pins.map(({ idea }) => idea)).not.toContain(long.idea);
  await changed('[data-editing] [data-action="pin"]');
  expect((await kept()).pins.map(({ idea }) => idea)).toContain(long.idea);
  await press(`[data-edit="${long.idea}"]`);

  const old = await openOneWith('[data-swap]');
  await tabTo(page, '[data-swap]');
  const idea = await page.evaluate(() => document.activeElement!.getAttribute('data-swap')!);
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-changed]')).toBeFocused();
  expect((await kept()).plan).toContainEqual(expect.objectContaining({ idea, from: old.from }));

  const gone = await openOneWith('[data-action="ban"]');
  await changed('[data-editing] [data-action="ban"]');
  const after = await kept();
  expect(after.plan.map((one) => one.idea)).not.toContain(gone.idea);
  expect(after.notToday).toContain(gone.idea);
});

// what stands on the child's page changes with the hour: none of it may lie behind the four pictures
for (const [hour, mode] of [
  ['07:40', 'three-doors'],
  ['11:36', 'path'],
  ['14:10', 'clock'],
  ['16:20', 'list'],
  ['23:10', 'path'],
] as const)
  test(`at ${hour} (${mode}) the keyboard alone comes over the child’s page to the four pictures`, async ({
    page,
  }) => {
    await page.clock.install({ time: new Date(`2026-11-25T${hour}:00Z`) });
    await page.addInitScript(
      (value) => localStorage.setItem('bare-toes:day', value),
      JSON.stringify({ firstDay: '2026-11-20', ways: { ...usualWays(false), mode } }),
    );
    await page.goto('/en/our-day/');
    await scriptRuns(page);
    await expect(page.locator('main[data-mode]')).toBeVisible();
    await tabTo(page, 'a[href*="call/thirsty"]');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/call/thirsty/');
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

/** Line 1.5, after a paragraph 2, between letters 0.12 and words 0.16 times the size. Source: WCAG 2.2, 1.4.12. */
const WIDER = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }
  p { margin-block-end: 2em !important }`;

/** Text that its box cuts off; what is read out only is no wider than a dot. */
const cut = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *, .bar *')]
      .filter((e) => e.checkVisibility() && !e.closest('svg, .hidden-visually'))
      .filter((e) => {
        const { overflowX, overflowY, clipPath } = getComputedStyle(e);
        const hides = (overflowX !== 'visible' || overflowY !== 'visible') && clipPath === 'none';
        return hides && (e.scrollHeight > e.clientHeight + 2 || e.scrollWidth > e.clientWidth + 2);
      })
      .map((e) => e.outerHTML.slice(0, 100)),
  );

/** Words that reach over the frame they stand in. */
const overFrame = (page: Page) =>
  page.evaluate(() => {
    const over: string[] = [];
    const walker = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text; text = walker.nextNode()) {
      const element = text.parentElement!;
      if (!text.textContent!.trim() || element.closest('svg, .hidden-visually')) continue;
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, width } = range.getBoundingClientRect();
      for (let box: Element | null = element; box && width > 1; box = box.parentElement) {
        const { borderLeftWidth, borderRightWidth, display, clipPath } = getComputedStyle(box);
        if (clipPath !== 'none') break;
        const framed = Number.parseFloat(borderLeftWidth) && Number.parseFloat(borderRightWidth);
        if (display === 'inline' || !framed) continue;
        const frame = box.getBoundingClientRect();
        if (left < frame.left - 1 || right > frame.right + 1)
          over.push(`${text.textContent!.trim().slice(0, 40)}: ${box.outerHTML.slice(0, 60)}`);
      }
    }
    return over;
  });

const TWICE = 'html { font-size: 200% !important }';

/** How many times larger the heading is than without TWICE; in one go, since a page may put another in its place. */
const follows = (page: Page) =>
  page
    .locator('h1')
    .first()
    .evaluate((heading) => {
      const sizeNow = () => Number.parseFloat(getComputedStyle(heading).fontSize);
      const twice = sizeNow();
      document.documentElement.style.setProperty('font-size', '100%', 'important');
      const once = sizeNow();
      document.documentElement.style.removeProperty('font-size');
      return twice / once;
    });

/** Opens what is folded and doubles the text; says what is cut off, pushed sideways or over its frame, so and with wider text. */
async function largeText(page: Page, address: string): Promise<string[]> {
  await page.goto(address);
  await scriptRuns(page);
  await expect(page.locator('h1').first()).toBeVisible();
  // a result is drawn anew once it is written down
  if (await page.locator('article[data-urgency] .answers').count())
    await expect(page.locator('[data-written]')).toBeVisible();
  const found: string[] = [];
  const look = async (how: string) => {
    for (const one of [...(await sideways(page)), ...(await cut(page)), ...(await overFrame(page))])
      found.push(`${address}, ${how}: ${one}`);
  };
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  const twice = await page.addStyleTag({ content: TWICE });
  await expect.poll(() => follows(page), `${address}: the text follows`).toBeCloseTo(2, 1);
  await look('twice');
  const wider = await page.addStyleTag({ content: `html { font-size: 100% !important } ${WIDER}` });
  await look('wider');
  for (const style of [twice, wider]) await style.evaluate((element) => (element as Element).remove());
  return found;
}

/** With BARE_TOES_WHOLE=yes (`npm run access`) every kind in each language; else each in one. */
const WHOLE = process.env.BARE_TOES_WHOLE === 'yes';
const ALL = [0, 1, 2];
/** Long words, and words from the right: English words are shorter than Polish ones nearly everywhere. */
const LARGE = WHOLE ? { en: ALL, pl: ALL, ar: ALL } : { pl: [0, 2], ar: [1] };
const SHARES = ALL.length;
for (const [language, shares] of Object.entries(LARGE))
  for (const share of shares)
    test(`${language}, every kind of page (${share + 1} of ${SHARES}): text at twice its size, and text with wider lines, words and letters, is neither cut off nor pushed sideways`, async ({
      page,
    }) => {
      const found: string[] = [];
      for (const address of routesOf(language).filter((_, at) => at % SHARES === share))
        found.push(...(await largeText(page, address)));
      expect(found).toEqual([]);
    });

for (const language of ['en', 'es', 'pl', 'ar'])
  test(`${language}: with text at twice its size the call button page still says in whole words what to press`, async ({
    page,
  }) => {
    await page.goto(`/${language}/bell/`);
    await scriptRuns(page);
    await page.addStyleTag({ content: TWICE });
    expect(await brokenWords(page.locator('h1'))).toEqual([]);
  });

test('Polish, with text at twice its size: what is to be done, the figures of the notes, what comes now and the child’s button at night stand in whole words', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-25T23:10:00Z') });
  // without a note there are no figures
  await page.goto(resultAddress('pl', 'toes-colour'));
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.addStyleTag({ content: TWICE });
  expect(await brokenWords(page.locator('.banner.ring-now .words'))).toEqual([]);
  for (const [address, place] of [
    ['our-notes/', 'main dt'],
    ['our-day/grown-up/', '[data-comes-now]'],
    ['our-day/', '[data-edge="please-come"]'],
  ] as const) {
    await page.goto(`/pl/${address}`);
    await scriptRuns(page);
    await expect(page.locator(place).first()).toBeVisible();
    await page.addStyleTag({ content: TWICE });
    expect(await brokenWords(page.locator(place)), address).toEqual([]);
  }
});

const PLANNED = ['', 'plan/', 'paper/', 'code/', 'moment/', 'night/', 'bed/'].map(
  (one) => `things-to-do/${one}`,
);
for (const language of WHOLE ? ['en', 'pl', 'ar'] : ['pl'])
  test(`${language}: once a day of play is planned, neither large text nor a narrow phone cuts anything off`, async ({
    page,
  }) => {
    await page.clock.install({ time: new Date('2026-11-25T08:40:00Z') });
    await page.addInitScript(
      (kept) => localStorage.setItem('bare-toes:play', kept),
      JSON.stringify({ open: FULL.shape, beds: [FULL] }),
    );
    const found: string[] = [];
    const looked = async (address: string) => {
      found.push(...(await largeText(page, `/${language}/${address}`)));
      await page.setViewportSize({ width: 320, height: 640 });
      await expect(page.locator('h1').first()).toBeAttached();
      for (const one of await sideways(page)) found.push(`${address}, narrow: ${one}`);
      await page.setViewportSize({ width: 360, height: 740 });
    };
    for (const address of [...PLANNED, 'our-day/grown-up/']) await looked(address);
    for (const mode of AGE_MODES) {
      await page.addInitScript(
        (value) => localStorage.setItem('bare-toes:day', value),
        JSON.stringify({ firstDay: '2026-11-20', ways: { ...usualWays(false), mode } }),
      );
      await looked('our-day/');
    }
    expect(found).toEqual([]);
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

const hexOf = ([red, green, blue]: readonly number[]) =>
  `#${[red!, green!, blue!].map((one) => one.toString(16).padStart(2, '0')).join('')}`;

// Source: CSS Color Adjustment 1, 3.1: under forced colours a browser may lay the page's colour under every word; what
// keeps a colour of its own behind words has to opt out, and then has to be readable by itself (WCAG 2.2, 1.4.6).
test('with colours forced by the device, what is filled keeps words that can be read', async ({ page }) => {
  let filled = 0;
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ forcedColors: 'active', colorScheme });
    for (const address of ['bell', 'things-to-do', 'bed-card', 'our-notes']) {
      await page.goto(`/en/${address}/`);
      await scriptRuns(page);
      if (address === 'our-notes') await page.locator('[data-note-kind]').first().tap();
      const found = await page.evaluate(() => {
        // as it stands once every change of colour is over
        for (const change of document.getAnimations()) change.finish();
        const paint = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
        const numbers = (color: string) => {
          paint.clearRect(0, 0, 1, 1);
          paint.fillStyle = color;
          paint.fillRect(0, 0, 1, 1);
          return [...paint.getImageData(0, 0, 1, 1).data];
        };
        const canvas = numbers(getComputedStyle(document.body).backgroundColor).join();
        return [...document.querySelectorAll<HTMLElement>('body *')].flatMap((element) => {
          const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent!.trim());
          if (!own || !element.checkVisibility()) return [];
          let behind: Element | null = element;
          while (behind && !numbers(getComputedStyle(behind).backgroundColor)[3])
            behind = behind.parentElement;
          if (!behind) return [];
          const ground = numbers(getComputedStyle(behind).backgroundColor);
          if (ground.join() === canvas) return [];
          const { color, forcedColorAdjust } = getComputedStyle(element);
          return [{ words: element.innerText, adjust: forcedColorAdjust, ground, ink: numbers(color) }];
        });
      });
      for (const { words: text, adjust, ground, ink } of found) {
        filled++;
        expect([address, text, adjust]).toEqual([address, text, 'none']);
        const ratio = contrast(hexOf(ground), hexOf(ink));
        expect(ratio, `${address}: ${text}`).toBeGreaterThanOrEqual(7);
      }
    }
  }
  expect(filled).toBeGreaterThanOrEqual(6);
});
