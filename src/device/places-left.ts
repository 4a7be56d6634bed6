/** Looks into every place where this site keeps something about a child, without trusting what erased it. */
import { createStore, keys } from 'idb-keyval';
import { inTime } from './in-time.ts';
import { cardKey, databaseName, dayKey, familyKey, playKey, TABLE } from './note-place.ts';

export type Place = 'notes' | 'card' | 'choices' | 'play' | 'day';

/** Where anything of this child is still kept. A place that cannot be looked into, or does not answer, counts
 * as not empty. */
export async function placesLeft(): Promise<Place[]> {
  const left: Place[] = [];
  try {
    if ((await inTime(keys(createStore(databaseName(), TABLE)))).length > 0) left.push('notes');
  } catch {
    left.push('notes');
  }
  for (const [place, key] of [
    ['card', cardKey()],
    ['play', playKey()],
    ['day', dayKey()],
    ['choices', familyKey()],
  ] as const) {
    try {
      if (localStorage.getItem(key) !== null) left.push(place);
    } catch {
      left.push(place);
    }
  }
  return left;
}
