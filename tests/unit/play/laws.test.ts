// Laws of the planner over made-up days: nothing beats its plan, no rule is broken, nothing depends on chance.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { minuteRange, needsGrownUp } from '#domain/play/feasible.ts';
import { scoreOf } from '#domain/play/objective.ts';
import { planDay, planWith } from '#domain/play/plan.ts';
import {
  KINDS,
  type DayProblem,
  type Impossible,
  type Placement,
  type Plan,
  type PlayWindow,
} from '#domain/play/types.ts';
import { vetted } from '#domain/play/vet.ts';
import { draws, madeUpDay, madeUpIdeas } from '../../helpers/play-days.ts';
import { cases } from '../../helpers/same-cases.ts';

const planOf = (result: Plan | Impossible) => (result.kind === 'plan' ? result : result.rest);
const EMPTY = 1000;
const DAYS = cases(500);

/** Every way to fill one window that breaks no rule by itself; what is pinned or done is in each. */
function waysThrough(problem: DayProblem, window: PlayWindow): Placement[][] {
  const all = [...problem.pins, ...(problem.done ?? [])];
  const standing = all.filter((one) => one.window === window.id);
  const elsewhere = all.filter((one) => one.window !== window.id);
  const ways: Placement[][] = standing.length ? [] : [[]];
  const most = window.kind === 'hard' ? 2 : Math.max(problem.perWindow ?? 3, standing.length);
  const gap = window.kind === 'hard' ? 0 : 5;
  const soonest = Math.ceil((problem.notBefore ?? 0) / 5) * 5;
  const end = window.from + window.minutes;
  const extend = (way: Placement[], from: number) => {
    if (way.length === most) return;
    const next = [...standing].filter((one) => !way.includes(one) && one.from > from - 5);
    const start = Math.max(from, soonest);
    for (const idea of problem.ideas) {
      if (elsewhere.some((one) => one.idea === idea.id)) continue;
      const [low, high] = minuteRange(idea);
      for (let minutes = low; minutes <= high; minutes += 5)
        next.push({ idea: idea.id, window: window.id, from: start, minutes });
    }
    for (const one of next) {
      const longer = [...way, one];
      const until = one.from + one.minutes;
      if (until > end) continue;
      const broken = checkPlan(problem, { placements: longer });
      const unfilled = window.kind === 'hard' && until < end;
      if (broken.some(({ rule }) => rule !== 'H16' && rule !== 'H18' && !(rule === 'H2' && unfilled)))
        continue;
      if (!unfilled && standing.every((old) => longer.includes(old))) ways.push(longer);
      extend(longer, until + gap);
    }
  };
  extend([], window.from);
  // a moment that began and for which nothing more is left
  const begun = standing.length > 0 && standing.every((one) => problem.done!.includes(one));
  return ways.length || !begun ? ways : [standing];
}

/** The minutes of placements that need a grown-up. */
const grownUpIn = ({ ideas, child }: DayProblem, placements: readonly Placement[]) =>
  placements
    .filter(({ idea }) =>
      needsGrownUp(
        ideas.find(({ id }) => id === idea)!,
        child.ageMonths,
      ),
    )
    .reduce((sum, { minutes }) => sum + minutes, 0);

/** How many different things a plan needs. */
const thingsIn = ({ ideas }: DayProblem, placements: readonly Placement[]) =>
  new Set(placements.flatMap(({ idea }) => ideas.find(({ id }) => id === idea)!.things)).size;

/** Starts and ideas, so that of two plans the one that comes first is the smaller text. */
const listOf = (placements: readonly Placement[]) =>
  placements.map(({ from, idea }) => `${String(from).padStart(4, '0')} ${idea}`).join();

/** How many of the old placements are still in their windows. */
const staying = (old: readonly Placement[], now: readonly Placement[]) =>
  old.filter(({ idea, window }) => now.some((one) => one.idea === idea && one.window === window)).length;

/**
 * The best score there is, by listing every plan; the fewest minutes of a grown-up that it takes, with them the fewest things,
 * with these the first list of starts and ideas. A moment is left empty only where nothing is left for it.
 */
function bestOfAll(
  problem: DayProblem,
  old: readonly Placement[] = [],
): { best: number; first: Placement[]; equals: number; plans: number; stays: number } {
  const ways = problem.windows.map((window) => waysThrough(problem, window));
  let [best, plans] = [-Infinity, 0];
  let equals: Placement[][] = [];
  let stays = 0;
  const go = (w: number, placements: Placement[], empty: number) => {
    if (w === ways.length) {
      plans++;
      const score = scoreOf(problem, placements) - EMPTY * empty;
      // only what would be as good has to keep the rules
      if (score < best || checkPlan(problem, { placements }).length) return;
      if (score > best) [best, equals, stays] = [score, [], 0];
      equals.push(placements);
      stays = Math.max(stays, staying(old, placements));
      return;
    }
    for (const way of ways[w]!) {
      if (way.some(({ idea }) => placements.some((other) => other.idea === idea))) continue;
      const left = problem.windows[w]!.kind === 'hard' && ways[w]!.length > 1 && !way.length;
      go(w + 1, [...placements, ...way], empty + (left ? 1 : 0));
    }
  };
  go(0, [], 0);
  const least = (ask: (plan: Placement[]) => number, plans: Placement[][]) => {
    const fewest = Math.min(...plans.map(ask));
    return plans.filter((plan) => ask(plan) === fewest);
  };
  const frugal = least(
    (plan) => thingsIn(problem, plan),
    least((plan) => grownUpIn(problem, plan), equals),
  );
  frugal.sort((a, b) => (listOf(a) < listOf(b) ? -1 : 1));
  return { best, first: frugal[0]!, equals: equals.length, plans, stays };
}

/** Three windows, five ideas that nearly every child could have: small enough to list every plan. */
function smallDay(seed: number): DayProblem {
  const ideas = madeUpIdeas(5, seed).map((idea) => ({
    ...idea,
    ages: [1, 17] as const,
    things: [],
    wipe: 'yes' as const,
    hands: Math.min(1, idea.hands) as 0 | 1,
    moments: idea.tray ? [] : (['needle', 'bandage'] as const),
    minutes: [idea.minutes[0], Math.min(idea.minutes[1], idea.minutes[0] + 5)] as const,
  }));
  const day = madeUpDay(seed, { windows: 3, hard: 1, ideas });
  const windows = day.windows.map((window) => ({
    ...window,
    grownUp: true,
    minutes: Math.min(window.minutes, 35),
  }));
  return {
    ...day,
    windows,
    child: { ...day.child, never: [] },
    limits: { ...day.limits, grownUpMinutes: 20 },
  };
}

/** The same with things to fetch. */
function smallDayWithThings(seed: number): DayProblem {
  const day = smallDay(seed);
  const { maybe } = draws(seed * 7 + 3);
  const things = ['bear', 'book', 'paper', 'pen'];
  const ideas = day.ideas.map((idea) => ({ ...idea, things: things.filter(() => maybe(0.35)) }));
  return { ...day, ideas, room: { ...day.room, things } };
}

describe('small days, every plan listed', () => {
  it(
    'no plan of 500 days is worth more than the planner’s, its bound says so, and of equals it is the first by every rule',
    { timeout: 240_000 },
    () => {
      let listed = 0;
      let several = 0;
      let ties = 0;
      for (let seed = 1; seed <= DAYS; seed++) {
        const problem = smallDayWithThings(seed);
        const plan = planOf(planDay(problem));
        const { best, first, equals, plans } = bestOfAll(problem);
        if (equals > 1) ties++;
        listed += plans;
        if (plan.placements.length > 1) several++;
        const empty = Math.max(0, -Math.floor((best + 500) / EMPTY));
        expect([seed, plan.score, plan.bound]).toEqual([seed, best + EMPTY * empty, plan.score]);
        expect([seed, plan.grownUpMinutes]).toEqual([seed, grownUpIn(problem, first)]);
        expect([seed, thingsIn(problem, plan.placements)]).toEqual([seed, thingsIn(problem, first)]);
        expect([seed, listOf(plan.placements)]).toEqual([seed, listOf(first)]);
        expect(checkPlan(problem, plan)).toEqual([]);
      }
      // the days are worth listing: many plans each, most with more than one placement
      expect(listed).toBeGreaterThan(DAYS * 200);
      expect(several).toBeGreaterThan(DAYS / 2);
      expect(ties).toBeGreaterThan(DAYS / 2);
    },
  );
});

/** A small day in the middle of it: some of a plan was done, some is pinned, perhaps elsewhere in its window. */
function begunDay(seed: number): { problem: DayProblem; old: Placement[] } {
  const { below, maybe, oneOf } = draws(seed * 13 + 5);
  const day = { ...smallDay(seed), perWindow: oneOf([1, 2, 3, 3] as const) };
  const { placements } = planOf(planDay(day));
  const first = day.windows[0]!;
  const now = maybe(0.7) ? first.from + below(100) : 0;
  const done = placements.filter(({ from }) => from < now);
  const pins = placements
    .filter(({ from }) => from >= now && maybe(0.4))
    .map((pin) => (maybe(0.3) ? { ...pin, from: pin.from + 5 } : pin));
  const problem = { ...day, done, notBefore: now, bored: maybe(0.5), windows: day.windows };
  // the best of the day is not wanted any more, so that something has to change
  const late = placements.filter(({ from }) => from >= now);
  const gone = late.length && maybe(0.6) ? [oneOf(late).idea] : [];
  const never = gone.filter((id) => !pins.some(({ idea }) => idea === id));
  const whole = { ...problem, child: { ...day.child, never } };
  const { refused } = vetted({ ...whole, pins });
  return { problem: { ...whole, pins: refused.length ? [] : pins }, old: late };
}

describe('small days in the middle, every plan listed', () => {
  it(
    'nothing beats the plan, what was pinned or done stays, and of equals as much as can stays where it was',
    { timeout: 240_000 },
    () => {
      let [stood, moved, began] = [0, 0, 0];
      const BEGUN = cases(200);
      for (let seed = 1; seed <= BEGUN; seed++) {
        const { problem, old } = begunDay(seed);
        const plan = planOf(planWith(problem, old));
        const { best, stays } = bestOfAll(problem, old);
        const empty = Math.max(0, -Math.floor((best + 500) / EMPTY));
        expect([seed, plan.score, plan.bound]).toEqual([seed, best + EMPTY * empty, plan.score]);
        expect(checkPlan(problem, plan)).toEqual([]);
        for (const one of [...problem.pins, ...problem.done!]) expect(plan.placements).toContainEqual(one);
        expect([seed, staying(old, plan.placements)]).toEqual([seed, stays]);
        stood += problem.pins.length;
        began += problem.done!.length;
        if (stays < old.length) moved++;
      }
      expect(stood).toBeGreaterThan(BEGUN / 16);
      expect(began).toBeGreaterThan(BEGUN / 16);
      expect(moved).toBeGreaterThan(BEGUN / 16);
    },
  );
});

describe('whole days', () => {
  const seeds = fc.integer({ min: 1, max: 100_000 });
  const quick = { steps: 60, tries: 200, nodes: 300 };

  it('a plan breaks no rule, and is worth what it says', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const problem = madeUpDay(seed);
        const plan = planOf(planDay(problem, quick));
        expect(checkPlan(problem, plan)).toEqual([]);
        expect(plan.score).toBe(scoreOf(problem, plan.placements));
        expect(plan.bound).toBeGreaterThanOrEqual(plan.score);
      }),
      { numRuns: cases(80) },
    );
  });

  it('of two ideas alike in all but what must be fetched, the one with fewer things is planned first', () => {
    let asked = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const made = madeUpDay(seed);
        // nothing is said of one idea alone
        const ofKinds = (words: readonly string[]) =>
          words.filter((word) => KINDS.some((kind) => kind === word));
        const { likes, dislikes, never } = made.child;
        const child = {
          ...{ ...made.child, likes: ofKinds(likes) },
          ...{ dislikes: ofKinds(dislikes), never: ofKinds(never) },
        };
        const day = { ...made, child, history: { yesterday: [], lastThreeDays: [] } };
        const things = [...day.room.things, 'one-more'];
        // by name, the one that needs more comes first
        const more = day.ideas.map((idea) => ({
          ...idea,
          id: `a-${idea.id}`,
          things: [...idea.things, 'one-more'],
        }));
        const problem = { ...day, ideas: [...day.ideas, ...more], room: { ...day.room, things } };
        const { placements } = planOf(planDay(problem, quick));
        const planned = placements.map(({ idea }) => idea);
        const alone = problem.windows
          .filter(
            ({ kind, id }) => kind === 'ordinary' || placements.filter((p) => p.window === id).length < 2,
          )
          .map(({ id }) => id);
        asked += planned.length;
        // what another needs anyway is fetched anyway
        const needing = planned.filter((idea) => idea.startsWith('a-')).length;
        for (const { idea, window } of placements)
          if (needing === 1 && idea.startsWith('a-') && alone.includes(window))
            expect([seed, planned]).toEqual([seed, expect.arrayContaining([idea.slice(2)])]);
      }),
      { numRuns: cases(20) },
    );
    expect(asked).toBeGreaterThan(40);
  });

  it('the same day gives the same plan, in whatever order its ideas and words are listed', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const problem = madeUpDay(seed);
        const turned: DayProblem = {
          ...problem,
          ideas: [...problem.ideas].reverse(),
          windows: [...problem.windows].reverse(),
          child: { ...problem.child, likes: [...problem.child.likes].reverse() },
        };
        expect(planOf(planDay(turned, quick))).toEqual(planOf(planDay(problem, quick)));
      }),
      { numRuns: cases(20) },
    );
  });

  it('a plan travels as JSON', () => {
    const plan = planDay(madeUpDay(3), quick);
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });

  it('what was planned can be pinned: every pin stays where it is', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 0, max: 30 }), (seed, pick) => {
        const problem = madeUpDay(seed);
        const before = planOf(planDay(problem, quick));
        const pins = before.placements.filter((_, n) => (n + pick) % 5 === 0);
        const pinned = { ...problem, pins };
        const after = planOf(planDay(pinned, quick));
        expect(after.refused).toEqual([]);
        for (const pin of pins) expect(after.placements).toContainEqual(pin);
        expect(checkPlan(pinned, after)).toEqual([]);
      }),
      { numRuns: cases(30) },
    );
  });

  it('what began before now stays, and nothing new starts before it', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 84, max: 216 }), (seed, step) => {
        const now = step * 5;
        const problem = madeUpDay(seed);
        const before = planOf(planDay(problem, quick));
        const done = before.placements.filter(({ from }) => from < now);
        // the last of it is not wanted any more
        const never = [...problem.child.never, before.placements.at(-1)?.idea ?? 'none'];
        const rest = { ...problem, done, notBefore: now, child: { ...problem.child, never } };
        const after = planOf(planWith(rest, before.placements, quick));
        expect(after.placements.filter(({ from }) => from < now)).toEqual(done);
        expect(checkPlan(rest, after)).toEqual([]);
      }),
      { numRuns: cases(50) },
    );
  });
});
