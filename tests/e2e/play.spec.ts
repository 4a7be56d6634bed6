/** Scenes 12–14 of the design: a bed is ticked, its day planned, changed by hand, and something comes up. */
import { expect, test, type Page } from '@playwright/test';
import { IDEAS } from '#content/ideas.ts';
import { LANGUAGES, keptNotes, scriptRuns, words } from '../helpers/pages.ts';
import { MORNING, planned, plannedByTaps, ticked } from '../helpers/planned-day.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';

const english = words('en');
const strip = (page: Page) => page.locator('[data-strip] [data-idea]');

test('a good plan stands while the best is looked for; what is changed meanwhile is not undone', async ({
  page,
}) => {
  // the best plan is held back until the page says so
  await page.addInitScript(() => {
    const add = Worker.prototype.addEventListener;
    const held: (() => void)[] = [];
    Object.assign(window, { letBestCome: () => held.splice(0).forEach((come) => come()) });
    Worker.prototype.addEventListener = function (
      this: Worker,
      type: string,
      listen: (event: Event) => void,
    ) {
      const late = (event: Event) => {
        if ((event as MessageEvent<{ early?: true }>).data.early) listen(event);
        else held.push(() => listen(event));
      };
      add.call(this, type, type === 'message' ? late : listen);
    };
  });
  const bestComes = () => page.evaluate(() => (window as unknown as { letBestCome(): void }).letBestCome());
  await ticked(page);
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  await expect(strip(page).first()).toBeVisible();
  const busy = page.getByRole('status').filter({ hasText: english['play:planning.busy']! });
  await expect(busy).toBeVisible();
  await expect(page.locator('[data-bound]')).toHaveCount(0);
  // screens below the line that says so, the button says it itself
  const again = page.locator('[data-action="plan"]');
  await expect(again).toHaveText(english['play:planning.busy']!);
  await expect(again).toHaveAttribute('aria-disabled', 'true');

  const idea = strip(page).first();
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await idea.locator('[data-action="ban"]').tap();
  await expect.poll(async () => (await bestComes(), page.locator('[data-bound]').count())).toBe(1);
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toHaveCount(0);
  await expect(busy).toHaveCount(0);
  await expect(again).toHaveText(english['play:planning.make']!);

  // what came up is seen to be pressed until the rest of the day is planned for it
  const sore = page.locator('[data-came="sore"]');
  await expect(sore).toHaveAttribute('aria-busy', 'false');
  await sore.tap();
  await expect(sore).toHaveAttribute('aria-busy', 'true');
  await expect(page.locator('[data-changed]')).toHaveCount(0);
  await expect
    .poll(async () => (await bestComes(), page.locator('[data-came-up] [data-changed]').count()))
    .toBe(1);
  await expect(sore).toHaveAttribute('aria-busy', 'false');
});

test('scene 12: a hard moment is ticked, the day is planned, and the moment has its idea', async ({
  page,
}) => {
  await plannedByTaps(page);
  const moment = page.locator('[data-row="moment"]');
  await expect(moment).toContainText(english['play:moment.bandage']!);
  await expect(moment).toContainText('10:00');
  // what is kept for it stands right under it
  await expect(moment.locator('xpath=following-sibling::li[1]')).toHaveAttribute('data-row', 'idea');
  await expect(page.locator('[data-bound]')).toBeVisible();
  // and it waits on the first page, too
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-next-moment] [data-idea]').first()).toBeVisible();
  await expect(page.locator('[data-now] [data-idea]')).toHaveCount(3);
});

test('each idea says why it stands there and why others do not; what is kept by hand stays', async ({
  page,
}) => {
  await planned(page);
  const idea = strip(page).nth(1);
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await expect(idea.locator('[data-because]').first()).toBeVisible();
  await expect(idea.locator('[data-other]').first()).toBeVisible();
  await idea.locator('[data-action="pin"]').tap();
  await expect(idea).toContainText(english['play:planning.pinned']!);
  const name = english[`ideas:${id}.name`]!;
  await expect(page.locator('[data-changed] [data-stuck]')).toContainText(name);
  await idea.locator('[data-action="pin"]').tap();
  await expect(page.locator('[data-changed] [data-loose]')).toContainText(name);
  await expect(page.locator('[data-stuck]')).toHaveCount(0);
  await idea.locator('[data-action="pin"]').tap();
  await expect(page.locator('[data-changed] [data-stuck]')).toContainText(name);
  await page.reload();
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toContainText(
    english['play:planning.pinned']!,
  );
});

test('an idea that is not for today goes, and the page says what changed', async ({ page }) => {
  await planned(page);
  const idea = strip(page).last();
  const id = (await idea.getAttribute('data-idea'))!;
  await idea.locator('[data-edit]').tap();
  await idea.locator('[data-action="ban"]').tap();
  await expect(page.locator('[data-changed]')).toBeVisible();
  await expect(page.locator(`[data-strip] [data-idea="${id}"]`)).toHaveCount(0);
});

test('a bed that is ticked anew: no page shows what no longer suits it, each says so, and planning again fills the gaps', async ({
  page,
}) => {
  await planned(page);
  const before = await strip(page).evaluateAll((all) => all.map((one) => one.getAttribute('data-idea')!));
  const handsOf = (id: string) => IDEAS.find((idea) => idea.id === id)!.hands;
  expect(before.some((id) => handsOf(id) > 0)).toBe(true);
  await expect(page.locator('[data-outgrown]')).toHaveCount(0);
  await page.goto('/en/things-to-do/bed/');
  await page.locator('input[name="hands"][value="0"]').check();
  for (const leaf of ['plan/', 'code/', 'paper/', '']) {
    await page.goto(`/en/things-to-do/${leaf}`);
    await expect(page.locator('[data-outgrown]'), leaf).toHaveText(english['play:planning.outgrown']!);
    await expect(page.locator('[data-outgrown]'), leaf).toBeInViewport();
  }
  await page.goto('/en/things-to-do/paper/');
  await expect(page.locator('[data-paper]')).toBeVisible();
  for (const id of before.filter((one) => handsOf(one) > 0))
    await expect(page.locator('[data-paper]')).not.toContainText(english[`ideas:${id}.name`]!);
  await page.goto('/en/things-to-do/plan/');
  await page.locator('[data-action="plan"]').tap();
  await expect(page.locator('[data-outgrown]')).toHaveCount(0);
  await expect(page.locator('[data-bound]')).toBeVisible();
  expect(await strip(page).count()).toBeGreaterThan(0);
});

test('scene 13: an X-ray comes; nothing is planned into it, and what has begun stays', async ({ page }) => {
  await planned(page);
  const before = (await kept(page)).plan!;
  const goesOn = before.find(({ window, minutes }) => window !== 'bandage-1' && minutes >= 10)!;
  await page.clock.setFixedTime(new Date(MORNING.getTime() + (goesOn.from + 1 - 520) * 60_000));
  await page.reload();
  await page.locator('[data-came="x-ray"]').tap();
  await page.locator('[data-minutes="60"]').tap();
  await expect(page.locator('[data-changed]')).toBeVisible();
  await expect(page.locator('[data-row="event"]', { hasText: english['play:event.x-ray']! })).toHaveCount(1);
  const { plan } = await kept(page);
  const [from, until] = [goesOn.from + 5, goesOn.from + 65];
  expect(plan!.filter((one) => one.from < until && one.from + one.minutes > from)).toEqual([]);
  for (const one of before.filter((other) => other.from <= goesOn.from))
    await expect(strip(page).filter({ hasText: english[`ideas:${one.idea}.name`]! })).toHaveCount(1);
  expect(plan!.slice(0, before.indexOf(goesOn) + 1).map(({ idea }) => idea)).toEqual(
    before.slice(0, before.indexOf(goesOn) + 1).map(({ idea }) => idea),
  );
});

test('an X-ray in the hour of the leg bandage: what has no time any more is said, and who knows when it comes', async ({
  page,
}) => {
  await planned(page);
  await page.clock.setFixedTime(new Date(MORNING.getTime() + 75 * 60_000));
  await page.reload();
  await expect(page.locator('[data-pushed]')).toHaveCount(0);
  await page.locator('[data-came="x-ray"]').tap();
  await expect(page.locator('[data-minutes="30"]')).toHaveText(/^\u2068?30\u00a0min\u2069?$/);
  await page.locator('[data-minutes="30"]').tap();
  const pushed = page.locator('[data-changed] [data-pushed="bandage-1"]');
  await expect(pushed).toContainText(english['play:moment.bandage']!);
  await expect(pushed).toContainText('10:00');
  await expect(pushed).toContainText(english['play:changed.pushed']!.split('{{what}}')[1]!);
  expect((await kept(page)).sketch.moments).toEqual([]);
});

test('what comes up keeps its words clear of the edges of its button, in every language', async ({
  page,
}) => {
  await planned(page);
  for (const language of LANGUAGES) {
    await page.goto(`/${language}/things-to-do/plan/`);
    await scriptRuns(page);
    await expect(page.locator('[data-came]').first()).toBeVisible();
    const narrow = await page.locator('[data-came]').evaluateAll((all) =>
      all
        .filter((button) => {
          const words = document.createRange();
          words.selectNodeContents(button);
          const [inner, outer] = [words.getBoundingClientRect(), button.getBoundingClientRect()];
          return Math.min(inner.left - outer.left, outer.right - inner.right) < 6;
        })
        .map((button) => (button as HTMLElement).innerText),
    );
    expect(narrow, language).toEqual([]);
  }
});

test('sore now opens the way to the look, and is no note', async ({ page }) => {
  await planned(page);
  await page.locator('[data-came="sore"]').tap();
  await expect(page.locator('[data-sore] a')).toHaveAttribute('href', /\/en\/look\/$/);
  expect(await keptNotes(page)).toEqual([]);
});

test('while something waits that rings now, no game is offered', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await leaveNotes(page, [
    noted(MORNING, 5, { kind: 'sign', sign: 'toes-colour', answer: 'different' }, 'a1b2c3-1'),
  ]);
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-rings-now]')).toBeVisible();
  await expect(page.locator('[data-action="begin-bed"]')).toHaveCount(0);
});

test('the library shows just what fits an age, so many minutes, and a quiet room', async ({ page }) => {
  await page.goto('/en/things-to-do/ideas/');
  await scriptRuns(page);
  const found = page.locator('[data-found]');
  const fits = (age: number, minutes: number, quiet: boolean) =>
    IDEAS.filter(
      ({ ages: [from, to], minutes: [least], noise }) =>
        from <= age && age <= to && least <= minutes && !(quiet && noise > 0),
    ).length;
  const counts = new Set<number>();
  for (const [age, minutes, quiet] of [
    [1, 5, false],
    [1, 5, true],
    [4, 10, false],
    [9, 5, true],
    [16, 30, false],
  ] as const) {
    // the first says any age, then one year, two years
    await page.locator('[data-field="age"] select').selectOption({ index: age });
    await page.locator('[data-field="minutes"] select').selectOption({ label: String(minutes) });
    await page.locator(`[data-field="noise"] input[value="${quiet ? 'silent' : 'any'}"]`).check();
    counts.add(fits(age, minutes, quiet));
    await expect(found).toHaveAttribute('data-found', String(fits(age, minutes, quiet)));
  }
  expect(counts.size).toBe(5);
});

test('the library narrows to what can be done flat, with no hand and nobody there', async ({ page }) => {
  await page.goto('/en/things-to-do/ideas/');
  await scriptRuns(page);
  const count = async () => Number(await page.locator('[data-found]').getAttribute('data-found'));
  const all = await count();
  await page.locator('[data-field="hands"] input[value="0"]').check();
  await page.locator('[data-field="head"] input[value="flat"]').check();
  await page.locator('[data-field="who"] input[value="alone"]').check();
  await expect.poll(count).toBeLessThan(all);
  expect(await count()).toBeGreaterThan(3);
  await page.locator('[data-idea] summary').first().tap();
  await expect(page.locator('[data-idea-details]').first()).toBeVisible();
});

test('a broken bed in the store is named, and the others are kept', async ({ page }) => {
  await planned(page);
  await page.evaluate(() => {
    const kept = JSON.parse(localStorage.getItem('bare-toes:play')!) as { beds: unknown[] };
    kept.beds.push({ shape: 'star', day: 'rubbish' });
    localStorage.setItem('bare-toes:play', JSON.stringify(kept));
  });
  await page.goto('/en/things-to-do/bed/');
  await expect(page.locator('[data-unread]')).toContainText(
    english['play:unread.bed']!.replace('{{bed}}', `\u2068${english['play:shape.star']}\u2069`),
  );
  await expect(page.locator('[data-bed]')).toHaveCount(1);
});

/** What the browser keeps of the first bed. */
const kept = (page: Page) =>
  page.evaluate(
    () =>
      (
        JSON.parse(localStorage.getItem('bare-toes:play')!) as {
          beds: {
            sketch: Record<'moments' | 'events', { id: string; from: number }[]>;
            plan?: { idea: string; from: number; minutes: number; window: string }[];
          }[];
        }
      ).beds[0]!,
  );
/** Puts the bandage care of the kept bed at half past nine, where the doctors' round stands. */
const overTheRound = (page: Page) =>
  page.evaluate(() => {
    const all = JSON.parse(localStorage.getItem('bare-toes:play')!) as {
      beds: { sketch: { moments: { from: number }[] } }[];
    };
    all.beds[0]!.sketch.moments[0]!.from = 570;
    localStorage.setItem('bare-toes:play', JSON.stringify(all));
  });

test('before anybody said so a child may not eat, and still nobody takes the day’s meals away', async ({
  page,
}) => {
  await ticked(page);
  await expect(page.locator('[data-field="true"] input[value="eating"]')).not.toBeChecked();
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-eating="may"]')).toBeVisible();
  await page.goto('/en/things-to-do/bed/');
  const eating = page.locator('[data-field="true"] input[value="eating"]');
  await eating.check();
  // said and taken back, it is nothing by mouth
  await eating.uncheck();
  await page.goto('/en/our-day/grown-up/');
  await expect(page.locator('[data-eating="held"]')).toBeVisible();
});

test('a hard moment over the doctors’ round is not added, and what stands there is said beside its time', async ({
  page,
}) => {
  await ticked(page);
  const say = page.locator('[data-fold="moment"] [data-clash]');
  await page.locator('[name="moment-from"]').fill('09:35');
  await page.locator('[data-action="add-moment"]').tap();
  await expect(say).toContainText(english['play:event.round']!);
  await expect(say).toContainText('09:30');
  await expect(say).toBeInViewport();
  await page.locator('[name="moment-from"]').fill('10:05');
  await expect(say).toHaveCount(0);
  await page.locator('[data-action="add-moment"]').tap();
  await expect(say).toContainText(english['play:moment.bandage']!);
  await page.locator('[name="moment-from"]').fill('23:00');
  await page.locator('[data-action="add-moment"]').tap();
  await expect(say).toHaveAttribute('data-clash', 'outside');
  await page.locator('[data-fold="day"] > summary').tap();
  await page.locator('[name="event-from"]').fill('10:00');
  await page.locator('[data-action="add-event"]').tap();
  await expect(page.locator('[data-fold="day"] [data-clash]')).toContainText('10:00');
  // what was said beside the moment is over: of all that was tried one thing is said, where it was tried last
  await expect(say).toHaveCount(0);
  const { sketch } = await kept(page);
  expect(sketch.moments).toHaveLength(1);
  expect(sketch.events.filter(({ id }) => id.startsWith('visitor'))).toEqual([]);
  // once what stood in its way is gone, nothing is said of it any more
  const moment = page.locator('li[data-moment]');
  await moment.locator('[data-change]').tap();
  await moment.locator('[data-remove]').tap();
  await expect(moment).toHaveCount(0);
  await expect(page.locator('[data-clash]')).toHaveCount(0);
});

test('what the day cannot hold is told in the page’s language, by its name, and is seen', async ({
  page,
}) => {
  await ticked(page);
  await overTheRound(page);
  for (const language of ['pl', 'ar']) {
    await page.goto(`/${language}/things-to-do/bed/`);
    await scriptRuns(page);
    await page.locator('[data-action="plan"]').tap();
    const fault = page.locator('[data-fault]');
    await expect(fault).toBeFocused();
    await expect(fault).toBeInViewport();
    await expect(fault).toContainText(words(language)['play:event.round']!);
    await expect(fault).toContainText(words(language)['play:moment.bandage']!);
    await expect(fault).not.toContainText(/›|from|round/);
  }
  await page.locator('[data-action="plan-without"]').tap();
  await expect(page.locator('[data-strip]')).toBeVisible();
});

test('a hard moment moves only once its time was taken, and never to one that is over', async ({ page }) => {
  await planned(page);
  await page.locator('[data-came="early"]').tap();
  const from = async () => (await kept(page)).sketch.moments[0]!.from;
  await page.locator('[name="early"]').fill('08:00');
  await page.locator('[data-action="move-moment"]').tap();
  await expect(page.locator('[data-wrong="early"]')).toContainText('08:40');
  await page.locator('[name="early"]').fill('09:40');
  expect(await from()).toBe(600);
  await page.locator('[data-action="move-moment"]').tap();
  await expect(page.locator('[data-row="moment"]')).toContainText('09:40');
  await expect(page.locator('[data-changed]')).toBeFocused();
  expect(await from()).toBe(580);
  // what is refused does not stand under the list of what was not
  await page.locator('[data-came="early"]').tap();
  await page.locator('[name="early"]').fill('08:00');
  await page.locator('[data-action="move-moment"]').tap();
  await expect(page.locator('[data-wrong="early"]')).toBeVisible();
  await expect(page.locator('[data-changed]')).toHaveCount(0);
});

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 820, height: 1180 } });
  test('sore now: to look first stands first, is seen and has the focus', async ({ page }) => {
    await planned(page);
    await page.locator('[data-came="sore"]').tap();
    await expect(page.locator('[data-changed]')).toBeVisible();
    const look = page.locator('[data-sore]');
    await expect(look).toBeFocused();
    // scrolled to whole pixels: less than one of its edge may lie outside
    await expect(look).toBeInViewport({ ratio: 0.99 });
    const order = await page
      .locator('[data-came-up] :is([data-sore], [data-changed], [data-came])')
      .evaluateAll((all) => all.map((one) => Object.keys((one as HTMLElement).dataset)[0]));
    expect(order.slice(0, 2)).toEqual(['sore', 'changed']);
  });
});

test('what goes on now leaves the day when it is not for today; what goes on in a hard moment says that it has begun', async ({
  page,
}) => {
  await planned(page);
  const { plan } = await kept(page);
  const goesOn = plan!.find(({ window }) => window !== 'bandage-1')!;
  const at = (minute: number) => new Date(MORNING.getTime() + (minute - 520) * 60_000);
  await page.clock.setFixedTime(at(goesOn.from + 5));
  await page.reload();
  const row = page.locator(`[data-strip] [data-idea="${goesOn.idea}"]`);
  await row.locator('[data-edit]').tap();
  await row.locator('[data-action="ban"]').tap();
  await expect(row).toHaveCount(0);
  await expect(page.locator('[data-gone]')).toContainText(english[`ideas:${goesOn.idea}.name`]!);
  await expect(page.locator('[data-changed]')).toBeFocused();
  await page.clock.setFixedTime(at(605));
  await page.reload();
  const inMoment = page.locator('[data-row="moment"] + [data-row="idea"] [data-idea]');
  await inMoment.locator('[data-edit]').tap();
  await expect(inMoment.locator('[data-begun]')).toBeVisible();
  await expect(inMoment.locator('[data-action="ban"]')).toHaveCount(0);
});

test('each page says by shape and age which bed it speaks of; with two the plan leads to the other', async ({
  page,
}) => {
  await planned(page);
  await expect(page.locator('[data-to-bed]')).toHaveCount(0);
  await page.goto('/en/things-to-do/bed/');
  await page.locator('[data-action="add-bed"]').tap();
  await expect(page.locator('[data-bed="square"] [data-glance]')).toContainText('5 years');
  await page.goto('/en/things-to-do/plan/');
  const which = page.locator('[data-which-bed]');
  await expect(which).toContainText('5 years');
  await expect(which).toHaveAttribute('data-which-bed', 'square');
  await page.locator('[data-to-bed="circle"]').tap();
  await expect(which).toHaveAttribute('data-which-bed', 'circle');
  await expect(strip(page).first()).toBeVisible();
  for (const place of ['', 'moment/']) {
    await page.goto(`/en/things-to-do/${place}`);
    await expect(which).toHaveAttribute('data-which-bed', 'circle');
    await expect(which).toContainText('5 years');
  }
});

test('no single tap takes a bed away', async ({ page }) => {
  await ticked(page);
  const remove = page.locator('[data-action="remove-bed"]');
  await expect(remove).toHaveCount(0);
  await page.locator('[data-fold="remove"] > summary').tap();
  await expect(page.locator('[data-bed]')).toHaveCount(1);
  await remove.tap();
  await expect(page.locator('[data-bed]')).toHaveCount(0);
  await expect(page.locator('[data-action="add-bed"]')).toBeFocused();
});
