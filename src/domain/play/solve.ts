/** From a compiled day to its best plan: prices, plans on the way, then cases for what is left between them. */
import { boardOf, leaveOnly, moreThan, NEVER, pointsOf, POINT, type Square } from './board.ts';
import { solveAt } from './bound.ts';
import { branch } from './branch.ts';
import { EMPTY_MOMENT, type Model } from './model.ts';
import { narrow } from './narrow.ts';
import { improveNearby, type Draft } from './nearby.ts';
import { improvePrices } from './prices.ts';
import { search, type Found, type Step } from './search.ts';
import { shareDay } from './share.ts';

/**
 * How much work a plan may cost: steps that move prices, parts of plans that grow side by side, and parts in all. A step
 * of the prices counts as some parts.
 */
export interface Effort {
  steps: number;
  tries: number;
  nodes: number;
}
export const EFFORT: Effort = { steps: 400, tries: 30, nodes: 120_000 };
/** Just enough that every part of the search has run: the engine then knows it, and the next day takes far less. */
export const WARM_UP: Effort = { steps: 60, tries: 10, nodes: 1500 };

/** Steps of the prices and parts side by side for a plan to be shown while a better one is looked for. */
const EARLY_STEPS = 8;
const EARLY_WIDTH = 6;
/** Steps between two looks for a plan, and how far below the best bound the prices aim, in points. */
const EVERY = 30;
const AIM = 6;
/** What a step of the prices in a case counts for, and a case at least. */
const STEP_NODES = 10;
const CASE_NODES = 1000;
/** How much may go into better plans near one that a look found, and near each of the two best in the end. */
const LOOK = 200;
const NEARBY = 8_000;
/** Parts side by side for a plan put together from others. */
const MERGE_WIDTH = 200;
/** The same for a plan with fewer minutes of a grown-up: steps, between two looks, for a look, and how far the prices aim. */
const MINUTE_STEPS = 80;
const MINUTE_EVERY = 20;
const MINUTE_LOOK = 2000;
const MINUTE_AIM = 0.1;
/** Cases at most, and how sure what is settled first may be; another order finds what the one before does not reach. */
const ORDERS = [
  [16, 0.9],
  [30, 0.6],
  [30, 0.4],
  [60, 0.3],
] as const;

export interface Outcome {
  steps: readonly Step[];
  score: number;
  /** No plan is worth more whole points; one that fills a moment more than this one counts EMPTY_MOMENT more. */
  bound: number;
  nodes: number;
}

/**
 * The best steps found for a day, with a bound that no plan exceeds; of equals the ones that move least, then ask least of a
 * grown-up, then need the fewest things, then the first by starts and ideas. On a day of few stages that holds among all its
 * plans, on a longer one it is looked for and mostly found. `first` is told a good plan early.
 */
export function solve(model: Model, effort: Effort, first?: (found: Outcome) => void): Outcome {
  const board = boardOf(model);
  const squares = board.squares.slice();
  let best: Draft = { steps: [], score: NEVER };
  let nodes = 0;
  const take = <F extends Omit<Found, 'whole'>>(found: F) => {
    const { steps, score } = found;
    nodes += found.nodes;
    if (steps && score > best.score) best = { steps, score };
    return found;
  };
  const width = () => {
    const stages = 4 * model.stages.length + 1;
    return Math.max(1, Math.min(effort.tries, Math.floor((effort.nodes - nodes) / stages)));
  };
  /** What was tried to better, and what came of it. */
  const tried: Step[] = [];
  const improve = (start: Draft, bound: number, most: number, by = POINT) => {
    const near = take(improveNearby(board, start, bound, Math.min(most, effort.nodes - nodes), by));
    tried.push(...start.steps, ...near.steps);
    return near;
  };
  /** Whether something better can be put together from all that was tried. */
  const merge = (by: number) => {
    board.squares = squares.slice();
    leaveOnly(board, tried);
    const goal = moreThan(best.score, by);
    if (nodes > effort.nodes || solveAt(board) < goal) return undefined;
    narrow(board, goal);
    return take(search(board, goal, MERGE_WIDTH)).steps;
  };
  const outcome = ({ steps, score }: Draft, bound: number): Outcome => {
    // a moment for which nothing is left is reported, not scored
    const missing = model.stages.filter(
      ({ emptyCost }, s) => emptyCost === EMPTY_MOMENT && !steps.some(({ stage }) => stage === s),
    );
    // of a plan that fills more moments it is a bound all the more: each counts for more points than a day has
    const unscored = EMPTY_MOMENT * missing.length;
    return {
      steps: fewestThings(model, squares, steps),
      score: pointsOf(score) + unscored,
      bound: pointsOf(Math.max(bound, score)) + unscored,
      nodes,
    };
  };
  if (first) {
    const early = improvePrices(board, {
      steps: EARLY_STEPS,
      every: 0,
      goal: () => NEVER,
      aim: () => AIM * POINT,
    });
    const { steps, score, nodes: spent } = search(board, NEVER, EARLY_WIDTH);
    nodes = early.taken + spent;
    if (steps) first(outcome({ steps, score }, early.bound));
    nodes = 0;
    // the whole search begins as if nothing had been shown
    board.price.fill(0);
    board.often.fill(0);
  }
  let shared = best;
  /**
   * What a walk of the prices looks for, in steps of so many grains. On the way it looks for plans: shares the day out at
   * the prices there are, and betters what comes of it.
   */
  const look = (by: number, most: number) => {
    let enough = NEVER;
    return (bound: number, step: number) => {
      // prices say little before they have moved
      if (step > 1) {
        if (by > 1) take(search(board, moreThan(best.score, by), width()));
        const { steps, score } = take(shareDay(board, enough));
        if (steps) {
          enough = score + 1;
          shared = improve({ steps, score }, bound, most, by);
          solveAt(board);
        }
      }
      return moreThan(best.score, by);
    };
  };
  let { bound } = improvePrices(board, {
    steps: effort.steps,
    every: EVERY,
    goal: look(POINT, LOOK),
    aim: () => AIM * POINT,
  });
  if (best.score === NEVER) take(search(board, NEVER, width()));
  const prices = board.price.slice();
  const afresh = () => {
    board.price.set(prices);
    board.forced.fill(0);
    board.squares = squares.slice();
  };
  bound = moreThan(bound, POINT) - POINT;
  for (const start of [shared, best])
    if (bound > best.score && start.steps.length) improve(start, bound, NEARBY);
  while (bound > best.score && merge(POINT)) improve(best, bound, NEARBY);
  /** Whether it is certain that no plan is worth so much; where one is found, it is the best so far. */
  const ruledOut = (goal: number, cases: number, most: number) => {
    const left = Math.max(0, Math.floor((effort.nodes - nodes) / CASE_NODES));
    afresh();
    const { steps, whole } = take(branch(board, goal, Math.min(cases, left), most, STEP_NODES));
    return whole && !steps;
  };
  for (const [cases, most] of ORDERS)
    while (bound > best.score && ruledOut(bound, cases, most)) bound -= POINT;
  // points once settled, the minutes of a grown-up: the prices walk on towards them
  afresh();
  improvePrices(board, {
    steps: MINUTE_STEPS,
    every: MINUTE_EVERY,
    goal: look(1, MINUTE_LOOK),
    aim: () => MINUTE_AIM * POINT,
  });
  tried.push(...best.steps);
  while (merge(1));
  // of plans worth the same, the one that asks least of a grown-up and needs the fewest things
  afresh();
  return outcome(improve(best, Infinity, Infinity, 0), bound);
}

/**
 * The same steps, but wherever another idea of the same sort does just as well, the one with which the plan needs the fewest
 * things; of equals the first. Two that fill a moment stay.
 */
function fewestThings({ ideas, screen }: Model, squares: readonly Square[], steps: readonly Step[]): Step[] {
  const plan = [...steps];
  steps.forEach((step, n) => {
    const { puts, sortUnits } = squares[step.stage]!;
    const { one, two, sort, worth } = puts;
    const others = plan.flatMap(({ idea }, other) => (other === n ? [] : [idea]));
    const rank = (at: number) =>
      1e4 * new Set([...others, at].flatMap((idea) => ideas[idea]!.things)).size + at;
    const alike = (at: number, p: number) =>
      two[p]! < 0 && sortUnits[sort[p]!] === step.units && screen[at] === screen[step.idea];
    const now = one.findIndex((at, p) => at === step.idea && alike(at, p));
    one.forEach((at, p) => {
      if (sort[p] !== sort[now] || worth[p] !== worth[now] || !alike(at, p) || others.includes(at)) return;
      if (rank(at) < rank(plan[n]!.idea)) plan[n] = { ...step, idea: at };
    });
  });
  return plan;
}
