// Days by name and number, held against a calendar that is not ours.
import { describe, expect, it } from 'vitest';
import { dateOf, dayNumberOf } from '#domain/clock/calendar.ts';

/** 1 January 2020, the first day that has a number. */
const FIRST = 18_262;

describe('the calendar', () => {
  it('numbers each day as the calendar of the engine does, and names it again', () => {
    for (let number = FIRST; number < 65_000; number += 1) {
      const text = new Date(number * 86_400_000).toISOString().slice(0, 10);
      // a plain condition: tens of thousands of expectations take their time
      if (dayNumberOf(text) !== number || dateOf(number) !== text)
        throw new Error(`${text}: ${dayNumberOf(text)}, ${number}: ${dateOf(number)}`);
    }
  });

  it('names the days of a phone whose clock begins in 1970 anew', () => {
    for (let number = 0; number < FIRST; number += 1)
      if (dateOf(number) !== new Date(number * 86_400_000).toISOString().slice(0, 10))
        throw new Error(`${number}: ${dateOf(number)}`);
  });

  it('knows no 30 February, no year before there was this page, and no words', () => {
    for (const text of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '2019-12-31',
      '2148-01-01',
      '',
      'today',
      '2026-1-1',
    ])
      expect([text, dayNumberOf(text)]).toEqual([text, undefined]);
    expect(dayNumberOf('2028-02-29')).toBe(Date.UTC(2028, 1, 29) / 86_400_000);
  });
});
