/** From notes to the part of a report that the rules read. */
import { isOpen, medicineWaitMinutes } from '../signs/over-time.ts';
import type { Context, Report, Sighting, SorenessNote } from '../signs/types.ts';
import { DAY_MINUTES, type Instant } from '../units.ts';
import { correctedNotes } from './clocks.ts';
import { struckIds, type Entry } from './entries.ts';
import { eventsOf } from './pairs.ts';
import { sightingsOf } from './sightings.ts';

/** What `reportOf` reads of the context. */
export type ReportContext = Pick<Context, 'now' | 'ward'>;
type NotedPart = Required<Pick<Report, 'sightings' | 'soreness' | 'medicineAt' | 'askedEarlyAt'>>;

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
 * Units: whole universal minutes.
 *
 * @example assess({ answers, ...reportOf(notes, context) }, context)
 */
export function reportOf(entries: readonly Entry[], context: ReportContext): NotedPart {
  const { now } = context;
  const notes = correctedNotes(entries);
  const sightings = withoutRepeats(sightingsOf(notes), now);

  const struck = struckIds(notes);
  const soreness: SorenessNote[] = [];
  const marks: Instant[] = [];
  let lookedAt = -Infinity;
  const newSinceLook = { sore: false, asked: false };
  for (const entry of notes) {
    if (struck.has(entry.id) || entry.t > now) continue;
    if (entry.kind === 'sore') {
      soreness.push({ at: entry.t, value: entry.value, scale: entry.scale, when: entry.when });
      newSinceLook.sore = true;
    } else if (entry.kind === 'medicine-told') {
      marks.push(entry.t);
    } else if (entry.kind === 'asked-for-medicine') {
      newSinceLook.asked = true;
    } else if (entry.kind === 'nurse-looked') {
      lookedAt = entry.t;
      newSinceLook.sore = newSinceLook.asked = false;
    }
  }

  const lastRest = soreness.filter((note) => note.when === 'rest').at(-1)?.at ?? -Infinity;
  // a nurse who looked while this was so could not yet know how the dose would work
  const wait = medicineWaitMinutes(context.ward);
  const tooSoon = marks.some((mark) => mark < lastRest && lookedAt < mark + wait);
  const dayBefore = (soreness.at(-1)?.at ?? -Infinity) - DAY_MINUTES;
  const askedEarlyAt = newSinceLook.asked
    ? eventsOf(notes, (e) => e.kind === 'asked-for-medicine' && e.t <= now).flatMap(({ parts }) =>
        parts.map((part) => part[0]!.t),
      )
    : [];
  return {
    sightings,
    soreness: newSinceLook.sore || tooSoon ? soreness.filter((note) => note.at >= dayBefore) : [],
    medicineAt: marks.filter((mark, i) => mark >= dayBefore || i === marks.length - 1),
    askedEarlyAt,
  };
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
    const key = JSON.stringify([s.sign, s.answer, s.details, s.toldAt === undefined]);
    return !known.has(key) && !!known.add(key);
  });
}
