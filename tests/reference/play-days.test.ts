// Two hundred whole days with the whole library beside HiGHS 1.15.3, a general solver: what it found is kept in
// play-days.json, which .ci/play-days.mjs writes; five of them are solved again here.
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
  days: { seed: number; digest: string; best: number }[];
}
const oracle = JSON.parse(readFileSync(new URL('./play-days.json', import.meta.url), 'utf8')) as Oracle;
const withoutEmpty = (raw: number) => raw + EMPTY * Math.max(0, -Math.floor((raw + EMPTY / 2) / EMPTY));

it(
  'reaches a general solver’s best on each of 200 days, its bound holds, and no plan breaks a rule',
  { timeout: 300_000 },
  () => {
    expect(oracle.days).toHaveLength(200);
    for (const { seed, digest, best: raw } of oracle.days) {
      const problem = madeUpDay(seed, { ideas: oracle.ideas });
      // another day than the one that was solved: run .ci/play-days.mjs
      const now = createHash('sha256').update(JSON.stringify(problem)).digest('hex').slice(0, 16);
      expect([seed, now]).toEqual([seed, digest]);
      const result = planDay(problem);
      const plan = result.kind === 'plan' ? result : result.rest;
      const best = withoutEmpty(raw);
      expect([seed, plan.score, best <= plan.bound]).toEqual([seed, best, true]);
      expect(checkPlan(problem, plan)).toEqual([]);
    }
  },
);

it('the general solver finds today what is written down', { timeout: 300_000 }, async () => {
  for (const { seed, best } of oracle.days.slice(1, 6)) {
    const highs = await loadHighs();
    const model = dayAsLp(madeUpDay(seed, { ideas: oracle.ideas }), false);
    const { ObjectiveValue } = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    expect([seed, Math.round(ObjectiveValue)]).toEqual([seed, best]);
  }
});
