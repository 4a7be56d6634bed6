/** Everything the family's own page and the staff page show of the notes, each figure with the notes it comes from. */
import { localDay } from '../clock/local.ts';
import { assess } from '../signs/assess.ts';
import { signsFromSoreness } from '../signs/over-time.ts';
import type { Because, Context, Urgency } from '../signs/types.ts';
import { highest, rankOf } from '../signs/urgency.ts';
import { DAY_MINUTES, type Instant } from '../units.ts';
import { CLOCK_TOLERANCE, correctedNotes, isUndated } from './clocks.ts';
import { byTime, struckIds, type Entry, type EntryKind } from './entries.ts';
import { NOT_SAID } from './kinds.ts';
import { countEvents, eventsOf, notesOf, type PossibleEvent } from './pairs.ts';
import type {
  SummarySettings,
  CountedEvents,
  LookAgo,
  OpenSign,
  SoreFlag,
  SorePoint,
  Slope,
  SorenessSummary,
  Since,
  PooSince,
  SleepSummary,
  IdeaTried,
  QuestionShown,
  StruckNote,
  Summary,
} from './summary.ts';
import { orderOf, type NoteOrder } from './order.ts';
import { repeatsOf } from './repeats.ts';
import { reportOf } from './report.ts';
import { tracedSightings, type TracedSighting } from './sightings.ts';
import { stretchesOf } from './sleep.ts';
import { strongSoreness } from './strong.ts';

const ROUND_QUESTIONS = 3;
const LOOKS_OF_A_LOOK = 4;
const SLOPE_MINUTES = 360;
/** Quarter cups; a sip has no measure, nor has what was not said. */
const QUARTERS = { sip: 0, quarter: 1, half: 2, full: 4, [NOT_SAID]: 0 } as const;
const PUT_OFF: ReadonlySet<string> = new Set(['later', 'ask-again', 'doctor-will-say']);

/**
 * What the notes add up to at this moment: what is open, what came again, soreness, drinks, wee, poo, sleep, play,
 * questions; and what was taken back or comes from a clock that is ahead.
 *
 * Struck notes leave every sum and the class; a strike that is struck still strikes, so a note that was taken back by
 * mistake is written anew. Wrong clocks are corrected first. What two phones noted is a range until the family
 * says whether it was one event. The order of the notes makes no difference.
 *
 * Shape: JSON in, JSON out; facts only, no sentences.
 * Units: instants and lengths in whole universal minutes; "24 hours" are 1440 of them, whatever the clocks do.
 * Errors: none.
 * Not: it does not know what a nurse wrote or saw, and nothing here says that all is well.
 * Source: design of the notes page (our-proposal); R17–R19 as in content/rules.ts.
 */
export function summarise(entries: readonly Entry[], now: Instant, settings: SummarySettings): Summary {
  const context: Context = { ...settings, now };
  const all = correctedNotes(entries);
  const struckSet = struckIds(all);
  const kept = all.filter((entry) => !struckSet.has(entry.id));
  const told = kept.filter((entry) => entry.kind !== 'strike');
  const past = told.filter((entry) => entry.t <= now + CLOCK_TOLERANCE && !isUndated(entry));
  const lastDay = past.filter((entry) => now - entry.t < DAY_MINUTES);
  // pair answers may be older or newer than the notes they are about
  const events = (keep: (entry: Entry) => boolean): PossibleEvent[] => {
    const some = lastDay.filter(keep);
    return some.length ? eventsOf([...some, ...told.filter((entry) => entry.kind === 'pair')]) : [];
  };
  const counted = (keep: (entry: Entry) => boolean): CountedEvents => {
    const found = events(keep);
    return { ...countEvents(found), from: idsOf(notesOf(found)) };
  };
  // a note that was taken back tells of its phone's clock all the same
  const order = orderOf(all, now);
  const report = reportOf(all, context);
  const alone = urgencyAlone(context);

  const summary: Summary = {
    assessment: assess(report, context),
    open: openOf(tracedSightings(all, now), alone),
    repeats: repeatsOf(
      events((entry) => entry.kind === 'sign' || entry.kind === 'look'),
      lastDay.filter(ofKind('nurse-looked')),
      order,
    ),
    soreness: sorenessOf(past, lastDay, now, counted, signsFromSoreness(report, context), order),
    drinks: drinksOf(events),
    wee: sinceOf('wee', told, order, now, counted),
    poo: pooOf(sinceOf('poo', told, order, now, counted), told, context),
    sleep: sleepOf(past, now, counted),
    play: playOf(past, counted),
    questions: questionsOf(past),
    struck: struckOf(all, alone),
    ahead: idsOf(told.filter((entry) => entry.t > now + CLOCK_TOLERANCE)),
  };
  const look = lastLookOf(past, now, settings.lookOf);
  if (look) summary.lastLook = look;
  const first = past.find((entry) => entry.kind !== 'pair' && entry.kind !== 'clock');
  if (first) summary.notesSince = first.t;
  return summary;
}

const idsOf = (entries: readonly Entry[]): string[] => entries.map((entry) => entry.id);
const ofKind =
  <K extends EntryKind>(kind: K) =>
  (entry: Entry): entry is Extract<Entry, { kind: K }> =>
    entry.kind === kind;
function put<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}
type CountOf = (keep: (entry: Entry) => boolean) => CountedEvents;
type EventsOf = (keep: (entry: Entry) => boolean) => PossibleEvent[];

/** How urgent one sighting is alone, by the same rules as everything else. */
function urgencyAlone(context: Context) {
  const known = new Map<string, Urgency>();
  return (seen: Pick<TracedSighting, 'sign' | 'answer' | 'details'>): Urgency => {
    // every sign this version does not know is as urgent as any other
    const sign = Object.hasOwn(context.signs, seen.sign) ? seen.sign : undefined;
    const key = JSON.stringify([sign, seen.answer, sign && seen.details]);
    const found = known.get(key);
    if (found) return found;
    const { urgency } = assess(
      { answers: { [seen.sign]: seen.answer }, details: seen.details ?? [] },
      context,
    );
    known.set(key, urgency);
    return urgency;
  };
}

function openOf(sightings: readonly TracedSighting[], alone: ReturnType<typeof urgencyAlone>): OpenSign[] {
  const bySign = new Map<string, TracedSighting[]>();
  for (const seen of sightings) {
    if (seen.lookedAt === undefined) put(bySign, seen.sign, seen);
  }
  const open = [...bySign].map(([sign, line]): OpenSign => {
    const { at: since, bellAt, wordAt, nurseCameAt } = line[0]!;
    const urgency = highest(line.map(alone));
    const details = [...new Set(line.flatMap((seen) => seen.details ?? []))].filter(
      (detail) => rankOf(alone({ sign, answer: 'not-looked', details: [detail] })) >= rankOf(urgency),
    );
    return {
      sign,
      urgency,
      ...(details.length > 0 && { details }),
      ...(line.every((seen) => seen.answer === 'not-sure' && !seen.details) && { notSure: true }),
      since,
      lastSeen: line.at(-1)!.at,
      ...(bellAt !== undefined && { bellAt }),
      ...(wordAt !== undefined && { wordAt }),
      ...(nurseCameAt !== undefined && { nurseCameAt }),
      untold: line.at(-1)!.toldAt === undefined,
      from: [...new Set(line.map((seen) => seen.note))],
    };
  });
  return open.sort(
    (a, b) => rankOf(b.urgency) - rankOf(a.urgency) || a.since - b.since || (a.sign < b.sign ? -1 : 1),
  );
}

function sorenessOf(
  past: readonly Entry[],
  lastDay: readonly Entry[],
  now: Instant,
  counted: CountOf,
  reasons: readonly Because[],
  order: NoteOrder,
): SorenessSummary {
  const notes = lastDay.filter(ofKind('sore'));
  const points = notes.map(({ id, t, value, scale, when }): SorePoint => ({ id, at: t, value, scale, when }));
  const medicine = lastDay.filter(ofKind('medicine-told')).map(({ id, t }) => ({ id, at: t }));
  const recent = points.filter((point) => now - point.at <= SLOPE_MINUTES);
  const rest = slopeOf(recent.filter((point) => point.when === 'rest'));
  const moving = slopeOf(recent.filter((point) => point.when === 'moving'));
  const asked = counted(ofKind('asked-for-medicine'));
  // what nobody looked at still holds when its notes are older than a day, or have no time
  const flags = reasons.map((reason): SoreFlag => {
    const last = past.filter(ofKind(reason.rule === 'R19' ? 'asked-for-medicine' : 'sore')).at(-1);
    return { ...reason, since: last?.t ?? now, from: last ? [last.id] : [] };
  });
  const strong = strongSoreness(past, order);
  return {
    points,
    medicine,
    asked,
    slope: { ...(rest && { rest }), ...(moving && { moving }) },
    highest: highestOf(recent),
    ...(strong && { strong }),
    flags,
    from: [...idsOf(notes), ...medicine.map((mark) => mark.id), ...asked.from],
  };
}

/** On each scale, lying still and when moved: the last of the highest values. */
function highestOf(recent: readonly SorePoint[]): SorePoint[] {
  const found = new Map<string, SorePoint>();
  for (const point of recent) {
    const key = `${point.when} ${point.scale}`;
    if (point.value >= (found.get(key)?.value ?? 0)) found.set(key, point);
  }
  return [...found.values()];
}

/** Least squares through values of one scale; times are taken from the first, so that no day makes a difference. */
function slopeOf(line: readonly SorePoint[]): Slope | undefined {
  const scale = line.at(-1)?.scale;
  const points = line.filter((point) => point.scale === scale);
  const [start] = points;
  if (!scale || !start) return undefined;
  const hours = points.map((point) => (point.at - start.at) / 60);
  const middle = hours.reduce((sum, hour) => sum + hour, 0) / hours.length;
  const spread = hours.reduce((sum, hour) => sum + (hour - middle) ** 2, 0);
  if (spread === 0) return undefined;
  // the values need no middle of their own: what stands before and after the middle of the times weighs the same
  const rise = points.reduce((sum, point, i) => sum + (hours[i]! - middle) * point.value, 0);
  return { perHour: rise / spread, scale, from: points.map((point) => point.id) };
}

function drinksOf(events: EventsOf): Summary['drinks'] {
  const found = events(ofKind('drink'));
  const quarters = { low: 0, high: 0 };
  const amount = (event: PossibleEvent) => {
    const note = event.parts[0]![0]!;
    return note.kind === 'drink' ? note.amount : 'sip';
  };
  for (const event of found) {
    quarters.low += QUARTERS[amount(event)];
    quarters.high += QUARTERS[amount(event)] * event.parts.length;
  }
  const countOf = (word: ReturnType<typeof amount>) =>
    countEvents(found.filter((event) => amount(event) === word));
  return { quarters, sips: countOf('sip'), unmeasured: countOf(NOT_SAID), from: idsOf(notesOf(found)) };
}

/** The last one is that of the phone's own count: by its time alone, one of before a clock went back would seem later. */
function sinceOf(
  kind: 'wee' | 'poo',
  told: readonly Entry[],
  order: NoteOrder,
  now: Instant,
  counted: CountOf,
): Since {
  const is = (entry: Entry) =>
    entry.kind === kind && !(entry.kind === 'poo' && entry.what === 'none-today') && !isUndated(entry);
  const all = told.filter(is).sort((a, b) => order.at(a) - order.at(b) || byTime(a, b));
  const newest = all.at(-1);
  const last = all.filter((entry) => entry.t <= now + CLOCK_TOLERANCE).at(-1);
  const sinceThen = (at: Instant) => ({ at, minutes: Math.max(0, now - at) });
  return {
    ...counted(is),
    ...(last && { last: { id: last.id, ...sinceThen(order.at(last)) } }),
    ...(newest && order.wentBackSince(newest) && { clockWentBack: true }),
  };
}

function pooOf(since: Since, told: readonly Entry[], { now, offsetMinutes }: Context): PooSince {
  const { last } = since;
  if (!last) return since;
  const { off } = told.find((entry) => entry.id === last.id)!;
  const days = localDay(now, offsetMinutes) - localDay(last.at, off);
  return {
    ...since,
    calendarDays: Math.max(0, days),
    wholeDays: Math.floor(last.minutes / DAY_MINUTES),
  };
}

function sleepOf(past: readonly Entry[], now: Instant, counted: CountOf): SleepSummary {
  const slept = stretchesOf(past).flatMap(({ from, to: woke, goesOn, notes }) => {
    const to = goesOn ? now : woke;
    if (to === undefined || to <= now - DAY_MINUTES) return [];
    return [{ from, to, minutes: Math.max(0, to - from), notes }];
  });
  const [longest] = [...slept].sort((a, b) => b.minutes - a.minutes);
  return {
    ...(longest && { longest: { from: longest.from, to: longest.to, minutes: longest.minutes } }),
    wakings: counted((entry) => entry.kind === 'sleep' && entry.what === 'woke'),
    from: slept.flatMap(({ notes }) => notes),
  };
}

function playOf(past: readonly Entry[], counted: CountOf): Summary['play'] {
  const byIdea = new Map<string, { again: number; notAgain: number; from: string[] }>();
  for (const entry of past.filter(ofKind('play'))) {
    const row = byIdea.get(entry.idea) ?? { again: 0, notAgain: 0, from: [] };
    row[entry.again ? 'again' : 'notAgain'] += 1;
    row.from.push(entry.id);
    byIdea.set(entry.idea, row);
  }
  const ideas = [...byIdea]
    .map(([idea, row]): IdeaTried => ({ idea, ...row }))
    .sort((a, b) => b.again - a.again || a.notAgain - b.notAgain || (a.idea < b.idea ? -1 : 1));
  const helped = ideas.filter((row) => row.again > 0).map((row) => row.idea);
  return { tried: counted(ofKind('play')), ideas, helped };
}

function questionsOf(past: readonly Entry[]): Summary['questions'] {
  const answers = new Map<string, Extract<Entry, { kind: 'answer' }>[]>();
  for (const entry of past.filter(ofKind('answer'))) put(answers, entry.question, entry);
  // the same question put twice, or by both phones, is one question
  const asked = new Map<string, Extract<Entry, { kind: 'question' }>[]>();
  for (const entry of past.filter(ofKind('question'))) {
    put(asked, 'ask' in entry ? `ask:${entry.ask}` : `own:${entry.own}`, entry);
  }
  const order: QuestionShown['state'][] = ['waiting', 'put-off', 'answered'];
  const questions = [...asked.values()].map((notes): QuestionShown => {
    const last = notes.at(-1)!;
    const given = notes.flatMap((note) => answers.get(note.id) ?? []).sort((a, b) => a.t - b.t);
    const settled = given.some((answer) => !PUT_OFF.has(answer.what));
    return {
      ...('ask' in last
        ? { ask: last.ask }
        : { own: last.own, ...(last.in !== undefined && { in: last.in }) }),
      askedAt: last.t,
      answers: given.map(({ id, what, t }) => ({ id, what, at: t })),
      state: settled ? 'answered' : given.length ? 'put-off' : 'waiting',
      from: idsOf(notes),
    };
  });
  questions.sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state) || b.askedAt - a.askedAt);
  const open = questions.filter((question) => question.state !== 'answered').length;
  return { shown: questions.slice(0, ROUND_QUESTIONS), more: Math.max(0, open - ROUND_QUESTIONS) };
}

function struckOf(all: readonly Entry[], alone: ReturnType<typeof urgencyAlone>): StruckNote[] {
  const byId = new Map(all.map((entry) => [entry.id, entry]));
  const strikes = new Map<string, Entry[]>();
  for (const entry of all.filter(ofKind('strike'))) put(strikes, entry.strikes, entry);
  return [...strikes].map(([id, by]): StruckNote => {
    const note = byId.get(id);
    const struck: StruckNote = { id, struckAt: by[0]!.t, from: idsOf(by) };
    if (!note) return struck;
    const seen = note.kind === 'sign' || note.kind === 'look' ? tracedSightings([note]).map(alone) : [];
    return { ...struck, kind: note.kind, at: note.t, ...(seen.length > 0 && { urgency: highest(seen) }) };
  });
}

function lastLookOf(
  past: readonly Entry[],
  now: Instant,
  lookOf: SummarySettings['lookOf'],
): LookAgo | undefined {
  const looks = past.filter(ofKind('look'));
  for (let i = looks.length - 1; i >= 0; i--) {
    const look = looks[i]!;
    const whole = new Map<string, boolean>();
    for (const [sign, answer] of Object.entries(look.answers)) {
      const group = Object.hasOwn(lookOf, sign) ? lookOf[sign] : undefined;
      // a look counts only where all it asked was answered: half a look is not a look
      if (group) whole.set(group, (whole.get(group) ?? true) && answer !== 'not-looked');
    }
    const answered = [...whole.values()].filter(Boolean).length;
    if (answered >= LOOKS_OF_A_LOOK)
      return { at: look.t, minutes: Math.max(0, now - look.t), looks: answered, from: [look.id] };
  }
  return undefined;
}
