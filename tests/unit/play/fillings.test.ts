// Every way to fill a hard moment, beside all that the checker lets through.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import { needsGrownUp } from '#domain/play/feasible.ts';
import { fillingsOf, modelOf } from '#domain/play/model.ts';
import { scoreOf } from '#domain/play/objective.ts';
import type { DayProblem, HardMoment, Idea, Placement } from '#domain/play/types.ts';
import { draws, madeUpDay, madeUpIdeas } from '../../helpers/play-days.ts';
import { cases } from '../../helpers/same-cases.ts';

/** A moment alone, some of whose ideas fit; lights-out is near. */
function bed(seed: number): [DayProblem, HardMoment] {
  const { oneOf, maybe } = draws(seed);
  const ideas = madeUpIdeas(7, seed).map((idea): Idea => ({
    ...idea,
    ...{ ages: [1, 17], wipe: 'yes', needs: [], things: [], tray: false, position: 'both' },
    minutes: [idea.minutes[0], idea.minutes[0] + oneOf([0, 5, 10])],
    moments: maybe(0.8) ? ['needle', 'bandage'] : ['needle'],
  }));
  const day = madeUpDay(seed, { windows: 1, hard: 1, ideas });
  const moment = { ...day.windows[0]!, minutes: oneOf([5, 10, 15, 20]), grownUp: maybe(0.8) } as HardMoment;
  const lightsOut = moment.from + moment.minutes + oneOf([0, 50, 53, 55, 60, 300]);
  const terms = { novelty: true, wish: true, minutes: true, day: false };
  const child = { ...day.child, never: [], ageMonths: oneOf([40, 80, 160]) };
  return [{ ...day, child, lightsOut, terms, windows: [moment], events: [] }, moment];
}

/** All that the checker lets through: one idea, or two that follow one another. */
function allWays(problem: DayProblem, moment: HardMoment): Placement[][] {
  const put = (idea: Idea, from: number, minutes: number) => ({
    idea: idea.id,
    window: moment.id,
    from,
    minutes,
  });
  const ways = problem.ideas.flatMap((a) => [
    [put(a, moment.from, moment.minutes)],
    ...problem.ideas.flatMap((b) =>
      [5, 10, 15].map((minutes) => [
        put(a, moment.from, minutes),
        put(b, moment.from + minutes, moment.minutes - minutes),
      ]),
    ),
  ]);
  return ways.filter(
    (way) => way.every(({ minutes }) => minutes > 0) && !checkPlan(problem, { placements: way }).length,
  );
}

it('each way that breaks no rule is there with its worth, one for each two ideas, asking least of a grown-up', () => {
  let [ones, twos, held] = [0, 0, 0];
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.nat(), (seed, pick) => {
      const [problem, moment] = bed(seed);
      const ways = allWays(problem, moment);
      const nameOf = (way: Placement[]) => way.map(({ idea }) => idea).join();
      const grownUp = (way: Placement[]) =>
        way.reduce((sum, { idea, minutes }) => {
          const whole = problem.ideas.find(({ id }) => id === idea)!;
          return sum + (needsGrownUp(whole, problem.child.ageMonths) ? minutes : 0);
        }, 0);
      const wayOf = (filling: { ideas: readonly number[]; units: readonly number[] }) => {
        let from = moment.from;
        return filling.ideas.map((index, n): Placement => {
          const minutes = filling.units[n]! * 5;
          from += minutes;
          return { idea: problem.ideas[index]!.id, window: moment.id, from: from - minutes, minutes };
        });
      };
      const fillings = fillingsOf(problem, problem.ideas, moment);
      const found = fillings.map(wayOf);
      expect(found.map(nameOf).sort()).toEqual([...new Set(ways.map(nameOf))].sort());
      fillings.forEach(({ worth }, n) => {
        const way = found[n]!;
        expect(worth).toBe(scoreOf(problem, way));
        expect(ways).toContainEqual(way);
        const alike = ways.filter((other) => nameOf(other) === nameOf(way));
        expect(grownUp(way)).toBe(Math.min(...alike.map(grownUp)));
        if (way.length > 1) twos++;
        else ones++;
      });
      // with one of them pinned, all ways that hold the pin, whatever their lengths
      const pin = ways[pick % (ways.length || 1)]?.[pick % 2];
      if (!pin) return;
      held++;
      const holding = ways.filter((way) => way.some((one) => JSON.stringify(one) === JSON.stringify(pin)));
      const pinned = fillingsOf(problem, problem.ideas, moment, [pin]).map(wayOf);
      const byText = (list: Placement[][]) => list.map((way) => JSON.stringify(way)).sort();
      expect(byText(pinned)).toEqual(byText(holding));
    }),
    { numRuns: cases(300) },
  );
  expect(ones).toBeGreaterThan(cases(300) / 4);
  expect(twos).toBeGreaterThan(cases(300) / 4);
  expect(held).toBeGreaterThan(cases(300) / 8);
});

it('two of one kind, and what is messy before a meal, lose points in a moment as in the day', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: -2, max: 5 }), (seed, later) => {
      const [made, moment] = bed(seed);
      const { terms: _, ...day } = made;
      const meal = moment.from + moment.minutes + 5 * later;
      const problem = {
        ...day,
        ideas: day.ideas.map((idea, n): Idea => ({ ...idea, mess: n % 2 ? 1 : 0 })),
        events: [meal],
      };
      const { stages, ideas } = modelOf(problem);
      const withoutDay = modelOf({ ...problem, terms: made.terms! }).stages[0]!.fillings;
      stages[0]!.fillings.forEach(({ ideas: used, units, worth }, at) => {
        let from = moment.from;
        const way = used.map((index, n): Placement => {
          from += units[n]! * 5;
          return {
            idea: ideas[index]!.id,
            window: moment.id,
            from: from - units[n]! * 5,
            minutes: units[n]! * 5,
          };
        });
        const limits = { screenMinutes: 600, grownUpMinutes: 600 };
        const whole = scoreOf({ ...problem, limits }, way);
        const bare = scoreOf({ ...problem, limits, terms: made.terms! }, way);
        const families = scoreOf(
          { ...problem, limits, events: [], ideas: ideas.map((idea) => ({ ...idea, mess: 0 })) },
          way,
        );
        const sameKind = way.length > 1 && new Set(used.map((index) => ideas[index]!.kind)).size === 1;
        // the day's term is the families met less what is lost, and the families are met by every order
        const lost = withoutDay[at]!.worth - worth;
        expect(bare - whole + (families - bare) + (sameKind ? 2 : 0)).toBe(lost);
      });
    }),
    { numRuns: cases(100) },
  );
});
