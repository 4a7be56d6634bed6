// Finds a Chromium to test with: Debian's, an installed one, else Playwright's own download; on Debian as root apt.
// Debian's headless shell comes first: without a window around each page the tests take half the time.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const SHELL = '/usr/bin/chromium-headless-shell';
const PLACES = [
  process.env.BARE_TOES_CHROMIUM,
  SHELL,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** A browser already on this machine, or nothing. */
export const installedBrowser = () => PLACES.find((place) => place && existsSync(place));

/** Playwright's launch options; without an installed browser it uses its own download. */
export function launchOptions() {
  const executablePath = installedBrowser();
  // what is on this machine never goes through it; see watch-origins.mjs
  const watch = process.env.BARE_TOES_WATCH;
  const args = watch ? [...FLAGS, `--proxy-server=${watch}`] : FLAGS;
  return executablePath ? { executablePath, args } : { args: args.slice(FLAGS.length) };
}

/** Sees to it that there is a browser. Returns what was done, or throws with what was tried. */
export function ensureBrowser() {
  const tried = [];
  const run = (command, args) => {
    tried.push([command, ...args].join(' '));
    return spawnSync(command, args, { stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;
  };
  // a machine without a way out must not wait for it
  const apt = (...args) =>
    run('apt-get', ['-q', '-o', 'Acquire::http::Timeout=15', '-o', 'Acquire::Retries=1', ...args]);
  const fetch = (name) => apt('install', '-y', '--no-install-recommends', name, 'fonts-noto-core');
  const isDebianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (isDebianRoot && !process.env.BARE_TOES_CHROMIUM && !existsSync(SHELL)) {
    if (apt('update')) fetch('chromium-headless-shell');
    if (!installedBrowser()) fetch('chromium');
  }
  const found = installedBrowser();
  if (found) return `browser: ${found}`;
  if (run('npx', ['playwright', 'install', 'chromium'])) return "browser: Playwright's own Chromium";
  throw new Error(
    `No Chromium was found and none could be had. Tried: ${tried.join('; ')}. Install Chromium, or set BARE_TOES_CHROMIUM to its path.`,
  );
}
