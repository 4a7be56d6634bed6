/**
 * What can no longer be part of a better plan is taken off the board: the best day through an idea at a place is the best
 * way there, the idea itself, and the best way on; where that is less than the goal, it is gone for good.
 */
import { bestTwo, K, keptAt, keptAtStart, NEVER, POINT, sift, thenAt, type Board } from './board.ts';
import { beside, isNear } from './bound.ts';
import { GRID } from './feasible.ts';
import { NOT_FIRST, SAME_KIND } from './objective.ts';

/** The best ways to each stage: by half-hour, and by last kind where the last placement is near. */
interface Ways {
  far: Int32Array;
  near: Int32Array;
}

/** What a way brings to the stages after one: near its end each by last kind, then whatever the kind. */
function goOn(
  board: Board,
  ways: Ways,
  s: number,
  kept: number,
  kind: number,
  end: number,
  worth: number,
): void {
  let t = s + 1;
  for (; isNear(board, t, end); t++) {
    const at = (2 * t + kept) * K + kind;
    if (worth > ways.near[at]!) ways.near[at] = worth;
    worth -= board.empty[t]!;
    kept = board.afterEmpty[2 * t + kept]!;
    if (kept < 0) return;
  }
  if (worth > ways.far[2 * t + kept]!) ways.far[2 * t + kept] = worth;
}

/**
 * Takes off the board what no plan worth `goal` holds at these prices, which are solved.
 *
 * Shape: `goal` in grains.
 */
export function narrow(board: Board, goal: number): void {
  const { model } = board;
  const { stages } = model;
  const enough = goal - beside(board);
  const ways: Ways = {
    far: new Int32Array(2 * stages.length + 2).fill(NEVER),
    near: new Int32Array((2 * stages.length + 2) * K).fill(NEVER),
  };
  ways.far[keptAtStart(model, 0)] = 0;
  const same = model.terms.day ? SAME_KIND * POINT : 0;
  const before = new Int32Array(K);
  /** Sets what the best way before a placement of each kind brings; false where there is none. */
  const beforeEach = (worths: Int32Array, at: number, least: number) => {
    const [top, second, topKind] = bestTwo(worths, at, least);
    before.fill(top);
    if (topKind >= 0) before[topKind] = Math.max(top - same, second);
    return top > NEVER / 2;
  };
  stages.forEach((stage, s) => {
    const here = board.squares[s]!;
    const { sorts, losses, sortBest, reached, then } = here;
    const width = stage.room + 2;
    const grown = here.grown.fill(NEVER);
    const through = new Int32Array(sortBest.length).fill(NEVER);
    for (const kept of board.kepts[s]!) {
      const far = ways.far[2 * s + kept]!;
      if (!beforeEach(ways.near, (2 * s + kept) * K, far)) continue;
      const empty = board.afterEmpty[2 * s + kept]!;
      if (empty >= 0) {
        const none = far - board.empty[s]!;
        if (none > ways.far[2 * s + 2 + empty]!) ways.far[2 * s + 2 + empty] = none;
      }
      for (let count = 0; count < stage.most; count++)
        for (let place = 0; place <= stage.room; place++) {
          if (!((reached[place]! >> count) & 1)) continue;
          if (count && !beforeEach(grown, thenAt(width, count, place, kept), NEVER)) continue;
          const cost = (count ? NOT_FIRST : stage.firstCost) * POINT;
          const next = thenAt(width, count + 1, place + 1, kept);
          const on = thenAt(width, count + 1 === stage.most ? 0 : count + 1, place + 1, kept);
          for (let g = 0; g < sortBest.length; g++) {
            const loss = losses[place]![g]!;
            if (loss < 0) continue;
            const bare = before[sorts.kind[g]!]! - cost - loss;
            const to = sorts.step[g]!;
            const all = bare + then[on + to]!;
            if (all > through[g]!) through[g] = all;
            const worth = bare + sortBest[g]!;
            if (worth > grown[next + to]!) grown[next + to] = worth;
          }
        }
      for (let count = 1; count <= stage.most; count++)
        for (let place = 2; place < width; place++) {
          if (!((reached[place]! >> count) & 1)) continue;
          const at = thenAt(width, count, place, kept);
          const after = board.after[2 * s + keptAt(board, s, place, kept)]!;
          if (after < 0) continue;
          const end = stage.from + GRID * (place - 1);
          for (let kind = 0; kind < K; kind++)
            if (grown[at + kind]! > NEVER / 2) goOn(board, ways, s, after, kind, end, grown[at + kind]!);
        }
    }
    sift(board, s, (p) => through[here.puts.sort[p]!]! + here.puts.net[p]! >= enough);
  });
}
