/**
 * A second copy of the notes, in localStorage. A browser that was killed while it wrote was seen to open its database
 * as if there had never been one; what was called written must be there afterwards.
 */
import { copyPrefix, DAY_PREFIX } from './note-place.ts';

/** One record of the database: the name of a UTC day, and what lies there. */
export type Row = readonly [day: string, notes: unknown];

/** More notes in one day are no family's: such a day has no copy. */
const MOST_IN_A_DAY = 1000;
/** Characters of all days together: a fifth of what a browser grants, since choices, card and play are kept there, too. */
const MOST_CHARACTERS = 1_000_000;

const copied = (): string[] => Object.keys(localStorage).filter((key) => key.startsWith(copyPrefix()));

/** Nothing where a day has no copy. */
function textOf(notes: unknown): string | undefined {
  const text = Array.isArray(notes) && notes.length > MOST_IN_A_DAY ? undefined : JSON.stringify(notes);
  return text !== undefined && text.length <= MOST_CHARACTERS ? text : undefined;
}

/** Copies these days as they were read back. A browser that has no room for it, or refuses, keeps no copy of them. */
export function copyDays(rows: readonly Row[]): void {
  for (const [day, notes] of rows) {
    try {
      const text = textOf(notes);
      const key = copyPrefix() + day;
      if (text === localStorage.getItem(key)) continue;
      // an older text must not stand for the day
      localStorage.removeItem(key);
      if (text !== undefined) localStorage.setItem(key, text);
    } catch {
      // the notes themselves are written
    }
  }
}

/** Makes the copy what the database holds, the newest days first for as long as there is room for them. */
export function copyAll(rows: readonly Row[]): void {
  let room = MOST_CHARACTERS;
  const kept = [...rows]
    .sort(([one], [other]) => (one < other ? 1 : -1))
    .filter(([, notes]) => (room -= textOf(notes)?.length ?? 0) >= 0);
  try {
    const days = new Set(kept.map(([day]) => copyPrefix() + day));
    for (const key of copied()) if (!days.has(key)) localStorage.removeItem(key);
  } catch {
    // what cannot be looked into cannot be put in order
  }
  copyDays(kept);
}

/** What was copied. A text that is no JSON comes back as it is: one damaged day, never a silent nothing. */
export function copiedDays(): Row[] {
  try {
    return copied().flatMap((key) => {
      const day = key.slice(copyPrefix().length);
      const text = localStorage.getItem(key);
      if (text === null || !day.startsWith(DAY_PREFIX)) return [];
      try {
        return [[day, JSON.parse(text) as unknown]];
      } catch {
        return [[day, text]];
      }
    });
  } catch {
    return [];
  }
}

/** The copy goes with the notes. */
export const dropCopy = (): void => copyAll([]);
