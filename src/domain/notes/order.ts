/** Notes in the order in which they were written, also where a phone's clock went back in between. */
import { wentBack } from '../signs/over-time.ts';
import { instant, type Instant } from '../units.ts';
import { CLOCK_TOLERANCE, isUndated, writtenAs } from './clocks.ts';
import { byTime, type Entry } from './entries.ts';

export interface NoteOrder {
  /** No phone's clock went back or runs ahead, so far as the notes tell: their times alone are their order. */
  byTimeAlone: boolean;
  /** The latest it can have been by the clock as its phone shows it now; its own time, where no clock went back. */
  at(entry: Entry): Instant;
  /** Its phone's clock went back since: nobody knows how long ago it was. */
  wentBackSince(entry: Entry): boolean;
  /**
   * Whether `later` was written after `entry`: by one phone's own count; between two phones by their times, whichever of
   * the times that a clock showed before and after it went back was right. What one phone wrote ahead of now is after
   * nothing that another saw by now.
   */
  isAfter(later: Entry, entry: Entry): boolean;
}

interface Placed {
  device: string;
  count: number;
  entry: Entry;
  at: number;
  /** The earliest it can have been by the clock as its phone showed it before. */
  from: number;
  wentBack: boolean;
}

/**
 * In which order the notes were written. A phone numbers its notes, so of its own notes the number says it, whatever
 * its clock showed. A note ahead of a later one is drawn back to just before it, with those before it at their
 * distances; where a phone's last note lies far ahead of `now`, its clock went back since, and all are drawn back to now.
 *
 * Hand in corrected notes: what a family said about a clock comes first.
 * Units: whole universal minutes. Without `now` nothing counts as ahead of it.
 * Not: a clock that went back without any note since, or by more than the last note is old, leaves no trace in notes.
 */
export function orderOf(entries: readonly Entry[], now: Instant = instant(Infinity)): NoteOrder {
  const lines = new Map<string, Placed[]>();
  const phones = new Map<string, string>();
  for (const entry of entries) {
    const as = writtenAs(entry.id);
    if (as) phones.set(entry.id, as.device);
    // what cannot be read says nothing about a clock
    if (!as || entry.kind === 'unknown' || isUndated(entry)) continue;
    const placed = { ...as, entry, at: entry.t, from: entry.t, wentBack: false };
    const line = lines.get(as.device);
    if (line) line.push(placed);
    else lines.set(as.device, [placed]);
  }
  const moved = new Map<string, Placed>();
  let byTimeAlone = !entries.some((entry) => wentBack(entry.t, now));
  for (const line of lines.values()) {
    line.sort((a, b) => a.count - b.count || byTime(a.entry, b.entry));
    const back = line.some((one, i) => i > 0 && one.entry.t < line[i - 1]!.entry.t);
    const ahead = wentBack(line.at(-1)!.entry.t, now);
    if (!back && !ahead) continue;
    if (back) byTimeAlone = false;
    drawBack(line, ahead ? now : Infinity);
    drawOn(line);
    for (const one of line) moved.set(one.entry.id, one);
  }
  const placeOf = (entry: Entry) => moved.get(entry.id);
  const areOfOnePhone = (one: Entry, other: Entry) =>
    phones.has(one.id) && phones.get(one.id) === phones.get(other.id);
  return {
    byTimeAlone,
    at: (entry) => instant(placeOf(entry)?.at ?? entry.t),
    wentBackSince: (entry) => placeOf(entry)?.wentBack ?? false,
    isAfter(later, entry) {
      // nobody knows when it was, and a look that closed too much would hide a sign
      if (wentBack(later.t, now) && !wentBack(entry.t, now) && !areOfOnePhone(later, entry)) return false;
      const before = placeOf(entry);
      const after = placeOf(later);
      if (before && after && before.device === after.device && before.count !== after.count)
        return after.count > before.count;
      // nobody knows which of its times was right: a clock that went back was at least as far on as before that, and what
      // it wrote until then may have been no later than it shows now
      const from = before?.from ?? entry.t;
      const to = Math.min(later.t, after?.at ?? later.t);
      return to > from || (to === from && later.t === to && entry.t === from && byTime(entry, later) < 0);
    },
  };
}

/** From the last note to the first: none lies behind the one after it. */
function drawBack(line: readonly Placed[], end: number): void {
  let next = end;
  let shift = 0;
  let gap = 0;
  let unknown = false;
  for (const one of [...line].reverse()) {
    const { t } = one.entry;
    // a clock that had gone forward before it went back leaves earlier notes where they are
    if (t <= next) shift = 0;
    else if (t + shift > next) shift = next - gap - t;
    one.at = t + shift;
    unknown ||= t - one.at > CLOCK_TOLERANCE;
    one.wentBack = unknown;
    next = one.at;
    gap = 1;
  }
}

/** From the first note to the last: none lies before the one it was written after. */
function drawOn(line: readonly Placed[]): void {
  let last = -Infinity;
  let shift = 0;
  for (const one of line) {
    const { t } = one.entry;
    if (t >= last) shift = 0;
    else if (t + shift < last) shift = last - t;
    one.from = t + shift;
    last = one.from;
  }
}
