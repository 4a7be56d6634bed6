/**
 * An upper bound on what a day, or the rest of one, can bring. Rules that tie the whole day together (each idea once, the
 * share of play, screen minutes, the grown-up's time, each family of kinds) get a price; at prices the day becomes a
 * walk from placement to placement that only remembers the last kind and when it ended, and is solved exactly.
 */
import {
  bestTwo,
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

function beginAt(board: Board, s: number, kept: number, byKind: Int32Array): void {
  const at = 2 * s + kept;
  const [best, second, bestKind] = bestTwo(byKind, 0, NEVER);
  board.first[at] = best;
  board.second[at] = second;
  board.firstKind[at] = bestKind;
  const after = board.afterEmpty[at]!;
  const none = after < 0 ? NEVER : board.far[2 * s + 2 + after]! - board.empty[s]!;
  board.far[at] = Math.max(best, none);
}

function solveStage(board: Board, s: number, byKind: Int32Array): void {
  const { model, once, each } = board;
  const stage = model.stages[s]!;
  const here = board.squares[s]!;
  const { sortBest, sortPut, sortPlay, sortKind, sortStep, sortCost, alive, lasts, then, ends, joints } =
    here;
  const { one, two, sort, worth, grownUp, net } = here.puts;
  const grownUpPrice = board.price[model.ideas.length + GROWN_UP]! + board.price[model.ideas.length + LIMIT]!;
  for (const g of alive) sortBest[g] = NEVER;
  for (let p = 0; p < one.length; p++) {
    const a = one[p]!;
    const b = two[p]!;
    const g = sort[p]!;
    let brings = worth[p]! - once[a]! - each[a]! * sortPlay[g]! - grownUpPrice * grownUp[p]!;
    if (b >= 0) brings -= once[b]!;
    net[p] = brings;
    if (brings > sortBest[g]!) {
      sortBest[g] = brings;
      sortPut[g] = p;
    }
  }
  const { room, most } = stage;
  const width = room + 2;
  const same = model.terms.day ? SAME_KIND * POINT : 0;
  const least = keptAtStart(model, s);
  const notFirst = NOT_FIRST * POINT;
  // what comes after the last placement of a stage does not depend on how many stand there: it is kept under nought
  for (let n = 0; n < ends.length; n++) {
    const place = ends[n]!;
    const end = stage.from + GRID * (place - 1);
    for (let kept = least; kept <= 1; kept++) {
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
    const costs = place * sortKind.length;
    for (let kept = least; kept <= 1; kept++) {
      let [top, second, topKind] = [NEVER, NEVER, NO_KIND];
      const next = thenAt(width, count + 1 === most ? 0 : count + 1, place + 1, kept);
      for (let n = 0; n < alive.length; n++) {
        const g = alive[n]!;
        const cost = sortCost[costs + g]!;
        const more = sortBest[g]! - cost + then[next + sortStep[g]!]!;
        if (more <= second || cost < 0) continue;
        const kind = sortKind[g]!;
        if (kind === topKind) {
          if (more > top) top = more;
        } else if (more > top) {
          second = top;
          top = more;
          topKind = kind;
        } else second = more;
      }
      const to = thenAt(width, count, place, kept);
      const stop = thenAt(width, 0, place, kept);
      top -= notFirst;
      second -= notFirst;
      const again = Math.max(top - same, second);
      for (let n = 0; n < lasts.length; n++) {
        const kind = lasts[n]!;
        const more = kind === topKind ? again : top;
        const none = then[stop + kind]!;
        then[to + kind] = more > none ? more : none;
      }
    }
  }
  for (let kept = least; kept <= 1; kept++) {
    byKind.fill(NEVER);
    if (most > 0) {
      const next = thenAt(width, most === 1 ? 0 : 1, 1, kept);
      for (const g of alive) {
        const cost = sortCost[g]!;
        if (cost < 0) continue;
        const kind = sortKind[g]!;
        const worth = sortBest[g]! - cost - stage.firstCost * POINT + then[next + sortStep[g]!]!;
        if (worth > byKind[kind]!) byKind[kind] = worth;
      }
    }
    beginAt(board, s, kept, byKind);
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
  const byKind = new Int32Array(K);
  for (let s = model.stages.length - 1; s >= 0; s--) solveStage(board, s, byKind);
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
    const { alive, sortKind, sortCost, sortBest, sortStep, sortUnits, sortLast, sortPut, then } =
      board.squares[s]!;
    let last = isNear(board, s, end) ? kind : NO_KIND;
    let after = board.afterEmpty[2 * s + kept]!;
    let best = restFrom(board, s + 1, after, kind, end) - board.empty[s]!;
    let place = 0;
    for (let count = 0; count < most; count++) {
      let step = -1;
      const cost = (count ? NOT_FIRST : firstCost) * POINT;
      const next = thenAt(room + 2, count + 1 === most ? 0 : count + 1, place + 1, kept);
      for (let n = 0; n < alive.length; n++) {
        const g = alive[n]!;
        const loss = sortCost[place * sortKind.length + g]!;
        if (loss < 0) continue;
        const bare = sortBest[g]! - loss - cost + then[next + sortStep[g]!]!;
        const worth = sortKind[g] === last ? bare - same : bare;
        if (worth <= best) continue;
        best = worth;
        step = g;
      }
      if (step < 0) break;
      way.push(s, sortPut[step]!);
      place += sortUnits[step]! + 1;
      last = kind = sortLast[step]!;
      end = from + GRID * (place - 1);
      after = board.after[2 * s + keptAt(board, s, place, kept)]!;
      best = restFrom(board, s + 1, after, kind, end);
    }
    kept = Math.max(0, after);
  }
  return way;
}
