/**
 * Notes as a file, for the share sheet, a cable or a memory card: text that a person can open and recognise, and that
 * is read whole or not at all.
 */
import { checkSum } from './check-sum.ts';
import { parseEntry, type Entry } from './entries.ts';
import { depthOf, plainText } from './plain.ts';

const FORMAT = 'bare-toes-notes';
const VERSION = 1;
/** Characters. Ten thousand notes are about one million. */
export const LARGEST_FILE = 3_000_000;
/** Ten times what two phones write in half a year; with more, a phone would stand still whenever notes are summed up. */
export const MOST_NOTES = 20_000;
/** An entry may be fifty deep; the file puts two around it. */
const DEEPEST = 60;

export type NotesRead =
  | { ok: true; entries: Entry[] }
  | {
      ok: false;
      reason: 'foreign' | 'damaged' | 'too-new' | 'too-large';
      /** The place in the file that was not as it must be. */
      where: string;
    };

/**
 * Writes notes as a file.
 * Shape: JSON with `format`, `version`, `count`, `check` (eight hexadecimal digits over the entries) and `entries`, one
 * a line.
 * Errors: throws a RangeError where it would be larger than `readNotesFile` takes.
 * Not: secret. Whoever has the file can read the notes.
 * @example writeNotesFile([])
 */
export function writeNotesFile(entries: readonly Entry[]): string {
  // read as any stored value is, so that what comes out is what went in
  const rows = entries.map((entry) => plainText(parseEntry(entry)));
  const head = { format: FORMAT, version: VERSION, count: rows.length, check: checkOf(rows) };
  const lines = Object.entries(head).map(
    ([name, value]) => `  ${JSON.stringify(name)}: ${JSON.stringify(value)},`,
  );
  const text = [
    '{',
    ...lines,
    '  "entries": [',
    rows.map((row) => `    ${row}`).join(',\n'),
    '  ]',
    '}',
    '',
  ].join('\n');
  if (text.length > LARGEST_FILE || rows.length > MOST_NOTES)
    throw new RangeError(
      `domain/notes/file › notes: at most ${MOST_NOTES} in ${LARGEST_FILE} characters, saw ${rows.length} in ${text.length}`,
    );
  return text;
}

/** Over the rows and where each ends; blanks and line ends of the file do not count. */
const checkOf = (rows: readonly string[]): string =>
  rows
    .reduce((sum, row) => checkSum(`${row}\n`, sum), 0)
    .toString(16)
    .padStart(8, '0');

const no = (reason: Extract<NotesRead, { ok: false }>['reason'], where: string): NotesRead => ({
  ok: false,
  reason,
  where,
});

/**
 * Reads a file of notes: all of it, or nothing.
 * Shape: entries as `parseEntry` gives them; one of a later kind comes back as `unknown` with all it held.
 * Errors: none thrown, whatever the text; the reason and the place come back.
 * @example readNotesFile('hello') // { ok: false, reason: 'foreign', where: 'file' }
 */
export function readNotesFile(text: string): NotesRead {
  if (text.length > LARGEST_FILE) return no('too-large', 'file');
  if (depthOf(text) > DEEPEST) return no('foreign', 'file › depth');
  // some programs put an invisible mark in front of every text
  const bare = text.startsWith('\ufeff') ? text.slice(1) : text;
  let file: unknown;
  try {
    file = JSON.parse(bare);
  } catch {
    // a file of ours that was cut off still says what it is
    const begins = new RegExp(`^\\s*\\{\\s*"format"\\s*:\\s*"${FORMAT}"`).test(bare);
    return no(begins ? 'damaged' : 'foreign', 'file');
  }
  if (typeof file !== 'object' || file === null || Array.isArray(file)) return no('foreign', 'file');
  // only what the file itself holds counts, never what every object has
  const held = new Map<string, unknown>(Object.entries(file));
  if (held.get('format') !== FORMAT) return no('foreign', 'format');
  const version = held.get('version');
  if (!Number.isSafeInteger(version) || (version as number) < 1) return no('damaged', 'version');
  if ((version as number) > VERSION) return no('too-new', 'version');
  const entries = held.get('entries');
  if (!Array.isArray(entries)) return no('damaged', 'entries');
  if (entries.length > MOST_NOTES) return no('too-large', 'entries');
  if (held.get('count') !== entries.length) return no('damaged', 'count');
  const rows = entries.map((entry) => JSON.stringify(entry));
  if (held.get('check') !== checkOf(rows)) return no('damaged', 'check');
  return { ok: true, entries: entries.map(parseEntry) };
}
