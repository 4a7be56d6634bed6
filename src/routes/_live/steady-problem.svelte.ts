/** The question behind a page's list of ideas. */
import { untrack } from 'svelte';
import type { DayProblem } from '#domain/play/types.ts';
import { openBed, problemNow } from '#state/play.svelte.ts';

/**
 * What the planner is asked for the open bed, with likes as they were when the page was opened: what somebody says about
 * an idea moves no other idea under the finger, and can be taken back where it was said.
 *
 * Not: what is never wanted; it goes at once.
 */
export function steadyProblem(): () => DayProblem | undefined {
  const shape = $derived(openBed()?.shape);
  const opened = $derived(shape && untrack(() => openBed()?.child));
  const problem = $derived.by(() => {
    const now = problemNow();
    if (!now || !opened) return now;
    const { likes, dislikes } = opened;
    return { ...now, child: { ...now.child, likes, dislikes } };
  });
  return () => problem;
}
