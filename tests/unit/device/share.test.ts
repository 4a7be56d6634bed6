import { afterEach, describe, expect, test, vi } from 'vitest';
import { browserSharing } from '#device/share.ts';

const problem = (name: string): Error => Object.assign(new Error('no'), { name });
const noSheet = (): Promise<never> => Promise.reject(problem('NotAllowedError'));
/** A browser that saves: what was asked for is seen in `saved`. */
function page() {
  const saved: string[] = [];
  const link = { href: '', download: '', click: () => saved.push(link.download), remove: vi.fn() };
  vi.stubGlobal('document', { createElement: () => link, body: { append: vi.fn() } });
  vi.stubGlobal('URL', { createObjectURL: () => 'blob:x', revokeObjectURL: vi.fn() });
  vi.useFakeTimers();
  return { saved, link };
}
const phone = (share: unknown, canShare: unknown = () => true) =>
  vi.stubGlobal('navigator', { share, canShare });

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('a file leaves the phone', () => {
  test('by the share sheet, whole and under its name', async () => {
    const { saved } = page();
    const share = vi.fn(async (_: { files: File[] }) => undefined);
    phone(share);
    expect(await browserSharing().file('notes.txt', 'ß notes', 'application/json')).toEqual({
      ok: true,
      how: 'shared',
    });
    const [file] = share.mock.calls[0]![0].files;
    expect([file!.name, file!.type, await file!.text()]).toEqual([
      'notes.txt',
      'application/json',
      'ß notes',
    ]);
    expect(saved).toEqual([]);
  });

  test('a sheet that was closed is not "shared", and nothing is saved behind the reader’s back', async () => {
    const { saved } = page();
    phone(() => Promise.reject(problem('AbortError')));
    expect(await browserSharing().file('notes.txt', 'x')).toEqual({ ok: false, reason: 'closed' });
    expect(saved).toEqual([]);
  });

  test.each<[string, unknown, unknown]>([
    ['there is no sheet', undefined, undefined],
    ['the sheet takes no files', () => undefined, () => false],
    ['the sheet takes nothing it can be asked about', () => undefined, undefined],
    ['the sheet will not take this one', noSheet, () => true],
  ])('%s: it is saved, and said to be saved', async (_, share, canShare) => {
    const { saved, link } = page();
    vi.stubGlobal('navigator', { share, canShare });
    expect(await browserSharing().file('notes.txt', 'x')).toEqual({ ok: true, how: 'saved' });
    expect(saved).toEqual(['notes.txt']);
    expect(link.remove).toHaveBeenCalled();
    // the address is given back, but not before the phone has read it
    expect(URL.revokeObjectURL).not.toHaveBeenCalled();
    vi.runAllTimers();
    expect(URL.revokeObjectURL).toHaveBeenCalledWith('blob:x');
  });

  test('where nothing works it says so', async () => {
    page();
    vi.stubGlobal('navigator', {});
    vi.stubGlobal('URL', {
      createObjectURL: () => {
        throw problem('TypeError');
      },
    });
    expect(await browserSharing().file('notes.txt', 'x')).toEqual({ ok: false, reason: 'refused' });
  });
});

describe('a link leaves the phone', () => {
  const LINK = 'https://ward.example/#P1';
  const copies = (writeText: unknown, share?: unknown) =>
    vi.stubGlobal('navigator', { share, clipboard: { writeText } });

  test('by the share sheet, and then it is not copied as well', async () => {
    const share = vi.fn(async () => undefined);
    const copy = vi.fn(async () => undefined);
    copies(copy, share);
    expect(await browserSharing().link(LINK)).toEqual({ ok: true, how: 'shared' });
    expect(share).toHaveBeenCalledWith({ url: LINK });
    expect(copy).not.toHaveBeenCalled();
  });

  test('a sheet that was closed is no reason to copy', async () => {
    const copy = vi.fn(async () => undefined);
    copies(copy, () => Promise.reject(problem('AbortError')));
    expect(await browserSharing().link(LINK)).toEqual({ ok: false, reason: 'closed' });
    expect(copy).not.toHaveBeenCalled();
  });

  test.each([undefined, noSheet])('without a sheet that takes it, it is copied: %s', async (share) => {
    const copy = vi.fn(async () => undefined);
    copies(copy, share);
    expect(await browserSharing().link(LINK)).toEqual({ ok: true, how: 'copied' });
    expect(copy).toHaveBeenCalledWith(LINK);
  });

  test('where neither works it says so', async () => {
    copies(noSheet);
    expect(await browserSharing().link(LINK)).toEqual({ ok: false, reason: 'refused' });
    vi.stubGlobal('navigator', {});
    expect(await browserSharing().link(LINK)).toEqual({ ok: false, reason: 'refused' });
  });
});
