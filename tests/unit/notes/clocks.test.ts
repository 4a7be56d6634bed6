import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correctedNotes, jumpsOf, writtenAs } from '#domain/notes/clocks.ts';
import { byTime, LAST_MINUTE, parseEntry, type Entry } from '#domain/notes/entries.ts';
import { summarise } from '#domain/notes/summarise.ts';
import { minutes } from '#domain/units.ts';
import { anyEntry } from '../../helpers/notes.ts';
import { cases } from '../../helpers/same-cases.ts';
import { anyWardNotes, END, moment, phone, SETTINGS } from '../../helpers/ward-days.ts';

const wrong = (device: string, upTo: number, shift: number, id: string, minute = 900): Entry => ({
  id,
  t: moment(minute),
  off: minutes(0),
  kind: 'clock',
  device,
  upTo,
  minutes: shift,
});
const timesOf = (entries: readonly Entry[]) => Object.fromEntries(entries.map((e) => [e.id, e.t]));

describe('a phone whose clock was wrong', () => {
  const a = phone('aaaaaa');
  const four = [60, 70, 80, 90].map((minute) => a(minute, { kind: 'bell' }));

  test('is put right up to the note that was named, and no other phone is touched', () => {
    const other = phone('bbbbbb')(65, { kind: 'told' });
    const corrected = correctedNotes([...four, other, wrong('aaaaaa', 2, 7, 'bbbbbb-9')]);
    expect(timesOf(corrected)).toMatchObject({
      'aaaaaa-1': moment(67),
      'aaaaaa-2': moment(77),
      'aaaaaa-3': moment(80),
      'bbbbbb-1': moment(65),
    });
    expect(corrected.find((e) => e.id === 'aaaaaa-1')?.writtenAt).toBe(moment(60));
    expect(corrected.find((e) => e.id === 'aaaaaa-3')).not.toHaveProperty('writtenAt');
  });

  test('two ranges each have their own minutes', () => {
    const corrected = correctedNotes([
      ...four,
      wrong('aaaaaa', 3, -5, 'bbbbbb-9', 950),
      wrong('aaaaaa', 1, 7, 'bbbbbb-8', 900),
    ]);
    expect(timesOf(corrected)).toMatchObject({
      'aaaaaa-1': moment(67),
      'aaaaaa-2': moment(65),
      'aaaaaa-3': moment(75),
      'aaaaaa-4': moment(90),
    });
  });

  test('two ranges are found by where they end, not by when they were written', () => {
    const notes = [...four, wrong('aaaaaa', 3, -5, 'bbbbbb-8', 900), wrong('aaaaaa', 1, 7, 'bbbbbb-9', 950)];
    expect(timesOf(correctedNotes(notes))).toMatchObject({
      'aaaaaa-1': moment(67),
      'aaaaaa-2': moment(65),
      'aaaaaa-4': moment(90),
    });
  });

  test('is put right up to the last minute a calendar has, and not beyond it', () => {
    const shift = LAST_MINUTE - moment(60);
    const corrected = timesOf(correctedNotes([...four, wrong('aaaaaa', 2, shift, 'bbbbbb-9')]));
    expect([corrected['aaaaaa-1'], corrected['aaaaaa-2']]).toEqual([LAST_MINUTE, moment(70)]);
  });

  test('of two for the same range the later one counts, in whichever order they arrive', () => {
    const [first, second] = [wrong('aaaaaa', 4, 7, 'bbbbbb-9', 900), wrong('aaaaaa', 4, 0, 'cccccc-1', 901)];
    for (const notes of [
      [...four, first, second],
      [second, first, ...four],
    ])
      expect(timesOf(correctedNotes(notes))['aaaaaa-1']).toBe(moment(60));
  });

  test('a struck correction corrects nothing', () => {
    const correction = wrong('aaaaaa', 4, 7, 'bbbbbb-9');
    const strike: Entry = { ...wrong('', 0, 0, 'bbbbbb-10'), kind: 'strike', strikes: 'bbbbbb-9' } as Entry;
    expect(timesOf(correctedNotes([...four, correction, strike]))['aaaaaa-1']).toBe(moment(60));
  });

  test('a note without a time stays without one, and no note leaves the calendar', () => {
    const damaged = parseEntry({ id: 'aaaaaa-1', kind: 'bell' });
    expect(correctedNotes([damaged, wrong('aaaaaa', 9, 7, 'bbbbbb-9')])[0]).toEqual(damaged);
    const far = parseEntry({ ...wrong('aaaaaa', 9, 143_000_000_000, 'bbbbbb-9') });
    expect(far.kind).toBe('clock');
    const late = parseEntry({ id: 'aaaaaa-3', t: 2_000_000_000, off: 0, kind: 'bell' });
    expect(correctedNotes([late, far]).find((e) => e.id === 'aaaaaa-3')?.t).toBe(late.t);
  });

  test('correcting twice is correcting once; no note is lost; what was written can be had again', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const once = correctedNotes(all);
        expect(correctedNotes(once)).toEqual(once);
        expect(once).toEqual([...once].sort(byTime));
        const back = once.map(({ writtenAt, ...e }) => ({ ...e, t: writtenAt ?? e.t }) as Entry);
        expect(back.sort(byTime)).toEqual([...all].sort(byTime));
      }),
      { numRuns: cases(300) },
    );
  });

  test('a correction that a later one takes back leaves every figure as it was', () => {
    // the second covers the same range, and is the later of the two
    fc.assert(
      fc.property(
        anyWardNotes.map((all) => all.filter((e) => e.kind !== 'clock')),
        fc.integer({ min: -90, max: 90 }),
        (all, shift) => {
          const undone = [
            ...all,
            wrong('aaaaaa', 99, shift, 'cccccc-1'),
            wrong('aaaaaa', 99, 0, 'cccccc-2', 901),
          ];
          expect(summarise(undone, END, SETTINGS)).toEqual(summarise(all, END, SETTINGS));
        },
      ),
      { numRuns: cases(100) },
    );
  });

  test('a wrong clock, put right, gives the summary of a right clock', () => {
    fc.assert(
      fc.property(
        anyWardNotes.map((all) => all.filter((e) => e.kind !== 'clock')),
        fc.integer({ min: -300, max: 300 }),
        (all, slow) => {
          const wrote = all.map((e) => (e.id.startsWith('aaaaaa') ? ({ ...e, t: e.t - slow } as Entry) : e));
          const right = wrong('aaaaaa', 999, slow, 'cccccc-1');
          expect(summarise([...wrote, right], END, SETTINGS)).toEqual(summarise(all, END, SETTINGS));
        },
      ),
      { numRuns: cases(200) },
    );
  });
});

describe('a clock that jumps', () => {
  const line = (...times: readonly number[]) => {
    const a = phone('aaaaaa');
    return times.map((minute) => a(minute, { kind: 'bell' }));
  };

  test('back by more than five minutes is told, with the notes on both sides', () => {
    expect(jumpsOf(line(60, 80, 74, 90))).toEqual([
      { device: 'aaaaaa', before: 'aaaaaa-2', after: 'aaaaaa-3', minutes: 6 },
    ]);
    expect(jumpsOf(line(60, 80, 75, 90))).toEqual([]);
  });

  test('two small steps back are one jump, and one jump is told once', () => {
    expect(jumpsOf(line(80, 77, 74, 73))).toMatchObject([
      { before: 'aaaaaa-1', after: 'aaaaaa-3', minutes: 6 },
    ]);
    expect(jumpsOf(line(5000, 60, 70, 80))).toHaveLength(1);
  });

  test('of notes written in one minute the last stands before the jump; five minutes back are none', () => {
    expect(jumpsOf(line(80, 80, 74))).toMatchObject([{ before: 'aaaaaa-2', after: 'aaaaaa-3' }]);
    // five back, and five more: together they are ten
    expect(jumpsOf(line(100, 95, 90))).toMatchObject([
      { before: 'aaaaaa-1', after: 'aaaaaa-3', minutes: 10 },
    ]);
  });

  test('of several phones is told phone by phone, in one order on every phone', () => {
    const jumped = (device: string) => {
      const write = phone(device);
      return [write(60, { kind: 'bell' }), write(40, { kind: 'bell' })];
    };
    const phones = ['cccccc', 'aaaaaa', 'dddddd', 'bbbbbb'];
    const devices = jumpsOf(phones.flatMap(jumped)).map(({ device }) => device);
    expect(devices).toEqual(['aaaaaa', 'bbbbbb', 'cccccc', 'dddddd']);
  });

  test('a note that cannot be read says nothing about the clock', () => {
    const strange = parseEntry({ id: 'aaaaaa-3', t: moment(40), off: 0, kind: 'a-later-kind' });
    expect(jumpsOf([...line(60, 80), strange])).toEqual([]);
  });

  test('an id of several lines names no phone', () => {
    expect(writtenAs('a\naaaaaa-1')).toBeUndefined();
    expect(writtenAs('aaaaaa-1')).toEqual({ device: 'aaaaaa', count: 1 });
    for (const id of ['aaaaaa-1x', 'aaaaaa-', 'aaaaaa', `aaaaaa-${'1'.repeat(16)}`])
      expect(writtenAs(id)).toBeUndefined();
  });

  test('forward is only time that passed', () => {
    expect(jumpsOf(line(0, 5000))).toEqual([]);
  });

  test('order is the phone’s own counter, not where the notes lie; a tenth comes after a second', () => {
    const notes = line(...Array.from({ length: 12 }, (_, i) => 10 * i));
    expect(jumpsOf([...notes].reverse())).toEqual([]);
  });

  test('two phones that differ are no jump, nor is a damaged note', () => {
    const b = phone('bbbbbb');
    const damaged = parseEntry({ id: 'aaaaaa-7', kind: 'bell' });
    expect(jumpsOf([...line(500, 510), b(60, { kind: 'told' }), damaged])).toEqual([]);
  });

  test('a correction of what came before the jump answers it', () => {
    const notes = line(1060, 1080, 74, 90);
    expect(jumpsOf(notes)).toHaveLength(1);
    expect(jumpsOf(correctedNotes([...notes, wrong('aaaaaa', 2, -1010, 'bbbbbb-9')]))).toEqual([]);
  });

  test('notes in the order of their counters have no jump, whoever wrote them', () => {
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 8 }), (entries) => {
        for (const { device, before, after, minutes: back } of jumpsOf(entries)) {
          expect(writtenAs(before)?.device).toBe(device);
          expect(writtenAs(after)!.count).toBeGreaterThanOrEqual(writtenAs(before)!.count);
          expect(back).toBeGreaterThan(5);
        }
      }),
      { numRuns: cases(200) },
    );
  });
});
