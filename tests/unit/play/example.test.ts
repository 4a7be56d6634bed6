// The example of the design, worked out by hand (4-play, 5.5): 32, front-filling 29, then 25, then 16.
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { changesBetween } from '#domain/play-bed/came-up.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { planDay, planWith } from '#domain/play/plan.ts';
import type { DayProblem, Impossible, Placement, Plan } from '#domain/play/types.ts';
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

  const NOW = 9 * 60;
  const ids = (placements: readonly Placement[]) => placements.map(({ idea }) => idea);
  /** The day without its evening: an X-ray from 17:00, 40 minutes. */
  const WITH_XRAY: DayProblem = {
    ...EXAMPLE,
    windows: EXAMPLE.windows.filter(({ id }) => id !== 'w4'),
    events: [...EXAMPLE.events, 17 * 60],
    notBefore: NOW,
  };
  const second = planOf(planWith(WITH_XRAY, first.placements));

  it('an X-ray takes the evening: 25, and nothing else moves', () => {
    expect(shown(second)).toEqual(['w1 sticker-street', 'w2 listen-story', 'w3 short-film']);
    expect([second.score, second.bound]).toEqual([25, 25]);
    const { gone, come, moved } = changesBetween(first.placements, second.placements, NOW);
    expect([ids(gone), come, moved]).toEqual([['ceiling-map'], [], []]);
  });

  it('then no film today: 16, which changes the morning as well and says so', () => {
    const problem = { ...WITH_XRAY, child: { ...WITH_XRAY.child, never: ['short-film'] } };
    const third = planOf(planWith(problem, second.placements));
    expect(shown(third)).toEqual(['w1 ceiling-map', 'w2 sticker-street', 'w3 listen-story']);
    expect([third.score, third.bound]).toEqual([16, 16]);
    expect(checkPlan(problem, third)).toEqual([]);
    const { gone, come, moved } = changesBetween(second.placements, third.placements, NOW);
    expect([ids(gone), ids(come)]).toEqual([['short-film'], ['ceiling-map']]);
    expect(ids(moved.map(({ placement }) => placement))).toEqual(['sticker-street', 'listen-story']);
  });
});
