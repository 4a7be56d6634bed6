import type { BedCard } from '#domain/bed-card/card.ts';

export type SecondStepId = BedCard['secondStep'];
/** What to do when nobody comes, as a card may say it; each id has its words in the area `look`. */
export const SECOND_STEPS = [
  'call-out',
  'go-to-desk',
  'second-button',
  'emergency-pull',
] as const satisfies readonly SecondStepId[];
