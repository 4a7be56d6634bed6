/** The words of one sign, from a translator that holds the areas `signs`, `say` and `look`. */
import type { SignId } from '#domain/signs/ids.ts';
import { detailsOf, isSignId, SIGN_ROWS } from '#content/signs.ts';
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

/** Signs whose names say nothing of their place: "Wet". */
const PLACELESS: ReadonlySet<string> = new Set([
  ...['toes-cool', 'toes-colour', 'toes-swollen', 'toes-numb', 'thigh-changed'],
  ...['band-tight', 'band-moved', 'band-wet', 'band-stained', 'skin-mark', 'burning-spot'],
]);

/** A sign's name where no picture stands beside it: "Leg bandage: Wet". Needs the area `look`, too. */
export function placedName(words: Words, sign: string): string {
  const name = signName(words, sign);
  if (!isSignId(sign) || !PLACELESS.has(sign)) return name;
  return `${translate(words)(`look:parts.${SIGN_ROWS[sign]!.part}`)}: ${name}`;
}

/** A sign as it was noted: its place, the sub-answers that matter, and that nobody was sure. */
export function notedName(
  words: Words,
  {
    sign,
    details = [],
    notSure,
  }: { sign: string; details?: readonly string[]; notSure?: boolean | undefined },
): string {
  const known = isSignId(sign) ? detailsOf(sign) : [];
  const names = details.map((key) => {
    const detail = key.slice(sign.length + 1);
    return known.includes(detail) ? detailName(words, sign, detail) : translate(words)('steps:open.unknown');
  });
  const name = [placedName(words, sign), ...new Set(names)].join(' – ');
  return notSure ? `${name} (${translate(words)('answer.not-sure')})` : name;
}

/** A sub-answer's name, as something to tap. */
export const detailName = (words: Words, sign: string, detail: string): string =>
  translate(words)(`signs:details.${sign}/${detail}`);
