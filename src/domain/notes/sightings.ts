/** From notes to what is still waiting for a nurse. */
import type { Answer, Sighting } from '../signs/types.ts';
import type { Instant } from '../units.ts';
import { byTime, struckIds, type Entry } from './entries.ts';

/**
 * Every sighting in the notes, each closed by the next "a nurse looked" after it and by nothing else.
 * An entry this version does not know is a sighting of an unknown sign: it stays, and counts as tell-nurse.
 */
export function sightingsOf(entries: readonly Entry[]): Sighting[] {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  const open: Sighting[] = [];
  const done: Sighting[] = [];
  for (const entry of kept) {
    switch (entry.kind) {
      case 'sign':
        open.push(sighting(entry.sign, entry.answer, entry.t, entry.details));
        break;
      case 'look':
        for (const [sign, answer] of Object.entries(entry.answers))
          if (answer === 'different' || answer === 'not-sure') open.push(sighting(sign, answer, entry.t));
        break;
      case 'unknown':
        open.push(sighting(`unknown:${entry.id}`, 'different', entry.t));
        break;
      case 'bell':
      case 'told':
        open.forEach((s) => (s.toldAt ??= entry.t));
        break;
      case 'nurse-looked':
        done.push(...open.splice(0).map((s) => ({ ...s, lookedAt: entry.t })));
        break;
      case 'strike':
        break;
    }
  }
  return [...done, ...open];
}

function sighting(sign: string, answer: Answer, at: Instant, details?: readonly string[]): Sighting {
  const seen: Sighting = { sign, answer, at };
  // stored without the sign's name in front; the rules want `sign/detail`
  if (details?.length) seen.details = details.map((detail) => `${sign}/${detail}`);
  return seen;
}

/** The last press of the button or word to a nurse that no "a nurse looked" has answered yet. */
export function openCall(
  entries: readonly Entry[],
  kind: 'bell' | 'told',
): Extract<Entry, { kind: 'bell' | 'told' }> | undefined {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  const looked = kept.filter((entry) => entry.kind === 'nurse-looked').at(-1);
  const calls = kept.filter((entry) => entry.kind === kind && (!looked || byTime(entry, looked) > 0));
  // the first press counts: minutes run from there, a second press does not start them anew
  return calls[0] as Extract<Entry, { kind: 'bell' | 'told' }> | undefined;
}
