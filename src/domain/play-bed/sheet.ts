/** The day of one bed as it hangs at the bed's end: what, when, what is liked, what to take care of. Nothing clinical. */
import {
  CAUTIONS,
  type Caution,
  type DayMinute,
  type DayProblem,
  type Idea,
  type Placement,
} from '../play/types.ts';
import { eventKind, type ChildChooses, type PlayBed } from './bed.ts';
import { otherStill } from './choose.ts';
import {
  cardAtBed,
  momentAtBed,
  saidSteps,
  type CardAtBed,
  type MomentAtBed,
  type StepAtBed,
} from './moment-at-bed.ts';
import type { StepId } from './moments.ts';
import { openMoments } from './open-moments.ts';
import { ideaOf } from './own-idea.ts';
import { problemOf } from './problem.ts';

type Moment = PlayBed['sketch']['moments'][number];

export type SheetRow =
  | { kind: 'event'; from: DayMinute; minutes: number; id: string }
  | { kind: 'moment'; from: DayMinute; minutes: number; moment: Moment; kept: readonly Placement[] }
  | { kind: 'idea'; from: DayMinute; minutes: number; placement: Placement };

/** What is true of one hard moment of the day. */
export interface MomentSaid {
  moment: Moment;
  /** Something is kept for it, and is started. */
  kept: boolean;
  /** Nothing is kept, and nothing can fill it as the bed is now. */
  nothingFits: boolean;
  /** Where nothing is kept: the steps during it whose ideas this bed allows, or some of them. */
  steps: readonly StepAtBed[];
}

export interface DaySheet {
  /** In order of time; a hard moment comes with what is kept for it. */
  rows: readonly SheetRow[];
  /** On a day too full for them among the ideas, all fixed events together, in order of time; else none. */
  together: readonly Extract<SheetRow, { kind: 'event' }>[];
  /** Slots in which the child chooses: what is planned there, and the other idea where the bed still allows it. */
  chooses: readonly ChildChooses[];
  /** Kinds or ideas, three at most of each. */
  likes: readonly string[];
  never: readonly string[];
  /** What to watch with anything that is planned or may be chosen, each once. */
  cautions: readonly Caution[];
  freeHands: 0 | 1 | 2;
  /** Otherwise the meals of the day wait for a nurse's word. */
  eating: boolean;
  /** What is done at each hard moment of this age. No step names an idea that the bed bars at any of them. */
  card: CardAtBed;
  /** In order of time; what each keeps or allows stands here, never in `card.during`. */
  moments: readonly MomentSaid[];
}

/**
 * Events, moments and ideas, those a child may choose among them, that still fit one sheet of A5 in two languages; a whole
 * day planned full has some 47. Above that the events, which have no pictures, stand together in a third of the room.
 */
export const MOST_PLACES = 40;
const MOST_WORDS = 3;

/** Who passes a bed's end may read the sheet, so whatever is about medicine is not on it. */
const isClinical = (id: string) => eventKind(id) === 'medicine';
/** Steps that stand on the card alone: medicine is nobody's who passes, and the pictures to show are not on the sheet. */
const CARD_ALONE: readonly string[] = ['ask-medicine-time', 'three-pictures'] satisfies StepId[];

/**
 * The day of a bed for its end.
 *
 * Shape: `library` holds the ideas of the plan; an idea that is not in it has no cautions. Each fixed event stands in `rows`
 * or, with all others, in `together`.
 * Not: names, weights, medicine or anything that was seen on the child. Own ideas are as they were written.
 * Source: design 4-play, 5.6 (bed-end print).
 *
 * @example daySheet(bed, IDEAS).rows[0] // { kind: 'event', id: 'breakfast', from: 450, minutes: 30 }
 */
export function daySheet(bed: PlayBed, library: readonly Idea[]): DaySheet {
  const { sketch, plan = [], child, freeHands, own } = bed;
  const moments = new Set(sketch.moments.map(({ id }) => id));
  const needed: SheetRow[] = [
    ...sketch.moments.map((moment) => ({
      ...{ kind: 'moment' as const, from: moment.from, minutes: moment.minutes, moment },
      kept: plan.filter(({ window }) => window === moment.id),
    })),
    ...plan
      .filter(({ window }) => !moments.has(window))
      .map((placement) => ({
        kind: 'idea' as const,
        from: placement.from,
        minutes: placement.minutes,
        placement,
      })),
  ];
  const events = sketch.events
    .filter(({ id }) => !isClinical(id))
    .map((event) => ({ ...event, kind: 'event' as const }))
    .sort((a, b) => a.from - b.from);
  const chooses = plan.flatMap((placement) => {
    const or = otherStill(bed, library, sketch.wake, placement);
    return or === undefined ? [] : [{ idea: placement.idea, or }];
  });
  const fits = sketch.moments.length + plan.length + chooses.length + events.length <= MOST_PLACES;
  const rank = { event: 0, moment: 1, idea: 2 };
  const rows = [...needed, ...(fits ? events : [])].sort(
    (a, b) => a.from - b.from || rank[a.kind] - rank[b.kind],
  );
  const byId = new Map([...library, ...own.map(ideaOf)].map((idea) => [idea.id, idea]));
  const named = [...plan.map(({ idea }) => idea), ...chooses.map(({ or }) => or)];
  const cautions = new Set(named.flatMap((idea) => byId.get(idea)?.cautions ?? []));
  const { problem } = problemOf(bed, library);
  const open = openMoments(bed, library);
  const known = sketch.moments.flatMap(({ id }) => momentAtBed(problem, plan, id) ?? []);
  const byTime = [...sketch.moments].sort((a, b) => a.from - b.from);
  return {
    rows,
    together: fits ? [] : events,
    chooses,
    likes: child.likes.slice(0, MOST_WORDS),
    never: child.never.slice(0, MOST_WORDS),
    cautions: CAUTIONS.filter((caution) => cautions.has(caution)),
    freeHands,
    eating: bed.eating,
    card: cardFor(problem, known),
    moments: byTime.map((moment): MomentSaid => {
      const kept = plan.some(({ window }) => window === moment.id);
      const steps = known.find((one) => one.moment.id === moment.id)?.during ?? [];
      return {
        moment,
        kept,
        nothingFits: open.some((one) => one.moment.id === moment.id && one.nothingFits),
        steps: kept ? [] : saidSteps(steps).filter(({ ideas }) => ideas.length > 0),
      };
    }),
  };
}

/**
 * What may be started at the moments for which nothing is kept: the same step with the same ideas is said once for all of
 * its moments.
 */
export function stepsOnce(
  moments: readonly MomentSaid[],
): { step: StepAtBed; moments: readonly MomentSaid[] }[] {
  const groups = new Map<string, { step: StepAtBed; moments: MomentSaid[] }>();
  for (const one of moments)
    for (const step of one.steps) {
      const key = [step.id, ...step.possible].join(' ');
      const group = groups.get(key) ?? { step, moments: [] };
      group.moments.push(one);
      groups.set(key, group);
    }
  return [...groups.values()];
}

/** The steps that hold at every moment of the day, each with the ideas that are possible at all of them. */
function cardFor(problem: DayProblem, moments: readonly MomentAtBed[]): CardAtBed {
  const card = cardAtBed(problem);
  const atAll = (phase: 'before' | 'after') =>
    saidSteps(
      card[phase].map((step) => ({
        ...step,
        possible: step.possible.filter((idea) =>
          moments.every((moment) => moment[phase].some(({ possible }) => possible.includes(idea))),
        ),
      })),
    ).filter(({ id }) => !CARD_ALONE.includes(id));
  return {
    before: atAll('before'),
    during: saidSteps(card.during, true),
    after: atAll('after'),
  };
}
