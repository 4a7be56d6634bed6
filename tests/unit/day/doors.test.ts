// What the child sees: now, next and later, the way, sun and clock; and what one touch does.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAY_EVENTS, ROUTINE } from '#content/day-events.ts';
import { cameUpInDay, isDone, UNDO_SECONDS } from '#domain/day/book.ts';
import {
  clockAt,
  doorsAt,
  hardMomentNear,
  isEveningIn,
  isNightIn,
  mayPush,
  pathOf,
  pushed,
  skyAt,
  stripOf,
  takenBack,
} from '#domain/day/doors.ts';
import { bookOf } from '#domain/day/from-bed.ts';
import { isFiller } from '#domain/day/ids.ts';
import { AGE_MODES, MODES, modeOf, modeRow, showsClock } from '#domain/day/modes.ts';
import { dayOf, type Tile } from '#domain/day/tiles.ts';
import { instant } from '#domain/units.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';
import { anyBook, anyPlace, inLondon, LONDON, TABLE, TYPICAL_BOOK } from './days.ts';

const { offsetAt } = LONDON;
const anyMode = fc.constantFrom(...AGE_MODES);
const anyMinute = fc.nat(1600);
const TYPICAL_DAY = dayOf(TYPICAL_BOOK, TABLE, {}, offsetAt);

describe('the card of a hard moment', () => {
  const anyStrip = fc.tuple(anyBook, anyMode, anyMinute).map(([book, mode, minute]) => {
    const day = dayOf(book, TABLE, {}, offsetAt);
    const now = instant(day.from + minute);
    return { strip: stripOf(day, mode, now, TABLE), now };
  });

  it('stands from an hour before until it is over, and for nothing that does not hurt', () => {
    let near = 0;
    fc.assert(
      fc.property(anyStrip, ({ strip, now }) => {
        const shown = hardMomentNear(strip, now);
        const minutesBefore = (from: number) => from - now;
        const all = strip.filter((one) => one.hurts && minutesBefore(one.from) < 61 && one.to > now);
        expect(shown).toEqual(all[0]);
        near += Number(shown !== undefined);
      }),
    );
    expect(near).toBeGreaterThan(0);
  });

  it('changes minute by minute only at the hour before and at the end', () => {
    const day = dayOf(
      { ...TYPICAL_BOOK, events: TYPICAL_BOOK.events.filter(({ kind }) => !TABLE[kind].hurts) },
      TABLE,
      {},
      offsetAt,
    );
    const tile: Tile = { ...day.tiles[3]!, hurts: true };
    const strip = day.tiles.map((one) => (one.id === tile.id ? tile : one));
    const seen = Array.from({ length: 1440 }, (_, minute) => instant(day.from + minute)).filter(
      (now) => hardMomentNear(strip, now)?.id === tile.id,
    );
    expect([seen[0], seen.at(-1), seen.length]).toEqual([
      ...[Math.max(day.from, tile.from - 60), tile.to - 1],
      tile.to - Math.max(day.from, tile.from - 60),
    ]);
  });
});

describe('age modes', () => {
  it('change on the birthday: the third, the sixth, the ninth, the thirteenth', () => {
    expect([12, 35, 36, 71, 72, 107, 108, 155, 156, 215].map(modeOf)).toEqual([
      ...['one-picture', 'one-picture', 'three-doors', 'three-doors', 'path', 'path'],
      ...['clock', 'clock', 'list', 'list'],
    ]);
  });

  it('give an older child no less to decide and no fewer words', () => {
    const words = ['none', 'few', 'plain'];
    const path = ['never', 'when-asked', 'always'];
    for (let n = 1; n < AGE_MODES.length; n++) {
      const [younger, older] = [modeRow(AGE_MODES[n - 1]!), modeRow(AGE_MODES[n]!)];
      for (const right of ['choices', 'neither', 'ownPlan', 'privateCorner'] as const)
        expect(Number(older[right])).toBeGreaterThanOrEqual(Number(younger[right]));
      expect(words.indexOf(older.words)).toBeGreaterThanOrEqual(words.indexOf(younger.words));
      expect(path.indexOf(older.path)).toBeGreaterThanOrEqual(path.indexOf(younger.path));
      expect(older.tellAheadMinutes ?? Infinity).toBeGreaterThanOrEqual(younger.tellAheadMinutes ?? Infinity);
    }
  });

  it('need no reading below six, and show no clock below eight', () => {
    for (let months = 12; months < 216; months++) {
      const mode = modeOf(months);
      if (months < 72) expect(MODES[mode].words).toBe('none');
      expect(showsClock(mode, months)).toBe(months >= 96);
    }
  });

  it('each have a picture for every part of the ward’s day that may hurt, for meals and for the evening', () => {
    for (const [id, row] of Object.entries(DAY_EVENTS))
      if (row.hurts || row.group === 'food' || row.group === 'care')
        expect([id, row.modes.length]).toEqual([id, AGE_MODES.length]);
    expect(Object.keys(DAY_EVENTS).length).toBeGreaterThanOrEqual(30);
  });
});

describe('at night', () => {
  it('now is the night and nothing is next, at every minute, whatever stands in the day', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, anyMode, anyMinute, (book, where, mode, minute) => {
        const day = dayOf(book, TABLE, {}, where.offsetAt);
        const now = instant(day.from + (minute % (day.to - day.from)));
        const clock = where.wall(now).slice(11);
        const [hours, mins] = clock.split(':').map(Number);
        const shown = hours! * 60 + mins!;
        const night = shown < book.wake || shown >= book.lightsOut || clock >= '22:00' || clock < '06:00';
        const doors = doorsAt(day, book, mode, now, TABLE, where.offsetAt);
        expect(doors.night).toBe(night);
        if (!night) return;
        expect([doors.now!.tile.kind, doors.next, doors.later]).toEqual(['night', undefined, undefined]);
        expect(doors.now!.tile.from <= now && now < doors.now!.tile.to).toBe(true);
        for (const { id } of book.events)
          expect(mayPush(day, book, mode, id, now, TABLE, where.offsetAt)).not.toBe('go');
      }),
      { numRuns: 500 },
    );
  });
});

describe('the ward’s night', () => {
  it('goes from ten to six, even where a child is told to wake before and to sleep after', () => {
    const book = { ...TYPICAL_BOOK, wake: 300, lightsOut: 1380 };
    const day = dayOf(book, TABLE, {}, offsetAt);
    const seen = (clock: string) =>
      doorsAt(day, book, 'path', inLondon(`2026-11-25T${clock}`), TABLE, offsetAt);
    expect(['05:59', '06:00', '21:59', '22:00'].map((clock) => seen(clock).night)).toEqual([
      true,
      false,
      false,
      true,
    ]);
    // a child that was put to bed at seven is not told that it is "still" night before the ward's night
    const early = dayOf({ ...TYPICAL_BOOK, lightsOut: 1140 }, TABLE, {}, offsetAt);
    expect(
      ['18:59', '19:00', '21:59', '22:00', '23:59'].map((clock) =>
        isEveningIn(early, inLondon(`2026-11-25T${clock}`), offsetAt),
      ),
    ).toEqual([false, true, true, false, false]);
    expect(isEveningIn(early, inLondon('2026-11-25T06:10'), offsetAt)).toBe(false);
    for (const clock of ['04:00', '05:59', '22:00', '23:30']) {
      const [now, { tile }] = [inLondon(`2026-11-25T${clock}`), seen(clock).now!];
      expect([tile.kind, tile.from <= now && now < tile.to]).toEqual(['night', true]);
    }
  });
});

describe('by day', () => {
  it('now is what stands at this minute; next and later follow, in order, and are not open time', () => {
    fc.assert(
      fc.property(anyBook, anyMode, anyMinute, (book, mode, minute) => {
        const day = dayOf(book, TABLE, {}, offsetAt);
        const now = instant(day.from + minute);
        const doors = doorsAt(day, book, mode, now, TABLE, offsetAt);
        if (now >= day.to) expect(doors).toEqual({ night: false });
        if (doors.night || !doors.now) return;
        const { tile, done } = doors.now;
        expect(tile.from <= now && now < tile.to).toBe(true);
        expect(done).toBe(isDone(book, tile.id));
        if (modeRow(mode).doors < 3) expect([doors.next, doors.later]).toEqual([undefined, undefined]);
        if (doors.next) expect(doors.next.from).toBeGreaterThanOrEqual(tile.to);
        if (doors.later) expect(doors.later.from).toBeGreaterThanOrEqual(doors.next!.to);
        for (const one of [doors.next, doors.later]) if (one) expect(one.kind).not.toBe('free-time');
      }),
      { numRuns: 500 },
    );
  });

  it('what was later becomes next and then now, and nothing stands between', () => {
    fc.assert(
      fc.property(anyBook, fc.integer({ min: 480, max: 1000 }), (book, minute) => {
        const day = dayOf({ ...book, done: [] }, TABLE, {}, offsetAt);
        const at = (now: number) => doorsAt(day, { done: [] }, 'list', instant(now), TABLE, offsetAt);
        const seen = at(day.from + minute);
        const three = doorsAt(day, { done: [] }, 'clock', instant(day.from + minute), TABLE, offsetAt);
        if (seen.night || !three.next || three.next.from >= day.lightsOut) return;
        for (let now = day.from + minute; now < three.next.from; now += 5)
          expect([three.now!.tile.id, `~free-time`]).toContainEqual(
            at(now).now!.tile.kind === 'free-time' ? '~free-time' : at(now).now!.tile.id,
          );
      }),
      { numRuns: 400 },
    );
  });

  it('a girl of seven at 07:35: breakfast, then the wash; the needle is something new until half an hour before', () => {
    const kinds = (clock: string) => {
      const { now, next, later } = doorsAt(
        TYPICAL_DAY,
        TYPICAL_BOOK,
        'path',
        inLondon(`2026-11-25T${clock}`),
        TABLE,
        offsetAt,
      );
      return [now, next, later].map((door) => (door && 'tile' in door ? door.tile.kind : door?.kind));
    };
    expect(kinds('07:35').slice(0, 2)).toEqual(['breakfast', expect.stringMatching(/play|wash/)]);
    const needle = (clock: string) =>
      stripOf(TYPICAL_DAY, 'path', inLondon(`2026-11-25T${clock}`), TABLE).find(
        ({ id }) => id === 'm-needle-1',
      )?.kind;
    expect([needle('08:44'), needle('08:45')]).toEqual(['surprise', 'needle']);
    expect(kinds('03:00')).toEqual(['night', undefined, undefined]);
  });
});

describe('the strip of an age', () => {
  it('covers the day exactly and shows nothing this age has no picture for', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, anyMode, anyMinute, (book, where, mode, minute) => {
        const day = dayOf(book, TABLE, {}, where.offsetAt);
        const strip = stripOf(day, mode, instant(day.from + minute), TABLE);
        let cursor: number = day.from;
        for (const tile of strip) {
          expect([tile.from, tile.to > tile.from]).toEqual([cursor, true]);
          cursor = tile.to;
          expect(TABLE[tile.kind].modes).toContain(mode);
        }
        expect(cursor).toBe(day.to);
        expect(strip.every((tile, n) => !isFiller(tile.kind) || tile.kind !== strip[n + 1]?.kind)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it('tells a care that hurts no earlier than the minutes of its age, and always once it is near', () => {
    fc.assert(
      fc.property(anyBook, anyMode, anyMinute, (book, mode, minute) => {
        const day = dayOf(book, TABLE, {}, offsetAt);
        const now = instant(day.from + minute);
        const ahead = modeRow(mode).tellAheadMinutes ?? Infinity;
        const strip = stripOf(day, mode, now, TABLE);
        for (const care of day.tiles.filter(
          ({ hurts, from }) => hurts && from >= day.wake && from < day.lightsOut,
        )) {
          if (care.kind === 'play' || care.kind === 'surprise' || !TABLE[care.kind].modes.includes(mode))
            continue;
          const shown = strip.find(({ id }) => id === care.id)!;
          expect(shown.kind).toBe(care.from - now <= ahead ? care.kind : 'surprise');
          // what is kept for it would tell it, too
          if (shown.kind === 'surprise') expect([shown.ideas, shown.hurts]).toEqual([undefined, undefined]);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('as a way has one step here at most, all before it behind and all after it ahead', () => {
    fc.assert(
      fc.property(anyBook, anyMode, anyMinute, (book, mode, minute) => {
        const day = dayOf(book, TABLE, {}, offsetAt);
        const places = pathOf(day, book, mode, instant(day.from + minute), TABLE).map(({ at }) => at);
        expect(places.join(' ')).toMatch(/^(behind ?)*(here ?)?(ahead ?)*$/);
        if (mode === 'one-picture') expect(places).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('sun, moon and clock', () => {
  it('the sun goes from waking to lights-out and never back', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, (book, where) => {
        const day = dayOf(book, TABLE, {}, where.offsetAt);
        let before = skyAt(day, day.from);
        for (let at = day.from + 7; at < day.to; at += 7) {
          const sky = skyAt(day, instant(at));
          expect(sky.what).toBe(at >= day.wake && at < day.lightsOut ? 'sun' : 'moon');
          if (sky.what === before.what) expect(sky.along).toBeGreaterThan(before.along);
          before = sky;
        }
        expect(skyAt(day, day.wake)).toEqual({ what: 'sun', along: 0 });
      }),
      { numRuns: 60 },
    );
  });

  it('the clock shows what the wall shows: at half past three the small hand lies between three and four', () => {
    expect(clockAt(inLondon('2026-11-25T15:30'), offsetAt)).toEqual({
      ...{ hour: 15, minute: 30, hourDegrees: 105, minuteDegrees: 180 },
    });
    fc.assert(
      fc.property(anyPlace, fc.integer({ min: 0, max: 1_000_000 }), (where, minute) => {
        const at = instant(Date.UTC(2026, 0, 1) / 60_000 + minute);
        const { hour, minute: past } = clockAt(at, where.offsetAt);
        const two = (value: number) => `${value}`.padStart(2, '0');
        expect(`${two(hour)}:${two(past)}`).toBe(where.wall(at).slice(11));
      }),
      { numRuns: 300 },
    );
  });
});

describe('a picture pushed through the door', () => {
  it('moves nothing: the day stands as it stood', () => {
    fc.assert(
      fc.property(anyBook, anyPlace, fc.nat(), (book, where, pick) => {
        const fresh = { ...book, done: [] };
        const day = dayOf(fresh, TABLE, {}, where.offsetAt);
        const id = fresh.events[pick % Math.max(1, fresh.events.length)]?.id ?? 'none';
        const after = pushed(fresh, day, id);
        expect(isDone(after, id)).toBe(day.tiles.some((tile) => tile.id === id));
        expect(dayOf(after, TABLE, {}, where.offsetAt)).toEqual(day);
      }),
      { numRuns: 500 },
    );
  });

  it('stays done and in its place, whatever comes up afterwards', () => {
    const anyNews = fc.array(
      fc.record({
        kind: fc.constantFrom('x-ray' as const, 'visitor', 'nap'),
        from: fc.nat(270).map((n) => n * 5),
        minutes: fc.integer({ min: 1, max: 20 }).map((n) => n * 5),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(anyBook, anyNews, fc.nat(), (book, news, pick) => {
        const start = { ...book, done: [] };
        const first = dayOf(start, TABLE, {}, offsetAt);
        const id = start.events[pick % Math.max(1, start.events.length)]?.id ?? 'none';
        const stood = first.tiles.find((tile) => tile.id === id);
        fc.pre(stood !== undefined);
        const later = news.reduce(
          (kept, one, n) => cameUpInDay(kept, { id: `news-${n}`, source: 'bed', ...one }, offsetAt),
          pushed(start, first, id),
        );
        const stands = dayOf(later, TABLE, {}, offsetAt).tiles.find((tile) => tile.id === id)!;
        expect(isDone(later, id)).toBe(true);
        expect(stands.from).toBe(stood!.from);
        // what came up may have ended it
        expect(stands.to).toBeLessThanOrEqual(stood!.to);
      }),
      { numRuns: 400 },
    );
  });

  it('ends where something came up: the X-ray at 07:50 begins at 07:50', () => {
    const done = pushed(TYPICAL_BOOK, TYPICAL_DAY, 'e-breakfast');
    const news = { id: 'x-ray-1', kind: 'x-ray' as const, from: 470, minutes: 40, source: 'bed' as const };
    const { tiles } = dayOf(cameUpInDay(done, news, offsetAt), TABLE, {}, offsetAt);
    const at = (id: string) => tiles.find((tile) => tile.id === id)!;
    expect([at('e-breakfast').from, at('e-breakfast').to]).toEqual([
      inLondon('2026-11-25T07:30'),
      inLondon('2026-11-25T07:50'),
    ]);
    expect(at('x-ray-1').from).toBe(inLondon('2026-11-25T07:50'));
  });

  it('comes back for ten seconds, and afterwards no more', () => {
    const day = TYPICAL_DAY;
    const done = pushed(TYPICAL_BOOK, day, 'e-breakfast');
    expect(takenBack(done, 'e-breakfast', UNDO_SECONDS)).toEqual(TYPICAL_BOOK);
    for (const seconds of [UNDO_SECONDS + 0.001, 11, 3600, Infinity, NaN, -1])
      expect(takenBack(done, 'e-breakfast', seconds)).toBe(done);
  });

  it('is the child’s own: never medicine, a look, a care, or what has not begun', () => {
    const at = (clock: string, id: string) =>
      mayPush(TYPICAL_DAY, TYPICAL_BOOK, 'path', id, inLondon(`2026-11-25T${clock}`), TABLE, offsetAt);
    expect(at('07:30', 'e-breakfast')).toBe('go');
    expect(at('07:29', 'e-breakfast')).toBe('not-yet');
    // nobody is late
    expect(at('19:00', 'e-breakfast')).toBe('go');
    expect(at('21:00', 'e-breakfast')).toBe('night');
    expect(['e-medicine', 'm-needle-1', 'e-round'].map((id) => at('19:00', id))).toEqual(
      Array(3).fill('grown-ups'),
    );
    expect(at('19:00', '~night-0')).toBe('not-in-day');
    for (const row of Object.values(DAY_EVENTS))
      if (row.group === 'care' && row.hurts) expect(row.pushedBy).toBe('nobody');
  });
});

describe('the day of a bed', () => {
  it('is the same in whatever order the bed was ticked', () => {
    const turned = {
      ...TYPICAL,
      plan: [...TYPICAL.plan!].reverse(),
      sketch: {
        ...TYPICAL.sketch,
        events: [...TYPICAL.sketch.events].reverse(),
        moments: [...TYPICAL.sketch.moments].reverse(),
      },
    };
    expect(bookOf(turned, TABLE, ROUTINE, 'path')).toEqual(TYPICAL_BOOK);
  });

  it('holds every event, every hard moment and every idea of the plan once', () => {
    const { sketch, plan } = TYPICAL;
    const hard = sketch.moments.map(({ id }) => id);
    const count = (source: string) => TYPICAL_BOOK.events.filter((one) => one.source === source).length;
    expect(count('bed')).toBe(sketch.events.length + sketch.moments.length);
    expect(count('plan')).toBe(plan!.filter(({ window }) => !hard.includes(window)).length);
    const shown = TYPICAL_BOOK.events.flatMap(({ ideas = [] }) => ideas);
    expect([...shown].sort()).toEqual(plan!.map(({ idea }) => idea).sort());
    expect(TYPICAL_DAY.explained.filter(({ event }) => !event.startsWith('r-'))).toEqual([]);
  });

  it('has its own evening before lights-out, and wakes when the ward does', () => {
    const evening = TYPICAL_DAY.tiles.filter(
      ({ id, from }) => id.startsWith('r-') && from > TYPICAL_DAY.lightsOut - 60,
    );
    expect(evening.map(({ kind }) => kind)).toEqual(['teeth', 'story', 'song', 'curtain-time', 'goodnight']);
    expect(evening.at(-1)!.to).toBe(TYPICAL_DAY.lightsOut);
    expect(isNightIn(TYPICAL_DAY, TYPICAL_DAY.lightsOut, offsetAt)).toBe(true);
  });

  it('is over at lights-out, which is evening still until it is night for everybody', () => {
    const { wake, lightsOut } = TYPICAL_DAY;
    for (let now = wake - 360; now < lightsOut + 360; now += 5) {
      const at = now as typeof wake;
      const evening = isEveningIn(TYPICAL_DAY, at, offsetAt);
      if (evening) expect(isNightIn(TYPICAL_DAY, at, offsetAt)).toBe(true);
      if (at < lightsOut) expect(evening, `${at - wake} minutes after waking`).toBe(false);
    }
    expect(isEveningIn(TYPICAL_DAY, lightsOut, offsetAt)).toBe(true);
    expect(isEveningIn(TYPICAL_DAY, (lightsOut + 300) as typeof wake, offsetAt)).toBe(false);
  });
});
