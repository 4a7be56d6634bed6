/**
 * Codes of plans that were sent, with the bed each stands for: the list only ever grows. The lists of ideas and things
 * that they were written with stand beside them as they were, and a reader of printed codes that is not ours reads each.
 */
import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { decodePlay, encodePlay } from '#domain/play-bed/travel.ts';

type Row = { code: string; bed: PlayBed };
const sent = JSON.parse(readFileSync(new URL('./play-codes.json', import.meta.url), 'utf8')) as {
  ideas: string[];
  things: string[];
  '1': Row[];
};
const rows = sent['1'];

test('the list holds at least twenty beds, no code twice, and something of everything', () => {
  expect(rows.length).toBeGreaterThanOrEqual(20);
  expect(new Set(rows.map(({ code }) => code)).size).toBe(rows.length);
  const some = (of: (bed: PlayBed) => boolean) => rows.some(({ bed }) => of(bed));
  for (const field of ['own', 'pins', 'done', 'notToday', 'permissions'] as const)
    expect(
      some((bed) => bed[field].length > 0),
      field,
    ).toBe(true);
  expect(some(({ plan }) => plan === undefined) && some(({ plan }) => (plan?.length ?? 0) > 9)).toBe(true);
  for (const list of ['events', 'moments', 'propped', 'quiet', 'grownUp', 'energy'] as const)
    expect(
      some(({ sketch }) => sketch[list].length > 1),
      list,
    ).toBe(true);
  expect(new Set(rows.map(({ bed }) => bed.room.isolation)).size).toBe(3);
  expect(some(({ own }) => own.some(({ title }) => /[\u0600-\u06ff]/.test(title)))).toBe(true);
});

test('the places of ideas and things in a code never change: lists grow at their ends only', () => {
  expect([sent.ideas.length, sent.things.length]).toEqual([151, 54]);
  expect(IDEA_ORDER.slice(0, 151)).toEqual(sent.ideas);
  expect(THING_ORDER.slice(0, 54)).toEqual(sent.things);
});

describe.each(rows)('$code, once sent,', ({ code, bed }) => {
  test('is read as its bed for ever, with the lists of then and with those of today', () => {
    expect(decodePlay(code, sent.ideas, sent.things)).toEqual({ ok: true, bed });
    expect(decodePlay(code, IDEA_ORDER, THING_ORDER)).toEqual({ ok: true, bed });
  });

  test('is what its bed is written as today', () => {
    expect(encodePlay(bed, sent.ideas, sent.things)).toBe(code);
  });

  test('printed as a code is read by a reader that is not ours', () => {
    const { pixels, width } = picture(code);
    expect(jsQR(pixels, width, width)?.data).toBe(code);
  });
});

/** A printed code as a camera would see it: four points to a square, and the quiet margin around it. */
function picture(text: string): { pixels: Uint8ClampedArray; width: number; version: number } {
  const { data, size, version } = encode(text, { ecc: 'M', border: 4 });
  const width = size * 4;
  const pixels = new Uint8ClampedArray(width * width * 4);
  for (let y = 0; y < width; y++)
    for (let x = 0; x < width; x++) {
      const light = data[Math.floor(y / 4)]![Math.floor(x / 4)] ? 0 : 255;
      pixels.set([light, light, light, 255], (y * width + x) * 4);
    }
  return { pixels, width, version };
}

test('a typical day fits a code of 57 squares a side, which a phone shows from edge to edge', () => {
  // Source: ISO/IEC 18004, version n has 17 + 4n squares a side; 311 capitals and digits fit version 10 at M
  expect(rows[0]!.bed.plan!.length).toBe(12);
  expect(picture(rows[0]!.code).version).toBeLessThanOrEqual(10);
});
