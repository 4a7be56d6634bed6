/** The database of the notes: one table, opened when it is first asked for. */
import { promisifyRequest, type UseStore } from 'idb-keyval';
import { parseEntry } from '#domain/notes/entries.ts';
import { copiedDays } from './note-copy.ts';
import { databaseName, TABLE } from './note-place.ts';

/** The record of this phone beside those of the days. */
export const DEVICE = 'device';

export interface DeviceRecord {
  id: string;
  count: number;
  /** The browser had lost its database, and notes came back from their copy: when the last of them was written. */
  broughtBack?: number;
}

/** 24 random bits: enough to tell two parents' phones apart, too few to follow anyone. */
export function newDeviceId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(3));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * The table of this child's notes, for idb-keyval.
 * Shape: where the browser has no database, it is made with what was copied of the notes, in one transaction. A phone
 * begins to count under a new name then: the last notes under the old one may be on another phone alone.
 */
export function noteTable(): UseStore {
  let opening: Promise<IDBDatabase> | undefined;
  const opened = () => {
    if (opening) return opening;
    const request = indexedDB.open(databaseName());
    request.onupgradeneeded = () => {
      const table = request.result.createObjectStore(TABLE);
      const days = copiedDays();
      for (const [day, notes] of days) table.put(notes, day);
      const times = days
        .flatMap(([, notes]) => (Array.isArray(notes) ? notes.map(parseEntry) : []))
        .flatMap((one) => (one.kind === 'unknown' ? [] : [one.t]));
      if (days.length > 0) {
        const phone: DeviceRecord = { id: newDeviceId(), count: 0, broughtBack: Math.max(0, ...times) };
        table.put(phone, DEVICE);
      }
    };
    opening = promisifyRequest(request);
    opening.then(
      // a phone may close it by itself
      (database) => (database.onclose = () => (opening = undefined)),
      () => (opening = undefined),
    );
    return opening;
  };
  return async (mode, use) => use((await opened()).transaction(TABLE, mode).objectStore(TABLE));
}
