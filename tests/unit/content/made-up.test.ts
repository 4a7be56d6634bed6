import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { madeUpCard, madeUpNotes } from '#content/made-up.ts';
import { LOOKS, SIGN_ROWS } from '#content/signs.ts';
import { WARD } from '#content/ward.ts';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';
import { stillHolds } from '#domain/bed-card/holds.ts';
import { handedOver } from '#domain/bed-card/limits.ts';
import { isNight } from '#domain/clock/night.ts';
import { isUndated, jumpsOf } from '#domain/notes/clocks.ts';
import { mergeNotes, parseEntry, type Entry, type EntryKind } from '#domain/notes/entries.ts';
import { FRAME_BYTES } from '#domain/notes/frames.ts';
import { CHOICES, MARKS } from '#domain/notes/kinds.ts';
import { packNotes, unpackNotes } from '#domain/notes/pack.ts';
import { pairsOf } from '#domain/notes/pairs.ts';
import { tracedSightings } from '#domain/notes/sightings.ts';
import { stretchesOf } from '#domain/notes/sleep.ts';
import { summarise } from '#domain/notes/summarise.ts';
import type { OpenSign, Summary, SummarySettings } from '#domain/notes/summary.ts';
import { instant, minutes, type Instant, type Minutes } from '#domain/units.ts';

const DAY = 1440;
const YEAR = 365 * DAY;
const BEGIN = Date.UTC(2026, 0, 1) / 60_000;

/** Local minus universal time of a zone. Source: the system's zone data, through Intl. */
function offsetOf(timeZone: string, at: number): Minutes {
  const parts = new Intl.DateTimeFormat('en', { timeZone, timeZoneName: 'longOffset' }).formatToParts(at);
  const name = parts.find(({ type }) => type === 'timeZoneName')!.value;
  const [, sign, hours = '0', mins = '0'] = /^GMT(?:([+-])(\d\d):(\d\d))?$/.exec(name) ?? [];
  return minutes((sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(mins)) || 0);
}
const OFFSETS = [
  ...new Set(
    ['Pacific/Pago_Pago', 'Pacific/Kiritimati', ...Intl.supportedValuesOf('timeZone')].flatMap((zone) =>
      [Date.UTC(2026, 0, 1), Date.UTC(2026, 6, 1)].map((at) => offsetOf(zone, at)),
    ),
  ),
];

interface Moment {
  now: Instant;
  off: Minutes;
}
/** A moment with what somebody finds who tries the pages then. */
interface Tried extends Moment {
  notes: readonly Entry[];
  summary: Summary;
}
const settings = (off: Minutes): SummarySettings => ({
  offsetMinutes: off,
  child: { under3: false, canTell: 'yes' },
  signs: SIGN_ROWS,
  ward: WARD,
  lookOf: Object.fromEntries(Object.entries(SIGN_ROWS).map(([id, row]) => [id, row.look])),
});
function tried({ now, off }: Moment): Tried {
  const notes = madeUpNotes(now, off);
  return { now, off, notes, summary: summarise(notes, now, settings(off)) };
}

/**
 * Every seventh minute of a day, and those before, at and after each hour, a month and a zone from the next: what depends
 * on the hour needs no chance.
 */
const ROUND_THE_DAY: readonly Tried[] = Array.from({ length: DAY }, (_, i) => i)
  .filter((i) => i % 7 === 0 || (i + 1) % 60 <= 2)
  .map((i) => {
    const off = OFFSETS[i % OFFSETS.length]!;
    return tried({ now: instant(BEGIN + (i % 12) * 31 * DAY + i - off), off });
  });
const anyTried: fc.Arbitrary<Tried> = fc
  .record({
    now: fc.integer({ min: BEGIN, max: BEGIN + YEAR }).map(instant),
    off: fc.constantFrom(...OFFSETS),
  })
  .map(tried);

/** Says a law of a day round, and of any moment of a year in any zone. */
function always(law: (at: Tried) => void) {
  ROUND_THE_DAY.forEach(law);
  fc.assert(
    fc.property(anyTried, (at) => {
      law(at);
    }),
    // the day above has found what there was to find; these are for the dates and zones
    { numRuns: 40 },
  );
}

const only = <K extends EntryKind>(notes: readonly Entry[], kind: K) =>
  notes.filter((note): note is Extract<Entry, { kind: K }> => note.kind === kind);
const wall = ({ t, off }: Pick<Entry, 't' | 'off'>) => (((t + off) % DAY) + DAY) % DAY;
const clock = (hours: number, mins = 0) => hours * 60 + mins;
const phoneOf = ({ id }: Entry) => id.split('-')[0]!;

test('the zones reach from where the day begins last to where it begins first', () => {
  expect(Math.min(...OFFSETS)).toBeLessThanOrEqual(-11 * 60);
  expect(Math.max(...OFFSETS)).toBe(14 * 60);
  expect(OFFSETS.some((off) => off % 60 === 30)).toBe(true);
  expect(OFFSETS.some((off) => off % 60 === 45)).toBe(true);
});

describe('the made-up notes, at whatever hour somebody tries them', () => {
  test('are kept and read back without one of them changing', () => {
    always(({ notes }) => {
      expect((JSON.parse(JSON.stringify(notes)) as unknown[]).map(parseEntry)).toStrictEqual(notes);
    });
  });

  test('are in the order of every phone, each note once', () => {
    always(({ notes }) => {
      expect(mergeNotes([...notes].reverse(), notes)).toStrictEqual(notes);
    });
  });

  test('go to the other phone in a code, whole', () => {
    // the hours differ little in what has to be told
    for (const { notes } of ROUND_THE_DAY.filter((_, at) => at % 12 === 0)) {
      const packed = packNotes(notes);
      expect(unpackNotes(packed)).toStrictEqual({ ok: true, entries: notes });
      expect(Math.ceil(packed.length / FRAME_BYTES)).toBeLessThanOrEqual(3);
    }
  });

  test('are the same for the same minute', () => {
    always(({ now, off, notes }) => {
      expect(JSON.stringify(madeUpNotes(now, off))).toBe(JSON.stringify(notes));
    });
  });

  test('are ninety to a hundred and thirty, from three to four days ago until within half an hour', () => {
    always(({ now, off, notes }) => {
      expect(notes.length).toBeGreaterThanOrEqual(90);
      expect(notes.length).toBeLessThanOrEqual(130);
      const [first, last] = [now - notes[0]!.t, now - notes.at(-1)!.t];
      expect(first).toBeGreaterThanOrEqual(3 * DAY);
      expect(first).toBeLessThanOrEqual(4 * DAY);
      expect(last).toBeGreaterThan(0);
      expect(last).toBeLessThanOrEqual(30);
      expect(notes.every((note) => note.off === off)).toBe(true);
    });
  });

  test('hold three whole nights', () => {
    always(({ now, off, notes }) => {
      const first = notes[0]!.t;
      // mornings at six whose evening before, at ten, lies within the notes, too
      const morning = (at: number) => Math.floor((at + off - clock(6)) / DAY);
      expect(morning(now) - morning(first + clock(8) - 1)).toBe(3);
    });
  });

  test('are of every kind that a family can note, and of no other', () => {
    const kinds = [
      ...MARKS,
      ...Object.keys(CHOICES),
      ...['sign', 'look', 'sore', 'play', 'question', 'strike', 'pair'],
    ].sort();
    always(({ notes }) => {
      expect([...new Set<string>(notes.map(({ kind }) => kind))].sort()).toEqual(kinds);
    });
  });

  test('show no clock that went back', () => {
    always(({ notes }) => {
      expect(jumpsOf(notes)).toEqual([]);
    });
  });

  test('come from the phones of two grown-ups, without a gap in their numbers; the child and a nurse showed some', () => {
    always(({ notes }) => {
      expect([...new Set(notes.map(phoneOf))].sort()).toEqual(['5e0d01', '7f3c42']);
      for (const [phone, grownUp] of [
        ['5e0d01', 'grown-up-a'],
        ['7f3c42', 'grown-up-b'],
      ]) {
        const line = notes.filter((note) => phoneOf(note) === phone);
        expect(line.map(({ id }) => id)).toEqual(line.map((_, i) => `${phone}-${i + 1}`));
        const shownBy = (kind: string) =>
          kind === 'answer' ? 'nurse-shown' : kind === 'sore' || kind === 'mood' ? 'child-shown' : grownUp;
        expect(line.filter(({ kind, by }) => by !== shownBy(kind))).toEqual([]);
        expect(line.length).toBeGreaterThan(notes.length / 4);
      }
    });
  });

  test('go over from one grown-up to the other at seven in the evening, and then only', () => {
    const evening = ({ t, off }: Entry) => Math.floor((t + off - clock(19)) / DAY);
    always(({ notes }) => {
      const second = pairsOf(notes)[0]!.second;
      const atBed = notes.filter(({ id }) => id !== second);
      const handedOver = (note: Entry, before: Entry) => phoneOf(note) !== phoneOf(before);
      const wrong = atBed.filter((note, i) => {
        const before = atBed[i - 1];
        return before && handedOver(note, before) !== (evening(note) !== evening(before));
      });
      expect(wrong).toEqual([]);
    });
  });

  test('hold own words in two languages, and no other words', () => {
    always(({ notes }) => {
      const own = only(notes, 'question').flatMap((note) => ('own' in note ? [note] : []));
      expect(own).toHaveLength(2);
      // of our languages, ¿ is written in Spanish alone and ę in Polish alone
      expect(own.filter((note) => note.own.includes('¿')).map(({ by }) => by)).toEqual(['grown-up-a']);
      expect(own.filter((note) => note.own.includes('ę')).map(({ by }) => by)).toEqual(['grown-up-b']);
      const rest = notes.filter((note) => !('own' in note));
      expect(JSON.stringify(rest)).not.toMatch(/[ ¿-￿]/);
    });
  });
});

describe('the days and nights of the made-up child', () => {
  test('meals are by day, visits in the afternoon, and what staff plan is before noon', () => {
    const within = (note: Entry, from: number, to: number) => wall(note) > from && wall(note) < to;
    always(({ notes }) => {
      const settled = notes.filter((note) => note.t > notes[0]!.t + 95);
      expect(only(notes, 'food').every((note) => within(note, clock(7), clock(18)))).toBe(true);
      expect(only(notes, 'visit').every((note) => within(note, clock(14), clock(17)))).toBe(true);
      const planned = only(settled, 'care').filter(({ what }) => what !== 'sheets');
      expect(planned.length).toBeGreaterThanOrEqual(4);
      expect(planned.every((note) => within(note, clock(7), clock(12)))).toBe(true);
    });
  });

  test('the child sleeps at night and only then; ten to three and five o’clock find it asleep', () => {
    always(({ now, off, notes }) => {
      const first = notes[0]!.t;
      const stretches = stretchesOf(notes);
      const asleepAt = (at: number) => stretches.some(({ from, to = now }) => from <= at && at < to);
      for (let day = 0; day < 5; day++) {
        const midnight = first - wall(notes[0]!) + day * DAY;
        for (const night of [midnight + clock(2, 50), midnight + clock(5)])
          if (night > first && night < now - 15) expect(asleepAt(night)).toBe(true);
        expect(asleepAt(midnight + clock(12))).toBe(false);
      }
      for (const { from, to } of stretches) {
        const wakes = wall({ t: to ?? now, off });
        expect(wall({ t: from, off }) > clock(20) || wall({ t: from, off }) < clock(6)).toBe(true);
        expect(wakes > clock(20) || wakes < clock(7)).toBe(true);
      }
    });
  });

  test('before every leg bandage care medicine was told of, half an hour to an hour earlier', () => {
    always(({ notes }) => {
      const told = only(notes, 'medicine-told');
      const bandages = only(notes, 'care').filter(({ what }) => what === 'bandage');
      expect(bandages.length).toBeGreaterThanOrEqual(3);
      for (const { t } of bandages)
        expect(told.some((mark) => t - mark.t >= 30 && t - mark.t <= 60)).toBe(true);
    });
  });

  test('soreness is told on the four steps, before every medicine and, once an hour is over, after it', () => {
    always(({ now, notes }) => {
      const sores = only(notes, 'sore');
      const rest = sores.filter(({ when }) => when === 'rest');
      expect(sores.every(({ scale }) => scale === 'steps')).toBe(true);
      for (const { t } of only(notes, 'medicine-told')) {
        const before = rest.find((sore) => sore.t <= t && t - sore.t <= 10);
        const after = rest.find((sore) => sore.t > t && sore.t - t <= 60);
        expect(before).toBeDefined();
        expect(after !== undefined || now - t <= 75).toBe(true);
      }
    });
  });

  test('in one night cool toes at 03:10 had the bell, a nurse who came and a nurse who looked', () => {
    always(({ notes }) => {
      const at = notes.findIndex((note) => note.kind === 'sign' && note.sign === 'toes-cool');
      const four = notes.slice(at, at + 4);
      expect(wall(four[0]!)).toBe(clock(3, 10));
      expect(four.map(({ kind }) => kind)).toEqual(['sign', 'bell', 'nurse-came', 'nurse-looked']);
      expect(four[3]!.t - four[0]!.t).toBeLessThanOrEqual(10);
    });
  });
});

describe('what the made-up notes add up to', () => {
  test('one sign is open: of the class tell-nurse, told of, and nobody has looked yet', () => {
    always(({ off, summary: { open, assessment } }) => {
      expect(open).toHaveLength(1);
      const [{ sign, urgency, untold, wordAt, bellAt }] = open as [OpenSign];
      expect({ sign, urgency, untold }).toEqual({
        sign: 'slid-down',
        urgency: 'tell-nurse',
        untold: false,
      });
      expect(assessment.urgency).toBe('tell-nurse');
      // as the ward says it: by day one tells a nurse, at night one presses
      expect([wordAt, bellAt].filter((at) => at !== undefined)).toHaveLength(1);
      expect(bellAt !== undefined).toBe(isNight((wordAt ?? bellAt)!, off));
    });
  });

  test('left open, it becomes "press now" after the ward’s quarter of an hour, as with any child', () => {
    always(({ now, off, notes, summary }) => {
      const due = summary.open[0]!.since + WARD.tellAgainMinutes;
      const urgencyAt = (at: number) => summarise(notes, instant(at), settings(off)).assessment.urgency;
      expect(due).toBeGreaterThan(now);
      expect(urgencyAt(due - 1)).toBe('tell-nurse');
      expect(urgencyAt(due)).toBe('ring-now');
    });
  });

  test('every other sign has been looked at, the wet bandage after a nurse was told', () => {
    always(({ notes }) => {
      const signs = only(notes, 'sign').map(({ sign }) => sign);
      expect(signs.sort()).toEqual(['band-wet', 'leg-jumps', 'leg-jumps', 'slid-down', 'toes-cool']);
      const looked = tracedSightings(notes).filter(({ lookedAt }) => lookedAt !== undefined);
      expect(looked).toHaveLength(4);
      const wet = looked.find(({ sign }) => sign === 'band-wet')!;
      expect(wet.wordAt! - wet.at).toBeLessThanOrEqual(5);
      expect(wet.lookedAt! - wet.at).toBeLessThanOrEqual(30);
    });
  });

  test('the leg jumped twice in a day, and a nurse looked in between', () => {
    always(({ summary: { repeats } }) => {
      expect(repeats).toMatchObject([{ sign: 'leg-jumps', low: 2, high: 2, nurseLookedBetween: true }]);
    });
  });

  test('one wee is on both phones, and nobody has said yet whether it was one', () => {
    always(({ notes, summary: { wee } }) => {
      expect(pairsOf(notes)).toMatchObject([{ kind: 'wee' }]);
      expect(wee.high - wee.low).toBe(1);
    });
  });

  test('one cup on both phones was called the same; without that word it would be asked about', () => {
    always(({ notes }) => {
      const [pair, ...more] = only(notes, 'pair');
      expect(more).toEqual([]);
      expect(pair!.same).toBe(true);
      const unsaid = pairsOf(notes.filter((note) => note !== pair));
      expect(unsaid).toContainEqual({ first: pair!.first, second: pair!.second, kind: 'drink' });
    });
  });

  test('no poo for three days, by the wall and by the hour', () => {
    always(({ summary: { poo } }) => {
      expect(poo.calendarDays).toBeGreaterThanOrEqual(3);
      expect(poo.wholeDays).toBe(3);
      expect(poo.high).toBe(0);
    });
  });

  test('in the last day the child woke, drank, told of soreness, and was looked at on all six looks', () => {
    always(({ summary: { sleep, drinks, lastLook, soreness } }) => {
      expect(sleep.wakings.low).toBeGreaterThanOrEqual(1);
      expect(sleep.longest!.minutes).toBeGreaterThan(clock(3));
      expect(drinks.quarters.low).toBeGreaterThanOrEqual(5);
      expect(drinks.sips.low).toBeGreaterThanOrEqual(1);
      expect(lastLook!.looks).toBe(LOOKS.length);
      expect(lastLook!.minutes).toBeLessThan(DAY);
      expect(soreness.points.length).toBeGreaterThanOrEqual(3);
      expect(soreness.medicine.length).toBeGreaterThanOrEqual(1);
    });
  });

  test('every amount and every thing to drink is there; moods are of several pictures', () => {
    always(({ notes }) => {
      const [cups, moods] = [only(notes, 'drink'), only(notes, 'mood')];
      expect(new Set(cups.map(({ amount }) => amount)).size).toBe(CHOICES.drink.amount.length);
      expect(new Set(cups.map(({ what }) => what)).size).toBe(CHOICES.drink.what.length);
      expect(new Set(moods.map(({ picture }) => picture)).size).toBeGreaterThanOrEqual(3);
    });
  });

  test('some play ideas shall come again, one shall not', () => {
    always(({ summary: { play } }) => {
      expect(play.helped.length).toBeGreaterThanOrEqual(3);
      expect(play.ideas.filter(({ notAgain }) => notAgain > 0)).toHaveLength(1);
    });
  });

  test('three questions for the round: two that wait, one put off', () => {
    always(({ summary: { questions } }) => {
      const { shown, more } = questions;
      expect(shown.map(({ state }) => state)).toEqual(['waiting', 'waiting', 'put-off']);
      expect(shown[2]!.answers.map(({ what }) => what)).toEqual(['later']);
      expect(more).toBe(0);
    });
  });

  test('one note was taken back; none has no time, none comes from after now', () => {
    always(({ notes, summary: { struck, ahead } }) => {
      expect(struck).toMatchObject([{ kind: 'drink' }]);
      expect([...notes.filter(isUndated), ...ahead]).toEqual([]);
    });
  });
});

describe('the made-up child’s bed card', () => {
  test('is of a child of six with the left leg in a leg bandage, and holds still', () => {
    always(({ now, off }) => {
      const card = madeUpCard(now, off);
      expect(card).toMatchObject({ side: 'left', age: { years: 6 }, set: 'bandage', off });
      expect(card.madeAt).toBeLessThan(now);
      expect(stillHolds(card, now)).toBe('holds');
    });
  });

  test('was made by day, after the child came', () => {
    always(({ now, off, notes }) => {
      const { madeAt } = madeUpCard(now, off);
      expect(isNight(madeAt, off)).toBe(false);
      expect(madeAt).toBeGreaterThan(notes[0]!.t);
    });
  });

  test('goes into a code and comes out as the other phone reads it', () => {
    always(({ now, off }) => {
      const card = madeUpCard(now, off);
      expect(decodeBedCard(encodeBedCard(card))).toEqual({ ok: true, card: handedOver(card) });
    });
  });
});
