/**
 * One phone shows moving codes, the other films them. Frames may be missed, seen twice, in any order, or spoilt:
 * what arrives is whole or nothing.
 *
 * The first frames hold the pieces one after the other. Every later one is several pieces laid over each other (by
 * exclusive or), a different set each time, so that any frame helps whatever was missed. Which set is told by the
 * frame's number alone.
 *
 * Frame: 0xB8, version, transfer (3, from the check sum of the whole), length of the whole (3), number (3), the piece,
 * check sum of all that (4). As text in the 45 characters that a code's alphanumeric form has: every reader of codes gives
 * text back unchanged, but not every one bytes.
 * Source: RFC 9285 (base 45), from memory, its own examples in the tests; random linear codes over one bit.
 */
import { checkSum } from './check-sum.ts';

const OURS = 0xb8;
const VERSION = 1;
const HEAD = 11;
const TAIL = 4;
const LAST_NUMBER = 0xffffff;
/** More than twenty thousand notes; a stranger's frame cannot make a phone hold more. */
export const LARGEST_TRANSFER = 64 * 1024;
/**
 * Bytes of one frame. A code of version 10 at medium correction holds 311 characters of the alphanumeric form
 * (ISO/IEC 18004, table of capacities, from memory; the tests ask the code maker), two bytes in three characters.
 */
export const FRAME_BYTES = 206;
const LEAST_PIECE = 16;

export interface FrameSequence {
  /** Frames that a lucky reader needs: one for each piece. */
  needed: number;
  /** The text of frame `n` = 0, 1, 2 …; there is no last one. */
  frame(n: number): string;
}

/**
 * The frames of one transfer.
 * Shape: `size` is the most bytes of one frame; the pieces are made equal, so the last is no rest.
 * Errors: throws a RangeError for nothing, for more than 64 KiB, and for a size that holds no piece.
 * @example framesOf(packNotes(entries)).frame(0)
 */
export function framesOf(bytes: Uint8Array, { size = FRAME_BYTES }: { size?: number } = {}): FrameSequence {
  if (bytes.length === 0 || bytes.length > LARGEST_TRANSFER)
    throw new RangeError(`domain/notes/frames › bytes: 1 to ${LARGEST_TRANSFER}, saw ${bytes.length}`);
  const most = size - HEAD - TAIL;
  if (!Number.isInteger(size) || most < LEAST_PIECE)
    throw new RangeError(`domain/notes/frames › size: at least ${HEAD + TAIL + LEAST_PIECE}, saw ${size}`);
  const needed = Math.ceil(bytes.length / most);
  const length = Math.ceil(bytes.length / needed);
  const transfer = checkSum(bytes) >>> 8;
  const piece = (i: number) => bytes.subarray(i * length, (i + 1) * length);
  return {
    needed,
    frame(n) {
      const number = n % (LAST_NUMBER + 1);
      const frame = new Uint8Array(HEAD + length + TAIL);
      frame.set([OURS, VERSION, ...three(transfer), ...three(bytes.length), ...three(number)]);
      const body = frame.subarray(HEAD, HEAD + length);
      for (const i of piecesIn(number, needed)) lay(body, piece(i));
      new DataView(frame.buffer).setUint32(HEAD + length, checkSum(frame.subarray(0, HEAD + length)));
      return charactersOf(frame);
    },
  };
}

export type Taken =
  /** Counted. `whole` is there once and stays; until then nothing of it may be used. */
  | { ok: true; got: number; needed: number; whole?: Uint8Array }
  | {
      ok: false;
      /** `foreign`: a code of something else. `too-new`: a later version shows it. */
      reason: 'foreign' | 'damaged' | 'too-new';
    };

export interface Collector {
  /** Takes the text of one code, whatever it is. */
  take(text: string): Taken;
}

/** Frames of so many transfers are kept apart at once: the other phone may have begun anew. */
const KEPT_TRANSFERS = 3;

/**
 * Collects frames until a transfer is whole.
 * Shape: `got` never shrinks within a transfer and reaches `needed` exactly when `whole` is there.
 * Errors: none thrown, whatever is filmed; a transfer whose whole is not what it says is dropped and begins anew.
 * @example const collector = frameCollector(); collector.take(text)
 */
export function frameCollector(): Collector {
  const transfers = new Map<string, Pieces>();
  return {
    take(text) {
      const frame = bytesOfCharacters(text);
      if (!frame || frame.length <= HEAD + TAIL || frame[0] !== OURS) return { ok: false, reason: 'foreign' };
      const view = new DataView(frame.buffer, frame.byteOffset, frame.byteLength);
      const end = frame.length - TAIL;
      if (view.getUint32(end) !== checkSum(frame.subarray(0, end))) return { ok: false, reason: 'damaged' };
      if (frame[1] !== VERSION) return { ok: false, reason: 'too-new' };
      const [transfer, length, number] = [2, 5, 8].map((at) => view.getUint32(at - 1) & 0xffffff) as [
        number,
        number,
        number,
      ];
      const size = end - HEAD;
      // a tiny piece of a large whole would be thousands of frames: nobody shows that
      const odd = size < length && size < LEAST_PIECE / 2;
      if (length === 0 || length > LARGEST_TRANSFER || odd) return { ok: false, reason: 'damaged' };
      const name = `${transfer} ${length} ${size}`;
      const pieces = transfers.get(name) ?? new Pieces(length, size, transfer);
      // the one seen last stands last; the one not seen for longest makes room
      transfers.delete(name);
      transfers.set(name, pieces);
      for (const old of [...transfers.keys()].slice(0, -KEPT_TRANSFERS)) transfers.delete(old);
      pieces.take(number, frame.subarray(HEAD, end));
      if (pieces.got < pieces.needed) return { ok: true, got: pieces.got, needed: pieces.needed };
      const whole = pieces.whole();
      if (whole) return { ok: true, got: pieces.got, needed: pieces.needed, whole };
      transfers.delete(name);
      return { ok: false, reason: 'damaged' };
    },
  };
}

/**
 * Pieces of one transfer, each as far solved as it can be: a row of the table is a set of pieces laid over each
 * other, and no two rows begin with the same piece (Gauss's elimination, one row at a time).
 */
class Pieces {
  readonly needed: number;
  got = 0;
  private readonly rows: { set: Uint32Array; body: Uint8Array }[] = [];
  private readonly length: number;
  private readonly transfer: number;
  private done: Uint8Array | undefined;

  constructor(length: number, size: number, transfer: number) {
    this.length = length;
    this.transfer = transfer;
    this.needed = Math.ceil(length / size);
  }

  /** Takes the pieces of a frame; `body` is its own from here on. */
  take(number: number, body: Uint8Array): void {
    if (this.got === this.needed) return;
    const set = new Uint32Array(Math.ceil(this.needed / 32));
    for (const i of piecesIn(number, this.needed)) set[i >>> 5]! ^= 1 << (i & 31);
    for (let i = 0; i < this.needed; i++) {
      if (!has(set, i)) continue;
      const row = this.rows[i];
      if (!row) {
        this.rows[i] = { set, body };
        this.got++;
        return;
      }
      for (let word = 0; word < set.length; word++) set[word]! ^= row.set[word]!;
      lay(body, row.body);
    }
  }

  /** The whole, if it is what its frames say; only when as many were got as needed. */
  whole(): Uint8Array | undefined {
    if (this.done) return this.done;
    const { rows } = this;
    // from the last: each row then holds its own piece alone
    for (let i = this.needed - 1; i >= 0; i--)
      for (let later = i + 1; later < this.needed; later++)
        if (has(rows[i]!.set, later)) lay(rows[i]!.body, rows[later]!.body);
    const size = rows[0]!.body.length;
    const whole = new Uint8Array(size * this.needed);
    rows.forEach((row, i) => whole.set(row.body, i * size));
    const bytes = whole.slice(0, this.length);
    if (checkSum(bytes) >>> 8 !== this.transfer) return undefined;
    return (this.done = bytes);
  }
}

const has = (set: Uint32Array, i: number) => ((set[i >>> 5]! >>> (i & 31)) & 1) === 1;
const three = (value: number) => [(value >>> 16) & 0xff, (value >>> 8) & 0xff, value & 0xff];
/** Lays one piece over another; laid over once more it is gone again. */
function lay(onto: Uint8Array, piece: Uint8Array): void {
  for (let i = 0; i < piece.length; i++) onto[i]! ^= piece[i]!;
}

/** Which pieces frame `number` is made of: one of the first, or about half of all. Never none. */
function piecesIn(number: number, needed: number): number[] {
  if (number < needed) return [number];
  const start = mixed(number);
  const pieces: number[] = [];
  for (let i = 0; i < needed; i++) if (mixed(start + i) & 1) pieces.push(i);
  return pieces.length ? pieces : [number % needed];
}

/** Any mixing of bits does, but it must stay this one for ever: both phones count on it. */
function mixed(value: number): number {
  let bits = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}

const CHARACTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const VALUES = new Map([...CHARACTERS].map((character, value) => [character, value]));

/**
 * Bytes as the 45 characters of a code's alphanumeric form: two bytes in three characters, a last one in two.
 * @example charactersOf(new Uint8Array([65, 66])) // 'BB8'
 */
export function charactersOf(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const pair = i + 1 < bytes.length;
    const value = pair ? bytes[i]! * 256 + bytes[i + 1]! : bytes[i]!;
    text += CHARACTERS[value % 45]! + CHARACTERS[Math.floor(value / 45) % 45]!;
    if (pair) text += CHARACTERS[Math.floor(value / 2025)]!;
  }
  return text;
}

/** Back to bytes; nothing where it cannot have come from `charactersOf`. */
export function bytesOfCharacters(text: string): Uint8Array | undefined {
  // no code holds more than 4296 characters
  if (text.length % 3 === 1 || text.length > 4296) return undefined;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const values = [...text.slice(i, i + 3)].map((character) => VALUES.get(character) ?? NaN);
    const value = values.reduce((sum, digit, place) => sum + digit * 45 ** place, 0);
    if (!(value <= (values.length === 3 ? 0xffff : 0xff))) return undefined;
    if (values.length === 3) bytes.push(value >>> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}
