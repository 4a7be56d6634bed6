/** A bed while nothing may be eaten, whatever was ticked and planned there before. */
import type { Idea } from '../play/types.ts';
import type { PlayBed } from './bed.ts';
import { ideaOf } from './own-idea.ts';

/**
 * The bed as play is offered and planned from while its child may not eat: nobody eats there, and what was planned with
 * food stands in no plan.
 *
 * Shape: another bed, to be shown and planned from; the one that is kept stays as it was ticked, for when eating may begin.
 * What a hand pinned stays pinned, so that it is told which rule bars it.
 *
 * @example notEating(bed, IDEAS).eating // false
 */
export function notEating(bed: PlayBed, library: readonly Idea[]): PlayBed {
  const food = new Set(
    [...library, ...bed.own.map(ideaOf)]
      .filter(({ cautions }) => cautions.includes('food'))
      .map(({ id }) => id),
  );
  const plan = bed.plan?.filter(({ idea }) => !food.has(idea));
  return { ...bed, eating: false, ...(plan && { plan }) };
}
