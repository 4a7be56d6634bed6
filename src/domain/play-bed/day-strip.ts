/** A bed's day as one strip: where each part of it stands between waking and lights-out, and which part a finger means. */
import type { DaySketch } from '../play/day.ts';
import type { DayMinute } from '../play/types.ts';

/** A part of the strip, in hundredths of its length from the beginning of the day. */
export interface StripPart {
  start: number;
  share: number;
}
/** What stands fixed in the day. */
export interface StripRow extends StripPart {
  list: 'moments' | 'events';
  id: string;
  from: DayMinute;
  minutes: number;
  /** All that lies nearer to it than to any other: whoever presses there means it. */
  reach: StripPart;
}

const HOURS_APART = 180;

/**
 * The day as a strip from waking to lights-out: what is fixed in it, when it must be quiet, and an hour here and there.
 *
 * Shape: rows in order of time, whose reaches cover the strip without a gap; what lies outside the day is left out.
 * Units: hundredths of the strip's length, from where reading begins.
 * Errors: none; a day without length has no parts.
 */
export function stripOf({
  wake,
  lightsOut,
  events,
  moments,
  quiet,
}: Pick<DaySketch, 'wake' | 'lightsOut' | 'events' | 'moments' | 'quiet'>): {
  rows: StripRow[];
  quiet: StripPart[];
  hours: { minute: DayMinute; start: number }[];
} {
  const length = lightsOut - wake;
  if (!(length > 0)) return { rows: [], quiet: [], hours: [] };
  const within = (minute: DayMinute) => Math.min(lightsOut, Math.max(wake, minute));
  const placeOf = (minute: DayMinute) => (100 * (within(minute) - wake)) / length;
  const part = (from: DayMinute, until: DayMinute): StripPart => ({
    start: placeOf(from),
    share: placeOf(until) - placeOf(from),
  });
  const all = (['moments', 'events'] as const).flatMap((list) =>
    (list === 'moments' ? moments : events).map(({ id, from, minutes }) => ({ list, id, from, minutes })),
  );
  const inDay = all
    .filter(({ from, minutes }) => from < lightsOut && from + minutes > wake)
    .sort((a, b) => a.from - b.from || a.minutes - b.minutes);
  let last = wake;
  const edges = inDay.slice(1).map((one, at) => {
    const before = inDay[at]!;
    // halfway between the two; where a day was typed over itself, still in order
    last = Math.max(last, (before.from + before.minutes + one.from) / 2);
    return last;
  });
  return {
    rows: inDay.map((one, at) => ({
      ...one,
      ...part(one.from, one.from + one.minutes),
      reach: part(edges[at - 1] ?? wake, edges[at] ?? lightsOut),
    })),
    quiet: quiet
      .filter(({ from, until }) => from < lightsOut && until > wake && until > from)
      .map(({ from, until }) => part(from, until)),
    hours: Array.from({ length: Math.ceil(lightsOut / HOURS_APART) }, (_, n) => n * HOURS_APART)
      .filter((minute) => minute >= wake && minute < lightsOut)
      .map((minute) => ({ minute, start: placeOf(minute) })),
  };
}
