/** Why an idea stands where it stands, and why others do not: facts for a person who wants to decide otherwise. */
import { checkPlan } from '../play/check.ts';
import { brokenIn, GRID, lateRules, latestEnd, minuteRange, SETTLE, sinceMoment } from '../play/feasible.ts';
import { fillingsOf } from '../play/model.ts';
import { baseOf, likeOf, scoreOf } from '../play/objective.ts';
import {
  FAMILIES,
  type DayMinute,
  type DayProblem,
  type Idea,
  type Placement,
  type PlayWindow,
  type RuleId,
} from '../play/types.ts';
import { KEPT_BEFORE } from './offer.ts';

/** In this order where several hold. */
const BECAUSE = [
  'pinned',
  'only-one',
  'kept-for-moment',
  'wish',
  'liked',
  'fits-energy',
  'new',
  'own-family',
] as const;
/**
 * `pinned` a person put it there · `only-one` nothing else may stand there · `kept-for-moment` of what may stand in the
 * hard moment it is among the three best · `wish` it serves what the child wants to do with the eyes · `liked` ·
 * `fits-energy` exactly · `new` not in three days, where anything is on record · `own-family` without it the day would not meet its family of kinds.
 */
export type Because = (typeof BECAUSE)[number];

export type Other =
  /** It may not stand there. */
  | { idea: string; why: 'rule'; rules: RuleId[] }
  /** It is kept fresh for a hard moment that begins within three hours. */
  | { idea: string; why: 'kept'; window: string }
  /** It is in the day already, from then. */
  | { idea: string; why: 'elsewhere'; from: DayMinute }
  /** The whole day would be worth so many points less; less than nothing only where the plan is not proven best. */
  | { idea: string; why: 'fewer-points'; points: number }
  /** Its shortest is too long, or its longest too short, for what is left there. */
  | { idea: string; why: 'does-not-fit' };

export interface Reasons {
  because: readonly Because[];
  others: readonly Other[];
}

const MOST_OTHERS = 5;
const BEST = 3;

const same = (a: Placement, b: Placement) =>
  a.idea === b.idea && a.window === b.window && a.from === b.from && a.minutes === b.minutes;
const endOf = ({ from, minutes }: Placement) => from + minutes;
const inOrder = (placements: readonly Placement[]) => [...placements].sort((a, b) => a.from - b.from);

/** One place of the day: what stands there, and how it looks to another idea. */
interface Place {
  problem: DayProblem;
  /** In order of time. */
  placements: readonly Placement[];
  placement: Placement;
  window: PlayWindow;
  /** Minutes until something else stands there or the window ends. */
  room: number;
  /** What nobody may move. */
  fixed: (placement: Placement) => boolean;
  score: number;
  /** How often the day breaks each rule as it is: what a person pinned against it is no reason against another idea. */
  broken: ReadonlyMap<RuleId, number>;
}

function brokenBy(problem: DayProblem, placements: readonly Placement[]): Map<RuleId, number> {
  const times = new Map<RuleId, number>();
  for (const { rule } of checkPlan(problem, { placements })) times.set(rule, (times.get(rule) ?? 0) + 1);
  return times;
}

function placeOf(problem: DayProblem, placements: readonly Placement[], wanted: Placement): Place {
  const ordered = inOrder(placements);
  const placement = ordered.find((one) => same(one, wanted));
  if (!placement)
    throw new Error(
      `play-bed › reasonsFor › placement: one of the plan, saw "${wanted.idea}" at ${wanted.from}`,
    );
  const window = problem.windows.find(({ id }) => id === placement.window);
  if (!window) throw new Error(`play-bed › reasonsFor › window: one of the day, saw "${placement.window}"`);
  const standing = [...problem.pins, ...(problem.done ?? [])];
  const fixed = (one: Placement) => standing.some((pin) => same(pin, one));
  let end = window.from + window.minutes;
  for (const later of ordered
    .filter((one) => one.window === window.id && one.from > placement.from)
    .reverse())
    end = (fixed(later) ? later.from : end - later.minutes) - (window.kind === 'hard' ? 0 : GRID);
  return {
    ...{ problem, placements: ordered, placement, window, fixed },
    room: window.kind === 'hard' ? placement.minutes : end - placement.from,
    score: scoreOf(problem, ordered),
    broken: brokenBy(problem, ordered),
  };
}

/** Rules that bar an idea from this place: those of the window, and those of the time of day. */
function rulesAt({ problem, placement: { from }, window, room }: Place, idea: Idea): RuleId[] {
  const rules = brokenIn(problem, idea, window);
  const over = latestEnd(problem, idea);
  const least = window.kind === 'hard' ? room : minuteRange(idea)[0];
  if (over < problem.lightsOut && from + least > over) rules.push(...lateRules(idea));
  if (window.kind === 'ordinary' && idea.energy > 1 && sinceMoment(problem.windows, from) <= SETTLE)
    rules.push('H17');
  return [...new Set(rules)];
}

/** The minutes it could have in this place; none where they do not fit. */
function minutesAt({ window, room }: Place, idea: Idea): number[] {
  const [low, high] = minuteRange(idea);
  if (window.kind === 'hard') return low <= room && room <= high ? [room] : [];
  const lengths = low <= room ? [low] : [];
  // of two lengths that give the same points the shorter leaves more free time
  for (let tens = 10 * Math.floor(low / 10) + 10; tens <= Math.min(high, room); tens += 10)
    lengths.push(tens);
  return lengths;
}

/** The day with another idea in this place; what follows it in the window moves up or back. */
function dayWith(place: Place, idea: Idea, minutes: number): Placement[] {
  const { problem, placements, placement, window, fixed } = place;
  if (window.kind === 'hard')
    return placements.map((one) => (one === placement ? { ...one, idea: idea.id } : one));
  const soonest = GRID * Math.ceil((problem.notBefore ?? 0) / GRID);
  let from = placement.from;
  const day = placements.map((one) => {
    if (one.window !== window.id || one.from < placement.from) return one;
    const next =
      one === placement
        ? { ...one, idea: idea.id, minutes }
        : fixed(one)
          ? one
          : { ...one, from: Math.max(from, soonest) };
    from = endOf(next) + GRID;
    return next;
  });
  return inOrder(day);
}

/** What the day would be worth with this idea here, or the rules that would then be broken. */
function whatIf(place: Place, idea: Idea): Other {
  const days = minutesAt(place, idea)
    .map((minutes) => dayWith(place, idea, minutes))
    .map((day) => ({ day, points: place.score - scoreOf(place.problem, day) }))
    .sort((a, b) => a.points - b.points);
  let rules: RuleId[] = [];
  for (const { day, points } of days) {
    const broken = brokenBy(place.problem, day);
    rules = [...broken].flatMap(([rule, times]) => (times > (place.broken.get(rule) ?? 0) ? [rule] : []));
    if (!rules.length) return { idea: idea.id, why: 'fewer-points', points };
  }
  return rules.length ? { idea: idea.id, why: 'rule', rules } : { idea: idea.id, why: 'does-not-fit' };
}

/** One idea as it looks from this place. */
interface Seen {
  idea: Idea;
  base: number;
  rules: RuleId[];
  may: boolean;
}

/** Whether an idea is kept fresh from this place for a hard moment that begins soon. */
function isKept({ problem, placement, window }: Place, there: Placement): boolean {
  const moment = problem.windows.find(({ id }) => id === there.window);
  if (window.kind === 'hard' || moment?.kind !== 'hard') return false;
  return moment.from > placement.from && moment.from - placement.from <= KEPT_BEFORE;
}

function whyNot(place: Place, { idea, rules }: Seen): Other {
  if (rules.length) return { idea: idea.id, why: 'rule', rules };
  const there = place.placements.find((one) => one.idea === idea.id);
  if (!there) return whatIf(place, idea);
  if (isKept(place, there)) return { idea: idea.id, why: 'kept', window: there.window };
  return { idea: idea.id, why: 'elsewhere', from: there.from };
}

/** Ideas about which someone may ask, in the order of the answer. */
function* asked(place: Place, seen: readonly Seen[], here: Idea): Generator<Seen> {
  const {
    problem: { child },
    placements,
  } = place;
  const best = [...seen].sort((a, b) => b.base - a.base);
  yield* best.filter(({ idea }) => child.likes.includes(idea.id) && likeOf(child, idea) > 0);
  // of a liked kind one is enough, the one that comes nearest; what is for another age nobody asks about
  const free = ({ may, idea }: Seen) => may && placements.every((one) => one.idea !== idea.id);
  const nearest = [...best].sort(
    (a, b) =>
      Number(free(b)) - Number(free(a)) || Number(b.may) - Number(a.may) || a.rules.length - b.rules.length,
  );
  for (const kind of child.likes)
    if (kind !== here.kind) {
      const one = nearest.find(
        ({ idea, rules }) => idea.kind === kind && likeOf(child, idea) > 0 && !rules.includes('H1'),
      );
      if (one) yield one;
    }
  // what the day holds elsewhere is no choice for this place, except what waits for a hard moment
  yield* best.filter(
    ({ may, idea }) => may && placements.every((one) => one.idea !== idea.id || isKept(place, one)),
  );
}

function becauseOf(place: Place, seen: readonly Seen[], here: Idea): Because[] {
  const { problem, placements, placement, window } = place;
  const base = baseOf(problem, here, window);
  const might = seen.filter(({ may }) => may);
  const hard = window.kind === 'hard';
  const alone = () =>
    !might.length &&
    (!hard ||
      fillingsOf(problem, problem.ideas, window).every(({ ideas }) =>
        ideas.some((index) => problem.ideas[index]!.id === here.id),
      ));
  const past = [...problem.history.yesterday, ...problem.history.lastThreeDays];
  const done = (problem.done ?? []).map(({ idea }) => idea);
  const kinds = new Map(problem.ideas.map(({ id, kind }) => [id, kind]));
  const family = ({ idea }: Placement) => FAMILIES[kinds.get(idea)!];
  const holds: Record<Because, () => boolean> = {
    pinned: () => problem.pins.some((pin) => same(pin, placement)),
    'only-one': alone,
    'kept-for-moment': () => hard && might.filter((other) => other.base > base).length < BEST,
    wish: () =>
      hard && (window.wish === 'watch' || window.wish === 'look-away') && here.suits.includes(window.wish),
    liked: () => likeOf(problem.child, here) > 0,
    'fits-energy': () => here.energy === window.energy,
    // of a bed with nothing on record nobody knows it, and what was done today is not new
    new: () => past.length > 0 && !past.includes(here.id) && !done.includes(here.id),
    'own-family': () => !placements.some((one) => one !== placement && family(one) === FAMILIES[here.kind]),
  };
  return BECAUSE.filter((reason) => holds[reason]());
}

/**
 * Why this idea stands here, and why some others do not: those the child likes first, then the best of what could.
 *
 * Shape: a problem, its plan's placements and one of them -> reasons in a fixed order, and at most five other ideas. Of a
 * kind that the child likes one idea is enough. What a person pinned and what was done has no others: nobody weighed them.
 * Units: whole points of the day's score, with what follows in the window moved up.
 * Errors: throws for a placement that is not in the plan, and for a window or an idea that is not in the problem.
 * Source: design 4-play, 5.4 and 5.6 (our proposal).
 *
 * @example reasonsFor(problem, placements, film).because // ['kept-for-moment', 'liked', 'fits-energy', 'new']
 */
export function reasonsFor(
  problem: DayProblem,
  placements: readonly Placement[],
  placement: Placement,
): Reasons {
  const place = placeOf(problem, placements, placement);
  const here = problem.ideas.find(({ id }) => id === placement.idea)!;
  const seen = problem.ideas
    .filter(({ id }) => id !== here.id)
    .map((idea): Seen => {
      const rules = rulesAt(place, idea);
      const may = !rules.length && minutesAt(place, idea).length > 0;
      return { idea, base: baseOf(problem, idea, place.window), rules, may };
    });
  const others: Other[] = [];
  if (!place.fixed(place.placement))
    for (const one of asked(place, seen, here)) {
      if (others.length === MOST_OTHERS) break;
      if (!others.some(({ idea }) => idea === one.idea.id)) others.push(whyNot(place, one));
    }
  return { because: becauseOf(place, seen, here), others };
}
