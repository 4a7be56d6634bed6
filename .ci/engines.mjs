// npm run engines: the same walks in Chromium, Firefox and WebKit, in English and Arabic, on a phone of 360 × 740.
// node .ci/engines.mjs [--no-build] [--build folder] [--only webkit,firefox] [--languages en,ar] [--walk words] [--pictures folder]
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { built, ready, root } from './install.mjs';

ready();
const { loadBuilt } = await import('./bench-tools.mjs');
const { serve } = await import('./serve.mjs');
const { JOURNEYS } = await import('./engines/journeys.mjs');
const { NotThere } = await import('./engines/page.mjs');
const { exitCodeOf, tableOf, zoneAt } = await import('./engines/table.mjs');
const ENGINES = [
  await import('./engines/chromium.mjs'),
  await import('./engines/firefox.mjs'),
  await import('./engines/webkit.mjs'),
];

const { values: asked } = parseArgs({
  options: {
    'no-build': { type: 'boolean' },
    build: { type: 'string' },
    only: { type: 'string', default: 'chromium,firefox,webkit' },
    languages: { type: 'string', default: 'en,ar' },
    walk: { type: 'string', default: '' },
    pictures: { type: 'string' },
  },
});
const build = path.resolve(asked.build ?? path.join(root, 'build'));
const languages = asked.languages.split(',');
const engines = ENGINES.filter(({ name }) => asked.only.toLowerCase().includes(name.toLowerCase()));
const journeys = Object.keys(JOURNEYS).filter((name) => name.includes(asked.walk));
const [width, height] = [360, 740];
const WORKER = 'service-worker.js';

if (!asked['no-build'] && !asked.build && !built()) process.exit(1);

/** A copy of the build whose first script also writes down what goes wrong; most walks need no offline copy. */
const scratch = mkdtempSync(path.join(tmpdir(), 'bare-toes-engines-'));
const folders = { kept: path.join(scratch, 'kept'), plain: path.join(scratch, 'plain') };
for (const folder of Object.values(folders)) {
  cpSync(build, folder, { recursive: true });
  const first = path.join(folder, 'before-paint.js');
  const watch = readFileSync(path.join(import.meta.dirname, 'engines/watch.js'), 'utf8');
  writeFileSync(first, `${watch}\n${readFileSync(first, 'utf8')}`);
}
rmSync(path.join(folders.plain, WORKER));

const { planSound, madeUpDay, IDEAS } = await loadBuilt(root, [
  ...['src/domain/play/plan.ts', 'tests/helpers/play-days.ts', 'src/content/ideas.ts'],
]);
const workers = readdirSync(path.join(build, '_app/immutable/workers'));
/** The planner as a phone fetches it, and what it answers here: every engine has to answer the same, to the letter. */
const planner = {
  address: `/_app/immutable/workers/${workers.find((name) => /^plan-worker.*\.js$/.test(name))}`,
  days: [3, 14, 22, 48, 72, 113].map((seed) => {
    const problem = madeUpDay(seed, { ideas: IDEAS });
    return { problem, plan: JSON.stringify(planSound(problem, [])) };
  }),
};

const results = [];
const versions = [];
const lacking = [];

/** One walk, on phones that keep nothing yet, from a server of its own that can be taken away. */
async function walked(name, browser, language, journey) {
  const needsWorker = journey.startsWith('without network');
  const server = await serve(() => (needsWorker ? folders.kept : folders.plain), 0, false);
  const phones = [];
  const faults = [];
  const leave = async (page) => {
    if (!page) return;
    faults.push(...(await page.faults()));
    await page.close();
  };
  let served = true;
  const offline = async () => {
    if (served) await server.close();
    served = false;
  };
  const file = (what) => path.join(asked.pictures, `${name}-${language}-${what}.png`.toLowerCase());
  const picture = async (page, what) => {
    if (!asked.pictures) return;
    // drawings that come with script, and what moves once
    await page.pause(1500);
    writeFileSync(file(what), await page.picture());
  };
  try {
    await JOURNEYS[journey]({
      // one phone at a time: WebKit's driver holds no more
      phone: async () => {
        await leave(phones.at(-1));
        const page = await browser.phone(`http://127.0.0.1:${server.port}`);
        phones.push(page);
        return page;
      },
      ...{ language, picture, offline, width, planner },
      has: (found) => lacking.push({ name, language, found }),
    });
    await leave(phones.at(-1));
    // the last walk takes the server away, and all others the worker: what cannot be fetched then is no fault
    const own = faults.filter(
      (fault) => !/service-?worker/i.test(fault) && (served || !/not loaded/.test(fault)),
    );
    return own.length ? { state: 'failed', reason: own.join('; ') } : { state: 'passed' };
  } catch (error) {
    if (error instanceof NotThere) return { state: 'not there', reason: error.message };
    const page = phones.at(-1);
    const where = await page?.run(() => location.href).catch(() => undefined);
    faults.push(...((await page?.faults()) ?? []));
    // a phone that has gone gives no picture, and the walk has failed for another reason
    const last = asked.pictures ? await page?.picture().catch(() => undefined) : undefined;
    if (last) writeFileSync(file(`failed-${journey.replaceAll(/\W+/g, '-')}`), last);
    return { state: 'failed', reason: [error.message, where, ...faults].join('; ') };
  } finally {
    // closed already where all went well
    await phones
      .at(-1)
      ?.close()
      .catch(() => undefined);
    await offline();
  }
}

if (asked.pictures) mkdirSync(asked.pictures, { recursive: true });
for (const { name, missing, onDebian, start } of engines) {
  const why = missing();
  let failure;
  const browser = why
    ? undefined
    : await start({ width, height, zone: zoneAt(new Date().getUTCHours()) }).catch((error) => {
        // the other engines are walked all the same
        failure = { state: 'failed', reason: `it did not start: ${error.message}` };
      });
  versions.push(
    why ? `${name}: ${why}; on Debian: ${onDebian}` : `${name} ${browser?.version ?? failure.reason}`,
  );
  console.log(versions.at(-1));
  for (const language of languages)
    for (const journey of journeys) {
      const began = performance.now();
      const result = browser
        ? await walked(name, browser, language, journey)
        : (failure ?? { state: 'not there' });
      results.push({ engine: name, language, journey, ...result });
      const seconds = ((performance.now() - began) / 1000).toFixed(1);
      if (browser) console.log(`  ${language} › ${journey}: ${result.state}, ${seconds} s`);
      if (result.reason) console.log(`    ${result.reason}`);
    }
  await browser?.stop();
}
rmSync(scratch, { recursive: true, force: true });

const columns = engines.flatMap(({ name }) => languages.map((language) => ({ engine: name, language })));
console.log(`\n${versions.join('\n')}\n\n${tableOf(journeys, columns, results)}\n`);
for (const { name, language, found } of lacking) {
  const not = Object.keys(found).filter((what) => !found[what]);
  console.log(`${name} ${language} has no: ${not.join(', ') || 'nothing that was asked for is lacking'}`);
}
process.exit(exitCodeOf(results));
