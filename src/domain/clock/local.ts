/** Local time from universal time. What a place's clocks do is handed in, never looked up here. */
import { DAY_MINUTES, instant, type Instant, type Minutes } from '../units.ts';

/** Local time minus universal time at a moment, for one place. */
export type OffsetAt = (at: Instant) => Minutes;
/** Clocks change at most once within so many minutes; every zone's changes are weeks apart. */
const STEP = 360;

/** Calendar days since 1 January 1970 on the wall, for a clock `off` ahead of universal time. */
export const localDay = (at: Instant, off: Minutes): number => Math.floor((at + off) / DAY_MINUTES);

/** A moment at which clocks are put forward or back: the first minute of the new time. */
export interface ClockChange {
  at: Instant;
  before: Minutes;
  after: Minutes;
}

/**
 * The moments after `from`, up to and with `to`, at which the place's clocks are put forward or back.
 * Units: whole universal minutes.
 *
 * @example clockChanges(eveningOf('2026-10-24'), morningOf('2026-10-25'), london)
 *   // one: at 01:00 universal time, from 60 to 0
 */
export function clockChanges(from: Instant, to: Instant, offsetAt: OffsetAt): ClockChange[] {
  const changes: ClockChange[] = [];
  let at: number = from;
  while (at < to) {
    const before = offsetAt(instant(at));
    let next = Math.min(at + STEP, to);
    if (offsetAt(instant(next)) !== before) {
      let old = at;
      while (next - old > 1) {
        const middle = Math.floor((old + next) / 2);
        if (offsetAt(instant(middle)) === before) old = middle;
        else next = middle;
      }
      changes.push({ at: instant(next), before, after: offsetAt(instant(next)) });
    }
    at = next;
  }
  return changes;
}

/**
 * Whether the wall showed this time twice that night, and which of the two it was.
 * `first` is before the clocks were put back (summer time), `second` after (winter time).
 * Not: a note whose offset is not the place's own at that moment was written elsewhere; nothing is said of it.
 *
 * @example repeatedHour(at('2026-10-25T00:30Z'), minutes(60), london) // 'first': 01:30 came again
 */
export function repeatedHour(t: Instant, off: Minutes, offsetAt: OffsetAt): 'first' | 'second' | undefined {
  if (offsetAt(t) !== off) return undefined;
  for (const near of [instant(t - DAY_MINUTES), instant(t + DAY_MINUTES)]) {
    const other = offsetAt(near);
    if (other === off) continue;
    const twin = instant(t + off - other);
    if (offsetAt(twin) === other) return twin > t ? 'first' : 'second';
  }
  return undefined;
}

/** A full hour on the wall. */
export interface HourMark {
  at: Instant;
  /** 0–23. */
  hour: number;
  /** The first mark of a calendar day; where clocks skip midnight, that is 1 o'clock. */
  startsDay: boolean;
  twice?: 'first' | 'second';
}

/**
 * Every full hour the wall showed from one moment to another, both included: an hour that came twice is there twice,
 * an hour that was skipped is not there.
 * Units: marks stand at universal minutes, hours are local.
 */
export function hourMarks(from: Instant, to: Instant, offsetAt: OffsetAt): HourMark[] {
  const marks: HourMark[] = [];
  const starts = [{ at: from, after: offsetAt(from) }, ...clockChanges(from, to, offsetAt)];
  starts.forEach(({ at: start, after: off }, i) => {
    const end = starts[i + 1]?.at ?? to + 1;
    for (let local = Math.ceil((start + off) / 60) * 60; local - off < end; local += 60) {
      const at = instant(local - off);
      const before = instant(at - 1);
      const mark: HourMark = {
        at,
        hour: (((local / 60) % 24) + 24) % 24,
        startsDay: localDay(before, offsetAt(before)) < localDay(at, off),
      };
      const twice = repeatedHour(at, off, offsetAt);
      marks.push(twice ? { ...mark, twice } : mark);
    }
  });
  return marks;
}
