// npm run endure: kills the whole browser two hundred times in the middle of writing, and lets a child tap ten thousand
// times on its own pages. Needs a build; takes some ten minutes, more on a busy machine.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { freePort } from './free-port.mjs';
import { root, toolFile } from './install.mjs';

const KILLS = process.env.BARE_TOES_KILLS ?? '200';
const TAPS = process.env.BARE_TOES_TAPS ?? '10000';
const folder = mkdtempSync(path.join(os.tmpdir(), 'bare-toes-endure-'));
const report = path.join(folder, 'report.json');
const { status } = spawnSync(
  process.execPath,
  [
    toolFile('@playwright/test', 'playwright'),
    ...['test', '-c', '.ci/playwright.config.mjs', 'e2e/notes.spec', 'e2e/our-day.spec'],
    ...['-g', 'whole browser is killed|wild taps'],
    ...['--reporter', 'list,json'],
  ],
  {
    cwd: root,
    stdio: 'inherit',
    env: {
      ...process.env,
      BARE_TOES_KILLS: KILLS,
      BARE_TOES_TAPS: TAPS,
      // a port of its own: at the usual one another checkout may be served
      BARE_TOES_PORT: String(await freePort()),
      PLAYWRIGHT_JSON_OUTPUT_NAME: report,
    },
  },
);
if (status === 0)
  for (const [, said] of readFileSync(report, 'utf8').matchAll(/"description": "(\d+ times; [^"]*)"/g))
    console.log(`killed ${said}`);
rmSync(folder, { recursive: true, force: true });
process.exitCode = status ?? 1;
