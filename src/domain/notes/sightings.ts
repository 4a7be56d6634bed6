/** From notes to what is still waiting for a nurse. */
import type { Answer, Sighting } from '../signs/types.ts';
import type { Instant } from '../units.ts';
import { byTime, struckIds, type Entry } from './entries.ts';

/** A sighting with the note it comes from, and the steps of the answer to it. */
export interface TracedSighting extends Sighting {
  note: string;
  bellAt?: Instant;
  wordAt?: Instant;
  nurseCameAt?: Instant;
}

/**
 * Every sighting in the notes, each closed by the next "a nurse looked" after it and by nothing else.
 * An entry this version does not know is a sighting of an unknown sign: it stays, and counts as tell-nurse.
 */
export function sightingsOf(entries: readonly Entry[]): Sighting[] {
  return tracedSightings(entries).map(
    ({ note: _note, bellAt: _bell, wordAt: _word, nurseCameAt: _came, ...seen }) => seen,
  );
}

/** The same sightings, each with its note and the first bell, word and coming of a nurse after it. */
export function tracedSightings(entries: readonly Entry[]): TracedSighting[] {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  let open: TracedSighting[] = [];
  const done: TracedSighting[] = [];
  // up to here each open sighting has the mark already: the first of its kind counts
  let marked = { bell: 0, told: 0, 'nurse-came': 0 };
  for (const entry of kept) {
    switch (entry.kind) {
      case 'sign':
        open.push(sighting(entry.id, entry.sign, entry.answer, entry.t, entry.details));
        break;
      case 'look':
        for (const [sign, answer] of Object.entries(entry.answers))
          if (answer === 'different' || answer === 'not-sure')
            open.push(sighting(entry.id, sign, answer, entry.t));
        break;
      case 'unknown':
        open.push(sighting(entry.id, `unknown:${entry.id}`, 'different', entry.t));
        break;
      case 'bell':
      case 'told':
      case 'nurse-came':
        for (; marked[entry.kind] < open.length; marked[entry.kind]++) {
          const seen = open[marked[entry.kind]]!;
          if (entry.kind === 'nurse-came') seen.nurseCameAt = entry.t;
          else {
            seen[entry.kind === 'bell' ? 'bellAt' : 'wordAt'] = entry.t;
            seen.toldAt ??= entry.t;
          }
        }
        break;
      case 'nurse-looked':
        for (const seen of open) done.push({ ...seen, lookedAt: entry.t });
        open = [];
        marked = { bell: 0, told: 0, 'nurse-came': 0 };
        break;
    }
  }
  return [...done, ...open];
}

function sighting(
  note: string,
  sign: string,
  answer: Answer,
  at: Instant,
  details?: readonly string[],
): TracedSighting {
  const seen: TracedSighting = { note, sign, answer, at };
  // stored without the sign's name in front; the rules want `sign/detail`
  if (details?.length) seen.details = details.map((detail) => `${sign}/${detail}`);
  return seen;
}

/** The first press of the button, or word to a nurse, that no "a nurse looked" has answered yet: minutes run from it. */
export function openCall(
  entries: readonly Entry[],
  kind: 'bell' | 'told',
): Extract<Entry, { kind: 'bell' | 'told' }> | undefined {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  const looked = kept.filter((entry) => entry.kind === 'nurse-looked').at(-1);
  const calls = kept.filter((entry) => entry.kind === kind && (!looked || byTime(entry, looked) > 0));
  return calls[0] as Extract<Entry, { kind: 'bell' | 'told' }> | undefined;
}
