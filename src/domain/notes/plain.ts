/** What leaves the phone is plain text: how an entry is told in it, and how a strange one is. */
import type { Entry } from './entries.ts';

/** No note of ours comes near these; a stranger's may, and must not stop all the others. */
const LONGEST = 100_000;
const DEEPEST = 50;
/** More than any file or transfer holds; what says more was never written by us. */
export const MOST_PACKED = 100_000;

/** How deep brackets stand in one another in a JSON text; it need not be a right one. */
export function depthOf(json: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let i = 0; i < json.length; i++) {
    const unit = json.charCodeAt(i);
    if (quoted) {
      if (unit === 0x5c) i++;
      else if (unit === 0x22) quoted = false;
    } else if (unit === 0x22) quoted = true;
    else if (unit === 0x5b || unit === 0x7b) deepest = Math.max(deepest, ++depth);
    else if (unit === 0x5d || unit === 0x7d) depth--;
  }
  return deepest;
}

/** JSON of a value, or nothing where JSON has no words for it. */
export function jsonOf(value: unknown): string | undefined {
  try {
    return JSON.stringify(value);
  } catch {
    // turns in a circle, goes too deep, or holds numbers that JSON does not know
    return undefined;
  }
}

/**
 * One entry as JSON text.
 * Errors: none. Content that JSON cannot tell, or beyond all measure, is left out; the note itself stays, as unknown.
 */
export function plainText(entry: Entry): string {
  const whole = jsonOf(entry);
  if (
    whole !== undefined &&
    whole.length <= LONGEST &&
    (entry.kind !== 'unknown' || depthOf(whole) <= DEEPEST)
  )
    return whole;
  const { id, t, off, by } = entry;
  return JSON.stringify({ id, t, off, ...(by && { by }), kind: 'unknown', raw: 'beyond words' });
}
