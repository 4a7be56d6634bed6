/**
 * The ward's own settings, from ward.json, checked when the site is built. They can raise a class, never lower it, and
 * add words about the call button, never take any away. Phones get the values alone (.ci/ward-plugin.mjs).
 */
import type { WardRules } from '#domain/signs/types.ts';
import { minutes } from '#domain/units.ts';
import { WARD_MINUTES } from '#domain/ward-minutes.ts';
import { BELL_TEXTS, bellFaults, type BellWords } from './bell-limits.ts';
import { SECOND_STEPS, type SecondStepId } from './second-steps.ts';
import { isSignId } from './signs.ts';
import values from './ward.json' with { type: 'json' };

export interface WardSettings extends WardRules {
  /** Language of the second sentence, and of staff pages. */
  wardLanguage: string;
  /** Those offered, in the order in which they are offered. */
  languages: readonly string[];
  /** Leaves out every language whose safety texts nobody has signed. */
  hideUnreviewed: boolean;
  secondStep: SecondStepId;
  /** Language -> the ward's own words about its call button, beside ours. */
  bell: Readonly<Record<string, BellWords>>;
}

const KEYS = ['wardLanguage', 'languages', 'hideUnreviewed', 'raise', 'secondStep', 'bell', 'day'].concat(
  Object.keys(WARD_MINUTES),
);

type Row = Record<string, unknown>;
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Reads a ward's settings, all but its usual day (ward-day.ts).
 *
 * Shape: an object with every key and no other; `bell` may be left out. `built`: the languages that are there.
 * Units: whole minutes, each between the bounds that keep a family from waiting long, the same as a bed card's.
 * Errors: throws one message that names each wrong place, what is allowed there and what was seen.
 *
 * @example readWard({ ...ours, secondStepMinutes: 45 }) // throws 'content/ward.json › secondStepMinutes: whole minutes …, saw 45'
 */
export function readWard(input: unknown, built?: readonly string[]): WardSettings {
  const wrong: string[] = [];
  const row: Row = isRow(input) ? input : {};
  const blame = (where: string, rule: string, seen: unknown) =>
    wrong.push(`content/ward.json › ${where}: ${rule}, saw ${JSON.stringify(seen)}`);
  const say = (key: string, rule: string) => blame(key, rule, row[key]);

  for (const key of Object.keys(row)) if (!KEYS.includes(key)) blame(key, `one of ${KEYS.join('|')}`, key);
  const listed: unknown[] = Array.isArray(row.languages) ? row.languages : [];
  const languages = listed.filter((code) => typeof code === 'string');
  if (languages.length === 0 || languages.length !== listed.length)
    say('languages', 'a list of at least one language');
  languages.forEach((code, at) => {
    if (built && !built.includes(code)) blame(`languages › ${at}`, `one of ${built.join('|')}`, code);
    if (languages.indexOf(code) < at) blame(`languages › ${at}`, 'each language once', code);
  });
  if (typeof row.wardLanguage !== 'string' || !languages.includes(row.wardLanguage))
    say('wardLanguage', `one of ${languages.join('|')}`);
  if (typeof row.hideUnreviewed !== 'boolean') say('hideUnreviewed', 'true or false');
  if (!SECOND_STEPS.some((step) => step === row.secondStep))
    say('secondStep', `one of ${SECOND_STEPS.join('|')}`);
  for (const [key, [low, high]] of Object.entries(WARD_MINUTES)) {
    const value = row[key];
    // whole ones: a bed card holds no other
    if (!Number.isInteger(value) || !((value as number) >= low && (value as number) <= high))
      say(key, `whole minutes from ${low} to ${high}`);
  }
  if (!isRow(row.raise)) say('raise', 'signs with a higher class, or {}');
  const raise = isRow(row.raise) ? row.raise : {};
  for (const [id, urgency] of Object.entries(raise)) {
    if (!isSignId(id))
      wrong.push(`content/ward.json › raise › ${id}: a sign of content/signs, saw an unknown id`);
    if (urgency !== 'tell-nurse' && urgency !== 'ring-now')
      blame(`raise › ${id}`, 'one of tell-nurse|ring-now', urgency);
  }
  const bell = row.bell ?? {};
  if (!isRow(bell)) say('bell', 'words by language, or {}');
  for (const [language, words] of isRow(bell) ? Object.entries(bell) : []) {
    const where = `bell › ${language}`;
    if (!languages.includes(language)) blame(where, `one of ${languages.join('|')}`, language);
    if (!isRow(words) || Object.keys(words).length === 0) {
      blame(where, `words under ${BELL_TEXTS.join('|')}`, words);
      continue;
    }
    for (const [kind, text] of Object.entries(words)) {
      if (!BELL_TEXTS.some((one) => one === kind))
        blame(`${where} › ${kind}`, `one of ${BELL_TEXTS.join('|')}`, kind);
      else if (typeof text !== 'string') blame(`${where} › ${kind}`, 'a sentence', text);
      else for (const rule of bellFaults(language, text)) blame(`${where} › ${kind}`, rule, text);
    }
  }
  if (wrong.length) throw new Error(wrong.join('\n'));
  return {
    wardLanguage: row.wardLanguage as string,
    languages,
    hideUnreviewed: row.hideUnreviewed as boolean,
    raise: raise as WardSettings['raise'],
    secondStep: row.secondStep as SecondStepId,
    secondStepMinutes: minutes(row.secondStepMinutes as number),
    tellAgainMinutes: minutes(row.tellAgainMinutes as number),
    visitAgainMinutes: minutes(row.visitAgainMinutes as number),
    medicineWaitMinutes: minutes(row.medicineWaitMinutes as number),
    bell: bell as WardSettings['bell'],
  };
}

export const WARD: WardSettings = readWard(values);
