// What the bench files share: our own code built as the site builds it, the median time of a call, the weight of a folder.
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { PACKED } from './precompress.mjs';

/** Builds some files of the project and gives all they export in one object. */
export async function loadBuilt(root, files) {
  const outDir = mkdtempSync(path.join(tmpdir(), 'bench-'));
  const input = Object.fromEntries(files.map((file, at) => [`part${at}`, path.join(root, file)]));
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      rollupOptions: {
        input,
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  const modules = await Promise.all(
    Object.keys(input).map((name) => import(pathToFileURL(path.join(outDir, `${name}.mjs`)).href)),
  );
  rmSync(outDir, { recursive: true, force: true });
  return Object.assign({}, ...modules);
}

/** The first line of the table that all lines together are. */
export const HEAD = 'name: value unit | target | reference in this run';

/**
 * One figure as a line of the table.
 * @param {{ name: string, value: number, unit: string, digits?: number, target?: number, reference?: string }} figure
 *   `target` is the most that is wanted, in the same unit; `reference` what it stands beside: a row, or what a ratio is to
 */
export function lineOf({ name, value, unit, digits = 0, target, reference = 'none' }) {
  if (!Number.isFinite(value)) throw new Error(`bench › ${name}: no figure came back`);
  const wanted =
    target === undefined ? 'none' : `at most ${target} ${unit}, ${value <= target ? 'kept' : 'OVER'}`;
  return `${name}: ${value.toFixed(digits)} ${unit} | ${wanted} | ${reference}`;
}

/** Rows for growing sizes, and beside each size but the first how much longer it takes than the one before. */
export function growing(name, of, sizes, digits, measure) {
  const rows = [];
  let before;
  for (const size of sizes) {
    const value = measure(size);
    rows.push({ name: `${name}, ${size} ${of}`, value, unit: 'ms', digits });
    if (before)
      rows.push({
        name: `${name}, growth from ${before.size} to ${size} (${size / before.size} times as many)`,
        value: value / before.value,
        unit: 'times',
        digits: 1,
        reference: `${name}, ${before.size} ${of}`,
      });
    before = { size, value };
  }
  return rows;
}

/** The value below which such a share of all lies. */
export const at = (values, share) =>
  [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) * share)];

/** One file and all it imports as a script without white space, which a module would keep; its exports lie under `name`. */
export async function minified(root, file, name) {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      write: false,
      lib: { entry: path.join(root, file), formats: ['iife'], fileName: name, name },
    },
  });
  return [result]
    .flat()[0]
    .output.map(({ code }) => code ?? '')
    .join('');
}

const TIMES = 15;
const WARM_UP = 4;

/** Median time of one call in milliseconds, after a few that make the engine fast; `share` calls are timed as one. */
export function medianTime(name, call, share = 1) {
  const samples = [];
  let kept;
  for (let i = 0; i < TIMES; i++) {
    const start = performance.now();
    for (let j = 0; j < share; j++) kept = call();
    samples.push((performance.now() - start) / share);
  }
  if (kept === undefined) throw new Error(`bench › ${name}: nothing came back`);
  return at(samples.slice(WARM_UP), 0.5);
}

/** Bytes of all files of a built folder, without the packed copies that `npm run build` leaves beside them. */
export const weigh = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !PACKED.test(entry.name))
    .reduce((sum, entry) => sum + statSync(path.join(entry.parentPath, entry.name)).size, 0);
