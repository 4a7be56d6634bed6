/**
 * Squeezes notes: each yes-or-no question about a note costs as little as it surprises. What a family writes
 * again and again becomes cheap after a few times, and nothing about it has to be known before.
 *
 * One `Coder` interface stands for both directions: whoever describes a note writes the description once, and
 * the same lines write it and read it. A writer cannot drift from its reader.
 *
 * Source: binary arithmetic coding with adaptive probabilities (Rissanen and Langdon 1979; the estimate of
 * Krichevsky and Trofimov 1981), in the carry-less form with two 32-bit bounds. From memory; the tests hold it
 * against the entropy of what is coded.
 */

/** Thrown by a reader whose bytes cannot have come from the writer. Never leaves domain/notes. */
export class Damaged extends Error {}

/** What was learned so far about one group of questions. */
interface Odds {
  /** Chance of a yes, in 65536ths. */
  yes: Uint16Array;
  /** How often each was asked, up to where it stops learning faster. */
  asked: Uint8Array;
}

export interface Coder {
  /** One yes or no, among the odds called `about`. */
  flag(about: string, wanted: boolean): boolean;
  /** A whole number from 0 to 2^bits − 1. */
  choice(about: string, bits: number, wanted: number): number;
  /** A whole number from 0 to 2^53 − 2; small and frequent ones are cheap. */
  count(about: string, wanted: number): number;
  /** A whole number on both sides of zero, to ±2^52. */
  shift(about: string, wanted: number): number;
  /** Text of any writing, unpaired halves included. */
  text(about: string, wanted: string): string;
}

const ONE = 65536;
/** After so many times the odds still move, but slowly. */
const SLOWEST = 200;
/** Longer than any note; a reader stops there before it fills the phone. */
const LONGEST_TEXT = 1 << 20;
/** All texts a writer takes: a phone would stand still over more, and no moving code would hold it. */
const MOST_WRITTEN = 1 << 18;

abstract class Bits implements Coder {
  /** Codes one bit whose chance of being 1 is `yes` in 65536. */
  protected abstract bit(yes: number, wanted: number): number;

  private readonly groups = new Map<string, Odds>();
  protected textLeft = LONGEST_TEXT * 4;

  private odds(about: string, size: number): Odds {
    let found = this.groups.get(about);
    if (!found) {
      found = { yes: new Uint16Array(size).fill(ONE / 2), asked: new Uint8Array(size) };
      this.groups.set(about, found);
    }
    return found;
  }

  private learned(odds: Odds, at: number, wanted: number): number {
    const yes = odds.yes[at]!;
    const asked = odds.asked[at]!;
    const got = this.bit(yes, wanted);
    // a step is cut to a whole number, so the odds come to rest 158 before certainty, and the other answer can be told
    odds.yes[at] = yes + Math.trunc(((got ? ONE : 0) - yes) / (asked + 1.6));
    if (asked < SLOWEST) odds.asked[at] = asked + 1;
    return got;
  }

  flag(about: string, wanted: boolean): boolean {
    return this.learned(this.odds(about, 1), 0, wanted ? 1 : 0) === 1;
  }

  choice(about: string, bits: number, wanted: number): number {
    const odds = this.odds(about, 1 << bits);
    // the bits above lead to the odds of the next one, as on a tree
    let path = 1;
    for (let bit = bits - 1; bit >= 0; bit--)
      path = path * 2 + this.learned(odds, path, Math.floor(wanted / 2 ** bit) % 2);
    return path - (1 << bits);
  }

  count(about: string, wanted: number): number {
    // how long the number is, then its bits from the top; only the first three are worth learning
    let length = 0;
    while (wanted + 1 >= 2 ** (length + 1)) length++;
    length = this.choice(about, 6, length);
    if (length > 52) throw new Damaged('a number beyond counting');
    const odds = length ? this.odds(`${about} ${length}`, 8) : undefined;
    let value = 1;
    for (let bit = length - 1; bit >= 0; bit--) {
      const next = Math.floor((wanted + 1) / 2 ** bit) % 2;
      value = value * 2 + (odds && value < 8 ? this.learned(odds, value, next) : this.bit(ONE / 2, next));
    }
    return value - 1;
  }

  shift(about: string, wanted: number): number {
    const folded = this.count(about, wanted < 0 ? -2 * wanted - 1 : 2 * wanted);
    return folded % 2 ? -(folded + 1) / 2 : folded / 2;
  }

  text(about: string, wanted: string): string {
    const length = this.count(`${about} length`, wanted.length);
    this.textLeft -= length;
    if (length > LONGEST_TEXT || this.textLeft < 0) throw new Damaged('a text beyond every note');
    const parts: string[] = [];
    let before = 0;
    let page = 0;
    for (let i = 0; i < length; i++) {
      // a reader has no text yet: what is no number counts as none
      const unit = wanted.charCodeAt(i);
      // a writing system stays on its page of 256 signs
      page = this.choice(`${about} page ${page}`, 8, unit >>> 8);
      before = this.choice(`${about} ${page} ${before >>> 5}`, 8, unit & 0xff);
      parts.push(String.fromCharCode(page * 256 + before));
    }
    return parts.join('');
  }
}

/** Writes: give it everything, then take the bytes. Errors: throws `Damaged` for more text than any transfer holds. */
export class Writer extends Bits {
  protected override textLeft = MOST_WRITTEN;
  private low = 0;
  private high = 0xffffffff;
  private readonly out: number[] = [];

  protected bit(yes: number, wanted: number): number {
    const middle = this.low + Math.floor(((this.high - this.low) * yes) / ONE);
    if (wanted) this.high = middle;
    else this.low = middle + 1;
    // a leading byte that both bounds share is settled
    while (this.low >>> 24 === this.high >>> 24) {
      this.out.push(this.high >>> 24);
      this.low = (this.low << 8) >>> 0;
      this.high = ((this.high << 8) | 0xff) >>> 0;
    }
    return wanted;
  }

  /** The bytes; a reader takes zeros after the last. */
  bytes(): Uint8Array {
    return Uint8Array.from(this.low === 0 ? this.out : [...this.out, (this.low >>> 24) + 1]);
  }
}

/** Reads what a `Writer` wrote. Errors: throws `Damaged`, or goes on with nonsense that a check sum must find. */
export class Reader extends Bits {
  private low = 0;
  private high = 0xffffffff;
  private seen: number;
  private at = 4;
  private readonly from: Uint8Array;

  constructor(from: Uint8Array) {
    super();
    this.from = from;
    this.seen = [0, 1, 2, 3].reduce((sum, i) => sum * 256 + (from[i] ?? 0), 0);
  }

  protected bit(yes: number): number {
    const middle = this.low + Math.floor(((this.high - this.low) * yes) / ONE);
    const got = this.seen <= middle ? 1 : 0;
    if (got) this.high = middle;
    else this.low = middle + 1;
    while (this.low >>> 24 === this.high >>> 24) {
      // far behind the end nothing was written, whatever the bounds say
      if (this.at >= this.from.length + 4) throw new Damaged('the end came too soon');
      this.low = (this.low << 8) >>> 0;
      this.high = ((this.high << 8) | 0xff) >>> 0;
      this.seen = ((this.seen << 8) | (this.from[this.at++] ?? 0)) >>> 0;
    }
    return got;
  }

  /** Whether exactly what was written has been read. */
  atEnd(): boolean {
    return this.from.length === this.at - 4 + (this.low === 0 ? 0 : 1);
  }
}
