import { describe, expect, test } from 'vitest';
import { clockTime, day, isolated, list, number } from '#i18n/format.ts';
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

test('a time inside a sentence stands in its own isolate, opened and closed', () => {
  expect(isolated('03:10')).toBe('\u206803:10\u2069');
});
