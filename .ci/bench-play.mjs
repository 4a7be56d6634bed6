// A day of play: time and proof of our own planner beside HiGHS, a general solver, on the same model and days.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import loadHighs from 'highs';
import { at, loadBuilt, minified } from './bench-tools.mjs';

const DAYS = 200;
// the general solver needs seconds a day
const BESIDE = 12;
const GROWTH = [4, 8, 12, 16];

const planOf = (result) => (result.kind === 'plan' ? result : result.rest);

/** Rows of name, value and unit: how long a day takes to plan, how near to the bound it comes, what the planner weighs. */
export async function playFigures(root) {
  const { planDay, EFFORT, IDEAS, madeUpDay, dayAsLp } = await loadBuilt(root, [
    'src/domain/play/plan.ts',
    'src/domain/play/solve.ts',
    'src/content/ideas.ts',
    'tests/helpers/play-days.ts',
    'tests/helpers/play-lp.ts',
  ]);
  const rows = [];
  const row = (name, value, unit, digits, target, reference) =>
    rows.push({ name, value, unit, digits, target, reference });
  // until the points are settled, which is what the general solver is asked for; and with ties
  const POINTS = { ...EFFORT, pointsAlone: true };
  const timed = (problem, effort = EFFORT) => {
    const start = performance.now();
    const plan = planOf(planDay(problem, effort));
    return { plan, ms: performance.now() - start };
  };
  // what a phone fetches, and all that can be called: with what vets any problem and what would open a moment
  const workers = path.join(root, 'build/_app/immutable/workers');
  const built = readdirSync(workers).find((name) => /^plan-worker.*\.js$/.test(name));
  const whole = await minified(root, 'src/domain/play/plan.ts', 'planner');
  for (const [name, code, target] of [
    ['as a phone fetches it', readFileSync(path.join(workers, built)), 12],
    ['with what vets and what would open a moment', whole],
  ])
    row(`planner, minified, ${name}`, gzipSync(code, { level: 9 }).length / 1024, 'KiB gzip', 2, target);
  for (let seed = 1; seed <= 10; seed++) timed(madeUpDay(seed, { ideas: IDEAS }));

  const named = { 'the library': IDEAS, '136 made-up ideas': undefined };
  for (const [name, ideas] of Object.entries(named)) {
    const days = Array.from({ length: DAYS }, (_, n) => madeUpDay(n + 1, { ideas }));
    for (const [what, effort] of [
      ['points settled', POINTS],
      ['with ties', EFFORT],
    ]) {
      const times = days.map((problem) => timed(problem, effort).ms);
      row(`12 windows, ${name}, ${what}, median of ${DAYS} days`, at(times, 0.5), 'ms', 0, 60);
      row(`12 windows, ${name}, ${what}, 99th percentile`, at(times, 0.99), 'ms', 0, 400);
    }
    const plans = days.map((problem) => timed(problem).plan);
    const gaps = plans.map(({ score, bound }) => bound - score);
    const share = (number) => (100 * number) / DAYS;
    row(
      `12 windows, ${name}, proven to ask the fewest minutes of a grown-up`,
      share(plans.filter(({ leastGrownUp }) => leastGrownUp).length),
      '%',
      0,
    );
    row(`12 windows, ${name}, proven best`, share(gaps.filter((gap) => !gap).length), '%', 0);
    row(
      `12 windows, ${name}, best or one point from it`,
      share(gaps.filter((gap) => gap <= 1).length),
      '%',
      0,
    );
    row(`12 windows, ${name}, widest gap`, Math.max(...gaps), 'points', 0);
  }

  const highs = await loadHighs();
  const [ours, theirs] = [[], []];
  let same = 0;
  let short = 0;
  for (let seed = 1; seed <= BESIDE; seed++) {
    // the same days as above, with the library
    const problem = madeUpDay(seed, { ideas: IDEAS });
    const { plan, ms } = timed(problem, POINTS);
    const model = dayAsLp(problem, false);
    const start = performance.now();
    const { ObjectiveValue } = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    theirs.push(performance.now() - start);
    ours.push(ms);
    const best = Math.round(ObjectiveValue);
    // a day on which two moments want the same idea is counted apart
    if (best > 0 && best > plan.bound) throw new Error(`bench › play › ${seed}: a bound was too low`);
    if (best === plan.score) same++;
    else short = Math.max(short, best - plan.score);
  }
  const other = `12 windows, the library, HiGHS, median of ${BESIDE}`;
  row(`12 windows, the library, beside HiGHS, same score`, (100 * same) / BESIDE, '%', 0, undefined, 'HiGHS');
  row(`12 windows, the library, beside HiGHS, most points short`, short, 'points', 0, undefined, 'HiGHS');
  row(`12 windows, the library, ours, median of ${BESIDE}`, at(ours, 0.5), 'ms', 0, undefined, other);
  row(other, at(theirs, 0.5), 'ms', 0);
  row(
    `12 windows, the library, HiGHS to ours, medians`,
    at(theirs, 0.5) / at(ours, 0.5),
    'times',
    0,
    undefined,
    `12 windows, the library, ours, median of ${BESIDE}`,
  );
  for (const windows of GROWTH) {
    const runs = Array.from({ length: 20 }, (_, n) =>
      timed(madeUpDay(n + 1, { windows, hard: windows / 4 })),
    );
    row(
      `${windows} windows, 136 ideas, median of 20`,
      at(
        runs.map(({ ms }) => ms),
        0.5,
      ),
      'ms',
      0,
    );
  }
  for (const count of [34, 68, 272]) {
    const runs = Array.from({ length: 20 }, (_, n) => timed(madeUpDay(n + 1, { count })));
    row(
      `12 windows, ${count} ideas, median of 20`,
      at(
        runs.map(({ ms }) => ms),
        0.5,
      ),
      'ms',
      0,
    );
  }
  return rows;
}
