/** What waits for a nurse: what was reported, and what the soreness notes say by themselves. */
import { rankOf } from '../signs/urgency.ts';
import type { OpenSign, Summary } from './summary.ts';

/**
 * Signs that no nurse has looked at, with those that soreness against medicine sets without anybody reporting them.
 * Shape: as `Summary.open`; a sign that soreness sets is open since the last soreness note.
 * @example waitingFor(summary).map((sign) => sign.sign)
 */
export function waitingFor(summary: Pick<Summary, 'open' | 'soreness'>): OpenSign[] {
  const { open, soreness } = summary;
  const last = soreness.points.at(-1);
  if (!last) return [...open];
  const known = new Set(open.map((sign) => sign.sign));
  const set = soreness.flags.flatMap(({ signs, atLeast }) => signs.map((sign) => ({ sign, atLeast })));
  const fresh = set.filter(
    ({ sign }, at) => !known.has(sign) && set.findIndex((s) => s.sign === sign) === at,
  );
  return [
    ...open,
    ...fresh.map(({ sign, atLeast }) => ({
      sign,
      urgency: atLeast,
      since: last.at,
      lastSeen: last.at,
      untold: true,
      from: soreness.from,
    })),
  ];
}

/** In the order in which they are said: the most urgent first, then the one seen last. */
export const mostUrgentFirst = <T extends Pick<OpenSign, 'urgency' | 'lastSeen'>>(
  waiting: readonly T[],
): T[] => [...waiting].sort((a, b) => rankOf(b.urgency) - rankOf(a.urgency) || b.lastSeen - a.lastSeen);
