/** Parts of a day as a person ticks them: when the head may go up, when it is quiet, when a grown-up is there. */
import type { Stretch } from '../play/day.ts';
import { GRID } from '../play/feasible.ts';
import type { Fault } from '../play/types.ts';
import { DAY_MINUTES } from '../units.ts';
import { fieldsOf } from './fields.ts';

/** How much of the day a list of stretches holds. */
export type Extent = 'never' | 'at-times' | 'always';

/** From the first minute of the day to the last. */
export const WHOLE_DAY: Stretch = { from: 0, until: DAY_MINUTES };

/**
 * Stretches that meet become one; nobody has to think about where two of them touch.
 *
 * Shape: any stretches -> the same minutes in order of time, none empty, none touching the next.
 *
 * @example joined([{ from: 600, until: 660 }, { from: 540, until: 600 }]) // [{ from: 540, until: 660 }]
 */
export function joined(list: readonly Stretch[]): Stretch[] {
  const whole: Stretch[] = [];
  for (const { from, until } of [...list].sort((a, b) => a.from - b.from)) {
    const last = whole.at(-1);
    if (until <= from) continue;
    if (last && from <= last.until) last.until = Math.max(last.until, until);
    else whole.push({ from, until });
  }
  return whole;
}

/** Whether what a list of stretches tells holds never, all day, or in parts of the day. */
export function extentOf(list: readonly Stretch[]): Extent {
  const [first, ...more] = joined(list);
  if (!first) return 'never';
  return !more.length && first.from <= 0 && first.until >= DAY_MINUTES ? 'always' : 'at-times';
}

/**
 * Reads a stretch that a device kept or a code brought; nothing where it cannot be read.
 * Units: minutes since the ward's midnight on the grid of five.
 * Errors: none; they are in `faults`, with where, rule and what was seen.
 */
export function readStretch(value: unknown, where: string, faults: Fault[]): Stretch | undefined {
  const fields = fieldsOf(value, where, faults, ['from', 'until']);
  const from = fields?.whole('from', 0, DAY_MINUTES - GRID, GRID);
  const until = fields?.whole('until', GRID, DAY_MINUTES, GRID);
  if (!fields || from === undefined || until === undefined) return undefined;
  return until > from ? { from, until } : fields.refuse('until', 'after from');
}
