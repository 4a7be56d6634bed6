/** The plain arithmetic behind `npm run engines`: the hour a browser is given, and what its table says. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exitCodeOf, tableOf, zoneAt } from '../../.ci/engines/table.mjs';

test('at whatever hour the walks begin, in their time zone it is seven in the morning', () => {
  // the oracle is the platform's own knowledge of time zones
  for (let hour = 0; hour < 24; hour += 1) {
    const clock = new Intl.DateTimeFormat('en-GB', {
      hour: '2-digit',
      hourCycle: 'h23',
      timeZone: zoneAt(hour),
    });
    expect(clock.format(Date.UTC(2026, 0, 15, hour, 20)), `at ${hour} o’clock`).toBe('07');
  }
});

const STATES = ['passed', 'failed', 'not there'] as const;
const walks = fc.array(
  fc.record({
    engine: fc.constantFrom('A', 'B'),
    language: fc.constantFrom('en', 'ar'),
    journey: fc.constantFrom('look', 'bell'),
    state: fc.constantFrom(...STATES),
    reason: fc.constantFrom(undefined, 'nobody came'),
  }),
  { minLength: 1 },
);

test('one failed walk fails the run; so does a run in which nothing was walked', () => {
  fc.assert(
    fc.property(walks, (results) => {
      const states = results.map(({ state }) => state);
      expect(exitCodeOf(results)).toBe(states.includes('failed') || !states.includes('passed') ? 1 : 0);
    }),
  );
  expect(exitCodeOf([])).toBe(1);
});

test('each walk stands in its own place of the table, and what was not walked is not called passed', () => {
  fc.assert(
    fc.property(walks, (results) => {
      const columns = ['A', 'B'].flatMap((engine) => ['en', 'ar'].map((language) => ({ engine, language })));
      const [head, ...rows] = tableOf(['look', 'bell'], columns, results).split('\n');
      expect(head!.split(/ {2,}/)).toEqual(['journey', 'A en', 'A ar', 'B en', 'B ar']);
      for (const [at, journey] of ['look', 'bell'].entries()) {
        const cells = rows[at]!.split(/ {2,}/).slice(1);
        columns.forEach(({ engine, language }, column) => {
          const walked = results.find(
            (one) => one.engine === engine && one.language === language && one.journey === journey,
          );
          expect(cells[column]).toBe(walked?.state ?? 'not walked');
        });
      }
      const told = rows.slice(3);
      expect(told).toHaveLength(results.filter(({ reason }) => reason).length);
      for (const line of told) expect(line).toContain('nobody came');
    }),
  );
});
