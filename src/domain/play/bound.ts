/**
 * An upper bound on what the rest of a day can bring. Rules that tie the whole day together (each idea once, screen
 * minutes, the grown-up's time) get a price; with prices the day falls apart into stages, which are solved exactly.
 * The prices are found by a fixed number of steps, in plain arithmetic, so they are the same on every engine.
 */
import { GRID, LONG_FREE, NOON } from './feasible.ts';
import type { Model, Stage } from './model.ts';
import { GROWN_UP_STEP, NOT_FIRST } from './objective.ts';

export const IMPOSSIBLE = -1e9;

/** What one stage offers at prices. Lists are by length in units; sequences by number of placements and their units. */
interface Offers {
  lengths: number[];
  any: Float64Array;
  anyIdea: Int32Array;
  /** Only the calmest ideas: what may start just after a hard moment. */
  calm: Float64Array;
  calmIdea: Int32Array;
  /** Best sequence of so many placements and units, and the length of its last. */
  worth: Float64Array[];
  last: Int32Array[];
  /** The best number of placements for so many units: over all, and where half an hour stays free. */
  best: Float64Array;
  bestFree: Float64Array;
}

export interface Relaxed {
  idea: Float64Array;
  /** Price of five minutes of screen, and of five minutes of a grown-up. */
  screen: number;
  grownUp: number;
  offers: readonly Offers[];
  /** Best worth of a closed stage at prices, and the filling that gives it. */
  closed: Float64Array;
  filling: Int32Array;
  /** Sum of the ideas' prices. */
  ideaTotal: number;
  /** What the prices of screen and grown-up add to a bound. */
  constant: number;
  /** Per stage: what it and all after it bring, by units left for the day and whether half an hour was kept free. */
  rest: Float64Array[];
  /** Completions inside a stage, made when first asked for. */
  memo: Map<number, number>[];
}

/** Whether half an hour stays free when a stage is closed after so many placements and units of play. */
export function staysFree(stage: Stage, count: number, used: number): boolean {
  const from = count ? stage.from + GRID * (used + count - 1) : stage.freeFrom;
  return stage.freeEnd - from >= LONG_FREE && (!stage.morning || from < NOON);
}

/** The flag with which the next stage begins; −1 where a half of the day ended without its half-hour. */
export function keptAfter(model: Model, stage: number, kept: number): number {
  const { morning, keeps } = model.stages[stage]!;
  if (model.stages[stage + 1]?.morning === morning) return keeps ? 1 : kept;
  return (morning ? model.freeWanted.morning : model.freeWanted.afternoon) && !kept && !keeps ? -1 : 0;
}

/** An empty frame for bounds of this model. */
export function relaxedOf(model: Model): Relaxed {
  const { stages } = model;
  const offers = stages.map((stage): Offers => {
    const numbers = () => new Float64Array(stage.room + 1);
    const whole = () => new Int32Array(stage.room + 1);
    const slots = Array.from({ length: stage.most + 1 });
    return {
      lengths: [...new Set(stage.candidates.flatMap(({ lengths }) => lengths))].sort((a, b) => a - b),
      any: numbers(),
      anyIdea: whole(),
      calm: numbers(),
      calmIdea: whole(),
      worth: slots.map(numbers),
      last: slots.map(whole),
      best: numbers(),
      bestFree: numbers(),
    };
  });
  return {
    idea: new Float64Array(model.ideas.length),
    screen: 0,
    grownUp: 0,
    offers,
    closed: new Float64Array(stages.length),
    filling: new Int32Array(stages.length),
    ideaTotal: 0,
    constant: 0,
    rest: Array.from({ length: stages.length + 1 }, () => new Float64Array((model.cap + 1) * 2)),
    memo: stages.map(() => new Map()),
  };
}

/** What one placement is worth at prices, beside the cost of its place in the window. */
export function netWorth(model: Model, relaxed: Relaxed, idea: number, base: number, units: number): number {
  const perUnit = (model.screen[idea] ? relaxed.screen : 0) + (model.grownUp[idea] ? relaxed.grownUp : 0);
  return base - relaxed.idea[idea]! + (model.terms.minutes ? units >> 1 : 0) - perUnit * units;
}

function fillOffers(model: Model, relaxed: Relaxed, s: number): void {
  const stage = model.stages[s]!;
  const { any, calm, anyIdea, calmIdea } = relaxed.offers[s]!;
  any.fill(IMPOSSIBLE);
  calm.fill(IMPOSSIBLE);
  for (const { idea, base, lengths } of stage.candidates) {
    const isCalm = model.ideas[idea]!.energy === 1;
    for (const units of lengths) {
      const worth = netWorth(model, relaxed, idea, base, units);
      if (worth > any[units]!) {
        any[units] = worth;
        anyIdea[units] = idea;
      }
      if (isCalm && worth > calm[units]!) {
        calm[units] = worth;
        calmIdea[units] = idea;
      }
    }
  }
}

const listAt = (stage: Stage, offers: Offers, count: number, used: number) =>
  stage.from + GRID * (used + count) <= stage.settleUntil ? offers.calm : offers.any;

function solveOpen(model: Model, relaxed: Relaxed, s: number): void {
  const stage = model.stages[s]!;
  const offers = relaxed.offers[s]!;
  fillOffers(model, relaxed, s);
  const { worth, last, best, bestFree, lengths } = offers;
  for (const row of worth) row.fill(IMPOSSIBLE);
  best.fill(IMPOSSIBLE);
  bestFree.fill(IMPOSSIBLE);
  worth[0]![0] = 0;
  for (let count = 0; count <= stage.most; count++) {
    const row = worth[count]!;
    const cost = count ? NOT_FIRST : stage.firstCost;
    for (let used = count; used <= stage.room; used++) {
      const value = row[used]!;
      if (value <= IMPOSSIBLE / 2) continue;
      const ended = count ? value : -stage.emptyCost;
      if (ended > best[used]!) best[used] = ended;
      if (ended > bestFree[used]! && staysFree(stage, count, used)) bestFree[used] = ended;
      if (count === stage.most) continue;
      const list = listAt(stage, offers, count, used);
      const next = worth[count + 1]!;
      for (const units of lengths) {
        const to = used + units;
        if (to + count > stage.room) break;
        const sum = value + list[units]! - cost;
        if (sum > next[to]!) {
          next[to] = sum;
          last[count + 1]![to] = units;
        }
      }
    }
  }
  combine(model, relaxed, s);
}

function combine(model: Model, relaxed: Relaxed, s: number): void {
  const { best, bestFree } = relaxed.offers[s]!;
  const rest = relaxed.rest[s]!;
  const next = relaxed.rest[s + 1]!;
  const [bare, kept] = [keptAfter(model, s, 0), keptAfter(model, s, 1)];
  rest.fill(IMPOSSIBLE);
  for (let used = 0; used < best.length && used <= model.cap; used++) {
    const all = best[used]!;
    if (all <= IMPOSSIBLE / 2) continue;
    const free = bestFree[used]!;
    for (let left = used; left <= model.cap; left++) {
      const then = (left - used) * 2;
      const whenKept = next[then + kept]!;
      if (all + whenKept > rest[left * 2 + 1]!) rest[left * 2 + 1] = all + whenKept;
      if (free + whenKept > rest[left * 2]!) rest[left * 2] = free + whenKept;
      if (bare >= 0 && all + next[then + bare]! > rest[left * 2]!) rest[left * 2] = all + next[then + bare]!;
    }
  }
}

function solveClosed(model: Model, relaxed: Relaxed, s: number): void {
  const { fillings, emptyCost } = model.stages[s]!;
  let best = -emptyCost;
  let choice = -1;
  for (let f = 0; f < fillings.length; f++) {
    const { ideas, units, worth } = fillings[f]!;
    let net = worth;
    for (let i = 0; i < ideas.length; i++) {
      const idea = ideas[i]!;
      net -= relaxed.idea[idea]! + (model.grownUp[idea] ? relaxed.grownUp * units[i]! : 0);
    }
    if (net > best) {
      best = net;
      choice = f;
    }
  }
  relaxed.closed[s] = best;
  relaxed.filling[s] = choice;
  const [rest, next] = [relaxed.rest[s]!, relaxed.rest[s + 1]!];
  for (let kept = 0; kept < 2; kept++) {
    const after = keptAfter(model, s, kept);
    for (let left = 0; left <= model.cap; left++)
      rest[left * 2 + kept] = after < 0 ? IMPOSSIBLE : relaxed.closed[s]! + next[left * 2 + after]!;
  }
}

/** The budget on the grid, with the part of a step that costs nothing yet. */
export const freeBudget = ({ budget }: Model) => GRID * Math.ceil(budget / GRID) + GROWN_UP_STEP - GRID;

/** Solves the day at the prices in `relaxed`, from its end to its beginning, and gives the bound. */
export function solveRelaxed(model: Model, relaxed: Relaxed): number {
  const { stages } = model;
  for (const memo of relaxed.memo) memo.clear();
  for (let s = stages.length - 1; s >= 0; s--)
    if (stages[s]!.open) solveOpen(model, relaxed, s);
    else solveClosed(model, relaxed, s);
  let total = 0;
  for (let i = 0; i < relaxed.idea.length; i++) total += relaxed.idea[i]!;
  relaxed.ideaTotal = total;
  relaxed.constant = relaxed.screen * model.screenCap + (relaxed.grownUp * freeBudget(model)) / GRID;
  return relaxed.rest[0]![model.cap * 2]! + total + relaxed.constant;
}

/** What a stage begun with so many placements, and all after it, can still bring at prices. */
export function completion(
  model: Model,
  relaxed: Relaxed,
  s: number,
  count: number,
  used: number,
  left: number,
  kept: number,
): number {
  const stage = model.stages[s]!;
  const key = (((count * 64 + used) * 256 + left) << 1) | kept;
  const known = relaxed.memo[s]!.get(key);
  if (known !== undefined) return known;
  const after = keptAfter(model, s, kept || staysFree(stage, count, used) ? 1 : 0);
  let best =
    after < 0 ? IMPOSSIBLE : (count ? 0 : -stage.emptyCost) + relaxed.rest[s + 1]![left * 2 + after]!;
  if (count < stage.most) {
    const offers = relaxed.offers[s]!;
    const list = listAt(stage, offers, count, used);
    const cost = count ? NOT_FIRST : stage.firstCost;
    for (const units of offers.lengths) {
      if (used + units + count > stage.room || units > left) break;
      if (list[units]! <= IMPOSSIBLE / 2) continue;
      const then = completion(model, relaxed, s, count + 1, used + units, left - units, kept);
      if (list[units]! - cost + then > best) best = list[units]! - cost + then;
    }
  }
  relaxed.memo[s]!.set(key, best);
  return best;
}

/** One place of a relaxed day: a stage, a length, whether it comes first there and whether only calm things may. */
export interface Slot {
  stage: number;
  units: number;
  first: boolean;
  calm: boolean;
  idea: number;
}

/** The places that the best day at these prices fills, in order of time, an idea as often as it likes. */
export function slotsOf(model: Model, relaxed: Relaxed): Slot[] {
  const slots: Slot[] = [];
  let left = model.cap;
  let kept = 0;
  model.stages.forEach((stage, s) => {
    if (!stage.open) {
      const filling = stage.fillings[relaxed.filling[s]!];
      filling?.ideas.forEach((idea, i) =>
        slots.push({ stage: s, units: filling.units[i]!, first: i === 0, calm: false, idea }),
      );
    } else {
      const [count, used] = bestEnd(model, relaxed, s, left, kept);
      const offers = relaxed.offers[s]!;
      const here: Slot[] = [];
      for (let n = count - 1, at = used; n >= 0; n--) {
        const units = offers.last[n + 1]![at]!;
        at -= units;
        const calm = listAt(stage, offers, n, at) === offers.calm;
        const idea = (calm ? offers.calmIdea : offers.anyIdea)[units]!;
        here.unshift({ stage: s, units, first: n === 0 && !stage.firstCost, calm, idea });
      }
      slots.push(...here);
      left -= used;
      if (staysFree(stage, count, used)) kept = 1;
    }
    kept = Math.max(0, keptAfter(model, s, kept));
  });
  return slots;
}

function bestEnd(model: Model, relaxed: Relaxed, s: number, left: number, kept: number): [number, number] {
  const stage = model.stages[s]!;
  const { worth } = relaxed.offers[s]!;
  let best = IMPOSSIBLE;
  let end: [number, number] = [0, 0];
  for (let count = 0; count <= stage.most; count++)
    for (let used = count; used <= Math.min(stage.room, left); used++) {
      const value = worth[count]![used]!;
      if (value <= IMPOSSIBLE / 2) continue;
      const after = keptAfter(model, s, kept || staysFree(stage, count, used) ? 1 : 0);
      if (after < 0) continue;
      const sum = (count ? value : -stage.emptyCost) + relaxed.rest[s + 1]![(left - used) * 2 + after]!;
      if (sum > best) {
        best = sum;
        end = [count, used];
      }
    }
  return end;
}

function usesOf(model: Model, slots: readonly Slot[], uses: Int32Array): { screen: number; grownUp: number } {
  uses.fill(0);
  const use = { screen: 0, grownUp: 0 };
  for (const { stage, units, idea } of slots) {
    uses[idea]!++;
    if (model.stages[stage]!.open && model.screen[idea]) use.screen += units;
    if (model.grownUp[idea]) use.grownUp += units;
  }
  return use;
}

/** Steps of the prices between two drafts of a plan. */
const EVERY = 10;
/** How much of the last direction goes into the next: without it the walk zigzags and stops a point too high. */
const MOMENTUM = 0.8;
/** How far below the best bound the walk aims; how long it may go without a better one before its steps shrink. */
const AIM = 6;
const PATIENCE = 12;
const SHRINK = 0.75;
/** Minutes weigh far less than ideas, so their prices move in steps shortened alike. */
const SCREEN_SCALE = 4;
const GROWN_UP_SCALE = 8;

/**
 * Moves the prices step by step towards the lowest bound and leaves the best ones in `relaxed`, solved.
 *
 * Shape: every few steps `onSlots` gets the places of the relaxed day and answers with the score of the best plan known
 * so far; the walk ends where the bound meets it.
 * Source: subgradient steps with a deflected direction (Camerini, Fratta and Maffioli 1975), from memory; any prices of
 * zero or more give a true bound.
 */
export function improvePrices(
  model: Model,
  relaxed: Relaxed,
  steps: number,
  extra: number,
  onSlots: (slots: readonly Slot[]) => number,
): number {
  const count = model.ideas.length;
  const uses = new Int32Array(count);
  const direction = new Float64Array(count + 2);
  const best = { idea: relaxed.idea.slice(), screen: relaxed.screen, grownUp: relaxed.grownUp };
  const dearest = model.terms.day ? GRID / GROWN_UP_STEP : 0;
  let good = -Infinity;
  let bound = Infinity;
  let size = 1;
  let since = 0;
  for (let step = 1; step <= steps && size > 0.003; step++) {
    const value = solveRelaxed(model, relaxed) + extra;
    if (value < bound - 1e-3) {
      [bound, since] = [value, 0];
      best.idea.set(relaxed.idea);
      [best.screen, best.grownUp] = [relaxed.screen, relaxed.grownUp];
    } else if (++since >= PATIENCE) {
      since = 0;
      size *= SHRINK;
    }
    const slots = slotsOf(model, relaxed);
    if (step % EVERY === 0) good = Math.max(good, onSlots(slots));
    if (Math.floor(bound + 1e-6) <= good) break;
    const use = usesOf(model, slots, uses);
    let length = 0;
    const turn = (at: number, over: number, price: number, most: number) => {
      const next = MOMENTUM * direction[at]! + over;
      // a price at its end does not push against it
      direction[at] = (price <= 0 && next < 0) || (price >= most && next > 0) ? 0 : next;
      length += direction[at]! * direction[at]!;
    };
    for (let i = 0; i < count; i++) turn(i, uses[i]! - 1, relaxed.idea[i]!, Infinity);
    turn(count, (use.screen - model.screenCap) / SCREEN_SCALE, relaxed.screen, Infinity);
    turn(count + 1, (use.grownUp - freeBudget(model) / GRID) / GROWN_UP_SCALE, relaxed.grownUp, dearest);
    if (length < 1e-12) break;
    const stride = (size * (value - bound + AIM)) / length;
    for (let i = 0; i < count; i++) relaxed.idea[i] = Math.max(0, relaxed.idea[i]! + stride * direction[i]!);
    relaxed.screen = Math.max(0, relaxed.screen + (stride * direction[count]!) / SCREEN_SCALE);
    const grownUp = relaxed.grownUp + (stride * direction[count + 1]!) / GROWN_UP_SCALE;
    relaxed.grownUp = Math.min(dearest, Math.max(0, grownUp));
  }
  relaxed.idea.set(best.idea);
  [relaxed.screen, relaxed.grownUp] = [best.screen, best.grownUp];
  return solveRelaxed(model, relaxed) + extra;
}
