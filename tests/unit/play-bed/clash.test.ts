// What stands already at a time of the bed's day: said where something is to be put there.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clashOf } from '#domain/play-bed/clash.ts';
import { windowsOf, type DaySketch } from '#domain/play/day.ts';
import { anyBed, TYPICAL } from '../../helpers/play-beds.ts';

const EMPTY: DaySketch = { ...TYPICAL.sketch, events: [], moments: [] };
const minutesOf = ({ from, minutes }: { from: number; minutes: number }) =>
  Array.from({ length: minutes }, (_, n) => from + n);
const time = fc.record({
  from: fc.integer({ min: 0, max: 280 }).map((n) => 5 * n),
  minutes: fc.integer({ min: 1, max: 12 }).map((n) => 5 * n),
});

describe('a time that is asked for', () => {
  it('is taken exactly where it shares a minute with what stands there, or leaves the day', () => {
    fc.assert(
      fc.property(anyBed, time, ({ sketch }, wanted) => {
        const clash = clashOf(sketch, wanted);
        const asked = minutesOf(wanted);
        const outside = asked.some((minute) => minute < sketch.wake || minute >= sketch.lightsOut);
        const met = [...sketch.moments, ...sketch.events].filter((one) =>
          minutesOf(one).some((minute) => asked.includes(minute)),
        );
        expect(clash?.why).toBe(outside ? 'outside' : met.length > 0 ? 'taken' : undefined);
        if (clash?.why === 'taken') {
          expect(met).toContainEqual(expect.objectContaining({ id: clash.id, from: clash.from }));
          expect(clash.list).toBe(
            met.some((one) => sketch.moments.some((moment) => moment === one)) ? 'moments' : 'events',
          );
        }
      }),
    );
  });

  it('is free exactly where the planner leaves nothing out, so that nothing that was added is lost later', () => {
    fc.assert(
      fc.property(time, time, fc.boolean(), (before, wanted, asMoment) => {
        const sketch = { ...EMPTY, events: [{ id: 'round', ...before }] };
        fc.pre(clashOf(EMPTY, before) === undefined);
        const added: DaySketch = asMoment
          ? { ...sketch, moments: [{ ...TYPICAL.sketch.moments[0]!, id: 'bandage-1', ...wanted }] }
          : { ...sketch, events: [...sketch.events, { id: 'visitor-1', ...wanted }] };
        expect(clashOf(sketch, wanted) === undefined).toBe(windowsOf(added, 88).faults.length === 0);
      }),
    );
  });

  it('is not in its own way', () => {
    for (const one of [...TYPICAL.sketch.events, ...TYPICAL.sketch.moments]) {
      expect(clashOf(TYPICAL.sketch, one)).toMatchObject({ id: one.id });
      expect(clashOf(TYPICAL.sketch, one, one.id)).toBeUndefined();
    }
  });
});
