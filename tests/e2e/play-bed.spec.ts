/** The bed's page told in full, an idea in someone's own words, what was done, and the list for the dark hours. */
import { expect, test, type Page } from '@playwright/test';
import { findings } from '../helpers/axe.ts';
import { chosen, scriptRuns, sideways, words } from '../helpers/pages.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';
import { TYPICAL } from '../helpers/play-beds.ts';

const english = words('en');
const MORNING = new Date('2026-01-15T08:40:00Z');
const NIGHT = new Date('2026-01-15T02:40:00Z');

interface KeptBed {
  child: Record<'likes' | 'dislikes' | 'never' | 'lacks', string[]>;
  room: { things: string[]; usedElsewhere: string[]; isolation: string };
  permissions: string[];
  sketch: Record<'quiet' | 'propped', { from: number; until: number }[]> & { wake: number };
  limits: { grownUpMinutes: number };
  own: { id: string; title: string; cautions: string[] }[];
  done: { idea: string }[];
  plan?: { idea: string; from: number }[];
}
const bedOf = (page: Page): Promise<KeptBed> =>
  page.evaluate(() => (JSON.parse(localStorage.getItem('bare-toes:play')!) as { beds: KeptBed[] }).beds[0]!);
async function atTheBed(page: Page, time = MORNING) {
  await page.clock.install({ time });
  await page.goto('/en/things-to-do/bed/');
  await scriptRuns(page);
}
const fold = (page: Page, name: string) => page.locator(`[data-fold="${name}"]`);
const opened = (page: Page, name: string) => fold(page, name).locator(':scope > summary').tap();
async function planned(page: Page) {
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  // nothing better is looked for any more
  await expect(page.locator('[data-bound]')).toBeVisible();
}
/** Answers everything of an own idea but its name. */
async function answered(page: Page) {
  const pick = (name: string, value: string) =>
    page.locator(`[name="own-${name}"][value="${value}"]`).check();
  await page.locator('[name="own-kind"]').selectOption(english['play:kind.talk']!);
  await page.locator('[name="own-least"]').fill('5');
  await page.locator('[name="own-most"]').fill('20');
  for (const [name, value] of [
    ...[['position', 'both'] as const, ['hands', '0'] as const, ['energy', '2'] as const],
    ...[['noise', '1'] as const, ['mess', '0'] as const, ['who', 'either'] as const],
    ...[['wipe', 'yes'] as const],
  ])
    await pick(name, value);
  for (const rest of await page.locator('[data-own-form] input[value="rest"]').all()) await rest.check();
}

test('what is ticked behind the headings is said on the closed ones, and is there after a reload', async ({
  page,
}) => {
  await atTheBed(page);
  await opened(page, 'things');
  await page.locator('[data-field="things"] input[value="soft-toy"]').check();
  await opened(page, 'likes');
  await page.locator('[data-field="likes"] input[value="draw"]').check();
  await opened(page, 'never');
  // said last, it is the one word that counts
  await page.locator('[data-field="never"] input[value="draw"]').check();
  await page.locator('[name="never-idea"]').selectOption({ label: english['ideas:song-swap.name']! });
  await opened(page, 'lacks');
  await page.locator('[data-field="lacks"] input[value="hearing"]').check();
  await opened(page, 'ward');
  await page.locator('[data-field="isolation"] input[value="breath"]').check();
  await page.locator('[data-field="allows"] input[value="plants"]').check();
  await opened(page, 'limits');
  await page.locator('[name="grown-up-minutes"]').selectOption({ label: '60' });
  const says = (name: string) => page.locator(`[data-says="${name}"]`);
  await expect(says('never')).toContainText(english['play:kind.draw']!);
  await expect(says('likes')).toHaveText(english['play:set.nothing']!);
  await page.reload();
  await expect(says('never')).toContainText(english['ideas:song-swap.name']!);
  await expect(says('lacks')).toHaveText(english['play:set.lackshearing']!);
  await expect(says('ward')).toContainText(english['play:set.allowsplants']!);
  expect(await bedOf(page)).toMatchObject({
    child: { likes: [], never: ['draw', 'song-swap'], lacks: ['hearing'] },
    room: { isolation: 'breath' },
    permissions: ['plants'],
    limits: { grownUpMinutes: 60 },
  });
  expect((await bedOf(page)).room.things).toContain('soft-toy');
});

test('times that meet become one; an end before its beginning changes nothing and says where', async ({
  page,
}) => {
  await atTheBed(page);
  const head = page.locator('[data-stretches="head"]');
  await head.locator('input[value="at-times"]').check();
  const add = async (from: string, until: string) => {
    await page.locator('[name="head-from"]').fill(from);
    await page.locator('[name="head-until"]').fill(until);
    await page.locator('[data-action="add-head"]').tap();
  };
  await add('09:00', '10:00');
  await add('10:00', '11:30');
  await expect(head.locator('[data-stretch]')).toHaveCount(1);
  await add('14:00', '13:00');
  await expect(head.locator('[data-wrong="wrongTime"]')).toBeVisible();
  expect((await bedOf(page)).sketch.propped).toEqual([{ from: 540, until: 690 }]);
  await opened(page, 'day');
  await page.locator('[name="wake"]').fill('05:00');
  await expect(page.locator('[data-wrong="wake"]')).toContainText('07:00');
  expect((await bedOf(page)).sketch.wake).toBe(420);
});

test('an own idea that is not whole says what is missing and where, and loses nothing; whole, it is planned', async ({
  page,
}) => {
  await atTheBed(page);
  await opened(page, 'own');
  await page.locator('[data-action="write-own"]').tap();
  // an empty form: ten fields, and four groups of questions that one tick answers
  await page.locator('[data-action="keep-own"]').tap();
  await expect(page.locator('[data-own-faults="14"]')).toBeVisible();
  const things = page.locator('[data-own="things"]');
  const rest = things.locator('input[value="rest"]');
  await things.locator('input[value="cord"]').check();
  await answered(page);
  // a no to the others changes no yes, is seen, and can be taken back
  await expect(things.locator('input[value="cord"]')).toBeChecked();
  await expect(things.locator('label').last()).toContainText(english['play:own.noOthers']!);
  await rest.uncheck();
  await things.locator('input[value="cord"]').uncheck();
  await expect(things.locator('label').last()).toContainText(english['play:own.noneOfThese']!);
  await expect(page.locator('[data-own-wrong="things"] legend')).toContainText(
    english['play:own.faultanswer']!,
  );
  await rest.check();
  // with a yes to all there is nothing left to say no to
  const doing = page.locator('[data-own="doing"]');
  for (const question of ['sound', 'screen', 'feelings', 'arms-move'])
    await doing.locator(`input[value="${question}"]`).check();
  await expect(doing.locator('input[value="rest"]')).toHaveCount(0);
  await expect(page.locator('[data-own-wrong="doing"]')).toHaveCount(0);
  for (const question of ['sound', 'screen', 'feelings', 'arms-move'])
    await doing.locator(`input[value="${question}"]`).uncheck();
  // what is unticked again is open until somebody says no
  await expect(page.locator('[data-own-wrong="doing"]')).toHaveCount(1);
  await doing.locator('input[value="rest"]').check();
  await page.locator('[name="own-title"]').fill('W');
  await page.locator('[data-action="keep-own"]').tap();
  await expect(page.locator('[data-own-wrong]')).toHaveCount(1);
  await expect(page.locator('[name="own-title"]')).toBeFocused();
  await expect(page.locator('[name="own-title"]')).toHaveValue('W');
  await page.locator('[name="own-title"]').fill('Whales over the ward');
  await page.locator('[name="own-doing"][value="feelings"]').check();
  await page.locator('[data-action="keep-own"]').tap();
  const listed = page.locator('[data-own-idea="own-1"]');
  await expect(listed).toContainText('Whales over the ward');
  await expect(listed.locator('[data-edit-own]')).toBeFocused();
  await expect(listed).toContainText(english['ideas:cautions.feelings']!);
  await listed.locator('[data-edit-own]').tap();
  await expect(page.locator('[name="own-doing"][value="feelings"]')).toBeChecked();
  await page.locator('[name="own-title"]').fill('Whales again');
  await page.locator('[data-action="keep-own"]').tap();
  await opened(page, 'likes');
  await page.locator('[name="likes-idea"]').selectOption({ index: 1 });
  expect((await bedOf(page)).child.likes).toEqual(['own-1']);
  await planned(page);
  await expect(page.locator('[data-strip] [data-idea="own-1"]')).toContainText('Whales again');
  await page.goto('/en/things-to-do/bed/');
  await opened(page, 'own');
  // what a new answer bars leaves the plan, too
  await page.locator('[data-edit-own="own-1"]').tap();
  await page.locator('[name="own-bars"][value="throws"]').check();
  await page.locator('[data-action="keep-own"]').tap();
  await expect(listed.locator('[data-own-barred]')).toBeVisible();
  await expect.poll(async () => (await bedOf(page)).plan!.map(({ idea }) => idea)).not.toContain('own-1');
  await page.locator('[data-remove-own="own-1"]').tap();
  await expect(page.locator('[data-own-idea]')).toHaveCount(0);
  await expect.poll(async () => JSON.stringify(await bedOf(page))).not.toContain('own-1');
});

test('a fear, no shared language and quiet bar ideas by name: the own idea says why, and the plan has none', async ({
  page,
}) => {
  await atTheBed(page);
  await opened(page, 'heeds');
  await page.locator('[data-field="fears"] input[value="water"]').check();
  await page.locator('[data-field="fears"] input[value="needles"]').check();
  await expect(page.locator('[data-needles]')).toBeVisible();
  await page.locator('[data-field="language"] input[value="no"]').check();
  await opened(page, 'times');
  await page.locator('[data-field="loudest"] input[value="0"]').check();
  await expect(page.locator('[data-says="heeds"]')).toContainText(english['play:set.fearwater']!);
  await opened(page, 'own');
  await page.locator('[data-action="write-own"]').tap();
  await answered(page);
  await page.locator('[name="own-title"]').fill('Boats in a bowl');
  await page.locator('[name="own-mouth"][value="water"]').check();
  await page.locator('[name="own-hands"][value="2"]').check();
  await page.locator('[data-action="keep-own"]').tap();
  const why = page.locator('[data-own-idea="own-1"] [data-own-out] li');
  await expect(why).toHaveText([
    english['play:own.clashfear']!.replace('{{what}}', english['play:set.fearwater']!),
    english['play:own.clashlanguage']!,
    english['play:own.clashloud']!,
    english['play:rule.H4']!,
  ]);
  // what opens it again takes its reason away
  await page.locator('[data-field="hands"] input[value="2"]').check();
  await expect(why).toHaveCount(3);
  await page.reload();
  expect(await bedOf(page)).toMatchObject({ fears: ['water', 'needles'], wordless: true, loudest: 0 });
  await planned(page);
  const ideas = new Set((await bedOf(page)).plan!.map(({ idea }) => idea));
  for (const idea of ['own-1', 'slow-bubbles', 'voice-story', 'song-swap', 'which-would-you'])
    expect(ideas).not.toContain(idea);
});

test('of several beds each says in one line what is kept and open; what one has the other may tick', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-25T08:40:00Z') });
  const film = { idea: 'short-film', window: TYPICAL.sketch.moments[1]!.id, from: 870, minutes: 20 };
  const star = { ...TYPICAL, shape: 'star', plan: [film], done: [], pins: [] };
  const { plan: _plan, ...unplanned } = { ...TYPICAL, done: [], pins: [] };
  await page.addInitScript(
    (kept) => {
      if (!localStorage.getItem('bare-toes:play')) localStorage.setItem('bare-toes:play', kept);
    },
    JSON.stringify({ open: 'boat', beds: [unplanned, star] }),
  );
  await page.goto('/en/things-to-do/bed/');
  const line = (shape: string) => page.locator(`[data-bed="${shape}"] [data-glance]`);
  await expect(line('star')).toContainText(english['ideas:short-film.name']!);
  await expect(line('star')).toContainText(/09:15.*18:15/);
  await expect(line('boat')).toContainText(english['play:glance.none']!);
  await expect(page.locator('[data-says="elsewhere"]')).toContainText(english['ideas:things.screen']!);
  await opened(page, 'elsewhere');
  await page.locator('[data-action="tick-elsewhere"]').tap();
  await expect(page.locator('[data-field="elsewhere"] input[value="screen"]')).toBeChecked();
  await expect(page.locator('[data-found-elsewhere]')).toHaveCount(0);
  expect((await bedOf(page)).room.usedElsewhere).toEqual(['cards', 'screen']);
});

test('two tabs, two beds: what one adds the other has, and neither takes the other’s away', async ({
  page,
  context,
}) => {
  await atTheBed(page);
  await page.locator('[data-action="add-bed"]').first().tap();
  const beds = (of: Page) => of.locator('[data-bed]');
  const here = await beds(page).count();
  const other = await context.newPage();
  await other.clock.install({ time: MORNING });
  await other.goto('/en/things-to-do/bed/');
  await scriptRuns(other);
  await other.locator('[data-action="add-bed"]').first().tap();
  await expect(beds(page)).toHaveCount(here + 1);
  await page.locator('[data-action="add-bed"]').first().tap();
  await expect(beds(other)).toHaveCount(here + 2);
  const kept = await page.evaluate(
    () => (JSON.parse(localStorage.getItem('bare-toes:play')!) as { beds: { shape: string }[] }).beds,
  );
  expect(new Set(kept.map(({ shape }) => shape)).size).toBe(here + 2);
});

test('an idea that was done is not offered again today; again and not again can be taken back', async ({
  page,
}) => {
  await atTheBed(page);
  await planned(page);
  await page.goto('/en/things-to-do/');
  const offered = page.locator('[data-now] [data-idea]');
  const id = (await offered.first().getAttribute('data-idea'))!;
  const before = (await bedOf(page)).plan!;
  await offered.first().locator('[data-done]').tap();
  const done = page.locator(`[data-done-today] [data-idea="${id}"]`);
  await expect(done).toBeVisible();
  await expect(page.locator(`[data-now] [data-idea="${id}"]`)).toHaveCount(0);
  // nothing else of the day moves
  expect((await bedOf(page)).plan).toEqual(before.filter(({ idea, from }) => idea !== id || from <= 520));
  await done.locator('[data-not-again]').tap();
  expect((await bedOf(page)).child.dislikes).toEqual([id]);
  await done.locator('[data-again]').tap();
  expect((await bedOf(page)).child).toMatchObject({ likes: [id], dislikes: [] });
  await done.locator('[data-again]').tap();
  expect((await bedOf(page)).child.likes).toEqual([]);
  await done.locator('[data-done]').tap();
  expect((await bedOf(page)).done).toEqual([]);
});

test('that an answer is noted is said at its bed, and not at the next one', async ({ page }) => {
  await atTheBed(page);
  await page.locator('[data-action="add-bed"]').first().tap();
  await page.goto('/en/things-to-do/');
  await scriptRuns(page);
  const first = page.locator('[data-now] [data-idea]').first();
  const idea = (await first.getAttribute('data-idea'))!;
  await first.locator('[data-again]').tap();
  await expect(page.locator('[data-said]')).toHaveText(english['play:said']!);
  await page.locator('[data-to-bed="circle"]').tap();
  await expect(page.locator('[data-which-bed]')).toHaveAttribute('data-which-bed', 'circle');
  await expect(page.locator(`[data-now] [data-again="${idea}"]`)).toHaveAttribute('aria-pressed', 'false');
  await expect(page.locator('[data-said]')).toHaveCount(0);
});

test('what is pressed stays as large as it was, with large text, too: nothing moves from under the finger', async ({
  page,
}) => {
  await atTheBed(page);
  await page.locator('[data-action="add-bed"]').first().tap();
  await page.goto('/en/things-to-do/');
  await scriptRuns(page);
  for (const size of ['100%', '200%']) {
    await page.addStyleTag({ content: `html { font-size: ${size} !important }` });
    for (const selector of ['[data-to-bed="circle"]', '[data-to-bed="square"]', '[data-again]']) {
      const button = page.locator(selector).first();
      const sizeOf = () => button.evaluate((e: HTMLElement) => [e.offsetWidth, e.offsetHeight]);
      const [before, pressed] = [await sizeOf(), await button.getAttribute('aria-pressed')];
      await button.tap();
      await expect(button).not.toHaveAttribute('aria-pressed', pressed!);
      const [width, height] = (await sizeOf()).map((now, at) => Math.abs(now - before[at]!));
      // lines are drawn in whole pixels
      expect([width! <= 1, height! <= 1], `${selector} at ${size}`).toEqual([true, true]);
    }
  }
});

test('a plan that stands open over midnight is over', async ({ page }) => {
  await atTheBed(page);
  await planned(page);
  await page.clock.fastForward('16:00:00');
  await expect(page.locator('main')).toContainText(english['play:planning.none']!);
  await expect(page.locator('[data-strip] [data-idea]')).toHaveCount(0);
});

test('in the plan what has begun can be marked, and what has still to come cannot', async ({ page }) => {
  await atTheBed(page);
  await planned(page);
  await page.clock.setFixedTime(new Date('2026-01-15T12:45:00Z'));
  await page.reload();
  const rows = page.locator('[data-strip] [data-idea]');
  await expect(rows.first().locator('[data-done]')).toBeVisible();
  await expect(rows.last().locator('[data-answers]')).toHaveCount(0);
  await rows.first().locator('[data-done]').tap();
  const bed = await bedOf(page);
  expect(bed.done).toEqual([bed.plan![0]]);
});

test('in the dark hours the family’s page leads to the night’s short list, and offers nothing of the day', async ({
  page,
}) => {
  await page.clock.install({ time: NIGHT });
  await page.goto('/en/things-to-do/');
  await scriptRuns(page);
  await page.locator('[data-action="begin-bed"]').tap();
  await expect(page.locator('[data-now]')).toHaveCount(0);
  await expect(page.locator('main a[href$="/things-to-do/night/"]')).toHaveCount(1);
  await page.locator('[data-action="dark-hours"]').tap();
  await page.waitForURL('**/things-to-do/night/');
  const ideas = page.locator('[data-night] [data-idea]');
  await expect(ideas).toHaveCount(3);
  const names = await ideas.evaluateAll((all) => all.map((one) => one.getAttribute('data-idea')));
  await expect(page.locator('header a[href$="/en/bell/"]').first()).toBeVisible();
  // what is said about one moves none of them under the finger
  await ideas.first().locator('[data-not-again]').tap();
  await expect(ideas.first().locator('[data-not-again]')).toHaveAttribute('aria-pressed', 'true');
  expect(await ideas.evaluateAll((all) => all.map((one) => one.getAttribute('data-idea')))).toEqual(names);
  await page.locator('[data-action="other-ideas"]').tap();
  expect(await ideas.count()).toBeLessThanOrEqual(3);
  await expect(page.locator(`[data-night] [data-idea="${names[0]}"]`)).toHaveCount(0);
  const small = await page
    .locator('main :is(a, button, summary)')
    .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 72).length);
  expect(small).toBe(0);
});

test('the night’s list is dark by day, too, and gives way while something waits that rings now', async ({
  page,
}) => {
  await page.clock.install({ time: MORNING });
  await leaveNotes(page, [
    noted(MORNING, 5, { kind: 'sign', sign: 'toes-colour', answer: 'different' }, 'a1b2c3-1'),
  ]);
  await page.goto('/en/things-to-do/night/');
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
  await expect(page.locator('[data-rings-now]')).toBeVisible();
  await expect(page.locator('[data-night]')).toHaveCount(0);
});

// the longest words, the largest buttons, the smallest screen
test('by night at 320 px the bed with every heading open is within reach and readable', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await chosen(page, { light: 'night' });
  await page.clock.install({ time: MORNING });
  await page.goto('/pl/things-to-do/bed/');
  await scriptRuns(page);
  for (const summary of await page.locator('[data-fold] > summary').all()) await summary.tap();
  await page.locator('[data-action="write-own"]').tap();
  await page.locator('[data-action="keep-own"]').tap();
  await expect(page.locator('[data-own-faults]')).toBeVisible();
  expect(await sideways(page)).toEqual([]);
  const small = await page
    .locator('main :is(a, button, summary, label:has(input), select)')
    .evaluateAll(
      (all, height) =>
        all
          .filter((one) => one.getBoundingClientRect().height < height - 0.5)
          .map((one) => one.outerHTML.slice(0, 90)),
      72,
    );
  expect(small).toEqual([]);
  expect(await findings(page)).toEqual([]);
});
