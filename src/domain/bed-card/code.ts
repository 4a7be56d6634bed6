/** The hand-over from the ward's screen to the family's phone: one text for a link, a printed code and for typing. */
import type { BedCard } from './card.ts';
import {
  checkOf,
  CHECK,
  GROUP,
  isWhole,
  lettersOf,
  MOST_LETTERS,
  placeOfSlip,
  STRANGE,
  written,
} from './letters.ts';
import { faultsOf, handedOver, missingFrom, type Fault } from './limits.ts';
import { letterCountOf, pack, unpack, VERSION } from './version-1.ts';

/** What came of reading a code. Nothing of a code that was not read whole is ever handed on. */
export type Decoded =
  | { ok: true; card: BedCard }
  | {
      ok: false;
      reason: 'damaged' | 'foreign' | 'too-new' | 'incomplete';
      /** The group, counted from 1, where a letter is wrong or the typing ends, as far as that can be told. */
      where?: number;
    };

const ruleOf = (fault: Fault) =>
  'allowed' in fault ? `one of ${fault.allowed.join('|')}` : `from ${fault.low} to ${fault.high}`;

/**
 * Writes what the nurse set up as a short code that holds nothing about who the child is.
 * Shape: six to eight groups of four letters, joined by dashes; the first letter is the version, the last group the
 * check. At most 39 letters and dashes, which a printed code holds in its smallest alphabet.
 * Units: times in quarter hours, see `handedOver`; up to 63 hours and 45 minutes after `madeAt`.
 * Errors: throws where a field is missing or outside its limits, with the place, the rule and what was seen.
 * @example encodeBedCard(card) // '10A6-…-…-…-…-…'
 */
export function encodeBedCard(card: BedCard): string {
  const missing = missingFrom(card);
  if (missing.length) throw new Error(`bed-card › ${missing[0]}: a value, saw nothing`);
  const [fault] = faultsOf(card);
  if (fault)
    throw new Error(`bed-card › ${fault.field}: ${ruleOf(fault)}, saw ${JSON.stringify(fault.seen)}`);
  const content = pack(handedOver(card));
  return written([...content, ...checkOf(content)]);
}

/** Longer texts are not looked into. */
const MOST_TEXT = 400;
const FIRST_DIGITS = 9;

/**
 * Reads a code that was scanned, followed as a link or typed by hand; it says why where it cannot.
 * Shape: case, width, spaces and dashes do not matter; o, i, l and u are read as 0, 1, 1 and v; Arabic digits, too.
 * Errors: `incomplete` where letters are missing at the end, `damaged` where letters are wrong, `too-new` where a
 * later version wrote it, `foreign` where it is not one of our codes. A code with one to four wrong letters, or with
 * two letters in each other's place, is never read as another card.
 * Not: whether the card still holds; see `stillHolds`.
 * @example decodeBedCard('') // { ok: false, reason: 'incomplete', where: 1 }
 */
export function decodeBedCard(text: string): Decoded {
  if (text.length > MOST_TEXT) return { ok: false, reason: 'foreign' };
  const letters = lettersOf(text);
  const { length } = letters;
  const group = (place: number) => Math.floor(place / GROUP) + 1;
  if (length === 0) return { ok: false, reason: 'incomplete', where: 1 };
  const [version, shape = 0] = letters as [number, number | undefined];

  const strange = letters.filter((letter) => letter === STRANGE).length;
  if (strange) {
    // one slip in letters that otherwise look like a code, or a text that has nothing to do with one
    const few = strange * 2 * GROUP <= length && length <= MOST_LETTERS;
    const begun = version === STRANGE ? length >= letterCountOf(0) : version > 0 && version <= FIRST_DIGITS;
    if (!few || !begun) return { ok: false, reason: 'foreign' };
    return { ok: false, reason: 'damaged', where: group(letters.indexOf(STRANGE)) };
  }

  const whole = length % GROUP === 0 && length > CHECK && length <= MOST_LETTERS;
  if (whole && isWhole(letters)) {
    if (version > VERSION) return { ok: false, reason: 'too-new' };
    const card = version === VERSION ? unpack(letters.slice(0, -CHECK)) : 'damaged';
    return typeof card === 'string' ? { ok: false, reason: card } : { ok: true, card };
  }
  const slip = whole ? placeOfSlip(letters) : undefined;
  if (slip !== undefined) return { ok: false, reason: 'damaged', where: group(slip) };
  // a later version's letters begin with its number; words and addresses seldom do
  if (version === 0 || version > FIRST_DIGITS) return { ok: false, reason: 'foreign' };
  if (version === VERSION && length < letterCountOf(shape))
    return { ok: false, reason: 'incomplete', where: group(length) };
  return { ok: false, reason: 'damaged' };
}
