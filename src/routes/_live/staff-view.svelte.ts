/** What the pages for staff share: two languages, the notes summed up, and a picture of a day or a week. */
import { timelineOf, type Timeline } from '#domain/notes/timeline.ts';
import type { OpenSign, Summary } from '#domain/notes/summary.ts';
import { mostUrgentFirst, waitingFor } from '#domain/notes/waiting.ts';
import { isSignId } from '#content/signs.ts';
import { DAY_MINUTES, instant } from '#domain/units.ts';
import type { Words } from '#i18n/words.ts';
import { currentMoment, offsetAt } from '#state/now.svelte.ts';
import { currentNotes, notesLoaded, openNotes, summaryNow } from '#state/notes.svelte.ts';
import { secondLanguage, type SecondLanguage } from './second-language.svelte.ts';

const STAFF_AREAS = ['staff', 'notes', 'card', 'look', 'steps', 'signs', 'ideas'] as const;
export type Span = 'day' | 'week';
/** What a later version or a stranger wrote must not push the rest off the sheet. */
const MOST_UNKNOWN = 5;
const MINUTES = { day: DAY_MINUTES, week: 7 * DAY_MINUTES } as const;

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

/**
 * What a page for staff shows, in the page's language and another; `start` it in the browser.
 * Shape: `own` gives the words of the page; `first` is what the picture shows at first.
 */
export function staffView(own: () => Words, first: Span): StaffView {
  const second = secondLanguage(own, STAFF_AREAS);
  let span = $state(first);
  const summary = $derived(notesLoaded() && currentMoment() > 0 ? summaryNow() : undefined);
  const waiting = $derived(summary ? mostUrgentFirst(waitingFor(summary)) : []);
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
