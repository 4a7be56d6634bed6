/** A plan leaves the tablet: as a code and a link, as the card for a hard moment, and on paper at the bed's end. */
import { expect, test, type Browser, type Page } from '@playwright/test';
import { encodePlay } from '#domain/play-bed/travel.ts';
import { eventKind, type PlayBed } from '#domain/play-bed/bed.ts';
import { leftToChild } from '#domain/play-bed/choose.ts';
import { momentCard } from '#domain/play-bed/moments.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { IDEAS } from '#content/ideas.ts';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { readFromScreen } from '../helpers/codes.ts';
import { chosen, scriptRuns, words } from '../helpers/pages.ts';
import { FULL, TYPICAL } from '../helpers/play-beds.ts';

const english = words('en');
/** The day the helpers' beds were ticked for. */
const MORNING = new Date('2026-11-25T08:40:00Z');
/** What has begun stands in a plan whatever is ticked, so any bed may have any day on paper. */
const LATE = new Date('2026-11-25T23:30:00Z');
const keptPlay = (page: Page) => page.evaluate(() => localStorage.getItem('bare-toes:play'));

/** A device on which this bed has been planned. */
async function withBed(page: Page, bed: PlayBed, at = MORNING) {
  await page.clock.install({ time: at });
  await page.addInitScript(
    (kept) => {
      if (!localStorage.getItem('bare-toes:play')) localStorage.setItem('bare-toes:play', kept);
    },
    JSON.stringify({ open: bed.shape, beds: [bed] }),
  );
}
async function newPhone(browser: Browser, at = MORNING): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    timezoneId: 'Europe/London',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.clock.install({ time: at });
  return page;
}
const pagesOf = async (page: Page) => {
  const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(paper) ?? [];
  return {
    count: [...paper.matchAll(/\/Type\s*\/Page(?!s)/g)].length,
    // points of 1/72 inch; ISO 216: A5 is 148 by 210 mm
    millimetres: [width, height].map((points) => Math.round((Number(points) * 25.4) / 72)),
  };
};

test('scene 12: the family’s phone reads the code, sees what comes, and only then takes it', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  await withBed(page, TYPICAL);
  await page.goto('/en/things-to-do/plan/');
  const age = page.locator('[data-which-bed] strong');
  const told = await age.innerText();
  await page.locator('[data-action="code"]').tap();
  const picture = page.locator('[data-link]');
  await expect(picture).toBeVisible();
  // the shape and the age, as on every page of the bed
  await expect(age).toHaveText(told);
  const link = (await picture.getAttribute('data-link'))!;
  expect(link).toBe(`${baseURL}/#${encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER)}`);
  expect(await readFromScreen(context, picture.locator('svg'))).toBe(link);

  const phone = await newPhone(browser);
  await phone.goto(link);
  await phone.locator('li[lang="en"] a').tap();
  await phone.waitForURL('**/en/things-to-do/take/');
  const shown = phone.locator('[data-plan-of]');
  await expect(shown).toHaveAttribute('data-plan-of', TYPICAL.shape);
  await expect(phone.locator('[data-planned]')).toHaveAttribute('data-planned', String(TYPICAL.plan!.length));
  await expect(phone.locator('[data-taken-moment]')).toHaveCount(TYPICAL.sketch.moments.length);
  // nothing is taken by looking
  expect(await keptPlay(phone)).toBeNull();
  await phone.locator('[data-action="take"]').tap();
  await expect(phone.locator('[data-taken]')).toHaveAttribute('data-taken', 'plan');
  await expect(phone.locator('main a[href="/en/things-to-do/"]')).toHaveCount(1);
  const kept = async () => JSON.parse((await keptPlay(phone))!) as { open: string; beds: PlayBed[] };
  expect(await kept()).toEqual({ open: TYPICAL.shape, beds: [{ ...TYPICAL, taken: true }] });
  // neither the address nor the way back holds the plan
  const code = encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER);
  const here = () => phone.evaluate(() => JSON.stringify([location.href, history.state]));
  expect(await here()).not.toContain(code);
  await phone.goBack();
  expect(await here()).not.toContain(code);
  await phone.goto('/en/things-to-do/plan/');
  await expect(phone.locator('[data-strip] [data-idea]')).toHaveCount(TYPICAL.plan!.length);
  // a family answers and says what came up; the hand is whose plan it is
  await scriptRuns(phone);
  const hand = phone.locator('[data-editing] button');
  const why = phone.locator('[data-edit]').last();
  await expect(why).toContainText(english['play:planning.why']!);
  await why.tap();
  await expect(phone.locator('[data-because]').first()).toBeVisible();
  await expect(hand).toHaveCount(0);
  await expect(phone.locator('[data-came-up]').first()).toBeAttached();
  await phone.goto('/en/things-to-do/bed/');
  await expect(phone.locator('[data-came-as-code]')).toBeVisible();
  await expect(phone.locator('[data-fold="moment"], [data-action="new-own"]')).toHaveCount(0);
  await phone.locator(`[data-reach^="moments "]`).first().click();
  await expect(phone.locator('[data-action="by-hand"]')).toBeFocused();
  // whoever plans play may do it here, too, and is not asked again
  await phone.locator('[data-action="by-hand"]').tap();
  await expect(phone.locator('[data-fold="moment"]')).toBeVisible();
  expect(await kept()).toEqual({ open: TYPICAL.shape, beds: [TYPICAL] });
  await phone.goto('/en/things-to-do/plan/');
  await expect(phone.locator('[data-came-as-code]')).toHaveCount(0);
  await phone.locator('[data-edit]').last().tap();
  await expect(hand).not.toHaveCount(0);
  await phone.context().close();
});

test('a code that is damaged, cut short, foreign or too new says so and changes nothing', async ({
  page,
}) => {
  await withBed(page, { ...FULL, shape: 'star' });
  const code = encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER);
  const swapped = code.slice(0, 40) + (code[40] === '7' ? '8' : '7') + code.slice(41);
  const newer = encodePlay(TYPICAL, [...IDEA_ORDER].reverse(), THING_ORDER);
  // the letters of a list that this version does not have all of
  const tooNew = encodePlay(
    { ...TYPICAL, notToday: ['what-if-later'] },
    [...IDEA_ORDER, 'what-if-later'],
    THING_ORDER,
  );
  expect(newer).not.toBe(code);
  await page.goto('/en/things-to-do/take/');
  await scriptRuns(page);
  const before = await keptPlay(page);
  for (const [text, reason] of [
    [swapped, 'damaged'],
    [code.slice(0, -9), 'incomplete'],
    ['1ABC-2DEF-3GHJ-4KMN-5PQR-6STV', 'foreign'],
    [tooNew, 'too-new'],
  ] as const) {
    await page.locator('textarea').fill(`https://ward.example/#${text}`);
    await page.locator('[data-action="read"]').tap();
    const fault = page.locator('[data-fault]');
    await expect(fault).toHaveAttribute('data-fault', reason);
    await expect(fault).toHaveText(english[`plans:take.${reason}`]!);
    await expect(page.locator('[data-action="take"]')).toHaveCount(0);
    expect(await keptPlay(page)).toBe(before);
  }
});

test('a camera that is refused, missing or busy leaves the link as the way', async ({ page }) => {
  const code = encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER);
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () =>
      Promise.reject(new DOMException('no', new URLSearchParams(location.search).get('camera')!));
  });
  for (const [name, reason] of [
    ['NotAllowedError', 'refused'],
    ['NotFoundError', 'none'],
    ['NotReadableError', 'busy'],
  ] as const) {
    await page.goto(`/en/things-to-do/take/?camera=${name}`);
    await scriptRuns(page);
    await page.locator('[data-action="film"]').tap();
    const said = page.locator('[data-camera]');
    await expect(said).toHaveAttribute('data-camera', reason);
    await expect(said).toHaveText(english[`plans:take.camera-${reason}`]!);
    await page.locator('textarea').fill(`https://ward.example/#${code}`);
    await page.locator('[data-action="read"]').tap();
    await expect(page.locator('[data-plan-of]')).toHaveAttribute('data-plan-of', TYPICAL.shape);
  }
});

test('a bed of the same shape gives way only after that was said; of another day only the bed comes', async ({
  page,
}) => {
  await withBed(page, { ...FULL, child: { ...FULL.child, ageMonths: 30 } }, new Date('2026-11-27T08:40:00Z'));
  await page.goto(`/en/things-to-do/take/#${encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER)}`);
  await expect(page.locator('[data-replaces]')).toBeVisible();
  await expect(page.locator('[data-other-day]')).toHaveAttribute('data-other-day', TYPICAL.day);
  await page.locator('[data-action="take"]').tap();
  await expect(page.locator('[data-taken]')).toHaveAttribute('data-taken', 'bed');
  const { beds } = JSON.parse((await keptPlay(page))!) as { beds: PlayBed[] };
  expect(beds).toHaveLength(1);
  expect(beds[0]).toMatchObject({ day: '2026-11-27', child: TYPICAL.child });
  expect(beds[0]).not.toHaveProperty('plan');
});

/** A child of twenty months whom nobody is with at the hard moments; only for the last of them something is kept. */
const ALONE: PlayBed = {
  ...TYPICAL,
  child: { ...TYPICAL.child, ageMonths: 20, mouths: true },
  sketch: {
    ...TYPICAL.sketch,
    moments: TYPICAL.sketch.moments.map((moment, at) => ({ ...moment, grownUp: at > 1 })),
  },
  plan: [{ idea: 'hand-in-hand', window: 'other-1', from: 18 * 60 + 15, minutes: 10 }],
  ...{ pins: [], done: [] },
};

test('a hard moment that nothing fits is told with what would open it, after a reload and on a phone that took the plan', async ({
  page,
  browser,
}) => {
  const told = async (there: Page) => {
    await there.goto('/en/things-to-do/plan/');
    await there.reload();
    await expect(there.locator('[data-impossible]')).toHaveCount(2);
    const needle = there.locator('[data-impossible="needle-1"]');
    await expect(needle).toContainText('09:15');
    await expect(needle.locator('[data-relax]').first()).toHaveAttribute('data-relax', 'grown-up');
    await expect(needle.locator('[data-relax]').first()).toContainText(/: \D?\d/);
    await expect(needle.locator('[data-ask]')).toHaveText(english['play:open.ask']!);
    // the day itself does not pass over it either
    await expect(there.locator('[data-open="needle-1"]')).toHaveText(english['play:open.nothing']!);
    await expect(there.locator('[data-open="other-1"]')).toHaveCount(0);
    // in short on the first page
    await there.goto('/en/things-to-do/');
    const next = there.locator('[data-next-moment="needle-1"]');
    await expect(next.locator('[data-nothing-fits]')).toHaveText(english['play:open.nothing']!);
    await expect(next.locator('[data-relax]')).toHaveCount(1);
    await expect(next.locator('[data-relax]')).toHaveAttribute('data-relax', 'grown-up');
    await expect(next.locator('[data-ask]')).toBeVisible();
  };
  await withBed(page, ALONE);
  await told(page);
  const phone = await newPhone(browser);
  await phone.goto(`/en/things-to-do/take/#${encodePlay(ALONE, IDEA_ORDER, THING_ORDER)}`);
  await phone.locator('[data-action="take"]').tap();
  await expect(phone.locator('[data-taken]')).toBeVisible();
  await told(phone);
  await phone.context().close();
  // once they are over nothing is said of them
  await page.clock.setFixedTime(new Date('2026-11-25T15:00:00Z'));
  await page.goto('/en/things-to-do/plan/');
  await expect(page.locator('[data-strip]')).toBeVisible();
  await expect(page.locator('[data-impossible]')).toHaveCount(0);
});

test('card and sheet of a child who may not blow and fears water speak of no bubbles; each moment says its own', async ({
  page,
}) => {
  const room = { ...ALONE.room, isolation: 'breath' as const };
  await withBed(page, { ...ALONE, room, child: { ...ALONE.child, never: [] }, fears: ['water'] });
  const bubbles = /bubble/i;
  await page.goto('/en/things-to-do/paper/');
  const paper = page.locator('[data-paper]');
  await expect(paper.locator('[data-phase="during"]')).toBeVisible();
  await expect(paper).not.toContainText(bubbles);
  // something is kept for the last one alone
  const kept = paper.locator('[data-step="kept"]');
  await expect(kept).toHaveCount(1);
  await expect(kept).toContainText('18:15');
  await expect(kept).not.toContainText('09:15');
  const fits = paper.locator('[data-step="rhyme-song-bubbles"][data-at="needle-1"]');
  await expect(fits).toContainText('09:15');
  await expect(fits).toContainText(english['ideas:same-song.name']!);
  await expect(paper.locator('[data-at="other-1"]')).toHaveCount(0);
  const empty = paper.locator('[data-row="moment"] [data-empty]');
  await expect(empty).toHaveCount(2);
  for (const one of await empty.all()) {
    await expect(one).toContainText(english['play:open.nothing']!);
    await expect(one).toContainText(english['play:open.ask']!);
  }
  expect(await pagesOf(page)).toEqual({ count: 1, millimetres: [148, 210] });

  await page.goto('/en/things-to-do/moment/#needle-1');
  const card = page.locator('[data-moment-card]');
  await expect(card.locator('[data-open="needle-1"] [data-ask]')).toBeVisible();
  await expect(card.locator('[data-step="kept"]')).toHaveCount(0);
  await expect(card.locator('[data-step="rhyme-song-bubbles"]')).toContainText(
    english['ideas:same-song.name']!,
  );
  await expect(card).not.toContainText(bubbles);
  await page.goto('/en/things-to-do/moment/#other-1');
  await expect(card.locator('[data-step="kept"]')).toBeVisible();
  await expect(card.locator('[data-open]')).toHaveCount(0);
  // a bed with no hard moment told yet is a bed as well
  await page.evaluate(() => {
    const all = JSON.parse(localStorage.getItem('bare-toes:play')!) as {
      beds: { sketch: { moments: unknown[] }; plan: unknown[] }[];
    };
    all.beds[0]!.sketch.moments = [];
    all.beds[0]!.plan = [];
    localStorage.setItem('bare-toes:play', JSON.stringify(all));
  });
  await page.goto('/en/things-to-do/moment/');
  await page.reload();
  await expect(card.locator('[data-phase="during"]')).toBeVisible();
  await expect(card).not.toContainText(bubbles);
});

test('what was kept by hand and breaks a rule is refused with the rule in plain words', async ({ page }) => {
  const window = problemOf(TYPICAL, IDEAS).problem.windows.find(({ from }) => from === 16 * 60 + 30)!;
  const pin = { idea: 'recipe-dream', window: window.id, from: window.from, minutes: 10 };
  await withBed(page, { ...TYPICAL, eating: false, pins: [pin] });
  await page.goto('/en/things-to-do/plan/');
  await page.locator('[data-action="plan"]').tap();
  const refused = page.locator('[data-refused="recipe-dream"]');
  await expect(refused).toContainText(english['ideas:recipe-dream.name']!);
  await expect(refused).toContainText(english['play:rule.H12']!);
  await expect(refused).not.toContainText(/H\d/);
  // whoever opens the page later reads it, too
  await expect(page.locator('[data-bound]')).toBeVisible();
  await page.reload();
  await expect(refused).toContainText(english['play:rule.H12']!);
});

test('a child of ten says on the card what helped, and the bed knows it', async ({ page }) => {
  await withBed(page, { ...FULL, child: { ...FULL.child, ageMonths: 120, likes: [], dislikes: [] } });
  const { idea } = FULL.plan!.find(({ window }) => window === 'needle-1')!;
  await page.goto('/en/things-to-do/moment/#needle-1');
  const rated = page.locator(`[data-phase="after"] [data-rate="${idea}"]`);
  await expect(rated).toContainText(english[`ideas:${idea}.name`]!);
  const lists = async () => {
    const { beds } = JSON.parse((await keptPlay(page))!) as { beds: PlayBed[] };
    return [beds[0]!.child.likes, beds[0]!.child.dislikes];
  };
  await rated.locator('[data-again]').tap();
  expect(await lists()).toEqual([[idea], []]);
  await rated.locator('[data-not-again]').tap();
  expect(await lists()).toEqual([[], [idea]]);
  // that it was done is said once it has begun
  await expect(rated.locator('[data-done]')).toHaveCount(0);
  await page.clock.setFixedTime(new Date('2026-11-25T09:20:00Z'));
  await page.reload();
  await expect(rated.locator('[data-done]')).toBeVisible();
  // on paper it is a sentence
  await page.emulateMedia({ media: 'print' });
  await expect(rated).toBeHidden();
  expect(await pagesOf(page)).toEqual({ count: 1, millimetres: [148, 210] });
});

test('scene 14: from the plan to the card of that moment, with its idea and what staff do', async ({
  page,
}) => {
  await withBed(page, FULL);
  await page.goto('/en/things-to-do/plan/');
  const [moment] = FULL.sketch.moments.filter(({ procedure }) => procedure === 'bandage');
  await page.locator(`[data-moment-card="${moment!.id}"]`).tap();
  await page.waitForURL(`**/things-to-do/moment/#${moment!.id}`);
  const card = page.locator('[data-moment-card]');
  await expect(card).toHaveAttribute('data-moment-card', 'six');
  await expect(card.locator('[data-moment]')).toHaveAttribute('data-moment', moment!.id);
  const kept = FULL.plan!.filter(({ window }) => window === moment!.id).map(({ idea }) => idea);
  expect(kept.length).toBeGreaterThan(0);
  const shown = card.locator('[data-phase="during"] [data-idea]');
  await expect(shown).toHaveCount(kept.length);
  for (const idea of kept)
    await expect(card.locator(`[data-phase="during"] [data-idea="${idea}"]`)).toBeVisible();
  for (const { id, who } of momentCard(FULL.child.ageMonths).before)
    await expect(card.locator(`[data-phase="before"] [data-step="${id}"]`)).toHaveAttribute('data-who', who);
  expect(await pagesOf(page)).toEqual({ count: 1, millimetres: [148, 210] });
});

for (const [language, marks] of [
  ['en', '"“" "”"'],
  ['es', '"“" "”"'],
  ['pl', '"„" "”"'],
  ['ar', '"«" "»"'],
] as const)
  test(`${language}: what may be said stands in the marks of its language, on the card and on the bed’s sheet`, async ({
    page,
  }) => {
    for (const address of ['things-to-do/moment/', 'bed-card/sheet/']) {
      await page.goto(`/${language}/${address}`);
      await scriptRuns(page);
      const said = page.locator(`q:lang(${language})`).filter({ visible: true }).first();
      await expect(said).toBeVisible();
      await expect(said).toHaveCSS('quotes', marks);
      // the texts of that language write no other
      expect(Object.values(words(language)).join(' ')).toContain(marks.slice(1, 2));
    }
  });

test('on paper nothing strikes through the notice of a draft, and the frames of the bed’s sheet are whole', async ({
  page,
}) => {
  for (const language of ['en', 'ar']) {
    await page.goto(`/${language}/our-notes/`);
    await scriptRuns(page);
    await page.emulateMedia({ media: 'print' });
    const { letters, line } = await page.locator('[data-review]').evaluate((notice) => {
      const range = document.createRange();
      range.selectNodeContents(notice);
      return {
        letters: range.getBoundingClientRect().bottom,
        line: notice.getBoundingClientRect().bottom - 1,
      };
    });
    expect(letters, language).toBeLessThanOrEqual(line);
    await page.goto(`/${language}/bed-card/sheet/`);
    await scriptRuns(page);
    const main = await page.locator('main').boundingBox();
    for (const frame of await page.locator('.looks > li').all()) {
      const box = (await frame.boundingBox())!;
      expect(box.x).toBeGreaterThan(main!.x);
      expect(box.x + box.width).toBeLessThan(main!.x + main!.width);
    }
    await page.emulateMedia({ media: 'screen' });
  }
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('the card for every age is there as plain text', async ({ page }) => {
    await page.goto('/en/things-to-do/moment/');
    for (const month of [12, 40, 80, 120, 170])
      for (const { id } of momentCard(month).during)
        await expect(page.locator(`[data-step="${id}"]`).first()).toBeVisible();
    await expect(page.locator('[data-phase]')).toHaveCount(15);
  });
});

/** The smallest size of any words as they are printed, in points of 1/72 inch; a pixel of CSS is 1/96. */
const smallestPrint = async (page: Page) => {
  await page.emulateMedia({ media: 'print' });
  const smallest = await page.evaluate(() => {
    const sizes: number[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text; text = walker.nextNode()) {
      const element = text.parentElement!;
      if (!text.textContent!.trim() || !element.checkVisibility() || element.closest('.hidden-visually'))
        continue;
      sizes.push(Number.parseFloat(getComputedStyle(element).fontSize));
    }
    return Math.min(...sizes);
  });
  await page.emulateMedia({ media: null });
  return smallest * 0.75;
};

for (const [language, light, ageMonths] of [
  ['en', 'day', 88],
  ['ar', 'night', 40],
  // the youngest have most to be done for them
  ['es', 'day', 20],
] as const)
  test(`the plan for the bed end, ${language}: one A5 sheet in two languages, full as the day may be`, async ({
    page,
  }) => {
    await withBed(page, { ...FULL, eating: false, child: { ...FULL.child, ageMonths } }, LATE);
    await chosen(page, { light, locale: language });
    await page.goto(`/${language}/things-to-do/paper/`);
    // an English family on an English ward asks for a second one
    if (language === 'en') await page.locator('select[name="second"]').selectOption({ label: 'Español' });
    for (const spoken of [language, language === 'en' ? 'es' : 'en'])
      await expect(page.locator(`[data-paper] [lang="${spoken}"]`).first()).toBeVisible();
    await expect(page.locator('[data-paper] .play-picture:not([data-drawn])')).toHaveCount(0);
    const hasFood = (id: string) => IDEAS.find((one) => one.id === id)?.cautions.includes('food');
    const ideas = FULL.plan!.filter(
      ({ window, idea }) => FULL.sketch.moments.every(({ id }) => id !== window) && !hasFood(idea),
    );
    await expect(page.locator('[data-eating="ask"]')).toContainText(
      words(language)['plans:paper.eatingAsk']!,
    );
    await expect(page.locator('[data-row="idea"]')).toHaveCount(ideas.length);
    const fixed = FULL.sketch.events.filter(({ id }) => eventKind(id) !== 'medicine');
    await expect(page.locator('[data-row="event"]')).toHaveCount(fixed.length);
    // whoever passes the bed's end may read it
    await expect(page.locator('[data-paper]')).not.toContainText(words(language)['play:event.medicine']!);
    // the child's age stands on the screen alone
    const age = page.locator('[data-which-bed] strong');
    await expect(age).toBeVisible();
    await expect(page.locator('[data-paper]')).not.toContainText(await age.innerText());
    await page.emulateMedia({ media: 'print' });
    await expect(age).toBeHidden();
    await page.emulateMedia({ media: null });
    expect(await pagesOf(page)).toEqual({ count: 1, millimetres: [148, 210] });
    expect(await smallestPrint(page)).toBeGreaterThanOrEqual(7);
    if (language !== 'ar') return;
    // two directions in one line would run into each other
    await page.emulateMedia({ media: 'print' });
    for (const one of await page.locator('.phases li [lang], .phases h2 [lang]').all())
      await expect(one).toHaveCSS('display', 'block');
  });

for (const [language, ageMonths] of [
  ['es', 20],
  ['pl', 88],
  ['ar', 40],
] as const)
  test(`the plan for the bed end of a typical day, ${language}: one sheet, nothing on it smaller than 8 points`, async ({
    page,
  }) => {
    await withBed(page, { ...TYPICAL, child: { ...TYPICAL.child, ageMonths } });
    await page.goto(`/${language}/things-to-do/paper/`);
    await expect(page.locator('[data-paper] [lang="en"]').first()).toBeVisible();
    await expect(page.locator('[data-paper] .play-picture:not([data-drawn])')).toHaveCount(0);
    expect(await pagesOf(page)).toEqual({ count: 1, millimetres: [148, 210] });
    expect(await smallestPrint(page)).toBeGreaterThanOrEqual(8);
    await page.emulateMedia({ media: 'print' });
    // read from the foot of the bed
    const day = page.locator('[data-paper] .day [lang="en"]');
    expect(await day.evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize) * 0.75)).toBeCloseTo(14);
  });

/** Whether anything in a picture has a colour of its own. */
async function hasColour(page: Page, picture: Buffer): Promise<boolean> {
  const blank = await page.context().newPage();
  const found = await blank.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const brush = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    brush.drawImage(bitmap, 0, 0);
    const { data } = brush.getImageData(0, 0, bitmap.width, bitmap.height);
    for (let at = 0; at < data.length; at += 4)
      if (
        Math.max(data[at]!, data[at + 1]!, data[at + 2]!) -
          Math.min(data[at]!, data[at + 1]!, data[at + 2]!) >
        4
      )
        return true;
    return false;
  }, picture.toString('base64'));
  await blank.close();
  return found;
}

test('on paper: a large date, likes and never as pictures, free hands, a symbol for each caution, the bell, and no colour', async ({
  page,
}) => {
  const never = ['slow-bubbles', 'screen'];
  await withBed(page, { ...FULL, child: { ...FULL.child, never } });
  await chosen(page, { light: 'day', locale: 'es' });
  await page.goto('/es/things-to-do/paper/');
  const paper = page.locator('[data-paper]');
  await expect(paper.locator('.play-picture[data-drawn]').first()).toBeVisible();
  await expect(paper.locator('.play-picture:not([data-drawn])')).toHaveCount(0);
  const own = words('es');
  const [day, strip] = [
    paper.locator('.day .first-language'),
    paper.locator('[data-row="idea"] .told').first(),
  ];
  await expect(day).toContainText('25');
  await expect(paper.locator('.day [lang="es"]')).toContainText('noviembre');
  expect(await hasColour(page, await paper.screenshot())).toBe(true);

  await page.emulateMedia({ media: 'print' });
  const sizeOf = (of: typeof day) => of.evaluate((node) => parseFloat(getComputedStyle(node).fontSize));
  // twice as large as what is written small
  expect(await sizeOf(day)).toBeGreaterThan(1.9 * (await sizeOf(strip)));
  for (const [place, key] of [
    ['.bell', 'common:bar.worried'],
    ['.away', 'plans:paper.throwAway'],
    ['.cautions', 'play:filter.hands'],
  ] as const)
    for (const texts of [english, own]) {
      await expect(paper.locator(place)).toContainText(texts[key]!);
      await expect(paper.locator(place)).toBeVisible();
    }
  await expect(paper.locator('.cautions')).toContainText(own['play:filter.hands1']!);
  for (const [list, count] of [
    ['likes', 3],
    ['never', 2],
  ] as const) {
    const rows = paper.locator(`[data-list="${list}"] li`);
    await expect(rows).toHaveCount(count);
    for (const row of await rows.all()) {
      await expect(row.locator('.play-picture svg')).toBeVisible();
      // what is never wanted is crossed out, since paper has no red
      const line = await row
        .locator('.small-picture')
        .evaluate((node) => parseFloat(getComputedStyle(node, '::after').borderBlockStartWidth) || 0);
      expect(line > 1).toBe(list === 'never');
    }
  }
  const cautions = (await paper.locator('.cautions').getAttribute('data-cautions'))!.split(' ');
  expect(cautions.length).toBeGreaterThan(4);
  const symbols = new Set<string>();
  for (const caution of cautions) {
    const one = paper.locator(`[data-caution="${caution}"]`);
    await expect(one).toContainText(own[`plans:caution.${caution}`]!);
    await expect(one).toContainText(english[`plans:caution.${caution}`]!);
    const { width, height } = (await one.locator('svg').boundingBox())!;
    // three millimetres, at 96 dots an inch
    expect(Math.min(width, height)).toBeGreaterThan((3 * 96) / 25.4);
    symbols.add((await one.locator('path').getAttribute('d'))!);
  }
  expect(symbols.size).toBe(cautions.length);
  expect(await hasColour(page, await paper.screenshot())).toBe(false);
});

/** Every time of the day that can be left to the child is. */
const allLeft = (bed: PlayBed): PlayBed =>
  bed.plan!.reduce((left, slot) => ({ ...left, ...leftToChild(left, IDEAS, 0, slot) }), bed);

test('the sheet is one page of A5 whatever the day holds', async ({ page }) => {
  const kept = FULL.plan!.filter(({ window }) => FULL.sketch.moments.some(({ id }) => id === window));
  const rest = FULL.plan!.filter((one) => !kept.includes(one));
  await page.clock.install({ time: LATE });
  await chosen(page, { locale: 'ar' });
  await page.goto('/ar/');
  for (const [events, ideas, ageMonths] of [
    [0, 2, 20],
    [0, 3, 20],
    [0, 5, 20],
    [0, 9, 20],
    [10, 3, 88],
    [10, 9, 40],
    [10, 16, 20],
    [10, 22, 20],
  ] as const)
    for (const [plan, choosing] of [
      [[...kept, ...rest.slice(0, ideas)], false],
      [rest.slice(0, ideas), false],
      [[...kept, ...rest.slice(0, ideas)], true],
    ] as const) {
      const sketch = { ...FULL.sketch, events: FULL.sketch.events.slice(0, events) };
      const child = { ...FULL.child, ageMonths, never: ['slow-bubbles', 'draw', 'talk'] };
      const planned = {
        ...FULL,
        // one line more: meals wait for a nurse's word
        eating: false,
        sketch,
        child,
        plan: plan.toSorted((a, b) => a.from - b.from),
        pins: [],
        done: [],
      };
      const bed = choosing ? allLeft(planned) : planned;
      await page.evaluate(
        (all) => localStorage.setItem('bare-toes:play', all),
        JSON.stringify({ open: bed.shape, beds: [bed] }),
      );
      await page.goto('/ar/things-to-do/paper/');
      await expect(page.locator('[data-paper] [lang="en"]').first()).toBeVisible();
      await expect(page.locator('[data-paper] .play-picture:not([data-drawn])')).toHaveCount(0);
      expect(
        (await pagesOf(page)).count,
        JSON.stringify([events, ideas, plan.length, ageMonths, choosing]),
      ).toBe(1);
    }
});
