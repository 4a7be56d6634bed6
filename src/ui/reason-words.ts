/** The reasons of a class in words, from a translator that holds the areas `steps`, `signs` and `look`. */
import type { Because } from '#domain/signs/types.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { WARD } from '#content/ward.ts';
import { list } from '#i18n/format.ts';
import { translate, type Words } from '#i18n/words.ts';
import { notedName } from './sign-words.ts';

/** The reasons that carry the class, the one that most signs speak for first; the smaller ones would only distract. */
export function topReasons(because: readonly Because[]): Because[] {
  const rank = Math.max(...because.map((reason) => rankOf(reason.atLeast)));
  return because
    .filter((reason) => rankOf(reason.atLeast) === rank)
    .sort((a, b) => b.signs.length - a.signs.length);
}

/** What a rule says when it holds. */
export const reasonText = (words: Words, reason: Because): string =>
  reason.clockWentBack
    ? translate(words)('steps:result.clockWentBack')
    : translate(words)(`steps:reasons.${reason.rule}`, { minutes: WARD.tellAgainMinutes });

/** The signs that made a rule hold. Of one that was answered "not sure", which the others of `because` tell, that. */
export function reasonSigns(words: Words, reason: Because, because: readonly Because[]): string {
  const doubted = new Set(because.flatMap(({ rule, signs }) => (rule === 'R2' ? signs : [])));
  const names = reason.signs.map((sign) =>
    // its name says the doubt already
    notedName(words, { sign, notSure: doubted.has(sign) && sign !== 'cannot-name-it' }),
  );
  return list(words.locale, [...new Set(names)]);
}
