/**
 * A small question before the larger code is fetched: has anything ever been written down here? Asked of the browser
 * itself, since the first page would otherwise load a library for this alone.
 */
import { databaseName, DAY_PREFIX, TABLE } from './note-place.ts';

/** False where nothing was written, or where the browser keeps nothing at all. */
export function hasNotes(): Promise<boolean> {
  return new Promise((resolve) => {
    try {
      const opening = indexedDB.open(databaseName());
      // nothing was there: looking must not leave an empty database behind
      opening.onupgradeneeded = () => opening.transaction?.abort();
      opening.onerror = opening.onblocked = () => resolve(false);
      opening.onsuccess = () => {
        const database = opening.result;
        const end = (found: boolean) => {
          database.close();
          resolve(found);
        };
        if (!database.objectStoreNames.contains(TABLE)) return end(false);
        const days = IDBKeyRange.bound(DAY_PREFIX, `${DAY_PREFIX}\uffff`);
        const counting = database.transaction(TABLE).objectStore(TABLE).count(days);
        counting.onerror = () => end(false);
        counting.onsuccess = () => end(counting.result > 0);
      };
    } catch {
      resolve(false);
    }
  });
}
