import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { browserNoteStore, type NoteStore } from '#device/note-store.ts';
import { reasonOf } from '#device/result.ts';
import { minutes } from '#domain/units.ts';
import { fakeIndexedDB } from '../../helpers/fake-database.ts';
import { momentOf } from '../../helpers/notes.ts';

const utc = minutes(0);
const bell = { kind: 'bell' } as const;
const sign = { kind: 'sign', sign: 'toes-cool', answer: 'different' } as const;

async function notesOf(store: NoteStore) {
  const read = await store.readAll();
  if (!read.ok) throw new Error(`asked for the notes, saw ${read.reason}`);
  return read.value;
}

describe('what a browser’s refusal means', () => {
  const named = (name: string) => Object.assign(new Error('no'), { name });
  test.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'blocked'],
    ['InvalidStateError', 'blocked'],
    ['NotAllowedError', 'blocked'],
    ['UnknownError', 'broken'],
    ['TypeError', 'broken'],
  ] as const)('%s: %s', (name, reason) => {
    expect(reasonOf(named(name))).toBe(reason);
    expect(reasonOf(new DOMException('no', name))).toBe(reason);
  });

  test.each([undefined, null, 'full', { name: 'QuotaExceededError' }])(
    'no error at all is "broken": %j',
    (thrown) => {
      expect(reasonOf(thrown)).toBe('broken');
    },
  );
});

describe('notes in a browser that keeps nothing', () => {
  test('says so, and does not throw', async () => {
    expect(typeof indexedDB).toBe('undefined');
    const store = browserNoteStore();
    expect(await store.readAll()).toEqual({ ok: false, reason: 'blocked' });
    expect(await store.append(bell, momentOf(1), utc)).toEqual({ ok: false, reason: 'blocked' });
  });
});

describe('notes in a browser', () => {
  let rows: Map<IDBValidKey, unknown>;
  let refuse: (what: 'open' | 'put') => string | undefined;
  beforeEach(() => {
    rows = new Map();
    refuse = () => undefined;
    vi.stubGlobal(
      'indexedDB',
      fakeIndexedDB(rows, (what) => refuse(what)),
    );
  });
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('one record a day, and a number for each note', async () => {
    const store = browserNoteStore();
    await store.append(sign, momentOf(1), utc);
    await store.append(bell, momentOf(2), utc);
    await store.append(bell, momentOf(1441), utc);
    expect([...rows.keys()].sort()).toEqual(['day-2026-11-25', 'day-2026-11-26', 'device']);
    const ids = (await notesOf(store)).map((entry) => entry.id);
    expect(ids.map((id) => id.slice(7))).toEqual(['1', '2', '3']);
    expect(new Set(ids.map((id) => id.slice(0, 6))).size).toBe(1);
    expect(ids[0]).toMatch(/^[0-9a-f]{6}-1$/);
  });

  test('another page on the same phone goes on counting', async () => {
    await browserNoteStore().append(bell, momentOf(1), utc);
    const written = await browserNoteStore().append(bell, momentOf(2), utc);
    expect(written).toMatchObject({ ok: true, value: { id: expect.stringMatching(/-2$/) as string } });
  });

  test('a damaged day is one unknown note, and the next note goes beside it', async () => {
    rows.set('day-2026-11-25', 'scrambled');
    const store = browserNoteStore();
    expect(await notesOf(store)).toMatchObject([{ kind: 'unknown', raw: 'scrambled' }]);
    expect(await store.append(bell, momentOf(1), utc)).toMatchObject({ ok: true });
    expect((await notesOf(store)).map((entry) => entry.kind)).toEqual(['unknown', 'bell']);
  });

  test('a damaged device record starts a new device, so that no id comes twice', async () => {
    rows.set('device', { id: 7, count: 'many' });
    expect(await browserNoteStore().append(bell, momentOf(1), utc)).toMatchObject({ ok: true });
    expect(rows.get('device')).toMatchObject({ count: 1 });
  });

  test.each([
    ['QuotaExceededError', 'full'],
    ['InvalidStateError', 'blocked'],
    ['UnknownError', 'broken'],
  ] as const)('a refused write (%s) is not called written', async (name, reason) => {
    refuse = (what) => (what === 'put' ? name : undefined);
    expect(await browserNoteStore().append(bell, momentOf(1), utc)).toEqual({ ok: false, reason });
    expect(rows.size).toBe(0);
  });

  test('a connection that died is opened anew, once', async () => {
    const store = browserNoteStore();
    let failures = 1;
    refuse = (what) => (what === 'open' && failures-- > 0 ? 'UnknownError' : undefined);
    expect(await store.append(bell, momentOf(1), utc)).toMatchObject({ ok: true });
    failures = 2;
    const other = browserNoteStore();
    expect(await other.append(bell, momentOf(2), utc)).toEqual({ ok: false, reason: 'broken' });
    expect(await notesOf(other)).toHaveLength(1);
  });

  test('a store that answers too late: not called written, and told of when the note landed after all', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const quick = fakeIndexedDB(rows, () => undefined);
    const opening: ReturnType<typeof quick.open>[] = [];
    vi.stubGlobal('indexedDB', { open: () => opening[opening.push({}) - 1] });
    const landed = vi.fn();
    const asked = browserNoteStore().append(sign, momentOf(1), utc, landed);
    await vi.advanceTimersByTimeAsync(3000);
    vi.useRealTimers();
    expect(await asked).toEqual({ ok: false, reason: 'broken' });
    expect(landed).not.toHaveBeenCalled();
    for (const one of opening) {
      one.result = quick.open().result;
      one.onsuccess?.();
    }
    await vi.waitFor(() => expect(landed).toHaveBeenCalledOnce());
    expect(landed.mock.calls[0]).toMatchObject([{ kind: 'sign', t: momentOf(1) }]);
    expect(rows.get('day-2026-11-25')).toHaveLength(1);
  });

  test('a note that is not there when read back is not called written', async () => {
    const set = rows.set.bind(rows);
    rows.set = (key, value) => (typeof key === 'string' && key.startsWith('day-') ? rows : set(key, value));
    expect(await browserNoteStore().append(bell, momentOf(1), utc)).toEqual({ ok: false, reason: 'broken' });
  });
});
