/** What came again within a day. */
import { writtenAs } from './clocks.ts';
import { byTime, type Entry } from './entries.ts';
import type { NoteOrder } from './order.ts';
import { countEvents, notesOf, type Count, type PossibleEvent } from './pairs.ts';
import type { Repeat } from './summary.ts';

/** One phone that tells a sign in other words so soon after tells more of the same sight, not of another. */
const SAME_SIGHT_MINUTES = 10;

const doubtful = (entry: Entry, sign: string): boolean =>
  entry.kind === 'sign'
    ? entry.answer === 'not-sure' && !entry.details?.length
    : entry.kind === 'look' && entry.answers[sign] === 'not-sure';

const signsIn = (entry: Entry): string[] => {
  if (entry.kind === 'sign') return [entry.sign];
  if (entry.kind !== 'look') return [];
  return Object.entries(entry.answers).flatMap(([sign, answer]) =>
    answer === 'different' || answer === 'not-sure' ? [sign] : [],
  );
};

/**
 * Signs that were seen twice at least, or may have been.
 *
 * A nurse's look ends a sight, as in rule R13. Without one, each note is a sight of its own, but for a phone that tells
 * the same sign in other words within ten minutes: its sub-answer, or "different" after "not sure".
 * Shape: `events` and `looks` of the time that is looked back on; `looks` are notes of kind `nurse-looked`.
 */
export function repeatsOf(
  events: readonly PossibleEvent[],
  looks: readonly Entry[],
  order: NoteOrder,
): Repeat[] {
  const bySign = new Map<string, PossibleEvent[]>();
  for (const event of events)
    for (const sign of new Set(event.parts[0]!.flatMap(signsIn)))
      bySign.set(sign, [...(bySign.get(sign) ?? []), event]);
  const between = (first: Entry, last: Entry) =>
    looks.some((look) => order.isAfter(look, first) && order.isAfter(last, look));
  const repeats = [...bySign].flatMap(([sign, line]): Repeat[] => {
    const count = countSights(line, order, between);
    if (count.high < 2) return [];
    const seen = notesOf(line).sort((a, b) => order.at(a) - order.at(b) || byTime(a, b));
    const [first, last] = [seen[0]!, seen.at(-1)!];
    const [from, to] = [order.at(first), order.at(last)];
    return [
      {
        ...{ sign, ...count, first: from, last: to, nurseLookedBetween: between(first, last) },
        ...(seen.every((entry) => doubtful(entry, sign)) && { notSure: true }),
        from: seen.map(({ id }) => id),
      },
    ];
  });
  return repeats.sort((a, b) => b.high - a.high || (a.sign < b.sign ? -1 : 1));
}

const wordsOf = (entry: Entry): string =>
  entry.kind === 'sign' ? JSON.stringify([entry.answer, [...(entry.details ?? [])].sort()]) : '';
const phonesOf = (event: PossibleEvent): (string | undefined)[] =>
  notesOf([event]).map(({ id }) => writtenAs(id)?.device);

function countSights(
  line: readonly PossibleEvent[],
  order: NoteOrder,
  between: (first: Entry, last: Entry) => boolean,
): Count {
  const firstOf = (event: PossibleEvent) => event.parts[0]![0]!;
  const inOrder = [...line].sort(
    (a, b) => order.at(firstOf(a)) - order.at(firstOf(b)) || byTime(firstOf(a), firstOf(b)),
  );
  const sights: PossibleEvent[][] = [];
  for (const event of inOrder) {
    const next = firstOf(event);
    const phones = phonesOf(event);
    const same = sights.find((sight) => {
      const begun = firstOf(sight[0]!);
      return (
        next.kind === 'sign' &&
        order.at(next) - order.at(begun) <= SAME_SIGHT_MINUTES &&
        !between(begun, next) &&
        sight.every((one) => firstOf(one).kind === 'sign' && wordsOf(firstOf(one)) !== wordsOf(next)) &&
        sight.some((one) => phonesOf(one).some((phone) => phone !== undefined && phones.includes(phone)))
      );
    });
    if (same) same.push(event);
    else sights.push([event]);
  }
  const counts = sights.map((sight) => sight.map((event) => countEvents([event])));
  const most = (numbers: readonly number[]) => Math.max(...numbers);
  return {
    low: sights.length,
    high: counts.reduce((sum, sight) => sum + most(sight.map(({ high }) => high)), 0),
  };
}
