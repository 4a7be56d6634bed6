/** Something came up: the bed's day changes, what was begun stays, and only the rest is planned anew. */
import { checkPlan } from '../play/check.ts';
import { GRID, MOST_WINDOWS } from '../play/feasible.ts';
import { scoreOf } from '../play/objective.ts';
import type {
  DayMinute,
  DayProblem,
  Fault,
  Idea,
  Impossible,
  Placement,
  Plan,
  PlayWindow,
} from '../play/types.ts';
import { freeId, type EventKind, type PlayBed } from './bed.ts';
import { problemOf } from './problem.ts';

export type CameUp =
  | { kind: 'taken'; by: EventKind; minutes: number }
  /** Sleep is not caught up: nothing is planned in it, and nothing is moved behind it on purpose. */
  | { kind: 'asleep'; minutes: number }
  | { kind: 'sore' }
  | { kind: 'moment'; id: string; from: DayMinute };

/** After soreness the next two windows are calm, and two hours at least. */
const CALM_WINDOWS = 2;
const CALM_MINUTES = 120;
const endOf = ({ from, minutes }: { from: DayMinute; minutes: number }) => from + minutes;

/** The window a placement stands in, by time: windows are cut anew whenever the day changes. */
function standsIn(windows: readonly PlayWindow[], placement: Placement): Placement | undefined {
  const window = windows.find((one) => one.from <= placement.from && endOf(placement) <= endOf(one));
  return window && { ...placement, window: window.id };
}

/**
 * The windows with those given back that were begun but no longer found: the day holds 16 at most, and a rest of five
 * minutes is the first to be left out. What was begun in it would be forgotten, and planned a second time.
 */
function withBegun(
  { windows, events }: DayProblem,
  earlier: readonly PlayWindow[],
  begun: readonly Placement[],
  now: DayMinute,
): PlayWindow[] {
  let kept = [...windows];
  const lost = earlier.filter(
    ({ id }) => begun.some(({ window }) => window === id) && !kept.some((window) => window.id === id),
  );
  for (const window of lost) {
    // just wide enough for what was begun: the rest of it may be taken
    const until = Math.min(
      Math.max(...begun.filter((one) => one.window === window.id).map(endOf)),
      ...[...kept.map(({ from }) => from), ...events].filter((from) => from > window.from),
    );
    if (kept.some((other) => other.from <= window.from && endOf(other) > window.from)) continue;
    const used = (id: string) => begun.some((placement) => placement.window === id);
    const free = kept.filter(({ id, kind }) => kind === 'ordinary' && !used(id));
    const past = free.find((other) => endOf(other) <= now);
    const shortest = [...free].sort((a, b) => a.minutes - b.minutes)[0];
    if (kept.length >= MOST_WINDOWS) kept = kept.filter((other) => other !== (past ?? shortest));
    kept.push({ ...window, minutes: until - window.from });
  }
  return kept.sort((a, b) => a.from - b.from);
}

/** What was begun as far as it came: what came up ended its window. */
function brokenOff(placement: Placement, windows: readonly PlayWindow[]): Placement {
  const window = windows.find(({ id }) => id === placement.window);
  const left = window ? endOf(window) - placement.from : placement.minutes;
  return left > 0 && left < placement.minutes ? { ...placement, minutes: left } : placement;
}

/**
 * The event with everything it meets cut back: what came up is true, what was told before gives way. What has begun by `now`
 * ends there. What has not keeps what is left of it behind; it goes where that is less than half, or where it would be cut in
 * two: nobody takes an X-ray in five minutes.
 */
function withEvent(
  bed: PlayBed,
  id: string,
  from: DayMinute,
  minutes: number,
  now: DayMinute,
): PlayBed['sketch'] {
  const until = Math.min(from + minutes, bed.sketch.lightsOut);
  const hasBegun = (one: { from: DayMinute }) => one.from < now && from - one.from >= GRID;
  const events = bed.sketch.events.flatMap((event) => {
    if (endOf(event) <= from || event.from >= until) return [event];
    if (hasBegun(event)) return [{ ...event, minutes: from - event.from }];
    const left = event.from < from ? 0 : endOf(event) - until;
    return 2 * left >= event.minutes ? [{ ...event, from: until, minutes: left }] : [];
  });
  const moments = bed.sketch.moments.flatMap((moment) => {
    if (endOf(moment) <= from || moment.from >= until) return [moment];
    // one that had begun did happen
    return hasBegun(moment) ? [{ ...moment, minutes: from - moment.from }] : [];
  });
  return { ...bed.sketch, events: [...events, { id, from, minutes: until - from }], moments };
}

/** The pins of a bed once this moment begins then: what a hand keeps in it goes with it, now and in every plan to come. */
export function pinsWith({ sketch, pins }: PlayBed, moment: string, from: DayMinute): readonly Placement[] {
  const was = sketch.moments.find(({ id }) => id === moment)?.from ?? from;
  return pins.map((pin) => (pin.window === moment ? { ...pin, from: pin.from + from - was } : pin));
}

/**
 * The bed after something came up, still with its old plan.
 *
 * Units: `now` in minutes since the ward's midnight.
 * Not: it plans nothing; see `restOfDay`. Soreness that rises is a matter for a look at the leg, never for play.
 */
export function cameUp(bed: PlayBed, now: DayMinute, what: CameUp): PlayBed {
  const from = Math.max(bed.sketch.wake, GRID * Math.ceil(now / GRID));
  // after lights-out there is no day left that could change
  if (from >= bed.sketch.lightsOut && what.kind !== 'moment') return bed;
  switch (what.kind) {
    case 'taken':
      return { ...bed, sketch: withEvent(bed, freeId(what.by, bed.sketch.events), from, what.minutes, now) };
    case 'asleep':
      return { ...bed, sketch: withEvent(bed, freeId('nap', bed.sketch.events), from, what.minutes, now) };
    case 'sore': {
      const next = problemOf(bed, []).problem.windows.filter((window) => endOf(window) > from);
      const calmUntil = Math.max(from + CALM_MINUTES, ...next.slice(0, CALM_WINDOWS).map(endOf));
      const later = bed.sketch.energy.filter((step) => step.from <= calmUntil).at(-1)?.energy ?? 2;
      const energy = [
        ...bed.sketch.energy.filter((step) => step.from < from || step.from >= calmUntil),
        { from, energy: 1 as const },
        ...(bed.sketch.energy.some((step) => step.from === calmUntil)
          ? []
          : [{ from: calmUntil, energy: later }]),
      ].sort((a, b) => a.from - b.from);
      return { ...bed, sketch: { ...bed.sketch, energy } };
    }
    case 'moment': {
      const moments = bed.sketch.moments.map((moment) =>
        moment.id === what.id ? { ...moment, from: what.from } : moment,
      );
      const moved = moments.find(({ id }) => id === what.id);
      if (!moved) return bed;
      // what it meets in the ward's day gives way, as with anything that came up
      const cut = withEvent(bed, 'moved', moved.from, moved.minutes, now);
      const events = cut.events.filter(({ id }) => id !== 'moved');
      return { ...bed, sketch: { ...bed.sketch, events, moments }, pins: pinsWith(bed, what.id, what.from) };
    }
  }
}

export type InTheDay = Pick<PlayBed['sketch'], 'moments' | 'events'>;

/**
 * What stood in the day before something came up and stands nowhere in it after. It may come all the same, and nobody has
 * said when.
 *
 * @example pushedOut(bed.sketch, cameUp(bed, 555, { kind: 'taken', by: 'x-ray', minutes: 60 }).sketch).moments
 */
export function pushedOut(before: InTheDay, after: InTheDay): InTheDay {
  const gone = <T extends { id: string }>(told: readonly T[], left: readonly T[]) =>
    told.filter(({ id }) => !left.some((other) => other.id === id));
  return { moments: gone(before.moments, after.moments), events: gone(before.events, after.events) };
}

export interface RestOfDay {
  problem: DayProblem;
  /** What was planned from now on, in today's windows: as much of it as possible should stay. */
  stay: readonly Placement[];
  faults: readonly Fault[];
}

/**
 * What the planner is asked when a plan exists already: what began before now stays, nothing new starts before now, and
 * what was kept for a hard moment goes with it when it moves.
 *
 * Shape: the bed as it is now, with the plan as it was and its pins where they are now; `before` is the bed as that plan
 * was made for.
 */
export function restOfDay(
  bed: PlayBed,
  library: readonly Idea[],
  now: DayMinute,
  before: PlayBed = bed,
): RestOfDay {
  const { problem: whole, faults } = problemOf(bed, library);
  const old = bed.plan ?? [];
  const begun = old.filter(({ from }) => from < now);
  const earlier = problemOf(before, library).problem.windows;
  const problem = { ...whole, windows: withBegun(whole, earlier, [...bed.done, ...begun], now) };
  const known = new Set(bed.done.map(({ idea, from }) => `${idea} ${from}`));
  const moved = new Map(
    bed.sketch.moments.flatMap((moment) => {
      const earlier = before.sketch.moments.find(({ id }) => id === moment.id);
      return earlier && earlier.from !== moment.from ? [[moment.id, moment.from - earlier.from]] : [];
    }),
  );
  const follow = (placement: Placement): Placement => {
    const by = moved.get(placement.window);
    return by === undefined ? placement : { ...placement, from: placement.from + by };
  };
  const kept = old.filter(({ from, window }) => from >= now && moved.has(window)).map(follow);
  const placed = (list: readonly Placement[]) =>
    list.flatMap((placement) => standsIn(problem.windows, placement) ?? []);
  const pins = [...bed.pins, ...kept].filter(
    (pin, at, all) =>
      pin.from >= now && all.findIndex((other) => other.idea === pin.idea && other.from === pin.from) === at,
  );
  return {
    problem: {
      ...problem,
      pins: placed(pins),
      done: [...bed.done, ...begun.filter(({ idea, from }) => !known.has(`${idea} ${from}`))].map(
        (placement) => brokenOff(placement, problem.windows),
      ),
      notBefore: now,
    },
    stay: placed(old.filter(({ from }) => from >= now).map(follow)),
    faults,
  };
}

/**
 * The placements to show: the old ones wherever they still keep every rule and are worth as much, so that a plan does not
 * jump from one good day to another that is no better.
 *
 * Shape: what the planner was asked, what was to stay, and what it found -> placements in order of time.
 */
export function settled(
  problem: DayProblem,
  stay: readonly Placement[],
  found: Plan | Impossible,
): readonly Placement[] {
  const fresh = found.kind === 'plan' ? found.placements : found.rest.placements;
  const begun = fresh.filter(({ from }) => from < (problem.notBefore ?? 0));
  const old = [...begun, ...stay].sort((a, b) => a.from - b.from);
  const filled = (list: readonly Placement[], window: string) => list.some((one) => one.window === window);
  const keepsMoments = problem.windows.every(
    ({ id, kind }) => kind === 'ordinary' || !filled(fresh, id) || filled(old, id),
  );
  const holds = keepsMoments && checkPlan(problem, { placements: old }).length === 0;
  return holds && scoreOf(problem, old) >= scoreOf(problem, fresh) ? old : fresh;
}

const samePlace = (a: Placement, b: Placement) =>
  a.idea === b.idea && a.from === b.from && a.minutes === b.minutes;
const among = (list: readonly Placement[], one: Placement) => list.some((other) => samePlace(one, other));

/**
 * What somebody kept in its place between two states of a bed, and what they let go of again.
 * Not: what was not planned so before, or is not any more; it is told as new, moved or gone.
 */
export const pinsBetween = (
  before: Pick<PlayBed, 'pins' | 'plan'>,
  after: Pick<PlayBed, 'pins' | 'plan'>,
): { stuck: Placement[]; loose: Placement[] } => ({
  stuck: after.pins.filter((pin) => !among(before.pins, pin) && among(before.plan ?? [], pin)),
  loose: before.pins.filter((pin) => !among(after.pins, pin) && among(after.plan ?? [], pin)),
});

/** What went and what came between two plans, from a minute on. */
export function changesBetween(
  old: readonly Placement[],
  fresh: readonly Placement[],
  now: DayMinute,
): { gone: Placement[]; come: Placement[]; moved: { from: DayMinute; placement: Placement }[] } {
  const later = (list: readonly Placement[]) => list.filter(({ from }) => from >= now);
  const lost = later(old).filter((one) => !among(fresh, one));
  const found = later(fresh).filter((one) => !among(old, one));
  const moved = found.flatMap((placement) => {
    const was = lost.find(({ idea }) => idea === placement.idea);
    return was ? [{ from: was.from, placement }] : [];
  });
  const ideas = new Set(moved.map(({ placement }) => placement.idea));
  return {
    gone: lost.filter(({ idea }) => !ideas.has(idea)),
    come: found.filter(({ idea }) => !ideas.has(idea)),
    moved,
  };
}
