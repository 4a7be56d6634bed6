// The best score of 200 made-up days with the whole library, by HiGHS, a general solver: the oracle of
// tests/reference/play-days.test.ts. It takes most of an hour; days that are already there are kept, so it can be
// stopped and run again; `npx prettier --write` the file after. `node .ci/play-days.mjs --afresh` begins anew, with the
// library as it is now; `--ties` asks for the fewest minutes of a grown-up, too, with the best score kept, and for the fewest
// different things with those kept as well: a minute a day at most, and what is not settled by then is left out.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import loadHighs from 'highs';
import { loadBuilt } from './bench-tools.mjs';

const ROOT = path.resolve(import.meta.dirname, '..');
const FILE = path.join(ROOT, 'tests/reference/play-days.json');
const DAYS = 200;

const { IDEAS, madeUpDay, dayAsLp } = await loadBuilt(ROOT, [
  'src/content/ideas.ts',
  'tests/helpers/play-days.ts',
  'tests/helpers/play-lp.ts',
]);

const before =
  existsSync(FILE) && !process.argv.includes('--afresh')
    ? JSON.parse(readFileSync(FILE, 'utf8'))
    : { ideas: IDEAS, days: [] };
const known = new Map(before.days.map((day) => [day.seed, day]));

/** One line a day and an idea, so that a change of one shows as one. */
function write() {
  const lines = (list) => list.map((one) => `    ${JSON.stringify(one)}`).join(',\n');
  const days = [...known.values()].sort((a, b) => a.seed - b.seed);
  const parts = [
    `  "solver": "HiGHS 1.15.3 by the npm package highs, mip_rel_gap 0, mip_abs_gap 0.5"`,
    `  "ideas": [\n${lines(before.ideas)}\n  ]`,
    `  "days": [\n${lines(days)}\n  ]`,
  ];
  writeFileSync(FILE, `{\n${parts.join(',\n')}\n}\n`);
}

for (let seed = 1; seed <= DAYS; seed++) {
  const problem = madeUpDay(seed, { ideas: before.ideas });
  const digest = createHash('sha256').update(JSON.stringify(problem)).digest('hex').slice(0, 16);
  if (known.get(seed)?.digest === digest) continue;
  // a fresh solver for each day: its memory only grows
  const highs = await loadHighs();
  const { Status, ObjectiveValue } = highs.solve(dayAsLp(problem, false), {
    mip_rel_gap: 0,
    mip_abs_gap: 0.5,
  });
  if (Status !== 'Optimal') throw new Error(`play-days › ${seed}: no optimum, saw "${Status}"`);
  known.set(seed, { seed, digest, best: Math.round(ObjectiveValue) });
  write();
  console.log(`${seed}: ${Math.round(ObjectiveValue)}`);
}

/** Asks for one figure more, of the days that do not have it yet. */
async function askMore(name, gap, modelOf) {
  for (const day of known.values()) {
    if (day[name] !== undefined) continue;
    const highs = await loadHighs();
    const { Status, ObjectiveValue } = highs.solve(
      modelOf(madeUpDay(day.seed, { ideas: before.ideas }), day),
      { mip_rel_gap: 0, mip_abs_gap: gap, time_limit: 60 },
    );
    console.log(`${day.seed}: ${Status}, ${name} ${ObjectiveValue}`);
    if (Status !== 'Optimal') continue;
    known.set(day.seed, { ...day, [name]: Math.round(ObjectiveValue) });
    write();
  }
}

// minutes come in fives, things one by one
if (process.argv.includes('--ties')) {
  await askMore('grownUp', 4, (problem, { best }) => dayAsLp(problem, false, best));
  await askMore('things', 0.9, (problem, { best, grownUp }) => dayAsLp(problem, false, best, grownUp));
}
