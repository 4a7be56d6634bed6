/** Phones whose clocks were wrong, or jumped. What was written stays; what it means is worked out here. */
import { instant, type Instant } from '../units.ts';
import { byTime, LAST_MINUTE, struckIds, type Entry } from './entries.ts';

/** Two clocks, or one clock at two times, may differ by so many minutes before anybody is asked about it. */
export const CLOCK_TOLERANCE = 5;

/** A note whose time was corrected keeps the time its phone wrote. */
export type CorrectedEntry = Entry & { writtenAt?: Instant };

/** The phone that wrote a note, and its number among that phone's notes; a damaged note has none. */
export function writtenAs(id: string): { device: string; count: number } | undefined {
  const [, device, digits] = /^(.+)-(\d{1,15})$/.exec(id) ?? [];
  return device === undefined ? undefined : { device, count: Number(digits) };
}

/** A note without a time sits at the very first minute of 1970. */
export const isUndated = (entry: Entry): boolean => entry.t === 0;

/**
 * The notes with every "this phone's clock was wrong" applied, earliest first.
 *
 * A correction covers what its phone wrote up to note number `upTo`, back to the correction before it: with one up to
 * note 10 and one up to note 30, note 5 follows the first, note 20 the second. Of two for the same phone and the same
 * number the later one counts (`byTime` of the times as written), so both phones decide alike. A struck correction
 * corrects nothing. A note without a time stays without one.
 *
 * Shape: the stored notes are left as they are; a moved note holds its own time as `writtenAt`, so correcting twice is
 * correcting once.
 * Units: whole universal minutes.
 */
export function correctedNotes(entries: readonly CorrectedEntry[]): CorrectedEntry[] {
  const written = entries.map(asWritten).sort(byTime);
  const struck = struckIds(written);
  const byDevice = new Map<string, Map<number, number>>();
  for (const entry of written) {
    if (entry.kind !== 'clock' || struck.has(entry.id)) continue;
    const ranges = byDevice.get(entry.device) ?? new Map<number, number>();
    byDevice.set(entry.device, ranges.set(entry.upTo, entry.minutes));
  }
  if (byDevice.size === 0) return written;

  const ends = new Map([...byDevice].map(([device, ranges]) => [device, [...ranges.keys()].sort(ascending)]));
  return written
    .map((entry): CorrectedEntry => {
      const as = writtenAs(entry.id);
      const upTo = as && ends.get(as.device)?.find((end) => end >= as.count);
      const shift = upTo === undefined ? 0 : (byDevice.get(as!.device)!.get(upTo) ?? 0);
      const t = instant(entry.t + shift);
      // a correction beyond every calendar is a slip of somebody's finger, or a stranger's
      if (shift === 0 || isUndated(entry) || Math.abs(t) > LAST_MINUTE) return entry;
      return { ...entry, t, writtenAt: entry.t };
    })
    .sort(byTime);
}

const ascending = (a: number, b: number) => a - b;

function asWritten(entry: CorrectedEntry): CorrectedEntry {
  if (entry.writtenAt === undefined) return entry;
  const { writtenAt, ...rest } = entry;
  return { ...rest, t: writtenAt } as CorrectedEntry;
}

export interface ClockJump {
  device: string;
  /** The last note before the clock went back, and the first after it. */
  before: string;
  after: string;
  /** By how much at least the clock went back. */
  minutes: number;
}

/**
 * Where a phone's clock went back: a note that the phone wrote later bears a time more than five minutes earlier.
 * Hand in corrected notes to see what a correction left unanswered.
 * Not: a clock that went forward cannot be told from time that passed.
 */
export function jumpsOf(entries: readonly Entry[]): ClockJump[] {
  const byDevice = new Map<string, { count: number; entry: Entry }[]>();
  for (const entry of entries) {
    const as = writtenAs(entry.id);
    if (!as || entry.kind === 'unknown' || isUndated(entry)) continue;
    const line = byDevice.get(as.device);
    if (line) line.push({ count: as.count, entry });
    else byDevice.set(as.device, [{ count: as.count, entry }]);
  }
  const jumps: ClockJump[] = [];
  for (const [device, line] of [...byDevice].sort(([a], [b]) => (a < b ? -1 : 1))) {
    line.sort((a, b) => a.count - b.count || byTime(a.entry, b.entry));
    // several small steps back are one jump; after a jump the new time is the one to measure by
    let latest: Entry | undefined;
    for (const { entry } of line) {
      const back = latest ? latest.t - entry.t : 0;
      if (latest && back > CLOCK_TOLERANCE)
        jumps.push({ device, before: latest.id, after: entry.id, minutes: back });
      if (!latest || back <= 0 || back > CLOCK_TOLERANCE) latest = entry;
    }
  }
  return jumps;
}
