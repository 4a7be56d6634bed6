// A day of play in Chromium four times slowed down: how soon a good plan and the proven one are there, beside plain
// arithmetic timed in the same place, which says how much slower it really was.
import { at, loadBuilt, minified } from './bench-tools.mjs';

const DAYS = 100;
const RATE = 4;

/** Runs in the page: what its worker does while the bed is being described. */
function timeWarmUp([any, effort]) {
  const start = performance.now();
  globalThis.planner.planSound(any, [], effort, () => undefined);
  return performance.now() - start;
}

/** Runs in the page: the same days one after the other, as the worker of the page would be asked. */
function timeDays([days, effort]) {
  const { planSound } = globalThis.planner;
  return days.map((problem) => {
    const start = performance.now();
    let early;
    const result = planSound(problem, [], effort, () => (early ??= performance.now() - start));
    const whole = performance.now() - start;
    const { score, bound } = result.kind === 'plan' ? result : result.rest;
    return { early: early ?? whole, whole, gap: bound - score };
  });
}

/** Runs in the page: sums that no engine can leave out. */
function timeSums() {
  const start = performance.now();
  let sum = 1;
  for (let n = 0; n < 30_000_000; n++) sum = (sum * 48_271) % 2_147_483_647;
  return [performance.now() - start, sum][0];
}

/** Shape: figures of one fresh page, once it has got ready. CPU throttling reaches a page's own thread alone, so it is timed there. */
export async function slowPlayFigures(root, browser) {
  const { IDEAS, EFFORT, WARM_UP, madeUpDay } = await loadBuilt(root, [
    'src/content/ideas.ts',
    'src/domain/play/solve.ts',
    'tests/helpers/play-days.ts',
  ]);
  const code = await minified(root, 'src/domain/play/plan.ts', 'planner');
  const days = Array.from({ length: DAYS }, (_, n) => madeUpDay(n + 1, { ideas: IDEAS }));
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.addScriptTag({ content: code });
  const plain = await page.evaluate(timeSums);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: RATE });
  const slowed = await page.evaluate(timeSums);
  const warmUp = await page.evaluate(timeWarmUp, [days[DAYS - 1], WARM_UP]);
  const [first, ...rest] = await page.evaluate(timeDays, [days, EFFORT]);
  const settled = await page.evaluate(timeDays, [days.slice(1), { ...EFFORT, pointsAlone: true }]);
  await context.close();
  const row = (name, value, target) => ({
    name: `slow Chromium, ${name}`,
    value,
    unit: 'ms',
    digits: 0,
    target,
    reference: 'slow Chromium, plain sums took',
  });
  const of = (key, share, all = rest) =>
    at(
      all.map((day) => day[key]),
      share,
    );
  return [
    {
      name: 'slow Chromium, plain sums took',
      value: slowed / plain,
      unit: 'times as long',
      digits: 1,
      reference: 'the same sums, not slowed down',
    },
    row('getting ready', warmUp),
    row('the first day after that, good plan', first.early),
    row('the first day after that, whole', first.whole),
    row(`good plan, median of ${DAYS - 1} days`, of('early', 0.5)),
    row('good plan, 99th percentile', of('early', 0.99), 100),
    row('points settled, median', of('whole', 0.5, settled)),
    row('points settled, 99th percentile', of('whole', 0.99, settled), 1500),
    row('whole, with ties, median', of('whole', 0.5)),
    row('whole, with ties, 99th percentile', of('whole', 0.99), 1500),
  ];
}
