// Takes the three pictures of the README from the built site. node .ci/screens.mjs
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { chromium } from '@playwright/test';
import { launchOptions } from './browser.mjs';
import { serve } from './serve.mjs';

const root = path.resolve(import.meta.dirname, '..');
const out = path.join(root, '.ci/screens');
mkdirSync(out, { recursive: true });
const { port, close } = await serve(() => path.join(root, 'build'));
const browser = await chromium.launch(launchOptions());
/** All of the made-up child; `from` stands at the top of the picture. */
const SCREENS = [
  { name: 'look', language: 'en', url: 'look/', light: 'day', from: 'h1' },
  { name: 'result', language: 'ar', url: 'look/toes/toes-colour/', light: 'night' },
  { name: 'notes', language: 'pl', url: 'our-notes/', light: 'day', from: 'section[data-picture]' },
];
for (const { name, language, url, light, from } of SCREENS) {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}/${language}/try-it/`);
  await page.locator('html[data-script]').waitFor({ state: 'attached' });
  await page.locator('[data-action="start-made-up"]').click();
  await page.waitForURL(`**/${language}/our-notes/`);
  await page.goto(`http://127.0.0.1:${port}/${language}/${url}`);
  await page.waitForTimeout(1200);
  await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
  if (from)
    await page
      .locator(from)
      .first()
      .evaluate((element) => element.scrollIntoView({ block: 'start' }));
  await page.waitForTimeout(600);
  await page.screenshot({ path: path.join(out, `${name}.png`) });
  await context.close();
}
await browser.close();
await close();
