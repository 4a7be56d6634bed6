// Whole days that the planner proves best with little work, beside what a general solver found (tests/reference).
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { boardOf, POINT } from '#domain/play/board.ts';
import { branch } from '#domain/play/branch.ts';
import { checkPlan } from '#domain/play/check.ts';
import { modelOf } from '#domain/play/model.ts';
import { planDay, planSound } from '#domain/play/plan.ts';
import { EFFORT, WARM_UP } from '#domain/play/solve.ts';
import type { Idea, Impossible, Plan } from '#domain/play/types.ts';
import { vetted } from '#domain/play/vet.ts';
import { madeUpDay } from '../../helpers/play-days.ts';

interface Oracle {
  ideas: Idea[];
  days: { seed: number; best: number }[];
}
const oracle = JSON.parse(
  readFileSync(new URL('../../reference/play-days.json', import.meta.url), 'utf8'),
) as Oracle;

/** Together what some plans took and are worth, and no plan exceeds: the same on every engine. */
const sums = (plans: readonly Plan[]) =>
  plans.reduce(
    ([nodes, score, bound], plan) => [nodes + plan.nodes, score + plan.score, bound + plan.bound] as const,
    [0, 0, 0] as readonly [number, number, number],
  );
const planOf = (result: Plan | Impossible) => (result.kind === 'plan' ? result : result.rest);

/**
 * Days proven by prices alone, and days that need cases; with the nodes each takes on every engine, the minutes of a grown-up
 * and the things it asks for. A search that is changed may want other numbers: fewer of each.
 */
const DAYS: readonly (readonly [seed: number, nodes: number, grownUp: number, things: number])[] = [
  ...([
    [72, 4876, 35, 8],
    [186, 4523, 190, 10],
    [88, 5997, 155, 8],
    [89, 9580, 25, 9],
    [131, 6008, 145, 6],
    [113, 21_495, 85, 11],
    [48, 20_103, 70, 9],
  ] as const),
  ...([
    [133, 57_406, 125, 5],
    [22, 62_752, 70, 13],
    [114, 43_989, 100, 8],
    [51, 17_652, 70, 9],
    [44, 60_462, 130, 12],
    [152, 69_340, 65, 11],
    [14, 47_098, 70, 16],
  ] as const),
];

/** Of these, days on which a good plan is told early, too. */
const TOLD = [72, 113, 51, 14];

it('is proven best, worth what a general solver found, by the same work and with the same asked of a ward everywhere', () => {
  for (const [seed, nodes, grownUp, things] of DAYS) {
    const problem = madeUpDay(seed, { ideas: oracle.ideas });
    const plan = planOf(planDay(problem));
    const { best } = oracle.days.find((day) => day.seed === seed)!;
    expect([seed, plan.score, plan.bound]).toEqual([seed, best, best]);
    expect(checkPlan(problem, plan)).toEqual([]);
    const needed = plan.placements.flatMap(({ idea }) => problem.ideas.find(({ id }) => id === idea)!.things);
    expect([seed, plan.nodes, plan.grownUpMinutes, new Set(needed).size]).toEqual([
      ...[seed, nodes, grownUp, things],
    ]);
    // its points are settled before it is asked which of equal plans takes least of a grown-up
    const settled = planOf(planDay(problem, { ...EFFORT, pointsAlone: true }));
    expect([seed, settled.score, settled.bound, settled.leastGrownUp]).toEqual([seed, best, best, false]);
    expect([seed, settled.nodes < nodes, settled.grownUpMinutes >= grownUp]).toEqual([seed, true, true]);
    if (!TOLD.includes(seed)) continue;
    // that a good plan is told early changes nothing
    const told = planOf(planSound(vetted(problem).problem, [], undefined, () => undefined));
    expect([seed, told.nodes, told.placements]).toEqual([seed, plan.nodes, plan.placements]);
  }
});

it.each([
  [300, 200, [6591, 1840, 1924]],
  [2000, 200, [25_450, 1849, 1924]],
  [10_000, 200, [119_996, 1875, 1923]],
  // what the planner gets ready with
  [WARM_UP.nodes, WARM_UP.tries, [19_030, 1844, 1924]],
] as const)(
  'of %i nodes, %i parts side by side, no more are taken than what was begun needs, and the bound holds',
  (nodes, tries, together) => {
    const [plans, early]: [Plan[], Plan[]] = [[], []];
    for (const { seed, best } of oracle.days.slice(0, 12)) {
      const { problem } = vetted(madeUpDay(seed, { ideas: oracle.ideas }));
      const tell = (told: Plan | Impossible) => early.push(planOf(told));
      const plan = planOf(planSound(problem, [], { steps: WARM_UP.steps, tries, nodes }, tell));
      plans.push(plan);
      expect([seed, plan.score <= best, best <= plan.bound]).toEqual([seed, true, true]);
    }
    // the last thing begun is brought to its end: two hundred parts side by side through a day at most
    expect(Math.max(...plans.map((plan) => plan.nodes - nodes))).toBeLessThan(10_000);
    expect([sums(plans), sums(early)]).toEqual([together, [2604, 1751, 3169]]);
  },
);

it('cases that run out prove nothing: the bound stays at or above the best there is', () => {
  let below = 0;
  for (const [effort, together] of [
    [{ steps: 1, tries: 1, nodes: 20_000 }, [236_216, 1823, 2900]],
    // once the nodes are spent the search is no wider than one
    [{ steps: 200, tries: 200, nodes: 300 }, [11_867, 1867, 1899]],
    [{ steps: 60, tries: 2, nodes: 40_000 }, [412_451, 1898, 1899]],
  ] as const) {
    const plans = oracle.days.slice(0, 12).map(({ seed, best }) => {
      const plan = planOf(planDay(madeUpDay(seed, { ideas: oracle.ideas }), effort));
      expect([seed, effort.steps, best <= plan.bound]).toEqual([seed, effort.steps, true]);
      if (plan.score < best) below++;
      return plan;
    });
    expect(sums(plans)).toEqual(together);
  }
  expect(below).toBeGreaterThan(5);
});

it('cases never say that nothing is worth what a general solver found, and find nothing worth more', () => {
  let [found, none, nodes] = [0, 0, 0];
  for (const { seed, best } of oracle.days.slice(20, 28)) {
    const model = modelOf(vetted(madeUpDay(seed, { ideas: oracle.ideas })).problem);
    for (const most of [0.9, 0.3]) {
      const reachable = branch(boardOf(model), POINT * best, 60, most, 10);
      expect([seed, most, reachable.whole && !reachable.steps]).toEqual([seed, most, false]);
      if (reachable.steps) found++;
      nodes += reachable.nodes;
      const above = branch(boardOf(model), POINT * (best + 1), 2, most, 10);
      expect([seed, most, above.steps]).toEqual([seed, most, undefined]);
      if (above.whole) none++;
      nodes += above.nodes;
    }
  }
  // the same cases on every engine
  expect([found, none, nodes]).toEqual([16, 12, 123_263]);
});

it('where ideas are too few for all hard moments, no better plan with as many empty ever passes the bound', () => {
  const [LITTLE, MORE] = [
    { steps: 40, tries: 1, nodes: 100 },
    { steps: 200, tries: 20, nodes: 20_000 },
  ];
  let better = 0;
  for (const [seed, count, enough] of [
    [13, 60, 2],
    [22, 60, 1],
    [33, 136, 2],
    [33, 136, 3],
  ] as const) {
    const day = madeUpDay(seed, { windows: 8, hard: 4, count });
    const forMoments = day.ideas.filter(({ moments }) => moments.length > 0).slice(0, enough);
    const ideas = day.ideas.map((idea) => (forMoments.includes(idea) ? idea : { ...idea, moments: [] }));
    const [little, more] = [LITTLE, MORE].map((effort) => planDay({ ...day, ideas }, effort));
    const empty = (result: Plan | Impossible) => (result.kind === 'plan' ? 0 : result.moments.length);
    expect(empty(little!)).toBe(empty(more!));
    expect(empty(more!)).toBeGreaterThan(0);
    expect(planOf(more!).score).toBeLessThanOrEqual(planOf(little!).bound);
    if (planOf(more!).score > planOf(little!).score + 1) better++;
  }
  expect(better).toBeGreaterThan(1);
});
