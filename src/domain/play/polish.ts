/**
 * Good plans early: the ideas are shared out over the places of a relaxed day as well as they can be, then single moves
 * are tried until none helps. It proves nothing; it gives the search something to beat.
 */
import { keptAfter, staysFree, type Relaxed, type Slot } from './bound.ts';
import { GRID } from './feasible.ts';
import { EMPTY_MOMENT, isMessy, type Model, type Stage } from './model.ts';
import { bitsOf } from './search.ts';
import { FAMILY, grownUpCost, NEAR_MINUTES, NOT_FIRST, SAME_KIND } from './objective.ts';

/** One placement of a draft: an idea and its units; drafts hold a list of them for each stage. */
export interface Put {
  idea: number;
  units: number;
}
export type Draft = Put[][];

/** Per stage and idea what it is worth there, before minutes; NaN where it may not stand. */
export interface Worths {
  base: Float64Array[];
  least: Int32Array[];
  most: Int32Array[];
}
export function worthsOf(model: Model): Worths {
  const n = model.ideas.length;
  const worths: Worths = { base: [], least: [], most: [] };
  for (const stage of model.stages) {
    const base = new Float64Array(n).fill(NaN);
    const least = new Int32Array(n);
    const most = new Int32Array(n);
    for (const candidate of stage.candidates) {
      base[candidate.idea] = candidate.base;
      least[candidate.idea] = candidate.lengths[0]!;
      most[candidate.idea] = candidate.lengths[candidate.lengths.length - 1]!;
    }
    for (const { ideas, units, worth } of stage.fillings) {
      if (ideas.length > 1) continue;
      const idea = ideas[0]!;
      base[idea] = worth;
      least[idea] = most[idea] = units[0]!;
    }
    worths.base.push(base);
    worths.least.push(least);
    worths.most.push(most);
  }
  return worths;
}

const stands = (worths: Worths, s: number, { idea, units }: Put) =>
  worths.base[s]![idea]! === worths.base[s]![idea]! &&
  units >= worths.least[s]![idea]! &&
  units <= worths.most[s]![idea]!;

const fillingAs = (stage: Stage, puts: readonly Put[]) =>
  stage.fillings.find(
    ({ ideas, units }) =>
      ideas.length === puts.length && puts.every((put, n) => put.idea === ideas[n] && put.units === units[n]),
  );

/** What a draft is worth, or −Infinity where it breaks a rule. */
export function draftWorth(model: Model, worths: Worths, draft: Draft): number {
  const { terms, stages } = model;
  let worth = 0;
  let cap = model.cap;
  let screen = model.screenCap;
  let grownUp = 0;
  let met = 0;
  let kept = 0;
  let kind = -1;
  let over = -Infinity;
  // pins cut a window into several stages, which share its places
  let window = -1;
  let places = 0;
  for (let s = 0; s < stages.length; s++) {
    const stage = stages[s]!;
    const puts = draft[s]!;
    let at = stage.from;
    let used = 0;
    const chain = !stage.open && puts.length > 1;
    if (chain) {
      const filling = fillingAs(stage, puts);
      if (!filling) return -Infinity;
      worth += filling.worth;
    }
    for (let n = 0; n < puts.length; n++) {
      const put = puts[n]!;
      const { idea, units } = put;
      if (!chain && !stands(worths, s, put)) return -Infinity;
      const end = at + units * GRID;
      if (!chain) worth += worths.base[s]![idea]!;
      if (stage.open) {
        if (end > model.latest[idea]! || (at <= stage.settleUntil && model.ideas[idea]!.energy > 1))
          return -Infinity;
        worth += (terms.minutes ? units >> 1 : 0) - (n ? NOT_FIRST : stage.firstCost);
        if (model.screen[idea]) screen -= units;
        used += units;
      }
      if (terms.day) {
        if (kind === model.kind[idea] && at - over <= NEAR_MINUTES) worth -= SAME_KIND;
        if (isMessy(model, idea, end)) worth -= 1;
      }
      if (model.grownUp[idea]) grownUp += units * GRID;
      met |= model.family[idea]!;
      kind = model.kind[idea]!;
      over = end;
      at = stage.open ? end + GRID : end;
    }
    if (stage.open) {
      if (stage.window !== window) places = model.left[stage.window]!;
      window = stage.window;
      places -= puts.length;
      if (places < 0 || puts.length > stage.most || used + Math.max(0, puts.length - 1) > stage.room)
        return -Infinity;
      if (!puts.length) worth -= stage.emptyCost;
      cap -= used;
      if (staysFree(stage, puts.length, used)) kept = 1;
    } else if (!puts.length) worth -= stage.emptyCost;
    kept = keptAfter(model, s, kept);
    if (kept < 0) return -Infinity;
  }
  if (cap < 0 || screen < 0) return -Infinity;
  return worth + (terms.day ? FAMILY * bitsOf(met) - grownUpCost(grownUp, model.budget) : 0);
}

/**
 * Shares ideas out over places so that the sum is greatest: the assignment problem, solved exactly by shortest
 * augmenting paths.
 *
 * Shape: `gain(row, column)`, with at least as many columns as rows -> for each row its column.
 * Source: the Hungarian method in the form of Jonker and Volgenant, from memory.
 */
export function shareOut(
  rows: number,
  columns: number,
  gain: (row: number, column: number) => number,
): Int32Array {
  const rowPrice = new Float64Array(rows + 1);
  const price = new Float64Array(columns + 1);
  const owner = new Int32Array(columns + 1);
  const way = new Int32Array(columns + 1);
  for (let row = 1; row <= rows; row++) {
    owner[0] = row;
    let at = 0;
    const least = new Float64Array(columns + 1).fill(Infinity);
    const seen = new Uint8Array(columns + 1);
    do {
      seen[at] = 1;
      const here = owner[at]!;
      let delta = Infinity;
      let next = 0;
      for (let column = 1; column <= columns; column++) {
        if (seen[column]) continue;
        const cost = -gain(here - 1, column - 1) - rowPrice[here]! - price[column]!;
        if (cost < least[column]!) {
          least[column] = cost;
          way[column] = at;
        }
        if (least[column]! < delta) {
          delta = least[column]!;
          next = column;
        }
      }
      for (let column = 0; column <= columns; column++)
        if (seen[column]) {
          rowPrice[owner[column]!]! += delta;
          price[column]! -= delta;
        } else least[column]! -= delta;
      at = next;
    } while (owner[at] !== 0);
    do {
      const before = way[at]!;
      owner[at] = owner[before]!;
      at = before;
    } while (at);
  }
  const columnOf = new Int32Array(rows);
  for (let column = 1; column <= columns; column++)
    if (owner[column]) columnOf[owner[column]! - 1] = column - 1;
  return columnOf;
}

const NOT_HERE = -10 * EMPTY_MOMENT;

/** Moments that the relaxed day fills with two ideas get the two best that are still free; gives the ideas taken. */
function chains(model: Model, relaxed: Relaxed, slots: readonly Slot[], draft: Draft): ReadonlySet<number> {
  const taken = new Set<number>();
  for (const { stage } of slots) {
    const { open, fillings } = model.stages[stage]!;
    if (open || draft[stage]!.length || fillings[relaxed.filling[stage]!]!.ideas.length < 2) continue;
    let best = -Infinity;
    for (const { ideas, units, worth } of fillings) {
      const net = ideas.reduce((sum, idea) => sum - relaxed.idea[idea]!, worth);
      if (net <= best || ideas.some((idea) => taken.has(idea))) continue;
      best = net;
      draft[stage] = ideas.map((idea, n) => ({ idea, units: units[n]! }));
    }
    for (const { idea } of draft[stage]!) taken.add(idea);
  }
  return taken;
}

/** A draft on the places of a relaxed day. */
export function draftOn(model: Model, relaxed: Relaxed, worths: Worths, all: readonly Slot[]): Draft {
  const ideas = model.ideas.length;
  const draft: Draft = model.stages.map(() => []);
  const taken = chains(model, relaxed, all, draft);
  const slots = all.filter(({ stage }) => !draft[stage]!.length);
  const shares = shareOut(slots.length, ideas + slots.length, (row, idea) => {
    const slot = slots[row]!;
    if (taken.has(idea)) return NOT_HERE;
    const { open } = model.stages[slot.stage]!;
    if (idea >= ideas) return open ? 0 : -EMPTY_MOMENT;
    if (!stands(worths, slot.stage, { idea, units: slot.units })) return NOT_HERE;
    if (slot.calm && model.ideas[idea]!.energy > 1) return NOT_HERE;
    const base = worths.base[slot.stage]![idea]!;
    if (!open) return base;
    const priced = (model.screen[idea] ? relaxed.screen : 0) + (model.grownUp[idea] ? relaxed.grownUp : 0);
    return (
      base + (model.terms.minutes ? slot.units >> 1 : 0) - (slot.first ? 0 : NOT_FIRST) - priced * slot.units
    );
  });
  slots.forEach(({ stage, units }, row) => {
    if (shares[row]! < ideas) draft[stage]!.push({ idea: shares[row]!, units });
  });
  return draft;
}

/** Takes away what makes a draft impossible: one placement if that is enough, else all. */
function mend(model: Model, worths: Worths, draft: Draft): void {
  if (draftWorth(model, worths, draft) > -Infinity) return;
  let best: { s: number; n: number; worth: number } | undefined;
  for (let s = 0; s < draft.length; s++)
    for (let n = 0; n < draft[s]!.length; n++) {
      const [put] = draft[s]!.splice(n, 1);
      const worth = draftWorth(model, worths, draft);
      draft[s]!.splice(n, 0, put!);
      if (worth > (best?.worth ?? -Infinity)) best = { s, n, worth };
    }
  if (best) draft[best.s]!.splice(best.n, 1);
  else for (const puts of draft) puts.length = 0;
}

/** Tries single moves until none of them helps, or `tries` drafts were weighed. */
export function polish(model: Model, worths: Worths, draft: Draft, tries: number): number {
  mend(model, worths, draft);
  const used = new Uint8Array(model.ideas.length);
  for (const puts of draft) for (const { idea } of puts) used[idea] = 1;
  let best = draftWorth(model, worths, draft);
  let left = tries;
  const better = () => {
    left--;
    const worth = draftWorth(model, worths, draft);
    if (worth <= best + 1e-9) return false;
    best = worth;
    return true;
  };
  const points = (s: number, { idea, units }: Put) =>
    worths.base[s]![idea]! + (model.terms.minutes && model.stages[s]!.open ? units >> 1 : 0);
  // what order, kinds and grown-ups could give back at most when one placement changes
  const slack = 6;

  const replace = (s: number, n: number): boolean => {
    const old = draft[s]![n]!;
    const now = points(s, old);
    for (let idea = 0; idea < used.length; idea++) {
      const base = worths.base[s]![idea]!;
      if (base !== base || (used[idea] && idea !== old.idea)) continue;
      for (let units = worths.least[s]![idea]!; units <= worths.most[s]![idea]!; units += units % 2 ? 1 : 2) {
        const put = { idea, units };
        if ((idea === old.idea && units === old.units) || points(s, put) <= now - slack) continue;
        draft[s]![n] = put;
        if (better()) {
          used[old.idea] = 0;
          used[idea] = 1;
          return true;
        }
        draft[s]![n] = old;
      }
    }
    return false;
  };
  const exchange = (s: number, n: number): boolean => {
    const one = draft[s]![n]!;
    for (let t = s; t < draft.length; t++)
      for (let m = t === s ? n + 1 : 0; m < draft[t]!.length; m++) {
        const two = draft[t]![m]!;
        const now = points(s, one) + points(t, two);
        for (const [units, others] of [
          [two.units, one.units],
          [one.units, two.units],
        ] as const) {
          // two keeps its length or takes the other's, and so does one
          const [here, there] = [
            { idea: two.idea, units },
            { idea: one.idea, units: others },
          ];
          if (!stands(worths, s, here) || !stands(worths, t, there)) continue;
          if (points(s, here) + points(t, there) <= now - slack) continue;
          draft[s]![n] = here;
          draft[t]![m] = there;
          if (better()) return true;
          draft[s]![n] = one;
          draft[t]![m] = two;
        }
      }
    return false;
  };
  const insert = (s: number): boolean => {
    const puts = draft[s]!;
    const stage = model.stages[s]!;
    if (puts.length >= (stage.open ? stage.most : 1)) return false;
    for (let idea = 0; idea < used.length; idea++) {
      const base = worths.base[s]![idea]!;
      if (used[idea] || base !== base) continue;
      for (let n = 0; n <= puts.length; n++) {
        puts.splice(n, 0, { idea, units: worths.least[s]![idea]! });
        if (better()) {
          used[idea] = 1;
          return true;
        }
        puts.splice(n, 1);
      }
    }
    return false;
  };
  /** A moment filled another way. */
  const refill = (s: number): boolean => {
    const old = draft[s]!;
    const now = old.length ? (fillingAs(model.stages[s]!, old)?.worth ?? -Infinity) : -Infinity;
    for (const { ideas, units, worth } of model.stages[s]!.fillings) {
      if (worth <= now - 2 || ideas.some((idea) => used[idea] && !old.some((put) => put.idea === idea)))
        continue;
      draft[s] = ideas.map((idea, n) => ({ idea, units: units[n]! }));
      if (better()) {
        for (const { idea } of old) used[idea] = 0;
        for (const idea of ideas) used[idea] = 1;
        return true;
      }
      draft[s] = old;
    }
    return false;
  };
  const remove = (s: number, n: number): boolean => {
    const [old] = draft[s]!.splice(n, 1);
    if (better()) {
      used[old!.idea] = 0;
      return true;
    }
    draft[s]!.splice(n, 0, old!);
    return false;
  };
  /** An empty moment takes what stands elsewhere. */
  const claim = (s: number): boolean => {
    if (model.stages[s]!.open || draft[s]!.length) return false;
    for (let t = 0; t < draft.length; t++)
      for (let m = 0; m < draft[t]!.length; m++) {
        const put = draft[t]![m]!;
        const here = { idea: put.idea, units: worths.least[s]![put.idea]! };
        if (!stands(worths, s, here)) continue;
        draft[s]!.push(here);
        draft[t]!.splice(m, 1);
        if (better()) return true;
        draft[s]!.pop();
        draft[t]!.splice(m, 0, put);
      }
    return false;
  };
  const round = (): boolean => {
    let helped = false;
    for (let s = 0; s < draft.length && left > 0; s++) {
      if ((model.stages[s]!.open ? insert(s) : refill(s)) || claim(s)) helped = true;
      for (let n = 0; n < draft[s]!.length && left > 0; n++)
        if (replace(s, n) || exchange(s, n) || remove(s, n)) helped = true;
    }
    return helped;
  };
  while (left > 0 && round());
  return best;
}
