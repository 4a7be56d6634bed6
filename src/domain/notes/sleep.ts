/** When the child slept, as far as somebody noted it. */
import type { Instant } from '../units.ts';
import type { Entry } from './entries.ts';

/** Two taps within so many minutes are about one falling asleep. */
const SAME_TAP = 10;

/** From "fell asleep" to "woke". `to` is missing where nobody noted the waking. */
export interface Stretch {
  from: Instant;
  to?: Instant;
  /** The child may be asleep still: nothing was noted since. */
  goesOn?: true;
  /** Ids of its notes. */
  notes: readonly string[];
}

/**
 * Stretches of sleep, earliest first. A second "fell asleep" within ten minutes belongs to the first; later than that
 * a waking was missed, and the stretch before has no end. A "woke" without a "fell asleep" makes no stretch.
 * Shape: notes in order, struck ones left out by the caller.
 * Not: a nap is noted without a length, so it is no stretch.
 */
export function stretchesOf(kept: readonly Entry[]): Stretch[] {
  const stretches: Stretch[] = [];
  let open: { from: Instant; tapped: Instant; notes: string[] } | undefined;
  for (const entry of kept) {
    if (entry.kind !== 'sleep' || entry.what === 'nap') continue;
    if (entry.what === 'woke') {
      if (open) stretches.push({ from: open.from, to: entry.t, notes: [...open.notes, entry.id] });
      open = undefined;
    } else if (open && entry.t - open.tapped <= SAME_TAP) {
      open.tapped = entry.t;
      open.notes.push(entry.id);
    } else {
      if (open) stretches.push({ from: open.from, notes: open.notes });
      open = { from: entry.t, tapped: entry.t, notes: [entry.id] };
    }
  }
  if (open) stretches.push({ from: open.from, goesOn: true, notes: open.notes });
  return stretches;
}
