/** What waits for a nurse: what was reported, and what the soreness notes say by themselves. */
import type { Assessment, Because, UrgencyClass } from '../signs/types.ts';
import { rankOf } from '../signs/urgency.ts';
import type { OpenSign, Summary } from './summary.ts';

/**
 * Signs that no nurse has looked at, with those that soreness against medicine sets without anybody reporting them.
 * Shape: as `Summary.open`; a sign that soreness sets is open since what set it was last noted.
 * @example waitingFor(summary).map((sign) => sign.sign)
 */
export function waitingFor(summary: Pick<Summary, 'open' | 'soreness'>): OpenSign[] {
  const { open, soreness } = summary;
  const known = new Set(open.map((sign) => sign.sign));
  const fresh = soreness.flags.flatMap(({ signs, atLeast, since, from }) =>
    signs.flatMap((sign): OpenSign[] => {
      if (known.has(sign)) return [];
      known.add(sign);
      const notes = [...new Set([...soreness.from, ...from])];
      return [{ sign, urgency: atLeast, since, lastSeen: since, untold: true, from: notes }];
    }),
  );
  return [...open, ...fresh];
}

/** In the order in which they are said: the most urgent first, then the one seen last. */
export const mostUrgentFirst = <T extends Pick<OpenSign, 'urgency' | 'lastSeen'>>(
  waiting: readonly T[],
): T[] => [...waiting].sort((a, b) => rankOf(b.urgency) - rankOf(a.urgency) || b.lastSeen - a.lastSeen);

/**
 * What makes all that waits more urgent than each of it is alone; nothing where one of it is as urgent by itself.
 * Shape: without R16, which holds over whatever is to be pressed for.
 */
export function raisedAbove(
  { urgency, because }: Pick<Assessment, 'urgency' | 'because'>,
  waiting: readonly Pick<OpenSign, 'urgency'>[],
): { urgency: UrgencyClass; because: Because[] } | undefined {
  if (urgency === 'none' || waiting.some((sign) => rankOf(sign.urgency) >= rankOf(urgency))) return undefined;
  return { urgency, because: because.filter(({ rule }) => rule !== 'R16') };
}
