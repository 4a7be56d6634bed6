/** What stands in a bed's day already where something is to be put, or that the day is over by then. */
import type { DaySketch } from '../play/day.ts';
import type { DayMinute } from '../play/types.ts';

type Timed = { from: DayMinute; minutes: number };

export type Clash =
  /** It would begin before waking or end after lights-out. */
  | { why: 'outside' }
  /** The first that stands at that time. */
  | { why: 'taken'; list: 'moments' | 'events'; id: string; from: DayMinute; minutes: number };

const endOf = ({ from, minutes }: Timed) => from + minutes;

/**
 * Why something cannot stand at a time of this day; nothing where it can. Hard moments are named before events.
 *
 * Shape: `own` is its id where it is in the day already: nothing stands in its own way.
 * Units: minutes since the ward's midnight.
 * Not: what the planner leaves out for other reasons; `windowsOf` says so.
 *
 * @example clashOf(sketch, { from: 575, minutes: 15 }) // { why: 'taken', list: 'events', id: 'round', from: 570, minutes: 30 }
 */
export function clashOf(
  { wake, lightsOut, moments, events }: Pick<DaySketch, 'wake' | 'lightsOut' | 'moments' | 'events'>,
  wanted: Timed,
  own?: string,
): Clash | undefined {
  if (wanted.from < wake || endOf(wanted) > lightsOut) return { why: 'outside' };
  const meets = (one: Timed & { id: string }) =>
    one.id !== own && one.from < endOf(wanted) && wanted.from < endOf(one);
  const first = (list: readonly (Timed & { id: string })[]) =>
    list.filter(meets).sort((a, b) => a.from - b.from)[0];
  for (const [list, one] of [
    ['moments', first(moments)],
    ['events', first(events)],
  ] as const)
    if (one) return { why: 'taken', list, id: one.id, from: one.from, minutes: one.minutes };
  return undefined;
}
