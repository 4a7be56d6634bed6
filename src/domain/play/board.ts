/**
 * The board on which a day is solved: what may stand in each stage, sorted by what is alike, what each rule of the whole day
 * costs, and room for what the rest of the day brings. What can stand nowhere is taken off it, step by step.
 *
 * Everything is counted in whole grains, so sums are exact and the same on every engine.
 */
import { GRID, LONG_FREE, NOON } from './feasible.ts';
import { messyAt, type Filling, type Model, type Stage } from './model.ts';
import { GROWN_UP_STEP, NEAR_MINUTES } from './objective.ts';
import { FAMILY_COUNT, KINDS } from './types.ts';

/** Grains in a point. */
export const POINT = 4096;
/** Whole points of so many grains. */
export const pointsOf = (grains: number) => Math.floor(grains / POINT);
/** The least grains that are so many points. */
export const grainsOf = (points: number) => points * POINT;
/** Less than any day is worth; a few of them added still fit a whole number. */
export const NEVER = -400_000_000;
/** No minute of a day. */
const LATER_THAN_ANY = 10_000;
export const K = KINDS.length;
export const NO_KIND = -1;
/** Where the prices stand that are not of one idea, counted from the number of ideas. */
export const PLAY = 0;
export const SCREEN = 1;
export const GROWN_UP = 2;
export const FAMILIES_AT = 3;

/**
 * What may stand in an open stage. A sort is all that is alike but for its idea: kind, units, calm, messy and late; lists
 * of `sort…` have one entry for each, lists of `put…` one for each idea and length.
 */
export interface Open {
  sortKind: Int32Array;
  sortUnits: Int32Array;
  /** From the next place on: how much further in `then` a placement of the sort leads. */
  sortStep: Int32Array;
  /** By place and sort: points it loses there in grains, or −1 where it may not begin. */
  sortCost: Int32Array;
  /** Best worth at prices, and the put that has it. */
  sortBest: Int32Array;
  sortPut: Int32Array;
  /** Sorts that still hold a put, and their kinds. */
  alive: Int32Array;
  kinds: Int32Array;
  putIdea: Int32Array;
  putSort: Int32Array;
  putWorth: Int32Array;
  /** By number placed and next place: whether puts can lead there. */
  reached: Uint8Array;
  /** By next place: whether the last placement of the stage can end just before it. */
  ends: Uint8Array;
  /** What follows a placement: by number, next place, half-hour and kind. */
  then: Int32Array;
  /** Room to work in: the same shape as `then`; and three lists of sorts. */
  grown: Int32Array;
  fit: readonly [Int32Array, Int32Array, Int32Array];
}
/** Ways to fill a moment or a pin. */
export interface Closed {
  /** Index among the fillings of the stage. */
  at: Int32Array;
  one: Int32Array;
  /** The second idea, or −1. */
  two: Int32Array;
  worth: Int32Array;
  grownUp: Int32Array;
  net: Int32Array;
  end: number;
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
  open: (Open | undefined)[];
  closed: (Closed | undefined)[];
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
  /** Per stage, and one after the last: a placement that ends then or later is followed shortly; and what staying empty costs. */
  nearFrom: Int32Array;
  empty: Int32Array;
  /** Per idea what one costs at prices, and each of its units in an open stage. */
  once: Int32Array;
  each: Int32Array;
  /** Ideas that must stand somewhere. */
  forced: Uint8Array;
  /** By stage and idea: how often the relaxed days of late held it there, from 0 to 1. */
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

function openOf(model: Model, s: number): Open {
  const stage = model.stages[s]!;
  const { room, from, candidates, most } = stage;
  const sortOf = new Map<string, number>();
  const [kinds, units, calm, messy, late]: [number[], number[], boolean[], boolean[], number[]] = [
    [],
    [],
    [],
    [],
    [],
  ];
  const [idea, sort, worth]: [number[], number[], number[]] = [[], [], []];
  for (const candidate of candidates) {
    const it = model.ideas[candidate.idea]!;
    const kind = model.kind[candidate.idea]!;
    for (const length of candidate.lengths) {
      const facts = [kind, length, it.energy === 1, it.mess > 0, model.latest[candidate.idea]!] as const;
      const key = facts.join();
      if (!sortOf.has(key)) {
        sortOf.set(key, kinds.length);
        kinds.push(kind);
        units.push(length);
        calm.push(facts[2]);
        messy.push(facts[3]);
        late.push(facts[4]);
      }
      idea.push(candidate.idea);
      sort.push(sortOf.get(key)!);
      const points = candidate.base + (model.terms.minutes ? length >> 1 : 0);
      worth.push(POINT * points - (model.grownUp[candidate.idea] ? length : 0));
    }
  }
  const cost = new Int32Array(kinds.length * (room + 2)).fill(-1);
  kinds.forEach((_, g) => {
    for (let place = 0; place + units[g]! <= room; place++) {
      const start = from + GRID * place;
      const end = start + GRID * units[g]!;
      if (end > late[g]! || (start <= stage.settleUntil && !calm[g])) continue;
      cost[place * kinds.length + g] = messy[g] && messyAt(model, end) ? POINT : 0;
    }
  });
  const whole = (list: readonly number[]) => Int32Array.from(list);
  return {
    sortKind: whole(kinds),
    sortUnits: whole(units),
    sortStep: whole(units.map((length, g) => length * 2 * K + kinds[g]!)),
    sortCost: cost,
    sortBest: new Int32Array(kinds.length),
    sortPut: new Int32Array(kinds.length),
    alive: whole(kinds.map((_, g) => g)),
    kinds: whole([...new Set(kinds)]),
    putIdea: whole(idea),
    putSort: whole(sort),
    putWorth: whole(worth),
    reached: new Uint8Array(0),
    ends: new Uint8Array(0),
    then: new Int32Array((most + 1) * (room + 2) * 2 * K).fill(NEVER),
    grown: new Int32Array((most + 1) * (room + 2) * 2 * K),
    fit: [whole(kinds), whole(kinds), whole(kinds)],
  };
}

/** Units of a moment or a pin, which all its fillings take. */
const unitsOf = (fillings: readonly Filling[]) =>
  fillings[0]?.units.reduce((sum, units) => sum + units, 0) ?? 0;

function closedOf(model: Model, s: number): Closed {
  const { fillings, from } = model.stages[s]!;
  const grownUp = fillings.map(({ ideas, units }) =>
    ideas.reduce((sum, idea, n) => sum + (model.grownUp[idea] ? units[n]! : 0), 0),
  );
  const total = unitsOf(fillings);
  const whole = (list: readonly number[]) => Int32Array.from(list);
  return {
    at: whole(fillings.map((_, f) => f)),
    one: whole(fillings.map(({ ideas }) => ideas[0]!)),
    two: whole(fillings.map(({ ideas }) => ideas[1] ?? -1)),
    worth: whole(fillings.map(({ worth, lost }, f) => POINT * (worth - (lost ?? 0)) - grownUp[f]!)),
    grownUp: whole(grownUp),
    net: new Int32Array(fillings.length),
    end: from + GRID * total,
  };
}

/** Lays everything on the board that may stand somewhere. */
export function setUp(board: Board): void {
  const { model } = board;
  board.open = model.stages.map((stage, s) => (stage.open ? tidied(model, s, openOf(model, s)) : undefined));
  board.closed = model.stages.map((stage, s) => (stage.open ? undefined : closedOf(model, s)));
}

/** A board for this model, with all prices nought. */
export function boardOf(model: Model): Board {
  const { stages, ideas } = model;
  const supply = new Int32Array(ideas.length + FAMILIES_AT + FAMILY_COUNT).fill(1);
  supply.set([model.cap, model.screenCap, freeUnits(model)], ideas.length);
  let possible = 0;
  if (model.terms.day)
    for (const { candidates, fillings } of stages) {
      for (const { idea } of candidates) possible |= model.family[idea]!;
      for (const filling of fillings) for (const idea of filling.ideas) possible |= model.family[idea]!;
    }
  const after = stages.flatMap(({ morning }, s) => {
    if (stages[s + 1]?.morning === morning) return [0, 1];
    const next = keptAtStart(model, s + 1);
    return [-1, next];
  });
  const pairs = () => new Int32Array(2 * stages.length + 2);
  const board: Board = {
    model,
    price: new Int32Array(supply.length),
    supply,
    possible,
    spare: stages.reduce((sum, { fillings }) => sum + unitsOf(fillings), model.cap),
    open: [],
    closed: [],
    first: pairs(),
    firstKind: pairs(),
    second: pairs(),
    far: pairs(),
    after: Int32Array.from(after),
    afterEmpty: Int32Array.from(
      stages.flatMap((stage, s) =>
        [0, 1].map((kept) => after[2 * s + (kept || (stage.open ? freeAt(stage, 0) : 0))]!),
      ),
    ),
    nearFrom: Int32Array.from([...stages, undefined], (stage) =>
      stage && model.terms.day ? stage.from - NEAR_MINUTES : LATER_THAN_ANY,
    ),
    empty: Int32Array.from(stages, ({ emptyCost }) => emptyCost * POINT),
    once: new Int32Array(ideas.length),
    each: new Int32Array(ideas.length),
    forced: new Uint8Array(ideas.length),
    often: new Float64Array(ideas.length * stages.length),
  };
  setUp(board);
  return board;
}

/** The sorts that still hold a put, and the places that they lead to. */
function tidied({ stages }: Model, s: number, here: Open): Open {
  const { room, most } = stages[s]!;
  const width = room + 2;
  const sorts = here.sortKind.length;
  const holds = new Uint8Array(sorts);
  for (const g of here.putSort) holds[g] = 1;
  const alive = here.alive.filter((g) => holds[g]);
  const reached = new Uint8Array((most + 1) * width);
  const ends = new Uint8Array(width);
  reached[0] = 1;
  for (let count = 0; count < most; count++)
    for (let place = 0; place < width; place++) {
      if (!reached[count * width + place]) continue;
      for (const g of alive) {
        if (here.sortCost[place * sorts + g]! < 0) continue;
        const next = place + here.sortUnits[g]! + 1;
        reached[(count + 1) * width + next] = ends[next] = 1;
      }
    }
  const kinds = here.kinds.filter((kind) => alive.some((g) => here.sortKind[g] === kind));
  return { ...here, alive, kinds, reached, ends };
}

/** Leaves in a stage only the puts or fillings for which `stays` says so; lists are made anew, so old ones can be kept. */
export function sift(board: Board, s: number, stays: (n: number) => boolean): void {
  const [here, moment] = [board.open[s], board.closed[s]];
  const size = here ? here.putIdea.length : moment!.one.length;
  const left: number[] = [];
  for (let n = 0; n < size; n++) if (stays(n)) left.push(n);
  if (left.length === size) return;
  const some = (list: Int32Array) => {
    const less = new Int32Array(left.length);
    for (let n = 0; n < left.length; n++) less[n] = list[left[n]!]!;
    return less;
  };
  if (here) {
    const { putIdea, putSort, putWorth } = here;
    const less = { ...here, putIdea: some(putIdea), putSort: some(putSort), putWorth: some(putWorth) };
    board.open[s] = tidied(board.model, s, less);
    return;
  }
  const { at, one, two, worth, grownUp, net, end } = moment!;
  board.closed[s] = {
    ...{ at: some(at), one: some(one), two: some(two), worth: some(worth), grownUp: some(grownUp) },
    ...{ net: some(net), end },
  };
}

/** Leaves in a stage only the puts and fillings of which every idea may stand there. */
export function leave(board: Board, s: number, may: (idea: number) => boolean): void {
  const [here, moment] = [board.open[s], board.closed[s]];
  sift(board, s, (n) => {
    if (here) return may(here.putIdea[n]!);
    const two = moment!.two[n]!;
    return may(moment!.one[n]!) && (two < 0 || may(two));
  });
}

/** Index in `then` of the first kind. */
export const thenAt = (width: number, count: number, place: number, kept: number) =>
  ((count * width + place) * 2 + kept) * K;
