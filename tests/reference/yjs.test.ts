/**
 * Merging against a general library for shared data. Outside: `yjs` 13.6, each phone a document with a map from id to
 * note. Where no id has two contents it must hold the same notes as `mergeNotes`; beside it, what each sends.
 */
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { byTime, mergeNotes, parseEntry, type Entry } from '#domain/notes/entries.ts';
import { packNotes } from '#domain/notes/pack.ts';
import { anyWritten } from '../helpers/entries.ts';
import { fortnight } from '../helpers/fortnight.ts';

/** The library sends UTF-8, which has no unpaired halves, and sets fields by name, which `__proto__` does not survive. */
const itCanHold = (entry: Entry) => !/\\ud[89a-f]|"__proto__"/i.test(JSON.stringify(entry));

/** What a phone with these notes would send. */
function updateOf(entries: readonly Entry[]): Uint8Array {
  const shared = new Y.Doc();
  const map = shared.getMap('notes');
  shared.transact(() => entries.forEach((entry) => map.set(entry.id, JSON.parse(JSON.stringify(entry)))));
  return Y.encodeStateAsUpdate(shared);
}
function mergedByYjs(...sets: readonly (readonly Entry[])[]): Entry[] {
  const shared = new Y.Doc();
  for (const set of sets) Y.applyUpdate(shared, updateOf(set));
  return [...shared.getMap('notes').values()].map(parseEntry).sort(byTime);
}

describe('two phones’ notes', () => {
  test('are the same notes as the library makes of them, in any order', () => {
    const sets = fc
      .uniqueArray(anyWritten.filter(itCanHold), { selector: (entry) => entry.id, maxLength: 20 })
      .chain((all) => fc.tuple(fc.subarray(all), fc.subarray(all), fc.subarray(all)));
    fc.assert(
      fc.property(sets, ([a, b, c]) => {
        const plain = (entries: Entry[]) => JSON.stringify(entries);
        expect(plain(mergeNotes(mergeNotes(a, b), c))).toBe(plain(mergedByYjs(a, b, c)));
        expect(plain(mergeNotes(c, mergeNotes(b, a)))).toBe(plain(mergedByYjs(c, b, a)));
      }),
      { numRuns: 300 },
    );
  });

  test.each(['even', 'likely'] as const)(
    '600 notes (%s) take less than a quarter of what the library sends',
    (mix) => {
      const entries = fortnight(600, 12, mix);
      const theirs = deflateRawSync(updateOf(entries)).length;
      const json = deflateRawSync(JSON.stringify(entries)).length;
      const ours = packNotes(entries).length;
      expect(ours * 4).toBeLessThan(theirs);
      expect(ours * 4).toBeLessThan(json);
      // the aim of the issue
      expect(ours / entries.length).toBeLessThanOrEqual(4.5);
    },
  );
});
