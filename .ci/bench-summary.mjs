// Times the summary of the notes and its drawing, built as the site builds them, at growing numbers of notes.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const SIZES = [10, 1_000, 10_000];
const NOW = 30_000_000;

/** A stay as two phones write it: the last day holds a tenth of the notes, the rest goes back from there. */
function notesOf(count, signs) {
  const groups = Object.keys(signs).filter((id) => signs[id].look);
  const kinds = [
    (i) => ({ kind: 'sign', sign: Object.keys(signs)[i % 43], answer: 'different' }),
    () => ({ kind: 'told' }),
    () => ({ kind: 'nurse-looked' }),
    (i) => ({ kind: 'sore', value: i % 11, scale: 'numbers', when: i % 2 ? 'rest' : 'moving' }),
    () => ({ kind: 'medicine-told' }),
    (i) => ({ kind: 'drink', amount: ['sip', 'quarter', 'half', 'full'][i % 4], what: 'water' }),
    () => ({ kind: 'wee', into: 'bottle', amount: 'usual' }),
    () => ({ kind: 'poo', what: 'soft' }),
    (i) => ({ kind: 'sleep', what: i % 2 ? 'fell-asleep' : 'woke' }),
    (i) => ({ kind: 'play', idea: `idea-${i % 20}`, again: i % 3 > 0 }),
    (i) => ({ kind: 'question', own: `question ${i % 40}` }),
    (i) => ({
      kind: 'look',
      answers: Object.fromEntries(groups.map((id, j) => [id, (i + j) % 29 ? 'like-usual' : 'different'])),
    }),
    (i) => ({ kind: 'strike', strikes: `aaaaaa-${i}` }),
  ];
  return Array.from({ length: count }, (_, i) => ({
    id: `${i % 2 ? 'bbbbbb' : 'aaaaaa'}-${count - i}`,
    t: NOW - Math.round(i < count / 10 ? (i * 14_400) / count : 1_440 + (i * 20_160) / count),
    off: 60,
    ...kinds[(i * 7) % kinds.length](i),
  })).reverse();
}

/** Median time of one call, in milliseconds, after the engine has made it fast. */
function timeOf(call, share) {
  const samples = [];
  let kept;
  for (let i = 0; i < 15; i++) {
    const start = performance.now();
    for (let j = 0; j < share; j++) kept = call();
    samples.push((performance.now() - start) / share);
  }
  if (kept === undefined) throw new Error('bench › summary: nothing came back');
  return samples.slice(4).sort((a, b) => a - b)[5];
}

export async function summaryTimes(root) {
  const outDir = mkdtempSync(path.join(tmpdir(), 'bench-summary-'));
  const sources = {
    summarise: 'domain/notes/summarise.ts',
    timeline: 'domain/notes/timeline.ts',
    pairs: 'domain/notes/pairs.ts',
    signs: 'content/signs.ts',
    ward: 'content/ward.ts',
  };
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      rollupOptions: {
        input: Object.fromEntries(
          Object.entries(sources).map(([name, file]) => [name, path.join(root, 'src', file)]),
        ),
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  const load = (name) => import(pathToFileURL(path.join(outDir, `${name}.mjs`)).href);
  const [{ summarise }, { timelineOf }, { pairsOf }, { SIGN_ROWS }, { WARD }] = await Promise.all(
    Object.keys(sources).map(load),
  );
  const settings = {
    offsetMinutes: 60,
    child: { under3: false, canTell: 'yes' },
    signs: SIGN_ROWS,
    ward: WARD,
    lookOf: Object.fromEntries(Object.entries(SIGN_ROWS).map(([id, row]) => [id, row.look])),
  };
  const calls = {
    summarise: (notes) => summarise(notes, NOW, settings),
    'pairs of all notes': (notes) => pairsOf(notes),
    'line of seven days': (notes) => timelineOf(notes, NOW - 7 * 1440, NOW, () => 60),
  };
  const rows = [];
  for (const [name, call] of Object.entries(calls)) {
    let before;
    for (const size of SIZES) {
      const notes = notesOf(size, SIGN_ROWS);
      const value = timeOf(() => call(notes), size > 5000 ? 1 : size > 500 ? 5 : 50);
      rows.push({ name: `${name}, ${size} notes`, value, unit: 'ms', digits: 2 });
      if (before)
        rows.push({
          name: `${name}, growth from ${before.size} to ${size} (${size / before.size} times as many)`,
          value: value / before.value,
          unit: 'times',
          digits: 1,
        });
      before = { size, value };
    }
  }
  rmSync(outDir, { recursive: true, force: true });
  return rows;
}
