/**
 * The day as the search sees it: stages in order of time, each an open stretch, a hard moment or a pin, with what may
 * stand there. Lengths are in units of five minutes.
 */
import {
  brokenIn,
  GRID,
  inMorning,
  latestEnd,
  LONG_FREE,
  minuteRange,
  needsGrownUp,
  NOON,
  playCap,
  screenLimit,
  SETTLE,
  sinceMoment,
} from './feasible.ts';
import {
  ALL_TERMS,
  baseOf,
  BORED,
  fixedStarts,
  LONG_WINDOW,
  momentWorth,
  NOT_FIRST,
  SAME_KIND,
  shortlyBefore,
} from './objective.ts';
import {
  FAMILIES,
  FAMILY_NAMES,
  KINDS,
  type DayMinute,
  type DayProblem,
  type HardMoment,
  type Idea,
  type Placement,
  type PlayWindow,
  type Terms,
} from './types.ts';

/** A way to fill a hard moment, a pin, or what may stand in an open stage. */
export interface Filling {
  /** Indices among the model's ideas: one, or in a moment two. */
  ideas: readonly number[];
  units: readonly number[];
  worth: number;
}
export interface Stage {
  window: number;
  from: number;
  /** Units that placements may take, gaps included. */
  room: number;
  /** When the free time of an open stage in which nothing is placed begins, and when it ends. */
  freeFrom: number;
  freeEnd: number;
  morning: boolean;
  open: boolean;
  /** Open: most placements, what the first costs, what none costs (in a moment, too), and until when only calm things start. */
  most: number;
  firstCost: number;
  emptyCost: number;
  settleUntil: number;
  /** All of a closed stage take the same units. */
  fillings: readonly Filling[];
}
export interface Model {
  ideas: readonly Idea[];
  stages: readonly Stage[];
  /** Per idea: kind, family, grown-up needed, counted screen, latest end. */
  kind: readonly number[];
  family: readonly number[];
  grownUp: readonly boolean[];
  screen: readonly boolean[];
  latest: readonly number[];
  /** Per idea itself as a bit, and behind all ideas its things. */
  marks: readonly Int32Array[];
  /** Units of play that the open stages may hold together. */
  cap: number;
  screenCap: number;
  budget: number;
  /** Half an hour must stay free in that half of the day. */
  freeWanted: { morning: boolean; afternoon: boolean };
  terms: Terms;
  /** Starts of fixed events before which nothing messy ends; none where the day has no terms. */
  starts: readonly number[];
  /** Per window, how many more placements it may hold beside its pins. */
  left: readonly number[];
}

/** What a placement that stays where it was adds: far too little, taken together, to weigh against one point. */
const STAYS = 1 / 64;

/** Loses against every real filling, so that a moment stays empty only where nothing is left for it. */
export const EMPTY_MOMENT = 1000;

/** Lengths worth trying: the shortest, then full tens; anything between two of them gains nothing and costs free time. */
function usefulLengths([low, high]: [number, number], room: number, terms: Terms): number[] {
  const most = Math.min(high / GRID, room);
  const lengths = low / GRID > room ? [] : [low / GRID];
  if (terms.minutes) for (let n = 2 * Math.floor(low / 10) + 2; n <= most; n += 2) lengths.push(n);
  return lengths;
}

/** Every way to fill a moment of this length: one idea, or two that follow one another without a gap. */
export function fillingsOf(
  problem: DayProblem,
  ideas: readonly Idea[],
  window: HardMoment,
  pins: readonly Placement[] = [],
): Filling[] {
  const total = window.minutes;
  const end = window.from + total;
  const able = ideas.flatMap((idea, index) => {
    if (brokenIn(problem, idea, window).length) return [];
    return [{ idea, index, base: baseOf(problem, idea, window), range: minuteRange(idea) }];
  });
  const fillings: Filling[] = [];
  for (const { idea, index, base, range } of able)
    if (range[0] <= total && total <= range[1] && end <= latestEnd(problem, idea))
      fillings.push({ ideas: [index], units: [total / GRID], worth: momentWorth(window, [base]) });
  for (const a of able)
    for (const b of able) {
      if (a.index === b.index || end > latestEnd(problem, b.idea)) continue;
      const low = Math.max(a.range[0], total - b.range[1]);
      const late = GRID * Math.floor((latestEnd(problem, a.idea) - window.from) / GRID);
      const high = Math.min(a.range[1], total - b.range[0], late);
      if (low > high) continue;
      // with a grown-up only for the second, the first may as well last
      const need = (idea: Idea) => needsGrownUp(idea, problem.child.ageMonths);
      const only = !need(a.idea) && need(b.idea) ? high : low;
      const [first, last] = pins.length ? [low, high] : [only, only];
      const worth = momentWorth(window, [a.base, b.base]);
      for (let length = first; length <= last; length += GRID)
        fillings.push({
          ideas: [a.index, b.index],
          units: [length / GRID, (total - length) / GRID],
          worth,
        });
    }
  return fillings.filter((filling) => pins.every((pin) => holds(filling, pin, ideas, window)));
}

function holds(filling: Filling, pin: Placement, ideas: readonly Idea[], window: PlayWindow): boolean {
  let from = window.from;
  return filling.ideas.some((index, n) => {
    const minutes = filling.units[n]! * GRID;
    const same = ideas[index]!.id === pin.idea && from === pin.from && minutes === pin.minutes;
    from += minutes;
    return same;
  });
}

/** What stands in a moment already, whatever the rules say now. */
function standingFilling(
  ideas: readonly Idea[],
  window: HardMoment,
  pins: readonly Placement[],
  problem: DayProblem,
): Filling {
  const used = pins.map((pin) => ideas.findIndex(({ id }) => id === pin.idea));
  const bases = used.map((index) => baseOf(problem, ideas[index]!, window));
  return {
    ideas: used,
    units: pins.map(({ minutes }) => minutes / GRID),
    worth: momentWorth(window, bases),
  };
}

/** Whether what stands in a moment fills it whole. */
export const fillsWhole = (window: PlayWindow, standing: readonly Placement[]) =>
  standing.length <= 2 && standing.reduce((minutes, one) => minutes + one.minutes, 0) === window.minutes;

/**
 * Compiles a checked problem for the search; its pins are known to be possible.
 *
 * Shape: windows in order, none overlapping, everything on the grid.
 */
export function modelOf(problem: DayProblem, stay: readonly Placement[] = []): Model {
  const { windows, child } = problem;
  const standing = [...problem.pins, ...(problem.done ?? [])];
  const terms = problem.terms ?? ALL_TERMS;
  const pinned = new Set(standing.map(({ idea }) => idea));
  const possible = problem.ideas.filter(
    (idea) => pinned.has(idea.id) || windows.some((window) => !brokenIn(problem, idea, window).length),
  );
  // in order of id, so that the first of several equals is the smallest
  const ideas = [...possible].sort((a, b) => (a.id < b.id ? -1 : 1));
  const stages: Stage[] = [];
  const left: number[] = [];
  let placed = 0;
  let screenPinned = 0;
  windows.forEach((window, w) => {
    const add = (from: DayMinute, fillings: readonly Filling[], more: Partial<Stage>) =>
      stages.push({
        window: w,
        from,
        freeFrom: from,
        freeEnd: from,
        morning: inMorning(window),
        open: false,
        room: fillings[0]?.units.reduce((sum, units) => sum + units) ?? 0,
        most: 1,
        firstCost: 0,
        emptyCost: EMPTY_MOMENT,
        settleUntil: -1,
        fillings,
        ...more,
      });
    const pins = standing.filter((pin) => pin.window === window.id).sort((a, b) => a.from - b.from);
    const free = (idea: Idea) => !pinned.has(idea.id);
    const bonus = (idea: Idea) =>
      stay.some((old) => old.idea === idea.id && old.window === window.id) ? STAYS : 0;
    left.push(window.kind === 'hard' ? 0 : Math.max(0, (problem.perWindow ?? 3) - pins.length));
    if (window.kind === 'hard') {
      const all = fillsWhole(window, pins)
        ? [standingFilling(ideas, window, pins, problem)]
        : fillingsOf(problem, ideas, window, pins);
      const fillings = all.filter(({ ideas: used }) =>
        used.every((index) => free(ideas[index]!) || pins.some(({ idea }) => idea === ideas[index]!.id)),
      );
      // a moment that began stays as far as it came, though nothing is left for the rest of it
      const begun = (problem.done ?? []).filter((past) => past.window === window.id);
      if (!fillings.length && begun.length) fillings.push(standingFilling(ideas, window, begun, problem));
      for (const filling of fillings)
        for (const index of filling.ideas) filling.worth += bonus(ideas[index]!);
      const over = window.from < (problem.notBefore ?? 0) && !pins.length;
      // a moment for which nothing is possible costs nothing: it is reported, not scored
      if (over || !fillings.length) add(window.from, [], { emptyCost: 0 });
      else add(window.from, fillings, {});
      return;
    }
    let from = Math.max(window.from, GRID * Math.ceil((problem.notBefore ?? 0) / GRID));
    let freeFrom = window.from;
    const end = window.from + window.minutes;
    const worthOf = (idea: Idea, units: number) =>
      baseOf(problem, idea, window) + (terms.minutes ? units >> 1 : 0);
    const addOpen = (until: number, freeEnd: number) => {
      const room = Math.max(0, Math.floor((until - from) / GRID));
      const fillings = ideas.flatMap((idea, index) => {
        if (!free(idea) || brokenIn(problem, idea, window).length) return [];
        const most = Math.min(room, Math.floor((latestEnd(problem, idea) - from) / GRID));
        return usefulLengths(minuteRange(idea), most, terms).map((units): Filling => ({
          ideas: [index],
          units: [units],
          worth: worthOf(idea, units) + bonus(idea),
        }));
      });
      add(from, fillings, {
        room,
        freeFrom,
        freeEnd,
        open: true,
        most: left[w]!,
        firstCost: pins.length ? NOT_FIRST : 0,
        emptyCost: terms.day && problem.bored && !pins.length && window.minutes > LONG_WINDOW ? BORED : 0,
        settleUntil: window.from - sinceMoment(windows, window.from) + SETTLE,
      });
    };
    pins.forEach((pin, n) => {
      addOpen(pin.from - GRID, pin.from);
      const index = ideas.findIndex(({ id }) => id === pin.idea);
      const idea = ideas[index]!;
      const units = pin.minutes / GRID;
      // a pin stays, however little it is worth
      add(
        pin.from,
        [{ ideas: [index], units: [units], worth: worthOf(idea, units) - (n ? NOT_FIRST : 0) }],
        {},
      );
      placed += pin.minutes;
      if (idea.screen === 'yes') screenPinned += pin.minutes;
      freeFrom = pin.from + pin.minutes;
      from = Math.max(from, freeFrom + GRID);
    });
    addOpen(end, end);
  });
  /** Whether half an hour can stay free in that half of the day, and is not free already because it is over. */
  const wantsFree = (morning: boolean) => {
    const long = stages.filter(
      (stage) =>
        stage.open &&
        stage.morning === morning &&
        stage.freeEnd - stage.freeFrom >= LONG_FREE &&
        (!morning || stage.freeFrom < NOON),
    );
    return long.length > 0 && !long.some(({ from, freeFrom }) => from - freeFrom >= LONG_FREE);
  };
  const starts = terms.day ? fixedStarts(problem) : [];
  if (terms.day)
    for (const { open, from, fillings } of stages)
      for (const filling of open ? [] : fillings) {
        let at = from;
        filling.ideas.forEach((idea, n) => {
          at += filling.units[n]! * GRID;
          if (ideas[idea]!.mess > 0 && shortlyBefore(starts, at)) filling.worth--;
          if (n && ideas[filling.ideas[n - 1]!]!.kind === ideas[idea]!.kind) filling.worth -= SAME_KIND;
        });
      }
  const bits = (list: readonly string[], all: readonly string[]) => {
    const words = new Int32Array((all.length >> 5) + 1);
    for (const one of list) words[all.indexOf(one) >> 5]! |= 1 << (all.indexOf(one) & 31);
    return words;
  };
  const names = ideas.map(({ id }) => id);
  const things = [...new Set(ideas.flatMap((idea) => idea.things))];
  return {
    ideas,
    stages,
    marks: ideas.map((idea) => Int32Array.of(...bits([idea.id], names), ...bits(idea.things, things))),
    kind: ideas.map(({ kind }) => KINDS.indexOf(kind)),
    family: ideas.map(({ kind }) => FAMILY_NAMES.indexOf(FAMILIES[kind])),
    grownUp: ideas.map((idea) => needsGrownUp(idea, child.ageMonths)),
    screen: ideas.map(({ screen }) => screen === 'yes'),
    latest: ideas.map((idea) => latestEnd(problem, idea)),
    cap: Math.max(0, playCap(windows, child.ageMonths) - placed) / GRID,
    screenCap: Math.floor(Math.max(0, screenLimit(problem) - screenPinned) / GRID),
    budget: problem.limits.grownUpMinutes,
    freeWanted: { morning: wantsFree(true), afternoon: wantsFree(false) },
    terms,
    starts,
    left,
  };
}
