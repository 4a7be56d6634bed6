/**
 * A second pair of eyes: reads a plan against the rules as they are written, and shares nothing with the code that made
 * it but the names of the fields. Numbers are written out here again on purpose.
 */
import type { DayProblem, Idea, Placement, PlayWindow, RuleId } from './types.ts';

/** One rule that a plan breaks, and where. */
export interface Violation {
  rule: RuleId;
  window: string;
  idea: string;
}

interface Stand {
  placement: Placement;
  idea: Idea;
  window: PlayWindow;
  pinned: boolean;
  done: boolean;
  begin: number;
  end: number;
}

const years = (child: DayProblem['child']) => Math.floor(child.ageMonths / 12);
const underSix = (child: DayProblem['child']) => years(child) < 6;
const careful = (idea: Idea, ...codes: string[]) => idea.cautions.some((code) => codes.includes(code));
const samePlacement = (a: Placement, b: Placement) =>
  a.idea === b.idea && a.window === b.window && a.from === b.from && a.minutes === b.minutes;

function adultNeeded(idea: Idea, child: DayProblem['child']): boolean {
  if (years(child) < 3) return true;
  if (careful(idea, 'small-parts', 'cord') && underSix(child)) return true;
  return idea.who === 'adult' || careful(idea, 'not-in-mouth', 'scissors');
}

type Law = (problem: DayProblem, stand: Stand) => boolean;

/** Each law says whether a placement by itself breaks it. */
const LAWS: readonly (readonly [RuleId, Law])[] = [
  ['barred', (_, { idea }) => (idea.barred?.length ?? 0) > 0],
  [
    'H1',
    ({ child }, { idea }) =>
      years(child) < idea.ages[0] ||
      years(child) > idea.ages[1] ||
      (idea.fromMonths !== undefined && child.ageMonths < idea.fromMonths),
  ],
  [
    'H2',
    (_, { placement: { minutes }, idea, window, begin, end }) => {
      const least = Math.ceil(idea.minutes[0] / 5) * 5;
      const most = Math.max(least, Math.floor(idea.minutes[1] / 5) * 5);
      const offGrid = begin % 5 !== 0 || minutes % 5 !== 0;
      const outside = begin < window.from || end > window.from + window.minutes;
      return offGrid || outside || minutes < least || minutes > most || minutes <= 0;
    },
  ],
  ['H3', (_, { idea, window }) => idea.position === 'propped' && !window.propped],
  ['H4', ({ freeHands }, { idea }) => idea.hands > freeHands],
  ['H5', ({ child }, { idea, window }) => !window.grownUp && adultNeeded(idea, child)],
  [
    'H6',
    ({ child, lightsOut }, { idea, end }) => {
      const small = careful(idea, 'small-parts') && (years(child) < 3 || child.mouths);
      const cord = careful(idea, 'cord') && (years(child) < 3 || end > lightsOut - 60);
      return small || cord;
    },
  ],
  [
    'H7',
    ({ room }, { idea }) =>
      (room.isolation !== 'none' && !['yes', 'leave'].includes(idea.wipe)) ||
      (room.isolation === 'breath' && careful(idea, 'breath')) ||
      room.usedElsewhere.some((thing) => idea.things.includes(thing)),
  ],
  [
    'H8',
    ({ room }, { idea, window }) => {
      if (!window.quiet) return false;
      const shines = idea.screen === 'yes' || idea.screen === 'call' || idea.things.includes('torch');
      return idea.noise !== 0 || (room.shared && shines && !idea.dark);
    },
  ],
  ['H9', ({ room }, { idea }) => !idea.things.every((thing) => room.things.includes(thing))],
  [
    'H10',
    (_, { idea, window }) => {
      if (window.kind !== 'hard') return false;
      const asked =
        window.procedure === 'other' ? (['needle', 'bandage'] as const) : ([window.procedure] as const);
      return (
        !asked.every((name) => idea.moments.includes(name)) || idea.hands > window.freeHands || idea.tray
      );
    },
  ],
  [
    'H11',
    ({ child, lightsOut }, { idea, end }) =>
      idea.screen === 'yes' && (child.ageMonths < 24 || end > lightsOut - 60),
  ],
  ['H12', ({ eating }, { idea, window }) => careful(idea, 'food') && (!eating || !window.propped)],
  [
    'H13',
    ({ child, permissions }, { idea }) =>
      child.never.includes(idea.id) ||
      child.never.includes(idea.kind) ||
      child.lacks.some((need) => idea.needs.includes(need)) ||
      (idea.allowedBy !== undefined && !permissions.includes(idea.allowedBy)),
  ],
];

const violation = (rule: RuleId, { placement }: Stand): Violation => ({
  rule,
  window: placement.window,
  idea: placement.idea,
});

function together(problem: DayProblem, stands: readonly Stand[]): Violation[] {
  const found: Violation[] = [];
  for (const [n, stand] of stands.entries()) {
    const others = stands.filter((_, other) => other !== n);
    if (others.some(({ begin, end }) => begin < stand.end && stand.begin < end))
      found.push(violation('H2', stand));
    const again = others.some(({ placement }) => placement.idea === stand.placement.idea);
    if (again && !stand.pinned) found.push(violation('H14', stand));
    // kept fresh for the moment that needs it
    const spent = others.some(
      ({ placement, window }) =>
        window.kind === 'hard' &&
        placement.idea === stand.placement.idea &&
        stand.begin < window.from &&
        window.from - stand.begin <= 180,
    );
    if (spent && stand.window.kind === 'ordinary' && !stand.pinned) found.push(violation('H15', stand));
    const shaken = problem.windows.some(
      ({ kind, from, minutes }) =>
        kind === 'hard' && stand.begin >= from + minutes && stand.begin - from - minutes <= 10,
    );
    if (shaken && stand.idea.energy > 1 && stand.window.kind === 'ordinary' && !stand.pinned)
      found.push(violation('H17', stand));
  }
  return found;
}

function packed(problem: DayProblem, stands: readonly Stand[]): Violation[] {
  const found: Violation[] = [];
  for (const window of problem.windows) {
    const here = stands.filter((stand) => stand.window === window).sort((a, b) => a.begin - b.begin);
    if (window.kind === 'hard') {
      const filled = here.reduce((sum, { placement }) => sum + placement.minutes, 0);
      // one that began and cannot be filled any more stays as far as it came
      const short = filled !== window.minutes && here.some(({ done }) => !done);
      if (here.length > 2 || short) found.push(violation('H2', here[0]!));
      const late = here.find(({ pinned, begin }) => !pinned && begin < (problem.notBefore ?? 0));
      if (late) found.push(violation('H2', late));
      continue;
    }
    const pins = here.filter(({ pinned }) => pinned).length;
    if (here.length > Math.max(problem.perWindow ?? 3, pins))
      found.push(violation('H2', here[here.length - 1]!));
    here.forEach((stand, n) => {
      const before = here[n - 1];
      const soonest = Math.ceil((problem.notBefore ?? 0) / 5) * 5;
      const expected = Math.max(before ? before.end + 5 : window.from, soonest);
      if (stand.pinned ? before && stand.begin < before.end + (stand.done ? 0 : 5) : stand.begin !== expected)
        found.push(violation('H2', stand));
    });
  }
  return found;
}

/** Stretches of an ordinary window in which nothing stands, as start and length. */
function gaps(window: PlayWindow, stands: readonly Stand[]): [number, number][] {
  const edges = stands
    .filter((stand) => stand.window === window)
    .sort((a, b) => a.begin - b.begin)
    .flatMap(({ begin, end }) => [begin, end]);
  const all = [window.from, ...edges, window.from + window.minutes];
  const found: [number, number][] = [];
  for (let n = 0; n < all.length; n += 2) found.push([all[n]!, all[n + 1]! - all[n]!]);
  return found;
}

function freeEnough(problem: DayProblem, stands: readonly Stand[]): Violation[] {
  const found: Violation[] = [];
  const ordinary = problem.windows.filter(({ kind }) => kind === 'ordinary');
  const inOrdinary = stands.filter(({ window }) => window.kind === 'ordinary');
  const sum = (list: readonly Stand[]) => list.reduce((all, { placement }) => all + placement.minutes, 0);
  const share = underSix(problem.child) ? 50 : 60;
  const total = ordinary.reduce((all, { minutes }) => all + minutes, 0);
  const most = Math.floor((total * share) / 100 / 5) * 5;
  const pinned = inOrdinary.filter((stand) => stand.pinned);
  const last = inOrdinary.find((stand) => !stand.pinned);
  // what a person pinned stays, even above the share; then nothing more is added
  if (last && sum(inOrdinary) > Math.max(most, sum(pinned))) found.push(violation('H16', last));
  for (const early of [true, false]) {
    const half = ordinary.filter(({ from }) => from < 720 === early);
    const long = (list: readonly Stand[]) =>
      half.some((window) =>
        gaps(window, list).some(([from, minutes]) => minutes >= 30 && (!early || from < 720)),
      );
    const here = stands.find((stand) => half.includes(stand.window) && !stand.pinned);
    if (here && long(pinned) && !long(stands)) found.push(violation('H16', here));
  }
  return found;
}

/**
 * Every hard rule that a plan breaks; an empty list says that it breaks none.
 *
 * Shape: a problem and placements in any order -> rules with window and idea, H1–H18, `barred` and `unknown`.
 * Not: it does not say that a plan is good, and it changes nothing.
 * Source: design 4-play, H1–H18 (our proposal); who-screens-2019 for screens under five.
 *
 * @example checkPlan(problem, { placements: [] }) // [] while nothing is pinned
 */
export function checkPlan(
  problem: DayProblem,
  { placements, refused = [] }: { placements: readonly Placement[]; refused?: readonly { pin: Placement }[] },
): Violation[] {
  const found: Violation[] = [];
  const stands: Stand[] = [];
  const standing = [...problem.pins, ...(problem.done ?? [])];
  for (const placement of placements) {
    const idea = problem.ideas.find(({ id }) => id === placement.idea);
    const window = problem.windows.find(({ id }) => id === placement.window);
    if (!idea || !window) {
      found.push({ rule: 'unknown', window: placement.window, idea: placement.idea });
      continue;
    }
    const done = (problem.done ?? []).some((past) => samePlacement(past, placement));
    const stand = {
      placement,
      idea,
      window,
      pinned: standing.some((pin) => samePlacement(pin, placement)),
      done,
      begin: placement.from,
      end: placement.from + placement.minutes,
    };
    stands.push(stand);
    // what was done already cannot be undone
    for (const [rule, broken] of LAWS)
      if (!done && broken(problem, stand)) found.push(violation(rule, stand));
  }
  found.push(...together(problem, stands), ...packed(problem, stands), ...freeEnough(problem, stands));
  const shown = stands.filter(({ idea, window }) => idea.screen === 'yes' && window.kind === 'ordinary');
  const screen = shown.reduce((sum, { placement }) => sum + placement.minutes, 0);
  const limit =
    years(problem.child) < 5 ? Math.min(60, problem.limits.screenMinutes) : problem.limits.screenMinutes;
  if (shown.length && screen > limit) found.push(violation('H11', shown[shown.length - 1]!));
  for (const pin of problem.pins) {
    const stays = placements.some((placement) => samePlacement(pin, placement));
    if (!stays && !refused.some((other) => samePlacement(other.pin, pin)))
      found.push({ rule: 'H18', window: pin.window, idea: pin.idea });
  }
  return found;
}
