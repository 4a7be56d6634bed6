// Times our own code, built as the site builds it: the assessment at growing numbers of sightings, the drawing.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const CAMERAS = ['whole', 'feet', 'close'];
const FOCUSES = ['foot', 'bandage', 'heel', 'knee', 'thigh', 'bed-end', 'child'];
const SIZES = [10, 1_000, 10_000];

/** Median time of one call, in microseconds; `share` calls are timed together, since a clock tick is long. */
function timeOf(call, share) {
  const samples = [];
  let kept;
  for (let i = 0; i < 25; i++) {
    const start = performance.now();
    for (let j = 0; j < share; j++) kept = call();
    samples.push(((performance.now() - start) * 1000) / share);
  }
  if (kept === undefined) throw new Error('bench › code: nothing came back');
  // the first calls run before the engine has made them fast
  return samples.slice(5).sort((a, b) => a - b)[10];
}

export async function codeTimes(root) {
  const outDir = mkdtempSync(path.join(tmpdir(), 'bench-code-'));
  const sources = {
    assess: 'domain/signs/assess.ts',
    signs: 'content/signs.ts',
    ward: 'content/ward.ts',
    paths: 'scene/paths.ts',
    spec: 'scene/spec.ts',
  };
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
        input: Object.fromEntries(
          Object.entries(sources).map(([name, file]) => [name, path.join(root, 'src', file)]),
        ),
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  const load = (name) => import(pathToFileURL(path.join(outDir, `${name}.mjs`)).href);
  const [{ assess }, { SIGN_ROWS }, { WARD }, { drawScene }, { NEUTRAL }] = await Promise.all(
    Object.keys(sources).map(load),
  );

  const now = 30_000_000;
  const context = {
    now,
    offsetMinutes: 0,
    child: { under3: false, canTell: 'yes' },
    signs: SIGN_ROWS,
    ward: WARD,
  };
  const ids = Object.keys(SIGN_ROWS);
  // a sighting every seven minutes; a nurse looked at four of five
  const sightings = (count) =>
    Array.from({ length: count }, (_, i) => {
      const at = now - 7 * i - 1;
      return { sign: ids[i % ids.length], answer: 'different', at, ...(i % 5 ? { lookedAt: at + 5 } : {}) };
    });
  const rows = [];
  let before;
  for (const size of SIZES) {
    const report = { sightings: sightings(size) };
    const value = timeOf(() => assess(report, context), size > 5000 ? 1 : size > 500 ? 5 : 200) / 1000;
    rows.push({ name: `assess, ${size} sightings`, value, unit: 'ms', digits: 3 });
    if (before)
      rows.push({
        name: `assess, growth from ${before.size} to ${size} (${size / before.size} times as many)`,
        value: value / before.value,
        unit: 'times',
        digits: 1,
      });
    before = { size, value };
  }
  for (const camera of CAMERAS)
    for (const focus of camera === 'close' ? FOCUSES : [NEUTRAL.focus]) {
      const spec = { ...NEUTRAL, camera, focus };
      const name = camera === 'close' ? `drawScene, close, ${focus}` : `drawScene, ${camera}`;
      rows.push({ name, value: timeOf(() => drawScene(spec), 20), unit: 'µs', digits: 0 });
    }
  rmSync(outDir, { recursive: true, force: true });
  return rows;
}
