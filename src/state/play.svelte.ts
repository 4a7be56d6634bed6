/** The beds on this device and their days of play: read, changed by hand, planned, kept. */
import { BED_SHAPES, type BedShape, type PlayBed } from '#domain/play-bed/bed.ts';
import {
  cameUp,
  changesBetween,
  pinsBetween,
  pushedOut,
  restOfDay,
  settled,
  type CameUp,
  type InTheDay,
} from '#domain/play-bed/came-up.ts';
import { heldPlan } from '#domain/play-bed/held-plan.ts';
import { readKeptBeds, type UnreadBeds } from '#domain/play-bed/kept-beds.ts';
import { notEating } from '#domain/play-bed/not-eating.ts';
import {
  begunAnew,
  factsOf,
  fromNow,
  nextDay,
  problemOf,
  startBed,
  withoutCard,
} from '#domain/play-bed/problem.ts';
import { decodePlay, encodePlay, type DecodedPlay } from '#domain/play-bed/travel.ts';
import type { DayMinute, DayProblem, Fault, Impossible, Placement, Plan } from '#domain/play/types.ts';
import { dateOf } from '#domain/clock/calendar.ts';
import { localDay } from '#domain/clock/local.ts';
import { localMinute } from '#domain/clock/night.ts';
import type { Instant } from '#domain/units.ts';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { IDEAS } from '#content/ideas.ts';
import { WARD_DAY } from '#content/ward-day.ts';
import { browserPlanner, type Planner } from '#device/planner.ts';
import { browserPlayPlace } from '#device/play-place.ts';
import { loadWord, nothingByMouthNow } from './by-mouth.svelte.ts';
import { currentCard, loadCard } from './card.svelte.ts';
import { currentFamily } from './family.svelte.ts';
import { currentMoment, offsetAt, readMoment } from './now.svelte.ts';

interface Kept {
  /** The shape of the bed that is open. */
  open: BedShape;
  beds: readonly PlayBed[];
}
interface AlsoChanged extends Partial<ReturnType<typeof pinsBetween>> {
  /** What of the day was told, and stands nowhere in it now. */
  pushed?: InTheDay;
}
export type Changes = ReturnType<typeof changesBetween> & AlsoChanged;

let kept = $state.raw<Kept | undefined>(undefined);
let faults = $state.raw<readonly Fault[]>([]);
let unread = $state.raw<readonly UnreadBeds[]>([]);
let isAside = $state(false);
let notKept = $state(false);
/** The beds as this tab last read or wrote them; another tab may have written since. */
let lastKept: string | undefined;
/** Beds whose last change the browser refused to keep: it is nowhere but here. */
let refused: readonly BedShape[] = [];
/** The bed that is being planned. */
let planning = $state<BedShape>();
let planFailed = $state(false);
let result = $state.raw<{ shape: BedShape; found: Plan | Impossible } | undefined>(undefined);
let changes = $state.raw<Changes | undefined>(undefined);
let planner: Planner | undefined;
let question = 0;
let stopHearing: (() => void) | undefined;

const bedIn = (beds: readonly PlayBed[] | undefined, shape: BedShape) =>
  beds?.find((bed) => bed.shape === shape);
/** The beds of this device, in the order in which they came. */
export const playBeds = (): readonly PlayBed[] => kept?.beds ?? [];
/** The bed that is shown, as it was ticked. */
export const tickedBed = (): PlayBed | undefined => kept && bedIn(kept.beds, kept.open);
/** Where nobody may eat, as the bed or the child's day says, nothing of a plan is offered with food. */
const asMayEat = (bed: PlayBed): PlayBed =>
  bed.eating && !nothingByMouthNow() ? bed : notEating(bed, IDEAS);
const minuteShown = $derived(wardAt(currentMoment()).minute);
const shownBed = $derived.by(() => {
  const bed = tickedBed();
  return bed && heldPlan(asMayEat(bed), IDEAS, minuteShown);
});
/** The bed that is shown, as play is offered and planned from. */
export const openBed = (): PlayBed | undefined => shownBed;
/** Whether some of the plan that is kept no longer suits the open bed, and is not shown. */
export const hasOutgrownPlan = (): boolean =>
  (tickedBed()?.plan?.length ?? 0) > (openBed()?.plan?.length ?? 0) && !isPlanning();
/** What of the kept beds could not be read; the rest was. */
export const playUnread = (): readonly UnreadBeds[] => unread;
/** Whether the text of what could not be read lies elsewhere on this device now. */
export const playAside = (): boolean => isAside;
/** What of the day as ticked could not be used; the rest was. */
export const playFaults = (): readonly Fault[] => faults;
/** Whether the browser refused to keep the last change. */
export const playNotKept = (): boolean => notKept;
/** Whether a plan of the bed that is open is being made. */
export const isPlanning = (): boolean => planning !== undefined && planning === kept?.open;
/** Whether the planner itself could not be had: it is not on this device yet, and there is no network. */
export const planningFailed = (): boolean => planFailed;
/** The last answer of the planner for the bed that is open, since this page was opened. */
export const lastResult = (): Plan | Impossible | undefined =>
  result && result.shape === kept?.open ? result.found : undefined;
/** What the last plan changed in the day the family knows. */
export const lastChanges = (): Changes | undefined => changes;

/** The ward's day and minute at a moment, by this device's clock. */
export function wardAt(moment: Instant): { day: string; minute: DayMinute } {
  const offset = offsetAt(moment);
  return { day: dateOf(localDay(moment, offset)), minute: localMinute(moment, offset) };
}
/** The same, read anew; not for what a page derives. */
const wardNow = () => wardAt(readMoment());

function facts() {
  loadCard();
  const card = currentCard();
  const { age } = currentFamily();
  return card ? factsOf(card, age, readMoment()) : withoutCard(age);
}

function keep(next: Kept): void {
  const before = kept?.beds;
  kept = next;
  const place = browserPlayPlace();
  // what could not be read is not written over before it lies elsewhere
  if (unread.length > 0 && !isAside) isAside = place.putAside();
  notKept = (unread.length > 0 && !isAside) || !place.write(next);
  if (!notKept) lastKept = JSON.stringify(next);
  const touched = (shape: BedShape) =>
    refused.includes(shape) || bedIn(before, shape) !== bedIn(next.beds, shape);
  refused = notKept ? BED_SHAPES.filter(touched) : [];
}

/** Takes over what another tab has written, so that no bed of its own is written over with an older one. */
function withOtherTabs(): void {
  if (!kept) return;
  const value = browserPlayPlace().read();
  // gone: everything was put away, and this tab is told so
  if (value !== undefined && JSON.stringify(value) !== lastKept) takeIn(value);
}

/**
 * Reads what this device keeps; a bed of an earlier day begins a new one, on a page that stood open over midnight, too.
 */
export function openPlay(): void {
  loadWord();
  if (kept) {
    withOtherTabs();
    const { day } = wardNow();
    if (kept.beds.some((bed) => bed.day < day)) {
      keep({ ...kept, beds: kept.beds.map((bed) => nextDay(bed, day)) });
      forgetAnswer();
    }
    return;
  }
  takeIn(browserPlayPlace().read());
  stopHearing = browserPlayPlace().onOtherTab(withOtherTabs);
}

/** What was kept, by this tab or another; a change that could not be kept stays in its place. */
function takeIn(value: unknown): void {
  const read = readKeptBeds(value);
  unread = read.unread;
  isAside = unread.length > 0 && browserPlayPlace().putAside();
  lastKept = JSON.stringify(value);
  const { day } = wardNow();
  const own = (kept?.beds ?? []).filter(({ shape }) => refused.includes(shape));
  const others = read.beds.filter(({ shape }) => !refused.includes(shape));
  const beds = [...others.map((bed) => nextDay(bed, day)), ...own];
  // another tab may have another bed open
  const open = kept?.open ?? read.open;
  const first = beds.find(({ shape }) => shape === open) ?? beds[0];
  kept = { open: first?.shape ?? BED_SHAPES[0], beds };
  forgetAnswer();
}

/** The day of a bed that lies ahead of what this device's clock shows: one of the two was or is wrong. */
export function bedAhead(): string | undefined {
  const { day } = wardAt(currentMoment());
  return playBeds().find((bed) => bed.day > day)?.day;
}

/** Whoever sees that the clock is right now begins the beds of a wrong, later day anew. */
export function beginBedsAnew(): void {
  withOtherTabs();
  if (!kept) return;
  const { day } = wardNow();
  keep({ ...kept, beds: kept.beds.map((bed) => (bed.day > day ? begunAnew(bed, day) : bed)) });
  forgetAnswer();
}

/** A bed to begin with, from the nurse's card where there is one; the next shape that is free. */
export function addBed(): void {
  openPlay();
  const used = playBeds().map(({ shape }) => shape);
  const shape = BED_SHAPES.find((one) => !used.includes(one));
  if (!shape || !kept) return;
  // a card is about one child: it fills in the first bed alone
  const own = used.length === 0 ? facts() : withoutCard(currentFamily().age);
  keep({ open: shape, beds: [...kept.beds, startBed(shape, wardNow().day, own, WARD_DAY)] });
  forgetAnswer();
}

function forgetAnswer() {
  result = undefined;
  forgetChanges();
}

/** What the last change did is not told any more. */
export const forgetChanges = (): void => void (changes = undefined);

/** Shows another bed. */
export function chooseBed(shape: BedShape): void {
  withOtherTabs();
  if (!kept?.beds.some((bed) => bed.shape === shape)) return;
  keep({ ...kept, open: shape });
  forgetAnswer();
}

/** Takes a bed and its day off this device. */
export function removeBed(shape: BedShape): void {
  withOtherTabs();
  if (!kept) return;
  const beds = kept.beds.filter((bed) => bed.shape !== shape);
  keep({ open: beds[0]?.shape ?? BED_SHAPES[0], beds });
  forgetAnswer();
}

/** The open bed as it is kept now; nothing where another tab took it away: no change of one bed falls on the next. */
function bedToChange(): PlayBed | undefined {
  const shape = kept?.open;
  withOtherTabs();
  const bed = tickedBed();
  return bed?.shape === shape ? bed : undefined;
}

/** Puts a changed bed in the place of the open one. */
function put(bed: PlayBed): void {
  if (!kept) return;
  keep({ ...kept, beds: kept.beds.map((one) => (one.shape === bed.shape ? bed : one)) });
}

/** Changes the bed that is shown, and plans nothing; see `changeAndPlan`. */
export function changeBed(change: Partial<PlayBed>): void {
  const bed = bedToChange();
  if (bed) put({ ...bed, ...change });
}

/** The planner's question about the open bed as it stands. */
export function problemNow(): DayProblem | undefined {
  const bed = openBed();
  return bed && problemOf(bed, IDEAS).problem;
}

/** Lets the planner get ready while the open bed is being described. */
export function warmUpPlanner(): void {
  const problem = problemNow();
  if (problem) (planner ??= browserPlanner()).warmUp(problem);
}

/** All that a plan of this bed depends on, but for the library. */
function askedFor(bed: PlayBed): string {
  const { problem } = problemOf(bed, IDEAS);
  return JSON.stringify({ ...problem, ideas: bed.own });
}

/**
 * `old` is the plan that the family knows; without one nothing has changed, and a good plan stands there, as `stands` is
 * told, while the best is still looked for. `out` is what a hand took out of it.
 */
async function ask(
  shape: BedShape,
  problem: DayProblem,
  stay: readonly Placement[],
  from: DayMinute,
  old: readonly Placement[] | undefined,
  { stands, out = [], ...more }: { stands?: () => void; out?: readonly Placement[] } & AlsoChanged = {},
) {
  planner ??= browserPlanner();
  question += 1;
  const own = question;
  planning = shape;
  planFailed = false;
  // nobody takes what an earlier change did for what this one does
  changes = undefined;
  const told = tickedBed();
  const askedOf = told && askedFor(told);
  const show = (found: Plan | Impossible) => {
    const now = bedToChange();
    // a bed that was ticked anew meanwhile has asked for something else
    if (own !== question || now?.shape !== shape || askedFor(now) !== askedOf) return;
    const plan = settled(problem, stay, found);
    put({ ...now, plan });
    result = { shape, found };
    const between = old && changesBetween(old, plan, from);
    changes = between && { ...between, gone: [...out, ...between.gone], ...more };
    stands?.();
  };
  try {
    const found = await planner.plan(problem, stay, old ? undefined : show);
    if (own === question) show(found);
  } catch {
    if (own === question) planFailed = true;
  } finally {
    if (own === question) planning = undefined;
  }
}

/**
 * Plans the day of the open bed from now on; late in the evening, when nothing of it is left, the whole of it. It is done
 * when a plan stands there, which a better one may still follow.
 */
export async function planDayNow(): Promise<void> {
  const bed = bedToChange() && openBed();
  if (!bed) return;
  const asked = problemOf(bed, IDEAS);
  faults = asked.faults;
  const problem = fromNow(asked.problem, wardNow().minute);
  await new Promise<void>((stands) => {
    void ask(bed.shape, problem, [], 0, undefined, { stands }).then(stands);
  });
}

/**
 * Takes a change of the open bed and plans what is left of its day, keeping as much as possible.
 * `from` is the minute before which nothing changes; a plan for a day that has not begun may change from its start.
 */
export async function changeAndPlan(
  change: Partial<PlayBed>,
  from: DayMinute = wardNow().minute,
  pushed?: InTheDay,
): Promise<void> {
  const before = bedToChange();
  if (!before) return;
  const bed = { ...before, ...change };
  put(bed);
  if (!bed.plan) {
    changes = pushed && { gone: [], come: [], moved: [], pushed };
    return;
  }
  const asked = restOfDay(asMayEat(bed), IDEAS, from, before);
  faults = asked.faults;
  // what somebody took out of the plan with this change is gone as well
  const out = (before.plan ?? []).filter((one) => change.plan && !change.plan.includes(one));
  await ask(bed.shape, asked.problem, asked.stay, from, bed.plan, {
    out,
    ...pinsBetween(before, bed),
    ...(pushed ? { pushed } : {}),
  });
}

/** Something came up at this minute. */
export function somethingCameUp(what: CameUp): Promise<void> {
  const bed = bedToChange();
  const now = wardNow().minute;
  if (!bed) return Promise.resolve();
  const after = cameUp(bed, now, what);
  return changeAndPlan(after, now, pushedOut(bed.sketch, after.sketch));
}

/** A bed and its plan as a code. */
export const playCode = (bed: PlayBed): string => encodePlay(bed, IDEA_ORDER, THING_ORDER);
/** A code read, or why it cannot be. */
export const readPlayCode = (text: string): DecodedPlay => decodePlay(text, IDEA_ORDER, THING_ORDER);

/**
 * Takes over a plan that came as a code; a bed of the same shape here gives way to it. Of another day's plan only the
 * bed comes: its plan is over. The bed says that it was taken, so that its pages leave planning to whoever made it.
 */
export function takePlan(bed: PlayBed): boolean {
  openPlay();
  const beds = playBeds().filter(({ shape }) => shape !== bed.shape);
  keep({ open: bed.shape, beds: [...beds, { ...begunAnew(bed, wardNow().day), taken: true }] });
  forgetAnswer();
  return !notKept;
}

/** Takes every bed off this device; false where they are still there. */
export function forgetPlay(): boolean {
  kept = undefined;
  [faults, unread] = [[], []];
  [notKept, planning, planFailed, isAside] = [false, undefined, false, false];
  [lastKept, refused] = [undefined, []];
  question += 1;
  stopHearing?.();
  forgetAnswer();
  return browserPlayPlace().clear();
}
