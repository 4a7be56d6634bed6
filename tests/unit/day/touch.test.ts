// What the child presses: never a note, never a care moved, the call button always one touch away.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { added } from '#domain/day/book.ts';
import { chosenFirst, mayMove, momentChoices, offerState, orderChoice } from '#domain/day/choices.ts';
import { FEELINGS, leadsToLook, type FeelingPressed } from '#domain/day/feelings.ts';
import { dayFactsOf } from '#domain/day/from-bed.ts';
import { asksOf } from '#domain/day/medicine.ts';
import { AGE_MODES, MODES } from '#domain/day/modes.ts';
import { dayPictures } from '#domain/day/pictures.ts';
import { HOLD_UP_CARDS } from '#domain/day/private.ts';
import { dayOf } from '#domain/day/tiles.ts';
import { EDGE_PICTURES, jobOf, openedDay, touched, type AtTouch, type Tap } from '#domain/day/touch.ts';
import { dayNumberOf } from '#domain/clock/calendar.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { anyBook, DATES, inLondon, LONDON, TABLE, TYPICAL_BOOK } from './days.ts';

const { offsetAt } = LONDON;
const at = (now: Instant, mode: AtTouch['mode'] = 'path'): AtTouch => ({
  mode,
  now,
  table: TABLE,
  facts: {},
  offsetAt,
});
const IDS = [...TYPICAL_BOOK.events.map(({ id }) => id), 'wash', '~night-0', '~night', ''];
const anyTap: fc.Arbitrary<Tap> = fc.oneof(
  fc.record({ kind: fc.constant('push' as const), id: fc.constantFrom(...IDS) }),
  fc.record({ kind: fc.constant('take-back' as const), id: fc.constantFrom(...IDS), seconds: fc.nat(20) }),
  fc.record({ kind: fc.constant('edge' as const), picture: fc.constantFrom(...EDGE_PICTURES) }),
  fc.record({ kind: fc.constant('feel' as const), picture: fc.constantFrom(...FEELINGS) }),
  fc.record({ kind: fc.constant('first' as const), id: fc.constantFrom(...IDS) }),
  fc.record({ kind: fc.constant('hold-up' as const), card: fc.constantFrom(...HOLD_UP_CARDS) }),
  fc.constant({ kind: 'close' as const }),
);
const cares = (book: typeof TYPICAL_BOOK) => {
  const day = dayOf(book, TABLE, {}, offsetAt);
  return day.tiles.filter(({ kind, hurts }) => hurts || TABLE[kind].pushedBy === 'nobody');
};

describe('ten thousand wild taps', () => {
  it('leave no note and no look, lose nothing of the day, and move no care and no question about medicine', () => {
    const begin = inLondon('2026-11-25T00:00');
    const taps = fc.sample(fc.tuple(anyTap, fc.nat(1439), fc.constantFrom(...AGE_MODES)), 10_000);
    const cared = JSON.stringify(cares(TYPICAL_BOOK));
    let child = openedDay(TYPICAL_BOOK);
    taps.forEach(([tap, minute, mode], n) => {
      child = touched(child, tap, at(instant(begin + minute), mode));
      if (n % 500 === 0) expect(JSON.stringify(cares(child.book))).toBe(cared);
    });
    // there is no other place in which a touch could leave anything
    expect(Object.keys(child).sort()).toEqual(['book', 'feelings', 'hurtsPressed', 'open']);
    expect(child.book.events.map(({ id, kind, minutes: length }) => [id, kind, length])).toEqual(
      TYPICAL_BOOK.events.map(({ id, kind, minutes: length }) => [id, kind, length]),
    );
    expect(child.book.events.some(({ off }) => off)).toBe(false);
    expect(child.feelings.length).toBeLessThanOrEqual(50);
    expect(asksOf([dayOf(child.book, TABLE, {}, offsetAt)], minutes(45))).toEqual(
      asksOf([dayOf(TYPICAL_BOOK, TABLE, {}, offsetAt)], minutes(45)),
    );
    // so many taps did do something
    expect(child.book.done.length).toBeGreaterThan(3);
    for (const { event } of child.book.done)
      expect(TABLE[TYPICAL_BOOK.events.find(({ id }) => id === event)!.kind].pushedBy).toBe('child');
  });
});

describe('the strip’s edge', () => {
  it('opens the call button’s page with its sentence from anywhere, at any minute and age', () => {
    fc.assert(
      fc.property(
        fc.array(anyTap, { maxLength: 6 }),
        fc.constantFrom(...EDGE_PICTURES),
        fc.nat(1439),
        fc.constantFrom(...AGE_MODES),
        (taps, picture, minute, mode) => {
          const now = at(instant(inLondon('2026-11-25T00:00') + minute), mode);
          const before = taps.reduce((child, tap) => touched(child, tap, now), openedDay(TYPICAL_BOOK));
          const after = touched(before, { kind: 'edge', picture }, now);
          expect(after.open).toEqual({ page: 'call-button', sentence: picture });
          expect([after.book, after.feelings]).toEqual([before.book, before.feelings]);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('at night is all there is: nothing else changes anything', () => {
    fc.assert(
      fc.property(
        anyTap,
        fc.constantFrom(...AGE_MODES),
        fc.integer({ min: 0, max: 419 }),
        (tap, mode, minute) => {
          fc.pre(!['edge', 'close', 'hold-up'].includes(tap.kind));
          const child = openedDay(TYPICAL_BOOK);
          expect(touched(child, tap, at(instant(inLondon('2026-11-25T00:00') + minute), mode))).toBe(child);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('the private corner', () => {
  it('holds up a card by day and at night, and leaves nothing behind when it is closed', () => {
    const night = at(inLondon('2026-11-25T23:40'), 'list');
    const child = openedDay(TYPICAL_BOOK);
    const held = touched(child, { kind: 'hold-up', card: 'without-visitors' }, night);
    expect(held.open).toEqual({ page: 'card', card: 'without-visitors' });
    expect(touched(held, { kind: 'close' }, night)).toEqual(child);
    for (const mode of AGE_MODES.filter((one) => one !== 'list'))
      expect(touched(child, { kind: 'hold-up', card: 'period' }, { ...night, mode })).toBe(child);
  });
});

describe('body pictures', () => {
  const anyPressed: fc.Arbitrary<FeelingPressed[]> = fc.array(
    fc.record({ picture: fc.constantFrom(...FEELINGS), at: fc.nat(1000).map(instant) }),
    { maxLength: 8 },
  );

  it('lead the grown-up to a look after fists or hiding twice, or once when it hurts', () => {
    const pressed = (...pictures: FeelingPressed['picture'][]) =>
      pictures.map((picture) => ({ picture, at: instant(0) }));
    expect(leadsToLook(pressed('fists', 'hiding'), false)).toBe(true);
    expect(leadsToLook(pressed('fists', 'loose'), false)).toBe(false);
    expect(leadsToLook(pressed('hiding'), true)).toBe(true);
    expect(leadsToLook(pressed('wide-awake', 'curled-up', 'loose'), true)).toBe(false);
  });

  it('pressed once more never take that back, in whatever order', () => {
    fc.assert(
      fc.property(anyPressed, anyPressed, fc.boolean(), (some, more, hurts) => {
        if (leadsToLook(some, hurts)) {
          expect(leadsToLook([...more, ...some], hurts)).toBe(true);
          expect(leadsToLook(some, true)).toBe(true);
        }
        expect(leadsToLook([...some].reverse(), hurts)).toBe(leadsToLook(some, hurts));
      }),
    );
  });
});

describe('two pictures to choose from', () => {
  it('are both truly possible: either way the rest of the day stands where it stood', () => {
    const anyNeighbours = fc
      .record({
        from: fc.integer({ min: 90, max: 220 }),
        one: fc.integer({ min: 1, max: 12 }),
        other: fc.integer({ min: 1, max: 12 }),
      })
      .map(({ from, one, other }) => [
        {
          id: 'call',
          kind: 'call-home' as const,
          source: 'family' as const,
          from: from * 5,
          minutes: one * 5,
        },
        {
          id: 'film',
          kind: 'screen' as const,
          source: 'family' as const,
          from: (from + one) * 5,
          minutes: other * 5,
        },
      ]);
    let swapped = 0;
    fc.assert(
      fc.property(
        anyBook,
        anyNeighbours,
        fc.constantFrom(...AGE_MODES),
        fc.nat(700),
        (some, neighbours, mode, minute) => {
          const book = neighbours.reduce(added, some);
          const day = dayOf(book, TABLE, {}, offsetAt);
          const choice = orderChoice(day, book, mode, instant(day.from + minute), TABLE);
          if (!choice) return;
          expect(MODES[mode].choices).toBe(true);
          const [first, second] = choice.options;
          expect(chosenFirst(book, day, choice.options, first)).toBe(book);
          const after = dayOf(chosenFirst(book, day, choice.options, second), TABLE, {}, offsetAt);
          const rest = (one: typeof day) => one.tiles.filter((tile) => !choice.options.includes(tile.id));
          expect(rest(after)).toEqual(rest(day));
          const of = (one: typeof day, id: string) => one.tiles.find((tile) => tile.id === id)!;
          expect(of(after, second).from).toBe(of(day, first).from);
          expect(of(after, first).from).toBe(of(after, second).to);
          swapped++;
        },
      ),
      { numRuns: 400 },
    );
    expect(swapped).toBeGreaterThan(20);
  });

  it('are not offered where a third thing waits for the same time', () => {
    const family = { source: 'family' as const };
    const two = [
      { id: 'call', kind: 'call-home' as const, ...family, from: 780, minutes: 25 },
      { id: 'film', kind: 'screen' as const, ...family, from: 805, minutes: 20 },
    ].reduce(added, { ...TYPICAL_BOOK, events: [] });
    const three = added(two, { id: 'visitor', kind: 'visitor', ...family, from: 800, minutes: 5 });
    const offer = (book: typeof two) =>
      orderChoice(dayOf(book, TABLE, {}, offsetAt), book, 'path', inLondon('2026-11-25T09:00'), TABLE);
    expect(offer(two)?.options).toEqual(['call', 'film']);
    expect(offer(three)?.options ?? []).not.toContain('film');
  });

  it('song first, please: the song stands before the story, and both are told as wished', () => {
    const now = inLondon('2026-11-25T19:00');
    const day = dayOf(TYPICAL_BOOK, TABLE, {}, offsetAt);
    const two = ['r-story', 'r-song'] as const;
    const after = dayOf(chosenFirst(TYPICAL_BOOK, day, two, 'r-song'), TABLE, {}, offsetAt);
    const evening = after.tiles
      .filter(({ id, from }) => from > now && id.startsWith('r-'))
      .map(({ kind }) => kind);
    expect(evening).toEqual(['teeth', 'song', 'story', 'curtain-time', 'goodnight']);
    expect(
      after.explained.filter(({ event }) => event === 'r-song' || event === 'r-story').map(({ why }) => why),
    ).toEqual(['wanted', 'wanted']);
    expect(chosenFirst(TYPICAL_BOOK, day, two, 'r-story')).toBe(TYPICAL_BOOK);
  });

  it('at a hard moment offer a hand only where both are free, and never whether it takes place', () => {
    for (const mode of AGE_MODES)
      for (const handsToChoose of [0, 1, 2] as const)
        for (const grownUp of [true, false]) {
          const ids = momentChoices(mode, { handsToChoose, grownUp }).map(({ id }) => id);
          if (mode === 'one-picture') expect(ids).toEqual([]);
          else
            expect(ids).toEqual([
              'watch-or-look-away',
              ...(handsToChoose === 2 ? ['which-hand'] : []),
              ...(grownUp ? ['who-counts'] : []),
            ]);
        }
    expect(momentChoices('three-doors', { handsToChoose: 2, grownUp: true })[0]!.neither).toBe(false);
    expect(momentChoices('path', { handsToChoose: 2, grownUp: true })[0]!.neither).toBe(true);
  });

  it('let pass are offered again ten minutes later, three times at most', () => {
    const offer = (passed: number, ago: number) =>
      offerState({ passed, lastAt: instant(1000 - ago) }, instant(1000));
    expect([
      offerState(undefined, instant(0)),
      offer(1, 9),
      offer(1, 10),
      offer(2, 500),
      offer(3, 500),
    ]).toEqual([...['now', 'later', 'now', 'now', 'no-more']]);
  });

  it('the own plan of nine and more never holds a care, a meal of the ward, or what has begun', () => {
    fc.assert(
      fc.property(anyBook, fc.constantFrom(...AGE_MODES), fc.nat(1439), (book, mode, minute) => {
        const day = dayOf(book, TABLE, {}, offsetAt);
        const now = instant(day.from + minute);
        for (const tile of day.tiles.filter((one) => mayMove(book, one, mode, now, TABLE))) {
          expect(['clock', 'list']).toContain(mode);
          expect([tile.hurts, TABLE[tile.kind].place, tile.from > now]).toEqual([undefined, 'movable', true]);
          expect(book.done.map(({ event }) => event)).not.toContain(tile.id);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a picture for each day', () => {
  it('comes for every day here, one each, in order, and no two alike until all were there', () => {
    fc.assert(
      fc.property(fc.nat(600), fc.nat(100), fc.integer({ min: 1, max: 30 }), (first, stay, howMany) => {
        const row = dayPictures(DATES[first]!, DATES[first + stay]!, howMany);
        expect(row.map(({ day }) => day)).toEqual(DATES.slice(first, first + stay + 1));
        for (let n = 0; n + howMany <= row.length; n++)
          expect(new Set(row.slice(n, n + howMany).map(({ picture }) => picture)).size).toBe(howMany);
        // what was placed stays: tomorrow's row begins with today's
        if (stay)
          expect(row.slice(0, -1)).toEqual(dayPictures(DATES[first]!, DATES[first + stay - 1]!, howMany));
      }),
      { numRuns: 300 },
    );
    expect(dayPictures('2026-11-25', '2026-11-24', 12)).toEqual([]);
    expect(dayPictures('2020-01-01', '2030-01-01', 12)).toHaveLength(200);
  });

  it('reads dates and nothing else, so it cannot depend on soreness, looks or touches', () => {
    expect(dayPictures).toHaveLength(3);
  });

  it('jobs change from day to day, and only who is nine to twelve has one', () => {
    const day = dayNumberOf('2026-11-25')!;
    expect(jobOf('clock', day)).not.toBe(jobOf('clock', day + 1));
    for (const mode of AGE_MODES) expect(jobOf(mode, day) !== undefined).toBe(mode === 'clock');
  });
});

describe('what the card says', () => {
  it('without a card there is the drawn age, no hand to choose and 45 minutes', () => {
    expect(dayFactsOf(undefined, 48)).toEqual({
      mode: 'three-doors',
      facts: {},
      askMinutes: 45,
      handsToChoose: 0,
    });
  });
});
