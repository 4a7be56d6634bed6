// What must be fetched for a day: of plans that are worth the same, ideas that need what is there anyway.
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import type { DayProblem, HardMoment, Idea, OrdinaryWindow } from '#domain/play/types.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const idea = (id: string, things: string[], more: Partial<Idea> = {}): Idea => ({
  ...EXAMPLE.ideas[0]!,
  ...{ kind: 'draw', energy: 2, minutes: [10, 20], mess: 0, suits: [], moments: ['needle'] },
  ...{ id, things, ...more },
});
const open = (id: string, from: number): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes: 60, energy: 2, propped: true, quiet: false, grownUp: true },
});
const DAY: DayProblem = {
  ...EXAMPLE,
  child: { ...EXAMPLE.child, likes: [], dislikes: [], never: [], ageMonths: 96 },
  room: { ...EXAMPLE.room, things: ['clay', 'paper', 'pen', 'sand'] },
  windows: [open('w', 600), open('v', 900)],
  ...{ lightsOut: 1320, perWindow: 1, events: [] },
};
/** The ideas of a day's plan, in order of time; it keeps all rules and is worth what it says. */
function planned(ideas: Idea[], more: Partial<DayProblem> = {}): string[] {
  const problem = { ...DAY, ...more, ideas };
  const result = planDay(problem);
  const plan = result.kind === 'plan' ? result : result.rest;
  expect([plan.score, checkPlan(problem, plan)]).toEqual([scoreOf(problem, plan.placements), []]);
  return plan.placements.map(({ idea: id }) => id);
}

describe('what must be fetched', () => {
  it('is what another idea needs anyway, where both do as well', () => {
    expect(planned([idea('a', ['clay']), idea('b', ['paper']), idea('c', ['paper'])]).sort()).toEqual([
      'b',
      'c',
    ]);
    const pin = { idea: 'p', window: 'v', from: 900, minutes: 20 };
    const pinned = [idea('a', ['clay']), idea('b', ['paper', 'pen']), idea('p', ['pen', 'paper'])];
    expect(planned(pinned, { pins: [pin] })).toEqual(['b', 'p']);
  });

  it('is as little as can be, and of equals the first by name', () => {
    expect(planned([idea('a', ['clay', 'sand']), idea('b', ['pen'])], { windows: [open('w', 600)] })).toEqual(
      ['b'],
    );
    expect(planned([idea('b', ['clay']), idea('a', ['pen'])], { windows: [open('w', 600)] })).toEqual(['a']);
    expect(planned([idea('a', ['pen']), idea('b', [])], { windows: [open('w', 600)] })).toEqual(['b']);
    const pin = { idea: 'p', window: 'v', from: 900, minutes: 20 };
    // both need nothing that is not there
    const there = [idea('b', ['pen']), idea('a', ['pen', 'paper']), idea('p', ['pen', 'paper'])];
    expect(planned(there, { pins: [pin] })).toEqual(['a', 'p']);
  });

  it('counts nothing against a better plan, a calmer hour or a screen', () => {
    const windows = [open('w', 600)];
    const liked = { ...DAY.child, likes: ['a'] };
    expect(planned([idea('a', ['clay', 'sand']), idea('b', [])], { windows, child: liked })).toEqual(['a']);
    expect(planned([idea('a', ['clay'], { energy: 2 }), idea('b', [], { energy: 1 })], { windows })).toEqual([
      'a',
    ]);
    // a screen that is used up stays out, though it is put away when a lead is
    const limits = { ...DAY.limits, screenMinutes: 0 };
    const away = [idea('a', ['clay'], { cautions: ['cord'] }), idea('b', [], { screen: 'yes' })];
    expect(planned(away, { windows, limits })).toEqual(['a']);
    // after a needle only what is calm may begin, and both are as far from what fits
    const needle: HardMoment = {
      ...{ ...open('m', 600), kind: 'hard', minutes: 20 },
      ...{ procedure: 'needle', weight: 1, freeHands: 1 },
    };
    const after = [
      idea('c', [], { minutes: [20, 20] }),
      ...['a', 'b'].map((id) =>
        idea(id, id === 'a' ? ['clay'] : [], { energy: id === 'a' ? 1 : 3, moments: [] }),
      ),
    ];
    expect(planned(after, { windows: [needle, { ...open('w', 620), minutes: 25 }] })).toEqual(['c', 'a']);
  });

  it('counts for two that fill a moment as for one', () => {
    const moment: HardMoment = {
      ...{ ...open('m', 600), kind: 'hard', minutes: 30 },
      ...{ procedure: 'needle', weight: 1, freeHands: 1 },
    };
    const moments = (some: Idea[]) => planned(some, { windows: [moment] });
    const short = (energy: 1 | 2) => ({ minutes: [15, 15] as const, energy });
    const things = (...all: string[][]) => all.map((list, n) => idea('abc'[n]!, list, short(2)));
    expect(moments(things(['clay'], ['pen'], []))).toEqual(['a', 'c']);
    expect(moments(things(['clay'], ['pen'], ['pen']))).toEqual(['b', 'c']);
    // one that fills it, and two that do as well together and are too short alone
    const alone = (list: string[]) => idea('a', list, { minutes: [30, 30], energy: 1 });
    const two = [idea('b', [], short(2)), idea('c', [], short(1))];
    expect(moments([alone(['clay']), ...two])).toEqual(['b', 'c']);
    expect(moments([alone([]), ...two])).toEqual(['a']);
  });
});
