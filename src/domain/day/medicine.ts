/** "Ask about medicine": when it stands in the grown-up's day. No name, no dose, and whether any is given is the nurse's to say. */
import { instant, type Instant, type Minutes } from '../units.ts';
import type { DayEventId } from './ids.ts';
import type { Day } from './tiles.ts';

export interface Ask {
  /** The care that it stands before, by id. */
  care: string;
  kind: DayEventId;
  at: Instant;
  /** When the care begins. */
  careAt: Instant;
}

/**
 * The moments at which the grown-up asks about medicine: so many minutes before each care that hurts, where it stands now.
 *
 * Shape: one day or several that follow one another, so that an early care is asked about the evening before; in order of
 * time. A care that was left out is not asked about.
 * Units: universal minutes: 45 minutes are 45 in the night the clocks change, too.
 * @example asksOf([today, tomorrow], minutes(45))[0] // { care: 'm-bandage-1', at: 14:15, careAt: 15:00, … }
 */
export function asksOf(days: readonly Day[], askMinutes: Minutes): Ask[] {
  return days
    .flatMap(({ tiles }) => tiles)
    .filter(({ hurts }) => hurts)
    .map(({ id, kind, from }) => ({
      ...{ care: id, kind, at: instant(from - askMinutes), careAt: from },
    }))
    .sort((a, b) => a.at - b.at || (a.care < b.care ? -1 : 1));
}

/**
 * Where an ask stands at a minute. A care that moved nearer than the minutes is asked about at once.
 * @example askState(ask, now) // 'now'
 */
export const askState = (ask: Ask, now: Instant): 'later' | 'now' | 'care-began' =>
  now < ask.at ? 'later' : now < ask.careAt ? 'now' : 'care-began';
