/** From a compiled day to its best plan: prices, drafts, then the search for what is left between them. */
import { improvePrices, relaxedOf, type Relaxed } from './bound.ts';
import { GRID } from './feasible.ts';
import { improveNearby } from './nearby.ts';
import { STAYS, type Model } from './model.ts';
import { draftOn, polish, worthsOf, type Draft } from './polish.ts';
import { familyPoints, search, type Outcome, type Step } from './search.ts';

/** How much work a plan may cost: steps that move prices, drafts weighed at a time, and nodes of the search. */
export interface Effort {
  steps: number;
  tries: number;
  nodes: number;
}
export const EFFORT: Effort = { steps: 400, tries: 1_000, nodes: 20_000 };

const EPSILON = 1e-6;

function stepsOf(model: Model, draft: Draft): Step[] {
  return draft.flatMap((puts, stage) => {
    const { from, gap } = model.stages[stage]!;
    let at = from;
    return puts.map(({ idea, units }) => {
      const step = { stage, idea, units, from: at };
      at += (units + gap) * GRID;
      return step;
    });
  });
}

/** So many questions at most, one point apart; below them the search takes whatever is better. */
const MOST_GOALS = 12;

/**
 * Asks for the highest score first: is there a plan worth as much as the bound, or else one point less, and so on. Few
 * branches can promise that much, so each question is short; and the first plan found is proven best.
 */
function climbDown(model: Model, relaxed: Relaxed, start: Outcome, top: number, nodes: number): Outcome {
  let bound = top;
  let used = 0;
  const before = start.nodes;
  const floor = Math.max(Math.floor(start.score), top - MOST_GOALS);
  for (let goal = top; goal > floor; goal--) {
    const levels = goal - floor;
    const found = search(model, relaxed, goal - 1, Math.ceil((nodes - used) / levels), true);
    used += found.nodes;
    if (found.steps.length)
      return { ...found, bound: Math.max(bound, Math.floor(found.score + EPSILON)), nodes: before + used };
    // every branch was seen: nothing is worth that much
    if (found.bound < goal && bound === goal) bound = goal - 1;
  }
  const rest = floor > start.score ? search(model, relaxed, start.score, nodes) : undefined;
  if (rest?.steps.length)
    return {
      ...rest,
      bound: Math.max(Math.floor(rest.score + EPSILON), bound),
      nodes: before + used + rest.nodes,
    };
  return { ...start, bound: Math.max(bound, Math.floor(start.score + EPSILON)), nodes: before + used };
}

/**
 * The best steps found for a day, with a bound that no plan exceeds.
 *
 * Shape: with `stay`, points once settled, the rest of the nodes goes into moving less.
 */
export function solve(model: Model, effort: Effort, stay: boolean): Outcome {
  const relaxed = relaxedOf(model);
  const worths = worthsOf(model);
  let best: Outcome = { steps: [], score: -Infinity, bound: Infinity, nodes: 0 };
  let draft: Draft = [];
  const keep = (next: Draft, score: number) => {
    if (score <= best.score) return;
    draft = next;
    best = { ...best, steps: stepsOf(model, next), score };
  };
  const ceiling = improvePrices(model, relaxed, effort.steps, familyPoints(model), (slots) => {
    const next = draftOn(model, relaxed, worths, slots);
    keep(next, polish(model, worths, next, effort.tries));
    return Math.floor(best.score + EPSILON);
  });
  const top = Math.floor(ceiling + EPSILON);
  if (draft.length && best.score < top) {
    const start = { draft, worth: best.score };
    const near = improveNearby(model, relaxed, worths, start, top, Math.floor(effort.nodes * 0.8));
    keep(near.draft, near.worth);
    best.nodes += near.nodes;
  }
  best.bound = Math.max(top, Math.floor(best.score + EPSILON));
  if (best.score < best.bound) best = climbDown(model, relaxed, best, top, effort.nodes - best.nodes);
  if (!stay) return best;
  const calmer = search(model, relaxed, best.score, Math.max(0, effort.nodes - best.nodes), false, STAYS);
  if (calmer.steps.length) best = { ...best, steps: calmer.steps };
  return { ...best, nodes: best.nodes + calmer.nodes };
}
