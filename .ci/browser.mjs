// Finds a Chromium to test with: Debian's, an installed one, else Playwright's own download; on Debian as root apt.
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
const PLACES = [
  process.env.BARE_TOES_CHROMIUM,
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
  return executablePath ? { executablePath, args: FLAGS } : {};
}

/** Sees to it that there is a browser. Returns what was done, or throws with what was tried. */
export function ensureBrowser() {
  const found = installedBrowser();
  if (found) return `browser: ${found}`;
  const tried = [];
  const run = (command, args) => {
    tried.push([command, ...args].join(' '));
    return spawnSync(command, args, { stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;
  };
  const isDebianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (
    isDebianRoot &&
    run('apt-get', ['update', '-q']) &&
    run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-noto-core'])
  ) {
    if (installedBrowser()) return `browser: ${installedBrowser()} (installed)`;
  }
  if (run('npx', ['playwright', 'install', 'chromium'])) return "browser: Playwright's own Chromium";
  throw new Error(
    `No Chromium was found and none could be had. Tried: ${tried.join('; ')}. Install Chromium, or set BARE_TOES_CHROMIUM to its path.`,
  );
}
