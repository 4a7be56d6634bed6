/** What one phone hands to another beside its notes: its name, and what its clock showed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packNotes } from '#domain/notes/pack.ts';
import {
  CLOCKS_MAY_DIFFER_MINUTES,
  clocksDiffer,
  readTransfer,
  writeTransfer,
  type Transfer,
} from '#domain/notes/transfer.ts';
import { instant } from '#domain/units.ts';
import { anyNote } from '../../helpers/entries.ts';
import { cases } from '../../helpers/same-cases.ts';

const LAST = 0xffffffff;
const anyName = fc
  .array(fc.constantFrom(...'0123456789abcdef'), { minLength: 6, maxLength: 6 })
  .map((digits) => digits.join(''));
const anyTransfer: fc.Arbitrary<Transfer> = fc.record({
  entries: fc.array(anyNote, { maxLength: 6 }),
  now: fc.integer({ min: 0, max: LAST }).map(instant),
  device: fc.option(fc.record({ id: anyName, count: fc.integer({ min: 1, max: LAST }) }), { nil: undefined }),
});
const EMPTY: Transfer = { entries: [], now: instant(0), device: undefined };

describe('a transfer', () => {
  test('comes back whole: notes, clock, name and how many that phone has written', () => {
    fc.assert(
      fc.property(anyTransfer, (sent) => {
        const read = readTransfer(writeTransfer(sent));
        expect(read.ok && JSON.stringify(read.transfer)).toBe(JSON.stringify(sent));
      }),
      { numRuns: cases(1000) },
    );
  });

  test('stands in thirteen bytes before the notes: our letter, version, clock, name, count', () => {
    const bytes = writeTransfer({
      ...EMPTY,
      now: instant(0x01020304),
      device: { id: '0a0b0c', count: 0x0d0e0f10 },
    });
    expect([...bytes.slice(0, 13)]).toEqual([0x54, 1, 1, 2, 3, 4, 0x0a, 0x0b, 0x0c, 0x0d, 0x0e, 0x0f, 0x10]);
    expect([...bytes.slice(13)]).toEqual([...packNotes([])]);
  });

  test('is read where it lies: in the middle of other bytes as by itself', () => {
    const bytes = writeTransfer({ ...EMPTY, now: instant(29_000_000), device: { id: '3fa91c', count: 7 } });
    const longer = new Uint8Array(bytes.length + 9);
    longer.set(bytes, 5);
    expect(readTransfer(longer.subarray(5, 5 + bytes.length))).toEqual(readTransfer(bytes));
  });

  test('a phone that wrote nothing has no name in it', () => {
    expect(readTransfer(writeTransfer({ ...EMPTY, device: { id: '3fa91c', count: 0 } }))).toEqual({
      ok: true,
      transfer: EMPTY,
    });
  });

  test('a count too large for its place is the largest there is', () => {
    const read = readTransfer(writeTransfer({ ...EMPTY, device: { id: '3fa91c', count: LAST + 5 } }));
    expect(read.ok && read.transfer.device).toEqual({ id: '3fa91c', count: LAST });
  });

  test.each<[string, Partial<Transfer>]>([
    ['now', { now: instant(-1) }],
    ['now', { now: instant(0.5) }],
    ['now', { now: instant(LAST + 1) }],
    ['now', { now: instant(Number.NaN) }],
    ['device', { device: { id: '3FA91C', count: 1 } }],
    ['device', { device: { id: '3fa91', count: 1 } }],
    ['device', { device: { id: '3fa91c0', count: 1 } }],
  ])('what does not fit is refused by its place: %s (case %#)', (place, part) => {
    expect(() => writeTransfer({ ...EMPTY, ...part })).toThrow(`transfer › ${place}`);
  });

  test('the first and the last moment that fit are written', () => {
    for (const now of [0, LAST])
      expect(readTransfer(writeTransfer({ ...EMPTY, now: instant(now) }))).toMatchObject({
        transfer: { now },
      });
  });

  test('foreign, of a later version, cut off or damaged: said, and nothing is handed on', () => {
    const bytes = writeTransfer({ ...EMPTY, device: { id: '3fa91c', count: 1 } });
    const changed = (at: number, value: number) => bytes.map((byte, place) => (place === at ? value : byte));
    expect(readTransfer(changed(0, 0x55))).toEqual({ ok: false, reason: 'foreign' });
    expect(readTransfer(changed(1, 2))).toEqual({ ok: false, reason: 'too-new' });
    for (let length = 0; length <= 12; length++)
      expect(readTransfer(bytes.slice(0, length))).toEqual({ ok: false, reason: 'foreign' });
    // a head without a single byte of notes is none of ours
    expect(readTransfer(bytes.slice(0, 13))).toEqual({ ok: false, reason: 'foreign' });
    expect(readTransfer(bytes.slice(0, 14)).ok).toBe(false);
    expect(readTransfer(changed(bytes.length - 1, bytes.at(-1)! ^ 1)).ok).toBe(false);
  });
});

describe('two clocks', () => {
  test('are asked about from three minutes on, whichever is ahead', () => {
    expect(CLOCKS_MAY_DIFFER_MINUTES).toBe(2);
    const ahead = (minutes: number) => clocksDiffer(instant(1000 + minutes), instant(1000));
    expect([-3, -2, 0, 2, 3].map(ahead)).toEqual([-3, undefined, undefined, undefined, 3]);
  });
});
