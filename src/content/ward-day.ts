/** The ward's usual day, from ward.json › day, checked when the site is built. A family or a play specialist may change it. */
import { MOST } from '#domain/play-bed/bed-store.ts';
import { EVENT_KINDS, MEALS, usualLightsOut, type EventKind } from '#domain/play-bed/bed.ts';
import type { DaySketch } from '#domain/play/day.ts';
import { GRID, PLAY_FROM, PLAY_UNTIL } from '#domain/play/feasible.ts';
import values from './ward.json' with { type: 'json' };

/** `lightsOut`: when the room is dark for everybody; smaller children's light goes out earlier, after supper. */
export type WardDay = Pick<DaySketch, 'wake' | 'lightsOut' | 'quiet' | 'events'>;

const KEYS = ['wake', 'lightsOut', 'quiet', 'events'];
/** What was wrong is said once: no comparison with it holds, so it causes no further fault. */
const WRONG = NaN;

/** When the light of the youngest goes out, if nothing keeps it on: no day begins so late. */
const EARLIEST_LIGHTS_OUT = usualLightsOut(0, { events: [] });

const clockOf = (minute: number) => `${Math.floor(minute / 60)}:${`${minute % 60}`.padStart(2, '0')}`;
const minuteOf = (value: unknown): number | undefined => {
  const parts = typeof value === 'string' ? /^([01]\d|2[0-3]):([0-5]\d)$/.exec(value) : null;
  return parts ? Number(parts[1]) * 60 + Number(parts[2]) : undefined;
};

/**
 * Reads a ward's usual day.
 *
 * Shape: waking, lights-out, quiet times and events, no more of them than a bed holds; the three meals are there in their
 * order, events lie between waking and lights-out, none meets another or a quiet time. Every child wakes before its light
 * goes out.
 * Units: times of day as "07:30", lengths in minutes, both on a grid of five, from 06:00 to 22:00.
 * Errors: throws one message that names each wrong place, what is allowed there and what was seen.
 *
 * @example readWardDay({ wake: '7:00' }) // throws 'content/ward.json › day › wake: a time from 06:00 …, saw "7:00"' and more
 */
export function readWardDay(input: unknown): WardDay {
  const wrong: string[] = [];
  const row = (typeof input === 'object' && input !== null ? input : {}) as Record<string, unknown>;
  const say = (where: string, rule: string, seen: unknown) =>
    wrong.push(`content/ward.json › day › ${where}: ${rule}, saw ${JSON.stringify(seen)}`);
  const time = (where: string, value: unknown): number => {
    const minute = minuteOf(value);
    if (minute !== undefined && minute >= PLAY_FROM && minute <= PLAY_UNTIL && minute % GRID === 0)
      return minute;
    say(where, 'a time from 06:00 to 22:00 in steps of five minutes', value);
    return WRONG;
  };
  const rows = (where: string, most: number): unknown[][] => {
    const value = row[where];
    if (!Array.isArray(value) || !value.every((one) => Array.isArray(one))) {
      say(where, 'a list of lists', value);
      return [];
    }
    if (value.length > most) say(where, `at most ${most}`, value.length);
    return value;
  };

  for (const key of Object.keys(row)) if (!KEYS.includes(key)) say(key, `one of ${KEYS.join('|')}`, key);
  const wake = time('wake', row.wake);
  const lightsOut = time('lightsOut', row.lightsOut);
  if (lightsOut <= wake) say('lightsOut', 'after wake', row.lightsOut);
  if (wake >= EARLIEST_LIGHTS_OUT)
    say('wake', `before ${clockOf(EARLIEST_LIGHTS_OUT)}, when the light of the youngest goes out`, row.wake);
  const quiet = rows('quiet', MOST.stretches).map((seen, at) => {
    const [from, until] = seen;
    const stretch = { from: time(`quiet › ${at} › 0`, from), until: time(`quiet › ${at} › 1`, until) };
    if (stretch.until <= stretch.from) say(`quiet › ${at}`, 'an end after its beginning', seen);
    return stretch;
  });
  const events = rows('events', MOST.events).map((seen, at) => {
    const [kind, from, minutes] = seen;
    const known = EVENT_KINDS.some((one) => one === kind);
    if (!known) say(`events › ${at} › 0`, `one of ${EVENT_KINDS.join('|')}`, kind);
    const fits = typeof minutes === 'number' && minutes >= GRID && minutes <= 180 && minutes % GRID === 0;
    if (!fits) say(`events › ${at} › 2`, 'minutes from 5 to 180 in steps of five', minutes);
    const event = {
      id: kind as EventKind,
      from: time(`events › ${at} › 1`, from),
      minutes: fits ? minutes : WRONG,
    };
    const end = event.from + event.minutes;
    if (event.from < wake || end > lightsOut) say(`events › ${at}`, 'between wake and lightsOut', seen);
    if (quiet.some((stretch) => event.from < stretch.until && stretch.from < end))
      say(`events › ${at}`, 'outside the quiet times', seen);
    return event;
  });
  [...events]
    .sort((a, b) => a.from - b.from)
    .forEach((event, at, all) => {
      const next = all[at + 1];
      if (next && event.from + event.minutes > next.from)
        say('events', `${event.id} over before ${next.id} begins`, [event.from + event.minutes, next.from]);
    });
  if (new Set(events.map(({ id }) => id)).size < events.length) say('events', 'each kind once', row.events);
  const meals = MEALS.map((meal) => events.find(({ id }) => id === meal)?.from);
  MEALS.forEach((meal, at) => {
    const [before, own] = [meals[at - 1], meals[at]];
    if (own === undefined) say('events', `${meal} among them`, row.events);
    else if (before !== undefined && own < before)
      say('events', `${meal} after ${MEALS[at - 1]}`, row.events);
  });
  if (wrong.length) throw new Error(wrong.join('\n'));
  return { wake, lightsOut, quiet, events };
}

export const WARD_DAY: WardDay = readWardDay(values.day);
