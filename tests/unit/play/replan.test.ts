// Something came up: what it makes of the day, told by hand. What the plan makes of that is in laws.test.ts.
import { describe, expect, it } from 'vitest';
import { inMorning, playCap, sinceMoment } from '#domain/play/feasible.ts';
import { planDay } from '#domain/play/plan.ts';
import { replan, type Change } from '#domain/play/replan.ts';
import type {
  DayProblem,
  HardMoment,
  OrdinaryWindow,
  Placement,
  Plan,
  PlayWindow,
} from '#domain/play/types.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const open = (id: string, from: number, minutes: number): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes, energy: 3, propped: true, quiet: false, grownUp: true },
});
const hard = (id: string, from: number, minutes: number): HardMoment => ({
  ...{ ...open(id, from, minutes), kind: 'hard', procedure: 'needle', weight: 1, freeHands: 1 },
});
const put = (idea: string, window: string, from: number, minutes: number): Placement => ({
  ...{ idea, window, from, minutes },
});
const WINDOWS = [
  open('a', 540, 60),
  hard('m', 600, 10),
  open('b', 610, 50),
  open('c', 700, 60),
  hard('n', 800, 10),
];
const DAY: DayProblem = {
  ...EXAMPLE,
  ideas: ['i', 'j', 'k', 'l'].map((id) => ({
    ...EXAMPLE.ideas[0]!,
    ...{ id, minutes: [5, 30], moments: ['needle', 'bandage'] },
  })),
  windows: WINDOWS,
  events: [540, 690],
};
const planned = (placements: Placement[]): Plan => {
  const result = planDay(EXAMPLE);
  return { ...(result.kind === 'plan' ? result : result.rest), placements };
};
const after = (change: Change, now = 0, placements: Placement[] = [], day: Partial<DayProblem> = {}) =>
  replan({ ...DAY, ...day }, planned(placements), now, change, { steps: 30, tries: 10, nodes: 500 });
const shown = (windows: readonly PlayWindow[]) =>
  windows.map(({ id, from, minutes }) => `${id} ${from}+${minutes}`);
const REST = ['a 540+60', 'm 600+10', 'b 610+50', 'c 700+60', 'n 800+10'];
const NOTHING: Change = { kind: 'not-today', what: 'nothing' };

describe('a stretch of the day that is taken', () => {
  const taken = (from: number, minutes: number) =>
    shown(after({ kind: 'taken', from, minutes }).problem.windows);

  it('leaves what lies before and after it, on the grid, each with a name', () => {
    expect(taken(710, 20)).toEqual([...REST.slice(0, 3), 'c 700+10', 'c-later 730+30', 'n 800+10']);
    expect(taken(712, 20)).toEqual([...REST.slice(0, 3), 'c 700+10', 'c-later 735+25', 'n 800+10']);
    expect(taken(700, 20)).toEqual([...REST.slice(0, 3), 'c 720+40', 'n 800+10']);
    expect(taken(740, 20)).toEqual([...REST.slice(0, 3), 'c 700+40', 'n 800+10']);
    expect(taken(690, 80)).toEqual([...REST.slice(0, 3), 'n 800+10']);
    // five minutes are enough to stay, less are not
    expect(taken(705, 50)).toEqual([...REST.slice(0, 3), 'c 700+5', 'c-later 755+5', 'n 800+10']);
    expect(taken(704, 52)).toEqual([...REST.slice(0, 3), 'n 800+10']);
  });

  it('leaves alone what only touches it, and a moment that meets it is not held', () => {
    expect(taken(660, 40)).toEqual(REST);
    // a moment that is over when it begins, and one that begins when it is over
    expect(taken(610, 50)).toEqual(['a 540+60', 'm 600+10', ...REST.slice(3)]);
    expect(taken(540, 60)).toEqual(REST.slice(1));
    expect(taken(605, 5)).toEqual(['a 540+60', ...REST.slice(2)]);
    expect(taken(590, 15)).toEqual(['a 540+50', ...REST.slice(2)]);
  });

  it('is an event like the others, before which nothing messy ends', () => {
    expect(after({ kind: 'taken', from: 620, minutes: 10 }).problem.events).toEqual([540, 620, 690]);
  });
});

describe('a child who is sore', () => {
  it('has the next two windows calm, the one that it is in among them, and no more', () => {
    const energies = (now: number) =>
      after({ kind: 'sore' }, now).problem.windows.map(({ energy }) => energy);
    expect(energies(0)).toEqual([1, 1, 3, 3, 3]);
    expect(energies(599)).toEqual([1, 1, 3, 3, 3]);
    expect(energies(600)).toEqual([3, 1, 1, 3, 3]);
    expect(energies(805)).toEqual([3, 3, 3, 3, 1]);
  });
});

describe('not today', () => {
  it('is said of one idea or kind, beside what was said before', () => {
    const child = { ...DAY.child, never: ['screen'] };
    const { problem } = after({ kind: 'not-today', what: 'i' }, 0, [], { child });
    expect(problem.child.never).toEqual(['screen', 'i']);
    expect(problem.windows).toEqual(WINDOWS);
  });
});

describe('a hard moment that moves', () => {
  const moved = (from: number) => after({ kind: 'moment-moved', window: 'm', from });

  it('stands in its new place, and what was there makes room', () => {
    expect(shown(moved(720).problem.windows)).toEqual([
      ...['a 540+60', 'b 610+50', 'c 700+20', 'm 720+10', 'c-later 730+30', 'n 800+10'],
    ]);
    expect(shown(moved(605).problem.windows)).toEqual(['a 540+60', 'm 605+10', 'b 615+45', ...REST.slice(3)]);
    expect(shown(moved(500).problem.windows)).toEqual(['m 500+10', 'a 540+60', ...REST.slice(2)]);
  });

  it('loses what was pinned to it; other pins stay unless their time is over', () => {
    const pins = [
      put('i', 'm', 600, 10),
      put('j', 'c', 700, 10),
      put('k', 'a', 540, 10),
      put('l', 'n', 800, 10),
    ];
    const change: Change = { kind: 'moment-moved', window: 'm', from: 680 };
    const kept = after(change, 541, [], { pins }).problem.pins.map(({ idea }) => idea);
    expect(kept).toEqual(['j', 'l']);
    expect(after(NOTHING, 540, [], { pins }).problem.pins).toEqual(pins);
    expect(after(NOTHING, 700, [], { pins }).problem.pins.map(({ idea }) => idea)).toEqual(['j', 'l']);
  });

  it('has to be one of the day', () => {
    expect(() => after({ kind: 'moment-moved', window: 'nowhere', from: 680 })).toThrow(
      'play › replan › moment-moved: no such window, saw "nowhere"',
    );
  });
});

describe('what began before now', () => {
  it('was done; its window reaches as far as it does, and one that would begin before that goes', () => {
    const plan = [put('i', 'a', 540, 20), put('j', 'a', 565, 30), put('k', 'c', 700, 10)];
    const { problem, gone, come, result } = after({ kind: 'taken', from: 580, minutes: 25 }, 570, plan);
    expect(problem.done).toEqual(plan.slice(0, 2));
    expect(problem.notBefore).toBe(570);
    // it was cut at 580, and lasts until 595; the moment at 600 meets the stretch
    expect(shown(problem.windows)).toEqual(['a 540+55', ...REST.slice(2)]);
    const now = result.kind === 'plan' ? result : result.rest;
    expect(now.placements.slice(0, 2)).toEqual(plan.slice(0, 2));
    // what is named is what is still to come
    for (const one of [...gone, ...come]) expect(one.from).toBeGreaterThanOrEqual(570);
  });

  it('stays in a moment that has begun when the rest of it is taken, and is not wanted a second time', () => {
    const plan = [put('i', 'm', 600, 10)];
    const { problem, result } = after({ kind: 'taken', from: 605, minutes: 20 }, 605, plan);
    expect(problem.done).toEqual(plan);
    expect(shown(problem.windows)).toContain('m 600+10');
    const now = result.kind === 'plan' ? result : result.rest;
    expect(now.placements.filter(({ idea }) => idea === 'i')).toEqual(plan);
    // one that has not begun is the ward's to move: it goes
    const later = after({ kind: 'taken', from: 605, minutes: 20 }, 599, plan);
    expect(shown(later.problem.windows).some((one) => one.startsWith('m '))).toBe(false);
  });

  it('ends where a moment is moved to: a moment does not wait', () => {
    const plan = [put('i', 'a', 540, 20), put('j', 'a', 565, 30), put('k', 'c', 700, 10)];
    const { problem, result } = after({ kind: 'moment-moved', window: 'm', from: 580 }, 570, plan);
    expect(shown(problem.windows)).toEqual(['a 540+40', 'm 580+10', 'a-later 590+10', ...REST.slice(2)]);
    expect(problem.done).toEqual([put('i', 'a', 540, 20), put('j', 'a', 565, 15)]);
    const now = result.kind === 'plan' ? result : result.rest;
    expect(now.placements.slice(0, 2)).toEqual(problem.done);
    expect(now.placements.some(({ window }) => window === 'm')).toBe(result.kind === 'plan');
  });

  it('what stays in its window is neither gone nor come, wherever it begins; what begins now is still to come', () => {
    const plan = [put('i', 'a', 540, 30)];
    expect(after(NOTHING, 541, plan).problem.done).toEqual(plan);
    const { problem, gone, come, result } = after({ kind: 'not-today', what: 'i' }, 540, plan, {
      windows: WINDOWS.slice(0, 1),
    });
    expect(problem.done).toEqual([]);
    expect(gone).toEqual(plan);
    const now = result.kind === 'plan' ? result : result.rest;
    expect(now.placements.length).toBeGreaterThan(0);
    expect(come).toEqual(now.placements);
    const pins = [put('j', 'a', 550, 10)];
    const again = after(NOTHING, 0, [put('j', 'a', 540, 5)], { pins, windows: WINDOWS.slice(0, 1) });
    expect([...again.gone, ...again.come].map(({ idea }) => idea)).not.toContain('j');
  });
});

describe('what was begun in a stretch that was taken from its beginning', () => {
  it('is not named: it is no longer to come', () => {
    const plan = [put('i', 'c', 700, 20), put('j', 'n', 800, 10)];
    const { problem, gone } = after({ kind: 'taken', from: 700, minutes: 60 }, 710, plan);
    expect(shown(problem.windows)).toEqual([...REST.slice(0, 3), 'n 800+10']);
    expect(gone.map(({ idea }) => idea)).not.toContain('i');
  });
});

describe('what the planner reads off a day', () => {
  it('how long it is since the last moment was over', () => {
    expect([540, 600, 605, 610, 615, 700, 810, 815].map((from) => sinceMoment(WINDOWS, from))).toEqual([
      ...[Infinity, Infinity, Infinity, 0, 5, 90, 0, 5],
    ]);
  });

  it('of the open stretches six tenths are play, half under six, down to five minutes', () => {
    expect([71, 72].map((months) => playCap(WINDOWS, months))).toEqual([85, 100]);
    expect([71, 72].map((months) => playCap([open('a', 540, 65), hard('m', 605, 60)], months))).toEqual([
      30, 35,
    ]);
  });

  it('the morning is over at noon', () => {
    expect([715, 720].map((from) => inMorning({ from }))).toEqual([true, false]);
  });
});
