// The day as it stands: tiled exactly, with everything in its place or explained, whatever is put on top of what.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { added, cameUpInDay, movedInDay, takenOff, type DayBook, type DayEvent } from '#domain/day/book.ts';
import { isFiller } from '#domain/day/ids.ts';
import { dayOf, type Day } from '#domain/day/tiles.ts';
import { dayNumberOf } from '#domain/clock/calendar.ts';
import { boundsOf, momentOf } from '#domain/day/wall.ts';
import { instant, type Instant } from '#domain/units.ts';
import {
  anyBook,
  anyDate,
  anyEmpty,
  anyEvents,
  anyPlace,
  DATES,
  inLondon,
  LONDON,
  PLACES,
  TABLE,
  TYPICAL_BOOK,
} from './days.ts';

const build = (book: DayBook, offsetAt = LONDON.offsetAt) => dayOf(book, TABLE, {}, offsetAt);
const event = (
  id: string,
  kind: DayEvent['kind'],
  from: number,
  minutes: number,
  more: Partial<DayEvent> = {},
): DayEvent => ({
  ...{ id, kind, from, minutes, source: 'bed' },
  ...more,
});
const EMPTY: DayBook = { day: '2026-11-25', wake: 420, lightsOut: 1200, quiet: [], events: [], done: [] };
const book = (...events: DayEvent[]) => events.reduce(added, EMPTY);
const told = (day: Day) =>
  day.tiles.filter(({ kind }) => !isFiller(kind)).map(({ id, from, to }) => [id, from - day.from, to - from]);

/** No gap, no overlap, no empty part, from the first minute of the day to its last. */
function expectTiled({ from, to, tiles }: { from: Instant; to: Instant; tiles: Day['tiles'] }) {
  let cursor: number = from;
  for (const tile of tiles) {
    expect(tile.from).toBe(cursor);
    expect(tile.to).toBeGreaterThan(tile.from);
    cursor = tile.to;
  }
  expect(cursor).toBe(to);
  expect(new Set(tiles.map(({ id }) => id)).size).toBe(tiles.length);
  // open time is one part, as long as it lasts
  expect(tiles.filter(({ kind }, n) => isFiller(kind) && tiles[n + 1]?.kind === kind)).toEqual([]);
}

describe('the day is tiled exactly', () => {
  it('whatever stands in it, in every place, when the clocks change, too', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, (kept, { offsetAt }) => {
        const day = build(kept, offsetAt);
        expectTiled(day);
        expect([day.from, day.to]).toEqual(Object.values(boundsOf(dayNumberOf(kept.day)!, offsetAt)));
      }),
      { numRuns: 500 },
    );
  });

  it('for the typical bed on every day of two years in every place', () => {
    const lengths = new Set<number>();
    for (const { offsetAt } of PLACES)
      for (const date of DATES.filter((_, n) => n % 5 === 0).concat('2026-10-25', '2027-03-28')) {
        const day = build({ ...TYPICAL_BOOK, day: date }, offsetAt);
        let cursor: number = day.from;
        const whole = day.tiles.every((tile) => tile.from === cursor && (cursor = tile.to) > tile.from);
        expect([date, whole, cursor]).toEqual([date, true, day.to]);
        lengths.add(day.to - day.from);
      }
    expect([...lengths].filter((minutes) => minutes !== 1440).length).toBeGreaterThan(1);
    expect([1380, 1500].every((minutes) => lengths.has(minutes))).toBe(true);
  });

  it('with open time by day, quiet in the quiet hour and night around them, as the clock on the wall says', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, fc.nat(1600), (kept, { offsetAt, wall }, minute) => {
        const day = build(kept, offsetAt);
        const at = instant(day.from + (minute % (day.to - day.from)));
        const tile = day.tiles.find(({ from, to }) => from <= at && at < to)!;
        if (!isFiller(tile.kind)) return;
        const [hours, mins] = wall(at).slice(11).split(':').map(Number);
        const shown = hours! * 60 + mins!;
        const awake = shown >= kept.wake && shown < kept.lightsOut;
        const quiet = kept.quiet.some(({ from, until }) => from <= shown && shown < until);
        expect(tile.kind).toBe(!awake ? 'night' : quiet ? 'quiet-hour' : 'free-time');
      }),
      { numRuns: 500 },
    );
  });
});

describe('nothing is silently gone', () => {
  it('each event stands where it stood first, or is explained exactly once, with where it is now', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, (kept, { offsetAt }) => {
        const day = build(kept, offsetAt);
        const number = dayNumberOf(kept.day)!;
        for (const one of kept.events) {
          const { from: first, minutes } = one.was ?? one;
          const was = Math.min(momentOf(number, first, offsetAt), day.to);
          const tile = day.tiles.find(({ id }) => id === one.id);
          const reasons = day.explained.filter((reason) => reason.event === one.id);
          const stands = tile?.from === was && tile.to === was + minutes;
          expect([one.id, reasons.length]).toEqual([one.id, stands ? 0 : 1]);
          if (reasons[0]?.is) expect(reasons[0].is).toEqual({ from: tile!.from, to: tile!.to });
          else if (reasons[0]) expect([tile, reasons[0].how]).toEqual([undefined, 'left-out']);
        }
        expect(day.explained.every(({ event: id }) => kept.events.some((one) => one.id === id))).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('what something moved behind stands, and had the first right to that time', () => {
    fc.assert(
      fc.property(anyEmpty, anyEvents, (empty, events) => {
        const plain = events.map(({ was: _was, why: _why, by: _by, off: _off, ...rest }) => rest);
        const kept = plain.reduce(added, empty);
        const day = build(kept);
        for (const { by, was, is, why } of day.explained) {
          expect(['came-first', 'no-room', 'day-ends', 'asleep']).toContain(why);
          if (why === 'came-first') expect(by).toBeDefined();
          const first = day.tiles.find(({ id }) => id === by);
          if (by !== undefined) expect(first!.from < was.to && was.from < first!.to).toBe(true);
          if (is) expect(is.from).toBeGreaterThanOrEqual(was.from);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('play begins with the day: nobody wakes up after it', () => {
    const waking = { ...event('wake', 'wake', EMPTY.wake, 10), source: 'routine' as const };
    const play = { ...event('play', 'play', EMPTY.wake, 25), source: 'plan' as const, ideas: ['what-if'] };
    const day = build(book(waking, play));
    expect(told(day)).toEqual([['play', EMPTY.wake, 25]]);
    expect(day.explained).toMatchObject([{ event: 'wake', how: 'left-out', why: 'no-room', by: 'play' }]);
    // any other part of the routine finds its room behind
    const toes = { ...waking, id: 'toes-hello', kind: 'toes-hello' as const };
    expect(told(build(book(toes, play)))).toContainEqual(['toes-hello', EMPTY.wake + 25, 10]);
  });

  it('the X-ray came first: the wash stands behind it, the round stays', () => {
    const day = build(
      cameUpInDay(
        book(event('wash', 'wash', 600, 30), event('round', 'round', 660, 30)),
        event('x-ray', 'x-ray', 595, 40),
        LONDON.offsetAt,
      ),
    );
    expect(told(day)).toEqual([
      ['x-ray', 595, 40],
      ['round', 660, 30],
      ['wash', 690, 30],
    ]);
    expect(day.explained).toEqual([
      {
        ...{ event: 'wash', kind: 'wash', how: 'moved', why: 'came-first', by: 'x-ray' },
        ...{ was: { from: inLondon('2026-11-25T10:00'), to: inLondon('2026-11-25T10:30') } },
        ...{ is: { from: inLondon('2026-11-25T11:30'), to: inLondon('2026-11-25T12:00') } },
      },
    ]);
  });

  it('what was more than half there is shortened, and what has no room within three hours is named', () => {
    const day = build(
      book(
        event('x-ray', 'x-ray', 620, 40, { cameUp: true }),
        event('visitor', 'visitor', 590, 60),
        event('school', 'school', 595, 20),
        event('nap', 'nap', 700, 240),
        event('play', 'play', 630, 20),
      ),
    );
    expect(told(day)).toEqual([
      ['school', 595, 20],
      ['x-ray', 620, 40],
      ['nap', 700, 240],
    ]);
    expect(day.explained.map(({ event: id, how, why, by }) => [id, how, why, by])).toEqual([
      ['visitor', 'left-out', 'no-room', 'x-ray'],
      ['play', 'left-out', 'no-room', 'x-ray'],
    ]);
    const half = build(
      book(event('x-ray', 'x-ray', 620, 40, { cameUp: true }), event('wash', 'wash', 600, 30)),
    );
    expect(half.explained).toMatchObject([{ event: 'wash', how: 'shortened', why: 'came-first' }]);
  });

  it('what nobody is woken for stands behind waking, because the child sleeps', () => {
    const day = build(
      book(
        event('call', 'call-home', 410, 20, { source: 'family' }),
        event('play', 'play', 420, 5, { source: 'plan' }),
      ),
    );
    expect(told(day)).toEqual([
      ['play', 420, 5],
      ['call', 425, 20],
    ]);
    expect(day.explained.map(({ event: id, why, by }) => [id, why, by])).toEqual([
      ['call', 'asleep', undefined],
    ]);
  });

  it('what somebody moved or took off tells from when to when, and why', () => {
    const kept = book(event('wash', 'wash', 600, 30), event('visitor', 'visitor', 900, 60));
    const day = build(
      takenOff(movedInDay(kept, 'wash', { from: 660, minutes: 30 }, 'ward-said'), 'visitor', 'not-today'),
    );
    expect(
      day.explained.map(({ event: id, how, why, was, is }) => [
        id,
        how,
        why,
        was.from - day.from,
        is && is.from - day.from,
      ]),
    ).toEqual([
      ['wash', 'moved', 'ward-said', 600, 660],
      ['visitor', 'left-out', 'not-today', 900, undefined],
    ]);
  });
});

describe('the same day', () => {
  it('in whatever order its events were added', () => {
    fc.assert(
      fc.property(
        anyEmpty,
        anyEvents,
        fc.infiniteStream(fc.nat()),
        anyPlace,
        (empty, events, picks, { offsetAt }) => {
          const left = [...events];
          const shuffled: DayEvent[] = [];
          while (left.length) shuffled.push(...left.splice(picks.next().value! % left.length, 1));
          const [one, other] = [events.reduce(added, empty), shuffled.reduce(added, empty)];
          expect(JSON.stringify(other)).toBe(JSON.stringify(one));
          expect(build(other, offsetAt)).toEqual(build(one, offsetAt));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('on every engine: this one, as it was when these tests were written', () => {
    const day = build(
      book(
        event('b', 'breakfast', 450, 30),
        event('c', 'bandage-care', 540, 30, { ideas: ['short-film'] }),
        event('a', 'visitor', 450, 60),
        event('d', 'play', 555, 30),
      ),
    );
    expect(day.tiles.map(({ id, from, to }) => `${id} ${from - day.from}-${to - day.from}`)).toEqual([
      ...['~night-0 0-420', '~free-time-420 420-450', 'b 450-480', 'a 480-540', 'c 540-570'],
      ...['~free-time-570 570-1200', '~night-1200 1200-1440'],
    ]);
  });
});

describe('what hurts, and what may be eaten', () => {
  it('a care that hurts stands where it was told unless something came up or was done there', () => {
    fc.assert(
      fc.property(anyBook, (kept) => {
        const day = build({ ...kept, done: [] });
        const strong = (one: DayEvent) => one.cameUp || one.hurts || TABLE[one.kind].hurts;
        for (const one of kept.events.filter(
          (other) => strong(other) && !other.off && other.kind !== 'play',
        )) {
          const reason = day.explained.find((other) => other.event === one.id);
          if (reason?.by === undefined || reason.why !== 'came-first' || one.was) continue;
          expect(strong(kept.events.find(({ id }) => id === reason.by)!)).toBeTruthy();
        }
      }),
      { numRuns: 300 },
    );
  });

  it('no meal, snack or drink stands before eating is allowed, and none is forgotten', () => {
    fc.assert(
      fc.property(anyBook, fc.nat(1500), (kept, minute) => {
        const fresh = { ...kept, done: [] };
        const eatingFrom = instant(build(fresh).from + minute);
        for (const facts of [{ eatingFrom }, { eatingFrom: 'not-today' as const }]) {
          const day = dayOf(fresh, TABLE, facts, LONDON.offsetAt);
          const food = day.tiles.filter(({ kind }) => TABLE[kind].group === 'food');
          expect(food.filter(({ from }) => facts.eatingFrom === 'not-today' || from < eatingFrom)).toEqual(
            [],
          );
          for (const one of fresh.events.filter(({ kind }) => TABLE[kind].group === 'food'))
            expect(
              food.some(({ id }) => id === one.id) || day.explained.some(({ event: id }) => id === one.id),
            ).toBe(true);
          expectTiled(day);
        }
      }),
      { numRuns: 300 },
    );
    const day = dayOf(
      book(event('b', 'breakfast', 450, 30)),
      TABLE,
      { eatingFrom: inLondon('2026-11-25T12:00') },
      LONDON.offsetAt,
    );
    expect(day.explained).toMatchObject([{ event: 'b', how: 'left-out', why: 'no-eating' }]);
  });

  it('breakfast was, though since half past nine nothing may be eaten; lunch waits', () => {
    const day = dayOf(
      book(event('b', 'breakfast', 450, 30), event('l', 'lunch', 720, 30)),
      TABLE,
      { eatingFrom: 'not-today', notEatingSince: inLondon('2026-11-25T09:30') },
      LONDON.offsetAt,
    );
    expect(day.tiles.filter(({ kind }) => TABLE[kind].group === 'food').map(({ id }) => id)).toEqual(['b']);
    expect(day.explained).toMatchObject([{ event: 'l', how: 'left-out', why: 'no-eating' }]);
  });

  it('a meal that an X-ray pushes behind "nothing by mouth" does not stand there', () => {
    const facts = { eatingFrom: 'not-today' as const, notEatingSince: inLondon('2026-11-25T12:20') };
    const events = [event('l', 'lunch', 720, 30), { ...event('x', 'x-ray', 715, 30), cameUp: true as const }];
    const day = dayOf(book(...events), TABLE, facts, LONDON.offsetAt);
    expect(dayOf(book(...events), TABLE, {}, LONDON.offsetAt).tiles.map(({ id }) => id)).toContain('l');
    expect(day.tiles.map(({ id }) => id)).not.toContain('l');
    expect(day.explained).toMatchObject([{ event: 'l', how: 'left-out', by: 'x' }]);
  });

  it('a day that is none of the calendar is a fault of ours, and says so', () => {
    expect(() => build({ ...EMPTY, day: '2026-02-30' })).toThrow('domain/day › book › day');
  });

  it('half an hour of wash is half an hour in the night the clocks go back, and the ward’s times follow the wall', () => {
    fc.assert(
      fc.property(anyDate, anyPlace, (day, { offsetAt, wall }) => {
        const built = build({ ...EMPTY, day, events: [event('wash', 'wash', 495, 30)] }, offsetAt);
        const tile = built.tiles.find(({ id }) => id === 'wash')!;
        expect([wall(tile.from), tile.to - tile.from]).toEqual([`${day}T08:15`, 30]);
      }),
      { numRuns: 200 },
    );
  });
});
