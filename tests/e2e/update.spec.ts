/** A ward puts up a new version: nobody is reloaded, nothing is mixed, and offline use can be switched off. */
import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import {
  chunksIn,
  keptAddresses,
  nextVersion,
  readyOffline,
  stopWorkers,
  test,
  versionOf,
  visit,
} from '../helpers/builds.ts';
import { scriptRuns, words } from '../helpers/pages.ts';

/** Every page that is opened or lost below. */
const PAGES = [
  ...['en', 'es', 'pl', 'ar'].flatMap((language) => [
    `/${language}/`,
    `/${language}/look/`,
    `/${language}/bell/`,
  ]),
  ...[
    '/en/look/full/1/',
    '/en/look/full/2/',
    '/en/look/toes/',
    '/en/look/toes/toes-colour/',
    '/en/look/cord/',
  ],
  ...['/en/look/toes/toes-cool/', '/ar/look/toes/toes-colour/', '/es/our-day/'],
];

// the offline copy is a part of what is looked at
test.use({ serviceWorkers: 'allow', onlyPages: PAGES });

// one after the other: the new version is made once
test.describe.configure({ mode: 'serial', timeout: 180_000 });

const OLD_TEXT = words('en')['common:bar.worried']!;
const NEW_TEXT = `${OLD_TEXT} Second version`;
let next: string;

test.beforeAll(async ({ old }) => {
  next = await mkdtemp(path.join(tmpdir(), 'bare-toes-next-'));
  await nextVersion(old, next, OLD_TEXT, NEW_TEXT);
});
test.afterAll(() => rm(next, { recursive: true, force: true }));

const bar = (page: Page) => page.locator('a:not(.skip)').first().locator('strong');
const offered = (page: Page) => page.locator('[data-new-version]');

/** A page that has been loaded anew has lost this mark. */
const mark = (page: Page) => page.evaluate(() => void (document.body.dataset.mark = 'stayed'));
const stayed = (page: Page) => page.evaluate(() => document.body.dataset.mark === 'stayed');

const lookForNew = (page: Page) =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())!.update()));

const chunksOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...new Set(
      performance
        .getEntriesByType('resource')
        .map(({ name }) => new URL(name).pathname)
        .filter((name) => name.startsWith('/_app/immutable/')),
    ),
  ]);

async function expectAllFrom(page: Page, folder: string): Promise<void> {
  const own = await chunksIn(folder);
  const loaded = await chunksOf(page);
  expect(loaded.length).toBeGreaterThan(5);
  expect(loaded.filter((chunk) => !own.has(chunk))).toEqual([]);
}

test('the two versions differ in number, words and chunks', async ({ old }) => {
  expect(await versionOf(next)).not.toBe(await versionOf(old));
  const [before, after] = [await chunksIn(old), await chunksIn(next)];
  expect([...after].filter((chunk) => !before.has(chunk)).length).toBeGreaterThan(3);
});

test('a new version is offered, takes nothing from under the hand, and comes when the button is pressed', async ({
  page,
  site,
  old,
}) => {
  await visit(page, `${site.address}/en/look/full/1/`);
  await page.locator('input[name="light"][value="night"]').check();
  await page.locator('label[data-sign="toes-cool"][data-answer="different"]').tap();
  const answer = page.locator('label[data-sign="toes-cool"][data-answer="different"] input');
  await expect(answer).toBeChecked();
  await mark(page);
  await expect(offered(page)).toHaveCount(0);

  site.show(next);
  await lookForNew(page);
  await expect(offered(page)).toBeVisible({ timeout: 90_000 });
  expect(await stayed(page)).toBe(true);
  await expect(answer).toBeChecked();
  await expect(bar(page)).toHaveText(OLD_TEXT);

  // it goes on in the old version, within the page and from page to page
  await page.locator('a[data-next]').tap();
  await page.waitForURL('**/full/2/');
  expect(await stayed(page)).toBe(true);
  for (const address of ['/en/look/', '/en/look/toes/toes-cool/', '/ar/look/']) {
    await page.goto(site.address + address);
    await scriptRuns(page);
    await expectAllFrom(page, old);
  }
  await page.goto(`${site.address}/en/bell/`);
  await expect(bar(page)).toHaveText(OLD_TEXT);
  await page.reload();
  await expect(bar(page)).toHaveText(OLD_TEXT);
  await expect(offered(page)).toBeVisible();

  await page.locator('[data-new-version] button').tap();
  await expect(bar(page)).toHaveText(NEW_TEXT);
  await scriptRuns(page);
  await expectAllFrom(page, next);
  await expect(offered(page)).toHaveCount(0);
  await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
  await readyOffline(page);
  expect(Object.keys(await keptAddresses(page))).toEqual([`bare-toes-${await versionOf(next)}`]);
});

test('a new version that was just taken holds all that the old one held', async ({ page, site }) => {
  await visit(page, `${site.address}/es/look/`);
  site.show(next);
  await lookForNew(page);
  await expect(offered(page)).toBeVisible({ timeout: 90_000 });
  await site.goOffline();
  await page.locator('[data-new-version] button').tap();
  await expect(offered(page)).toHaveCount(0);
  await page.goto(`${site.address}/en/look/cord/`);
  await scriptRuns(page);
  await expect(bar(page)).toHaveText(NEW_TEXT);
  await expectAllFrom(page, next);
  for (const address of ['/ar/look/toes/toes-colour/', '/es/our-day/', '/pl/bell/']) {
    await page.goto(site.address + address);
    await scriptRuns(page);
    expect(new URL(page.url()).pathname).toBe(address);
  }
});

test('another window keeps its version, and still works, when one window takes the new one', async ({
  context,
  page,
  site,
  old,
}) => {
  await visit(page, `${site.address}/en/look/`);
  const other = await context.newPage();
  await visit(other, `${site.address}/en/look/`);
  await mark(other);
  site.show(next);
  await lookForNew(page);
  await expect(offered(page)).toBeVisible({ timeout: 90_000 });
  await page.locator('[data-new-version] button').tap();
  await expect(bar(page)).toHaveText(NEW_TEXT);

  await expect(bar(other)).toHaveText(OLD_TEXT);
  await other.locator('main a[data-part="toes"]:not(svg a)').tap();
  await other.locator('main a[data-sign="toes-colour"][data-answer="different"]').tap();
  await expect(other.locator('[data-written]')).toBeVisible();
  expect(await stayed(other)).toBe(true);
  await expect(bar(other)).toHaveText(OLD_TEXT);
  await expectAllFrom(other, old);

  // it takes the new version when it wants to
  await expect(offered(other)).toBeVisible();
  await other.locator('[data-new-version] button').tap();
  await expect(bar(other)).toHaveText(NEW_TEXT);

  // the old version's files go when no window can need them any more
  await page.goto('about:blank');
  await other.goto('about:blank');
  await page.goto(`${site.address}/en/look/`);
  await expect
    .poll(async () => Object.keys(await keptAddresses(page)))
    .toEqual([`bare-toes-${await versionOf(next)}`]);
});

test('pages of a new deployment, whole or half copied, never get into the old version', async ({
  context,
  page,
  site,
  old,
  scratch,
}) => {
  const half = await scratch();
  await cp(next, half, { recursive: true });
  await cp(path.join(old, '_app/version.json'), path.join(half, '_app/version.json'));
  await cp(path.join(old, 'service-worker.js'), path.join(half, 'service-worker.js'));
  const oldCache = `bare-toes-${await versionOf(old)}`;
  const lost = '/en/look/cord/';

  await visit(page, `${site.address}/en/look/`);
  for (const folder of [half, next]) {
    await page.evaluate(
      async ([name, address]) => (await caches.open(name!)).delete(address!),
      [oldCache, lost],
    );
    site.show(folder);
    await stopWorkers(context, page);
    const asked = page.waitForResponse('**/_app/version.json').catch(() => undefined);
    const heard = context.waitForEvent('request', (request) => request.url().endsWith('/_app/version.json'));
    await page.reload();
    await Promise.race([asked, heard]);
    await page.waitForTimeout(1_500);
    expect((await keptAddresses(page))[oldCache], folder).not.toContain(lost);
    await expect(page.locator('[data-offline]')).toHaveAttribute('data-offline', 'filling');
    await expect(bar(page)).toHaveText(OLD_TEXT);
  }
  // the page is still to be had, whole, from the network
  await page.goto(site.address + lost);
  await expect(bar(page)).toHaveText(NEW_TEXT);
  await scriptRuns(page);
  await expectAllFrom(page, next);
});

test.describe('the switch', () => {
  const registered = (page: Page) =>
    page.evaluate(async () => Boolean(await navigator.serviceWorker.getRegistration()));

  test('switched off, a page that is opened empties the device; the pages come from the network', async ({
    context,
    page,
    site,
    old,
    scratch,
  }) => {
    const folder = await scratch();
    await cp(old, folder, { recursive: true });
    const say = (text: string) => writeFile(path.join(folder, 'offline-switch.json'), text);
    site.show(folder);
    await visit(page, `${site.address}/en/look/`);

    // what cannot be read switches nothing off
    for (const text of ['', '<!doctype html><title>Sign in</title>', '{"offline": true}', '{}', 'null']) {
      await say(text);
      await stopWorkers(context, page);
      const asked = context.waitForEvent('request', (request) =>
        request.url().endsWith('/offline-switch.json'),
      );
      await page.reload();
      await asked;
      await readyOffline(page);
      expect(Object.keys(await keptAddresses(page)), text).toHaveLength(1);
    }

    await say('{"offline": false}');
    await stopWorkers(context, page);
    await page.goto(`${site.address}/en/bell/`);
    await expect.poll(() => keptAddresses(page), { timeout: 20_000 }).toEqual({});
    await expect.poll(() => registered(page)).toBe(false);

    // the page that stayed open asks on, and fills nothing; nor does the next one
    await page.waitForTimeout(1_000);
    const asked = context.waitForEvent('request', (request) =>
      request.url().endsWith('/offline-switch.json'),
    );
    await page.goto(`${site.address}/en/look/`);
    await asked;
    await scriptRuns(page);
    await page.waitForTimeout(1_500);
    await expect.poll(() => registered(page)).toBe(false);
    expect(await keptAddresses(page)).toEqual({});
    // a version without a worker: one that is taken in while the site is changed under it would end what comes after it
    const bare = await scratch();
    await cp(next, bare, { recursive: true });
    await rm(path.join(bare, 'service-worker.js'));
    site.show(bare);
    await page.goto(`${site.address}/en/look/`);
    await expect(bar(page)).toHaveText(NEW_TEXT);

    // and it comes back when the ward switches it on
    await say('{"offline": true}');
    site.show(folder);
    await visit(page, `${site.address}/en/look/`);
    expect(Object.keys(await keptAddresses(page))).toHaveLength(1);
  });
});
