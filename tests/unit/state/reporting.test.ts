// One sign on one page; at first in a browser that keeps nothing: what is written counts while the page is open.
import type { NoteStore } from '#device/note-store.ts';
import type { Entry } from '#domain/notes/entries.ts';
import type { Seen } from '#state/reporting.svelte.ts';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

const TOES = { sign: 'toes-cool', answer: 'different', detail: undefined } as const;
const later = (minutes: number) => vi.setSystemTime(Date.now() + minutes * 60_000);

/** A page that was just loaded: its modules remember nothing. */
async function load() {
  vi.resetModules();
  const { chooseFamily } = await import('#state/family.svelte.ts');
  const { currentNotes, writeNote } = await import('#state/notes.svelte.ts');
  const { startReporting } = await import('#state/reporting.svelte.ts');
  return {
    chooseFamily,
    currentNotes,
    writeNote,
    seen: () => currentNotes().filter(({ kind }) => kind === 'sign'),
    /** Opens the page of a sign, which stays open. */
    async report(seen: Seen = TOES, goesOn = false) {
      const page = startReporting(seen, goesOn);
      await vi.waitFor(() => expect(page.status().state).not.toBe('writing'));
      return page;
    },
    /** Opens the page of a sign and waits until it has written what it writes. */
    async openPage() {
      const page = startReporting(TOES);
      await vi.waitFor(() => expect(page.status().state).not.toBe('writing'));
      page.stop();
    },
  };
}

let phone: Awaited<ReturnType<typeof load>>;
beforeEach(async () => {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 10, 25, 14, 0) });
  // no page of these is ever put by
  vi.stubGlobal('addEventListener', () => undefined);
  phone = await load();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.resetModules();
});

describe('a note that could not be kept', () => {
  test('says who wrote it, as any other does', async () => {
    phone.chooseFamily({ writer: 'grown-up-b' });
    expect(await phone.writeNote({ kind: 'bell' })).toMatchObject({ ok: false });
    expect(phone.currentNotes()).toMatchObject([{ kind: 'bell', by: 'grown-up-b' }]);
  });
});

describe('the page of a sign that is opened again', () => {
  test('what could not be kept is not called written the second time either', async () => {
    for (let time = 0; time < 2; time += 1)
      expect((await phone.report()).status()).toMatchObject({ state: 'not-written' });
    expect(phone.seen()).toHaveLength(1);
  });

  test('after a nurse looked, it is seen anew', async () => {
    await phone.openPage();
    later(5);
    await phone.openPage();
    expect(phone.seen()).toHaveLength(1);
    later(5);
    await phone.writeNote({ kind: 'nurse-looked' });
    later(5);
    await phone.openPage();
    expect(phone.seen()).toHaveLength(2);
  });

  test('a "nurse looked" that was taken back is no look: nothing is written twice', async () => {
    await phone.openPage();
    later(5);
    await phone.writeNote({ kind: 'nurse-looked' });
    await phone.writeNote({ kind: 'strike', strikes: phone.currentNotes().at(-1)!.id });
    later(5);
    await phone.openPage();
    expect(phone.seen()).toHaveLength(1);
  });
});

/** A phone that keeps what it is given, in one list; what it refuses it may still keep, later. */
function keepsNotes() {
  const kept: Entry[] = [];
  let count = 0;
  const phoneStore = { refuses: [] as string[], late: [] as (() => void)[], kept };
  vi.doMock('#device/note-store.ts', () => ({
    browserNoteStore: (): Partial<NoteStore> => ({
      readAll: async () => ({ ok: true, value: [...kept] }),
      broughtBack: () => undefined,
      append: async (note, t, off, landed) => {
        const entry = { id: `a1b2c3-${(count += 1)}`, t, off, ...note } as Entry;
        if (phoneStore.refuses.includes(note.kind)) {
          phoneStore.late.push(() => {
            kept.push(entry);
            landed?.(entry);
          });
          return { ok: false, reason: 'full' };
        }
        kept.push(entry);
        return { ok: true, value: entry };
      },
      onChange: () => undefined,
    }),
  }));
  return phoneStore;
}

describe('the page of a sign that goes on in another language', () => {
  beforeEach(async () => {
    keepsNotes();
    phone = await load();
  });
  afterEach(() => {
    vi.doUnmock('#device/note-store.ts');
  });
  const JUMP = { sign: 'leg-jumps', answer: 'different', detail: undefined } as const;

  test('a jump of the leg is not counted again, though it would be by a tap', async () => {
    await phone.report(JUMP);
    later(5);
    await phone.report(JUMP, true);
    expect(phone.seen()).toHaveLength(1);
    await phone.report(JUMP);
    expect(phone.seen()).toHaveLength(2);
  });

  test('what was taken back stays taken back, and what a nurse looked at does not wait again', async () => {
    await phone.openPage();
    later(5);
    await phone.writeNote({ kind: 'nurse-looked' });
    const looked = await phone.report(TOES, true);
    expect(looked.looked()).toMatchObject({ kind: 'nurse-looked' });
    later(5);
    await phone.openPage();
    await phone.writeNote({ kind: 'strike', strikes: phone.seen().at(-1)!.id });
    expect((await phone.report(TOES, true)).status()).toEqual({ state: 'taken-back' });
    expect(phone.seen()).toHaveLength(2);
  });

  test('an address that was kept for hours reports as any other, and so does one of another sign', async () => {
    await phone.openPage();
    await phone.writeNote({ kind: 'nurse-looked' });
    await phone.report(JUMP, true);
    later(61);
    await phone.report(TOES, true);
    expect(phone.seen().map((one) => 'sign' in one && one.sign)).toEqual([
      'toes-cool',
      'leg-jumps',
      'toes-cool',
    ]);
  });
});

describe('a phone whose store refuses some notes', () => {
  let store: ReturnType<typeof keepsNotes>;
  beforeEach(async () => {
    store = keepsNotes();
    phone = await load();
  });
  afterEach(() => {
    vi.doUnmock('#device/note-store.ts');
  });

  test('the press could not be written, the sign was: each says what became of its own note', async () => {
    const page = await phone.report();
    store.refuses = ['bell'];
    page.note('bell');
    await vi.waitFor(() => expect(page.call()).toBeDefined());
    expect(page.unwritten()).toMatchObject([{ tap: 'bell', reason: 'full' }]);
    expect(page.status()).toMatchObject({ state: 'written' });
    expect(page.isOpen()).toBe(true);
  });

  test('the sign could not be written, the press was', async () => {
    store.refuses = ['sign'];
    const page = await phone.report();
    page.note('bell');
    await vi.waitFor(() => expect(page.call()).toBeDefined());
    expect(page.unwritten()).toEqual([]);
    expect(page.status()).toMatchObject({ state: 'not-written', reason: 'full' });
  });

  test('a mistake that could not be taken back: the sign stays written, and counts', async () => {
    const page = await phone.report();
    store.refuses = ['strike'];
    page.takeBack();
    await vi.waitFor(() => expect(page.unwritten()).toMatchObject([{ tap: 'mistake' }]));
    expect(page.status().state).toBe('written');
    expect(page.assessment()?.urgency).toBe('ring-now');
    // it lands after all: now it is taken back
    store.late[0]!();
    expect(page.status().state).toBe('taken-back');
    expect(page.unwritten()).toEqual([]);
    expect(page.assessment()?.urgency).toBe('none');
  });

  test('a tap that goes through the second time is no longer called unwritten', async () => {
    const page = await phone.report();
    store.refuses = ['nurse-looked'];
    page.note('nurse-looked');
    await vi.waitFor(() => expect(page.unwritten()).toHaveLength(1));
    expect(page.status().state).toBe('written');
    store.refuses = [];
    page.note('nurse-looked');
    await vi.waitFor(() => expect(page.unwritten()).toEqual([]));
  });

  test('a note that lands after its time stands once, in place of the page’s own copy', async () => {
    store.refuses = ['sign', 'bell'];
    const page = await phone.report();
    page.note('bell');
    await vi.waitFor(() => expect(page.unwritten()).toHaveLength(1));
    expect(phone.currentNotes().map(({ id }) => id)).toEqual(['page-1', 'page-2']);
    for (const land of store.late) land();
    expect(phone.currentNotes()).toEqual(store.kept);
    expect(page.status()).toMatchObject({ state: 'written', entry: store.kept[0] });
    expect(page.unwritten()).toEqual([]);
    expect(page.call()).toMatchObject(store.kept[1]!);
  });
});

describe('a nurse looked at what this page reported', () => {
  beforeEach(async () => {
    keepsNotes();
    phone = await load();
  });
  afterEach(() => {
    vi.doUnmock('#device/note-store.ts');
  });
  const looked = async (page: Awaited<ReturnType<typeof phone.report>>) => {
    page.note('nurse-looked');
    await vi.waitFor(() => expect(page.looked()).toBeDefined());
  };

  // all in one minute: notes count in minutes, and a child's toes do not wait for the next one
  for (const wait of [0, 5])
    test(`reported again ${wait} minutes later, on this page or on another, it is open at once`, async () => {
      const page = await phone.report();
      expect(page.looked()).toBeUndefined();
      await looked(page);
      expect(page.isOpen()).toBe(false);
      expect(page.assessment()?.urgency).toBe('none');
      later(wait);
      page.reportAgain();
      await vi.waitFor(() => expect(page.isOpen()).toBe(true));
      expect(page.looked()).toBeUndefined();
      expect(page.assessment()?.urgency).toBe('ring-now');
      await looked(page);
      later(wait);
      const other = await phone.report();
      expect(other.isOpen()).toBe(true);
      expect(other.looked()).toBeUndefined();
      expect(phone.seen()).toHaveLength(3);
    });

  test('"a nurse looked" tapped by mistake: the sign is as open as before', async () => {
    const page = await phone.report();
    await looked(page);
    page.takeBackLook();
    await vi.waitFor(() => expect(page.isOpen()).toBe(true));
    expect(page.assessment()?.urgency).toBe('ring-now');
    expect(phone.seen()).toHaveLength(1);
  });

  test('a look that lies ahead of a clock set back does not answer what is reported after it', async () => {
    await looked(await phone.report());
    later(-60);
    const page = await phone.report();
    expect(page.looked()).toBeUndefined();
    expect(page.isOpen()).toBe(true);
    expect(page.assessment()?.urgency).toBe('ring-now');
    // nor when the page is opened anew, and a look of now closes it
    phone = await load();
    const again = await phone.report();
    expect(again.isOpen()).toBe(true);
    expect(phone.seen()).toHaveLength(2);
    await looked(again);
    expect(again.isOpen()).toBe(false);
  });

  test('the leg jumps again after the clock was set back: it is a jump of its own', async () => {
    await phone.report({ ...TOES, sign: 'leg-jumps' });
    later(-24 * 60);
    const page = await phone.report({ ...TOES, sign: 'leg-jumps' });
    expect(phone.seen()).toHaveLength(2);
    expect(page.assessment()?.because.map(({ rule }) => rule)).toContain('R20');
  });

  test('a press noted by a phone whose clock was corrected counts from the corrected time', async () => {
    await phone.writeNote({ kind: 'bell' });
    const pressed = phone.currentNotes()[0]!.t;
    await phone.writeNote({ kind: 'clock', device: 'a1b2c3', upTo: 1, minutes: -7 });
    const page = await phone.report();
    expect(page.call()?.t).toBe(pressed - 7);
  });
});
