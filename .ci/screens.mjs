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
const SCREENS = [
  { name: 'look', url: '/en/look/', family: { light: 'day' } },
  {
    name: 'result',
    url: '/ar/look/toes/toes-colour/',
    family: { light: 'night', skin: 'chestnut', side: 'left' },
  },
  { name: 'toes', url: '/pl/look/toes/', family: { light: 'day', skin: 'shell', side: 'right' } },
];
for (const { name, url, family } of SCREENS) {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    serviceWorkers: 'block',
  });
  await context.addInitScript(
    (kept) => localStorage.setItem('bare-toes:family', JSON.stringify(kept)),
    family,
  );
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}${url}`);
  await page.waitForTimeout(1200);
  await page.screenshot({ path: path.join(out, `${name}.png`) });
  await context.close();
}
await browser.close();
await close();
