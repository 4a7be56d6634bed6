/** What a plan that grows can still look forward to: ideas that are wanted later, and the best puts of a stage. */
import type { Board } from './board.ts';

/** Ideas that may still stand in a stage or a later one, as bits; and those for which a stage is the last chance. */
export function wantedFrom(board: Board): { masks: Int32Array[]; last: number[][] } {
  const { model } = board;
  const words = (model.ideas.length >> 5) + 1;
  let mask = new Int32Array(words);
  const masks = [mask];
  const seen = new Uint8Array(model.ideas.length);
  const last: number[][] = [];
  for (let s = model.stages.length - 1; s >= 0; s--) {
    mask = mask.slice();
    const ends: number[] = [];
    const want = (idea: number) => {
      if (!seen[idea] && (board.price[idea]! > 0 || board.forced[idea])) ends.push(idea);
      seen[idea] = 1;
      mask[idea >> 5]! |= 1 << (idea & 31);
    };
    const { puts } = board.squares[s]!;
    for (let p = 0; p < puts.one.length; p++) {
      want(puts.one[p]!);
      if (puts.two[p]! >= 0) want(puts.two[p]!);
    }
    masks.unshift(mask);
    last.unshift(ends);
  }
  // what can stand nowhere is lost at once
  last.push(model.ideas.flatMap((_, idea) => (seen[idea] || !board.price[idea] ? [] : [idea])));
  return { masks, last };
}

/** The puts of one sort, the best first, with what each brings at prices. */
export interface Ranked {
  sort: number;
  best: number[];
  nets: number[];
}

/** Puts of each sort that is still alive, the best first. */
export function rankedPuts(board: Board, s: number): Ranked[] {
  const { sort: sorts, net: worths } = board.squares[s]!.puts;
  const all: Ranked[] = [];
  const bySort: (Ranked | undefined)[] = [];
  for (let p = 0; p < sorts.length; p++) {
    const sort = sorts[p]!;
    const net = worths[p]!;
    let ranked = bySort[sort];
    if (!ranked) all.push((ranked = bySort[sort] = { sort, best: [], nets: [] }));
    const { best, nets } = ranked;
    let at = best.length;
    for (; at > 0 && nets[at - 1]! < net; at--) {
      best[at] = best[at - 1]!;
      nets[at] = nets[at - 1]!;
    }
    best[at] = p;
    nets[at] = net;
  }
  return all;
}
