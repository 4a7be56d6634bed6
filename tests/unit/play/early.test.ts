// A good plan is told early, while the best is still looked for.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { planDay, planSound } from '#domain/play/plan.ts';
import { scoreOf } from '#domain/play/objective.ts';
import type { Impossible, Plan } from '#domain/play/types.ts';
import { madeUpDay } from '../../helpers/play-days.ts';
import { cases } from '../../helpers/same-cases.ts';

const planOf = (result: Plan | Impossible) => (result.kind === 'plan' ? result : result.rest);
const quick = { steps: 60, tries: 200, nodes: 300 };

describe('the plan that is told early', () => {
  it('breaks no rule, is worth what it says, keeps most of what the best is worth, and changes nothing about it', () => {
    const shares: number[] = [];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (seed) => {
        const problem = madeUpDay(seed);
        const told: Plan[] = [];
        const whole = planOf(planSound(problem, [], quick, (early) => told.push(planOf(early))));
        expect(whole).toEqual(planOf(planDay(problem, quick)));
        expect(told.length).toBeLessThanOrEqual(1);
        for (const early of told) {
          expect(checkPlan(problem, early)).toEqual([]);
          expect(early.score).toBe(scoreOf(problem, early.placements));
          expect(early.bound).toBeGreaterThanOrEqual(whole.score);
          shares.push(early.score / whole.score);
        }
      }),
      { numRuns: cases(60) },
    );
    expect(shares.length).toBeGreaterThan(cases(60) / 2);
    expect(shares.sort((a, b) => a - b)[shares.length >> 1]).toBeGreaterThan(0.85);
  });
});
