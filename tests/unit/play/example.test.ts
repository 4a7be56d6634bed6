// The example of the design, worked out by hand (4-play, 5.5): 32, front-filling 29, then 25, then 16.
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import { replan } from '#domain/play/replan.ts';
import type { Impossible, Placement, Plan } from '#domain/play/types.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const planOf = (result: Plan | Impossible): Plan => {
  if (result.kind !== 'plan') throw new Error(`no plan: ${JSON.stringify(result.moments)}`);
  return result;
};
const shown = ({ placements }: Plan) => placements.map(({ window, idea }) => `${window} ${idea}`);

describe('a day that can be worked out by hand', () => {
  const first = planOf(planDay(EXAMPLE));

  it('keeps the film for the bandage care: 32, proven', () => {
    expect(shown(first)).toEqual(['w1 sticker-street', 'w2 listen-story', 'w3 short-film', 'w4 ceiling-map']);
    expect([first.score, first.bound]).toEqual([32, 32]);
    expect(checkPlan(EXAMPLE, first)).toEqual([]);
  });

  it('is worth 29 when the day is filled from the front and the film is spent at noon', () => {
    const at = (window: string, idea: string): Placement => {
      const { from } = EXAMPLE.windows.find(({ id }) => id === window)!;
      return { window, idea, from, minutes: window === 'w3' ? 15 : 10 };
    };
    const front = [
      at('w1', 'sticker-street'),
      at('w2', 'short-film'),
      at('w3', 'listen-story'),
      at('w4', 'ceiling-map'),
    ];
    expect(scoreOf(EXAMPLE, front)).toBe(29);
    expect(checkPlan(EXAMPLE, { placements: front })).toEqual([]);
  });

  it('an X-ray takes the evening: 25, and nothing else moves', () => {
    const { result, gone, come } = replan(EXAMPLE, first, 9 * 60, {
      kind: 'taken',
      from: 17 * 60,
      minutes: 40,
    });
    expect(shown(planOf(result))).toEqual(['w1 sticker-street', 'w2 listen-story', 'w3 short-film']);
    expect([planOf(result).score, planOf(result).bound]).toEqual([25, 25]);
    expect(gone.map(({ idea }) => idea)).toEqual(['ceiling-map']);
    expect(come).toEqual([]);
  });

  it('then no film today: 16, which changes the morning as well and says so', () => {
    const xray = replan(EXAMPLE, first, 9 * 60, { kind: 'taken', from: 17 * 60, minutes: 40 });
    const { problem, result, gone, come } = replan(xray.problem, planOf(xray.result), 9 * 60, {
      kind: 'not-today',
      what: 'short-film',
    });
    expect(shown(planOf(result))).toEqual(['w1 ceiling-map', 'w2 sticker-street', 'w3 listen-story']);
    expect([planOf(result).score, planOf(result).bound]).toEqual([16, 16]);
    expect(checkPlan(problem, planOf(result))).toEqual([]);
    expect(gone).toHaveLength(3);
    expect(come).toHaveLength(3);
  });
});
