/** Notes from phone to phone without network: moving code, file, ten letters (scene 15, 6-notes.md 7.3). */
import { readFile } from 'node:fs/promises';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { checkSum } from '#domain/notes/check-sum.ts';
import { byTime, mergeNotes, type Entry } from '#domain/notes/entries.ts';
import { bytesOfCharacters, framesOf, charactersOf } from '#domain/notes/frames.ts';
import { LARGEST_FILE, writeNotesFile } from '#domain/notes/file.ts';
import { writeTransfer } from '#domain/notes/transfer.ts';
import { instant } from '#domain/units.ts';
import { clockTime } from '#i18n/format.ts';
import { fortnight } from '../helpers/fortnight.ts';
import { leaveNotes } from '../helpers/kept-notes.ts';
import { codeOf, filmCodes, framesShown, type Code } from '../helpers/phones.ts';
import { readFromScreen } from '../helpers/codes.ts';
import { chosen, keptNotes, scriptRuns, words } from '../helpers/pages.ts';

// the pages alone: what is kept for use without network has tests of its own
test.use({ serviceWorkers: 'block' });

const english = words('en');
const PLACE = '/en/pass-it-on/';
/** The phone whose notes are sent wrote all of these; the other phone of the same stay wrote the rest. */
const [SENDER, OTHER] = ['3fa91c', 'b07e52'] as const;
const STAY = fortnight(420, 7, 'likely');
const byId = (entries: readonly { id: string }[]) => [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));
const writtenBy = (device: string) => STAY.filter((entry) => entry.id.startsWith(device));
const nameOf = (device: string) => ({ id: device, count: writtenBy(device).length });

/** A phone of its own, on the page where notes are handed on. */
async function phone(
  browser: Browser,
  {
    notes = [],
    device,
    codes,
    at = PLACE,
    time,
  }: { notes?: readonly Entry[]; device?: string; codes?: readonly Code[]; at?: string; time?: number } = {},
): Promise<Page> {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  if (time !== undefined) await page.clock.setFixedTime(time);
  if (codes) await filmCodes(page, codes);
  await leaveNotes(page, notes, device === undefined ? undefined : nameOf(device));
  await page.goto(at);
  await scriptRuns(page);
  return page;
}
const send = (notes: readonly Entry[], now: number, device: string = SENDER) =>
  framesOf(writeTransfer({ entries: notes, now: instant(now), device: nameOf(device) }));
const minuteNow = () => Math.floor(Date.now() / 60_000);
const received = (page: Page) => page.locator('[data-received]');

test.describe('moving code', () => {
  for (const light of ['day', 'night'])
    test(`${light}: a decoder from outside reads from the screen what the page says it shows`, async ({
      page,
      context,
    }) => {
      await chosen(page, { light });
      await leaveNotes(page, STAY, nameOf(SENDER));
      await page.goto(PLACE);
      await scriptRuns(page);
      await page.locator('[data-action="show"]').tap();
      await page.getByRole('button', { name: english['pass:code.still']! }).tap();
      const shown = page.locator('[data-frame]');
      const seen = new Set<string>();
      for (let look = 0; look < 3; look += 1) {
        const text = await readFromScreen(context, shown);
        expect(text).toBe(await shown.getAttribute('data-frame-text'));
        seen.add(text!);
        await page.getByRole('button', { name: english['pass:code.nextPicture']! }).tap();
      }
      expect(seen.size).toBe(3);
    });

  test('two parents: every note arrives though every fifth picture was missed, and once more brings nothing new', async ({
    browser,
  }) => {
    const mother = await phone(browser, { notes: writtenBy(SENDER), device: SENDER });
    const shown = await framesShown(mother, 14);
    const { needed } = send(writtenBy(SENDER), minuteNow());
    expect(needed).toBeGreaterThan(1);
    const before = await keptNotes(mother);

    // between the pictures a stranger's code, and one that moved while it was filmed
    const [first] = shown;
    const moved = first!.text.slice(0, 20) + (first!.text[20] === 'A' ? 'B' : 'A') + first!.text.slice(21);
    const codes = [
      codeOf('https://example.org/'),
      codeOf(moved),
      ...shown.filter((_, index) => index % 5 !== 0),
    ];
    const father = await phone(browser, { notes: writtenBy(OTHER), device: OTHER, codes });
    await father.locator('[data-action="receive"]').tap();
    await expect(received(father)).toHaveAttribute('data-received', String(writtenBy(SENDER).length), {
      timeout: 20_000,
    });
    await expect(received(father)).toContainText(english['pass:got.newSince']!);
    // a time of last week is not read as tonight's: each stands under its day, and how many more came is said
    const newest = [...writtenBy(SENDER)].sort(byTime).reverse().slice(0, 40);
    const days = newest.map(({ t, off }) =>
      new Intl.DateTimeFormat('en-GB', {
        ...{ weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' },
      }).format((t + off) * 60_000),
    );
    expect(await received(father).locator('h4').allInnerTexts()).toEqual([...new Set(days)]);
    await expect(received(father).locator('li')).toHaveCount(40);
    await expect(received(father).locator('[data-not-shown]')).toHaveText(
      `+${writtenBy(SENDER).length - 40}`,
    );
    await expect(father.locator('[data-clocks]')).toHaveCount(0);
    expect(byId((await keptNotes(father)) as never)).toEqual(byId(STAY));
    expect(await keptNotes(mother), 'sending changes nothing').toEqual(before);

    await father.locator('[data-action="receive"]').tap();
    await expect(received(father)).toHaveAttribute('data-received', '0', { timeout: 20_000 });
    await expect(received(father)).toContainText(english['pass:got.doneNothing']!);
    expect(await keptNotes(father)).toHaveLength(STAY.length);
    await mother.context().close();
    await father.context().close();
  });

  test('half a transfer changes nothing, and the page says how much is there', async ({ browser }) => {
    const frames = send(STAY, minuteNow());
    expect(frames.needed).toBeGreaterThan(2);
    const codes = Array.from({ length: frames.needed - 1 }, (_, n) => codeOf(frames.frame(n)));
    const page = await phone(browser, { notes: writtenBy(OTHER), device: OTHER, codes });
    const before = await keptNotes(page);
    await page.locator('[data-action="receive"]').tap();
    await expect(page.locator('[data-progress]')).toContainText(`${frames.needed - 1}`, { timeout: 20_000 });
    await expect(page.locator('[data-progress]')).toContainText(`${frames.needed}`);
    await expect(received(page)).toHaveCount(0);
    await page.locator('[data-pass="receive"] button').tap();
    await expect(page.locator('[data-action="receive"]')).toBeVisible();
    await expect(received(page)).toHaveCount(0);
    expect(await keptNotes(page)).toEqual(before);
    await page.context().close();
  });

  test('a code of a later version says so and changes nothing', async ({ browser }) => {
    const bytes = bytesOfCharacters(send(STAY, minuteNow()).frame(0))!;
    bytes[1]! += 1;
    new DataView(bytes.buffer).setUint32(bytes.length - 4, checkSum(bytes.subarray(0, -4)));
    const page = await phone(browser, { codes: [codeOf(charactersOf(bytes))] });
    await page.locator('[data-action="receive"]').tap();
    await expect(page.locator('[data-fault]')).toHaveText(english['pass:got.too-new']!, { timeout: 20_000 });
    expect(await keptNotes(page)).toEqual([]);
    await page.context().close();
  });

  test('the code goes by itself after a minute, and without notes there is none', async ({ page }) => {
    await page.clock.install();
    await page.goto(PLACE);
    await scriptRuns(page);
    await expect(page.locator('[data-action="show"]')).toBeDisabled();
    await expect(page.locator('[data-action="file"]')).toBeDisabled();
    await leaveNotes(page, STAY.slice(0, 9));
    await page.goto(PLACE);
    await scriptRuns(page);
    await page.locator('[data-action="show"]').tap();
    await page.clock.runFor(55_000);
    await expect(page.locator('[data-frame]')).toBeVisible();
    expect(Number(await page.locator('[data-frame]').getAttribute('data-frame'))).toBeGreaterThan(200);
    await page.clock.runFor(6_000);
    await expect(page.locator('[data-frame]')).toHaveCount(0);
  });
});

test.describe('a camera that is not there', () => {
  for (const [name, reason] of [
    ['NotAllowedError', 'refused'],
    ['NotFoundError', 'none'],
    ['NotReadableError', 'busy'],
  ] as const)
    test(`${reason}: the page says so, and a file can still be opened`, async ({ page }) => {
      await page.addInitScript((fault) => {
        navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', fault));
      }, name);
      await page.goto(PLACE);
      await scriptRuns(page);
      await page.locator('[data-action="receive"]').tap();
      await expect(page.locator('[data-camera]')).toHaveText(english[`pass:camera-${reason}`]!);
      await page.locator('[data-action="open-file"]').setInputFiles({
        name: 'notes.json',
        mimeType: 'application/json',
        buffer: Buffer.from(writeNotesFile(STAY.slice(0, 5))),
      });
      await expect(received(page)).toHaveAttribute('data-received', '5');
    });
});

test.describe('file', () => {
  test('made on one phone, opened on another: the same notes, and once more nothing new', async ({
    browser,
  }) => {
    const mother = await phone(browser, { notes: STAY, device: SENDER });
    const [download] = await Promise.all([
      mother.waitForEvent('download'),
      mother.locator('[data-action="file"]').tap(),
    ]);
    await expect(mother.locator('[data-shared]')).toHaveAttribute('data-shared', 'saved');
    expect(download.suggestedFilename()).toMatch(/\.json$/);
    const file = await download.path();
    expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({ count: STAY.length });

    const father = await phone(browser, { notes: writtenBy(OTHER), device: OTHER });
    for (const fresh of [writtenBy(SENDER).length, 0]) {
      await father.locator('[data-action="open-file"]').setInputFiles(file);
      await expect(received(father)).toHaveAttribute('data-received', String(fresh));
      expect(byId((await keptNotes(father)) as never)).toEqual(byId(STAY));
    }
    await expect(received(father)).toContainText(english['pass:got.doneNothing']!);
    // this phone goes on counting its own notes where it was
    await father.goto('/en/our-notes/');
    await father.locator('[data-note-kind="told"]').tap();
    await expect(father.locator('[data-written="told"]')).toBeVisible();
    const own = nameOf(OTHER).count + 1;
    expect((await keptNotes(father)).map(({ id }) => id)).toContain(`${OTHER}-${own}`);
    await mother.context().close();
    await father.context().close();
  });

  test('damaged, cut off, foreign, too new, too large: each is said, and nothing was changed', async ({
    page,
  }) => {
    await leaveNotes(page, writtenBy(OTHER), nameOf(OTHER));
    await page.goto(PLACE);
    await scriptRuns(page);
    const before = await keptNotes(page);
    const good = writeNotesFile(writtenBy(SENDER));
    const files: [string, string, Buffer | string][] = [
      ['damaged', 'one digit of one time is another', good.replace(/"t":(\d+)\d,/, '"t":$19,')],
      ['damaged', 'cut off', good.slice(0, good.length / 2)],
      ['damaged', 'one note is gone', good.replace(/\n {4}\{[^\n]*\n/, '\n')],
      ['foreign', 'empty', ''],
      ['foreign', 'another list', '[1, 2, 3]'],
      ['foreign', 'no text at all', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46])],
      ['too-new', 'of a later version', good.replace('"version": 1', '"version": 2')],
      ['too-large', 'longer than any stay', good + ' '.repeat(LARGEST_FILE)],
    ];
    expect(new Set(files.map(([, , content]) => content.toString())).size).toBe(files.length);
    for (const [fault, what, content] of files) {
      await page.locator('[data-action="open-file"]').setInputFiles({
        name: 'notes.json',
        mimeType: 'application/json',
        buffer: Buffer.from(content as string),
      });
      await expect(page.locator('[data-fault]'), what).toHaveAttribute('data-fault', fault);
      await expect(page.locator('[data-fault]')).toHaveText(english[`pass:got.${fault}`]!);
      await expect(received(page)).toHaveCount(0);
      expect(await keptNotes(page), what).toEqual(before);
    }
    // the right file straight afterwards
    await page.locator('[data-action="open-file"]').setInputFiles({
      name: 'notes.json',
      mimeType: 'application/json',
      buffer: Buffer.from(good),
    });
    await expect(received(page)).toHaveAttribute('data-received', String(writtenBy(SENDER).length));
    await expect(page.locator('[data-fault]')).toHaveCount(0);
  });

  test('a phone that is full says that nothing could be kept', async ({ page }) => {
    await page.addInitScript(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.goto(PLACE);
    await scriptRuns(page);
    await page.locator('[data-action="open-file"]').setInputFiles({
      name: 'notes.json',
      mimeType: 'application/json',
      buffer: Buffer.from(writeNotesFile(STAY)),
    });
    await expect(page.locator('[data-fault]')).toHaveText(english['pass:got.notKept']!);
    await expect(received(page)).toHaveCount(0);
    expect(await keptNotes(page)).toEqual([]);
  });
});

test.describe('ten letters', () => {
  const heard = (page: Page) => page.locator('[data-heard]');
  async function type(page: Page, letters: string) {
    const form = page.locator('[data-pass="spoken"]');
    if (!(await form.locator('input').isVisible())) await form.locator('summary').tap();
    await form.locator('input').fill(letters);
    await form.locator('button').tap();
  }

  test('read out on one phone, typed on another in its own language: the open signs are named', async ({
    browser,
  }) => {
    const mother = await phone(browser, { at: '/en/look/bandage/band-tight/' });
    await expect(mother.locator('[data-written]')).toBeVisible();
    await mother.goto('/en/look/toes/toes-cool/');
    await mother.locator('[data-action="bell"]').tap();
    await expect(mother.locator('[data-pressed]')).toBeVisible();
    await mother.goto(PLACE);
    await scriptRuns(mother);
    await mother.locator('[data-pass="spoken"] summary').tap();
    const letters = (await mother.locator('[data-spoken]').textContent())!;
    expect(letters.replaceAll('-', '')).toMatch(/^[0-9A-HJKMNP-TV-Z]{10}$/);

    for (const language of ['en', 'pl', 'ar']) {
      const own = words(language);
      const father = await phone(browser, { at: `/${language}/pass-it-on/` });
      // as it is heard: small letters, without the dashes
      await type(father, letters.replaceAll('-', ' ').toLowerCase());
      await expect(heard(father)).toHaveAttribute('data-heard', '2');
      await expect(heard(father).locator('li')).toHaveText([
        `${own['look:parts.toes']!}: ${own['signs:toes-cool.name']!}`,
        `${own['look:parts.bandage']!}: ${own['signs:band-tight.name']!}`,
      ]);
      await expect(heard(father)).toContainText(own['pass:spoken.pressed']!);
      expect(await keptNotes(father), 'what was heard is not a note').toEqual([]);
      await father.context().close();
    }
    await mother.context().close();
  });

  test('one wrong letter, two that changed places, one too few: nothing is said of any sign', async ({
    browser,
  }) => {
    const mother = await phone(browser, { at: '/en/look/toes/toes-cool/' });
    await expect(mother.locator('[data-written]')).toBeVisible();
    await mother.goto(PLACE);
    await scriptRuns(mother);
    await mother.locator('[data-pass="spoken"] summary').tap();
    await type(mother, (await mother.locator('[data-spoken]').textContent())!);
    await expect(heard(mother)).toHaveAttribute('data-heard', '1');
    const right = (await mother.locator('[data-spoken]').textContent())!.replaceAll('-', '');
    const swapped = [...right].findIndex((letter, at) => at < 9 && letter !== right[at + 1]);
    const wrong = [
      ...[...right].map(
        (letter, at) => right.slice(0, at) + (letter === '7' ? '8' : '7') + right.slice(at + 1),
      ),
      right.slice(0, swapped) + right[swapped + 1]! + right[swapped]! + right.slice(swapped + 2),
      right.slice(0, 9),
      `${right}7`,
    ];
    for (const letters of wrong) {
      await type(mother, letters);
      await expect(mother.locator('[data-pass="spoken"] [data-fault]'), letters).toBeVisible();
      await expect(heard(mother), letters).toHaveCount(0);
    }
    await mother.context().close();
  });
});

test('notes that cannot be read: no letters, rather than letters that say nothing is open', async ({
  page,
}) => {
  const spoken = page.locator('[data-pass="spoken"]');
  await leaveNotes(page, STAY.slice(0, 3));
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no', 'SecurityError');
    };
  });
  await page.goto(PLACE);
  await scriptRuns(page);
  await spoken.locator('summary').tap();
  await expect(spoken.locator('input')).toBeVisible();
  await expect(spoken.locator('[data-spoken]')).toHaveCount(0);
});

test.describe('clocks that differ', () => {
  /** The receiving phone's clock; the other one is seven minutes behind. */
  const TIME = Date.UTC(2026, 0, 15, 14, 30);
  const MINE = TIME / 60_000;
  const SENT: Entry = {
    ...({ id: `${SENDER}-1`, t: instant(MINE - 67), off: 0, kind: 'drink' } as Entry),
    ...{ amount: 'half', what: 'water' },
  } as Entry;
  const OWN = { id: `${OTHER}-1`, t: instant(MINE - 30), off: 0, kind: 'nurse-came' } as Entry;
  const codesAt = (minute: number) => {
    const { frame } = framesOf(
      writeTransfer({ entries: [SENT], now: instant(minute), device: { id: SENDER, count: 1 } }),
    );
    return [codeOf(frame(0))];
  };
  async function receive(browser: Browser, minute: number): Promise<Page> {
    const page = await phone(browser, { codes: codesAt(minute), time: TIME });
    await leaveNotes(page, [OWN], { id: OTHER, count: 1 });
    await page.goto(PLACE);
    await scriptRuns(page);
    await page.locator('[data-action="receive"]').tap();
    await expect(received(page)).toHaveAttribute('data-received', '1', { timeout: 20_000 });
    return page;
  }
  const clockNotes = async (page: Page) =>
    (await keptNotes(page)).flatMap((note) => {
      const { kind, device, upTo, minutes } = note as unknown as Record<string, unknown>;
      return kind === 'clock' ? [{ device, upTo, minutes }] : [];
    });
  const timeOf = (entry: Entry, later = 0) => clockTime('en', instant(entry.t + later), entry.off);

  for (const [right, note, shift] of [
    ['mine', { device: SENDER, upTo: 1, minutes: 7 }, [7, 0]],
    ['other', { device: OTHER, upTo: 1, minutes: -7 }, [0, -7]],
    ['unknown', undefined, [0, 0]],
  ] as const)
    test(`seven minutes, and the right one is ${right}: asked once, written as a note, times as written stay`, async ({
      browser,
    }) => {
      const page = await receive(browser, MINE - 7);
      await expect(page.locator('[data-clocks]')).toHaveAttribute('data-clocks', '7');
      await expect(page.locator('[data-clocks]')).toContainText('7');
      expect(await clockNotes(page), 'nothing before the answer').toEqual([]);
      await page.locator(`[data-clock="${right}"]`).tap();
      await expect(page.locator('[data-clocks]')).toHaveCount(0);
      await expect.poll(() => clockNotes(page)).toEqual(note ? [note] : []);
      const kept = await keptNotes(page);
      for (const entry of [SENT, OWN]) expect(kept).toContainEqual(entry);
      await page.goto('/en/our-notes/');
      await expect(page.locator('[data-entry="drink"] time')).toHaveText(timeOf(SENT, shift[0]));
      await expect(page.locator('[data-entry="nurse-came"] time')).toHaveText(timeOf(OWN, shift[1]));
      await page.context().close();
    });

  test('two minutes, as between any two clocks: nobody is asked', async ({ browser }) => {
    const page = await receive(browser, MINE - 2);
    await expect(page.locator('[data-clocks]')).toHaveCount(0);
    await page.context().close();
  });
});

test('two phones hand on to each other in turn: both hold the same notes', async ({ browser }) => {
  const notes = { [SENDER]: writtenBy(SENDER).slice(0, 40), [OTHER]: writtenBy(OTHER).slice(0, 30) };
  const mother = await phone(browser, { notes: notes[SENDER]!, device: SENDER });
  const father = await phone(browser, { notes: notes[OTHER]!, device: OTHER });
  for (const [from, to] of [
    [mother, father],
    [father, mother],
  ] as const) {
    const [download] = await Promise.all([
      from.waitForEvent('download'),
      from.locator('[data-action="file"]').tap(),
    ]);
    await to.locator('[data-action="open-file"]').setInputFiles(await download.path());
    await expect(received(to)).toBeVisible();
  }
  const all = byId(mergeNotes(notes[SENDER]!, notes[OTHER]!));
  for (const page of [mother, father]) {
    expect(byId(await keptNotes(page))).toEqual(all);
    await page.context().close();
  }
});
