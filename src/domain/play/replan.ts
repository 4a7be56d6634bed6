/** Something came up: the rest of the day is planned anew, and as much as possible stays where it was. */
import { GRID } from './feasible.ts';
import { planWith } from './plan.ts';
import { EFFORT, type Effort } from './solve.ts';
import type { DayMinute, DayProblem, Impossible, Placement, Plan, PlayWindow } from './types.ts';

export type Change =
  /** An X-ray, the doctors, a visitor, sleep: nothing is placed then, and nothing is caught up. */
  | { kind: 'taken'; from: DayMinute; minutes: number }
  /** The next two windows become calm. Whether soreness rises is for the looks at the leg, not for play. */
  | { kind: 'sore' }
  /** This idea, or this kind, not today. */
  | { kind: 'not-today'; what: string }
  /** A hard moment comes earlier or later; what was kept for it goes with it. */
  | { kind: 'moment-moved'; window: string; from: DayMinute };

export interface Replanned {
  problem: DayProblem;
  result: Plan | Impossible;
  /** Placements of the old plan, still to come, that are no longer in the same window; and new ones. */
  gone: readonly Placement[];
  come: readonly Placement[];
}

/**
 * What is left of windows once a stretch of the day is taken; a hard moment that meets it is dropped, unless it had begun:
 * then it came as far as it came.
 */
function withoutStretch(
  windows: readonly PlayWindow[],
  from: number,
  until: number,
  now: DayMinute,
): PlayWindow[] {
  return windows.flatMap((window): PlayWindow[] => {
    const end = window.from + window.minutes;
    if (end <= from || window.from >= until) return [window];
    if (window.kind === 'hard' && window.from >= now) return [];
    const pieces: PlayWindow[] = [];
    if (from - window.from >= GRID)
      pieces.push({ ...window, minutes: GRID * Math.floor((from - window.from) / GRID) });
    const later = GRID * Math.ceil(until / GRID);
    if (window.kind === 'ordinary' && end - later >= GRID)
      pieces.push({
        ...window,
        id: pieces.length ? `${window.id}-later` : window.id,
        from: later,
        minutes: end - later,
      });
    return pieces;
  });
}

function changed(problem: DayProblem, now: DayMinute, change: Change): DayProblem {
  switch (change.kind) {
    case 'taken': {
      const windows = withoutStretch(problem.windows, change.from, change.from + change.minutes, now);
      return { ...problem, windows, events: [...problem.events, change.from].sort((a, b) => a - b) };
    }
    case 'sore': {
      const next = problem.windows.filter(({ from, minutes }) => from + minutes > now).slice(0, 2);
      const calm = (window: PlayWindow): PlayWindow =>
        next.includes(window) ? { ...window, energy: 1 } : window;
      return { ...problem, windows: problem.windows.map(calm) };
    }
    case 'not-today':
      return { ...problem, child: { ...problem.child, never: [...problem.child.never, change.what] } };
    case 'moment-moved': {
      const moment = problem.windows.find(({ id }) => id === change.window);
      if (!moment) throw new Error(`play › replan › moment-moved: no such window, saw "${change.window}"`);
      const others = problem.windows.filter(({ id }) => id !== change.window);
      const around = withoutStretch(others, change.from, change.from + moment.minutes, now);
      const windows = [...around, { ...moment, from: change.from }].sort((a, b) => a.from - b.from);
      return { ...problem, windows };
    }
  }
}

const inWindow = (list: readonly Placement[], { idea, window }: Placement) =>
  list.some((other) => other.idea === idea && other.window === window);

/**
 * Plans the rest of the day after something changed: the best plan from now on, and among equals the one in which the
 * fewest placements move to another window or go.
 *
 * Shape: the problem and plan as they were, the minute it is now -> the problem as it is now, its plan, and what changed.
 * Placements that began before now stay. A pin stays unless the change took its time.
 * Not: what a bed's page does. It knows the day in the ward's words, so it changes those (`play-bed/came-up.ts`) and has the
 * rest planned from them.
 * Errors: throws for a moment that is not in the problem.
 */
export function replan(
  problem: DayProblem,
  plan: Plan,
  now: DayMinute,
  change: Change,
  effort: Effort = EFFORT,
): Replanned {
  // a moment does not wait: what was begun ends where it is moved to
  const stop = change.kind === 'moment-moved' ? change.from : Infinity;
  const done = plan.placements
    .filter(({ from }) => from < now)
    .map((past) =>
      past.from < stop ? { ...past, minutes: Math.min(past.minutes, stop - past.from) } : past,
    );
  const moved = change.kind === 'moment-moved' ? change.window : undefined;
  const fresh = changed(problem, now, change);
  const held = fresh.windows.map((window): PlayWindow => {
    // a window cut short still holds what was begun in it
    const begun = done.filter((placement) => placement.window === window.id);
    const end = Math.max(window.from + window.minutes, ...begun.map(({ from, minutes }) => from + minutes));
    return { ...window, minutes: end - window.from };
  });
  let over = 0;
  const windows = held.filter(({ from, minutes }) => {
    if (from < over) return false;
    over = from + minutes;
    return true;
  });
  const next: DayProblem = {
    ...fresh,
    windows,
    pins: problem.pins.filter(({ from, window }) => from >= now && window !== moved),
    done,
    notBefore: now,
  };
  const old = plan.placements.filter(({ from }) => from >= now);
  const result = planWith(next, old, effort);
  const after = result.kind === 'plan' ? result.placements : result.rest.placements;
  return {
    problem: next,
    result,
    gone: old.filter((placement) => !inWindow(after, placement)),
    come: after.filter((placement) => placement.from >= now && !inWindow(old, placement)),
  };
}
