/** One thing cannot be at two beds: what other beds had today, so that nobody has to remember it. */
import type { Idea } from '../play/types.ts';
import type { PlayBed } from './bed.ts';

/**
 * What a ward has enough of, or what no bed can take away from another.
 *
 * Source: our proposal.
 */
const ENOUGH: readonly string[] = [
  ...['box', 'card', 'cloth', 'foil', 'net', 'paper', 'paper-strips', 'pasta', 'pen', 'pillowcase', 'print'],
  ...['stickers', 'straws', 'tape', 'tray', 'tray-things', 'window'],
];

/** Whether a ward may have only one of it. */
export const mayBeOne = (thing: string): boolean => !ENOUGH.includes(thing);

/**
 * Things of this bed that another bed of the same day had, or has in its plan.
 *
 * Shape: the beds of a ward, one of them, and the library -> ids of things in the order of the alphabet.
 * Not: whether somebody wiped them since. Whoever did leaves them unticked.
 *
 * @example usedAtOthers([star, boat], star, IDEAS) // ['figures', 'screen']
 */
export function usedAtOthers(beds: readonly PlayBed[], here: PlayBed, library: readonly Idea[]): string[] {
  const things = new Map(library.map((idea) => [idea.id, idea.things]));
  const others = beds.filter(({ shape, day }) => shape !== here.shape && day === here.day);
  const used = others
    .flatMap(({ plan = [], done }) => [...plan, ...done])
    .flatMap(({ idea }) => things.get(idea) ?? []);
  return [...new Set(used)].filter((thing) => here.room.things.includes(thing) && mayBeOne(thing)).sort();
}
