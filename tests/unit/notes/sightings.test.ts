import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { openSigns } from '#domain/notes/open.ts';
import { openCall, sightingsOf, tracedSightings } from '#domain/notes/sightings.ts';
import { assess } from '#domain/signs/assess.ts';
import type { SignId } from '#domain/signs/ids.ts';
import { anyEntry, momentOf, note } from '../../helpers/notes.ts';
import { context } from '../../helpers/reports.ts';
import { cases } from '../../helpers/same-cases.ts';

const sign = (minute: number, id: SignId, answer: 'different' | 'not-sure' = 'different') =>
  note(minute, { kind: 'sign', sign: id, answer });
const nurse = (minute: number) => note(minute, { kind: 'nurse-looked' });
const strike = (minute: number, entry: Entry) => note(minute, { kind: 'strike', strikes: entry.id });
const classOf = (entries: readonly Entry[], minute: number) =>
  assess({ sightings: sightingsOf(entries) }, context({ now: momentOf(minute) })).urgency;

describe('what still waits for a nurse', () => {
  test('a sign that was seen stays open until a nurse looked', () => {
    const notes = [sign(10, 'toes-cool')];
    expect(openSigns(notes)).toEqual(['toes-cool']);
    expect(classOf(notes, 11)).toBe('ring-now');
    expect(classOf(notes, 3000)).toBe('ring-now');
    expect(classOf([...notes, nurse(20)], 21)).toBe('none');
  });

  test('a nurse’s look closes what came before it and nothing that came after', () => {
    const [before, look, after] = [sign(10, 'toes-cool'), nurse(20), sign(30, 'band-wet')];
    expect(sightingsOf([after, look, before])).toEqual([
      { sign: 'toes-cool', answer: 'different', at: momentOf(10), lookedAt: momentOf(20) },
      { sign: 'band-wet', answer: 'different', at: momentOf(30) },
    ]);
    expect(openSigns([after, look, before])).toEqual(['band-wet']);
  });

  test('within one minute the phone’s own count decides what came first', () => {
    const seen = note(10, { kind: 'sign', sign: 'toes-cool', answer: 'different' }, 'aaaaaa-10');
    expect(openSigns([note(10, { kind: 'nurse-looked' }, 'aaaaaa-9'), seen])).toEqual(['toes-cool']);
    expect(openSigns([note(10, { kind: 'nurse-looked' }, 'aaaaaa-11'), seen])).toEqual([]);
  });

  test('what a first look closed keeps that time after a second look', () => {
    const looked = sightingsOf([sign(10, 'toes-cool'), nurse(20), nurse(40)]);
    expect(looked.map((s) => s.lookedAt)).toEqual([momentOf(20)]);
  });

  test('a full look leaves what is different or not sure, and nothing of what was not', () => {
    const look = note(10, {
      kind: 'look',
      answers: {
        'toes-cool': 'like-usual',
        'toes-numb': 'not-sure',
        'band-wet': 'different',
        'heel-sore': 'not-looked',
      },
    });
    expect(sightingsOf([look]).map((s) => [s.sign, s.answer])).toEqual([
      ['toes-numb', 'not-sure'],
      ['band-wet', 'different'],
    ]);
  });

  test('a later look that says "like usual" takes nothing back', () => {
    const look = note(20, { kind: 'look', answers: { 'toes-cool': 'like-usual' } });
    expect(classOf([sign(10, 'toes-cool'), look], 21)).toBe('ring-now');
  });

  test('a sub-answer comes with the name of its sign, as the rules want it', () => {
    const jump = note(10, { kind: 'sign', sign: 'leg-jumps', answer: 'different', details: ['wakes-child'] });
    expect(sightingsOf([jump])).toMatchObject([{ details: ['leg-jumps/wakes-child'] }]);
    expect(classOf([jump], 11)).toBe('tell-nurse');
    expect(classOf([sign(10, 'leg-jumps')], 11)).toBe('next-visit');
  });

  test('open signs come newest first, each once', () => {
    const notes = [sign(1, 'toes-cool'), sign(2, 'itchy-under'), sign(3, 'band-wet'), sign(4, 'itchy-under')];
    expect(openSigns(notes)).toEqual(['itchy-under', 'band-wet', 'toes-cool']);
    const unknown = note(5, { kind: 'unknown', raw: 1 });
    expect(openSigns([...notes, unknown])[0]).toBe(`unknown:${unknown.id}`);
    expect(sightingsOf([unknown])).toEqual([
      { sign: `unknown:${unknown.id}`, answer: 'different', at: momentOf(5) },
    ]);
  });

  test('the notes handed in are left as they are', () => {
    const notes = Object.freeze([sign(30, 'toes-cool'), sign(10, 'band-wet'), nurse(20)]);
    const before = JSON.stringify(notes);
    sightingsOf(notes);
    openSigns(notes);
    expect(JSON.stringify(notes)).toBe(before);
  });
});

describe('taking a note back', () => {
  test('a struck sign no longer counts', () => {
    const seen = sign(10, 'toes-cool');
    expect(classOf([seen], 12)).toBe('ring-now');
    expect(classOf([seen, strike(11, seen)], 12)).toBe('none');
    expect(openSigns([strike(11, seen), seen])).toEqual([]);
  });

  test('only the struck note goes, a second sighting of the same sign stays', () => {
    const [first, second] = [sign(10, 'toes-cool'), sign(11, 'toes-cool')];
    expect(classOf([first, second, strike(12, first)], 13)).toBe('ring-now');
  });

  test('a nurse’s look that was tapped by mistake opens everything again', () => {
    const look = nurse(20);
    expect(openSigns([sign(10, 'toes-cool'), look, strike(21, look)])).toEqual(['toes-cool']);
  });

  test('a struck press of the button told nobody', () => {
    const bell = note(11, { kind: 'bell' });
    const notes = [sign(10, 'toes-cool'), bell, strike(12, bell)];
    expect(sightingsOf(notes)[0]!.toldAt).toBeUndefined();
    expect(openCall(notes, 'bell')).toBeUndefined();
  });
});

describe('telling a nurse', () => {
  const call = (minute: number, kind: 'bell' | 'told') => note(minute, { kind });

  test.each(['bell', 'told'] as const)(
    '%s: the first time counts, a second does not start it anew',
    (kind) => {
      const notes = [sign(10, 'toes-cool'), call(12, kind), call(20, kind)];
      expect(sightingsOf(notes)).toMatchObject([{ toldAt: momentOf(12) }]);
      expect(openCall(notes, kind)?.t).toBe(momentOf(12));
    },
  );

  test('what is seen after the call has not been told', () => {
    const notes = [sign(10, 'toes-cool'), call(12, 'bell'), sign(14, 'band-wet'), call(20, 'told')];
    expect(sightingsOf(notes).map((s) => s.toldAt)).toEqual([momentOf(12), momentOf(20)]);
  });

  test('telling alone closes nothing', () => {
    expect(openSigns([sign(10, 'toes-cool'), call(12, 'told'), call(13, 'bell')])).toEqual(['toes-cool']);
  });

  test('a nurse’s look answers the call; the next press is a new one', () => {
    const notes = [call(12, 'bell'), nurse(20)];
    expect(openCall(notes, 'bell')).toBeUndefined();
    expect(openCall([...notes, call(30, 'bell')], 'bell')?.t).toBe(momentOf(30));
    expect(openCall([...notes, call(30, 'bell')], 'told')).toBeUndefined();
  });

  test('the first call since the look counts, in whatever order the notes lie there', () => {
    const notes = [call(12, 'bell'), nurse(20), call(30, 'bell'), call(40, 'bell')];
    const [first, look, second, third] = notes as [Entry, Entry, Entry, Entry];
    for (const order of [notes, [third, second, look, first], [look, third, first, second]])
      expect(openCall(order, 'bell')).toEqual(second);
  });
});

describe('laws of the notes', () => {
  const notes = fc.array(anyEntry, { maxLength: 8 });
  const sighted = (entries: readonly Entry[]) => JSON.stringify(sightingsOf(entries));

  test('the order in which notes are handed in makes no difference', () => {
    fc.assert(
      fc.property(
        fc
          .uniqueArray(anyEntry, { maxLength: 8, selector: (entry) => entry.id })
          .chain((a) => fc.tuple(fc.constant(a), fc.shuffledSubarray(a, { minLength: a.length }))),
        ([a, b]) => {
          expect(sighted(a)).toBe(sighted(b));
        },
      ),
      { numRuns: cases(500) },
    );
  });

  test('one more sighting never lowers the class', () => {
    const rank = (urgency: string) =>
      ['none', 'next-visit', 'not-sure', 'tell-nurse', 'ring-now'].indexOf(urgency);
    fc.assert(
      fc.property(notes, anyEntry, (entries, more) => {
        fc.pre(more.kind === 'sign' || more.kind === 'look');
        const added = { ...more, id: 'cccccc-1' };
        expect(rank(classOf([...entries, added], 60))).toBeGreaterThanOrEqual(rank(classOf(entries, 60)));
      }),
      { numRuns: cases(500) },
    );
  });

  test('every reported sign is open, closed by a look after it, or struck: none is lost', () => {
    fc.assert(
      fc.property(notes, (entries) => {
        const struck = new Set(entries.flatMap((e) => (e.kind === 'strike' ? [e.strikes] : [])));
        const reported = entries.filter((e) => e.kind === 'sign' && !struck.has(e.id)).length;
        const fromLooks = entries
          .filter((e): e is Extract<Entry, { kind: 'look' }> => e.kind === 'look' && !struck.has(e.id))
          .flatMap((e) => Object.values(e.answers))
          .filter((answer) => answer === 'different' || answer === 'not-sure').length;
        expect(sightingsOf(entries)).toHaveLength(reported + fromLooks);
        // after it by the count of one phone, by the time of two
        for (const { note: id, at, look } of tracedSightings(entries)) {
          if (!look) continue;
          const [one, other] = [id, look.id].map((written) => /^(\w+)-(\d+)$/.exec(written));
          if (one && other && one[1] === other[1])
            expect(Number(other[2])).toBeGreaterThanOrEqual(Number(one[2]));
          else expect(look.t).toBeGreaterThanOrEqual(at);
        }
      }),
      { numRuns: cases(500) },
    );
  });

  test('every kind of note is one that the notes know', () => {
    const all: NewEntry['kind'][] = ['sign', 'look', 'bell', 'told', 'nurse-looked', 'strike'];
    const seen = new Set(fc.sample(anyEntry, 500).map((entry) => entry.kind));
    expect([...seen].sort()).toEqual([...all].sort());
  });
});
