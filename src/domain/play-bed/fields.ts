/** Reads what a stranger or an old device wrote, field by field: what cannot be read is named and left out. */
import { dayNumberOf } from '../clock/calendar.ts';
import type { Fault } from '../play/types.ts';

/** More faults than a person can read say nothing more. */
const MOST_FAULTS = 100;
const LONGEST_SEEN = 60;

/** What of a value may stand in a fault: never a deep or long one, whoever made it. */
function shown(value: unknown): unknown {
  if (typeof value === 'string')
    return value.length > LONGEST_SEEN ? `${value.slice(0, LONGEST_SEEN)}…` : value;
  if (Array.isArray(value)) return `[${value.length}]`;
  return typeof value === 'object' && value !== null ? '{}' : value;
}

/** Names one thing that cannot be read, and answers with nothing, so that a reader can hand that on. */
export function blame(faults: Fault[], where: string, rule: string, seen: unknown): undefined {
  if (faults.length < MOST_FAULTS) faults.push({ where, rule, seen: shown(seen) });
  return undefined;
}

const isRow = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields of one thing; each method names in `faults` what it could not read and answers with nothing. */
export interface Fields {
  readonly where: string;
  readonly faults: Fault[];
  has(name: string): boolean;
  /** As it stands, unread. */
  raw(name: string): unknown;
  refuse(name: string, rule: string): undefined;
  whole(name: string, low: number, high: number, step?: number): number | undefined;
  choice<T extends string | number>(name: string, allowed: readonly T[]): T | undefined;
  yes(name: string): boolean | undefined;
  text(name: string, form: RegExp, rule: string, most: number): string | undefined;
  /** A day of the calendar, as 2026-01-31. */
  day(name: string): string | undefined;
  /** A list; absent is empty. What `each` answers nothing for is left out, and so is what is beyond `most`. */
  list<T>(
    name: string,
    most: number,
    each: (value: unknown, where: string, faults: Fault[]) => T | undefined,
  ): T[];
  /** The fields of a thing inside this one. */
  inner(name: string, known: readonly string[]): Fields | undefined;
}

/**
 * Opens a value for reading.
 *
 * Shape: any value -> its fields, its own ones only; nothing where it is no thing with fields. Fields that this version
 * does not know are named.
 * Errors: none; they are in `faults`, with where, rule and what was seen.
 */
export function fieldsOf(
  value: unknown,
  where: string,
  faults: Fault[],
  known: readonly string[],
): Fields | undefined {
  if (!isRow(value)) return blame(faults, where, 'a thing with fields', value);
  const strange = Object.keys(value).filter((name) => !known.includes(name));
  for (const name of strange)
    blame(faults, `${where} › ${String(shown(name))}`, 'a field this version knows', value[name]);
  const raw = (name: string): unknown => (Object.hasOwn(value, name) ? value[name] : undefined);
  const refuse = (name: string, rule: string) => blame(faults, `${where} › ${name}`, rule, raw(name));
  return {
    where,
    faults,
    raw,
    refuse,
    has: (name) => raw(name) !== undefined,
    whole(name, low, high, step = 1) {
      const seen = raw(name);
      // a zero below zero is a zero
      if (typeof seen === 'number' && Number.isInteger(seen / step) && seen >= low && seen <= high)
        return seen + 0;
      return refuse(name, `${step > 1 ? `a multiple of ${step}` : 'a whole number'} from ${low} to ${high}`);
    },
    choice(name, allowed) {
      const seen = raw(name);
      return allowed.find((one) => one === seen) ?? refuse(name, `one of ${allowed.join('|')}`);
    },
    yes(name) {
      const seen = raw(name);
      return typeof seen === 'boolean' ? seen : refuse(name, 'true or false');
    },
    text(name, form, rule, most) {
      const seen = raw(name);
      return typeof seen === 'string' && seen.length <= most && form.test(seen) ? seen : refuse(name, rule);
    },
    day(name) {
      const seen = this.text(name, /^\d{4}-\d{2}-\d{2}$/, 'a day as 2026-01-31', 10);
      if (seen === undefined) return undefined;
      return dayNumberOf(seen) === undefined ? refuse(name, 'a day of the calendar') : seen;
    },
    list(name, most, each) {
      const seen = raw(name);
      if (seen === undefined) return [];
      if (!Array.isArray(seen)) {
        refuse(name, 'a list');
        return [];
      }
      if (seen.length > most) refuse(name, `at most ${most}`);
      return seen.slice(0, most).flatMap((value, n) => {
        const read = each(value, `${where} › ${name} › ${n + 1}`, faults);
        return read === undefined ? [] : [read];
      });
    },
    inner: (name, names) => fieldsOf(raw(name), `${where} › ${name}`, faults, names),
  };
}

/**
 * The first of each id in a list that was read; the others are named and left out.
 * Shape: `name` is the field of the list.
 */
export const eachOnce = <T>(
  list: readonly T[],
  idOf: (one: T) => string,
  fields: Fields,
  name: string,
): T[] =>
  list.filter((one, n) => {
    const id = idOf(one);
    const first = list.findIndex((other) => idOf(other) === id) === n;
    if (!first) blame(fields.faults, `${fields.where} › ${name} › ${id}`, 'used once', id);
    return first;
  });
