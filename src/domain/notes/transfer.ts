/** What one phone hands to another: its notes, its name, and what its clock showed, so that two clocks can be compared. */
import { instant, type Instant } from '../units.ts';
import type { Entry } from './entries.ts';
import { packNotes, unpackNotes, type Unpacked } from './pack.ts';

const OURS = 0x54;
const VERSION = 1;
/** Kind, version, clock (4), device (3), its last number (4). */
const HEAD = 13;

export interface Transfer {
  entries: readonly Entry[];
  /** What the sending phone's clock showed when it began to send. */
  now: Instant;
  /** The sending phone's own name and how many notes it has written; nothing where it wrote none. */
  device: { id: string; count: number } | undefined;
}
export type ReadTransfer = { ok: true; transfer: Transfer } | Extract<Unpacked, { ok: false }>;

/**
 * Writes a transfer as bytes, for moving codes.
 * Units: the clock in whole universal minutes, from 1970 to the year 10136.
 * Errors: throws where the clock or the name of the device does not fit.
 */
export function writeTransfer({ entries, now, device }: Transfer): Uint8Array {
  if (!Number.isInteger(now) || now < 0 || now > 0xffffffff)
    throw new RangeError(`domain/notes/transfer › now: whole minutes from 0, saw ${now}`);
  const name = device?.id ?? '000000';
  if (!/^[0-9a-f]{6}$/.test(name))
    throw new RangeError(`domain/notes/transfer › device: six hex digits, saw ${name}`);
  const packed = packNotes(entries);
  const bytes = new Uint8Array(HEAD + packed.length);
  const view = new DataView(bytes.buffer);
  bytes[0] = OURS;
  bytes[1] = VERSION;
  view.setUint32(2, now);
  bytes.set(
    [0, 2, 4].map((at) => Number.parseInt(name.slice(at, at + 2), 16)),
    6,
  );
  view.setUint32(9, device ? Math.min(device.count, 0xffffffff) : 0);
  bytes.set(packed, HEAD);
  return bytes;
}

/** Reads a transfer; where any part of it cannot be read, nothing of it is handed on. */
export function readTransfer(bytes: Uint8Array): ReadTransfer {
  if (bytes.length <= HEAD || bytes[0] !== OURS) return { ok: false, reason: 'foreign' };
  if (bytes[1] !== VERSION) return { ok: false, reason: 'too-new' };
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const read = unpackNotes(bytes.slice(HEAD));
  if (!read.ok) return read;
  const id = [...bytes.slice(6, 9)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const count = view.getUint32(9);
  return {
    ok: true,
    transfer: {
      entries: read.entries,
      now: instant(view.getUint32(2)),
      device: count > 0 ? { id, count } : undefined,
    },
  };
}

/** Clocks that differ by more than this are asked about. */
export const CLOCKS_MAY_DIFFER_MINUTES = 2;

/** By how many minutes this phone's clock is ahead of the other's; nothing where they agree well enough. */
export function clocksDiffer(mine: Instant, other: Instant): number | undefined {
  const ahead = mine - other;
  return Math.abs(ahead) > CLOCKS_MAY_DIFFER_MINUTES ? ahead : undefined;
}
