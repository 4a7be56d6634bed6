// Stretches and levels of a day as they are ticked: what was said of one part says nothing of another.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DAY_PART_IDS,
  livelinessAt,
  livelinessIn,
  spanOf,
  withLiveliness,
} from '#domain/play-bed/liveliness.ts';
import { extentOf, joined, WHOLE_DAY } from '#domain/play-bed/stretches.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const five = (low: number, high: number) => fc.integer({ min: low / 5, max: high / 5 }).map((n) => 5 * n);
const level = fc.constantFrom(1 as const, 2 as const, 3 as const);
const part = fc.constantFrom(...DAY_PART_IDS);
const steps = fc
  .uniqueArray(fc.record({ from: five(0, 1435), energy: level }), {
    maxLength: 6,
    selector: ({ from }) => from,
  })
  .map((list) => [...list].sort((a, b) => a.from - b.from));
const stretches = fc.array(fc.record({ from: five(0, 1435), until: five(0, 1440) }), { maxLength: 8 });
const DAY = Array.from({ length: 288 }, (_, n) => 5 * n);

describe('how lively the child is', () => {
  it('is what was said in that part of the day, and stays as it was in every other minute', () => {
    fc.assert(
      fc.property(steps, part, level, (before, where, said) => {
        const after = withLiveliness(before, where, said);
        const { from, until } = spanOf(where);
        for (const minute of DAY)
          expect(livelinessAt(after, minute), String(minute)).toBe(
            minute >= from && minute < until ? said : livelinessAt(before, minute),
          );
        expect(livelinessIn(after, where)).toBe(said);
      }),
    );
  });

  it('is told part by part in as few steps as there are parts, whatever the order and however often', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(part, level), { maxLength: 30 }), (all) => {
        let told: ReturnType<typeof withLiveliness> = [];
        for (const [where, said] of all) told = withLiveliness(told, where, said);
        expect(told.length).toBeLessThanOrEqual(DAY_PART_IDS.length);
        for (const where of DAY_PART_IDS)
          expect(livelinessIn(told, where)).toBe(all.findLast(([other]) => other === where)?.[1] ?? 2);
        const kept = readBed({ ...TYPICAL, sketch: { ...TYPICAL.sketch, energy: told } });
        expect(kept.faults).toEqual([]);
        expect(kept.bed?.sketch.energy).toEqual(told);
      }),
    );
  });

  it('is nothing for a part in which it changes', () => {
    expect(livelinessIn([{ from: 9 * 60, energy: 1 }], 'morning')).toBeUndefined();
    expect(livelinessIn([{ from: 9 * 60, energy: 2 }], 'morning')).toBe(2);
  });

  it('has parts that fill the day without a gap', () => {
    expect(DAY_PART_IDS.flatMap((one) => [spanOf(one).from, spanOf(one).until])).toEqual([
      0,
      ...DAY_PART_IDS.slice(1).flatMap((one) => [spanOf(one).from, spanOf(one).from]),
      1440,
    ]);
  });
});

describe('stretches of the day', () => {
  const holds = (list: readonly { from: number; until: number }[], minute: number) =>
    list.some(({ from, until }) => from <= minute && minute < until);

  it('joined hold the same minutes, in order, and none touches the next', () => {
    fc.assert(
      fc.property(stretches, (list) => {
        const whole = joined(list);
        for (const minute of DAY) expect(holds(whole, minute), String(minute)).toBe(holds(list, minute));
        whole.slice(1).forEach(({ from }, n) => expect(from).toBeGreaterThan(whole[n]!.until));
        expect(joined(whole)).toEqual(whole);
      }),
    );
  });

  it('hold never, all day or at times, as every minute says', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.oneof(stretches, fc.constant([WHOLE_DAY])), (list) => {
        const minutes = DAY.filter((minute) => holds(list, minute)).length;
        const extent = minutes === 0 ? 'never' : minutes === DAY.length ? 'always' : 'at-times';
        seen.add(extent);
        expect(extentOf(list)).toBe(extent);
      }),
    );
    expect([...seen].sort()).toEqual(['always', 'at-times', 'never']);
  });
});
