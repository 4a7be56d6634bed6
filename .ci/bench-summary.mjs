// Times the summary of the notes and its drawing, built as the site builds them, at growing numbers of notes.
import { growing, loadBuilt, medianTime } from './bench-tools.mjs';

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

/** Rows of name, value and unit: summing up and drawing growing numbers of notes. */
export async function summaryTimes(root) {
  const { summarise, timelineOf, pairsOf, SIGN_ROWS, WARD } = await loadBuilt(root, [
    'src/domain/notes/summarise.ts',
    'src/domain/notes/timeline.ts',
    'src/domain/notes/pairs.ts',
    'src/content/signs.ts',
    'src/content/ward.ts',
  ]);
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
  return Object.entries(calls).flatMap(([name, call]) =>
    growing(name, 'notes', SIZES, 2, (size) => {
      const notes = notesOf(size, SIGN_ROWS);
      return medianTime('summary', () => call(notes), size > 5000 ? 1 : size > 500 ? 5 : 50);
    }),
  );
}
