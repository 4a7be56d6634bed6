// Chromium, through Playwright, as the browser tests drive it.
import { chromium } from '@playwright/test';
import { installedBrowser, launchOptions } from '../browser.mjs';
import { pageOf, SEEN } from './page.mjs';

export const name = 'Chromium';
export const onDebian = 'apt-get install chromium-headless-shell';
/** What is not installed, in a sentence; nothing where all is there. */
export const missing = () => (installedBrowser() ? undefined : 'no Chromium is installed');

/** Starts the engine on a screen of this size, in a time zone; its `phone` opens a page with a memory of its own. */
export async function start({ width, height, zone }) {
  const browser = await chromium.launch(launchOptions());
  return {
    version: browser.version(),
    async phone(origin) {
      const viewport = { width, height };
      const context = await browser.newContext({ viewport, hasTouch: true, timezoneId: zone });
      const page = await context.newPage();
      const engine = {
        // every page is waited for by what is seen in it
        go: (address) => page.goto(address, { waitUntil: 'commit' }),
        run: (source, words) => page.evaluate(`(${source})(${JSON.stringify(words)})`),
        async press(selector) {
          const seen = (await page.evaluateHandle(`(${SEEN})(${JSON.stringify(selector)})`)).asElement();
          if (!seen) return false;
          await seen.tap({ timeout: 5_000 });
          return true;
        },
        picture: () => page.screenshot(),
        close: () => context.close(),
      };
      return pageOf(engine, origin);
    },
    stop: () => browser.close(),
  };
}
