/** The words of one sign, from a translator that holds the areas `signs`, `say` and `look`. */
import type { SignId } from '#domain/signs/ids.ts';
import { isSignId, SIGN_ROWS } from '#content/signs.ts';
import { translate, type Words } from '#i18n/words.ts';

export interface SignWords {
  name: string;
  usual?: string;
  shows?: string;
  ask?: string;
  note?: string;
  darker?: string;
  doNot: string;
  why: string;
  child?: string;
}

/** Every text of a sign that it has: for the adults, and for the child where it has words for one. */
export function signWords(words: Words, sign: SignId): SignWords {
  const t = translate(words);
  const row = SIGN_ROWS[sign]!;
  const key = (name: string) => t(`signs:${sign}.${name}`);
  const result: SignWords = { name: key('name'), doNot: key('doNot'), why: key('why') };
  if (row.part !== 'worry') {
    result.usual = key('usual');
    result.shows = key('shows');
    result.ask = key('ask');
  }
  if (row.note) result.note = key('note');
  if (row.darker) result.darker = key('darker');
  if (!row.adultOnly) result.child = key('child');
  return result;
}

/** A sign's name, also for what this version does not know. */
export function signName(words: Words, sign: string): string {
  return isSignId(sign) ? translate(words)(`signs:${sign}.name`) : translate(words)('steps:open.unknown');
}

/** A sub-answer's name, as something to tap. */
export const detailName = (words: Words, sign: string, detail: string): string =>
  translate(words)(`signs:details.${sign}/${detail}`);
