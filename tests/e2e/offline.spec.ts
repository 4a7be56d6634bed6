/** What a family can still do when the network is gone, after one visit. */
import { access } from 'node:fs/promises';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import {
  keptAddresses,
  pagesIn,
  readyOffline,
  stopWorkers,
  test,
  titleIn,
  visit,
} from '../helpers/builds.ts';
import { forgetNotes } from '../helpers/kept-notes.ts';
import { kindsOf, resultAddress, scriptRuns, Taps, tapTo, words } from '../helpers/pages.ts';

// the offline copy is a part of what is looked at
test.use({ serviceWorkers: 'allow' });

test.describe.configure({ timeout: 240_000 });

/** The page itself, not one that stands in for it, and its script runs. */
async function opens(page: Page, origin: string, folder: string, address: string): Promise<void> {
  await page.goto(origin + address);
  await scriptRuns(page);
  expect(new URL(page.url()).pathname).toBe(address);
  await expect(page, address).toHaveTitle(await titleIn(folder, address));
  await expect(page.locator('main'), address).toBeVisible();
}

/** Which of these pages the device does not answer by themselves; each is asked for as a page is, and not opened. */
async function answeredOtherwise(
  page: Page,
  folder: string,
  addresses: readonly string[],
): Promise<string[]> {
  const titles = await page.evaluate(async (asked) => {
    const read = async (address: string) => {
      const answer = await fetch(address).catch(() => undefined);
      const html = (await answer?.text()) ?? '';
      return /<main[^]*<\/main>/.test(html) ? /<title>([^<]*)<\/title>/.exec(html)?.[1] : undefined;
    };
    return Promise.all(asked.map(read));
  }, addresses);
  const wanted = await Promise.all(addresses.map((address) => titleIn(folder, address)));
  return addresses.filter((_, index) => titles[index] !== wanted[index]);
}

async function reportsASign(page: Page, sign: 'toes-colour' | 'toes-cool' | 'load-not-free'): Promise<void> {
  await tapTo(new Taps(page), sign);
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await expect(page.locator('[data-written]')).toBeVisible();
}

test('in flight mode, after one visit', async ({ page, context, site, old }) => {
  await visit(page, `${site.address}/en/look/`);
  await site.goOffline();

  await test.step('every page is kept, each kind opens, and a sign is reported and written down', async () => {
    const all = (await pagesIn(old)).filter((address) => address.startsWith('/en/'));
    expect(all).toContain('/en/look/full/');
    expect(all).toContain('/en/put-away/');
    expect(await answeredOtherwise(page, old, all)).toEqual([]);
    const kinds = kindsOf('en').map((address) => new URL(address, site.address).pathname);
    expect(kinds.length).toBeGreaterThanOrEqual(40);
    // what is kept is the same for each: those of every fourth kind are opened, with their script
    for (const address of kinds.filter((_, index) => index % 4 === 0))
      await opens(page, site.address, old, address);
    // the chooser knows the language by now
    await page.goto(`${site.address}/`);
    await page.waitForURL('**/en/');

    await page.goto(`${site.address}/en/look/`);
    await reportsASign(page, 'toes-colour');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    await page.goto(`${site.address}/en/our-notes/`);
    await expect(page.locator('[data-entry="bell"]')).toHaveCount(1);
  });

  await test.step('a page is loaded again, and the worker starts again after the browser stopped it', async () => {
    await page.reload();
    await scriptRuns(page);
    await stopWorkers(context, page);
    await page.reload();
    await scriptRuns(page);
    await forgetNotes(page, site.address);
    await page.goto(`${site.address}/en/look/`);
    await reportsASign(page, 'load-not-free');
    await page.reload();
    await expect(page.locator('[data-written]')).toBeVisible();
    await readyOffline(page);
  });

  await test.step('an unknown address leads to help, and a forgotten slash is forgiven', async () => {
    for (const [asked, given] of [
      ['/en/nothing-here/', '/en/look/'],
      ['/en/look/toes/no-such-sign/', '/en/look/'],
      // the chooser, which goes on to the language that was read last
      ['/nobody-speaks-this/', '/en/'],
      ['/%E0%A4%A', '/en/'],
      ['/ar/nothing/at/all', '/ar/look/'],
      ['/en/look', '/en/look/'],
      [resultAddress('en', 'toes-cool').slice(0, -1), resultAddress('en', 'toes-cool')],
      ['/en/look/toes/?from=home-screen', '/en/look/toes/'],
      ['/en/look/index.html', '/en/look/'],
    ] as const) {
      await page.goto(site.address + asked).catch(() => undefined); // the chooser breaks off its own loading
      await page.waitForURL((url) => url.pathname === given, { timeout: 10_000 });
      await scriptRuns(page);
    }
  });

  await test.step('the safety pages of languages never opened are there', async () => {
    await opens(page, site.address, old, '/ar/look/feeling/toes-numb/');
    await expect(page.locator('html')).toHaveAttribute('dir', 'rtl');
    await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
    for (const language of ['ar', 'es', 'pl']) {
      const safety = ['', 'look/', 'look/toes/', 'look/full/1/', 'bell/', 'sources/'];
      const addresses = safety.map((address) => `/${language}/${address}`);
      expect(await answeredOtherwise(page, old, addresses)).toEqual([]);
      await opens(page, site.address, old, `/${language}/look/full/1/`);
      // a sign that is open already is not written down a second time
      await forgetNotes(page, site.address);
      await page.goto(`${site.address}/${language}/look/`);
      await reportsASign(page, 'toes-cool');
      await expect(page.locator('[data-do-not]').first()).toContainText(
        words(language)['signs:toes-cool.doNot']!,
      );
    }
    const here = Object.values(await keptAddresses(page)).flat();
    const safety = (await pagesIn(old)).filter((address) =>
      /^\/[^/]+\/(look\/.*|bell\/|sources\/)?$/.test(address),
    );
    expect(safety.length).toBeGreaterThan(400);
    expect(safety.filter((address) => !here.includes(address))).toEqual([]);
  });
});

test('a language that was opened is kept whole; one that was not is answered by its look page', async ({
  page,
  site,
  old,
}) => {
  await visit(page, `${site.address}/en/look/`);
  await visit(page, `${site.address}/pl/`);
  const polish = (await pagesIn(old)).filter((address) => address.startsWith('/pl/'));
  expect(polish.length).toBeGreaterThan(100);
  await expect
    .poll(
      async () => {
        const here = Object.values(await keptAddresses(page)).flat();
        return polish.filter((address) => !here.includes(address));
      },
      { timeout: 60_000 },
    )
    .toEqual([]);
  await site.goOffline();
  await opens(page, site.address, old, '/pl/our-day/');

  await page.goto(`${site.address}/es/our-day/`);
  await page.waitForURL('**/es/look/');
  await reportsASign(page, 'toes-cool');
});

test('the device keeps only the files of the site, in one cache, and what it lost is fetched again', async ({
  page,
  context,
  site,
  old,
}) => {
  const asked: URL[] = [];
  context.on('request', (request) => asked.push(new URL(request.url())));
  await visit(page, `${site.address}/en/look/`);

  await test.step('one cache, filled from this origin alone, and nothing but files of the site', async () => {
    expect(asked.length).toBeGreaterThan(100);
    const foreign = asked.filter(({ origin, protocol }) => origin !== site.address && protocol !== 'data:');
    expect(foreign.map(String)).toEqual([]);
    await page.goto(`${site.address}/en/nothing-here/?x=1`);
    await page.goto(`${site.address}/en/look/?utm=1`);
    await page.evaluate(() => fetch('/en/look/', { method: 'POST', body: 'x' }).catch(() => undefined));
    await reportsASign(page, 'toes-cool');
    const here = await keptAddresses(page);
    expect(Object.keys(here)).toHaveLength(1);
    const addresses = Object.values(here).flat();
    for (const address of addresses.filter((one) => one !== '/_kept-languages'))
      await access(path.join(old, address.endsWith('/') ? `${address}index.html` : address));
    expect(addresses).not.toContain('/offline-switch.json');
    expect(addresses).not.toContain('/_app/version.json');
    expect(addresses).not.toContain('/service-worker.js');
  });

  await test.step('lost, and fetched again after the worker was stopped', async () => {
    const lost = ['/ar/bell/', '/es/look/cord/', '/en/put-away/'];
    await page.evaluate(async (addresses) => {
      for (const name of await caches.keys())
        for (const address of addresses) await (await caches.open(name)).delete(address);
    }, lost);
    expect(Object.values(await keptAddresses(page)).flat()).not.toContain(lost[0]);
    await stopWorkers(context, page);
    await page.reload();
    await readyOffline(page);
    expect(Object.values(await keptAddresses(page)).flat()).toEqual(expect.arrayContaining(lost));
  });
});
