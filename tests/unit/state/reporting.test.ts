// One sign on one page, in a browser that keeps nothing: what is written counts while the page is open.
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
  phone = await load();
});
afterEach(() => {
  vi.useRealTimers();
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
