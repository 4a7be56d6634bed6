// npm run server: builds for the root and for the folder /toes/, packs both, and runs the tests of server/ on both.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { ready, root, toolFile } from './install.mjs';

ready();
const { whyNoNginx } = await import('./nginx.mjs');
const why = whyNoNginx();
if (why) {
  console.error(why);
  process.exit(1);
}

const node = (cwd, file, args, env = {}) => {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, [file, ...args], {
    cwd,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (status !== 0) throw new Error(`server › ${path.basename(file)} ${args.join(' ')}: failed`);
  return ((performance.now() - start) / 1000).toFixed(1);
};

const SOURCES = ['.ci', 'locales', 'src', 'static', 'package.json', 'svelte.config.js', 'tsconfig.json'];

/** Builds a copy of the sources, so that the folder build/ of this checkout stays as it is. */
function buildFor(base) {
  const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-'));
  for (const name of [...SOURCES, 'vite.config.ts'])
    cpSync(path.join(root, name), path.join(folder, name), { recursive: true });
  symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'dir');
  const seconds = node(folder, toolFile('vite'), ['build', '--logLevel', 'error'], { BARE_TOES_BASE: base });
  console.log(`built for ${base || '/'}: ${seconds} s`);
  node(folder, path.join(root, '.ci/precompress.mjs'), ['build']);
  return folder;
}

const folders = [];
try {
  for (const base of ['', '/toes']) folders.push(buildFor(base));
  const [atRoot, inFolder] = folders.map((folder) => path.join(folder, 'build'));
  node(root, toolFile('vitest'), ['run', '-c', '.ci/vitest.server.mjs'], {
    BARE_TOES_BUILD: atRoot,
    BARE_TOES_FOLDER_BUILD: inFolder,
  });
} finally {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
}
