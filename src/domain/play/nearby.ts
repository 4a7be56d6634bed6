/**
 * Better plans near a good one: a few stages are emptied and planned anew, exactly, while the rest of the day stays as it
 * is.
 */
import { relaxedOf, solveRelaxed, staysFree, type Relaxed } from './bound.ts';
import type { Filling, Model, Stage } from './model.ts';
import { NOT_FIRST } from './objective.ts';
import type { Draft, Put, Worths } from './polish.ts';
import { search, type Step } from './search.ts';

const unitsOf = (puts: readonly Put[]) => puts.reduce((sum, { units }) => sum + units, 0);

/** A stage in which everything stays as the draft has it. */
function standing(model: Model, worths: Worths, s: number, puts: readonly Put[]): Stage {
  const stage = model.stages[s]!;
  if (!stage.open) {
    const same = ({ ideas, units }: Filling) =>
      ideas.length === puts.length && puts.every((put, n) => put.idea === ideas[n] && put.units === units[n]);
    return { ...stage, fillings: stage.fillings.filter(same) };
  }
  let worth = puts.length ? 0 : -stage.emptyCost;
  puts.forEach(({ idea, units }, n) => {
    worth += worths.base[s]![idea]!;
    worth += (model.terms.minutes ? units >> 1 : 0) - (n ? NOT_FIRST : stage.firstCost);
  });
  const filling: Filling = {
    ideas: puts.map(({ idea }) => idea),
    units: puts.map(({ units }) => units),
    worth,
  };
  const keeps = staysFree(stage, puts.length, unitsOf(puts));
  return { ...stage, open: false, emptyCost: 0, keeps, candidates: [], fillings: [filling] };
}

/** The model in which only `free` stages can change. */
function around(model: Model, worths: Worths, draft: Draft, free: ReadonlySet<number>): Model {
  const taken = new Uint8Array(model.ideas.length);
  const left = [...model.left];
  let { cap, screenCap } = model;
  draft.forEach((puts, s) => {
    if (free.has(s)) return;
    for (const { idea, units } of puts) {
      taken[idea] = 1;
      if (!model.stages[s]!.open) continue;
      cap -= units;
      left[model.stages[s]!.window]!--;
      if (model.screen[idea]) screenCap -= units;
    }
  });
  const stages = model.stages.map((stage, s): Stage => {
    if (!free.has(s)) return standing(model, worths, s, draft[s]!);
    return {
      ...stage,
      candidates: stage.candidates.filter(({ idea }) => !taken[idea]),
      fillings: stage.fillings.filter(({ ideas }) => !ideas.some((idea) => taken[idea])),
    };
  });
  return { ...model, stages, cap, screenCap, left, twin: model.twin.map(() => -1) };
}

function draftOf(model: Model, steps: readonly Step[]): Draft {
  const draft: Draft = model.stages.map(() => []);
  for (const { stage, idea, units } of steps) draft[stage]!.push({ idea, units });
  return draft;
}

/** Stages to empty together: neighbours first, then further and further apart. */
function* groupsOf(stages: number): Generator<ReadonlySet<number>> {
  for (let apart = 1; apart * 2 < stages; apart++)
    for (let first = 0; first + 2 * apart < stages; first++)
      yield new Set([first, first + apart, first + 2 * apart]);
}

/**
 * Empties three stages at a time and plans them anew until no group gives more, the goal is met or the nodes are spent.
 *
 * Shape: a draft that breaks no rule and its worth -> a better one, or the same; `nodes` spent.
 */
export function improveNearby(
  model: Model,
  relaxed: Relaxed,
  worths: Worths,
  start: { draft: Draft; worth: number },
  goal: number,
  nodes: number,
): { draft: Draft; worth: number; nodes: number } {
  let { draft, worth } = start;
  let spent = 0;
  // after a success the same group is worth nothing, the others are
  for (let quiet = false; !quiet && worth < goal && spent < nodes;) {
    quiet = true;
    for (const free of groupsOf(model.stages.length)) {
      if (worth >= goal || spent >= nodes) break;
      const part = around(model, worths, draft, free);
      const prices = relaxedOf(part);
      prices.idea.set(relaxed.idea);
      for (const [s, puts] of draft.entries())
        if (!free.has(s)) for (const { idea } of puts) prices.idea[idea] = 0;
      prices.screen = relaxed.screen;
      prices.grownUp = relaxed.grownUp;
      solveRelaxed(part, prices);
      const found = search(part, prices, worth, NODES_EACH);
      spent += found.nodes + 1;
      if (!found.steps.length) continue;
      draft = draftOf(model, found.steps);
      worth = found.score;
      quiet = false;
    }
  }
  return { draft, worth, nodes: spent };
}
const NODES_EACH = 200;
