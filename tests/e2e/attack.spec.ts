/** Own words, links and files of somebody who means harm: nothing runs, nothing leaves its place, nothing stands still. */
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { encodePlay } from '#domain/play-bed/travel.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { checkSum } from '#domain/notes/check-sum.ts';
import { writeNotesFile } from '#domain/notes/file.ts';
import { bytesOfCharacters, charactersOf, framesOf } from '#domain/notes/frames.ts';
import { writeTransfer } from '#domain/notes/transfer.ts';
import { instant } from '#domain/units.ts';
import type { OwnIdea } from '#domain/play-bed/bed.ts';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { fortnight } from '../helpers/fortnight.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';
import { OWN } from '../helpers/own-ideas.ts';
import { keptNotes, scriptRuns, sideways, words } from '../helpers/pages.ts';
import { codeOf, filmCodes } from '../helpers/phones.ts';
import { TYPICAL } from '../helpers/play-beds.ts';

const english = words('en');
const NARROW = { width: 320, height: 640 };

/** Everything that breaks, asks or says an error on a page; empty when all is well. */
function faultsOn(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`${page.url()}: ${String(error)}`));
  page.on('dialog', (dialog) => {
    faults.push(`${page.url()} asks: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('console', (message) => {
    // the file that the browser asks for and nobody has
    if (message.type() === 'error' && !/404/.test(message.text()))
      faults.push(`${page.url()}: ${message.text()}`);
  });
  return faults;
}
const ran = (page: Page) =>
  page.evaluate(() => 'ran' in window || document.querySelector('[src="x"]') !== null);

const HOSTILE = [
  '<img src=x onerror="window.ran = true"><script>window.ran = true</script>',
  '\u202E\u202E\u202Eback to front\u2066\u2067\u2068',
  `a${'\u0301\u0489'.repeat(60)}`,
  'W'.repeat(140),
  '\uFDFD'.repeat(60),
  '\u200B\u200D\uFEFF\u034F'.repeat(30) + 'seen',
  '👨‍👩‍👧‍👦'.repeat(12),
  '$t(common:home) {{text}} ${window.ran = true}',
];

test('own words of every kind on the pages for staff, on paper and in the plan: nothing runs, all stays in its place', async ({
  page,
}) => {
  const now = new Date('2026-11-25T08:40:00Z');
  await page.clock.install({ time: now });
  await page.setViewportSize(NARROW);
  const faults = faultsOn(page);
  const rows: NewEntry[] = [
    ...HOSTILE.map((own): NewEntry => ({ kind: 'question', own })),
    ...HOSTILE.map((idea): NewEntry => ({ kind: 'play', idea: idea.slice(0, 80), again: true })),
    ...['constructor', '__proto__', ...HOSTILE.map((text) => text.slice(0, 80))].map((sign): NewEntry => ({
      kind: 'sign',
      sign,
      answer: 'different',
      details: HOSTILE.map((d) => d.slice(0, 80)),
    })),
    { kind: 'look', answers: Object.fromEntries(HOSTILE.map((text) => [text, 'different' as const])) },
  ];
  const notes = rows.map((row, at) => noted(now, 10 + at, row, `aaaaaa-${at + 1}`));
  // more than anybody writes, and own words beyond every measure
  const many = Array.from({ length: 400 }, (_, at) => noted(now, 60, { kind: 'bell' }, `bbbbbb-${at + 1}`));
  const song = { kind: 'song', own: 'x'.repeat(10_000) } as unknown as NewEntry;
  const strange = Array.from({ length: 40 }, (_, at) => noted(now, 50, song, `cccccc-${at + 1}`));
  await leaveNotes(page, [...notes, ...many, ...strange]);
  const own = HOSTILE.map((title, at): OwnIdea => ({
    ...OWN,
    id: `own-${at + 1}`,
    title: [...title].slice(0, 60).join(''),
  }));
  await page.evaluate(
    (bed) => localStorage.setItem('bare-toes:play', bed),
    JSON.stringify({
      open: TYPICAL.shape,
      beds: [{ ...TYPICAL, own, child: { ...TYPICAL.child, likes: own.map(({ id }) => id) }, plan: [] }],
    }),
  );

  const pages = {
    '/en/look/': '[data-more-unknown]',
    '/en/for-staff/': '[data-not-shown]',
    '/ar/for-staff/': '[data-not-shown]',
    '/en/for-staff/round/': '[data-round] > li',
    '/en/our-notes/': '[data-entry="question"]',
    '/en/things-to-do/bed/': '[data-own-idea]',
    '/en/things-to-do/paper/': 'main h1',
  };
  for (const [address, there] of Object.entries(pages)) {
    await page.goto(address);
    await scriptRuns(page);
    if (there === '[data-own-idea]') await page.locator('[data-fold="own"] > summary').tap();
    await expect(page.locator(there).first(), address).toBeAttached();
    expect(await sideways(page), address).toEqual([]);
    expect(await ran(page), address).toBe(false);
    const text = await page.locator('main').innerText();
    // no character that turns a direction, but the isolates of this page, each closed
    expect(text, address).not.toMatch(/[\u202A-\u202E\u2066\u2067]/);
    for (const line of text.split('\n'))
      expect(line.split('\u2068').length, `${address}: ${line}`).toBe(line.split('\u2069').length);
    expect(text.length, address).toBeLessThan(60_000);
  }
  await page.goto('/en/for-staff/');
  await expect(page.locator('[data-more-unknown]')).toBeVisible();
  await expect(page.locator('[data-staff="recent"] [data-entry]')).toHaveCount(200);
  // a sign that is called like something of the machine leads nowhere
  await page.goto('/en/look/');
  await expect(page.locator('main a[href*="undefined"]')).toHaveCount(0);
  const paper = (
    await page.goto('/en/for-staff/').then(() => page.pdf({ preferCSSPageSize: true }))
  ).toString('latin1');
  expect([...paper.matchAll(/\/Type\s*\/Page\b/g)].length).toBeLessThanOrEqual(2);
  expect(faults).toEqual([]);
});

test('links with damaged, huge and hostile ends, into each page that reads its address: said, and nothing is changed', async ({
  page,
}) => {
  await page.setViewportSize(NARROW);
  const faults = faultsOn(page);
  const code = encodePlay(TYPICAL, IDEA_ORDER, THING_ORDER);
  const ENDS = [
    '%E0%A4%A%',
    '__proto__',
    'constructor',
    '<img src=x onerror=window.ran=true>',
    `%3Cscript%3Ewindow.ran%3Dtrue%3C/script%3E%E2%80%AE`,
    'A'.repeat(100_000),
    `${code.slice(0, -9)}%00${code.slice(-8)}`,
    'javascript:window.ran=true',
    '9'.repeat(400),
  ];
  const READS = {
    '/en/bed-card/take/': '[data-fault]',
    '/en/bed-card/sheet/': '[data-fault]',
    '/en/things-to-do/take/': '[data-fault]',
    '/en/things-to-do/moment/': '[data-moment-card]',
    '/en/why-and-how/paper/': 'main h1',
    '/en/bell/': 'main h1',
    '/': 'main h1',
  };
  await page.goto('/en/look/');
  await scriptRuns(page);
  const kept = () => page.evaluate(() => JSON.stringify(localStorage));
  let before = await kept();
  for (const [address, there] of Object.entries(READS))
    for (const [at, end] of ENDS.entries()) {
      // the same page with another end would not be opened anew
      await page.goto(`${address}?${at}#${end}`);
      const what = `${address}#${end.slice(0, 40)}`;
      await expect(page.locator(there).first(), what).toBeVisible();
      expect(await sideways(page), what).toEqual([]);
      expect(await ran(page), what).toBe(false);
      expect(await page.locator('main').innerText(), what).not.toMatch(/onerror|ran=true|AAAAAAAAAA/);
      if (end === ENDS[0]) before = await kept();
      expect(await kept(), what).toBe(before);
    }
  expect(faults).toEqual([]);
});

test('files that are deep, huge, poisoned or of wrong kinds: said at once, nothing read that is too large, nothing changed', async ({
  page,
}) => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'bare-toes-files-'));
  const faults = faultsOn(page);
  try {
    await page.addInitScript(() => {
      const read: number[] = [];
      // milliseconds from the choice of a file to what the page says about it
      const waits: number[] = [];
      Object.assign(window, { read, waits });
      let chosenAt = 0;
      addEventListener('change', () => (chosenAt = performance.now()), true);
      new MutationObserver(() => {
        if (!chosenAt || !document.querySelector('[data-fault]')) return;
        waits.push(performance.now() - chosenAt);
        chosenAt = 0;
      }).observe(document, { subtree: true, childList: true, attributes: true });
      const text = Blob.prototype.text;
      Blob.prototype.text = function () {
        read.push(this.size);
        return text.call(this);
      };
    });
    const notes = fortnight(5, 7, 'likely');
    await leaveNotes(page, notes);
    await page.goto('/en/pass-it-on/');
    await scriptRuns(page);
    const before = await keptNotes(page);
    const good = writeNotesFile(notes);
    const huge = path.join(folder, 'film.json');
    writeFileSync(huge, good);
    // mostly a hole: it takes no room here, and is as large as a film there
    truncateSync(huge, 50 * 1024 * 1024);
    const inEntries = (text: string) => good.replace(/"entries": \[[^]*$/, `"entries": [${text}]}`);
    // no two after one another are refused for the same reason
    const files: [string, string, string][] = [
      ['foreign', 'ten thousand levels', '['.repeat(10_000) + ']'.repeat(10_000)],
      ['damaged', 'wrong kinds', inEntries('1,null,"x",[[]],{"id":{}},{"id":"a-1","t":"noon"}')],
      ['foreign', 'levels in a note', inEntries('{"a":'.repeat(10_000) + '1' + '}'.repeat(10_000))],
      ['damaged', 'a version that is no number', good.replace('"version": 1', '"version": {"valueOf": 1}')],
      [
        'foreign',
        'keys of the machine',
        '{"__proto__":{"format":"bare-toes-notes"},"constructor":{"prototype":{}}}',
      ],
      [
        'damaged',
        'numbers beyond every clock',
        inEntries(
          '{"id":"a-9e99","t":1e308,"off":-1e308,"kind":"bell"},{"id":"a-2","t":1e999,"off":0,"kind":"sore","value":-1e999}',
        ),
      ],
      ['too-large', 'notes without end', good + ' '.repeat(3_000_001)],
      [
        'damaged',
        'one note twice',
        inEntries('{"id":"a-1","t":1,"off":0,"kind":"bell"},'.repeat(2).slice(0, -1)),
      ],
      ['too-large', 'as large as a film', ''],
    ];
    for (const [fault, what, text] of files) {
      await page
        .locator('[data-action="open-file"]')
        .setInputFiles(
          text ? { name: 'notes.json', mimeType: 'application/json', buffer: Buffer.from(text) } : huge,
        );
      await expect(page.locator('[data-fault]'), what).toHaveAttribute('data-fault', fault);
      await expect(page.locator('[data-fault]'), what).toHaveText(english[`pass:got.${fault}`]!);
      expect(await keptNotes(page), what).toEqual(before);
    }
    // the right one straight afterwards, though names of the machine stand in it
    const poisons = [
      '{"id":"__proto__","t":29000000,"off":0,"kind":"sign","sign":"constructor","answer":"different"}',
      '{"id":"dddddd-1","t":1e308,"off":-1e308,"kind":"bell"}',
      '{"id":"dddddd-9007199254740993","t":29000000,"off":1e21,"kind":"sore","value":1e300,"scale":"numbers","when":"rest"}',
      '{"id":"dddddd-3","t":29000000,"off":0,"kind":"clock","device":"dddddd","upTo":1e300,"minutes":-1e300}',
    ].map((text) => JSON.parse(text) as Entry);
    const poisoned = writeNotesFile([...notes, ...poisons]);
    await page.locator('[data-action="open-file"]').setInputFiles({
      name: 'notes.json',
      mimeType: 'application/json',
      buffer: Buffer.from(poisoned),
    });
    await expect(page.locator('[data-received]')).toHaveAttribute('data-received', String(poisons.length));
    const { read, waits } = await page.evaluate(() => {
      const seen = window as unknown as { read: number[]; waits: number[] };
      return { read: seen.read, waits: seen.waits };
    });
    // all but the film
    expect(read).toHaveLength(files.length);
    expect(waits.length).toBeGreaterThan(4);
    expect(Math.max(...waits)).toBeLessThan(5_000);
    expect(await page.evaluate(() => 'ran' in {} || 'format' in {})).toBe(false);
    // no number that stands in the notes now breaks the pages that reckon with them
    for (const address of ['/en/our-notes/', '/en/for-staff/', '/en/look/']) {
      await page.goto(address);
      await scriptRuns(page);
      await expect(page.locator('main h1').first(), address).toBeVisible();
      expect(await page.locator('main').innerText(), address).not.toMatch(
        /NaN|Infinity|Invalid|e\+\d|\d{12}/,
      );
      expect(await sideways(page), address).toEqual([]);
    }
    expect(faults).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a moving code of somebody who means harm: looked past or said, and the right one is read all the same', async ({
  browser,
}) => {
  const signed = (frame: Uint8Array) => {
    new DataView(frame.buffer).setUint32(frame.length - 4, checkSum(frame.subarray(0, -4)));
    return charactersOf(frame);
  };
  /** A frame with a right sum whose bytes from a place on are others. */
  const changed = (text: string, at: number, bytes: readonly number[]) => {
    const frame = bytesOfCharacters(text)!;
    frame.set(bytes, at);
    return signed(frame);
  };
  const phone = async (frames: readonly string[]) => {
    const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
    const faults = faultsOn(page);
    await filmCodes(page, frames.map(codeOf));
    await leaveNotes(page, fortnight(3, 7, 'likely'));
    await page.goto('/en/pass-it-on/');
    await scriptRuns(page);
    const before = await keptNotes(page);
    await page.locator('[data-action="receive"]').tap();
    return { page, before, faults };
  };
  const now = instant(Math.floor(Date.now() / 60_000));
  const entries = HOSTILE.map((own, at) =>
    noted(new Date(), 10 + at, { kind: 'question', own }, `eeeeee-${at + 1}`),
  );
  const whole = writeTransfer({ entries, now, device: { id: 'eeeeee', count: entries.length } });

  // whole, with right sums, and no notes at all, or notes that break off
  for (const [reason, bytes] of [
    ['foreign', new TextEncoder().encode('<script>window.ran = true</script>'.repeat(4))],
    ['damaged', Uint8Array.from(whole, (byte, at) => (at < whole.length / 2 ? byte : 255))],
  ] as const) {
    const { needed, frame } = framesOf(bytes);
    const { page, before, faults } = await phone(Array.from({ length: needed }, (_, n) => frame(n)));
    await expect(page.locator('[data-fault]')).toHaveAttribute('data-fault', reason, { timeout: 20_000 });
    expect(await keptNotes(page)).toEqual(before);
    expect(faults).toEqual([]);
    await page.context().close();
  }

  const { needed, frame } = framesOf(whole);
  const good = Array.from({ length: 3 * needed }, (_, n) => frame(n));
  const { page, before, faults } = await phone([
    'javascript:window.ran=true',
    // the largest whole there is in such pieces, one larger, one of nothing
    changed(frame(0), 5, [1, 0, 0]),
    changed(frame(0), 5, [255, 255, 255]),
    changed(frame(0), 5, [0, 0, 0]),
    // the last number there is, and a piece of the right whole that is another
    changed(frame(0), 8, [255, 255, 255]),
    changed(frame(0), 20, [1, 2, 3, 4]),
    ...good,
  ]);
  await expect(page.locator('[data-received]')).toHaveAttribute('data-received', String(entries.length), {
    timeout: 40_000,
  });
  expect(await keptNotes(page)).toHaveLength(before.length + entries.length);
  expect(await ran(page)).toBe(false);
  expect(await sideways(page)).toEqual([]);
  expect(faults).toEqual([]);
  await page.context().close();
});
