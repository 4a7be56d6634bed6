/** The day of one bed as it hangs at the bed's end: what, when, what is liked, what to take care of. Nothing clinical. */
import { CAUTIONS, type Caution, type DayMinute, type Idea, type Placement } from '../play/types.ts';
import { eventKind, type PlayBed } from './bed.ts';
import { momentCard, type MomentCard, type StepId } from './moments.ts';
import { ideaOf } from './own-idea.ts';

type Moment = PlayBed['sketch']['moments'][number];

export type SheetRow =
  | { kind: 'event'; from: DayMinute; minutes: number; id: string }
  | { kind: 'moment'; from: DayMinute; minutes: number; moment: Moment; kept: readonly Placement[] }
  | { kind: 'idea'; from: DayMinute; minutes: number; placement: Placement };

export interface DaySheet {
  /** In order of time; a hard moment comes with what is kept for it. */
  rows: readonly SheetRow[];
  /** On a day too full for them among the ideas, all fixed events together, in order of time; else none. */
  together: readonly Extract<SheetRow, { kind: 'event' }>[];
  /** Kinds or ideas, three at most of each. */
  likes: readonly string[];
  never: readonly string[];
  /** What to watch with anything that is planned, each once. */
  cautions: readonly Caution[];
  freeHands: 0 | 1 | 2;
  /** What is done at a hard moment of this age; where ideas are kept for them, those stand in the rows instead. */
  card: MomentCard;
}

/**
 * Events, moments and ideas that still fit one sheet of A5 in two languages; a whole day planned full has some 47. Above
 * that the events, which have no pictures, stand together in a third of the room.
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
  const fits = sketch.moments.length + plan.length + events.length <= MOST_PLACES;
  const rank = { event: 0, moment: 1, idea: 2 };
  const rows = [...needed, ...(fits ? events : [])].sort(
    (a, b) => a.from - b.from || rank[a.kind] - rank[b.kind],
  );
  const known = new Map([...library, ...own.map(ideaOf)].map((idea) => [idea.id, idea]));
  const cautions = new Set(plan.flatMap(({ idea }) => known.get(idea)?.cautions ?? []));
  const steps = momentCard(child.ageMonths);
  const isKept = plan.some(({ window }) => moments.has(window));
  return {
    rows,
    together: fits ? [] : events,
    likes: child.likes.slice(0, MOST_WORDS),
    never: child.never.slice(0, MOST_WORDS),
    cautions: CAUTIONS.filter((caution) => cautions.has(caution)),
    freeHands,
    card: {
      before: steps.before.filter(({ id }) => !CARD_ALONE.includes(id)),
      during: steps.during.filter(({ ideas }) => !isKept || ideas.length === 0),
      after: steps.after,
    },
  };
}
