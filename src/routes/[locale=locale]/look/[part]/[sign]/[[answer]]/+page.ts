import { error } from '@sveltejs/kit';
import type { SignId } from '#domain/signs/ids.ts';
import type { UrgencyClass } from '#domain/signs/types.ts';
import { detailsOf, isSignId, offersNotSure, SIGN_ROWS } from '#content/signs.ts';
import { WARD } from '#content/ward.ts';
import { classOf } from '#domain/signs/rules.ts';
import { moreUrgent } from '#domain/signs/urgency.ts';
import { LOCALES } from '#i18n/locales.ts';
import { loadArea, loadWords } from '#i18n/words.ts';

/** The class a sign has alone, with its sub-answer and the ward's raise: the floor of every combination. */
function urgencyAlone(sign: SignId, answer: string): UrgencyClass {
  const context = { signs: SIGN_ROWS, ward: WARD, child: { under3: false, canTell: 'yes' as const } };
  if (answer === 'not-sure' || sign === 'cannot-name-it') return 'not-sure';
  const detail = SIGN_ROWS[sign]!.details?.[answer]?.atLeast;
  const own = classOf(sign, context);
  return detail ? (moreUrgent(own, detail) as UrgencyClass) : own;
}

export async function load({ params }) {
  const { locale, part, sign } = params;
  const answer = params.answer ?? 'different';
  if (!isSignId(sign) || SIGN_ROWS[sign]!.part !== part) error(404);
  const known =
    answer === 'different' ||
    (answer === 'not-sure' && offersNotSure(sign)) ||
    detailsOf(sign).includes(answer);
  if (!known) error(404);
  const detail = answer === 'different' || answer === 'not-sure' ? undefined : answer;
  const also = detail ? SIGN_ROWS[sign]!.details?.[detail]?.alsoSign : undefined;
  const [words, ...says] = await Promise.all([
    loadWords(locale, ['look', 'steps', 'signs', 'say']),
    ...LOCALES.map(async (row) => ({ locale: row.code, say: await loadArea(row.code, 'say') })),
  ]);
  return {
    words,
    sign,
    answer,
    detail,
    urgency: urgencyAlone(sign, answer),
    callOut: Boolean(SIGN_ROWS[sign]!.callOut || (also && SIGN_ROWS[also]?.callOut)) && answer !== 'not-sure',
    says,
  };
}
