// Mutation testing: small faults put into the domain one by one; a fault that no test notices is named.
// npm run mutate -- signs                    every line of one area
// npm run mutate -- notes --lines 40         40 lines of it, drawn by a fixed seed
// npm run mutate -- notes --lines 40 --seed 2
// npm run mutate -- notes --only pack,coder  two files of it
// npm run mutate -- notes --keep notes.jsonl each fault as a line of that file, as it is tried
// npm run mutate -- notes --more 200         with 200 cases a law where nobody noticed, not 500
// Every fault is tried with few cases a law; what nobody noticed is tried again with more. A run that is stopped
// still says what it found. The tool is general (StrykerJS), needs Node 22 or newer, and is fetched into a folder of
// its own: nothing else here needs it.
import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { ready, root } from './install.mjs';

const TOOL = ['@stryker-mutator/core@10.1.1', '@stryker-mutator/vitest-runner@10.1.1'];
/** The tests that speak for an area, those that are quick and exact first: the first that fails ends the run of a fault. */
const named = (folder, names) => names.split(' ').map((name) => `tests/unit/${folder}/${name}.test.ts`);
const AREAS = {
  signs: [
    ...named('signs', 'over-time worked-cases second-reading laws *'),
    'tests/reference/early-signs.test.ts',
  ],
  notes: named(
    'notes',
    'plain sleep waiting kinds sightings entries report pairs clocks spoken timeline transfer pack file summarise frames *',
  ),
  'bed-card': [
    ...named('bed-card', 'check code'),
    ...['tests/reference/bed-card-codes.test.ts', 'tests/unit/bed-card/*.test.ts'],
  ],
  play: named(
    'play',
    'edges search proven rules typed-wrong points model told-day impossible fillings windows example safety day night *',
  ),
};
/** Cases of a law, at first and for what nobody noticed: a law of a hundred thousand finds a fault in its first ones, or is not the one that finds it. */
const CASES = [60, 500];
/** A case of play is a whole day planned. */
const CASES_OF = { play: [8, 60] };
const COPIED = [
  ...['src', 'tests', 'locales', '.ci', 'static', 'package.json', 'package-lock.json'],
  ...['vite.config.ts', 'svelte.config.js', 'tsconfig.json', '.svelte-kit', 'README.md', 'DEVELOPERS.md'],
];

const [area, ...options] = process.argv.slice(2);
const option = (name) => {
  const at = options.indexOf(`--${name}`);
  return at < 0 ? undefined : options[at + 1];
};
if (!AREAS[area]) {
  console.error(`mutate › area: one of ${Object.keys(AREAS).join(', ')}, saw "${area ?? ''}"`);
  process.exit(2);
}
const [FEW_CASES, usual] = CASES_OF[area] ?? CASES;
const MORE_CASES = Number(option('more')) || usual;
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
const only = option('only')?.split(',');
const all = codeLines(folder).filter(
  (line) => !only || only.includes(path.basename(line.split(':')[0], '.ts')),
);
const wanted = Number(option('lines')) || undefined;
const next = drawing(Number(option('seed')) || 1);
const drawn = all.map((line) => [next(), line]).sort(([a], [b]) => a - b);
const files = only ? only.map((name) => `${folder}/${name}.ts`) : [`${folder}/*.ts`];
const lines = wanted ? drawn.slice(0, wanted).map(([, line]) => line) : files;

const place = mkdtempSync(path.join(tmpdir(), 'mutate-'));
let stopped = false;
let running;
for (const signal of ['SIGINT', 'SIGTERM'])
  process.on(signal, () => {
    stopped = true;
    running?.kill(signal);
  });
const run = (command, words, env = {}) =>
  new Promise((done) => {
    running = spawn(command, words, { cwd: place, stdio: 'inherit', env: { ...process.env, ...env } });
    running.on('error', () => done(1)).on('close', (code) => done(code));
  });

/** What the tool said of each fault so far. */
function tried(log) {
  if (!existsSync(log)) return [];
  const whole = readFileSync(log, 'utf8').split('\n').slice(0, -1);
  return whole.map((line) => JSON.parse(line));
}
const isLeft = ({ status }) => status === 'Survived' || status === 'NoCoverage';
const isNoticed = ({ status }) => status === 'Killed' || status === 'Timeout';
const nameOf = ({ range, replacement }) => `${range} ${replacement}`;

/** Tries faults within these lines or places. */
async function tryFaults(mutate, cases, timeoutMS, log) {
  writeFileSync(
    path.join(place, 'stryker.config.json'),
    JSON.stringify({
      ...{ packageManager: 'npm', testRunner: 'vitest', mutate, concurrency: 1 },
      ...{ plugins: ['@stryker-mutator/vitest-runner', './.ci/mutate-log.mjs'] },
      ...{ vitest: { configFile: 'mutate.config.ts', related: false }, coverageAnalysis: 'perTest' },
      ...{ timeoutMS, timeoutFactor: 1.2, reporters: ['progress-append-only', 'log'] },
    }),
  );
  const status = await run(process.execPath, ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run'], {
    ...{ FORCE_COLOR: '0', BARE_TOES_SEED: '1', BARE_TOES_CASES: String(cases), MUTATE_LOG: log },
  });
  if (status !== 0 && !stopped) throw new Error('mutate › run: the tool stopped');
}

try {
  for (const name of COPIED) cpSync(path.join(root, name), path.join(place, name), { recursive: true });
  cpSync(path.join(root, 'node_modules'), path.join(place, 'node_modules'), { recursive: true });
  if ((await run('npm', ['install', '--no-save', '--no-audit', '--no-fund', ...TOOL])) !== 0)
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
  const first = path.resolve(option('keep') ?? path.join(place, 'tried.jsonl'));
  rmSync(first, { force: true });
  const second = path.join(place, 'tried-again.jsonl');
  await tryFaults(lines, FEW_CASES, 4000, first);
  const found = new Map(tried(first).map((fault) => [nameOf(fault), fault]));
  // a run without end may have been a machine that had other things to do
  const unsure = [...found.values()].filter((fault) => isLeft(fault) || fault.status === 'Timeout');
  if (unsure.length && !stopped) {
    console.log(`${area}, once more with up to ${MORE_CASES} cases a law: ${unsure.length}`);
    const ranges = unsure.map(({ range }) => range);
    await tryFaults(ranges, MORE_CASES, 10_000, second);
    const names = new Set(unsure.map(nameOf));
    for (const fault of tried(second)) if (names.has(nameOf(fault))) found.set(nameOf(fault), fault);
  }
  const still = [...found.values()].filter(isLeft);
  const noticed = [...found.values()].filter(isNoticed).length;
  const share = ((100 * noticed) / (noticed + still.length)).toFixed(1);
  for (const { range, replacement } of still) console.log(`left: ${range}  ->  ${replacement}`);
  console.log(`${area}, lines tried: ${wanted ?? all.length} of ${all.length}${stopped ? ', stopped' : ''}`);
  console.log(`${area}, faults noticed: ${noticed} of ${noticed + still.length}`);
  console.log(`${area}, noticed: ${share} %   (target: at least 90 %)`);
} finally {
  rmSync(place, { recursive: true, force: true });
}
