// A phone's clock is set back while the family goes on noting: nothing that waits may be let go, or wait longer.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { openSigns } from '#domain/notes/open.ts';
import { orderOf } from '#domain/notes/order.ts';
import { reportOf } from '#domain/notes/report.ts';
import { openCall } from '#domain/notes/sightings.ts';
import { summarise } from '#domain/notes/summarise.ts';
import { assess } from '#domain/signs/assess.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { minutes } from '#domain/units.ts';
import { cases } from '../../helpers/same-cases.ts';
import { context } from '../../helpers/reports.ts';
import { anyCall, anyEvent, anySeen, clock, DAY, moment, SETTINGS } from '../../helpers/ward-days.ts';

/** A phone whose clock can be set back: notes and judgements are given in true minutes, it writes its own. */
function phone(device = 'aaaaaa') {
  let back = 0;
  const notes: Entry[] = [];
  const shown = (minute: number) => moment(minute - back);
  return {
    notes,
    shown,
    setBack: (by: number) => (back += by),
    write(minute: number, what: NewEntry) {
      const note = {
        id: `${device}-${notes.length + 1}`,
        t: shown(minute),
        off: minutes(0),
        ...what,
      } as Entry;
      notes.push(note);
      return note;
    },
    at: (minute: number) => context({ now: shown(minute), offsetMinutes: minutes(back % DAY) }),
    rulesAt(minute: number) {
      const now = this.at(minute);
      return [...new Set(assess(reportOf(notes, now), now).because.map(({ rule }) => rule))].sort().join(' ');
    },
    urgencyAt(minute: number) {
      const now = this.at(minute);
      return assess(reportOf(notes, now), now).urgency;
    },
  };
}
const seen = (sign: string): NewEntry => ({ kind: 'sign', sign, answer: 'different' });
const sore = (value: number): NewEntry => ({ kind: 'sore', value, scale: 'numbers', when: 'rest' });
const DRINK: NewEntry = { kind: 'drink', amount: 'sip', what: 'water' };
const MEDICINE: NewEntry = { kind: 'medicine-told' };
const LOOKED: NewEntry = { kind: 'nurse-looked' };
const NOON = clock(12, 0, 2);

describe('a clock that is set back a day', () => {
  test('a wet bandage that nobody has looked at: the button, before a note is written since and after', () => {
    const a = phone();
    a.write(NOON, seen('band-wet'));
    expect(a.urgencyAt(NOON + 14)).toBe('tell-nurse');
    expect(a.rulesAt(NOON + 15)).toBe('R1 R14');
    a.setBack(DAY);
    expect(a.rulesAt(NOON + 16)).toBe('R1 R14 R15 R16');
    a.write(NOON + 17, DRINK);
    expect(a.rulesAt(NOON + 18)).toBe('R1 R14 R15 R16');
    // the clock of the page comes to the time of the note again a day later
    for (const later of [DAY - 30, DAY - 5, DAY, DAY + 5]) expect(a.urgencyAt(NOON + later)).toBe('ring-now');
  });

  test('an itch that nobody was told of waits no second four hours; one that was told waits on', () => {
    const a = phone();
    a.write(NOON, seen('itchy-under'));
    expect(a.urgencyAt(NOON + 239)).toBe('next-visit');
    a.setBack(DAY);
    a.write(NOON + 240, DRINK);
    expect(a.rulesAt(NOON + 241)).toBe('R1 R14 R15 R16');
    a.write(NOON + 242, { kind: 'told' });
    expect(a.urgencyAt(NOON + 243)).toBe('next-visit');
  });

  test('seen a day before the clock went back, to a time just after it: not seen just now', () => {
    const a = phone();
    a.write(NOON, seen('itchy-under'));
    a.write(NOON + DAY, DRINK);
    expect(a.urgencyAt(NOON + DAY)).toBe('ring-now');
    a.setBack(DAY);
    a.write(NOON + DAY + 1, DRINK);
    expect(a.urgencyAt(NOON + DAY + 2)).toBe('ring-now');
  });

  test('soreness that no dose has helped still counts, and rises against what was noted before', () => {
    const a = phone();
    a.write(NOON, sore(4));
    a.write(NOON + 5, MEDICINE);
    a.write(NOON + 50, sore(4));
    expect(a.rulesAt(NOON + 51)).toBe('R1 R17');
    a.setBack(DAY);
    expect(a.rulesAt(NOON + 52)).toContain('R17');
    a.write(NOON + 53, DRINK);
    expect(a.rulesAt(NOON + 54)).toContain('R17');
    a.write(NOON + 60, sore(6));
    expect(a.rulesAt(NOON + 61)).toContain('R18');
    a.write(NOON + 70, LOOKED);
    expect(a.urgencyAt(NOON + 71)).toBe('none');
  });

  test('how long ago the dose was nobody knows: it has had its time', () => {
    const a = phone();
    for (const [minute, what] of [
      [0, sore(4)],
      [5, MEDICINE],
      [10, sore(4)],
    ] as const)
      a.write(NOON + minute, what);
    expect(a.rulesAt(NOON + 11)).toBe('');
    a.setBack(DAY);
    a.write(NOON + 55, DRINK);
    expect(a.rulesAt(NOON + 56)).toBe('R1 R17');
  });

  test('a nurse’s look closes what was seen before the clock went back, and nothing seen after it', () => {
    const a = phone();
    a.write(NOON, seen('band-wet'));
    a.write(NOON + 5, LOOKED);
    a.setBack(DAY);
    a.write(NOON + 10, seen('heel-sore'));
    expect(openSigns(a.notes)).toEqual(['heel-sore']);
    expect(a.urgencyAt(NOON + 11)).toBe('tell-nurse');
    a.write(NOON + 12, LOOKED);
    expect(openSigns(a.notes)).toEqual([]);
    expect(a.urgencyAt(NOON + 13)).toBe('none');
  });

  test('a press of the button before it is answered by a look after it, and one after it is no old one', () => {
    const a = phone();
    const first = a.write(NOON, { kind: 'bell' });
    a.setBack(DAY);
    expect(openCall(a.notes, 'bell')).toEqual(first);
    a.write(NOON + 3, DRINK);
    expect(openCall(a.notes, 'bell')).toEqual({ ...first, clockWentBack: true });
    a.write(NOON + 4, LOOKED);
    expect(openCall(a.notes, 'bell')).toBeUndefined();
    const second = a.write(NOON + 9, { kind: 'bell' });
    expect(openCall(a.notes, 'bell')).toEqual(second);
  });

  test('how long there was no wee nobody knows', () => {
    const a = phone();
    const wee: NewEntry = { kind: 'wee', into: 'bottle', amount: 'usual' };
    const unknown = (minute: number) => summarise(a.notes, a.shown(minute), SETTINGS).wee.clockWentBack;
    a.write(NOON, wee);
    expect(unknown(NOON + 5)).toBeUndefined();
    a.setBack(DAY);
    expect(unknown(NOON + 5)).toBe(true);
    a.write(NOON + 6, DRINK);
    expect(unknown(NOON + DAY + 30)).toBe(true);
    a.write(NOON + DAY + 40, wee);
    expect(unknown(NOON + DAY + 41)).toBeUndefined();
  });

  test.each([
    ['wee', { kind: 'wee', into: 'bottle', amount: 'usual' }],
    ['poo', { kind: 'poo', what: 'soft' }],
  ] as const)(
    'since the last %s it is as long as since that note, also once the clock has caught up',
    (kind, what) => {
      const a = phone();
      const since = (minute: number) => summarise(a.notes, a.shown(minute), SETTINGS)[kind].last;
      a.setBack(-300);
      a.write(NOON, what);
      a.setBack(300);
      const last = a.write(NOON + 30, what);
      for (const wait of [1, 269, 271, 600])
        expect(since(NOON + 30 + wait)).toEqual({ id: last.id, at: last.t, minutes: wait });
      // one that was taken back told of its clock all the same
      const b = phone();
      b.setBack(-300);
      b.write(NOON, what);
      b.setBack(300);
      const slip = b.write(NOON + 30, DRINK);
      b.write(NOON + 31, { kind: 'strike', strikes: slip.id });
      const { clockWentBack } = summarise(b.notes.slice(0, 3), b.shown(NOON + 400), SETTINGS)[kind];
      expect(clockWentBack).toBe(true);
    },
  );

  test('a nurse who looked between two times is said to have looked between them', () => {
    const a = phone();
    a.setBack(-300);
    const first = a.write(NOON, seen('band-wet'));
    a.write(NOON + 1, LOOKED);
    a.setBack(300);
    const last = a.write(NOON + 30, seen('band-wet'));
    const { repeats } = summarise(a.notes, a.shown(NOON + 400), SETTINGS);
    expect(repeats).toMatchObject([{ nurseLookedBetween: true, from: [first.id, last.id], last: last.t }]);
  });
});

describe('two phones, one clock set back', () => {
  test('the other phone’s look of before closes nothing that was seen after it', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    a.write(NOON, DRINK);
    b.write(NOON + 5, LOOKED);
    a.write(NOON + 10, DRINK);
    a.setBack(DAY);
    const late = a.write(NOON + 20, seen('toes-cool'));
    expect(openSigns([...a.notes, ...b.notes])).toEqual(['toes-cool']);
    b.write(NOON + 30, LOOKED);
    expect(openSigns([...a.notes, ...b.notes])).toEqual([]);
    expect(orderOf([...a.notes, ...b.notes]).at(late)).toBe(late.t);
  });

  test('a look of before, noted while that clock ran ahead, closes nothing that was seen since on the other phone', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    a.setBack(-300);
    const first = b.write(NOON - 10, seen('band-wet'));
    a.write(NOON, LOOKED);
    a.setBack(300);
    a.write(NOON + 5, DRINK);
    b.write(NOON + 120, seen('toes-cool'));
    const notes = [...a.notes, ...b.notes];
    expect(openSigns(notes)).toEqual(['toes-cool']);
    expect(orderOf(notes).isAfter(a.notes[0]!, first)).toBe(true);
  });

  test('whichever of its times was right, none of its looks closes what was seen elsewhere after its next note', () => {
    // further back than all of it is long, so that the notes tell of it
    const minute = fc.integer({ min: 1, max: 499 });
    const line = fc.array(fc.tuple(minute, fc.boolean(), fc.constantFrom(LOOKED, seen('toes-cool'), DRINK)), {
      minLength: 3,
      maxLength: 12,
    });
    const all = cases(1000);
    let [closed, back] = [0, 0];
    fc.assert(
      fc.property(
        line,
        fc.nat(11),
        fc.integer({ min: 12 * 500, max: 6 * DAY }),
        fc.boolean(),
        (lines, at, by, ahead) => {
          const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
          if (ahead) a.setBack(-by);
          const truly = new Map<string, number>();
          let now = NOON;
          lines.forEach(([later, own, what], i) => {
            now += later;
            if (i === at % lines.length) a.setBack(by);
            const note = (own ? a : b).write(now, what);
            truly.set(note.id, now);
          });
          const notes = [...a.notes, ...b.notes];
          const order = orderOf(notes);
          if (order.byTimeAlone) return;
          back += 1;
          // of a look of before nobody knows where between that and the phone's next note it belongs
          const next = truly.get(a.notes.find((note, i) => i > 0 && note.t < a.notes[i - 1]!.t)!.id)!;
          const isOf = (kind: Entry['kind']) => (note: Entry) => note.kind === kind;
          for (const look of a.notes.filter(isOf('nurse-looked')))
            for (const sign of b.notes.filter(isOf('sign'))) {
              if (!order.isAfter(look, sign)) continue;
              closed += 1;
              expect(truly.get(sign.id)).toBeLessThan(Math.max(next, truly.get(look.id)!));
            }
        },
      ),
      { numRuns: all },
    );
    // a handful of cases may hold none
    if (all >= 50) expect([closed > all / 20, back > all / 20]).toEqual([true, true]);
  });

  test('a look by a clock that runs ahead closes what its own phone saw, and nothing that the other one saw by now', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    b.setBack(-240);
    const own = b.write(NOON - 40, seen('band-wet'));
    b.write(NOON - 30, LOOKED);
    const bell = a.write(NOON, { kind: 'bell' });
    a.write(NOON, seen('toes-cool'));
    const notes = [...a.notes, ...b.notes];
    const at = (minute: number) => moment(minute);
    const { because, urgency } = assess(reportOf(notes, a.at(NOON + 3)), a.at(NOON + 3));
    expect(urgency).toBe('ring-now');
    expect(because.flatMap(({ signs }) => signs)).toContain('toes-cool');
    expect(openSigns(notes, at(NOON + 3))).toEqual(['toes-cool']);
    expect(openCall(notes, 'bell', at(NOON + 3))).toMatchObject({ id: bell.id });
    const { open } = summarise(notes, at(NOON + 3), SETTINGS);
    expect(open.map(({ sign }) => sign)).toEqual(['toes-cool']);
    expect(orderOf(notes, at(NOON + 3)).isAfter(b.notes[1]!, own)).toBe(true);
    // a nurse who looks now closes it
    a.write(NOON + 4, LOOKED);
    expect(openSigns([...a.notes, ...b.notes], at(NOON + 5))).toEqual([]);
  });

  test('whatever another phone’s clock, running ahead, adds: nothing of what waits here is let go', () => {
    const line = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.oneof(anySeen, anyCall, anyEvent)), {
      minLength: 1,
      maxLength: 8,
    });
    let waited = 0;
    fc.assert(
      fc.property(line, line, fc.integer({ min: 11, max: 6 * DAY }), (here, there, ahead) => {
        const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
        let minute = NOON;
        for (const [later, what] of here) a.write((minute += later), what);
        const end = minute;
        // all that it writes lies ahead of now
        b.setBack(-ahead);
        minute = end;
        for (const [later, what] of there) b.write((minute += later), what);
        const now = a.at(end);
        const rank = (notes: readonly Entry[]) => rankOf(assess(reportOf(notes, now), now).urgency);
        const [alone, both] = [openSigns(a.notes, now.now), openSigns([...a.notes, ...b.notes], now.now)];
        expect(both).toEqual(expect.arrayContaining(alone));
        expect(rank([...a.notes, ...b.notes])).toBeGreaterThanOrEqual(rank(a.notes));
        waited += Number(alone.length > 0 && b.notes.some(({ kind }) => kind === 'nurse-looked'));
      }),
      { numRuns: cases(500) },
    );
    if (cases(500) >= 50) expect(waited).toBeGreaterThan(cases(500) / 50);
  });

  test('what a clock far ahead wrote hides nothing of what is noted now', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    a.write(NOON, sore(2));
    a.write(NOON + 100, sore(5));
    b.write(NOON + 3 * DAY, sore(0));
    const now = a.at(NOON + 101);
    const { because } = assess(reportOf([...a.notes, ...b.notes], now), now);
    expect(because.map(({ rule }) => rule)).toContain('R18');
  });
});

describe('the order of the notes', () => {
  test('without a clock that went back it is the order of their times', () => {
    const a = phone();
    for (const minute of [0, 0, 5, 9]) a.write(minute, DRINK);
    const order = orderOf(a.notes, moment(9));
    expect(order.byTimeAlone).toBe(true);
    for (const note of a.notes) {
      expect(order.at(note)).toBe(note.t);
      expect(order.wentBackSince(note)).toBe(false);
    }
  });

  test('a note is drawn back to just before the one after it, those before it at their distances', () => {
    const a = phone();
    const notes = [a.write(0, DRINK), a.write(300, DRINK), a.write(330, DRINK)];
    a.setBack(60);
    notes.push(a.write(340, DRINK));
    const order = orderOf(a.notes, a.shown(340));
    expect(notes.map((note) => order.at(note) - moment(0))).toEqual([0, 249, 279, 280]);
    expect(notes.map((note) => order.wentBackSince(note))).toEqual([true, true, true, false]);
    // some minutes are two tabs, or a clock that was set right by a little
    const b = phone();
    const little = [b.write(0, DRINK)];
    b.setBack(4);
    little.push(b.write(0, DRINK));
    expect(orderOf(little).wentBackSince(little[0]!)).toBe(false);
    expect(orderOf(little).isAfter(little[1]!, little[0]!)).toBe(true);
  });
});

test('whatever was noted and however far a clock is set back, nothing becomes less urgent by it', () => {
  const sayings = fc.array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.oneof(anyEvent, anySeen, anyCall)), {
    minLength: 2,
    maxLength: 12,
  });
  fc.assert(
    fc.property(
      sayings,
      fc.nat(11),
      fc.oneof(fc.constantFrom(DAY, 2 * DAY), fc.integer({ min: 11, max: 3 * DAY })),
      fc.integer({ min: 0, max: 600 }),
      (lines, at, by, wait) => {
        const [right, wrong] = [phone(), phone()];
        let minute = NOON;
        lines.forEach(([later, what], i) => {
          minute += later;
          // the clock goes back between two notes; what was noted after it tells of it
          if (i > 0 && i === at % lines.length) wrong.setBack(by);
          right.write(minute, what);
          wrong.write(minute, what);
        });
        fc.pre(wrong.notes.some((note, i) => i > 0 && note.t < wrong.notes[i - 1]!.t));
        const rank = (one: typeof right) => rankOf(one.urgencyAt(minute + wait));
        expect(rank(wrong)).toBeGreaterThanOrEqual(rank(right));
      },
    ),
    { numRuns: cases(1500) },
  );
});
