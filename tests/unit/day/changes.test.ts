// The day when the bed's day changes, the question about medicine, what others see, and the day read back.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROUTINE } from '#content/day-events.ts';
import { added, asPlanned, isDone, movedInDay, renewed, takenOff, type DayBook } from '#domain/day/book.ts';
import { MOST, readDayBook } from '#domain/day/book-store.ts';
import { pushed } from '#domain/day/doors.ts';
import { bookOf, dayFactsOf, eatingFacts } from '#domain/day/from-bed.ts';
import { askState, asksOf } from '#domain/day/medicine.ts';
import { AGE_MODES } from '#domain/day/modes.ts';
import { ON_ONE_SHEET, sheetsOf } from '#domain/day/print.ts';
import { keptPrivate, shownToOthers } from '#domain/day/private.ts';
import { dayOf } from '#domain/day/tiles.ts';
import { cameUp } from '#domain/play-bed/came-up.ts';
import { START_CARD, type BedCard } from '#domain/bed-card/card.ts';
import { instant, minutes } from '#domain/units.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';
import { anyBook, anyPlace, inLondon, LONDON, TABLE, TYPICAL_BOOK } from './days.ts';

const { offsetAt } = LONDON;
const build = (book: DayBook) => dayOf(book, TABLE, {}, offsetAt);
const bookFor = (bed: typeof TYPICAL) => bookOf(bed, TABLE, ROUTINE, 'path');
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const anyNews = fc.array(
  fc.record({
    by: fc.constantFrom('x-ray' as const, 'visitor', 'physio'),
    now: fc.integer({ min: 84, max: 230 }).map((n) => n * 5),
    minutes: fc.integer({ min: 1, max: 12 }).map((n) => n * 5),
  }),
  { minLength: 1, maxLength: 3 },
);

describe('something came up at the bed', () => {
  it('everything that stood in the day still does, or is explained; once more with the same bed it is the same day', () => {
    fc.assert(
      fc.property(anyNews, (news) => {
        let [bed, book] = [TYPICAL, TYPICAL_BOOK];
        for (const { by, now, minutes: length } of news) {
          bed = cameUp(bed, now, { kind: 'taken', by, minutes: length });
          book = renewed(book, bookFor(bed), offsetAt);
        }
        expect(renewed(book, bookFor(bed), offsetAt)).toEqual(book);
        const [first, day] = [build(TYPICAL_BOOK), build(book)];
        for (const { id } of TYPICAL_BOOK.events) {
          const before = first.tiles.find((tile) => tile.id === id);
          const after = day.tiles.find((tile) => tile.id === id);
          const same = before?.from === after?.from && before?.to === after?.to;
          // what had been pushed elsewhere may find its own place free again
          const home = first.explained.find(({ event }) => event === id)?.was.from;
          const isHome = home !== undefined && after?.from === home;
          const told = day.explained.some(({ event }) => event === id);
          expect([id, same || isHome || told]).toEqual([id, true]);
        }
        for (const { id, from } of bed.sketch.events) {
          const told =
            day.tiles.find((tile) => tile.id === `e-${id}`) ??
            day.explained.find(({ event }) => event === `e-${id}`);
          expect([id, from, told !== undefined]).toEqual([id, from, true]);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('the X-ray at nine: the medicine round of nine is explained by it, and goes back when the bed does', () => {
    const bed = cameUp(TYPICAL, 540, { kind: 'taken', by: 'x-ray', minutes: 10 });
    const book = renewed(TYPICAL_BOOK, bookFor(bed), offsetAt);
    expect(build(book).tiles.find(({ id }) => id === 'e-x-ray-1')).toMatchObject({
      kind: 'x-ray',
      hurts: true,
    });
    expect(build(book).explained.find(({ event }) => event === 'e-medicine')).toMatchObject({
      ...{ how: 'left-out', why: 'came-first', by: 'e-x-ray-1' },
    });
    const back = renewed(book, TYPICAL_BOOK, offsetAt);
    expect(build(back).explained.find(({ event }) => event === 'e-medicine')).toBeUndefined();
    expect(build(back).explained.find(({ event }) => event === 'e-x-ray-1')).toMatchObject({
      how: 'left-out',
    });
  });

  it('leaves what is done, and what the family wished, and begins another day anew', () => {
    const done = pushed(TYPICAL_BOOK, build(TYPICAL_BOOK), 'e-breakfast');
    const wished = movedInDay(done, 'e-wash', { from: 660, minutes: 30 }, 'wanted');
    const own = added(wished, {
      id: 'call-home-1',
      kind: 'call-home',
      from: 1080,
      minutes: 15,
      source: 'family',
    });
    const bare = { ...TYPICAL, plan: [], sketch: { ...TYPICAL.sketch, events: [] } };
    const book = renewed(own, bookFor(bare), offsetAt);
    expect(isDone(book, 'e-breakfast')).toBe(true);
    expect(build(book).tiles.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['e-breakfast', 'e-wash', 'call-home-1']),
    );
    const tomorrow = { ...bookFor(TYPICAL), day: '2026-11-26' };
    expect(renewed(own, tomorrow, offsetAt)).toBe(tomorrow);
    // a clock set back begins nothing: what was done and written in stays
    expect(renewed(tomorrow, own, offsetAt)).toBe(tomorrow);
  });

  it('a part that was lost with the device’s memory stands again where it stood, and pushes nothing away', () => {
    const ofTheBed = TYPICAL_BOOK.events.filter(({ source }) => source === 'bed');
    expect(ofTheBed.length).toBeGreaterThan(5);
    for (const { id } of ofTheBed) {
      const events = TYPICAL_BOOK.events.filter((event) => event.id !== id);
      const damaged = { ...TYPICAL_BOOK, events };
      expect(renewed(damaged, TYPICAL_BOOK, offsetAt, true)).toEqual(TYPICAL_BOOK);
      // the same, had nothing been lost, is something new
      const news = renewed(damaged, TYPICAL_BOOK, offsetAt).events.find((event) => event.id === id);
      expect(news?.cameUp).toBe(true);
    }
  });

  it('what was moved and taken off comes back to where it stood first', () => {
    fc.assert(
      fc.property(anyBook, fc.nat(), fc.nat(200), (some, pick, spot) => {
        const book = { ...some, done: [] };
        const event = book.events[pick % Math.max(1, book.events.length)];
        if (!event || event.was || event.off) return;
        const moved = movedInDay(book, event.id, { from: spot * 5, minutes: 10 }, 'ward-said');
        expect(asPlanned(moved, event.id)).toEqual(asPlanned(book, event.id));
        expect(asPlanned(takenOff(moved, event.id, 'not-today'), event.id)).toEqual(
          asPlanned(book, event.id),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('ask about medicine', () => {
  it('stands before each care that hurts by exactly the ward’s minutes, wherever the care now is', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, fc.integer({ min: 30, max: 90 }), (book, where, ask) => {
        const day = dayOf(book, TABLE, {}, where.offsetAt);
        const asks = asksOf([day], minutes(ask));
        const hurting = book.events.filter((one) => one.hurts || TABLE[one.kind].hurts).map(({ id }) => id);
        const standing = day.tiles.filter(({ id }) => hurting.includes(id));
        expect(asks.map(({ care }) => care).sort()).toEqual(standing.map(({ id }) => id).sort());
        for (const one of asks) {
          expect(one.careAt - one.at).toBe(ask);
          expect(one.careAt).toBe(day.tiles.find(({ id }) => id === one.care)!.from);
          expect(
            [one.at - 1, one.at, one.careAt - 1, one.careAt].map((at) => askState(one, instant(at))),
          ).toEqual([...['later', 'now', 'now', 'care-began']]);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('for a care at 02:10 in the night the clocks go back, stands at the second 01:25', () => {
    const night = added(
      { ...TYPICAL_BOOK, day: '2026-10-25', events: [] },
      { id: 'n', kind: 'needle', from: 130, minutes: 15, source: 'bed' },
    );
    const [ask] = asksOf([build(night)], minutes(45));
    expect(ask!.at).toBe(Date.UTC(2026, 9, 25, 1, 25) / 60_000);
    expect(LONDON.wall(ask!.at)).toBe('2026-10-25T01:25');
  });

  it('for a care soon after midnight stands the evening before', () => {
    const early = added(
      { ...TYPICAL_BOOK, day: '2026-11-26', events: [] },
      { id: 'n', kind: 'needle', from: 20, minutes: 15, source: 'bed' },
    );
    expect(asksOf([build(TYPICAL_BOOK), build(early)], minutes(45)).at(-1)!.at).toBe(
      inLondon('2026-11-25T23:35'),
    );
  });
});

describe('what the card says', () => {
  const card = {
    ...START_CARD,
    side: 'left',
    bell: 'cord',
    secondStep: 'call-out',
    wardLanguage: 'en',
    madeAt: instant(0),
    off: minutes(0),
  } as const satisfies BedCard;

  it('is its age, its minutes, and when eating begins', () => {
    const until = inLondon('2026-11-25T12:00');
    expect(
      dayFactsOf(
        {
          ...card,
          age: { years: 2, months: 11 },
          medicineWaitMinutes: 60,
          nothingByMouthUntil: until,
        },
        99,
      ),
    ).toEqual({
      mode: 'one-picture',
      facts: { eatingFrom: until },
      askMinutes: 60,
      handsToChoose: 2,
    });
    for (const [hands, drip, choose] of [
      ['both', 'left', 1],
      ['left', 'none', 1],
      ['none', 'none', 0],
    ] as const)
      expect(dayFactsOf({ ...card, hands, drip }, 99).handsToChoose).toBe(choose);
  });

  it('and the bed’s together allow eating only where both do', () => {
    const now = inLondon('2026-11-25T09:00');
    const later = { eatingFrom: instant(now + 60) };
    expect([eatingFacts({}, true, now), eatingFacts({}, false, now)]).toEqual([
      {},
      { eatingFrom: 'not-today' },
    ]);
    expect([eatingFacts(later, true, now), eatingFacts(later, false, now)]).toEqual([later, later]);
    expect(eatingFacts({ eatingFrom: instant(now - 60) }, false, now)).toEqual({ eatingFrom: 'not-today' });
    // said at nine, and told with it
    expect(eatingFacts({}, false, now, now)).toEqual({ eatingFrom: 'not-today', notEatingSince: now });
    expect(eatingFacts(later, false, now, now)).toEqual(later);
    expect(eatingFacts({}, true, now, now)).toEqual({});
  });
});

describe('what others see', () => {
  it('covers the day, holds nothing that is the child’s own, and never hides a care', () => {
    let hidden = 0;
    fc.assert(
      fc.property(anyBook, (book) => {
        const day = build(book);
        const { tiles, explained } = shownToOthers(day);
        let cursor: number = day.from;
        for (const { from, to } of tiles) {
          expect(from).toBe(cursor);
          cursor = to;
        }
        expect(cursor).toBe(day.to);
        const own = book.events
          .filter(
            (one) =>
              one.private &&
              one.source === 'child' &&
              !one.hurts &&
              !['care', 'rare'].includes(TABLE[one.kind].group) &&
              !TABLE[one.kind].hurts,
          )
          .map(({ id }) => id);
        hidden += own.length;
        const kept = JSON.stringify([tiles, explained.map((one) => ({ ...one, by: '' }))]);
        for (const id of own) expect(kept).not.toContain(`"${id}"`);
        for (const tile of day.tiles.filter(({ id }) => !own.includes(id) && !id.startsWith('~')))
          expect(tiles).toContainEqual(tile);
      }),
      { numRuns: 400 },
    );
    expect(hidden).toBeGreaterThan(20);
  });

  it('only the child’s own parts can be kept private', () => {
    expect(keptPrivate(TYPICAL_BOOK, 'm-needle-1', TABLE, true)).toBe(TYPICAL_BOOK);
    const own = added(TYPICAL_BOOK, {
      id: 'call-home-1',
      kind: 'call-home',
      from: 1080,
      minutes: 15,
      source: 'child',
    });
    const kept = keptPrivate(own, 'call-home-1', TABLE, true);
    expect(shownToOthers(build(kept)).tiles.some(({ id }) => id === 'call-home-1')).toBe(false);
    expect(keptPrivate(kept, 'call-home-1', TABLE, false)).toEqual(own);
  });

  it('on paper there is nothing about medicine, and no more on a sheet than fits', () => {
    for (const mode of AGE_MODES) {
      const sheets = sheetsOf(build(TYPICAL_BOOK), mode, TABLE);
      expect(sheets.every((sheet) => sheet.length > 0 && sheet.length <= ON_ONE_SHEET)).toBe(true);
      const kinds = sheets.flat().map(({ kind }) => kind);
      expect(kinds).toEqual(expect.arrayContaining(['breakfast', 'round', 'supper', 'goodnight']));
      expect(kinds).not.toContain('medicine-visit');
      // a small child does not wake up to a needle on the wall
      expect(kinds.includes('needle')).toBe(mode === 'clock' || mode === 'list');
    }
  });
});

const withAt = (path: string, value: unknown) => {
  const book = copy(pushed(TYPICAL_BOOK, build(TYPICAL_BOOK), 'e-breakfast')) as unknown as Record<
    string,
    unknown
  >;
  const steps = path.split('.');
  const last = steps.pop()!;
  let row = book;
  for (const step of steps) row = row[step] as Record<string, unknown>;
  row[last] = value;
  return book;
};

describe('a day that was kept', () => {
  it('is read as it was, through JSON', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        expect(readDayBook(copy(book))).toEqual({ book, faults: [] });
      }),
      { numRuns: 300 },
    );
    expect(readDayBook(copy(TYPICAL_BOOK))).toEqual({ book: TYPICAL_BOOK, faults: [] });
  });

  it.each([
    ['events.2.from', 7, 'day › events › 3 › from'],
    ['events.2.minutes', 0, 'day › events › 3 › minutes'],
    ['events.2.id', 'Wash!', 'day › events › 3 › id'],
    ['events.1.id', TYPICAL_BOOK.events[0]!.id, `day › events › ${TYPICAL_BOOK.events[0]!.id}`],
    ['events.2.mood', 'x', 'day › events › 3 › mood'],
    ['events.2.was', { from: 1 }, 'day › events › 3 › was › from'],
    ['events.2.ideas', ['A!'], 'day › events › 3 › ideas › 1'],
    ['quiet', [{ from: 60, until: 30 }], 'day › quiet › 1 › until'],
    ['done.0.event', 'nothing', 'day › done › 1 › event'],
    ['done.0.to', 5, 'day › done › 1 › to'],
    ['done', 'all', 'day › done'],
  ])('%s is named, and the rest is kept', (path, value, where) => {
    const { book, faults } = readDayBook(withAt(path, value));
    expect(faults[0]).toMatchObject({ where, rule: expect.stringMatching(/\S/) });
    expect(book!.events.length).toBeGreaterThanOrEqual(TYPICAL_BOOK.events.length - 1);
  });

  it('something nobody can name is something new, asked about as if it hurt', () => {
    const at = TYPICAL_BOOK.events[2]!;
    const { book } = readDayBook(withAt('events.2.kind', 'dragon-ride'));
    expect(book!.events.find(({ id }) => id === at.id)).toMatchObject({
      kind: 'surprise',
      hurts: true,
      from: at.from,
    });
    expect(
      readDayBook(withAt('events.2.hurts', 'maybe')).book!.events.find(({ id }) => id === at.id)!.hurts,
    ).toBe(true);
  });

  it.each([
    ['day', '2026-02-30'],
    ['day', 20261125],
    ['wake', '07:00'],
    ['lightsOut', 300],
    ['lightsOut', TYPICAL_BOOK.wake],
  ])('without %s there is no day, and it says why', (path, value) => {
    const { book, faults } = readDayBook(withAt(path, value));
    expect([book, faults.length > 0]).toEqual([undefined, true]);
  });

  it('whatever a stranger wrote is read without a fall, and what is read can be built', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.jsonValue(),
          fc.record({
            day: fc.constant('2026-11-25'),
            wake: fc.constant(420),
            lightsOut: fc.constant(1200),
            quiet: fc.jsonValue(),
            events: fc.array(fc.jsonValue()),
            done: fc.jsonValue(),
          }),
        ),
        (value) => {
          const { book } = readDayBook(value);
          if (book) expect(readDayBook(copy(book))).toEqual({ book, faults: [] });
          if (book) expect(build(book).tiles.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 },
    );
    const many = Array.from({ length: 1000 }, (_, n) => ({
      id: `wash-${n}`,
      kind: 'wash',
      from: 0,
      minutes: 5,
      source: 'bed',
    }));
    const { book, faults } = readDayBook({ ...TYPICAL_BOOK, events: many });
    expect([book!.events.length, faults[0]!.where]).toEqual([MOST.events, 'day › events']);
  });
});
