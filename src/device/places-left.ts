/** Looks into every place where this site keeps something about a child, without trusting what erased it. */
import { createStore, keys } from 'idb-keyval';
import { cardKey, databaseName, dayKey, familyKey, playKey, TABLE } from './note-place.ts';

export type Place = 'notes' | 'card' | 'choices' | 'play' | 'day';

/** Where anything of this child is still kept. A place that cannot be looked into counts as not empty. */
export async function placesLeft(): Promise<Place[]> {
  const left: Place[] = [];
  try {
    if ((await keys(createStore(databaseName(), TABLE))).length > 0) left.push('notes');
  } catch {
    left.push('notes');
  }
  try {
    if (localStorage.getItem(cardKey()) !== null) left.push('card');
    if (localStorage.getItem(playKey()) !== null) left.push('play');
    if (localStorage.getItem(dayKey()) !== null) left.push('day');
    if (localStorage.getItem(familyKey()) !== null) left.push('choices');
  } catch {
    left.push('choices');
  }
  return left;
}
