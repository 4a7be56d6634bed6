/** What the pages for staff share: two languages, the notes summed up, and a picture of a day or a week. */
import { timelineOf, type Timeline } from '#domain/notes/timeline.ts';
import type { OpenSign, Summary } from '#domain/notes/summary.ts';
import { waitingFor } from '#domain/notes/waiting.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { isSignId } from '#content/signs.ts';
import { instant } from '#domain/units.ts';
import type { Words } from '#i18n/words.ts';
import { currentMoment, offsetAt } from '#state/now.svelte.ts';
import { currentNotes, notesLoaded, openNotes, summaryNow } from '#state/notes.svelte.ts';
import { secondLanguage, type SecondLanguage } from './second-language.svelte.ts';

export const STAFF_AREAS = ['staff', 'notes', 'card', 'look', 'steps', 'signs', 'ideas'] as const;
export type Span = 'day' | 'week';
/** What a later version or a stranger wrote must not push the rest off the sheet. */
const MOST_UNKNOWN = 5;
const MINUTES = { day: 1440, week: 7 * 1440 } as const;

export interface StaffView {
  second: SecondLanguage;
  /** Missing until the notes are read. */
  summary(): Summary | undefined;
  /** What waits for a nurse, the most urgent first, then the newest; of what this version does not know, a few. */
  open(): OpenSign[];
  /** How many more wait that this version does not know. */
  moreUnknown(): number;
  timeline(): Timeline | undefined;
  span(): Span;
  choose(span: Span): void;
  /** To be called in the browser. */
  start(): void;
}

export function staffView(own: () => Words, first: Span): StaffView {
  const second = secondLanguage(own, STAFF_AREAS);
  let span = $state(first);
  const summary = $derived(notesLoaded() && currentMoment() > 0 ? summaryNow() : undefined);
  const waiting = $derived(
    (summary ? waitingFor(summary) : []).sort(
      (a, b) => rankOf(b.urgency) - rankOf(a.urgency) || b.lastSeen - a.lastSeen,
    ),
  );
  const open = $derived.by(() => {
    let strange = 0;
    return waiting.filter(({ sign }) => isSignId(sign) || (strange += 1) <= MOST_UNKNOWN);
  });
  const timeline = $derived.by(() => {
    const now = currentMoment();
    return summary ? timelineOf(currentNotes(), instant(now - MINUTES[span]), now, offsetAt) : undefined;
  });
  return {
    second,
    summary: () => summary,
    open: () => open,
    moreUnknown: () => waiting.length - open.length,
    timeline: () => timeline,
    span: () => span,
    choose(wanted) {
      span = wanted;
    },
    start() {
      second.start();
      void openNotes();
    },
  };
}
