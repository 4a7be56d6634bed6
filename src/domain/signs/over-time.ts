/**
 * Rules that need a clock: R13–R20. Each only sets a sign or raises the class, and each only gets stronger as
 * time passes, so waiting never makes an answer less urgent.
 */
import { momentAfterDayMinutes } from '../clock/night.ts';
import { DAY_MINUTES, instant, minutes, type Instant } from '../units.ts';
import { WARD_MINUTES } from '../ward-minutes.ts';
import { returnReason, standingReasons, type RuleContext, type Seen } from './rules.ts';
import type { Because, Context, Report, SecondStep, Sighting, SorenessNote, SorenessPart } from './types.ts';
import { highest, rankOf } from './urgency.ts';

const NEVER = instant(Infinity);
/** Minutes. Two phones that share notes differ by less; from two minutes on they are asked which is right. Our proposal. */
const CLOCKS_MAY_DIFFER = 10;
/**
 * Whether a time lies so far ahead of now that this clock went back since it was noted: nobody knows then how long ago
 * it was, and every wait counts as over.
 */
export const wentBack = (at: Instant, now: Instant): boolean => at > now + CLOCKS_MAY_DIFFER;
const within = (value: number, [low, high]: readonly [number, number]) =>
  minutes(Number.isFinite(value) ? Math.min(high, Math.max(low, value)) : low);

/** R16: how long nobody comes before the second step is due, as the ward set it. Units: 2 to 10 minutes. */
export const secondStepMinutes = (ward: Pick<Context['ward'], 'secondStepMinutes'>) =>
  within(ward.secondStepMinutes, WARD_MINUTES.secondStepMinutes);
/** R14: how long something to tell straight away may wait, as the ward set it. Units: 5 to 15 minutes. */
export const tellAgainMinutes = (ward: Context['ward']) =>
  within(ward.tellAgainMinutes, WARD_MINUTES.tellAgainMinutes);
/** R15: how long something for the next visit may wait by day, as the ward set it. Units: 60 to 240 minutes. */
export const visitAgainMinutes = (ward: Context['ward']) =>
  within(ward.visitAgainMinutes, WARD_MINUTES.visitAgainMinutes);
/** R17: how long after a dose soreness is held against it, as the ward set it. Units: 30 to 90 minutes. */
export const medicineWaitMinutes = (ward: Context['ward']) =>
  within(ward.medicineWaitMinutes, WARD_MINUTES.medicineWaitMinutes);

/**
 * R16 for a wait that began at one moment, such as a press of the button that nobody has answered.
 * `waitUnknown`: the clock went back since, as the notes tell it.
 * Units: universal minutes.
 * @example secondStepFrom(call.t, now, ward) // { state: 'waiting', dueAt: … }
 */
export function secondStepFrom(
  since: Instant,
  now: Instant,
  ward: Pick<Context['ward'], 'secondStepMinutes'>,
  waitUnknown = false,
): SecondStep {
  const dueAt = instant(since + secondStepMinutes(ward));
  return { state: waitUnknown || wentBack(since, now) || now >= dueAt ? 'due' : 'waiting', dueAt };
}

/** Whether no nurse has looked at it yet. */
export const isOpen = (sighting: Sighting): boolean => sighting.lookedAt === undefined;
/** Whether something was there, or may have been: an answer word that is not known counts as seen. */
export const isPresent = (sighting: Sighting): boolean =>
  sighting.answer !== 'like-usual' && sighting.answer !== 'not-looked';

/** R17–R19: signs that the soreness notes and medicine marks set by themselves, in either reading of the clock. */
export function signsFromSoreness(report: Report, context: Context): Because[] {
  const reasons = soreReasons(report, context);
  const known = new Set(reasons.map((reason) => JSON.stringify(reason)));
  const others = report.otherReading ? soreReasons(report.otherReading, context) : [];
  return [...reasons, ...others.filter((reason) => !known.has(JSON.stringify(reason)))];
}

function soreReasons(report: Partial<SorenessPart>, context: Context): Because[] {
  const reasons: Because[] = [];
  const soreness = [...(report.soreness ?? [])]
    .filter((s) => s.at <= context.now)
    .sort((a, b) => a.at - b.at);
  const marks = [...(report.medicineAt ?? [])].filter((at) => at <= context.now).sort((a, b) => a - b);
  const rest = soreness.filter((s) => s.when === 'rest');
  // where nothing was noted at rest, no mark has a value before it either
  const last = rest.at(-1)!;
  const atLeast = (sign: string) => context.signs[sign]?.urgency ?? 'tell-nurse';

  for (const mark of marks) {
    const before = rest.filter((s) => s.at <= mark && mark - s.at <= 60 && s.scale === last.scale).at(-1);
    const waited =
      context.now - mark >= medicineWaitMinutes(context.ward) || report.medicineWaitUnknown?.includes(mark);
    if (!before || last.at <= mark || !waited || last.value < 1 || last.value < before.value) continue;
    const lowest = last.value === 1 && before.value === 1;
    const sign = lowest ? 'sore-rising' : 'sore-after-medicine';
    reasons.push({ rule: 'R17', signs: [sign], atLeast: atLeast(sign) });
  }

  if (rose(soreness)) reasons.push({ rule: 'R18', signs: ['sore-rising'], atLeast: atLeast('sore-rising') });

  const lastMark = marks.at(-1) ?? -Infinity;
  const asked = (report.askedEarlyAt ?? []).filter((at) => at > lastMark && at <= context.now);
  if (asked.length >= 2)
    reasons.push({ rule: 'R19', signs: ['sore-rising'], atLeast: atLeast('sore-rising') });
  return reasons;
}

/** R18: the last value stands ≥ 2 numbers (or ≥ 1 step) above an earlier like one of the last four hours. */
function rose(soreness: readonly SorenessNote[]): boolean {
  return (['rest', 'moving'] as const).some((when) =>
    (['numbers', 'steps'] as const).some((scale) => {
      const line = soreness.filter((s) => s.when === when && s.scale === scale);
      const last = line.at(-1)!;
      const step = scale === 'numbers' ? 2 : 1;
      return line.some((s) => last.at - s.at <= 240 && last.value - s.value >= step);
    }),
  );
}

/** Nobody knows how long ago it was: every wait that may have begun with it counts as over. */
const waitUnknown = (s: Sighting, now: Instant): boolean => s.clockWentBack ?? wentBack(s.at, now);

/** R13 and R20: what repeats itself, of sightings at which something was there. Only signs open now can be raised. */
export function repeatReasons(
  sightings: readonly Sighting[],
  open: ReadonlySet<string>,
  context: Context,
): Because[] {
  const reasons: Because[] = [];
  for (const sign of [...open].sort()) {
    const recent = sightings.filter(
      (s) => s.sign === sign && context.now - s.at <= DAY_MINUTES && s.at <= context.now,
    );
    // an episode ends with a nurse's look; what is still open is one more
    const looks = new Set(recent.filter((s) => s.lookedAt !== undefined).map((s) => s.lookedAt));
    const reason = returnReason(sign, looks.size + 1, context);
    if (reason) reasons.push(reason);
    if (sign === 'leg-jumps' && recent.filter((s) => context.now - s.at <= 120).length >= 2)
      reasons.push({ rule: 'R20', signs: [sign], atLeast: 'tell-nurse' });
  }
  return reasons;
}

/** What waiting adds: R14 to R16, since when it has been this urgent, and the second step where the button is to be pressed. */
export interface WaitingResult {
  because: Because[];
  since: Instant | undefined;
  secondStep?: SecondStep;
}

/**
 * R14–R16: what waiting does. For each moment something was seen, asks how urgent everything seen up to then
 * was; the earliest such moment counts, so a further sign can only make the wait seem longer. Of what was seen before
 * the clock went back nobody knows how long it has waited: every wait counts as over, one that follows on another, too.
 */
export function waitingReasons(
  open: readonly Sighting[],
  seenIn: (list: readonly Sighting[]) => Seen,
  now: { rank: number; callOut: boolean; signs: readonly string[] },
  context: Context,
): WaitingResult {
  const because: Because[] = [];
  const times = [...new Set(open.map((s) => s.at))].filter((at) => at <= context.now).sort((a, b) => a - b);
  const firstAt = (rank: number): Instant | undefined =>
    times.find((at) => rankAt(seenIn(open.filter((s) => s.at <= at)), context) >= rank);
  const longAgo = open.filter((s) => waitUnknown(s, context.now));
  const isUntold = (s: Sighting) => s.toldAt === undefined;

  const untold = open.filter(isUntold).map((s) => s.at as number);
  const visitSince = untold.length ? instant(Math.min(...untold)) : undefined;
  const visitDue =
    visitSince === undefined
      ? NEVER
      : momentAfterDayMinutes(visitSince, visitAgainMinutes(context.ward), context.offsetMinutes);
  const visitUnknown = longAgo.some(isUntold);
  const visitOver = visitUnknown || context.now >= visitDue;
  const uncounted = (due: Instant) => (context.now < due ? ({ clockWentBack: true } as const) : {});
  if (visitOver)
    because.push({ rule: 'R15', signs: now.signs, atLeast: 'tell-nurse', ...uncounted(visitDue) });

  const tellSince = earliest(firstAt(2), visitOver ? visitDue : undefined);
  const tellDue = tellSince === undefined ? NEVER : instant(tellSince + tellAgainMinutes(context.ward));
  const tellUnknown = visitUnknown || (longAgo.length > 0 && rankAt(seenIn(longAgo), context) >= 2);
  const tellOver = tellUnknown || context.now >= tellDue;
  if (tellOver) because.push({ rule: 'R14', signs: now.signs, atLeast: 'ring-now', ...uncounted(tellDue) });

  const ringStart = earliest(firstAt(3), tellOver ? tellDue : undefined);
  // Raised just now by something without a time of its own (a repeat, a soreness line): the wait starts here.
  const ringing = now.rank === 3 || tellOver;
  if (!ringing) return { because, since: tellSince ?? visitSince };
  // a wait that nobody knows may begin, by its minutes, only later than now
  const since = instant(Math.min(ringStart ?? context.now, context.now));
  const { state: waited, dueAt } = secondStepFrom(since, context.now, context.ward, longAgo.length > 0);
  const state = now.callOut ? 'at-once' : waited;
  if (state !== 'waiting') because.push({ rule: 'R16', signs: now.signs, atLeast: 'ring-now' });
  return { because, since, secondStep: { state, dueAt: now.callOut ? since : dueAt } };
}

function earliest(...moments: (Instant | undefined)[]): Instant | undefined {
  const known = moments.filter((m): m is Instant => m !== undefined);
  return known.length ? instant(Math.min(...known)) : undefined;
}

function rankAt(seen: Seen, context: RuleContext): number {
  return rankOf(highest(standingReasons(seen, context).map((reason) => reason.atLeast)));
}
