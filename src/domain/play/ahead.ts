/** What a plan that grows can still look forward to: ideas that are wanted later, room for play, and the best puts of a stage. */
import type { Board } from './board.ts';

/**
 * Ideas that may still stand in a stage or a later one, with those that must come before them, as bits; those for which a
 * stage is the last chance; and how much play the stages from there on can hold.
 */
export function wantedFrom(board: Board): { masks: Int32Array[]; last: number[][]; room: number[] } {
  const { model } = board;
  const words = (model.ideas.length >> 5) + 1;
  let mask = new Int32Array(words);
  const masks = [mask];
  const seen = new Uint8Array(model.ideas.length);
  const last: number[][] = [];
  const room = [0];
  for (let s = model.stages.length - 1; s >= 0; s--) {
    mask = mask.slice();
    const ends: number[] = [];
    const want = (idea: number) => {
      if (!seen[idea] && (board.price[idea]! > 0 || board.forced[idea])) ends.push(idea);
      seen[idea] = 1;
      mask[idea >> 5]! |= 1 << (idea & 31);
      const twin = model.twin[idea]!;
      if (twin >= 0) mask[twin >> 5]! |= 1 << (twin & 31);
    };
    const { open, closed } = board;
    for (const idea of open[s]?.putIdea ?? []) want(idea);
    const moment = closed[s];
    if (moment)
      for (let f = 0; f < moment.net.length; f++) {
        want(moment.one[f]!);
        if (moment.two[f]! >= 0) want(moment.two[f]!);
      }
    masks.unshift(mask);
    last.unshift(ends);
    let most = 0;
    const here = open[s];
    if (here) {
      const { most: places, room: size } = model.stages[s]!;
      for (let n = 1; n <= places; n++)
        for (let place = size + 1; place > n; place--)
          if (here.reached[n * (size + 2) + place]) most = Math.max(most, place - n);
    }
    room.unshift(room[0]! + most);
  }
  // what can stand nowhere is lost at once
  last.push(model.ideas.flatMap((_, idea) => (seen[idea] || !board.price[idea] ? [] : [idea])));
  return { masks, last, room };
}

/** The puts of one sort, the best first, with what each brings at prices. */
export interface Ranked {
  sort: number;
  puts: number[];
  nets: number[];
}

/** Puts of each sort that is still alive, the best first. */
export function rankedPuts(board: Board, s: number): Ranked[] {
  const { putIdea, putSort, putWorth, sortUnits } = board.open[s]!;
  const { once, each } = board;
  const all: Ranked[] = [];
  const bySort: (Ranked | undefined)[] = [];
  for (let p = 0; p < putIdea.length; p++) {
    const sort = putSort[p]!;
    const idea = putIdea[p]!;
    const net = putWorth[p]! - once[idea]! - each[idea]! * sortUnits[sort]!;
    let ranked = bySort[sort];
    if (!ranked) all.push((ranked = bySort[sort] = { sort, puts: [], nets: [] }));
    const { puts, nets } = ranked;
    let at = puts.length;
    for (; at > 0 && nets[at - 1]! < net; at--) {
      puts[at] = puts[at - 1]!;
      nets[at] = nets[at - 1]!;
    }
    puts[at] = p;
    nets[at] = net;
  }
  return all;
}
