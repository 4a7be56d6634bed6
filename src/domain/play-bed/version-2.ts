/**
 * What a plan's code of version 2 holds, for ever: all of version 1, and behind it what frightens the child, whether
 * anybody shares its language and how loud play may be.
 *
 * A bed without any of that is still written as version 1, which every phone can read. With it a phone of version 1 says
 * "too new": a plan that forgot a child's fears on its way would be worse than none.
 */
import type { Coder } from '../notes/coder.ts';
import type { PlayBed } from './bed.ts';
import { bedTold, type Lists } from './version-1.ts';

/** In this order, for ever. */
export const TOLD_FEARS = ['masks', 'noise', 'dark', 'water', 'strangers', 'needles'] as const;
const SOUND_BITS = 2;
const NO_LIMIT = 2;

/** Whether a bed has anything that version 1 cannot tell. */
export const needsVersion2 = ({ fears, wordless, loudest }: PlayBed): boolean =>
  Boolean(fears?.length) || Boolean(wordless) || (loudest ?? NO_LIMIT) < NO_LIMIT;

/**
 * Writes such a bed to the coder, or reads one from it; see `bedTold` of version 1.
 *
 * Shape: as there. What was read is anything until `readBed` has read it, too.
 */
export function bedTold2(coder: Coder, lists: Lists, bed?: PlayBed): unknown {
  const before = bedTold(coder, lists, bed) as object;
  const fears = TOLD_FEARS.filter((fear) => coder.flag('fears', bed?.fears?.includes(fear) ?? false));
  const wordless = coder.flag('wordless', bed?.wordless ?? false);
  const loudest = coder.choice('loudest', SOUND_BITS, bed?.loudest ?? NO_LIMIT);
  return { ...before, fears, wordless, loudest };
}
