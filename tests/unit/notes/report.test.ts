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
import { cases } from '../../helpers/same-cases.ts';

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

test('where nothing was noted the rules are told nothing', () => {
  const nothing = { sightings: [], soreness: [], medicineAt: [], askedEarlyAt: [] };
  expect(reportOf([], at(0))).toStrictEqual(nothing);
  expect(reportOf([phone('a')(0, LOOKED)], at(9))).toStrictEqual(nothing);
});

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

  test('only a look closes it: no bell, no word, no coming of a nurse, nothing else that is noted', () => {
    const others: NewEntry[] = [
      ...(['bell', 'told', 'nurse-came'] as const).map((kind) => ({ kind })),
      { kind: 'drink', amount: 'sip', what: 'water' },
      { kind: 'care', what: 'round' },
      { kind: 'look', answers: { 'toes-cool': 'like-usual' } },
    ];
    for (const other of others) {
      const a = phone('a');
      expect(rulesAt([a(0, sore(2)), a(100, sore(5)), a(110, other)], 120)).toContain('R18');
      const b = phone('b');
      expect(rulesAt([b(0, ASKED), b(10, ASKED), b(20, other)], 30)).toContain('R19');
    }
  });

  test('a look while a dose may still begin to work closes nothing: R17 still falls due', () => {
    const a = phone('a');
    const notes = [a(0, sore(5)), a(10, MEDICINE), a(30, sore(5)), a(35, LOOKED)];
    expect(rulesAt(notes, 56)).toEqual(['R17']);
    expect(rulesAt([...notes, a(60, LOOKED)], 61)).toEqual([]);
    // the last value at rest counts, not one before the dose
    const b = phone('b');
    const often = [b(0, sore(5)), b(5, sore(5)), b(10, MEDICINE), b(30, sore(5)), b(35, LOOKED)];
    expect(rulesAt(often, 56)).toEqual(['R17']);
  });

  test('where soreness was noted in moving only, a look closes it whenever a dose was given', () => {
    const a = phone('a');
    const moving = (value: number): NewEntry => ({ kind: 'sore', value, scale: 'numbers', when: 'moving' });
    const notes = [a(0, moving(2)), a(100, moving(5)), a(104, MEDICINE), a(105, LOOKED)];
    expect(rulesAt(notes.slice(0, 3), 106)).toEqual(['R18']);
    expect(rulesAt(notes, 106)).toEqual([]);
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

describe('how far back the notes are read', () => {
  const read = (notes: readonly Entry[], minute: number) => {
    const { soreness, medicineAt, askedEarlyAt, sightings } = reportOf(notes, at(minute));
    const since = (times: readonly number[]) => times.map((t) => t - moment(0));
    return {
      sore: since(soreness.map((note) => note.at)),
      medicine: since(medicineAt),
      asked: since(askedEarlyAt),
      seen: since(sightings.map((sighting) => sighting.at)),
    };
  };

  test('what is noted in this very minute counts, what is noted for later does not', () => {
    const a = phone('a');
    const notes = [a(0, sore(2)), a(90, ASKED), a(100, ASKED), a(100, sore(5)), a(100, MEDICINE)];
    expect(rulesAt(notes.slice(0, 4), 100)).toEqual(['R18', 'R19']);
    expect(read(notes, 100)).toMatchObject({ sore: [0, 100], medicine: [100], asked: [90, 100] });
    expect(read(notes, 99)).toMatchObject({ sore: [0], medicine: [], asked: [90] });
  });

  test('soreness and marks of the day before the last soreness; of older marks the last alone', () => {
    const a = phone('a');
    const notes = [
      a(-1, sore(1)),
      a(-1, MEDICINE),
      a(0, sore(2)),
      a(0, MEDICINE),
      a(5, MEDICINE),
      a(DAY, sore(3)),
    ];
    expect(read(notes, DAY)).toMatchObject({ sore: [0, DAY], medicine: [0, 5] });
    expect(read([a(0, MEDICINE), a(5, MEDICINE), a(3 * DAY, sore(1))], 3 * DAY).medicine).toEqual([5]);
    // without any soreness no mark is too old
    expect(read([a(0, MEDICINE), a(5, MEDICINE)], 3 * DAY).medicine).toEqual([0, 5]);
  });

  test('a look closes soreness once the dose had its 45 minutes, and not a minute sooner', () => {
    const notes = (lookAt: number) => {
      const a = phone('a');
      return [a(0, sore(5)), a(10, MEDICINE), a(30, sore(5)), a(lookAt, LOOKED)];
    };
    expect([54, 55].map((lookAt) => read(notes(lookAt), 100).sore)).toEqual([[0, 30], []]);
    // soreness noted in the minute of the dose says nothing about the dose
    const a = phone('a');
    expect(read([a(0, sore(5)), a(30, sore(5)), a(30, MEDICINE), a(40, LOOKED)], 50).sore).toEqual([]);
    // nor does soreness on moving
    const b = phone('b');
    const moving: NewEntry = { kind: 'sore', value: 5, scale: 'numbers', when: 'moving' };
    expect(read([b(0, sore(5)), b(10, MEDICINE), b(30, moving), b(35, LOOKED)], 50).sore).toEqual([]);
  });

  test('a closed sighting is read for a day, an open one for ever; of the like, all of two hours and the first', () => {
    const seen: NewEntry = { kind: 'sign', sign: 'itchy-under', answer: 'different' };
    const a = phone('a');
    const closed = [a(-1, seen), a(0, seen), a(1, LOOKED)];
    expect(read(closed, DAY).seen).toEqual([0]);
    const b = phone('b');
    const open = [b(0, seen), b(5, seen), b(1000, seen), b(1001, seen)];
    expect(read(open, 1120).seen).toEqual([0, 1000, 1001]);
    expect(read(open, 1121).seen).toEqual([0, 1001]);
    expect(read(open, 9 * DAY).seen).toEqual([0]);
  });

  test('seen again after a nurse was told is not the like: nobody was told of it', () => {
    const seen: NewEntry = { kind: 'sign', sign: 'itchy-under', answer: 'different' };
    const a = phone('a');
    const notes = [
      a(0, seen),
      a(1, { kind: 'told' }),
      a(5, seen),
      a(6, { ...seen, answer: 'not-sure' }),
      a(7, seen),
    ];
    expect(read(notes, 500).seen).toEqual([0, 5, 6]);
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
        const left = sightingsOf(correctedNotes(all), now).filter(
          (s) => !told.some((kept) => JSON.stringify(kept) === JSON.stringify(s)),
        );
        for (const s of left) {
          if (s.lookedAt !== undefined) expect(now - s.at).toBeGreaterThan(DAY);
          else expect(told.some((kept) => key(kept) === key(s) && kept.at <= s.at)).toBe(true);
        }
      }),
      { numRuns: cases(300) },
    );
  });

  test('the rules say the same of it as of every sighting there is', () => {
    const seen = lineOf(fc.oneof(anySeen, anySeen, anySeen, anyCall));
    const crowded = fc.array(seen, { maxLength: 25 }).map((lines) => numbered(lines));
    fc.assert(
      fc.property(fc.oneof(anyWardNotes, crowded), fc.integer({ min: 0, max: 5 * DAY }), (all, minute) => {
        const report = reportOf(all, at(minute));
        const whole = { ...report, sightings: sightingsOf(correctedNotes(all), moment(minute)) };
        expect(assess(report, at(minute))).toEqual(assess(whole, at(minute)));
      }),
      { numRuns: cases(1000) },
    );
  });

  test('it is never less urgent than the sightings alone', () => {
    const now = context({ now: END });
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const alone = assess({ sightings: sightingsOf(correctedNotes(all), END) }, now);
        expect(rankOf(assess(reportOf(all, now), now).urgency)).toBeGreaterThanOrEqual(rankOf(alone.urgency));
      }),
      { numRuns: cases(300) },
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
      { numRuns: cases(300) },
    );
  });
});
