/// <reference no-default-lib="true" />
/// <reference lib="es2022" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />

/**
 * Keeps the site on the device, so that a family can look without network.
 *
 * One version's pages and chunks lie in one cache and are never mixed with another's. A new version fills a cache
 * of its own, waits beside the old one, and takes over only when a page says so: it must not reload under a hand.
 * This file's address never changes, and the server must send it with `cache-control: no-cache`.
 *
 * The kill switch: should this worker ever do harm, put `{"offline": false}` into `offline-switch.json` on the
 * server. Every worker reads that file past all caches when it is installed, and once after each start when a page
 * is opened. It then deletes what it kept and takes itself off the device; all pages come from the network. A file
 * that is missing or cannot be read switches nothing off: a lost network must not cost a family its pages.
 */
import { base, build, files, prerendered, version } from '$service-worker';

const worker = self as unknown as ServiceWorkerGlobalScope;

const PREFIX = 'bare-toes-';
const CACHE = PREFIX + version;
const SWITCH = `${base}/offline-switch.json`;
const VERSION_FILE = `${base}/_app/version.json`;
/** Not a page: the languages this family reads lie in the cache under this address, so that a restart knows them. */
const KEPT_LANGUAGES = `${base}/_kept-languages`;
const CHOOSER = `${base}/`;
const IMMUTABLE = `${base}/_app/immutable/`;
const INSTALL_AT_ONCE = 4;
const FILL_AT_ONCE = 2;
const REST_MS = 30_000;

/** Address as a person reads it -> address as it was built; without the page for a wrong address, which is the server's. */
const PAGES = new Map(
  prerendered.filter((page) => page.endsWith('/')).map((page) => [decodeURI(page), page]),
);
const FILES = [...build, ...files.filter((file) => file !== SWITCH)];
/** Every page of this version names this chunk; its hash covers all code and words of the version. */
const ENTRY = build.find((file) => /\/entry\/app\.[^/]+\.js$/.test(file))?.slice(IMMUTABLE.length);

const languageOf = (pathname: string): string | undefined =>
  pathname.startsWith(`${base}/`) ? pathname.slice(base.length).split('/')[1] || undefined : undefined;
const LANGUAGES = new Set([...PAGES.values()].flatMap((page) => languageOf(page) ?? []));

/** What may be needed in any language, by a nurse or a grandmother who takes the phone. */
function isSafetyPage(page: string): boolean {
  const rest = page.slice(`${base}/${languageOf(page) ?? ''}/`.length);
  return ['', 'bell/', 'sources/'].includes(rest) || rest.startsWith('look/');
}

const pagesOf = (languages: ReadonlySet<string>): string[] =>
  [...PAGES.values()].filter((page) => page === CHOOSER || languages.has(languageOf(page) ?? ''));
const wanted = (languages: ReadonlySet<string>): string[] => [
  ...new Set([...FILES, ...pagesOf(languages), ...[...PAGES.values()].filter(isSafetyPage)]),
];

/** The built page an address means, with or without its last slash. */
function pageFor(pathname: string): string | undefined {
  const asked = readable(pathname)?.replace(/\/index\.html$/, '/');
  return asked === undefined ? undefined : (PAGES.get(asked) ?? PAGES.get(`${asked}/`));
}

function readable(pathname: string): string | undefined {
  try {
    return decodeURI(pathname);
  } catch {
    return undefined;
  }
}

// Looking through `caches` never makes a cache; opening one would, after the switch has taken them all away.
const kept = (address: string | Request, cacheName = CACHE): Promise<Response | undefined> =>
  caches.match(address, { cacheName, ignoreVary: true });
const ownCaches = async (): Promise<string[]> =>
  (await caches.keys()).filter((name) => name.startsWith(PREFIX));

// --- the switch

let off = false;
let switchAsked: Promise<boolean> | undefined;

/** True where the ward has switched offline use off. Asked once in a worker's life, unless there was no network. */
function switchedOff(): Promise<boolean> {
  switchAsked ??= fetch(SWITCH, { cache: 'no-store' })
    .then(async (response) => response.ok && saysOff((await response.text()).trim()))
    .catch(() => {
      switchAsked = undefined;
      return false;
    });
  return switchAsked;
}

function saysOff(text: string): boolean {
  if (text === 'off') return true;
  try {
    const said: unknown = JSON.parse(text);
    const value = said && typeof said === 'object' && 'offline' in said ? said.offline : said;
    return value === false || value === 'off';
  } catch {
    return false;
  }
}

async function leaveDevice(): Promise<void> {
  off = true;
  await Promise.all((await ownCaches()).map((name) => caches.delete(name)));
  // not waited for: while this version is being installed, the browser takes it off only after the install has ended
  void worker.registration.unregister();
}

// --- filling

class OtherVersion extends Error {}

async function expectOwnVersion(): Promise<void> {
  const response = await fetch(VERSION_FILE, { cache: 'no-store' });
  const served = ((await response.json()) as { version?: unknown }).version;
  if (served !== version) throw new OtherVersion(`the server has ${String(served)}, this is ${version}`);
}

async function missingOf(addresses: readonly string[]): Promise<string[]> {
  const cache = await caches.open(CACHE);
  const there = new Set((await cache.keys()).map((request) => new URL(request.url).pathname));
  return addresses.filter((address) => !there.has(new URL(address, location.origin).pathname));
}

async function keep(into: Cache, address: string): Promise<void> {
  // a chunk's name holds its hash, so the browser's own copy is as good as the server's
  const cache = address.startsWith(IMMUTABLE) ? 'default' : 'no-cache';
  // on a slow line, the page a parent taps now goes before what may be needed later
  const response = await fetch(address, { cache, priority: 'low' });
  if (!response.ok || response.redirected)
    throw new Error(`${address} answered ${response.status}${response.redirected ? ' from elsewhere' : ''}`);
  // the version file alone would miss a deployment that is half copied
  if (ENTRY && PAGES.has(readable(address) ?? '') && !(await response.clone().text()).includes(ENTRY))
    throw new OtherVersion(`${address} is a page of another version`);
  if (!off) await into.put(address, response);
}

/** Fetches what is not there yet, few at a time; throws at the first that cannot be had. */
async function keepAll(addresses: readonly string[], atOnce: number): Promise<void> {
  const missing = await missingOf(addresses);
  if (missing.length === 0) return;
  await expectOwnVersion();
  const cache = await caches.open(CACHE);
  let failed = false;
  const hand = async () => {
    for (let next = missing.shift(); next !== undefined && !failed && !off; next = missing.shift())
      await keep(cache, next).catch((error: unknown) => {
        failed = true;
        throw error;
      });
  };
  await Promise.all(Array.from({ length: atOnce }, hand));
  await expectOwnVersion();
}

async function readLanguages(cacheNames: readonly string[]): Promise<Set<string>> {
  const lists = await Promise.all(
    cacheNames.map(async (name) => {
      const list: unknown = await (await kept(KEPT_LANGUAGES, name))?.json();
      return Array.isArray(list) ? list.map(String) : [];
    }),
  );
  return new Set(lists.flat().filter((language) => LANGUAGES.has(language)));
}

async function writeLanguages(languages: ReadonlySet<string>): Promise<void> {
  const cache = await caches.open(CACHE);
  await cache.put(KEPT_LANGUAGES, new Response(JSON.stringify([...languages])));
}

async function openWindows(): Promise<readonly WindowClient[]> {
  return worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
}

const chosen = new Set<string>();
let complete = false;
let restUntil = 0;
let filling: Promise<void> = Promise.resolve();
let fillsWaiting = 0;

/** Fills in what is missing; safe to call at any time, since it looks at what is there first. */
function fill(): Promise<void> {
  fillsWaiting += 1;
  filling = filling.then(fillNow).finally(() => (fillsWaiting -= 1));
  return filling;
}

async function fillNow(): Promise<void> {
  try {
    if (off || (await switchedOff())) return await leaveDevice();
    const languages = await readLanguages([CACHE]);
    const added = [...chosen].filter((language) => !languages.has(language));
    if (added.length > 0) await writeLanguages(new Set([...languages, ...added]));
    for (const language of added) languages.add(language);
    await keepAll(wanted(languages), FILL_AT_ONCE);
    complete = !off;
    if (complete)
      for (const window of await openWindows()) window.postMessage({ type: 'ready-offline', version });
  } catch (error) {
    // no network, no room or a new deployment: what is there stays, the next message or page tries again
    restUntil = performance.now() + REST_MS;
    if (error instanceof OtherVersion) await worker.registration.update().catch(() => undefined);
  }
}

// --- life

async function install(): Promise<void> {
  if (await switchedOff()) {
    await leaveDevice();
    throw new Error('offline use is switched off');
  }
  const inUse = (await openWindows()).flatMap((window) => languageOf(new URL(window.url).pathname) ?? []);
  const languages = await readLanguages(await ownCaches());
  for (const language of inUse) if (LANGUAGES.has(language)) languages.add(language);
  if (languages.size === 0) languages.add('en');
  await writeLanguages(languages);
  await keepAll([...FILES, ...pagesOf(languages)], INSTALL_AT_ONCE);
  // An update has the time to be complete before it is offered: taken at the ward's door, it must not hold less
  // than the version it replaces.
  if (worker.registration.active)
    await keepAll(wanted(languages), FILL_AT_ONCE).catch((error: unknown) => {
      if (error instanceof OtherVersion) throw error;
    });
}

async function dropOldCaches(): Promise<void> {
  // a newer version may be filling its own cache right now; its turn to clean up comes
  if (worker.registration.installing || worker.registration.waiting) return;
  await Promise.all((await ownCaches()).filter((name) => name !== CACHE).map((name) => caches.delete(name)));
}

async function activate(): Promise<void> {
  // another window may still show the old version and need one of its chunks
  if ((await openWindows()).length <= 1) await dropOldCaches();
  await worker.clients.claim();
}

worker.addEventListener('install', (event) => event.waitUntil(install()));

worker.addEventListener('activate', (event) => {
  event.waitUntil(activate());
  // not waited for: pages may be served while it fills
  void fill();
});

worker.addEventListener('message', (event) => {
  const message = event.data as { type?: unknown; locale?: unknown } | undefined;
  if (message?.type === 'take-over') {
    event.waitUntil(worker.skipWaiting());
  } else if (message?.type === 'keep-language' && LANGUAGES.has(String(message.locale))) {
    chosen.add(String(message.locale));
    event.waitUntil(fill());
  } else if (message?.type === 'ask-ready') {
    event.waitUntil(fill());
  }
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (off || request.method !== 'GET' || url.origin !== location.origin) return;
  if (!url.pathname.startsWith(`${base}/`) || [SWITCH, VERSION_FILE].includes(url.pathname)) return;
  const answer = request.mode === 'navigate' ? openPage(request, url) : giveFile(request, url);
  event.respondWith(answer);
  event.waitUntil(answer.then(() => afterwards(request.mode === 'navigate')).catch(() => undefined));
});

async function openPage(request: Request, url: URL): Promise<Response> {
  const page = pageFor(url.pathname);
  const copy = page && (await kept(page));
  // a page's links are relative, so it must stand at its own address
  if (copy) return readable(url.pathname) === page ? copy : Response.redirect(page + url.search, 302);
  let answered: Response | undefined;
  try {
    answered = await fetch(request);
    if (answered.status < 500) return answered;
  } catch {
    // no network: the nearest page that helps
  }
  for (const near of [`${base}/${languageOf(url.pathname) ?? ''}/look/`, CHOOSER])
    if (await kept(near)) return Response.redirect(near, 302);
  return answered ?? Response.error();
}

async function giveFile(request: Request, url: URL): Promise<Response> {
  const copy = await kept(request);
  if (copy) return copy;
  // a window that still shows the old version: a chunk's name holds its hash, so it cannot be the wrong one
  if (url.pathname.startsWith(IMMUTABLE))
    for (const name of await ownCaches()) {
      const old = await kept(request, name);
      if (old) return old;
    }
  return fetch(request);
}

async function afterwards(pageOpened: boolean): Promise<void> {
  if (pageOpened && (await switchedOff())) return leaveDevice();
  if (pageOpened && (await openWindows()).length === 0) await dropOldCaches();
  if (!complete && fillsWaiting === 0 && performance.now() > restUntil) await fill();
}
