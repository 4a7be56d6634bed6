/** An idea in someone's own words: what it may be, and what the planner makes of it. */
import { BARRED, KINDS, type Barred, type Caution, type Fault, type Idea } from '../play/types.ts';
import { CAUTION_QUESTIONS, type CautionQuestion, type OwnIdea } from './bed.ts';
import { blame, fieldsOf } from './fields.ts';

const OWN_TITLE = { least: 2, most: 60 } as const;
const OWN_MINUTES = { least: 5, most: 60 } as const;
/** `own-1` to `own-99`: a number is not given twice in a day, though eight ideas are the most. */
export const OWN_ID = /^own-[1-9][0-9]?$/;
const FIRST_YEAR = 1;
const LAST_YEAR = 17;

const MOMENTS = ['needle', 'bandage'] as const;
const QUESTIONS = Object.keys(CAUTION_QUESTIONS) as CautionQuestion[];
const FIELDS = [
  ...(['id', 'title', 'kind', 'minutes', 'position', 'hands', 'energy', 'noise', 'mess', 'who'] as const),
  ...(['wipe', 'moments', 'tray', 'cautions', 'barred'] as const),
] satisfies (keyof OwnIdea)[];

/** Line breaks and other control characters, halves of a character, and what turns the reading direction of what follows. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u;
/** What leaves no trace on paper by itself. */
const INVISIBLE = /[\p{Z}\p{Cf}\p{M}]/u;

/** The years from which the rules let what was answered be done at all; the rules themselves say so again. */
function firstYear(screen: boolean, cautions: readonly Caution[]): number {
  if (cautions.includes('small-parts') || cautions.includes('cord')) return 3;
  return screen ? 2 : FIRST_YEAR;
}

/**
 * What the planner reads of a play specialist's own idea: nothing to fetch, every wish at a hard moment, and the cautions
 * that follow from what was answered.
 *
 * Shape: whole, as `readOwn` gives it. What stands on the tray counts as head up and above the waist, and a screen is a
 * screen whether it was named as a kind or as a caution. An answer that bars it stays, so that it is never placed.
 * Not: whether the child can see, hear or speak enough for it. Whoever wrote it knows the child.
 * Source: design 4-play, 5.2 and 5.6 (our proposal).
 *
 * @example ideaOf({ ...own, cautions: ['cord'] }).ages // [3, 17]
 */
export function ideaOf(own: OwnIdea): Idea {
  const screen = own.kind === 'screen' || own.cautions.includes('screen');
  const position = own.tray ? 'propped' : own.position;
  const cautions: Caution[] = own.cautions.map((question) => CAUTION_QUESTIONS[question]);
  if (screen) cautions.push('screen');
  if (position === 'propped') cautions.push('above-waist');
  return {
    id: own.id,
    kind: own.kind,
    minutes: own.minutes,
    ages: [firstYear(screen, cautions), LAST_YEAR],
    position,
    hands: own.hands,
    energy: own.energy,
    mess: own.mess,
    noise: own.noise,
    who: own.who,
    things: [],
    wipe: own.wipe,
    moments: own.moments,
    suits: own.moments.length ? ['watch', 'look-away'] : [],
    tray: own.tray,
    screen: screen ? 'yes' : 'no',
    // nobody was asked whether it gives light
    dark: false,
    needs: [],
    cautions: [...new Set(cautions)],
    absorbs: 2,
    ...(own.barred.length ? { barred: own.barred } : {}),
  };
}

/** In the order of the table, whatever the order of the answers. */
const inOrderOf =
  <T>(table: readonly T[]) =>
  (a: T, b: T) =>
    table.indexOf(a) - table.indexOf(b);

const onceFrom =
  <T extends string>(allowed: readonly T[], taken: Set<T>) =>
  (value: unknown, where: string, faults: Fault[]): T | undefined => {
    const found = allowed.find((one) => one === value);
    if (found === undefined) return blame(faults, where, `one of ${allowed.join('|')}`, value);
    if (taken.has(found)) return blame(faults, where, 'each once', value);
    taken.add(found);
    return found;
  };

function titleOf(value: unknown, where: string, faults: Fault[]): string | undefined {
  if (typeof value !== 'string' || value.length > 4 * OWN_TITLE.most)
    return blame(faults, where, `${OWN_TITLE.least} to ${OWN_TITLE.most} characters`, value);
  const title = value.trim();
  const characters = [...title];
  const seen = characters.filter((one) => !INVISIBLE.test(one)).length;
  if (seen < OWN_TITLE.least || characters.length > OWN_TITLE.most)
    return blame(faults, where, `${OWN_TITLE.least} to ${OWN_TITLE.most} characters`, value);
  if (UNPRINTABLE.test(title))
    return blame(faults, where, 'no line breaks, no marks that turn the direction', value);
  return title;
}

function minutesOf(value: unknown, where: string, faults: Fault[]): OwnIdea['minutes'] | undefined {
  const [least, most] = Array.isArray(value) && value.length === 2 ? (value as unknown[]) : [];
  const within = (minutes: unknown): minutes is number =>
    typeof minutes === 'number' &&
    Number.isInteger(minutes) &&
    minutes >= OWN_MINUTES.least &&
    minutes <= OWN_MINUTES.most;
  if (within(least) && within(most) && least <= most) return [least, most];
  return blame(faults, where, `least and most, from ${OWN_MINUTES.least} to ${OWN_MINUTES.most}`, value);
}

/** Reads one own idea and names what is wrong with it; nothing where anything is. */
export function readOwnAt(value: unknown, where: string, faults: Fault[]): OwnIdea | undefined {
  const here: Fault[] = [];
  const fields = fieldsOf(value, where, here, FIELDS);
  const own = fields && {
    id: fields.text('id', OWN_ID, 'own-1 to own-99', 6),
    title: titleOf(fields.raw('title'), `${where} › title`, here),
    kind: fields.choice('kind', KINDS),
    minutes: minutesOf(fields.raw('minutes'), `${where} › minutes`, here),
    position: fields.choice('position', ['flat', 'propped', 'both'] as const),
    hands: fields.choice('hands', [0, 1, 2] as const),
    energy: fields.choice('energy', [1, 2, 3] as const),
    noise: fields.choice('noise', [0, 1, 2] as const),
    mess: fields.choice('mess', [0, 1, 2] as const),
    who: fields.choice('who', ['alone', 'adult', 'either'] as const),
    wipe: fields.choice('wipe', ['yes', 'leave', 'no'] as const),
    moments: fields.list('moments', 2, onceFrom(MOMENTS, new Set())).sort(inOrderOf(MOMENTS)),
    tray: fields.yes('tray'),
    cautions: fields
      .list('cautions', QUESTIONS.length, onceFrom(QUESTIONS, new Set()))
      .sort(inOrderOf(QUESTIONS)),
    barred: fields.list('barred', BARRED.length, onceFrom(BARRED, new Set<Barred>())).sort(inOrderOf(BARRED)),
  };
  // a question nobody answered is not a no
  for (const name of ['moments', 'cautions', 'barred'])
    if (fields && !fields.has(name)) fields.refuse(name, 'a list');
  for (const { where: place, rule, seen } of here) blame(faults, place, rule, seen);
  return here.length ? undefined : (own as OwnIdea);
}

/**
 * Everything that is missing or wrong in an own idea, so that its form can point at it.
 *
 * Shape: any value -> one fault for each field, `where` as `own › title`; none says that it may be planned with.
 * Errors: none.
 *
 * @example faultsOfOwn({ ...own, title: 'A' }) // [{ where: 'own › title', rule: '2 to 60 characters', seen: 'A' }]
 */
export function faultsOfOwn(own: unknown): Fault[] {
  const faults: Fault[] = [];
  readOwnAt(own, 'own', faults);
  return faults;
}

/**
 * An own idea out of what was typed or kept, or nothing where anything in it is missing or wrong.
 *
 * Shape: the known fields alone, spaces at the ends of the title left out.
 * Not: why not; see `faultsOfOwn`.
 */
export const readOwn = (value: unknown): OwnIdea | undefined => readOwnAt(value, 'own', []);
