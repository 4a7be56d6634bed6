// npm run access: every page in every language, by day and by night, for each way the child's pages are shown, with all
// rules of axe, on the narrowest phone; with large text and by the keyboard. Some twelve minutes; npm test opens a part of
// it. node .ci/access.mjs [--no-build]
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { freePort } from './free-port.mjs';
import { built, ready, root, toolFile } from './install.mjs';

ready();
const { ensureBrowser } = await import('./browser.mjs');
console.log(ensureBrowser());
if (!process.argv.includes('--no-build') || !existsSync(path.join(root, 'build')))
  if (!built()) process.exit(1);
const words = ['test', '-c', '.ci/playwright.config.mjs', 'every-page', 'access'];
const { status } = spawnSync(process.execPath, [toolFile('@playwright/test', 'playwright'), ...words], {
  cwd: root,
  stdio: 'inherit',
  // a port of its own: at the usual one another checkout may be served
  env: { ...process.env, BARE_TOES_WHOLE: 'yes', BARE_TOES_PORT: String(await freePort()) },
});
process.exit(status ?? 1);
