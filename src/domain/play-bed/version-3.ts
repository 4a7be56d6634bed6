/**
 * What a plan's code of version 3 holds, for ever: all of version 2, of a bed at which nobody has said yet whether the
 * child may eat. Read as an older version it would be a child who may not, and the day's meals would be taken away.
 */
import { Damaged, type Coder } from '../notes/coder.ts';
import type { PlayBed } from './bed.ts';
import type { Lists } from './version-1.ts';
import { bedTold2 } from './version-2.ts';

/** Whether a bed has what version 2 cannot tell. */
export const needsVersion3 = ({ eatingUnsaid }: PlayBed): boolean => Boolean(eatingUnsaid);

/**
 * Writes such a bed to the coder, or reads one from it; see `bedTold` of version 1. The version itself says that nobody
 * has spoken of eating.
 *
 * Shape: as there. What was read is anything until `readBed` has read it, too.
 * Errors: as there; `Damaged` for a bed that may eat: of it there is nothing unsaid.
 */
export function bedTold3(coder: Coder, lists: Lists, bed?: PlayBed): unknown {
  const told = bedTold2(coder, lists, bed) as { eating: boolean };
  if (told.eating) throw new Damaged('eating that is said and unsaid');
  return { ...told, eatingUnsaid: true };
}
