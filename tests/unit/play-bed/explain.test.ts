// Why an idea stands where it stands: every reason held against the rules, the score and the planner themselves.
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { reasonsFor, type Other } from '#domain/play-bed/explain.ts';
import { checkPlan } from '#domain/play/check.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { baseOf, likeOf, scoreOf } from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import { FAMILIES, type DayProblem, type Placement, type Plan } from '#domain/play/types.ts';
import { madeUpDay } from '../../helpers/play-days.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const planned = (problem: DayProblem): Plan => {
  const result = planDay(problem, { steps: 200, tries: 300, nodes: 4000 });
  return result.kind === 'plan' ? result : result.rest;
};
const ideaIn = ({ ideas }: DayProblem, id: string) => ideas.find((idea) => idea.id === id)!;
const windowIn = ({ windows }: DayProblem, id: string) => windows.find((window) => window.id === id)!;
const rulesOf = (problem: DayProblem, placements: readonly Placement[]) =>
  checkPlan(problem, { placements }).map(({ rule }) => rule);

/** Days of six windows with forty ideas, and full days with the library. */
const DAYS = [
  ...Array.from({ length: 24 }, (_, n) => madeUpDay(500 + n, { windows: 6, hard: 2, count: 40 })),
  ...Array.from({ length: 3 }, (_, n) => madeUpDay(900 + n, { ideas: IDEAS })),
].map((problem) => ({ problem, plan: planned(problem) }));
const EVERY = DAYS.flatMap(({ problem, plan }) =>
  plan.placements.map((placement) => ({
    problem,
    plan,
    placement,
    reasons: reasonsFor(problem, plan.placements, placement),
  })),
);
type Case = (typeof EVERY)[number] & { other: Other };
const othersWith = <W extends Other['why']>(why: W) =>
  EVERY.flatMap((one) =>
    one.reasons.others.flatMap((other) =>
      other.why === why ? [{ ...one, other } as Case & { other: Extract<Other, { why: W }> }] : [],
    ),
  );

/** The same day with an idea in this place and what follows packed behind it, for every length up to an hour and five minutes. */
function swaps({ problem, plan, placement, other }: Case): Placement[][] {
  const window = windowIn(problem, placement.window);
  const lengths =
    window.kind === 'hard' ? [placement.minutes] : Array.from({ length: 13 }, (_, n) => 5 * n + 5);
  return lengths.map((minutes) => {
    let at = placement.from;
    const day: Placement[] = [];
    for (const one of [...plan.placements].sort((a, b) => a.from - b.from)) {
      if (one === placement) day.push({ ...one, idea: other.idea, minutes });
      else if (one.window === window.id && one.from > placement.from && window.kind === 'ordinary')
        day.push({ ...one, from: at });
      else day.push(one);
      const last = day[day.length - 1]!;
      if (one.window === window.id && one.from >= placement.from) at = last.from + last.minutes + 5;
    }
    return day;
  });
}

describe('other ideas', () => {
  it('are at most five, each once, never the one that stands there, and some are found for every reason', () => {
    for (const { placement, reasons } of EVERY) {
      const ids = reasons.others.map(({ idea }) => idea);
      expect(ids.length).toBeLessThanOrEqual(5);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids).not.toContain(placement.idea);
    }
    for (const why of ['rule', 'kept', 'elsewhere', 'fewer-points', 'does-not-fit'] as const)
      expect(othersWith(why).length, why).toBeGreaterThan(0);
  });

  it('begin with what the child likes by name, best first', () => {
    for (const { problem, placement, reasons } of EVERY) {
      const { child } = problem;
      const window = windowIn(problem, placement.window);
      const named = problem.ideas
        .filter((idea) => child.likes.includes(idea.id) && !child.dislikes.includes(idea.id))
        .filter(({ id }) => id !== placement.idea)
        .map((idea) => ({ id: idea.id, base: baseOf(problem, idea, window) }))
        .sort((a, b) => b.base - a.base)
        .map(({ id }) => id)
        .slice(0, 5);
      expect(reasons.others.slice(0, named.length).map(({ idea }) => idea)).toEqual(named);
    }
  });

  it('then come one of each liked kind, then what could stand there, best first', () => {
    for (const { problem, placement, reasons } of EVERY) {
      const window = windowIn(problem, placement.window);
      const rest = reasons.others.filter(({ idea, why }) => {
        const { kind } = ideaIn(problem, idea);
        const liked = problem.child.likes.includes(idea) || problem.child.likes.includes(kind);
        return !liked && why !== 'elsewhere';
      });
      const bases = rest.map(({ idea }) => baseOf(problem, ideaIn(problem, idea), window));
      expect(bases).toEqual([...bases].sort((a, b) => b - a));
      if (reasons.others.length === 5 || !reasons.others.length) continue;
      const here = ideaIn(problem, placement.idea);
      for (const kind of problem.child.likes.filter((word) => word !== here.kind)) {
        const wanted = problem.ideas.some(
          (idea) =>
            idea.kind === kind &&
            likeOf(problem.child, idea) > 0 &&
            idea.id !== here.id &&
            !brokenIn(problem, idea, window).includes('H1'),
        );
        const told = reasons.others.some(({ idea }) => ideaIn(problem, idea).kind === kind);
        expect(told || !wanted, kind).toBe(true);
      }
    }
  });

  it('are the same whatever the order in which the plan is told', () => {
    for (const { problem, plan, placement, reasons } of EVERY)
      expect(reasonsFor(problem, [...plan.placements].reverse(), { ...placement })).toEqual(reasons);
  });

  it('kept out by a rule: every rule that the place breaks, and none that the day would not break', () => {
    for (const one of othersWith('rule')) {
      const { problem, placement, plan, other } = one;
      const broken = brokenIn(problem, ideaIn(problem, other.idea), windowIn(problem, placement.window));
      expect(other.rules).toEqual(expect.arrayContaining(broken));
      expect(other.rules.length).toBeGreaterThan(0);
      const before = rulesOf(problem, plan.placements);
      // at every length the day breaks one of them, and each of them at some length
      const after = swaps(one).map((day) => rulesOf(problem, day));
      for (const rules of after)
        expect(rules.some((rule) => rule === 'H2' || other.rules.includes(rule))).toBe(true);
      for (const rule of other.rules)
        expect(
          after.some(
            (rules) => rules.filter((r) => r === rule).length > before.filter((r) => r === rule).length,
          ),
          `${other.idea} ${rule}`,
        ).toBe(true);
    }
  });

  it('kept for a hard moment: it stands in one that begins within three hours', () => {
    for (const { problem, plan, placement, other } of othersWith('kept')) {
      const moment = windowIn(problem, other.window);
      expect(moment.kind).toBe('hard');
      expect(moment.from).toBeGreaterThan(placement.from);
      expect(moment.from - placement.from).toBeLessThanOrEqual(180);
      expect(plan.placements.some((one) => one.idea === other.idea && one.window === moment.id)).toBe(true);
    }
  });

  it('elsewhere: the day holds it from then, and not in a moment that is near', () => {
    for (const { problem, plan, placement, other } of othersWith('elsewhere')) {
      const there = plan.placements.find((one) => one.idea === other.idea)!;
      expect(there.from).toBe(other.from);
      const near = windowIn(problem, there.window).from - placement.from;
      const kept = windowIn(problem, there.window).kind === 'hard' && near > 0 && near <= 180;
      if (windowIn(problem, placement.window).kind === 'ordinary') expect(kept).toBe(false);
    }
  });

  it('with fewer points: by exactly as many as the best day that keeps every rule', () => {
    for (const one of othersWith('fewer-points')) {
      const { problem, plan, other } = one;
      const before = rulesOf(problem, plan.placements).length;
      const days = swaps(one).filter((day) => rulesOf(problem, day).length <= before);
      const best = Math.max(...days.map((day) => scoreOf(problem, day)));
      expect(other.points).toBe(plan.score - best);
    }
  });

  it('never with more, where the plan is proven best', () => {
    const proven = othersWith('fewer-points').filter(({ plan }) => plan.score === plan.bound);
    expect(proven.length).toBeGreaterThan(100);
    for (const { other } of proven) expect(other.points).toBeGreaterThanOrEqual(0);
  });

  it('does not fit: at no length is there a day that keeps every rule', () => {
    for (const one of othersWith('does-not-fit')) {
      const before = rulesOf(one.problem, one.plan.placements).length;
      for (const day of swaps(one)) expect(rulesOf(one.problem, day).length).toBeGreaterThan(before);
    }
  });

  it('are not weighed against what a person pinned or what was done', () => {
    const { problem, plan } = DAYS[0]!;
    const placement = plan.placements[0]!;
    const pinned = { ...problem, pins: [placement] };
    expect(reasonsFor(pinned, plan.placements, placement)).toMatchObject({ others: [] });
    expect(reasonsFor(pinned, plan.placements, placement).because[0]).toBe('pinned');
    const done = reasonsFor({ ...problem, done: [placement] }, plan.placements, placement);
    expect(done.others).toEqual([]);
    expect(done.because).not.toContain('pinned');
    expect(reasonsFor(pinned, plan.placements, plan.placements[1]!).because).not.toContain('pinned');
  });
});

describe('it stands there because', () => {
  const with_ = (word: string) => EVERY.filter(({ reasons }) => (reasons.because as string[]).includes(word));
  const facts = EVERY.map(({ problem, plan, placement, reasons }) => {
    const idea = ideaIn(problem, placement.idea);
    const window = windowIn(problem, placement.window);
    const families = (list: readonly Placement[]) =>
      new Set(list.map((one) => FAMILIES[ideaIn(problem, one.idea).kind])).size;
    const rest = plan.placements.filter((one) => one !== placement);
    const { yesterday, lastThreeDays } = problem.history;
    return {
      because: reasons.because,
      liked: likeOf(problem.child, idea) > 0,
      'fits-energy': idea.energy === window.energy,
      new: !yesterday.includes(idea.id) && !lastThreeDays.includes(idea.id),
      wish:
        window.kind === 'hard' &&
        (window.wish === 'watch' || window.wish === 'look-away') &&
        idea.suits.includes(window.wish),
      'own-family': families(rest) < families(plan.placements),
    };
  });

  it.each(['liked', 'fits-energy', 'new', 'wish', 'own-family'] as const)(
    '%s: exactly where it is so',
    (word) => {
      for (const fact of facts) expect(fact.because.includes(word)).toBe(fact[word]);
      expect(facts.some((fact) => fact[word])).toBe(true);
      expect(facts.every((fact) => fact[word])).toBe(false);
    },
  );

  it('kept-for-moment: at a hard moment, and at most two that could stand there promise more', () => {
    expect(with_('kept-for-moment').length).toBeGreaterThan(10);
    for (const { problem, placement, reasons } of EVERY) {
      const window = windowIn(problem, placement.window);
      const base = baseOf(problem, ideaIn(problem, placement.idea), window);
      const end = placement.from + placement.minutes;
      const better = problem.ideas.filter((idea) => {
        const least = Math.ceil(idea.minutes[0] / 5) * 5;
        const most = Math.max(least, Math.floor(idea.minutes[1] / 5) * 5);
        const early = idea.screen === 'yes' || idea.cautions.includes('cord');
        return (
          !brokenIn(problem, idea, window).length &&
          least <= placement.minutes &&
          placement.minutes <= most &&
          !(early && end > problem.lightsOut - 60) &&
          baseOf(problem, idea, window) > base
        );
      });
      const kept = window.kind === 'hard' && better.length < 3;
      expect(reasons.because.includes('kept-for-moment')).toBe(kept);
    }
  });

  it('only-one: without it the hard moment would be empty', () => {
    const moments = [] as boolean[];
    for (let seed = 0; seed < 60; seed++) {
      const problem = madeUpDay(3000 + seed, { windows: 2, hard: 2, count: 12 });
      const plan = planned(problem);
      for (const placement of plan.placements) {
        const { because } = reasonsFor(problem, plan.placements, placement);
        // alone in the day, so that no other moment takes what is left
        const day = { ...problem, windows: problem.windows.filter(({ id }) => id === placement.window) };
        const without = planDay({ ...day, ideas: day.ideas.filter(({ id }) => id !== placement.idea) });
        if (because.includes('only-one')) expect(without.kind).toBe('impossible');
        moments.push(because.includes('only-one'));
      }
    }
    expect(new Set(moments).size).toBe(2);
  });

  it('only-one: in an open window nothing else is allowed there and short enough', () => {
    const { problem, placements } = { problem: EXAMPLE, placements: planned(EXAMPLE).placements };
    const story = placements.find(({ idea }) => idea === 'listen-story')!;
    const one = { ...problem, ideas: problem.ideas.filter(({ id }) => id === 'listen-story') };
    expect(reasonsFor(one, [story], story).because).toContain('only-one');
    expect(reasonsFor(problem, placements, story).because).not.toContain('only-one');
  });
});

describe('the day that can be worked out by hand', () => {
  // Source: design 4-play, 5.5: sticker-street 7, listen-story 4, the film 14, ceiling-map 7
  const { placements } = planned(EXAMPLE);
  const at = (window: string) =>
    reasonsFor(
      EXAMPLE,
      placements,
      placements.find((one) => one.window === window)!,
    );

  it('keeps the film for the bandage care, and the noon window says so', () => {
    expect(at('w3').because).toEqual(['kept-for-moment', 'liked', 'fits-energy', 'own-family']);
    expect(at('w2').others).toContainEqual({ idea: 'short-film', why: 'kept', window: 'w3' });
  });

  it('is new only where something is on record, and never once it was done today', () => {
    const film = placements.find(({ window }) => window === 'w3')!;
    const because = (more: Partial<DayProblem>) =>
      reasonsFor({ ...EXAMPLE, ...more }, placements, film).because;
    const history = { yesterday: ['hum-guess'], lastThreeDays: ['hum-guess'] };
    expect(because({})).not.toContain('new');
    expect(because({ history })).toContain('new');
    expect(because({ history, done: [film] })).not.toContain('new');
  });

  it('keeps it from three hours before on, and no sooner', () => {
    for (const [from, kept] of [
      [12 * 60, true],
      [11 * 60 + 55, false],
    ] as const) {
      const windows = EXAMPLE.windows.map((window) => (window.id === 'w2' ? { ...window, from } : window));
      const day = placements.map((one) => (one.window === 'w2' ? { ...one, from } : one));
      const story = day.find(({ window }) => window === 'w2')!;
      expect(reasonsFor({ ...EXAMPLE, windows }, day, story).others).toContainEqual(
        kept
          ? { idea: 'short-film', why: 'kept', window: 'w3' }
          : { idea: 'short-film', why: 'elsewhere', from: 15 * 60 },
      );
    }
  });

  it('says what keeps the others out: two hands, no grown-up, no mark for the moment', () => {
    expect(at('w1').others).toContainEqual({ idea: 'paper-weave', why: 'rule', rules: ['H4'] });
    expect(at('w2').others).toContainEqual({ idea: 'ceiling-map', why: 'rule', rules: ['H5'] });
    expect(at('w3').others).toContainEqual({ idea: 'sticker-street', why: 'rule', rules: ['H10'] });
  });

  it('loses five points in the morning and three in the evening with the only idea left', () => {
    // which-would-you is worth 2 in W1 instead of 7, and 4 in W4 instead of 7
    expect(at('w1').others).toContainEqual({ idea: 'which-would-you', why: 'fewer-points', points: 5 });
    expect(at('w4').others).toContainEqual({ idea: 'which-would-you', why: 'fewer-points', points: 3 });
  });
});

describe('a question that cannot be answered', () => {
  const { problem, plan } = DAYS[0]!;
  it('throws with the place: a placement of another plan, a window of another day', () => {
    const [first] = plan.placements;
    expect(() => reasonsFor(problem, plan.placements, { ...first!, from: 1 })).toThrow(
      /placement: one of the plan/,
    );
    expect(() => reasonsFor({ ...problem, windows: [] }, plan.placements, first!)).toThrow(
      /window: one of the day/,
    );
  });
});
