/** The walk of the prices: step by step to where what the day has is just what the relaxed day takes. */
import { FAMILIES_AT, GROWN_UP, LIMIT, PLAY, POINT, SCREEN, type Board } from './board.ts';
import { solveAt, walk } from './bound.ts';
import { GRID } from './feasible.ts';
import { narrow } from './narrow.ts';
import { FAMILY, GROWN_UP_STEP } from './objective.ts';

/** How much of the last direction goes into the next: without it the walk zigzags and stops a point too high. */
const MOMENTUM = 0.8;
/** How long it may go without a better bound before its steps shrink, by how much, and to what. */
const PATIENCE = 8;
const SHRINK = 0.7;
const SHORTEST = 0.003;
/** Minutes weigh far less than ideas, so their prices move in steps shortened alike. */
const SCALES = [8, 4, 8, 2];
/** How much of what the days before a step held still counts after it. */
const FADE = 0.95;
/** More than any idea is worth: the end of its price. */
const DEAREST = 1000 * POINT;

/** How the prices walk. */
export interface Walk {
  /** Steps at most, and steps between two narrowings of the board. */
  steps: number;
  every: number;
  /** What is looked for, in grains, asked at each narrowing, the first at step 1: a bound below it ends the walk. */
  goal: (bound: number, step: number) => number;
  /** How far below the best bound, in grains, the steps aim. */
  aim: (bound: number) => number;
}

/**
 * Moves the prices step by step towards the lowest bound and leaves the best ones on the board, solved.
 *
 * Shape: a board -> the bound in grains of all plans that are worth the goal, and how many steps were taken.
 * Source: subgradient steps with a deflected direction (Camerini, Fratta and Maffioli 1975), from memory; any prices
 * within their ends give a true bound.
 */
export function improvePrices(
  board: Board,
  { steps, every, goal, aim }: Walk,
): { bound: number; taken: number } {
  const { price, supply, model, possible, often, forced } = board;
  const ideas = model.ideas.length;
  const size = price.length;
  const direction = new Float64Array(size);
  const best = price.slice();
  const over = new Int32Array(size);
  const scale = Float64Array.from(price, (_, i) => SCALES[i - ideas] ?? 1);
  const family = ideas + FAMILIES_AT;
  const least = Int32Array.from(price, (_, i) =>
    i < ideas && forced[i] ? -DEAREST : (possible >> (i - family)) & 1 && i >= family ? -FAMILY * POINT : 0,
  );
  const most = Int32Array.from(price, (_, i) => {
    if (i === ideas + GROWN_UP) return model.terms.day ? Math.floor((POINT * GRID) / GROWN_UP_STEP) : 0;
    return i >= family ? 0 : DEAREST;
  });
  // what was seen before counts as much as one step; instead of fading the old, the new grow
  let weight = 1;
  let bound = Infinity;
  let since = 0;
  let wanted = -Infinity;
  let stretch = 1;
  let step = 1;
  for (; step <= steps && stretch > SHORTEST; step++) {
    const value = solveAt(board);
    if (value < bound) {
      [bound, since] = [value, 0];
      best.set(price);
    } else if (++since >= PATIENCE) {
      since = 0;
      stretch *= SHRINK;
    }
    for (let i = 0; i < size; i++) over[i] = -supply[i]!;
    weight /= FADE;
    const way = walk(board);
    for (let n = 0; n < way.length; n += 2) {
      const s = way[n]!;
      const p = way[n + 1]!;
      const { puts, sorts } = board.squares[s]!;
      const play = sorts.play[puts.sort[p]!]!;
      over[ideas + PLAY]! += play;
      if (model.screen[puts.one[p]!]) over[ideas + SCREEN]! += play;
      over[ideas + GROWN_UP]! += puts.grownUp[p]!;
      over[ideas + LIMIT]! += puts.grownUp[p]!;
      for (const idea of [puts.one[p]!, puts.two[p]!]) {
        if (idea < 0) continue;
        often[s * ideas + idea]! += weight;
        over[idea]!++;
        over[family + model.family[idea]!]!++;
      }
    }
    // only now: narrowing counts what may stand there anew
    if (step % every === 1) {
      wanted = goal(bound, step);
      narrow(board, wanted);
    }
    if (bound < wanted) break;
    let length = 0;
    for (let i = 0; i < size; i++) {
      const next = MOMENTUM * direction[i]! + over[i]! / scale[i]!;
      // a price at its end does not push against it
      direction[i] = (price[i]! <= least[i]! && next < 0) || (price[i]! >= most[i]! && next > 0) ? 0 : next;
      length += direction[i]! * direction[i]!;
    }
    if (length < 1e-12) break;
    const stride = (stretch * (value - bound + aim(bound))) / length;
    for (let i = 0; i < size; i++) {
      const next = Math.round(price[i]! + (stride * direction[i]!) / scale[i]!);
      price[i] = Math.min(most[i]!, Math.max(least[i]!, next));
    }
  }
  for (let i = 0; i < often.length; i++) often[i]! *= (1 - FADE) / weight;
  price.set(best);
  return { bound: Math.min(bound, solveAt(board)), taken: step };
}
