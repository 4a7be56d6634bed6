/**
 * Rules R1–R12: what holds for a set of signs seen together, whatever the time. Each rule is upward-closed:
 * it asks only whether signs are present, so one more sign, or a surer answer, can never switch it off.
 * Source of every rule: content/rules.ts.
 */
import type { Because, ChildFacts, SignFacts, UrgencyClass, WardRules } from './types.ts';
import { oneHigher, rankOf } from './urgency.ts';

/** Signs that are present, each as sure as it was reported. */
export type Present = ReadonlyMap<string, 'not-sure' | 'different'>;

export interface Seen {
  present: Present;
  /** Sub-answers as `sign/detail`. */
  details: ReadonlySet<string>;
}

export interface RuleContext {
  signs: Readonly<Record<string, SignFacts>>;
  child: ChildFacts;
  ward: WardRules;
}

/** Signs that come together when the body or the plate moves, and so count as one event of the pull. */
const ONE_EVENT: ReadonlySet<string> = new Set(['slid-down', 'leg-rolled', 'plate-crooked']);

const factsOf = (signs: RuleContext['signs'], id: string): SignFacts | undefined =>
  Object.hasOwn(signs, id) ? signs[id] : undefined;

/** The sign that a sub-answer, written as `sign/detail`, belongs to. */
export const signOf = (key: string): string => key.split('/')[0]!;
const detailOf = (key: string): string => key.slice(signOf(key).length + 1);

/** The sign's class with the ward's raise, which can only lift it. */
export function classOf(id: string, context: RuleContext): UrgencyClass {
  const base = factsOf(context.signs, id)?.urgency ?? 'tell-nurse';
  const raised = Object.hasOwn(context.ward.raise, id) ? context.ward.raise[id] : undefined;
  return raised && rankOf(raised) > rankOf(base) ? raised : base;
}

/** Adds the signs that a sub-answer itself is: toes that cannot move, choking. */
function withDetailSigns(seen: Seen, context: RuleContext): Map<string, 'not-sure' | 'different'> {
  const present = new Map(seen.present);
  for (const key of seen.details) {
    const also = factsOf(context.signs, signOf(key))?.details?.[detailOf(key)]?.alsoSign;
    if (also) present.set(also, 'different');
  }
  return present;
}

function detailReasons(seen: Seen, context: RuleContext): Because[] {
  return [...seen.details].map((key) => {
    const [sign, detail] = [signOf(key), detailOf(key)];
    const details = factsOf(context.signs, sign)?.details;
    const facts = details && Object.hasOwn(details, detail) ? details[detail] : undefined;
    if (!facts) return { rule: 'unknown', signs: [key], atLeast: 'tell-nurse' } as const;
    // R20's second half is a sub-answer: the jump woke the child.
    return { rule: sign === 'leg-jumps' ? 'R20' : 'detail', signs: [sign], atLeast: facts.atLeast } as const;
  });
}

/** Everything R1–R12, sub-answers and ward raises say about what was seen. */
export function standingReasons(seen: Seen, context: RuleContext): Because[] {
  const present = withDetailSigns(seen, context);
  const has = (id: string) => present.has(id);
  const among = (ids: readonly string[]) => ids.filter(has);
  const ids = [...present.keys()].sort();
  const groupOf = (id: string) => factsOf(context.signs, id)?.group;
  const reasons: Because[] = detailReasons(seen, context);
  const ask = (rule: Because['rule'], atLeast: UrgencyClass, signs: readonly string[]) =>
    reasons.push({ rule, signs, atLeast });

  for (const id of ids) {
    const facts = factsOf(context.signs, id);
    if (!facts) {
      ask('unknown', 'tell-nurse', [id]);
    } else if (id === 'worried' || id === 'very-worried') {
      ask('R3', classOf(id, context), [id]);
    } else if (id === 'cannot-name-it' || present.get(id) === 'not-sure') {
      ask('R2', 'not-sure', [id]);
      const raised = classOf(id, context);
      if (id === 'cannot-name-it' && rankOf(raised) > 2) ask('ward', raised, [id]);
    } else {
      ask('R1', facts.urgency, [id]);
      const raised = classOf(id, context);
      if (rankOf(raised) > rankOf(facts.urgency)) ask('ward', raised, [id]);
    }
  }

  const footAndLeg = ids.filter((id) => groupOf(id) === 'A');
  const restless = among(['sore-rising', 'very-upset', 'band-tight']);
  if (footAndLeg.length >= 2) ask('R4', 'ring-now', footAndLeg);
  const warnings = [...restless, ...among(['leg-rolled'])];
  if (footAndLeg.length >= 1 && warnings.length >= 1) ask('R5', 'ring-now', [...footAndLeg, ...warnings]);
  if (restless.length >= 2) ask('R6', 'ring-now', restless);

  const pull = ids.filter((id) => groupOf(id) === 'C');
  const events = new Set(pull.map((id) => (ONE_EVENT.has(id) ? 'moved' : id)));
  if (events.size >= 2) ask('R7', 'ring-now', pull);

  const soreSkin = among(['band-stained', 'skin-mark', 'burning-spot', 'heel-sore']);
  if (has('hot-or-shivery') && soreSkin.length >= 1) ask('R8', 'ring-now', ['hot-or-shivery', ...soreSkin]);
  if (has('not-drinking') && has('no-wee')) ask('R9', 'ring-now', ['not-drinking', 'no-wee']);
  const afterHead = among(['being-sick', 'very-upset']);
  if (has('head-hurts') && afterHead.length >= 1) ask('R10', 'ring-now', ['head-hurts', ...afterHead]);

  const serious = ids.filter((id) => rankOf(classOf(id, context)) >= 2);
  if (serious.length >= 3) ask('R11', 'ring-now', serious);

  const cannotTell = context.child.under3 || context.child.canTell !== 'yes';
  if (cannotTell && has('very-upset')) ask('R12', 'ring-now', ['very-upset']);
  return reasons;
}

/** R13: the same sign, three times within a day, with a nurse's look in between each time. */
export function returnReason(id: string, episodes: number, context: RuleContext): Because | undefined {
  const facts = factsOf(context.signs, id);
  if (!facts || facts.oftenReturns || episodes < 3) return undefined;
  return { rule: 'R13', signs: [id], atLeast: oneHigher(classOf(id, context)) };
}
