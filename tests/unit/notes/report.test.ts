import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correctedNotes } from '#domain/notes/clocks.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { reportOf } from '#domain/notes/report.ts';
import { sightingsOf } from '#domain/notes/sightings.ts';
import { assess } from '#domain/signs/assess.ts';
import type { Sighting } from '#domain/signs/types.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { minutes } from '#domain/units.ts';
import { context } from '../../helpers/reports.ts';
import {
  anyCall,
  anySeen,
  anyWardNotes,
  clock,
  DAY,
  END,
  lineOf,
  moment,
  numbered,
  phone,
} from '../../helpers/ward-days.ts';

const at = (minute: number) => context({ now: moment(minute) });
/** Rules beside R1, which comes with every sign that another rule set. */
const rulesAt = (notes: readonly Entry[], minute: number) => {
  const { because } = assess(reportOf(notes, at(minute)), at(minute));
  return [...new Set(because.map((reason) => reason.rule))].filter((rule) => rule !== 'R1');
};
const sore = (value: number): NewEntry => ({ kind: 'sore', value, scale: 'numbers', when: 'rest' });
const MEDICINE: NewEntry = { kind: 'medicine-told' };
const ASKED: NewEntry = { kind: 'asked-for-medicine' };
const LOOKED: NewEntry = { kind: 'nurse-looked' };

describe('what the notes say about soreness', () => {
  test('R17: as sore as before, 45 minutes after the nurse said it was given; not before', () => {
    const a = phone('a');
    const notes = [a(0, sore(5)), a(10, MEDICINE), a(40, sore(5))];
    expect(rulesAt(notes, 54)).toEqual([]);
    expect(rulesAt(notes, 55)).toEqual(['R17']);
  });

  test('R18: two numbers up within four hours', () => {
    const a = phone('a');
    expect(rulesAt([a(0, sore(2)), a(240, sore(4))], 241)).toEqual(['R18']);
    expect(rulesAt([a(300, sore(2)), a(541, sore(4))], 550)).toEqual([]);
  });

  test('R19: asked twice since the last medicine mark', () => {
    const a = phone('a');
    const notes = [a(0, ASKED), a(10, MEDICINE), a(60, ASKED)];
    expect(rulesAt(notes, 70)).toEqual([]);
    expect(rulesAt([...notes, a(80, ASKED)], 90)).toEqual(['R19']);
  });

  test('asking that both phones noted counts twice until the family calls it one', () => {
    const notes = [phone('a')(0, ASKED), phone('b')(5, ASKED)];
    expect(rulesAt(notes, 10)).toEqual(['R19']);
    const one: Entry = {
      id: 'a-9',
      t: moment(8),
      off: minutes(0),
      kind: 'pair',
      first: 'a-1',
      second: 'b-1',
      same: true,
    };
    expect(rulesAt([...notes, one], 10)).toEqual([]);
  });

  test('a nurse’s look closes it; the next soreness note brings all of it back', () => {
    const a = phone('a');
    const rising = [a(0, sore(2)), a(100, sore(5)), a(110, LOOKED)];
    expect(rulesAt(rising, 120)).toEqual([]);
    expect(rulesAt([...rising, a(130, sore(5))], 131)).toEqual(['R18']);
    const asking = [a(200, ASKED), a(210, ASKED), a(220, LOOKED)];
    expect(rulesAt(asking, 230)).toEqual([]);
    expect(rulesAt([...asking, a(240, ASKED)], 241)).toEqual(['R19']);
  });

  test('a look while a dose may still begin to work closes nothing: R17 still falls due', () => {
    const a = phone('a');
    const notes = [a(0, sore(5)), a(10, MEDICINE), a(30, sore(5)), a(35, LOOKED)];
    expect(rulesAt(notes, 56)).toEqual(['R17']);
    expect(rulesAt([...notes, a(60, LOOKED)], 61)).toEqual([]);
  });

  test('told, a dose given, looked at: closed, though the dose has only just been given', () => {
    const a = phone('a');
    const notes = [a(0, sore(2)), a(100, sore(5)), a(104, MEDICINE), a(105, LOOKED)];
    expect(rulesAt(notes, 106)).toEqual([]);
    expect(rulesAt(notes.slice(0, 3), 106)).toEqual(['R18']);
  });

  test('asking is counted since the last mark, however long ago that was', () => {
    const a = phone('a');
    const notes = [a(0, ASKED), a(60, MEDICINE), a(clock(9, 0, 3), sore(1)), a(clock(9, 5, 3), ASKED)];
    expect(rulesAt(notes, clock(9, 10, 3))).toEqual([]);
  });

  test('the same sign seen again, worse, is not taken for the same', () => {
    const a = phone('a');
    const jump: NewEntry = { kind: 'sign', sign: 'leg-jumps', answer: 'different' };
    const notes = [a(0, jump), a(30, { ...jump, details: ['wakes-child'] } as NewEntry)];
    const now = at(30 + 180);
    expect(assess(reportOf(notes, now), now)).toMatchObject({ urgency: 'ring-now', since: moment(45) });
    expect(assess(reportOf(notes.slice(0, 1), now), now).urgency).toBe('next-visit');
  });

  test('soreness before a mark of last week is not held against today’s', () => {
    const a = phone('a');
    const notes = [a(0, sore(3)), a(10, MEDICINE), a(80, sore(1))];
    const today = [a(clock(9, 0, 3), MEDICINE), a(clock(10, 0, 3), sore(3))];
    expect(rulesAt([...notes, ...today], clock(10, 10, 3))).toEqual([]);
    // on the same day it is
    expect(rulesAt([...notes, a(90, sore(3))], 100)).toContain('R17');
  });

  test('a clock far ahead does not hide what is noted now', () => {
    const a = phone('a');
    const ahead = phone('b')(3 * DAY, sore(0));
    expect(rulesAt([a(0, sore(2)), a(100, sore(5)), ahead], 101)).toEqual(['R18']);
  });

  test('a struck value says nothing', () => {
    const a = phone('a');
    const notes = [a(0, sore(2)), a(100, sore(5))];
    expect(rulesAt([...notes, a(101, { kind: 'strike', strikes: 'a-2' })], 110)).toEqual([]);
  });

  test('a corrected clock moves a value out of the four hours', () => {
    const [a, b] = [phone('a'), phone('b')];
    const notes = [a(0, sore(2)), b(230, sore(4))];
    expect(rulesAt(notes, 300)).toEqual(['R18']);
    const right: NewEntry = { kind: 'clock', device: 'b', upTo: 1, minutes: 20 };
    expect(rulesAt([...notes, b(260, right)], 300)).toEqual([]);
  });
});

describe('laws of the report', () => {
  test('what is left out was looked at more than a day ago, or is there already with an earlier time', () => {
    fc.assert(
      fc.property(anyWardNotes, fc.integer({ min: 0, max: 5 * DAY }), (all, minute) => {
        const now = moment(minute);
        const told = reportOf(all, at(minute)).sightings;
        const key = ({ sign, answer, details, toldAt }: Sighting) =>
          JSON.stringify([sign, answer, details, toldAt === undefined]);
        const left = sightingsOf(correctedNotes(all)).filter(
          (s) => !told.some((kept) => JSON.stringify(kept) === JSON.stringify(s)),
        );
        for (const s of left) {
          if (s.lookedAt !== undefined) expect(now - s.at).toBeGreaterThan(DAY);
          else expect(told.some((kept) => key(kept) === key(s) && kept.at <= s.at)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('the rules say the same of it as of every sighting there is', () => {
    const seen = lineOf(fc.oneof(anySeen, anySeen, anySeen, anyCall));
    const crowded = fc.array(seen, { maxLength: 25 }).map((lines) => numbered(lines));
    fc.assert(
      fc.property(fc.oneof(anyWardNotes, crowded), fc.integer({ min: 0, max: 5 * DAY }), (all, minute) => {
        const report = reportOf(all, at(minute));
        const whole = { ...report, sightings: sightingsOf(correctedNotes(all)) };
        expect(assess(report, at(minute))).toEqual(assess(whole, at(minute)));
      }),
      { numRuns: 1000 },
    );
  });

  test('it is never less urgent than the sightings alone', () => {
    const now = context({ now: END });
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const alone = assess({ sightings: sightingsOf(correctedNotes(all)) }, now);
        expect(rankOf(assess(reportOf(all, now), now).urgency)).toBeGreaterThanOrEqual(rankOf(alone.urgency));
      }),
      { numRuns: 300 },
    );
  });

  test('while nothing is written, waiting never makes it less urgent', () => {
    fc.assert(
      fc.property(anyWardNotes, fc.integer({ min: 0, max: 3 * DAY }), (all, wait) => {
        const end = 4 * DAY + 100;
        const rank = (minute: number) => rankOf(assess(reportOf(all, at(minute)), at(minute)).urgency);
        // R13 and R20 look back over a day, and are let go by time: rules of their own, not of the report
        fc.pre(!rulesAt(all, end).some((rule) => rule === 'R13' || rule === 'R20'));
        expect(rank(end + wait)).toBeGreaterThanOrEqual(rank(end));
      }),
      { numRuns: 300 },
    );
  });
});
