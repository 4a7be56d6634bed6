// The documented configuration of server/ on a real nginx, with the built folder: every page, every link, every header.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { installedBrowser, launchOptions } from '../../.ci/browser.mjs';
import { ask, load, openConnections, type Answer } from '../../.ci/load.mjs';
import { startNginx, whyNoNginx, type Running } from '../../.ci/nginx.mjs';
import { PACKED } from '../../.ci/precompress.mjs';
import { root } from '../helpers/locales.ts';

const build = process.env.BARE_TOES_BUILD ?? path.join(root, 'build');
/** A build made for /toes/; without it the one for the root stands there, whose page for a wrong address leads out. */
const folderBuild = process.env.BARE_TOES_FOLDER_BUILD;
const why = whyNoNginx();
if (why) console.log(why);
const noBrowser = !installedBrowser() && !existsSync(chromium.executablePath());

const FILES = (existsSync(build) ? readdirSync(build, { recursive: true, withFileTypes: true }) : [])
  .filter((entry) => entry.isFile() && !PACKED.test(entry.name))
  .map((entry) => path.relative(build, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'));
const PAGES = FILES.filter((file) => /(^|\/)index\.html$/.test(file)).map(
  (file) => `/${file.slice(0, -'index.html'.length)}`,
);
const ADDRESSES = [...PAGES, ...FILES.filter((file) => !file.endsWith('.html')).map((file) => `/${file}`)];
const fileOf = (address: string, folder = build) =>
  readFileSync(path.join(folder, address.endsWith('/') ? `${address}index.html` : address));

/**
 * What every answer says. frame-ancestors: W3C, Content Security Policy Level 3, 6.4.2 (not in a meta element: 3.3);
 * nosniff: WHATWG Fetch, 3.6; no-referrer: W3C Referrer Policy, 3.1; camera=(self): W3C Permissions Policy, 5.2.
 */
const HEADERS: Readonly<Record<string, RegExp>> = {
  'content-security-policy':
    /^(?!.*(?:default|script|style)-src)(?=.*frame-ancestors 'none')(?=.*connect-src 'self'(?:;|$))/,
  'x-frame-options': /^DENY$/,
  'x-content-type-options': /^nosniff$/,
  'referrer-policy': /^no-referrer$/,
  'permissions-policy': /^camera=\(self\), (?:[a-z-]+=\(\)(?:, |$))+$/,
  'cross-origin-opener-policy': /^same-origin$/,
  'cross-origin-resource-policy': /^same-origin$/,
  // a server's name is no secret, its version tells which of its faults are still open
  server: /^nginx$/,
};
const cachingDue = (address: string): string => {
  if (/\/(?:service-worker\.js|offline-switch\.json)$/.test(address)) return 'no-cache, no-store';
  return address.includes('/_app/immutable/') ? 'public, max-age=31536000, immutable' : 'no-cache';
};
const TYPES: Readonly<Record<string, RegExp>> = {
  html: /^text\/html; charset=utf-8$/,
  js: /^(?:application|text)\/javascript/,
  css: /^text\/css/,
  json: /^application\/json/,
  svg: /^image\/svg\+xml/,
  png: /^image\/png/,
  webmanifest: /^application\/manifest\+json/,
};

function headerFaults(address: string, { headers }: Answer): string[] {
  const due = { ...HEADERS, 'cache-control': new RegExp(`^${cachingDue(address)}$`) };
  return Object.entries(due)
    .filter(([name, value]) => !value.test(String(headers[name] ?? '')))
    .map(([name]) => `${address}: ${name}, saw ${String(headers[name])}`);
}

/** Every address that a page names: links, styles, scripts, pictures and the worker. */
const linksOf = (html: string): string[] =>
  [...html.matchAll(/(?:\s(?:href|src)=|import\(|script_url = )["']([^"']*)["']/g)].map(([, link]) =>
    link!.replaceAll('&amp;', '&'),
  );

const AT_ONCE = 12;
/** Asks for each, some at a time over open connections. */
async function askAll(
  addresses: readonly string[],
  options: { method?: string; headers?: Record<string, string> } = {},
) {
  const agent = openConnections(addresses[0] ?? '', AT_ONCE);
  const answers = new Map<string, Answer>();
  const waiting = [...addresses];
  const hand = async () => {
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop())
      answers.set(next, await ask(next, { ...options, agent }));
  };
  await Promise.all(Array.from({ length: AT_ONCE }, hand));
  agent.destroy();
  return [...answers];
}

describe.skipIf(why)('on a real nginx', () => {
  let nginx: Running;
  /** Where the site stands, without its last slash. */
  let places: Record<'at the root' | 'in a folder', string>;
  beforeAll(async () => {
    expect(PAGES, 'there is nothing to serve: npm run build').toContain('/en/look/');
    nginx = await startNginx(build, folderBuild ? { folderBuild } : {});
    places = { 'at the root': nginx.https, 'in a folder': `${nginx.hospital}/toes` };
  });
  afterAll(() => nginx?.close());

  describe.each(['at the root', 'in a folder'] as const)('%s', (place) => {
    const built = place === 'in a folder' && folderBuild ? folderBuild : build;
    const at = () => places[place];

    it('every page and every file is there as it was built, and says all that is due', async () => {
      const own = built === build ? ADDRESSES : PAGES;
      const answers = await askAll(own.map((address) => at() + address));
      expect(answers.length).toBeGreaterThan(PAGES.length - 1);
      const faults = answers.flatMap(([whole, answer]) => {
        const address = whole.slice(at().length);
        const type = TYPES[address.endsWith('/') ? 'html' : path.extname(address).slice(1)];
        return [
          ...(answer.status === 200 ? [] : [`${address}: ${answer.status}`]),
          ...(answer.body.equals(fileOf(address, built)) ? [] : [`${address}: not as it was built`]),
          ...(type?.test(answer.headers['content-type'] ?? '')
            ? []
            : [`${address}: ${answer.headers['content-type']}`]),
          ...headerFaults(address, answer),
        ];
      });
      expect(faults).toEqual([]);
    });

    it('every link, style, script and worker of every page is there, inside the site', async () => {
      const named = new Map<string, string>();
      for (const page of PAGES)
        for (const link of linksOf(fileOf(page, built).toString()))
          named.set(new URL(link, at() + page).href.replace(/#.*/s, ''), `${page} names ${link}`);
      expect([...named.keys()]).toEqual(
        expect.arrayContaining([`${at()}/en/bell/`, `${at()}/service-worker.js`, `${at()}/before-paint.js`]),
      );
      const outside = [...named].filter(([address]) => !address.startsWith(`${at()}/`));
      expect(outside).toEqual([]);
      const answers = await askAll([...named.keys()], { method: 'HEAD' });
      const dead = answers.filter(([, { status }]) => status !== 200).map(([one]) => named.get(one));
      expect(dead).toEqual([]);
    });

    it('what a phone can unpack is sent packed, and is the same; to others it is sent as it is', async () => {
      const headers = { 'accept-encoding': 'gzip, br' };
      const chosen = ['/en/look/', '/ar/bell/', '/service-worker.js', '/manifest.webmanifest'].concat(
        ADDRESSES.filter((address) => /immutable.*\.(js|css)$/.test(address)).slice(0, 40),
      );
      for (const [whole, { headers: said, body }] of await askAll(
        chosen.map((address) => at() + address),
        { headers },
      )) {
        const address = whole.slice(at().length);
        const plain = built === build || PAGES.includes(address) ? fileOf(address, built) : undefined;
        if (!plain || plain.length < 400) continue;
        expect([address, said['content-encoding'], said.vary]).toEqual([address, 'gzip', 'Accept-Encoding']);
        expect(gunzipSync(body).equals(plain), address).toBe(true);
        expect(Number(said['content-length']), address).toBe(body.length);
      }
      const page = await ask(`${at()}/en/look/`);
      expect(page.headers['content-encoding']).toBeUndefined();
      const small = await ask(`${at()}/en/look/`, { headers });
      expect(small.body.length).toBeLessThan(page.body.length / 2);
    });

    it('a page that a phone has already is not sent again, and a new one is', async () => {
      const { headers } = await ask(`${at()}/en/look/`);
      const again = await ask(`${at()}/en/look/`, { headers: { 'if-none-match': String(headers.etag) } });
      expect([again.status, again.body.length]).toEqual([304, 0]);
      expect(headerFaults('/en/look/', again)).toEqual([]);
      const other = await ask(`${at()}/en/look/`, { headers: { 'if-none-match': '"of-an-older-build"' } });
      expect(other.status).toBe(200);
    });

    it('a folder’s address without its last slash leads to the page, on the same name and port', async () => {
      for (const address of ['/en', '/en/look/toes']) {
        const { status, headers } = await ask(at() + address);
        expect([status, headers.location]).toEqual([
          301,
          `${new URL(at()).pathname.replace(/\/$/, '')}${address}/`,
        ]);
      }
    });

    it('a wrong address, and a folder without a page, say so with the program’s own page', async () => {
      const own = fileOf('/404.html', built).toString();
      expect(own).toMatch(/lang="ar" dir="rtl"/);
      const wrong = [
        '/nowhere',
        '/en/look/toes/nothing-there/at/all/',
        '/xx/',
        '/_app/',
        '/_app/immutable/',
      ].concat(['/_app/immutable/chunks/of-an-older-build.js', '/.git/config', '/404.html/']);
      for (const address of wrong) {
        const answer = await ask(at() + address);
        expect([address, answer.status]).toEqual([address, 404]);
        expect(answer.body.toString(), address).toBe(own);
        // a missing script that was kept for ever would be missing for ever
        expect(headerFaults('/404.html', answer)).toEqual([]);
      }
      const base = place === 'in a folder' && folderBuild ? '/toes' : '';
      const origin = new URL(at()).origin;
      if (place === 'in a folder' && !folderBuild) return;
      const links = linksOf(own);
      expect(links).toEqual(
        expect.arrayContaining(['en', 'es', 'pl', 'ar'].map((code) => `${base}/${code}/bell/`)),
      );
      for (const link of links) expect([link, (await ask(origin + link)).status]).toEqual([link, 200]);
    });

    it('no fault of an asker shows a list of files, a version, or anything outside the folder', async () => {
      const asked: readonly (readonly [string, string])[] = [
        ['GET', '/../nginx.conf'],
        ['GET', '/%2e%2e/nginx.conf'],
        ['GET', '/en/..%2f..%2fnginx.conf'],
        ['GET', '/en/%00/'],
        ['GET', '/%'],
        ['POST', '/en/look/'],
        ['DELETE', '/en/look/'],
        ['GET', '/_app/'],
      ];
      for (const [method, address] of asked) {
        const { status, headers, body } = await ask(at() + address, { method });
        const text = body.toString();
        const seen = `${method} ${address}: ${status}`;
        expect(seen).toMatch(/: (?:400|404|405)$/);
        // the hospital's own server answers what never reached our folder
        if (place === 'at the root' || status === 405)
          expect(`${seen} ${headers.server} ${text}`).not.toMatch(/nginx\/\d|\d\.\d+\.\d+/);
        expect(text, seen).not.toMatch(/Index of|worker_processes/);
      }
    });

    it('a full ward’s phones all get their pages', async () => {
      const { answered, failed } = await load(
        ['/en/look/', '/en/look/toes/', '/en/look/toes/toes-cool/', '/ar/bell/', '/service-worker.js'].map(
          (address) => at() + address,
        ),
        { requests: 2500, atOnce: 40, seconds: 15, headers: { 'accept-encoding': 'gzip' } },
      );
      expect(failed).toEqual([]);
      expect(answered).toBeGreaterThan(500);
    });
  });

  it('nothing is answered without https but where to find it', async () => {
    for (const address of ['/', '/en/look/?x=1', '/service-worker.js']) {
      const { status, headers, body } = await ask(nginx.http + address);
      expect([status, headers.location]).toEqual([301, `https://toes.ward.example${address}`]);
      expect(`${headers.server} ${body.toString()}`).not.toMatch(/nginx\/\d/);
    }
  });

  it('a hospital’s own site stays as it was, and its rules do not reach into the folder', async () => {
    const own = await ask(`${nginx.hospital}/own.js`);
    expect([own.status, own.headers['x-hospital'], own.headers['x-frame-options']]).toEqual([
      410,
      'its own',
      undefined,
    ]);
    const { status, headers } = await ask(`${nginx.hospital}/toes`);
    expect([status, headers.location]).toEqual([301, '/toes/']);
    expect((await ask(`${nginx.hospital}/toesx/`)).status).not.toBe(200);
    const ours = await ask(`${nginx.hospital}/toes/before-paint.js`);
    expect([ours.status, ours.headers['x-hospital']]).toEqual([200, undefined]);
  });

  it('which page was opened from where is written down nowhere', async () => {
    await ask(`${nginx.https}/en/look/toes/toes-cool/`);
    await ask(`${nginx.https}/en/look/toes/not-there/`);
    await ask(`${nginx.hospital}/toes/en/look/toes/not-there/`);
    const written = ['access.log', 'error.log'].map((name) =>
      readFileSync(path.join(nginx.folder, name), 'utf8'),
    );
    expect(written.join('')).not.toMatch(/\/look\//);
  });

  it.skipIf(noBrowser)(
    'in a folder, a phone keeps the site and opens it without network; no other page can frame it',
    async () => {
      const browser = await chromium.launch(launchOptions());
      try {
        const context = await browser.newContext({ locale: 'en-GB' });
        const page = await context.newPage();
        const complaints: string[] = [];
        page.on('console', (message) => {
          if (message.type() === 'error') complaints.push(message.text());
        });
        page.on('pageerror', (error) => complaints.push(error.message));
        const site = `${nginx.hospital}/toes`;
        await page.goto(`${site}/en/look/`);
        // this language's pages are kept by then; what other languages need follows, which offline.spec.ts waits for
        await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, {
          timeout: 60_000,
        });
        const scope = await page.evaluate(async () => (await navigator.serviceWorker.ready).scope);
        expect(scope).toBe(`${site}/`);
        const manifest = await page.evaluate(async () => {
          const { href } = document.querySelector<HTMLLinkElement>('link[rel=manifest]')!;
          const { start_url, scope: inside } = await (await fetch(href)).json();
          return [new URL(start_url, href).href, new URL(inside, href).href];
        });
        expect(manifest).toEqual([`${site}/`, `${site}/`]);
        expect(complaints).toEqual([]);

        await context.setOffline(true);
        await page.goto(`${site}/en/look/`);
        await page.locator('html[data-script]').waitFor({ state: 'attached' });
        await page.locator('main a[data-part="toes"]:not(svg a)').first().click();
        await page.locator('main a[data-sign="toes-cool"][data-answer="different"]').first().click();
        await page.locator('[data-urgency="ring-now"]').first().waitFor();
        expect(page.url()).toBe(`${site}/en/look/toes/toes-cool/`);

        await context.setOffline(false);
        const strange = await context.newPage();
        await strange.goto(`${nginx.hospital}/`);
        await strange.evaluate(
          (address) =>
            new Promise((resolve) => {
              const frame = document.createElement('iframe');
              frame.src = address;
              frame.onload = resolve;
              document.body.append(frame);
            }),
          `${site}/en/bell/`,
        );
        expect(await strange.frames()[1]!.locator('main').count()).toBe(0);
      } finally {
        await browser.close();
      }
    },
  );
});
