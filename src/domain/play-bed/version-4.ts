/**
 * What a plan's code of version 4 holds, for ever: all of version 2, whether eating is unsaid, and the slots that the child
 * chooses for.
 *
 * An older phone says "too new": a slot that was left to the child would be an order there.
 */
import { Damaged, type Coder } from '../notes/coder.ts';
import type { PlayBed } from './bed.ts';
import { Told, type Lists } from './version-1.ts';
import { bedTold2 } from './version-2.ts';

/** Whether a bed has what version 3 cannot tell. */
export const needsVersion4 = ({ childChooses }: PlayBed): boolean => Boolean(childChooses?.length);

/**
 * Writes such a bed to the coder, or reads one from it; see `bedTold` of version 1.
 *
 * Shape: as there. What was read is anything until `readBed` has read it, too.
 * Errors: as there; `Damaged` for a bed that may eat and of which nobody has said so, and for one without a choice.
 */
export function bedTold4(coder: Coder, lists: Lists, bed?: PlayBed): unknown {
  const before = bedTold2(coder, lists, bed) as { eating: boolean };
  const told = new Told(coder, lists);
  const eatingUnsaid = told.flag('eating unsaid', bed?.eatingUnsaid);
  if (before.eating && eatingUnsaid) throw new Damaged('eating that is said and unsaid');
  const childChooses = told.many('child chooses', bed?.childChooses, (one) => ({
    idea: told.idea(one?.idea),
    or: told.idea(one?.or),
  }));
  if (!childChooses.length) throw new Damaged('a version that this bed does not need');
  return { ...before, ...(eatingUnsaid ? { eatingUnsaid } : {}), childChooses };
}
