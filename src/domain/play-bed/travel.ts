/** A plan travels to another phone as one text: in a link, or as a code that a camera reads. */
import { ALPHABET, lettersOf, STRANGE } from '../bed-card/letters.ts';
import { checkSum } from '../notes/check-sum.ts';
import { Damaged, Reader, Writer } from '../notes/coder.ts';
import type { PlayBed } from './bed.ts';
import { readBed } from './bed-store.ts';
import { bedTold, TooNew, type Lists } from './version-1.ts';
import { bedTold2, needsVersion2 } from './version-2.ts';
import { bedTold3, needsVersion3 } from './version-3.ts';
import { bedTold4, needsVersion4 } from './version-4.ts';

/**
 * Letters of a code: `P`, the version, the length of the content (3), the content, zeros where it is short, the check
 * sum of all that (7). All but the content stands so in every version to come, so that an old phone can say "too new".
 */
const OURS = 'P';
/** The versions that this one reads and writes, each for ever. */
const TOLD = { 1: bedTold, 2: bedTold2, 3: bedTold3, 4: bedTold4 } as const;
const VERSION = 4;
const LENGTH_AT = 2;
const LENGTH = 3;
const HEAD = LENGTH_AT + LENGTH;
const CHECK = 7;
const LETTER = 5;
/** A bed card's code is shorter than that, so a link tells by its length alone what it brings. */
const LEAST_CONTENT = 60;
/** Three times the fullest day with eight own ideas in any writing; a longer text is not looked into. */
const MOST_CONTENT = 4_000;
const MOST_TEXT = 2 * MOST_CONTENT;
/** Other texts seldom go on with a number here. */
const FIRST_DIGITS = 9;

export type DecodedPlay =
  | { ok: true; bed: PlayBed }
  | {
      ok: false;
      /** `foreign`: not a plan's code. `too-new`: a later version wrote it, or it names what this one does not know. */
      reason: 'damaged' | 'foreign' | 'too-new' | 'incomplete';
      /** What is too new, where it is damaged, or how many letters there are of how many. */
      where?: string;
    };

/** A number in so many letters, the highest first. */
const numberIn = (value: number, letters: number): string =>
  Array.from({ length: letters }, (_, n) => ALPHABET[Math.floor(value / 32 ** (letters - 1 - n)) % 32]).join(
    '',
  );
const numberOf = (letters: readonly number[]) => letters.reduce((sum, letter) => sum * 32 + letter, 0);
const checkOf = (text: string) => numberIn(checkSum(text), CHECK);

function packedInLetters(bytes: Uint8Array): string {
  let text = '';
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    for (bits += 8; bits >= LETTER; bits -= LETTER) text += ALPHABET[(held >> (bits - LETTER)) & 31];
    held &= 31;
  }
  return bits ? text + ALPHABET[(held << (LETTER - bits)) & 31] : text;
}

/** Nothing where the bits that fill the last letter are not zero. */
function unpackedFromLetters(letters: readonly number[]): Uint8Array | undefined {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (const letter of letters) {
    held = (held << LETTER) | letter;
    bits += LETTER;
    if (bits < 8) continue;
    bits -= 8;
    bytes.push((held >> bits) & 0xff);
    held &= (1 << bits) - 1;
  }
  return held === 0 && bits < LETTER ? Uint8Array.from(bytes) : undefined;
}

/**
 * Writes a bed and its plan as a code: all that another phone needs to go on planning, and no name. A bed that an older
 * version can tell is written in it, so that phones of that version read it.
 *
 * Shape: `ideaIds` and `thingIds` are lists that only grow at the end; capitals and digits, at least 72, about 250 to 400
 * for a full day.
 * Errors: throws where `readBed` finds anything to name, and for ideas and things that are not in the lists, with the
 * place and what was seen.
 *
 * @example encodePlay(bed, IDEA_ORDER, THING_ORDER) // 'P1…', with fears 'P2…', before anybody spoke of eating 'P3…',
 * with a choice left to the child 'P4…'
 */
export function encodePlay(bed: PlayBed, ideaIds: readonly string[], thingIds: readonly string[]): string {
  const { bed: whole, faults } = readBed(bed);
  const [fault] = faults;
  if (fault || !whole)
    throw new Error(`play-bed › ${fault?.where}: ${fault?.rule}, saw ${JSON.stringify(fault?.seen)}`);
  const writer = new Writer();
  const version = needsVersion4(whole) ? 4 : needsVersion3(whole) ? 3 : needsVersion2(whole) ? 2 : 1;
  TOLD[version](writer, { ideaIds, thingIds }, whole);
  const content = packedInLetters(writer.bytes());
  if (content.length > MOST_CONTENT)
    throw new Error(`play-bed › code: at most ${MOST_CONTENT} letters, saw ${content.length}`);
  const head = OURS + ALPHABET[version]! + numberIn(content.length, LENGTH);
  const text = head + content.padEnd(LEAST_CONTENT, ALPHABET[0]);
  return text + checkOf(text);
}

function contentRead(letters: readonly number[], version: keyof typeof TOLD, lists: Lists): DecodedPlay {
  const length = numberOf(letters.slice(LENGTH_AT, HEAD));
  const end = HEAD + length;
  const bytes = unpackedFromLetters(letters.slice(HEAD, end));
  if (!bytes || letters.slice(end, -CHECK).some((letter) => letter !== 0))
    return { ok: false, reason: 'damaged' };
  try {
    const reader = new Reader(bytes);
    const told = TOLD[version](reader, lists);
    if (!reader.atEnd()) return { ok: false, reason: 'damaged' };
    const { bed, faults } = readBed(told);
    return bed && !faults.length
      ? { ok: true, bed }
      : { ok: false, reason: 'damaged', where: faults[0]!.where };
  } catch (error) {
    if (error instanceof TooNew) return { ok: false, reason: 'too-new', where: error.where };
    if (error instanceof Damaged || error instanceof RangeError) return { ok: false, reason: 'damaged' };
    throw error;
  }
}

/**
 * Reads a plan's code that was scanned or followed as a link; it says why where it cannot.
 *
 * Shape: case, spaces and dashes do not matter. What is read is a bed within all limits, as `readBed` gives it, whose
 * ideas and things are in the lists.
 * Errors: `incomplete` where letters are missing at the end, `damaged` where any is wrong, `too-new` where a later
 * version wrote it or knows more ideas or things, `foreign` where it is no plan's code, a bed card's among them. Nothing
 * of a code that was not read whole is ever handed on.
 * Not: a seal. Whoever wants to can make a false code with a right sum.
 *
 * @example decodePlay('', IDEA_ORDER, THING_ORDER) // { ok: false, reason: 'incomplete', where: '0 of 72' }
 */
export function decodePlay(
  text: string,
  ideaIds: readonly string[],
  thingIds: readonly string[],
): DecodedPlay {
  if (text.length > MOST_TEXT) return { ok: false, reason: 'foreign' };
  const letters = lettersOf(text);
  const least = HEAD + LEAST_CONTENT + CHECK;
  const missing = (of: number): DecodedPlay => ({
    ok: false,
    reason: 'incomplete',
    where: `${letters.length} of ${of}`,
  });
  if (!letters.length) return missing(least);
  if (letters[0] !== ALPHABET.indexOf(OURS)) return { ok: false, reason: 'foreign' };
  const [, version = VERSION] = letters;
  const strange = letters.filter((letter) => letter === STRANGE).length;
  if (strange * 8 > letters.length) return { ok: false, reason: 'foreign' };
  const length = numberOf(letters.slice(LENGTH_AT, HEAD));
  const whole = HEAD + Math.max(LEAST_CONTENT, length) + CHECK;
  const written = letters.map((letter) => ALPHABET[letter] ?? '?').join('');
  if (letters.length === whole && !strange && written.slice(-CHECK) === checkOf(written.slice(0, -CHECK))) {
    if (version > VERSION) return { ok: false, reason: 'too-new', where: 'version' };
    return version === 1 || version === 2 || version === 3 || version === 4
      ? contentRead(letters, version, { ideaIds, thingIds })
      : { ok: false, reason: 'damaged' };
  }
  if (version < 1 || version > FIRST_DIGITS || length > MOST_CONTENT) return { ok: false, reason: 'foreign' };
  if (strange) return { ok: false, reason: 'damaged' };
  if (letters.length < HEAD) return missing(least);
  return letters.length < whole ? missing(whole) : { ok: false, reason: 'damaged' };
}
