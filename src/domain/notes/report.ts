/** From notes to the part of a report that the rules read. */
import { isOpen, medicineWaitMinutes, wentBack } from '../signs/over-time.ts';
import type { Context, Report, Sighting, SorenessNote, SorenessPart } from '../signs/types.ts';
import { DAY_MINUTES, type Instant } from '../units.ts';
import { correctedNotes, type CorrectedEntry } from './clocks.ts';
import { byTime, struckIds, type Entry } from './entries.ts';
import { orderOf, type NoteOrder } from './order.ts';
import { eventsOf } from './pairs.ts';
import { sightingsOf } from './sightings.ts';

/** What `reportOf` reads of the context. */
export type ReportContext = Pick<Context, 'now' | 'ward'>;
type NotedPart = Required<Pick<Report, 'sightings'>> & SorenessPart & Pick<Report, 'otherReading'>;

/**
 * What this family noted until now, as the rules read it; struck notes are left out and wrong clocks corrected.
 *
 * Sightings: all that no nurse looked at, and those of the last day; of the same thing seen again and again before the
 * last two hours the first is enough, for any rule. Soreness and medicine marks: those of the day
 * before the last soreness note, so that the mark of last week is not held against today's value; the last mark always.
 * What soreness says stays until a nurse looked after it: a soreness note, or a further asking, after that look brings
 * everything back. A look while a dose noted before it may not have worked yet closes nothing. A question for medicine
 * that two phones noted counts twice until the family calls it the same.
 *
 * Where a phone's clock went back, its notes stand in the order of their numbers (`orderOf`). Notes far ahead of now are
 * of a clock that went back since, or of one that runs ahead: soreness is read in both ways.
 *
 * Units: whole universal minutes.
 *
 * @example assess({ answers, ...reportOf(notes, context) }, context)
 */
export function reportOf(entries: readonly Entry[], context: ReportContext): NotedPart {
  const { now } = context;
  const notes = correctedNotes(entries);
  const report: NotedPart = {
    sightings: withoutRepeats(sightingsOf(notes, now), now),
    ...sorenessPart(notes, context, orderOf(notes)),
  };
  if (notes.some((entry) => wentBack(entry.t, now)))
    report.otherReading = sorenessPart(notes, context, orderOf(notes, now));
  return report;
}

function sorenessPart(
  notes: readonly CorrectedEntry[],
  context: ReportContext,
  order: NoteOrder,
): SorenessPart {
  const { now } = context;
  const struck = struckIds(notes);
  const past = notes.filter((entry) => !struck.has(entry.id) && order.at(entry) <= now);
  // by its own time alone a note that was drawn back would stand behind what was written after it
  if (!order.byTimeAlone) past.sort((a, b) => order.at(a) - order.at(b) || byTime(a, b));
  const soreness: SorenessNote[] = [];
  const marks: Instant[] = [];
  const unsure: Instant[] = [];
  const looks = past.filter((entry) => entry.kind === 'nurse-looked');
  const newSinceLook = { sore: false, asked: false };
  const closed = (entry: Entry) => looks.some((look) => order.isAfter(look, entry));
  for (const entry of past) {
    const at = order.at(entry);
    if (entry.kind === 'sore') {
      soreness.push({ at, value: entry.value, scale: entry.scale, when: entry.when });
      newSinceLook.sore ||= !closed(entry);
    } else if (entry.kind === 'medicine-told') {
      marks.push(at);
      if (order.wentBackSince(entry)) unsure.push(at);
    } else if (entry.kind === 'asked-for-medicine') {
      newSinceLook.asked ||= !closed(entry);
    }
  }

  const lastRest = soreness.filter((note) => note.when === 'rest').at(-1)?.at ?? -Infinity;
  const lookedAt = looks.length ? order.at(looks.at(-1)!) : -Infinity;
  // a nurse who looked while this was so could not yet know how the dose would work
  const wait = medicineWaitMinutes(context.ward);
  const tooSoon = marks.some((mark) => mark < lastRest && lookedAt < mark + wait);
  const dayBefore = (soreness.at(-1)?.at ?? -Infinity) - DAY_MINUTES;
  const askedEarlyAt = newSinceLook.asked
    ? eventsOf(notes, (e) => e.kind === 'asked-for-medicine' && order.at(e) <= now).flatMap(({ parts }) =>
        parts.map((part) => order.at(part[0]!)),
      )
    : [];
  const part: SorenessPart = {
    soreness: newSinceLook.sore || tooSoon ? soreness.filter((note) => note.at >= dayBefore) : [],
    medicineAt: marks.filter((mark, i) => mark >= dayBefore || i === marks.length - 1),
    askedEarlyAt,
  };
  if (unsure.length) part.medicineWaitUnknown = unsure;
  return part;
}

/** R20 counts sightings of the last two hours, one by one. */
const COUNTED_MINUTES = 120;

/**
 * The rules ask since when something has been open, not how often it was seen: without this, a fortnight in which
 * nobody tapped "a nurse looked" would make every page slow.
 */
function withoutRepeats(sightings: readonly Sighting[], now: Instant): Sighting[] {
  const known = new Set<string>();
  return sightings.filter((s) => {
    if (!isOpen(s)) return now - s.at <= DAY_MINUTES;
    if (now - s.at <= COUNTED_MINUTES) return true;
    const key = JSON.stringify([s.sign, s.answer, s.details, s.toldAt === undefined, s.clockWentBack]);
    return !known.has(key) && !!known.add(key);
  });
}
