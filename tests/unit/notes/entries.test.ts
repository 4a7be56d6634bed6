import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byTime, LAST_MINUTE, mergeNotes, parseEntry, struckIds, type Entry } from '#domain/notes/entries.ts';
import { openSigns } from '#domain/notes/open.ts';
import { sightingsOf } from '#domain/notes/sightings.ts';
import { assess } from '#domain/signs/assess.ts';
import { clockTime, day } from '#i18n/format.ts';
import { instant } from '#domain/units.ts';
import { anyEntry, anyStored, anyStoredJson, note } from '../../helpers/notes.ts';
import { context } from '../../helpers/reports.ts';
import { cases } from '../../helpers/same-cases.ts';

const stored = (text: string): Entry => parseEntry(JSON.parse(text));

describe('reading a note back', () => {
  test('never fails, whatever lies there, and never makes nothing of it', () => {
    fc.assert(
      fc.property(anyStored, (value) => {
        const entry = parseEntry(value);
        expect(entry.id.length).toBeGreaterThan(0);
        expect(Number.isFinite(entry.t) && Number.isFinite(entry.off)).toBe(true);
        if (entry.kind === 'unknown' && !(value as { kind?: unknown } | null)?.kind)
          expect(entry.raw).toBe(value);
      }),
      { numRuns: cases(1000) },
    );
  });

  test('twice gives what once gave', () => {
    fc.assert(
      fc.property(anyStored, (value) => {
        const once = parseEntry(value);
        expect(parseEntry(once)).toEqual(once);
      }),
      { numRuns: cases(1000) },
    );
  });

  test('every note that was read can be shown with its day and time, in every language', () => {
    fc.assert(
      fc.property(anyStored, (value) => {
        const { t, off } = parseEntry(value);
        for (const locale of ['en', 'ar'])
          expect(clockTime(locale, t, off) + day(locale, t, off)).toMatch(/\d/);
      }),
      { numRuns: cases(150) },
    );
  });

  test('what this phone wrote comes back unchanged', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        expect(parseEntry(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
      }),
    );
  });

  // FNV-1a over the JSON of what was seen (Fowler, Noll and Vo; from memory), worked out apart from our code
  test('a damaged note has one id for ever: another id in a later version would be another note', () => {
    expect([null, 7, 'text', {}].map((value) => parseEntry(value).id)).toEqual([
      ...['unknown-1996966820', 'unknown-839689206', 'unknown-764158836', 'unknown-1415952421'],
    ]);
  });

  test('a look whose answers are none, and a sub-answer that is no word, are kept as unknown', () => {
    const row = { id: 'a-1', t: 5, off: 0 };
    for (const answers of [undefined, null, 7, 'text', [], ['different']])
      expect(parseEntry({ ...row, kind: 'look', answers })).toMatchObject({ kind: 'unknown' });
    const sign = { ...row, kind: 'sign', sign: 'leg-jumps', answer: 'different' };
    expect(parseEntry({ ...sign, details: [17, 'wakes-child'] })).toEqual({
      ...{ ...sign, details: ['unknown', 'wakes-child'] },
    });
  });

  test('a correction may cover no note at all', () => {
    const row = { id: 'a-1', t: 5, off: 0, kind: 'clock', device: 'bbbbbb', upTo: 0, minutes: 7 };
    expect(parseEntry(row)).toEqual(row);
    expect(parseEntry({ ...row, upTo: -1 }).kind).toBe('unknown');
  });

  test('within a minute notes stand by phone, then by its counter, then by the letters of the id', () => {
    const ids = ['aaaaaa-09', 'aaaaaa-9', 'aaaaaa-10', 'bbbbbb-1', 'cccccc-2'];
    const notes = ids.map((id) => note(3, { kind: 'bell' }, id));
    notes.forEach((a, i) =>
      notes.forEach((b, k) =>
        expect([a.id, b.id, Math.sign(byTime(a, b))]).toEqual([a.id, b.id, Math.sign(i - k)]),
      ),
    );
    expect(mergeNotes([...notes].reverse(), []).map(({ id }) => id)).toEqual(ids);
  });

  test('of one id with two contents, the first by its letters stays, on every phone and in every version', () => {
    const [one, two] = [note(3, { kind: 'bell' }, 'a-1'), note(3, { kind: 'told' }, 'a-1')];
    expect(mergeNotes([one], [two])).toEqual([one]);
    expect(mergeNotes([two], [one])).toEqual([one]);
  });

  test('a sub-answer is kept with its sign', () => {
    const entry = note(5, { kind: 'sign', sign: 'leg-jumps', answer: 'different', details: ['wakes-child'] });
    expect(stored(JSON.stringify(entry))).toEqual(entry);
  });

  test.each([
    null,
    7,
    'text',
    [],
    {},
    { id: 'a-1' },
    { id: 'a-1', t: 'noon', kind: 'bell' },
    { t: 5, kind: 'sign', sign: 'toes-cool' },
  ])('a damaged note counts as tell-nurse or more and is listed: %j', (value) => {
    const entry = parseEntry(value);
    expect(entry).toMatchObject({ kind: 'unknown', raw: value });
    const open = openSigns([entry]);
    expect(open).toEqual([`unknown:${entry.id}`]);
    const result = assess({ sightings: sightingsOf([entry]) }, context());
    expect(['tell-nurse', 'ring-now']).toContain(result.urgency);
    expect(result.unknown).toEqual(open);
  });

  test('an id and a word may have eighty letters, and a moment lie at the end of every calendar; beyond, the note is unknown', () => {
    const bell = { id: 'a-1', t: 5, off: 0, kind: 'bell' };
    const play = { ...bell, kind: 'play', again: true };
    for (const row of [
      { ...bell, id: 'x'.repeat(80) },
      { ...play, idea: 'x'.repeat(80) },
      { ...bell, t: LAST_MINUTE },
      { ...bell, t: -LAST_MINUTE },
    ])
      expect(parseEntry(row)).toEqual(row);
    for (const row of [
      { ...bell, id: 'x'.repeat(81) },
      { ...play, idea: 'x'.repeat(81) },
      { ...bell, t: LAST_MINUTE + 1 },
      { ...bell, t: -LAST_MINUTE - 1 },
    ])
      expect(parseEntry(row)).toMatchObject({ kind: 'unknown', raw: row });
    // a year later every clock can still tell the day
    for (const end of [LAST_MINUTE + 366 * 1440, -LAST_MINUTE - 366 * 1440])
      expect(new Date(end * 60_000).getTime()).toBe(end * 60_000);
  });

  test('a kind of note from a later version counts as tell-nurse just after it was written', () => {
    const now = context().now;
    const entry = parseEntry({ id: 'cccccc-1', t: now - 1, off: 0, kind: 'song', title: 'a' });
    expect(entry).toMatchObject({ kind: 'unknown', t: now - 1 });
    const result = assess({ sightings: sightingsOf([entry]) }, context());
    expect(result).toMatchObject({ urgency: 'tell-nurse', unknown: ['unknown:cccccc-1'] });
  });

  test('a sign of a later version is kept under its name and counts as tell-nurse', () => {
    const now = context().now;
    const entry = parseEntry({
      id: 'cccccc-1',
      t: now - 1,
      off: 0,
      kind: 'sign',
      sign: 'toes-glow',
      answer: 'different',
    });
    const result = assess({ sightings: sightingsOf([entry]) }, context());
    expect(result).toMatchObject({ urgency: 'tell-nurse', unknown: ['toes-glow'] });
  });

  test.each([
    { details: [17] },
    { details: 'very' },
    { details: ['', 'wakes-child'] },
    { details: ['x'.repeat(81)] },
  ])('a sub-answer that cannot be read raises a next-visit sign to tell-nurse: %j', (row) => {
    const now = context().now;
    const entry = parseEntry({
      id: 'a-1',
      t: now - 1,
      off: 0,
      kind: 'sign',
      sign: 'leg-jumps',
      answer: 'different',
      ...row,
    });
    expect(assess({ sightings: sightingsOf([entry]) }, context()).urgency).toBe('tell-nurse');
  });

  test.each(['fine', 'like-usual', 'not-looked', undefined, 3])(
    'a reported sign with the answer %j is read as different, a looked-at one as not sure',
    (answer) => {
      const row = { id: 'a-1', t: 5, off: 0 };
      expect(parseEntry({ ...row, kind: 'sign', sign: 'toes-cool', answer })).toMatchObject({
        answer: 'different',
      });
      if (answer === 'like-usual' || answer === 'not-looked') return;
      const look = parseEntry({ ...row, kind: 'look', answers: { 'toes-cool': answer } });
      expect(look).toMatchObject({ answers: { 'toes-cool': 'not-sure' } });
    },
  );

  test('two damaged notes stay two, the same one read twice stays one', () => {
    const [a, b] = [parseEntry({ kind: 'bell' }), parseEntry({ kind: 'told' })];
    expect(mergeNotes([a, b], [parseEntry({ kind: 'told' })])).toHaveLength(2);
    expect(sightingsOf(mergeNotes([a], [b]))).toHaveLength(2);
  });

  test('a time beyond every calendar is an unknown note that can still be shown', () => {
    const entry = parseEntry({ id: 'a-1', t: 1e300, off: 0, kind: 'bell' });
    expect(entry).toMatchObject({ id: 'a-1', kind: 'unknown', t: 0 });
  });

  test('names of the machine’s own in a stored note do no harm', () => {
    const look = stored(
      '{"id":"__proto__","t":5,"off":0,"kind":"look","answers":{"__proto__":"different","constructor":"different","toString":"odd","toes-cool":"like-usual"}}',
    );
    expect(({} as Record<string, unknown>)['different']).toBeUndefined();
    if (look.kind !== 'look') throw new Error(`asked for a look, saw ${look.kind}`);
    expect(Object.getPrototypeOf(look.answers)).toBe(Object.prototype);
    expect(Object.entries(look.answers).sort()).toEqual([
      ['__proto__', 'different'],
      ['constructor', 'different'],
      ['toString', 'not-sure'],
      ['toes-cool', 'like-usual'],
    ]);
    const now = instant(6);
    const result = assess({ sightings: sightingsOf([look]) }, context({ now }));
    expect([...result.unknown].sort()).toEqual(['__proto__', 'constructor', 'toString']);
    // three of them are three things that are different: R11
    expect(result.urgency).toBe('ring-now');
    const one = stored(
      '{"id":"a-1","t":5,"off":0,"kind":"sign","sign":"constructor","details":["__proto__","name"]}',
    );
    expect(assess({ sightings: sightingsOf([one]) }, context({ now })).urgency).toBe('tell-nurse');
    expect(openSigns([look, one]).sort()).toEqual(['__proto__', 'constructor', 'toString']);
  });
});

describe('two sets of notes as one', () => {
  const notes = fc.array(fc.oneof({ weight: 4, arbitrary: anyEntry }, anyStoredJson), { maxLength: 8 });

  test('it makes no difference who gives to whom', () => {
    fc.assert(
      fc.property(notes, notes, (a, b) => {
        expect(mergeNotes(a, b)).toEqual(mergeNotes(b, a));
      }),
      { numRuns: cases(500) },
    );
  });

  test('it makes no difference which two are put together first', () => {
    fc.assert(
      fc.property(notes, notes, notes, (a, b, c) => {
        expect(mergeNotes(mergeNotes(a, b), c)).toEqual(mergeNotes(a, mergeNotes(b, c)));
      }),
      { numRuns: cases(1000) },
    );
  });

  test('the same notes given again, in any order, change nothing', () => {
    fc.assert(
      fc.property(
        notes.chain((a) => fc.tuple(fc.constant(a), fc.shuffledSubarray([...a, ...a, ...a]))),
        ([a, again]) => {
          const once = mergeNotes(a, []);
          expect(mergeNotes(once, again)).toEqual(once);
          expect(mergeNotes([...a].reverse(), again)).toEqual(once);
        },
      ),
      { numRuns: cases(1000) },
    );
  });

  test('no id is lost, none comes twice, and earlier stands first', () => {
    fc.assert(
      fc.property(notes, notes, (a, b) => {
        const merged = mergeNotes(a, b);
        const ids = merged.map((entry) => entry.id);
        expect(new Set(ids)).toEqual(new Set([...a, ...b].map((entry) => entry.id)));
        expect(new Set(ids).size).toBe(ids.length);
        merged.slice(1).forEach((entry, i) => expect(entry.t).toBeGreaterThanOrEqual(merged[i]!.t));
      }),
    );
  });

  test('the tenth note of a minute stands after the second', () => {
    const [second, tenth] = [note(0, { kind: 'bell' }, 'a-2'), note(0, { kind: 'told' }, 'a-10')];
    expect(mergeNotes([tenth], [second])).toEqual([second, tenth]);
  });

  test('the order of notes is a true order: two different ids are never level', () => {
    fc.assert(
      fc.property(anyEntry, anyEntry, anyEntry, (a, b, c) => {
        expect(Math.sign(byTime(a, b)) + Math.sign(byTime(b, a))).toBe(0);
        expect(byTime(a, b) === 0).toBe(a.id === b.id && a.t === b.t);
        if (byTime(a, b) < 0 && byTime(b, c) < 0) expect(byTime(a, c)).toBeLessThan(0);
      }),
      { numRuns: cases(1000) },
    );
  });

  test('the class is the same on both phones after they gave each other their notes', () => {
    fc.assert(
      fc.property(notes, notes, (a, b) => {
        const [here, there] = [mergeNotes(a, b), mergeNotes(b, a)];
        expect(assess({ sightings: sightingsOf(here) }, context())).toEqual(
          assess({ sightings: sightingsOf(there) }, context()),
        );
      }),
      { numRuns: cases(200) },
    );
  });
});

test('a strike keeps the note in the notes', () => {
  const seen = note(1, { kind: 'sign', sign: 'toes-cool', answer: 'different' });
  const strike = note(2, { kind: 'strike', strikes: seen.id });
  const merged = mergeNotes([strike], [seen]);
  expect(merged).toEqual([seen, strike]);
  expect(struckIds(merged)).toEqual(new Set([seen.id]));
});
