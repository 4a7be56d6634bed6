/** Notes as they are kept: a grow-only set of coded entries. Corrections are entries, too. */
import { instant, type Instant, minutes, type Minutes } from '../units.ts';
import type { Answer } from '../signs/types.ts';
import {
  CHOICES,
  isTwoWordKind,
  MARKS,
  NOT_SAID,
  WRITERS,
  type ChoiceKind,
  type MarkKind,
  type TwoWordKind,
  type Writer,
} from './kinds.ts';
import { jsonOf } from './plain.ts';

interface Common {
  /** Device (24 random bits, hex) and its own counter: `a1b2c3-17`. */
  id: string;
  /** Whole universal minutes. */
  t: Instant;
  /** Local time minus universal time when it was written, in minutes. */
  off: Minutes;
  by?: Writer;
}

/** A kind whose content is chosen words, one for each of its fields. */
type Chosen = {
  [K in ChoiceKind]: { kind: K } & {
    -readonly [F in keyof (typeof CHOICES)[K]]: (typeof CHOICES)[K][F] extends readonly (infer V)[]
      ? V | (K extends TwoWordKind ? typeof NOT_SAID : never)
      : never;
  } & (K extends 'answer' ? { question: string } : unknown);
}[ChoiceKind];

export type Entry = Common &
  (
    | {
        kind: 'sign';
        sign: string;
        answer: Extract<Answer, 'different' | 'not-sure'>;
        details?: readonly string[];
      }
    | { kind: 'look'; answers: Readonly<Record<string, Answer>> }
    | { [K in MarkKind]: { kind: K } }[MarkKind]
    /** 0–10 in numbers; 0–3 on the four steps none, a little, more, a lot. */
    | { kind: 'sore'; value: number; scale: 'numbers' | 'steps'; when: 'rest' | 'moving' }
    | Chosen
    /** An idea of Things to do that was tried: its id, and whether it shall come again. */
    | { kind: 'play'; idea: string; again: boolean }
    /** For the round: one of QUESTIONS, or the family's own words, which are quoted and never calculated with. */
    | { kind: 'question'; ask: string }
    | {
        kind: 'question';
        own: string;
        /** The language of the page on which they were written, as a language tag. */
        in?: string;
      }
    | { kind: 'strike'; strikes: string }
    /** Two notes of two phones that look like one event: the family says whether they are. */
    | { kind: 'pair'; first: string; second: string; same: boolean }
    /** A clock that was wrong: minutes to add to what this device wrote up to its note number `upTo`. */
    | { kind: 'clock'; device: string; upTo: number; minutes: number }
    /** Something a later or foreign version wrote, or a damaged entry: kept as it is and shown as unknown. */
    | { kind: 'unknown'; raw: unknown }
  );

export type EntryKind = Entry['kind'];
/** What is new about an entry; id and times are added when it is written. */
export type NewEntry = Entry extends infer E
  ? E extends Common
    ? Omit<E, 'id' | 't' | 'off'>
    : never
  : never;

const ANSWERS: readonly string[] = ['not-looked', 'like-usual', 'not-sure', 'different'];
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value.length > 0 && value.length <= 80;
/** Calendars end 144 thousand million minutes from 1970; a year is left for offsets. */
export const LAST_MINUTE = 8.64e15 / 60_000 - 527_040;
const isMoment = (value: unknown): value is number =>
  typeof value === 'number' && Math.abs(value) <= LAST_MINUTE;

/** A damaged note has no id of its own; one made of what was seen keeps two of them apart on every device. */
function idOfDamaged(value: unknown): string {
  let seen: string;
  try {
    seen = JSON.stringify(value) ?? String(value);
  } catch {
    seen = 'beyond words';
  }
  let sum = 0x811c9dc5;
  for (let i = 0; i < seen.length; i++) sum = Math.imul(sum ^ seen.charCodeAt(i), 0x01000193) >>> 0;
  return `unknown-${sum}`;
}

/**
 * Reads one stored value back.
 * Errors: none; what cannot be read becomes an `unknown` entry with what was seen, so nothing is dropped.
 */
export function parseEntry(value: unknown): Entry {
  const row = isRecord(value) ? value : {};
  const by = WRITERS.find((writer) => writer === row.by);
  const common = {
    id: isText(row.id) ? row.id : idOfDamaged(value),
    t: instant(isMoment(row.t) ? row.t : 0),
    off: minutes(typeof row.off === 'number' && Math.abs(row.off) <= 16 * 60 ? row.off : 0),
    ...(by && { by }),
  };
  const whole = isText(row.id) && isMoment(row.t);
  if (!whole) return { ...common, kind: 'unknown', raw: value };
  switch (row.kind) {
    case 'sign': {
      if (!isText(row.sign)) break;
      // a sub-answer that cannot be read is one we do not know, and counts as such
      const listed: unknown[] = Array.isArray(row.details) ? row.details : [row.details ?? []].flat();
      const details = listed.map((detail) => (isText(detail) ? detail : 'unknown'));
      // an answer word we do not know is read as the more urgent one
      const answer = row.answer === 'not-sure' ? 'not-sure' : 'different';
      return details.length
        ? { ...common, kind: 'sign', sign: row.sign, answer, details }
        : { ...common, kind: 'sign', sign: row.sign, answer };
    }
    case 'look': {
      if (!isRecord(row.answers)) break;
      const answers: Record<string, Answer> = Object.create(null);
      for (const [sign, answer] of Object.entries(row.answers))
        answers[sign] = ANSWERS.includes(answer as string) ? (answer as Answer) : 'not-sure';
      return { ...common, kind: 'look', answers: { ...answers } };
    }
    case 'sore': {
      const { value, scale, when } = row;
      if ((scale !== 'numbers' && scale !== 'steps') || (when !== 'rest' && when !== 'moving')) break;
      if (!Number.isInteger(value) || !within(value as number, 0, scale === 'numbers' ? 10 : 3)) break;
      return { ...common, kind: 'sore', value: value as number, scale, when };
    }
    case 'play':
      if (isText(row.idea) && typeof row.again === 'boolean')
        return { ...common, kind: 'play', idea: row.idea, again: row.again };
      break;
    case 'question':
      if (isText(row.ask)) return { ...common, kind: 'question', ask: row.ask };
      if (isOwnWords(row.own))
        return {
          ...common,
          kind: 'question',
          own: row.own,
          ...(isLanguageTag(row.in) && { in: row.in }),
        };
      break;
    case 'strike':
      if (isText(row.strikes)) return { ...common, kind: 'strike', strikes: row.strikes };
      break;
    case 'pair':
      if (isText(row.first) && isText(row.second) && typeof row.same === 'boolean')
        return { ...common, kind: 'pair', first: row.first, second: row.second, same: row.same };
      break;
    case 'clock': {
      const { device, upTo, minutes: shift } = row;
      if (!isText(device) || !Number.isSafeInteger(upTo) || (upTo as number) < 0) break;
      if (!Number.isSafeInteger(shift) || !within(shift as number, -LAST_MINUTE, LAST_MINUTE)) break;
      return { ...common, kind: 'clock', device, upTo: upTo as number, minutes: shift as number };
    }
    case 'unknown':
      return { ...common, kind: 'unknown', raw: row.raw };
  }
  const mark = MARKS.find((kind) => kind === row.kind);
  if (mark) return { ...common, kind: mark };
  const chosen = parseChosen(row);
  if (chosen) return { ...common, ...chosen };
  return { ...common, kind: 'unknown', raw: value };
}

const within = (value: number, low: number, high: number) => value >= low && value <= high;
/** As long as a question a family would put to a doctor, and no longer: it must fit a code and a page. */
export const OWN_WORDS_LENGTH = 140;
const isOwnWords = (value: unknown): value is string =>
  typeof value === 'string' && value.trim().length > 0 && value.length <= OWN_WORDS_LENGTH;

/** As in BCP 47: a language, perhaps with its script or region. */
const isLanguageTag = (value: unknown): value is string =>
  typeof value === 'string' && /^[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,2}$/.test(value);

/** A kind of chosen words, where every field holds a word this version knows. */
function parseChosen(row: Record<string, unknown>): Chosen | undefined {
  const kind = row.kind as ChoiceKind;
  if (typeof kind !== 'string' || !Object.hasOwn(CHOICES, kind)) return undefined;
  const read: Record<string, unknown> = { kind };
  for (const [field, allowed] of Object.entries<readonly string[]>(CHOICES[kind])) {
    const unsaid = row[field] === NOT_SAID && isTwoWordKind(kind);
    if (!unsaid && !allowed.includes(row[field] as string)) return undefined;
    read[field] = row[field];
  }
  if (kind === 'answer') {
    if (!isText(row.question)) return undefined;
    read.question = row.question;
  }
  return read as Chosen;
}

/** Earlier first; within a minute, by device and its counter, so that every device sorts alike. */
export function byTime(a: Entry, b: Entry): number {
  if (a.t !== b.t) return a.t - b.t;
  const [deviceA, countA] = splitId(a.id);
  const [deviceB, countB] = splitId(b.id);
  if (deviceA !== deviceB) return deviceA < deviceB ? -1 : 1;
  if (countA !== countB) return countA - countB;
  return a.id === b.id ? 0 : a.id < b.id ? -1 : 1;
}

function splitId(id: string): [string, number] {
  const dash = id.lastIndexOf('-');
  const count = Number(id.slice(dash + 1));
  return [id.slice(0, dash), Number.isSafeInteger(count) ? count : 0];
}

/**
 * Two sets of notes as one: a union by id, then a sort. Any order, any repetition, the same notes.
 * Shape: sorted as `byTime` does; each id once.
 * Errors: none. One id with two contents is a fault of a device; the same one of them stays on every phone.
 * @example mergeNotes([one], [one, two]) // [one, two]
 */
export function mergeNotes(a: readonly Entry[], b: readonly Entry[]): Entry[] {
  const byId = new Map<string, Entry>();
  for (const entries of [a, b])
    for (const entry of entries) {
      const known = byId.get(entry.id);
      if (!known || (!sameAtSight(entry, known) && (jsonOf(entry) ?? '') < (jsonOf(known) ?? '')))
        byId.set(entry.id, entry);
    }
  return [...byId.values()].sort(byTime);
}

/** Two phones share most of their notes, and telling each in JSON would take longer than all the rest of a merge. */
function sameAtSight(a: Entry, b: Entry): boolean {
  if (a === b) return true;
  const one = a as unknown as Readonly<Record<string, unknown>>;
  const other = b as unknown as Readonly<Record<string, unknown>>;
  let fields = 0;
  for (const field in one) {
    if (one[field] !== other[field]) return false;
    fields++;
  }
  for (const _field in other) fields--;
  return fields === 0;
}

/** Ids that a later entry has struck. */
export const struckIds = (entries: readonly Entry[]): Set<string> =>
  new Set(entries.flatMap((entry) => (entry.kind === 'strike' ? [entry.strikes] : [])));
