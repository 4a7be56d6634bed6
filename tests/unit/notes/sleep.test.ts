import { describe, expect, test } from 'vitest';
import type { Entry } from '#domain/notes/entries.ts';
import { stretchesOf } from '#domain/notes/sleep.ts';
import { BEGIN, phone } from '../../helpers/ward-days.ts';

/** Minutes from the beginning and what was tapped: `s` fell asleep, `w` woke, `n` a nap. */
const tapped = (...taps: readonly [minute: number, what: 's' | 'w' | 'n'][]): string[] => {
  const write = phone('a');
  const WHAT = { s: 'fell-asleep', w: 'woke', n: 'nap' } as const;
  const notes: Entry[] = taps.map(([minute, what]) => write(minute, { kind: 'sleep', what: WHAT[what] }));
  return stretchesOf([write(0, { kind: 'bell' }), ...notes]).map(({ from, to, goesOn, notes: ids }) => {
    const end = to === undefined ? (goesOn ? 'goes on' : 'no end') : to - BEGIN;
    return `${from - BEGIN} to ${end}: ${ids.join(' ')}`;
  });
};

describe('a stretch of sleep', () => {
  test('goes from "fell asleep" to "woke", or on until now', () => {
    expect(tapped([10, 's'], [70, 'w'], [90, 's'])).toEqual(['10 to 70: a-1 a-2', '90 to goes on: a-3']);
  });

  test('begins once where the second tap came within ten minutes of the one before', () => {
    expect(tapped([0, 's'], [10, 's'], [20, 's'], [70, 'w'])).toEqual(['0 to 70: a-1 a-2 a-3 a-4']);
  });

  test('has no end where a waking was missed: after eleven minutes it is another falling asleep', () => {
    expect(tapped([0, 's'], [11, 's'], [70, 'w'])).toEqual(['0 to no end: a-1', '11 to 70: a-2 a-3']);
  });

  test('needs a falling asleep: neither a waking nor a nap makes one', () => {
    expect(tapped([0, 'w'], [5, 'n'])).toEqual([]);
    expect(tapped([0, 's'], [5, 'n'], [30, 'w'], [40, 'w'])).toEqual(['0 to 30: a-1 a-3']);
  });
});
