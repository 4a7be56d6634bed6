/**
 * What prices alone leave open is settled by cases: an idea stands in a stage, or it does not. Each case has prices of its
 * own; one that promises too little is closed. A count of cases ends it, never a clock.
 */
import { leave, NEVER, POINT, type Board } from './board.ts';
import { solveAt } from './bound.ts';
import { narrow } from './narrow.ts';
import type { Draft } from './nearby.ts';
import { improvePrices } from './prices.ts';
import { search, type Found } from './search.ts';
import { shareDay } from './share.ts';

/** Steps of the prices at first and in each case, and between two narrowings. */
const STEPS = 100;
const STEPS_EACH = 60;
const EVERY = 15;
/** How far below the goal the prices aim, in points. */
const AIM = 0.5;
/** What as many relaxed days agree on is settled together with others, so many at most. */
const SURE = 0.8;
const TOGETHER = 4;
/** Parts of plans side by side while cases are open, and where no case is left. */
const WIDTH = 10;
const WIDEST = 600;

/** Remembers all that a case can change on a board, and gives it back. */
function keep(board: Board): () => void {
  const [price, forced, often] = [board.price.slice(), board.forced.slice(), board.often.slice()];
  const squares = board.squares.slice();
  return () => {
    board.price.set(price);
    board.forced.set(forced);
    board.often.set(often);
    board.squares = squares.slice();
  };
}

/** Takes an idea out of a stage. */
const bar = (board: Board, s: number, gone: number) => leave(board, s, (idea) => idea !== gone);

/** Per idea in how many stages it may still stand. */
function stagesOf({ model, squares }: Board): Int32Array {
  const count = new Int32Array(model.ideas.length);
  for (const { puts } of squares)
    for (const idea of new Set([...puts.one, ...puts.two])) if (idea >= 0) count[idea]!++;
  return count;
}

interface Pick {
  idea: number;
  stage: number;
}

/**
 * Ideas and stages to settle next: the one on which the relaxed days agree most, and others on which they nearly do.
 * What they agree on more than `most` comes last, since it mostly settles itself.
 */
function picksOf(board: Board, most: number): Pick[] {
  const count = stagesOf(board);
  const all: (Pick & { often: number })[] = [];
  board.model.stages.forEach((_, stage) =>
    count.forEach((stages, idea) => {
      const often = board.often[stage * count.length + idea]!;
      if (often < 0.02 || (stages < 2 && (board.forced[idea] || often > 0.97))) return;
      all.push({ idea, stage, often });
    }),
  );
  const rank = ({ often }: { often: number }) => (often > most ? often - 0.5 : often);
  all.sort((a, b) => rank(b) - rank(a));
  const picks: Pick[] = [];
  for (const pick of all) {
    if (picks.length === TOGETHER) break;
    if (picks.length && (pick.often < SURE || picks.some(({ idea }) => idea === pick.idea))) continue;
    picks.push(pick);
  }
  return picks;
}

/**
 * Looks for a plan worth `goal`, by cases.
 *
 * Shape: `goal` in grains; a board, which is left changed; so many cases at most; `most` is how sure something may be that
 * is settled first; `next` is told each plan and says what is looked for from there on. `nodes` counts parts of plans and
 * `each` for a step of the prices. Of the plans the last is given back; `whole` says that no other is left to find.
 */
export function branch(
  board: Board,
  goal: number,
  cases: number,
  most: number,
  each: number,
  next: (found: Draft) => number = () => Infinity,
): Found {
  let nodes = 0;
  let used = 0;
  let whole = true;
  let best: { steps?: Draft['steps']; score: number } = { score: NEVER };
  const see = ({ steps, score, ...seen }: Found) => {
    nodes += seen.nodes;
    if (steps) goal = next((best = { steps, score }));
    return seen.whole;
  };
  const visit = (depth: number): void => {
    if (used === cases) {
      whole = false;
      return;
    }
    used++;
    const { bound, taken } = improvePrices(board, {
      steps: depth ? STEPS_EACH : STEPS,
      every: EVERY,
      goal: () => goal,
      aim: (at) => Math.max(at - goal, 0) + AIM * POINT,
    });
    nodes += each * taken;
    if (bound < goal) return;
    narrow(board, goal);
    solveAt(board);
    see(shareDay(board, goal));
    if (depth % 3 === 0 && see(search(board, goal, WIDTH))) return;
    const picks = picksOf(board, most);
    if (!picks.length) {
      if (!see(search(board, goal, WIDEST))) whole = false;
      return;
    }
    const restore = keep(board);
    // all of them; then all before one of them, without that one
    for (let n = picks.length; n >= 0 && goal < Infinity; n--) {
      restore();
      picks.slice(0, n).forEach(({ idea, stage }) => {
        board.forced[idea] = 1;
        board.model.stages.forEach((_, s) => s === stage || bar(board, s, idea));
      });
      const not = picks[n];
      if (not) bar(board, not.stage, not.idea);
      visit(depth + 1);
    }
  };
  visit(0);
  return { ...best, whole, nodes };
}
