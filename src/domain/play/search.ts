/**
 * Branch and bound over the stages of a day in order of time. A branch ends where its bound promises nothing better than
 * the best plan known. A count of nodes stops it, never a clock.
 */
import { completion, freeBudget, keptAfter, staysFree, type Relaxed } from './bound.ts';
import { GRID } from './feasible.ts';
import type { Filling, Model } from './model.ts';
import { FAMILY, grownUpCost, NOT_FIRST } from './objective.ts';
import { endingsAfter, isOrderOpen, leastLost, START, type Ending, type Item } from './order.ts';

/** One placement of a plan. */
export interface Step {
  stage: number;
  idea: number;
  units: number;
  from: number;
}
export interface Outcome {
  steps: readonly Step[];
  score: number;
  /** Nothing better than this was left unexplored. */
  bound: number;
  nodes: number;
}
/** A way to go on: one more placement, a filled moment, or the end of a stage with how the day then stands. */
interface Choice {
  items: readonly Item[];
  worth: number;
  bound: number;
  endings: readonly Ending[] | undefined;
}

const EPSILON = 1e-6;
export const bitsOf = (mask: number) => {
  let bits = 0;
  for (let rest = mask; rest; rest &= rest - 1) bits++;
  return bits;
};

/** Per stage the families that it or a later one could still meet. */
function familiesFrom(model: Model): number[] {
  const masks = [0];
  for (const stage of [...model.stages].reverse()) {
    let mask = masks[0]!;
    for (const { idea } of stage.candidates) mask |= model.family[idea]!;
    for (const { ideas } of stage.fillings) for (const idea of ideas) mask |= model.family[idea]!;
    masks.unshift(mask);
  }
  return masks;
}

/** Points that the families can bring at most. */
export const familyPoints = (model: Model) =>
  model.terms.day ? FAMILY * bitsOf(familiesFrom(model)[0]!) : 0;

/** The steps of a day whose stages all have their placements: back along the endings that lost least. */
function stepsTo(model: Model, last: Ending, stages: readonly number[]): Step[] {
  const steps: Step[] = [];
  let ending: Ending | undefined = last;
  for (let n = stages.length - 1; n >= 0 && ending; n--) {
    const stage = model.stages[stages[n]!]!;
    let at = stage.from;
    const here: Step[] = [];
    for (const { idea, units } of ending.order) {
      here.push({ stage: stages[n]!, idea, units, from: at });
      at += (units + stage.gap) * GRID;
    }
    steps.unshift(...here);
    ending = ending.before;
  }
  return steps;
}

/**
 * Looks for a plan worth more than `known`, guided by the prices in `relaxed`.
 *
 * Shape: `nodes` is the most branchings; with `firstOnly` it ends at the first better plan; `step` is the least difference
 * that counts, a whole point unless fractions are wanted.
 */
export function search(
  model: Model,
  relaxed: Relaxed,
  known: number,
  nodes: number,
  firstOnly = false,
  step = 1,
): Outcome {
  const { stages, terms } = model;
  const families = familiesFrom(model);
  const used = new Uint8Array(model.ideas.length);
  const left = [...model.left];
  /** Stages that hold something, in order: one ending was made for each. */
  const filled: number[] = [];
  let outcome: { steps: Step[]; score: number } = { steps: [], score: known };
  let count = 0;
  let open = -Infinity;
  let done = false;

  // what the placements so far add up to, order apart
  let worth = 0;
  let ideaPrices = relaxed.ideaTotal;
  let screen = 0;
  let grownUp = 0;
  let met = 0;

  const upper = (stage: number, rest: number, mask = 0) =>
    worth +
    rest +
    ideaPrices +
    relaxed.screen * (model.screenCap - screen) +
    (relaxed.grownUp * (freeBudget(model) - grownUp)) / GRID +
    (terms.day ? FAMILY * bitsOf(met | mask | families[stage]!) : 0);
  // what fractions count is only asked for once whole points are settled
  const hopeful = (bound: number) =>
    Math.floor(bound / step + EPSILON) > Math.floor(outcome.score / step + EPSILON);
  const allowed = (idea: number, also = -1) => {
    const twin = model.twin[idea]!;
    return !used[idea] && (twin < 0 || used[twin] === 1 || twin === also);
  };

  function finish(endings: readonly Ending[]) {
    const lost = leastLost(endings);
    const day = terms.day ? FAMILY * bitsOf(met) - grownUpCost(grownUp, model.budget) : 0;
    const score = worth - lost + day;
    if (!hopeful(score)) return;
    outcome = {
      steps: stepsTo(
        model,
        endings.find((ending) => ending.lost === lost)!,
        filled,
      ),
      score,
    };
    if (firstOnly) done = true;
  }

  /** Goes on with the choices one after the other, the most promising first. */
  function branch(stage: number, choices: Choice[], goOn: (choice: Choice) => void) {
    choices.sort((a, b) => b.bound - a.bound);
    for (const choice of choices) {
      if (done || !hopeful(choice.bound)) return;
      if (count >= nodes) {
        open = Math.max(open, choice.bound);
        return;
      }
      count++;
      const before = [worth, ideaPrices, screen, grownUp, met] as const;
      worth += choice.worth;
      for (const { idea, units } of choice.items) {
        used[idea] = 1;
        ideaPrices -= relaxed.idea[idea]!;
        if (stages[stage]!.open && model.screen[idea]) screen += units;
        if (model.grownUp[idea]) grownUp += units * GRID;
        met |= model.family[idea]!;
      }
      goOn(choice);
      for (const { idea } of choice.items) used[idea] = 0;
      [worth, ideaPrices, screen, grownUp, met] = before;
    }
  }

  function visit(s: number, capLeft: number, kept: number, endings: readonly Ending[]): void {
    const stage = stages[s];
    if (!stage) finish(endings);
    else if (stage.open) fill(s, [], 0, capLeft, kept, endings);
    else close(s, capLeft, kept, endings);
  }

  function close(s: number, capLeft: number, kept: number, endings: readonly Ending[]) {
    const stage = stages[s]!;
    const after = keptAfter(model, s, kept);
    if (after < 0) return;
    const rest = relaxed.rest[s + 1]![capLeft * 2 + after]!;
    const choices: Choice[] = [];
    for (const filling of stage.fillings) {
      const { ideas, units, worth: gain } = filling;
      if (!ideas.every((idea, n) => allowed(idea, ideas[1 - n]))) continue;
      const [prices, mask] = priceOf(filling);
      const hope = upper(s + 1, rest + gain - prices, mask);
      if (!hopeful(hope - leastLost(endings))) continue;
      const items = ideas.map((idea, n) => ({ idea, units: units[n]! }));
      const then = endingsAfter(model, stage, items, endings);
      const bound = hope - leastLost(then);
      if (hopeful(bound)) choices.push({ items, worth: gain, bound, endings: then });
    }
    const none = -stage.emptyCost;
    const bound = upper(s + 1, rest + none) - leastLost(endings);
    if (hopeful(bound)) choices.push({ items: [], worth: none, bound, endings });
    branch(s, choices, ({ items, endings: then }) => {
      if (items.length) filled.push(s);
      visit(s + 1, capLeft, after, then!);
      if (items.length) filled.pop();
    });
  }

  function priceOf({ ideas, units }: Filling): [number, number] {
    let prices = 0;
    let mask = 0;
    for (let n = 0; n < ideas.length; n++) {
      const idea = ideas[n]!;
      prices += relaxed.idea[idea]! + (model.grownUp[idea] ? relaxed.grownUp * units[n]! : 0);
      mask |= model.family[idea]!;
    }
    return [prices, mask];
  }

  function fill(
    s: number,
    items: readonly Item[],
    units: number,
    capLeft: number,
    kept: number,
    endings: readonly Ending[],
  ) {
    const stage = stages[s]!;
    const n = items.length;
    const choices: Choice[] = [];
    const lost = leastLost(endings);
    const after = keptAfter(model, s, kept || staysFree(stage, n, units) ? 1 : 0);
    if (after >= 0) {
      const closing = n ? 0 : -stage.emptyCost;
      const hope = upper(s + 1, closing + relaxed.rest[s + 1]![capLeft * 2 + after]!);
      if (hopeful(hope - lost)) {
        const then = endingsAfter(model, stage, items, endings);
        const bound = hope - leastLost(then);
        if (hopeful(bound)) choices.push({ items: [], worth: closing, bound, endings: then });
      }
    }
    if (n < stage.most && left[stage.window]! > 0) more(s, items, units, capLeft, kept, lost, choices);
    branch(s, choices, ({ items: [item], endings: then }) => {
      if (then) {
        if (n) filled.push(s);
        visit(s + 1, capLeft, after, then);
        if (n) filled.pop();
        return;
      }
      left[stage.window]!--;
      fill(s, [...items, item!], units + item!.units, capLeft - item!.units, kept, endings);
      left[stage.window]!++;
    });
  }

  /** One more placement in an open stage; where the order is open, ideas come in the order of their numbers. */
  function more(
    s: number,
    items: readonly Item[],
    units: number,
    capLeft: number,
    kept: number,
    lost: number,
    choices: Choice[],
  ) {
    const stage = stages[s]!;
    const n = items.length;
    const from = stage.from + GRID * (units + n);
    const place = n ? NOT_FIRST : stage.firstCost;
    const calmOnly = from <= stage.settleUntil;
    const after = isOrderOpen(stage) && n ? items[n - 1]!.idea : -1;
    for (const { idea, base, lengths } of stage.candidates) {
      if (idea <= after || !allowed(idea) || (calmOnly && model.ideas[idea]!.energy > 1)) continue;
      const perUnit = (model.screen[idea] ? relaxed.screen : 0) + (model.grownUp[idea] ? relaxed.grownUp : 0);
      for (const length of lengths) {
        if (units + length + n > stage.room || length > capLeft) break;
        if (model.screen[idea] && screen + length > model.screenCap) break;
        const gain = base + (terms.minutes ? length >> 1 : 0) - place;
        const rest = completion(model, relaxed, s, n + 1, units + length, capLeft - length, kept);
        const prices = relaxed.idea[idea]! + perUnit * length;
        const bound = upper(s, rest + gain - prices, model.family[idea]!) - lost;
        if (hopeful(bound))
          choices.push({ items: [{ idea, units: length }], worth: gain, bound, endings: undefined });
      }
    }
  }

  visit(0, model.cap, 0, START);
  const bound = Math.max(Math.floor(outcome.score + EPSILON), Math.floor(open + EPSILON));
  return { ...outcome, bound, nodes: count };
}
