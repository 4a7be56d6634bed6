// Measures one page in a browser: what it fetches, when its largest part is painted, how soon a tap is answered.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';

export const LOOK = '/en/look/';
/** The same page with its scripts removed, at the same depth, so that every relative address still leads. */
export const PLAIN = '/en/look-without-script/';
const NEXT = '/en/look/toes/';
/** Without a request for so long, nothing more comes by itself. */
const QUIET_MS = 1000;

/** Puts the look page without its scripts beside the real one. */
export function writePlainPage(folder) {
  const html = readFileSync(path.join(folder, LOOK, 'index.html'), 'utf8')
    .replace(/<script\b[\s\S]*?<\/script>/g, '')
    .replace(/<link\b[^>]*rel="modulepreload"[^>]*>/g, '')
    // the look page's own relative links start in its folder
    .replaceAll('href="./', 'href="../look/');
  if (/<script|modulepreload/.test(html)) throw new Error('bench › plain page: a script is left');
  mkdirSync(path.join(folder, PLAIN), { recursive: true });
  writeFileSync(path.join(folder, PLAIN, 'index.html'), html);
}

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };

/**
 * A page that starts cold; on a slow phone where asked; with the site already kept on the device where an address is given;
 * with scripts switched off in the browser where they are not wanted.
 */
async function coldPage(browser, { slow = false, keptFrom = '', scripts = true } = {}) {
  const serviceWorkers = keptFrom ? 'allow' : 'block';
  const context = await browser.newContext({ ...PHONE, serviceWorkers, javaScriptEnabled: scripts });
  const page = await context.newPage();
  if (keptFrom) {
    await page.goto(keptFrom);
    await page.locator('[data-offline="ready"]').waitFor({ timeout: 120_000 });
  }
  if (slow) {
    const devtools = await context.newCDPSession(page);
    await devtools.send('Network.enable');
    await devtools.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 150,
      downloadThroughput: 1_600_000 / 8,
      uploadThroughput: 750_000 / 8,
    });
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  }
  return { context, page };
}

async function untilQuiet(page, scripts = true) {
  const isPlain = new URL(page.url()).pathname === PLAIN;
  // a page whose script breaks is quick, and must not be measured as if it stood
  // the page for a wrong address has none
  const has = await page.locator('link[rel="modulepreload"]').count();
  if (!isPlain && scripts && has > 0)
    await page.locator('html[data-script]').waitFor({ state: 'attached', timeout: 20_000 });
  let last = Date.now();
  const seen = () => (last = Date.now());
  for (const event of ['request', 'requestfinished', 'requestfailed']) page.on(event, seen);
  await page.waitForLoadState('load');
  while (Date.now() - last < QUIET_MS) await page.waitForTimeout(100);
}

const kindOf = (type) =>
  /javascript/.test(type) ? 'script' : /css/.test(type) ? 'style' : /html/.test(type) ? 'html' : 'other';

/**
 * Bytes of all that a cold page fetches by itself, without a touch, each file compressed with gzip level 9. Without scripts
 * it is loaded with them switched off: what a browser then still asks for is counted, and nothing is worked out.
 */
export async function firstLoad(browser, url, { scripts = true } = {}) {
  const { context, page } = await coldPage(browser, { scripts });
  const requests = [];
  page.on('request', (request) => requests.push(request));
  await page.goto(url);
  await untilQuiet(page, scripts);
  const sum = { script: 0, style: 0, html: 0, other: 0, total: 0, files: requests.length };
  for (const request of requests) {
    const response = await request.response();
    // with scripts switched off the browser asks for none, though it says what it would have asked for
    if (!response && !scripts && request.resourceType() === 'script') {
      sum.files--;
      continue;
    }
    if (!response) throw new Error(`bench › first load: no answer for ${request.url()}`);
    const size = gzipSync(await response.body(), { level: 9 }).length;
    sum[kindOf(response.headers()['content-type'] ?? '')] += size;
    sum.total += size;
  }
  await context.close();
  return sum;
}

/** Milliseconds until the largest part of the page is painted, on a slow phone. */
export async function largestPaint(browser, url) {
  const { context, page } = await coldPage(browser, { slow: true });
  await page.addInitScript(() => {
    globalThis.largest = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) globalThis.largest = entry.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
  });
  await page.goto(url);
  await untilQuiet(page);
  const value = await page.evaluate(() => globalThis.largest);
  await context.close();
  if (!(value > 0)) throw new Error(`bench › largest paint: none was seen on ${url}`);
  return value;
}

/** A tap on a part on a slow phone: milliseconds to the next paint, and until the next page's heading is there. */
export async function tapAnswer(browser, url, kept = false) {
  const { context, page } = await coldPage(browser, { slow: true, keptFrom: kept ? url : '' });
  await page.addInitScript((next) => {
    const now = () => performance.timeOrigin + performance.now();
    globalThis.paint = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        if (entry.interactionId) globalThis.paint = Math.max(globalThis.paint, entry.duration);
    }).observe({ type: 'event', durationThreshold: 16 });
    addEventListener('pointerup', () => sessionStorage.setItem('tap', String(now())), true);
    const heading = () => document.querySelector('h1')?.textContent;
    let before;
    addEventListener('pointerdown', () => (before = heading()), true);
    const look = () => {
      const tapped = Number(sessionStorage.getItem('tap'));
      if (tapped && location.pathname === next && heading() && heading() !== before)
        sessionStorage.setItem('stood', String(now() - tapped));
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }, NEXT);
  await page.goto(url);
  await untilQuiet(page);
  await page.locator('a[data-part="toes"]').first().tap();
  await page.waitForURL(`**${NEXT}`);
  await page.waitForFunction(() => sessionStorage.getItem('stood'), undefined, { timeout: 20_000 });
  await page.waitForTimeout(500);
  const answer = await page.evaluate(() => ({
    // no entry means that every event was painted within 16 ms, or that a whole new page came
    paint: globalThis.paint || 16,
    page: Number(sessionStorage.getItem('stood')),
  }));
  await context.close();
  return answer;
}
