/** The child's choices between two pictures: what is offered now, what waits, what was chosen today. */
import {
  momentChoices,
  offerState,
  orderChoice,
  type Choice,
  type MomentChoiceId,
} from '#domain/day/choices.ts';
import type { Tile } from '#domain/day/tiles.ts';
import { DAY_EVENTS } from '#content/day-events.ts';
import {
  bedOfToday,
  cardForDay,
  dayBook,
  dayIsOpen,
  dayMode,
  dayNow,
  dayToday,
  isNightForChild,
  keepToday,
  stripNow,
  todayKept,
  touchDay,
} from './day.svelte.ts';
import { currentMoment, readMoment } from './now.svelte.ts';
import { wardAt } from './play.svelte.ts';

/** A hard moment's choices are offered so many minutes ahead, and never before the child is told of it. */
const CHOICES_AHEAD = 60;
/** Which of two comes first is asked while it is near: in the morning, teeth or story would look like what comes now. */
const ORDER_AHEAD = 120;

/** A choice between two pictures, as it is offered now. */
export interface Offered {
  key: string;
  kind: 'order' | 'moment';
  choice: Choice;
  /** The hard moment it belongs to. */
  care?: Tile;
}

const orderKey = ([a, b]: Choice['options']) => `first/${[a, b].sort().join('-')}`;

/** All choices of now that were not answered, whether they are offered or wait. */
function openChoices(): Offered[] {
  const [day, book] = [dayNow(), dayBook()];
  if (!day || !book || isNightForChild()) return [];
  const now = currentMoment();
  const mode = dayMode();
  const { chosen } = todayKept();
  const minute = wardAt(now).minute;
  const bed = bedOfToday(dayToday());
  const grownUp = bed.sketch.grownUp.some(({ from, until }) => from <= minute && minute < until);
  const cares = stripNow().filter(({ hurts, from, to }) => hurts && from - now <= CHOICES_AHEAD && now < to);
  const atCares = cares.flatMap((care) =>
    momentChoices(mode, { handsToChoose: cardForDay().handsToChoose, grownUp }).map((choice): Offered => ({
      key: `${care.id}/${choice.id}`,
      kind: 'moment',
      choice,
      care,
    })),
  );
  const next = orderChoice(day, book, mode, now, DAY_EVENTS);
  const begins = day.tiles.find(({ id }) => id === next?.options[0])?.from ?? Infinity;
  const order = begins - now <= ORDER_AHEAD ? next : undefined;
  const all: Offered[] = [
    ...atCares,
    ...(order ? [{ key: orderKey(order.options), kind: 'order' as const, choice: order }] : []),
  ];
  return all.filter(({ key }) => !Object.hasOwn(chosen, key));
}

/**
 * The choice that is offered now; nothing where it waits or was let pass three times. Where one was let pass, none of its
 * kind takes its place: pictures do not change under a finger.
 */
export function offeredNow(): Offered | undefined {
  const { offers } = todayKept();
  const stateOf = ({ key }: Offered) => offerState(offers[key], currentMoment());
  const open = openChoices();
  return open.find(
    (one) =>
      stateOf(one) === 'now' && !open.some((other) => other.kind === one.kind && stateOf(other) === 'later'),
  );
}
/** A choice that was let pass and may be asked for. */
export const waitingChoice = (): Offered | undefined => openChoices()[0];

/** Five seconds without an answer: it is no answer, and it is offered again later. */
export function letPass(key: string): void {
  const { offers } = todayKept();
  const passed = (offers[key]?.passed ?? 0) + 1;
  keepToday({ offers: { ...offers, [key]: { passed, lastAt: readMoment() } } });
}

/** The child chose; `neither` where it may. */
export function chooseOption(offered: Offered, option: string): void {
  if (offered.kind === 'order' && option !== 'neither') touchDay({ kind: 'first', id: option });
  keepToday({ chosen: { ...todayKept().chosen, [offered.key]: option } });
}

/** What the child chose for a hard moment today, by choice. */
export function chosenFor(care: string): Partial<Record<MomentChoiceId, string>> {
  const rows = Object.entries(dayIsOpen() ? todayKept().chosen : {});
  return Object.fromEntries(
    rows.flatMap(([key, option]) =>
      key.startsWith(`${care}/`) ? [[key.slice(care.length + 1), option]] : [],
    ),
  );
}
