// A page that the browser had put by is shown again as it was left: it looks at what was kept and erased meanwhile.
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { jsonPlace } from '#device/json-place.ts';
import { browserNoteStore } from '#device/note-store.ts';
import { onOtherTab, type OtherTab } from '#device/other-tabs.ts';

let kept: Map<string, string>;
let page: EventTarget;
const shown = (persisted = true) => page.dispatchEvent(Object.assign(new Event('pageshow'), { persisted }));

beforeEach(() => {
  kept = new Map();
  page = new EventTarget();
  vi.stubGlobal('localStorage', { getItem: (name: string) => kept.get(name) ?? null });
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page));
  vi.stubGlobal('removeEventListener', page.removeEventListener.bind(page));
});
afterEach(() => vi.unstubAllGlobals());

describe('a page that is shown again as it was left', () => {
  test('reads notes, beds and day anew, what can be stopped until it is; one that is opened anew has read them', () => {
    let asked: string[] = [];
    const stop = jsonPlace(() => 'a').onOtherTab(() => asked.push('a'));
    browserNoteStore().onChange((what) => asked.push(what));
    shown(false);
    expect(asked).toEqual([]);
    shown();
    expect(asked).toEqual(['a', 'written']);
    asked = [];
    stop();
    shown();
    expect(asked).toEqual(['written']);
  });

  test.each([
    ['with the choices it left', { family: '{}' }, { family: '{}' }, 'changed'],
    ['with other choices', { family: '{}' }, { family: '{"side":"left"}' }, 'changed'],
    ['with first choices', {}, { family: '{}' }, 'changed'],
    ['after all was erased', { family: '{}' }, {}, 'gone'],
    ['after the made-up child came', { family: '{}' }, { 'family-made-up': '{}', 'made-up': 'yes' }, 'gone'],
    ['after she went', { 'family-made-up': '{}', 'made-up': 'yes' }, { family: '{}' }, 'gone'],
  ] as const)('%s it says so', (_, before, after, said) => {
    const put = (all: object) =>
      (kept = new Map(Object.entries(all).map(([name, text]) => [`bare-toes:${name}`, text as string])));
    const heard: OtherTab[] = [];
    // what the page itself keeps while it stands is no change
    onOtherTab((what) => heard.push(what));
    put(before);
    page.dispatchEvent(new Event('pagehide'));
    put(after);
    shown();
    expect(heard).toEqual([said]);
  });

  test('where another tab erases place after place, it is told once that its child is gone', () => {
    const heard: OtherTab[] = [];
    onOtherTab((what) => heard.push(what));
    const erased = (key: string) =>
      page.dispatchEvent(Object.assign(new Event('storage'), { key, newValue: null }));
    erased('bare-toes:card');
    expect(heard).toEqual([]);
    erased('bare-toes:family');
    erased('bare-toes:made-up');
    shown();
    expect(heard).toEqual(['gone']);
  });
});
