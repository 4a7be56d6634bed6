/**
 * Plans grow side by side through the day, one placement at a time. One that promises too little at prices is dropped, and
 * so is one that another with as much left to choose from already equals. Where too many are left the most promising stay:
 * then a better plan may have been missed, and the answer says so. A count ends it, never a clock.
 */
import { rankedPuts, wantedFrom } from './ahead.ts';
import {
  FAMILIES_AT,
  keptAt,
  keptAtStart,
  LIMIT,
  NEVER,
  NO_KIND,
  POINT,
  thenAt,
  type Board,
} from './board.ts';
import { beside, isNear, restFrom } from './bound.ts';
import { GRID } from './feasible.ts';
import { FAMILY, GROWN_UP_STEP, grownUpCost, NOT_FIRST, SAME_KIND } from './objective.ts';

/** One placement of a plan. */
export interface Step {
  stage: number;
  idea: number;
  units: number;
  from: number;
}
export interface Found {
  /** The best plan worth enough. */
  steps?: readonly Step[] | undefined;
  score: number;
  /** Nothing was left out for want of room: without a plan there is none. */
  whole: boolean;
  nodes: number;
  /** Things to fetch, then starts and ideas: of two plans worth the same the smaller comes first. */
  tie?: string | undefined;
}

/** A part of a plan, up to some place in a stage. */
interface Part {
  before: Part | undefined;
  steps: readonly Step[];
  /** Points so far, in grains, families and the grown-up's cost apart. */
  worth: number;
  /** The same at prices: with what comes after it is a bound. */
  priced: number;
  count: number;
  place: number;
  kept: number;
  kind: number;
  end: number;
  play: number;
  screen: number;
  /** Units that needed a grown-up. */
  grownUp: number;
  met: number;
  /** Placements that the window may still take. */
  left: number;
  /** Ideas as bits, and behind them what they need. */
  used: Int32Array;
  /** Starts and ideas so far. */
  list: string;
}

/** The same part once more; written out, since a spread takes several times as long. */
const copyOf = (part: Part, used: Int32Array): Part => ({
  before: part.before,
  steps: part.steps,
  worth: part.worth,
  priced: part.priced,
  count: part.count,
  place: part.place,
  kept: part.kept,
  kind: part.kind,
  end: part.end,
  play: part.play,
  screen: part.screen,
  grownUp: part.grownUp,
  met: part.met,
  left: part.left,
  used,
  list: part.list,
});

/** More than a plan needs things. */
const MANY = 1000;
/** Behind every start and idea. */
export const END = '\uffff';

const bitsOf = (mask: number) => {
  let bits = 0;
  for (let rest = mask; rest; rest &= rest - 1) bits++;
  return bits;
};

/** Ways to go on, before anything is written down for them: the first so many by rank, in order; of equals the first. */
class Shortlist {
  readonly ranks: number[] = [];
  readonly from: Part[] = [];
  /** A put, or −1 for the end of the stage. */
  readonly choices: number[] = [];
  cut = false;
  constructor(
    /** What a way must promise to come on the list. */
    public least: number,
    private readonly width: number,
    private readonly ties: boolean,
  ) {}
  add(rank: number, from: Part, choice: number): void {
    const { ranks, from: parts, choices, width } = this;
    let at = ranks.length;
    if (at === width) {
      this.cut = true;
      at--;
    }
    if (!this.cut || ranks[at]! < rank) {
      for (; at > 0 && ranks[at - 1]! < rank; at--) {
        ranks[at] = ranks[at - 1]!;
        parts[at] = parts[at - 1]!;
        choices[at] = choices[at - 1]!;
      }
      ranks[at] = rank;
      parts[at] = from;
      choices[at] = choice;
    }
    if (this.cut && !this.ties) this.least = ranks[width - 1]! + 1;
  }
}

const uses = ({ used }: Part, idea: number) => (used[idea >> 5]! >> (idea & 31)) & 1;

/**
 * Looks for the best plan worth at least `goal`, guided by the prices on the board, which are solved.
 *
 * Shape: `goal` in grains; at most `width` parts of plans are kept side by side. With `ties` it is the first of those worth
 * most, and it is looked for among the most frugal parts instead of the most promising.
 */
export function search(board: Board, goal: number, width: number, ties = false): Found {
  const { model, price } = board;
  const { marks, stages, terms } = model;
  const { masks: wanted, last } = wantedFrom(board);
  const words = wanted[0]!.length;
  const same = terms.day ? SAME_KIND * POINT : 0;
  const familyPrice = (idea: number) => price[model.ideas.length + FAMILIES_AT + model.family[idea]!]!;
  const most = board.supply[model.ideas.length + LIMIT]!;
  let count = 0;
  let whole = true;
  const none = new Int32Array(marks[0]?.length ?? words);
  /** How many things a part needs so far, with one idea or two more. */
  const needs = ({ used }: Part, one: Int32Array = none, two: Int32Array = none) => {
    let sum = 0;
    for (let w = words; w < none.length; w++) sum += bitsOf(used[w]! | one[w]! | two[w]!);
    return sum;
  };
  let parts: Part[] = [
    {
      before: undefined,
      steps: [],
      worth: board.spare,
      priced: beside(board) - last[stages.length]!.reduce((sum, idea) => sum + price[idea]!, 0),
      count: 0,
      place: 0,
      kept: keptAtStart(model, 0),
      kind: NO_KIND,
      end: 0,
      play: model.cap,
      screen: model.screenCap,
      grownUp: 0,
      met: 0,
      left: 0,
      used: none,
      list: '',
    },
  ];
  /** What it costs at prices that another idea of a family met already counts for nothing. */
  const metAgain = (met: number, idea: number) =>
    terms.day && (met >> model.family[idea]!) & 1 ? familyPrice(idea) : 0;

  /** What is left over when a stage ends: ideas that had their last chance in it. */
  const leftOver = (part: Part, s: number) => {
    let lost = 0;
    for (const idea of last[s]!) if (!uses(part, idea)) lost += board.forced[idea] ? -NEVER : price[idea]!;
    return lost;
  };

  /** Whether all that can follow `b` can follow `a`, and is worth as much. */
  const covers = (a: Part, b: Part) => {
    if (a.kept < b.kept || a.play < b.play || a.screen < b.screen || a.left < b.left) return false;
    let worth = a.worth;
    if (a.kind !== b.kind || a.end > b.end) worth -= same;
    if (terms.day) {
      worth -= FAMILY * POINT * bitsOf(b.met & ~a.met);
      if (a.grownUp > b.grownUp) worth -= POINT * Math.ceil((GRID * (a.grownUp - b.grownUp)) / GROWN_UP_STEP);
    }
    if (ties && worth === b.worth) return a.list <= b.list && a.list + END <= b.list + END;
    return worth >= b.worth;
  };
  /** Writes down the parts on a shortlist, those apart that another covers. */
  const settle = (s: number, list: Shortlist, make: (from: Part, choice: number) => Part): Part[] => {
    const mask = ties ? none.map((_, w) => wanted[s]![w] ?? -1) : wanted[s]!;
    const byUse = new Map<string, Part[]>();
    const kept: Part[] = [];
    for (let n = 0; n < list.ranks.length; n++) {
      const part = make(list.from[n]!, list.choices[n]!);
      let key = `${part.place}`;
      for (let w = 0; w < mask.length; w++) key += ` ${mask[w]! & part.used[w]!}`;
      const alike = byUse.get(key);
      if (alike?.some((other) => covers(other, part))) continue;
      count++;
      if (alike) alike.push(part);
      else byUse.set(key, [part]);
      kept.push(part);
    }
    if (list.cut) whole = false;
    return kept;
  };

  for (let s = 0; s < stages.length; s++) {
    const stage = stages[s]!;
    const here = board.squares[s]!;
    const { puts, sorts, losses } = here;
    const ended = new Shortlist(goal, width, ties);
    const end = (part: Part) => {
      const after = board.after[2 * s + keptAt(board, s, part.place, part.kept)]!;
      if (after < 0) return;
      const bound =
        part.priced -
        (part.count ? 0 : board.empty[s]!) +
        restFrom(board, s + 1, after, part.kind, part.end) -
        leftOver(part, s);
      if (bound >= ended.least) ended.add(ties ? -needs(part) - MANY * part.grownUp : bound, part, -1);
    };
    const ranked = rankedPuts(board, s);
    const rows = stage.room + 2;
    const takes = stage.open ? 1 : 0;
    if (s === 0 || stages[s - 1]!.window !== stage.window)
      for (const part of parts) part.left = model.left[stage.window]!;
    let grown = parts;
    for (let n = 0; grown.length; n++) {
      for (const part of grown) end(part);
      if (n === stage.most) break;
      const list = new Shortlist(goal, width, ties);
      const cost = (n ? NOT_FIRST : stage.firstCost) * POINT;
      /** What it costs that a sort follows its own kind shortly. */
      const follows = (part: Part, g: number) =>
        part.kind === sorts.kind[g] && isNear(board, s, part.end) ? same : 0;
      /** What comes back because families of a put were met before. */
      const again = ({ met }: Part, p: number) => {
        const one = puts.one[p]!;
        const two = puts.two[p]!;
        return metAgain(met, one) + (two < 0 ? 0 : metAgain(met | (1 << model.family[one]!), two));
      };
      for (const part of grown) {
        if (part.left < takes) continue;
        const next = thenAt(rows, n + 1 === stage.most ? 0 : n + 1, part.place + 1, part.kept);
        for (const { sort: g, best, nets } of ranked) {
          const loss = losses[part.place]![g]!;
          const play = sorts.play[g]!;
          if (loss < 0 || play > part.play) continue;
          const bare =
            part.priced -
            cost -
            loss -
            follows(part, g) +
            again(part, best[0]!) +
            here.then[next + sorts.step[g]!]!;
          for (let n = 0; n < best.length; n++) {
            const bound = bare + nets[n]!;
            if (bound < list.least) break;
            const put = best[n]!;
            const one = puts.one[put]!;
            const two = puts.two[put]!;
            if (uses(part, one) || (two >= 0 && uses(part, two))) continue;
            if (model.screen[one] && play > part.screen) continue;
            if (part.grownUp + puts.grownUp[put]! > most) continue;
            const rank = ties
              ? -needs(part, marks[one], marks[two]) - MANY * (part.grownUp + puts.grownUp[put]!)
              : bound;
            list.add(rank, part, put);
          }
        }
      }
      grown = settle(s, list, (from, p) => {
        const one = puts.one[p]!;
        const two = puts.two[p]!;
        const g = puts.sort[p]!;
        const loss = cost + losses[from.place]![g]! + follows(from, g);
        const part = copyOf(from, from.used.slice());
        let at = stage.from + GRID * from.place;
        let units = puts.first[p]!;
        const steps: Step[] = [];
        for (const idea of two < 0 ? [one] : [one, two]) {
          steps.push({ stage: s, idea, units, from: at });
          part.list += String.fromCharCode(at, idea);
          at += GRID * units;
          units = sorts.units[g]! - units;
          for (let w = 0; w < part.used.length; w++) part.used[w]! |= marks[idea]![w]!;
          part.met |= 1 << model.family[idea]!;
        }
        part.before = from;
        part.steps = steps;
        part.worth += puts.worth[p]! - loss;
        part.priced += puts.net[p]! - loss + again(from, p);
        part.kind = sorts.last[g]!;
        part.end = at;
        part.grownUp += puts.grownUp[p]!;
        part.count++;
        part.left -= takes;
        part.place += sorts.units[g]! + 1;
        part.play -= sorts.play[g]!;
        if (model.screen[one]) part.screen -= sorts.play[g]!;
        return part;
      });
    }
    parts = settle(s + 1, ended, (from) => {
      const part = copyOf(from, from.used);
      const lost = from.count ? 0 : board.empty[s]!;
      part.worth -= lost;
      part.priced -= lost + leftOver(from, s);
      part.kept = board.after[2 * s + keptAt(board, s, from.place, from.kept)]!;
      part.count = part.place = 0;
      return part;
    });
  }
  let best: Part | undefined;
  let score = NEVER;
  let tie = END;
  for (const part of parts) {
    const day = terms.day ? FAMILY * bitsOf(part.met) - grownUpCost(GRID * part.grownUp, model.budget) : 0;
    const worth = part.worth + POINT * day;
    if (worth < Math.max(goal, score)) continue;
    const own = String.fromCharCode(needs(part)) + part.list;
    if (worth === score && (!ties || own >= tie)) continue;
    [best, score, tie] = [part, worth, own];
  }
  return { steps: best && stepsOf(best), score, whole, nodes: count, tie };
}

function stepsOf(last: Part): Step[] {
  const steps: Step[] = [];
  for (let part: Part | undefined = last; part; part = part.before) steps.unshift(...part.steps);
  return steps;
}
