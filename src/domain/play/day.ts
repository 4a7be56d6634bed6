/** From a day as a family tells it, with its meals, rounds and hard moments, to the windows in which play can be planned. */
import { byTheClock, GRID, MOST_WINDOWS, PLAY_FROM, PLAY_UNTIL, playSpan } from './feasible.ts';
import type { DayMinute, Fault, HardMoment, OrdinaryWindow, PlayWindow, Procedure, Wish } from './types.ts';

/** A part of the day, its end not included. */
export interface Stretch {
  from: DayMinute;
  until: DayMinute;
}

/** The day in the family's and the ward's words; minutes need not lie on the grid. */
export interface DaySketch {
  wake: DayMinute;
  lightsOut: DayMinute;
  /** Meals, wash, rounds, visitors, a nap: nothing is planned in them. */
  events: readonly { id: string; from: DayMinute; minutes: number }[];
  moments: readonly {
    id: string;
    from: DayMinute;
    minutes: number;
    procedure: Procedure;
    weight: 1 | 2 | 3;
    freeHands: 0 | 1 | 2;
    wish?: Wish;
    /** Left out, the stretches say. */
    grownUp?: boolean;
  }[];
  /** When the bed card allows the head up. */
  propped: readonly Stretch[];
  quiet: readonly Stretch[];
  grownUp: readonly Stretch[];
  /** From then on; 2 before the first. */
  energy: readonly { from: DayMinute; energy: 1 | 2 | 3 }[];
}

interface Traits {
  energy: 1 | 2 | 3;
  propped: boolean;
  quiet: boolean;
  grownUp: boolean;
}
const TRAITS = ['energy', 'propped', 'quiet', 'grownUp'] as const;

const DAY = 24 * 60;
const down = (minute: number) => GRID * Math.floor(minute / GRID);
const up = (minute: number) => GRID * Math.ceil(minute / GRID);
const endOf = ({ from, minutes }: { from: DayMinute; minutes: number }) => from + minutes;

/** What holds for two stretches together is the more careful of each. */
const together = (a: Traits, b: Traits): Traits => ({
  energy: Math.min(a.energy, b.energy) as 1 | 2 | 3,
  propped: a.propped && b.propped,
  quiet: a.quiet || b.quiet,
  grownUp: a.grownUp && b.grownUp,
});
const equalTraits = (a: Traits, b: Traits) => TRAITS.filter((trait) => a[trait] === b[trait]).length;

/** What five minutes that begin then allow: head and grown-up only if for all five, quiet if for one. */
function traitsAt({ propped, quiet, grownUp, energy }: DaySketch, from: DayMinute): Traits {
  const until = from + GRID;
  const whole = (list: readonly Stretch[]) => list.some((one) => one.from <= from && until <= one.until);
  const steps = [...energy].sort((a, b) => a.from - b.from);
  const before = steps.filter((step) => step.from <= from);
  const during = steps.filter((step) => step.from > from && step.from < until);
  const felt = [before[before.length - 1]?.energy ?? 2, ...during.map((step) => step.energy)];
  return {
    energy: Math.min(...felt) as 1 | 2 | 3,
    propped: whole(propped),
    quiet: quiet.some((one) => one.from < until && from < one.until),
    grownUp: whole(grownUp),
  };
}

function traitsOver(day: DaySketch, from: DayMinute, until: DayMinute): Traits {
  let traits = traitsAt(day, from);
  for (let at = from + GRID; at < until; at += GRID) traits = together(traits, traitsAt(day, at));
  return traits;
}

/** The day without what cannot be used, each part of it in order of time. */
function usable(day: DaySketch, faults: Fault[]): DaySketch {
  const kept: { from: DayMinute; minutes: number }[] = [];
  const moments = new Set<string>();
  const fits = (list: string, one: { id: string; from: DayMinute; minutes: number }): boolean => {
    const refuse = (rule: string, seen: unknown) => {
      faults.push({ where: `${list} › ${one.id}`, rule, seen });
      return false;
    };
    if (!Number.isFinite(one.from)) return refuse('from: a minute of the day', one.from);
    if (!(Number.isFinite(one.minutes) && one.minutes > 0)) return refuse('minutes: above 0', one.minutes);
    if (one.from < day.wake || endOf(one) > day.lightsOut)
      return refuse('from: between waking and lights-out', one.from);
    if (kept.some((other) => other.from < endOf(one) && one.from < endOf(other)))
      return refuse('from: nothing else at that time', one.from);
    return true;
  };
  const inOrder = <T extends { id: string; from: DayMinute }>(list: readonly T[]) =>
    [...list].sort((a, b) => byTheClock(a, b) || Number(a.id > b.id) - Number(a.id < b.id));

  // a hard moment is never given up for a meal that was typed over it
  const hard = inOrder(day.moments).flatMap((moment) => {
    const from = down(moment.from);
    const wide = { ...moment, from, minutes: up(endOf(moment)) - from };
    const tooMany = moments.size >= MOST_WINDOWS;
    const refuse = (rule: string, seen: unknown) => {
      faults.push({ where: `moments › ${moment.id}`, rule, seen });
      return [];
    };
    if (moments.has(moment.id)) return refuse('id: used once', moment.id);
    if (tooMany) return refuse(`at most ${MOST_WINDOWS} windows`, moments.size + 1);
    if (!fits('moments', moment)) return [];
    if (from < PLAY_FROM || endOf(wide) > PLAY_UNTIL)
      return refuse('from: between 06:00 and 22:00', moment.from);
    kept.push(wide);
    moments.add(moment.id);
    return [wide];
  });
  const events = inOrder(day.events).filter((event) => {
    if (!fits('events', event)) return false;
    kept.push(event);
    return true;
  });
  const stretches = (name: 'propped' | 'quiet' | 'grownUp') =>
    day[name].filter((one, n) => {
      if (Number.isFinite(one.from) && one.until > one.from) return true;
      faults.push({ where: `${name} › ${n + 1}`, rule: 'until: after from', seen: one.until });
      return false;
    });
  const energy = day.energy.filter((step, n) => {
    const known = Number.isFinite(step.from) && [1, 2, 3].includes(step.energy);
    if (!known) faults.push({ where: `energy › ${n + 1}`, rule: 'energy: 1, 2 or 3', seen: step.energy });
    return known;
  });
  return {
    ...day,
    moments: hard,
    events,
    propped: stretches('propped'),
    quiet: stretches('quiet'),
    grownUp: stretches('grownUp'),
    energy,
  };
}

type Open = Traits & { from: DayMinute; minutes: number };

/** The open stretches of the day, cut wherever a trait changes. */
function openStretches(day: DaySketch, ageMonths: number): Open[] {
  const fixed = [...day.events, ...day.moments];
  const open: Open[] = [];
  const begin = Math.max(down(day.wake), PLAY_FROM);
  const last = Math.min(down(day.lightsOut), PLAY_UNTIL, begin + playSpan(ageMonths));
  for (let from = Math.max(up(day.wake), begin); from < last; from += GRID) {
    if (fixed.some((one) => one.from < from + GRID && from < endOf(one))) continue;
    const traits = traitsAt(day, from);
    const before = open[open.length - 1];
    if (before && endOf(before) === from && equalTraits(before, traits) === TRAITS.length)
      before.minutes += GRID;
    else open.push({ ...traits, from, minutes: GRID });
  }
  return open;
}

/** Joins neighbours, then leaves the shortest out, until no more than `most` are left. */
function atMost(open: readonly Open[], most: number): Open[] {
  const kept = [...open];
  while (kept.length > most) {
    let best = -1;
    for (let n = 1; n < kept.length; n++) {
      const [a, b] = [kept[n - 1]!, kept[n]!];
      if (endOf(a) !== b.from) continue;
      if (best < 0) {
        best = n;
        continue;
      }
      const [c, d] = [kept[best - 1]!, kept[best]!];
      const more = equalTraits(a, b) - equalTraits(c, d);
      if (more > 0 || (more === 0 && a.minutes + b.minutes < c.minutes + d.minutes)) best = n;
    }
    if (best < 0) break;
    const [a, b] = [kept[best - 1]!, kept[best]!];
    kept.splice(best - 1, 2, { ...together(a, b), from: a.from, minutes: a.minutes + b.minutes });
  }
  while (kept.length > most) {
    let shortest = 0;
    for (let n = 1; n < kept.length; n++) if (kept[n]!.minutes <= kept[shortest]!.minutes) shortest = n;
    kept.splice(shortest, 1);
  }
  return kept;
}

/** By the clock, so that a window keeps its name when something changes elsewhere in the day. */
function idAt(from: DayMinute, taken: ReadonlySet<string>): string {
  const two = (value: number) => `${value}`.padStart(2, '0');
  let id = `w-${two(Math.floor(from / 60))}${two(from % 60)}`;
  while (taken.has(id)) id += '-open';
  return id;
}

/**
 * Cuts a day into the windows in which play can be planned: open stretches of one character, and the hard moments.
 *
 * Shape: the day as told, and the child's completed months, which say how much of it is left to sleep -> at most 16 windows in order of time, none overlapping, between 06:00 and 22:00; starts of the
 * fixed events; what could not be used. Where there would be more, neighbours are joined, first those most alike and
 * among these the shortest; the joined one is propped or with a grown-up only if both were, quiet if one was, and as
 * tired as the more tired. Nothing is joined across a fixed event. Then the shortest are left out: they are free time.
 * Units: minutes since the ward's midnight; windows on the grid of five, and never reaching into a fixed event.
 * Errors: none; what overlaps or lies outside the day is named in `faults` and left out. A hard moment goes before an
 * event, the earlier before the later.
 * Source: design 4-play, 5.4 (our proposal).
 *
 * @example windowsOf({ ...day, wake: 420, lightsOut: 1200, events: [{ id: 'noon', from: 720, minutes: 30 }] }).windows
 * // two windows: 'w-0700' of 300 minutes and 'w-1230' of 450
 */
export function windowsOf(
  day: DaySketch,
  ageMonths = Infinity,
): { windows: PlayWindow[]; events: DayMinute[]; faults: Fault[] } {
  const faults: Fault[] = [];
  for (const field of ['wake', 'lightsOut'] as const)
    if (!(day[field] >= 0 && day[field] <= DAY))
      faults.push({ where: `day › ${field}`, rule: 'a minute of the day', seen: day[field] });
  if (!faults.length && day.wake >= day.lightsOut)
    faults.push({ where: 'day › lightsOut', rule: 'lightsOut: after waking', seen: day.lightsOut });
  if (faults.length) return { windows: [], events: [], faults };

  const sketch = usable(day, faults);
  const hard = sketch.moments.map(({ grownUp, wish, ...moment }): HardMoment => {
    const traits = traitsOver(sketch, moment.from, endOf(moment));
    return {
      kind: 'hard',
      ...moment,
      ...traits,
      grownUp: grownUp ?? traits.grownUp,
      ...(wish ? { wish } : {}),
    };
  });
  const taken = new Set(hard.map(({ id }) => id));
  const ordinary = atMost(openStretches(sketch, ageMonths), MOST_WINDOWS - hard.length).map(
    (open): OrdinaryWindow => ({
      kind: 'ordinary',
      id: idAt(open.from, taken),
      ...open,
    }),
  );
  return {
    windows: [...hard, ...ordinary].sort(byTheClock),
    events: [...new Set(sketch.events.map(({ from }) => down(from)))],
    faults,
  };
}
