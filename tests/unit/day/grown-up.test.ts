// The grown-up's list: nothing is lost in it, nothing of the child's own is in it, and medicine is asked about in time.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { added, firstPlace, isDone, type DayBook } from '#domain/day/book.ts';
import { MOST, readDayBook } from '#domain/day/book-store.ts';
import {
  comesNow,
  grownUpDay,
  mayEdit,
  nextQuarter,
  ownTime,
  putAt,
  putIn,
  shifted,
} from '#domain/day/grown-up.ts';
import { DAY_EVENT_IDS, isFiller } from '#domain/day/ids.ts';
import { asksOf } from '#domain/day/medicine.ts';
import { dayOf } from '#domain/day/tiles.ts';
import { instant, minutes } from '#domain/units.ts';
import { anyBook, anyPlace, inLondon, LONDON, TABLE, TYPICAL_BOOK } from './days.ts';

const { offsetAt } = LONDON;
const ASK = minutes(45);
const build = (book: DayBook, where = LONDON) => dayOf(book, TABLE, {}, where.offsetAt);
const list = (book: DayBook, now: number) => grownUpDay(build(book), instant(now), ASK);
const KINDS = DAY_EVENT_IDS.filter((kind) => !isFiller(kind));
const anyKind = fc.constantFrom(...KINDS);
const anyMinute = fc.nat(1439);
const ids = (book: DayBook) => book.events.map(({ id }) => id);

describe('the list of the day', () => {
  it('holds everything that is not the child’s own, once, in order of time, or says why not', () => {
    fc.assert(
      fc.property(
        anyBook,
        anyPlace,
        anyMinute,
        fc.integer({ min: 30, max: 90 }),
        (book, where, minute, ask) => {
          const day = build(book, where);
          const now = instant(day.from + minute);
          const shown = grownUpDay(day, now, minutes(ask));
          const own = new Set(
            [...day.tiles, ...day.explained].flatMap((one) =>
              one.private ? ['event' in one ? one.event : one.id] : [],
            ),
          );
          const told = [
            ...shown.rows.flatMap((row) => (row.what === 'part' ? [row.tile.id] : [])),
            ...shown.leftOut.map(({ event }) => event),
          ];
          expect(new Set(told).size).toBe(told.length);
          expect(told.filter((id) => !id.startsWith('~')).sort()).toEqual(
            ids(book)
              .filter((id) => !own.has(id))
              .sort(),
          );
          // nor is it what came first
          expect(JSON.stringify(shown)).not.toMatch(/"private"/);
          for (const id of own) expect(JSON.stringify(shown)).not.toContain(`"${id}"`);
          const times = shown.rows.map(({ at }) => at);
          expect(times).toEqual([...times].sort((a, b) => a - b));
          const nows = shown.rows.filter((row) => row.what === 'part' && row.now);
          expect(nows).toHaveLength(now < day.to ? 1 : 0);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('asks about medicine before each care that hurts, so many minutes ahead and never behind it', () => {
    fc.assert(
      fc.property(anyBook, anyMinute, (book, minute) => {
        const day = build(book);
        const now = instant(day.from + minute);
        const { rows, askNow, underWay } = grownUpDay(day, now, ASK);
        const hurting = day.tiles.filter(({ hurts }) => hurts);
        const asked = rows.flatMap((row) => (row.what === 'ask' ? [row.ask.care] : []));
        expect(asked.sort()).toEqual(hurting.map(({ id }) => id).sort());
        for (const { id, from, to } of hurting) {
          const places = rows.map((row) => (row.what === 'ask' ? `ask ${row.ask.care}` : row.tile.id));
          expect(places.indexOf(`ask ${id}`)).toBeLessThan(places.indexOf(id));
          expect(askNow.some(({ care }) => care === id)).toBe(from - ASK <= now && now < from);
          expect(underWay?.id === id).toBe(from <= now && now < to);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('what was due yesterday is asked about as soon as the day begins', () => {
    const early = added(
      { ...TYPICAL_BOOK, events: [] },
      { id: 'n', kind: 'needle', from: 20, minutes: 15, source: 'bed' },
    );
    const day = build(early);
    expect(grownUpDay(day, day.from, ASK).rows[0]).toMatchObject({ what: 'ask', at: day.from, state: 'now' });
  });

  it('the night is a row only while it lasts', () => {
    const kinds = (now: number) =>
      list(TYPICAL_BOOK, now).rows.flatMap((row) => (row.what === 'part' ? [row.tile.kind] : []));
    expect(kinds(inLondon('2026-11-25T10:00'))).not.toContain('night');
    expect(kinds(inLondon('2026-11-25T03:00'))[0]).toBe('night');
  });
});

describe('a change by hand', () => {
  const change = fc.record({
    pick: fc.nat(),
    by: fc.integer({ min: -300, max: 300 }),
    length: fc.integer({ min: -10, max: 2000 }),
    kind: anyKind,
    minute: anyMinute,
    what: fc.constantFrom('shift', 'put', 'in', 'now', 'own'),
  });
  type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;
  const apply = (book: DayBook, { pick, by, length, kind, minute, what }: Change) => {
    const id = book.events[pick % Math.max(1, book.events.length)]?.id ?? 'none';
    if (what === 'shift') return shifted(book, build(book), id, by, TABLE, offsetAt);
    if (what === 'put') return putAt(book, id, { from: minute, minutes: length }, TABLE);
    if (what === 'in') return putIn(book, kind, minute, TABLE[kind].minutes);
    if (what === 'own') return ownTime(book, kind, minute, TABLE[kind].minutes, TABLE);
    return comesNow(book, kind, instant(build(book).from + minute), TABLE, offsetAt);
  };

  it('loses nothing, moves nothing that is done or planned as play, keeps where it stood first, and can be kept', () => {
    fc.assert(
      fc.property(anyBook, fc.array(change, { minLength: 1, maxLength: 6 }), (first, changes) => {
        let book = first;
        for (const one of changes) {
          const next = apply(book, one);
          for (const event of book.events) {
            const after = next.events.find(({ id }) => id === event.id);
            expect(after && firstPlace(after)).toEqual(firstPlace(event));
            if (!mayEdit(book, event.id)) expect(after).toEqual(event);
          }
          expect(next.done.map(({ event }) => event)).toEqual(book.done.map(({ event }) => event));
          expect(readDayBook(next)).toEqual({ book: next, faults: [] });
          book = next;
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a quarter of an hour later and earlier again is the same day, where nothing stood in the way', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ids(TYPICAL_BOOK)), (id) => {
        const later = shifted(TYPICAL_BOOK, build(TYPICAL_BOOK), id, 15, TABLE, offsetAt);
        expect(later === TYPICAL_BOOK).toBe(!mayEdit(TYPICAL_BOOK, id));
        const from = (book: DayBook) => build(book).tiles.find((one) => one.id === id)?.from;
        const planned = firstPlace(TYPICAL_BOOK.events.find((one) => one.id === id)!).from;
        const begin = inLondon('2026-11-25T00:00') + planned;
        fc.pre(from(TYPICAL_BOOK) === begin && from(later) === begin + 15);
        expect(shifted(later, build(later), id, -15, TABLE, offsetAt)).toEqual(TYPICAL_BOOK);
      }),
    );
  });

  it('is as long as before at its other time, also where something cuts it short today', () => {
    fc.assert(
      fc.property(anyBook, fc.nat(), fc.constantFrom(-15, 15), (book, pick, by) => {
        const event = book.events[pick % Math.max(1, book.events.length)];
        fc.pre(event !== undefined && mayEdit(book, event.id));
        const after = shifted(book, build(book), event.id, by, TABLE, offsetAt);
        expect(after.events.find(({ id }) => id === event.id)?.minutes).toBe(event.minutes);
      }),
    );
  });

  it('something new is offered for the next quarter of an hour, and never for the next day', () => {
    fc.assert(
      fc.property(anyMinute, (minute) => {
        const next = nextQuarter(instant(inLondon('2026-11-25T00:00') + minute), offsetAt);
        expect(next).toBeLessThan(1440);
        expect(next % 5).toBe(0);
        if (minute < 1425) expect([next % 15, next > minute, next - minute <= 15]).toEqual([0, true, true]);
      }),
    );
  });

  it('“ask about medicine” follows the care that moved', () => {
    const care = 'm-bandage-1';
    const asked = (book: DayBook) => asksOf([build(book)], ASK).find((one) => one.care === care);
    const before = asked(TYPICAL_BOOK)!;
    const later = shifted(TYPICAL_BOOK, build(TYPICAL_BOOK), care, 30, TABLE, offsetAt);
    expect(asked(later)).toEqual({ ...before, at: before.at + 30, careAt: before.careAt + 30 });
  });

  it('what comes now is now, is one thing however often it is touched, and pushes no care out', () => {
    fc.assert(
      fc.property(anyKind, fc.integer({ min: 7 * 60, max: 20 * 60 }), (kind, minute) => {
        const now = instant(inLondon('2026-11-25T00:00') + minute);
        const once = comesNow(TYPICAL_BOOK, kind, now, TABLE, offsetAt);
        expect(comesNow(once, kind, now, TABLE, offsetAt)).toBe(once);
        const day = build(once);
        expect(day.tiles.find(({ from, to }) => from <= now && now < to)?.kind).toBe(kind);
        const cares = (of: DayBook) =>
          build(of)
            .tiles.filter(({ hurts }) => hurts)
            .map(({ id }) => id);
        expect(cares(once)).toEqual(expect.arrayContaining(cares(TYPICAL_BOOK)));
      }),
    );
  });

  it('an X-ray at five past nine: the needle of quarter past nine finds room before play does', () => {
    const now = instant(inLondon('2026-11-25T09:05'));
    const day = build(comesNow(TYPICAL_BOOK, 'x-ray', now, TABLE, offsetAt));
    const needle = day.tiles.find(({ kind }) => kind === 'needle')!;
    const xray = day.tiles.find(({ kind }) => kind === 'x-ray')!;
    expect(needle.to - needle.from).toBe(15);
    expect(needle.from).toBeGreaterThanOrEqual(xray.to);
  });

  it('a full day takes nothing more', () => {
    let book: DayBook = { ...TYPICAL_BOOK, events: [] };
    for (let n = 0; n < MOST.events + 5; n++) book = putIn(book, 'drink', (n * 5) % 1400, 5);
    expect(book.events).toHaveLength(MOST.events);
    expect(comesNow(book, 'x-ray', inLondon('2026-11-25T10:00'), TABLE, offsetAt)).toBe(book);
    expect(ownTime(book, 'call-home', 600, 15, TABLE)).toBe(book);
  });

  it('no care is ever the child’s own time', () => {
    for (const kind of KINDS) {
      const book = ownTime(TYPICAL_BOOK, kind, 600, 15, TABLE);
      const isCare = TABLE[kind].hurts || ['care', 'rare'].includes(TABLE[kind].group);
      expect([kind, book === TYPICAL_BOOK]).toEqual([kind, isCare]);
    }
  });

  it('what is done is never edited', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        for (const id of ids(book)) if (isDone(book, id)) expect(mayEdit(book, id)).toBe(false);
      }),
    );
  });
});
