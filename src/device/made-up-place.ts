/** Turns the made-up child on and off: her notes, card and choices have places of their own. */
import { clear, createStore } from 'idb-keyval';
import { inTime } from './in-time.ts';
import { dropCopy } from './note-copy.ts';
import { databaseName, familyKey, familyUnreadKey, isMadeUp, MADE_UP_KEY, TABLE } from './note-place.ts';
import { cardKey, cardUnreadKey, dayKey, dayUnreadKey, playKey, playUnreadKey } from './places.ts';

/** False where the browser refused. From here on every place is hers. */
export function beginMadeUp(): boolean {
  try {
    localStorage.setItem(MADE_UP_KEY, 'yes');
    return isMadeUp();
  } catch {
    return false;
  }
}

/**
 * Erases all of hers and goes back to the real places; nothing of a real child is touched.
 * Errors: none; a store that refuses, or does not answer, keeps nobody with her.
 */
export async function endMadeUpPlaces(): Promise<void> {
  if (!isMadeUp()) return;
  try {
    await inTime(clear(createStore(databaseName(), TABLE)));
  } catch {
    // what it may still hold lies under her name alone
  }
  dropCopy();
  try {
    const hers = [cardKey(), familyKey(), playKey(), dayKey()];
    const unread = [familyUnreadKey(), cardUnreadKey(), playUnreadKey(), dayUnreadKey()];
    for (const key of [...hers, ...unread]) localStorage.removeItem(key);
    localStorage.removeItem(MADE_UP_KEY);
  } catch {
    // a browser that refuses to forget keeps her marked as made up
  }
}
