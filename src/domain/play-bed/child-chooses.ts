/** Slots of the day that the child chooses for: two ideas wait there, one of them planned and pinned. */
import type { Placement } from '../play/types.ts';
import type { ChildChooses, PlayBed } from './bed.ts';

/**
 * Slots of one day that may be left to the child: more would take too many ideas from the plan, and would not fit the sheet.
 * Source: our proposal.
 */
const MOST_SLOTS = 6;

type Marked = Pick<PlayBed, 'childChooses' | 'pins'>;

/** The marks that hold: what is no longer pinned leaves its slot to the planner, and the child's choice with it. */
const holding = ({ childChooses = [], pins }: Marked): readonly ChildChooses[] =>
  childChooses.filter(({ idea }) => pins.some((pin) => pin.idea === idea));

/** The other idea that the child may choose where this one is pinned; nothing where no choice is marked. */
export const otherOf = (bed: Marked, { idea, from }: Pick<Placement, 'idea' | 'from'>): string | undefined =>
  bed.pins.some((pin) => pin.idea === idea && pin.from === from)
    ? holding(bed).find((one) => one.idea === idea)?.or
    : undefined;

/** Ideas that wait for the child's choice, so that the planner spends them nowhere else. */
export const reservedIn = (bed: Marked): string[] =>
  holding(bed)
    .map(({ or }) => or)
    .filter((or) => !bed.pins.some((pin) => pin.idea === or));

/** Whether one more slot of the day may be left to the child. */
export const mayLeaveMore = (bed: Marked): boolean => holding(bed).length < MOST_SLOTS;

/**
 * The marks once this idea's slot is marked for the child's choice, or no longer is.
 *
 * Shape: no `or` takes the mark away; nothing where none is left, as a bed is kept.
 *
 * @example withMark(bed, 'door-sign', 'hum-guess') // { childChooses: [{ idea: 'door-sign', or: 'hum-guess' }] }
 */
export function withMark(bed: Marked, idea: string, or?: string): Pick<PlayBed, 'childChooses'> {
  const others = (bed.childChooses ?? []).filter((one) => one.idea !== idea);
  const marks =
    or === undefined ? others : [...others, { idea, or }].sort((a, b) => (a.idea < b.idea ? -1 : 1));
  return { childChooses: marks.length > 0 ? marks : undefined };
}
