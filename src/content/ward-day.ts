/** The ward's usual day, from ward-day.json, checked when the site is built. A family or a play specialist may change it. */
import { EVENT_KINDS, type EventKind } from '#domain/play-bed/bed.ts';
import type { DaySketch } from '#domain/play/day.ts';
import values from './ward-day.json' with { type: 'json' };

export type WardDay = Pick<DaySketch, 'wake' | 'quiet' | 'events'>;

const EARLIEST = 6 * 60;
const LATEST = 22 * 60;
const GRID = 5;

const minuteOf = (value: unknown): number | undefined => {
  const parts = typeof value === 'string' ? /^([01]\d|2[0-3]):([0-5]\d)$/.exec(value) : null;
  return parts ? Number(parts[1]) * 60 + Number(parts[2]) : undefined;
};

/**
 * Reads a ward's usual day.
 *
 * Units: times of day as "07:30", lengths in minutes, both on a grid of five, from 06:00 to 22:00.
 * Errors: throws one message that names each wrong place, what is allowed there and what was seen.
 */
export function readWardDay(input: unknown): WardDay {
  const wrong: string[] = [];
  const row = (typeof input === 'object' && input !== null ? input : {}) as Record<string, unknown>;
  const say = (where: string, rule: string, seen: unknown) =>
    wrong.push(`content/ward-day.json › ${where}: ${rule}, saw ${JSON.stringify(seen)}`);
  const time = (where: string, value: unknown): number => {
    const minute = minuteOf(value);
    if (minute !== undefined && minute >= EARLIEST && minute <= LATEST && minute % GRID === 0) return minute;
    say(where, 'a time from 06:00 to 22:00 in steps of five minutes', value);
    return EARLIEST;
  };
  const rows = (where: string): unknown[][] => {
    const value = row[where];
    if (Array.isArray(value) && value.every((one) => Array.isArray(one))) return value;
    say(where, 'a list of lists', value);
    return [];
  };

  const wake = time('wake', row.wake);
  const quiet = rows('quiet').map(([from, until], at) => {
    const stretch = { from: time(`quiet › ${at} › 0`, from), until: time(`quiet › ${at} › 1`, until) };
    if (stretch.until <= stretch.from) say(`quiet › ${at}`, 'an end after its beginning', [from, until]);
    return stretch;
  });
  const events = rows('events').map(([kind, from, minutes], at) => {
    if (!EVENT_KINDS.some((known) => known === kind))
      say(`events › ${at} › 0`, `one of ${EVENT_KINDS.join('|')}`, kind);
    if (typeof minutes !== 'number' || !(minutes >= GRID && minutes <= 180) || minutes % GRID !== 0)
      say(`events › ${at} › 2`, 'minutes from 5 to 180 in steps of five', minutes);
    return { id: kind as EventKind, from: time(`events › ${at} › 1`, from), minutes: minutes as number };
  });
  [...events]
    .sort((a, b) => a.from - b.from)
    .forEach((event, at, all) => {
      const next = all[at + 1];
      if (next && event.from + event.minutes > next.from)
        say('events', `${event.id} over before ${next.id} begins`, [event.from + event.minutes, next.from]);
    });
  if (new Set(events.map(({ id }) => id)).size < events.length) say('events', 'each kind once', row.events);
  if (wrong.length) throw new Error(wrong.join('\n'));
  return { wake, quiet, events };
}

export const WARD_DAY: WardDay = readWardDay(values);
