// What a child says about an idea, and that it was done: the last word counts, and nothing done comes twice in a day.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import {
  isKept,
  leaningOf,
  LEANINGS,
  markDone,
  unmarkDone,
  wasDone,
  withDone,
  withLeaning,
} from '#domain/play-bed/answers.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { restOfDay } from '#domain/play-bed/came-up.ts';
import { ideasForNow, inDarkHours } from '#domain/play-bed/offer.ts';
import { nextDay, problemOf } from '#domain/play-bed/problem.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { likeOf } from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import { KINDS } from '#domain/play/types.ts';
import { FULL, TYPICAL } from '../../helpers/play-beds.ts';

const word = fc.constantFrom(...KINDS, ...IDEAS.map(({ id }) => id));
const leaning = fc.constantFrom(...LEANINGS, undefined);
const idea = fc.constantFrom(...IDEAS);
const minute = fc.integer({ min: 0, max: 1439 });

describe('what was said about an idea', () => {
  it('is the last word, in one list alone, and says nothing about any other', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(word, leaning), { minLength: 1, maxLength: 20 }), (all) => {
        let { child } = TYPICAL;
        for (const [about, said] of all) child = withLeaning(child, about, said);
        for (const about of [...KINDS, ...TYPICAL.child.likes, ...all.map(([one]) => one)]) {
          const last = all.findLast(([other]) => other === about);
          const wanted = last ? last[1] : leaningOf(TYPICAL.child, about);
          expect(leaningOf(child, about)).toBe(wanted);
          expect(LEANINGS.filter((list) => child[list].includes(about))).toEqual(wanted ? [wanted] : []);
        }
        expect(readBed({ ...TYPICAL, child }).bed?.child).toEqual(child);
      }),
    );
  });

  it('"again" is worth more to the planner than nothing, "not again" less, and "never" bars it', () => {
    const { problem } = problemOf(TYPICAL, IDEAS);
    for (const one of IDEAS) {
      const quiet = withLeaning(TYPICAL.child, one.id, undefined);
      const worth = (said: 'likes' | 'dislikes') => likeOf(withLeaning(quiet, one.id, said), one);
      expect(worth('likes')).toBeGreaterThan(worth('dislikes'));
      const barred = { ...problem, child: withLeaning(quiet, one.id, 'never') };
      expect(brokenIn(barred, one, problem.windows[0]!)).toContain('H13');
    }
  });
});

describe('what was done today', () => {
  it('is marked once, can be taken back, and is read back as it was written', () => {
    fc.assert(
      fc.property(idea, minute, minute, (one, first, later) => {
        const bed = { ...TYPICAL, done: unmarkDone(TYPICAL, one.id) };
        const done = markDone(bed, one, first);
        expect(wasDone({ done }, one.id)).toBe(true);
        expect(markDone({ ...bed, done }, one, later)).toBe(done);
        expect(unmarkDone({ done }, one.id)).toEqual(bed.done);
        const { bed: read, faults } = readBed({ ...bed, done });
        expect(faults).toEqual([]);
        expect(read!.done).toEqual(done);
      }),
    );
  });

  it('stands where the plan had it once it has begun there, and never later than now', () => {
    for (const placement of FULL.plan!) {
      const { id, minutes } = { id: placement.idea, minutes: [5, 10] as const };
      const bed = { plan: FULL.plan!, done: [] };
      expect(markDone(bed, { id, minutes }, placement.from)).toEqual([placement]);
      expect(markDone(bed, { id, minutes }, placement.from + 200)).toEqual([placement]);
      const early = markDone(bed, { id, minutes }, placement.from - 1);
      expect(early[0]!.from).toBeLessThan(placement.from);
    }
  });

  it('is neither offered nor planned again that day, though no plan had it, and is old tomorrow', () => {
    const now = 9 * 60;
    const { problem } = problemOf(TYPICAL, IDEAS);
    const at = { grownUp: true, propped: true, quiet: false, energy: 2 as const };
    const offered = ideasForNow(problem, [], now, at, 12).filter(
      (id) => !TYPICAL.plan!.some((one) => one.idea === id),
    );
    expect(offered.length).toBeGreaterThan(3);
    const [first] = offered as [string];
    const liked = { ...TYPICAL, child: withLeaning(TYPICAL.child, first, 'likes') };
    const done = markDone(
      liked,
      IDEAS.find(({ id }) => id === first)!,
      now,
    );
    const bed = { ...liked, done };
    const asked = restOfDay(bed, IDEAS, now).problem;
    expect(ideasForNow(problemOf(bed, IDEAS).problem, [], now, at, 12)).not.toContain(first);
    const plan = planDay(asked, { steps: 20, tries: 20, nodes: 200 });
    const { placements } = plan.kind === 'plan' ? plan : plan.rest;
    expect(placements.length).toBeGreaterThan(4);
    expect(placements.map((one) => one.idea)).not.toContain(first);
    expect(nextDay(bed, '2026-11-26').history.yesterday).toContain(first);
  });

  it('leaves its later place free, moves nothing else, and no hard moment is emptied for it', () => {
    let [free, kept] = [0, 0];
    for (const placement of FULL.plan!) {
      const one = problemOf(FULL, IDEAS).problem.ideas.find(({ id }) => id === placement.idea)!;
      const before = placement.from - 1;
      const isMoment = FULL.sketch.moments.some(({ id }) => id === placement.window);
      const bed = { ...FULL, done: [], pins: [placement] };
      const after = withDone(bed, one, before);
      expect(after.plan).toEqual(isMoment ? bed.plan : bed.plan!.filter((other) => other !== placement));
      expect(after.pins).toEqual(isMoment ? [placement] : []);
      expect(isKept(bed, one.id, before)).toBe(isMoment);
      expect(isKept(bed, one.id, placement.from)).toBe(false);
      expect(withDone(bed, one, placement.from)).toEqual({
        done: [placement],
        pins: [placement],
        plan: bed.plan,
      });
      if (isMoment) kept += 1;
      else free += 1;
    }
    expect(Math.min(free, kept)).toBeGreaterThan(1);
  });

  it('is out of every window for the rest of the day, once the day is planned anew', () => {
    const later = FULL.plan!.filter(({ from }) => from > 12 * 60);
    expect(later.length).toBeGreaterThan(3);
    for (const { idea: id } of later) {
      const one = problemOf(FULL, IDEAS).problem.ideas.find((other) => other.id === id)!;
      const bed = { ...FULL, done: markDone(FULL, one, 8 * 60) };
      const { problem } = restOfDay(bed, IDEAS, 8 * 60);
      for (const window of problem.windows) expect(brokenIn(problem, one, window), id).toContain('H13');
    }
  });
});

describe('the dark hours of a bed', () => {
  it('are from lights-out to waking, and the day is not among them', () => {
    fc.assert(
      fc.property(minute, (now) => {
        const { wake, lightsOut } = TYPICAL.sketch;
        expect(inDarkHours(TYPICAL.sketch, now)).toBe(!(now >= wake && now < lightsOut));
      }),
    );
    expect([2 * 60, 12 * 60, 23 * 60].map((now) => inDarkHours(TYPICAL.sketch, now))).toEqual([
      true,
      false,
      true,
    ]);
  });
});
