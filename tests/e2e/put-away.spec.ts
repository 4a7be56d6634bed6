/** At the end nothing is left; before it nothing is lost (scenes 19 and 24, 6-notes.md 7.4, 8-risks.md 25). */
import { access, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { encodeBedCard } from '#domain/bed-card/code.ts';
import { CARD } from '../helpers/bed-cards.ts';
import { keptAddresses } from '../helpers/builds.ts';
import { fortnight } from '../helpers/fortnight.ts';
import { leaveNotes } from '../helpers/kept-notes.ts';
import { built, chosen, keptNotes, kindsOf, scriptRuns, words } from '../helpers/pages.ts';
import { fingerOn } from '../helpers/phones.ts';

// the offline copy is a part of what is looked at
test.use({ serviceWorkers: 'allow' });

const english = words('en');
const MINUTE = 60_000;
const HELD = 2_100;
const hold = (page: Page) => page.locator('[data-hold]');
const NOTES = fortnight(60, 3, 'likely');
const FAMILY = { locale: 'en', role: 'grown-up', side: 'right', skin: 'umber', writer: 'grown-up-a' };

/** A phone at the end of a stay: notes, the nurse's card, choices. */
async function afterAStay(page: Page, family: Record<string, unknown> = FAMILY): Promise<void> {
  await leaveNotes(page, NOTES, { id: '3fa91c', count: 60 });
  await page.evaluate(
    ([card, choices]) => {
      localStorage.setItem('bare-toes:card', card!);
      localStorage.setItem('bare-toes:family', choices!);
    },
    [JSON.stringify({ code: encodeBedCard(CARD) }), JSON.stringify(family)],
  );
}

/** Everything this site holds on the device, looked up past the site's own code; caches apart. */
async function held(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const found: string[] = [];
    for (const { name } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name!);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      for (const table of database.objectStoreNames) {
        const keys = await new Promise<IDBValidKey[]>((resolve, reject) => {
          const asking = database.transaction(table).objectStore(table).getAllKeys();
          asking.onsuccess = () => resolve(asking.result);
          asking.onerror = () => reject(asking.error);
        });
        found.push(...keys.map((key) => `${name} › ${table} › ${String(key)}`));
      }
      database.close();
    }
    for (const [name, place] of Object.entries({ localStorage, sessionStorage }))
      for (let at = 0; at < place.length; at += 1) {
        const key = place.key(at)!;
        // where a page was scrolled to, kept by the framework
        if (!/^sveltekit:(scroll|snapshot|states)/.test(key)) found.push(`${name} › ${key}`);
      }
    if (document.cookie) found.push(`cookie › ${document.cookie}`);
    return found.sort();
  });
}
const heldNow = (page: Page) => expect.poll(() => held(page));

async function holdWithMouse(page: Page, button: Locator, milliseconds: number) {
  await button.hover();
  await page.mouse.down();
  await page.waitForTimeout(milliseconds);
  await page.mouse.up();
}

test.describe('erasing', () => {
  // the pages alone; what the worker keeps has a test of its own
  test.use({ serviceWorkers: 'block' });

  test('what goes is what is kept: play and the child’s day are named where there are any', async ({
    page,
  }) => {
    await afterAStay(page);
    await page.goto('/en/put-away/');
    const [play, day] = ['play', 'day'].map((place) => page.locator(`[data-what] [data-goes="${place}"]`));
    await expect(page.locator('[data-what]')).toContainText(`${NOTES.length} notes`);
    await expect(play!).toHaveCount(0);
    await expect(day!).toHaveCount(0);
    // a bed is ticked, and the child’s own page was open
    await page.goto('/en/things-to-do/bed/');
    await page.locator('[data-fold="moment"] summary').tap();
    await page.goto('/en/our-day/');
    await expect(page.locator('main[data-mode]')).toBeVisible();
    await page.goto('/en/put-away/');
    await expect(play!).toHaveText(english['common:areas.things-to-do']!);
    await expect(day!).toHaveText(english['common:areas.our-day']!);
  });

  test('whoever asks for the page to keep is taken there', async ({ page }) => {
    await afterAStay(page);
    await page.goto('/en/put-away/');
    await page.locator('main button[aria-expanded="false"]').tap();
    await expect(page.locator('[data-keepsake] h2')).toBeInViewport();
    await expect(page.locator('[data-keepsake] button')).toHaveText(english['staff:print']!);
  });

  test('two long presses erase everything, and nothing less than two does', async ({ page }) => {
    await afterAStay(page);
    await page.goto('/en/put-away/');
    await expect(page.locator('[data-what]')).toContainText(`${NOTES.length} notes`);
    await expect(page.locator('[data-what]')).toContainText(english['pass:away.card']!);
    const before = await held(page);
    expect(before).toContain('localStorage › bare-toes:card');
    expect(before.filter((line) => line.startsWith('bare-toes › notes › day-')).length).toBeGreaterThan(5);

    // a child's taps, also many
    for (let taps = 0; taps < 5; taps += 1) await hold(page).tap();
    await holdWithMouse(page, hold(page), 1_500);
    await expect(hold(page)).toHaveText(english['pass:away.hold']!);
    // a finger that slides off the button
    await hold(page).hover();
    await page.mouse.down();
    await page.mouse.move(2, 2);
    await page.waitForTimeout(HELD);
    await page.mouse.up();
    await expect(hold(page)).toHaveText(english['pass:away.hold']!);
    // the first long press only asks
    await holdWithMouse(page, hold(page), HELD);
    await expect(hold(page)).toHaveText(english['pass:away.holdAgain']!);
    await hold(page).tap();
    await page.getByRole('button', { name: english['common:back']! }).tap();
    await expect(hold(page)).toHaveText(english['pass:away.hold']!);
    expect(await held(page)).toEqual(before);

    await holdWithMouse(page, hold(page), HELD);
    await holdWithMouse(page, hold(page), HELD);
    await expect(page.locator('[data-erased]')).toHaveAttribute('data-erased', 'yes');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(english['pass:away.done']!);
    await expect(page.locator('[data-erased]')).toContainText(english['pass:away.wipe']!);
    await expect(page.locator('[data-erased]')).toBeInViewport();
    await heldNow(page).toEqual([]);

    // the next child's first look begins from nothing
    await page.goto('/en/our-notes/');
    await expect(page.locator('[data-notes="empty"]')).toBeVisible();
    await page.goto('/en/bed-card/take/');
    await scriptRuns(page);
    expect((await held(page)).filter((line) => line.includes('card') || line.includes('day-'))).toEqual([]);
    await expect(page.locator('html')).not.toHaveAttribute('data-side', 'right');
  });

  test('a finger on the glass and a key do the same', async ({ page }) => {
    await afterAStay(page);
    await page.goto('/en/put-away/');
    await expect(page.locator('[data-what]')).toContainText(`${NOTES.length} notes`);
    await fingerOn(hold(page), 600);
    await expect(hold(page)).toHaveText(english['pass:away.hold']!);
    await fingerOn(hold(page), HELD);
    await expect(hold(page)).toHaveText(english['pass:away.holdAgain']!);
    await hold(page).focus();
    await page.keyboard.press('Enter');
    await expect(hold(page)).toHaveText(english['pass:away.holdAgain']!);
    await page.keyboard.down('Enter');
    await page.waitForTimeout(HELD);
    await page.keyboard.up('Enter');
    await expect(page.locator('[data-erased]')).toHaveAttribute('data-erased', 'yes');
    await heldNow(page).toEqual([]);
  });

  test('another open tab forgets, too, and brings nothing back', async ({ page, context }) => {
    await afterAStay(page);
    const places = ['/en/our-notes/', '/en/bed-card/take/', '/en/look/toes/toes-cool/'];
    const tabs: Page[] = [];
    for (const place of places) {
      const tab = await context.newPage();
      await tab.goto(place);
      await scriptRuns(tab);
      tabs.push(tab);
    }
    await expect(tabs[0]!.locator('[data-entry]').first()).toBeVisible();
    await expect(tabs[2]!.locator('[data-written]')).toBeVisible();
    await page.bringToFront();
    await page.goto('/en/put-away/');
    await expect(page.locator('[data-what]')).toContainText(`${NOTES.length + 1} notes`);
    await holdWithMouse(page, hold(page), HELD);
    await holdWithMouse(page, hold(page), HELD);
    await expect(page.locator('[data-erased]')).toHaveAttribute('data-erased', 'yes');
    for (const tab of tabs) {
      await tab.waitForURL((url) => url.pathname === '/');
      await expect(tab.locator('[data-entry], [data-written], [data-urgency]')).toHaveCount(0);
    }
    await heldNow(page).toEqual([]);
    // another light chosen in such a tab keeps the light, and nothing of the child who went home
    await tabs[0]!.goto('/en/put-away/');
    await tabs[0]!.locator('input[name="light"][value="night"]').check();
    const kept = await tabs[0]!.evaluate(() => localStorage.getItem('bare-toes:family'));
    expect(JSON.parse(kept!)).toMatchObject({ light: 'night' });
    for (const word of ['right', 'umber', 'grown-up']) expect(kept).not.toContain(word);
  });

  for (const [what, refuse] of [
    [
      'the notes',
      () => {
        IDBObjectStore.prototype.clear = () => {
          throw new DOMException('lost', 'UnknownError');
        };
      },
    ],
    [
      'the choices and the card',
      () => {
        Storage.prototype.removeItem = () => undefined;
      },
    ],
  ] as const)
    test(`where ${what} cannot be erased, the page says so and never that nothing is left`, async ({
      page,
    }) => {
      await page.addInitScript(refuse);
      await page.addInitScript(() => localStorage.setItem('bare-toes:play', '{"open":"boat","beds":[]}'));
      await afterAStay(page);
      await page.goto('/en/put-away/');
      await expect(page.locator('[data-what]')).toContainText(`${NOTES.length} notes`);
      await holdWithMouse(page, hold(page), HELD);
      await holdWithMouse(page, hold(page), HELD);
      const said = page.locator('[data-erased]');
      // where localStorage keeps what it has, the copy of the notes is still there as well
      await expect(said).toHaveAttribute(
        'data-erased',
        what === 'the notes' ? 'notes' : 'notes card play choices',
      );
      const beds = english['common:areas.things-to-do']!;
      if (what === 'the notes') await expect(said).not.toContainText(beds);
      else await expect(said).toContainText(beds);
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(english['common:areas.put-away']!);
      await expect(page.getByText(english['pass:away.done']!)).toHaveCount(0);
      expect((await held(page)).length).toBeGreaterThan(0);
    });

  test('kept until 14 days after going home: the day is named, nothing goes by itself, then the page asks', async ({
    page,
  }) => {
    const now = new Date('2026-03-20T10:00:00Z');
    await page.clock.setFixedTime(now);
    await afterAStay(page);
    await page.goto('/en/put-away/');
    await expect(page.locator('[data-due]')).toHaveCount(0);
    await page.locator('input[name="home-day"]').fill('2026-03-21');
    await page.locator('[data-action="keep-until"]').tap();
    // 21 March and 14 days; in words of this language, whatever their order
    const day = new Intl.DateTimeFormat('en', { day: 'numeric', month: 'long', timeZone: 'UTC' });
    for (const { value, type } of day.formatToParts(Date.UTC(2026, 3, 4)))
      if (type !== 'literal') await expect(page.locator('[data-kept-until]')).toContainText(value);
    const before = await held(page);

    for (const [time, asks] of [
      ['2026-04-03T23:00:00Z', 0],
      ['2026-04-05T08:00:00Z', 1],
      ['2026-05-01T08:00:00Z', 1],
    ] as const) {
      await page.clock.setFixedTime(new Date(time));
      await page.reload();
      await expect(page.locator('[data-what]')).toContainText(`${NOTES.length} notes`);
      await expect(page.locator('[data-due]'), time).toHaveCount(asks);
      expect(await held(page), 'time alone erases nothing').toEqual(before);
    }
  });
});

test('after erasing, the device keeps the files of the program and no other', async ({ page }) => {
  await page.goto('/en/look/toes/toes-cool/?from=home-screen');
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await page.goto('/en/put-away/#toes-cool');
  await expect(page.locator('[data-what]')).toContainText('1 note');
  await holdWithMouse(page, hold(page), HELD);
  await holdWithMouse(page, hold(page), HELD);
  await expect(page.locator('[data-erased]')).toHaveAttribute('data-erased', 'yes');
  const addresses = Object.values(await keptAddresses(page)).flat();
  expect(addresses.length).toBeGreaterThan(50);
  // beside the files, one list of languages, so that they are there without network
  for (const address of addresses.filter((one) => one !== '/_kept-languages'))
    await access(path.join(built, address.endsWith('/') ? `${address}index.html` : address));
  await heldNow(page).toEqual([]);
});

test.describe('the made-up child', () => {
  test.use({ serviceWorkers: 'block' });
  const mark = (page: Page) => page.locator('[data-made-up-mark]');
  async function start(page: Page) {
    await page.goto('/en/try-it/');
    await scriptRuns(page);
    await page.locator('[data-action="start-made-up"]').tap();
    await page.waitForURL('**/en/our-notes/');
    await expect(page.locator('[data-entry]').first()).toBeVisible();
  }

  test('every page bears the mark, on paper too; without her no page does', async ({ page }) => {
    await page.goto('/en/look/');
    await expect(mark(page)).not.toBeVisible();
    await start(page);
    // one layout bears it everywhere: every sixth kind of page
    for (const address of kindsOf('en').filter((one, at) => !one.includes('#') && at % 6 === 0)) {
      await page.goto(address);
      for (const media of ['screen', 'print'] as const) {
        await page.emulateMedia({ media });
        await expect(mark(page), `${address} ${media}`).toBeVisible();
        await expect(mark(page), `${address} ${media}`).toContainText(english['common:madeUp.mark']!);
      }
      await page.emulateMedia({ media: 'screen' });
    }
    // also where the reader goes on from page to page
    await page.goto('/en/look/');
    await page.locator('main a[data-part="toes"]:not(svg a)').first().tap();
    await page.waitForURL('**/en/look/toes/');
    await expect(mark(page)).toBeVisible();
  });

  test('a real child’s notes, card and choices are not touched, not seen, and back at the end', async ({
    page,
  }) => {
    await afterAStay(page);
    await page.goto('/en/our-notes/');
    await scriptRuns(page);
    const [notes, places] = [await keptNotes(page), await held(page)];
    const stored = () =>
      page.evaluate(() => ['card', 'family'].map((name) => localStorage.getItem(`bare-toes:${name}`)));
    const [card, family] = await stored();

    await start(page);
    // her leg, and notes written while trying
    await expect(page.locator('html')).toHaveAttribute('data-side', 'left');
    await page.goto('/en/look/bandage/band-stained/');
    await expect(page.locator('[data-note="written"]')).toBeVisible();
    await page.locator('input[name="light"][value="night"]').check();
    expect(await keptNotes(page)).toEqual(notes);
    expect(await stored()).toEqual([card, family]);
    // real notes are not in what is shown or would be sent
    const ids = new Set(notes.map(({ id }) => id.split('-')[0]));
    await page.goto('/en/pass-it-on/');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-action="file"]').tap(),
    ]);
    const sent = JSON.parse(await readFile(await download.path(), 'utf8')) as { entries: { id: string }[] };
    expect(sent.entries.length).toBeGreaterThan(50);
    expect(sent.entries.filter(({ id }) => ids.has(id.split('-')[0]!))).toEqual([]);

    await page.goto('/en/try-it/');
    await page.locator('[data-action="end-made-up"]').tap();
    await page.waitForURL('**/en/#choose');
    await scriptRuns(page);
    await expect(mark(page)).not.toBeVisible();
    expect(await keptNotes(page)).toEqual(notes);
    expect(await held(page), 'nothing of hers is left').toEqual(places);
    expect(await stored()).toEqual([card, family]);
    await page.goto('/en/our-notes/');
    await expect(page.locator('html')).toHaveAttribute('data-side', 'right');
    await expect(page.locator('[data-entry]').first()).toBeVisible();
  });

  test('while she is there, nothing is said to be erased: her pages end where she ends', async ({ page }) => {
    await afterAStay(page);
    await start(page);
    await page.goto('/en/put-away/');
    await scriptRuns(page);
    await expect(page.getByRole('link', { name: english['pass:tryIt.end']! })).toBeVisible();
    await expect(hold(page)).toHaveCount(0);
    await page.getByRole('link', { name: english['pass:tryIt.end']! }).tap();
    await page.waitForURL('**/en/try-it/');
    await page.locator('[data-action="end-made-up"]').tap();
    await page.waitForURL('**/en/#choose');
    expect(await keptNotes(page)).toHaveLength(NOTES.length);
  });

  test('another open tab never mixes the two children', async ({ page, context }) => {
    await afterAStay(page);
    await page.goto('/icon.svg');
    const before = await page.evaluate(() => localStorage.getItem('bare-toes:family'));
    const tab = await context.newPage();
    await tab.goto('/en/look/toes/toes-colour/');
    await expect(tab.locator('[data-note="written"]')).toBeVisible();
    const notes = await keptNotes(page);
    // she comes: the tab leaves the real child's page, and writes her nothing
    await page.bringToFront();
    await start(page);
    await tab.waitForURL((url) => !url.pathname.includes('toes-colour'));
    await scriptRuns(tab);
    await tab.goto('/en/look/cord/load-not-free/');
    await expect(tab.locator('[data-note="written"]')).toBeVisible();
    await expect(mark(tab)).toBeVisible();
    expect(await keptNotes(page)).toEqual(notes);
    // she goes: the tab leaves her page, and writes the real child nothing of hers
    await page.goto('/en/try-it/');
    await page.locator('[data-action="end-made-up"]').tap();
    await tab.waitForURL((url) => !url.pathname.includes('load-not-free'));
    await scriptRuns(tab);
    await tab.goto('/en/our-notes/');
    await expect(mark(tab)).not.toBeVisible();
    await expect(tab.locator('html')).toHaveAttribute('data-side', 'right');
    await tab.locator('input[name="light"][value="day"]').check();
    expect(await keptNotes(page)).toEqual(notes);
    const after = await page.evaluate(() => localStorage.getItem('bare-toes:family'));
    expect(JSON.parse(after!)).toMatchObject({ ...(JSON.parse(before!) as object), light: 'day' });
  });
});

test.describe('the cover of a shared tablet', () => {
  test.use({ serviceWorkers: 'block' });
  const NOON = new Date('2026-01-15T12:00:00Z');
  const cover = (page: Page) => page.locator('[data-cover]');
  async function tablet(page: Page, family: Record<string, unknown>) {
    await page.clock.install({ time: NOON });
    await chosen(page, { ...FAMILY, light: 'day', ...family });
    await page.goto('/en/look/bandage/band-stained/');
    await expect(page.locator('[data-written]')).toBeVisible();
    await page.goto('/en/our-notes/');
    await expect(page.locator('[data-entry]')).toHaveCount(1);
    // the foot of the page, and what covers with it, comes after the page
    await expect(page.locator('input[name="light"]').first()).toBeVisible();
    await page.waitForLoadState('networkidle');
  }

  test('three minutes untouched: covered, nothing erased; held open, and covered again after three more', async ({
    page,
  }) => {
    await tablet(page, { shared: true });
    await page.clock.runFor(2.8 * MINUTE);
    await expect(cover(page)).toHaveCount(0);
    // a touch begins the three minutes anew
    await page.locator('h1').tap();
    await page.clock.runFor(2.8 * MINUTE);
    await expect(cover(page)).toHaveCount(0);
    await page.clock.runFor(0.3 * MINUTE);
    await expect(cover(page)).toBeVisible();
    const visible = await page.evaluate(() =>
      [10, 200, 400, 700].map((y) => document.elementFromPoint(180, y)?.closest('[data-cover]') !== null),
    );
    expect(visible, 'no note shows through').toEqual([true, true, true, true]);
    await expect(cover(page)).toContainText(english['pass:cover.lead']!);
    expect(await keptNotes(page)).toHaveLength(1);

    // neither the escape key nor a tap opens it
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await cover(page).locator('[data-hold]').tap();
    await expect(cover(page)).toBeVisible();
    await cover(page).locator('[data-hold]').hover();
    await page.mouse.down();
    await page.clock.runFor(HELD);
    await page.mouse.up();
    await expect(cover(page)).toHaveCount(0);
    await expect(page.locator('[data-entry]')).toHaveCount(1);
    // whoever opened it walks away
    await page.clock.runFor(3.1 * MINUTE);
    await expect(cover(page)).toBeVisible();
    expect(await keptNotes(page)).toHaveLength(1);
  });

  test('from the cover one tap shows how to call, and away from there it is covered again', async ({
    page,
  }) => {
    await tablet(page, { shared: true });
    await page.clock.runFor(3.1 * MINUTE);
    await cover(page).locator('a.bar').tap();
    await page.waitForURL('**/en/bell/');
    await expect(page.locator('main h1')).toBeVisible();
    await expect(cover(page)).toHaveCount(0);
    const free = await page.evaluate(
      () => document.elementFromPoint(180, 300)?.closest('#main, main, header') !== null,
    );
    expect(free).toBe(true);
    await page.goBack();
    await page.waitForURL('**/en/our-notes/');
    await expect(cover(page)).toBeVisible();
  });

  test('a family’s own phone is never covered', async ({ page }) => {
    await tablet(page, { shared: false });
    await page.clock.runFor(60 * MINUTE);
    await expect(page.locator('[data-entry]')).toHaveCount(1);
    await expect(cover(page)).toHaveCount(0);
  });
});
