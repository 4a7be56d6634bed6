/** One event that two phones noted: shown as a pair, and counted once only after the family said so. */
import { byTime, struckIds, type Entry, type EntryKind } from './entries.ts';
import { writtenAs } from './clocks.ts';

/** Notes of one event lie at most so many minutes apart. */
export const PAIR_MINUTES = 10;

/** Notes about notes are no events, and what cannot be read cannot be compared. */
const NO_EVENT: ReadonlySet<EntryKind> = new Set(['strike', 'pair', 'clock', 'unknown']);

/** At least and at most so many. They differ while a pair is unanswered. */
export interface Count {
  low: number;
  high: number;
}

/** What may be one event: its parts are one for sure each (a note, or notes the family called the same). */
export interface PossibleEvent {
  parts: readonly (readonly Entry[])[];
}

export interface Pair {
  first: string;
  second: string;
  kind: EntryKind;
  /** One said "the same", another "two": both notes stay, and the question is asked again. The notes that said so. */
  contradicted?: Answers;
}

/** Notes that answered for a pair, by what they said, in an order of their own: phones may get them in any. */
interface Answers {
  one: readonly string[];
  two: readonly string[];
}

/**
 * Notes of two phones that look like one event and that nobody has answered for: "both of you?".
 *
 * The same kind with the same content, by different phones, at most ten minutes apart, none of them struck. A phone
 * that wrote twice meant two events, so of three notes in a row each is offered with one other at most.
 * Hand in corrected notes: a wrong clock would part what belongs together.
 */
export function pairsOf(entries: readonly Entry[]): Pair[] {
  const answers = answersIn(entries, struckIds(entries));
  return eventsOf(entries).flatMap(({ parts }) =>
    parts.slice(1).map((part, i): Pair => {
      const [first, second] = [parts[i]![0]!, part[0]!];
      const pair: Pair = { first: first.id, second: second.id, kind: first.kind };
      const contradicted = answers.get(pairKey(first.id, second.id));
      return saidOf(contradicted) === 'both' ? { ...pair, contradicted: contradicted! } : pair;
    }),
  );
}

/**
 * How many there were, at least and at most: an unanswered pair counts once at least and twice at most, a pair that was
 * called the same counts once.
 * @example countEvents(eventsOf(notes, isWee)) // { low: 3, high: 4 }: shown as "3–4" until somebody taps
 */
export const countEvents = (events: readonly PossibleEvent[]): Count => ({
  low: events.length,
  high: events.reduce((sum, event) => sum + event.parts.length, 0),
});

/** Every note of a list of events, each once. */
export const notesOf = (events: readonly PossibleEvent[]): Entry[] =>
  events.flatMap((event) => event.parts.flat());

/**
 * The events behind the notes, earliest first, for counting and for sums. Only notes that `keep` lets through are
 * taken; strikes and answers to pairs are read from all of them.
 */
export function eventsOf(
  entries: readonly Entry[],
  keep: (entry: Entry) => boolean = () => true,
): PossibleEvent[] {
  const struck = struckIds(entries);
  const kept = entries
    .filter((entry) => !NO_EVENT.has(entry.kind) && !struck.has(entry.id) && keep(entry))
    .sort(byTime);
  const answers = answersIn(entries, struck);

  // for each content the events that began within ten minutes, from the earliest
  const waiting = new Map<string, { events: OpenEvent[]; start: number }>();
  const events: OpenEvent[] = [];
  for (const part of partsOf(kept, answers)) {
    const key = contentOf(part[0]!);
    const devices = new Set(part.map(deviceOf));
    const from = part[0]!.t;
    const line = waiting.get(key) ?? { events: [], start: 0 };
    waiting.set(key, line);
    while (line.start < line.events.length && from - line.events[line.start]!.from > PAIR_MINUTES)
      line.start++;
    const fits = (event: OpenEvent) =>
      ![...devices].some((device) => event.devices.has(device)) &&
      !event.parts.flat().some((a) => part.some((b) => saidOf(answers.get(pairKey(a.id, b.id))) === 'two'));
    // the earliest that fits: with two phones this leaves as few events as can be
    let at = line.start;
    while (at < line.events.length && !fits(line.events[at]!)) at++;
    const event = line.events[at];
    if (event) {
      event.parts.push(part);
      devices.forEach((device) => event.devices.add(device));
    } else {
      const started: OpenEvent = { parts: [part], from, devices };
      events.push(started);
      line.events.push(started);
    }
  }
  return events.map(({ parts }) => ({ parts }));
}

interface OpenEvent {
  parts: (readonly Entry[])[];
  from: number;
  devices: Set<string>;
}

const deviceOf = (entry: Entry): string => writtenAs(entry.id)?.device ?? entry.id;
const pairKey = (a: string, b: string) => JSON.stringify(a < b ? [a, b] : [b, a]);

/** No later word wins over an earlier one. */
const saidOf = (answers: Answers | undefined): 'one' | 'two' | 'both' | undefined =>
  answers && (answers.one.length === 0 ? 'two' : answers.two.length === 0 ? 'one' : 'both');
/** What the family said about each pair. */
function answersIn(entries: readonly Entry[], struck: ReadonlySet<string>): Map<string, Answers> {
  const answers = new Map<string, Answers>();
  for (const entry of entries) {
    if (entry.kind !== 'pair' || struck.has(entry.id)) continue;
    const key = pairKey(entry.first, entry.second);
    const { one, two } = answers.get(key) ?? { one: [], two: [] };
    const also = (said: readonly string[]) => [...said, entry.id].sort();
    answers.set(key, entry.same ? { one: also(one), two } : { one, two: also(two) });
  }
  return answers;
}

/** Notes put together that the family called the same, in the order of the first of each. */
function partsOf(kept: readonly Entry[], answers: ReadonlyMap<string, Answers>): Entry[][] {
  const byId = new Map(kept.map((entry) => [entry.id, entry]));
  const leader = new Map<string, string>();
  const find = (id: string): string => {
    let top = id;
    for (let next = leader.get(top); next !== undefined; next = leader.get(top)) top = next;
    return top;
  };
  for (const [key, answer] of answers) {
    if (saidOf(answer) !== 'one') continue;
    const [a, b] = (JSON.parse(key) as [string, string]).map((id) => byId.get(id));
    // a word about two unlike notes is about nothing
    if (!a || !b || contentOf(a) !== contentOf(b)) continue;
    const [first, second] = [find(a.id), find(b.id)];
    if (first !== second) leader.set(second, first);
  }
  const parts = new Map<string, Entry[]>();
  for (const entry of kept) {
    const top = find(entry.id);
    const part = parts.get(top);
    if (part) part.push(entry);
    else parts.set(top, [entry]);
  }
  return [...parts.values()];
}

const NOT_CONTENT: ReadonlySet<string> = new Set(['id', 't', 'off', 'by', 'writtenAt']);

/** What a note says, without who, when and where; fields in a fixed order, so that every phone compares alike. */
function contentOf(entry: Entry): string {
  return JSON.stringify(
    Object.entries(entry)
      .filter(([field]) => !NOT_CONTENT.has(field))
      .map(([field, value]) => [field, inOrder(value)])
      .sort(),
  );
}

const inOrder = (value: unknown): unknown => (value instanceof Object ? Object.entries(value).sort() : value);
