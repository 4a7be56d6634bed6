/** A day of play changed by hand: the child chooses, a grown-up says "not now", swaps, lengthens; each of the chips. */
import { expect, test, type Page } from '@playwright/test';
import { MORNING, planned } from '../helpers/planned-day.ts';
import { scriptRuns, words } from '../helpers/pages.ts';
import { tabTo } from '../helpers/keyboard.ts';

const english = words('en');
const nameOf = (idea: string) => english[`ideas:${idea}.name`]!;
const at = (minute: number) => new Date(MORNING.getTime() + (minute - 520) * 60_000);

interface Placed {
  idea: string;
  window: string;
  from: number;
  minutes: number;
}
interface Kept {
  sketch: Record<'moments' | 'events', { id: string; from: number; minutes: number }[]>;
  plan: Placed[];
  pins: Placed[];
}
const bedOf = (page: Page) =>
  page.evaluate(() => (JSON.parse(localStorage.getItem('bare-toes:play')!) as { beds: Kept[] }).beds[0]!);
const endOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;
const ideas = (list: readonly Placed[]) => list.map(({ idea }) => idea);
const keptIn = ({ plan, sketch }: Kept) =>
  plan.filter(({ window }) => sketch.moments.some(({ id }) => id === window));
/** The hard moment has an idea as before, and what was kept for it stands nowhere before it. */
function notSpent(before: Kept, after: Kept, chosen: string) {
  expect(ideas(keptIn(before))).not.toContain(chosen);
  expect(keptIn(after).length).toBeGreaterThan(0);
  const [moment] = after.sketch.moments;
  const earlier = after.plan.filter(({ from }) => from < moment!.from);
  for (const { idea } of keptIn(after)) expect(ideas(earlier)).not.toContain(idea);
}
const strip = (page: Page, idea: string) => page.locator(`[data-strip] [data-idea="${idea}"]`);

/** The family's page, a minute after the first idea of the plan that has room before and after it has begun. */
async function atPlay(page: Page): Promise<Placed> {
  await planned(page);
  const bed = await bedOf(page);
  const goesOn = bed.plan.find((one) => !keptIn(bed).includes(one) && one.minutes >= 10)!;
  await page.clock.setFixedTime(at(goesOn.from + 1));
  await page.goto('/en/things-to-do/');
  await scriptRuns(page);
  return goesOn;
}
const choices = (page: Page) => page.locator('[data-choice] [data-choose]');

test('a child presses a picture: it stands there from now on, the page says so, and choosing again takes it back', async ({
  page,
}) => {
  const goesOn = await atPlay(page);
  const before = await bedOf(page);
  await page.locator('[data-action="choose-two"]').tap();
  await expect(choices(page)).toHaveCount(3);
  const first = page.locator(`[data-choose="${goesOn.idea}"]`);
  await expect(first).toHaveAttribute('aria-pressed', 'true');
  const other = page.locator('[data-action="choose"][aria-pressed="false"]');
  const idea = (await other.getAttribute('data-choose'))!;
  const second = page.locator(`[data-choose="${idea}"]`);
  await second.tap();
  await expect(second).toHaveAttribute('aria-pressed', 'true');
  await expect(first).toHaveAttribute('aria-pressed', 'false');
  await expect(page.locator('[data-choice] [data-come]')).toContainText(nameOf(idea));
  await expect(page.locator('[data-choice] [data-gone], [data-choice] [data-moved]').first()).toContainText(
    nameOf(goesOn.idea),
  );
  const after = await bedOf(page);
  const from = goesOn.from + 5;
  expect(after.plan).toContainEqual(expect.objectContaining({ idea, from }));
  expect(after.pins).toContainEqual(expect.objectContaining({ idea, from }));
  notSpent(before, after, idea);
  await page.goto('/en/things-to-do/plan/');
  await expect(strip(page, idea)).toContainText(english['play:planning.pinned']!);

  await page.goto('/en/things-to-do/');
  await page.locator('[data-action="choose-two"]').tap();
  await expect(second).toHaveAttribute('aria-pressed', 'true');
  await page.locator('[data-action="alone"]').tap();
  await expect(page.locator('[data-action="alone"]')).toHaveAttribute('aria-pressed', 'true');
  await second.tap();
  await expect(second).toHaveAttribute('aria-pressed', 'true');
  const again = await bedOf(page);
  expect(again.pins).toEqual([expect.objectContaining({ idea, from })]);
  notSpent(before, again, idea);
});

test('a child who wants to be alone is left alone, by keys, too; nothing else stands in that time', async ({
  page,
}) => {
  const goesOn = await atPlay(page);
  await tabTo(page, '[data-action="choose-two"]');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-choice] p:focus')).toHaveText(english['play:choiceAsk']!);
  await tabTo(page, '[data-action="alone"]');
  await expect(page.locator(':focus')).toHaveAccessibleName(english['play:alone']!);
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-alone-said]')).toHaveText(english['play:aloneSaid']!);
  await expect(page.locator('[data-choice] [data-changed]')).toBeVisible();
  await expect(page.locator('[data-action="alone"]')).toBeFocused();
  const { plan } = await bedOf(page);
  const rest = plan.find(({ idea }) => idea === 'do-nothing')!;
  expect(rest.from).toBe(goesOn.from + 5);
  const others = plan.filter((one) => one !== rest && one.from < endOf(rest) && endOf(one) > rest.from);
  expect(others).toEqual([]);
});

test('"not now" on what is planned leaves it out, and the rest of the day is planned without it', async ({
  page,
}) => {
  const goesOn = await atPlay(page);
  const before = await bedOf(page);
  const button = page.locator('[data-action="not-now"]');
  await expect(button).toHaveAccessibleName(
    new RegExp(`^${english['play:notNow']!}.*${nameOf(goesOn.idea)}`),
  );
  await button.tap();
  await expect(page.locator('[data-now] [data-changed]')).toBeFocused();
  await expect(page.locator('[data-now] [data-gone], [data-now] [data-moved]').first()).toContainText(
    nameOf(goesOn.idea),
  );
  await expect(page.locator(`[data-now] [data-idea="${goesOn.idea}"]`)).toHaveCount(0);
  await expect(page.locator('[data-now] [data-idea]')).toHaveCount(3);
  const after = await bedOf(page);
  expect(after.plan.filter((one) => one.from < endOf(goesOn) && endOf(one) > goesOn.from)).toEqual([]);
  notSpent(before, after, 'do-nothing');
});

test('an idea is put in another’s place, made longer and shorter, and stands in the plan as it was asked', async ({
  page,
}) => {
  await planned(page);
  const bed = await bedOf(page);
  let swapped: Placed | undefined;
  for (const one of bed.plan) {
    await strip(page, one.idea).locator('[data-edit]').tap();
    swapped = one;
    if (await page.locator('[data-swap]').count()) break;
    await strip(page, one.idea).locator('[data-edit]').tap();
  }
  const swap = page.locator('[data-swap]').first();
  const idea = (await swap.getAttribute('data-swap'))!;
  await swap.tap();
  await expect(strip(page, idea)).toContainText(english['play:planning.pinned']!);
  const { plan } = await bedOf(page);
  expect(plan).toContainEqual(expect.objectContaining({ idea, from: swapped!.from }));
  expect(plan.some((one) => one.idea === swapped!.idea && one.from === swapped!.from)).toBe(false);

  const longer = page.locator('[data-action="longer"]');
  const grows = plan.find(
    (one) => one.from > endOf(swapped!) && !keptIn(bed).some(({ idea: kept }) => kept === one.idea),
  )!;
  await strip(page, grows.idea).locator('[data-edit]').tap();
  const [by, button] = (await longer.count()) ? [5, longer] : [-5, page.locator('[data-action="shorter"]')];
  const minutes = async () => (await bedOf(page)).plan.find((one) => one.idea === grows.idea)?.minutes;
  await button.tap();
  await expect.poll(minutes).toBe(grows.minutes + by);
  await expect(strip(page, grows.idea)).toContainText(english['play:planning.pinned']!);
  await page.locator(`[data-action="${by > 0 ? 'shorter' : 'longer'}"]`).tap();
  await expect.poll(minutes).toBe(grows.minutes);
});

for (const [chip, event, length] of [
  ['asleep', 'nap', 60],
  ['visitor', 'visitor', 30],
  ['round', 'round', 15],
  ['x-ray', 'x-ray', 60],
] as const)
  test(`${chip}: nothing is planned into it, and what has begun stays`, async ({ page }) => {
    await planned(page);
    const before = await bedOf(page);
    const goesOn = before.plan.find((one) => !keptIn(before).includes(one) && one.minutes >= 10)!;
    await page.clock.setFixedTime(at(goesOn.from + 1));
    await page.reload();
    await page.locator(`[data-came="${chip}"]`).tap();
    await page.locator(`[data-minutes="${length}"]`).tap();
    await expect(page.locator('[data-changed]')).toBeFocused();
    const { sketch, plan } = await bedOf(page);
    const fresh = sketch.events.filter(({ id }) => !before.sketch.events.some((one) => one.id === id));
    expect(fresh).toEqual([{ id: `${event}-1`, from: goesOn.from + 5, minutes: length }]);
    await expect(
      page.locator('[data-row="event"]', { hasText: english[`play:event.${event}`]! }),
    ).toHaveCount(before.sketch.events.filter(({ id }) => id === event).length + 1);
    expect(plan.filter((one) => one.from < endOf(fresh[0]!) && endOf(one) > fresh[0]!.from)).toEqual([]);
    // as far as it came
    expect(plan).toContainEqual(
      expect.objectContaining({ idea: goesOn.idea, from: goesOn.from, minutes: 5 }),
    );
  });

test('on the strip of the day a finger opens the row it means; the row moves in fives, and says what is in its way', async ({
  page,
}) => {
  await page.clock.install({ time: MORNING });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await page.locator('[data-fold="moment"] summary').tap();
  await page.locator('[data-field="procedure"] input[value="needle"]').check();
  await page.locator('[data-action="add-moment"]').tap();
  const part = page.locator('[data-strip-part="moments needle-1"]');
  await expect(part).toBeVisible();
  const placeOf = async () => (await part.boundingBox())!.x;
  const before = await placeOf();
  await page.locator('[data-reach="moments needle-1"]').click();
  const row = page.locator('[data-moment="needle-1"]');
  await expect(row.locator('[data-change]')).toBeFocused();
  await expect(row.locator('[data-card-of]')).toHaveAttribute('href', /moment\/#needle-1$/);
  const moment = async () => (await bedOf(page)).sketch.moments[0]!;
  await row.locator('[data-step="later"]').tap();
  await row.locator('[data-step="longer"]').tap();
  expect(await moment()).toMatchObject({ from: 605, minutes: 20 });
  expect(await placeOf()).toBeGreaterThan(before);
  await expect(row.locator('[data-step="longer"]')).toBeFocused();
  await row.locator('[data-step="earlier"]').tap();
  // the doctors’ round ends at ten
  await row.locator('[data-step="earlier"]').tap();
  await expect(row.locator('[data-row-wrong]')).toContainText(english['play:event.round']!);
  expect(await moment()).toMatchObject({ from: 600, minutes: 20 });
  // the other arm has a drip: when the needle goes into the free one, no hand is left
  await row.locator('[data-field="moment-hands-needle-1"] input[value="0"]').check();
  await row.locator('[data-field="moment-grown-up-needle-1"] input').uncheck();
  expect(await moment()).toMatchObject({ freeHands: 0, grownUp: false });

  await page.locator('[data-reach="events lunch"]').click();
  const lunch = page.locator('[data-event="lunch"]');
  await expect(lunch.locator('[data-change]')).toBeFocused();
  await expect(page.locator('[data-fold="day"]')).toHaveAttribute('open');
  const { from } = (await bedOf(page)).sketch.events.find(({ id }) => id === 'lunch')!;
  await tabTo(page, '[data-event="lunch"] [data-step="later"]');
  await page.keyboard.press('Enter');
  expect((await bedOf(page)).sketch.events.find(({ id }) => id === 'lunch')!.from).toBe(from + 5);
  // taken out: the row in its place has the focus, and what is put in anew under the same name is not opened by itself
  const after = await page.locator('[data-event="lunch"] + li').getAttribute('data-event');
  await lunch.locator('[data-remove]').tap();
  await expect(page.locator('[data-strip-part="events lunch"]')).toHaveCount(0);
  await expect(page.locator(`[data-change="${after}"]`)).toBeFocused();
  await row.locator('[data-change]').tap();
  await row.locator('[data-remove]').tap();
  await page.locator('[data-action="add-moment"]').tap();
  await expect(row).toBeVisible();
  await expect(row.locator('[data-change]')).toHaveAttribute('aria-expanded', 'false');
});

test('a play specialist leaves a time to the child: both ideas stand in the plan and on the sheet, and the child is asked then', async ({
  page,
}) => {
  await planned(page);
  const slot = (await bedOf(page)).plan.findLast(
    ({ from, window }) => from > 12 * 60 && window.startsWith('w-'),
  )!;
  await strip(page, slot.idea).locator('[data-edit]').tap();
  await page.locator('[data-action="leave-to-child"]').tap();
  const two = strip(page, slot.idea).locator('[data-child-chooses]');
  await expect(two).toBeVisible();
  const or = (await two.getAttribute('data-child-chooses'))!;
  const said = english['play:childChooses.two']!.replace('{{idea}}', nameOf(slot.idea)).replace(
    '{{other}}',
    nameOf(or),
  );
  await expect(two).toHaveText(said);
  await expect(strip(page, slot.idea)).toContainText(english['play:planning.pinned']!);
  // taken back and given once more
  await page.locator('[data-action="choose-for-child"]').tap();
  await expect(two).toHaveCount(0);
  await page.locator('[data-action="leave-to-child"]').tap();
  await expect(two).toHaveText(said);
  await expect(page.locator('[data-bound]')).toBeVisible();
  expect(ideas((await bedOf(page)).plan)).not.toContain(or);

  await page.goto('/en/things-to-do/paper/');
  await expect(page.locator('[data-paper]')).toContainText(said);

  // before its time nobody asks; then the page does so by itself
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-choice]')).toBeVisible();
  await expect(page.locator(`[data-choose="${or}"]`)).toHaveCount(0);
  await page.clock.setFixedTime(at(slot.from));
  await page.goto('/en/things-to-do/');
  await expect(page.locator('[data-action="choose"]')).toHaveCount(2);
  // neither is marked as the better one
  for (const idea of [slot.idea, or])
    await expect(page.locator(`[data-choose="${idea}"]`)).toHaveAttribute('aria-pressed', 'false');
  await page.locator(`[data-choose="${or}"]`).tap();
  await expect(page.locator(`[data-choose="${or}"]`)).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-choice] [data-come]')).toContainText(nameOf(or));
  expect((await bedOf(page)).plan).toContainEqual(expect.objectContaining({ idea: or, from: slot.from }));
  await page.goto('/en/things-to-do/plan/');
  await expect(strip(page, or)).toBeVisible();
  await expect(page.locator('[data-child-chooses]')).toHaveCount(0);
});

test('at another bed its lunch stays closed, and whoever chose that bed stays there', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  const beds = page.locator('[data-bed]');
  await page.locator('[data-reach="events lunch"]').click();
  await expect(page.locator('[data-event="lunch"] [data-change]')).toBeFocused();
  await page.locator('[data-action="add-bed"]').tap();
  await expect(beds.last()).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-fold="day"]')).not.toHaveAttribute('open');
  // so it is with a bed at which it was open once
  await beds.first().tap();
  await expect(beds.first()).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-fold="day"]')).not.toHaveAttribute('open');
  await expect(page.locator('[data-open-row]')).toHaveCount(0);
  await expect(beds.first()).toBeFocused();
});

test('the strip of the day runs from where reading begins', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  const sides: string[] = [];
  for (const language of ['en', 'ar']) {
    await page.goto(`/${language}/things-to-do/bed/`);
    await scriptRuns(page);
    const [first, last] = await Promise.all(
      ['breakfast', 'supper'].map((id) => page.locator(`[data-strip-part="events ${id}"]`).boundingBox()),
    );
    sides.push(first!.x < last!.x ? 'left' : 'right');
  }
  expect(sides).toEqual(['left', 'right']);
});

test('hands at a hard moment: one where nothing is said, and never more than are free', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
  await page.locator('[data-field="hands"] input[value="2"]').check();
  await page.locator('[data-fold="moment"] summary').tap();
  await page.locator('[data-action="add-moment"]').tap();
  const moments = async () => (await bedOf(page)).sketch.moments;
  expect(await moments()).toMatchObject([{ freeHands: 1, grownUp: true }]);
  await page.locator('[data-field="moment-hands-new"] input[value="2"]').check();
  await page.locator('[data-field="moment-grown-up-new"] input').uncheck();
  await page.locator('[name="moment-from"]').fill('14:30');
  await page.locator('[data-action="add-moment"]').tap();
  expect((await moments())[1]).toMatchObject({ freeHands: 2, grownUp: false });
  await page.locator('[data-field="hands"] input[value="0"]').check();
  await page.locator('[name="moment-from"]').fill('16:00');
  await page.locator('[data-action="add-moment"]').tap();
  expect((await moments())[2]).toMatchObject({ freeHands: 0 });
});
