// Whom the explanations are read with: chosen once, and not asked again on the next page or the next day.
import { afterEach, describe, expect, test, vi } from 'vitest';

/** A page that was just loaded on a phone that keeps these choices. */
async function phone(family: object, device = new Map<string, string>()) {
  if (!device.size) device.set('bare-toes:family', JSON.stringify(family));
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => device.get(name) ?? null,
    setItem: (name: string, text: string) => device.set(name, text),
    removeItem: (name: string) => device.delete(name),
  });
  vi.resetModules();
  const pins = await import('#state/pins.svelte.ts');
  pins.loadReader();
  return { ...pins, again: () => phone(family, device) };
}
afterEach(() => vi.unstubAllGlobals());

describe('whom the explanations are read with', () => {
  test.each([
    [{}, 'grownUp'],
    [{ role: 'grown-up', age: 5 }, 'grownUp'],
    [{ role: 'child', age: 5 }, 'from3'],
    [{ reader: 'from6' }, 'from6'],
    // written by a later version
    [{ reader: 'from16' }, 'grownUp'],
    [{ role: 'child', age: 14, reader: 'from6' }, 'from6'],
    // what a grown-up read before the phone was given to the child
    [{ role: 'child', age: 9, reader: 'grownUp' }, 'from9'],
  ])('%j: %s', async (family, reader) => {
    expect((await phone(family)).readWith()).toBe(reader);
  });

  test('who was chosen is chosen on every page that is opened later, beside what is pinned', async () => {
    const first = await phone({ role: 'grown-up', pins: ['poo'] });
    first.chooseReader('from9');
    expect(first.readWith()).toBe('from9');
    const later = await first.again();
    expect(later.readWith()).toBe('from9');
    later.loadPins();
    expect(later.pinnedTopics()).toEqual(['poo']);
  });
});
