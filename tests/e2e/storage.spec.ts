/** Notes that cannot be kept never take the class away; notes that can be kept are not lost. */
import { expect, test, type Page } from '@playwright/test';
import { leaveNotes, leaveRows, noted } from '../helpers/kept-notes.ts';
import { chosen, keptNotes, scriptRuns, words } from '../helpers/pages.ts';
import { TYPICAL } from '../helpers/play-beds.ts';
import { CARD } from '../helpers/bed-cards.ts';
import { encodeBedCard } from '#domain/bed-card/code.ts';

const english = words('en');
const result = (page: Page) => page.locator('article[data-urgency]');

const refusals = {
  blocked: () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no', 'SecurityError');
    };
  },
  full: () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  },
  broken: () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('lost', 'UnknownError');
    };
  },
} as const;

for (const [reason, refuse] of Object.entries(refusals))
  test(`notes are ${reason}: the class stands, and the page says that nothing was written down`, async ({
    page,
  }) => {
    await page.addInitScript(refuse);
    for (const [sign, urgency] of [
      ['toes/toes-colour', 'ring-now'],
      ['bandage/band-wet', 'tell-nurse'],
      ['more/no-poo', 'next-visit'],
    ]) {
      await page.goto(`/en/look/${sign}/`);
      const not = page.locator('[data-not-written]');
      await expect(not).toBeVisible();
      await expect(not).toHaveAttribute('data-not-written', reason);
      await expect(not).toContainText(english['steps:written.not']!);
      await expect(not).toContainText(english[`steps:written.${reason}`]!);
      await expect(page.locator('[data-written]')).toHaveCount(0);
      await expect(result(page)).toHaveAttribute('data-urgency', urgency!);
    }
    // the press of the button still counts on this page
    await page.goto('/en/look/toes/toes-colour/');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    await expect(page.locator('[data-not-written]:not([data-tap])')).toContainText(
      english['signs:toes-colour.name']!,
    );
    await expect(page.locator('[data-tap="bell"]')).toHaveAttribute('data-not-written', reason);
    // the full look ends with the same words; it asks the store in the same way whatever the reason
    if (reason !== 'full') return;
    await page.goto('/en/look/full/1/');
    await page.locator('label[data-sign="toes-cool"][data-answer="different"]').tap();
    for (let step = 2; step <= 6; step += 1) {
      await page.locator('a[data-next]').tap();
      await page.waitForURL(`**/full/${step}/`);
    }
    await page.locator('a[data-next]').tap();
    await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
    await expect(page.locator('[data-not-written]')).toHaveAttribute('data-not-written', reason);
  });

test('the sign was written, the press of the button could not be: each line says what is true of its own note', async ({
  page,
}) => {
  await page.goto('/en/look/toes/toes-colour/');
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.evaluate(refusals.full);
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-tap="bell"]')).toContainText(
    `${english['steps:result.pressed']!}: ${english['steps:written.not']!}`,
  );
  await expect(page.locator('[data-written]')).toContainText(
    `${english['signs:toes-colour.name']!}: ${english['common:written.only']!.replace(/ *\{\{time\}\}.*/, '')}`,
  );
  await expect(page.locator('[data-not-written]')).toHaveCount(1);
  expect((await keptNotes(page)).map(({ kind }) => kind)).toEqual(['sign']);
});

test('a question or an answer of the round that could not be kept is said', async ({ page }) => {
  await page.goto('/en/for-staff/round/');
  await scriptRuns(page);
  await expect(page.locator('[data-ask]').first()).toBeVisible();
  await page.evaluate(refusals.full);
  const not = page.locator('[data-not-written]');
  await page.locator('[data-ask]').last().tap();
  await expect(page.locator('[data-question]')).toHaveCount(1);
  await expect(not).toHaveAttribute('data-not-written', 'full');
  await expect(not).toBeInViewport({ ratio: 1 });
});

test('combinations still rise on a phone that keeps no notes', async ({ page }) => {
  await page.addInitScript(refusals.blocked);
  await page.goto('/en/look/child/very-upset/');
  await expect(page.locator('[data-not-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
  await page.getByRole('link', { name: english['steps:result.anotherThing']! }).tap();
  await page.waitForURL('**/en/look/');
  await page.locator('main a[data-part="child"]').tap();
  await page.locator('main a[data-sign="sore-rising"][data-answer="different"]').tap();
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
});

test('a store that never answers: the class stands with the line that it may be more, then the page says so', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
  });
  // a clock that waits: on a busy machine the page would give up before it was looked at
  await page.clock.install({ time: new Date('2026-01-15T14:20:00Z') });
  await page.clock.pauseAt(new Date('2026-01-15T14:20:01Z'));
  await page.goto('/en/look/bandage/band-wet/');
  await scriptRuns(page);
  await expect(page.locator('[data-lower-bound]')).toBeHidden();
  await page.clock.runFor(2600);
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
  await expect(page.locator('[data-lower-bound]')).toBeVisible();
  await expect(page.locator('[data-say="ward"]')).toBeVisible();
  await expect(page.locator('[data-not-written]')).toHaveCount(0);
  await page.clock.resume();
  await expect(page.locator('[data-not-written]')).toHaveAttribute('data-not-written', 'broken', {
    timeout: 25_000,
  });
  await expect(page.locator('[data-lower-bound]')).not.toBeVisible();
  await expect(page.locator('[data-written]')).toHaveCount(0);
});

test('choices that cannot be kept: the look works all the same', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.getItem = () => {
      throw new DOMException('no', 'SecurityError');
    };
    Storage.prototype.setItem = () => {
      throw new DOMException('no', 'SecurityError');
    };
  });
  await page.goto('/en/look/');
  await page.locator('main a[data-part="toes"]').tap();
  await page.locator('main a[data-sign="toes-cool"][data-answer="different"]').tap();
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-written]')).toBeVisible();
});

test('a broken value in the store is kept, shown as unknown, and counts; the new note is written beside it', async ({
  page,
}) => {
  await leaveRows(page, { 'day-2026-01-15': 'rubbish', device: 42 });
  await page.goto('/en/look/more/no-poo/');
  await expect(page.locator('[data-written]')).toBeVisible();
  // what cannot be read counts as "tell the nurse": never less
  await expect(result(page)).toHaveAttribute('data-urgency', /^(tell-nurse|not-sure|ring-now)$/);
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-undated]')).toHaveCount(1);
  await expect(page.locator('[data-entry="sign"]')).toHaveCount(1);
  await page.goto('/en/look/');
  await expect(page.locator('main [data-unknown]')).toBeVisible();
});

test('a database without its table: the class stands, and the page says that nothing was written down', async ({
  page,
}) => {
  await page.goto('/icon.svg');
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('bare-toes', 7);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );
  await page.goto('/en/look/bandage/band-wet/');
  await expect(page.locator('[data-not-written]')).toHaveAttribute('data-not-written', 'broken');
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
});

test('two tabs write at once: no note is lost, and each tab learns of the other', async ({ context }) => {
  const [one, two] = await Promise.all([context.newPage(), context.newPage()]);
  const rounds = [
    ['bandage/band-wet', 'bandage/band-tight'],
    ['toes/toes-cool', 'toes/toes-colour'],
    ['cord/cord-trouble', 'cord/cord-touched'],
    ['child/very-upset', 'child/sore-rising'],
  ] as const;
  for (const [left, right] of rounds) {
    await Promise.all([one!.goto(`/en/look/${left}/`), two!.goto(`/en/look/${right}/`)]);
    await Promise.all([one!, two!].map((page) => expect(page.locator('[data-written]')).toBeVisible()));
  }
  // the same press on two pages that stay open
  // (the button goes as soon as the other tab's press is known, so one of the two may come too late to press)
  await Promise.all(
    [one!, two!].map((page) =>
      page.evaluate(() => document.querySelector<HTMLElement>('[data-action="bell"]')?.click()),
    ),
  );
  await Promise.all([one!, two!].map((page) => expect(page.locator('[data-pressed]')).toBeVisible()));
  await expect(async () => {
    const notes = await keptNotes(one!);
    expect(
      notes
        .filter((note) => note.kind === 'sign')
        .map((note) => note.sign)
        .sort(),
    ).toEqual(
      rounds
        .flat()
        .map((address) => address.split('/')[1])
        .sort(),
    );
    expect(new Set(notes.map((note) => note.id)).size).toBe(notes.length);
  }).toPass();
  // each tab counts what the other wrote
  for (const page of [one!, two!]) await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
});

test('a tab that stands open rises when another tab reports more', async ({ context }) => {
  const [one, two] = await Promise.all([context.newPage(), context.newPage()]);
  await one!.goto('/en/look/child/very-upset/');
  await expect(one!.locator('[data-written]')).toBeVisible();
  await expect(result(one!)).toHaveAttribute('data-urgency', 'tell-nurse');
  await two!.goto('/en/look/child/sore-rising/');
  await expect(result(one!)).toHaveAttribute('data-urgency', 'ring-now');
});

test('notes survive a reload, and opening the same page again is not a second note', async ({ page }) => {
  await page.goto('/en/look/toes/toes-cool/');
  await expect(page.locator('[data-written]')).toBeVisible();
  const [before] = await keptNotes(page);
  await page.reload();
  await expect(page.locator('[data-written]')).toBeVisible();
  expect(await keptNotes(page)).toEqual([before]);
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry="sign"]')).toHaveCount(1);
  await page.reload();
  await expect(page.locator('[data-entry="sign"]')).toContainText(english['signs:toes-cool.name']!);
});

test('taken back: the note is struck, stays listed crossed out, and no longer counts', async ({ page }) => {
  await page.goto('/en/look/child/very-upset/');
  await page.locator('[data-action="take-back"]').tap();
  await expect(page.locator('[data-taken-back]')).toHaveText(english['steps:result.takenBack']!);
  const notes = await keptNotes(page);
  expect(notes.map((note) => note.kind)).toEqual(['sign', 'strike']);
  expect(notes[1]!.strikes).toBe(notes[0]!.id);
  await page.goto('/en/our-notes/');
  const sign = page.locator('[data-entry="sign"]');
  await expect(sign).toHaveCount(1);
  expect(await sign.locator('.said').evaluate((span) => getComputedStyle(span).textDecorationLine)).toBe(
    'line-through',
  );
  await page.goto('/en/look/child/sore-rising/');
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
});

test('a nurse looked: the page says when, and asks nobody to press; different again, it is as urgent as before', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-01-15T14:20:00Z') });
  await page.goto('/en/look/toes/toes-colour/');
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-pressed]')).toBeVisible();
  await page.clock.fastForward(2 * 60_000);
  await page.locator('[data-action="nurse-looked"]').tap();
  const looked = page.locator('[data-looked]');
  await expect(looked).toContainText('14:22');
  await expect(looked.getByRole('heading', { level: 1 })).toBeInViewport();
  await expect(result(page)).toHaveAttribute('data-urgency', 'none');
  await expect(page).toHaveTitle(`${english['signs:toes-colour.name']!} – Bare Toes`);
  await expect(page.getByText(english['common:urgency.ring-now']!, { exact: true })).toHaveCount(0);
  await expect(page.locator('[data-action="bell"], [data-written]')).toHaveCount(0);

  // tapped by mistake: nothing was lost
  await looked.locator('[data-action="take-back-look"]').tap();
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-pressed]')).toBeVisible();

  await page.locator('[data-action="nurse-looked"]').tap();
  await looked.locator('[data-action="again"]').tap();
  await expect(result(page)).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(page.locator('[data-action="bell"]')).toBeVisible();
  // the first page knows it, too
  await page.goto('/en/look/');
  await expect(page.locator('section[data-urgency="ring-now"]')).toContainText(
    english['signs:toes-colour.name']!,
  );
});

test('a nurse looked: the reports are closed, and a new one starts from its own class', async ({ page }) => {
  await chosen(page, { under3: false });
  await page.goto('/en/look/child/very-upset/');
  await page.locator('[data-action="nurse-looked"]').tap();
  await expect(page.locator('[data-action="nurse-looked"]')).toHaveCount(0);
  await page.goto('/en/look/');
  await scriptRuns(page);
  await page.locator('main a[data-part="child"]').tap();
  await page.locator('main a[data-sign="sore-rising"][data-answer="different"]').tap();
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result(page)).toHaveAttribute('data-urgency', 'tell-nurse');
  await page.goto('/en/our-notes/');
  await expect(page.locator('[data-entry="nurse-looked"]')).toHaveCount(1);
});

test('a note that went in, and could not be read back at first, is written once', async ({ page }) => {
  await page.addInitScript(() => {
    let asked = 0;
    const get = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'get')!
      .value as IDBObjectStore['get'];
    IDBObjectStore.prototype.get = function (key) {
      // of the day's notes: once to add to them, and then to read them back
      if (String(key).startsWith('day-') && ++asked === 2) throw new DOMException('asleep', 'UnknownError');
      return get.call(this, key);
    };
    Object.assign(window, { dayReads: () => asked });
  });
  await page.goto('/en/our-notes/');
  await scriptRuns(page);
  await page.locator('[data-note-kind="told"]').tap();
  await expect(page.locator('[data-written]')).toHaveAttribute('data-written', 'told');
  expect((await keptNotes(page)).map(({ kind }) => kind)).toEqual(['told']);
  await expect(page.locator('[data-entry]')).toHaveCount(1);
  expect(await page.evaluate(() => (window as unknown as { dayReads(): number }).dayReads())).toBeGreaterThan(
    2,
  );
});

test.describe('what cannot be read is said, and lies elsewhere before anything is written in its place', () => {
  /** The text that the device keeps at first under a name. */
  const left = (page: Page, name: string, text: string) =>
    page.addInitScript(
      ([key, value]) => {
        if (!localStorage.getItem(key!)) localStorage.setItem(key!, value!);
      },
      [`bare-toes:${name}`, text],
    );
  const aside = (page: Page, name: string) =>
    page.evaluate(
      (key) => JSON.parse(localStorage.getItem(key) ?? '[]') as unknown,
      `bare-toes:${name}:unread`,
    );
  const textOf = (page: Page, name: string) =>
    page.evaluate((key) => localStorage.getItem(key), `bare-toes:${name}`);
  const shape = (name: string) => `\u2068${english[`play:shape.${name}`]}\u2069`;

  for (const [what, text] of [
    ['rubbish', 'rubbish'],
    ['of a newer version', JSON.stringify({ version: 9, beds: { boat: TYPICAL } })],
  ] as const)
    test(`the beds, ${what}: a new bed begins beside them`, async ({ page }) => {
      await left(page, 'play', text);
      await page.goto('/en/things-to-do/bed/');
      const unread = page.locator('[data-unread]');
      await expect(unread).toContainText(english['play:unread.all']!);
      await expect(unread).toContainText(english['play:unread.aside']!);
      await expect(page.locator('[data-bed]')).toHaveCount(1);
      expect(await textOf(page, 'play')).not.toBe(text);
      expect(await aside(page, 'play')).toEqual([text]);
      // the text stays there when more is written, and when the page is opened anew
      await page.locator('[data-field="hands"] input[value="2"]').check();
      await page.reload();
      await scriptRuns(page);
      expect(await aside(page, 'play')).toEqual([text]);
    });

  test('half of a bed: its shape and its parts are named, and the rest is there', async ({ page }) => {
    const text = JSON.stringify({
      open: 'boat',
      beds: [
        { ...TYPICAL, freeHands: 'two', sketch: { ...TYPICAL.sketch, moments: 'many' } },
        { ...TYPICAL, shape: 'star', sketch: 7 },
      ],
    });
    // what has begun stands whatever the rest of the bed says
    await page.clock.setFixedTime(new Date(`${TYPICAL.day}T23:30:00Z`));
    await left(page, 'play', text);
    await page.goto('/en/things-to-do/plan/');
    const unread = page.locator('[data-unread]');
    await expect(unread).toContainText(shape('boat'));
    await expect(unread).toContainText(`${english['play:set.first']} and ${english['play:set.moments']}`);
    await expect(unread).toContainText(english['play:unread.bed']!.replace('{{bed}}', shape('star')));
    await expect(page.locator('[data-row="idea"]')).toHaveCount(TYPICAL.plan!.length);
    expect(await aside(page, 'play')).toEqual([text]);
  });

  test('the child’s day, of a newer version: the child and the grown-up are told, and the text is there', async ({
    page,
  }) => {
    const text = JSON.stringify({ version: 9, days: [{ day: '2026-01-15', events: {} }] });
    await left(page, 'day', text);
    await page.clock.setFixedTime(new Date('2026-01-15T10:00:00Z'));
    await page.goto('/en/our-day/grown-up/');
    const told = page.locator('[data-faults]');
    await expect(told).toContainText(english['day-adult:faults.all']!);
    await expect(told).toContainText(english['day-adult:faults.aside']!);
    await expect(page.locator('[data-part-of-day="e-lunch"]')).toBeVisible();
    expect(await aside(page, 'day')).toEqual([text]);
    await page.evaluate(() => localStorage.removeItem('bare-toes:day'));
    await page.goto('/en/our-day/');
    await expect(page.locator('[data-faults]')).toHaveText(english['day:unread']!);
    // erasing takes what was put aside as well
    await page.evaluate(() => localStorage.setItem('bare-toes:family:unread', '["7"]'));
    await page.goto('/en/put-away/');
    await scriptRuns(page);
    const hold = page.locator('[data-hold]');
    for (const _ of [1, 2]) await hold.click({ delay: 3_500 });
    await expect(page.locator('[data-erased]')).toHaveAttribute('data-erased', 'yes');
    expect(
      await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('unread'))),
    ).toEqual([]);
  });

  test('a part of the child’s day: the grown-up reads which', async ({ page }) => {
    await left(page, 'day', JSON.stringify({ firstDay: '2026-01-14', ways: { leftHand: 'perhaps' } }));
    await page.goto('/en/our-day/grown-up/');
    const told = page.locator('[data-fault="day › ways › leftHand"]');
    await expect(told).toContainText(english['day-adult:ways.title']!);
    await expect(page.locator('[data-faults]')).toContainText(english['day-adult:faults.rest']!);
  });

  test('what was chosen about the child: each page leads to choosing it anew, until that is done', async ({
    page,
  }) => {
    const text = '{"side":"left","under3":tr';
    await left(page, 'family', text);
    await page.goto('/en/look/');
    const told = page.locator('[data-family-unread]');
    await expect(told).toHaveText(english['common:familyUnread']!);
    await expect.poll(() => aside(page, 'family')).toEqual([text]);
    // other choices do not end it
    await page.locator('footer input[value="night"]').check();
    await page.goto('/en/bell/');
    await told.locator('a').tap();
    await page.waitForURL('**/look/drawing/');
    await page.getByRole('radio', { name: english['steps:picture.left']! }).check();
    await expect(told).toHaveCount(0);
    await page.goto('/en/look/');
    await scriptRuns(page);
    await expect(page.locator('[data-offline]')).toBeVisible();
    await expect(told).toHaveCount(0);
    expect(await aside(page, 'family')).toEqual([text]);
  });
});

test('notes that began under a card that cannot be read are not mixed with another child: the page asks first', async ({
  page,
}) => {
  await leaveNotes(page, [
    noted(new Date(), 30, { kind: 'drink', amount: 'full', what: 'water' }, 'aaaaaa-1'),
  ]);
  await page.addInitScript(() => localStorage.setItem('bare-toes:card', '{"code":"10'));
  await page.goto(`/en/bed-card/take/#${encodeBedCard(CARD)}`);
  await expect(page.locator('[data-refused="earlier"]')).toBeVisible();
  await expect(page.locator('[data-action="take"]')).toHaveCount(0);
  await page.locator('[data-action="same-child"]').tap();
  await expect(page.locator('[data-action="take"]')).toBeVisible();
});

test.describe('a phone that is full', () => {
  /** From the first page on the browser refuses to keep anything under this name. */
  const noRoomFor = (page: Page, name: string) =>
    page.addInitScript((key) => {
      const keep = Object.getOwnPropertyDescriptor(Storage.prototype, 'setItem')!.value as Storage['setItem'];
      Storage.prototype.setItem = function (at, text) {
        if (at === key) throw new DOMException('no room', 'QuotaExceededError');
        keep.call(this, at, text);
      };
    }, `bare-toes:${name}`);
  const keptAt = (page: Page, name: string) =>
    page.evaluate((key) => localStorage.getItem(key), `bare-toes:${name}`);
  const notWritten = (page: Page) => page.locator('[data-not-written]');

  test('takes no card, and says so', async ({ page }) => {
    const code = encodeBedCard(CARD);
    await noRoomFor(page, 'card');
    await page.goto(`/en/bed-card/take/#${code}`);
    await page.locator('[data-action="take"]').tap();
    await expect(notWritten(page)).toHaveText(english['card:take.notKept']!);
    await expect(page.locator('[data-action="onward"]')).toHaveCount(0);
    expect(await keptAt(page, 'card')).toBeNull();
  });

  test('a kept card that is no card at all is said', async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem('bare-toes:card', '{"code":"10'));
    await page.goto('/en/bed-card/take/');
    await expect(page.locator('[data-fault="kept"]')).toHaveText(english['card:mine.unreadable']!);
  });

  test('plans no day without saying that it is not kept, and says "noted" of no answer', async ({ page }) => {
    await noRoomFor(page, 'play');
    await page.clock.setFixedTime(new Date('2026-01-15T10:00:00Z'));
    await page.goto('/en/things-to-do/bed/');
    await expect(notWritten(page)).toHaveText(english['play:notKept']!);
    await page.locator('[data-action="plan"]').tap();
    await page.waitForURL('**/things-to-do/plan/');
    await expect(page.locator('[data-row="idea"]').first()).toBeVisible();
    await expect(notWritten(page)).toHaveText(english['play:notKept']!);
    await page.locator('main a[href$="/things-to-do/night/"]').first().tap();
    await page.waitForURL('**/things-to-do/night/');
    await page.locator('[data-again]').first().tap();
    await expect(page.locator('[data-said]').first()).toHaveText(english['play:notKept']!);
    expect(await keptAt(page, 'play')).toBeNull();
  });

  test('shows the child’s day all the same; child, grown-up and private page say that it is not kept', async ({
    page,
  }) => {
    await chosen(page, { age: 14 });
    await noRoomFor(page, 'day');
    await page.clock.setFixedTime(new Date('2026-01-15T10:00:00Z'));
    for (const [address, line] of [
      ['our-day', 'day:notKept'],
      ['our-day/grown-up', 'day-adult:faults.notKept'],
      ['our-day/private', 'day-adult:faults.notKept'],
    ] as const) {
      await page.goto(`/en/${address}/`);
      await expect(notWritten(page), address).toHaveText(english[line]!);
    }
    // what is pressed holds for as long as the page is open, and the line with it
    await page.goto('/en/our-day/grown-up/');
    await page.locator('[data-action="nothing-by-mouth"]').tap();
    await expect(page.locator('[data-eating]')).toHaveAttribute('data-eating', 'held');
    await expect(notWritten(page)).toBeVisible();
    expect(await keptAt(page, 'day')).toBeNull();
  });
});
