// npm test: every check in turn, none skipped because an earlier one failed. The last line: N passed, N failed.
// node .ci/test.mjs [--no-browser]
import { spawn } from 'node:child_process';
import { createWriteStream, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { freePort } from './free-port.mjs';
import { ready, root, toolFile } from './install.mjs';

ready();
const { ensureBrowser } = await import('./browser.mjs');
const { whyNoNginx } = await import('./nginx.mjs');
const { browserFailures, unitFailures } = await import('./test-reports.mjs');

const withBrowser = !process.argv.includes('--no-browser');
const results = path.join(root, 'test-results');
const logs = path.join(results, 'logs');
const unitReport = path.join(results, 'unit.json');
const serverReport = path.join(results, 'server.json');
const browserReport = path.join(results, 'e2e.json');
/** Commands whose package has another name. */
const PACKAGES = {
  playwright: '@playwright/test',
  'svelte-kit': '@sveltejs/kit',
  tsc: 'typescript',
  depcruise: 'dependency-cruiser',
};
// a shared machine may be less than half as fast as another
const TOO_LONG_MS = 18 * 60_000;
const SHOWN_LINES = 120;

rmSync(results, { recursive: true, force: true });
mkdirSync(logs, { recursive: true });

/** Runs an installed command, keeping its words in a file; resolves to its exit code, -1 where it took too long. */
function run(name, [command, ...args], env = {}) {
  const file = path.join(logs, `${name.replaceAll(' ', '-')}.txt`);
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [toolFile(PACKAGES[command] ?? command, command), ...args], {
      cwd: root,
      env: { ...process.env, FORCE_COLOR: '0', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const log = createWriteStream(file);
    child.stdout.pipe(log, { end: false });
    child.stderr.pipe(log, { end: false });
    let late = false;
    const alarm = setTimeout(() => {
      late = true;
      // a runner that is asked to stop also stops what it started
      child.kill();
      setTimeout(() => {
        child.kill('SIGKILL');
        // what it started may hold these open for ever
        child.stdout.destroy();
        child.stderr.destroy();
      }, 10_000).unref();
    }, TOO_LONG_MS);
    child.once('close', (code) => {
      clearTimeout(alarm);
      log.end(late ? `\nstopped after ${TOO_LONG_MS / 60_000} minutes\n` : '', () =>
        resolve({ code: late ? -1 : code, file }),
      );
    });
  });
}

const tail = (file) => readFileSync(file, 'utf8').trimEnd().split('\n').slice(-SHOWN_LINES).join('\n');

/** A tool that passes or fails as a whole. */
const tool = async (name, command) => {
  const { code, file } = await run(name, command);
  return code === 0
    ? { passed: 1, failed: 0, messages: [] }
    : { passed: 0, failed: 1, messages: [`${name} failed:\n${tail(file)}`] };
};

/** A runner of tests: each test counts; a runner that breaks without naming a test counts as one failure. */
const tests = async (name, command, env, readReport, report) => {
  const { code, file } = await run(name, command, env);
  const counted = existsSync(report) ? readReport(JSON.parse(readFileSync(report, 'utf8'))) : undefined;
  // 0: all passed, 1: some failed; any other code means that not all were run
  const whole = code === 0 || (code === 1 && counted?.failed > 0);
  if (!counted || counted.passed + counted.failed === 0 || !whole) {
    const messages = [...(counted?.messages ?? []), `${name} broke off:\n${tail(file)}`];
    return { passed: counted?.passed ?? 0, failed: (counted?.failed ?? 0) + 1, messages };
  }
  return counted;
};

let builds = false;
const PRETTIER_PATHS = [
  'src',
  'tests',
  '.ci',
  'locales',
  'server',
  'static',
  'package.json',
  'tsconfig.json',
];
/** What keeps to one core each, side by side, the longest first. All but the build only read, and not what it writes. */
const BESIDE = {
  'svelte-check': (name) => tool(name, ['svelte-check', '--fail-on-warnings', '--output', 'human']),
  'vite build': async (name) => {
    rmSync(path.join(root, 'build'), { recursive: true, force: true });
    const outcome = await tool(name, ['vite', 'build', '--logLevel', 'warn']);
    builds = outcome.failed === 0;
    return outcome;
  },
  eslint: (name) => tool(name, ['eslint', '-c', '.ci/eslint.config.mjs', '--max-warnings', '0', '.']),
  prettier: (name) =>
    tool(name, ['prettier', '--check', '--log-level', 'warn', ...PRETTIER_PATHS, '*.{ts,js,md}']),
  'types without a browser': (name) => tool(name, ['tsc', '-p', '.ci/tsconfig.pure.json']),
  'import directions': (name) => tool(name, ['depcruise', '-c', '.ci/dependency-cruiser.cjs', 'src']),
  'types of the worker': (name) => tool(name, ['tsc', '-p', '.ci/tsconfig.worker.json']),
};
/** Side by side, too: nginx and its tests mostly wait. */
const WITHOUT_BROWSER = {
  'unit, reference, rules': (name) =>
    tests(
      name,
      [
        'vitest',
        'run',
        '--allowOnly=false',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${unitReport}`,
      ],
      { BARE_TOES_SEED: '20261126' },
      unitFailures,
      unitReport,
    ),
  'on a real nginx': async (name) => {
    const why = whyNoNginx();
    if (why) {
      console.log(why);
      return { passed: 0, failed: 0, messages: [] };
    }
    if (!builds) return { passed: 0, failed: 1, messages: [`${name}: nothing to serve, the build failed`] };
    const command = ['vitest', 'run', '-c', '.ci/vitest.server.mjs', '--allowOnly=false'];
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${serverReport}`];
    return tests(name, [...command, ...reporters], {}, unitFailures, serverReport);
  },
};
const IN_BROWSER = {};
if (withBrowser) {
  let problem = '';
  try {
    console.log(ensureBrowser());
  } catch (error) {
    problem = error.message;
    console.error(problem);
  }
  IN_BROWSER['in the browser'] = async (name) => {
    if (problem) return { passed: 0, failed: 1, messages: [`${name}: ${problem}`] };
    if (!builds) return { passed: 0, failed: 1, messages: [`${name}: nothing to open, the build failed`] };
    const env = { CI: 'true', BARE_TOES_PORT: String(await freePort()) };
    const command = ['playwright', 'test', '-c', '.ci/playwright.config.mjs'];
    return tests(name, command, env, browserFailures, browserReport);
  };
}

const rows = [];
/** Runs the checks in turn; two such calls beside each other draw from the same pile. */
async function work(pile) {
  for (let next = pile.shift(); next; next = pile.shift()) {
    const [name, step] = next;
    const start = performance.now();
    const outcome = await step(name).catch((error) => ({
      passed: 0,
      failed: 1,
      messages: [String(error.stack)],
    }));
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    const verdict = outcome.failed > 0 ? 'FAILED' : outcome.passed > 0 ? 'passed' : 'left out';
    console.log(`${name} … ${verdict} (${seconds} s)`);
    rows.push({ name, seconds, ...outcome });
  }
}
const begin = performance.now();
await work([['svelte-kit sync', (name) => tool(name, ['svelte-kit', 'sync'])]]);
for (const steps of [BESIDE, WITHOUT_BROWSER, IN_BROWSER]) {
  const pile = Object.entries(steps);
  await Promise.all([work(pile), work(pile)]);
}
const inAll = ((performance.now() - begin) / 1000).toFixed(1);

const sum = (key) => rows.reduce((total, row) => total + Number(row[key]), 0);
for (const message of rows.flatMap((row) => row.messages)) console.log(`\n${message}`);
console.log(`\n${'check'.padEnd(26)}${'passed'.padStart(8)}${'failed'.padStart(8)}${'seconds'.padStart(10)}`);
for (const { name, passed, failed, seconds } of rows)
  console.log(
    `${name.padEnd(26)}${String(passed).padStart(8)}${String(failed).padStart(8)}${seconds.padStart(10)}`,
  );
console.log(`${'in all'.padEnd(42)}${inAll.padStart(10)}\n`);
process.exitCode = sum('failed') > 0 ? 1 : 0;
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
