import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { timelineOf, type Timeline } from '#domain/notes/timeline.ts';
import { instant, minutes } from '#domain/units.ts';
import { cases } from '../../helpers/same-cases.ts';
import { anyWardNotes, clock, DAY, london, moment, phone } from '../../helpers/ward-days.ts';

const flat = () => minutes(0);
const draw = (entries: readonly Entry[], from: number, to: number) =>
  timelineOf(entries, moment(from), moment(to), flat);

describe('a day on a line', () => {
  const a = phone('aaaaaa');
  const notes = [
    a(clock(6), { kind: 'sore', value: 5, scale: 'numbers', when: 'rest' }),
    a(clock(7), { kind: 'medicine-told' }),
    a(clock(8), { kind: 'sore', value: 1, scale: 'steps', when: 'moving' }),
    a(clock(12), { kind: 'look', answers: { 'toes-cool': 'like-usual' } }),
    a(clock(18), { kind: 'drink', amount: 'half', what: 'milk' }),
    a(clock(20), { kind: 'poo', what: 'none-today' }),
    a(clock(22), { kind: 'poo', what: 'soft' }),
  ];

  test('stands with each thing at its share of the day', () => {
    expect(draw(notes, 0, DAY)).toMatchObject({
      soreness: {
        points: [
          { id: 'aaaaaa-1', x: 0.25, height: 0.5, when: 'rest' },
          { id: 'aaaaaa-3', x: 8 / 24, height: 1 / 3, when: 'moving' },
        ],
        medicine: [{ id: 'aaaaaa-2', x: 7 / 24 }],
      },
      looks: [{ id: 'aaaaaa-4', x: 0.5 }],
      drinks: [{ id: 'aaaaaa-5', x: 0.75, amount: 'half' }],
      wee: [],
      poo: [{ id: 'aaaaaa-7', x: 22 / 24 }],
      changes: [],
    });
  });

  test('what two phones wrote stands in its order, though the second of a pair comes after something else', () => {
    const b = phone('bbbbbb');
    const c = phone('cccccc');
    const half: NewEntry = { kind: 'drink', amount: 'half', what: 'milk' };
    const both = [
      b(clock(6), half),
      b(clock(6, 3), { ...half, amount: 'full' } as NewEntry),
      c(clock(6, 9), half),
    ];
    expect(draw(both, 0, DAY).drinks.map(({ id, maybeSame }) => [id, maybeSame])).toEqual([
      ['bbbbbb-1', undefined],
      ['bbbbbb-2', undefined],
      ['cccccc-1', true],
    ]);
  });

  test('has its full hours, midnight at both ends', () => {
    const { hours } = draw([], 0, DAY);
    expect(hours.map((hour) => hour.hour)).toEqual([...Array.from({ length: 24 }, (_, i) => i), 0]);
    expect(hours.filter((hour) => hour.startsDay).map((hour) => hour.x)).toEqual([0, 1]);
  });

  test('in the night the clocks go back one hour comes twice, and the place of it is told', () => {
    const night = timelineOf([], moment(clock(22, 0, 1)), moment(clock(4, 0, 2)), london);
    expect(night.changes).toEqual([{ x: 0.5, minutes: -60 }]);
    expect(night.hours.map(({ hour }) => hour)).toEqual([23, 0, 1, 1, 2, 3, 4]);
  });

  test('sleep that began before is cut off; sleep without a waking goes on to the end, or has no end', () => {
    const sleep = (what: 'fell-asleep' | 'woke'): NewEntry => ({ kind: 'sleep', what });
    const b = phone('bbbbbb');
    const nights = [
      b(clock(20), sleep('fell-asleep')),
      b(clock(6, 0, 1), sleep('woke')),
      b(clock(12, 0, 1), sleep('fell-asleep')),
      b(clock(18, 0, 1), sleep('fell-asleep')),
    ];
    expect(draw(nights, DAY, 2 * DAY).sleep).toEqual([
      { notes: ['bbbbbb-1', 'bbbbbb-2'], from: 0, to: 0.25, end: 'woke' },
      { notes: ['bbbbbb-3'], from: 0.5, to: 0.5, end: 'not-noted' },
      { notes: ['bbbbbb-4'], from: 0.75, to: 1, end: 'goes-on' },
    ]);
    expect(draw(nights, clock(7, 0, 1), clock(11, 0, 1)).sleep).toEqual([]);
  });

  test('a drink both phones noted stands twice with a mark, once after "the same"', () => {
    const drink: NewEntry = { kind: 'drink', amount: 'full', what: 'water' };
    const twice = [phone('aaaaaa')(100, drink), phone('bbbbbb')(104, drink)];
    expect(draw(twice, 0, DAY).drinks).toMatchObject([
      { id: 'aaaaaa-1' },
      { id: 'bbbbbb-1', maybeSame: true },
    ]);
    const one = phone('cccccc')(110, { kind: 'pair', first: 'aaaaaa-1', second: 'bbbbbb-1', same: true });
    const [only, ...rest] = draw([...twice, one], 0, DAY).drinks;
    expect([only!.id, rest]).toEqual(['aaaaaa-1', []]);
    expect(only).not.toHaveProperty('maybeSame');
  });

  test('what lies at either end is on it, and what lies a minute outside is not', () => {
    const b = phone('bbbbbb');
    const around = [99, 100, 200, 201].flatMap((minute) => [
      b(minute, { kind: 'wee', into: 'pan', amount: 'usual' }),
      b(minute, { kind: 'medicine-told' }),
    ]);
    const line = draw(around, 100, 200);
    expect(line.wee).toEqual([
      { id: 'bbbbbb-3', x: 0 },
      { id: 'bbbbbb-5', x: 1 },
    ]);
    expect(line.soreness.medicine).toEqual([
      { id: 'bbbbbb-4', x: 0 },
      { id: 'bbbbbb-6', x: 1 },
    ]);
  });

  test('a sleep is seen up to the end of the line: the waking after it, or the next sleep, is not yet', () => {
    const b = phone('bbbbbb');
    const sleep = (minute: number, what: 'fell-asleep' | 'woke') => b(minute, { kind: 'sleep', what });
    const nights = [
      sleep(0, 'fell-asleep'),
      sleep(100, 'woke'),
      sleep(150, 'fell-asleep'),
      sleep(200, 'woke'),
    ];
    const ends = (from: number, to: number) =>
      draw(nights, from, to).sleep.map(({ from: a, to: z, end }) => [a, z, end]);
    expect(ends(50, 100)).toEqual([[0, 1, 'woke']]);
    expect(ends(50, 99)).toEqual([[0, 1, 'goes-on']]);
    expect(ends(100, 149)).toEqual([[0, 0, 'woke']]);
    expect(ends(101, 149)).toEqual([]);
    expect(ends(101, 150)).toEqual([[1, 1, 'goes-on']]);
  });

  /** One of everything the line can hold. */
  const EVERYTHING: readonly NewEntry[] = [
    { kind: 'sore', value: 5, scale: 'numbers', when: 'rest' },
    { kind: 'medicine-told' },
    { kind: 'look', answers: { 'toes-cool': 'like-usual' } },
    { kind: 'sleep', what: 'fell-asleep' },
    { kind: 'drink', amount: 'half', what: 'milk' },
    { kind: 'wee', into: 'pan', amount: 'usual' },
    { kind: 'poo', what: 'soft' },
  ];
  const lanes = ({ soreness, looks, sleep, drinks, wee, poo }: Timeline) =>
    [soreness.points, soreness.medicine, looks, sleep, drinks, wee, poo].map((lane) => lane.length);

  test('a note that was taken back stands nowhere', () => {
    const [b, c] = [phone('bbbbbb'), phone('cccccc')];
    const all = EVERYTHING.map((what, n) => b(100 + n, what));
    expect(lanes(draw(all, 0, DAY))).toEqual([1, 1, 1, 1, 1, 1, 1]);
    const struck = all.map(({ id }, n) => c(300 + n, { kind: 'strike', strikes: id }));
    expect(lanes(draw([...all, ...struck], 0, DAY))).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  test('a note without a time stands nowhere, wherever the line lies', () => {
    const all = EVERYTHING.map((what, n) => ({
      ...phone('bbbbbb')(n, what),
      id: `bbbbbb-${n}`,
      t: instant(0),
    }));
    expect(lanes(timelineOf(all, instant(-60), instant(60), flat))).toEqual([0, 0, 0, 0, 0, 0, 0]);
    // nor does a waking make a sleep of fifty years of it
    const woke = phone('cccccc')(100, { kind: 'sleep', what: 'woke' });
    expect(lanes(draw([...all, woke], 0, DAY))).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  test('a phone with a wrong clock: each thing stands where it happened', () => {
    const [b, c] = [phone('bbbbbb'), phone('cccccc')];
    const all = EVERYTHING.map((what) => b(100, what));
    const right = c(2000, { kind: 'clock', device: 'bbbbbb', upTo: 99, minutes: 200 });
    expect(lanes(draw([...all, right], 0, 299))).toEqual([0, 0, 0, 0, 0, 0, 0]);
    const { soreness, sleep, wee } = draw([...all, right], 250, 350);
    expect([soreness.points[0]!.x, sleep[0]!.from, wee[0]!.x]).toEqual([0.5, 0.5, 0.5]);
  });

  test('an end before its beginning is a fault of the caller', () => {
    expect(() => draw([], 10, 10)).toThrow(
      `timelineOf: to must be after from, saw ${moment(10)} and ${moment(10)}`,
    );
    expect(() => draw([], 10, 9)).toThrow('to must be after from');
    expect(() => timelineOf([], instant(NaN), moment(9), flat)).toThrow('to must be after from');
  });
});

describe('laws of the line', () => {
  const places = (line: Timeline) => [
    ...line.soreness.points,
    ...line.soreness.medicine,
    ...line.looks,
    ...line.drinks,
    ...line.wee,
    ...line.poo,
    ...line.hours,
    ...line.changes,
    ...line.sleep.flatMap(({ from, to }) => [{ x: from }, { x: to }]),
  ];
  const anyWindow = fc.tuple(fc.integer({ min: 0, max: 3 * DAY }), fc.constantFrom(60, DAY, 7 * DAY));

  test('everything lies on it, in order, and no sleep lies over another', () => {
    fc.assert(
      fc.property(anyWardNotes, anyWindow, (all, [from, length]) => {
        const line = timelineOf(all, moment(from), moment(from + length), london);
        const outside = places(line).filter(({ x }) => !(x >= 0 && x <= 1));
        expect(outside).toEqual([]);
        for (const lane of [line.soreness.points, line.drinks, line.wee, line.hours])
          expect(lane.slice(1).filter(({ x }, i) => !(x >= lane[i]!.x))).toEqual([]);
        line.sleep.slice(1).forEach(({ from: x }, i) => expect(x).toBeGreaterThanOrEqual(line.sleep[i]!.to));
      }),
      { numRuns: cases(300) },
    );
  });

  test('two half days hold what the whole day holds', () => {
    fc.assert(
      fc.property(anyWardNotes, fc.integer({ min: 0, max: 3 * DAY }), (all, from) => {
        const middle = from + DAY / 2;
        const cut = (a: number, b: number) => timelineOf(all, moment(a), moment(b), london);
        const [early, late, whole] = [cut(from, middle), cut(middle + 1, from + DAY), cut(from, from + DAY)];
        const ids = (...lines: Timeline[]) =>
          lines
            .flatMap(({ soreness, looks }) => [...soreness.points, ...soreness.medicine, ...looks])
            .map((m) => m.id)
            .sort();
        expect(ids(early, late)).toEqual(ids(whole));
        expect(early.hours.length + late.hours.length).toBe(whole.hours.length);
      }),
      { numRuns: cases(200) },
    );
  });

  test('it is plain JSON', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const line = timelineOf(all, moment(0), instant(moment(0) + 7 * DAY), london);
        expect(JSON.parse(JSON.stringify(line))).toEqual(line);
      }),
      { numRuns: cases(50) },
    );
  });
});
