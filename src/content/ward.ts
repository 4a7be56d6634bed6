/** The ward's own settings, from ward.json, checked when the site is built. They can raise a class, never lower it. */
import type { WardRules } from '#domain/signs/types.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { minutes } from '#domain/units.ts';
import { SECOND_STEPS, type SecondStepId } from './second-steps.ts';
import { isSignId } from './signs.ts';
import values from './ward.json' with { type: 'json' };

export interface WardSettings extends WardRules {
  /** Language of the second sentence, and of staff pages. */
  wardLanguage: string;
  languages: readonly string[];
  /** Leaves out every language whose safety texts nobody has signed. */
  hideUnreviewed: boolean;
  secondStep: SecondStepId;
}

const BOUNDS = {
  secondStepMinutes: [2, 10],
  tellAgainMinutes: [5, 15],
  visitAgainMinutes: [60, 240],
  medicineWaitMinutes: [30, 90],
} as const;

/**
 * Reads a ward's settings.
 * Errors: throws one message that names each wrong place, what is allowed there and what was seen.
 */
export function readWard(input: unknown): WardSettings {
  const wrong: string[] = [];
  const row = (typeof input === 'object' && input !== null ? input : {}) as Record<string, unknown>;
  const say = (key: string, rule: string) =>
    wrong.push(`content/ward.json › ${key}: ${rule}, saw ${JSON.stringify(row[key])}`);

  const listed: unknown[] = Array.isArray(row.languages) ? row.languages : [];
  const languages = listed.filter((code) => typeof code === 'string');
  if (languages.length === 0 || languages.length !== listed.length)
    say('languages', 'a list of at least one language');
  if (typeof row.wardLanguage !== 'string' || !languages.includes(row.wardLanguage))
    say('wardLanguage', `one of ${languages.join('|')}`);
  if (typeof row.hideUnreviewed !== 'boolean') say('hideUnreviewed', 'true or false');
  if (!SECOND_STEPS.some((step) => step === row.secondStep))
    say('secondStep', `one of ${SECOND_STEPS.join('|')}`);
  for (const [key, [low, high]] of Object.entries(BOUNDS)) {
    const value = row[key];
    if (typeof value !== 'number' || !(value >= low && value <= high))
      say(key, `a number of minutes from ${low} to ${high}`);
  }
  if (typeof row.raise !== 'object' || row.raise === null || Array.isArray(row.raise))
    say('raise', 'signs with a higher class, or {}');
  const raise = (typeof row.raise === 'object' && row.raise !== null ? row.raise : {}) as Record<
    string,
    unknown
  >;
  for (const [id, urgency] of Object.entries(raise)) {
    if (!isSignId(id))
      wrong.push(`content/ward.json › raise › ${id}: a sign of content/signs, saw an unknown id`);
    if (
      typeof urgency !== 'string' ||
      !['tell-nurse', 'ring-now'].includes(urgency) ||
      rankOf(urgency as 'ring-now') < 2
    )
      wrong.push(
        `content/ward.json › raise › ${id}: one of tell-nurse|ring-now, saw ${JSON.stringify(urgency)}`,
      );
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
  };
}

export const WARD: WardSettings = readWard(values);
