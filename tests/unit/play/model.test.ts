// The day as the search sees it, by hand: what may stand where, for how long, what it is worth and what an empty place costs.
import { describe, expect, it } from 'vitest';
import { EMPTY_MOMENT, modelOf } from '#domain/play/model.ts';
import { scoreOf, shortlyBefore } from '#domain/play/objective.ts';
import { FAMILIES, KINDS, type DayProblem, type HardMoment, type Idea } from '#domain/play/types.ts';
import type { OrdinaryWindow, Placement, PlayWindow } from '#domain/play/types.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const IDEA: Idea = {
  ...EXAMPLE.ideas[0]!,
  ...{ kind: 'draw', energy: 2, minutes: [5, 30], moments: ['needle'], suits: [] },
};
const idea = (id: string, more: Partial<Idea> = {}): Idea => ({ ...IDEA, id, ...more });
const open = (id: string, from: number, minutes: number): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes, energy: 2, propped: true, quiet: false, grownUp: true },
});
const hard = (id: string, from: number, minutes: number, more: Partial<HardMoment> = {}): HardMoment => ({
  ...{ ...open(id, from, minutes), kind: 'hard', procedure: 'needle', weight: 1, freeHands: 1 },
  ...more,
});
const put = (name: string, window: string, from: number, minutes: number): Placement => ({
  ...{ idea: name, window, from, minutes },
});
const TERMS = { novelty: true, wish: true, minutes: true, day: true };
const DAY: DayProblem = {
  ...EXAMPLE,
  ideas: ['a', 'b', 'c'].map((id) => idea(id)),
  child: { ...EXAMPLE.child, likes: [], dislikes: [], never: [], ageMonths: 96 },
  windows: [open('w', 600, 60), open('v', 900, 120)],
  ...{ lightsOut: 1320, perWindow: 3, terms: TERMS, events: [] },
  limits: { screenMinutes: 45, grownUpMinutes: 100 },
};
const seen = (more: Partial<DayProblem>, stay: Placement[] = []) => modelOf({ ...DAY, ...more }, stay);
describe('the lengths that are tried', () => {
  const tried = (told: Partial<Idea>, room: number, more: Partial<DayProblem> = {}) =>
    seen({ ideas: [idea('a', told)], windows: [open('w', 600, room)], ...more }).stages[0]!.fillings.map(
      ({ units }) => units[0]! * 5,
    );

  it('are the shortest and the full tens that fit', () => {
    for (let least = 1; least <= 30; least++)
      for (let most = least; most <= 45; most += 3)
        for (const room of [5, 10, 25, 60]) {
          const low = 5 * Math.ceil(least / 5);
          const all = [5, 10, 15, 20, 25, 30, 35, 40, 45].filter(
            (minutes) =>
              minutes === low || (minutes > low && minutes <= Math.max(low, most) && minutes % 10 === 0),
          );
          const fit = all.filter((minutes) => minutes <= room);
          expect([least, most, room, tried({ minutes: [least, most] }, room)]).toEqual([
            ...[least, most, room, fit],
          ]);
        }
  });

  it('are the shortest alone where minutes are left out', () => {
    expect(tried({ minutes: [5, 40] }, 60, { terms: { ...TERMS, minutes: false } })).toEqual([5]);
  });

  it('are over when a film has to be put away, and from now on', () => {
    const film = { minutes: [5, 40], screen: 'yes' } as const;
    expect(tried(film, 60, { lightsOut: 681 })).toEqual([5, 10, 20]);
    expect(tried(film, 60, { lightsOut: 679 })).toEqual([5, 10]);
    expect(tried(film, 60, { lightsOut: 660 })).toEqual([]);
    expect(tried(film, 60, { lightsOut: 700, notBefore: 611 })).toEqual([5, 10, 20]);
    expect(tried({ minutes: [5, 40] }, 60, { notBefore: 631 })).toEqual([5, 10, 20]);
  });
});

describe('an open stretch', () => {
  const shown = (more: Partial<DayProblem>) =>
    seen(more).stages.map(({ from, room, freeFrom, freeEnd, open: isOpen, most, firstCost }) => [
      ...[from, room, freeFrom, freeEnd, isOpen, most, firstCost],
    ]);
  const windows = [open('w', 600, 60)];

  it('holds three, with five minutes between them, or what is left beside its pins', () => {
    expect(shown({ windows })).toEqual([[600, 12, 600, 660, true, 3, 0]]);
    const { perWindow: _, ...unsaid } = DAY;
    expect(modelOf({ ...unsaid, windows }).left).toEqual([3]);
    expect(shown({ windows, perWindow: 2 })[0]).toContain(2);
    const pins = [put('a', 'w', 600, 10), put('b', 'w', 630, 15)];
    const stood = [
      [600, 0, 600, 600, true, 1, 2],
      [600, 2, 600, 600, false, 1, 0],
      [615, 2, 610, 630, true, 1, 2],
      [630, 3, 630, 630, false, 1, 0],
      [650, 2, 645, 660, true, 1, 2],
    ];
    expect(shown({ windows, pins })).toEqual(stood);
    expect(shown({ windows, pins: [...pins].reverse() })).toEqual(stood);
    // what was done comes after what is pinned in the telling, and before it by the clock
    expect(shown({ windows, pins: [pins[1]!], done: [pins[0]!] })).toEqual(stood);
    expect(seen({ windows, pins }).left).toEqual([1]);
    // more were pinned than there may be: nothing is added
    const full = shown({ windows, pins, perWindow: 1 });
    expect(full.map(([, , , , , most]) => most)).toEqual([0, 1, 0, 1, 0]);
    expect(seen({ windows, pins, perWindow: 1 }).left).toEqual([0]);
  });

  it('begins when now is, on the grid, and was free before', () => {
    expect(shown({ windows, notBefore: 611 })).toEqual([[615, 9, 600, 660, true, 3, 0]]);
    expect(shown({ windows, notBefore: 615 })).toEqual([[615, 9, 600, 660, true, 3, 0]]);
    expect(shown({ windows, notBefore: 599 })).toEqual([[600, 12, 600, 660, true, 3, 0]]);
    expect(shown({ windows, notBefore: 700 })[0]!.slice(0, 4)).toEqual([700, 0, 600, 660]);
    // what was done is followed five minutes later, and not before now
    const pins = [put('a', 'w', 610, 10)];
    const froms = (notBefore: number) =>
      shown({ windows, done: pins, notBefore }).map(([from, room]) => [from, room]);
    expect(froms(641)[2]).toEqual([645, 3]);
    expect(froms(615)[2]).toEqual([625, 7]);
  });

  it('left empty on a day that is boring it costs three, if it is long and nothing is pinned in it', () => {
    const cost = (more: Partial<DayProblem>, minutes = 50) =>
      seen({ windows: [open('w', 600, minutes)], bored: true, ...more }).stages.map(
        ({ emptyCost }) => emptyCost,
      );
    expect(cost({})).toEqual([3]);
    expect(cost({}, 45)).toEqual([0]);
    expect(cost({ bored: false })).toEqual([0]);
    expect(cost({ terms: { ...TERMS, day: false } })).toEqual([0]);
    // a pin stays, however little it is worth
    expect(cost({ pins: [put('a', 'w', 600, 5)] })).toEqual([0, EMPTY_MOMENT, 0]);
  });

  it('is calm until ten minutes after a moment', () => {
    const until = (windows: PlayWindow[]) =>
      seen({ windows }).stages.find((stage) => stage.open)!.settleUntil;
    expect(until([hard('m', 590, 10), open('w', 600, 60)])).toBe(610);
    expect(until([hard('m', 590, 10), open('w', 605, 60)])).toBe(610);
    expect(until([hard('m', 500, 10), hard('n', 590, 10), open('w', 605, 60)])).toBe(610);
    // nothing is to settle before the first
    expect(until([open('w', 605, 60), hard('m', 700, 10)])).toBe(-Infinity);
    expect(until([open('w', 605, 60)])).toBe(-Infinity);
  });

  it('a pin is worth what the day counts of it', () => {
    const ideas = [idea('a', { energy: 3 }), idea('b', { minutes: [5, 60] })];
    for (const pins of [
      [put('a', 'w', 600, 5)],
      [put('b', 'w', 605, 25)],
      [put('a', 'w', 600, 10), put('b', 'w', 615, 40)],
    ])
      for (const terms of [TERMS, { ...TERMS, minutes: false }]) {
        const day = { ideas, pins, windows, terms };
        const pinned = seen(day).stages.filter((stage) => !stage.open);
        const worth = pinned.flatMap(({ fillings }) => fillings.map((one) => one.worth));
        expect(worth).toHaveLength(pins.length);
        const bare = { ...DAY, ...day, terms: { ...terms, day: false } };
        expect(worth.reduce((sum, one) => sum + one, 0)).toBe(scoreOf(bare, pins));
      }
  });
});

describe('a hard moment', () => {
  const windows = [hard('m', 600, 20), open('w', 700, 60)];
  const fillings = (more: Partial<DayProblem>, stay: Placement[] = []) => {
    const model = seen({ windows, ...more }, stay);
    return model.stages[0]!.fillings.map(({ ideas, units, worth }) => ({
      name: ideas.map((index) => model.ideas[index]!.id).join(''),
      units,
      worth,
    }));
  };
  const named = (more: Partial<DayProblem>) => fillings(more).map(({ name }) => name);

  it('takes one idea or two, none of which stands elsewhere', () => {
    expect(named({})).toEqual(['a', 'b', 'c', 'ab', 'ac', 'ba', 'bc', 'ca', 'cb']);
    expect(named({ pins: [put('a', 'w', 700, 10)] })).toEqual(['b', 'c', 'bc', 'cb']);
    expect(named({ done: [put('a', 'w', 700, 10)] })).toEqual(['b', 'c', 'bc', 'cb']);
    // beside what is pinned to it, nothing that is pinned elsewhere
    const pins = [put('a', 'm', 600, 10), put('b', 'w', 700, 10)];
    expect(named({ pins })).toEqual(['ac']);
    expect(named({ pins: [put('a', 'm', 600, 10)] })).toEqual(['ab', 'ac']);
    expect(seen({ windows }).left).toEqual([0, 3]);
  });

  it('asks for a grown-up as shortly as can be where only the second idea needs one', () => {
    const parts = (a: Idea['who'], b: Idea['who']) =>
      fillings({ ideas: [idea('a', { who: a }), idea('b', { who: b })] }).map(({ name, units }) => [
        name,
        units,
      ]);
    const alone = ['a', 'b'].map((name) => [name, [4]]);
    expect(parts('alone', 'alone')).toEqual([...alone, ['ab', [1, 3]], ['ba', [1, 3]]]);
    expect(parts('alone', 'adult')).toEqual([...alone, ['ab', [3, 1]], ['ba', [1, 3]]]);
    expect(parts('adult', 'alone')).toEqual([...alone, ['ab', [1, 3]], ['ba', [3, 1]]]);
    expect(parts('adult', 'adult')).toEqual([...alone, ['ab', [1, 3]], ['ba', [1, 3]]]);
  });

  it('has a film over an hour before lights-out, alone, first or second', () => {
    const ideas = [idea('a', { screen: 'yes' }), idea('b', { who: 'adult' })];
    const until = (lightsOut: number) =>
      fillings({ ideas, lightsOut }).map(({ name, units }) => [name, ...units].join(' '));
    expect(until(680)).toEqual(['a 4', 'b 4', 'ab 3 1', 'ba 1 3']);
    expect(until(679)).toEqual(['b 4', 'ab 3 1']);
    expect(until(675)).toEqual(['b 4', 'ab 3 1']);
    expect(until(674)).toEqual(['b 4', 'ab 2 2']);
    expect(until(665)).toEqual(['b 4', 'ab 1 3']);
    expect(until(664)).toEqual(['b 4']);
  });

  it('is worth what the day counts when it stands whole, one idea or two', () => {
    const bare = { terms: { ...TERMS, day: false } };
    const ideas = [idea('a', { suits: ['watch'] }), idea('b', { energy: 3 }), idea('c', { energy: 1 })];
    for (const weight of [1, 2, 3] as const)
      for (const pins of [
        [put('a', 'm', 600, 20)],
        [put('b', 'm', 600, 20)],
        [put('a', 'm', 600, 15), put('b', 'm', 615, 5)],
        [put('b', 'm', 600, 10), put('c', 'm', 610, 10)],
      ]) {
        const day = {
          ...bare,
          ideas,
          windows: [hard('m', 600, 20, { weight, wish: 'watch' }), open('w', 700, 60)],
        };
        const whole = scoreOf({ ...DAY, ...day }, pins);
        // pinned, done, or begun and going on, told in any order
        for (const standing of [
          { pins },
          { done: pins },
          { done: pins.slice(0, 1), pins: pins.slice(1) },
          { pins: [...pins].reverse() },
        ]) {
          const [only, ...others] = fillings({ ...day, ...standing });
          expect(others).toEqual([]);
          expect(only).toEqual({
            name: pins.map(({ idea: name }) => name).join(''),
            units: pins.map(({ minutes }) => minutes / 5),
            worth: whole,
          });
        }
      }
  });

  it('loses points for one kind twice and for mess before an event, if the day counts', () => {
    const ideas = [idea('a', { mess: 1 }), idea('b'), idea('c', { kind: 'talk' })];
    const worths = (day: boolean) =>
      fillings({ ideas, events: [630], terms: { ...TERMS, day } }).map(({ worth }) => worth);
    const counted = worths(true);
    const lost = worths(false).map((worth, n) => worth - counted[n]!);
    // what is messy and ends later than ten past ten ends too shortly before half past: a, b, c, ab, ac, ba, bc, ca, cb
    expect(lost).toEqual([1, 0, 0, 2, 0, 3, 0, 1, 0]);
  });

  it('stays as far as it came where nothing is left for the rest, and what was done elsewhere fills none', () => {
    const ideas = [idea('a'), idea('b', { moments: [] })];
    expect(named({ ideas, done: [put('a', 'm', 600, 10)] })).toEqual(['a']);
    const long = [idea('a'), idea('b', { minutes: [15, 30] })];
    expect(named({ ideas: long, done: [put('a', 'm', 600, 10)] })).toEqual(['a']);
    expect(named({ ideas: [idea('a', { moments: [] })], done: [put('a', 'w', 700, 10)] })).toEqual([]);
    // two moments that began: each as far as it came
    const twice = [hard('m', 600, 20), hard('n', 640, 20), open('w', 700, 60)];
    const done = [put('a', 'm', 600, 10), put('b', 'n', 640, 10)];
    expect(named({ ideas: [idea('a'), idea('b')], windows: twice, done })).toEqual(['a']);
  });

  it('left empty costs more than anything else if something fits, and nothing if nothing fits or it began', () => {
    const cost = (more: Partial<DayProblem>) => {
      const { emptyCost, fillings: ways, open: isOpen } = seen({ windows, ...more }).stages[0]!;
      expect(isOpen).toBe(false);
      return [emptyCost, ways.length > 0];
    };
    expect(cost({})).toEqual([EMPTY_MOMENT, true]);
    expect(cost({ ideas: [idea('a', { moments: [] })] })).toEqual([0, false]);
    expect(cost({ notBefore: 600 })).toEqual([EMPTY_MOMENT, true]);
    expect(cost({ notBefore: 601 })).toEqual([0, false]);
    expect(cost({ notBefore: 601, done: [put('a', 'm', 600, 10)] })).toEqual([EMPTY_MOMENT, true]);
  });
});

describe('what stays where it was', () => {
  const windows = [hard('m', 600, 20), open('w', 700, 60), open('v', 900, 60)];
  const stay = [put('a', 'm', 600, 20), put('b', 'w', 700, 10)];
  const [plain, kept] = [seen({ windows }), seen({ windows }, stay)];

  it('is worth a sixty-fourth of a point more, in its own window alone', () => {
    kept.stages.forEach((stage, s) => {
      stage.fillings.forEach(({ ideas, worth }, n) => {
        const staying = { 0: 'a', 1: 'b' }[stage.window];
        const stays = ideas.some((index) => kept.ideas[index]!.id === staying);
        expect(worth - plain.stages[s]!.fillings[n]!.worth).toBe(stays ? 1 / 64 : 0);
      });
    });
    const both = seen({ windows }, [put('a', 'm', 600, 10), put('b', 'm', 610, 10)]);
    const more = both.stages[0]!.fillings.map(
      ({ worth }, n) => 64 * (worth - plain.stages[0]!.fillings[n]!.worth),
    );
    expect(more).toEqual([1, 1, 0, 2, 1, 2, 1, 1, 1]);
  });
});

describe('the whole day', () => {
  it('knows its ideas in order of name, those that fit somewhere or stand already', () => {
    const ideas = ['c', 'a', 'b'].map((id) => idea(id, id === 'b' ? { hands: 2 } : {}));
    expect(seen({ ideas }).ideas.map(({ id }) => id)).toEqual(['a', 'c']);
    expect(seen({ ideas, done: [put('b', 'w', 600, 10)] }).ideas.map(({ id }) => id)).toEqual([
      'a',
      'b',
      'c',
    ]);
    // one that only a moment takes
    const windows = [hard('m', 600, 20), { ...open('w', 700, 60), grownUp: false }];
    const watched = [idea('a', { who: 'adult' }), idea('b', { who: 'adult', moments: [] })];
    expect(seen({ ideas: watched, windows }).ideas.map(({ id }) => id)).toEqual(['a']);
  });

  it('knows of each its kind, its family, who and what it needs and when it must be over', () => {
    const ideas = KINDS.map((kind, n) =>
      idea(`i-${String(n).padStart(2, '0')}`, {
        kind,
        who: n % 2 ? 'adult' : 'alone',
        screen: n % 3 ? (n % 3 > 1 ? 'call' : 'no') : 'yes',
      }),
    );
    const model = seen({ ideas });
    expect(model.kind).toEqual(KINDS.map((_, n) => n));
    expect(model.grownUp).toEqual(ideas.map(({ who }) => who === 'adult'));
    expect(model.screen).toEqual(ideas.map(({ screen }) => screen === 'yes'));
    expect(model.latest).toEqual(ideas.map(({ screen }) => (screen === 'yes' ? 1260 : 1320)));
    KINDS.forEach((a, n) =>
      KINDS.forEach((b, m) => expect(model.family[n] === model.family[m]).toBe(FAMILIES[a] === FAMILIES[b])),
    );
    expect(Math.max(...model.family)).toBe(4);
    expect([model.budget, model.terms]).toEqual([100, TERMS]);
    const { terms: _, ...unsaid } = DAY;
    expect(modelOf(unsaid).terms).toEqual(TERMS);
  });

  it('has as much play and as many films left as pins and what was done leave', () => {
    const ideas = [idea('a', { screen: 'yes' }), idea('b'), idea('c', { screen: 'yes' })];
    const caps = (more: Partial<DayProblem>) => {
      const { cap, screenCap } = seen({ ideas, ...more });
      return [cap * 5, screenCap * 5];
    };
    // six tenths of three hours
    expect(caps({})).toEqual([105, 45]);
    expect(caps({ pins: [put('a', 'w', 600, 20)] })).toEqual([85, 25]);
    expect(caps({ pins: [put('b', 'w', 600, 20)] })).toEqual([85, 45]);
    expect(caps({ done: [put('a', 'w', 600, 20)], pins: [put('c', 'v', 900, 15)] })).toEqual([70, 10]);
    expect(caps({ done: [put('a', 'w', 600, 60)] })).toEqual([45, 0]);
    expect(caps({ limits: { screenMinutes: 44, grownUpMinutes: 0 } })).toEqual([105, 40]);
    expect(caps({ windows: [open('w', 600, 20)], done: [put('b', 'w', 600, 20)] })).toEqual([0, 45]);
    // a moment is no play, and a film at it is not counted
    const windows = [hard('m', 540, 20), ...DAY.windows];
    expect(caps({ windows, pins: [put('a', 'm', 540, 20)] })).toEqual([105, 45]);
  });

  it('wants half an hour free in each half of the day in which there is one, unless it is over already', () => {
    const wants = (windows: PlayWindow[], more: Partial<DayProblem> = {}) => {
      const { morning, afternoon } = seen({ windows, ...more }).freeWanted;
      return [morning, afternoon];
    };
    expect(wants(DAY.windows as PlayWindow[])).toEqual([true, true]);
    expect(wants([open('w', 600, 30)])).toEqual([true, false]);
    expect(wants([open('w', 600, 25), open('v', 900, 30)])).toEqual([false, true]);
    expect(wants([hard('m', 600, 40), open('v', 900, 25)])).toEqual([false, false]);
    expect(wants([open('w', 715, 30), open('v', 720, 30)])).toEqual([true, true]);
    expect(wants([open('w', 720, 30)])).toEqual([false, true]);
    // what a pin leaves
    const pinned = (from: number) => ({ pins: [put('a', 'w', from, 10)] });
    expect(wants([open('w', 600, 60)], pinned(620))).toEqual([true, false]);
    expect(wants([open('w', 600, 60)], pinned(625))).toEqual([false, false]);
    expect(wants([open('w', 600, 60)], pinned(630))).toEqual([true, false]);
    // free time of the morning begins before noon
    expect(wants([open('w', 690, 60)], pinned(700))).toEqual([true, false]);
    expect(wants([open('w', 690, 75)], pinned(710))).toEqual([false, false]);
    // half an hour that is over was free
    expect(wants([open('w', 600, 60)], { notBefore: 625 })).toEqual([true, false]);
    expect(wants([open('w', 600, 60)], { notBefore: 630 })).toEqual([false, false]);
    expect(wants([open('w', 600, 60), open('u', 680, 40)], { notBefore: 630 })).toEqual([false, false]);
  });

  it('something messy ends too shortly before an event or a moment up to twenty minutes after it', () => {
    const model = seen({ events: [650, 720], windows: [open('w', 600, 30), hard('m', 690, 10)] });
    const messy = [629, 630, 631, 650, 651, 669, 670, 671, 690, 691, 700, 701, 720, 721];
    expect(messy.map((end) => shortlyBefore(model.starts, end))).toEqual([
      ...[false, false, true, true, false, false, false, true, true, false, false, true, true, false],
    ]);
    const bare = seen({ events: [650], terms: { ...TERMS, day: false } });
    expect(shortlyBefore(bare.starts, 640)).toBe(false);
    expect(shortlyBefore(seen({ events: [] }).starts, 640)).toBe(false);
  });
});
