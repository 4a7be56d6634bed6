import { SIGN_IDS } from './ids.ts';
import { isOpen, isPresent, repeatReasons, signsFromSoreness, waitingReasons } from './over-time.ts';
import { signOf, standingReasons, type Seen } from './rules.ts';
import type { Answer, Assessment, Because, Context, Report, Sighting } from './types.ts';
import { highest, rankOf } from './urgency.ts';

/**
 * How urgent is what this family saw, and why?
 *
 * The answer is the maximum of rules R1–R20, each of which can only be switched on by more signs, surer
 * answers, more waiting or a ward's raise. So nothing that is added can lower it (tests/unit/signs).
 *
 * Shape: JSON in, JSON out. `because` holds every rule that held, with its signs.
 * Units: times are instants (whole universal minutes).
 * Errors: none; an id, a sub-answer or an answer word that is not known counts as tell-nurse.
 * Not: it does not know what a nurse saw, and `none` does not mean that all is well.
 * Source: of each rule in content/rules.ts; combinations and waiting times are our proposal, the ward decides.
 *
 * @example assess({ answers: { 'toes-swollen': 'different', 'sore-rising': 'different' } }, context)
 *   // urgency 'ring-now', because R1 (twice) and R5
 */
export function assess(report: Report, context: Context): Assessment {
  const sightings = (report.sightings ?? []).filter((s) => isPresent(s));
  const open = sightings.filter(isOpen);
  const answers = Object.entries(report.answers ?? {});
  const fromSoreness = signsFromSoreness(report, context);

  // A sighting from the future (a clock that was set back) still counts as seen.
  const seen = seenIn(open);
  for (const [sign, answer] of answers) add(seen, sign, answer, context);
  for (const key of report.details ?? []) addDetail(seen, key);
  for (const reason of fromSoreness) for (const sign of reason.signs) seen.present.set(sign, 'different');

  const because: Because[] = [
    ...standingReasons(seen, context),
    ...fromSoreness,
    ...repeatReasons(sightings, new Set(seen.present.keys()), context),
  ];
  const waiting = waitingReasons(
    open,
    seenIn,
    {
      rank: rankOf(highest(because.map((reason) => reason.atLeast))),
      callOut: because.flatMap(({ signs }) => signs).some((id) => context.signs[id]?.callOut),
      signs: [...seen.present.keys()].sort(),
    },
    context,
  );
  because.push(...waiting.because);

  const answered = new Set(answers.filter(([, answer]) => answer !== 'not-looked').map(([sign]) => sign));
  const looked = (id: string) => answered.has(id) || seen.present.has(id);
  const result: Assessment = {
    urgency: highest(because.map((reason) => reason.atLeast)),
    because,
    notLooked: SIGN_IDS.filter((id) => !looked(id)),
    nothingLooked: answered.size === 0 && seen.present.size === 0,
    unknown: [...new Set(because.filter((r) => r.rule === 'unknown').flatMap((r) => r.signs))],
  };
  if (waiting.since !== undefined) result.since = waiting.since;
  if (waiting.secondStep) result.secondStep = waiting.secondStep;
  return result;

  function seenIn(list: readonly Sighting[]) {
    const found: MutableSeen = { present: new Map(), details: new Set() };
    for (const sighting of list) {
      add(found, sighting.sign, sighting.answer, context);
      for (const detail of sighting.details ?? []) addDetail(found, detail);
    }
    return found;
  }
}

interface MutableSeen extends Seen {
  present: Map<string, 'not-sure' | 'different'>;
  details: Set<string>;
}

/** The surer answer of one sign stays; a word that is no answer counts as not sure. */
function add(seen: MutableSeen, sign: string, answer: Answer, context: Context): void {
  if (answer === 'like-usual' || answer === 'not-looked') return;
  const word = answer === 'different' ? 'different' : 'not-sure';
  // "Not sure" is not offered on signs of the lowest class; should it arrive, doubt still leads to a nurse.
  if (word === 'not-sure' && context.signs[sign]?.urgency === 'next-visit') {
    seen.present.set('cannot-name-it', 'different');
    return;
  }
  if (seen.present.get(sign) !== 'different') seen.present.set(sign, word);
}

/** A sub-answer says its sign is there, too. */
function addDetail(seen: MutableSeen, key: string): void {
  seen.details.add(key);
  seen.present.set(signOf(key), 'different');
}
