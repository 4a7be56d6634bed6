// A day as told, by hand: each thing just possible and just not, and how carefully each five minutes are read; then whole
// days beside a second reading of what `windowsOf` says it does.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windowsOf, type DaySketch, type Stretch } from '#domain/play/day.ts';
import { cases } from '../../helpers/same-cases.ts';

type Event = DaySketch['events'][number];
type Moment = DaySketch['moments'][number];
const DAY: DaySketch = {
  ...{ wake: 420, lightsOut: 1200, events: [], moments: [], propped: [], quiet: [], grownUp: [], energy: [] },
};
const NEEDLE = { procedure: 'needle', weight: 2, freeHands: 1 } as const;
const event = (id: string, from: number, minutes: number): Event => ({ id, from, minutes });
const needle = (id: string, from: number, minutes: number, more: Partial<Moment> = {}): Moment => ({
  ...{ id, from, minutes, ...NEEDLE },
  ...more,
});
const endOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;
/** What is said of a day, and what of it is kept. */
const read = (more: Partial<DaySketch>, ageMonths?: number) => {
  const { windows, events, faults } = windowsOf({ ...DAY, ...more }, ageMonths);
  return {
    said: faults.map(({ where, rule, seen }) => `${where}: ${rule}: ${String(seen)}`),
    events,
    hard: windows.filter(({ kind }) => kind === 'hard').map(({ id, from, minutes }) => [id, from, minutes]),
    open: windows.filter(({ kind }) => kind === 'ordinary').map((one) => [one.from, endOf(one)]),
    windows,
  };
};
const said = (more: Partial<DaySketch>) => read(more).said;

describe('a day', () => {
  it('wakes and sleeps at minutes of the day, and wakes first', () => {
    expect(said({ wake: 0, lightsOut: 1440 })).toEqual([]);
    expect(said({ wake: -1 })).toEqual(['day › wake: a minute of the day: -1']);
    expect(said({ wake: NaN, lightsOut: 1441 })).toEqual([
      'day › wake: a minute of the day: NaN',
      'day › lightsOut: a minute of the day: 1441',
    ]);
    expect(said({ wake: 600, lightsOut: 601 })).toEqual([]);
    expect(said({ wake: 600, lightsOut: 600 })).toEqual(['day › lightsOut: lightsOut: after waking: 600']);
    const refused = windowsOf({ ...DAY, wake: 600, lightsOut: 600, events: [event('meal', 700, 30)] });
    expect([refused.windows, refused.events]).toEqual([[], []]);
  });

  it('is open from the first five minutes after waking to the last before lights-out, six to ten at most', () => {
    expect(read({ wake: 422, lightsOut: 1203 }).open).toEqual([[425, 1200]]);
    expect(read({ wake: 420, lightsOut: 1205 }).open).toEqual([[420, 1205]]);
    expect(read({ wake: 242, lightsOut: 1439 }).open).toEqual([[360, 1320]]);
    // the hours that an age may be awake count from the five minutes in which the child woke
    expect(read({ wake: 422, lightsOut: 1300 }, 20).open).toEqual([[425, 1200]]);
    expect(read({ wake: 300, lightsOut: 1300 }, 20).open).toEqual([[360, 1140]]);
  });
});

describe('what is fixed', () => {
  it('has a time and a length', () => {
    for (const from of [NaN, Infinity, -Infinity])
      expect(said({ events: [event('meal', from, 30)], moments: [needle('n', from, 10)] })).toEqual([
        `moments › n: from: a minute of the day: ${from}`,
        `events › meal: from: a minute of the day: ${from}`,
      ]);
    for (const minutes of [0, -5, NaN, Infinity])
      expect(said({ events: [event('meal', 600, minutes)], moments: [needle('n', 700, minutes)] })).toEqual([
        `moments › n: minutes: above 0: ${minutes}`,
        `events › meal: minutes: above 0: ${minutes}`,
      ]);
    expect(said({ events: [event('meal', 600, 0.5)], moments: [needle('n', 700, 1)] })).toEqual([]);
  });

  it('lies between waking and lights-out', () => {
    expect(said({ events: [event('meal', 420, 30), event('wash', 1170, 30)] })).toEqual([]);
    expect(said({ moments: [needle('n', 420, 30), needle('m', 1170, 30)] })).toEqual([]);
    expect(said({ events: [event('meal', 419, 30), event('wash', 1170, 31)] })).toEqual([
      'events › meal: from: between waking and lights-out: 419',
      'events › wash: from: between waking and lights-out: 1170',
    ]);
    expect(said({ moments: [needle('n', 419, 30), needle('m', 1170, 31)] })).toEqual([
      'moments › n: from: between waking and lights-out: 419',
      'moments › m: from: between waking and lights-out: 1170',
    ]);
  });

  it('a moment lies between six and ten on the grid, too, and an event may lie outside', () => {
    const late = { wake: 300, lightsOut: 1400 };
    const told = { ...late, moments: [needle('n', 360, 10), needle('m', 1310, 10)] };
    expect(said(told)).toEqual([]);
    expect(said({ ...late, moments: [needle('n', 359, 30), needle('m', 1310, 11)] })).toEqual([
      'moments › n: from: between 06:00 and 22:00: 359',
      'moments › m: from: between 06:00 and 22:00: 1310',
    ]);
    expect(read({ ...late, events: [event('meal', 310, 30), event('wash', 1350, 10)] }).events).toEqual([
      310, 1350,
    ]);
  });

  it('may touch what comes before it and not begin earlier; the earlier stays, and of one minute the first by name', () => {
    expect(said({ events: [event('meal', 600, 30), event('wash', 630, 10)] })).toEqual([]);
    expect(said({ events: [event('wash', 629, 10), event('meal', 600, 30)] })).toEqual([
      'events › wash: from: nothing else at that time: 629',
    ]);
    for (const events of [
      [event('a', 600, 10), event('b', 600, 20)],
      [event('b', 600, 20), event('a', 600, 10)],
    ])
      expect(said({ events })).toEqual(['events › b: from: nothing else at that time: 600']);
    // of one name and one minute the first told
    const twice = [event('a', 600, 10), event('a', 600, 20), event('b', 615, 5)];
    expect(read({ events: twice }).events).toEqual([600, 615]);
    expect(said({ events: twice })).toHaveLength(1);
  });

  it('without a time upsets nothing in the order of the others', () => {
    const events = [event('a', 720, 30), event('b', NaN, 30), event('c', 710, 30)];
    for (const told of [events, [...events].reverse(), [events[1]!, events[0]!, events[2]!]])
      expect(said({ events: told })).toEqual([
        'events › a: from: nothing else at that time: 720',
        'events › b: from: a minute of the day: NaN',
      ]);
  });

  it('a moment takes the whole fives that it touches, from events and from other moments', () => {
    expect(read({ moments: [needle('n', 602, 6)] }).hard).toEqual([['n', 600, 10]]);
    expect(read({ moments: [needle('n', 600, 10)] }).hard).toEqual([['n', 600, 10]]);
    const two = read({ moments: [needle('n', 602, 6), needle('m', 609, 5)] });
    expect(two.said).toEqual(['moments › m: from: nothing else at that time: 609']);
    expect(read({ moments: [needle('n', 602, 6), needle('m', 610, 5)] }).said).toEqual([]);
    expect(said({ moments: [needle('n', 602, 6)], events: [event('meal', 598, 3)] })).toEqual([
      'events › meal: from: nothing else at that time: 598',
    ]);
    expect(said({ moments: [needle('n', 602, 6)], events: [event('meal', 597, 3)] })).toEqual([]);
  });

  it('a moment has a name of its own, and there are at most sixteen', () => {
    const many = Array.from({ length: 17 }, (_, n) => needle(`n-${n}`, 430 + 20 * n, 10));
    const { hard, open, said: told } = read({ moments: many });
    expect(told).toEqual(['moments › n-16: at most 16 windows: 17']);
    expect([hard.length, open.length]).toEqual([16, 0]);
    expect(read({ moments: many.slice(0, 16) }).said).toEqual([]);
    // one that was refused leaves its name and its time to others
    expect(said({ moments: [needle('n', 410, 30), needle('n', 425, 10)] })).toEqual([
      'moments › n: from: between waking and lights-out: 410',
    ]);
  });

  it('two events within one five minutes begin one stretch of what is fixed', () => {
    expect(read({ events: [event('a', 720, 2), event('b', 722, 3), event('c', 726, 2)] }).events).toEqual([
      720, 725,
    ]);
  });
});

describe('a stretch that is told', () => {
  it('ends after it begins; if not, it is named and says nothing', () => {
    for (const name of ['propped', 'quiet', 'grownUp'] as const) {
      const good = { from: 600, until: 630 };
      for (const [from, until] of [
        [602, 602],
        [604, 601],
        [NaN, 700],
        [700, NaN],
      ] as const) {
        const { said: told, windows } = read({ [name]: [good, { from, until }] });
        expect(told).toEqual([`${name} › 2: until: after from: ${until}`]);
        expect(windows).toEqual(read({ [name]: [good] }).windows);
        expect(windows).toHaveLength(3);
        const alone = read({ [name]: [{ from, until }] });
        expect(alone.open).toEqual([[420, 1200]]);
        expect(alone.windows[0]![name]).toBe(false);
      }
      expect(said({ [name]: [{ from: 602, until: 603 }] })).toEqual([]);
    }
  });

  it('a mood is 1, 2 or 3 from a minute on; another is named and changes nothing', () => {
    for (const energy of [0, 4, 1.5, NaN]) {
      const steps = [
        { from: 600, energy: 3 },
        { from: 700, energy },
      ] as DaySketch['energy'];
      const { said: told, windows } = read({ energy: steps });
      expect(told).toEqual([`energy › 2: energy: 1, 2 or 3: ${energy}`]);
      expect(windows.map(({ energy: felt }) => felt)).toEqual([2, 3]);
    }
    expect(said({ energy: [{ from: NaN, energy: 1 }] })).toEqual(['energy › 1: energy: 1, 2 or 3: 1']);
    expect(said({ energy: [{ from: 600, energy: 1 }] })).toEqual([]);
  });
});

describe('five minutes', () => {
  const stretches = (name: 'propped' | 'quiet' | 'grownUp', told: Stretch[]) =>
    read({ [name]: told })
      .windows.filter((one) => one[name])
      .map((one) => [one.from, endOf(one)]);

  it('have the head up and a grown-up only if one stretch holds them all', () => {
    for (const name of ['propped', 'grownUp'] as const) {
      expect(stretches(name, [{ from: 600, until: 630 }])).toEqual([[600, 630]]);
      expect(stretches(name, [{ from: 601, until: 629 }])).toEqual([[605, 625]]);
    }
  });

  it('are quiet if one of them is', () => {
    expect(stretches('quiet', [{ from: 600, until: 630 }])).toEqual([[600, 630]]);
    expect(stretches('quiet', [{ from: 604, until: 626 }])).toEqual([[600, 630]]);
  });

  it('are as tired as the most tired of them, and neither alert nor tired before anything is said', () => {
    const felt = (energy: DaySketch['energy']) =>
      read({ energy }).windows.map((one) => [one.from, one.energy]);
    expect(felt([])).toEqual([[420, 2]]);
    expect(
      felt([
        { from: 722, energy: 3 },
        { from: 723, energy: 2 },
        { from: 600, energy: 1 },
        { from: 500, energy: 3 },
      ]),
    ).toEqual([
      [420, 2],
      [500, 3],
      [600, 1],
      [725, 2],
    ]);
    expect(
      felt([
        { from: 603, energy: 1 },
        { from: 605, energy: 3 },
      ]),
    ).toEqual([
      [420, 2],
      [600, 1],
      [605, 3],
    ]);
    // said twice of one minute, the later word counts
    expect(
      felt([
        { from: 600, energy: 1 },
        { from: 600, energy: 3 },
      ]),
    ).toEqual([
      [420, 2],
      [600, 3],
    ]);
  });
});

describe('a hard moment', () => {
  const at = (more: Partial<DaySketch>, moment: Partial<Moment> = {}) =>
    read({ moments: [needle('n', 600, 15, moment)], ...more }).windows.find(({ id }) => id === 'n');
  const PLAIN = {
    ...{ kind: 'hard', id: 'n', from: 600, minutes: 15, ...NEEDLE },
    ...{ energy: 2, propped: false, quiet: false, grownUp: false },
  };

  it('is told whole, with a wish only where there is one', () => {
    expect(at({})).toStrictEqual(PLAIN);
    expect(at({}, { wish: 'watch' })).toStrictEqual({ ...PLAIN, wish: 'watch' });
  });

  it('is propped and has a grown-up if it is so throughout, is quiet if some of it is, and is as tired as its most tired part', () => {
    for (const [from, until, whole] of [
      [600, 615, true],
      [605, 615, false],
      [600, 610, false],
      [595, 620, true],
    ] as const) {
      const stretch = [{ from, until }];
      expect(at({ propped: stretch, grownUp: stretch })).toEqual({
        ...{ ...PLAIN, propped: whole, grownUp: whole },
      });
    }
    for (const [from, until, some] of [
      [590, 600, false],
      [590, 601, true],
      [614, 620, true],
      [615, 620, false],
    ] as const)
      expect(at({ quiet: [{ from, until }] })).toEqual({ ...PLAIN, quiet: some });
    const tired = (from: number) =>
      at({
        energy: [
          { from: 420, energy: 3 },
          { from, energy: 1 },
          { from: from + 1, energy: 2 },
        ],
      })?.energy;
    expect([598, 600, 614, 615].map(tired)).toEqual([2, 1, 1, 3]);
  });

  it('has a grown-up if somebody said so, whatever the stretches say', () => {
    const throughout = { grownUp: [{ from: 420, until: 1200 }] };
    expect(at({}, { grownUp: true })?.grownUp).toBe(true);
    expect(at(throughout, { grownUp: false })?.grownUp).toBe(false);
    expect(at(throughout)?.grownUp).toBe(true);
    expect(at(throughout, { grownUp: true })?.grownUp).toBe(true);
  });
});

describe('a name', () => {
  it('says when the window begins, and is nobody else’s', () => {
    const names = (moments: Moment[], events: Event[] = []) =>
      read({ moments, events }).windows.map(({ id }) => id);
    expect(names([], [event('meal', 720, 35)])).toEqual(['w-0700', 'w-1235']);
    expect(names([needle('w-0700', 600, 10)])).toEqual(['w-0700-open', 'w-0700', 'w-1010']);
    const both = [needle('w-0700', 600, 10), needle('w-0700-open', 700, 10)];
    expect(names(both)[0]).toBe('w-0700-open-open');
  });
});

const partsOf = (minLength: number, maxLength: number, longestGap: number, longest: number) =>
  fc.array(
    fc.record({
      gap: fc.integer({ min: 0, max: longestGap }),
      minutes: fc.integer({ min: 1, max: longest }),
      hard: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
    }),
    { minLength, maxLength },
  );

/** A day in which everything told is possible: each thing after the one before, with or without a gap. */
const possible: fc.Arbitrary<DaySketch> = fc
  .record({
    wake: fc.integer({ min: 340, max: 480 }),
    parts: fc.oneof(partsOf(0, 14, 70, 30), partsOf(20, 30, 36, 9)),
    cuts: fc.array(
      fc.record({
        name: fc.constantFrom('propped' as const, 'quiet' as const, 'grownUp' as const),
        from: fc.integer({ min: 300, max: 1300 }),
        minutes: fc.integer({ min: 1, max: 200 }),
      }),
      { maxLength: 18 },
    ),
    energy: fc.uniqueArray(
      fc.record({
        from: fc.integer({ min: 300, max: 1300 }),
        energy: fc.constantFrom(1 as const, 2 as const, 3 as const),
      }),
      { maxLength: 8, selector: ({ from }) => from },
    ),
  })
  .map(({ wake, parts, cuts, energy }) => {
    const events: Event[] = [];
    const moments: Moment[] = [];
    let at = Math.max(wake, 360);
    parts.forEach(({ gap, minutes, hard }, n) => {
      const from = at + gap;
      if (from + minutes > 1290) return;
      if (hard) moments.push(needle(`n-${n}`, from, minutes));
      else events.push(event(`e-${n}`, from, minutes));
      // a moment takes the whole fives that it touches
      at = 5 * Math.ceil((from + minutes) / 5);
    });
    const told = (name: string) =>
      cuts.filter((cut) => cut.name === name).map(({ from, minutes }) => ({ from, until: from + minutes }));
    const stretches = { propped: told('propped'), quiet: told('quiet'), grownUp: told('grownUp') };
    return { wake, lightsOut: 1290 + (wake % 40), events, moments, ...stretches, energy };
  });

interface Part {
  from: number;
  minutes: number;
  energy: number;
  propped: boolean;
  quiet: boolean;
  grownUp: boolean;
}

/** The five minutes that are free, each as careful as its words ask, minute by minute. */
function freeFives(day: DaySketch): Part[] {
  const fives: Part[] = [];
  for (let from = 360; from < 1320; from += 5) {
    const minutes = [0, 1, 2, 3, 4].map((n) => from + n);
    const isFree = (minute: number) =>
      minute >= day.wake &&
      minute < day.lightsOut &&
      !day.events.some((one) => one.from <= minute && minute < endOf(one)) &&
      // a moment takes the whole fives that it touches
      !day.moments.some((one) => one.from < from + 5 && from < endOf(one));
    if (!minutes.every(isFree)) continue;
    const holds = (list: readonly Stretch[], minute: number) =>
      list.some((one) => one.from <= minute && minute < one.until);
    const wholly = (list: readonly Stretch[]) =>
      list.some((one) => minutes.every((minute) => one.from <= minute && minute < one.until));
    const felt = minutes.map((minute) => {
      const words = [...day.energy].filter((word) => word.from <= minute);
      return words.sort((a, b) => b.from - a.from)[0]?.energy ?? 2;
    });
    fives.push({
      ...{ from, minutes: 5, energy: Math.min(...felt) },
      ...{ propped: wholly(day.propped), grownUp: wholly(day.grownUp) },
      quiet: minutes.some((minute) => holds(day.quiet, minute)),
    });
  }
  return fives;
}
const alike = (a: Part, b: Part) =>
  Number(a.energy === b.energy) +
  Number(a.propped === b.propped) +
  Number(a.quiet === b.quiet) +
  Number(a.grownUp === b.grownUp);
const asOne = (a: Part, b: Part): Part => ({
  ...{ from: a.from, minutes: a.minutes + b.minutes, energy: Math.min(a.energy, b.energy) },
  ...{ propped: a.propped && b.propped, quiet: a.quiet || b.quiet, grownUp: a.grownUp && b.grownUp },
});
/** Each part with the next, where nothing lies between them. */
const neighbours = (parts: readonly Part[]) =>
  parts.flatMap((a, n) => {
    const b = parts[n + 1];
    return b && endOf(a) === b.from ? [{ a, b, n }] : [];
  });
const joined = (parts: readonly Part[], n: number) => [
  ...parts.slice(0, n),
  asOne(parts[n]!, parts[n + 1]!),
  ...parts.slice(n + 2),
];

/** The open windows by the sentences of the docstring, each step by sorting all that could be done. */
function openWindows(day: DaySketch): Part[] {
  let parts = freeFives(day);
  for (;;) {
    const same = neighbours(parts).find(({ a, b }) => alike(a, b) === 4);
    if (!same) break;
    parts = joined(parts, same.n);
  }
  const most = 16 - day.moments.length;
  while (parts.length > most) {
    const [best] = neighbours(parts).sort(
      (x, y) => alike(y.a, y.b) - alike(x.a, x.b) || asOne(x.a, x.b).minutes - asOne(y.a, y.b).minutes,
    );
    if (best) parts = joined(parts, best.n);
    else {
      // of several shortest the latest
      const shortest = Math.min(...parts.map(({ minutes }) => minutes));
      const last = parts.filter(({ minutes }) => minutes === shortest).at(-1);
      parts = parts.filter((part) => part !== last);
    }
  }
  return parts;
}

it('every possible day is cut as it is said, minute by minute', () => {
  let [full, dropped] = [0, 0];
  fc.assert(
    fc.property(possible, (day) => {
      const { windows, faults } = windowsOf(day);
      expect(faults).toEqual([]);
      const open = windows.filter(({ kind }) => kind === 'ordinary');
      expect(open.map(({ kind: _, id: __, ...part }) => part)).toEqual(openWindows(day));
      expect(windows.filter(({ kind }) => kind === 'hard')).toHaveLength(day.moments.length);
      if (windows.length < 16) return;
      full++;
      const minutes = open.reduce((sum, one) => sum + one.minutes, 0);
      if (minutes < 5 * freeFives(day).length) dropped++;
    }),
    { numRuns: cases(300) },
  );
  // days that are cut into sixteen, and days of which the shortest parts are left out
  expect(full).toBeGreaterThan(cases(300) / 5);
  expect(dropped).toBeGreaterThan(cases(300) / 20);
});
