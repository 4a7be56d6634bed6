/** Strong soreness that no nurse has looked at: it waits, though no rule is about a single value. */
import type { Instant } from '../units.ts';
import type { Entry } from './entries.ts';
import type { NoteOrder } from './order.ts';
import type { StrongSoreness } from './summary.ts';

/** From here on soreness is named as waiting: the last of the four steps, 7 of 10. Our proposal. */
const STRONG = { steps: 3, numbers: 7 } as const;
const MOST = { steps: 3, numbers: 10 } as const;

type Sore = Extract<Entry, { kind: 'sore' }>;
const CALLS = {
  bell: 'bellAt',
  told: 'wordAt',
  'nurse-came': 'nurseCameAt',
  'medicine-told': 'medicineAt',
} as const;
const shareOf = ({ value, scale }: Sore) => value / MOST[scale];

/**
 * The strongest soreness that was noted and no "a nurse looked" came after; of several as strong the last, so that what
 * was told before it does not count for it. A lower value noted later closes nothing.
 * Shape: notes in order, struck ones left out by the caller.
 */
export function strongSoreness(kept: readonly Entry[], order: NoteOrder): StrongSoreness | undefined {
  const looks = kept.filter((entry) => entry.kind === 'nurse-looked');
  const open = kept.filter(
    (entry): entry is Sore =>
      entry.kind === 'sore' &&
      entry.value >= STRONG[entry.scale] &&
      !looks.some((look) => order.isAfter(look, entry)),
  );
  const [first] = open;
  if (!first) return undefined;
  const worst = open.reduce((a, b) => (shareOf(b) >= shareOf(a) ? b : a));
  const steps: Partial<Record<(typeof CALLS)[keyof typeof CALLS], Instant>> = {};
  for (const entry of kept)
    if (Object.hasOwn(CALLS, entry.kind) && order.isAfter(entry, worst))
      steps[CALLS[entry.kind as keyof typeof CALLS]] ??= entry.t;
  const { value, scale, when, t: at } = worst;
  return { value, scale, when, since: first.t, at, ...steps, from: open.map(({ id }) => id) };
}
