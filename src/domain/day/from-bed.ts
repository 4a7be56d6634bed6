/** The day built from the nurse's card, the bed as it was ticked with the ward's times, and the plan of play. */
import { monthsOf, type BedCard } from '../bed-card/card.ts';
import { eventKind, type EventKind, type PlayBed } from '../play-bed/bed.ts';
import type { DayMinute, Procedure } from '../play/types.ts';
import { instant, minutes, type Instant, type Minutes } from '../units.ts';
import { added, type DayBook, type DayEvent } from './book.ts';
import type { DayEventId, DayEventTable } from './ids.ts';
import { modeOf, type AgeMode } from './modes.ts';
import type { DayFacts } from './tiles.ts';

/** How an event of the ward's day is called in the child's; what nobody named is something new. */
const OF_WARD = {
  breakfast: 'breakfast',
  wash: 'wash',
  medicine: 'medicine-visit',
  round: 'round',
  school: 'school',
  physio: 'physio',
  'x-ray': 'x-ray',
  sheets: 'sheets',
  lunch: 'lunch',
  nap: 'nap',
  snack: 'snack',
  visitor: 'visitor',
  supper: 'supper',
  other: 'surprise',
} as const satisfies Record<EventKind, DayEventId>;
const OF_MOMENT = {
  needle: 'needle',
  bandage: 'bandage-care',
  other: 'surprise',
} as const satisfies Record<Procedure, DayEventId>;

/** A part of the child's own routine, so many minutes after waking, or before lights-out where below 0. */
export interface RoutineRow {
  kind: DayEventId;
  from: 'wake' | 'lights-out';
  after: number;
}

type Told = Pick<PlayBed, 'day' | 'sketch' | 'plan'>;

/** Ids of the day's parts by where they come from, so that none of one can be taken for another's. */
const idOf = { event: (id: string) => `e-${id}`, moment: (id: string) => `m-${id}` };

/**
 * The day of a bed: the ward's fixed times, the hard moments with what is kept for each, the ideas of the plan, and the
 * child's own routine around them.
 *
 * Shape: of the routine only what this mode shows. The same bed gives the same day, in whatever order it was ticked.
 * Not: whether the plan keeps its rules; the planner has seen to that.
 *
 * @example bookOf(bed, DAY_EVENTS, ROUTINE, 'path').events.length
 */
export function bookOf(
  bed: Told,
  table: DayEventTable,
  routine: readonly RoutineRow[],
  mode: AgeMode,
): DayBook {
  const { sketch, plan = [] } = bed;
  const hard = new Set(sketch.moments.map(({ id }) => id));
  const events: DayEvent[] = [
    ...sketch.events.map(({ id, from, minutes }) => ({
      ...{ id: idOf.event(id), kind: OF_WARD[eventKind(id)], from, minutes, source: 'bed' as const },
    })),
    ...sketch.moments.map(({ id, from, minutes, procedure }) => {
      const kept = plan.filter(({ window }) => window === id).map(({ idea }) => idea);
      return {
        ...{ id: idOf.moment(id), kind: OF_MOMENT[procedure], from, minutes, source: 'bed' as const },
        ...(kept.length ? { ideas: [...kept].sort() } : {}),
        hurts: true as const,
      };
    }),
    ...playEvents(plan.filter(({ window }) => !hard.has(window))),
    ...routine
      .filter(({ kind }) => table[kind].modes.includes(mode))
      .map(({ kind, from, after }) => ({
        ...{ id: `r-${kind}`, kind, source: 'routine' as const, minutes: table[kind].minutes },
        from: routineFrom(sketch, from, after),
      })),
  ];
  const empty: DayBook = {
    ...{ day: bed.day, wake: sketch.wake, lightsOut: sketch.lightsOut },
    quiet: [...sketch.quiet].sort((a, b) => a.from - b.from || a.until - b.until),
    ...{ events: [], done: [] },
  };
  return events.reduce(added, empty);
}

const routineFrom = (
  { wake, lightsOut }: { wake: DayMinute; lightsOut: DayMinute },
  from: RoutineRow['from'],
  after: number,
): DayMinute => Math.max(0, (from === 'wake' ? wake : lightsOut) + after);

/** An idea may be played twice; then the times tell which is which. */
function playEvents(plan: NonNullable<Told['plan']>): DayEvent[] {
  return [...plan]
    .sort((a, b) => a.from - b.from || (a.idea < b.idea ? -1 : 1))
    .map(({ idea, from, minutes }, n, all) => {
      const earlier = all.slice(0, n).filter((other) => other.idea === idea).length;
      return {
        id: earlier ? `p-${idea}-again-${earlier}` : `p-${idea}`,
        ...{ kind: 'play' as const, from, minutes, source: 'plan' as const, ideas: [idea] },
      };
    });
}

export interface CardForDay {
  mode: AgeMode;
  facts: DayFacts;
  /** Minutes before a care that hurts at which medicine is asked about. */
  askMinutes: Minutes;
  /** Hands with which a choice of hand is a true one. */
  handsToChoose: 0 | 1 | 2;
}

/** Where there is neither a card nor a word of the ward. Source: design 5-day (the ward decides). */
const USUAL_ASK_MINUTES = minutes(45);

/**
 * What the nurse's card says about the child's day. The more careful where a card says nothing: no hand to choose.
 *
 * Shape: the card, if there is one, and the age that is drawn where the card has none.
 * Units: `askMinutes` 30 to 90, as the card and the ward hold it.
 */
export function dayFactsOf(
  card: BedCard | undefined,
  ageMonths: number,
  askMinutes: Minutes = USUAL_ASK_MINUTES,
): CardForDay {
  if (!card) return { mode: modeOf(ageMonths), facts: {}, askMinutes, handsToChoose: 0 };
  const months = card.age ? monthsOf(card.age) : ageMonths;
  const { nothingByMouthUntil: until, hands, drip } = card;
  return {
    mode: modeOf(months),
    facts: until === undefined ? {} : { eatingFrom: instant(until) },
    askMinutes: minutes(card.medicineWaitMinutes),
    handsToChoose: hands === 'none' ? 0 : hands === 'both' && drip === 'none' ? 2 : 1,
  };
}

/**
 * What the card and the bed say together about eating: nothing by mouth on either is nothing by mouth.
 *
 * Shape: a bed that is ticked "not eating" without a time on the card eats nothing today; `since` is when somebody of the
 * ward said so, where that is known. By a clock that was set back it lies ahead: then nothing of the day counts as eaten
 * before it.
 */
export function eatingFacts(facts: DayFacts, eating: boolean, now: Instant, since?: Instant): DayFacts {
  if (eating) return facts;
  const known = typeof facts.eatingFrom === 'number' && facts.eatingFrom > now;
  if (known) return facts;
  const said = since !== undefined && since <= now;
  return { ...facts, eatingFrom: 'not-today', ...(said ? { notEatingSince: since } : {}) };
}
