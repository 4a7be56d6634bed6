/** Looks into every place where this site keeps something about a child, without trusting what erased it. */
import { createStore, keys as keysIn } from 'idb-keyval';
import { inTime } from './in-time.ts';
import { copiedDays } from './note-copy.ts';
import { databaseName, familyKey, familyUnreadKey, TABLE } from './note-place.ts';
import { cardKey, cardUnreadKey, dayKey, dayUnreadKey, playKey, playUnreadKey } from './places.ts';

export type Place = 'notes' | 'card' | 'choices' | 'play' | 'day';

/** Where anything of this child is still kept. A place that cannot be looked into, or does not answer, counts
 * as not empty. */
export async function placesLeft(): Promise<Place[]> {
  const left: Place[] = [];
  try {
    const kept = await inTime(keysIn(createStore(databaseName(), TABLE)));
    if (kept.length > 0 || copiedDays().length > 0) left.push('notes');
  } catch {
    left.push('notes');
  }
  return [...left, ...placesInStorage()];
}

/** The same, of what lies in the browser's own storage: all but the notes. */
export function placesInStorage(): Place[] {
  const left: Place[] = [];
  for (const [place, ...keys] of [
    ['card', cardKey(), cardUnreadKey()],
    ['play', playKey(), playUnreadKey()],
    ['day', dayKey(), dayUnreadKey()],
    ['choices', familyKey(), familyUnreadKey()],
  ] as const) {
    try {
      if (keys.some((key) => localStorage.getItem(key) !== null)) left.push(place);
    } catch {
      left.push(place);
    }
  }
  return left;
}
