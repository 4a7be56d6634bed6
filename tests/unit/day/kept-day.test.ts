// What one device keeps of a child's day: read back whole, and where a part is bad, all the rest.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FEELINGS } from '#domain/day/feelings.ts';
import {
  dayPartOf,
  pressedAtEdge,
  readKeptDay,
  untouched,
  usualWays,
  type KeptDay,
  type Today,
} from '#domain/day/kept-day.ts';
import { AGE_MODES } from '#domain/day/modes.ts';
import { EDGE_PICTURES } from '#domain/day/touch.ts';
import { instant } from '#domain/units.ts';
import { anyBook, DATES } from './days.ts';

const USUAL = usualWays(false);
const anyInstant = fc.nat(60_000_000).map(instant);
const anyKey = fc.tuple(fc.stringMatching(/^[a-z]{1,8}-\d$/), fc.constantFrom('who-counts', 'which-hand'));
const anyToday: fc.Arbitrary<Today> = fc.record({
  day: fc.constantFrom(...DATES),
  feelings: fc.array(fc.record({ picture: fc.constantFrom(...FEELINGS), at: anyInstant }), {
    maxLength: 50,
  }),
  edge: fc.array(fc.record({ picture: fc.constantFrom(...EDGE_PICTURES), at: anyInstant }), {
    maxLength: 50,
  }),
  offers: fc.dictionary(
    anyKey.map((parts) => parts.join('/')),
    fc.record({ passed: fc.nat(3), lastAt: anyInstant }),
    { noNullPrototype: true },
  ),
  chosen: fc.dictionary(
    anyKey.map((parts) => parts.join('/')),
    fc.constantFrom('neither', 'left-hand', 'r-story'),
    { noNullPrototype: true },
  ),
});
const anyKept: fc.Arbitrary<KeptDay> = fc.record(
  {
    book: anyBook,
    firstDay: fc.constantFrom(...DATES),
    today: anyToday,
    nothingByMouth: fc.record({ since: anyInstant, cardMadeAt: anyInstant }, { requiredKeys: [] }),
    ways: fc.record(
      {
        mode: fc.constantFrom(...AGE_MODES),
        leftHand: fc.boolean(),
        oneKey: fc.boolean(),
        sound: fc.boolean(),
        dayPictures: fc.boolean(),
      },
      { requiredKeys: ['leftHand', 'oneKey', 'sound', 'dayPictures'] },
    ),
  },
  { requiredKeys: ['ways'] },
);
const stored = (kept: unknown): Record<string, unknown> => JSON.parse(JSON.stringify(kept)) as never;

describe('a kept day', () => {
  it('comes back from the device as it was, with nothing to blame', () => {
    fc.assert(
      fc.property(anyKept, (kept) => {
        expect(readKeptDay(stored(kept), USUAL)).toEqual({ kept, faults: [] });
      }),
    );
  });

  it('that was never kept is no fault', () => {
    for (const nothing of [undefined, null])
      expect(readKeptDay(nothing, USUAL)).toEqual({ kept: { ways: USUAL }, faults: [] });
  });

  it('never throws, whatever lies there, and names what it could not read', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const { kept, faults } = readKeptDay(value, USUAL);
        expect(kept.ways).toBeDefined();
        const empty = value === null || value === undefined;
        const readable = typeof value === 'object' && value !== null && Object.keys(value).length === 0;
        if (!empty && !readable) expect(faults.length).toBeGreaterThan(0);
      }),
    );
  });

  const anyPart = fc.constantFrom('book', 'firstDay', 'today', 'ways');
  it('loses one bad part and no other, and names that part', () => {
    fc.assert(
      fc.property(anyKept, anyPart, fc.constantFrom('spoilt', 7, true), (kept, part, bad) => {
        const { kept: read, faults } = readKeptDay({ ...stored(kept), [part]: bad }, USUAL);
        expect(faults.length).toBeGreaterThan(0);
        for (const other of ['book', 'firstDay', 'today', 'nothingByMouth', 'ways'] as const)
          if (other !== part) expect(read[other], other).toEqual(kept[other]);
        if (part === 'ways') expect(read.ways).toEqual(USUAL);
        else expect(read[part as 'book']).toBeUndefined();
      }),
    );
  });

  it('loses one press that nobody can read, and keeps the others', () => {
    fc.assert(
      fc.property(anyToday, fc.nat(), (today, n) => {
        fc.pre(today.edge.length > 0 && today.edge.length < 50);
        const at = n % today.edge.length;
        const edge = [...today.edge.slice(0, at), { picture: 'a-look', at: 5 }, ...today.edge.slice(at)];
        const { kept, faults } = readKeptDay({ today: stored({ ...today, edge }), ways: {} }, USUAL);
        expect(kept.today).toEqual(today);
        expect(faults.map(({ where }) => where)).toEqual([`day › today › edge › ${at + 1} › picture`]);
      }),
    );
  });

  it('holds "nothing by mouth" where it cannot be read whether somebody said so', () => {
    for (const spoilt of ['perhaps', true, 7, [], {}, { since: 'ten' }])
      expect(readKeptDay({ nothingByMouth: spoilt }, USUAL).kept.nothingByMouth).toEqual({});
    const { kept, faults } = readKeptDay({ nothingByMouth: { since: 5, cardMadeAt: 'early' } }, USUAL);
    expect(kept.nothingByMouth).toEqual({ since: 5 });
    expect(faults.map(({ where }) => where)).toEqual(['day › nothingByMouth › cardMadeAt']);
  });

  it('holds "nothing by mouth" where a text breaks off that tells of it', () => {
    const text = JSON.stringify({ ways: {}, nothingByMouth: { since: 5 } });
    expect(readKeptDay(text.slice(0, -4), USUAL).kept).toEqual({ ways: USUAL, nothingByMouth: {} });
    expect(readKeptDay('rubbish', USUAL).kept).toEqual({ ways: USUAL });
  });

  it('says in which part of the page a fault lies', () => {
    const bad = { book: 7, today: 7, nothingByMouth: 7, ways: 7, firstDay: 7, version: 9 };
    const parts = readKeptDay(bad, USUAL).faults.map((fault) => dayPartOf(fault));
    expect(parts.sort()).toEqual(['eating', 'list', 'list', 'list', 'pressed', 'ways']);
  });

  it('holds "nothing by mouth" as it was kept at first, among what was pressed on one day', () => {
    const read = (today: unknown) => readKeptDay({ today }, USUAL);
    const day = untouched('2026-11-25');
    expect(read({ ...day, nothingByMouth: true, nothingByMouthSince: 5 })).toEqual({
      kept: { ways: USUAL, today: day, nothingByMouth: { since: 5 } },
      faults: [],
    });
    expect(read({ ...day, nothingByMouth: false, nothingByMouthSince: 5 }).kept).toEqual({
      ...{ ways: USUAL, today: day },
    });
    expect(read({ ...day, nothingByMouth: 'perhaps' }).kept.nothingByMouth).toEqual({});
    // the day itself cannot be read: the word can
    expect(read({ day: 'once', nothingByMouth: true }).kept).toEqual({ ways: USUAL, nothingByMouth: {} });
  });
});

describe('a press at the edge', () => {
  it('counts once in a minute, whatever is pressed around it, and wild pressing fills no device', () => {
    const presses = fc.array(fc.tuple(fc.constantFrom(...EDGE_PICTURES), fc.nat(30)), { maxLength: 300 });
    fc.assert(
      fc.property(presses, (all) => {
        const start = untouched('2026-11-25');
        const after = all.reduce<Today>(
          (one, [picture, at]) => pressedAtEdge(one, picture, instant(at)),
          start,
        );
        const seen = new Set(all.map((press) => press.join(' ')));
        expect(after.edge.length).toBe(Math.min(50, seen.size));
        expect(new Set(after.edge.map(({ picture, at }) => `${picture},${at}`)).size).toBe(after.edge.length);
        expect({ ...after, edge: [] }).toEqual(start);
      }),
    );
  });
});

it('a ward’s own tablet is silent until somebody asks for sound; a family’s phone is not', () => {
  expect([usualWays(true).sound, usualWays(false).sound]).toEqual([false, true]);
});
