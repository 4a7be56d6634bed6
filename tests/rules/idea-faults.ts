/**
 * What every play idea keeps, as functions from ideas to faults: one line per fault, none where all is as it must be.
 * Kept apart from the tests so that each rule can be tried on an idea that breaks it.
 */
import { CAUTIONS, KINDS, type Caution, type Idea } from '#domain/play/types.ts';

/**
 * Things that bring their caution with them. Small parts under three: 16 CFR 1501 (United States), the test cylinder;
 * cords and leads: our proposal, after the ban on cords in reach of small children.
 */
const BRINGS: Readonly<Record<string, readonly Caution[]>> = {
  bubbles: ['breath', 'water'],
  cress: ['water', 'not-in-mouth'],
  clings: ['small-parts'],
  dough: ['bits', 'not-in-mouth'],
  figures: ['small-parts'],
  foil: ['bits', 'small-parts'],
  jars: ['food', 'not-in-mouth'],
  jigsaw: ['small-parts'],
  'board-game': ['small-parts'],
  mirror: ['light'],
  'paper-strips': ['scissors'],
  pasta: ['bits', 'small-parts', 'food', 'not-in-mouth'],
  pinwheel: ['breath', 'small-parts'],
  player: ['ears'],
  screen: ['screen'],
  'soft-blocks': ['throwing'],
  'soft-strips': ['cord'],
  speaker: ['ears'],
  stickers: ['small-parts'],
  straws: ['small-parts', 'not-in-mouth'],
  torch: ['light'],
  'toy-kit': ['small-parts', 'cord'],
  'water-sheet': ['water', 'small-parts'],
  'wipe-board': ['water'],
};

/** Paper and cloth stay with one child; a thing of this list is never "wiped clean". */
const STAYS = new Set(
  'book cloth cloth-book soft-toy paper paper-strips print pillowcase sock stickers photos box'.split(' '),
);

/** Age at which the idea may first be offered, in completed months. */
export const firstMonth = (idea: Idea) => idea.fromMonths ?? 12 * idea.ages[0];

const within = (value: number, least: number, most: number) =>
  Number.isInteger(value) && value >= least && value <= most;

/** Figures out of their range, and words that stand for nothing. */
export function formFaults(idea: Idea, things: readonly string[]): string[] {
  const faults: [boolean, string][] = [
    [!/^[a-z]+(?:-[a-z]+)*$/.test(idea.id), `id: kebab-case, saw "${idea.id}"`],
    [!KINDS.includes(idea.kind), `kind: one of the kinds, saw "${idea.kind}"`],
    [
      !within(idea.minutes[0], 1, idea.minutes[1]) || !within(idea.minutes[1], 1, 60),
      `minutes: 1 to 60, least first, saw ${idea.minutes.join()}`,
    ],
    [
      !within(idea.ages[0], 1, idea.ages[1]) || !within(idea.ages[1], 1, 17),
      `ages: 1 to 17, least first, saw ${idea.ages.join()}`,
    ],
    [
      idea.fromMonths !== undefined && Math.floor(idea.fromMonths / 12) !== idea.ages[0],
      `fromMonths: within the first year of ages, saw ${idea.fromMonths}`,
    ],
    [!within(idea.hands, 0, 2), `hands: 0 to 2, saw ${idea.hands}`],
    [!within(idea.energy, 1, 3), `energy: 1 to 3, saw ${idea.energy}`],
    [!within(idea.mess, 0, 2), `mess: 0 to 2, saw ${idea.mess}`],
    [!within(idea.noise, 0, 2), `noise: 0 to 2, saw ${idea.noise}`],
    [!within(idea.absorbs, 1, 3), `absorbs: 1 to 3, saw ${idea.absorbs}`],
    [idea.quietAlt === undefined, 'quietAlt: the id of an idea, saw none'],
  ];
  return [
    ...faults.filter(([bad]) => bad).map(([, fault]) => `${idea.id} › ${fault}`),
    ...idea.things
      .filter((thing) => !things.includes(thing))
      .map((thing) => `${idea.id} › things: one of the things, saw "${thing}"`),
    ...idea.cautions
      .filter((caution, i) => !CAUTIONS.includes(caution) || idea.cautions.indexOf(caution) !== i)
      .map((caution) => `${idea.id} › cautions: each of the cautions once, saw "${caution}"`),
  ];
}

/**
 * What could hurt: a caution that is missing where the things, the age or the place demand it.
 * Screens: none under 2 (WHO 2019, ISBN 978-92-4-155053-6).
 */
export function safetyFaults(idea: Idea): string[] {
  const has = (caution: Caution) => idea.cautions.includes(caution);
  const uses = (thing: string) => idea.things.includes(thing);
  const month = firstMonth(idea);
  const missing = idea.things.flatMap((thing) =>
    (BRINGS[thing] ?? []).filter((caution) => !has(caution)).map((caution) => `"${thing}" brings ${caution}`),
  );
  const faults: [boolean, string][] = [
    [has('small-parts') && month < 36, 'small parts under 3'],
    [has('cord') && month < 36, 'a cord under 3'],
    [
      (uses('player') || uses('screen')) && idea.noise > 0 && !has('cord'),
      'sound through a lead, and nothing about it',
    ],
    // the cap of a pen is a small part; a grown-up's own pen is not
    [
      (uses('pen') || uses('pencils')) && idea.who !== 'adult' && month < 72 && !has('small-parts'),
      'a pen under 6 and nobody by',
    ],
    [has('scissors') && idea.who === 'alone', 'scissors and nobody who cuts'],
    [has('throwing') && idea.who !== 'adult', 'tempts to throw and no grown-up'],
    [idea.screen === 'yes' && month < 24, 'a screen under 2'],
    [(idea.screen === 'yes') !== has('screen'), 'screen and its caution differ'],
    [idea.who === 'alone' && idea.noise > 1, 'loud and alone'],
    [idea.position === 'propped' && !has('above-waist'), 'head up and not above the waist'],
    [idea.tray !== (idea.position === 'propped'), 'a tray lying flat, or none with the head up'],
    [idea.tray && idea.moments.length > 0, 'on the tray at a hard moment'],
    [idea.hands === 2 && idea.moments.length > 0, 'two hands at a hard moment'],
    [
      (idea.moments.length === 0) !== (idea.suits.length === 0),
      'a wish without a hard moment, or none with it',
    ],
    [
      idea.hands === 2 && (idea.kind === 'music' || idea.kind === 'body') && !has('shaking'),
      'both arms move and nothing about shaking',
    ],
    [
      idea.dark &&
        (idea.noise > 0 ||
          idea.energy > 2 ||
          idea.screen === 'yes' ||
          uses('torch') ||
          idea.needs.includes('sight')),
      'dark, with noise, light or something to look at',
    ],
    [idea.things.length === 0 && idea.wipe !== 'yes', 'no things and yet something to wipe'],
    [idea.wipe === 'yes' && idea.things.some((thing) => STAYS.has(thing)), 'paper or cloth that is wiped'],
    [idea.barred !== undefined, 'barred, and in the library'],
  ];
  return [...missing, ...faults.filter(([bad]) => bad).map(([, fault]) => fault)].map(
    (fault) => `${idea.id} › ${fault}`,
  );
}

/** Noise first, then how lively it is: what comes lower is quieter. */
const loudness = (idea: Idea) => 10 * idea.noise + idea.energy;
const QUIETEST = 1;

/**
 * The quieter idea is one that the same child can take up at once: of the same ages, no more hands, no other
 * position, no grown-up where none was needed, nothing to fetch, nobody to ask, no new caution.
 */
export function quieterFaults(idea: Idea, ideaOf: (id: string) => Idea | undefined): string[] {
  const other = ideaOf(idea.quietAlt ?? '');
  if (other === undefined || other.id === idea.id)
    return [`${idea.id} › quietAlt: another idea, saw "${idea.quietAlt}"`];
  const faults: [boolean, string][] = [
    [other.noise > 0, 'makes noise'],
    [loudness(other) >= loudness(idea) && loudness(other) !== QUIETEST, 'is not quieter'],
    [firstMonth(other) > firstMonth(idea) || other.ages[1] < idea.ages[1], 'is for other ages'],
    [other.hands > idea.hands, 'needs more hands'],
    [other.position === 'propped' && idea.position !== 'propped', 'needs the head up'],
    // the quietest thing a child can do alone has nothing quieter but company
    [
      other.who === 'adult' && idea.who !== 'adult' && idea.id !== 'do-nothing',
      'needs a grown-up where the other does not',
    ],
    [other.things.some((thing) => !idea.things.includes(thing)), 'needs something fetched'],
    [other.allowedBy !== undefined, "needs the ward's leave"],
    [other.cautions.some((caution) => !idea.cautions.includes(caution)), 'brings a caution'],
  ];
  return faults.filter(([bad]) => bad).map(([, fault]) => `${idea.id} › quietAlt: ${other.id} ${fault}`);
}

/** Ideas for a bed: lying flat, so many hands free, a grown-up there, whatever the ward allows besides. */
export function possibleAt(ideas: readonly Idea[], ageMonths: number, hands: 0 | 1): Idea[] {
  return ideas.filter(
    (idea) =>
      ageMonths >= firstMonth(idea) &&
      ageMonths < 12 * (idea.ages[1] + 1) &&
      idea.position !== 'propped' &&
      idea.hands <= hands &&
      idea.allowedBy === undefined,
  );
}

const DEEDS =
  /\b(?:throw|toss|tie|ties|jump|jumps|bounce|shake|shakes|climb|climbs|kick|kicks|stand|stands|swing|roll over|sits? up)\b/iu;

/** Texts that tell a child in traction to do what no child in traction may. */
export function forbiddenDeeds(texts: Readonly<Record<string, string>>): string[] {
  return Object.entries(texts)
    .filter(([, text]) => DEEDS.test(text))
    .map(([key, text]) => `${key}: "${text}"`);
}
