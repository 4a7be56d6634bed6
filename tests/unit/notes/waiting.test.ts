import { describe, expect, it } from 'vitest';
import { summarise } from '#domain/notes/summarise.ts';
import { waitingFor } from '#domain/notes/waiting.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { instant, minutes } from '#domain/units.ts';
import { SETTINGS } from '../../helpers/ward-days.ts';

const NOW = instant(30_000_000);
let count = 0;
const note = (before: number, what: NewEntry): Entry =>
  ({ id: `a1b2c3-${(count += 1)}`, t: instant(NOW - before), off: minutes(0), ...what }) as Entry;
const sore = (before: number, value: number) =>
  note(before, { kind: 'sore', value, scale: 'numbers', when: 'rest' });
const signs = (entries: readonly Entry[]) =>
  waitingFor(summarise(entries, NOW, SETTINGS)).map(({ sign }) => sign);

describe('what waits for a nurse', () => {
  const stillSore = () => [sore(100, 6), note(90, { kind: 'medicine-told' }), sore(20, 6)];

  it('soreness that medicine did not lower waits, though nobody reported it, at its own class', () => {
    const waiting = waitingFor(summarise(stillSore(), NOW, SETTINGS));
    expect(waiting.map(({ sign, urgency }) => [sign, urgency])).toEqual([
      ['sore-after-medicine', 'ring-now'],
    ]);
    expect(waiting[0]!.since).toBe(NOW - 20);
    expect(waiting[0]!.untold).toBe(true);
  });

  it('soreness that medicine did lower does not', () => {
    expect(signs([sore(100, 6), note(90, { kind: 'medicine-told' }), sore(20, 2)])).toEqual([]);
  });

  it('a sign that was reported, too, stands there once', () => {
    const reported = note(10, { kind: 'sign', sign: 'sore-after-medicine', answer: 'different' });
    expect(signs([...stillSore(), reported])).toEqual(['sore-after-medicine']);
  });

  it('what was reported stays, whatever soreness adds', () => {
    const reported = note(30, { kind: 'sign', sign: 'band-wet', answer: 'different' });
    expect(signs([...stillSore(), reported])).toEqual(['band-wet', 'sore-after-medicine']);
  });

  it('soreness that rose and was asked about twice sets one sign, since its last note', () => {
    const summary = summarise(
      [
        sore(100, 2),
        sore(20, 5),
        note(15, { kind: 'asked-for-medicine' }),
        note(10, { kind: 'asked-for-medicine' }),
      ],
      NOW,
      SETTINGS,
    );
    expect(summary.soreness.flags.map(({ rule }) => rule)).toEqual(['R18', 'R19']);
    expect(waitingFor(summary)).toEqual([
      {
        ...{ sign: 'sore-rising', urgency: 'tell-nurse', since: NOW - 20, lastSeen: NOW - 20, untold: true },
        from: summary.soreness.from,
      },
    ]);
  });

  it('without a soreness note only what was reported waits', () => {
    const reported = note(30, { kind: 'sign', sign: 'band-wet', answer: 'different' });
    expect(signs([reported])).toEqual(['band-wet']);
    expect(signs([])).toEqual([]);
  });

  it('a nurse who looked closes both', () => {
    expect(signs([...stillSore(), note(5, { kind: 'nurse-looked' })])).toEqual([]);
  });
});
