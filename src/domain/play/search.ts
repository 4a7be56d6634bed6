/**
 * Plans grow side by side through the day, one placement at a time. One that promises too little at prices is dropped, and
 * so is one that another with as much left to choose from already equals. Where too many are left the most promising stay:
 * then a better plan may have been missed, and the answer says so. A count ends it, never a clock.
 */
import { rankedPuts, wantedFrom } from './ahead.ts';
import { FAMILIES_AT, keptAt, keptAtStart, NEVER, NO_KIND, POINT, thenAt, type Board } from './board.ts';
import { beside, isNear, restFrom } from './bound.ts';
import { GRID } from './feasible.ts';
import { FAMILY, grownUpCost, NOT_FIRST, SAME_KIND } from './objective.ts';

/** One placement of a plan. */
export interface Step {
  stage: number;
  idea: number;
  units: number;
  from: number;
}
export interface Found {
  /** The best plan worth enough. */
  steps?: readonly Step[];
  score: number;
  /** Nothing was left out for want of room: without a plan there is none. */
  whole: boolean;
  nodes: number;
}

/** A part of a plan, up to some place in a stage. */
interface Part {
  before: Part | undefined;
  steps: readonly Step[];
  /** Points so far, in grains, families and the grown-up's cost apart. */
  worth: number;
  /** The same at prices: with what comes after it is a bound. */
  priced: number;
  bound: number;
  count: number;
  place: number;
  kept: number;
  kind: number;
  end: number;
  play: number;
  screen: number;
  grownUp: number;
  met: number;
  /** Placements that the window may still take. */
  left: number;
  used: Int32Array;
}

/** The same part once more; written out, since a spread takes several times as long. */
const copyOf = (part: Part, used: Int32Array): Part => ({
  before: part.before,
  steps: part.steps,
  worth: part.worth,
  priced: part.priced,
  bound: part.bound,
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
});

/** A part at the beginning of the next stage. */
function begun(part: Part, kept: number, bound: number): Part {
  part.kept = kept;
  part.bound = bound;
  part.count = part.place = 0;
  return part;
}

const bitsOf = (mask: number) => {
  let bits = 0;
  for (let rest = mask; rest; rest &= rest - 1) bits++;
  return bits;
};

/** Ways to go on, before anything is written down for them: the most promising so many, in order; of equals the first. */
class Shortlist {
  readonly bounds: number[] = [];
  readonly from: Part[] = [];
  /** A put, a filling, or −1 for the end of the stage. */
  readonly choices: number[] = [];
  /** What a way must promise to come on the list. */
  least: number;
  cut = false;
  constructor(
    goal: number,
    private readonly width: number,
  ) {
    this.least = goal;
  }
  add(bound: number, from: Part, choice: number): void {
    const { bounds, from: parts, choices, width } = this;
    let at = bounds.length;
    if (at === width) {
      this.cut = true;
      at--;
      if (bounds[at]! >= bound) {
        this.least = bounds[at]! + 1;
        return;
      }
    }
    for (; at > 0 && bounds[at - 1]! < bound; at--) {
      bounds[at] = bounds[at - 1]!;
      parts[at] = parts[at - 1]!;
      choices[at] = choices[at - 1]!;
    }
    bounds[at] = bound;
    parts[at] = from;
    choices[at] = choice;
    if (this.cut) this.least = bounds[width - 1]! + 1;
  }
}

const uses = ({ used }: Part, idea: number) => (used[idea >> 5]! >> (idea & 31)) & 1;

/**
 * Looks for the best plan worth at least `goal`, guided by the prices on the board, which are solved.
 *
 * Shape: `goal` in grains; at most `width` parts of plans are kept side by side.
 */
export function search(board: Board, goal: number, width: number): Found {
  const { model, price } = board;
  const { stages, terms } = model;
  const { masks: wanted, last, room } = wantedFrom(board);
  const playPrice = price[model.ideas.length]!;
  const words = wanted[0]!.length;
  const same = terms.day ? SAME_KIND * POINT : 0;
  const familyPrice = (idea: number) => price[model.ideas.length + FAMILIES_AT + model.familyAt[idea]!]!;
  let count = 0;
  let whole = true;
  let parts: Part[] = [
    {
      before: undefined,
      steps: [],
      worth: board.spare,
      priced: beside(board) - last[stages.length]!.reduce((sum, idea) => sum + price[idea]!, 0),
      bound: 0,
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
      used: new Int32Array(words),
    },
  ];
  const allowed = (part: Part, idea: number, also = -1) => {
    if (uses(part, idea)) return false;
    const twin = model.twin[idea]!;
    return twin < 0 || twin === also || uses(part, twin) === 1;
  };
  /** What it costs at prices that another idea of a family met already counts for nothing. */
  const metAgain = (met: number, idea: number) =>
    terms.day && met & model.family[idea]! ? familyPrice(idea) : 0;

  /** What is left over when a stage ends: ideas that had their last chance in it, and play that nothing can hold. */
  const leftOver = (part: Part, s: number, one = -1, two = -1) => {
    let lost = 0;
    for (const idea of last[s]!)
      if (idea !== one && idea !== two && !uses(part, idea))
        lost += board.forced[idea] ? -NEVER : price[idea]!;
    return lost;
  };
  const idle = (part: Part, s: number) => playPrice * Math.max(0, part.play - room[s + 1]!);

  /** Whether all that can follow `b` can follow `a`, and is worth as much. */
  const covers = (a: Part, b: Part) => {
    if (a.kept < b.kept || a.play < b.play || a.screen < b.screen || a.left < b.left) return false;
    let worth = a.worth;
    if (a.kind !== b.kind || a.end > b.end) worth -= same;
    if (terms.day) {
      worth -= FAMILY * POINT * bitsOf(b.met & ~a.met);
      if (a.grownUp > b.grownUp) worth -= POINT * Math.ceil((a.grownUp - b.grownUp) / 15);
    }
    return worth >= b.worth;
  };
  /** Writes down the parts on a shortlist, those apart that another covers. */
  const settle = (
    s: number,
    list: Shortlist,
    make: (bound: number, from: Part, choice: number) => Part,
  ): Part[] => {
    const mask = wanted[s]!;
    const byUse = new Map<number, Part[]>();
    const kept: Part[] = [];
    for (let n = 0; n < list.bounds.length; n++) {
      const part = make(list.bounds[n]!, list.from[n]!, list.choices[n]!);
      let hash = part.place;
      for (let w = 0; w < words; w++) hash = (Math.imul(hash, 31) + (part.used[w]! & mask[w]!)) | 0;
      const alike = byUse.get(hash);
      const equal = (other: Part) => {
        if (other.place !== part.place) return false;
        for (let w = 0; w < words; w++) if ((other.used[w]! ^ part.used[w]!) & mask[w]!) return false;
        return true;
      };
      if (alike?.some((other) => equal(other) && covers(other, part))) continue;
      count++;
      if (alike) alike.push(part);
      else byUse.set(hash, [part]);
      kept.push(part);
    }
    if (list.cut) whole = false;
    return kept;
  };
  const withIdeas = (part: Part, s: number, ideas: readonly number[], units: readonly number[]): Part => {
    const stage = stages[s]!;
    const next = copyOf(part, part.used.slice());
    next.before = part;
    let from = stage.from + GRID * part.place;
    next.steps = ideas.map((idea, n) => {
      const step = { stage: s, idea, units: units[n]!, from };
      from += GRID * units[n]!;
      next.used[idea >> 5]! |= 1 << (idea & 31);
      next.priced -= board.once[idea]! - metAgain(next.met, idea);
      next.met |= model.family[idea]!;
      if (model.grownUp[idea]) next.grownUp += GRID * units[n]!;
      return step;
    });
    if (part.kind === model.kind[ideas[0]!] && (part.count > 0 || isNear(board, s, part.end))) {
      next.worth -= same;
      next.priced -= same;
    }
    next.kind = model.kind[ideas[ideas.length - 1]!]!;
    next.end = from;
    return next;
  };

  for (let s = 0; s < stages.length; s++) {
    const stage = stages[s]!;
    const here = board.open[s];
    const ended = new Shortlist(goal, width);
    const end = (part: Part) => {
      const after = board.after[2 * s + (here ? keptAt(board, s, part.place, part.kept) : part.kept)]!;
      if (after < 0) return;
      const bound =
        part.priced -
        (part.count ? 0 : board.empty[s]!) +
        restFrom(board, s + 1, after, part.kind, part.end) -
        leftOver(part, s) -
        idle(part, s);
      if (bound >= ended.least) ended.add(bound, part, -1);
    };
    if (here) {
      const ranked = rankedPuts(board, s);
      const rows = stage.room + 2;
      const shared = s > 0 && stages[s - 1]!.window === stage.window;
      for (const part of parts) if (!shared) part.left = model.left[stage.window]!;
      let grown = parts;
      for (let n = 0; n <= stage.most && grown.length; n++) {
        for (const part of grown) end(part);
        if (n === stage.most) break;
        const list = new Shortlist(goal, width);
        const cost = (n ? NOT_FIRST : stage.firstCost) * POINT;
        for (const part of grown) {
          if (!part.left) continue;
          const next = thenAt(rows, n + 1 === stage.most ? 0 : n + 1, part.place + 1, part.kept);
          const follows = n > 0 || isNear(board, s, part.end) ? part.kind : NO_KIND;
          for (const { sort: g, puts, nets } of ranked) {
            const loss = here.sortCost[part.place * here.sortKind.length + g]!;
            const units = here.sortUnits[g]!;
            if (loss < 0 || units > part.play) continue;
            const kind = here.sortKind[g]!;
            const bare =
              part.priced -
              cost -
              loss -
              (kind === follows ? same : 0) +
              metAgain(part.met, here.putIdea[puts[0]!]!) +
              here.then[next + here.sortStep[g]!]!;
            for (let n = 0; n < puts.length; n++) {
              const bound = bare + nets[n]!;
              if (bound < list.least) break;
              const idea = here.putIdea[puts[n]!]!;
              if (!allowed(part, idea) || (model.screen[idea] && units > part.screen)) continue;
              list.add(bound, part, puts[n]!);
            }
          }
        }
        grown = settle(s, list, (bound, from, choice) => {
          const idea = here.putIdea[choice]!;
          const g = here.putSort[choice]!;
          const units = here.sortUnits[g]!;
          const part = withIdeas(from, s, [idea], [units]);
          const gain = here.putWorth[choice]! - cost - here.sortCost[from.place * here.sortKind.length + g]!;
          part.worth += gain;
          part.priced += gain - board.each[idea]! * units;
          part.bound = bound;
          part.count++;
          part.left--;
          part.place += units + 1;
          part.play -= units;
          if (model.screen[idea]) part.screen -= units;
          return part;
        });
      }
    } else {
      const moment = board.closed[s]!;
      const order = Array.from({ length: moment.net.length }, (_, f) => f).sort(
        (a, b) => moment.net[b]! - moment.net[a]!,
      );
      for (const part of parts) {
        end(part);
        const after = board.after[2 * s + part.kept]!;
        if (after < 0) continue;
        const near = isNear(board, s, part.end) ? part.kind : NO_KIND;
        const best = Math.max(...[0, 1].map((kept) => board.far[2 * s + 2 + kept]!));
        for (const f of order) {
          const net = part.priced + moment.net[f]!;
          if (net + best < ended.least) break;
          const [one, two] = [moment.one[f]!, moment.two[f]!];
          const [first, lastKind] = [model.kind[one]!, model.kind[two < 0 ? one : two]!];
          const again =
            metAgain(part.met, one) + (two < 0 ? 0 : metAgain(part.met | model.family[one]!, two));
          const bound =
            net +
            again -
            (near === first ? same : 0) +
            restFrom(board, s + 1, after, lastKind, moment.end) -
            leftOver(part, s, one, two) -
            idle(part, s);
          if (bound < ended.least || !allowed(part, one) || (two >= 0 && !allowed(part, two, one))) continue;
          ended.add(bound, part, f);
        }
      }
    }
    parts = settle(s + 1, ended, (bound, from, choice) => {
      const kept = board.after[2 * s + (here ? keptAt(board, s, from.place, from.kept) : from.kept)]!;
      if (choice < 0) {
        const lost = from.count ? 0 : board.empty[s]!;
        const priced = from.priced - lost - leftOver(from, s);
        const part = copyOf(from, from.used);
        part.worth -= lost;
        part.priced = priced;
        return begun(part, kept, bound);
      }
      const filling = stage.fillings[board.closed[s]!.at[choice]!]!;
      const part = withIdeas(from, s, filling.ideas, filling.units);
      const gain = board.closed[s]!.worth[choice]!;
      const grownUp = board.price[model.ideas.length + 2]!;
      part.worth += gain;
      part.priced += gain - board.closed[s]!.grownUp[choice]! * grownUp - leftOver(part, s);
      return begun(part, kept, bound);
    });
  }
  let best: Part | undefined;
  let score = NEVER;
  for (const part of parts) {
    const day = terms.day ? FAMILY * bitsOf(part.met) - grownUpCost(part.grownUp, model.budget) : 0;
    const worth = part.worth + POINT * day;
    if (worth < goal || worth <= score) continue;
    [best, score] = [part, worth];
  }
  if (!best) return { score: NEVER, whole, nodes: count };
  return { steps: stepsOf(best), score, whole, nodes: count };
}

function stepsOf(last: Part): Step[] {
  const steps: Step[] = [];
  for (let part: Part | undefined = last; part; part = part.before) steps.unshift(...part.steps);
  return steps;
}
