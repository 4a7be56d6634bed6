// "Nothing by mouth": what ends it, and what does not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nothingByMouth, wordHolds } from '#domain/day/by-mouth.ts';
import { eatingFacts } from '#domain/day/from-bed.ts';
import type { DayBook } from '#domain/day/book.ts';
import { dayOf, type DayFacts } from '#domain/day/tiles.ts';
import { instant } from '#domain/units.ts';
import { DAY_EVENTS } from '#content/day-events.ts';
import { anyBook, LONDON } from './days.ts';

const build = (book: DayBook, facts: DayFacts = {}) => dayOf(book, DAY_EVENTS, facts, LONDON.offsetAt);
const anyMoment = fc.integer({ min: 29_000_000, max: 31_000_000 }).map(instant);
const anyWord = fc.record({ since: anyMoment, cardMadeAt: anyMoment }, { requiredKeys: [] });

describe('"nothing by mouth", said by a nurse', () => {
  it('is ended by a card made after it, and by no card that was there or made before', () => {
    fc.assert(
      fc.property(anyWord, anyMoment, (word, madeAt) => {
        expect(wordHolds(word, undefined)).toBe(true);
        const after = word.since !== undefined && madeAt > word.since && madeAt > (word.cardMadeAt ?? 0);
        expect(wordHolds(word, { madeAt })).toBe(!after);
      }),
    );
    expect(wordHolds(undefined, undefined)).toBe(false);
    expect(wordHolds(undefined, { madeAt: instant(30_000_000) })).toBe(false);
  });

  it('holds now where the word holds, and until the time that the card gives', () => {
    const card = fc.record(
      { madeAt: anyMoment, nothingByMouthUntil: anyMoment },
      { requiredKeys: ['madeAt'] },
    );
    const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
    fc.assert(
      fc.property(maybe(anyWord), maybe(card), anyMoment, (word, known, now) => {
        const until = known?.nothingByMouthUntil;
        const waits = until !== undefined && now < until;
        expect(nothingByMouth(word, known, now)).toBe(waits || wordHolds(word, known));
      }),
    );
    expect(nothingByMouth(undefined, undefined, instant(30_000_000))).toBe(false);
  });

  it('keeps every meal that begins after it away, on its day and on each later one, whatever the clock shows', () => {
    let [kept, barred] = [0, 0];
    fc.assert(
      fc.property(anyBook, fc.integer({ min: -4_000, max: 4_000 }), fc.nat(4_000), (book, after, later) => {
        const since = instant(build(book).from + after);
        const isMeal = ({ kind }: { kind: keyof typeof DAY_EVENTS }) => DAY_EVENTS[kind].group === 'food';
        const undone = { ...book, done: [] };
        const meals = (now: number) =>
          build(undone, eatingFacts({}, false, instant(now), since)).tiles.filter(isMeal);
        // nothing that begins after the word stands, at any later moment
        for (const { from } of meals(since + later)) expect(from).toBeLessThan(since);
        // a clock that was set back behind the word: nothing counts as eaten before it
        expect(meals(since - 1 - later)).toEqual([]);
        kept += meals(since + later).length;
        barred += build(undone).tiles.filter(isMeal).length - meals(since + later).length;
      }),
      { numRuns: 1500 },
    );
    expect(kept).toBeGreaterThan(0);
    expect(barred).toBeGreaterThan(0);
  });
});
