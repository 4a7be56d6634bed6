// What a language adds: the site built with one language and with all of them, in one run on one machine.
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { toolFile } from './install.mjs';
import { PACKED } from './precompress.mjs';

const SOURCES = ['.ci', 'locales', 'src', 'static', 'package.json', 'svelte.config.js', 'tsconfig.json'];
const KIB = 1024;

/** Builds a copy of the sources for these languages; the folder under test stays as it is. */
function builtWith(root, languages) {
  const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-bench-'));
  try {
    for (const name of [...SOURCES, 'vite.config.ts'])
      cpSync(path.join(root, name), path.join(folder, name), { recursive: true });
    symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'dir');
    const ward = JSON.parse(readFileSync(path.join(root, 'src/content/ward.json'), 'utf8'));
    writeFileSync(path.join(folder, 'ward.json'), JSON.stringify({ ...ward, languages }));
    const start = performance.now();
    const { status, stderr } = spawnSync(
      process.execPath,
      [toolFile('vite'), 'build', '--logLevel', 'error'],
      {
        cwd: folder,
        env: { ...process.env, BARE_TOES_WARD: path.join(folder, 'ward.json') },
        encoding: 'utf8',
      },
    );
    if (status !== 0) throw new Error(`bench › build with ${languages.join(', ')}: ${stderr}`);
    const seconds = (performance.now() - start) / 1000;
    const bytes = readdirSync(path.join(folder, 'build'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !PACKED.test(entry.name))
      .reduce((sum, entry) => sum + statSync(path.join(entry.parentPath, entry.name)).size, 0);
    return { seconds, bytes };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Seconds and KiB that each language beyond the first adds to a build, beside the build with one language.
 * @param {string} root the sources
 */
export function languageFigures(root) {
  const { languages } = JSON.parse(readFileSync(path.join(root, 'src/content/ward.json'), 'utf8'));
  const one = builtWith(root, languages.slice(0, 1));
  const all = builtWith(root, languages);
  const added = languages.length - 1;
  return [
    { name: `build with ${languages[0]} alone`, value: one.seconds, unit: 's', digits: 1 },
    { name: `build with ${languages.length} languages`, value: all.seconds, unit: 's', digits: 1 },
    { name: 'build, each added language', value: (all.seconds - one.seconds) / added, unit: 's', digits: 1 },
    { name: 'build, all files, one language', value: one.bytes / KIB, unit: 'KiB', digits: 0 },
    {
      name: 'build, each added language',
      value: (all.bytes - one.bytes) / added / KIB,
      unit: 'KiB',
      digits: 0,
    },
  ];
}
