// npm run bench: what the first page costs, how soon it is there on a slow phone, how long our own code takes.
// Prints one table, a line for each figure: "name: value unit | target | reference"; where there is a target, whether it is
// kept. node .ci/bench.mjs [--no-build]
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { built, ready, root } from './install.mjs';

ready();
const { chromium } = await import('@playwright/test');
const { ensureBrowser, launchOptions } = await import('./browser.mjs');
const { serve } = await import('./serve.mjs');
const { firstLoad, largestPaint, LOOK, PLAIN, tapAnswer, writePlainPage } = await import('./bench-page.mjs');
const { routeFigures } = await import('./bench-routes.mjs');
const { languageFigures } = await import('./bench-languages.mjs');
const { codeTimes } = await import('./bench-code.mjs');
const { serverFigures } = await import('./bench-server.mjs');
const { noteFigures } = await import('./bench-notes.mjs');
const { playFigures } = await import('./bench-play.mjs');
const { slowPlayFigures } = await import('./bench-play-slow.mjs');
const { summaryTimes } = await import('./bench-summary.mjs');
const { at, HEAD, lineOf, weigh } = await import('./bench-tools.mjs');

const TIMES = 5;
const KIB = 1024;
const median = (values) => at(values, 0.5);

const line = (name, value, unit, how = {}) => console.log(lineOf({ name, value, unit, ...how }));
function lines(rows) {
  for (const row of rows) console.log(lineOf(row));
}
/** What is no figure stands beside the table. */
const aside = (words) => console.error(words);

console.log(HEAD);
const build = path.join(root, 'build');
if (!process.argv.includes('--no-build') || !existsSync(build)) {
  const start = performance.now();
  if (!built()) throw new Error('bench › build: the build failed');
  line('build time', (performance.now() - start) / 1000, 's', { digits: 1 });
}

line('build, all files', weigh(build) / KIB, 'KiB');
for (const code of readdirSync(path.join(root, 'locales')))
  if (existsSync(path.join(build, code, 'index.html')))
    line(`build, pages of ${code}`, weigh(path.join(build, code)) / KIB, 'KiB');
line('build, scripts', weigh(path.join(build, '_app/immutable')) / KIB, 'KiB');

lines(languageFigures());

// A copy: the plain page is put beside the real one, and a rebuild meanwhile changes nothing.
const copy = mkdtempSync(path.join(tmpdir(), 'bench-'));
cpSync(build, copy, { recursive: true });
writePlainPage(copy);
aside(ensureBrowser());
const server = await serve(() => copy);
const origin = `http://127.0.0.1:${server.port}`;
const browser = await chromium.launch(launchOptions());
const repeat = async (measure) => {
  const values = [];
  for (let i = 0; i < TIMES; i++) values.push(await measure());
  return values;
};
try {
  const full = await firstLoad(browser, origin + LOOK);
  const plain = await firstLoad(browser, origin + LOOK, { scripts: false });
  line(`${LOOK} scripts`, full.script / KIB, 'KiB gzip', { target: 60, digits: 1 });
  line(`${LOOK} styles`, full.style / KIB, 'KiB gzip', { digits: 1 });
  line(`${LOOK} page`, full.html / KIB, 'KiB gzip', { digits: 1 });
  line(`${LOOK} other files`, full.other / KIB, 'KiB gzip', { digits: 1 });
  line(`${LOOK} first load in all`, full.total / KIB, 'KiB gzip', { target: 110, digits: 1 });
  line(`${LOOK} files`, full.files, 'files');
  const bare = `${LOOK} loaded without scripts`;
  line(bare, plain.total / KIB, 'KiB gzip', { digits: 1 });
  line(`${LOOK} ratio to the page without scripts`, full.total / plain.total, 'times', {
    digits: 2,
    reference: bare,
  });

  const phone = 'slow phone (processor 4 times slower, 1.6 Mbit/s, 150 ms)';
  const paints = await repeat(() => largestPaint(browser, origin + LOOK));
  const plainPaints = await repeat(() => largestPaint(browser, origin + PLAIN));
  const plainPaint = `${phone}, largest paint without scripts`;
  line(`${phone}, largest paint, median of ${TIMES}`, median(paints) / 1000, 's', {
    target: 1.5,
    digits: 2,
    reference: plainPaint,
  });
  line(`${phone}, largest paint, slowest`, Math.max(...paints) / 1000, 's', { digits: 2 });
  line(plainPaint, median(plainPaints) / 1000, 's', { digits: 2 });
  line(`${phone}, largest paint, ratio`, median(paints) / median(plainPaints), 'times', {
    digits: 2,
    reference: plainPaint,
  });
  const taps = await repeat(() => tapAnswer(browser, origin + LOOK));
  const plainTaps = await repeat(() => tapAnswer(browser, origin + PLAIN));
  line(`${phone}, tap to the next paint, median of ${TIMES}`, median(taps.map((tap) => tap.paint)), 'ms', {
    target: 200,
    // the reference leaves for a whole new page, so that its next paint is that page's
    reference: `${phone}, tap to the next page, without scripts`,
  });
  const next = median(taps.map((tap) => tap.page));
  const nextName = `${phone}, tap to the next page, on the network`;
  line(nextName, next, 'ms', { reference: `${phone}, tap to the next page, without scripts` });
  const keptTaps = await repeat(() => tapAnswer(browser, origin + LOOK, true));
  line(
    `${phone}, tap to the next page, the site kept on the phone`,
    median(keptTaps.map((tap) => tap.page)),
    'ms',
    {
      target: 200,
      reference: nextName,
    },
  );
  const plainNext = median(plainTaps.map((tap) => tap.page));
  line(`${phone}, tap to the next page, without scripts`, plainNext, 'ms');
  // a page of plain words takes as long: most of it is the network's
  line(`${phone}, tap to the next page, ratio`, next / plainNext, 'times', {
    target: 1.25,
    digits: 2,
    reference: `${phone}, tap to the next page, without scripts`,
  });
  lines(await routeFigures(root, build, browser, origin));
  lines(await slowPlayFigures(root, browser));
} finally {
  await browser.close();
  await server.close();
  rmSync(copy, { recursive: true, force: true });
}

lines(await serverFigures(build));
lines(await codeTimes(root));
lines(await summaryTimes(root));
lines(await noteFigures(root));
lines(await playFigures(root));
