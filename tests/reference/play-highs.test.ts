// The planner beside HiGHS 1.15.3, a general solver, on the same model written out (tests/helpers/play-lp.ts).
import loadHighs from 'highs';
import { expect, it } from 'vitest';
import { planDay } from '#domain/play/plan.ts';
import { madeUpDay } from '../helpers/play-days.ts';
import { dayAsLp, EMPTY } from '../helpers/play-lp.ts';

const highs = await loadHighs();
const DAYS = 40;

it('agrees with a general solver on the best score, or its bound holds', { timeout: 240_000 }, () => {
  let proven = 0;
  for (let seed = 1; seed <= DAYS; seed++) {
    const problem = madeUpDay(seed, { windows: 4, hard: 1, count: 30 });
    const result = planDay(problem);
    const { score, bound } = result.kind === 'plan' ? result : result.rest;
    // half a point apart is the same, because points are whole
    const solved = highs.solve(dayAsLp(problem, seed % 4 === 0), { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    expect([seed, solved.Status]).toEqual([seed, 'Optimal']);
    const raw = Math.round(solved.ObjectiveValue);
    const best = raw + EMPTY * Math.max(0, -Math.floor((raw + EMPTY / 2) / EMPTY));
    expect([seed, score <= best, best <= bound]).toEqual([seed, true, true]);
    if (score === bound) proven++;
  }
  expect(proven).toBeGreaterThanOrEqual(0.8 * DAYS);
});
