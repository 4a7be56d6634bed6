/**
 * A small question before the larger code is fetched: has anything ever been written down here? Asked of the browser
 * itself, since the first page would otherwise load a library for this alone.
 */
import { copyPrefix, databaseName, DAY_PREFIX, TABLE } from './note-place.ts';

/** False where nothing was written, or where the browser keeps nothing at all. */
export async function hasNotes(): Promise<boolean> {
  try {
    return await new Promise<boolean>((resolve, reject) => {
      const opening = indexedDB.open(databaseName());
      // nothing was there: looking must not leave an empty database behind
      opening.onupgradeneeded = () => opening.transaction?.abort();
      opening.onerror = opening.onblocked = reject;
      opening.onsuccess = () => {
        const database = opening.result;
        if (!database.objectStoreNames.contains(TABLE)) return reject();
        const days = IDBKeyRange.bound(DAY_PREFIX, `${DAY_PREFIX}\uffff`);
        const counting = database.transaction(TABLE).objectStore(TABLE).count(days);
        counting.onerror = reject;
        counting.onsuccess = () => {
          database.close();
          resolve(counting.result > 0);
        };
      };
    });
  } catch {
    try {
      // a browser that lost the database still has the copy
      return Object.keys(localStorage).some((key) => key.startsWith(copyPrefix()));
    } catch {
      return false;
    }
  }
}
