// Mutation testing: small faults put into the domain one by one; a fault that no test notices is named.
// npm run mutate -- signs                    every line of one area
// npm run mutate -- notes --lines 40         40 lines of it, drawn by a fixed seed
// npm run mutate -- notes --lines 40 --seed 2
// The tool is general (StrykerJS), needs Node 22 or newer, and is fetched into a folder of its own: nothing else here needs it.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { ready, root } from './install.mjs';

const TOOL = ['@stryker-mutator/core@10.1.1', '@stryker-mutator/vitest-runner@10.1.1'];
/** The tests that speak for an area, those that are quick and exact first: the first that fails ends the run of a fault. */
const AREAS = {
  signs: [
    ...['over-time', 'second-reading', 'worked-cases', 'laws'].map(
      (name) => `tests/unit/signs/${name}.test.ts`,
    ),
    ...['tests/unit/signs/*.test.ts', 'tests/reference/early-signs.test.ts'],
  ],
  notes: ['tests/unit/notes/**/*.test.ts'],
  'bed-card': [
    ...['tests/unit/bed-card/check.test.ts', 'tests/unit/bed-card/code.test.ts'],
    ...['tests/reference/bed-card-codes.test.ts', 'tests/unit/bed-card/*.test.ts'],
  ],
  play: ['tests/unit/play/*.test.ts'],
};
/** A law of a hundred thousand cases finds a fault in the first ones, or is not the one that finds it. */
const MOST_CASES = '500';
const COPIED = [
  ...['src', 'tests', 'locales', '.ci', 'static', 'package.json', 'package-lock.json'],
  ...['vite.config.ts', 'svelte.config.js', 'tsconfig.json', '.svelte-kit', 'README.md', 'DEVELOPERS.md'],
];

const [area, ...options] = process.argv.slice(2);
const option = (name) => {
  const at = options.indexOf(`--${name}`);
  return at < 0 ? undefined : Number(options[at + 1]);
};
if (!AREAS[area]) {
  console.error(`mutate › area: one of ${Object.keys(AREAS).join(', ')}, saw "${area ?? ''}"`);
  process.exit(2);
}
if (Number(process.versions.node.split('.')[0]) < 22) {
  console.error(`mutate › Node: 22 or newer for the mutation tool, saw ${process.versions.node}`);
  process.exit(2);
}
ready();

/** The same numbers for the same seed, from 0 to below 1. Source: Park, Miller and Stockmeyer 1993, multiplier 48271 (from memory). */
function drawing(seed) {
  let value = seed;
  return () => {
    value = (value * 48_271) % 2_147_483_647;
    return value / 2_147_483_647;
  };
}

/** Lines with code on them, as "file:line-line". */
function codeLines(folder) {
  return readdirSync(path.join(root, folder)).flatMap((name) => {
    if (!name.endsWith('.ts')) return [];
    const lines = readFileSync(path.join(root, folder, name), 'utf8').split('\n');
    return lines.flatMap((line, n) =>
      /^\s*(\/\/|\/?\*|import|export (type|interface)|}|\)|$)/.test(line)
        ? []
        : [`${folder}/${name}:${n + 1}-${n + 1}`],
    );
  });
}

const folder = `src/domain/${area}`;
const all = codeLines(folder);
const wanted = option('lines');
const next = drawing(option('seed') ?? 1);
const drawn = all.map((line) => [next(), line]).sort(([a], [b]) => a - b);
const mutate = wanted ? drawn.slice(0, wanted).map(([, line]) => line) : [`${folder}/*.ts`];

const place = mkdtempSync(path.join(tmpdir(), 'mutate-'));
const run = (command, words) =>
  spawnSync(command, words, {
    cwd: place,
    stdio: 'inherit',
    env: { ...process.env, FORCE_COLOR: '0', BARE_TOES_SEED: '1', BARE_TOES_CASES: MOST_CASES },
  }).status;
try {
  for (const name of COPIED) cpSync(path.join(root, name), path.join(place, name), { recursive: true });
  cpSync(path.join(root, 'node_modules'), path.join(place, 'node_modules'), { recursive: true });
  if (run('npm', ['install', '--no-save', '--no-audit', '--no-fund', ...TOOL]) !== 0)
    throw new Error('mutate › tool: could not be fetched');
  // one thread tests each mutant: tests that change the process's own clock place have no part in it
  writeFileSync(
    path.join(place, 'mutate.config.ts'),
    `import path from 'node:path';
import base from './vite.config.ts';
const { test, ...rest } = base as { test: object };
const include = ${JSON.stringify(AREAS[area])};
class InThisOrder {
  shard(files) { return files; }
  sort(files) {
    const rank = ({ moduleId }) => include.findIndex((glob) => path.matchesGlob(path.relative('.', moduleId), glob));
    return [...files].sort((a, b) => rank(a) - rank(b));
  }
}
export default { ...rest, test: { ...test, include, sequence: { sequencer: InThisOrder } } };\n`,
  );
  writeFileSync(
    path.join(place, 'stryker.config.json'),
    JSON.stringify({
      ...{ packageManager: 'npm', testRunner: 'vitest', plugins: ['@stryker-mutator/vitest-runner'] },
      ...{ vitest: { configFile: 'mutate.config.ts', related: false }, mutate, concurrency: 1 },
      ...{ coverageAnalysis: 'perTest', timeoutMS: 10_000, timeoutFactor: 1.2 },
      ...{
        reporters: ['clear-text', 'progress-append-only', 'json'],
        jsonReporter: { fileName: 'mutants.json' },
      },
      ...{ clearTextReporter: { allowColor: false, logTests: false, reportTests: false } },
    }),
  );
  const status = run(process.execPath, ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run']);
  if (status !== 0) throw new Error('mutate › run: the tool stopped');
  const { files } = JSON.parse(readFileSync(path.join(place, 'mutants.json'), 'utf8'));
  const found = Object.values(files).flatMap(({ mutants }) => mutants);
  const count = (...states) => found.filter(({ status: state }) => states.includes(state)).length;
  const [killed, left] = [count('Killed', 'Timeout'), count('Survived', 'NoCoverage')];
  console.log(`${area}, lines tried: ${wanted ?? all.length} of ${all.length}`);
  console.log(`${area}, faults noticed: ${killed} of ${killed + left}`);
  console.log(
    `${area}, noticed: ${((100 * killed) / (killed + left)).toFixed(1)} %   (target: at least 90 %)`,
  );
} finally {
  rmSync(place, { recursive: true, force: true });
}
