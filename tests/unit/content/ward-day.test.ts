// The ward's usual day: what is wrong in its file stops the build, with the place and the rule.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWardDay, WARD_DAY } from '#content/ward-day.ts';
import ward from '#content/ward.json' with { type: 'json' };
import { startBed, withoutCard } from '#domain/play-bed/problem.ts';

const values = ward.day;
type Row = Record<string, unknown>;
const faultsOf = (input: unknown): string[] => {
  try {
    readWardDay(input);
    return [];
  } catch (error) {
    return (error as Error).message.split('\n');
  }
};
const withEvent = (at: number, event: unknown) => ({
  ...values,
  events: values.events.map((one, n) => (n === at ? event : one)),
});

describe('the ward’s usual day', () => {
  it('as it lies in the house can be read, with its meals, its round and its quiet hour', () => {
    expect(readWardDay(values)).toEqual(WARD_DAY);
    expect(WARD_DAY.events.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['breakfast', 'lunch', 'supper', 'round']),
    );
    expect(WARD_DAY.quiet).not.toHaveLength(0);
  });

  it.each<[string, unknown, string, string]>([
    ['a time without its nought', { ...values, wake: '7:00' }, 'wake', '"7:00"'],
    ['a time off the grid', { ...values, wake: '07:03' }, 'wake', '"07:03"'],
    ['lights out at midnight', { ...values, lightsOut: '00:00' }, 'lightsOut', '"00:00"'],
    ['lights out left away', { ...values, lightsOut: undefined }, 'lightsOut', 'undefined'],
    ['lights out before waking', { ...values, lightsOut: '06:30' }, 'lightsOut', '"06:30"'],
    ['a key misspelt', { ...values, lightsout: '21:30' }, 'lightsout', '"lightsout"'],
    ['a quiet hour backwards', { ...values, quiet: [['14:00', '13:00']] }, 'quiet › 0', '["14:00","13:00"]'],
    ['no list of quiet times', { ...values, quiet: '13:00' }, 'quiet', '"13:00"'],
    ['a kind nobody knows', withEvent(1, ['bath', '08:15', 30]), 'events › 1 › 0', '"bath"'],
    ['a length in words', withEvent(1, ['wash', '08:15', 'half']), 'events › 1 › 2', '"half"'],
    ['a round in the quiet hour', withEvent(2, ['round', '13:30', 15]), 'events › 2', '["round","13:30",15]'],
    ['a wash before waking', withEvent(1, ['wash', '06:30', 20]), 'events › 1', '["wash","06:30",20]'],
    ['a snack at lunch', withEvent(4, ['snack', '12:15', 15]), 'events', '[750,735]'],
  ])('%s is named with its place, its rule and what was seen', (_name, input, place, seen) => {
    const faults = faultsOf(input);
    const one = faults.find((line) => line.startsWith(`content/ward.json › day › ${place}: `));
    expect(one).toContain(`, saw ${seen}`);
  });

  it('one wrong time is one fault', () => {
    expect(faultsOf(withEvent(0, ['breakfast', '25:00', 30]))).toHaveLength(1);
    expect(faultsOf({ ...values, wake: 'early' })).toHaveLength(1);
  });

  it('without a meal, or with supper before lunch, it is no day', () => {
    for (const meal of ['breakfast', 'lunch', 'supper']) {
      const events = values.events.filter(([kind]) => kind !== meal);
      expect(faultsOf({ ...values, events })).toEqual([expect.stringContaining(`${meal} among them`)]);
    }
    const swapped = values.events.map(([kind, ...rest]) => [
      kind === 'lunch' ? 'supper' : kind === 'supper' ? 'lunch' : kind,
      ...rest,
    ]);
    expect(faultsOf({ ...values, events: swapped })).toEqual([expect.stringContaining('supper after lunch')]);
  });

  it('whatever is put in one place, it is read or named, and never half read', () => {
    const any = fc.jsonValue();
    fc.assert(
      fc.property(fc.constantFrom('wake', 'lightsOut', 'quiet', 'events'), any, (key, value) => {
        const input: Row = { ...values, [key]: value };
        const faults = faultsOf(input);
        if (faults.length === 0) {
          const { wake, lightsOut, quiet, events } = readWardDay(input);
          const numbers = [wake, lightsOut, ...quiet.flatMap(({ from, until }) => [from, until])];
          expect([...numbers, ...events.flatMap((one) => [one.from, one.minutes])]).not.toContain(NaN);
        } else for (const line of faults) expect(line).toMatch(/^content\/ward\.json › day › .+: .+, saw /);
      }),
      { numRuns: 500 },
    );
  });

  it('no child’s light is on when the room is dark', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 17 }), fc.integer({ min: 222, max: 264 }), (years, at) => {
        const bed = startBed('circle', '2026-11-25', withoutCard(years), { ...WARD_DAY, lightsOut: at * 5 });
        expect(bed.sketch.lightsOut).toBeLessThanOrEqual(at * 5);
        for (const { from, minutes } of bed.sketch.events)
          expect(from + minutes).toBeLessThanOrEqual(bed.sketch.lightsOut);
      }),
    );
  });
});
