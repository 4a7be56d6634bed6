import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { summarise } from '#domain/notes/summarise.ts';
import { mostUrgentFirst, raisedAbove, waitingFor } from '#domain/notes/waiting.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { instant, minutes } from '#domain/units.ts';
import { cases } from '../../helpers/same-cases.ts';
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

  it('a child who asks twice before medicine is due waits, though nobody noted how sore it is', () => {
    const asks = [40, 10].map((before) => note(before, { kind: 'asked-for-medicine' }));
    expect(waitingFor(summarise(asks, NOW, SETTINGS))).toEqual([
      {
        ...{ sign: 'sore-rising', urgency: 'tell-nurse', since: NOW - 10, lastSeen: NOW - 10, untold: true },
        from: asks.map(({ id }) => id),
      },
    ]);
    expect(signs(asks.slice(0, 1))).toEqual([]);
    // notes that lost their time are no reason to leave the child out
    const timeless = asks.map((ask) => ({ ...ask, t: instant(0) }));
    expect(waitingFor(summarise(timeless, NOW, SETTINGS))).toMatchObject([
      { sign: 'sore-rising', since: NOW },
    ]);
  });

  it('soreness that rose waits until a nurse looked, be it longer than a day', () => {
    const rose = [sore(1800, 2), sore(1700, 4), sore(1690, 5)];
    expect(waitingFor(summarise(rose, NOW, SETTINGS))).toMatchObject([
      { sign: 'sore-rising', since: NOW - 1690, from: [rose[2]!.id] },
    ]);
    expect(signs([...rose, note(60, { kind: 'nurse-looked' })])).toEqual([]);
  });

  it('soreness that medicine did not lower and that rose are two signs, each once', () => {
    const both = [sore(100, 3), note(90, { kind: 'medicine-told' }), sore(40, 5), sore(20, 6)];
    expect(waitingFor(summarise(both, NOW, SETTINGS)).map(({ sign, since }) => [sign, since])).toEqual([
      ['sore-after-medicine', NOW - 20],
      ['sore-rising', NOW - 20],
    ]);
  });

  it('without a soreness note only what was reported waits', () => {
    const reported = note(30, { kind: 'sign', sign: 'band-wet', answer: 'different' });
    expect(signs([reported])).toEqual(['band-wet']);
    expect(signs([])).toEqual([]);
  });

  it('is said by urgency, then the one seen last; each stays in its place among equals', () => {
    const any = fc.record({
      urgency: fc.constantFrom('ring-now', 'tell-nurse', 'next-visit', 'not-sure', 'none'),
      lastSeen: fc.nat(3).map((before) => instant(NOW - before)),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (rows) => {
        const waiting = rows.map((row, place) => ({ ...row, place }));
        const said = mostUrgentFirst(waiting);
        expect([...said].sort((a, b) => a.place - b.place)).toEqual(waiting);
        said.slice(1).forEach((next, i) => {
          const one = said[i]!;
          expect(rankOf(one.urgency)).toBeGreaterThanOrEqual(rankOf(next.urgency));
          if (one.urgency !== next.urgency) return;
          expect(one.lastSeen).toBeGreaterThanOrEqual(next.lastSeen);
          if (one.lastSeen === next.lastSeen) expect(one.place).toBeLessThan(next.place);
        });
      }),
      { numRuns: cases(300) },
    );
  });

  it('a nurse who looked closes both', () => {
    expect(signs([...stillSore(), note(5, { kind: 'nurse-looked' })])).toEqual([]);
  });

  it('what is more urgent together than each by itself is said with its reasons, and only then', () => {
    const sign = (before: number, id: string, answer: 'different' | 'not-sure' = 'different') =>
      note(before, { kind: 'sign', sign: id, answer });
    const raised = (...entries: Entry[]) => {
      const summary = summarise(entries, NOW, SETTINGS);
      return raisedAbove(summary.assessment, waitingFor(summary));
    };
    expect(raised()).toBeUndefined();
    expect(raised(sign(5, 'band-wet'))).toBeUndefined();
    const together = raised(sign(5, 'toes-swollen', 'not-sure'), sign(4, 'band-tight'));
    expect(together?.urgency).toBe('ring-now');
    expect(together?.because.map(({ rule }) => rule)).toContain('R5');
    // waiting raises, too, and that nobody has looked is no reason of its own
    const waited = raised(sign(20, 'band-wet'));
    expect(waited?.because.map(({ rule }) => rule)).toEqual(['R1', 'R14']);
    // one of them is to be pressed for by itself
    expect(raised(sign(5, 'toes-cool'), sign(4, 'band-tight'))).toBeUndefined();
  });
});
