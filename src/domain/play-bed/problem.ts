/** From a bed as it was ticked to the problem the planner solves; and a bed to begin with. */
import { monthsOf, type BedCard } from '../bed-card/card.ts';
import { windowsOf, type DaySketch } from '../play/day.ts';
import { GRID } from '../play/feasible.ts';
import type { DayMinute, DayProblem, Fault, Idea } from '../play/types.ts';
import {
  ALONE,
  UNDER_THREE,
  usualLightsOut,
  usualScreenMinutes,
  type BedShape,
  type PlayBed,
} from './bed.ts';
import { reservedIn } from './child-chooses.ts';
import { clashesOf, momentsHeeded } from './heeded.ts';
import { ideaOf } from './own-idea.ts';
import { WHOLE_DAY } from './stretches.ts';

/** Grown-up minutes a day that are planned without a word of the family. Source: our proposal. */
const USUAL_GROWN_UP_MINUTES = 120;

/** How long a child who is bored is left with nothing to do. Source: our proposal. */
const IDLE_MINUTES = 15;

/** The planner's own idea for a child who wants to be alone is short where the child is bored; what a hand put there stays. */
function asAsked(bed: PlayBed, idea: Idea): Idea {
  if (!bed.bored || idea.id !== ALONE) return idea;
  const kept = [...bed.pins, ...bed.done].filter((one) => one.idea === ALONE);
  const [least, most] = idea.minutes;
  const longest = Math.max(IDLE_MINUTES, ...kept.map(({ minutes }) => minutes));
  return { ...idea, minutes: [least, Math.min(most, longest)] };
}

/**
 * What the planner is asked for this bed.
 *
 * Shape: a bed and the library -> the problem, and what of the day could not be used; the rest is kept. What frightens the
 * child, needs words that nobody shares, is too loud or waits for the child's choice stands among what is never wanted;
 * doing nothing is short for a child who is bored.
 * Errors: none; see `faults`.
 */
export function problemOf(bed: PlayBed, library: readonly Idea[]): { problem: DayProblem; faults: Fault[] } {
  const { windows, events, faults } = windowsOf(
    { ...bed.sketch, moments: momentsHeeded(bed) },
    bed.child.ageMonths,
  );
  const ideas = [...library, ...bed.own.map(ideaOf)].map((idea) => asAsked(bed, idea));
  const unsuited = ideas.filter((idea) => clashesOf(bed, idea).length > 0).map(({ id }) => id);
  // what was done outside every window of the day holds no place in it, and is still not planned a second time
  const elsewhere = bed.done
    .filter(({ window }) => !windows.some(({ id }) => id === window))
    .map(({ idea }) => idea);
  return {
    faults,
    problem: {
      ideas,
      child: {
        ...bed.child,
        never: [...bed.child.never, ...bed.notToday, ...elsewhere, ...unsuited, ...reservedIn(bed)],
      },
      freeHands: bed.freeHands,
      room: bed.room,
      eating: bed.eating,
      permissions: bed.permissions,
      lightsOut: bed.sketch.lightsOut,
      windows,
      events,
      limits: bed.limits,
      history: bed.history,
      bored: bed.bored,
      pins: bed.pins,
      done: bed.done,
    },
  };
}

/**
 * What is asked at this minute: the rest of the day; late in the evening, when no window has room any more, the whole of it.
 *
 * Shape: the problem of a whole day -> the problem with `notBefore`.
 */
export function fromNow(problem: DayProblem, minute: DayMinute): DayProblem {
  const soonest = GRID * Math.ceil(minute / GRID);
  const hasRoom = problem.windows.some(
    ({ from, minutes }) => from + minutes - Math.max(from, soonest) >= GRID,
  );
  return { ...problem, notBefore: hasRoom ? minute : 0 };
}

/** What the nurse's card says that play needs to know. */
export interface CardFacts {
  ageMonths: number;
  propped: boolean;
  freeHands: 0 | 1 | 2;
  isolation: 'none' | 'contact';
  eating: boolean;
  eatingUnsaid?: true;
}

/** As cautious as can be where there is no card: flat, one hand, no food until somebody says so, of the given age. */
export const withoutCard = (ageYears: number): CardFacts => ({
  ageMonths: ageYears * 12,
  propped: false,
  freeHands: 1,
  isolation: 'none',
  eating: false,
  eatingUnsaid: true,
});

/**
 * Reads the nurse's card for play. "A little" is not propped: nothing that needs a tray stands then.
 *
 * Shape: the card, the age drawn where the card has none, and now in universal minutes -> facts.
 */
export function factsOf(card: BedCard, ageYears: number, now: number): CardFacts {
  return {
    ageMonths: monthsOf(card.age ?? { years: ageYears }),
    propped: card.head === 'propped',
    freeHands: card.hands === 'both' ? 2 : card.hands === 'none' ? 0 : 1,
    isolation: card.ownThingsOnly ? 'contact' : 'none',
    eating: card.nothingByMouthUntil === undefined || card.nothingByMouthUntil <= now,
  };
}

/** Things a bed on a ward has without anybody fetching them; the rest is ticked. */
const USUAL_THINGS = ['card', 'cloth', 'tray', 'window'] as const;

/**
 * A bed to begin with: the ward's usual day, things any bed has, a grown-up there by day.
 *
 * Units: `day` as 2026-01-31.
 */
export function startBed(
  shape: BedShape,
  day: string,
  facts: CardFacts,
  usual: Pick<DaySketch, 'wake' | 'quiet' | 'events'> & Partial<Pick<DaySketch, 'lightsOut'>>,
): PlayBed {
  const lightsOut = usualLightsOut(facts.ageMonths, usual);
  return {
    shape,
    day,
    child: {
      ageMonths: facts.ageMonths,
      mouths: facts.ageMonths < UNDER_THREE,
      likes: [],
      dislikes: [],
      never: [],
      lacks: [],
    },
    freeHands: facts.freeHands,
    room: { shared: true, isolation: facts.isolation, things: USUAL_THINGS, usedElsewhere: [] },
    eating: facts.eating,
    ...(facts.eatingUnsaid ? { eatingUnsaid: true as const } : {}),
    permissions: [],
    sketch: {
      wake: usual.wake,
      lightsOut,
      events: usual.events.filter(({ from, minutes }) => from + minutes <= lightsOut),
      moments: [],
      propped: facts.propped ? [WHOLE_DAY] : [],
      quiet: usual.quiet,
      grownUp: [WHOLE_DAY],
      energy: [],
    },
    limits: {
      screenMinutes: usualScreenMinutes(facts.ageMonths),
      grownUpMinutes: USUAL_GROWN_UP_MINUTES,
    },
    bored: false,
    notToday: [],
    own: [],
    pins: [],
    history: { yesterday: [], lastThreeDays: [] },
    done: [],
  };
}

/**
 * What of a bed changes with the child's age: what followed from the age follows it, and what was set by hand stays.
 *
 * Shape: `dark` is when the ward's room is dark for everybody.
 * Units: completed months.
 */
export function ofAge(
  bed: PlayBed,
  ageMonths: number,
  { lightsOut: dark }: Pick<DaySketch, 'lightsOut'>,
): Pick<PlayBed, 'child' | 'sketch' | 'limits'> {
  const { child, sketch, limits } = bed;
  const followed = <T>(value: T, usual: (months: number) => T) =>
    value === usual(child.ageMonths) ? usual(ageMonths) : value;
  const lightsOut = (months: number) => usualLightsOut(months, { events: sketch.events, lightsOut: dark });
  return {
    child: { ...child, ageMonths, mouths: followed(child.mouths, (months) => months < UNDER_THREE) },
    sketch: { ...sketch, lightsOut: followed(sketch.lightsOut, lightsOut) },
    limits: { ...limits, screenMinutes: followed(limits.screenMinutes, usualScreenMinutes) },
  };
}

/**
 * The same bed on a later day. A clock that shows an earlier one was set back: then the bed stays whole, since its plan
 * goes on as soon as the clock is right.
 *
 * Units: days as 2026-01-31, whose order is that of the alphabet.
 */
export const nextDay = (bed: PlayBed, day: string): PlayBed => (day > bed.day ? begunAnew(bed, day) : bed);

/**
 * The same bed on another day: what was planned and done moves into its history; hard moments, pins, bans of the day and
 * what other beds had are gone.
 */
export function begunAnew(bed: PlayBed, day: string): PlayBed {
  if (bed.day === day) return bed;
  const { plan, childChooses: _, ...rest } = bed;
  const done = [...new Set([...(plan ?? []), ...bed.done].map(({ idea }) => idea))].sort();
  return {
    ...rest,
    day,
    sketch: { ...bed.sketch, moments: [] },
    room: { ...bed.room, usedElsewhere: [] },
    bored: false,
    notToday: [],
    pins: [],
    done: [],
    history: {
      yesterday: done,
      // two days are kept by name, so that three days are never forgotten too late
      lastThreeDays: [...new Set([...done, ...bed.history.yesterday])].sort(),
    },
  };
}
