// What cannot be used is named with its place, its rule and what was seen; what can be used stays just as it was.
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { freeTimeOf, planDay, planSound } from '#domain/play/plan.ts';
import { playSpan } from '#domain/play/feasible.ts';
import type {
  DayProblem,
  HardMoment,
  Idea,
  OrdinaryWindow,
  Placement,
  PlayWindow,
} from '#domain/play/types.ts';
import { pinBroken } from '#domain/play/pins.ts';
import { vetted } from '#domain/play/vet.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const IDEA: Idea = { ...EXAMPLE.ideas[0]!, minutes: [5, 30], moments: ['needle'] };
const idea = (id: string, more: Partial<Idea> = {}): Idea => ({ ...IDEA, id, ...more });
const open = (id: string, from: number, minutes: number): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes, energy: 2, propped: true, quiet: false, grownUp: true },
});
const hard = (id: string, from: number, minutes: number): HardMoment => ({
  ...{ ...open(id, from, minutes), kind: 'hard', procedure: 'needle', weight: 1, freeHands: 1 },
});
const put = (name: string, window: string, from: number, minutes: number): Placement => ({
  ...{ idea: name, window, from, minutes },
});
const DAY: DayProblem = {
  ...EXAMPLE,
  ideas: ['a', 'b', 'c', 'd', 'e'].map((id) => idea(id)),
  windows: [open('w', 600, 60), open('v', 900, 120)],
  lightsOut: 1320,
  perWindow: 3,
};
const told = ({ where, rule, seen }: { where: string; rule: string; seen: unknown }) =>
  `${where}: ${rule}: ${JSON.stringify(seen)}`;

describe('a window', () => {
  const faults = (windows: PlayWindow[], more: Partial<DayProblem> = {}) => {
    const { faults: found, problem } = vetted({ ...DAY, ...more, windows });
    const named = found.map(({ where }) => where);
    // each is used or named, never both
    expect(problem.windows).toEqual(
      [...windows].sort((a, b) => a.from - b.from).filter(({ id }) => !named.includes(`windows › ${id}`)),
    );
    return found.map(told);
  };

  it('lies on the grid of five, has a length, and is over by lights-out', () => {
    expect(faults([open('w', 601, 60)])).toEqual(['windows › w: from: a multiple of 5: 601']);
    expect(faults([open('w', -5, 60)])).toEqual(['windows › w: from: a multiple of 5: -5']);
    expect(faults([open('w', NaN, 60)])).toEqual(['windows › w: from: a multiple of 5: null']);
    expect(faults([open('w', 600, 12)])).toEqual(['windows › w: minutes: a multiple of 5 above 0: 12']);
    expect(faults([open('w', 600, 0)])).toEqual(['windows › w: minutes: a multiple of 5 above 0: 0']);
    expect(faults([open('w', 600, 5)])).toEqual([]);
    expect(faults([open('w', 600, 60)], { lightsOut: 660 })).toEqual([]);
    expect(faults([open('w', 600, 60)], { lightsOut: 659 })).toEqual([
      'windows › w: from: over by lights-out: 600',
    ]);
  });

  it('lies between six in the morning and ten in the evening', () => {
    const late = { lightsOut: 1440 };
    expect(faults([open('w', 360, 60)])).toEqual([]);
    expect(faults([open('w', 355, 60)])).toEqual(['windows › w: from: between 06:00 and 22:00: 355']);
    expect(faults([open('w', 0, 60)])).toEqual(['windows › w: from: between 06:00 and 22:00: 0']);
    expect(faults([open('w', 1260, 60)], late)).toEqual([]);
    expect(faults([hard('w', 1265, 60)], late)).toEqual(['windows › w: from: between 06:00 and 22:00: 1265']);
  });

  it('begins when the one before is over, and not earlier', () => {
    expect(faults([open('w', 600, 60), open('v', 660, 30)])).toEqual([]);
    expect(faults([open('v', 655, 30), open('w', 600, 60)])).toEqual([
      'windows › v: from: after "w" is over: 655',
    ]);
    // one that was left out keeps nobody out, nor does one without a time upset the order of the others
    expect(faults([open('w', 600, 61), open('v', 655, 30)])).toHaveLength(1);
    const timeless = vetted({
      ...DAY,
      windows: [open('w', 700, 60), open('x', NaN, 60), open('v', 600, 60)],
    });
    expect(timeless.faults.map(({ where }) => where)).toEqual(['windows › x']);
    expect(timeless.problem.windows.map(({ id }) => id)).toEqual(['v', 'w']);
  });

  it('leaves each age its sleep; a hard moment comes when it comes', () => {
    // Source: American Academy of Sleep Medicine 2016 (Paruthi et al., doi 10.5664/jcsm.5866), hours in 24, naps included:
    // 11 to 14 at one and two, 10 to 13 from three to five, 9 to 12 from six to twelve, 8 to 10 from thirteen on
    for (const [months, asleep] of [
      [12, 11],
      [35, 11],
      [36, 10],
      [71, 10],
      [72, 9],
      [155, 9],
      [156, 8],
      [215, 8],
    ] as const) {
      const hours = 24 - asleep;
      const child = { ...DAY.child, ageMonths: months };
      expect(playSpan(months)).toBe(hours * 60);
      const end = 360 + hours * 60;
      expect(faults([open('w', 360, 60), open('v', end - 30, 30)], { child })).toEqual([]);
      if (end === 1320) continue;
      const over = `windows › v: from: over ${hours} hours after the first window, for the sake of sleep: ${end - 25}`;
      expect(faults([open('w', 360, 60), open('v', end - 25, 30)], { child })).toEqual([over]);
      expect(faults([open('w', 360, 60), hard('v', end - 25, 30)], { child })).toEqual([]);
    }
    // one long window by itself
    const child = { ...DAY.child, ageMonths: 20 };
    expect(faults([open('w', 360, 785)], { child })).toEqual([
      'windows › w: from: over 13 hours after the first window, for the sake of sleep: 360',
    ]);
  });

  it('has a name of its own, and there are at most sixteen', () => {
    const found = vetted({ ...DAY, windows: [open('w', 600, 60), open('w', 700, 60)] });
    expect(found.faults.map(told)).toEqual(['windows › w: id: used once: "w"']);
    expect(found.problem.windows).toEqual([open('w', 600, 60)]);
    const many = Array.from({ length: 17 }, (_, n) => open(`w-${n}`, 400 + 20 * n, 20));
    expect(faults(many)).toEqual(['windows › w-16: at most 16 windows: 17']);
  });
});

describe('an idea', () => {
  const wrong = (more: object) => {
    const { faults, problem } = vetted({ ...DAY, ideas: [idea('a'), { ...idea('odd'), ...more }] });
    expect(problem.ideas.map(({ id }) => id)).toEqual(faults.length ? ['a'] : ['a', 'odd']);
    return faults.map(told).join();
  };

  it('has minutes and ages that can be, from the least to the most', () => {
    for (const minutes of [[0, 5], [9, 3], [5, 1441], [5], [], undefined])
      expect(wrong({ minutes })).toBe(
        told({ where: 'ideas › odd', rule: 'minutes: least and most', seen: minutes }),
      );
    for (const ages of [[-1, 3], [5, 4], [5], undefined])
      expect(wrong({ ages })).toBe(told({ where: 'ideas › odd', rule: 'ages: from and to', seen: ages }));
    for (const kept of [{ minutes: [1, 1440] }, { minutes: [7, 7] }, { ages: [0, 0] }, { ages: [0, 17] }])
      expect(wrong(kept)).toBe('');
  });

  it('has a kind, whole numbers, lists and what is chosen', () => {
    expect(wrong({ kind: 'sleep' })).toBe('ideas › odd: kind: one of the kinds: "sleep"');
    for (const field of ['hands', 'energy', 'mess', 'noise']) {
      for (const seen of [4, 0.5, '1'])
        expect(wrong({ [field]: seen })).toBe(
          told({ where: 'ideas › odd', rule: `${field}: a whole number`, seen }),
        );
      for (const kept of [0, 1, 2, 3]) expect(wrong({ [field]: kept })).toBe('');
    }
    for (const field of ['things', 'moments', 'suits', 'needs', 'cautions'])
      expect(wrong({ [field]: 'pen' })).toBe(`ideas › odd: ${field}: a list: "pen"`);
    for (const field of ['position', 'who', 'wipe', 'screen'])
      expect(wrong({ [field]: 7 })).toBe(`ideas › odd: ${field}: chosen: 7`);
  });

  it('has a name of its own: the first stays', () => {
    const { faults, problem } = vetted({ ...DAY, ideas: [idea('a'), idea('a', { hands: 2 })] });
    expect(faults.map(told)).toEqual(['ideas › a: id: used once: "a"']);
    expect(problem.ideas).toEqual([idea('a')]);
  });
});

describe('a pin', () => {
  /** Which pins are refused, and by which rules; the others are kept in order of time. */
  const refused = (pins: Placement[], more: Partial<DayProblem> = {}) => {
    const found = vetted({ ...DAY, pins, ...more });
    const gone = found.refused.map(({ pin }) => pin);
    expect(found.problem.pins).toEqual(
      [...pins].sort((a, b) => a.from - b.from).filter((pin) => !gone.includes(pin)),
    );
    return found.refused.map(({ pin, rules }) => `${pin.idea} ${rules.join()}`);
  };

  it('names an idea and a window of the day', () => {
    expect(refused([put('nobody', 'w', 600, 10), put('a', 'nowhere', 600, 10)])).toEqual([
      'nobody unknown',
      'a unknown',
    ]);
  });

  it('has five minutes to the next, told in any order; the earlier stays', () => {
    expect(refused([put('b', 'w', 615, 10), put('a', 'w', 600, 10)])).toEqual([]);
    expect(refused([put('b', 'w', 610, 10), put('a', 'w', 600, 10)])).toEqual(['b H2']);
    expect(refused([put('a', 'w', 600, 10), put('b', 'v', 900, 10)])).toEqual([]);
  });

  it('that breaks a rule by itself is told that rule alone, wherever others stand', () => {
    const ideas = [idea('a'), idea('b', { hands: 2 })];
    expect(refused([put('a', 'w', 600, 10), put('b', 'w', 605, 10)], { ideas })).toEqual(['b H4']);
  });

  it('keeps away from what was done, too', () => {
    const done = [put('a', 'w', 600, 10)];
    expect(refused([put('b', 'w', 610, 10)], { done })).toEqual(['b H2']);
    expect(refused([put('b', 'w', 615, 10)], { done })).toEqual([]);
  });

  it('is one of three in a window, or of as many as the day allows, with what was done', () => {
    const pins = ['a', 'b', 'c', 'd'].map((name, n) => put(name, 'v', 900 + 15 * n, 10));
    const { perWindow: _, ...day } = DAY;
    expect(vetted({ ...day, pins }).refused.map(({ pin }) => pin.idea)).toEqual(['d']);
    expect(refused(pins, { perWindow: 1 })).toEqual(['b H2', 'c H2', 'd H2']);
    expect(refused(pins.slice(1), { perWindow: 2, done: pins.slice(0, 1) })).toEqual(['c H2', 'd H2']);
  });

  it('fits a moment that can still be filled whole', () => {
    const windows = [hard('m', 600, 15), open('v', 900, 120)];
    expect(refused([put('a', 'm', 600, 15)], { windows })).toEqual([]);
    expect(refused([put('a', 'm', 600, 10)], { windows })).toEqual([]);
    expect(refused([put('a', 'm', 600, 10), put('b', 'm', 610, 5)], { windows })).toEqual([]);
    expect(refused([put('a', 'm', 600, 15), put('b', 'm', 610, 5)], { windows })).toEqual(['b H2']);
    // how many a stretch may hold is not said of moments
    const both = [put('a', 'm', 600, 10), put('b', 'm', 610, 5)];
    expect(refused(both, { windows, perWindow: 1 })).toEqual([]);
    // the five minutes before it cannot be filled by an idea that takes ten
    const long = [idea('a'), idea('b', { minutes: [10, 30] })];
    expect(refused([put('a', 'm', 605, 10)], { windows, ideas: long })).toEqual(['a H2']);
    expect(refused([put('a', 'm', 600, 5)], { windows, ideas: long })).toEqual([]);
  });

  it('is none of three at a moment, though two that were done leave room for it', () => {
    const windows = [hard('m', 600, 15), open('v', 900, 120)];
    const done = [put('a', 'm', 600, 5), put('b', 'm', 605, 5)];
    expect(refused([put('c', 'm', 610, 5)], { windows, done })).toEqual(['c H2']);
    expect(refused([put('c', 'm', 605, 10)], { windows, done: done.slice(0, 1) })).toEqual([]);
  });

  it('does not take from a moment what another pin needs for the rest of it, nor the other way round', () => {
    const windows = [open('w', 600, 60), hard('m', 700, 15), open('v', 900, 120)];
    const part = put('a', 'm', 700, 10);
    // only "b" can fill the rest of the moment
    const ideas = [idea('a'), idea('b'), idea('c', { moments: [] })];
    expect(refused([part, put('b', 'v', 900, 10)], { windows, ideas })).toEqual(['b H2']);
    expect(refused([part, put('b', 'w', 600, 10)], { windows, ideas })).toEqual(['a H2']);
    expect(refused([part, put('c', 'w', 600, 10)], { windows, ideas })).toEqual([]);
    // pinned twice, "a" still stands where it stands
    expect(refused([part, put('a', 'v', 900, 10)], { windows, ideas })).toEqual([]);
    // what was done may be forbidden since: it fills its part all the same
    const done = [put('a', 'm', 700, 10)];
    const never = { child: { ...DAY.child, never: ['a'] } };
    expect(refused([put('b', 'm', 710, 5)], { windows, ideas, done, ...never })).toEqual([]);
    // where a moment began and cannot be filled any more, pins elsewhere stay
    expect(refused([put('b', 'v', 900, 10)], { windows, ideas, done })).toEqual([]);
  });

  it('is named where two moments that are both possible need the same idea for the rest', () => {
    const windows = [hard('m', 600, 15), hard('n', 700, 15), open('v', 900, 120)];
    const ideas = [idea('a'), idea('b'), idea('c')];
    const pins = [put('a', 'm', 600, 10), put('b', 'n', 700, 10)];
    const result = planDay({ ...DAY, windows, ideas, pins });
    // one pin is told to go, and the other ideas still fill its moment
    if (result.kind !== 'plan') throw new Error('a moment stayed empty');
    const { placements, refused: gone } = result;
    expect(gone.map(({ rules }) => rules)).toEqual([['H2']]);
    const stays = pins.filter((pin) =>
      placements.some(({ idea: name, from }) => name === pin.idea && from === pin.from),
    );
    expect([...stays, ...gone.map(({ pin }) => pin)].sort((a, b) => a.from - b.from)).toEqual(pins);
    expect(checkPlan({ ...DAY, windows, ideas, pins: stays }, result)).toEqual([]);
    // and so it is on a day on which nothing is long enough for another moment
    const long = planDay({ ...DAY, windows: [...windows, hard('o', 1100, 65)], ideas, pins });
    if (long.kind !== 'impossible') throw new Error('the long moment was filled');
    expect(long.moments.map(({ window }) => window)).toEqual(['o']);
    expect([long.rest.placements, long.rest.refused]).toEqual([placements, gone]);
  });

  it('that is a film on a lead breaks two rules before sleep: the screen’s and the cord’s', () => {
    const ideas = [
      idea('a', { screen: 'yes', cautions: ['cord'] }),
      idea('b', { screen: 'yes' }),
      idea('c', { cautions: ['cord'] }),
    ];
    const late = (name: string) =>
      pinBroken({ ...DAY, ideas, windows: [open('w', 600, 60)], lightsOut: 660 }, put(name, 'w', 600, 10));
    expect(['a', 'b', 'c'].map(late)).toEqual([['H11', 'H6'], ['H11'], ['H6']]);
  });

  it('where two moments want the one idea there is, one stays empty, and no points are promised for it', () => {
    const windows = [hard('m', 600, 15), hard('n', 700, 15), open('v', 900, 120)];
    const result = planDay({ ...DAY, windows, ideas: [idea('a')], pins: [] });
    if (result.kind !== 'impossible') throw new Error('both were filled');
    expect(result.moments).toHaveLength(1);
    const { score, bound, placements } = result.rest;
    expect(placements.map(({ idea: name }) => name)).toEqual(['a']);
    expect(score).toBe(scoreOf({ ...DAY, windows, ideas: [idea('a')], pins: [] }, placements));
    expect(bound - score).toBeLessThan(10);
  });

  it('keeps to the screen minutes of the day; a film at a moment and what was refused are not counted', () => {
    const film = (name: string) => idea(name, { screen: 'yes' });
    const ideas = [film('a'), film('b'), film('c'), idea('d')];
    const windows = [hard('m', 540, 15), open('w', 600, 60), open('v', 900, 120)];
    const limits = { screenMinutes: 30, grownUpMinutes: 240 };
    const day = { ideas, windows, limits };
    const moment = put('c', 'm', 540, 15);
    expect(refused([moment, put('a', 'w', 600, 20), put('b', 'v', 900, 10)], day)).toEqual([]);
    expect(refused([put('a', 'w', 600, 20), put('b', 'v', 900, 15)], day)).toEqual(['b H11']);
    expect(refused([put('a', 'w', 600, 20), put('b', 'v', 900, 15), put('c', 'v', 920, 10)], day)).toEqual([
      'b H11',
    ]);
    expect(refused([put('a', 'w', 600, 30), put('d', 'v', 900, 15)], day)).toEqual([]);
    const child = { ...DAY.child, ageMonths: 40 };
    const hour = { ...day, child, limits: { ...limits, screenMinutes: 240 } };
    expect(refused([put('a', 'v', 900, 30), put('b', 'v', 935, 30)], hour)).toEqual([]);
    expect(refused([put('c', 'w', 600, 5), put('a', 'v', 900, 30), put('b', 'v', 935, 30)], hour)).toEqual([
      'b H11',
    ]);
  });

  it('keeps to what was seen already, too; and what is no film stays, whatever was seen or typed', () => {
    const ideas = [idea('a', { screen: 'yes' }), idea('b', { screen: 'yes' }), idea('c')];
    const windows = [hard('m', 540, 15), open('w', 600, 60), open('v', 900, 120)];
    const limits = { screenMinutes: 30, grownUpMinutes: 240 };
    const seen = { ideas, windows, limits, done: [put('a', 'w', 600, 20)] };
    expect(refused([put('b', 'v', 900, 10)], seen)).toEqual([]);
    expect(refused([put('b', 'v', 900, 15)], seen)).toEqual(['b H11']);
    expect(refused([put('c', 'v', 900, 15)], { ...seen, done: [put('a', 'w', 600, 40)] })).toEqual([]);
    expect(refused([put('c', 'v', 900, 15)], { limits: { ...limits, screenMinutes: -5 } })).toEqual([]);
    // at a moment it was not counted, nor is what is no film
    const other = { ...seen, done: [put('a', 'm', 540, 15), put('c', 'w', 600, 20)] };
    expect(refused([put('b', 'v', 900, 30)], other)).toEqual([]);
    const day = { ...DAY, ...seen, pins: [put('b', 'v', 900, 15)], notBefore: 630 };
    const plan = planDay(day);
    expect(checkPlan(day, plan.kind === 'plan' ? plan : plan.rest)).toEqual([]);
  });

  it('stands once: pinned a second time in one stretch or in two, one of them is named', () => {
    for (const pins of [
      [put('a', 'w', 600, 10), put('a', 'w', 620, 10)],
      [put('a', 'w', 600, 10), put('a', 'v', 920, 10)],
    ]) {
      const result = planDay({ ...DAY, pins });
      if (result.kind !== 'plan') throw new Error('no plan');
      const stays = result.placements.filter(({ idea: name }) => name === 'a');
      expect(result.refused).toEqual([{ pin: expect.anything(), rules: ['H2'] }]);
      expect([...stays, ...result.refused.map(({ pin }) => pin)]).toEqual(expect.arrayContaining(pins));
      expect(stays).toHaveLength(1);
    }
  });

  it('without a time upsets nothing in the order of the others', () => {
    const pins = [put('a', 'w', 620, 10), put('b', 'w', NaN, 10), put('c', 'w', 610, 10)];
    expect(refused(pins)).toEqual(['a H2', 'b H2']);
  });

  it('is over by lights-out, whatever it is', () => {
    const day = { ...DAY, lightsOut: 610 };
    expect(pinBroken(day, put('a', 'w', 600, 10))).toEqual([]);
    expect(pinBroken(day, put('a', 'w', 600, 15))).toEqual(['H6']);
  });
});

describe('what was done', () => {
  it('stays as long as its idea and its window are known, and is forgotten otherwise', () => {
    const known = put('a', 'w', 600, 10);
    const done = [known, put('nobody', 'w', 620, 10), put('b', 'nowhere', 620, 10)];
    expect(vetted({ ...DAY, done }).problem.done).toEqual([known]);
    expect(vetted(DAY).problem.done).toEqual([]);
  });
});

describe('in the middle of the day', () => {
  it('a moment that began stays as far as it came, though nothing is left for the rest of it', () => {
    const windows = [hard('m', 600, 15), open('v', 900, 120)];
    const done = [put('a', 'm', 600, 10)];
    const problem = { ...DAY, windows, done, notBefore: 605, ideas: [idea('a'), idea('b', { moments: [] })] };
    const result = planDay(problem);
    if (result.kind !== 'plan') throw new Error('the moment was told to be empty');
    expect(result.placements[0]).toEqual(done[0]);
    expect(checkPlan(problem, result)).toEqual([]);
    // with something for the rest, it is filled up
    const filled = planDay({ ...problem, ideas: [idea('a'), idea('b')] });
    expect(filled.kind === 'plan' ? filled.placements.slice(0, 2) : []).toEqual([
      done[0],
      put('b', 'm', 610, 5),
    ]);
  });

  it('half an hour that is over was free: what is left of its window may be played', () => {
    for (const [from, minutes, now, played] of [
      [600, 35, 630, true],
      [600, 35, 625, false],
      [900, 35, 930, true],
      [900, 35, 925, false],
      // across noon
      [690, 50, 735, true],
    ] as const) {
      const problem = {
        ...DAY,
        windows: [open('w', from, minutes)],
        notBefore: now,
        ideas: [idea('a', { minutes: [5, 5] })],
      };
      const plan = planDay(problem);
      expect([now, plan.kind === 'plan' && plan.placements.length > 0]).toEqual([now, played]);
    }
  });
});

describe('free time', () => {
  it('is what placements leave of the open stretches, told in order, and never any of a moment', () => {
    const windows = [open('w', 600, 60), hard('m', 660, 15), open('v', 900, 30), open('u', 960, 30)];
    const placements = [put('a', 'w', 610, 10), put('b', 'w', 620, 20), put('c', 'v', 900, 30)];
    expect(freeTimeOf(windows, placements)).toEqual([
      { window: 'w', from: 600, minutes: 10 },
      { window: 'w', from: 640, minutes: 20 },
      { window: 'u', from: 960, minutes: 30 },
    ]);
  });

  it('and a plan together are just the open stretches', () => {
    const result = planDay(EXAMPLE);
    if (result.kind !== 'plan') throw new Error('no plan');
    const open = EXAMPLE.windows.filter(({ kind }) => kind === 'ordinary');
    const ids = open.map(({ id }) => id);
    const played = result.placements.filter(({ window }) => ids.includes(window));
    const sum = (list: readonly { minutes: number }[]) => list.reduce((all, { minutes }) => all + minutes, 0);
    expect(sum(played) + sum(result.free)).toBe(sum(open));
    expect(sum(result.free)).toBeGreaterThan(0);
    // a grown-up is needed for the ceiling alone
    expect(result.grownUpMinutes).toBe(sum(played.filter(({ idea: name }) => name === 'ceiling-map')));
  });

  it('a moment that nothing fits is told by itself, and one that was filled is not', () => {
    const windows = [hard('m', 600, 15), hard('n', 700, 15), open('v', 900, 120)];
    const pins = [put('a', 'm', 600, 15)];
    const result = planDay({ ...DAY, windows, pins, ideas: [idea('a'), idea('b', { moments: [] })] });
    if (result.kind !== 'impossible') throw new Error('something fitted');
    expect(result.moments.map(({ window }) => window)).toEqual(['n']);
    expect(result.rest.placements.map(({ idea: name }) => name)).toEqual(['a', 'b']);
  });

  it('such a moment hides nothing that was typed wrong; what would open it is told by who is asked for it', () => {
    const day = { ...DAY, windows: [hard('m', 600, 15)], ideas: [idea('b', { moments: [] })], pins: [] };
    const found = planSound(day, []);
    expect(found.kind === 'impossible' && found.moments).toEqual([{ window: 'm', relaxations: [] }]);
    const odd = { ...day, windows: [...day.windows, open('w', 600, -5)] };
    const result = planDay(odd);
    expect(result.kind === 'impossible' && result.rest.faults).toEqual(vetted(odd).faults);
    expect(vetted(odd).faults).toHaveLength(1);
  });
});
