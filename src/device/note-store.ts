/**
 * Where notes live: one record a UTC day in IndexedDB. Every write is one transaction, so two tabs cannot lose
 * each other's notes, and it counts as written only when it has been read back.
 */
import { createStore, entries as allEntries, get, update, type UseStore } from 'idb-keyval';
import { parseEntry, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import type { Instant, Minutes } from '#domain/units.ts';
import { DATABASE, DAY_PREFIX, TABLE } from './note-place.ts';
import { done, failed, reasonOf, type Result } from './result.ts';

export interface NoteStore {
  /** All notes on this device, parsed; what cannot be read comes back as an unknown note. */
  readAll(): Promise<Result<Entry[]>>;
  /** Adds one note and reads it back. `ok` means that it is there. */
  append(note: NewEntry, at: Instant, offset: Minutes): Promise<Result<Entry>>;
  /** Calls back when another tab has written. Returns a way to stop. */
  onChange(listener: () => void): () => void;
}

const DEVICE = 'device';
const CHANNEL = 'bare-toes:notes';

interface DeviceRecord {
  id: string;
  count: number;
}

const dayKey = (at: Instant) => DAY_PREFIX + new Date(at * 60_000).toISOString().slice(0, 10);

/** 24 random bits: enough to tell two parents' phones apart, too few to follow anyone. */
function newDeviceId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(3));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

const isDevice = (value: unknown): value is DeviceRecord =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as DeviceRecord).id === 'string' &&
  Number.isSafeInteger((value as DeviceRecord).count);

/** A store that does not answer at all must not leave the page waiting: it counts as broken. */
const ANSWER_MILLISECONDS = 3000;
class NoAnswer extends Error {}

async function inTime<T>(work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new NoAnswer('device/note-store: no answer')), ANSWER_MILLISECONDS);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

export function browserNoteStore(): NoteStore {
  let store: UseStore | undefined;
  const channel = typeof BroadcastChannel === 'function' ? new BroadcastChannel(CHANNEL) : undefined;

  /** A connection can die in silence (the phone closed it): open a new one and try once more. */
  async function withStore<T>(use: (store: UseStore) => Promise<T>): Promise<Result<T>> {
    for (const attempt of [1, 2]) {
      try {
        if (typeof indexedDB === 'undefined') return failed('blocked');
        store ??= createStore(DATABASE, TABLE);
        return done(await inTime(use(store)));
      } catch (error) {
        store = undefined;
        // no second try after silence: the first may still be written, and a note twice would be two sightings
        if (attempt === 2 || error instanceof NoAnswer || reasonOf(error) === 'full')
          return failed(reasonOf(error));
      }
    }
    return failed('broken');
  }

  async function nextId(using: UseStore): Promise<string> {
    let taken: DeviceRecord | undefined;
    await update<unknown>(
      DEVICE,
      (old) => {
        taken = isDevice(old) ? { id: old.id, count: old.count + 1 } : { id: newDeviceId(), count: 1 };
        return taken;
      },
      using,
    );
    if (!taken) throw new Error('device/note-store › next id: the device record was not written');
    return `${taken.id}-${taken.count}`;
  }

  return {
    async readAll() {
      return withStore(async (using) => {
        const rows = await allEntries<IDBValidKey, unknown>(using);
        return rows.flatMap(([key, value]) => {
          if (typeof key !== 'string' || !key.startsWith(DAY_PREFIX)) return [];
          // a damaged day is one unknown note, never a silent nothing
          return (Array.isArray(value) ? value : [value]).map(parseEntry);
        });
      });
    },

    async append(note, at, offset) {
      const key = dayKey(at);
      const written = await withStore(async (using) => {
        const entry = { id: await nextId(using), t: at, off: offset, ...note } as Entry;
        await update<unknown>(
          key,
          (old) => [...(Array.isArray(old) ? old : old === undefined ? [] : [old]), entry],
          using,
        );
        const back = await get<unknown>(key, using);
        const found =
          Array.isArray(back) && back.map(parseEntry).some((e) => e.id === entry.id && e.kind === entry.kind);
        if (!found) throw new Error(`device/note-store › ${key}: the note was not there when read back`);
        return entry;
      });
      if (written.ok) channel?.postMessage('written');
      return written;
    },

    onChange(listener) {
      channel?.addEventListener('message', listener);
      return () => channel?.removeEventListener('message', listener);
    },
  };
}

/** For tests: notes in memory, with a way to refuse. */
export function memoryNoteStore(
  start: Entry[] = [],
  refuse?: () => 'blocked' | 'full' | 'broken' | undefined,
): NoteStore {
  const kept = [...start];
  return {
    async readAll() {
      const reason = refuse?.();
      return reason ? failed(reason) : done(kept.map(parseEntry));
    },
    async append(note, at, offset) {
      const reason = refuse?.();
      if (reason) return failed(reason);
      const entry = { id: `fffff0-${kept.length + 1}`, t: at, off: offset, ...note } as Entry;
      kept.push(entry);
      return done(entry);
    },
    onChange: () => () => undefined,
  };
}
