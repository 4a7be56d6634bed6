// A day as told, cut into windows: laws over made-up days, and the corners of the day by hand.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windowsOf, type DaySketch, type Stretch } from '#domain/play/day.ts';
import type { PlayWindow } from '#domain/play/types.ts';
import { vetted } from '#domain/play/vet.ts';
import { madeUpDay } from '../../helpers/play-days.ts';
import { cases } from '../../helpers/same-cases.ts';

const QUIET_DAY: DaySketch = {
  wake: 7 * 60,
  lightsOut: 20 * 60,
  events: [],
  moments: [],
  propped: [],
  quiet: [],
  grownUp: [],
  energy: [],
};
const NEEDLE = { procedure: 'needle', weight: 2, freeHands: 1 } as const;
const untilOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;

const minute = fc.integer({ min: 0, max: 1440 });
const stretches = fc.array(
  fc.tuple(minute, fc.integer({ min: -10, max: 300 })).map(([from, length]): Stretch => ({
    from,
    until: from + length,
  })),
  { maxLength: 6 },
);
const length = fc.integer({ min: -5, max: 120 });
const sketches: fc.Arbitrary<DaySketch> = fc.record({
  wake: fc.integer({ min: 300, max: 600 }),
  lightsOut: fc.integer({ min: 1000, max: 1400 }),
  events: fc.array(
    fc.record({ id: fc.constantFrom('meal', 'wash', 'round'), from: minute, minutes: length }),
    {
      maxLength: 12,
    },
  ),
  moments: fc.array(
    fc.record({
      id: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
      from: minute,
      minutes: fc.integer({ min: 1, max: 40 }),
      procedure: fc.constantFrom('needle' as const, 'bandage' as const, 'other' as const),
      weight: fc.constantFrom(1 as const, 2 as const, 3 as const),
      freeHands: fc.constantFrom(0 as const, 1 as const, 2 as const),
    }),
    { maxLength: 5 },
  ),
  propped: stretches,
  quiet: stretches,
  grownUp: stretches,
  energy: fc.array(fc.record({ from: minute, energy: fc.constantFrom(1 as const, 2 as const, 3 as const) }), {
    maxLength: 5,
  }),
});

/** What was told for one minute of the day, read minute by minute. */
const covered = (list: readonly Stretch[], at: number) =>
  list.some(({ from, until }) => from <= at && at < until);
const energyAt = ({ energy }: DaySketch, at: number) =>
  [...energy]
    .sort((a, b) => a.from - b.from)
    .filter(({ from }) => from <= at)
    .pop()?.energy ?? 2;
const minutesOf = (window: PlayWindow) => Array.from({ length: window.minutes }, (_, n) => window.from + n);
/** Placed by `windowsOf`: in the list and not among the faults. */
const named = (day: DaySketch) => new Set(windowsOf(day).faults.map(({ where }) => where));

describe('a day cut into windows', () => {
  it('has at most sixteen, in order, apart, on the grid, awake and between six and ten: the planner refuses none', () => {
    fc.assert(
      fc.property(sketches, (day) => {
        const { windows } = windowsOf(day);
        expect(windows.length).toBeLessThanOrEqual(16);
        let before = Math.max(day.wake, 360);
        for (const window of windows) {
          expect(window.from % 5 === 0 && window.minutes % 5 === 0 && window.minutes >= 5).toBe(true);
          // a hard moment's length is rounded to the grid, the waking is not
          expect(window.from).toBeGreaterThanOrEqual(window.kind === 'hard' ? before - 4 : before);
          before = untilOf(window);
          expect(before).toBeLessThanOrEqual(Math.min(1320, day.lightsOut + 4));
        }
        const ids = windows.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        const problem = { ...madeUpDay(1), child: { ...madeUpDay(1).child, ageMonths: 200 } };
        const lightsOut = 1440;
        expect(vetted({ ...problem, lightsOut, windows, pins: [] }).faults).toEqual([]);
      }),
      { numRuns: cases(300) },
    );
  });

  it('never gives a window more than was told for every minute of it, and never takes an event’s time', () => {
    const RUNS = cases(150);
    let [heads, mixed] = [0, 0];
    fc.assert(
      fc.property(sketches, (day) => {
        const refused = named(day);
        // an id may stand for several events: only where none of them is refused is the time of all kept
        const events = day.events.filter(({ id }) => !refused.has(`events › ${id}`));
        for (const window of windowsOf(day).windows) {
          // plain conditions: a quarter of a million expectations take their time
          for (const at of minutesOf(window)) {
            const taken = events.some((event) => at >= event.from && at < untilOf(event));
            const tooMuch =
              (window.kind === 'ordinary' && (taken || (window.grownUp && !covered(day.grownUp, at)))) ||
              (window.propped && !covered(day.propped, at)) ||
              (!window.quiet && covered(day.quiet, at)) ||
              window.energy > energyAt(day, at);
            if (tooMuch) throw new Error(`at ${at}: ${JSON.stringify(window)}`);
          }
          if (window.propped) heads++;
          else if (minutesOf(window).some((at) => covered(day.propped, at))) mixed++;
        }
      }),
      { numRuns: RUNS },
    );
    // both are met: a head that may go up, and one that may not because part of the time it may not
    expect(heads).toBeGreaterThan(RUNS / 3);
    expect(mixed).toBeGreaterThan(RUNS / 3);
  });

  it('leaves no open five minutes out while there are fewer than sixteen windows', () => {
    const RUNS = cases(400);
    let days = 0;
    fc.assert(
      fc.property(sketches, (day) => {
        const { windows } = windowsOf(day);
        if (windows.length >= 16) return;
        days++;
        const fixed = [...day.events, ...day.moments, ...windows];
        for (
          let at = 5 * Math.ceil(Math.max(day.wake, 360) / 5);
          at + 5 <= Math.min(day.lightsOut, 1320);
          at += 5
        )
          if (!fixed.some((one) => one.from < at + 5 && at < untilOf(one))) throw new Error(`open at ${at}`);
      }),
      { numRuns: RUNS },
    );
    expect(days).toBeGreaterThan(RUNS / 20);
  });

  it('is the same in whatever order the day was told, and the told day stays as it was', () => {
    fc.assert(
      fc.property(sketches, (day) => {
        const before = JSON.stringify(day);
        // two of one name are told apart by nothing but their order, so each here has its own
        const own = {
          ...day,
          events: day.events.map((event, n) => ({ ...event, id: `${event.id}-${n}` })),
          moments: day.moments.map((moment, n) => ({ ...moment, id: `${moment.id}-${n}` })),
          energy: day.energy.filter(({ from }, n) => day.energy.findIndex((one) => one.from === from) === n),
        };
        const turned: DaySketch = {
          ...own,
          events: [...own.events].reverse(),
          moments: [...own.moments].reverse(),
          propped: [...own.propped].reverse(),
          quiet: [...own.quiet].reverse(),
          grownUp: [...own.grownUp].reverse(),
          energy: [...own.energy].reverse(),
        };
        const [a, b] = [windowsOf(own), windowsOf(turned)];
        expect([b.windows, b.events]).toEqual([a.windows, a.events]);
        expect(b.faults).toHaveLength(a.faults.length);
        expect(JSON.stringify(day)).toBe(before);
      }),
    );
  });

  it('names every event and moment that overlaps or lies outside the day, and keeps the rest', () => {
    const { windows, events, faults } = windowsOf({
      ...QUIET_DAY,
      events: [
        { id: 'visitor', from: 13 * 60 + 10, minutes: 30 },
        { id: 'dinner', from: 13 * 60, minutes: 30 },
        { id: 'night-round', from: 21 * 60, minutes: 10 },
        { id: 'nothing', from: 9 * 60, minutes: 0 },
        { id: 'over-the-needle', from: 10 * 60, minutes: 60 },
      ],
      moments: [
        { id: 'needle', from: 10 * 60 + 32, minutes: 6, ...NEEDLE },
        { id: 'needle', from: 16 * 60, minutes: 5, ...NEEDLE },
      ],
    });
    expect(faults.map(({ where, rule, seen }) => `${where}: ${rule}: ${String(seen)}`)).toEqual([
      'moments › needle: id: used once: needle',
      'events › nothing: minutes: above 0: 0',
      'events › over-the-needle: from: nothing else at that time: 600',
      'events › visitor: from: nothing else at that time: 790',
      'events › night-round: from: between waking and lights-out: 1260',
    ]);
    expect(events).toEqual([13 * 60]);
    expect(windows.map(({ id, from, minutes }) => [id, from, minutes])).toEqual([
      ['w-0700', 420, 210],
      ['needle', 630, 10],
      ['w-1040', 640, 140],
      ['w-1330', 810, 390],
    ]);
  });

  it('keeps a window’s name when an event comes in elsewhere in the day', () => {
    const ids = (events: DaySketch['events']) =>
      windowsOf({ ...QUIET_DAY, events }).windows.map(({ id }) => id);
    const dinner = { id: 'dinner', from: 720, minutes: 30 };
    expect(ids([dinner])).toEqual(['w-0700', 'w-1230']);
    expect(ids([{ id: 'round', from: 540, minutes: 15 }, dinner])).toEqual(['w-0700', 'w-0915', 'w-1230']);
  });

  it('joins the most alike first, then the shortest, never across an event, and leaves the shortest free', () => {
    // half-hours, told propped by turns: 26 windows that differ in the head alone, one hour cut off by a meal
    const turns = Array.from({ length: 13 }, (_, n) => ({ from: 420 + 60 * n, until: 450 + 60 * n }));
    const joined = windowsOf({ ...QUIET_DAY, propped: turns, quiet: [{ from: 420, until: 430 }] }).windows;
    expect(joined).toHaveLength(16);
    // ten minutes quiet and twenty not, both propped, differ in one trait as all do and are the shortest
    expect([joined[0]!.minutes, joined[0]!.quiet, joined[0]!.propped]).toEqual([30, true, true]);
    expect(joined.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(13 * 60);

    const meals = Array.from({ length: 19 }, (_, n) => ({
      id: `m-${n}`,
      from: 450 + 40 * n,
      minutes: 5 + n,
    }));
    const dropped = windowsOf({ ...QUIET_DAY, events: meals }).windows;
    const lengths = dropped.map(({ minutes }) => minutes);
    expect(dropped).toHaveLength(16);
    expect(Math.min(...lengths)).toBeGreaterThan(15);
    for (const window of dropped)
      for (const meal of meals)
        expect(window.from < untilOf(meal) && meal.from < untilOf(window)).toBe(false);
  });

  it('says what is wrong with a day that never begins or never ends, and plans nothing in it', () => {
    for (const [wake, lightsOut] of [
      [NaN, 1200],
      [420, 3000],
      [1200, 420],
    ] as const) {
      const { windows, faults } = windowsOf({ ...QUIET_DAY, wake, lightsOut });
      expect([windows, faults.length]).toEqual([[], 1]);
    }
  });
});
