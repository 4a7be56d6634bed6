// Two hundred whole days with the whole library beside HiGHS 1.15.3, a general solver: what it found is kept in
// play-days.json, which .ci/play-days.mjs writes; three of them are solved again here.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { planDay } from '#domain/play/plan.ts';
import type { Idea } from '#domain/play/types.ts';
import { madeUpDay } from '../helpers/play-days.ts';
import { dayAsLp, EMPTY } from '../helpers/play-lp.ts';

interface Oracle {
  ideas: Idea[];
  /** `grownUp`: the fewest minutes of a grown-up of plans worth as much; `things`: the fewest different things of those. */
  days: { seed: number; digest: string; best: number; grownUp: number; things: number }[];
}
const oracle = JSON.parse(readFileSync(new URL('./play-days.json', import.meta.url), 'utf8')) as Oracle;
const withoutEmpty = (raw: number) => raw + EMPTY * Math.max(0, -Math.floor((raw + EMPTY / 2) / EMPTY));

it(
  'reaches a general solver’s best on each of 200 days, its bound holds, and no plan breaks a rule',
  { timeout: 300_000 },
  () => {
    expect(oracle.days).toHaveLength(200);
    let [proven, least, minutes, fewest, few] = [0, 0, 0, 0, 0];
    for (const { seed, digest, best: raw, grownUp, things } of oracle.days) {
      const problem = madeUpDay(seed, { ideas: oracle.ideas });
      // another day than the one that was solved: run .ci/play-days.mjs
      const now = createHash('sha256').update(JSON.stringify(problem)).digest('hex').slice(0, 16);
      expect([seed, now]).toEqual([seed, digest]);
      const result = planDay(problem);
      const plan = result.kind === 'plan' ? result : result.rest;
      const best = withoutEmpty(raw);
      expect([seed, plan.score, best <= plan.bound]).toEqual([seed, best, true]);
      expect(checkPlan(problem, plan)).toEqual([]);
      // of plans worth the same, the one that asks least of a grown-up is found nearly always, and mostly proven
      expect([seed, plan.grownUpMinutes >= grownUp]).toEqual([seed, true]);
      if (plan.leastGrownUp) expect([seed, plan.grownUpMinutes]).toEqual([seed, grownUp]);
      if (plan.leastGrownUp) proven++;
      minutes += plan.grownUpMinutes;
      fewest += grownUp;
      if (plan.grownUpMinutes > grownUp) continue;
      least++;
      // of those, the one with the fewest things is looked for, and mostly found
      const needed = plan.placements.flatMap(
        ({ idea }) => oracle.ideas.find(({ id }) => id === idea)!.things,
      );
      const count = new Set(needed).size;
      expect([seed, count >= things]).toEqual([seed, true]);
      if (count === things) few++;
    }
    // the same on every engine; a search that is changed may find more of them
    expect([proven, least, minutes, fewest, few]).toEqual([174, 197, 17_880, 17_855, 183]);
  },
);

it('the general solver finds today what is written down', { timeout: 300_000 }, async () => {
  for (const { seed, best } of oracle.days.slice(1, 4)) {
    const highs = await loadHighs();
    const model = dayAsLp(madeUpDay(seed, { ideas: oracle.ideas }), false);
    const { ObjectiveValue } = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    expect([seed, Math.round(ObjectiveValue)]).toEqual([seed, best]);
  }
});

it(
  'the general solver finds today the fewest minutes of a grown-up, and of things, that are written down',
  { timeout: 300_000 },
  async () => {
    const fewest = async (model: string, gap: number) => {
      const highs = await loadHighs();
      return Math.round(highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: gap }).ObjectiveValue);
    };
    for (const { seed, best, grownUp, things } of oracle.days.filter(({ seed: day }) =>
      [2, 109, 112].includes(day),
    )) {
      const problem = madeUpDay(seed, { ideas: oracle.ideas });
      expect([seed, await fewest(dayAsLp(problem, false, best), 4)]).toEqual([seed, grownUp]);
      expect([seed, await fewest(dayAsLp(problem, false, best, grownUp), 0.9)]).toEqual([seed, things]);
    }
  },
);
