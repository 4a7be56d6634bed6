// A browser that is killed while it writes can come back without its database: what was called written is there all the same.
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { beginMadeUp } from '#device/made-up-place.ts';
import { copiedDays, copyAll, copyDays, dropCopy } from '#device/note-copy.ts';
import { browserNoteStore, type NoteStore } from '#device/note-store.ts';
import { mergeNotes } from '#domain/notes/entries.ts';
import { minutes } from '#domain/units.ts';
import { fakeIndexedDB } from '../../helpers/fake-database.ts';
import { anyStoredJson, momentOf, note } from '../../helpers/notes.ts';

const utc = minutes(0);
const DAY = 24 * 60;

/** As much of localStorage as is asked for: its names are its own fields, as in a browser. */
class FakeStorage {
  static refuses = false;
  getItem(name: string): string | null {
    return Object.hasOwn(this, name) ? (this as unknown as Record<string, string>)[name]! : null;
  }
  setItem(name: string, text: string): void {
    if (FakeStorage.refuses) throw new DOMException('no room', 'QuotaExceededError');
    (this as unknown as Record<string, string>)[name] = text;
  }
  removeItem(name: string): void {
    Reflect.deleteProperty(this, name);
  }
}

const rows = new Map<IDBValidKey, unknown>();
let there = true;
/** The browser comes back without its database; localStorage is as it was. */
function loseDatabase() {
  rows.clear();
  there = false;
}
async function notesOf(store: NoteStore) {
  const read = await store.readAll();
  if (!read.ok) throw new Error(`asked for the notes, saw ${read.reason}`);
  return read.value;
}
const copies = () => Object.fromEntries(copiedDays());

beforeEach(() => {
  rows.clear();
  there = true;
  FakeStorage.refuses = false;
  vi.stubGlobal('localStorage', new FakeStorage());
  vi.stubGlobal(
    'indexedDB',
    fakeIndexedDB(
      rows,
      () => undefined,
      () => there,
    ),
  );
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a browser that lost the database of the notes', () => {
  test('gives every note back, whatever they say, and knows when the last of them was written', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyStoredJson, { minLength: 1, maxLength: 12 }), async (notes) => {
        rows.clear();
        there = true;
        dropCopy();
        const written = mergeNotes([], notes);
        expect((await browserNoteStore().addAll(written)).ok).toBe(true);
        const before = await notesOf(browserNoteStore());
        loseDatabase();
        const store = browserNoteStore();
        expect(mergeNotes([], await notesOf(store))).toEqual(mergeNotes([], before));
        expect(store.broughtBack()).toBe(
          Math.max(0, ...before.filter(({ kind }) => kind !== 'unknown').map(({ t }) => t)),
        );
      }),
      { numRuns: 100 },
    );
  });

  test('a note that is written before anything was read finds the others there', async () => {
    const first = await browserNoteStore().append({ kind: 'bell' }, momentOf(1), utc);
    loseDatabase();
    const store = browserNoteStore();
    expect(await store.append({ kind: 'told' }, momentOf(2), utc)).toMatchObject({ ok: true });
    there = true;
    const notes = await notesOf(store);
    expect(notes.map(({ kind }) => kind)).toEqual(['bell', 'told']);
    // the last notes under the old name may be on the other phone alone: no name may come twice
    const [old, fresh] = notes.map(({ id }) => id.split('-'));
    expect(first).toMatchObject({ value: { id: old!.join('-') } });
    expect(fresh![0]).not.toBe(old![0]);
    expect(fresh![1]).toBe('1');
    expect(store.broughtBack()).toBe(momentOf(1));
  });

  test('a phone that lost nothing says nothing of it, nor one that never wrote', async () => {
    there = false;
    const never = browserNoteStore();
    expect(await notesOf(never)).toEqual([]);
    expect(never.broughtBack()).toBeUndefined();
    expect(rows.size).toBe(0);
    there = true;
    await never.append({ kind: 'bell' }, momentOf(1), utc);
    await notesOf(never);
    expect(never.broughtBack()).toBeUndefined();
  });

  test('what was erased stays erased', async () => {
    const store = browserNoteStore();
    await store.append({ kind: 'bell' }, momentOf(1), utc);
    expect(await store.clear()).toEqual({ ok: true, value: true });
    expect(copies()).toEqual({});
    loseDatabase();
    const next = browserNoteStore();
    expect(await notesOf(next)).toEqual([]);
    expect(next.broughtBack()).toBeUndefined();
  });

  test('a copy that was left behind is never put into a database that is there: it goes', async () => {
    copyDays([['day-2026-11-25', [note(1, { kind: 'bell' })]]]);
    expect(await notesOf(browserNoteStore())).toEqual([]);
    expect(copies()).toEqual({});
  });

  test('the made-up child and the real one keep apart', async () => {
    await browserNoteStore().append({ kind: 'bell' }, momentOf(1), utc);
    const real = copies();
    beginMadeUp();
    expect(copies()).toEqual({});
    copyDays([['day-2026-11-25', [note(2, { kind: 'told' })]]]);
    dropCopy();
    localStorage.removeItem('bare-toes:made-up');
    expect(copies()).toEqual(real);
  });

  test('a text that cannot be read is one unknown note, never a silent nothing', async () => {
    localStorage.setItem('bare-toes:copy:day-2026-11-25', '[{"id":');
    there = false;
    expect(await notesOf(browserNoteStore())).toMatchObject([{ kind: 'unknown', raw: '[{"id":' }]);
  });
});

describe('how much is copied', () => {
  const dayOf = (day: number, count: number) =>
    [
      `day-2026-11-${String(day).padStart(2, '0')}`,
      Array.from({ length: count }, (_, at) => note(day * DAY + at, { kind: 'told' })),
    ] as const;

  test('a day with more notes than a family writes has no copy, the others do', () => {
    copyAll([dayOf(1, 1000), dayOf(2, 1001)]);
    expect(Object.keys(copies())).toEqual(['day-2026-11-01']);
    // it grew: the older text must not stand for it
    copyDays([dayOf(1, 1001)]);
    expect(copies()).toEqual({});
  });

  test('the newest days come first where there is no room for all', () => {
    const days = Array.from({ length: 30 }, (_, at) => dayOf(at + 1, 900));
    copyAll(days);
    const kept = Object.keys(copies()).sort();
    expect(kept.length).toBeGreaterThan(5);
    expect(kept).toEqual(days.slice(-kept.length).map(([day]) => day));
    const length = JSON.stringify(days.slice(-kept.length).map(([, notes]) => notes)).length;
    expect(length).toBeLessThan(1_000_000 + 100);
    expect(length).toBeGreaterThan(900_000);
  });

  test('days that the database does not hold any more go', () => {
    copyAll([dayOf(1, 2), dayOf(2, 2)]);
    copyAll([dayOf(2, 3)]);
    expect(copies()).toEqual(Object.fromEntries([dayOf(2, 3)]));
  });

  test('a browser without room for the copy keeps the notes, and no older text stands for the day', async () => {
    const store = browserNoteStore();
    await store.append({ kind: 'bell' }, momentOf(1), utc);
    FakeStorage.refuses = true;
    expect(await store.append({ kind: 'told' }, momentOf(2), utc)).toMatchObject({ ok: true });
    expect(copies()).toEqual({});
    FakeStorage.refuses = false;
    expect(await notesOf(store)).toHaveLength(2);
    expect(Object.values(copies())).toMatchObject([[{ kind: 'bell' }, { kind: 'told' }]]);
  });
});
