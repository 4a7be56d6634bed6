import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isNight, localMinute, momentAfterDayMinutes, NIGHT } from '#domain/clock/night.ts';
import { instant, minutes, type Instant, type Minutes } from '#domain/units.ts';

const utc = (text: string): Instant => instant(Date.parse(`${text}Z`) / 60_000);

/** Minutes ahead of universal time: whole hours, and zones of 30 and 45 minutes. */
const ZONES = {
  Kathmandu: 345,
  Kolkata: 330,
  Chatham: 765,
  Marquesas: -570,
  London: 0,
  Honolulu: -600,
  Kiritimati: 840,
};
const anyOffset = fc
  .oneof(
    fc.constantFrom(...Object.values(ZONES)),
    fc.integer({ min: -48, max: 56 }).map((quarters) => quarters * 15),
  )
  .map(minutes);
/** Near 2026, and a little before 1970, where remainders change their sign. */
const anyMoment = fc
  .oneof(fc.integer({ min: -4000, max: 4000 }), fc.integer({ min: 29_900_000, max: 29_910_000 }))
  .map(instant);

/** The oracle looks at a clock on the wall, written as text, one minute at a time. */
const wallClock = (at: number, offset: Minutes) =>
  new Date((at + offset) * 60_000).toISOString().slice(11, 16);
const nightByWallClock = (at: number, offset: Minutes) => {
  const time = wallClock(at, offset);
  return time >= '22:00' || time < '06:00';
};

describe('the ward’s night', () => {
  test('goes from 22:00 to 06:00 on the wall, the last minute of the evening not in it', () => {
    expect(NIGHT).toEqual({ from: 1320, to: 360 });
    const night = (time: string) => isNight(utc(`2026-11-25T${time}`), minutes(0));
    expect(['21:59', '22:00', '23:59', '00:00', '05:59', '06:00'].map(night)).toEqual([
      false,
      true,
      true,
      true,
      true,
      false,
    ]);
  });

  test.each([
    ['Kathmandu', '2026-11-25T16:14', false],
    ['Kathmandu', '2026-11-25T16:15', true],
    ['Kolkata', '2026-11-25T00:29', true],
    ['Kolkata', '2026-11-25T00:30', false],
    ['Chatham', '2026-11-25T09:15', true],
    ['Marquesas', '2026-11-25T15:29', true],
    ['Marquesas', '2026-11-25T15:30', false],
  ] as const)('in %s at %s universal time: night %s', (zone, at, night) => {
    expect(isNight(utc(at), minutes(ZONES[zone]))).toBe(night);
  });

  test('agrees with a clock on the wall, everywhere', () => {
    fc.assert(
      fc.property(anyMoment, anyOffset, (at, offset) => {
        expect(isNight(at, offset)).toBe(nightByWallClock(at, offset));
      }),
      { numRuns: 3000 },
    );
  });
});

describe('the minute of the day', () => {
  test('is what the wall shows, everywhere, before 1970 too', () => {
    fc.assert(
      fc.property(anyMoment, anyOffset, (at, offset) => {
        const [hours, mins] = wallClock(at, offset).split(':').map(Number) as [number, number];
        expect(localMinute(at, offset)).toBe(hours * 60 + mins);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the moment after some minutes of daytime', () => {
  test('four hours from 20:00 end at 08:00, and sixteen hours from 06:00 end at 22:00', () => {
    const after = (at: string, count: number) => momentAfterDayMinutes(utc(at), minutes(count), minutes(0));
    expect(after('2026-11-25T20:00', 240)).toBe(utc('2026-11-26T08:00'));
    expect(after('2026-11-25T03:00', 60)).toBe(utc('2026-11-25T07:00'));
    expect(after('2026-11-25T06:00', 960)).toBe(utc('2026-11-25T22:00'));
    expect(after('2026-11-25T03:00', 0)).toBe(utc('2026-11-25T03:00'));
  });

  test('is the first moment that has them all', () => {
    fc.assert(
      fc.property(anyMoment, fc.integer({ min: 0, max: 2200 }), anyOffset, (from, count, offset) => {
        let at: number = from;
        for (let passed = 0; passed < count; at++) if (!nightByWallClock(at, offset)) passed++;
        expect(momentAfterDayMinutes(from, minutes(count), offset)).toBe(at);
      }),
      { numRuns: 200 },
    );
  });
});
