import type { Urgency, UrgencyClass } from './types.ts';

const RANK: Record<Urgency, number> = {
  none: 0,
  'next-visit': 1,
  'not-sure': 2,
  'tell-nurse': 2,
  'ring-now': 3,
};

/** 0 nothing reported, 1 next visit, 2 tell the nurse (or not sure), 3 press now. Unknown words rank as 2. */
export const rankOf = (urgency: Urgency): number => RANK[urgency] ?? 2;

/** The more urgent of two; of two with the same rank, the one that does not only rest on doubt. */
export function moreUrgent(a: Urgency, b: Urgency): Urgency {
  if (rankOf(a) !== rankOf(b)) return rankOf(a) > rankOf(b) ? a : b;
  return b === 'tell-nurse' ? b : a;
}

/** The most urgent of all; `none` of an empty list. */
export const highest = (urgencies: readonly Urgency[]): Urgency =>
  urgencies.reduce(moreUrgent, 'none' as Urgency);

/** One class higher: R13. */
export function oneHigher(urgency: UrgencyClass): UrgencyClass {
  return rankOf(urgency) <= 1 ? 'tell-nurse' : 'ring-now';
}
