/** The day as pictures to cut out and hang at the pillow side. Whoever passes the bed may see them. */
import { stripOf } from './doors.ts';
import type { DayEventId, DayEventTable } from './ids.ts';
import type { AgeMode } from './modes.ts';
import { shownToOthers } from './private.ts';
import type { Day, Tile } from './tiles.ts';

/** Pictures on one sheet of A4 that are still large enough to be seen from the pillow. Source: our proposal. */
export const ON_ONE_SHEET = 12;
/** About medicine, or no picture of its own. */
const NOT_PRINTED: readonly DayEventId[] = ['medicine-visit', 'free-time', 'night'];

/**
 * The pictures of a day, sheet by sheet, as they are known in the morning.
 *
 * Shape: in order of time; a care that this age is told of later is on paper what it is on the strip: something new.
 * Not: anything about medicine, and nothing that is the child's own.
 */
export function sheetsOf(day: Day, mode: AgeMode, table: DayEventTable): Tile[][] {
  const open: Day = { ...day, ...shownToOthers(day) };
  const pictures = stripOf(open, mode, day.from, table).filter(({ kind }) => !NOT_PRINTED.includes(kind));
  const sheets: Tile[][] = [];
  for (let n = 0; n < pictures.length; n += ON_ONE_SHEET) sheets.push(pictures.slice(n, n + ON_ONE_SHEET));
  return sheets;
}
