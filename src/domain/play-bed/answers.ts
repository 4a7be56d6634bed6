/** What a child and a family say about ideas: again, not again, never, and that one was done. */
import { GRID, minuteRange } from '../play/feasible.ts';
import type { DayMinute, Idea, Placement } from '../play/types.ts';
import { DAY_MINUTES } from '../units.ts';
import type { PlayBed } from './bed.ts';

export const LEANINGS = ['likes', 'dislikes', 'never'] as const;
export type Leaning = (typeof LEANINGS)[number];
type Child = PlayBed['child'];

/** The window of what was done without a plan for it. No window of a day has this name. */
const BY_HAND = 'by-hand';

/** What was said about a kind or an idea: the stricter word where two stand. */
export function leaningOf(child: Child, word: string): Leaning | undefined {
  return [...LEANINGS].reverse().find((list) => child[list].includes(word));
}

/**
 * The child once somebody said something about a kind or an idea. The last word counts: it stands in one list alone.
 *
 * Shape: a kind or an id of an idea; no leaning takes back what was said.
 *
 * @example withLeaning(child, 'hum-guess', 'dislikes').dislikes // ['hum-guess']
 */
export function withLeaning(child: Child, word: string, leaning: Leaning | undefined): Child {
  const said = (list: Leaning) => {
    const rest = child[list].filter((one) => one !== word);
    return list === leaning ? [...rest, word].sort() : rest;
  };
  return { ...child, likes: said('likes'), dislikes: said('dislikes'), never: said('never') };
}

/** Whether an idea was done today. */
export const wasDone = (bed: Pick<PlayBed, 'done'>, idea: string): boolean =>
  bed.done.some((one) => one.idea === idea);

/** The place in the plan at which an idea has begun by this minute. */
const begun = (bed: Pick<PlayBed, 'plan'>, idea: string, minute: DayMinute): Placement | undefined =>
  [...(bed.plan ?? [])].reverse().find((one) => one.idea === idea && one.from <= minute);

/**
 * What was done today, with this idea among it: where the plan has it if it has begun there, else at this minute.
 *
 * Shape: the bed's `done`; an idea that was marked already stands in it once.
 * Units: minutes since the ward's midnight, put on the grid of five.
 */
export function markDone(
  bed: Pick<PlayBed, 'done' | 'plan'>,
  idea: Pick<Idea, 'id' | 'minutes'>,
  minute: DayMinute,
): readonly Placement[] {
  if (wasDone(bed, idea.id)) return bed.done;
  const from = Math.min(DAY_MINUTES - GRID, GRID * Math.floor(minute / GRID));
  const byHand = {
    idea: idea.id,
    window: BY_HAND,
    from,
    minutes: Math.min(minuteRange(idea)[0], DAY_MINUTES - from),
  };
  return [...bed.done, begun(bed, idea.id, minute) ?? byHand].sort(
    // as a kept bed is read back
    (a, b) => a.from - b.from || (a.idea < b.idea ? -1 : 1),
  );
}

/**
 * What of a bed changes once an idea is marked as done: its later place in the plan is free time, and nothing else moves.
 *
 * Not: a hard moment is never left empty for it. What was kept for one stays there until the day is planned anew; whoever
 * marks it asks for that, see `isKept`.
 */
export function withDone(
  bed: Pick<PlayBed, 'done' | 'plan' | 'pins' | 'sketch'>,
  idea: Pick<Idea, 'id' | 'minutes'>,
  minute: DayMinute,
): Pick<PlayBed, 'done' | 'pins'> & Partial<Pick<PlayBed, 'plan'>> {
  const stays = (one: Placement) => one.idea !== idea.id || one.from <= minute || isMoment(bed, one);
  return {
    done: markDone(bed, idea, minute),
    pins: bed.pins.filter(stays),
    ...(bed.plan ? { plan: bed.plan.filter(stays) } : {}),
  };
}

const isMoment = ({ sketch }: Pick<PlayBed, 'sketch'>, { window }: Placement): boolean =>
  sketch.moments.some(({ id }) => id === window);

/** Whether the plan keeps an idea for a hard moment that has not begun. */
export const isKept = (bed: Pick<PlayBed, 'plan' | 'sketch'>, idea: string, minute: DayMinute): boolean =>
  (bed.plan ?? []).some((one) => one.idea === idea && one.from > minute && isMoment(bed, one));

/** What was done today without an idea that was marked by mistake. */
export const unmarkDone = (bed: Pick<PlayBed, 'done'>, idea: string): readonly Placement[] =>
  bed.done.filter((one) => one.idea !== idea);
