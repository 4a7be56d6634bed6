/** A bed in one line, for whoever has several: what is kept for its hard moments, and what it still needs today. */
import type { DayMinute, Placement } from '../play/types.ts';
import type { PlayBed } from './bed.ts';

type Moment = PlayBed['sketch']['moments'][number];

export interface Glance {
  /** A day was planned. */
  planned: boolean;
  /** Hard moments still to come for which something is kept, with what it is; in order of time. */
  kept: readonly { moment: Moment; ideas: readonly string[] }[];
  /** Hard moments still to come with nothing kept; in order of time. */
  open: readonly Moment[];
}

/**
 * What is kept at this bed and what is still open, from a minute on; a hard moment that goes on is still to come.
 *
 * Shape: each hard moment that is not over stands in one of the two lists, once.
 * Units: `minute` since the ward's midnight.
 * Source: design 4-play, 5.6 (several beds).
 *
 * @example atAGlance(bed, 8 * 60).open.map(({ id }) => id) // ['bandage-1']
 */
export function atAGlance({ sketch, plan }: Pick<PlayBed, 'sketch' | 'plan'>, minute: DayMinute): Glance {
  const coming = sketch.moments
    .filter(({ from, minutes }) => from + minutes > minute)
    .sort((a, b) => a.from - b.from);
  const byTime = (a: Placement, b: Placement) => a.from - b.from;
  const told = coming.map((moment) => ({
    moment,
    ideas: (plan ?? [])
      .filter(({ window }) => window === moment.id)
      .sort(byTime)
      .map(({ idea }) => idea),
  }));
  return {
    planned: plan !== undefined,
    kept: told.filter(({ ideas }) => ideas.length > 0),
    open: told.filter(({ ideas }) => ideas.length === 0).map(({ moment }) => moment),
  };
}
