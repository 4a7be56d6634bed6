/** The grown-up's day, the day on paper, and the private page of who is thirteen or older. */
import { expect, test, type Page } from '@playwright/test';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { brokenWords, chosen, keptNotes, scriptRuns, words } from '../helpers/pages.ts';
import { TYPICAL } from '../helpers/play-beds.ts';

const english = words('en');
const DAY = TYPICAL.day;
const at = (clock: string) => new Date(`${DAY}T${clock}:00Z`);
const minute = (clock: string) => at(clock).getTime() / 60_000;
const keptDay = (page: Page) => page.evaluate(() => localStorage.getItem('bare-toes:day'));

async function withKept(page: Page, clock: string, kept: { bed?: PlayBed; day?: unknown }) {
  await page.clock.install({ time: at(clock) });
  await page.addInitScript(
    ([play, day]) => {
      if (play && !localStorage.getItem('bare-toes:play')) localStorage.setItem('bare-toes:play', play);
      if (day && !localStorage.getItem('bare-toes:day')) localStorage.setItem('bare-toes:day', day);
    },
    [
      kept.bed && JSON.stringify({ open: kept.bed.shape, beds: [kept.bed] }),
      kept.day === undefined ? undefined : JSON.stringify(kept.day),
    ],
  );
}

test('medicine is asked about 45 minutes before the bandage care, and again at its new time when it moves', async ({
  page,
}) => {
  await withKept(page, '13:40', { bed: TYPICAL });
  await page.goto('/en/our-day/grown-up/');
  const ask = page.locator('[data-ask][data-care="m-bandage-1"]');
  const askNow = page.locator('[data-ask-now="m-bandage-1"]');
  const care = page.locator('[data-part-of-day="m-bandage-1"]');
  // 14:30 less 45 minutes
  await expect(ask).toContainText('13:45');
  await expect(ask).toHaveAttribute('data-ask', 'later');
  await expect(askNow).toHaveCount(0);
  await care.locator('button').first().tap();
  await care.locator('[data-action="earlier"]').tap();
  await expect(care.locator('time, bdi').first()).toHaveText(/14:15/);
  await expect(ask).toContainText('13:30');
  await expect(askNow).toBeVisible();
  await expect(page.locator('[data-medicine]')).toContainText(english['day-adult:medicine.now']!);
  await care.locator('[data-action="later"]').tap();
  await care.locator('[data-action="later"]').tap();
  await expect(ask).toContainText('14:00');
  await expect(askNow).toHaveCount(0);
  await expect(care.locator('[data-became="moved"]')).toHaveAttribute('data-why', 'ward-said');
});

test('scene 13: X-ray now is one touch; it says what moved and why, and a mistake is put back', async ({
  page,
}) => {
  await withKept(page, '09:20', {});
  await page.goto('/en/our-day/grown-up/');
  const round = page.locator('[data-part-of-day="e-round"]');
  await expect(round).toContainText('09:30');
  await page.locator('[data-comes-now="x-ray"]').tap();
  await expect(page.locator('[data-event="x-ray"]')).toHaveAttribute('aria-current', 'time');
  await expect(page.locator('[data-under-way="x-ray"]')).toBeVisible();
  const moved = page.locator('[data-moved="e-round"]');
  await expect(moved).toContainText('10:00');
  await expect(moved).toContainText(english['day:first.x-ray']!);
  await expect(round.locator('[data-became="moved"]')).toContainText('09:30');
  await page.reload();
  await expect(round.locator('[data-became="moved"]')).toBeVisible();
  await page.locator('[data-event="x-ray"] button').first().tap();
  await page.locator('[data-event="x-ray"] [data-action="off"]').tap();
  await expect(page.locator('[data-left-out="x-ray-1"]')).toHaveAttribute('data-why', 'not-today');
  await expect(round).toContainText('09:30');
  await expect(round.locator('[data-became]')).toHaveCount(0);
  expect(await keptNotes(page)).toEqual([]);
});

test('scene 20: at 23:40 a girl of fifteen holds up a card after two touches, and nothing of it is kept', async ({
  page,
}) => {
  await chosen(page, { age: 14, wardLanguage: 'ar' });
  await withKept(page, '23:40', {});
  await page.goto('/en/our-day/');
  await scriptRuns(page);
  await page.locator('a[href$="/our-day/private/"]').first().tap();
  await page.waitForURL('**/our-day/private/');
  const card = page.locator('[data-card="without-visitors"]');
  await expect(card).toBeVisible();
  const [before, address] = [await keptDay(page), page.url()];
  await card.tap();
  const held = page.locator('[data-held-up="without-visitors"]');
  await expect(held).toBeVisible();
  await expect(held.locator('[data-say="own"]')).toContainText(english['day-adult:cards.without-visitors']!);
  await expect(held.locator('[data-say="ward"]')).toHaveAttribute('lang', 'ar');
  const box = (await held.boundingBox())!;
  expect([box.width, box.height]).toEqual([360, 740]);
  expect([await keptDay(page), page.url()]).toEqual([before, address]);
  await held.locator('[data-action="put-down"]').tap();
  await expect(held).toHaveCount(0);
  await page.goto('/en/our-notes/');
  await expect(page.locator('main')).toContainText(english['notes:empty']!);
  expect(await keptNotes(page)).toEqual([]);
});

test('a time of the child’s own is open time to the grown-up; before thirteen the page says when it opens', async ({
  page,
}) => {
  await chosen(page, { age: 14 });
  await withKept(page, '10:35', {});
  await page.goto('/en/our-day/private/');
  await page.locator('[data-fold="own"] summary').tap();
  await page.locator('[data-action="own-time"]').tap();
  const own = page.locator('[data-own="call-home-1"]');
  await expect(own).toHaveAttribute('data-private', 'yes');
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-part-of-day="e-lunch"]')).toBeVisible();
  await expect(page.locator('[data-event="call-home"]')).toHaveCount(0);
  await page.goto('/en/our-day/private/');
  await own.locator('input[value="shown"]').check();
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-event="call-home"]')).toHaveCount(1);
  await page.evaluate(() => localStorage.setItem('bare-toes:family', JSON.stringify({ age: 5 })));
  await page.goto('/en/our-day/private/');
  await expect(page.locator('[data-opens-at="13"]')).toBeVisible();
  await expect(page.locator('[data-card]')).toHaveCount(0);
});

test('on paper twelve pictures of the day are one sheet of A4, with both names from eight on', async ({
  page,
}) => {
  await chosen(page, { age: 14 });
  await withKept(page, '07:00', {});
  await page.goto('/ar/our-day/paper/');
  await expect(page.locator('[data-sheet]')).toHaveCount(1);
  await expect(page.locator('[data-sheet] li')).toHaveCount(12);
  await expect(page.locator('[data-sheet] .day-picture[data-drawn]')).toHaveCount(12);
  await expect(page.locator('[data-sheet] li').first().locator('[lang="en"]')).toBeVisible();
  await expect(page.locator('[data-sheet] li').first().locator('[lang="ar"]')).toBeVisible();
  // the family's own language is the large one
  await expect(page.locator('[data-sheet] .date [lang]').first()).toHaveAttribute('lang', 'ar');
  const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect([...paper.matchAll(/\/Type\s*\/Page(?!s)/g)]).toHaveLength(1);
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(paper) ?? [];
  // points of 1/72 inch; ISO 216: A4 is 210 by 297 mm
  expect([width, height].map((points) => Math.round((Number(points) * 25.4) / 72))).toEqual([210, 297]);
});

test('on paper a planned idea is drawn as on the child’s page, and named from eight on', async ({ page }) => {
  await chosen(page, { age: 6 });
  await withKept(page, '07:00', { bed: TYPICAL });
  await page.goto('/en/our-day/paper/');
  const played = page.locator('[data-sheet] li[data-event="play"]');
  // what is kept for a hard moment is no part of the day of its own
  const kept = (from: number) =>
    TYPICAL.sketch.moments.some((moment) => moment.from <= from && from < moment.from + moment.minutes);
  const known = TYPICAL.plan!.filter(({ idea, from }) => english[`ideas:${idea}.name`] && !kept(from));
  expect(known.length).toBeGreaterThan(3);
  // an idea in someone's own words has no picture of its own
  await expect(played.locator('.play-picture[data-drawn]')).toHaveCount(known.length);
  // and so it is for grown-ups
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-part-of-day] .play-picture[data-drawn]')).toHaveCount(known.length);
  await page.goto('/en/our-day/paper/');
  const older: PlayBed = { ...TYPICAL, child: { ...TYPICAL.child, ageMonths: 120 } };
  await page.evaluate(
    (kept) => {
      localStorage.removeItem('bare-toes:day');
      localStorage.setItem('bare-toes:play', kept);
    },
    JSON.stringify({ open: older.shape, beds: [older] }),
  );
  await page.reload();
  for (const { idea } of known)
    await expect(played.locator('.name', { hasText: english[`ideas:${idea}.name`]! }).first()).toBeVisible();
});

for (const [language, width] of [
  ['es', 360],
  ['pl', 360],
  ['pl', 820],
] as const)
  test(`${language}, ${width} px, at night: no word of the day for grown-ups is broken, none lies over another`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 1180 });
    await chosen(page, { age: 14, light: 'night' });
    await withKept(page, '15:20', {});
    await page.goto(`/${language}/our-day/grown-up/`);
    await expect(page.locator('[data-comes-now] [data-drawn]').first()).toBeVisible();
    expect(await brokenWords(page.locator('[data-comes-now]'))).toEqual([]);
    const row = page.locator('[data-part-of-day][aria-current]');
    const ends = (selector: string) =>
      row
        .locator(selector)
        .first()
        .evaluate((e) => ({ from: e.getBoundingClientRect().left, to: e.getBoundingClientRect().right }));
    expect((await ends('.now')).to).toBeLessThanOrEqual((await ends('.text')).from);
  });

test('a bad part of the kept day is named with its place, the rest stands; fists twice lead to a look', async ({
  page,
}) => {
  await withKept(page, '10:05', {
    day: {
      book: {
        ...{ day: DAY, wake: 420, lightsOut: 1170, quiet: [], done: [] },
        events: [
          { id: 'visitor-1', kind: 'visitor', from: 960, minutes: 30, source: 'family' },
          { id: 'song-1', kind: 'song', from: 'noon', minutes: 5, source: 'family' },
        ],
      },
      firstDay: DAY,
      today: {
        day: DAY,
        feelings: [
          { picture: 'fists', at: minute('09:00') },
          { picture: 'hiding', at: minute('09:30') },
        ],
        edge: [{ picture: 'thirsty', at: minute('09:41') }],
        ...{ offers: {}, chosen: {}, nothingByMouth: true },
      },
    },
  });
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-fault="day › events › 2 › from"]')).toBeVisible();
  await expect(page.locator('[data-part-of-day="visitor-1"]')).toBeVisible();
  await expect(page.locator('[data-leads-to-look] a')).toHaveAttribute('href', '/en/look/');
  const pressed = page.locator('[data-edge="thirsty"]');
  await expect(pressed).toContainText('09:41');
  await expect(pressed).toContainText(english['day:edge.thirsty']!);
  // nothing by mouth: told, not lost
  await expect(page.locator('[data-left-out="e-lunch"]')).toHaveAttribute('data-why', 'no-eating');
  await page.locator('[data-action="eating-begins"]').tap();
  await expect(page.locator('[data-part-of-day="e-lunch"]')).toBeVisible();
  expect(await keptNotes(page)).toEqual([]);
});

test('where no nurse’s card is on the phone, nobody says that nothing speaks against eating', async ({
  page,
}) => {
  await page.goto('/en/our-day/grown-up/');
  await scriptRuns(page);
  await expect(page.locator('[data-eating]')).toContainText(english['day-adult:eating.noCard']!);
  await expect(page.getByText(english['day-adult:eating.may']!)).toHaveCount(0);
});

test('"nothing by mouth", said at ten at night, holds over midnight and over a clock set back, until a nurse ends it', async ({
  page,
}) => {
  await withKept(page, '22:00', { bed: TYPICAL });
  await page.goto('/en/our-day/grown-up/');
  await page.locator('[data-action="nothing-by-mouth"]').tap();
  const word = page.locator('[data-mouth-word]');
  const meals = page.locator(
    ['breakfast', 'lunch', 'supper', 'snack', 'drink'].map((kind) => `[data-event="${kind}"]`).join(),
  );
  const stillHeld = async () => {
    await expect(page.locator('[data-eating]')).toHaveAttribute('data-eating', 'held');
    await expect(page.locator('[data-left-out="e-breakfast"]')).toHaveAttribute('data-why', 'no-eating');
    await expect(meals).toHaveCount(0);
    await expect(word).toContainText('22:00');
    await expect(word).toContainText(english['day-adult:eating.holds']!);
    await expect(page.getByText(english['day-adult:eating.may']!)).toHaveCount(0);
    await expect(page.locator('[data-word-of]')).toContainText(english['day-adult:eating.hold']!);
    await expect(page.locator('[data-word-of]')).toContainText('25 November');
  };
  await expect(word).toContainText('22:00');
  await expect(page.locator('[data-word-of]')).toHaveCount(0);
  // the page stands open over midnight
  await page.clock.fastForward('02:10:00');
  await expect(page.locator('.date')).toContainText('26 November');
  await stillHeld();
  // opened anew before breakfast, and by a clock that was set back a day before the word and right again
  for (const time of ['2026-11-26T07:10:00Z', '2026-11-24T07:10:00Z', '2026-11-26T07:20:00Z']) {
    await page.clock.setFixedTime(new Date(time));
    await page.goto('/en/our-day/grown-up/');
    await stillHeld();
  }
  // play heeds it, too
  const noFood = page.locator('[data-no-food]');
  const ideas = () => page.locator('[data-found]').getAttribute('data-found').then(Number);
  for (const path of ['', 'plan/', 'bed/', 'ideas/']) {
    await page.goto(`/en/things-to-do/${path}`);
    await expect(noFood).toHaveText(english['play:noFood']!);
  }
  const withoutFood = await ideas();
  await page.goto('/en/our-day/grown-up/');
  await page.locator('[data-action="eating-begins"]').tap();
  await expect(page.locator('[data-part-of-day="e-breakfast"]')).toBeVisible();
  await expect(word).toHaveCount(0);
  await page.reload();
  await expect(page.locator('[data-eating]')).toHaveAttribute('data-eating', 'may');
  await page.goto('/en/things-to-do/ideas/');
  await expect.poll(ideas).toBeGreaterThan(withoutFood);
  await expect(noFood).toHaveCount(0);
});
