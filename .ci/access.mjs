// npm run access: every page in every language, by day and by night, for each way the child's pages are shown, with all
// rules of axe, on the narrowest phone. Most of an hour; npm test opens a part of it. node .ci/access.mjs [--no-build]
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { ready, root, toolFile } from './install.mjs';

ready();
const { ensureBrowser } = await import('./browser.mjs');
const run = (tool, words, env = {}) =>
  spawnSync(process.execPath, [tool, ...words], {
    ...{ cwd: root, stdio: 'inherit', env: { ...process.env, ...env } },
  }).status;

console.log(ensureBrowser());
if (!process.argv.includes('--no-build') || !existsSync(path.join(root, 'build')))
  if (run(toolFile('vite'), ['build', '--logLevel', 'error']) !== 0) process.exit(1);
const words = ['test', '-c', '.ci/playwright.config.mjs', 'every-page'];
process.exit(run(toolFile('@playwright/test', 'playwright'), words, { BARE_TOES_WHOLE: 'yes' }) ?? 1);
