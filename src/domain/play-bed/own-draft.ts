/** An own idea while it is being written: every question is open until somebody answers it. */
import { BARRED, type Barred, type Fault, type Idea, type Kind } from '../play/types.ts';
import { CAUTION_QUESTIONS, type CautionQuestion, type OwnIdea, type PlayBed } from './bed.ts';
import { MOST } from './bed-store.ts';
import { faultsOfOwn, OWN_ID, readOwn } from './own-idea.ts';

const CAUTION_IDS = Object.keys(CAUTION_QUESTIONS) as CautionQuestion[];
export type OwnQuestion = 'tray' | CautionQuestion | Barred;
/** What is asked together: each yes is ticked, and one tick more says no to the rest. In the order of the form. */
export const OWN_GROUPS = {
  things: ['tray', 'small-parts', 'cord', 'scissors', 'bits'],
  mouth: ['food', 'water', 'near-mouth', 'breath'],
  doing: ['sound', 'screen', 'feelings', 'arms-move'],
  bars: BARRED,
} as const satisfies Record<string, readonly OwnQuestion[]>;
export type OwnGroup = keyof typeof OWN_GROUPS;
/** In the order in which they are asked. */
export const OWN_QUESTIONS: readonly OwnQuestion[] = Object.values(OWN_GROUPS).flat();

/** What of a group is ticked; `rest` once whatever is not ticked there is a no. */
export function tickedIn(answers: OwnDraft['answers'], group: OwnGroup): (OwnQuestion | 'rest')[] {
  const questions: readonly OwnQuestion[] = OWN_GROUPS[group];
  const open = questions.some((question) => answers[question] === undefined);
  return [...questions.filter((question) => answers[question]), ...(open ? [] : ['rest' as const])];
}

/** The answers once this is ticked in a group; without `rest`, what is not ticked there is open and no no. */
export function answersWith(
  answers: OwnDraft['answers'],
  group: OwnGroup,
  ticked: readonly (OwnQuestion | 'rest')[],
): OwnDraft['answers'] {
  const others = OWN_QUESTIONS.filter((question) => !OWN_GROUPS[group].some((one) => one === question));
  const said = OWN_GROUPS[group].filter((one) => ticked.includes(one) || ticked.includes('rest'));
  return Object.fromEntries([
    ...others.map((question) => [question, answers[question]]),
    ...said.map((question) => [question, ticked.includes(question)]),
  ]) as OwnDraft['answers'];
}

/** What is not there was not chosen or answered yet. */
export interface OwnDraft {
  id: string;
  title: string;
  kind?: Kind;
  least?: number;
  most?: number;
  position?: Idea['position'];
  hands?: Idea['hands'];
  energy?: Idea['energy'];
  noise?: Idea['noise'];
  mess?: Idea['mess'];
  who?: Idea['who'];
  wipe?: Idea['wipe'];
  moments: OwnIdea['moments'];
  answers: Partial<Record<OwnQuestion, boolean>>;
}

const isBarred = (question: OwnQuestion): question is Barred => BARRED.some((one) => one === question);

/** An own idea opened for a change: all its questions are answered. */
export function draftOf(own: OwnIdea): OwnDraft {
  const { minutes, tray, cautions, barred, ...rest } = own;
  const yes = (question: OwnQuestion) =>
    question === 'tray' ? tray : isBarred(question) ? barred.includes(question) : cautions.includes(question);
  return {
    ...rest,
    least: minutes[0],
    most: minutes[1],
    answers: Object.fromEntries(OWN_QUESTIONS.map((question) => [question, yes(question)])),
  };
}

/**
 * The own idea that was written, or what is missing and wrong, each with its place.
 *
 * Shape: `own` alone where every question is answered and every field can be used, else `faults` in the order of the form;
 * their places are `own › title`, `own › minutes`, `own › answers › cord`.
 * Errors: none. A question nobody answered is not a no.
 */
export function ownOf(draft: OwnDraft): { own: OwnIdea; faults: [] } | { own?: undefined; faults: Fault[] } {
  const { least, most, answers, ...rest } = draft;
  const value = {
    ...rest,
    minutes: [least, most],
    tray: answers.tray ?? false,
    cautions: CAUTION_IDS.filter((question) => answers[question]),
    barred: BARRED.filter((question) => answers[question]),
  };
  const open = OWN_QUESTIONS.filter((question) => answers[question] === undefined).map((question): Fault => ({
    where: `own › answers › ${question}`,
    rule: 'yes or no',
    seen: undefined,
  }));
  const faults = [...faultsOfOwn(value), ...open];
  const own = faults.length ? undefined : readOwn(value);
  return own ? { own, faults: [] } : { faults };
}

/** Every word of the bed that may name an own idea. */
const mentioned = (bed: PlayBed): string[] => [
  ...bed.own.map(({ id }) => id),
  ...[...(bed.plan ?? []), ...bed.pins, ...bed.done].map(({ idea }) => idea),
  ...(bed.childChooses ?? []).flatMap(({ idea, or }) => [idea, or]),
  ...[...bed.notToday, ...bed.child.likes, ...bed.child.dislikes, ...bed.child.never],
  ...[...bed.history.yesterday, ...bed.history.lastThreeDays],
];

/**
 * A sheet for a new own idea, or nothing where the bed has as many as it may have.
 *
 * Shape: its id is one that nothing at this bed speaks of, so that what was said about an old idea is not said about it.
 */
export function newDraft(bed: PlayBed): OwnDraft | undefined {
  if (bed.own.length >= MOST.own) return undefined;
  const used = mentioned(bed);
  for (let n = 1; OWN_ID.test(`own-${n}`); n++)
    if (!used.includes(`own-${n}`)) return { id: `own-${n}`, title: '', moments: [], answers: {} };
  return undefined;
}

/** The bed's own ideas with this one in its place, or behind the others where it is new. */
export const withOwn = (bed: Pick<PlayBed, 'own'>, own: OwnIdea): readonly OwnIdea[] =>
  bed.own.some(({ id }) => id === own.id)
    ? bed.own.map((one) => (one.id === own.id ? own : one))
    : [...bed.own, own];

/** What of a bed changes when an own idea is taken off it: nothing at the bed speaks of it any more. */
export function withoutOwn(bed: PlayBed, id: string): Partial<PlayBed> {
  const words = (list: readonly string[]) => list.filter((word) => word !== id);
  const places = <T extends { idea: string }>(list: readonly T[]) => list.filter(({ idea }) => idea !== id);
  return {
    own: bed.own.filter((one) => one.id !== id),
    child: {
      ...bed.child,
      likes: words(bed.child.likes),
      dislikes: words(bed.child.dislikes),
      never: words(bed.child.never),
    },
    notToday: words(bed.notToday),
    pins: places(bed.pins),
    ...(bed.childChooses ? { childChooses: places(bed.childChooses).filter(({ or }) => or !== id) } : {}),
    done: places(bed.done),
    history: {
      yesterday: words(bed.history.yesterday),
      lastThreeDays: words(bed.history.lastThreeDays),
    },
    ...(bed.plan ? { plan: places(bed.plan) } : {}),
  };
}
