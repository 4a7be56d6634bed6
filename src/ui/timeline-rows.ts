/** The picture of the notes once more, as rows of a table. */
import type { Timeline } from '#domain/notes/timeline.ts';
import { inARow, number } from '#i18n/format.ts';
import type { Words } from '#i18n/words.ts';

interface Row {
  /** Where it stands between the picture's beginning and its end: 0 to 1. */
  share: number;
  what: string;
}

/** Newest first; the looks, the soreness and all that the picture has a mark for. */
export function timelineRows({ t, locale }: Words, timeline: Timeline): Row[] {
  const found: Row[] = [
    ...timeline.soreness.points.map((point) => ({
      share: point.x,
      what: `${t('notes:kind.sore')}: ${inARow(locale, [
        point.scale === 'steps'
          ? t(`notes:sore.steps.${String(point.value) as '0'}`)
          : t('notes:sore.value', { value: number(locale, point.value), most: number(locale, 10) }),
        t(`notes:sore.${point.when}`),
      ])}`,
    })),
    ...timeline.soreness.medicine.map((mark) => ({ share: mark.x, what: t('notes:kind.medicine-told') })),
    ...timeline.looks.map((mark) => ({ share: mark.x, what: t('notes:kind.look') })),
    ...timeline.sleep.flatMap((sleep) => [
      { share: sleep.from, what: t('notes:choice.sleep.what.fell-asleep') },
      ...(sleep.end === 'woke' ? [{ share: sleep.to, what: t('notes:choice.sleep.what.woke') }] : []),
    ]),
    ...timeline.drinks.map((drink) => ({
      share: drink.x,
      what: `${t('notes:kind.drink')}: ${t(`notes:choice.drink.amount.${drink.amount}`)}`,
    })),
    ...timeline.wee.map((mark) => ({ share: mark.x, what: t('notes:kind.wee') })),
    ...timeline.poo.map((mark) => ({ share: mark.x, what: t('notes:kind.poo') })),
  ];
  return found.sort((a, b) => b.share - a.share);
}
