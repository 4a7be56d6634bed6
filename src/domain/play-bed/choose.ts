/** What the child chooses for the stretch of the day that is now, and what a grown-up leaves out of it. */
import { checkPlan } from '../play/check.ts';
import { brokenIn, byTheClock, GRID, minuteRange, SETTLE, sinceMoment } from '../play/feasible.ts';
import { baseOf } from '../play/objective.ts';
import {
  FAMILIES,
  type DayMinute,
  type DayProblem,
  type Idea,
  type Placement,
  type PlayWindow,
} from '../play/types.ts';
import { wasDone } from './answers.ts';
import { ALONE, type PlayBed } from './bed.ts';
import { restOfDay } from './came-up.ts';
import { mayLeaveMore, otherOf, withMark } from './child-chooses.ts';

const FREE_MINUTES = 30;
const MOST_IN_WINDOW = 3;

const endOf = ({ from, minutes }: { from: DayMinute; minutes: number }) => from + minutes;
const same = (a: Placement, b: Placement) => a.idea === b.idea && a.from === b.from;
const onGrid = (minute: DayMinute) => GRID * Math.ceil(minute / GRID);

/** The stretch of the day the child chooses for. */
export interface Slot {
  from: DayMinute;
  minutes: number;
  /** What stands in it; absent where it is free. */
  planned?: Placement;
}

/** A slot with all that must hold in it. */
interface Room extends Slot {
  window: PlayWindow;
  /** The rest of the day with the slot empty: what was begun and what is pinned stand in it. */
  problem: DayProblem;
  /** Until here nothing that stays is in the way. */
  until: DayMinute;
  plan: readonly Placement[];
  pins: readonly Placement[];
}

const windowAt = ({ windows }: DayProblem, minute: DayMinute) =>
  windows.find((one) => one.from <= minute && minute < endOf(one));

/** What goes on at a minute of the grid or begins right after, and was not marked as done; what a hand put there waits for no plan. */
const standsAt = ({ plan = [], pins, done }: PlayBed, ready: DayMinute) =>
  [...pins, ...plan].find(
    (one) => one.from <= ready + GRID && ready < endOf(one) && !wasDone({ done }, one.idea),
  );

/** The bed's plan without what stands in the slot; in a hard moment that goes on it stays as far as it came. */
function without(bed: PlayBed, planned: Placement | undefined, ready: DayMinute): readonly Placement[] {
  return (bed.plan ?? []).flatMap((one) => {
    if (!planned || !same(one, planned)) return [one];
    const inMoment = bed.sketch.moments.some(({ id }) => id === one.window);
    return inMoment && one.from < ready ? [{ ...one, minutes: ready - one.from }] : [];
  });
}

/** A slot with what must hold in it; nothing where something that stays leaves no room. */
function roomFor(
  bed: PlayBed,
  library: readonly Idea[],
  minute: DayMinute,
  slot: { from: DayMinute; minutes?: number; planned?: Placement },
): Room | undefined {
  const { planned } = slot;
  const plan = without(bed, planned, onGrid(minute));
  const pins = bed.pins.filter((pin) => !planned || !same(pin, planned));
  // with its pin the slot's own mark is gone, too: the other idea may stand here; and who asks to be alone is not bored
  const { problem } = restOfDay({ ...bed, plan, pins, bored: false }, library, minute);
  const window = windowAt(problem, slot.from);
  if (!window) return undefined;
  const gap = window.kind === 'hard' ? 0 : GRID;
  const stays = [...(problem.done ?? []), ...problem.pins].filter((one) => one.window === window.id);
  if (stays.length >= (window.kind === 'hard' ? 2 : MOST_IN_WINDOW)) return undefined;
  let { from } = slot;
  for (const one of [...stays].sort((a, b) => a.from - b.from))
    if (one.from <= from) from = Math.max(from, endOf(one) + gap);
  const until = Math.min(
    endOf(window),
    ...stays.filter((one) => one.from > from).map((one) => one.from - gap),
  );
  const minutes = Math.min(slot.minutes ?? FREE_MINUTES, until - from);
  if (minutes < GRID || (!planned && window.kind === 'hard')) return undefined;
  return { from, minutes, ...(planned && { planned }), window, problem, until, plan, pins };
}

/** What stands now or begins within the grid; else free time from now on; else what is planned next. */
function roomAt(bed: PlayBed, library: readonly Idea[], minute: DayMinute): Room | undefined {
  const ready = onGrid(minute);
  const now = standsAt(bed, ready);
  if (now) {
    const from = Math.max(ready, now.from);
    return roomFor(bed, library, minute, { from, minutes: endOf(now) - from, planned: now });
  }
  const free = roomFor(bed, library, minute, { from: ready });
  if (free) return free;
  const next = [...bed.pins, ...(bed.plan ?? [])]
    .sort(byTheClock)
    .find((one) => one.from > ready && !wasDone(bed, one.idea));
  return next && roomFor(bed, library, minute, { ...next, planned: next });
}

/** Ideas that a hard moment which is not over needs: none of them is spent on a choice. */
function keptIn({ problem, planned }: Room, { plan = [] }: PlayBed, minute: DayMinute): string[] {
  const hard = problem.windows
    .filter((one) => one.kind === 'hard' && endOf(one) > minute)
    .map(({ id }) => id);
  return plan
    .filter((one) => !(planned && same(one, planned)) && hard.includes(one.window))
    .map(({ idea }) => idea);
}

/** The idea in this slot; nothing where a rule of the day bars it there. */
function placedIn(room: Room, bed: PlayBed, minute: DayMinute, idea: Idea): Placement | undefined {
  const { window, problem, from, until, planned } = room;
  const [low, high] = minuteRange(idea);
  const hard = window.kind === 'hard';
  const minutes = hard ? room.minutes : Math.max(low, Math.min(high, room.minutes));
  const barred =
    minutes < low ||
    minutes > high ||
    from + minutes > until ||
    brokenIn(problem, idea, window).length > 0 ||
    keptIn(room, bed, minute).includes(idea.id) ||
    (idea.id !== planned?.idea && (problem.done ?? []).some((one) => one.idea === idea.id)) ||
    // what a hand puts there is excused from settling; a child's choice is not
    (!hard && idea.energy > 1 && sinceMoment(problem.windows, from) <= SETTLE);
  if (barred) return undefined;
  const placed = { idea: idea.id, window: window.id, from, minutes };
  const broken = (pins: readonly Placement[]) =>
    checkPlan({ ...problem, pins }, { placements: [...(problem.done ?? []), ...pins] }).length;
  return broken([...problem.pins, placed]) > broken(problem.pins) ? undefined : placed;
}

/** What a child is asked: two ideas and to be alone, each where it is possible, for one stretch of the day. */
export interface Choice extends Slot {
  two: readonly string[];
  alone: boolean;
  /** A grown-up marked this slot as the child's: the child is asked without asking for it. */
  marked: boolean;
}

/** What is planned in the slot, or what is best there, and the other one: as marked, or the best of another family. */
function twoIn(room: Room, bed: PlayBed, minute: DayMinute): Idea[] {
  const { window, problem, planned } = room;
  const able = (idea: Idea) => placedIn(room, bed, minute, idea) !== undefined;
  const elsewhere = (bed.plan ?? [])
    .filter((one) => !(planned && same(one, planned)))
    .map(({ idea }) => idea);
  const marked = planned && otherOf(bed, planned);
  const ranked = problem.ideas
    .filter(({ id }) => id !== ALONE && !elsewhere.includes(id))
    .map((idea) => ({ idea, worth: baseOf(problem, idea, window) }))
    .sort((a, b) => b.worth - a.worth || (a.idea.id < b.idea.id ? -1 : 1))
    .map(({ idea }) => idea);
  // what a hand keeps there and a rule bars since is in no plan, and is not offered either
  const stands = (idea: Idea) => idea.id === planned?.idea && !brokenIn(problem, idea, window).length;
  const first = ranked.find(stands) ?? ranked.find(able);
  const other = (fits: (idea: Idea) => boolean) =>
    ranked.find((one) => one !== first && fits(one) && able(one));
  const second =
    first &&
    (other(({ id }) => id === marked) ??
      other((one) => FAMILIES[one.kind] !== FAMILIES[first.kind]) ??
      other(() => true));
  return [first, second].filter((one) => one !== undefined);
}

/**
 * The child's choice at this minute: what is planned and the best other of another family, both truly possible, and to be
 * left alone. In a slot that is marked for the child the other is the one that was shown there. At a hard moment the one
 * that takes up more of the mind stands first.
 *
 * Shape: at most two ids; nothing where no stretch of the day is left to choose for. An idea that stands elsewhere in the
 * day is not offered, so that choosing moves as little as possible.
 * Units: minutes since the ward's midnight; the slot begins on the grid of five.
 * Source: design 4-play, 5.6.
 */
export function choiceAt(bed: PlayBed, library: readonly Idea[], minute: DayMinute): Choice | undefined {
  const room = roomAt(bed, library, minute);
  if (!room) return undefined;
  const { window, problem, from, minutes, planned } = room;
  const two = twoIn(room, bed, minute);
  if (window.kind === 'hard') two.sort((a, b) => b.absorbs - a.absorbs);
  const alone = problem.ideas.find(({ id }) => id === ALONE);
  return {
    ...{ from, minutes },
    ...(planned && { planned }),
    two: two.map(({ id }) => id),
    alone: planned?.idea === ALONE || Boolean(alone && placedIn(room, bed, minute, alone)),
    marked: planned !== undefined && otherOf(bed, planned) !== undefined,
  };
}

/**
 * What of the bed changes once a grown-up leaves this slot of the plan to the child: it is pinned, and the best other idea
 * of another family waits beside it.
 *
 * Shape: pins and marks; nothing where no other idea is possible there, for a child who wants to be alone, and where as
 * much of the day is left to the child as may be.
 * Source: design 4-play, 5.6.
 */
export function leftToChild(
  bed: PlayBed,
  library: readonly Idea[],
  minute: DayMinute,
  planned: Placement,
): Pick<PlayBed, 'pins' | 'childChooses'> | undefined {
  if (planned.idea === ALONE || planned.from < minute || !mayLeaveMore(bed)) return undefined;
  const room = roomFor(bed, library, minute, { ...planned, planned });
  const other = room && twoIn(room, bed, minute).find(({ id }) => id !== planned.idea);
  if (!other) return undefined;
  return {
    pins: [...bed.pins.filter((pin) => !same(pin, planned)), planned],
    ...withMark(bed, planned.idea, other.id),
  };
}

/** The other idea of a slot that is left to the child, where it is still possible; see `leftToChild`. */
export function otherStill(
  bed: PlayBed,
  library: readonly Idea[],
  minute: DayMinute,
  planned: Placement,
): string | undefined {
  const marked = otherOf(bed, planned);
  if (marked === undefined || planned.from < minute) return undefined;
  const room = roomFor(bed, library, minute, { ...planned, planned });
  return room && twoIn(room, bed, minute).find(({ id }) => id === marked)?.id;
}

/**
 * What of the bed changes once the child chose this idea: it is pinned in the slot, and what stood there leaves the plan.
 * The rest of the day is for the planner; see `restOfDay`.
 *
 * Shape: pins, marks and plan, without the chosen idea in the plan; nothing where the idea is not possible there (any more). What
 * goes on already and is chosen goes on.
 */
export function withChoice(
  bed: PlayBed,
  library: readonly Idea[],
  minute: DayMinute,
  chosen: string,
): (Pick<PlayBed, 'pins' | 'childChooses'> & { plan: readonly Placement[] }) | undefined {
  const room = roomAt(bed, library, minute);
  if (!room) return undefined;
  const { planned, pins, plan } = room;
  // chosen is chosen: the slot is no longer open
  const marks = planned ? withMark(bed, planned.idea) : {};
  if (planned?.idea === chosen)
    return { pins: planned.from < minute ? bed.pins : [...pins, planned], plan: bed.plan ?? [], ...marks };
  const idea = room.problem.ideas.find(({ id }) => id === chosen);
  const placed = idea && placedIn(room, bed, minute, idea);
  return placed && { pins: [...pins, placed], plan, ...marks };
}

/**
 * "Not now" on what goes on: it leaves the plan, its time is free, and the rest of the day is planned from its end on.
 *
 * Shape: the change of the bed, and the minute before which nothing else changes; nothing where no idea goes on, where it
 * was done already, or in a hard moment, which is not left empty.
 */
export function notNow(
  bed: PlayBed,
  minute: DayMinute,
):
  | { idea: string; change: Pick<PlayBed, 'pins'> & { plan: readonly Placement[] }; from: DayMinute }
  | undefined {
  const goesOn = bed.plan?.find((one) => one.from <= minute && minute < endOf(one));
  if (!goesOn || wasDone(bed, goesOn.idea)) return undefined;
  if (bed.sketch.moments.some(({ id }) => id === goesOn.window)) return undefined;
  return {
    idea: goesOn.idea,
    change: {
      pins: bed.pins.filter((pin) => !same(pin, goesOn)),
      plan: bed.plan?.filter((one) => one !== goesOn) ?? [],
    },
    from: endOf(goesOn),
  };
}
