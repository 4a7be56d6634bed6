/**
 * Where notes live: one record a UTC day in IndexedDB. Every write is one transaction, so two tabs cannot lose
 * each other's notes, and it counts as written only when it has been read back.
 */
import { clear, entries as allEntries, get, keys, promisifyRequest, update, type UseStore } from 'idb-keyval';
import { mergeNotes, parseEntry, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import { instant, type Instant, type Minutes } from '#domain/units.ts';
import { onCameBack } from './came-back.ts';
import { inTime, NoAnswer } from './in-time.ts';
import { copyAll, copyDays, dropCopy } from './note-copy.ts';
import { DAY_PREFIX } from './note-place.ts';
import { DEVICE, newDeviceId, noteTable, type DeviceRecord } from './note-table.ts';
import { channelName } from './places.ts';
import { done, failed, reasonOf, type Result } from './result.ts';

export interface NoteStore {
  /** All notes on this device, parsed; what cannot be read comes back as an unknown note. */
  readAll(): Promise<Result<Entry[]>>;
  /**
   * Adds one note and reads it back. `ok` means that it is there. A store that gave no answer in time may still write
   * it: `landed` is called when it was read back after all.
   */
  append(
    note: NewEntry,
    at: Instant,
    offset: Minutes,
    landed?: (entry: Entry) => void,
  ): Promise<Result<Entry>>;
  /**
   * Adds another phone's notes, all in one transaction: every one is there afterwards, or none came in.
   * A note that is here already stays as it is; `ok` gives the notes that were new.
   */
  addAll(notes: readonly Entry[]): Promise<Result<Entry[]>>;
  /** This phone's own name in the notes and how many it has written; nothing where it never wrote. */
  device(): Promise<Result<{ id: string; count: number } | undefined>>;
  /**
   * The browser had lost the notes, and they came back from their copy: when the last of these was written. As far as
   * they were read.
   */
  broughtBack(): Instant | undefined;
  /** Erases every note and this phone's name. `ok` means that the store was looked into and is empty. */
  clear(): Promise<Result<true>>;
  /** Calls back when another tab has written or erased, or may have while this page was put by. */
  onChange(listener: (what: 'written' | 'erased') => void): void;
}

const dayKey = (at: Instant) => DAY_PREFIX + new Date(at * 60_000).toISOString().slice(0, 10);

const isDevice = (value: unknown): value is DeviceRecord =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as DeviceRecord).id === 'string' &&
  Number.isSafeInteger((value as DeviceRecord).count);

/** The notes of this browser, the made-up child's in a place of her own. */
export function browserNoteStore(): NoteStore {
  let store: UseStore | undefined;
  let back: Instant | undefined;
  const channel = typeof BroadcastChannel === 'function' ? new BroadcastChannel(channelName()) : undefined;

  /** A connection can die in silence (the phone closed it): open a new one and try once more. */
  async function withStore<T>(use: (store: UseStore) => Promise<T>): Promise<Result<T>> {
    for (const attempt of [1, 2]) {
      try {
        if (typeof indexedDB === 'undefined') return failed('blocked');
        store ??= noteTable();
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
        taken = isDevice(old) ? { ...old, count: old.count + 1 } : { id: newDeviceId(), count: 1 };
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
        const phone = rows.find(([key]) => key === DEVICE)?.[1];
        back =
          isDevice(phone) && Number.isSafeInteger(phone.broughtBack)
            ? instant(phone.broughtBack!)
            : undefined;
        const days = rows.flatMap(([key, value]) =>
          typeof key === 'string' && key.startsWith(DAY_PREFIX) ? [[key, value] as const] : [],
        );
        copyAll(days);
        // a damaged day is one unknown note, never a silent nothing
        return days.flatMap(([, value]) => (Array.isArray(value) ? value : [value]).map(parseEntry));
      });
    },

    async append(note, at, offset, landed) {
      const key = dayKey(at);
      // one name for both tries: what the first has written is not written again
      let id: string | undefined;
      let work: Promise<Entry> | undefined;
      const write = async (using: UseStore) => {
        id ??= await nextId(using);
        const entry = { id, t: at, off: offset, ...note } as Entry;
        await update<unknown>(
          key,
          (old) => {
            const kept: unknown[] = Array.isArray(old) ? old : old === undefined ? [] : [old];
            return kept.some((one) => parseEntry(one).id === entry.id) ? kept : [...kept, entry];
          },
          using,
        );
        const there = await get<unknown>(key, using);
        const found =
          Array.isArray(there) &&
          there.map(parseEntry).some((e) => e.id === entry.id && e.kind === entry.kind);
        if (!found) throw new Error(`device/note-store › ${key}: the note was not there when read back`);
        copyDays([[key, there]]);
        return entry;
      };
      const written = await withStore((using) => (work = write(using)));
      if (written.ok) channel?.postMessage('written');
      else
        void work?.then(
          (entry) => {
            channel?.postMessage('written');
            landed?.(entry);
          },
          // it went wrong, as was said already
          () => undefined,
        );
      return written;
    },

    async addAll(notes) {
      const added = await withStore(async (using) => {
        const fresh: Entry[] = [];
        await using('readwrite', async (table) => {
          const days = new Map<string, Entry[]>();
          for (const note of notes) {
            const key = dayKey(note.t);
            days.set(key, [...(days.get(key) ?? []), note]);
          }
          // one transaction lives as long as its requests follow each other without a pause
          for (const [key, coming] of days) {
            const old: unknown = await promisifyRequest<unknown>(table.get(key));
            const kept: unknown[] = Array.isArray(old) ? old : old === undefined ? [] : [old];
            const known = new Map(kept.map((value, at) => [parseEntry(value).id, at]));
            const next = [...kept];
            for (const note of coming) {
              const at = known.get(note.id);
              if (at === undefined) {
                known.set(note.id, next.push(note) - 1);
                fresh.push(note);
              } else next[at] = mergeNotes([parseEntry(next[at])], [note])[0];
            }
            table.put(next, key);
          }
          await promisifyRequest(table.transaction);
        });
        const there = new Set<string>();
        for (const key of new Set(notes.map((note) => dayKey(note.t)))) {
          const value = await get<unknown>(key, using);
          if (Array.isArray(value)) value.forEach((entry) => there.add(parseEntry(entry).id));
          copyDays([[key, value]]);
        }
        const lost = notes.find((note) => !there.has(note.id));
        if (lost) throw new Error(`device/note-store › ${lost.id}: the note was not there when read back`);
        return fresh;
      });
      if (added.ok) channel?.postMessage('written');
      return added;
    },

    async device() {
      return withStore(async (using) => {
        const kept = await get<unknown>(DEVICE, using);
        return isDevice(kept) ? { id: kept.id, count: kept.count } : undefined;
      });
    },

    broughtBack: () => back,

    async clear() {
      const cleared = await withStore(async (using) => {
        await clear(using);
        const left = await keys(using);
        if (left.length > 0)
          throw new Error(`device/note-store › clear: ${left.length} records are still there`);
        dropCopy();
        back = undefined;
        return true as const;
      });
      if (cleared.ok) channel?.postMessage('erased');
      return cleared;
    },

    onChange(listener) {
      channel?.addEventListener('message', ({ data }: MessageEvent) => {
        const erased = data === 'erased';
        // this page may have copied in the same moment
        if (erased) dropCopy();
        listener(erased ? 'erased' : 'written');
      });
      onCameBack(() => listener('written'));
    },
  };
}
