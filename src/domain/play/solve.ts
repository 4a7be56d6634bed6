/** From a compiled day to its best plan: prices, plans on the way, then cases for what is left between them. */
import { boardOf, grainsOf, leaveOnly, NEVER, pointsOf, POINT, type Square } from './board.ts';
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
const LOOK = 1000;
const NEARBY = 8_000;
/** Parts side by side for a plan put together from others. */
const MERGE_WIDTH = 200;
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
 * plans, on a longer one among those that differ in one stage. `first` is told a good plan early.
 */
export function solve(model: Model, effort: Effort, first?: (found: Outcome) => void): Outcome {
  const board = boardOf(model);
  const squares = board.squares.slice();
  let best: Draft = { steps: [], score: NEVER };
  let nodes = 0;
  const take = (found: Found) => {
    nodes += found.nodes;
    if (found.steps && found.score > best.score) best = { steps: found.steps, score: found.score };
    return found;
  };
  const points = () => pointsOf(best.score);
  const width = () => {
    const stages = 4 * model.stages.length + 1;
    return Math.max(1, Math.min(effort.tries, Math.floor((effort.nodes - nodes) / stages)));
  };
  /** What was tried to better, and what came of it. */
  const tried: Step[] = [];
  const improve = (start: Draft, bound: number, most: number) => {
    const near = improveNearby(board, start, grainsOf(bound), Math.min(most, effort.nodes - nodes));
    take({ ...near, whole: false });
    tried.push(...start.steps, ...near.steps);
    return near;
  };
  /** Whether something better can be put together from all that was tried. */
  const merge = () => {
    board.squares = squares.slice();
    leaveOnly(board, tried);
    const goal = grainsOf(points() + 1);
    if (solveAt(board) < goal) return false;
    narrow(board, goal);
    return take(search(board, goal, MERGE_WIDTH)).steps !== undefined;
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
      bound: bound + unscored,
      nodes,
    };
  };
  if (first) {
    const { bound, taken } = improvePrices(board, {
      ...{ steps: EARLY_STEPS, every: 0, goal: () => NEVER, aim: () => AIM * POINT },
    });
    const { steps, score, nodes: spent } = search(board, NEVER, EARLY_WIDTH);
    nodes = taken + spent;
    if (steps) first(outcome({ steps, score }, pointsOf(bound)));
    nodes = 0;
    // the whole search begins as if nothing had been shown
    board.price.fill(0);
    board.often.fill(0);
  }
  let shared = best;
  let enough = NEVER;
  let looks = 0;
  const walk = improvePrices(board, {
    steps: effort.steps,
    every: EVERY,
    goal: (bound) => {
      // prices say little before they have moved
      if (looks++) {
        take(search(board, grainsOf(points() + 1), width()));
        const { steps, score, nodes: spent } = shareDay(board, enough);
        nodes += spent;
        if (steps) {
          enough = score + 1;
          shared = improve({ steps, score }, pointsOf(bound), LOOK);
          solveAt(board);
        }
      }
      return grainsOf(points() + 1);
    },
    aim: () => AIM * POINT,
  });
  if (best.score === NEVER) take(search(board, NEVER, width()));
  const prices = board.price.slice();
  const afresh = () => {
    board.price.set(prices);
    board.forced.fill(0);
    board.squares = squares.slice();
  };
  let bound = Math.max(points(), pointsOf(walk.bound));
  for (const start of [shared, best])
    if (bound > points() && start.steps.length) improve(start, bound, NEARBY);
  while (bound > points() && merge()) improve(best, bound, NEARBY);
  /** Whether it is certain that no plan is worth so much; where one is found, it is the best so far. */
  const ruledOut = (goal: number, cases: number, most: number) => {
    const left = Math.floor((effort.nodes - nodes) / CASE_NODES);
    if (left < 1) return false;
    afresh();
    const { steps, whole } = take(branch(board, grainsOf(goal), Math.min(cases, left), most, STEP_NODES));
    return whole && !steps;
  };
  for (const [cases, most] of ORDERS) while (bound > points() && ruledOut(bound, cases, most)) bound--;
  // points once settled, the finer differences
  for (let more = true; more;) {
    afresh();
    solveAt(board);
    narrow(board, best.score + 1);
    more = take(search(board, best.score + 1, width())).steps !== undefined;
  }
  // of plans worth the same, the one that asks least of a grown-up and needs the fewest things
  afresh();
  const near = improveNearby(board, best, Infinity, effort.nodes - nodes, true);
  nodes += near.nodes;
  return outcome(near, bound);
}

/**
 * The same steps, but wherever another idea of the same sort does just as well, the one that adds the fewest things to those
 * the others need; of equals the first. Two that fill a moment stay.
 */
function fewestThings(
  { ideas, screen }: Model,
  squares: readonly Square[],
  steps: readonly Step[],
): readonly Step[] {
  const plan = [...steps];
  steps.forEach(({ stage, idea, units }, n) => {
    const { puts, sortUnits } = squares[stage]!;
    const { one, two, sort, worth } = puts;
    const others = plan.filter((_, other) => other !== n).map((step) => step.idea);
    const there = others.flatMap((other) => ideas[other]!.things);
    const rank = (at: number) =>
      1e4 * ideas[at]!.things.filter((thing) => !there.includes(thing)).length + at;
    const now = one.findIndex((at, p) => at === idea && two[p]! < 0 && sortUnits[sort[p]!] === units);
    one.forEach((at, p) => {
      if (two[p]! >= 0 || sort[p] !== sort[now] || worth[p] !== worth[now] || screen[at] !== screen[idea])
        return;
      if (!others.includes(at) && rank(at) < rank(plan[n]!.idea)) plan[n] = { ...plan[n]!, idea: at };
    });
  });
  return plan;
}
