/** A day or a week of notes as plain numbers for a drawing: no words, no colours, no size. */
import { clockChanges, hourMarks, type HourMark, type OffsetAt } from '../clock/local.ts';
import type { Instant } from '../units.ts';
import { correctedNotes, isUndated } from './clocks.ts';
import { struckIds, type Entry, type EntryKind } from './entries.ts';
import { eventsOf } from './pairs.ts';
import { stretchesOf } from './sleep.ts';

/** Something at one moment. Every `x` is a share of the whole length, 0 at its beginning and 1 at its end. */
export interface TimelineMark {
  id: string;
  x: number;
}
/** `maybeSame`: another phone noted the like just before, and nobody has said yet whether it was the same. */
export interface TimelineEvent extends TimelineMark {
  maybeSame?: true;
}

export interface Timeline {
  from: Instant;
  to: Instant;
  soreness: {
    /** `height` is a share of the scale: 1 is 10 of 10, or the fourth step. */
    points: readonly (TimelineMark & {
      height: number;
      value: number;
      scale: 'numbers' | 'steps';
      when: 'rest' | 'moving';
    })[];
    medicine: readonly TimelineMark[];
  };
  looks: readonly TimelineMark[];
  /** `goes-on` reaches to the end of the drawing; `not-noted` has a beginning only. */
  sleep: readonly {
    notes: readonly string[];
    from: number;
    to: number;
    end: 'woke' | 'goes-on' | 'not-noted';
  }[];
  drinks: readonly (TimelineEvent & { amount: Of<'drink'>['amount'] })[];
  wee: readonly TimelineEvent[];
  poo: readonly TimelineEvent[];
  /** Full hours on the wall. An hour that came twice is here twice. */
  hours: readonly (HourMark & { x: number })[];
  /** Where clocks were put forward (minutes above 0: these were skipped) or back (below 0: these came twice). */
  changes: readonly { x: number; minutes: number }[];
}

type Of<K extends EntryKind> = Extract<Entry, { kind: K }>;

/**
 * What lies between two moments, each thing at its place on universal time, so that an hour is as long as any other
 * in the night the clocks change, too.
 *
 * Shape: struck notes are left out and wrong clocks corrected; what lies outside is left out, sleep is cut off.
 * Units: `from` and `to` are instants, places are shares from 0 to 1.
 * Errors: throws where `to` is not after `from`.
 *
 * @example timelineOf(notes, instant(now - 1440), now, offsetAt).hours.length // 24 or 25
 */
export function timelineOf(
  entries: readonly Entry[],
  from: Instant,
  to: Instant,
  offsetAt: OffsetAt,
): Timeline {
  if (!(to > from))
    throw new Error(`domain/notes › timelineOf: to must be after from, saw ${from} and ${to}`);
  const x = (at: number) => (at - from) / (to - from);
  const all = correctedNotes(entries);
  const struck = struckIds(all);
  const kept = all.filter((entry) => !struck.has(entry.id) && !isUndated(entry));
  const inside = (entry: Entry) => entry.t >= from && entry.t <= to;
  const of = <K extends EntryKind>(kind: K) =>
    kept.filter((entry): entry is Of<K> => entry.kind === kind && inside(entry));
  const mark = (entry: Entry): TimelineMark => ({ id: entry.id, x: x(entry.t) });

  function events<K extends EntryKind>(kind: K, keep: (note: Of<K>) => boolean = () => true) {
    const is = (entry: Entry): entry is Of<K> => entry.kind === kind;
    return eventsOf(all, (entry) => is(entry) && inside(entry) && !isUndated(entry) && keep(entry))
      .flatMap(({ parts }) =>
        parts.map((part, i) => {
          const note = part[0] as Of<K>;
          const event: TimelineEvent = i > 0 ? { ...mark(note), maybeSame: true } : mark(note);
          return { note, event };
        }),
      )
      .sort((a, b) => a.event.x - b.event.x);
  }

  return {
    from,
    to,
    soreness: {
      points: of('sore').map((note) => ({
        ...mark(note),
        height: note.value / (note.scale === 'numbers' ? 10 : 3),
        value: note.value,
        scale: note.scale,
        when: note.when,
      })),
      medicine: of('medicine-told').map(mark),
    },
    looks: of('look').map(mark),
    sleep: stretchesOf(kept.filter((entry) => entry.t <= to)).flatMap((stretch) => {
      const end = stretch.to !== undefined ? 'woke' : stretch.goesOn ? 'goes-on' : 'not-noted';
      const last = stretch.to ?? (stretch.goesOn ? to : stretch.from);
      if (last < from) return [];
      return [{ notes: stretch.notes, from: Math.max(0, x(stretch.from)), to: x(last), end } as const];
    }),
    drinks: events('drink').map(({ note, event }) => ({ ...event, amount: note.amount })),
    wee: events('wee').map(({ event }) => event),
    poo: events('poo', ({ what }) => what !== 'none-today').map(({ event }) => event),
    hours: hourMarks(from, to, offsetAt).map((hour) => ({ ...hour, x: x(hour.at) })),
    changes: clockChanges(from, to, offsetAt).map(({ at, before, after }) => ({
      x: x(at),
      minutes: after - before,
    })),
  };
}
