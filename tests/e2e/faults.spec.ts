/** What a phone on a ward does to a page: its store is emptied, its clock goes back, its printer and network give up. */
import { expect, test, type Page } from '@playwright/test';
import type { NewEntry } from '#domain/notes/entries.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';
import { chosen, keptNotes, LANGUAGES, scriptRuns, words } from '../helpers/pages.ts';
import { TYPICAL } from '../helpers/play-beds.ts';

const english = words('en');
const NOW = new Date('2026-01-15T14:20:00Z');
const DAY = 24 * 60;
const result = (page: Page) => page.locator('article[data-urgency]');

test('the browser empties its store under the page: new notes are kept, and that the others are gone is said', async ({
  page,
  context,
  baseURL,
}) => {
  await leaveNotes(
    page,
    [
      noted(new Date(), 30, { kind: 'drink', amount: 'full', what: 'water' }, 'aaaaaa-1'),
      noted(new Date(), 20, { kind: 'told' }, 'aaaaaa-2'),
    ],
    { id: 'aaaaaa', count: 2 },
  );
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry]')).toHaveCount(2);
  const lost = page.locator('[data-notes-lost]');
  await expect(lost).toHaveCount(0);

  const browser = await context.newCDPSession(page);
  const empty = (storageTypes: string) =>
    browser.send('Storage.clearDataForOrigin', { origin: baseURL!, storageTypes });
  // (the choices stay: without them the page would go at once)
  await page.evaluate(() => {
    for (const key of Object.keys(localStorage))
      if (key.startsWith('bare-toes:copy:')) localStorage.removeItem(key);
  });
  await empty('indexeddb');
  await page.locator('[data-note-kind="medicine-told"]').tap();
  await expect(page.locator('[data-written]')).toHaveAttribute('data-written', 'medicine-told');
  // "written" is true: it lies there, under a new name of this phone
  expect((await keptNotes(page)).map(({ kind }) => kind)).toEqual(['medicine-told']);
  await expect(lost).toHaveText(english['steps:written.broken']!);
  // what the page still holds stays on it, and can be sent to the other phone from here
  await expect(page.locator('[data-entry]')).toHaveCount(3);
  await page.locator('main a[href$="/pass-it-on/"]').tap();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('[data-action="file"]').tap(),
  ]);
  const sent = await (await import('node:fs/promises')).readFile(await file.path(), 'utf8');
  expect((JSON.parse(sent) as { count: number }).count).toBe(3);
  // opened anew, the page says what is there, and no more
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry]')).toHaveCount(1);
  await expect(lost).toHaveCount(0);
  // everything at once, as a browser's own settings do it: the page goes, too, and the next child finds nothing
  await empty('all');
  // (asked of the address, not of a navigation: a browser may break one off and begin it anew)
  await expect.poll(() => new URL(page.url()).pathname).toBe('/');
  await page.waitForLoadState();
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-notes="empty"]')).toBeVisible();
});

test('the browser loses the database alone: every note comes back, and the page and staff read that it was so', async ({
  page,
  context,
  baseURL,
}) => {
  await leaveNotes(
    page,
    [
      noted(new Date(), 30, { kind: 'drink', amount: 'full', what: 'water' }, 'aaaaaa-1'),
      noted(new Date(), 20, { kind: 'sign', sign: 'toes-colour', answer: 'different' }, 'aaaaaa-2'),
    ],
    { id: 'aaaaaa', count: 2 },
  );
  const kinds = async () => (await keptNotes(page)).map(({ kind }) => kind).sort();
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry]')).toHaveCount(2);
  const back = page.locator('[data-brought-back]');
  await expect(back).toHaveCount(0);

  const browser = await context.newCDPSession(page);
  const loseDatabase = () =>
    browser.send('Storage.clearDataForOrigin', { origin: baseURL!, storageTypes: 'indexeddb' });
  // under the page: the next note finds the others there
  await loseDatabase();
  await page.locator('[data-note-kind="medicine-told"]').tap();
  await expect(page.locator('[data-written]')).toHaveAttribute('data-written', 'medicine-told');
  await expect(back).toHaveText(
    new RegExp(english['notes:broughtBack']!.replace('{{time}}', '.*\\d\\d:\\d\\d.*')),
  );
  expect(await kinds()).toEqual(['drink', 'medicine-told', 'sign']);
  await expect(page.locator('[data-notes-lost]')).toHaveCount(0);

  // while nothing was open, as when the browser is killed: the first page already asks about what is open
  await page.goto('/icon.svg');
  await loseDatabase();
  await page.goto('/en/look/');
  await expect(page.locator('section[data-urgency] a[href$="/toes-colour/"]')).toBeVisible();
  expect(await kinds()).toEqual(['drink', 'medicine-told', 'sign']);
  await page.goto('/en/for-staff/');
  await expect(back).toContainText('This browser lost the notes.');
  await expect(page.locator('[data-open-sign="toes-colour"]')).toBeVisible();
});

test('the clock is set back a day: nothing is lost, no time runs backwards on the page, and it is asked about', async ({
  page,
}) => {
  await page.clock.setFixedTime(NOW);
  await chosen(page, { under3: false, side: 'left' });
  await page.goto('/en/look/toes/toes-colour/');
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-pressed]')).toBeVisible();
  const before = await keptNotes(page);

  await page.clock.setFixedTime(new Date(NOW.getTime() - DAY * 60_000));
  await page.goto('/en/look/bandage/band-wet/');
  await expect(page.locator('[data-note="written"]')).toBeVisible();
  // what is open still counts, although it lies ahead of this clock; how long nobody came is not known
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-second-step="due"]')).toBeVisible();
  await expect(page.locator('[data-because]')).toHaveAttribute('data-because', /R14/);
  await expect(page.locator('[data-because]')).toContainText(english['steps:result.clockWentBack']!);
  await expect(page.locator('[data-pressed]')).not.toContainText(english['steps:result.justNow']!);
  const after = await keptNotes(page);
  expect(after).toEqual(expect.arrayContaining(before));
  expect(after.map(({ kind }) => kind).sort()).toEqual(['bell', 'sign', 'sign']);
  for (const address of [
    '/en/look/',
    '/en/look/toes/toes-colour/',
    '/en/bell/',
    '/en/our-notes/',
    '/en/for-staff/',
  ]) {
    await page.goto(address);
    await scriptRuns(page);
    await page.waitForLoadState('networkidle');
    expect(await page.locator('main').innerText(), address).not.toMatch(
      /[-−–]\s?\d+ ?(min|hour)|NaN|Infinity|Invalid/,
    );
  }
  for (const sign of ['toes-colour', 'band-wet'])
    await expect(page.locator(`[data-open-sign="${sign}"]`)).toBeVisible();
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-ahead]')).toHaveText(english['notes:clock.ahead']!);

  // the clock is right again: the notes say themselves that it was not
  await page.clock.setFixedTime(new Date(NOW.getTime() + 60 * 60_000));
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry="sign"]')).toHaveCount(2);
  await expect(page.locator('[data-jump]').first()).toBeVisible();
  await expect(page.locator('[data-ahead]')).toHaveCount(0);
  // a nurse reads both, too: that a clock went back since, and of which day each sign is
  await page.goto('/en/for-staff/');
  await expect(page.locator('[data-jump]')).toContainText(english['notes:clock.jump']!);
  await expect(page.locator('[data-open-sign="band-wet"]')).toContainText('Wed 14:20');
  await expect(page.locator('[data-open-sign="toes-colour"]')).not.toContainText('Thu');
});

test.describe('a plan and a child’s day, and a clock that is set back', () => {
  const plan = TYPICAL.plan!;
  const BED = { ...TYPICAL, pins: plan.slice(2, 3), done: plan.slice(0, 2) };
  const atDay = (days: number, clock: string) =>
    new Date(Date.parse(`${TYPICAL.day}T${clock}:00Z`) + days * DAY * 60_000);
  const behind = (page: Page) => page.locator('[data-clock-behind]');
  const kept = (page: Page) =>
    page.evaluate(() => {
      const [play, day] = ['play', 'day'].map((name) =>
        JSON.parse(localStorage.getItem(`bare-toes:${name}`)!),
      ) as [{ beds: unknown[] }, { book: { day: string; done: unknown[] } }];
      return { beds: play.beds, day: day.book.day, done: day.book.done };
    });

  /** A child whose bed has a plan, and who has pushed breakfast through the door. */
  async function breakfastDone(page: Page) {
    await page.clock.setFixedTime(atDay(0, '07:40'));
    await page.addInitScript(
      ([play, day]) => {
        if (!localStorage.getItem('bare-toes:play')) localStorage.setItem('bare-toes:play', play!);
        if (!localStorage.getItem('bare-toes:day')) localStorage.setItem('bare-toes:day', day!);
      },
      [JSON.stringify({ open: BED.shape, beds: [BED] }), JSON.stringify({ ways: { mode: 'three-doors' } })],
    );
    await page.goto('/en/our-day/');
    await page.locator('[data-door="now"]').tap();
    await expect(page.locator('[data-door="now"]')).toHaveAttribute('data-done', 'true');
    return kept(page);
  }

  test('nothing of them is lost, the pages say it, and all is there when the clock is right again', async ({
    page,
  }) => {
    const before = await breakfastDone(page);
    expect(before.beds).toEqual([JSON.parse(JSON.stringify(BED))]);
    expect(before.done).toHaveLength(1);
    await page.goto('/en/things-to-do/plan/');
    await expect(page.locator('[data-row="idea"]')).toHaveCount(plan.length);

    await page.clock.setFixedTime(atDay(-1, '10:00'));
    for (const [address, line] of [
      ['things-to-do/plan', 'play:ahead.line'],
      ['things-to-do/moment', 'play:ahead.line'],
      ['our-day', 'day:ahead.line'],
      ['our-day/grown-up', 'day:ahead.line'],
    ] as const) {
      await page.goto(`/en/${address}/`);
      await expect(behind(page), address).toContainText(english[line]!);
      expect(await kept(page), address).toEqual(before);
    }
    await page.goto('/en/things-to-do/plan/');
    await expect(page.locator('[data-row="idea"]')).toHaveCount(plan.length);

    await page.clock.setFixedTime(atDay(0, '08:00'));
    for (const address of ['things-to-do/plan', 'our-day']) {
      await page.goto(`/en/${address}/`);
      await scriptRuns(page);
      await expect(behind(page), address).toHaveCount(0);
      expect(await kept(page), address).toEqual(before);
    }
  });

  test('where the later day was the wrong one, somebody begins today anew by hand', async ({ page }) => {
    await breakfastDone(page);
    await page.clock.setFixedTime(atDay(-20, '10:00'));
    await page.goto('/en/our-day/grown-up/');
    await behind(page).locator('summary').tap();
    await behind(page).locator('[data-action="begin-anew"]').tap();
    await expect(behind(page)).toHaveCount(0);
    const today = atDay(-20, '10:00').toISOString().slice(0, 10);
    const after = await kept(page);
    expect(after).toMatchObject({ day: today, done: [], beds: [{ shape: BED.shape, day: today, done: [] }] });
    await page.goto('/en/things-to-do/plan/');
    await expect(page.locator('main')).toContainText(english['play:planning.none']!);
    await expect(behind(page)).toHaveCount(0);
  });
});

test('a browser that refuses to keep pages: the page says so, and does not promise on', async ({ page }) => {
  await page.addInitScript(() => {
    ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error('refused'));
  });
  await page.clock.install({ time: NOW });
  await page.goto('/en/look/');
  await scriptRuns(page);
  const line = page.locator('[data-offline]');
  await expect(line).toHaveText(english['common:offline.filling']!);
  await page.clock.runFor(21_000);
  await expect(line).toHaveText(english['common:offline.never']!);
});

test('a ward takes a language away: a phone that read it is asked anew, and is not sent to a page that is gone', async ({
  page,
}) => {
  await chosen(page, { locale: 'pl' });
  await page.goto('/');
  await page.waitForURL('**/pl/');
  for (const locale of ['uk', 'e', '..', 'en es', '']) {
    await page.evaluate(
      (value) => localStorage.setItem('bare-toes:family', JSON.stringify({ locale: value })),
      locale,
    );
    await page.goto('/');
    await scriptRuns(page);
    expect(new URL(page.url()).pathname, locale).toBe('/');
    await expect(page.locator('a.language')).toHaveCount(LANGUAGES.length);
  }
});

test('a print that was cancelled leaves each page as it was', async ({ page }) => {
  await page.clock.setFixedTime(NOW);
  await page.addInitScript(() => {
    window.print = () => {
      dispatchEvent(new Event('beforeprint'));
      dispatchEvent(new Event('afterprint'));
      document.body.dataset.printed = 'asked';
    };
  });
  const rows: NewEntry[] = [
    { kind: 'poo', what: 'soft' },
    { kind: 'question', ask: 'walk-when' },
  ];
  await leaveNotes(
    page,
    rows.map((row, at) => noted(NOW, 30 + at, row, `aaaaaa-${at + 1}`)),
  );
  await page.evaluate(
    (play) => localStorage.setItem('bare-toes:play', play),
    JSON.stringify({ open: TYPICAL.shape, beds: [{ ...TYPICAL, day: '2026-01-15' }] }),
  );
  for (const area of [
    'for-staff',
    'for-staff/round',
    'bed-card/sheet',
    'why-and-how/paper',
    'things-to-do/moment',
    'things-to-do/paper',
    'our-day/paper',
  ]) {
    await page.goto(`/en/${area}/`);
    await scriptRuns(page);
    await page.waitForLoadState('networkidle');
    const look = () =>
      page
        .locator('body')
        .evaluate((body: HTMLElement) => [location.href, body.innerText, scrollY].join('\n'));
    const before = await look();
    await page.emulateMedia({ media: 'print' });
    await page.emulateMedia({ media: null });
    await page.locator('main button', { hasText: /print/i }).first().click();
    await expect(page.locator('body'), area).toHaveAttribute('data-printed', 'asked');
    await page.evaluate(() => scrollTo(0, 0));
    expect(await look(), area).toBe(before);
    expect(await keptNotes(page)).toHaveLength(2);
  }
});

test.describe('a network that stalls half way', () => {
  /** From here on no script comes that this page does not have yet: it hangs, or breaks off. */
  async function noMoreScripts(page: Page, how: 'hangs' | 'breaks off') {
    const here = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
    await page.route('**/_app/**/*.js', (route) => {
      if (here.includes(route.request().url())) return route.continue();
      return how === 'hangs' ? undefined : route.abort('connectionreset');
    });
  }

  test('before any script: the way from the first screen to what to do is there by links', async ({
    page,
  }) => {
    await page.route('**/_app/**/*.js', () => undefined);
    await page.goto('/en/look/', { waitUntil: 'commit' });
    await page.locator('main a[data-part="bandage"]').first().tap({ noWaitAfter: true });
    await page.locator('main a[data-sign="band-wet"][data-answer="different"]').tap({ noWaitAfter: true });
    await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
    await expect(page.locator('[data-lower-bound]')).toBeVisible();
    await expect(page.locator('[data-say="ward"]')).toBeVisible();
    await expect(page.locator('[data-written]')).toHaveCount(0);
  });

  test('style sheets hang on the first visit: after four seconds the words stand there plain, then as they should', async ({
    page,
  }) => {
    let go = () => {};
    const held = new Promise<void>((resolve) => (go = resolve));
    await page.route('**/*.css', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto('/en/bell/', { waitUntil: 'commit' });
    const painted = () =>
      page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0);
    await expect.poll(painted, { timeout: 15_000 }).toBeGreaterThan(3500);
    await expect(page.locator('html')).toHaveAttribute('data-plain', 'yes');
    await expect(page.locator('h1')).toHaveText(english['steps:bell.title']!);
    await expect(page.locator('svg').first()).toBeHidden();
    // nobody reads of a made-up child who did not ask for one
    await expect(page.locator('[data-made-up-mark]')).toBeHidden();
    go();
    await expect(page.locator('html')).not.toHaveAttribute('data-plain');
    await expect(page.locator('svg').first()).toBeVisible();
  });

  for (const how of ['hangs', 'breaks off'] as const)
    test(`the script of the next page ${how}: a tap on the bar still leads to how to call`, async ({
      page,
    }) => {
      await page.goto('/en/look/');
      await scriptRuns(page);
      await page.waitForLoadState('networkidle');
      await noMoreScripts(page, how);
      await page.locator('a.bar').tap({ noWaitAfter: true });
      await expect(page.locator('main h1')).toHaveText(english['steps:bell.title']!, { timeout: 12_000 });
      await expect(page.locator('main')).toContainText(english['steps:bell.text']!);
      await expect(page.locator('body')).not.toContainText('500');
      expect(new URL(page.url()).pathname).toBe('/en/bell/');
    });

  test('the planner does not come: the bed stays as it was ticked, and the page says why there is no plan', async ({
    page,
  }) => {
    await page.route('**/_app/immutable/workers/**', (route) => route.abort('connectionreset'));
    await page.goto('/en/things-to-do/bed/');
    await scriptRuns(page);
    await page.waitForLoadState('networkidle');
    await noMoreScripts(page, 'breaks off');
    await page.locator('[data-action="plan"]').tap();
    await expect(page.locator('[data-planning-failed]')).toHaveText(english['play:planning.failed']!);
    expect(new URL(page.url()).pathname).toBe('/en/things-to-do/bed/');
    await expect(page.locator('[data-action="plan"]')).toBeEnabled();
  });

  test('on the last screen of a full look: what was answered is not lost', async ({ page }) => {
    await page.goto('/en/look/full/6/');
    await scriptRuns(page);
    await page.locator('label[data-answer="different"]').first().tap();
    await page.waitForLoadState('networkidle');
    await noMoreScripts(page, 'breaks off');
    await page.locator('a[data-next]').tap();
    await page.waitForURL('**/look/full/end/');
    await expect(result(page)).toBeVisible();
    const [look] = await keptNotes(page);
    expect(look?.kind).toBe('look');
    expect(JSON.stringify(look)).toContain('"different"');
  });
});
