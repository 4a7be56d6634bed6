/** Scenes 1–6, 18 and 22 of the design (1-job.md, section 2), tapped through as a family would. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { SIGNS } from '#content/signs.ts';
import { WARD } from '#content/ward.ts';
import { chosen, keptNotes, scriptRuns, Taps, tapTo, words } from '../helpers/pages.ts';
import { forgetNotes } from '../helpers/kept-notes.ts';
import { root } from '../helpers/locales.ts';

const NIGHT = new Date('2026-01-15T03:10:00Z');
const MINUTE = 60_000;
/** The colour a skin tone has in the style sheet. */
const tone = (name: string) =>
  new RegExp(`data-skin='${name}'\\]\\s*\\.scene[^{]*\\{\\s*--s-skin: (#[0-9a-f]+)`).exec(
    readFileSync(path.join(root, 'src/styles/scene-skin.css'), 'utf8'),
  )?.[1];
const result = (page: Page) => page.locator('article[data-urgency]');
/** Dates and times stand apart from the sentence by invisible characters. */
const at = (text: string, time: string) => text.replace('{{time}}', `\u2068${time}\u2069`);

test.describe('in the night, London', () => {
  test.use({ timezoneId: 'Europe/London' });

  for (const language of ['en', 'es', 'pl', 'ar'])
    test(`scene 1, ${language}: 03:10, the toes have another colour: ring now after two taps`, async ({
      page,
    }) => {
      const own = words(language);
      await page.clock.install({ time: NIGHT });
      await chosen(page, { locale: language, role: 'grown-up', side: 'left' });
      await page.goto('/');
      // no tap yet: a phone that was here before opens at the night look
      await page.waitForURL(`**/${language}/look/`);
      await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
      await expect(page.getByText(own['look:leadNight']!)).toBeVisible();

      const taps = new Taps(page);
      await tapTo(taps, 'toes-colour');
      expect(taps.count).toBeLessThanOrEqual(2);
      await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
      const time = new Intl.DateTimeFormat(language, {
        hour: '2-digit',
        minute: '2-digit',
        hourCycle: 'h23',
        timeZone: 'UTC',
      });
      await expect(page.locator('[data-say="ward"]')).toHaveText(words('en')['say:toes-colour_left']!);
      await expect(page.locator('[data-say="ward"]')).toHaveAttribute('lang', 'en');
      await expect(page.locator('[data-say="ward"]')).toHaveAttribute('dir', 'ltr');
      if (language !== 'en') {
        await expect(page.locator('[data-say="family"]')).toHaveText(own['say:toes-colour_left']!);
        const [family, ward] = await Promise.all(
          ['family', 'ward'].map((who) => page.locator(`[data-say="${who}"]`).boundingBox()),
        );
        expect(ward!.y, 'the ward’s sentence stands under the family’s').toBeGreaterThan(family!.y);
      }
      await expect(page.locator('[data-do-not] svg')).toBeVisible();

      await expect(page.locator('[data-written]')).toContainText(time.format(NIGHT));

      await page.clock.fastForward(MINUTE);
      await taps.on('[data-action="bell"]');
      expect(taps.count).toBeLessThanOrEqual(3);
      await expect(page.locator('[data-pressed]')).toContainText(
        at(own['steps:result.pressedAt']!, time.format(Date.UTC(2026, 0, 15, 3, 11))),
      );
    });

  test('scene 2: nobody comes; after five minutes the second step stands there, also on a page opened again', async ({
    page,
    context,
  }) => {
    const english = words('en');
    expect(WARD.secondStepMinutes).toBe(5);
    await page.clock.install({ time: NIGHT });
    await page.goto('/en/look/toes/toes-colour/');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    const step = page.locator('[data-second-step]');
    await expect(step).toHaveAttribute('data-second-step', 'waiting');

    await page.clock.fastForward(3 * MINUTE);
    await expect(page.locator('[data-pressed]')).toContainText(/[34] minutes ago/);
    await expect(step).toHaveAttribute('data-second-step', 'waiting');
    await page.clock.fastForward(2 * MINUTE + 15_000);
    await expect(step).toHaveAttribute('data-second-step', 'due');
    await expect(step).toContainText(english[`steps:secondStep.${WARD.secondStep}`]!);
    await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
    await page.close();

    const again = await context.newPage();
    await again.goto('/en/look/');
    const first = again.locator('main > *').first();
    await expect(first).toHaveAttribute('data-urgency', 'ring-now');
    await expect(first).toContainText(english['steps:open.question']!);
    await expect(first.locator('[data-second-step]')).toHaveAttribute('data-second-step', 'due');
    await expect(first).toContainText(english[`steps:secondStep.${WARD.secondStep}`]!);
    // not yet: back to what to do, with the second step still due
    await first.getByRole('button', { name: english['steps:open.no']! }).tap();
    await again.waitForURL('**/en/look/toes/toes-colour/');
    await expect(again.locator('[data-second-step="due"]')).toBeVisible();
    // a nurse looked: nothing waits any more
    await again.locator('[data-action="nurse-looked"]').tap();
    await expect(again.locator('[data-second-step]')).toHaveCount(0);
    await again.goto('/en/look/');
    await scriptRuns(again);
    await expect(again.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(again.getByText(english['steps:open.question']!)).toHaveCount(0);
  });

  test('scene 2: closed before the second step was due, opened after: it is there', async ({
    page,
    context,
  }) => {
    await page.clock.install({ time: NIGHT });
    await page.goto('/en/look/cord/load-not-free/');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    await page.close();

    const again = await context.newPage();
    await again.clock.fastForward(8 * MINUTE);
    await again.goto('/en/look/cord/load-not-free/');
    await expect(again.locator('[data-second-step]')).toHaveAttribute('data-second-step', 'due');
    await expect(again.locator('[data-pressed]')).toContainText(/\d+ minutes ago/);
    expect((await keptNotes(again)).filter((note) => note.kind === 'bell')).toHaveLength(1);
  });

  test('scene 2: nobody wrote a press down: the second step comes as soon, and does not speak of one', async ({
    page,
  }) => {
    const english = words('en');
    await page.clock.install({ time: NIGHT });
    await page.goto('/en/look/toes/toes-colour/');
    const step = page.locator('[data-second-step]');
    await expect(page.locator('[data-written]')).toBeVisible();
    await expect(step).toContainText('03:15');
    await expect(step).toContainText(english[`steps:secondStep.${WARD.secondStep}`]!);
    await page.clock.fastForward(WARD.secondStepMinutes * MINUTE + 15_000);
    await expect(step).toHaveAttribute('data-second-step', 'due');
    await expect(step).toContainText(english['steps:secondStep.notPressed']!);
    await expect(step).not.toContainText(english['steps:secondStep.title']!);
    await expect(step).not.toContainText(/again/i);
    await page.goto('/en/look/');
    await expect(step).toContainText(english['steps:secondStep.notPressed']!);
    await page.goto('/en/bell/');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    await page.goto('/en/look/');
    await expect(step).toContainText(english['steps:secondStep.title']!);
  });
});

test('whoever opens the start page sees first what the button is to be pressed for now, and nothing lesser', async ({
  page,
}) => {
  const waits = page.locator('main section[data-urgency]');
  await page.goto('/en/look/bandage/itchy-under/');
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.goto('/en/look/');
  await expect(waits).toHaveAttribute('data-urgency', 'next-visit');
  await page.goto('/en/#choose');
  await scriptRuns(page);
  await page.waitForTimeout(500);
  await expect(waits).toHaveCount(0);

  await page.goto('/en/look/cord/load-not-free/');
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.goto('/en/#choose');
  await expect(waits).toHaveAttribute('data-urgency', 'ring-now');
  await expect(waits).toContainText(words('en')['signs:load-not-free.name']!);
  expect(await waits.evaluate((section) => section.previousElementSibling)).toBeNull();
  await expect(waits.getByText(words('en')['common:urgency.ring-now']!)).toBeInViewport();
});

test('breathing, waking and a fit wait no minutes: press and call out at once', async ({ page }) => {
  for (const sign of ['breath-hard', 'hard-to-wake', 'shaking-fit']) {
    await page.goto(`/en/look/danger/${sign}/`);
    await expect(page.locator('[data-second-step]')).toHaveAttribute('data-second-step', 'at-once');
    await expect(page.locator('[data-second-step]')).toContainText(words('en')['steps:secondStep.atOnce']!);
  }
});

test('scene 3: the load is on the floor: hands off comes right after the class, and is the largest text below it', async ({
  page,
}) => {
  const english = words('en');
  await page.goto('/en/look/');
  const taps = new Taps(page);
  await tapTo(taps, 'load-not-free');
  expect(taps.count).toBeLessThanOrEqual(2);
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-written]')).toBeVisible();
  const order = await result(page).evaluate((article) =>
    [...article.children].slice(0, 2).map((child) => child.outerHTML),
  );
  expect(order[0]).toContain(english['common:urgency.ring-now']!);
  expect(order[1]).toContain('data-do-not');
  const doNot = page.locator('[data-do-not]');
  await expect(doNot).toContainText(english['signs:load-not-free.doNot']!);
  await expect(doNot.locator('svg')).toBeVisible();
  const box = (await doNot.boundingBox())!;
  expect(box.y, 'seen without scrolling').toBeLessThan(740 * 0.75);
  expect(box.x + box.width / 2).toBeCloseTo(180, -1);
  const size = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
  expect(await size('[data-do-not] p')).toBeGreaterThanOrEqual(await size('article p.do'));
  // the load has fallen: the same, from its sub-answer
  await page.locator('[data-detail="fallen"]').tap();
  await page.waitForURL('**/load-not-free/fallen/');
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  expect(await result(page).evaluate((article) => article.children[1]!.hasAttribute('data-do-not'))).toBe(
    true,
  );
});

test('scene 4: the bandage is wet: tell the nurse, and words that take the shame away', async ({ page }) => {
  const english = words('en');
  await page.goto('/en/look/');
  const taps = new Taps(page);
  await tapTo(taps, 'band-wet');
  expect(taps.count).toBeLessThanOrEqual(2);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
  await expect(result(page)).toContainText(english['signs:band-wet.child']!);
  await expect(page.locator('[data-action="told"]')).toBeVisible();
});

test('scene 5: not sure on deep skin: the pictures wear the child’s tone, not sure asks the nurse to look too', async ({
  page,
}) => {
  const english = words('en');
  await chosen(page, { skin: 'umber', side: 'left' });
  await page.goto('/en/look/');
  const kept = await page.evaluate(() => document.documentElement.dataset.skin);
  const taps = new Taps(page);
  await taps.on('main a[data-part="toes"]');
  await page.waitForURL('**/look/toes/');
  const pair = page.locator('li:has(> * > a[data-sign="toes-colour"]) svg');
  await expect(pair).toHaveCount(2);
  expect(kept).toBe('umber');
  // the prerendered pictures are drawn anew as this child: one read in between belongs to no page any more
  await expect(async () => {
    for (const picture of await pair.all()) {
      const worn = await picture.evaluate((svg) => getComputedStyle(svg).getPropertyValue('--s-skin').trim());
      expect(worn).toBe(tone('umber'));
    }
  }).toPass({ timeout: 10_000 });
  await taps.on('a[data-sign="toes-colour"][data-answer="not-sure"]');
  await page.waitForURL('**/toes-colour/not-sure/');
  expect(taps.count).toBeLessThanOrEqual(3);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'not-sure');
  await expect(result(page).locator('h1')).toHaveText(english['common:urgency.not-sure']!);
  await expect(page.locator('[data-say="ward"]')).toHaveText(english['say:notSure.toes']!);
});

test('scene 6: a child under three that cannot be comforted: ring now in two taps; soreness that rises adds its reason', async ({
  page,
}) => {
  await chosen(page, { under3: true });
  await page.goto('/en/look/');
  const taps = new Taps(page);
  await tapTo(taps, 'very-upset');
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  expect(taps.count).toBeLessThanOrEqual(3);
  await expect(page.locator('[data-because]')).toHaveAttribute('data-because', /\bR12\b/);
  await taps.on(page.getByRole('link', { name: words('en')['steps:result.anotherThing']! }));
  await page.waitForURL('**/en/look/');
  await tapTo(taps, 'sore-rising');
  await expect(page.locator('[data-because]')).toHaveAttribute('data-because', /\bR6\b.*\bR12\b/);
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
});

test('scene 6: an older child: upset alone is "tell", with rising soreness "ring now"', async ({ page }) => {
  await page.goto('/en/look/');
  const taps = new Taps(page);
  await tapTo(taps, 'very-upset');
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
  await page.goto('/en/look/');
  await tapTo(taps, 'sore-rising');
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-because]')).toHaveAttribute('data-because', /\bR6\b/);
});

test.describe('where clocks go back at 03:00', () => {
  test.use({ timezoneId: 'Europe/Berlin' });

  test('scene 18: 02:40 comes twice; both notes are kept, in their order, an hour apart', async ({
    page,
  }) => {
    await page.clock.install({ time: new Date('2026-10-25T00:40:00Z') });
    await page.goto('/en/look/bandage/band-wet/');
    await expect(page.locator('[data-written]')).toContainText('02:40');
    await page.clock.fastForward(60 * MINUTE);
    await page.goto('/en/look/toes/toes-colour/');
    await expect(page.locator('[data-written]')).toContainText('02:40');
    const notes = (await keptNotes(page)).sort((a, b) => a.t - b.t);
    expect(notes.map((note) => [note.sign, note.off])).toEqual([
      ['band-wet', 120],
      ['toes-colour', 60],
    ]);
    expect(notes[1]!.t - notes[0]!.t).toBeGreaterThanOrEqual(60);
    expect(notes[1]!.t - notes[0]!.t).toBeLessThanOrEqual(61);

    await page.goto('/en/our-notes/');
    const rows = page.locator('[data-entry="sign"]');
    await expect(rows).toHaveCount(2);
    const english = words('en');
    // newest first
    await expect(rows.nth(0)).toContainText(english['signs:toes-colour.name']!);
    await expect(rows.nth(0)).toContainText('02:40');
    await expect(rows.nth(1)).toContainText(english['signs:band-wet.name']!);
    await expect(rows.nth(1)).toContainText('02:40');
  });
});

test('scene 22: numb toes are ring now, whatever else is like usual', async ({ page }) => {
  await page.goto('/en/look/');
  const taps = new Taps(page);
  await tapTo(taps, 'toes-numb');
  expect(taps.count).toBeLessThanOrEqual(2);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');

  // and in the full look, with everything else like usual and a nurse who has just looked
  await page.locator('[data-action="nurse-looked"]').tap();
  await expect(page.locator('[data-action="nurse-looked"]')).toHaveCount(0);
  await page.goto('/en/look/full/');
  await scriptRuns(page);
  await page.locator('main a.button.main').tap();
  for (let step = 1; step <= 6; step += 1) {
    await page.waitForURL(`**/look/full/${step}/`);
    const usual = page.locator('label[data-answer="like-usual"]');
    await expect(usual.first()).toBeVisible();
    for (const label of await usual.all()) {
      const numb = (await label.getAttribute('data-sign')) === 'toes-numb';
      await (numb ? page.locator('label[data-sign="toes-numb"][data-answer="different"]') : label).tap();
    }
    await page.locator('a[data-next]').tap();
  }
  await page.waitForURL('**/look/full/end/');
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('article h1')).toHaveText(words('en')['common:urgency.ring-now']!);
  await expect(page.locator('[data-written]')).toBeVisible();
  expect(SIGNS['toes-numb'].urgency).toBe('ring-now');

  // the button that is asked for is noted where it is asked for
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-pressed]')).toBeVisible();

  // a phone that drops the page and loads it anew writes no second look, and still says what to do
  const kept = await keptNotes(page);
  const time = await page.locator('[data-written]').innerText();
  await page.reload();
  await scriptRuns(page);
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('article a[href*="toes-numb"]')).toBeVisible();
  await expect(page.locator('[data-written]')).toHaveText(time);
  expect(await keptNotes(page)).toEqual(kept);
});

test('the end of the six looks, opened without a look, writes nothing and leads to a look', async ({
  page,
}) => {
  await forgetNotes(page);
  await page.goto('/en/look/full/end/');
  await scriptRuns(page);
  await page.locator('main a[href$="/look/full/"]').tap();
  await page.waitForURL('**/look/full/');
  expect(await keptNotes(page)).toEqual([]);
});
