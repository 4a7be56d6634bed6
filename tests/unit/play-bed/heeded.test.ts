// What frightens a child, what nobody could say to it and what is too loud is in no plan of its bed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { ALONE, FEARS, type PlayBed } from '#domain/play-bed/bed.ts';
import { clashesOf, FRIGHTENING } from '#domain/play-bed/heeded.ts';
import { ideasForNow } from '#domain/play-bed/offer.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { nightIdeas } from '#domain/play/night.ts';
import { planDay } from '#domain/play/plan.ts';
import { vetted } from '#domain/play/vet.ts';
import { anyBed, TYPICAL } from '../../helpers/play-beds.ts';

const idea = (id: string) => IDEAS.find((one) => one.id === id)!;
const heeds = fc.record({
  fears: fc.subarray([...FEARS]),
  wordless: fc.boolean(),
  loudest: fc.constantFrom(0 as const, 1 as const, 2 as const),
});
const nothing = (bed: PlayBed): PlayBed => ({ ...bed, fears: [], wordless: false, loudest: 2 });

describe('what is heeded at a bed', () => {
  it('only ever bars: no tick opens an idea that was barred before', () => {
    fc.assert(
      fc.property(anyBed, heeds, fc.constantFrom(...IDEAS), (bed, ticked, one) => {
        const { problem: before } = problemOf(nothing(bed), IDEAS);
        const { problem: after } = problemOf({ ...bed, ...ticked }, IDEAS);
        expect(after.windows.map(({ id }) => id)).toEqual(before.windows.map(({ id }) => id));
        after.windows.forEach((window, n) => {
          expect(brokenIn(after, one, window)).toEqual(
            expect.arrayContaining(brokenIn(before, one, before.windows[n]!)),
          );
        });
      }),
      { numRuns: 60 },
    );
  });

  it('bars exactly what clashes: everything else may stand where it stood', () => {
    fc.assert(
      fc.property(heeds, fc.constantFrom(...IDEAS), (ticked, one) => {
        const { problem: before } = problemOf(TYPICAL, IDEAS);
        const { problem: after } = problemOf({ ...TYPICAL, ...ticked }, IDEAS);
        const clashes = clashesOf(ticked, one).length > 0;
        for (const window of before.windows) {
          const rules = brokenIn(after, one, window);
          if (clashes) expect(rules).toContain('H13');
          else expect(rules).toEqual(brokenIn(before, one, window));
        }
      }),
    );
  });

  it('is in no plan, in none of the ideas for now and in none for the night', () => {
    for (const ticked of [
      { fears: [...FEARS], wordless: true, loudest: 0 as const },
      { fears: ['water' as const, 'dark' as const] },
      { loudest: 1 as const, wordless: true },
    ]) {
      const { plan: _plan, ...rest } = TYPICAL;
      const bed: PlayBed = { ...rest, ...ticked, done: [], pins: [] };
      const { problem } = problemOf(bed, IDEAS);
      const found = planDay(problem, { steps: 20, tries: 10, nodes: 50 });
      const { placements } = found.kind === 'plan' ? found : found.rest;
      const at = { grownUp: true, propped: true, quiet: false, energy: 2 as const };
      const offered = [
        ...placements.map((one) => one.idea),
        ...ideasForNow(problem, [], 16 * 60, at, 200),
        ...nightIdeas(problem).map((one) => one.idea.id),
      ];
      expect(offered.length).toBeGreaterThan(10);
      const known = problem.ideas.filter(({ id }) => offered.includes(id));
      for (const one of known) expect(clashesOf(bed, one), one.id).toEqual([]);
    }
  });

  it('leaves a child who is bored with nothing for a quarter of an hour at most, and offers it to nobody who is', () => {
    const bed: PlayBed = { ...TYPICAL, own: [], plan: [], done: [], pins: [] };
    const longest = (one: PlayBed) =>
      problemOf(one, IDEAS).problem.ideas.find(({ id }) => id === ALONE)!.minutes[1];
    expect([false, true].map((bored) => longest({ ...bed, bored }))).toEqual([60, 15]);
    // nothing else is left to do: what is planned shows what may be
    const only = IDEAS.filter(({ id }) => id === ALONE);
    const at = { grownUp: true, propped: true, quiet: false, energy: 1 as const };
    for (const bored of [false, true]) {
      const { problem } = problemOf({ ...bed, bored }, only);
      const found = planDay(problem, { steps: 20, tries: 10, nodes: 50 });
      const { placements } = found.kind === 'plan' ? found : found.rest;
      expect(placements.map(({ minutes }) => minutes > 15)).toEqual([!bored]);
      expect(ideasForNow(problem, [], 16 * 60, at, 200)).toEqual(bored ? [] : [ALONE]);
      const alone = { idea: ALONE, window: 'now', from: 16 * 60, minutes: 30 };
      expect(ideasForNow(problem, [alone], 16 * 60, at, 200)).toEqual([ALONE]);
    }
  });

  it('keeps what the child chose: alone for half an hour stays half an hour, bored or not', () => {
    const { windows } = problemOf(TYPICAL, IDEAS).problem;
    const window = windows.find(({ kind, minutes }) => kind === 'ordinary' && minutes >= 30)!;
    const pin = { idea: ALONE, window: window.id, from: window.from, minutes: 30 };
    const bed: PlayBed = { ...TYPICAL, plan: [], done: [], pins: [pin], bored: true };
    const { problem } = problemOf(bed, IDEAS);
    expect(vetted(problem).refused).toEqual([]);
    expect(problem.ideas.find(({ id }) => id === ALONE)!.minutes).toEqual([10, 30]);
  });

  it('knows every idea it names, and finds at least two for each fear', () => {
    for (const fear of FEARS) {
      for (const id of FRIGHTENING[fear]) expect(idea(id), id).toBeDefined();
      expect(IDEAS.filter((one) => clashesOf({ fears: [fear] }, one).length).length, fear).toBeGreaterThan(1);
    }
  });

  it('lets a louder room have all that a quieter one has', () => {
    fc.assert(
      fc.property(fc.constantFrom(...IDEAS), (one) => {
        const counts = ([0, 1, 2] as const).map((loudest) => clashesOf({ loudest }, one).length);
        expect(counts).toEqual([...counts].sort((a, b) => b - a));
        expect(counts[2]).toBe(0);
      }),
    );
    expect(clashesOf({ loudest: 0 }, idea('song-swap'))).toEqual(['loud']);
  });

  it('leaves songs, touch and what a child does alone where no language is shared, and what lives from it', () => {
    for (const id of ['same-song', 'hand-massage', 'secret-codes', 'word-teach', 'call-home', 'do-nothing'])
      expect(clashesOf({ wordless: true }, idea(id)), id).toEqual([]);
    for (const id of ['voice-story', 'twenty-asks', 'safe-place-trip', 'dictate-draw', 'day-tell'])
      expect(clashesOf({ wordless: true }, idea(id)), id).toEqual(['language']);
  });

  it('makes a needle weigh the most for a child who fears needles, and no other moment', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { problem: calm } = problemOf({ ...bed, fears: [] }, IDEAS);
        const { problem } = problemOf({ ...bed, fears: ['needles'] }, IDEAS);
        problem.windows.forEach((window, n) => {
          const before = calm.windows[n]!;
          if (window.kind === 'hard' && window.procedure === 'needle') expect(window.weight).toBe(3);
          else expect(window).toEqual(before);
        });
      }),
      { numRuns: 60 },
    );
    const weights = problemOf({ ...TYPICAL, fears: ['needles'] }, IDEAS).problem.windows;
    expect(weights.flatMap((one) => (one.kind === 'hard' ? [one.weight] : []))).toEqual([3, 2, 1]);
  });
});
