/** How lively a child is, told by the part of the day. */
import type { DaySketch } from '../play/day.ts';
import type { DayMinute } from '../play/types.ts';
import { DAY_MINUTES } from '../units.ts';

type Steps = DaySketch['energy'];
export type Liveliness = Steps[number]['energy'];

/** What is taken where nobody said anything. */
const USUAL: Liveliness = 2;

/** Parts of the day by their first minute; the last ends at midnight. Source: our proposal. */
const DAY_PARTS = {
  morning: 0,
  midday: 11 * 60,
  afternoon: 14 * 60,
  evening: 17 * 60 + 30,
} as const satisfies Record<string, DayMinute>;
export type DayPart = keyof typeof DAY_PARTS;
export const DAY_PART_IDS = Object.keys(DAY_PARTS) as DayPart[];

/** From its first minute to the one in which the next part begins. */
export function spanOf(part: DayPart): { from: DayMinute; until: DayMinute } {
  const next = DAY_PART_IDS[DAY_PART_IDS.indexOf(part) + 1];
  return { from: DAY_PARTS[part], until: next ? DAY_PARTS[next] : DAY_MINUTES };
}

/** How lively the child is at a minute: what was said last before it. */
export function livelinessAt(steps: Steps, minute: DayMinute): Liveliness {
  let last: Steps[number] | undefined;
  for (const step of steps) if (step.from <= minute && (!last || step.from >= last.from)) last = step;
  return last?.energy ?? USUAL;
}

/**
 * How lively the child is in a part of the day, if it is the same all through it.
 *
 * Shape: steps of the day -> 1 to 3, or nothing where something came up in between.
 */
export function livelinessIn(steps: Steps, part: DayPart): Liveliness | undefined {
  const { from, until } = spanOf(part);
  const first = livelinessAt(steps, from);
  return steps.some((step) => step.from > from && step.from < until && step.energy !== first)
    ? undefined
    : first;
}

/**
 * The day's steps once a part of it is as lively as somebody says; the rest of the day stays as it was.
 *
 * Shape: steps in order of time, each another level than the one before.
 *
 * @example withLiveliness([], 'midday', 1) // [{ from: 660, energy: 1 }, { from: 840, energy: 2 }]
 */
export function withLiveliness(steps: Steps, part: DayPart, level: Liveliness): Steps {
  const { from, until } = spanOf(part);
  const after = livelinessAt(steps, until);
  const outside = steps.filter((step) => step.from < from || step.from > until);
  const all = [
    ...outside,
    { from, energy: level },
    ...(until < DAY_MINUTES ? [{ from: until, energy: after }] : []),
  ];
  let before = USUAL;
  return all
    .sort((a, b) => a.from - b.from)
    .filter(({ energy }) => {
      const changes = energy !== before;
      before = energy;
      return changes;
    });
}
