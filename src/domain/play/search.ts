/**
 * Branch and bound over the stages of a day in order of time. A branch ends where its bound promises nothing better than
 * the best plan known. A count of nodes stops it, never a clock.
 */
import { completion, freeBudget, keptAfter, relaxedOf, staysFree, type Relaxed } from './bound.ts';
import { GRID } from './feasible.ts';
import { EMPTY_MOMENT, isMessy, type Model } from './model.ts';
import { FAMILY, grownUpCost, NEAR_MINUTES, NOT_FIRST, SAME_KIND } from './objective.ts';

/** One placement of a plan under construction. */
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
interface Choice {
  ideas: readonly number[];
  units: readonly number[];
  worth: number;
  bound: number;
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

/**
 * Looks for a plan better than `known`, guided by the prices in `relaxed`.
 *
 * Shape: `nodes` is the most branchings; with `firstOnly` it ends at the first better plan.
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
  const path: Step[] = [];
  let outcome: { steps: Step[]; score: number } = { steps: [], score: known };
  let count = 0;
  let open = -Infinity;
  let done = false;

  // what the path so far adds up to
  let worth = 0;
  let ideaPrices = relaxed.ideaTotal;
  let screen = 0;
  let grownUp = 0;
  let met = 0;

  const upper = (stage: number, rest: number) =>
    worth +
    rest +
    ideaPrices +
    relaxed.screen * (model.screenCap - screen) +
    (relaxed.grownUp * (freeBudget(model) - grownUp)) / GRID +
    (terms.day ? FAMILY * bitsOf(met | families[stage]!) : 0);
  // whole points; in steps of a fraction when placements that stay are counted
  const hopeful = (bound: number) =>
    Math.floor(bound / step + EPSILON) > Math.floor(outcome.score / step + EPSILON);

  const cost = (idea: number, from: number, units: number, before: Step | undefined) => {
    if (!terms.day) return 0;
    const near = before && from - before.from - before.units * GRID <= NEAR_MINUTES;
    return (
      (near && model.kind[before.idea] === model.kind[idea] ? SAME_KIND : 0) +
      (isMessy(model, idea, from + units * GRID) ? 1 : 0)
    );
  };

  function finish() {
    const score = worth + (terms.day ? FAMILY * bitsOf(met) - grownUpCost(grownUp, model.budget) : 0);
    if (score <= outcome.score) return;
    outcome = { steps: path.map((step) => ({ ...step })), score };
    if (firstOnly) done = true;
  }

  /** Goes on with the choices one after the other, the most promising first. */
  function branch(stage: number, from: number, choices: Choice[], goOn: (choice: Choice) => void) {
    choices.sort((a, b) => b.bound - a.bound);
    for (const choice of choices) {
      if (done || !hopeful(choice.bound)) return;
      if (count >= nodes) {
        open = Math.max(open, choice.bound);
        return;
      }
      count++;
      take(stage, from, choice);
      goOn(choice);
      giveBack(stage, choice);
    }
  }

  const saved: number[] = [];
  function take(stage: number, from: number, { ideas, units, worth: gain }: Choice) {
    saved.push(worth, ideaPrices, screen, grownUp, met);
    worth += gain;
    let at = from;
    ideas.forEach((idea, i) => {
      path.push({ stage, idea, units: units[i]!, from: at });
      used[idea] = 1;
      ideaPrices -= relaxed.idea[idea]!;
      if (stages[stage]!.open && model.screen[idea]) screen += units[i]!;
      if (model.grownUp[idea]) grownUp += units[i]! * GRID;
      met |= model.family[idea]!;
      at += units[i]! * GRID;
    });
  }
  function giveBack(_stage: number, { ideas }: Choice) {
    for (const idea of ideas) {
      used[idea] = 0;
      path.pop();
    }
    met = saved.pop()!;
    grownUp = saved.pop()!;
    screen = saved.pop()!;
    ideaPrices = saved.pop()!;
    worth = saved.pop()!;
  }
  const allowed = (idea: number, also = -1) => {
    const twin = model.twin[idea]!;
    return !used[idea] && (twin < 0 || used[twin] === 1 || twin === also);
  };

  function visit(s: number, capLeft: number, kept: number): void {
    const stage = stages[s];
    if (!stage) finish();
    else if (stage.open) fill(s, 0, 0, capLeft, kept);
    else close(s, capLeft, kept);
  }

  function close(s: number, capLeft: number, kept: number) {
    const stage = stages[s]!;
    const after = keptAfter(model, s, kept);
    if (after < 0) return;
    const rest = relaxed.rest[s + 1]![capLeft * 2 + after]!;
    const choices: Choice[] = [];
    const before = path[path.length - 1];
    for (const { ideas, units, worth: gain } of stage.fillings) {
      const [a, b] = ideas as [number, number | undefined];
      if (!allowed(a, b) || (b !== undefined && !allowed(b, a))) continue;
      let net = gain - cost(a, stage.from, units[0]!, before);
      let prices = relaxed.idea[a]! + (model.grownUp[a] ? relaxed.grownUp * units[0]! : 0);
      let mask = model.family[a]!;
      if (b !== undefined) {
        const first = { stage: s, idea: a, units: units[0]!, from: stage.from };
        net -= cost(b, stage.from + units[0]! * GRID, units[1]!, first);
        prices += relaxed.idea[b]! + (model.grownUp[b] ? relaxed.grownUp * units[1]! : 0);
        mask |= model.family[b]!;
      }
      const bound = upperWith(s + 1, rest + net - prices, mask);
      if (hopeful(bound)) choices.push({ ideas, units, worth: net, bound });
    }
    if (!stage.fillings.length) choices.push({ ideas: [], units: [], worth: 0, bound: upper(s + 1, rest) });
    else {
      const bound = upper(s + 1, rest) - EMPTY_MOMENT;
      if (hopeful(bound)) choices.push({ ideas: [], units: [], worth: -EMPTY_MOMENT, bound });
    }
    branch(s, stage.from, choices, () => visit(s + 1, capLeft, after));
  }

  const upperWith = (stage: number, rest: number, mask: number) => {
    const before = met;
    met |= mask;
    const bound = upper(stage, rest);
    met = before;
    return bound;
  };

  function fill(s: number, n: number, units: number, capLeft: number, kept: number) {
    const stage = stages[s]!;
    const choices: Choice[] = [];
    const keeps = kept || staysFree(stage, n, units) ? 1 : 0;
    const after = keptAfter(model, s, keeps);
    const closing = n ? 0 : -stage.emptyCost;
    if (after >= 0) {
      const bound = upper(s + 1, closing + relaxed.rest[s + 1]![capLeft * 2 + after]!);
      if (hopeful(bound)) choices.push({ ideas: [], units: [], worth: closing, bound });
    }
    const from = stage.from + GRID * (units + n);
    if (n < stage.most && left[stage.window]! > 0) {
      const before = path[path.length - 1];
      const place = n ? NOT_FIRST : stage.firstCost;
      const calmOnly = from <= stage.settleUntil;
      for (const { idea, base, lengths } of stage.candidates) {
        if (!allowed(idea) || (calmOnly && model.ideas[idea]!.energy > 1)) continue;
        for (const length of lengths) {
          if (units + length + n > stage.room || length > capLeft) break;
          if (from + length * GRID > model.latest[idea]!) break;
          if (model.screen[idea] && screen + length > model.screenCap) break;
          const gain = base + (terms.minutes ? length >> 1 : 0) - place - cost(idea, from, length, before);
          const rest = completion(model, relaxed, s, n + 1, units + length, capLeft - length, kept);
          const prices =
            relaxed.idea[idea]! +
            ((model.screen[idea] ? relaxed.screen : 0) + (model.grownUp[idea] ? relaxed.grownUp : 0)) *
              length;
          const bound = upperWith(s, rest + gain - prices, model.family[idea]!);
          if (hopeful(bound)) choices.push({ ideas: [idea], units: [length], worth: gain, bound });
        }
      }
    }
    branch(s, from, choices, ({ ideas, units: [length] }) => {
      if (!ideas.length) return visit(s + 1, capLeft, after);
      left[stage.window]!--;
      fill(s, n + 1, units + length!, capLeft - length!, kept);
      left[stage.window]!++;
    });
  }

  visit(0, model.cap, 0);
  const bound = Math.max(Math.floor(outcome.score + EPSILON), Math.floor(open + EPSILON));
  return { ...outcome, bound, nodes: count };
}

/** Fresh prices of nothing. */
export const unpriced = relaxedOf;
