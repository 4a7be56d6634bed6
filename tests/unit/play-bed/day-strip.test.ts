/** A day as a strip: long things are long, later things stand later, and a finger always means the nearest. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { stripOf } from '#domain/play-bed/day-strip.ts';
import { anyBed, TYPICAL } from '../../helpers/play-beds.ts';

it('of any day lies inside the strip, and what can be pressed covers it without a gap', () => {
  fc.assert(
    fc.property(anyBed, ({ sketch }) => {
      const { rows, quiet, hours } = stripOf(sketch);
      let end = 0;
      for (const { reach } of rows) {
        expect(reach.start).toBeCloseTo(end, 6);
        expect(reach.share).toBeGreaterThanOrEqual(-1e-9);
        end = reach.start + reach.share;
      }
      expect(end).toBeCloseTo(rows.length ? 100 : 0, 6);
      for (const { start, share } of [...rows, ...quiet]) {
        expect(share).toBeGreaterThan(0);
        expect(start).toBeGreaterThanOrEqual(0);
        expect(start + share).toBeLessThanOrEqual(100 + 1e-9);
      }
      for (const { start } of hours) expect(start >= 0 && start < 100).toBe(true);
    }),
    { numRuns: 200 },
  );
});

it('shows each event, each hard moment and the quiet of a typical day at its time and as long as it is', () => {
  const { sketch } = TYPICAL;
  const { rows, quiet, hours } = stripOf(sketch);
  const length = sketch.lightsOut - sketch.wake;
  for (const [list, told] of [
    ['events', sketch.events],
    ['moments', sketch.moments],
  ] as const)
    for (const one of told) {
      const row = rows.find((other) => other.list === list && other.id === one.id)!;
      expect((row.start * length) / 100 + sketch.wake, one.id).toBeCloseTo(one.from, 6);
      expect((row.share * length) / 100, one.id).toBeCloseTo(one.minutes, 6);
      const middle = row.start + row.share / 2;
      expect(row.reach.start < middle && middle < row.reach.start + row.reach.share).toBe(true);
    }
  expect(rows).toHaveLength(sketch.events.length + sketch.moments.length);
  expect(quiet.map(({ start }) => Math.round((start * length) / 100 + sketch.wake))).toEqual([13 * 60]);
  expect(hours.map(({ minute }) => minute / 60)).toEqual([9, 12, 15, 18]);
});

it('of a day without length has nothing to press', () => {
  expect(stripOf({ ...TYPICAL.sketch, wake: 600, lightsOut: 600 })).toEqual({
    rows: [],
    quiet: [],
    hours: [],
  });
});
