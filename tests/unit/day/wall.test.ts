// A day on the wall, held against the system's zone data.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumberOf } from '#domain/clock/calendar.ts';
import { boundsOf, momentOf, wallMinute } from '#domain/day/wall.ts';
import { instant } from '#domain/units.ts';
import { anyDate, anyPlace, DATES, LONDON, place, PLACES } from './days.ts';

const length = (date: string, where = LONDON) => {
  const { from, to } = boundsOf(dayNumberOf(date)!, where.offsetAt);
  return to - from;
};

describe('a day of a place', () => {
  it('has 25 hours when London’s clocks go back and 23 when they go forward', () => {
    expect(['2026-10-24', '2026-10-25', '2027-03-28', '2027-03-29'].map((day) => length(day) / 60)).toEqual([
      24, 25, 23, 24,
    ]);
    expect(
      length(
        '2026-10-04',
        PLACES.find(({ name }) => name.endsWith('Lord_Howe'))!,
      ) / 60,
    ).toBe(23.5);
  });

  it('begins where the one before ends, for every day and place', () => {
    for (const { offsetAt } of PLACES)
      for (const [n, date] of DATES.entries()) {
        const next = DATES[n + 1];
        if (next === undefined) continue;
        expect(boundsOf(dayNumberOf(date)!, offsetAt).to).toBe(boundsOf(dayNumberOf(next)!, offsetAt).from);
      }
  });

  it('holds exactly the minutes at which the wall shows its date', () => {
    fc.assert(
      fc.property(
        anyPlace,
        anyDate,
        fc.integer({ min: -30, max: 1550 }),
        ({ offsetAt, wall }, date, minute) => {
          const { from, to } = boundsOf(dayNumberOf(date)!, offsetAt);
          const at = instant(from + minute);
          // Santiago turns 24:00 back to 23:00 without ever showing the new day
          expect(at >= from && at < to).toBe(wall(at).slice(0, 10) === date);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('has no length where the calendar of the place left it out', () => {
    // Samoa had no 30 December 2011 (IANA zone data, Pacific/Apia); ours are later years, so its clocks are moved by 15 years
    const shift = Math.round((Date.UTC(2026, 11, 30) - Date.UTC(2011, 11, 30)) / 60_000);
    const jump = Date.UTC(2011, 11, 30, 10) / 60_000;
    const apia = (at: number) => (at - shift < jump ? -600 : 840);
    const day = dayNumberOf('2026-12-30')!;
    const bounds = boundsOf(day, (at) => apia(at) as ReturnType<typeof LONDON.offsetAt>);
    expect(bounds.to - bounds.from).toBe(0);
  });
});

describe('a minute of the day', () => {
  it('is the first moment of the day at which the wall has come so far', () => {
    fc.assert(
      fc.property(
        anyPlace,
        anyDate,
        fc.integer({ min: 0, max: 1439 }),
        ({ offsetAt, wall }, date, minute) => {
          const clock = new Date(minute * 60_000).toISOString().slice(11, 16);
          const { from, to } = boundsOf(dayNumberOf(date)!, offsetAt);
          const at = momentOf(dayNumberOf(date)!, minute, offsetAt);
          let oracle: number = from;
          while (oracle < to && wall(instant(oracle)).slice(11) < clock) oracle++;
          expect(at).toBe(oracle);
          if (at < to) expect(wallMinute(at, offsetAt)).toBeGreaterThanOrEqual(minute);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('that is skipped is the moment the clocks went forward; of two it is the earlier', () => {
    const at = (date: string, minute: number) =>
      LONDON.wall(momentOf(dayNumberOf(date)!, minute, LONDON.offsetAt)).slice(11);
    expect(at('2027-03-28', 90)).toBe('02:00');
    expect(momentOf(dayNumberOf('2026-10-25')!, 90, LONDON.offsetAt)).toBe(
      Date.UTC(2026, 9, 25, 0, 30) / 60_000,
    );
  });

  it('is told by the place, not by universal time', () => {
    const kathmandu = place('Asia/Kathmandu');
    expect(momentOf(dayNumberOf('2026-11-25')!, 450, kathmandu.offsetAt)).toBe(
      Date.UTC(2026, 10, 25, 1, 45) / 60_000,
    );
  });
});
