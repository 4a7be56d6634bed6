/** The sentence for the nurse in every language the site has; nothing falls back to another language. */
import type { SignId } from '#domain/signs/ids.ts';
import { SIGN_ROWS } from '#content/signs.ts';
import type { Areas } from '#i18n/words.ts';
import type { Sentence } from './SayBlock.svelte';

export interface Say {
  locale: string;
  say: Areas['say'];
}

function pick(say: Areas['say'], sign: SignId, answer: string, side: 'left' | 'right' | undefined): string {
  const row = SIGN_ROWS[sign]!;
  const flat = say as unknown as Record<string, string>;
  if (answer === 'not-sure') return say.notSure[row.part as keyof Areas['say']['notSure']];
  if (answer !== 'different') return say.details[`${sign}/${answer}` as keyof Areas['say']['details']];
  return (row.sided && side ? flat[`${sign}_${side}`] : undefined) ?? flat[sign] ?? say.unknown;
}

/**
 * The sentence for the nurse in one language.
 * Errors: throws for a language that has no sentences.
 */
export function sentenceFrom(
  says: readonly Say[],
  locale: string,
  sign: SignId,
  answer: string,
  side: 'left' | 'right' | undefined,
): string {
  const found = says.find((row) => row.locale === locale);
  if (!found) throw new Error(`ui/say › ${locale}: a language with sentences`);
  return pick(found.say, sign, answer, side);
}

/** The ward's sentence, and the same one in every other language but the family's own. */
export function wardSentences(
  says: readonly Say[],
  sign: SignId,
  answer: string,
  side: 'left' | 'right' | undefined,
  wardLanguage: string,
  ownLanguage: string,
): { ward: Sentence; others: Sentence[] } {
  const all = says.map(({ locale, say }) => ({ locale, text: pick(say, sign, answer, side) }));
  const ward = all.find((row) => row.locale === wardLanguage) ?? all[0];
  if (!ward) throw new Error('ui/say › ward: at least one language with sentences');
  return { ward, others: all.filter((row) => row !== ward && row.locale !== ownLanguage) };
}
