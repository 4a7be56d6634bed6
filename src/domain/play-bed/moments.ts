/** What helps before, during and after a hard moment, by age: who does it, and which ideas it uses. */

/** `staff` is whoever of the ward is there for it. */
export type Who = 'grown-up' | 'child' | 'staff';

/** One step of the card; its words are in locales. */
export interface Step {
  id: string;
  who: Who;
  /** Ideas of the library, any of which will do; the day's plan has chosen already where it holds one. */
  ideas: readonly string[];
  /** Its words name none of them: one that is possible is enough for the words to be true. */
  anyOfThem?: true;
  /** It hands the child something small, which no child gets who puts things into the mouth. */
  smallParts?: true;
}
export interface MomentCard {
  before: readonly Step[];
  during: readonly Step[];
  after: readonly Step[];
}

const step = <Id extends string>(
  id: Id,
  who: Who,
  ideas: readonly string[] = [],
  more: Pick<Step, 'anyOfThem' | 'smallParts'> = {},
) => ({ id, who, ideas, ...more });

/** At every age. Nobody whom the child goes to for comfort holds the child down. */
const ALWAYS = [step('one-person-talks', 'grown-up'), step('never-held-down-by-family', 'grown-up')] as const;

/** What the nurse may give before it, and when, is the nurse's to say; the card only has it asked. */
const ASK_MEDICINE = 'ask-medicine-time';

/** From this many completed months on. Source: design 4-play, 5.7 (the ward decides); distraction and guided imagery as there. */
const CARDS = [
  {
    age: 'first',
    fromMonths: 0,
    before: [
      step('comfort-thing', 'grown-up'),
      step('grown-up-face', 'grown-up'),
      step('song-chosen', 'grown-up', ['same-song', 'name-song'], { anyOfThem: true }),
      step(ASK_MEDICINE, 'grown-up'),
    ],
    during: [
      ...ALWAYS,
      step('rhyme-song-bubbles', 'grown-up', ['hand-walk-rhyme', 'same-song', 'slow-bubbles']),
    ],
    after: [
      step('cuddle-at-head-end', 'grown-up'),
      step('feed-if-allowed', 'grown-up'),
      step('quiet-time', 'grown-up', ['quiet-pat', 'hand-in-hand']),
    ],
  },
  {
    age: 'three',
    fromMonths: 36,
    before: [
      step(ASK_MEDICINE, 'grown-up'),
      step('three-pictures', 'grown-up'),
      step('toy-goes-first', 'staff'),
    ],
    during: [
      ...ALWAYS,
      step('find-or-blow', 'grown-up', ['find-it-sheet', 'candle-fingers']),
      step('shout-but-still', 'child'),
    ],
    after: [
      step('say-what-went-well', 'grown-up'),
      step('sticker-on-page', 'grown-up', [], { smallParts: true }),
    ],
  },
  {
    age: 'six',
    fromMonths: 72,
    before: [
      step('half-hour-ahead', 'grown-up'),
      step(ASK_MEDICINE, 'grown-up'),
      step('watch-or-look-away', 'child'),
    ],
    during: [...ALWAYS, step('count-or-ask', 'grown-up', ['counting-cards', 'twenty-asks'])],
    after: [step('tell-or-draw', 'child', ['three-word-tale', 'dictate-draw'])],
  },
  {
    age: 'nine',
    fromMonths: 108,
    before: [step('same-day', 'grown-up'), step('coping-card', 'child'), step(ASK_MEDICINE, 'grown-up')],
    during: [...ALWAYS, step('dial-film-story', 'child', ['dial-the-ouch', 'short-film', 'speaker-story'])],
    after: [step('what-helped', 'child')],
  },
  {
    age: 'thirteen',
    fromMonths: 156,
    before: [step('when-wanted', 'child'), step('alone-if-wanted', 'child'), step(ASK_MEDICINE, 'grown-up')],
    during: [
      ...ALWAYS,
      step('own-music', 'child', ['calm-sounds']),
      step('breath-or-questions', 'child', ['box-breath', 'twenty-asks', 'which-would-you']),
    ],
    after: [step('privacy', 'staff'), step('tell-the-nurse', 'child')],
  },
] as const satisfies readonly (MomentCard & { age: string; fromMonths: number })[];

type Row = (typeof CARDS)[number];
/** The id of every step, for the words that belong to it. */
export type StepId = (Row['before'] | Row['during'] | Row['after'])[number]['id'];

/** The ages of the cards, the youngest first, by the birthday on which each begins; `first` begins before any. */
export type MomentAge = Row['age'];
export const MOMENT_AGES: readonly { age: MomentAge; fromMonths: number }[] = CARDS.map(
  ({ age, fromMonths }) => ({ age, fromMonths }),
);

function rowFor(ageMonths: number): Row {
  const reached = CARDS.filter(({ fromMonths }) => ageMonths >= fromMonths);
  return reached[reached.length - 1] ?? CARDS[0];
}

/**
 * Which of the cards holds at this age, for the words that are said at it.
 *
 * Units: completed months.
 *
 * @example momentAge(40) // 'three'
 */
export const momentAge = (ageMonths: number): MomentAge => rowFor(ageMonths).age;

/**
 * The card for a hard moment at this age.
 *
 * Units: completed months; the youngest card holds until the third birthday, the oldest from the thirteenth.
 * Shape: steps in the order in which they are done. One person talks, and nobody of the family holds the child down, at
 * every age.
 * Not: which ideas the bed, the body and the ward allow today; the planner says so. Whether and when medicine is given is
 * the nurse's to say.
 * Source: design 4-play, 5.7: preparation honest and timed by age (the ward decides); medicine is asked about at every age
 * (1-job, scene 14).
 *
 * @example momentCard(40).before.map(({ id }) => id) // ['ask-medicine-time', 'three-pictures', 'toy-goes-first']
 */
export function momentCard(ageMonths: number): MomentCard {
  const { before, during, after } = rowFor(ageMonths);
  return { before, during, after };
}
