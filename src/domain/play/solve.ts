/** From a compiled day to its best plan: prices, plans on the way, then cases for what is left between them. */
import { boardOf, leave, LIMIT, moreThan, NEVER, pointsOf, POINT } from './board.ts';
import { solveAt } from './bound.ts';
import { branch } from './branch.ts';
import { EMPTY_MOMENT, type Model } from './model.ts';
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
  /** Ends once the points are settled: of plans worth the same any may come. */
  pointsAlone?: boolean;
}
export const EFFORT: Effort = { steps: 400, tries: 20, nodes: 140_000 };
/** Just enough that every part of the search has run: the engine then knows it, and the next day takes far less. */
export const WARM_UP: Effort = { steps: 60, tries: 10, nodes: 1500 };

/** Steps of the prices and parts side by side for a plan to be shown while a better one is looked for. */
const EARLY_STEPS = 8;
const EARLY_WIDTH = 6;
/** Steps between two looks for a plan, and how far below the best bound the prices aim, in points. */
const EVERY = 50;
const AIM = 6;
/** What a step of the prices in a case counts for, and a case at least. */
const STEP_NODES = 10;
const CASE_NODES = 1000;
/** How much may go into better plans near one that a look found, and near each of the two best, or near one less a thing. */
const LOOK = 200;
const NEARBY = 8_000;
/**
 * Cases at most, and how sure what is settled first may be; another order finds what the one before does not reach. Those
 * from the last two on are for what is worth more by little or nothing: for points the first of them, for ties both.
 */
const ORDERS = [
  [30, 0.4],
  [20, 0.7],
  [30, 0.6],
  [60, 0.3],
] as const;
const LAST = 2;

export interface Outcome {
  steps: readonly Step[];
  score: number;
  /** No plan is worth more whole points; one that fills a moment more than this one counts EMPTY_MOMENT more. */
  bound: number;
  /** No plan worth as much asks less of a grown-up, for certain. */
  least: boolean;
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
    if (steps && score >= best.score) best = { steps, score };
    return found;
  };
  const width = () => {
    const stages = 4 * model.stages.length + 1;
    return Math.max(1, Math.min(effort.tries, Math.floor((effort.nodes - nodes) / stages)));
  };
  const improve = (start: Draft, bound: number, most: number, by = POINT) =>
    take(improveNearby(board, start, bound, Math.min(most, effort.nodes - nodes), by));
  const outcome = ({ steps, score }: Draft, bound: number, least = false): Outcome => {
    // a moment for which nothing is left is reported, not scored
    const missing = model.stages.filter(
      ({ emptyCost }, s) => emptyCost === EMPTY_MOMENT && !steps.some(({ stage }) => stage === s),
    );
    // of a plan that fills more moments it is a bound all the more: each counts for more points than a day has
    const unscored = EMPTY_MOMENT * missing.length;
    return {
      steps,
      score: pointsOf(score) + unscored,
      bound: pointsOf(Math.max(bound, score)) + unscored,
      least,
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
  let enough = NEVER;
  /** What is looked for after a plan: one that is worth a point more. */
  const next = ({ score }: { score: number }) => moreThan(score, POINT);
  let { bound } = improvePrices(board, {
    steps: effort.steps,
    every: EVERY,
    goal: (bound, step) => {
      // prices say little before they have moved; then the day is shared out at them, and what comes of it is bettered
      if (step > 1) {
        take(search(board, next(best), width()));
        const { steps, score } = take(shareDay(board, enough));
        if (steps) {
          enough = score + 1;
          shared = improve({ steps, score }, bound, LOOK);
          solveAt(board);
        }
      }
      return next(best);
    },
    aim: () => AIM * POINT,
  });
  if (best.score === NEVER) take(search(board, NEVER, width()));
  const prices = board.price.slice();
  let whole = squares;
  const afresh = () => {
    board.price.set(prices);
    board.forced.fill(0);
    board.squares = whole.slice();
  };
  bound = next({ score: bound }) - POINT;
  for (const start of [shared, best])
    if (bound > best.score && start.steps.length) improve(start, bound, NEARBY);
  /** Looks by cases for plans worth the goal. */
  const settle = (goal: number, cases: number, most: number, next?: (found: Draft) => number) => {
    const left = Math.max(0, Math.floor((effort.nodes - nodes) / CASE_NODES));
    afresh();
    return take(branch(board, goal, Math.min(cases, left), most, STEP_NODES, next));
  };
  for (const [cases, most] of ORDERS.slice(0, LAST))
    while (bound > best.score) {
      const { steps, whole } = settle(bound, cases, most);
      if (steps || !whole) break;
      bound -= POINT;
    }
  // what was not ruled out may lie far above the best plan: a last look for any better one
  if (bound > next(best))
    settle(next(best), ...ORDERS[LAST], (found) => (next(found) < bound ? next(found) : Infinity));
  if (effort.pointsAlone) return outcome(best, bound);
  // points once settled, as many with fewer minutes of a grown-up: the limit on these falls until no plan is left
  const limit = model.ideas.length + LIMIT;
  const fewer = ({ steps, score }: Draft) => {
    let units = -1;
    for (const step of steps) if (model.grownUp[step.idea]) units += step.units;
    board.supply[limit] = units;
    return score + 1;
  };
  let least = false;
  for (const [cases, most] of ORDERS.slice(LAST)) least ||= settle(fewer(best), cases, most, fewer).whole;
  board.supply[limit]!++;
  // then with fewer things: each is left out in turn, where those that are left do for a plan that is worth as much
  const thingsOf = ({ idea }: Step) => model.ideas[idea]!.things;
  let among = squares;
  for (const thing of ['', ...new Set(best.steps.flatMap(thingsOf))]) {
    const left = new Set(best.steps.flatMap(thingsOf));
    if (!left.delete(thing) && thing) continue;
    board.squares = among.slice();
    among.forEach((_, s) =>
      leave(board, s, (idea) => model.ideas[idea]!.things.every((one) => left.has(one))),
    );
    whole = board.squares;
    prices.set(board.price);
    if (!settle(best.score, 1, ORDERS[LAST][1]).whole && thing) {
      afresh();
      // a step below what is looked for, so that a plan without the thing is one that is better
      const near = improve({ ...best, score: best.score - 1 }, best.score, NEARBY, 1);
      if (near.score < best.score) settle(best.score, ...ORDERS[LAST]);
    }
    // at first nothing is left out; what no plan worth as much can hold, and what the last case was without, goes for good
    if (!thing) among = board.squares;
  }
  whole = squares;
  afresh();
  // then the first by starts and ideas
  return outcome(improve(best, Infinity, Infinity, 0), bound, least);
}
