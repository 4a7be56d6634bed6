// Several beds: one thing is at one bed only, and each bed says in one line what is kept and what is open.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { WARD_DAY } from '#content/ward-day.ts';
import type { BedCard } from '#domain/bed-card/card.ts';
import { instant } from '#domain/units.ts';
import { atAGlance } from '#domain/play-bed/at-a-glance.ts';
import { holdsEating, type PlayBed } from '#domain/play-bed/bed.ts';
import { begunAnew, factsOf, nextDay, problemOf, startBed, withoutCard } from '#domain/play-bed/problem.ts';
import { usedAtOthers } from '#domain/play-bed/shared-things.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';

const minute = fc.integer({ min: 0, max: 1439 });
const FILM = { idea: 'short-film', window: 'w-1400', from: 840, minutes: 15 };
const star: PlayBed = { ...TYPICAL, shape: 'star', plan: [FILM], done: [], pins: [] };

describe('a bed in one line', () => {
  it('names each hard moment still to come once, as kept or as open, in order of time', () => {
    fc.assert(
      fc.property(anyBed, minute, (bed, now) => {
        const { kept, open, planned } = atAGlance(bed, now);
        const told = [...kept.map(({ moment }) => moment), ...open];
        const coming = bed.sketch.moments.filter((one) => one.from + one.minutes > now);
        expect(new Set(told.map(({ id }) => id))).toEqual(new Set(coming.map(({ id }) => id)));
        expect(told.length).toBe(coming.length);
        for (const list of [kept.map(({ moment }) => moment), open])
          expect(list.map(({ from }) => from)).toEqual(list.map(({ from }) => from).sort((a, b) => a - b));
        expect(planned).toBe(bed.plan !== undefined);
        if (!planned) expect(kept).toEqual([]);
      }),
    );
  });

  it('names all that the plan keeps for a moment, and nothing else', () => {
    const { kept, open } = atAGlance(FULL, 0);
    const inPlan = FULL.plan!.filter(({ window }) => FULL.sketch.moments.some(({ id }) => id === window));
    expect(kept.flatMap(({ ideas }) => ideas)).toEqual(inPlan.map(({ idea }) => idea));
    expect(inPlan.length).toBeGreaterThan(0);
    const [first] = kept;
    const without = FULL.plan!.filter(({ window }) => window !== first!.moment.id);
    expect(atAGlance({ ...FULL, plan: without }, 0).open).toContainEqual(first!.moment);
    expect(open.length + kept.length).toBe(FULL.sketch.moments.length);
  });

  it('has a shorter line the later it is', () => {
    fc.assert(
      fc.property(anyBed, minute, minute, (bed, a, b) => {
        const length = (now: number) => {
          const { kept, open } = atAGlance(bed, now);
          return kept.length + open.length;
        };
        expect(length(Math.max(a, b))).toBeLessThanOrEqual(length(Math.min(a, b)));
      }),
    );
  });
});

describe('what another bed had today', () => {
  it('is found only among this bed’s things, never from itself and never from another day', () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyBed, { maxLength: 5, selector: ({ shape }) => shape }), (beds) => {
        for (const here of beds) {
          const found = usedAtOthers(beds, here, IDEAS);
          for (const thing of found) expect(here.room.things).toContain(thing);
          expect(usedAtOthers([here], here, IDEAS)).toEqual([]);
          const otherDay = beds.map((bed) => (bed === here ? bed : { ...bed, day: '2019-01-01' }));
          expect(usedAtOthers(otherDay, here, IDEAS)).toEqual([]);
          // the order in which beds were made says nothing
          expect(usedAtOthers([...beds].reverse(), here, IDEAS)).toEqual(found);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is the tablet of the film, planned or done there; paper and pen there is enough of', () => {
    const rest = { ...star, plan: [] };
    expect(usedAtOthers([star, TYPICAL], TYPICAL, IDEAS)).toEqual(['screen']);
    expect(usedAtOthers([{ ...rest, done: [FILM] }, TYPICAL], TYPICAL, IDEAS)).toEqual(['screen']);
    const drawn = { ...star, plan: [{ ...FILM, idea: 'dictate-draw' }] };
    expect(usedAtOthers([drawn, TYPICAL], TYPICAL, IDEAS)).toEqual([]);
  });

  it('once ticked bars every idea that needs it, by the rule about shared things', () => {
    fc.assert(
      fc.property(fc.constantFrom(...IDEAS), fc.constantFrom(...TYPICAL.room.things), (idea, thing) => {
        const room = { ...TYPICAL.room, usedElsewhere: [thing] };
        const { problem } = problemOf({ ...TYPICAL, room }, IDEAS);
        for (const window of problem.windows)
          if (idea.things.includes(thing)) expect(brokenIn(problem, idea, window)).toContain('H7');
      }),
    );
  });

  it('is forgotten with the day', () => {
    expect(TYPICAL.room.usedElsewhere).not.toEqual([]);
    const { usedElsewhere, ...room } = nextDay(TYPICAL, '2026-11-26').room;
    expect(usedElsewhere).toEqual([]);
    const { usedElsewhere: _had, ...before } = TYPICAL.room;
    expect(room).toEqual(before);
    expect(nextDay(TYPICAL, TYPICAL.day).room).toEqual(TYPICAL.room);
  });
});

describe('a bed whose device changes its clock', () => {
  const anyDay = fc
    .integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2027, 11, 31) })
    .map((at) => new Date(at).toISOString().slice(0, 10));

  it('stays whole on every earlier day, and is as it was once the clock is right again', () => {
    const full = { ...TYPICAL, done: (TYPICAL.plan ?? []).slice(0, 2), pins: TYPICAL.plan!.slice(2, 3) };
    fc.assert(
      fc.property(fc.array(anyDay, { maxLength: 6 }), (days) => {
        const wrong = days.filter((day) => day <= full.day);
        expect([...wrong, full.day].reduce(nextDay, full)).toBe(full);
        // a later day begins once, whatever came between, and the same day is asked for once more
        const last = [...days].sort().at(-1);
        const after = days.reduce(nextDay, full);
        expect(after.day).toBe(last !== undefined && last > full.day ? last : full.day);
        expect(days.reduce(nextDay, after)).toBe(after);
      }),
    );
  });

  it('begins an earlier day only where somebody asks for it, and then without what is over', () => {
    const anew = begunAnew(TYPICAL, '2026-11-20');
    expect(anew).toEqual({ ...nextDay(TYPICAL, '2026-11-26'), day: '2026-11-20' });
    expect([anew.plan, anew.done, anew.sketch.moments]).toEqual([undefined, [], []]);
  });
});

describe('a bed to begin with', () => {
  const begun = (facts: Parameters<typeof startBed>[2]) => startBed('boat', '2026-11-25', facts, WARD_DAY);

  it('without a nurse’s card has no food in its plan until somebody says so, and takes no meal away', () => {
    for (const years of [1, 4, 9, 16]) {
      const bed = begun(withoutCard(years));
      const { problem } = problemOf(bed, IDEAS);
      const food = IDEAS.find(({ cautions }) => cautions.includes('food'))!;
      const propped = problem.windows.map((window) => ({ ...window, propped: true }));
      expect(brokenIn(problem, food, propped[0]!)).toContain('H12');
      expect(holdsEating(bed)).toBe(false);
      // said, either way, it counts
      expect(holdsEating({ ...bed, eatingUnsaid: undefined })).toBe(true);
      expect(holdsEating({ ...bed, eating: true, eatingUnsaid: undefined })).toBe(false);
    }
  });

  it('with a card eats as the card says', () => {
    const now = instant(1_000);
    const card = { head: 'propped', hands: 'both', ownThingsOnly: false } as unknown as BedCard;
    expect(begun(factsOf(card, 5, now))).toMatchObject({ eating: true });
    const waits = begun(factsOf({ ...card, nothingByMouthUntil: instant(1_060) }, 5, now));
    expect(waits.eating).toBe(false);
    expect(holdsEating(waits)).toBe(true);
  });
});
