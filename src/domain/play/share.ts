/**
 * A plan all at once: the places that the relaxed day fills are shared out among the ideas, each idea once, as well as they
 * can be. Where many ideas are worth nearly as much, plans that grow step by step miss this.
 */
import { leaveOnly, NEVER, POINT, type Board } from './board.ts';
import { solveAt, walk } from './bound.ts';
import { EMPTY_MOMENT } from './model.ts';
import { search, type Found } from './search.ts';

/** Parts of plans side by side: few ideas are left to choose from, so few are enough. */
const WIDTH = 15;

/** A place of the relaxed day: a stage, and for how many units. */
interface Place {
  stage: number;
  units: number;
}

/**
 * Shares columns out over rows so that the sum of gains is greatest: the assignment problem, solved exactly by shortest
 * augmenting paths.
 *
 * Shape: per row its gain in each column, with at least as many columns as rows -> for each row its column.
 * Source: the Hungarian method in the form of Jonker and Volgenant, from memory.
 */
export function shareOut(gains: readonly Int32Array[]): Int32Array {
  const columns = gains[0]?.length ?? 0;
  // row and column nought are none; gains are whole, so sums are exact
  const rowPrice = new Float64Array(gains.length + 1);
  const price = new Float64Array(columns + 1);
  const owner = new Int32Array(columns + 1);
  const way = new Int32Array(columns + 1);
  for (let row = 1; row <= gains.length; row++) {
    owner[0] = row;
    let at = 0;
    const least = new Float64Array(columns + 1).fill(Infinity);
    const seen = new Uint8Array(columns + 1);
    do {
      seen[at] = 1;
      const here = owner[at]!;
      let [delta, next] = [Infinity, 0];
      for (let column = 1; column <= columns; column++) {
        if (seen[column]) continue;
        const cost = -gains[here - 1]![column - 1]! - rowPrice[here]! - price[column]!;
        if (cost < least[column]!) [least[column], way[column]] = [cost, at];
        if (least[column]! < delta) [delta, next] = [least[column]!, column];
      }
      for (let column = 0; column <= columns; column++)
        if (seen[column]) {
          rowPrice[owner[column]!]! += delta;
          price[column]! -= delta;
        } else least[column]! -= delta;
      at = next;
    } while (owner[at]);
    for (; at; at = way[at]!) owner[at] = owner[way[at]!]!;
  }
  const columnOf = new Int32Array(gains.length);
  owner.forEach((row, column) => {
    if (column && row) columnOf[row - 1] = column - 1;
  });
  return columnOf;
}

/** What each idea would gain at a place, its own price left out; last, once for every place, what nothing does. */
function gainsAt(
  board: Board,
  { stage, units }: Place,
  taken: ReadonlySet<number>,
  places: number,
): Int32Array {
  const { model, price } = board;
  const ideas = model.ideas.length;
  const gains = new Int32Array(ideas + places).fill(NEVER);
  const { puts, sorts } = board.squares[stage]!;
  puts.one.forEach((idea, p) => {
    if (puts.two[p]! < 0 && sorts.units[puts.sort[p]!] === units && !taken.has(idea))
      gains[idea] = puts.net[p]! + price[idea]!;
  });
  return gains.fill(model.stages[stage]!.open ? 0 : -EMPTY_MOMENT * POINT, ideas);
}

/**
 * Shares the places of the relaxed day out among the ideas and looks for the best order and lengths of what each stage
 * got; a moment filled by two keeps them.
 *
 * Shape: `goal` in grains; the board must be solved, and is given back so.
 */
export function shareDay(board: Board, goal: number): Found {
  const got: { stage: number; idea: number }[] = [];
  const taken = new Set<number>();
  const places: Place[] = [];
  const way = walk(board);
  for (let n = 0; n < way.length; n += 2) {
    const stage = way[n]!;
    const { puts, sorts } = board.squares[stage]!;
    const { one, two } = puts;
    const put = way[n + 1]!;
    if (two[put]! < 0) {
      places.push({ stage, units: sorts.units[puts.sort[put]!]! });
      continue;
    }
    for (const idea of [one[put]!, two[put]!]) {
      taken.add(idea);
      got.push({ stage, idea });
    }
  }
  shareOut(places.map((place) => gainsAt(board, place, taken, places.length))).forEach((idea, n) =>
    got.push({ stage: places[n]!.stage, idea }),
  );
  const { squares } = board;
  board.squares = squares.slice();
  leaveOnly(board, got);
  const found: Found =
    solveAt(board) < goal ? { score: NEVER, nodes: 0, whole: false } : search(board, goal, WIDTH);
  board.squares = squares;
  solveAt(board);
  return found;
}
