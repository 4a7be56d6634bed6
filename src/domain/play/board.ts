/**
 * The board on which a day is solved: what may stand in each stage, sorted by what is alike, what each rule of the whole day
 * costs, and room for what the rest of the day brings. What can stand nowhere is taken off it, step by step.
 *
 * Everything is counted in whole grains, so sums are exact and the same on every engine.
 */
import { GRID, LONG_FREE, NOON } from './feasible.ts';
import type { Model, Stage } from './model.ts';
import { GROWN_UP_STEP, NEAR_MINUTES, shortlyBefore } from './objective.ts';
import { FAMILY_COUNT, KINDS } from './types.ts';

/** Grains in a point. */
export const POINT = 4096;
/** Whole points of so many grains. */
export const pointsOf = (grains: number) => Math.floor(grains / POINT);
/** The least that is worth more by whole steps of so many grains; with none as much. */
export const moreThan = (grains: number, by: number) => (by ? (Math.floor(grains / by) + 1) * by : grains);
/** Less than any day is worth; a few of them added still fit a whole number. */
export const NEVER = -400_000_000;
/** No minute of a day, and more units than one has. */
const LATER_THAN_ANY = 10_000;
export const K = KINDS.length;
export const NO_KIND = -1;
/** Where the prices stand that are not of one idea, counted from the number of ideas. */
export const PLAY = 0;
export const SCREEN = 1;
export const GROWN_UP = 2;
/** The most that a plan may ask of a grown-up, where one that asks less is looked for. */
export const LIMIT = 3;
export const FAMILIES_AT = 4;

/** One entry for each put: an idea for some time or, in a hard moment, two that follow one another. */
export interface Puts {
  one: Int32Array;
  /** The second idea, or −1. */
  two: Int32Array;
  /** Units of the first. */
  first: Int32Array;
  sort: Int32Array;
  worth: Int32Array;
  /** Units that need a grown-up. */
  grownUp: Int32Array;
  /** Worth at the prices for which the board was solved. */
  net: Int32Array;
}
/** One entry for each sort: all that is alike but for its ideas. */
export interface Sorts {
  /** Kinds of the first idea and of the last. */
  kind: Int32Array;
  last: Int32Array;
  units: Int32Array;
  /** Units that count as play: none in a moment or a pin. */
  play: Int32Array;
  /** From the next place on: how much further in `then` a placement of the sort leads. */
  step: Int32Array;
}
/** What may stand in a stage. Sorts are those that still hold a put: of like kinds, units, calm, messy and late. */
export interface Square {
  puts: Puts;
  sorts: Sorts;
  /** By place what each sort loses there in grains, or −1 where it may not begin. */
  losses: Int32Array[];
  /** Of each sort the best worth at prices, and the put that has it. */
  sortBest: Int32Array;
  sortPut: Int32Array;
  /** Kinds that can be the last. */
  lasts: number[];
  /** By next place: how many placements can lead there, as bits. */
  reached: Int32Array;
  /** Next places before which the last placement of the stage can end. */
  ends: number[];
  /** Of what is reached that from which more may follow: number and next place by turns, the last place first, the start last. */
  joints: number[];
  /** What follows a placement: by number, next place, half-hour and last kind. */
  then: Int32Array;
  /** Room to work in, of the same shape. */
  grown: Int32Array;
}

export interface Board {
  model: Model;
  /** Prices in grains: of each idea, then of a unit of play, of screen and of a grown-up, then of the families. */
  price: Int32Array;
  /** How much of each the day has. */
  supply: Int32Array;
  /** Families that something possible belongs to, as bits. */
  possible: number;
  /** At least as many grains as a day can lose to minutes of a grown-up: with them, whole points stay whole. */
  spare: number;
  /** By stage. */
  squares: Square[];
  /** By stage and half-hour kept: best first placement or filling, its kind, and the best of another kind. */
  first: Int32Array;
  firstKind: Int32Array;
  second: Int32Array;
  /** What a stage and all after it bring when nothing stood shortly before. */
  far: Int32Array;
  /** The half-hour with which the next stage begins, by stage and half-hour at its end; −1 where one is missing. */
  after: Int32Array;
  /** The same where the stage stays empty. */
  afterEmpty: Int32Array;
  /** Per stage with what half-hour it can begin: with one only behind a stage that can leave it free. */
  kepts: number[][];
  /** Per stage, and one after the last: a placement that ends then or later is followed shortly; and what staying empty costs. */
  nearFrom: Int32Array;
  empty: Int32Array;
  /** Per idea what one costs at prices, and each of its units in an open stage. */
  once: Int32Array;
  each: Int32Array;
  /** Ideas that must stand somewhere. */
  forced: Uint8Array;
  /** By stage and idea: how often the relaxed days of late held it there; above 1 where it stood there more than once. */
  often: Float64Array;
}

/** Whether half an hour stays free when a stage ends with its next place there, as 0 or 1. */
export const freeAt = (stage: Stage, place: number) => {
  const from = place ? stage.from + GRID * (place - 1) : stage.freeFrom;
  return stage.freeEnd - from >= LONG_FREE && (!stage.morning || from < NOON) ? 1 : 0;
};

/** The half-hour kept when a stage ends with its next place there. */
export const keptAt = ({ model }: Board, s: number, place: number, kept: number) =>
  kept || freeAt(model.stages[s]!, place);

/** The half-hour with which a half of the day begins: kept where none is wanted. */
export function keptAtStart({ stages, freeWanted }: Model, s: number): number {
  const stage = stages[s];
  return stage && (stage.morning ? freeWanted.morning : freeWanted.afternoon) ? 0 : 1;
}

/** The budget on the grid, with the part of a step that costs nothing yet. */
const freeUnits = ({ budget }: Model) => Math.ceil(budget / GRID) + GROWN_UP_STEP / GRID - 1;

/** A stage before it is known where its puts lead. */
type Bare = Pick<Square, 'puts' | 'sorts' | 'losses' | 'then' | 'grown'>;

function squareOf(model: Model, s: number): Bare {
  const { room, from, fillings, most, open, settleUntil } = model.stages[s]!;
  const sortOf = new Map<string, number>();
  const sorts: number[][] = [];
  const puts: number[][] = [];
  for (const { ideas, units, worth } of most ? fillings : []) {
    const [one, two = -1] = ideas as [number, number?];
    const { energy, mess } = model.ideas[one]!;
    const total = units.reduce((sum, each) => sum + each);
    const last = model.kind[two < 0 ? one : two]!;
    const sort = [
      ...[model.kind[one]!, last, total, open ? total : 0, 2 * K * total + last],
      // what fills a moment or a pin is known to keep its rules
      ...(open ? [+(energy === 1), +(mess > 0), model.latest[one]!] : [1, 0, LATER_THAN_ANY]),
    ];
    const key = sort.join();
    if (!sortOf.has(key)) sortOf.set(key, sorts.push(sort) - 1);
    const grownUp = ideas.reduce((sum, idea, n) => sum + (model.grownUp[idea] ? units[n]! : 0), 0);
    puts.push([one, two, units[0]!, sortOf.get(key)!, POINT * worth - grownUp, grownUp]);
  }
  const losses = Array.from(
    { length: room + 2 },
    (_, place) =>
      new Int32Array(
        sorts.map(([, , units, , , calm, messy, late]) => {
          const start = from + GRID * place;
          const end = start + GRID * units!;
          if (place + units! > room || end > late! || (start <= settleUntil && !calm)) return -1;
          return messy && shortlyBefore(model.starts, end) ? POINT : 0;
        }),
      ),
  );
  const column = (rows: readonly number[][], n: number) => new Int32Array(rows.map((row) => row[n]!));
  const table = () => new Int32Array((most + 1) * (room + 2) * 2 * K).fill(NEVER);
  return {
    sorts: {
      kind: column(sorts, 0),
      last: column(sorts, 1),
      units: column(sorts, 2),
      play: column(sorts, 3),
      step: column(sorts, 4),
    },
    losses,
    puts: {
      one: column(puts, 0),
      two: column(puts, 1),
      first: column(puts, 2),
      sort: column(puts, 3),
      worth: column(puts, 4),
      grownUp: column(puts, 5),
      net: column(puts, 4),
    },
    then: table(),
    grown: table(),
  };
}

/** A board for this model, with all prices nought. */
export function boardOf(model: Model): Board {
  const { stages, ideas } = model;
  const supply = new Int32Array(ideas.length + FAMILIES_AT + FAMILY_COUNT).fill(1);
  supply.set([model.cap, model.screenCap, freeUnits(model), LATER_THAN_ANY], ideas.length);
  let possible = 0;
  if (model.terms.day)
    for (const { fillings } of stages)
      for (const filling of fillings) for (const idea of filling.ideas) possible |= 1 << model.family[idea]!;
  const after = stages.flatMap(({ morning }, s) => {
    if (stages[s + 1]?.morning === morning) return [0, 1];
    const next = keptAtStart(model, s + 1);
    return [-1, next];
  });
  let most = 0;
  const kepts = stages.map((stage, s) => {
    const before = stages[s - 1];
    const least = keptAtStart(model, s);
    most = before?.morning === stage.morning ? most || freeAt(before, 0) : least;
    return least < most ? [0, 1] : [most];
  });
  const pairs = () => new Int32Array(2 * stages.length + 2);
  return {
    model,
    price: new Int32Array(supply.length),
    supply,
    possible,
    spare: stages.reduce((sum, { open, room }) => sum + (open ? 0 : room), model.cap),
    squares: stages.map((stage, s) => tidied(stage, squareOf(model, s))),
    first: pairs(),
    firstKind: pairs(),
    second: pairs(),
    far: pairs(),
    after: Int32Array.from(after),
    afterEmpty: Int32Array.from(
      stages.flatMap((stage, s) => [0, 1].map((kept) => after[2 * s + (kept || freeAt(stage, 0))]!)),
    ),
    kepts,
    nearFrom: Int32Array.from([...stages, undefined], (stage) =>
      stage && model.terms.day ? stage.from - NEAR_MINUTES : LATER_THAN_ANY,
    ),
    empty: Int32Array.from(stages, ({ emptyCost }) => emptyCost * POINT),
    once: new Int32Array(ideas.length),
    each: new Int32Array(ideas.length),
    forced: new Uint8Array(ideas.length),
    often: new Float64Array(ideas.length * stages.length),
  };
}

/** Some entries of a list. */
function some(list: Int32Array, left: readonly number[]): Int32Array {
  const less = new Int32Array(left.length);
  for (let n = 0; n < left.length; n++) less[n] = list[left[n]!]!;
  return less;
}
/** The same entries of several lists. */
const ofEach = <Lists extends object>(lists: Lists, left: readonly number[]) =>
  Object.fromEntries(
    Object.entries(lists).map(([name, list]: [string, Int32Array]) => [name, some(list, left)]),
  ) as Lists;

/** Without the sorts that no longer hold a put, and with the places that the others lead to. */
function tidied({ room, most }: Stage, here: Bare | Square): Square {
  const all = here.sorts.kind.length;
  const number = new Int32Array(all);
  const left: number[] = [];
  for (const g of here.puts.sort) number[g] = 1;
  for (let g = 0; g < all; g++) if (number[g]) number[g] = left.push(g) - 1;
  // the same sorts lead to the same places
  if (left.length === all && 'reached' in here) return here;
  const sorts = ofEach(here.sorts, left);
  const losses = here.losses.map((list) => some(list, left));
  const puts = { ...here.puts, sort: some(number, [...here.puts.sort]) };
  const reached = new Int32Array(room + 2);
  const ends: number[] = [];
  const joints: number[] = [];
  reached[0] = 1;
  for (let place = 0; place < room; place++)
    for (let g = 0; g < left.length; g++)
      if (losses[place]![g]! >= 0)
        reached[place + sorts.units[g]! + 1]! |= (reached[place]! << 1) & ((2 << most) - 1);
  for (let place = room + 1; place >= 2; place--) {
    if (reached[place]) ends.push(place);
    for (let count = most - 1; count >= 1; count--)
      if ((reached[place]! >> count) & 1) joints.push(count, place);
  }
  joints.push(0, 0);
  return {
    ...here,
    puts,
    sorts,
    losses,
    sortBest: new Int32Array(left.length),
    sortPut: new Int32Array(left.length),
    lasts: [...new Set(sorts.last)],
    reached,
    ends,
    joints,
  };
}

/** Leaves in a stage only the puts for which `stays` says so; lists are made anew, so old ones can be kept. */
export function sift(board: Board, s: number, stays: (put: number) => boolean): void {
  const here = board.squares[s]!;
  const puts = here.puts.one.length;
  const left: number[] = [];
  for (let p = 0; p < puts; p++) if (stays(p)) left.push(p);
  if (left.length < puts)
    board.squares[s] = tidied(board.model.stages[s]!, { ...here, puts: ofEach(here.puts, left) });
}

/** Leaves in a stage only the puts of which every idea may stand there. */
export function leave(board: Board, s: number, may: (idea: number) => boolean): void {
  const { one, two } = board.squares[s]!.puts;
  sift(board, s, (p) => may(one[p]!) && (two[p]! < 0 || may(two[p]!)));
}

/** Leaves in every stage only the ideas that these place there. */
export function leaveOnly(board: Board, places: readonly { stage: number; idea: number }[]): void {
  board.squares.forEach((_, s) => {
    const here = new Set(places.flatMap(({ stage, idea }) => (stage === s ? [idea] : [])));
    leave(board, s, (idea) => here.has(idea));
  });
}

/** The best of these and its kind, and the best of another kind; none is better than `least`. */
export function bestTwo(worths: Int32Array, at: number, least: number): [number, number, number] {
  let [top, second, topKind] = [least, least, NO_KIND];
  for (let kind = 0; kind < K; kind++) {
    const worth = worths[at + kind]!;
    if (worth > top) [second, top, topKind] = [top, worth, kind];
    else if (worth > second) second = worth;
  }
  return [top, second, topKind];
}

/** Index in `then` of the first kind. */
export const thenAt = (width: number, count: number, place: number, kept: number) =>
  ((count * width + place) * 2 + kept) * K;
