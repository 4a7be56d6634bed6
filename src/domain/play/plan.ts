/** A day of play for one bed: the best plan there is, proven, or a good one and by how much a better could beat it. */
import { GRID, needsGrownUp } from './feasible.ts';
import { explained } from './impossible.ts';
import { modelOf, type Model } from './model.ts';
import type { Step } from './search.ts';
import { EFFORT, solve, type Effort, type Outcome } from './solve.ts';
import type { DayProblem, FreeTime, Impossible, Placement, Plan, PlayWindow } from './types.ts';
import { withPins, type Pinned } from './pins.ts';
import { soundOf } from './vet.ts';

const placementsOf = ({ windows }: DayProblem, { ideas, stages }: Model, steps: readonly Step[]) =>
  steps.map(({ stage, idea, units, from }): Placement => ({
    idea: ideas[idea]!.id,
    window: windows[stages[stage]!.window]!.id,
    from,
    minutes: units * GRID,
  }));

/** What is left of the open windows once the plan stands in them. */
export function freeTimeOf(windows: readonly PlayWindow[], placements: readonly Placement[]): FreeTime[] {
  const free: FreeTime[] = [];
  for (const window of windows) {
    if (window.kind === 'hard') continue;
    let from = window.from;
    const add = (until: number) => {
      if (until > from) free.push({ window: window.id, from, minutes: until - from });
    };
    for (const placement of placements) {
      if (placement.window !== window.id) continue;
      add(placement.from);
      from = placement.from + placement.minutes;
    }
    add(window.from + window.minutes);
  }
  return free;
}

/**
 * Plans a day of play: the best idea kept for the hardest moment, nothing that the bed, the body or the ward forbids.
 *
 * Shape: a problem -> a plan in order of time, or the hard moments for which nothing fits, with the plan of the rest.
 * Units: whole points; minutes since the ward's midnight, in fives.
 * Errors: none for what a person can mistype: it is left out and named in `faults`; a pin that breaks a rule is in
 * `refused`. The same problem gives the same plan on every engine; nodes, never a clock, end the search.
 * Source: design 4-play, 5.4 (our proposal).
 */
export const planDay = (problem: DayProblem, effort: Effort = EFFORT): Plan | Impossible =>
  planWith(problem, [], effort);

/** The same, with a wish that as many of `stay` as possible remain in their windows. */
export function planWith(
  problem: DayProblem,
  stay: readonly Placement[],
  effort: Effort = EFFORT,
): Plan | Impossible {
  const { problem: sound, faults } = soundOf(problem);
  const result = explained(sound, planSound(sound, stay, effort));
  return result.kind === 'plan' ? { ...result, faults } : { ...result, rest: { ...result.rest, faults } };
}

/**
 * The same for a problem that is known to be sound, as those are that a bed's day gives; `first` is told a good plan early,
 * where the best takes longer. What would open a moment is left to `explained`.
 */
export function planSound(
  problem: DayProblem,
  stay: readonly Placement[],
  effort: Effort = EFFORT,
  first?: (plan: Plan | Impossible) => void,
): Plan | Impossible {
  const pinned = withPins(problem);
  const model = modelOf(pinned.problem, stay);
  const told = first && ((found: Outcome) => first(planOf(pinned, model, found)));
  const found = solve(model, effort, told);
  // two moments may each be possible with their pins, and need the same idea for the rest
  const { pins } = pinned.problem;
  const lost = pins.filter((pin) => !found.steps.some(({ from }) => from === pin.from));
  if (!lost.length) return planOf(pinned, model, found);
  const kept = { ...problem, pins: problem.pins.filter((pin) => !lost.includes(pin)) };
  const result = planSound(kept, stay, effort);
  const plan = result.kind === 'plan' ? result : result.rest;
  const all = {
    ...plan,
    refused: [...plan.refused, ...lost.map((pin) => ({ pin, rules: ['H2'] as const }))],
  };
  return result.kind === 'plan' ? all : { ...result, rest: all };
}

function planOf({ problem, refused }: Pinned, model: Model, found: Outcome): Plan | Impossible {
  const placements = placementsOf(problem, model, found.steps);
  const ideas = new Map(problem.ideas.map((idea) => [idea.id, idea]));
  const plan: Plan = {
    kind: 'plan',
    placements,
    score: found.score,
    bound: found.bound,
    free: freeTimeOf(problem.windows, placements),
    grownUpMinutes: placements.reduce(
      (sum, { idea, minutes }) =>
        sum + (needsGrownUp(ideas.get(idea)!, problem.child.ageMonths) ? minutes : 0),
      0,
    ),
    refused,
    faults: [],
    leastGrownUp: found.least,
    nodes: found.nodes,
  };
  const empty = problem.windows.filter(
    ({ id, kind }) => kind === 'hard' && !placements.some(({ window }) => window === id),
  );
  if (!empty.length) return plan;
  return {
    kind: 'impossible',
    moments: empty.map((window) => ({ window: window.id, relaxations: [] })),
    rest: plan,
  };
}
