/** What a hand wanted kept in a bed's day and what the day cannot hold, with the rules that bar it. */
import { vetted } from '../play/vet.ts';
import type { DayMinute, Idea, Placement, RuleId } from '../play/types.ts';
import type { PlayBed } from './bed.ts';
import { restOfDay } from './came-up.ts';

/**
 * The pins of a planned day that have not begun and do not stand in the plan. It is worked out from the bed as it is kept,
 * so that it is the same after the page was closed.
 *
 * Shape: each with its rules; none where no plan was made. What meets a fixed event fits the time no longer (H2).
 * Units: `minute` since the ward's midnight.
 *
 * @example refusedPins(bed, IDEAS, 8 * 60) // [{ pin: { idea: 'film', … }, rules: ['H11'] }]
 */
export function refusedPins(
  bed: PlayBed,
  library: readonly Idea[],
  minute: DayMinute = 0,
): { pin: Placement; rules: readonly RuleId[] }[] {
  const { plan, pins } = bed;
  if (!plan) return [];
  const isSame = (a: Placement) => (b: Placement) => a.idea === b.idea && a.from === b.from;
  const missing = pins.filter((pin) => pin.from >= minute && !plan.some(isSame(pin)));
  if (!missing.length) return [];
  const { problem } = restOfDay(bed, library, minute);
  const { refused } = vetted(problem);
  return missing.flatMap((pin) => {
    if (!problem.pins.some(isSame(pin))) return [{ pin, rules: ['H2' as const] }];
    const rules = refused.find((one) => isSame(pin)(one.pin))?.rules;
    return rules ? [{ pin, rules }] : [];
  });
}
