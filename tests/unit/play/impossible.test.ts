// A moment for which nothing fits: every single change is tried beside the checker, and what is promised is just so.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { relaxationsFor } from '#domain/play/impossible.ts';
import type { DayProblem, HardMoment, Idea, PlayWindow, Relaxation } from '#domain/play/types.ts';
import { madeUpDay, madeUpIdeas } from '../../helpers/play-days.ts';

/** Ideas that could fill the whole window alone, read by the checker. */
function filling({ ideas, ...problem }: DayProblem, window: PlayWindow): string[] {
  return ideas.flatMap((idea) => {
    const placement = { idea: idea.id, window: window.id, from: window.from, minutes: window.minutes };
    const day = { ...problem, ideas: [idea], windows: [window], pins: [], limits: NO_LIMITS };
    // a stretch without free time is the share of play's matter, not the idea's
    const broken = checkPlan(day, { placements: [placement] }).filter(({ rule }) => rule !== 'H16');
    return broken.length || placement.from + placement.minutes > problem.lightsOut ? [] : [idea.id];
  });
}
const NO_LIMITS = { screenMinutes: 1440, grownUpMinutes: 1440 };

/** Each single change, in the order in which a ward would think of it. */
function changes(
  problem: DayProblem,
  window: PlayWindow,
): [Relaxation['change'], string?, DayProblem?, PlayWindow?][] {
  const { room, child } = problem;
  const things = [...new Set(problem.ideas.flatMap((idea) => idea.things))].sort();
  const hands = window.kind === 'hard' ? window.freeHands + 1 : 0;
  return [
    ['grown-up', undefined, problem, { ...window, grownUp: true }],
    ['head-up', undefined, problem, { ...window, propped: true }],
    ...(window.kind === 'hard' && hands <= 2
      ? ([
          [
            'hand-free',
            undefined,
            { ...problem, freeHands: (hands > problem.freeHands ? hands : problem.freeHands) as 1 | 2 },
            { ...window, freeHands: hands as 1 | 2 },
          ],
        ] as const)
      : []),
    ['eating', undefined, { ...problem, eating: true }, window],
    ...things.map(
      (thing) =>
        ['fetch', thing, { ...problem, room: { ...room, things: [...room.things, thing] } }, window] as const,
    ),
    ...child.never.map(
      (word) =>
        [
          'never',
          word,
          { ...problem, child: { ...child, never: child.never.filter((other) => other !== word) } },
          window,
        ] as const,
    ),
  ] as [Relaxation['change'], string?, DayProblem?, PlayWindow?][];
}

/** A bed at which much stands in the way, each thing of an idea or two. */
function narrowBed(seed: number): [DayProblem, PlayWindow] {
  const day = madeUpDay(seed, { windows: 3, hard: 1, count: 16 });
  const ideas = madeUpIdeas(16, seed).map((idea, n): Idea => ({
    ...idea,
    ages: [1, 17],
    wipe: 'yes',
    tray: false,
    needs: [],
    ...(n % 3 ? { moments: ['needle', 'bandage'] as const } : {}),
    minutes: n % 5 ? [5, 5 + 5 * (n % 4)] : [20, 30],
    // a lead, and nothing else
    ...(n % 4 === 1 ? { cautions: ['cord'] as const, things: [], who: 'adult' as const } : {}),
    // what only the ban on eating keeps away
    ...(n % 4 === 3 ? { cautions: ['food'] as const, things: [], hands: 0 as const, noise: 0 as const } : {}),
  }));
  const hard = day.windows.find((window): window is HardMoment => window.kind === 'hard')!;
  // both hands may be free at the moment though the bed counts one
  const moment = { ...hard, freeHands: ((seed % 7) % 3) as 0 | 1 | 2 };
  const end = moment.from + moment.minutes;
  const never = [ideas[seed % 16]!.id, ideas[(seed * 7) % 16]!.kind, 'talk'];
  const problem = {
    ...{ ...day, ideas, eating: seed % 2 > 0, freeHands: (seed % 3) as 0 | 1 | 2 },
    child: { ...day.child, never: [...new Set(never)] },
    room: { ...day.room, things: day.room.things.slice(0, 3) },
    // leads and films are put away an hour before: just in time, ten minutes too early, or far from it
    lightsOut: [end + 60, end + 50, day.lightsOut, day.lightsOut][seed % 4]!,
  };
  return [problem, moment];
}

it('each single change is named with just the ideas it opens, the one that opens most first', () => {
  const met = new Set<string>();
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.boolean(), (seed, isHard) => {
      const [problem, moment] = narrowBed(seed);
      const window = isHard
        ? moment
        : { ...problem.windows.find(({ kind }) => kind === 'ordinary')!, minutes: 10 };
      const before = JSON.stringify([problem, window]);
      const now = new Set(filling(problem, window));
      const expected = changes(problem, window)
        .map(([change, what, changed, there]) => ({
          change,
          ...(what === undefined ? {} : { what }),
          opens: filling(changed!, there!).filter((id) => !now.has(id)),
        }))
        .filter(({ opens }) => opens.length)
        .sort((a, b) => b.opens.length - a.opens.length);
      for (const { change } of expected) met.add(change);
      expect(relaxationsFor(problem, window)).toStrictEqual(expected);
      expect(JSON.stringify([problem, window])).toBe(before);
    }),
    { numRuns: 100 },
  );
  expect([...met].sort()).toEqual(['eating', 'fetch', 'grown-up', 'hand-free', 'head-up', 'never']);
});
