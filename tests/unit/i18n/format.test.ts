import { describe, expect, test } from 'vitest';
import { clockTime, day, dayAndTime, inARow, isolated, list, number } from '#i18n/format.ts';
import { timeSince } from '#i18n/since.ts';
import { instant, minutes } from '#domain/units.ts';

const at = (text: string) => instant(Date.parse(`${text}Z`) / 60_000);
const night = at('2026-11-25T03:10');

describe('times', () => {
  test.each(['en', 'es', 'pl', 'ar'])(
    '%s: 24 hours, two figures, as on the wall where it was written',
    (locale) => {
      expect(clockTime(locale, night, minutes(0))).toBe('03:10');
      expect(clockTime(locale, night, minutes(345))).toBe('08:55');
      expect(clockTime(locale, night, minutes(-570))).toBe('17:40');
      expect(clockTime(locale, at('2026-11-25T00:05'), minutes(0))).toBe('00:05');
    },
  );

  test('the day is that of the wall where it was written, too', () => {
    expect(day('en', night, minutes(0))).toMatch(/Wednesday.*25/);
    expect(day('en', night, minutes(-570))).toMatch(/Tuesday.*24/);
    expect(day('pl', night, minutes(0))).toContain('listopada');
  });

  test.each([
    ['en', 'Wed 03:10', '25 Nov 03:10'],
    ['es', 'mié 03:10', '25 nov 03:10'],
    ['pl', 'śr. 03:10', '25 lis 03:10'],
    ['ar', 'الأربعاء 03:10', '25 نوفمبر 03:10'],
  ])(
    '%s: what is of another day says which, so that nobody takes yesterday for an hour ago',
    (locale, weekday, date) => {
      const since = (now: string, offset = 0) =>
        timeSince(locale, night, minutes(0), at(now), minutes(offset));
      expect(since('2026-11-25T03:11')).toBe('03:10');
      expect(since('2026-11-25T23:59')).toBe('03:10');
      expect(since('2026-11-26T00:01')).toBe(weekday);
      expect(since('2026-11-26T04:10')).toBe(weekday);
      // a clock that went back since
      expect(since('2026-11-24T23:59')).toBe(weekday);
      expect(since('2026-12-01T04:10')).toBe(weekday);
      expect(since('2026-12-02T04:10')).toBe(date);
      // the wall's own day counts, not the universal one
      expect(since('2026-11-25T23:30', 60)).toBe(weekday);
    },
  );

  test('the phone’s own zone makes no difference', () => {
    const before = process.env['TZ'];
    const shown = ['Europe/London', 'Asia/Kathmandu', 'Pacific/Marquesas'].map((zone) => {
      process.env['TZ'] = zone;
      return clockTime('en', night, minutes(60)) + day('en', night, minutes(60));
    });
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
    expect(new Set(shown).size).toBe(1);
  });
});

test('numbers and rows of names are written as the language writes them', () => {
  expect(number('en', 1234.5)).toBe('1,234.5');
  expect(number('pl', 1234.5)).toBe('1234,5');
  expect(list('en', ['a', 'b', 'c'])).toMatch(/^a, b,? and c$/);
  expect(list('es', ['a', 'b'])).toBe('a y b');
  expect(list('pl', ['a', 'b'])).toBe('a i b');
});

test('a day and its clock, and whatever else stands in a row, stand apart by the comma of the language', () => {
  expect(dayAndTime('en', night, minutes(0))).toBe('Wednesday 25 November, 03:10');
  expect(dayAndTime('ar', night, minutes(0))).toMatch(/[^,]، 03:10$/);
  expect(inARow('pl', ['a', 'b', 'c'])).toBe('a, b, c');
  expect(inARow('ar', ['a'])).toBe('a');
});

test('a time inside a sentence stands in its own isolate, opened and closed', () => {
  expect(isolated('03:10')).toBe('\u206803:10\u2069');
});
