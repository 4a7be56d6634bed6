/**
 * Local time against the zone data of the system (Intl). Source of the data: the IANA time zone database, public
 * domain, as built into the engine that runs the tests. That United Kingdom clocks change at 01:00 universal time on
 * the last Sundays of March and October: Directive 2000/84/EC and the Summer Time Act 1972 as amended, from memory;
 * the zone data agrees, or these tests fail.
 */
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { clockChanges, hourMarks, localDay, repeatedHour } from '#domain/clock/local.ts';
import { byTime, type Entry } from '#domain/notes/entries.ts';
import { summarise } from '#domain/notes/summarise.ts';
import { timelineOf } from '#domain/notes/timeline.ts';
import { instant, minutes, type Instant, type Minutes } from '#domain/units.ts';
import { london as helperLondon, SETTINGS } from '../helpers/ward-days.ts';

/** What a clock on the wall shows in a zone, by Intl, and from that its offset. */
function zone(name: string) {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: name,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  });
  const wall = (at: Instant) => {
    const part = Object.fromEntries(
      format.formatToParts(at * 60_000).map(({ type, value }) => [type, value]),
    );
    return { day: `${part.year}-${part.month}-${part.day}`, time: `${part.hour}:${part.minute}` };
  };
  const offsets = new Map<Instant, Minutes>();
  const offsetAt = (at: Instant): Minutes => {
    const known = offsets.get(at);
    if (known !== undefined) return known;
    const { day, time } = wall(at);
    const offset = minutes(Date.parse(`${day}T${time}Z`) / 60_000 - at);
    offsets.set(at, offset);
    return offset;
  };
  return { wall, offsetAt };
}
const utc = (text: string): Instant => instant(Date.parse(`${text}Z`) / 60_000);

const LONDON = zone('Europe/London');
/** Zones with half an hour and a quarter, with a change of half an hour, and south of the equator. */
const ZONES = ['Europe/London', 'Asia/Kolkata', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'America/St_Johns'];
const CHANGING = [
  // zone, an hour before the change, what happens, first and second time of what comes twice
  ['Europe/London', '2026-10-25T00:00', -60],
  ['Europe/London', '2027-03-28T00:00', 60],
  ['Australia/Lord_Howe', '2026-10-03T14:30', 30],
  ['Australia/Lord_Howe', '2027-04-03T14:00', -30],
  ['America/St_Johns', '2026-11-01T03:30', -60],
  ['America/St_Johns', '2027-03-14T04:30', 60],
] as const;

describe('the nights in which London’s clocks change', () => {
  const at = (text: string, off: number): Entry['t'] => instant(utc(text) - off);

  test.each([
    ['2026-10-24', '2026-10-25', 60, 0, 13],
    ['2027-03-27', '2027-03-28', 0, 60, 11],
    ['2026-11-24', '2026-11-25', 0, 0, 12],
  ])(
    'from 20:00 on %s to 08:00 on %s a child slept %s+%s → %i hours',
    (evening, morning, before, after, hours) => {
      const fell = at(`${evening}T20:00`, before);
      const woke = at(`${morning}T08:00`, after);
      expect([LONDON.wall(fell), LONDON.wall(woke)]).toEqual([
        { day: evening, time: '20:00' },
        { day: morning, time: '08:00' },
      ]);
      const notes: Entry[] = [
        { id: 'aaaaaa-1', t: fell, off: minutes(before), kind: 'sleep', what: 'fell-asleep' },
        { id: 'aaaaaa-2', t: woke, off: minutes(after), kind: 'sleep', what: 'woke' },
      ];
      const { sleep } = summarise(notes, instant(woke + 30), SETTINGS);
      expect(sleep.longest?.minutes).toBe(hours * 60);
      const { hours: marks } = timelineOf(notes, fell, woke, LONDON.offsetAt);
      expect(marks).toHaveLength(hours + 1);
    },
  );

  test.each([
    ['2026-10-24', '2026-10-25', 60, 0, 9],
    ['2027-03-27', '2027-03-28', 0, 60, 7],
  ])(
    'from 23:00 on %s to 07:00 on %s no wee (%s, %s): %i hours',
    (evening, morning, before, after, hours) => {
      const wee: Entry = {
        id: 'aaaaaa-1',
        t: at(`${evening}T23:00`, before),
        off: minutes(before),
        kind: 'wee',
        into: 'nappy',
        amount: 'usual',
      };
      const now = at(`${morning}T07:00`, after);
      const settings = { ...SETTINGS, offsetMinutes: minutes(after) };
      expect(summarise([wee], now, settings).wee.last?.minutes).toBe(hours * 60);
    },
  );

  test('01:30 comes twice in October: an hour apart, summer time first', () => {
    const [first, second] = [utc('2026-10-25T00:30'), utc('2026-10-25T01:30')];
    expect([LONDON.wall(first).time, LONDON.wall(second).time]).toEqual(['01:30', '01:30']);
    expect(repeatedHour(first, minutes(60), LONDON.offsetAt)).toBe('first');
    expect(repeatedHour(second, minutes(0), LONDON.offsetAt)).toBe('second');
    // written by a phone that was on another time: nothing is said of it
    expect(repeatedHour(first, minutes(0), LONDON.offsetAt)).toBeUndefined();
  });

  test('the line of that night has 01 twice; in March it has no 01, and a gap there', () => {
    const october = timelineOf([], utc('2026-10-24T22:00'), utc('2026-10-25T04:00'), LONDON.offsetAt);
    expect(october.hours.map(({ hour, twice }) => [hour, twice])).toEqual([
      [23, undefined],
      [0, undefined],
      [1, 'first'],
      [1, 'second'],
      [2, undefined],
      [3, undefined],
      [4, undefined],
    ]);
    expect(october.changes).toEqual([{ x: 0.5, minutes: -60 }]);
    const march = timelineOf([], utc('2027-03-27T22:00'), utc('2027-03-28T04:00'), LONDON.offsetAt);
    expect(march.hours.map(({ hour }) => hour)).toEqual([22, 23, 0, 2, 3, 4, 5]);
    expect(march.changes).toEqual([{ x: 0.5, minutes: 60 }]);
  });

  test('a poo at 23:30 the evening before is one calendar day ago at 00:30', () => {
    const poo: Entry = {
      id: 'a-1',
      t: at('2026-10-24T23:30', 60),
      off: minutes(60),
      kind: 'poo',
      what: 'soft',
    };
    const settings = { ...SETTINGS, offsetMinutes: minutes(60) };
    expect(summarise([poo], at('2026-10-25T00:30', 60), settings).poo).toMatchObject({
      calendarDays: 1,
      wholeDays: 0,
    });
  });

  test('in the day of 25 hours, 24 hours after a poo at 00:30 it is still the same calendar day', () => {
    const poo: Entry = {
      id: 'a-1',
      t: at('2026-10-25T00:30', 60),
      off: minutes(60),
      kind: 'poo',
      what: 'soft',
    };
    const now = at('2026-10-25T23:30', 0);
    expect([LONDON.wall(poo.t).day, LONDON.wall(now).day]).toEqual(['2026-10-25', '2026-10-25']);
    expect(summarise([poo], now, SETTINGS).poo).toMatchObject({ calendarDays: 0, wholeDays: 1 });
  });

  test('the four days of the other tests have London’s own offsets', () => {
    for (let t: number = utc('2026-10-23T00:00'); t <= utc('2026-10-27T00:00'); t += 30)
      expect(helperLondon(instant(t))).toBe(LONDON.offsetAt(instant(t)));
  });
});

describe('local time in zones of whole, half and quarter hours', () => {
  test.each(CHANGING)(
    'in %s after %s the clocks move by %i minutes, an hour later',
    (name, hourBefore, moved) => {
      const { offsetAt } = zone(name);
      const from = utc(hourBefore);
      const [change, ...more] = clockChanges(instant(from - 5000), instant(from + 5000), offsetAt);
      expect(more).toEqual([]);
      expect(change!.at).toBe(from + 60);
      expect(change!.after - change!.before).toBe(moved);
    },
  );

  const anyPlace = fc
    .constantFrom(...CHANGING)
    .map(([name, hourBefore]) => ({ name, ...zone(name), near: utc(hourBefore) }));
  const places = new Map(ZONES.map((name) => [name, zone(name)]));

  test('a time is told as coming twice exactly where the wall shows it twice', () => {
    for (const [name, hourBefore] of CHANGING) {
      const { wall, offsetAt } = places.get(name)!;
      const near = utc(hourBefore);
      const shown = new Map<string, number[]>();
      const text = (t: number) => `${wall(instant(t)).day} ${wall(instant(t)).time}`;
      for (let t: number = near - 180; t < near + 300; t++)
        shown.set(text(t), [...(shown.get(text(t)) ?? []), t]);
      for (let t: number = near - 60; t < near + 180; t++) {
        const times = shown.get(text(t))!;
        const expected = times.length < 2 ? undefined : times[0] === t ? 'first' : 'second';
        expect(repeatedHour(instant(t), offsetAt(instant(t)), offsetAt)).toBe(expected);
      }
    }
  });

  test('full hours are the minutes at which the wall shows :00, no more and no fewer', () => {
    fc.assert(
      fc.property(
        anyPlace,
        fc.integer({ min: -600, max: 100 }),
        fc.integer({ min: 1, max: 700 }),
        (place, start, length) => {
          const from = place.near + start;
          const expected: { at: number; hour: number }[] = [];
          for (let t = from; t <= from + length; t++) {
            const { time } = place.wall(instant(t));
            if (time.endsWith(':00')) expected.push({ at: t, hour: Number(time.slice(0, 2)) });
          }
          const marks = hourMarks(instant(from), instant(from + length), place.offsetAt);
          expect(marks.map(({ at, hour }) => ({ at, hour }))).toEqual(expected);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a calendar day begins once, at the first full hour of it', () => {
    for (const [name, { wall, offsetAt }] of places) {
      const from = utc('2026-10-20T00:00');
      const days = hourMarks(from, instant(from + 14 * 1440), offsetAt).filter((mark) => mark.startsDay);
      const shown = days.map((mark) => wall(mark.at).day);
      expect(new Set(shown).size, name).toBe(shown.length);
      expect(days).toHaveLength(14);
      for (const mark of days) expect(wall(instant(mark.at - 1)).day < wall(mark.at).day).toBe(true);
    }
  });

  test('in Beirut a day in March has no midnight: it begins at 1 o’clock', () => {
    const { wall, offsetAt } = zone('Asia/Beirut');
    const from = utc('2026-03-28T12:00');
    const marks = hourMarks(from, instant(from + 1440), offsetAt);
    const [day, ...more] = marks.filter((mark) => mark.startsDay);
    expect(more).toEqual([]);
    expect(wall(instant(day!.at - 1))).toEqual({ day: '2026-03-28', time: '23:59' });
    expect(wall(day!.at)).toEqual({ day: '2026-03-29', time: '01:00' });
    expect(day!.hour).toBe(1);
  });

  test('days between two notes are the days between their dates on the wall', () => {
    fc.assert(
      fc.property(
        anyPlace,
        fc.integer({ min: -9000, max: 0 }),
        fc.integer({ min: 0, max: 9000 }),
        (place, a, b) => {
          const [from, to] = [instant(place.near + a), instant(place.near + b)];
          const days = localDay(to, place.offsetAt(to)) - localDay(from, place.offsetAt(from));
          const dates = (Date.parse(place.wall(to).day) - Date.parse(place.wall(from).day)) / 86_400_000;
          expect(days).toBe(dates);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('under the clocks of five places', () => {
  const before = process.env.TZ;
  afterAll(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });
  const device = (at: Instant) => minutes(0 - new Date(at * 60_000).getTimezoneOffset());

  test.each(ZONES)('%s: a device set to this zone counts as the zone data says', (name) => {
    process.env.TZ = name;
    const { offsetAt } = zone(name);
    for (const [, hourBefore] of CHANGING)
      for (let t: number = utc(hourBefore) - 300; t < utc(hourBefore) + 300; t += 15)
        expect(device(instant(t))).toBe(offsetAt(instant(t)));
  });

  test('the same notes give the same summary and line, wherever the device is', () => {
    const t = utc('2026-10-24T20:00');
    const notes = (
      [
        { id: 'a-1', t, off: minutes(60), kind: 'sleep', what: 'fell-asleep' },
        { id: 'a-2', t: instant(t + 700), off: minutes(0), kind: 'sleep', what: 'woke' },
        { id: 'a-3', t: instant(t + 710), off: minutes(0), kind: 'poo', what: 'hard' },
        { id: 'b-1', t: instant(t + 715), off: minutes(345), kind: 'drink', amount: 'half', what: 'water' },
      ] satisfies Entry[]
    ).sort(byTime);
    const seen = ZONES.map((name) => {
      process.env.TZ = name;
      const line = timelineOf(notes, t, instant(t + 1440), LONDON.offsetAt);
      return JSON.stringify([summarise(notes, instant(t + 900), SETTINGS), line]);
    });
    expect(new Set(seen).size).toBe(1);
    expect(new Set(ZONES.map((name) => ((process.env.TZ = name), device(t)))).size).toBe(5);
  });
});
