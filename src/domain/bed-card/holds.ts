/** How long a card is gone on with. Apart from the reader of codes: the first page asks this, and loads nothing of it. */
import type { Instant } from '../units.ts';
import type { BedCard } from './card.ts';

/** After this many minutes a card asks "still right?". */
const CARD_HOLDS_MINUTES = 48 * 60;
/** Two phones' clocks may differ by this much before a card "from later" is asked about. */
const CLOCKS_DIFFER_MINUTES = 60;

/**
 * Whether the phone may go on with the card, or first asks "still right?".
 * Units: asks after 48 hours, and where the card seems to come from more than an hour ahead: one clock is wrong.
 */
export function stillHolds(card: Pick<BedCard, 'madeAt'>, now: Instant): 'holds' | 'ask' {
  const age = now - card.madeAt;
  return age >= -CLOCKS_DIFFER_MINUTES && age < CARD_HOLDS_MINUTES ? 'holds' : 'ask';
}
