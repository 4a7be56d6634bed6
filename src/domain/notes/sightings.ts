/** From notes to what is still waiting for a nurse. */
import { isOpen } from '../signs/over-time.ts';
import type { Answer, Sighting } from '../signs/types.ts';
import type { Instant } from '../units.ts';
import { byTime, struckIds, type Entry } from './entries.ts';
import { orderOf, type NoteOrder } from './order.ts';

/** A sighting with the note it comes from, and the steps of the answer to it. */
export interface TracedSighting extends Sighting {
  note: string;
  /** The note that closed it. */
  look?: Entry;
  bellAt?: Instant;
  wordAt?: Instant;
  nurseCameAt?: Instant;
}

/**
 * Every sighting in the notes, each closed by the next "a nurse looked" after it and by nothing else.
 * An entry this version does not know is a sighting of an unknown sign: it stays, and counts as tell-nurse.
 * Each bears the latest time it can have been (`orderOf`), and where its phone's clock went back since, it says so.
 */
export function sightingsOf(entries: readonly Entry[], now?: Instant): Sighting[] {
  const order = orderOf(entries, now);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  return tracedSightings(entries, now)
    .map(({ note, bellAt: _bell, wordAt: _word, nurseCameAt: _came, look, ...seen }): Sighting => {
      const entry = byId.get(note)!;
      return {
        ...seen,
        at: order.at(entry),
        ...(look && { lookedAt: order.at(look) }),
        ...(order.wentBackSince(entry) && { clockWentBack: true }),
      };
    })
    .sort((a, b) => Number(isOpen(a)) - Number(isOpen(b)) || a.at - b.at);
}

/** The same sightings, each with its note and the first bell, word and coming of a nurse after it, at their own times. */
export function tracedSightings(entries: readonly Entry[], now?: Instant): TracedSighting[] {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  const order = orderOf(entries, now);
  return order.byTimeAlone ? inOneGo(kept) : noteByNote(kept, order);
}

/** What was seen in one note; nothing in most. */
function seenIn(entry: Entry): TracedSighting[] {
  switch (entry.kind) {
    case 'sign':
      return [sighting(entry.id, entry.sign, entry.answer, entry.t, entry.details)];
    case 'look':
      return Object.entries(entry.answers).flatMap(([sign, answer]) =>
        answer === 'different' || answer === 'not-sure' ? [sighting(entry.id, sign, answer, entry.t)] : [],
      );
    case 'unknown':
      return [sighting(entry.id, `unknown:${entry.id}`, 'different', entry.t)];
    default:
      return [];
  }
}

type Step = Extract<Entry, { kind: 'bell' | 'told' | 'nurse-came' | 'nurse-looked' }>;
type Call = Exclude<Step['kind'], 'nurse-looked'>;
const isStep = (entry: Entry): entry is Step =>
  entry.kind === 'bell' ||
  entry.kind === 'told' ||
  entry.kind === 'nurse-came' ||
  entry.kind === 'nurse-looked';

/** The first of each kind counts. */
function answer(seen: TracedSighting, kind: Call, at: Instant): void {
  if (kind === 'nurse-came') seen.nurseCameAt ??= at;
  else {
    seen[kind === 'bell' ? 'bellAt' : 'wordAt'] ??= at;
    seen.toldAt ??= at;
  }
}

function inOneGo(kept: readonly Entry[]): TracedSighting[] {
  let open: TracedSighting[] = [];
  const done: TracedSighting[] = [];
  // up to here each open sighting has the mark already
  let marked: Record<Call, number> = { bell: 0, told: 0, 'nurse-came': 0 };
  for (const entry of kept) {
    if (!isStep(entry)) open.push(...seenIn(entry));
    else if (entry.kind === 'nurse-looked') {
      for (const seen of open) done.push({ ...seen, lookedAt: entry.t, look: entry });
      open = [];
      marked = { bell: 0, told: 0, 'nurse-came': 0 };
    } else {
      for (; marked[entry.kind] < open.length; marked[entry.kind]++)
        answer(open[marked[entry.kind]]!, entry.kind, entry.t);
    }
  }
  return [...done, ...open];
}

/** A clock went back: times are no order, and of each sighting it is asked what was written after it. */
function noteByNote(kept: readonly Entry[], order: NoteOrder): TracedSighting[] {
  const inOrder = [...kept].sort((a, b) => order.at(a) - order.at(b) || byTime(a, b));
  const steps = inOrder.filter(isStep);
  const looks = steps.filter(({ kind }) => kind === 'nurse-looked');
  const all = inOrder.flatMap((entry) => {
    const found = seenIn(entry);
    if (found.length === 0) return [];
    const look = looks.find((one) => order.isAfter(one, entry));
    const calls = steps.filter(
      (one) =>
        one.kind !== 'nurse-looked' && order.isAfter(one, entry) && !(look && order.isAfter(one, look)),
    );
    for (const seen of found) {
      for (const call of calls) answer(seen, call.kind as Call, call.t);
      if (look) Object.assign(seen, { lookedAt: look.t, look });
    }
    return found;
  });
  return [...all.filter(({ look }) => look), ...all.filter(({ look }) => !look)];
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

/** A press of the button, or word to a nurse. `clockWentBack`: nobody knows how long ago it was. */
export type OpenCall = Extract<Entry, { kind: 'bell' | 'told' }> & { clockWentBack?: true };

/** The first press of the button, or word to a nurse, that no "a nurse looked" has answered yet: minutes run from it. */
export function openCall(
  entries: readonly Entry[],
  kind: 'bell' | 'told',
  now?: Instant,
): OpenCall | undefined {
  const struck = struckIds(entries);
  const kept = entries.filter((entry) => !struck.has(entry.id)).sort(byTime);
  const order = orderOf(entries, now);
  const looks = kept.filter((entry) => entry.kind === 'nurse-looked');
  const calls = kept
    .filter((entry) => entry.kind === kind && !looks.some((look) => order.isAfter(look, entry)))
    .sort((a, b) => order.at(a) - order.at(b));
  const [first] = calls as OpenCall[];
  return first && order.wentBackSince(first) ? { ...first, clockWentBack: true } : first;
}
