// Where a part of the search may not be off by one: days by hand, on which just so much is there as is asked for.
import { describe, expect, it } from 'vitest';
import { wantedFrom } from '#domain/play/ahead.ts';
import { boardOf, FAMILIES_AT, leave, leaveOnly, NEVER, POINT } from '#domain/play/board.ts';
import { solveAt } from '#domain/play/bound.ts';
import { checkPlan } from '#domain/play/check.ts';
import { modelOf, type Model } from '#domain/play/model.ts';
import { narrow } from '#domain/play/narrow.ts';
import { improveNearby } from '#domain/play/nearby.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import { improvePrices } from '#domain/play/prices.ts';
import { search, type Step } from '#domain/play/search.ts';
import { shareDay } from '#domain/play/share.ts';
import { EFFORT, solve } from '#domain/play/solve.ts';
import type { DayProblem, HardMoment, Idea, OrdinaryWindow } from '#domain/play/types.ts';
import { madeUpDay, madeUpIdeas } from '../../helpers/play-days.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const IDEA: Idea = { ...EXAMPLE.ideas[0]!, minutes: [5, 5], moments: ['needle'], who: 'adult' };
const hard = (id: string, from: number, energy: 1 | 2 | 3): HardMoment => ({
  ...{ kind: 'hard', id, from, minutes: 5, energy, propped: true, quiet: false, grownUp: true },
  ...{ procedure: 'needle', weight: 1, freeHands: 1 },
});

/**
 * Three moments, an idea that suits each, and one that suits the last but is messy, where a meal follows: a point less. All
 * need a grown-up, so the best day is all that the relaxed one can be, to the last grain.
 */
const MOMENTS: DayProblem = {
  ...EXAMPLE,
  ideas: [
    { ...IDEA, id: 'a', kind: 'read', energy: 1 },
    { ...IDEA, id: 'b', kind: 'draw', energy: 2 },
    { ...IDEA, id: 'c', kind: 'calm', energy: 3 },
    { ...IDEA, id: 'd', kind: 'calm', energy: 3, mess: 1 },
  ],
  child: { ...EXAMPLE.child, likes: [], dislikes: [] },
  windows: [hard('m', 600, 1), hard('n', 700, 2), hard('o', 800, 3)],
  events: [805],
  limits: { screenMinutes: 0, grownUpMinutes: 60 },
  terms: { novelty: true, wish: true, minutes: true, day: true },
};

describe('no idea at all', () => {
  it('leaves every stretch free and every hard moment named, each worth what an empty one costs', () => {
    for (const seed of [1, 2, 3]) {
      const day = { ...madeUpDay(seed), ideas: [], pins: [] };
      const found = planDay(day);
      const plan = found.kind === 'plan' ? found : found.rest;
      expect(plan.placements).toEqual([]);
      const hardOnes = day.windows.filter(({ kind }) => kind === 'hard').map(({ id }) => id);
      expect(found.kind === 'plan' ? [] : found.moments.map(({ window }) => window)).toEqual(hardOnes);
      expect(plan.free.map(({ window }) => window)).toEqual(
        day.windows.filter(({ kind }) => kind !== 'hard').map(({ id }) => id),
      );
      expect(plan.bound).toBe(plan.score);
      expect(plan.score).toBe(scoreOf(day, []));
    }
  });
});

describe('three moments', () => {
  it('what is alike but for its ideas is one sort: the search goes through sorts', () => {
    const sorts = boardOf(modelOf(MOMENTS)).squares.map(({ puts }) => [...puts.sort]);
    expect(sorts).toEqual([
      [0, 1, 2, 2],
      [0, 1, 2, 2],
      [0, 1, 2, 2],
    ]);
  });

  it('only what was named is left, where it was named; how often each stood there has a place for each', () => {
    const board = boardOf(modelOf(MOMENTS));
    leaveOnly(board, [
      { stage: 0, idea: 0 },
      { stage: 2, idea: 3 },
      { stage: 2, idea: 1 },
    ]);
    expect(board.squares.map(({ puts }) => [...puts.one])).toEqual([[0], [], [1, 3]]);
    expect(board.often).toHaveLength(3 * 4);
  });

  it('a plan nearby is found that is worth just a point more; without nodes none is looked for', () => {
    const board = boardOf(modelOf(MOMENTS));
    const best = solveAt(board);
    const steps = [0, 1, 3].map((idea, stage): Step => ({ stage, idea, units: 1, from: 600 + 100 * stage }));
    const start = { steps, score: best - POINT };
    expect(improveNearby(board, start, best, 0, POINT)).toEqual({ ...start, nodes: 0 });
    const near = improveNearby(board, start, best, 100, POINT);
    expect([near.score, near.steps.map(({ idea }) => idea)]).toEqual([best, [0, 1, 2]]);
    // what is worth enough is left as it is
    expect(improveNearby(board, { steps: near.steps, score: best }, best, 100, POINT)).toEqual({
      ...{ steps: near.steps, score: best, nodes: 0 },
    });
    // a grain more is looked for only by who counts grains
    const looked = (by: number) =>
      improveNearby(board, { steps: near.steps, score: best }, best + 1, 100, by).nodes;
    expect([looked(POINT), looked(1) > 0]).toEqual([0, true]);
  });

  it('where the relaxed day takes just what there is, the prices stop', () => {
    const board = boardOf(modelOf(MOMENTS));
    const best = solveAt(board);
    const walk = { steps: 60, every: 7, goal: () => best, aim: () => POINT };
    expect(improvePrices(board, walk)).toEqual({ bound: best, taken: 1 });
  });

  it('what it costs that a family is met once comes back with what it brings', () => {
    const model = modelOf(MOMENTS);
    const best = solveAt(boardOf(model));
    for (const family of new Set(model.family)) {
      const board = boardOf(model);
      board.price[model.ideas.length + FAMILIES_AT + family] = -1000;
      const met = [0, 1, 2].filter((idea) => model.family[idea] === family).length;
      expect([family, solveAt(board)]).toEqual([family, best + 1000 * (met - 1)]);
    }
  });

  it('with one idea for all of them, what has not been ruled out is not called the best', () => {
    const one = modelOf({ ...MOMENTS, ideas: MOMENTS.ideas.slice(0, 1) });
    const { score, bound } = solve(one, EFFORT);
    expect(bound).toBe(score);
    const little = solve(one, { steps: 100, tries: 10, nodes: 1000 });
    expect(little.score).toBe(score);
    expect(little.bound).toBeGreaterThan(score);
  });

  it('shared out, they are the best day, also where no less is asked for', () => {
    const board = boardOf(modelOf(MOMENTS));
    const best = solveAt(board);
    const shared = shareDay(board, best);
    expect([shared.score, shared.steps!.map(({ idea }) => idea)]).toEqual([best, [0, 1, 2]]);
    expect(shareDay(board, best + 1).steps).toBeUndefined();
  });
});

describe('two moments', () => {
  // at the first, "c" is worth most, then "b"; at the second nothing comes near "c"
  const day: DayProblem = {
    ...MOMENTS,
    ideas: MOMENTS.ideas.slice(0, 3),
    child: { ...MOMENTS.child, likes: ['c'] },
    windows: [hard('m', 600, 2), hard('n', 700, 3)],
    events: [],
  };
  const found = (problem: DayProblem, width: number) => {
    const board = boardOf(modelOf(problem));
    solveAt(board);
    const { steps, whole } = search(board, NEVER, width);
    return [steps!.map(({ idea }) => problem.ideas[idea]!.id).join(' '), whole];
  };

  it('of one kind cost two points where an hour lies between them, and nothing where it is more', () => {
    const [a, b] = ['a', 'b'].map((id): Idea => ({ ...IDEA, id, kind: 'read', energy: 2 })) as [Idea, Idea];
    const [near, far] = [665, 670].map((from) => {
      const windows = [hard('m', 600, 2), hard('n', from, 2)];
      const board = boardOf(modelOf({ ...day, ideas: [a, b], windows, child: MOMENTS.child }));
      // each is wanted once
      board.price.fill(20 * POINT, 0, 2);
      const best = solveAt(board);
      expect(search(board, NEVER, 30).score).toBe(best);
      narrow(board, best);
      expect([solveAt(board), search(board, best, 30).score]).toEqual([best, best]);
      return best;
    }) as [number, number];
    expect(far - near).toBe(2 * POINT);
  });

  it('the most promising beginnings stay where there is little room, and of equals the first', () => {
    expect([1, 2, 30].map((width) => found(day, width))).toEqual([
      ['c b', false],
      ['b c', false],
      ['b c', true],
    ]);
    const [a, b, c] = day.ideas as [Idea, Idea, Idea];
    // in whatever order they come: here "c" is called "a", and comes first
    const turned = { ...day, ideas: [c, a, b].map((idea, n) => ({ ...idea, id: 'abc'[n]! })) };
    const likesA = { ...turned, child: { ...day.child, likes: ['a'] } };
    expect([1, 2, 30].map((width) => found(likesA, width))).toEqual([
      ['a c', false],
      ['c a', false],
      ['c a', true],
    ]);
    const alike = {
      ...day,
      ideas: ['b', 'd', 'e'].map((id) => ({ ...b, id })),
      windows: [hard('m', 600, 2)],
    };
    expect([1, 2, 30].map((width) => found(alike, width))).toEqual([
      ['b', false],
      ['b', false],
      ['b', true],
    ]);
  });
});

describe('one moment', () => {
  const day = { ...MOMENTS, windows: [hard('m', 600, 2)], events: [] };

  it('of two that are worth the same and share nothing, the first stands', () => {
    const [a, , c] = MOMENTS.ideas as [Idea, Idea, Idea];
    const board = boardOf(modelOf({ ...day, ideas: [a, { ...c, energy: 1 }] }));
    solveAt(board);
    expect(search(board, NEVER, 30).steps!.map(({ idea }) => idea)).toEqual([0]);
  });

  it('shared out, it is filled, however little the child likes what there is', () => {
    const child = { ...MOMENTS.child, dislikes: ['a'] };
    const history = { yesterday: ['a'], lastThreeDays: ['a'] };
    const [a] = MOMENTS.ideas as [Idea];
    const board = boardOf(modelOf({ ...day, ideas: [{ ...a, energy: 1 }], child, history }));
    expect(solveAt(board)).toBeLessThan(0);
    expect(shareDay(board, NEVER).steps!.map(({ idea }) => idea)).toEqual([0]);
  });

  it('what has a price and can stand nowhere any more is lost, and the others stand', () => {
    const board = boardOf(modelOf(day));
    solveAt(board);
    const best = search(board, NEVER, 30);
    expect(best.steps!.map(({ idea }) => idea)).toEqual([1]);
    board.price[0] = POINT;
    leave(board, 0, (idea) => idea !== 0);
    solveAt(board);
    expect(search(board, best.score, 30).steps).toEqual(best.steps);
  });
});

describe('a moment late in the evening', () => {
  const late = { ...hard('m', 1200, 1), minutes: 10, weight: 3 as const };
  // the film must be put away before the moment is over, and neither lasts for the whole of it
  const day: DayProblem = {
    ...MOMENTS,
    ideas: [MOMENTS.ideas[0]!, { ...IDEA, id: 'film', kind: 'screen', energy: 1, screen: 'yes' }],
    windows: [late],
    events: [],
    lightsOut: 1265,
    limits: { screenMinutes: 30, grownUpMinutes: 60 },
  };
  const board = boardOf(modelOf(day));

  it('is filled by the film and then, whichever comes first by name, by the other: that one ends it, and is wanted', () => {
    const { puts, sorts } = board.squares[0]!;
    expect([[...puts.one], [...puts.two]]).toEqual([[1], [0]]);
    const { kind } = board.model;
    expect([sorts.kind[puts.sort[0]!], sorts.last[puts.sort[0]!]]).toEqual([kind[1], kind[0]]);
    board.price.set([3 * POINT, POINT]);
    solveAt(board);
    expect(puts.net[0]).toBe(puts.worth[0]! - 4 * POINT);
    board.price.fill(0);
    board.forced[0] = 1;
    const { masks, last } = wantedFrom(board);
    expect([masks.map(([bits]) => bits), last]).toEqual([
      [0b11, 0],
      [[0], []],
    ]);
  });

  it('keeps both when the day is shared out', () => {
    board.forced.fill(0);
    solveAt(board);
    expect(shareDay(board, NEVER).steps!.map(({ idea, from }) => [idea, from])).toEqual([
      [1, 1200],
      [0, 1205],
    ]);
  });

  it('takes both, and then there is nothing for the moment before it', () => {
    const film: Step = { stage: 1, idea: 1, units: 1, from: 1200 };
    const both = boardOf(modelOf({ ...day, windows: [hard('n', 1100, 1), late] }));
    solveAt(both);
    const { steps, whole } = search(both, NEVER, 30);
    expect([steps, whole]).toEqual([[film, { ...film, idea: 0, from: 1205 }], true]);
  });
});

describe('what a better beginning uses up', () => {
  const open = (
    id: string,
    from: number,
    minutes: number,
    more: Partial<OrdinaryWindow>,
  ): OrdinaryWindow => ({
    ...{ kind: 'ordinary', id, from, minutes, energy: 2, propped: false, quiet: false, grownUp: false },
    ...more,
  });
  const idea = (id: string, minutes: number, more: Partial<Idea> = {}): Idea => ({
    ...{ ...IDEA, id, kind: 'read', energy: 2, who: 'alone', position: 'propped' },
    ...{ minutes: [minutes, minutes], ...more },
  });
  const best = (problem: DayProblem, more: Partial<Model>) => {
    const board = boardOf({ ...modelOf(problem), ...more });
    solveAt(board);
    return search(board, NEVER, 30).steps!.map(({ idea: at }) => problem.ideas[at]!.id);
  };
  // "x" is worth more than "y", but only "y" leaves enough for "z" in the second stretch
  const day = (x: number, y: number, z: number, minutes: number, film?: 'yes'): DayProblem => ({
    ...{ ...MOMENTS, events: [], bored: false, perWindow: 1 },
    child: { ...MOMENTS.child, likes: ['x', 'z'] },
    ideas: [
      idea('x', x, film && { screen: film }),
      idea('y', y),
      idea('z', z, { kind: 'draw', who: 'adult', position: 'both', ...(film && { screen: film }) }),
    ],
    windows: [
      open('w', 600, minutes, { propped: true }),
      open('v', 600 + minutes + 15, minutes, { grownUp: true }),
    ],
  });

  it('minutes of play and of films, the half-hour that stays free, the places of a window', () => {
    expect(best(day(10, 5, 10, 25), { cap: 4 })).toEqual(['x', 'z']);
    expect(best(day(10, 5, 10, 25), { cap: 3 })).toEqual(['y', 'z']);
    expect(best(day(10, 10, 10, 25, 'yes'), { cap: 9, screenCap: 4 })).toEqual(['x', 'z']);
    expect(best(day(10, 10, 10, 25, 'yes'), { cap: 9, screenCap: 2 })).toEqual(['y', 'z']);
    const halfHour = { cap: 9, freeWanted: { morning: true, afternoon: false } };
    expect(best(day(10, 5, 15, 40), halfHour)).toEqual(['x', 'z']);
    expect(best(day(15, 5, 15, 40), halfHour)).toEqual(['y', 'z']);
    // before the pin there is room for "x" alone, after it "x" would be too late
    const whole = {
      ...day(10, 5, 15, 60),
      ideas: [idea('x', 10), idea('y', 5), idea('z', 15, { kind: 'draw', energy: 2 })],
      child: { ...MOMENTS.child, likes: ['z'] },
      windows: [open('w', 600, 60, { propped: true })],
      pins: [{ idea: 'y', window: 'w', from: 615, minutes: 5 }],
    };
    const late = { cap: 9, latest: [610, 700, 700], freeWanted: { morning: false, afternoon: false } };
    expect(best({ ...whole, perWindow: 3 }, late)).toEqual(['x', 'y', 'z']);
    expect(best({ ...whole, perWindow: 2 }, late)).toEqual(['y', 'z']);
  });

  it('what adds nothing and takes nothing stands nevertheless, since that plan begins sooner', () => {
    const problem: DayProblem = {
      ...day(5, 5, 10, 25),
      ideas: [
        idea('x', 5, { things: [] }),
        idea('y', 5, { energy: 1, things: [] }),
        idea('z', 10, { who: 'adult', position: 'both', things: [] }),
      ],
      child: { ...MOMENTS.child, dislikes: ['y'], likes: ['z'] },
      windows: [
        open('u', 480, 25, { propped: true }),
        ...[open('w', 600, 25, { propped: true }), open('v', 900, 25, { grownUp: true })],
      ],
      pins: [{ idea: 'x', window: 'u', from: 480, minutes: 5 }],
    };
    const result = planDay(problem);
    const { placements, score } = result.kind === 'plan' ? result : result.rest;
    expect(placements.map(({ idea: id }) => id)).toEqual(['x', 'y', 'z']);
    expect(scoreOf(problem, [placements[0]!, placements[2]!])).toBe(score);
  });

  it('two that are short take the place that "z" wants, though they leave as much play as one that is long', () => {
    // films must be over by 615, as lights-out is then an hour off
    const two: Partial<Idea> = { energy: 1, screen: 'yes' };
    const problem: DayProblem = {
      ...{ ...MOMENTS, events: [], bored: false, perWindow: 3 },
      ideas: [
        idea('u', 5, two),
        idea('v', 10, { screen: 'yes' }),
        idea('x', 5, { ...two, kind: 'listen' }),
        idea('y', 5, { kind: 'talk' }),
        idea('z', 20, { kind: 'draw' }),
      ],
      child: { ...MOMENTS.child, likes: ['u', 'v', 'x', 'z'] },
      history: { yesterday: [], lastThreeDays: ['v'] },
      windows: [open('w', 600, 60, { propped: true })],
      pins: [{ idea: 'y', window: 'w', from: 620, minutes: 5 }],
      lightsOut: 675,
    };
    const roomy = { cap: 9, screenCap: 9, freeWanted: { morning: false, afternoon: false } };
    expect(best({ ...problem, perWindow: 4 as 3 }, roomy)).toEqual(['u', 'x', 'y', 'z']);
    expect(best(problem, roomy)).toEqual(['v', 'y', 'z']);
  });
});

describe('six stretches', () => {
  it('no two ideas that could change places for nothing stand the wrong way round, however far apart', () => {
    let asked = 0;
    for (const seed of [7, 20, 22, 33, 35, 40]) {
      const day = madeUpDay(seed, { windows: 6, hard: 1, ideas: madeUpIdeas(9, seed) });
      const result = planDay(day);
      const { placements, score } = result.kind === 'plan' ? result : result.rest;
      placements.forEach((one, n) => {
        for (const two of placements.slice(n + 1)) {
          const turned = placements.map((other) =>
            other === one ? { ...one, idea: two.idea } : other === two ? { ...two, idea: one.idea } : other,
          );
          if (checkPlan(day, { placements: turned }).length || scoreOf(day, turned) < score) continue;
          expect([seed, one.idea < two.idea]).toEqual([seed, true]);
          asked++;
        }
      });
    }
    expect(asked).toBeGreaterThan(5);
  });
});
