/** A small question before the larger code is fetched: has anything ever been written down here? */
import { createStore, keys } from 'idb-keyval';
import { databaseName, DAY_PREFIX, TABLE } from './note-place.ts';

/** False where nothing was written, or where the browser keeps nothing at all. */
export async function hasNotes(): Promise<boolean> {
  try {
    const found = await keys(createStore(databaseName(), TABLE));
    return found.some((key) => typeof key === 'string' && key.startsWith(DAY_PREFIX));
  } catch {
    return false;
  }
}
