/**
 * Better plans near a good one: a few stages are planned anew, while in the others every idea stays where it is, though it
 * may last shorter or longer.
 */
import { leave, leaveOnly, moreThan, type Board } from './board.ts';
import { solveAt } from './bound.ts';
import { narrow } from './narrow.ts';
import { END, search, type Step } from './search.ts';

/** Parts of plans side by side, for ties in a whole day more of them, and what a try counts for beside them. */
const WIDTH = 10;
const WHOLE_WIDTH = 200;
/** So few stages are planned anew all together, to settle which of equal plans comes first. */
const FEW = 6;
const TRY_NODES = 10;

/** A plan and its worth in grains. */
export interface Draft {
  steps: readonly Step[];
  score: number;
}

/** Stages to plan anew together: three, neighbours first and then further apart. */
function groupsOf(stages: number): number[][] {
  const groups: number[][] = [];
  for (let apart = 1; apart * 2 < stages; apart++)
    for (let first = 0; first + 2 * apart < stages; first++)
      groups.push([first, first + apart, first + 2 * apart]);
  return groups;
}

/**
 * Plans a few stages at a time anew, until no few of them give a step of `by` grains more or the nodes are spent; where that
 * is nought two at a time, where there are few all together first, until none gives a plan that is worth as much and comes
 * before.
 *
 * Shape: a plan and `bound`, grains that no plan exceeds -> a better plan, or the same. The board is given back as it
 * was, but for what its prices solve.
 */
export function improveNearby(
  board: Board,
  start: Draft,
  bound: number,
  nodes: number,
  by: number,
): Draft & { nodes: number } {
  const { model, squares } = board;
  const all = squares.map((_, s) => s);
  const pairs = all.filter((s) => s % 2 === 0).map((s) => all.slice(s, s + 2));
  // at first nothing is planned anew, so that others are compared with what stands there
  const groups = by ? groupsOf(all.length) : [[], ...(all.length > FEW ? [] : [all]), ...pairs];
  const taken = new Uint8Array(model.ideas.length);
  let { steps, score } = start;
  let standing: Board['squares'] | undefined;
  let spent = 0;
  let quiet = 0;
  let tie = END;
  for (
    let at = 0;
    quiet < groups.length && moreThan(score, by) <= bound && spent < nodes;
    at = (at + 1) % groups.length
  ) {
    quiet++;
    if (!standing) {
      board.squares = squares.slice();
      leaveOnly(board, steps);
      standing = board.squares;
    }
    const group = groups[at]!;
    taken.fill(0);
    for (const { stage, idea } of steps) if (!group.includes(stage)) taken[idea] = 1;
    board.squares = standing.slice();
    for (const s of group) {
      board.squares[s] = squares[s]!;
      leave(board, s, (idea) => !taken[idea]);
    }
    const goal = moreThan(score, by);
    spent += TRY_NODES;
    if (solveAt(board) < goal) continue;
    narrow(board, goal);
    const found = search(board, goal, by || group.length < 3 ? WIDTH : WHOLE_WIDTH, !by);
    spent += found.nodes;
    if (!found.steps || (found.score === score && found.tie! >= tie)) continue;
    [steps, score, tie] = [found.steps, found.score, found.tie!];
    standing = undefined;
    quiet = 0;
  }
  board.squares = squares;
  return { steps, score, nodes: spent };
}
