// Installs what the lock names, when it is missing or the lock has moved on, and builds. Only Node's own modules: it runs
// first.
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  lstatSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

// not import.meta.dirname: a Node that is too old must still reach the sentence that says so
export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');

/** What is wrong with this Node, in a sentence, or nothing. */
function nodeTooOld() {
  const version = process.versions.node;
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
  if (fits) return undefined;
  return `Bare Toes needs Node 20.19, 22.12 or newer; this is Node ${version}. Install a newer one from https://nodejs.org and run the same command again.`;
}

/** Whether what is installed is not what the lock names. */
function needsInstall() {
  // a link leads to another checkout's install, which must not be emptied
  if (lstatSync(path.join(root, 'node_modules'), { throwIfNoEntry: false })?.isSymbolicLink()) return false;
  const installed = path.join(root, 'node_modules/.package-lock.json');
  if (!existsSync(installed)) return true;
  return statSync(path.join(root, 'package-lock.json')).mtimeMs > statSync(installed).mtimeMs;
}

/** Returns false where npm could not install. */
function install() {
  if (!needsInstall()) return true;
  console.log('Installing what package-lock.json names …');
  const windows = process.platform === 'win32';
  const options = { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], shell: windows };
  return spawnSync('npm', ['ci', '--no-audit', '--no-fund'], options).status === 0;
}

/** The script file behind an installed command, to be run by this same Node on every system. */
export function toolFile(packageName, command = packageName) {
  const folder = path.join(root, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  return path.join(folder, typeof bin === 'string' ? bin : bin[command]);
}

const SOURCES = [
  ...['.ci', 'locales', 'src', 'static', 'package.json'],
  ...['svelte.config.js', 'tsconfig.json', 'vite.config.ts'],
];

/** Builds the folder build/ of a checkout, by default this one; false where that failed, with the reason on the screen. */
export function built(folder = root, env = {}) {
  const { status } = spawnSync(process.execPath, [toolFile('vite'), 'build', '--logLevel', 'error'], {
    cwd: folder,
    env: { ...process.env, ...env },
    // what a build says stands beside what its caller prints
    stdio: ['ignore', 2, 'inherit'],
  });
  return status === 0;
}

/** Lends a copy of what a build is made of for as long as `use` takes, so that build/ of this checkout stays as it is. */
export function withSources(use) {
  const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-sources-'));
  try {
    for (const name of SOURCES) cpSync(path.join(root, name), path.join(folder, name), { recursive: true });
    symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'dir');
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Ends the process with a sentence where Node is too old or the install failed. */
export function ready() {
  const old = nodeTooOld();
  if (old) {
    console.error(old);
    process.exit(1);
  }
  if (!install()) {
    console.error('npm ci failed: its message is above. A network, or a filled npm cache, is needed once.');
    process.exit(1);
  }
}
