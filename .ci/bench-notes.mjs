// Passing notes on: bytes and times of our own code beside a general library for shared data (Yjs) on the same notes.
import { deflateRawSync } from 'node:zlib';
import * as Y from 'yjs';
import { loadBuilt, medianTime } from './bench-tools.mjs';

const FORTNIGHT = 600;
const MANY = 10_000;
const SEED = 12;

/** The notes' code as the site has it, and the made-up fortnight of the tests. */
const load = (root) =>
  loadBuilt(root, [
    'src/domain/notes/entries.ts',
    'src/domain/notes/pack.ts',
    'src/domain/notes/frames.ts',
    'src/domain/notes/file.ts',
    'tests/helpers/fortnight.ts',
  ]);

/** What a phone with these notes would send: a map from id to note. */
function updateOf(entries) {
  const shared = new Y.Doc();
  const map = shared.getMap('notes');
  shared.transact(() => entries.forEach((entry) => map.set(entry.id, entry)));
  return Y.encodeStateAsUpdate(shared);
}

/** Two phones that have exchanged half of their notes already; separate copies, as they come from a store. */
function halves(all) {
  const copy = (entries) => JSON.parse(JSON.stringify(entries));
  const old = all.slice(0, all.length / 2);
  const [, device] = all[0].id.match(/^(.*)-/);
  const own = (first) => all.slice(all.length / 2).filter(({ id }) => id.startsWith(device) === first);
  return [copy([...old, ...own(true)]), copy([...old, ...own(false)])];
}

/** Rows of name, value and unit: what a fortnight of notes costs to merge, pack and send, beside general tools. */
export async function noteFigures(root) {
  const { mergeNotes, packNotes, unpackNotes, framesOf, frameCollector, writeNotesFile, fortnight } =
    await load(root);
  const rows = [];
  const row = (name, value, unit, digits, target, reference) =>
    rows.push({ name, value, unit, digits, target, reference });

  for (const mix of ['even', 'likely']) {
    const notes = fortnight(FORTNIGHT, SEED, mix);
    const ours = packNotes(notes);
    const name = `${FORTNIGHT} notes of two phones (${mix})`;
    row(`${name}, packed`, ours.length / FORTNIGHT, 'bytes a note', 2, 4.5, `${name}, Yjs update deflated`);
    row(
      `${name}, JSON deflated`,
      deflateRawSync(JSON.stringify(notes)).length / FORTNIGHT,
      'bytes a note',
      2,
    );
    const theirs = deflateRawSync(updateOf(notes)).length;
    row(`${name}, Yjs update deflated`, theirs / FORTNIGHT, 'bytes a note', 2);
    row(`${name}, Yjs to ours`, theirs / ours.length, 'times', 2, undefined, `${name}, packed`);
    row(`${name}, as a file`, writeNotesFile(notes).length / 1024, 'KiB', 1);
    row(`${name}, frames`, framesOf(ours).needed, 'frames', 0, 15);
    row(
      `${name}, packing`,
      medianTime('notes', () => packNotes(notes)),
      'ms',
      1,
    );
    row(
      `${name}, unpacking`,
      medianTime('notes', () => unpackNotes(ours)),
      'ms',
      1,
    );
    const frames = framesOf(ours);
    let shown = 0;
    for (let whole, n = 0, eye = frameCollector(); !whole; n++) {
      shown++;
      if (shown % 5) whole = eye.take(frames.frame(n)).whole;
    }
    row(`${name}, shown until whole, every fifth frame lost, 4 a second`, shown / 4, 's', 2, 8);
  }

  const many = fortnight(MANY, SEED, 'even');
  const [a, b] = halves(many);
  if (mergeNotes(a, b).length !== MANY) throw new Error('bench › notes: a note was lost in the merge');
  const ours = medianTime('notes', () => mergeNotes(a, b));
  row(`merge of ${MANY} notes`, ours, 'ms', 2, 5, `merge of ${MANY} notes, Yjs`);
  const [first, second] = [updateOf(a), updateOf(b)];
  const theirs = medianTime('notes', () => {
    const shared = new Y.Doc();
    Y.applyUpdate(shared, first);
    Y.applyUpdate(shared, second);
    return shared.getMap('notes').size;
  });
  row(`merge of ${MANY} notes, Yjs`, theirs, 'ms', 1);
  row(`merge of ${MANY} notes, Yjs to ours`, theirs / ours, 'times', 1, undefined, `merge of ${MANY} notes`);
  const packed = packNotes(many);
  row(`${MANY} notes, packed`, packed.length / 1024, 'KiB', 1);
  row(
    `${MANY} notes, packing`,
    medianTime('notes', () => packNotes(many)),
    'ms',
    0,
  );
  row(
    `${MANY} notes, unpacking`,
    medianTime('notes', () => unpackNotes(packed)),
    'ms',
    0,
  );
  return rows;
}
