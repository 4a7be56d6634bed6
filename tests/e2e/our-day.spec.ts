/** The child's pages of today: doors, calls, night, a plain list; and nothing a child presses becomes a note or a look. */
import { expect, test, type Page } from '@playwright/test';
import { CALLS, EDGE_PICTURES } from '#domain/day/touch.ts';
import { usualWays, type Ways } from '#domain/day/kept-day.ts';
import { FULL } from '../helpers/play-beds.ts';
import { brokenWords, chosen, keptNotes, scriptRuns, sideways, words } from '../helpers/pages.ts';

test.use({ timezoneId: 'Europe/London' });

const english = words('en');
const DAY = '2026-11-25';
/** A bed of that day whose plan begins with it. */
const PLAYED = { open: FULL.shape, beds: [FULL] };

/** A phone at a time of a November day, with what it keeps of the child's day. */
async function at(page: Page, time: string, ways: Partial<Ways>, kept: Record<string, unknown> = {}) {
  await page.clock.install({ time: new Date(`${DAY}T${time}:00Z`) });
  await page.addInitScript(
    (value) => {
      if (!localStorage.getItem('bare-toes:day')) localStorage.setItem('bare-toes:day', value);
    },
    JSON.stringify({ firstDay: '2026-11-20', ways: { ...usualWays(false), ...ways }, ...kept }),
  );
  await page.goto('/en/our-day/');
  await scriptRuns(page);
  await expect(page.locator('main[data-mode]')).toBeVisible();
}
const keptDay = (page: Page) =>
  page.evaluate(
    () =>
      JSON.parse(localStorage.getItem('bare-toes:day')!) as {
        book: { done: unknown[] };
        today?: { edge: { picture: string }[] };
      },
  );

test('a child of three pushes breakfast through the first of three doors, and has it back within ten seconds', async ({
  page,
}) => {
  await at(page, '07:40', { mode: 'three-doors' });
  const doors = page.locator('[data-door]');
  await expect(doors).toHaveCount(3);
  const now = page.locator('[data-door="now"]');
  await expect(now).toHaveAttribute('data-event', 'breakfast');
  // nothing has to be read: every control has a picture and a name
  expect((await page.locator('[data-doors]').innerText()).trim()).toBe('');
  // but how the door for grown-ups opens: a word that stands in its name, too
  const hold = page.locator('[data-hold]');
  await expect(hold).toHaveText(english['day:holdShort']!);
  await expect(hold).toHaveAccessibleName(new RegExp(`^${english['day:holdShort']!}\\b.*grown-ups`));
  const size = await now.boundingBox();
  expect(Math.min(size!.width, size!.height)).toBeGreaterThanOrEqual(56);

  await now.tap();
  await expect(now).toHaveAttribute('data-done', 'true');
  expect((await keptDay(page)).book.done).toHaveLength(1);
  const back = page.locator('[data-action="take-back"]');
  await back.tap();
  await expect(now).not.toHaveAttribute('data-done');
  expect((await keptDay(page)).book.done).toEqual([]);

  await now.tap();
  await expect(back).toBeVisible();
  await page.clock.runFor(10_500);
  await expect(back).toHaveCount(0);
  expect((await keptDay(page)).book.done).toHaveLength(1);
});

for (const language of ['en', 'es', 'pl', 'ar'])
  test(`${language}: on a small phone each word of a call is whole, and at night the sentence stands above the calls`, async ({
    page,
  }) => {
    await chosen(page, { age: 14, light: 'night' });
    await at(page, '22:20', {});
    await page.goto(`/${language}/our-day/`);
    const calls = page.locator('[data-edge-bar]');
    await expect(calls.locator('li [data-drawn]')).toHaveCount(EDGE_PICTURES.length);
    await expect(calls.locator('li .name').first()).toBeVisible();
    expect(await brokenWords(calls.locator('li .name'))).toEqual([]);
    const said = await page.locator('[data-night] p').first().boundingBox();
    const bar = await calls.boundingBox();
    expect(said!.y + said!.height).toBeLessThanOrEqual(bar!.y);
  });

for (const [width, height] of [
  [740, 360],
  [915, 412],
  [1280, 720],
] as const)
  test(`on a screen of ${width} by ${height} all calls are on it at once, by night the button, too`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await chosen(page, { age: 14 });
    for (const [language, time] of [
      ['es', '15:20'],
      ['es', '22:20'],
      ['pl', '22:20'],
      ['ar', '22:20'],
    ] as const) {
      await page.clock.install({ time: new Date(`${DAY}T${time}:00Z`) });
      await page.goto(`/${language}/our-day/`);
      await scriptRuns(page);
      await expect(page.locator('[data-edge-bar] li [data-drawn]')).toHaveCount(EDGE_PICTURES.length);
      await expect(page.locator('[data-edge="please-come"]')).toHaveCount(time === '22:20' ? 1 : 0);
      for (const call of await page.locator('[data-edge-bar] a').all()) {
        const box = (await call.boundingBox())!;
        expect(box.y + box.height, `${language}, ${time}`).toBeLessThanOrEqual(height);
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(56);
      }
      expect(await brokenWords(page.locator('[data-edge-bar] .name'))).toEqual([]);
      expect(await sideways(page)).toEqual([]);
    }
  });

test('two tabs of one phone: neither takes back what was done in the other', async ({ page, context }) => {
  await at(page, '07:40', { mode: 'three-doors' });
  const other = await context.newPage();
  await other.clock.install({ time: new Date(`${DAY}T07:40:00Z`) });
  await other.goto('/en/our-day/');
  await scriptRuns(other);
  await page.locator('[data-door="now"]').tap();
  // seen in the other tab at once, and still there after that one changes something of its own
  await expect(other.locator('[data-door="now"]')).toHaveAttribute('data-done', 'true');
  await other.goto('/en/our-day/call/it-hurts/');
  await scriptRuns(other);
  await expect
    .poll(() => keptDay(page).then(({ today }) => today?.edge.map(({ picture }) => picture)))
    .toEqual(['it-hurts']);
  expect((await keptDay(page)).book.done).toHaveLength(1);
  await page.locator('[data-action="take-back"]').tap();
  const kept = await keptDay(page);
  expect([kept.book.done.length, kept.today?.edge.length]).toEqual([0, 1]);
});

test('doctors are nobody’s to push, and a choice that is let pass shuts its doors and keeps its place', async ({
  page,
}) => {
  await at(page, '09:35', { mode: 'path' });
  await expect(page.locator('[data-door="now"]')).toHaveAttribute('data-event', 'round');
  await expect(page.locator('[data-push]')).toHaveCount(0);
  const choice = page.locator('[data-choice]');
  // teeth or story first is no question of the morning
  await expect(choice).toHaveCount(0);
  await page.clock.fastForward('08:40:00');
  await expect(choice.locator('[data-option]')).toHaveCount(3);
  await expect(choice.locator('[data-option="neither"]')).toHaveText(english['day:choice.either']!);
  const before = await choice.boundingBox();
  await page.clock.runFor(6000);
  await expect(choice).toHaveAttribute('data-choice', 'waits');
  expect((await choice.boundingBox())!.height).toBeCloseTo(before!.height, 0);
  await choice.locator('[data-action="choose"]').first().tap();
  await choice.locator('[data-option="neither"]').tap();
  await expect(choice).toHaveCount(0);
});

test.describe('without script, in Arabic', () => {
  test.use({ javaScriptEnabled: false, locale: 'ar' });
  const arabic = words('ar');

  test('each picture of the edge leads to the call button with its sentence, for the child and for the ward', async ({
    page,
  }) => {
    for (const picture of EDGE_PICTURES) {
      await page.goto('/ar/our-day/');
      await page.locator(`[data-edge="${picture}"]`).tap();
      await expect(page.locator('main')).toHaveAttribute('data-call', picture);
      await expect(page.locator('main h1')).toHaveText(arabic['day:call.press']!);
      await expect(page.locator('main svg').first()).toBeVisible();
      await expect(page.locator('[data-say="family"]')).toHaveText(arabic[`say:child.${picture}`]!);
      await expect(page.locator('[data-say="ward"]')).toHaveText(english[`say:child.${picture}`]!);
    }
  });
});

// a hundred and fifty in each run; `npm run endure` taps ten thousand times
const WILD_TAPS = Number(process.env.BARE_TOES_TAPS ?? 150);

test('wild taps leave no note and no look, and never leave the child’s own pages', async ({ page }) => {
  test.setTimeout(180_000 + WILD_TAPS * 300);
  await at(page, '09:50', { mode: 'clock' });
  /** The same wild child in every run. */
  let seed = 20_261_125;
  const random = (below: number) => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return Math.floor((seed / 2_147_483_648) * below);
  };
  const visited = new Set<string>();
  for (let n = 0; n < WILD_TAPS; n++) {
    await page.evaluate(
      (pick) => {
        const all = [...document.querySelectorAll<HTMLElement>('body a[href], body button, body summary')];
        // what a finger can reach: in sight, and not the link that waits for a keyboard
        const near = all.filter((one) => one.getClientRects().length > 0 && one.offsetWidth > 1);
        near[Math.floor(pick * near.length)]?.click();
      },
      random(1_000_000) / 1_000_000,
    );
    if (n % 10 === 0) await page.clock.runFor(300);
    visited.add(new URL(page.url()).pathname);
  }
  const own = /^\/en\/our-day\/(call\/[a-z-]+\/|story\/)?$/;
  expect([...visited].filter((address) => !own.test(address))).toEqual([]);
  // it went somewhere: a child that presses nothing would leave nothing, too
  expect(visited.size).toBeGreaterThan(2);
  expect(await keptNotes(page)).toEqual([]);
  const places = await page.evaluate(() => Object.keys(localStorage).sort());
  expect(places.filter((one) => !['bare-toes:day', 'bare-toes:family'].includes(one))).toEqual([]);
});

test('a day of play from waking on: nobody wakes up behind it, and at noon the whole sun is seen', async ({
  page,
}) => {
  await page.addInitScript((bed) => localStorage.setItem('bare-toes:play', bed), JSON.stringify(PLAYED));
  await at(page, '09:02', { mode: 'path' });
  // the story of what is kept for the needle ends before what is said to every child
  const during = page.locator('[data-moment="needle"] li').nth(1).locator('p');
  const [kept, told] = [english['day:moment.duringSay']!.split(':')[0]!, english['day:told.hurts']!];
  await expect(during).toContainText(kept);
  expect((await during.innerText()).split('\n').at(-1)).toBe(told);
  await expect(page.locator('main')).not.toContainText(english['day:event.wake']!);
  await page.clock.fastForward('04:43:00');
  const [sky, rays] = await page
    .locator('[data-sky="sun"]')
    .evaluate((svg) => [
      svg.getBoundingClientRect().top,
      Math.min(...[...svg.querySelectorAll('.ray')].map((ray) => ray.getBoundingClientRect().top)),
    ]);
  expect(rays).toBeGreaterThanOrEqual(sky!);
  // put to bed before the ward's night begins: it is not still night
  await page.clock.fastForward('07:00:00');
  await expect(page.locator('[data-night] h1')).toHaveText(english['day:event.goodnight']!);
  await page.clock.fastForward('02:00:00');
  await expect(page.locator('[data-night] h1')).toHaveText(english['day:night.title']!);
});

test('at night three things are there: a resting child, a story, the call button; it goes black and comes back', async ({
  page,
}) => {
  await at(page, '23:10', { mode: 'three-doors' });
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
  await expect(page.locator('[data-night-thing]')).toHaveCount(2);
  const links = await page.locator('main a[href]:visible').evaluateAll((all) =>
    all
      .filter((one) => !one.closest('[data-grown-ups]'))
      .map((one) => new URL((one as HTMLAnchorElement).href).pathname)
      .sort(),
  );
  expect(links).toEqual([...CALLS.map((call) => `/en/our-day/call/${call}/`), '/en/our-day/story/'].sort());
  await expect(page.locator('main button')).toHaveCount(1);
  await expect(page.locator('[data-hold]')).toHaveCount(1);

  const black = page.locator('[data-black]');
  await page.clock.runFor(50_000);
  await expect(black).toHaveCount(0);
  await page.clock.runFor(11_000);
  await expect(black).toBeVisible();
  await black.tap();
  await expect(black).toHaveCount(0);
  await expect(page).toHaveURL(/\/en\/our-day\/$/);
});

test('a girl of fifteen has a plain list with times, without doors, animals or a row of pictures', async ({
  page,
}) => {
  await at(page, '12:10', { mode: 'list' });
  const rows = page.locator('[data-plain-list] li');
  await expect(rows.locator('[aria-current]').or(page.locator('li[aria-current]'))).toHaveCount(1);
  await expect(page.locator('li[aria-current]')).toHaveAttribute('data-event', 'lunch');
  await expect(rows.locator('svg')).toHaveCount(0);
  await expect(page.locator('[data-door], [data-days], [data-sky]')).toHaveCount(0);
  await expect(page.locator('[data-action="private"]')).toBeVisible();
  expect(await sideways(page)).toEqual([]);
  await page.locator('[data-action="days"]').tap();
  // from the 20th to the 25th
  await expect(page.locator('[data-days] li')).toHaveCount(6);
});

test('a bad part of the stored day is told, and all the rest is kept', async ({ page }) => {
  const book = {
    ...{ day: DAY, wake: 420, lightsOut: 1170, quiet: [] },
    events: [
      { id: 'visitor-1', kind: 'visitor', from: 960, minutes: 30, source: 'family' },
      { id: 'bad', kind: 'visitor', from: 'noon', minutes: 30, source: 'family' },
    ],
    done: [],
  };
  await at(page, '16:05', { mode: 'path' }, { book, today: { day: DAY, feelings: 'many' } });
  await expect(page.locator('[data-faults="2"]')).toHaveText(english['day:fault']!);
  await expect(page.locator('[data-door="now"]')).toHaveAttribute('data-event', 'visitor');
  await expect(page.locator('[data-days] li')).toHaveCount(6);
});

test('with one key to move and one to press, the whole page can be used', async ({ page }) => {
  await at(page, '07:40', { mode: 'three-doors', oneKey: true });
  const now = page.locator('[data-door="now"]');
  for (let n = 0; n < 12; n++) {
    await page.keyboard.press('Space');
    if (await now.evaluate((door) => door === document.activeElement)) break;
  }
  await expect(now).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(now).toHaveAttribute('data-done', 'true');
});
