import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergeNotes, parseEntry, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import { correctedNotes } from '#domain/notes/clocks.ts';
import { orderOf } from '#domain/notes/order.ts';
import { summarise } from '#domain/notes/summarise.ts';
import type { Summary } from '#domain/notes/summary.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { instant, minutes } from '#domain/units.ts';
import {
  anyDaily,
  anyEvent,
  anySeen,
  anySleep,
  anyWardNotes,
  clock,
  DAY,
  END,
  lineOf,
  moment,
  numbered,
  phone,
  SETTINGS,
} from '../../helpers/ward-days.ts';
import { cases } from '../../helpers/same-cases.ts';

const at = (entries: readonly Entry[], minute: number): Summary =>
  summarise(entries, moment(minute), SETTINGS);
const sum = (entries: readonly Entry[]) => summarise(entries, END, SETTINGS);
const strikeOf = (struck: Entry, minute: number, id = 'cccccc-1'): Entry => ({
  id,
  t: moment(minute),
  off: minutes(0),
  kind: 'strike',
  strikes: struck.id,
});
const withoutStrikes = ({ struck: _struck, ...rest }: Summary) => rest;
const eventLine = lineOf(anyEvent, 3 * DAY - 60);
const oneMore = eventLine.map((line): Entry => ({ ...numbered([line])[0]!, id: 'cccccc-7' }) as Entry);

describe('laws of the summary', () => {
  test('it makes no difference who sent notes to whom, or in which order they lie there', () => {
    fc.assert(
      fc.property(
        anyWardNotes.chain((all) =>
          fc.tuple(
            fc.constant(all),
            fc.shuffledSubarray(all),
            fc.shuffledSubarray(all, { minLength: all.length }),
          ),
        ),
        ([all, some, shuffled]) => {
          const expected = sum(all);
          expect(sum(mergeNotes(some, all))).toEqual(expected);
          expect(sum(mergeNotes(all, some))).toEqual(expected);
          expect(sum(shuffled)).toEqual(expected);
        },
      ),
      { numRuns: cases(200) },
    );
  });

  test('a struck note counts as if it had never been written, except in the list of what was struck', () => {
    fc.assert(
      fc.property(anyWardNotes, oneMore, (all, more) => {
        const struck = mergeNotes(all, [more, strikeOf(more, 4 * DAY)]);
        expect(withoutStrikes(sum(struck))).toEqual(withoutStrikes(sum(all)));
        expect(sum(struck).struck).toContainEqual(
          expect.objectContaining({ id: more.id, kind: more.kind, at: more.t, from: ['cccccc-1'] }),
        );
      }),
      { numRuns: cases(300) },
    );
  });

  test('a sign, a look or a note of the day more never lowers the class', () => {
    // left out, since lowering is their meaning: strikes, clocks, a nurse’s look, a word to a nurse (R15), the
    // newest soreness (R17, R18) and a new medicine mark (R19)
    const more = lineOf(fc.oneof(anySeen, anyDaily, anySleep), 0).map(
      (line): Entry => ({ ...numbered([line])[0]!, id: 'cccccc-7' }) as Entry,
    );
    fc.assert(
      fc.property(anyWardNotes, more, (all, added) => {
        const [before, after] = [sum(all), sum(mergeNotes(all, [added]))];
        expect(rankOf(after.assessment.urgency)).toBeGreaterThanOrEqual(rankOf(before.assessment.urgency));
        for (const open of before.open) {
          const still = after.open.find((row) => row.sign === open.sign)!;
          expect(rankOf(still.urgency)).toBeGreaterThanOrEqual(rankOf(open.urgency));
          expect(still.since).toBeLessThanOrEqual(open.since);
        }
      }),
      { numRuns: cases(300) },
    );
  });

  test('the same notes a day later give the same summary a day later', () => {
    // universal days: the calendar’s own days move with them where the offset stays
    const still = anyWardNotes.map((all) => all.map((entry) => ({ ...entry, off: minutes(0) })));
    const back = (value: unknown): unknown => {
      if (typeof value === 'number') return value > 1_000_000 ? value - DAY : value;
      if (Array.isArray(value)) return value.map(back);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, back(inner)]));
    };
    fc.assert(
      fc.property(still, (all) => {
        const later = all.map((entry) => ({ ...entry, t: instant(entry.t + DAY) }));
        expect(back(summarise(later, instant(END + DAY), SETTINGS))).toEqual(sum(all));
      }),
      { numRuns: cases(200) },
    );
  });

  test('at least is never more than at most, and every figure names notes that are there and not struck', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const struck = new Set(all.flatMap((entry) => (entry.kind === 'strike' ? [entry.strikes] : [])));
        const known = new Set(all.map((entry) => entry.id).filter((id) => !struck.has(id)));
        const walk = (value: unknown, key: string): void => {
          if (typeof value !== 'object' || value === null || key === 'struck') return;
          const row = value as Record<string, unknown>;
          if (typeof row.low === 'number') {
            expect(row.low).toBeLessThanOrEqual(row.high as number);
            if ('from' in row)
              expect((row.from as string[]).length).toBeGreaterThanOrEqual(row.high as number);
          }
          if (Array.isArray(row.from)) for (const id of row.from as string[]) expect(known).toContain(id);
          for (const [name, inner] of Object.entries(row)) walk(inner, name);
        };
        walk(sum(all), '');
      }),
      { numRuns: cases(300) },
    );
  });

  test('it is plain JSON, and the notes handed in are left as they are', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const before = JSON.stringify(all);
        const summary = sum(all);
        expect(JSON.parse(JSON.stringify(summary))).toEqual(summary);
        expect(JSON.stringify(all)).toBe(before);
      }),
      { numRuns: cases(100) },
    );
  });
});

describe('counted again, slowly', () => {
  const kept = (all: readonly Entry[]) => {
    const corrected = correctedNotes(all);
    return corrected.filter((e) => !corrected.some((s) => s.kind === 'strike' && s.strikes === e.id));
  };

  test('the longest sleep is the most minutes between "fell asleep" and "woke", or until now, one by one', () => {
    const nights = fc.array(lineOf(anySleep, 2 * DAY), { maxLength: 25 }).map((lines) => numbered(lines));
    fc.assert(
      fc.property(nights, (all) => {
        const taps = mergeNotes(all, []).filter((e) => e.kind === 'sleep' && e.what !== 'nap');
        const fell = (e?: Entry) => e?.kind === 'sleep' && e.what === 'fell-asleep';
        const woke = (e?: Entry) => e?.kind === 'sleep' && e.what === 'woke';
        const asleep = taps.map(() => 0);
        for (let minute: number = END - 2 * DAY; minute < END; minute++) {
          let i = taps.findLastIndex((e) => e.t <= minute);
          // a second tap within ten minutes is about the same falling asleep
          while (fell(taps[i]) && fell(taps[i + 1]) && taps[i + 1]!.t - taps[i]!.t <= 10) i++;
          const end = taps[i + 1];
          if (fell(taps[i]) && (!end || (woke(end) && end.t > END - DAY))) asleep[i]!++;
        }
        expect(sum(all).sleep.longest?.minutes ?? 0).toBe(Math.max(0, ...asleep));
      }),
      { numRuns: cases(60) },
    );
  });

  test('quarter cups: all that were noted at most, and no less than either phone noted at least', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const quarters = { sip: 0, quarter: 1, half: 2, full: 4, 'not-said': 0 };
        const drinks = kept(all).filter((e) => e.kind === 'drink' && e.t > END - DAY && e.t <= END + 5);
        const total = (of: readonly Entry[]) =>
          of.reduce((cups, e) => cups + (e.kind === 'drink' ? quarters[e.amount] : 0), 0);
        const paired = all.some((e) => e.kind === 'pair' && e.same);
        const { low, high } = sum(all).drinks.quarters;
        if (paired) expect(high).toBeLessThanOrEqual(total(drinks));
        else {
          expect(high).toBe(total(drinks));
          for (const one of ['aaaaaa', 'bbbbbb'])
            expect(low).toBeGreaterThanOrEqual(total(drinks.filter((e) => e.id.startsWith(one))));
        }
      }),
      { numRuns: cases(500) },
    );
  });

  test('the last wee and the last poo are the last that stand there', () => {
    fc.assert(
      fc.property(anyWardNotes, (all) => {
        const past = kept(all).filter((e) => e.t <= END + 5);
        // where a phone's last note lies far ahead, its clock went back since: what it wrote may be longer ago (order.test)
        const order = orderOf(kept(all), END);
        fc.pre(past.every((e) => order.at(e) === e.t));
        const wee = past.findLast((e) => e.kind === 'wee');
        const poo = past.findLast((e) => e.kind === 'poo' && e.what !== 'none-today');
        const summary = sum(all);
        expect(summary.wee.last?.id).toBe(wee?.id);
        expect(summary.poo.last?.id).toBe(poo?.id);
        if (wee) expect(summary.wee.last!.minutes).toBe(Math.max(0, END - wee.t));
      }),
      { numRuns: cases(300) },
    );
  });
});

describe('what is open', () => {
  const sign = (id: string): NewEntry => ({ kind: 'sign', sign: id, answer: 'different' });

  test('a sign stays open from when it was first seen, with every step of the answer, until a nurse looked', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(60, sign('toes-cool')),
      a(62, { kind: 'bell' }),
      a(65, { kind: 'told' }),
      a(66, { kind: 'told' }),
      a(70, { kind: 'nurse-came' }),
      a(71, sign('itchy-under')),
    ];
    expect(at(notes, 80).open).toStrictEqual([
      {
        sign: 'toes-cool',
        urgency: 'ring-now',
        since: moment(60),
        lastSeen: moment(60),
        bellAt: moment(62),
        wordAt: moment(65),
        nurseCameAt: moment(70),
        untold: false,
        from: ['aaaaaa-1'],
      },
      {
        sign: 'itchy-under',
        urgency: 'next-visit',
        since: moment(71),
        lastSeen: moment(71),
        untold: true,
        from: ['aaaaaa-6'],
      },
    ]);
    expect(at([...notes, a(90, { kind: 'nurse-looked' })], 95)).toMatchObject({
      open: [],
      assessment: { urgency: 'none' },
    });
  });

  test('seen again after a nurse was told: somebody must be told again', () => {
    const a = phone('aaaaaa');
    const notes = [a(60, sign('toes-cool')), a(62, { kind: 'told' }), a(70, sign('toes-cool'))];
    expect(at(notes, 75).open).toMatchObject([{ since: moment(60), lastSeen: moment(70), untold: true }]);
  });

  test('"not sure" asks a nurse to look, also about a sign of the lowest class', () => {
    const notes = [phone('aaaaaa')(60, { kind: 'sign', sign: 'itchy-under', answer: 'not-sure' })];
    expect(at(notes, 61).open).toMatchObject([{ sign: 'itchy-under', urgency: 'not-sure' }]);
  });

  test('a sub-answer that wakes the child raises its sign', () => {
    const a = phone('aaaaaa');
    const jump: NewEntry = { kind: 'sign', sign: 'leg-jumps', answer: 'different' };
    expect(at([a(60, jump)], 61).open[0]!.urgency).toBe('next-visit');
    expect(at([a(62, { ...jump, details: ['wakes-child'] } as NewEntry)], 63).open[0]!.urgency).toBe(
      'tell-nurse',
    );
  });

  test('the sub-answer that gives a sign its class is named with it, and no other', () => {
    const a = phone('aaaaaa');
    const wet = (...details: string[]): NewEntry => ({
      kind: 'sign',
      sign: 'band-moved',
      answer: 'different',
      ...(details.length && { details }),
    });
    const [plain, off] = [a(0, wet()), a(1, wet('right-off'))];
    expect(at([plain], 10).open[0]!.details).toBeUndefined();
    expect(at([plain, off], 10).open).toMatchObject([
      { sign: 'band-moved', urgency: 'ring-now', details: ['band-moved/right-off'] },
    ]);
    // one this version does not know is no reason to press now
    const odd = a(2, wet('of-a-later-version'));
    expect(at([plain, off, odd], 10).open[0]!.details).toEqual(['band-moved/right-off']);
    expect(at([plain, odd], 10).open[0]!.details).toEqual(['band-moved/of-a-later-version']);
    expect(
      at([plain, off, a(3, { kind: 'nurse-looked' }), a(4, wet())], 10).open[0]!.details,
    ).toBeUndefined();
  });

  test('a struck sign is out of the class and still told: reported 03:11, struck 03:13', () => {
    const a = phone('aaaaaa');
    const seen = a(clock(3, 11), sign('toes-cool'));
    const summary = at([seen, a(clock(3, 13), { kind: 'strike', strikes: seen.id })], clock(3, 20));
    expect(summary).toMatchObject({ open: [], assessment: { urgency: 'none' } });
    expect(summary.struck).toEqual([
      {
        id: seen.id,
        kind: 'sign',
        at: moment(clock(3, 11)),
        struckAt: moment(clock(3, 13)),
        urgency: 'ring-now',
        from: ['aaaaaa-2'],
      },
    ]);
  });

  test.each(['bell', 'told', 'nurse-came'] as const)(
    'a struck %s keeps both: when it was, when it was struck',
    (kind) => {
      const a = phone('aaaaaa');
      const call = a(61, { kind });
      const notes = [a(60, sign('toes-cool')), call, strikeOf(call, 64)];
      expect(at(notes, 70).struck).toEqual([
        { id: call.id, kind, at: moment(61), struckAt: moment(64), from: ['cccccc-1'] },
      ]);
      expect(at(notes, 70).open).toEqual(at([notes[0]!], 70).open);
    },
  );

  test('a strike that is struck still strikes', () => {
    const a = phone('aaaaaa');
    const seen = a(60, sign('toes-cool'));
    const strike = strikeOf(seen, 61);
    expect(at([seen, strike, strikeOf(strike, 62, 'cccccc-2')], 70).open).toEqual([]);
  });

  test('struck twice, it was struck when it was struck first', () => {
    const a = phone('aaaaaa');
    const seen = a(60, sign('toes-cool'));
    const notes = [seen, strikeOf(seen, 70, 'bbbbbb-1'), strikeOf(seen, 65, 'cccccc-1')];
    expect(at(notes, 80).struck).toMatchObject([
      { id: seen.id, struckAt: moment(65), from: ['cccccc-1', 'bbbbbb-1'] },
    ]);
  });

  test('after a nurse’s look, what is seen anew and told anew has its own times', () => {
    const a = phone('aaaaaa');
    const round = (minute: number) => [
      a(minute, sign('toes-cool')),
      a(minute + 1, { kind: 'bell' }),
      a(minute + 2, { kind: 'told' }),
      a(minute + 3, { kind: 'nurse-came' }),
    ];
    const notes = [...round(60), a(70, { kind: 'nurse-looked' }), ...round(100)];
    expect(at(notes, 110).open).toMatchObject([
      { bellAt: moment(101), wordAt: moment(102), nurseCameAt: moment(103), untold: false },
    ]);
  });

  test('a struck look keeps what its gravest sign was by itself; what is no sign has no class', () => {
    const a = phone('aaaaaa');
    const look = a(60, {
      kind: 'look',
      answers: { 'itchy-under': 'different', 'toes-cool': 'different', 'band-wet': 'like-usual' },
    });
    const usual = a(61, { kind: 'look', answers: { 'toes-cool': 'like-usual' } });
    const notes = [look, strikeOf(look, 62), usual, strikeOf(usual, 63, 'cccccc-2')];
    expect(at(notes, 70).struck).toStrictEqual([
      {
        ...{ id: look.id, struckAt: moment(62), from: ['cccccc-1'], kind: 'look', at: moment(60) },
        urgency: 'ring-now',
      },
      { id: usual.id, struckAt: moment(63), from: ['cccccc-2'], kind: 'look', at: moment(61) },
    ]);
  });

  test('a struck note that nobody can read has no class, though unstruck it counts as tell-nurse', () => {
    const damaged = parseEntry({ id: 'bbbbbb-4', t: moment(60), off: 0, kind: 'song' });
    expect(at([damaged], 70).open).toMatchObject([{ urgency: 'tell-nurse' }]);
    expect(at([damaged, strikeOf(damaged, 61)], 70).struck).toStrictEqual([
      { id: 'bbbbbb-4', struckAt: moment(61), from: ['cccccc-1'], kind: 'unknown', at: moment(60) },
    ]);
  });

  test('a strike that came before its note is told as struck without a kind', () => {
    const lone = strikeOf({ id: 'bbbbbb-4' } as Entry, 61);
    expect(at([lone], 70).struck).toEqual([{ id: 'bbbbbb-4', struckAt: moment(61), from: ['cccccc-1'] }]);
  });

  test('a damaged note without a time is open and counts as tell-nurse or more', () => {
    const damaged = parseEntry({ kind: 'bell' });
    const summary = at([damaged], 70);
    expect(summary.open).toMatchObject([{ sign: `unknown:${damaged.id}` }]);
    expect(rankOf(summary.assessment.urgency)).toBeGreaterThanOrEqual(2);
    expect(summary.notesSince).toBeUndefined();
  });

  test('stands by urgency, then by how long it waits, then by its name', () => {
    const a = phone('aaaaaa');
    const look: NewEntry = {
      kind: 'look',
      answers: {
        ...{ 'no-poo': 'different', 'itchy-under': 'different' },
        ...{ 'leg-jumps': 'different', 'toes-swollen': 'different' },
      },
    };
    const notes = [a(60, look), a(61, sign('heel-sore')), a(62, sign('band-wet')), a(70, sign('toes-cool'))];
    const order = [
      'toes-cool',
      'toes-swollen',
      'heel-sore',
      'band-wet',
      'itchy-under',
      'leg-jumps',
      'no-poo',
    ];
    expect(at(notes, 71).open.map((one) => one.sign)).toEqual(order);
    expect(at([...notes].reverse(), 71).open.map((one) => one.sign)).toEqual(order);
  });

  test('a sign seen once without and once with a sub-answer is as urgent as the graver of the two', () => {
    const a = phone('aaaaaa');
    const jump: NewEntry = { kind: 'sign', sign: 'leg-jumps', answer: 'different' };
    const woke = { ...jump, details: ['wakes-child'] } as NewEntry;
    expect(at([a(60, jump), a(62, woke)], 63).open).toMatchObject([{ urgency: 'tell-nurse' }]);
    const b = phone('bbbbbb');
    expect(at([b(60, woke), b(62, jump)], 63).open).toMatchObject([{ urgency: 'tell-nurse' }]);
  });

  test('the notes begin with the first that tells something: no answer to a pair, no clock, no strike', () => {
    const a = phone('aaaaaa');
    const about: Entry[] = [
      a(1, { kind: 'pair', first: 'x-1', second: 'y-1', same: true }),
      a(2, { kind: 'clock', device: 'bbbbbb', upTo: 1, minutes: 1 }),
      a(3, { kind: 'strike', strikes: 'cccccc-1' }),
    ];
    expect(at(about, 70)).not.toHaveProperty('notesSince');
    expect(at(about, 70)).not.toHaveProperty('lastLook');
    expect(at([...about, a(9, { kind: 'told' }), a(20, { kind: 'bell' })], 70).notesSince).toBe(moment(9));
  });

  test('ahead of this clock is what lies more than five minutes from now; a strike from there is not named', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(65, { kind: 'bell' }),
      a(66, { kind: 'told' }),
      a(90, { kind: 'strike', strikes: 'x-1' }),
    ];
    expect(at(notes, 60).ahead).toEqual(['aaaaaa-2']);
  });

  test('a note from after now is named, counts as seen, and is in no sum', () => {
    const a = phone('aaaaaa');
    const notes = [a(90, sign('toes-cool')), a(91, { kind: 'wee', into: 'pan', amount: 'usual' })];
    expect(at(notes, 60)).toMatchObject({
      ahead: ['aaaaaa-1', 'aaaaaa-2'],
      assessment: { urgency: 'ring-now' },
      wee: { low: 0, high: 0 },
    });
    expect(at(notes, 60).wee.last).toBeUndefined();
    // two clocks that differ by a few minutes are no reason to leave a note out
    expect(at(notes, 86).wee.last).toMatchObject({ minutes: 0 });
  });
});

describe('what came again', () => {
  const itch: NewEntry = { kind: 'sign', sign: 'itchy-under', answer: 'different' };

  test('twice in a day, with and without a nurse’s look in between', () => {
    const a = phone('aaaaaa');
    const [first, look, second] = [a(60, itch), a(100, { kind: 'nurse-looked' }), a(200, itch)];
    const row = {
      sign: 'itchy-under',
      low: 2,
      high: 2,
      first: moment(60),
      last: moment(200),
      from: [first.id, second.id],
    };
    expect(at([first, look, second], 300).repeats).toEqual([{ ...row, nurseLookedBetween: true }]);
    expect(at([first, second], 300).repeats).toEqual([{ ...row, nurseLookedBetween: false }]);
    expect(at([first, second, a(250, { kind: 'nurse-looked' })], 300).repeats).toEqual([
      { ...row, nurseLookedBetween: false },
    ]);
  });

  test('three times: from the first to the last, and a look before the first lies between none', () => {
    const a = phone('aaaaaa');
    const looked: NewEntry = { kind: 'nurse-looked' };
    const notes = [a(30, looked), ...[60, 200, 300].map((minute) => a(minute, itch))];
    const row = { low: 3, high: 3, first: moment(60), last: moment(300) };
    expect(at(notes, 400).repeats).toMatchObject([{ ...row, nurseLookedBetween: false }]);
    const between = [...notes, phone('bbbbbb')(250, looked)];
    expect(at(between, 400).repeats).toMatchObject([{ ...row, nurseLookedBetween: true }]);
  });

  test('a look while two phones note one sign: each note stands at its own time', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    const found: NewEntry = { kind: 'look', answers: { 'itchy-under': 'different' } };
    expect(at([a(60, itch), a(65, found), b(69, itch)], 80).repeats).toMatchObject([
      {
        ...{ low: 2, high: 3, first: moment(60), last: moment(69) },
        from: ['aaaaaa-1', 'aaaaaa-2', 'bbbbbb-1'],
      },
    ]);
  });

  test('within one minute the phone’s own order tells what lay in between', () => {
    const a = phone('aaaaaa');
    const between = [a(60, itch), a(70, { kind: 'nurse-looked' }), a(70, itch)];
    expect(at(between, 80).repeats[0]!.nurseLookedBetween).toBe(true);
    const b = phone('bbbbbb');
    const after = [b(60, itch), b(70, itch), b(70, { kind: 'nurse-looked' })];
    expect(at(after, 80).repeats[0]!.nurseLookedBetween).toBe(false);
  });

  test('a day and a minute later it is once', () => {
    const a = phone('aaaaaa');
    const notes = [a(60, itch), a(200, itch)];
    expect(at(notes, 60 + DAY - 1).repeats).toHaveLength(1);
    expect(at(notes, 60 + DAY).repeats).toEqual([]);
  });

  test('noted by both phones within ten minutes it may have come once or twice', () => {
    const notes = [phone('aaaaaa')(60, itch), phone('bbbbbb')(65, itch)];
    expect(at(notes, 80).repeats).toMatchObject([{ low: 1, high: 2 }]);
  });

  test('a doubt in a look is a time it was there; like usual and not looked are none', () => {
    const a = phone('aaaaaa');
    const look: NewEntry = {
      kind: 'look',
      answers: { 'itchy-under': 'not-sure', 'toes-cool': 'like-usual', 'band-wet': 'not-looked' },
    };
    expect(at([a(60, look), a(300, look)], 400).repeats).toMatchObject([{ sign: 'itchy-under', low: 2 }]);
    expect(at([a(60, look), a(300, look)], 400).repeats).toHaveLength(1);
  });

  test('only a nurse’s look is a look in between: no bell, no word, no coming', () => {
    const a = phone('aaaaaa');
    const marks = (['bell', 'told', 'nurse-came'] as const).map((kind, n) => a(100 + n, { kind }));
    expect(at([a(60, itch), ...marks, a(200, itch)], 300).repeats).toMatchObject([
      { nurseLookedBetween: false },
    ]);
  });

  test('what came most often stands first, then by its name', () => {
    const a = phone('aaaaaa');
    const look: NewEntry = { kind: 'look', answers: { 'no-poo': 'different', 'band-wet': 'different' } };
    const notes = [a(60, look), a(200, look), a(300, itch), a(400, itch), a(500, itch)];
    expect(at(notes, 600).repeats.map((one) => [one.sign, one.high])).toEqual([
      ['itchy-under', 3],
      ['band-wet', 2],
      ['no-poo', 2],
    ]);
    const [b, other] = [phone('aaaaaa'), { 'band-wet': 'different', 'no-poo': 'different' } as const];
    const inOrder = [60, 200].map((minute) => b(minute, { kind: 'look', answers: other }));
    expect(at(inOrder, 600).repeats.map((one) => one.sign)).toEqual(['band-wet', 'no-poo']);
  });

  test('what a look found counts beside what was reported alone', () => {
    const a = phone('aaaaaa');
    const look: NewEntry = {
      kind: 'look',
      answers: { 'itchy-under': 'different', 'toes-cool': 'like-usual' },
    };
    expect(at([a(60, itch), a(300, look)], 400).repeats).toMatchObject([{ sign: 'itchy-under', low: 2 }]);
  });
});

describe('one sight told in two notes', () => {
  const swollen = (answer: 'different' | 'not-sure', ...details: string[]): NewEntry => ({
    kind: 'sign',
    sign: 'toes-swollen',
    answer,
    ...(details.length && { details }),
  });
  const count = (notes: readonly Entry[], minute = 700) =>
    at(notes, minute).repeats.map(({ low, high }) => [low, high])[0] ?? [1, 1];

  test('a sign, then its sub-answer, or a surer answer: once, by one phone, within ten minutes', () => {
    const told = (minutes: number, second: NewEntry, first = swollen('different'), other = false) => {
      const a = phone('aaaaaa');
      return [a(60, first), other ? phone('bbbbbb')(60 + minutes, second) : a(60 + minutes, second)];
    };
    const detail = swollen('different', 'cannot-move');
    expect(count(told(1, detail))).toEqual([1, 1]);
    expect(count(told(10, detail))).toEqual([1, 1]);
    expect(count(told(0, swollen('different'), swollen('not-sure')))).toEqual([1, 1]);
    expect(count(told(11, detail))).toEqual([2, 2]);
    expect(count(told(1, detail, swollen('different'), true))).toEqual([2, 2]);
    expect(count(told(1, swollen('different')))).toEqual([2, 2]);
  });

  test('a nurse’s look in between makes two of it, as for the rules', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(60, swollen('different')),
      a(61, { kind: 'nurse-looked' }),
      a(62, swollen('different', 'cannot-move')),
    ];
    expect(count(notes)).toEqual([2, 2]);
  });

  test('both phones told both: one sight at least, two at most', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    const detail = swollen('different', 'cannot-move');
    const notes = [a(60, swollen('different')), b(62, swollen('different')), a(61, detail), b(63, detail)];
    expect(count(notes)).toEqual([1, 2]);
    expect(at(notes, 700).repeats[0]!.from).toHaveLength(4);
  });

  test('three times within ten minutes as often as it was told in the same words', () => {
    const a = phone('aaaaaa');
    const detail = swollen('different', 'cannot-move');
    expect(
      count([a(60, swollen('different')), a(61, detail), a(62, swollen('different')), a(63, detail)]),
    ).toEqual([2, 2]);
  });

  test('never fewer than a nurse’s looks part, as the rules count, and never more than there are notes', () => {
    const told = fc.constantFrom<NewEntry>(
      swollen('different'),
      swollen('not-sure'),
      swollen('different', 'cannot-move'),
      { kind: 'nurse-looked' },
    );
    const lines = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), told), { maxLength: 14 });
    let thirdTimes = 0;
    fc.assert(
      fc.property(lines, (rows) => {
        const a = phone('aaaaaa');
        let minute = 0;
        const notes = rows.map(([later, what]) => a((minute += later), what));
        const parts = notes.reduce<number[]>(
          (all, { kind }) => (kind === 'sign' ? [...all.slice(0, -1), all.at(-1)! + 1] : [...all, 0]),
          [0],
        );
        const summary = at(notes, minute + 1);
        const [low, high] = count(notes, minute + 1);
        expect(low).toBe(high);
        expect(low).toBeGreaterThanOrEqual(parts.filter((some) => some > 0).length);
        expect(low).toBeLessThanOrEqual(Math.max(1, notes.filter(({ kind }) => kind === 'sign').length));
        if (summary.assessment.because.some(({ rule }) => rule === 'R13')) {
          thirdTimes++;
          expect(high).toBeGreaterThanOrEqual(3);
        }
      }),
      { numRuns: cases(300) },
    );
    expect(thirdTimes).toBeGreaterThan(0);
  });

  test('where nobody was ever sure, that is said; one sure note is enough to leave it out', () => {
    const a = phone('aaaaaa');
    const look = (answer: 'different' | 'not-sure'): NewEntry => ({
      kind: 'look',
      answers: { 'toes-swollen': answer },
    });
    const doubts = [a(60, swollen('not-sure')), a(200, look('not-sure'))];
    expect(at(doubts, 300)).toMatchObject({ repeats: [{ notSure: true }], open: [{ notSure: true }] });
    for (const sure of [look('different'), swollen('different')]) {
      const summary = at([...doubts, a(250, sure)], 300);
      expect([summary.repeats[0]!.notSure, summary.open[0]!.notSure]).toEqual([undefined, undefined]);
    }
  });
});

describe('the last family look', () => {
  const look = (answered: readonly string[]): NewEntry => ({
    kind: 'look',
    answers: Object.fromEntries(
      Object.entries(SETTINGS.lookOf).flatMap(([sign, group]) =>
        group ? [[sign, answered.includes(group) ? 'like-usual' : 'not-looked']] : [],
      ),
    ),
  });

  test('counts with four of six answered, not with three', () => {
    const a = phone('aaaaaa');
    const whole = a(60, look(['toes', 'bandage', 'straight', 'cord']));
    const notes = [whole, a(100, look(['toes', 'bandage', 'straight']))];
    expect(at(notes, 120).lastLook).toEqual({ at: moment(60), minutes: 60, looks: 4, from: [whole.id] });
    expect(at(notes.slice(1), 120).lastLook).toBeUndefined();
  });

  test('the very first look counts as any other, and one by a clock four minutes ahead was just now', () => {
    const whole = phone('aaaaaa')(64, look(['toes', 'bandage', 'straight', 'cord', 'child']));
    expect(at([whole], 60).lastLook).toEqual({ at: moment(64), minutes: 0, looks: 5, from: [whole.id] });
    expect(at([whole, phone('bbbbbb')(65, { kind: 'bell' })], 70).lastLook).toMatchObject({ minutes: 6 });
  });

  test('signs that belong to no look make none, whatever their names are', () => {
    const three = look(['toes', 'bandage', 'straight']);
    if (three.kind !== 'look') throw new Error('asked for a look');
    const strange = ['constructor', 'toString', '__proto__', 'a-later-sign'].map((sign) => [
      sign,
      'like-usual',
    ]);
    const answers = { ...three.answers, ...Object.fromEntries(strange) } as typeof three.answers;
    expect(at([phone('aaaaaa')(60, { ...three, answers })], 120).lastLook).toBeUndefined();
  });

  test('one question left out in a look, and that look was not done', () => {
    const whole = look(['toes', 'bandage', 'straight', 'cord']);
    if (whole.kind !== 'look') throw new Error('asked for a look');
    const gap: NewEntry = { ...whole, answers: { ...whole.answers, 'toes-cool': 'not-looked' } };
    expect(at([phone('aaaaaa')(60, gap)], 120).lastLook).toBeUndefined();
  });
});

describe('soreness', () => {
  const sore = (value: number, when: 'rest' | 'moving' = 'rest'): NewEntry => ({
    kind: 'sore',
    value,
    scale: 'numbers',
    when,
  });

  test('rises by one an hour where every hour is one more', () => {
    const a = phone('aaaaaa');
    const notes = [1, 2, 3, 4].map((value, hour) => a(60 * hour, sore(value)));
    const { slope } = at(notes, 200).soreness;
    expect(slope.rest!.perHour).toBeCloseTo(1, 10);
    expect(slope.rest!.from).toHaveLength(4);
    expect(slope.moving).toBeUndefined();
  });

  const slopes = (notes: readonly Entry[], minute: number) => at(notes, minute).soreness.slope;

  test('no other line is nearer to the values of the last six hours than the one that is shown', () => {
    const row = fc.record({ minute: fc.integer({ min: 0, max: 420 }), value: fc.nat(10) });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 2, maxLength: 8 }),
        fc.constantFrom('rest', 'moving'),
        (rows, when) => {
          const inOrder = [...rows].sort((a, b) => a.minute - b.minute);
          const a = phone('aaaaaa');
          const slope = slopes(
            inOrder.map(({ minute, value }) => a(minute, sore(value, when))),
            420,
          )[when];
          const recent = inOrder.filter(({ minute }) => minute >= 60);
          if (new Set(recent.map(({ minute }) => minute)).size < 2) {
            expect(slope).toBeUndefined();
            return;
          }
          expect(slope!.from).toHaveLength(recent.length);
          // of all lines of one rise the nearest goes through the middle of the values
          const distance = (perHour: number) => {
            const rests = recent.map(({ minute, value }) => value - (perHour * minute) / 60);
            const middle = rests.reduce((sum, rest) => sum + rest, 0) / rests.length;
            return rests.reduce((sum, rest) => sum + (rest - middle) ** 2, 0);
          };
          for (const other of [-1, -0.01, 0.01, 1])
            expect(distance(slope!.perHour)).toBeLessThan(distance(slope!.perHour + other));
        },
      ),
      { numRuns: cases(200) },
    );
  });

  test('numbers and steps are no one line: the scale of the last value is the one that is shown', () => {
    const a = phone('aaaaaa');
    const step = (value: number): NewEntry => ({ kind: 'sore', value, scale: 'steps', when: 'rest' });
    const notes = [a(0, step(0)), a(60, sore(9)), a(120, step(1)), a(180, sore(1)), a(240, step(2))];
    expect(slopes(notes, 250)).toEqual({
      rest: { perHour: 0.5, scale: 'steps', from: ['aaaaaa-1', 'aaaaaa-3', 'aaaaaa-5'] },
    });
    expect(slopes(notes.slice(0, 4), 250)).toEqual({
      rest: { perHour: -4, scale: 'numbers', from: ['aaaaaa-2', 'aaaaaa-4'] },
    });
    expect(slopes(notes.slice(0, 2), 250)).toStrictEqual({});
  });

  test('on any day the same values rise alike, to the last digit', () => {
    const rise = (day: number) => {
      const a = phone('aaaaaa');
      const notes = [a(0, sore(1)), a(20, sore(2)), a(70, sore(7))].map((entry): Entry => ({
        ...entry,
        t: instant(entry.t + day * DAY),
      }));
      return summarise(notes, moment(80 + day * DAY), SETTINGS).soreness.slope.rest!.perHour;
    };
    expect([1, 100, 10_000].map(rise)).toEqual(new Array(3).fill(rise(0)));
  });

  test('lying still and being moved are told apart; a value of just six hours ago is in', () => {
    const a = phone('aaaaaa');
    const notes = [a(0, sore(1)), a(0, sore(6, 'moving')), a(60, sore(2)), a(120, sore(2, 'moving'))];
    expect(slopes(notes, 360)).toMatchObject({ rest: { perHour: 1 }, moving: { perHour: -2 } });
    expect(slopes(notes, 361)).toStrictEqual({});
  });

  test('one value has no slope, nor have two of one minute; a value of seven hours ago is out', () => {
    const a = phone('aaaaaa');
    expect(at([a(0, sore(1))], 60).soreness.slope).toEqual({});
    expect(at([a(0, sore(1)), a(0, sore(5))], 60).soreness.slope).toEqual({});
    expect(at([a(0, sore(1)), a(400, sore(5))], 420).soreness.slope).toEqual({});
  });

  test('R18 is shown where the value rose by two within four hours', () => {
    const a = phone('aaaaaa');
    const notes = [a(0, sore(2)), a(200, sore(4))];
    expect(at(notes, 210).soreness.flags.map((flag) => flag.rule)).toEqual(['R18']);
    expect(at(notes.slice(0, 1), 210).soreness.flags).toEqual([]);
  });

  test('what rose by a phone that knew no time holds as of now, and names no note', () => {
    const a = phone('aaaaaa');
    const undated = [2, 4].map((value): Entry => ({ ...a(0, sore(value)), t: instant(0) }));
    expect(at(undated, 200).soreness.flags).toMatchObject([{ rule: 'R18', since: moment(200), from: [] }]);
  });

  test('points stand with the medicine marks between them', () => {
    const a = phone('aaaaaa');
    const notes = [a(0, sore(5)), a(30, { kind: 'medicine-told' }), a(90, sore(2, 'moving'))];
    expect(at(notes, 100).soreness).toMatchObject({
      points: [
        { id: 'aaaaaa-1', value: 5, when: 'rest' },
        { id: 'aaaaaa-3', value: 2, when: 'moving' },
      ],
      medicine: [{ id: 'aaaaaa-2', at: moment(30) }],
      asked: { low: 0, high: 0 },
      from: ['aaaaaa-1', 'aaaaaa-3', 'aaaaaa-2'],
    });
    const asked = [...notes, a(95, { kind: 'asked-for-medicine' })];
    expect(at(asked, 100).soreness.asked).toEqual({ low: 1, high: 1, from: ['aaaaaa-4'] });
    expect(at(asked, 30 + DAY).soreness).toMatchObject({ points: [{ id: 'aaaaaa-3' }], medicine: [] });
  });
});

describe('strong soreness', () => {
  const step = (value: number, when: 'rest' | 'moving' = 'rest'): NewEntry => ({
    kind: 'sore',
    value,
    scale: 'steps',
    when,
  });
  const of10 = (value: number): NewEntry => ({ kind: 'sore', value, scale: 'numbers', when: 'rest' });
  const strong = (notes: readonly Entry[], minute: number) => at(notes, minute).soreness.strong;

  test('waits from a single note, though no rule holds, and whatever is noted later, until a nurse looked', () => {
    const a = phone('aaaaaa');
    const notes = [a(190, step(3)), a(200, step(1))];
    expect(at(notes, 210).soreness.flags).toEqual([]);
    expect(strong(notes, 210)).toEqual({
      ...{ value: 3, scale: 'steps', when: 'rest', since: moment(190), at: moment(190) },
      from: ['aaaaaa-1'],
    });
    expect(strong(notes, 190 + 3 * DAY)).toEqual(strong(notes, 210));
    const looked = a(220, { kind: 'nurse-looked' });
    expect(strong([...notes, looked], 230)).toBeUndefined();
    expect(strong([...notes, looked, a(240, step(3))], 250)).toMatchObject({ since: moment(240) });
  });

  test('is the last of the four steps, or 7 of 10; what was taken back is none', () => {
    const a = phone('aaaaaa');
    for (const [weak, full] of [
      [step(2), step(3)],
      [of10(6), of10(7)],
    ] as const) {
      expect(strong([a(10, weak)], 20)).toBeUndefined();
      const note = a(10, full);
      expect(strong([note], 20)).toBeDefined();
      expect(strong([note, strikeOf(note, 12)], 20)).toBeUndefined();
    }
  });

  test('the strongest is named, of equals the last; who was told before it was told of something else', () => {
    const a = phone('aaaaaa');
    const notes = [a(10, of10(8)), a(20, { kind: 'told' }), a(30, of10(9)), a(40, of10(7))];
    expect(strong(notes, 50)).toEqual({
      ...{ value: 9, scale: 'numbers', when: 'rest', since: moment(10), at: moment(30) },
      from: ['aaaaaa-1', 'aaaaaa-3', 'aaaaaa-4'],
    });
    const steps = (['bell', 'told', 'nurse-came', 'medicine-told'] as const).map((kind, n) =>
      a(60 + n, { kind }),
    );
    expect(strong([...notes, ...steps, a(70, { kind: 'bell' })], 80)).toMatchObject({
      ...{ at: moment(30), bellAt: moment(60), wordAt: moment(61) },
      ...{ nurseCameAt: moment(62), medicineAt: moment(63) },
    });
    expect(strong([...notes, a(90, of10(9))], 95)).toMatchObject({ since: moment(10), at: moment(90) });
  });

  test('one strong note without a nurse’s look after it is always there, and one more never hides another', () => {
    fc.assert(
      fc.property(anyWardNotes, lineOf(fc.constantFrom(step(3), of10(7), of10(10)), 0), (all, line) => {
        const added = { ...numbered([line])[0]!, id: 'cccccc-7' } as Entry;
        const looked = correctedNotes(all).some(
          (entry) =>
            entry.kind === 'nurse-looked' && orderOf(correctedNotes([...all, added])).isAfter(entry, added),
        );
        const before = sum(all).soreness.strong;
        const after = sum(mergeNotes(all, [added])).soreness.strong;
        if (!looked || before) expect(after).toBeDefined();
        if (!looked) expect(after!.from).toContain('cccccc-7');
      }),
      { numRuns: cases(200) },
    );
  });

  test('the highest of the last six hours is named, lying still and when moved, also where it is the only one', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(0, step(3)),
      a(300, step(2)),
      a(310, step(1)),
      a(320, step(1, 'moving')),
      a(330, step(2)),
    ];
    const highest = (minute: number) =>
      at(notes, minute).soreness.highest.map(({ id, when, value }) => [id, when, value]);
    expect(highest(340)).toEqual([
      ['aaaaaa-1', 'rest', 3],
      ['aaaaaa-4', 'moving', 1],
    ]);
    expect(highest(361)).toEqual([
      ['aaaaaa-5', 'rest', 2],
      ['aaaaaa-4', 'moving', 1],
    ]);
    expect(at([a(0, step(0))], 10).soreness.highest).toMatchObject([{ value: 0 }]);
    expect(highest(700)).toEqual([]);
  });
});

describe('drinks, wee, poo, sleep, play', () => {
  test('a drink of which nobody said how much is counted beside the cups, and is not nothing', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(10, { kind: 'drink', amount: 'half', what: 'not-said' }),
      a(20, { kind: 'drink', amount: 'not-said', what: 'milk' }),
      a(30, { kind: 'wee', into: 'bottle', amount: 'not-said' }),
    ];
    expect(at(notes, 40)).toMatchObject({
      drinks: {
        quarters: { low: 2, high: 2 },
        unmeasured: { low: 1, high: 1 },
        from: ['aaaaaa-1', 'aaaaaa-2'],
      },
      wee: { low: 1, last: { id: 'aaaaaa-3', minutes: 10 } },
    });
    expect(at(notes, 40).open).toEqual([]);
  });

  test('cups in quarters: a full one, a half one by both phones, sips apart', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    const drink = (amount: 'sip' | 'half' | 'full'): NewEntry => ({ kind: 'drink', amount, what: 'water' });
    const notes = [a(10, drink('full')), a(60, drink('half')), b(64, drink('half')), a(90, drink('sip'))];
    expect(at(notes, 100).drinks).toMatchObject({ quarters: { low: 6, high: 8 }, sips: { low: 1, high: 1 } });
    const one: Entry = {
      ...a(95, { kind: 'pair', first: 'aaaaaa-2', second: 'bbbbbb-1', same: true }),
    };
    expect(at([...notes, one], 100).drinks.quarters).toEqual({ low: 6, high: 6 });
    expect(at([...notes, { ...one, same: false } as Entry], 100).drinks.quarters).toEqual({
      low: 8,
      high: 8,
    });
  });

  test('poo late in the evening is a calendar day ago soon after midnight, and no whole day', () => {
    const a = phone('aaaaaa');
    // London is an hour ahead: 22:50 universal time is 23:50 on the wall
    const notes = [a(clock(22, 50), { kind: 'poo', what: 'soft' })];
    const settings = { ...SETTINGS, offsetMinutes: minutes(60) };
    const later = (minute: number) => summarise(notes, moment(minute), settings).poo;
    expect(later(clock(22, 59))).toMatchObject({ calendarDays: 0, wholeDays: 0 });
    expect(later(clock(23, 0))).toMatchObject({ calendarDays: 1, wholeDays: 0 });
    expect(later(clock(22, 50, 1))).toMatchObject({ calendarDays: 1, wholeDays: 1 });
    expect(later(clock(23, 0, 2))).toMatchObject({ calendarDays: 3, wholeDays: 2 });
  });

  test('a poo noted by a clock that is already in the next day is of today', () => {
    const soon = phone('aaaaaa')(clock(0, 3, 1), { kind: 'poo', what: 'soft' });
    expect(at([soon], clock(23, 59)).poo).toMatchObject({
      ...{ calendarDays: 0, wholeDays: 0 },
      last: { id: soon.id, at: soon.t, minutes: 0 },
    });
  });

  test('where no poo was noted there is no day since, and "none today" makes none', () => {
    const none = phone('aaaaaa')(60, { kind: 'poo', what: 'none-today' });
    expect(at([none], 900).poo).toEqual({ low: 0, high: 0, from: [] });
  });

  test('every figure of the day names its notes', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(10, { kind: 'drink', amount: 'sip', what: 'water' }),
      a(20, { kind: 'drink', amount: 'full', what: 'milk' }),
      a(30, { kind: 'wee', into: 'pan', amount: 'usual' }),
      a(40, { kind: 'poo', what: 'soft' }),
      a(50, { kind: 'sleep', what: 'fell-asleep' }),
      a(60, { kind: 'sleep', what: 'woke' }),
      a(70, { kind: 'sleep', what: 'nap' }),
      a(80, { kind: 'play', idea: 'dot-grid', again: true }),
    ];
    expect(at(notes, 100)).toMatchObject({
      drinks: { from: ['aaaaaa-1', 'aaaaaa-2'], quarters: { low: 4, high: 4 }, sips: { low: 1, high: 1 } },
      wee: { low: 1, high: 1, from: ['aaaaaa-3'], last: { id: 'aaaaaa-3', at: moment(30), minutes: 70 } },
      poo: { low: 1, high: 1, from: ['aaaaaa-4'] },
      sleep: { from: ['aaaaaa-5', 'aaaaaa-6'], wakings: { low: 1, high: 1, from: ['aaaaaa-6'] } },
      play: { tried: { low: 1, high: 1, from: ['aaaaaa-8'] }, ideas: [{ from: ['aaaaaa-8'] }] },
    });
    // a day later nothing of it is in the sums; what is asked about by how long ago it was stays
    expect(at(notes, 80 + DAY)).toMatchObject({
      drinks: { from: [], quarters: { low: 0, high: 0 }, sips: { low: 0, high: 0 } },
      wee: { low: 0, from: [], last: { id: 'aaaaaa-3' } },
      poo: { low: 0, from: [], last: { id: 'aaaaaa-4' }, calendarDays: 1, wholeDays: 1 },
      sleep: { from: [], wakings: { low: 0, from: [] } },
      play: { tried: { low: 0, from: [] }, helped: ['dot-grid'] },
    });
  });

  test('"none today" is no poo', () => {
    const a = phone('aaaaaa');
    const notes = [a(60, { kind: 'poo', what: 'hard' }), a(900, { kind: 'poo', what: 'none-today' })];
    expect(at(notes, 960).poo).toMatchObject({ last: { id: 'aaaaaa-1', minutes: 900 }, low: 1, high: 1 });
  });

  test('a night with a waking: the longest stretch whole, though it began more than a day ago', () => {
    const a = phone('aaaaaa');
    const sleep = (what: 'fell-asleep' | 'woke' | 'nap'): NewEntry => ({ kind: 'sleep', what });
    const notes = [
      a(clock(20), sleep('fell-asleep')),
      a(clock(2, 0, 1), sleep('woke')),
      a(clock(2, 30, 1), sleep('fell-asleep')),
      a(clock(6, 0, 1), sleep('woke')),
      a(clock(13, 0, 1), sleep('nap')),
      a(clock(20, 0, 1), sleep('fell-asleep')),
    ];
    const { sleep: night } = at(notes, clock(22, 0, 1));
    expect(night).toMatchObject({
      longest: { from: moment(clock(20)), minutes: 360 },
      wakings: { low: 2, high: 2 },
    });
    expect(night.from).not.toContain('aaaaaa-5');
  });

  test('taps that follow each other within ten minutes are one falling asleep, from the first of them', () => {
    const a = phone('aaaaaa');
    const fell: NewEntry = { kind: 'sleep', what: 'fell-asleep' };
    const notes = [a(0, fell), a(8, fell), a(16, fell), a(100, { kind: 'sleep', what: 'woke' })];
    expect(at(notes, 120).sleep.longest).toEqual({ from: moment(0), to: moment(100), minutes: 100 });
  });

  test('a long night that ended more than a day ago is no longer the longest', () => {
    const a = phone('aaaaaa');
    const sleep = (what: 'fell-asleep' | 'woke'): NewEntry => ({ kind: 'sleep', what });
    const notes = [
      a(0, sleep('fell-asleep')),
      a(600, sleep('woke')),
      a(1500, sleep('fell-asleep')),
      a(1590, sleep('woke')),
    ];
    expect(at(notes, 600 + DAY - 1).sleep.longest?.minutes).toBe(600);
    expect(at(notes, 600 + DAY).sleep).toMatchObject({
      longest: { minutes: 90 },
      from: ['aaaaaa-3', 'aaaaaa-4'],
    });
  });

  test('a child who is asleep has slept until now, as the picture of the day draws it', () => {
    const fell = phone('aaaaaa')(200, { kind: 'sleep', what: 'fell-asleep' });
    const asleep = (minute: number) => at([fell], minute).sleep;
    expect(asleep(500)).toMatchObject({
      longest: { from: moment(200), to: moment(500), minutes: 300 },
      from: [fell.id],
    });
    // the clock that wrote it is four minutes ahead of this one
    expect(asleep(196).longest?.minutes).toBe(0);
  });

  test('a waking nobody noted: nobody knows how long that sleep was, so it is not the longest', () => {
    const a = phone('aaaaaa');
    const fell: NewEntry = { kind: 'sleep', what: 'fell-asleep' };
    const { sleep } = at([a(0, fell), a(300, fell), a(360, { kind: 'sleep', what: 'woke' })], 400);
    expect(sleep).toMatchObject({
      longest: { from: moment(300), minutes: 60 },
      from: ['aaaaaa-2', 'aaaaaa-3'],
    });
  });

  test('the longest sleep is the longest, wherever it lies; of two of one length the earlier', () => {
    const a = phone('aaaaaa');
    const sleep = (what: 'fell-asleep' | 'woke'): NewEntry => ({ kind: 'sleep', what });
    const lengths = [60, 90, 90, 30];
    const notes = lengths.flatMap((length, n) => [
      a(200 * n, sleep('fell-asleep')),
      a(200 * n + length, sleep('woke')),
    ]);
    expect(at(notes, 900).sleep.longest).toEqual({ from: moment(200), to: moment(290), minutes: 90 });
  });

  test('ideas that were wanted as often stand by what was not wanted, then by their names', () => {
    const a = phone('aaaaaa');
    const play = (idea: string, again: boolean): NewEntry => ({ kind: 'play', idea, again });
    const notes = [
      ...['song-swap', 'dot-grid', 'wave-hello', 'echo-clap'].map((idea, n) => a(n * 30, play(idea, true))),
      a(200, play('dot-grid', false)),
    ];
    expect(at(notes, 300).play.helped).toEqual(['echo-clap', 'song-swap', 'wave-hello', 'dot-grid']);
  });

  test('what helped is what was wanted again, most often first', () => {
    const a = phone('aaaaaa');
    const play = (idea: string, again: boolean): NewEntry => ({ kind: 'play', idea, again });
    const notes = [
      a(1, play('dot-grid', true)),
      a(30, play('song-swap', true)),
      a(60, play('song-swap', true)),
      a(90, play('wave-hello', false)),
    ];
    expect(at(notes, 100).play).toMatchObject({
      tried: { low: 4, high: 4 },
      helped: ['song-swap', 'dot-grid'],
      ideas: [
        { idea: 'song-swap', again: 2, notAgain: 0 },
        { idea: 'dot-grid' },
        { idea: 'wave-hello', again: 0, notAgain: 1 },
      ],
    });
  });
});

describe('questions for the round', () => {
  const ask = (id: string): NewEntry => ({ kind: 'question', ask: id });

  test('three at most, unanswered first, newest first; put off before answered', () => {
    const a = phone('aaaaaa');
    const notes = [
      a(10, ask('when-x-ray')),
      a(20, ask('may-turn')),
      a(30, ask('walk-when')),
      a(40, { kind: 'question', own: 'Own words' }),
      a(50, { kind: 'answer', question: 'aaaaaa-4', what: 'yes' }),
      a(60, { kind: 'answer', question: 'aaaaaa-3', what: 'doctor-will-say' }),
    ];
    const { shown, more } = at(notes, 100).questions;
    expect(shown.map((q) => [q.ask ?? q.own, q.state])).toEqual([
      ['may-turn', 'waiting'],
      ['when-x-ray', 'waiting'],
      ['walk-when', 'put-off'],
    ]);
    expect(more).toBe(0);
    const one = at([...notes, a(70, ask('may-sit-up')), a(75, ask('skin-how-is-it'))], 100).questions;
    expect(one.shown.map((q) => q.ask)).toEqual(['skin-how-is-it', 'may-sit-up', 'may-turn']);
    expect(one.more).toBe(2);
  });

  test.each([
    ['later', 'put-off'],
    ['ask-again', 'put-off'],
    ['doctor-will-say', 'put-off'],
    ['yes', 'answered'],
    ['no', 'answered'],
    ['see-leaflet', 'answered'],
  ] as const)('after "%s" a question is %s, and stays answered whatever is said later', (what, state) => {
    const a = phone('aaaaaa');
    const answer = (minute: number, word: typeof what) =>
      a(minute, { kind: 'answer', question: 'aaaaaa-1', what: word });
    const notes = [a(10, ask('may-turn')), answer(20, what)];
    expect(at(notes, 100).questions).toEqual({
      shown: [
        {
          ...{ ask: 'may-turn', askedAt: moment(10), state, from: ['aaaaaa-1'] },
          answers: [{ id: 'aaaaaa-2', what, at: moment(20) }],
        },
      ],
      more: 0,
    });
    expect(at([...notes, answer(30, 'later')], 100).questions.shown).toMatchObject([{ state }]);
  });

  test('own words that read like a fixed question are a question of their own, with their language', () => {
    const a = phone('aaaaaa');
    const own = (words: string, tag?: string): NewEntry => ({
      kind: 'question',
      own: words,
      ...(tag && { in: tag }),
    });
    const notes = [a(10, ask('may-turn')), a(20, own('may-turn')), a(30, own('Darf sie sitzen?', 'de'))];
    expect(at(notes, 100).questions.shown).toStrictEqual([
      {
        own: 'Darf sie sitzen?',
        in: 'de',
        askedAt: moment(30),
        answers: [],
        state: 'waiting',
        from: ['aaaaaa-3'],
      },
      { own: 'may-turn', askedAt: moment(20), answers: [], state: 'waiting', from: ['aaaaaa-2'] },
      { ask: 'may-turn', askedAt: moment(10), answers: [], state: 'waiting', from: ['aaaaaa-1'] },
    ]);
  });

  test('answers to one question stand in the order they were given, whichever phone had asked', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    const notes = [
      a(10, ask('may-turn')),
      b(20, ask('may-turn')),
      b(30, { kind: 'answer', question: 'bbbbbb-1', what: 'later' }),
      a(40, { kind: 'answer', question: 'aaaaaa-1', what: 'ask-again' }),
      b(50, { kind: 'answer', question: 'bbbbbb-1', what: 'yes' }),
    ];
    const [question] = at(notes, 100).questions.shown;
    expect(question!.answers.map(({ what }) => what)).toEqual(['later', 'ask-again', 'yes']);
  });

  test('how many more wait: answered ones are not among them', () => {
    const a = phone('aaaaaa');
    const asked = ['when-x-ray', 'may-turn', 'walk-when', 'may-sit-up', 'poo-what-helps'].map((id, n) =>
      a(10 + n, ask(id)),
    );
    expect([3, 4, 5].map((many) => at(asked.slice(0, many), 100).questions.more)).toEqual([0, 1, 2]);
    const answered = a(50, { kind: 'answer', question: 'aaaaaa-1', what: 'no' });
    expect(at([...asked, answered], 100).questions).toMatchObject({
      shown: [{ ask: 'poo-what-helps' }, { ask: 'may-sit-up' }, { ask: 'walk-when' }],
      more: 1,
    });
  });

  test('questions of one minute stand in one order on every phone', () => {
    const notes = ['cccccc', 'aaaaaa', 'bbbbbb'].map((device, n) =>
      phone(device)(10, ask(['when-x-ray', 'may-turn', 'walk-when'][n]!)),
    );
    for (const order of [notes, [...notes].reverse()])
      expect(at(order, 100).questions.shown.map(({ from }) => from)).toEqual([
        ...[['aaaaaa-1'], ['bbbbbb-1'], ['cccccc-1']],
      ]);
  });

  test('the same question by both phones is one, and keeps every answer', () => {
    const [a, b] = [phone('aaaaaa'), phone('bbbbbb')];
    const notes = [
      a(10, ask('may-turn')),
      b(500, ask('may-turn')),
      a(510, { kind: 'answer', question: 'aaaaaa-1', what: 'later' }),
      b(600, { kind: 'answer', question: 'bbbbbb-1', what: 'no' }),
    ];
    expect(at(notes, 700).questions.shown).toMatchObject([
      {
        ask: 'may-turn',
        askedAt: moment(500),
        state: 'answered',
        answers: [{ what: 'later' }, { what: 'no' }],
        from: ['aaaaaa-1', 'bbbbbb-1'],
      },
    ]);
  });
});
