/** How ideas, times and hard moments of a day of play are written out. */
import { eventKind, type PlayBed } from '#domain/play-bed/bed.ts';
import type { DayMinute, Idea, RuleId } from '#domain/play/types.ts';
import { instant, minutes } from '#domain/units.ts';
import { IDEAS } from '#content/ideas.ts';
import { clockTime, isolated, ownWords } from '#i18n/format.ts';
import type { Words } from '#i18n/words.ts';

const BY_ID = new Map<string, Idea>(IDEAS.map((idea) => [idea.id, idea]));
/** An idea of the library; nothing for an own one, and for one that this version does not know. */
export const ideaById = (id: string): Idea | undefined => BY_ID.get(id);

/** An idea's name; an own idea stands in its own words, set apart. */
export function ideaName({ t }: Words, id: string, own: PlayBed['own'] = []): string {
  const mine = own.find((one) => one.id === id);
  return mine ? ownWords(mine.title) : (t as (key: string) => string)(`ideas:${id}.name`);
}

const written = new Map<string, string>();
/**
 * A minute of the ward's day as the language writes a time. A bed's page writes some two hundred after every tick, and a
 * phone takes long over each: one is written once.
 */
export function dayTime(locale: string, minute: DayMinute): string {
  const which = `${locale} ${minute}`;
  const text = written.get(which) ?? isolated(clockTime(locale, instant(minute), minutes(0)));
  written.set(which, text);
  return text;
}

/** Minutes as the language shortens them: the number and its unit stay on one line. */
const inMinutes = (locale: string, minutes: number, signDisplay: 'auto' | 'always'): string =>
  isolated(
    new Intl.NumberFormat(locale, { style: 'unit', unit: 'minute', signDisplay })
      .format(minutes)
      .replaceAll(' ', '\u00a0'),
  );

/** A length. */
export const lengthOf = (locale: string, minutes: number): string => inMinutes(locale, minutes, 'auto');

/** By how much something is put later, or with a minus earlier. */
export const minutesMoved = (locale: string, by: number): string => inMinutes(locale, by, 'always');

/** The name of a fixed event of the ward's day. */
export const eventName = ({ t }: Words, id: string): string => t(`play:event.${eventKind(id)}`);

/** Rules that have a name of their own; the others are one. */
const NAMED = [
  ...(['H1', 'H2', 'H3', 'H4', 'H5', 'H6', 'H7', 'H8', 'H9', 'H10', 'H11', 'H12', 'H13'] as const),
] satisfies RuleId[];
/** A rule of the plan by its name. */
export const ruleName = ({ t }: Words, rule: RuleId): string =>
  t(`play:rule.${NAMED.find((one) => one === rule) ?? 'rest'}`);
/** Rules by their names, each once. */
export const rulesNamed = (words: Words, rules: readonly RuleId[]): string =>
  [...new Set(rules.map((rule) => ruleName(words, rule)))].join('; ');

/** Of a slot that is left to the child, both ideas by their names. */
export const childsTwo = (words: Words, idea: string, or: string, own: PlayBed['own']): string =>
  words.t('play:childChooses.two', { idea: ideaName(words, idea, own), other: ideaName(words, or, own) });

/** The value of an `<input type="time">`. */
export const timeValue = (minute: DayMinute): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
/** The minute that such a value stands for; nothing for what is no time. */
export function minuteOf(value: string): DayMinute | undefined {
  const parts = /^(\d\d):(\d\d)/.exec(value);
  return parts ? Number(parts[1]) * 60 + Number(parts[2]) : undefined;
}
