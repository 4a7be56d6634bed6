/**
 * An upper bound on what a day, or the rest of one, can bring. Rules that tie the whole day together (each idea once, the
 * share of play, screen minutes, the grown-up's time, each family of kinds) get a price; at prices the day becomes a
 * walk from placement to placement that only remembers the last kind and when it ended, and is solved exactly.
 */
import {
  type Board,
  FAMILIES_AT,
  freeAt,
  GROWN_UP,
  K,
  keptAt,
  keptAtStart,
  LIMIT,
  NEVER,
  NO_KIND,
  PLAY,
  POINT,
  SCREEN,
  thenAt,
} from './board.ts';
import { GRID } from './feasible.ts';
import { FAMILY, NOT_FIRST, SAME_KIND } from './objective.ts';
import { FAMILY_COUNT } from './types.ts';

/** Whether a placement that begins this stage follows shortly on one that ended then. */
export const isNear = ({ nearFrom }: Board, s: number, end: number) => end >= nearFrom[s]!;

/** What the stages from `s` on bring after a last placement of this kind that ended then. */
export function restFrom(board: Board, s: number, kept: number, kind: number, end: number): number {
  if (kept < 0) return NEVER;
  const at = 2 * s + kept;
  if (kind === NO_KIND || !isNear(board, s, end)) return board.far[at]!;
  let begun = board.first[at]!;
  if (kind === board.firstKind[at]) begun = Math.max(begun - SAME_KIND * POINT, board.second[at]!);
  const none = restFrom(board, s + 1, board.afterEmpty[at]!, kind, end) - board.empty[s]!;
  return none > begun ? none : begun;
}

/**
 * Writes down what the best placement that may begin here brings, by the kind before it; `second` is the best of another
 * kind than `topKind`.
 */
function beginAt(
  board: Board,
  s: number,
  count: number,
  place: number,
  kept: number,
  top: number,
  second: number,
  topKind: number,
): void {
  const { room, firstCost } = board.model.stages[s]!;
  const { then, lasts } = board.squares[s]!;
  const cost = (count ? NOT_FIRST : firstCost) * POINT;
  top -= cost;
  second -= cost;
  if (!count) {
    const at = 2 * s + kept;
    board.first[at] = top;
    board.second[at] = second;
    board.firstKind[at] = topKind;
    const after = board.afterEmpty[at]!;
    const none = after < 0 ? NEVER : board.far[2 * s + 2 + after]! - board.empty[s]!;
    board.far[at] = Math.max(top, none);
    return;
  }
  const to = thenAt(room + 2, count, place, kept);
  const stop = thenAt(room + 2, 0, place, kept);
  const again = board.model.terms.day ? Math.max(top - SAME_KIND * POINT, second) : top;
  for (let n = 0; n < lasts.length; n++) {
    const kind = lasts[n]!;
    const more = kind === topKind ? again : top;
    const none = then[stop + kind]!;
    then[to + kind] = more > none ? more : none;
  }
}

function solveStage(board: Board, s: number): void {
  const { model, once, each } = board;
  const stage = model.stages[s]!;
  const here = board.squares[s]!;
  const { losses, sortBest, sortPut, lasts, then, ends, joints } = here;
  const { kind: kinds, play, step } = here.sorts;
  const { one, two, sort, worth, grownUp, net } = here.puts;
  const grownUpPrice = board.price[model.ideas.length + GROWN_UP]! + board.price[model.ideas.length + LIMIT]!;
  sortBest.fill(NEVER);
  for (let p = 0; p < one.length; p++) {
    const a = one[p]!;
    const b = two[p]!;
    const g = sort[p]!;
    let brings = worth[p]! - once[a]! - each[a]! * play[g]! - grownUpPrice * grownUp[p]!;
    if (b >= 0) brings -= once[b]!;
    net[p] = brings;
    if (brings > sortBest[g]!) {
      sortBest[g] = brings;
      sortPut[g] = p;
    }
  }
  const { room, most } = stage;
  const width = room + 2;
  const kepts = board.kepts[s]!;
  // what comes after the last placement of a stage does not depend on how many stand there: it is kept under nought
  for (let n = 0; n < ends.length; n++) {
    const place = ends[n]!;
    const end = stage.from + GRID * (place - 1);
    for (const kept of kepts) {
      const to = place * 2 * K + kept * K;
      const after = board.after[2 * s + (kept || freeAt(stage, place))]!;
      // all kinds are one, but those with which something near would begin
      const rest = restFrom(board, s + 1, after, K, end);
      for (let n = 0; n < lasts.length; n++) then[to + lasts[n]!] = rest;
      let on = after;
      for (let t = s + 1; on >= 0 && isNear(board, t, end); t++) {
        const kind = board.firstKind[2 * t + on]!;
        if (kind >= 0) then[to + kind] = restFrom(board, s + 1, after, kind, end);
        on = board.afterEmpty[2 * t + on]!;
      }
    }
  }
  for (let j = 0; j < joints.length; j += 2) {
    const count = joints[j]!;
    const place = joints[j + 1]!;
    const loss = losses[place]!;
    const next = thenAt(width, count + 1 === most ? 0 : count + 1, place + 1, 0);
    // for both half-hours in one go, a sixth less work than one after the other
    let [top0, second0, kind0, top1, second1, kind1] = [NEVER, NEVER, NO_KIND, NEVER, NEVER, NO_KIND];
    for (let g = 0; g < kinds.length; g++) {
      const cost = loss[g]!;
      if (cost < 0) continue;
      const bare = sortBest[g]! - cost;
      const to = next + step[g]!;
      const more0 = bare + then[to]!;
      const more1 = bare + then[to + K]!;
      if (more0 > second0) {
        const kind = kinds[g]!;
        if (kind === kind0) {
          if (more0 > top0) top0 = more0;
        } else if (more0 > top0) {
          second0 = top0;
          top0 = more0;
          kind0 = kind;
        } else second0 = more0;
      }
      if (more1 > second1) {
        const kind = kinds[g]!;
        if (kind === kind1) {
          if (more1 > top1) top1 = more1;
        } else if (more1 > top1) {
          second1 = top1;
          top1 = more1;
          kind1 = kind;
        } else second1 = more1;
      }
    }
    for (const kept of kepts)
      if (kept) beginAt(board, s, count, place, 1, top1, second1, kind1);
      else beginAt(board, s, count, place, 0, top0, second0, kind0);
  }
}

/** What supplies and families bring at prices: the part of a bound that lies in no stage. */
export function beside({ model, price, supply, possible, spare }: Board): number {
  let sum = spare;
  const n = model.ideas.length + FAMILIES_AT;
  for (let i = 0; i < n; i++) sum += price[i]! * supply[i]!;
  for (let f = 0; f < FAMILY_COUNT; f++) if ((possible >> f) & 1) sum += FAMILY * POINT + price[n + f]!;
  return sum;
}

/** Solves the day at the prices on the board, from its end to its beginning, and gives the bound in grains. */
export function solveAt(board: Board): number {
  const { model, price, once, each } = board;
  const n = model.ideas.length;
  for (let i = 0; i < n; i++) {
    once[i] = price[i]! + price[n + FAMILIES_AT + model.family[i]!]!;
    each[i] = price[n + PLAY]! + (model.screen[i] ? price[n + SCREEN]! : 0);
  }
  for (let s = model.stages.length - 1; s >= 0; s--) solveStage(board, s);
  return board.far[keptAtStart(model, 0)]! + beside(board);
}

/**
 * The best day at these prices, in which an idea may stand as often as it likes.
 *
 * Shape: stages and puts by turns, in order of time.
 */
export function walk(board: Board): number[] {
  const { model } = board;
  const same = model.terms.day ? SAME_KIND * POINT : 0;
  const way: number[] = [];
  let kept = keptAtStart(model, 0);
  let [kind, end] = [NO_KIND, 0];
  for (let s = 0; s < model.stages.length; s++) {
    const { room, from, most, firstCost } = model.stages[s]!;
    const { sorts, losses, sortBest, sortPut, then } = board.squares[s]!;
    let last = isNear(board, s, end) ? kind : NO_KIND;
    let after = board.afterEmpty[2 * s + kept]!;
    let best = restFrom(board, s + 1, after, kind, end) - board.empty[s]!;
    let place = 0;
    for (let count = 0; count < most; count++) {
      let found = -1;
      const cost = (count ? NOT_FIRST : firstCost) * POINT;
      const next = thenAt(room + 2, count + 1 === most ? 0 : count + 1, place + 1, kept);
      for (let g = 0; g < sorts.kind.length; g++) {
        const loss = losses[place]![g]!;
        if (loss < 0) continue;
        const bare = sortBest[g]! - loss - cost + then[next + sorts.step[g]!]!;
        const worth = sorts.kind[g] === last ? bare - same : bare;
        if (worth <= best) continue;
        best = worth;
        found = g;
      }
      if (found < 0) break;
      way.push(s, sortPut[found]!);
      place += sorts.units[found]! + 1;
      last = kind = sorts.last[found]!;
      end = from + GRID * (place - 1);
      after = board.after[2 * s + keptAt(board, s, place, kept)]!;
      best = restFrom(board, s + 1, after, kind, end);
    }
    kept = Math.max(0, after);
  }
  return way;
}
