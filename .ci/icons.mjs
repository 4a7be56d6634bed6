// Writes static/icon.svg and its PNG sizes from the drawing, so that the app's icon is drawn by the same hand.
// node .ci/icons.mjs
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { chromium } from '@playwright/test';
import { launchOptions } from './browser.mjs';
import { sceneStyles, withSceneModules } from './contact-sheet.mjs';

const root = path.resolve(import.meta.dirname, '..');

await withSceneModules(async ({ thing, load }) => {
  const { NEUTRAL } = await load('/src/scene/spec.ts');
  const markup = thing('icon', '').replace('<svg ', `<svg data-skin="${NEUTRAL.skin}" `);
  const browser = await chromium.launch(launchOptions());
  const page = await browser.newPage({ viewport: { width: 512, height: 512 } });
  await page.setContent(
    `<style>${sceneStyles()} body{margin:0} svg{display:block;width:512px;height:512px}</style>${markup}`,
  );
  // An icon file has no style sheet: write the colours the page computed into each path.
  const plain = await page.evaluate(() => {
    const svg = document.querySelector('svg');
    for (const element of svg.querySelectorAll('path')) {
      const style = getComputedStyle(element);
      element.setAttribute('fill', style.fill);
      element.setAttribute('stroke', style.stroke);
      if (style.stroke !== 'none') element.setAttribute('stroke-width', parseFloat(style.strokeWidth));
      element.setAttribute('stroke-linecap', 'round');
      element.setAttribute('stroke-linejoin', 'round');
      element.removeAttribute('class');
    }
    return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${svg.getAttribute('viewBox')}">${svg.innerHTML}</svg>`;
  });
  writeFileSync(path.join(root, 'static/icon.svg'), plain + '\n');
  for (const size of [192, 512]) {
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(
      `<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${plain}`,
    );
    writeFileSync(path.join(root, `static/icon-${size}.png`), await page.screenshot());
  }
  await browser.close();
});
