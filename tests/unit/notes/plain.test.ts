import { describe, expect, test } from 'vitest';
import type { Entry } from '#domain/notes/entries.ts';
import { writtenAs } from '#domain/notes/clocks.ts';
import { depthOf, jsonOf, plainText } from '#domain/notes/plain.ts';
import { instant, minutes } from '#domain/units.ts';

describe('how deep brackets stand in one another', () => {
  test.each([
    ['1', 0],
    ['[]', 1],
    ['{"a":[{}]}', 3],
    ['[[],[[]],[]]', 3],
    // what stands between quotes is no bracket, nor does a quote that is told end them
    ['"[[["', 0],
    ['["\\"[[", 1]', 1],
    ['["\\\\", [1]]', 2],
    // it need not be a right text
    [']][', 0],
  ])('%s: %d', (json, depth) => {
    expect(depthOf(json)).toBe(depth);
  });
});

describe('a note as plain text', () => {
  const strange = (raw: unknown, more: Partial<Entry> = {}): Entry =>
    ({ id: 'a-1', t: instant(5), off: minutes(60), ...more, kind: 'unknown', raw }) as Entry;
  const BEYOND = { id: 'a-1', t: 5, off: 60, kind: 'unknown', raw: 'beyond words' };
  const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);

  test('tells all it holds, up to a hundred thousand letters', () => {
    const frame = plainText(strange('')).length;
    const longest = strange('x'.repeat(100_000 - frame));
    expect(plainText(longest)).toBe(JSON.stringify(longest));
    expect(JSON.parse(plainText(strange('x'.repeat(100_001 - frame))))).toEqual(BEYOND);
  });

  test('of a strange note, up to fifty brackets deep', () => {
    const deepest = strange(nested(49));
    expect(JSON.parse(plainText(deepest))).toEqual(deepest);
    expect(JSON.parse(plainText(strange(nested(50))))).toEqual(BEYOND);
  });

  test('what turns in a circle is left out; the note stays, and who wrote it', () => {
    const circle: { self?: unknown } = {};
    circle.self = circle;
    expect(jsonOf(circle)).toBeUndefined();
    expect(JSON.parse(plainText(strange(circle)))).toEqual(BEYOND);
    expect(JSON.parse(plainText(strange(circle, { by: 'other' })))).toEqual({ ...BEYOND, by: 'other' });
  });
});

test('a note is known by its phone and its number there; what is no number makes it no phone’s', () => {
  expect(writtenAs('a1b2c3-17')).toEqual({ device: 'a1b2c3', count: 17 });
  expect(writtenAs('one-two-3')).toEqual({ device: 'one-two', count: 3 });
  expect(writtenAs(`a-${'9'.repeat(15)}`)).toEqual({ device: 'a', count: 999_999_999_999_999 });
  for (const id of ['', 'a', 'a-', '-5', 'a-1x', 'a1', `a-${'9'.repeat(16)}`])
    expect(writtenAs(id)).toBeUndefined();
});
