/**
 * The last resort between two phones: no camera reads, no file goes, but one parent can read ten letters to the other,
 * even on the telephone. They hold what is still open, and no more.
 *
 * Thirty bits, the highest first: version (3), further open signs (2), first, second and third sign (6 each), the call
 * (2), hours (5); then the four check letters of `bed-card/letters.ts`, which find up to four wrong letters wherever
 * they are, and any two that changed places.
 */
import { checkOf, CHECK, lettersOf, STRANGE, written } from '../bed-card/letters.ts';
import { SIGN_IDS, WORRY_IDS } from '../signs/ids.ts';
import type { Instant } from '../units.ts';
import type { Entry } from './entries.ts';
import { openCall } from './sightings.ts';
import type { OpenSign } from './summary.ts';
import { mostUrgentFirst } from './waiting.ts';

const CALLS = ['none', 'told', 'bell'] as const;
export interface SpokenFacts {
  /** At most three signs no nurse has looked at, most urgent first. `unknown` is one that has no place in the code. */
  signs: readonly string[];
  /** How many more are open: 0–2; 3 says three or more. */
  more: number;
  /** Whether the button was pressed, or else a nurse told, since a nurse last looked. */
  call: (typeof CALLS)[number];
  /** Whole hours since the first of all open signs was seen: 0–30; 31 says 31 or more. 0 where nothing is open. */
  hours: number;
}

export type SpokenRead =
  | { ok: true; facts: SpokenFacts }
  | {
      ok: false;
      /** `incomplete`: fewer than ten letters. `foreign`: more, or letters that are none of ours. */
      reason: 'incomplete' | 'damaged' | 'foreign' | 'too-new';
    };

const VERSION = 1;
const LETTERS = 10;
const MOST_MORE = 3;
const MOST_HOURS = 31;
/** Kept apart from the check of a bed card, so that one is never taken for the other. */
const OURS = [5, 19, 2, 30];
/** Places of signs in version 1. Signs grow from below, the grown-up's own from above; no place is given twice. */
const FROM_ABOVE = 62;
const placeOf = (sign: string): number => {
  const body = SIGN_IDS.indexOf(sign as never);
  // what is in neither list is at −1 there, and has the last place: 63
  return body >= 0 ? body + 1 : FROM_ABOVE - WORRY_IDS.indexOf(sign as never);
};
const signAt = (place: number): string => SIGN_IDS[place - 1] ?? WORRY_IDS[FROM_ABOVE - place] ?? 'unknown';

/**
 * What a parent would say first of these notes: the most urgent, then the newest.
 * Shape: `waiting` as `waitingFor` gives it, so that a sign set by soreness against medicine is said, too.
 * @example spokenFacts(entries, waitingFor(summarise(entries, now, settings)), now)
 */
export function spokenFacts(
  entries: readonly Entry[],
  waiting: readonly Pick<OpenSign, 'sign' | 'urgency' | 'since' | 'lastSeen'>[],
  now: Instant,
): SpokenFacts {
  const open = mostUrgentFirst(waiting).map(({ sign }) => sign);
  const minutes = waiting.length ? now - waiting.reduce((a, { since }) => Math.min(a, since), Infinity) : 0;
  return {
    signs: open.slice(0, 3).map((sign) => signAt(placeOf(sign))),
    more: Math.min(MOST_MORE, Math.max(0, open.length - 3)),
    call: openCall(entries, 'bell', now) ? 'bell' : openCall(entries, 'told', now) ? 'told' : 'none',
    // a clock that was set back would make it less than nothing
    hours: Math.min(MOST_HOURS, Math.max(0, Math.floor(minutes / 60))),
  };
}

/**
 * Writes the ten letters.
 * Shape: `XXXX-XXXX-XX`, digits and letters without I, L, O and U. More than three signs: the first three.
 * Errors: throws where `more` or `hours` is no whole number in its range, with what was seen.
 * @example spokenCode({ signs: ['toes-cool'], more: 0, call: 'bell', hours: 2 })
 */
export function spokenCode({ signs, more, call, hours }: SpokenFacts): string {
  for (const [name, value, most] of [
    ['more', more, MOST_MORE],
    ['hours', hours, MOST_HOURS],
  ] as const)
    if (!Number.isInteger(value) || value < 0 || value > most)
      throw new RangeError(`domain/notes/spoken › ${name}: 0 to ${most}, saw ${value}`);
  const parts: (readonly [value: number, bits: number])[] = [
    [VERSION, 3],
    [more, 2],
    ...[0, 1, 2].map((i) => [signs[i] === undefined ? 0 : placeOf(signs[i]), 6] as const),
    [CALLS.indexOf(call), 2],
    [hours, 5],
  ];
  const bits = parts.reduce((all, [value, size]) => all * 2 ** size + value, 0);
  const content = [25, 20, 15, 10, 5, 0].map((shift) => Math.floor(bits / 2 ** shift) % 32);
  return written([...content, ...checkFor(content)]);
}

const checkFor = (content: readonly number[]) => checkOf(content).map((letter, i) => letter ^ OURS[i]!);

/**
 * Reads ten letters that were heard or typed.
 * Shape: case, spaces and dashes do not matter; o, i, l and u are read as 0, 1, 1 and v.
 * Errors: none thrown. Up to four wrong letters are always found; none is put right, since a guess could be believed.
 * @example readSpokenCode('') // { ok: false, reason: 'incomplete' }
 */
export function readSpokenCode(text: string): SpokenRead {
  if (text.length > 100) return { ok: false, reason: 'foreign' };
  const letters = lettersOf(text);
  if (letters.includes(STRANGE) || letters.length > LETTERS) return { ok: false, reason: 'foreign' };
  if (letters.length < LETTERS) return { ok: false, reason: 'incomplete' };
  const content = letters.slice(0, -CHECK);
  const check = checkFor(content);
  if (!letters.slice(-CHECK).every((letter, i) => letter === check[i]))
    return { ok: false, reason: 'damaged' };
  let bits = content.reduce((all, letter) => all * 32 + letter, 0);
  const last = (size: number): number => {
    const value = bits % 2 ** size;
    bits = Math.floor(bits / 2 ** size);
    return value;
  };
  const hours = last(5);
  const call = CALLS[last(2)];
  const places = [last(6), last(6), last(6)].reverse();
  const more = last(2);
  const version = last(3);
  if (version > VERSION) return { ok: false, reason: 'too-new' };
  const told = places.filter((place) => place > 0);
  // an empty place before a filled one was written by nobody
  const gap = places.slice(0, told.length).includes(0);
  if (version !== VERSION || !call || gap) return { ok: false, reason: 'damaged' };
  return { ok: true, facts: { signs: told.map(signAt), more, call, hours } };
}
