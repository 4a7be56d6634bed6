// What a device keeps under a name, before a browser that keeps, one that refuses and one that forgets.
import { afterEach, describe, expect, test, vi } from 'vitest';
import { browserCardPlace } from '#device/card-place.ts';
import { beginMadeUp, endMadeUpPlaces } from '#device/made-up-place.ts';
import { jsonPlace } from '#device/json-place.ts';
import { browserPreferences } from '#device/preferences.ts';

function browser(kept = new Map<string, string>()) {
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => kept.set(name, text),
    removeItem: (name: string) => kept.delete(name),
  });
  return kept;
}
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('a place on this device', () => {
  test('gives back what was kept, and nothing before and after', () => {
    browser();
    const place = jsonPlace(() => 'a');
    expect(place.read()).toBeUndefined();
    expect(place.write({ beds: [1, null] })).toBe(true);
    expect(place.read()).toEqual({ beds: [1, null] });
    expect(jsonPlace(() => 'b').read()).toBeUndefined();
    expect(place.clear()).toBe(true);
    expect(place.read()).toBeUndefined();
  });

  test('goes with its name: the made-up child begins and ends while a page stands', () => {
    browser();
    let name = 'real';
    const place = jsonPlace(() => name);
    place.write('hers is not this');
    name = 'made-up';
    expect(place.read()).toBeUndefined();
    place.write('hers');
    place.clear();
    name = 'real';
    expect(place.read()).toBe('hers is not this');
  });

  test('gives a text that is no JSON as it is, so that whoever reads it can say so', () => {
    browser(new Map([['a', '{"half":']]));
    expect(jsonPlace(() => 'a').read()).toBe('{"half":');
  });

  test('what cannot be read is put aside once, each text beside the ones before, and goes when all is erased', () => {
    const kept = browser(new Map([['a', '{"half":']]));
    const place = jsonPlace(
      () => 'a',
      () => 'a:unread',
    );
    const aside = () => JSON.parse(kept.get('a:unread') ?? '[]') as unknown;
    expect([place.putAside(), place.putAside(), aside()]).toEqual([true, true, ['{"half":']]);
    expect(kept.get('a')).toBe('{"half":');
    place.write({ version: 9 });
    expect([place.putAside(), aside()]).toEqual([true, ['{"half":', '{"version":9}']]);
    expect(place.clear()).toBe(true);
    expect([...kept]).toEqual([]);
    expect([place.putAside(), aside()]).toEqual([true, []]);
    // what lies there already stays, whatever it is
    kept.set('a', '1').set('a:unread', 'older');
    expect([place.putAside(), aside()]).toEqual([true, ['older', '1']]);
    localStorage.setItem = () => undefined;
    kept.set('a', '2');
    expect(place.putAside()).toBe(false);
    // a place without one beside it keeps no copy, and says so
    expect(jsonPlace(() => 'a').putAside()).toBe(false);
  });

  test('choices that are none are not written over before they lie elsewhere', () => {
    for (const text of ['{"half":', '7', 'null', '[1]']) {
      const kept = browser(new Map([['bare-toes:family', text]]));
      expect([browserPreferences().readable(), browserPreferences().read()]).toEqual([false, {}]);
      expect(browserPreferences().write({ side: 'left' })).toBe(true);
      expect(kept.get('bare-toes:family')).toBe('{"side":"left"}');
      expect(kept.get('bare-toes:family:unread')).toBe(JSON.stringify([text]));
      expect(browserPreferences().readable()).toBe(true);
    }
    const kept = browser(new Map([['bare-toes:family', '{"half":']]));
    const set = (name: string, text: string) => kept.set(name, text);
    localStorage.setItem = (name, text) => {
      if (name.endsWith(':unread')) throw new Error('full');
      set(name, text);
    };
    expect(browserPreferences().write({ side: 'left' })).toBe(false);
    expect(kept.get('bare-toes:family')).toBe('{"half":');
  });

  test('a browser that keeps something else, or will not let go, is not believed', () => {
    browser();
    localStorage.setItem = () => undefined;
    expect(jsonPlace(() => 'a').write(1)).toBe(false);
    const kept = browser(new Map([['a', '1']]));
    localStorage.removeItem = () => undefined;
    expect(jsonPlace(() => 'a').clear()).toBe(false);
    expect(kept.get('a')).toBe('1');
  });

  test('where the browser keeps nothing at all, nothing is there and nothing is written', () => {
    expect(typeof localStorage).toBe('undefined');
    const place = jsonPlace(() => 'a');
    expect([place.read(), place.write(1), place.clear()]).toEqual([undefined, false, false]);
  });
});

describe('the nurse’s card on this device', () => {
  test('comes back with the moment of "still right", and without what else was there', () => {
    browser();
    const place = browserCardPlace();
    expect(place.write({ code: '10A6', confirmedAt: 29_900_000 })).toBe(true);
    expect(place.read()).toEqual({ code: '10A6', confirmedAt: 29_900_000 });
  });

  test.each(['{"half":', 'null', '7', '[]', '{"code":7}', '"10A6"'])('is none where it says %s', (text) => {
    browser(new Map([['bare-toes:card', text]]));
    expect([browserCardPlace().read(), browserCardPlace().damaged()]).toEqual([undefined, true]);
  });

  test('is not damaged where there is none, or a whole one', () => {
    browser();
    expect(browserCardPlace().damaged()).toBe(false);
    browserCardPlace().write({ code: '10A6' });
    expect(browserCardPlace().damaged()).toBe(false);
  });

  test('a moment that is none is left out', () => {
    browser(new Map([['bare-toes:card', '{"code":"10A6","confirmedAt":1.5,"name":"x"}']]));
    expect(browserCardPlace().read()).toEqual({ code: '10A6' });
  });
});

describe('the made-up child', () => {
  test.each([
    ['has no store', undefined],
    ['refuses', { open: () => ({ onerror: () => undefined, error: new Error('no') }) }],
    ['does not answer', { open: () => ({}) }],
  ])('is ended in a browser whose store %s, and nothing of a real one goes with her', async (_, store) => {
    vi.useFakeTimers();
    vi.stubGlobal('indexedDB', store);
    const kept = browser(new Map([['bare-toes:card', 'real']]));
    expect(beginMadeUp()).toBe(true);
    kept.set('bare-toes:card-made-up', 'hers').set('bare-toes:card:unread-made-up', '["hers"]');
    let ended = false;
    endMadeUpPlaces().then(
      () => (ended = true),
      () => undefined,
    );
    await vi.advanceTimersByTimeAsync(10_000);
    expect([ended, ...kept]).toEqual([true, ['bare-toes:card', 'real']]);
  });
});
