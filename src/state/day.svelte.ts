/** The child's day on this device: built from bed, card and plan, touched by the child, changed by the grown-up, kept. */
import { monthsOf } from '#domain/bed-card/card.ts';
import { dayNumberOf } from '#domain/clock/calendar.ts';
import { asPlanned, renewed, takenOff, UNDO_SECONDS, type DayBook, type DayEvent } from '#domain/day/book.ts';
import {
  clockAt,
  doorsAt,
  hardMomentNear,
  isEveningIn,
  isNightIn,
  mayPush,
  pathOf,
  skyAt,
  stripOf,
  type ClockFace,
  type Doors,
  type Sky,
  type Step,
} from '#domain/day/doors.ts';
import { leadsToLook, type Feeling, type FeelingPressed } from '#domain/day/feelings.ts';
import { bookOf, dayFactsOf, eatingFacts, type CardForDay } from '#domain/day/from-bed.ts';
import type { DayEventId } from '#domain/day/ids.ts';
import {
  pressedAtEdge,
  readKeptDay,
  untouched,
  usualWays,
  type EdgePressed,
  type KeptDay,
  type Today,
  type Ways,
} from '#domain/day/kept-day.ts';
import { modeRow, showsClock, type AgeMode } from '#domain/day/modes.ts';
import { dayPictures, type DayPicture } from '#domain/day/pictures.ts';
import { keptPrivate } from '#domain/day/private.ts';
import { dayOf, type Day, type Explained, type Tile } from '#domain/day/tiles.ts';
import { jobOf, openedDay, touched, type EdgePicture, type Job, type Tap } from '#domain/day/touch.ts';
import { holdsEating, type PlayBed } from '#domain/play-bed/bed.ts';
import { factsOf, nextDay, startBed, withoutCard } from '#domain/play-bed/problem.ts';
import type { DayMinute, Fault } from '#domain/play/types.ts';
import type { Instant } from '#domain/units.ts';
import { DAY_EVENTS, ROUTINE } from '#content/day-events.ts';
import { WARD_DAY } from '#content/ward-day.ts';
import { browserDayPlace } from '#device/day-place.ts';
import { afterSeconds, startStopwatch } from '#device/stopwatch.ts';
import { bedsideWard } from './bedside.svelte.ts';
import { forgetWord, hearWord, wordNow } from './by-mouth.svelte.ts';
import { currentCard, loadCard } from './card.svelte.ts';
import { currentFamily } from './family.svelte.ts';
import { currentMoment, offsetAt, readMoment } from './now.svelte.ts';
import { bedAhead, beginBedsAnew, openBed, openPlay, tickedBed, wardAt } from './play.svelte.ts';

/** How many day pictures are drawn; then they begin again. */
const DAY_PICTURE_COUNT = 12;

let kept = $state.raw<KeptDay | undefined>(undefined);
let faults = $state.raw<readonly Fault[]>([]);
let isAside = $state(false);
let allLost = $state(false);
let notKept = $state(false);
/** Whether parts of the kept day could not be read: they are put back as the bed has them, not told as new. */
let partsLost = false;
/** The day as this tab last read or wrote it; another tab may have written since. */
let lastKept = '';
let undo = $state.raw<{ id: string; seconds: () => number } | undefined>(undefined);
let stopUndo: (() => void) | undefined;
let stopHearing: (() => void) | undefined;

/** Whether the kept day was read; before that there is none. */
export const dayIsOpen = (): boolean => kept !== undefined;
/** What of the kept day could not be read; the rest was kept. */
export const dayFaults = (): readonly Fault[] => faults;
/** Whether nothing at all of the kept day could be read. */
export const dayLost = (): boolean => allLost;
/** Whether the text of what could not be read lies elsewhere on this device now. */
export const dayAside = (): boolean => isAside;
/** Whether the browser refused to keep the last change. */
export const dayNotKept = (): boolean => notKept;
/** How this family wants the child's pages. */
export const dayWays = (): Ways => kept?.ways ?? usualWays(true);

/** The bed as it is today; without a ticked one, the ward's usual day for the age of card or drawing. */
export function bedOfToday(today: string): PlayBed {
  const bed = openBed();
  if (bed) return { ...nextDay(bed, today), day: today };
  const card = currentCard();
  const { age } = currentFamily();
  return startBed('circle', today, card ? factsOf(card, age, currentMoment()) : withoutCard(age), WARD_DAY);
}

/** Completed months, as the day is shown for: the card's, the bed's, the drawing's. */
export function dayAgeMonths(): number {
  const { age } = currentCard() ?? {};
  if (age) return monthsOf(age);
  return openBed()?.child.ageMonths ?? currentFamily().age * 12;
}

/** What card, bed and grown-up say about today: eating, medicine minutes, hands to choose. */
export function cardForDay(): CardForDay {
  const told = dayFactsOf(currentCard(), dayAgeMonths(), bedsideWard().medicineWaitMinutes);
  const now = currentMoment();
  const held = wordNow();
  const bed = tickedBed();
  const bedEats = !bed || !holdsEating(bed);
  // a bed that is ticked "not eating" says nothing of when
  const since = bedEats ? held?.since : undefined;
  // the word has no end: no time that a card before it gave ends it
  const facts = held ? {} : told.facts;
  return { ...told, facts: eatingFacts(facts, bedEats && !held, now, since) };
}

/** How the day is shown: as the family chose, or by age. */
export const dayMode = (): AgeMode => kept?.ways.mode ?? cardForDay().mode;
/** The mode by age alone, for whoever chooses another. */
export const modeByAge = (): AgeMode => cardForDay().mode;
/** Whether a clock is shown beside or instead of sun and moon. */
export const dayShowsClock = (): boolean => showsClock(dayMode(), dayAgeMonths());

/** The ward's day that it is now, as 2026-01-31. */
export const dayToday = (): string => wardAt(currentMoment()).day;
/** The kept day where it lies ahead of this device's clock: one of the two was or is wrong. */
const bookAhead = (): string | undefined => {
  const day = kept?.book?.day ?? kept?.today?.day;
  return day !== undefined && day > dayToday() ? day : undefined;
};
/** The day that is shown: today, or what is kept while the clock shows an earlier one. */
export const dayShown = (): string => bookAhead() ?? dayToday();
/** A day kept here that this device's clock has not reached: the child's, or a bed's. */
export const dayAhead = (): string | undefined => (kept ? (bookAhead() ?? bedAhead()) : undefined);

const freshBook = (today: string): DayBook => bookOf(bedOfToday(today), DAY_EVENTS, ROUTINE, dayMode());

function keep(next: KeptDay): void {
  kept = next;
  hearWord(next.nothingByMouth);
  lastKept = JSON.stringify(next);
  const place = browserDayPlace();
  // what could not be read is not written over before it lies elsewhere
  if (faults.length > 0 && !isAside) isAside = place.putAside();
  notKept = (faults.length > 0 && !isAside) || !place.write(next);
}

/** Takes over what another tab has written, so that no change is made to an older day. */
function withOtherTabs(): void {
  if (!kept || notKept) return;
  const value = browserDayPlace().read();
  // gone: everything was put away, and this tab is told so
  if (value === undefined || JSON.stringify(value) === lastKept) return;
  takeIn(value);
}

function takeIn(value: unknown): void {
  const read = readKeptDay(value, usualWays(currentFamily().shared));
  faults = read.faults;
  isAside = faults.length > 0 && browserDayPlace().putAside();
  const { book, today, firstDay, nothingByMouth } = read.kept;
  allLost = faults.length > 0 && !book && !today && firstDay === undefined && !nothingByMouth?.since;
  partsLost = faults.some(({ where }) => where.startsWith('day › events'));
  lastKept = JSON.stringify(value);
  kept = read.kept;
  hearWord(nothingByMouth);
}

/** Reads what this device keeps. Nothing of it is shown before. */
export function openDay(): void {
  if (kept) return;
  readMoment();
  loadCard();
  openPlay();
  takeIn(browserDayPlace().read());
  stopHearing = browserDayPlace().onOtherTab(withOtherTabs);
  followDay();
}

/** The first day that counts: when the nurse made the card, or when this device was first opened. */
function firstDayOf(today: string): string {
  const madeAt = currentCard()?.madeAt;
  const days = [kept?.firstDay, madeAt === undefined ? undefined : wardAt(madeAt).day, today];
  return days.filter((one) => one !== undefined).sort()[0] ?? today;
}

/** Brings the kept day up to bed, card, plan and date. Pages call it in an effect, so that it follows them. */
export function followDay(): void {
  // by a clock that was set back nothing begins: all of it waits until the clock is right
  if (!kept || bookAhead() !== undefined) return;
  const today = dayToday();
  const fresh = freshBook(today);
  const book = kept.book ? renewed(kept.book, fresh, offsetAt, partsLost) : fresh;
  partsLost = false;
  const firstDay = firstDayOf(today);
  const same = kept.today?.day === today && kept.firstDay === firstDay;
  if (same && JSON.stringify(book) === JSON.stringify(kept.book)) return;
  keep({ ...kept, book, firstDay, today: todayKept() });
}

/** Whoever sees that the clock is right now begins today anew, with its beds. */
export function beginAnew(): void {
  withOtherTabs();
  if (!kept) return;
  beginBedsAnew();
  if (bookAhead() !== undefined) {
    const { book: _book, today: _today, ...rest } = kept;
    kept = rest;
  }
  followDay();
}

/** Today's touches; those of an earlier day are gone, those of a day ahead of the clock are not. */
export function todayKept(): Today {
  const today = dayToday();
  return kept?.today && kept.today.day >= today ? kept.today : untouched(today);
}

/** Keeps a change of today's touches. */
export function keepToday(change: Partial<Today>): void {
  withOtherTabs();
  if (kept) keep({ ...kept, today: { ...todayKept(), ...change } });
}

/** The day as it is kept; nothing before it was read. */
export const dayBook = (): DayBook | undefined => kept?.book;
const laid = $derived(kept?.book && dayOf(kept.book, DAY_EVENTS, cardForDay().facts, offsetAt));
/** The day as it stands, tiled without a gap. */
export const dayNow = (): Day | undefined => laid;

/** What stands behind the doors. */
export const doorsNow = (): Doors | undefined =>
  laid && kept?.book && doorsAt(laid, kept.book, dayMode(), currentMoment(), DAY_EVENTS, offsetAt);
/** The way of the whole day, step by step. */
export const pathNow = (): Step[] =>
  laid && kept?.book ? pathOf(laid, kept.book, dayMode(), currentMoment(), DAY_EVENTS) : [];
/** The day as this child's strip shows it. */
export const stripNow = (): Tile[] => (laid ? stripOf(laid, dayMode(), currentMoment(), DAY_EVENTS) : []);
/** The hard moment that is near, as far as this age is told of it. */
export const hardMomentNow = (): Tile | undefined => hardMomentNear(stripNow(), currentMoment());
/** What a part of the day is, as the child sees it: a care not told yet is "something new". */
export const kindNow = (id: string): DayEventId | undefined => stripNow().find((one) => one.id === id)?.kind;
/** Whether the child may push a picture through the door. */
export const mayPushNow = (id: string): boolean =>
  laid !== undefined &&
  kept?.book !== undefined &&
  mayPush(laid, kept.book, dayMode(), id, currentMoment(), DAY_EVENTS, offsetAt) === 'go';
/** How far the day is, for who reads no clock. */
export const skyNow = (): Sky | undefined => laid && skyAt(laid, currentMoment());
/** What the clock on the wall shows. */
export const clockNow = (): ClockFace => clockAt(currentMoment(), offsetAt);
/** Whether it is night for the child. */
export const isNightForChild = (): boolean =>
  laid !== undefined && isNightIn(laid, currentMoment(), offsetAt);
/** Whether that night has only just begun. */
export const isEveningForChild = (): boolean =>
  laid !== undefined && isEveningIn(laid, currentMoment(), offsetAt);
/** What stands elsewhere than first, as far as this age is told of it by now. */
export function explainedNow(): Explained[] {
  const mode = dayMode();
  const strip = stripNow();
  const told = ({ event, kind, how, is }: Explained) =>
    // whatever stands in its place tells that the child is awake
    kind === 'wake' && how !== 'moved'
      ? false
      : is
        ? // a care that is still "something new" is not told by having moved
          strip.some((tile) => tile.id === event && tile.kind === kind)
        : !(DAY_EVENTS[kind].hurts && modeRow(mode).tellAheadMinutes !== undefined);
  return (laid?.explained ?? []).filter(
    (one) => DAY_EVENTS[one.kind].modes.some((shown) => shown === mode) && told(one),
  );
}
/** The job of the day, for who is nine to twelve. */
export const jobNow = (): Job | undefined => jobOf(dayMode(), dayNumberOf(dayToday()) ?? 0);
/** The row of day pictures: one for each day here; where they are to be asked for, only when they were. */
export function dayPicturesNow(): DayPicture[] {
  if (modeRow(dayMode()).dayPicture === 'where-wanted' && !dayWays().dayPictures) return [];
  const today = dayToday();
  return kept ? dayPictures(kept.firstDay ?? today, today, DAY_PICTURE_COUNT) : [];
}

/** One touch of the child. What is not possible now changes nothing, and nothing of it is a note. */
export function touchDay(tap: Tap): void {
  withOtherTabs();
  if (!kept?.book) return;
  const today = todayKept();
  const before = { ...openedDay(kept.book), feelings: today.feelings };
  const after = touched(before, tap, {
    ...{ mode: dayMode(), now: readMoment(), table: DAY_EVENTS, facts: cardForDay().facts, offsetAt },
  });
  if (after.book === before.book && after.feelings === before.feelings) return;
  keep({ ...kept, book: after.book, today: { ...today, feelings: after.feelings } });
}

/** Pushes a picture through the door; for ten seconds it can be taken back. */
export function pushThrough(id: string): void {
  withOtherTabs();
  const before = kept?.book;
  touchDay({ kind: 'push', id });
  if (kept?.book === before) return;
  stopUndo?.();
  undo = { id, seconds: startStopwatch() };
  stopUndo = afterSeconds(UNDO_SECONDS, () => (undo = undefined));
}

/** What was pushed last, while it can be taken back. */
export const undoable = (): string | undefined => undo?.id;

/** Takes back what was pushed last, as long as it can be. */
export function takeBack(): void {
  if (undo) touchDay({ kind: 'take-back', id: undo.id, seconds: undo.seconds() });
  stopUndo?.();
  undo = undefined;
}

/** A body picture was pressed. */
export const pressFeeling = (picture: Feeling): void => touchDay({ kind: 'feel', picture });
/** Body pictures pressed today. */
export const feelingsToday = (): readonly FeelingPressed[] => (kept ? todayKept().feelings : []);

/** A picture at the edge was pressed; shown to the grown-up with its minute, today, and nowhere else. */
export function pressEdge(picture: EdgePicture): void {
  withOtherTabs();
  if (!kept) return;
  const today = pressedAtEdge(todayKept(), picture, readMoment());
  if (today !== todayKept()) keep({ ...kept, today });
}
/** Pictures at the edge pressed today, with their minutes. */
export const edgeToday = (): readonly EdgePressed[] => (kept ? todayKept().edge : []);
/** Whether the grown-up, and never the child, is led to a look at the leg. */
export const leadsGrownUpToLook = (): boolean =>
  leadsToLook(
    feelingsToday(),
    edgeToday().some(({ picture }) => picture === 'it-hurts'),
  );

function edit(change: (book: DayBook) => DayBook): void {
  withOtherTabs();
  if (!kept?.book) return;
  const book = change(kept.book);
  if (book !== kept.book) keep({ ...kept, book });
}

/** Takes a part out of the day; it is told, not forgotten. */
export const takeOffDay = (id: string): void => edit((book) => takenOff(book, id, 'not-today'));
/** Puts a part back where it stood first. */
export const putBackInDay = (id: string): void => edit((book) => asPlanned(book, id));
/** Keeps a part of the day to the child, or shows it again. */
export const keepPrivate = (id: string, yes: boolean): void =>
  edit((book) => keptPrivate(book, id, DAY_EVENTS, yes));

/** Somebody of the ward said "nothing by mouth", or ended it; what a card says stays. */
export function holdEating(nothing: boolean): void {
  withOtherTabs();
  if (!kept) return;
  const { nothingByMouth: _ended, ...rest } = kept;
  const cardMadeAt = currentCard()?.madeAt;
  const word = { since: readMoment(), ...(cardMadeAt === undefined ? {} : { cardMadeAt }) };
  keep({ ...rest, ...(nothing ? { nothingByMouth: word } : {}) });
}
/** Changes how the child's pages are; `mode: undefined` is by age. */
export function chooseWays(change: Partial<Ways> | { mode: undefined }): void {
  withOtherTabs();
  if (!kept) return;
  const { mode, ...rest } = { ...kept.ways, ...change };
  keep({ ...kept, ways: { ...rest, ...(mode ? { mode } : {}) } });
  followDay();
}

/** Takes the day and all that was pressed off this device; false where it is still there. */
export function forgetDay(): boolean {
  kept = undefined;
  forgetWord();
  faults = [];
  [notKept, partsLost, isAside, allLost, lastKept] = [false, false, false, false, ''];
  stopUndo?.();
  stopHearing?.();
  undo = undefined;
  return browserDayPlace().clear();
}

/** Units: universal minutes -> what the ward's wall shows, in minutes since midnight. */
export const wardMinute = (at: Instant): DayMinute => wardAt(at).minute;

/** A change by the grown-up's hand, or of the child's own time. */
export const editDay = (change: (book: DayBook, day: Day) => DayBook): void =>
  edit((book) => (laid ? change(book, laid) : book));
/** A part of the kept day by its id. */
export const dayEvent = (id: string): DayEvent | undefined => kept?.book?.events.find((one) => one.id === id);
