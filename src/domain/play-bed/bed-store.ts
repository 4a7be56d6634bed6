/** Reads a bed that a device kept or a code brought: whatever cannot be read is named and left out, the rest is kept. */
import type { DaySketch } from '../play/day.ts';
import { GRID, PLAY_FROM, PLAY_UNTIL } from '../play/feasible.ts';
import type { Fault, Need, Permission, Placement } from '../play/types.ts';
import { DAY_MINUTES } from '../units.ts';
import { BED_SHAPES, FEARS, type ChildChooses, type Fear, type OwnIdea, type PlayBed } from './bed.ts';
import { blame, eachOnce, fieldsOf, type Fields } from './fields.ts';
import { OWN_ID, readOwnAt } from './own-idea.ts';
import { readStretch } from './stretches.ts';

/** No ward's day comes near these; a stranger's may. The planner's sixteen windows hold three placements each. */
export const MOST = {
  events: 24,
  moments: 8,
  stretches: 6,
  energy: 6,
  placements: 48,
  own: 8,
  words: 200,
} as const;
/** The first birthday, and the day before the eighteenth. */
const AGE_MONTHS = { least: 12, most: 215 } as const;
const LONGEST_ID = 40;
/** Ids of ideas, kinds, things, windows, events and moments. */
const ID = /^[a-z]+(?:-[a-z0-9]+)*$/;
export const NEEDS = ['sight', 'hearing', 'speech', 'learning'] as const satisfies readonly Need[];
export const PERMISSIONS = ['plants', 'free-ankle', 'hand-massage'] as const satisfies readonly Permission[];
export const PROCEDURES = ['needle', 'bandage', 'other'] as const;
export const WISHES = ['watch', 'look-away', 'choose-then'] as const;
export const ISOLATIONS = ['none', 'contact', 'breath'] as const;
const LEVELS = [1, 2, 3] as const;
const HANDS = [0, 1, 2] as const;
const SOUNDS = [0, 1, 2] as const;
const NO_LIMIT = 2;

const idOf = ({ id }: { id: string }) => id;
const byTime = (a: { from: number }, b: { from: number }) => a.from - b.from;

/** What older beds do not have; what was not ticked stands in no bed, so that each bed is written in one way. */
function heededIn(fields: Fields): Pick<PlayBed, 'fears' | 'wordless' | 'loudest'> {
  const fears = wordsIn(fields, 'fears', FEARS) as Fear[];
  const wordless = fields.has('wordless') && (fields.yes('wordless') ?? true);
  const loudest = fields.has('loudest') ? (fields.choice('loudest', SOUNDS) ?? 0) : NO_LIMIT;
  return {
    ...(fears.length ? { fears } : {}),
    ...(wordless ? { wordless } : {}),
    ...(loudest < NO_LIMIT ? { loudest } : {}),
  };
}

/** Reads words of which each counts once, in the order of the alphabet. */
function wordsIn(fields: Fields, name: string, allowed?: readonly string[]): string[] {
  const words = fields.list(name, MOST.words, (value, where, faults) => {
    if (typeof value !== 'string' || value.length > LONGEST_ID || !ID.test(value))
      return blame(faults, where, 'an id', value);
    if (allowed && !allowed.includes(value))
      return blame(faults, where, `one of ${allowed.join('|')}`, value);
    return value;
  });
  return [...new Set(words)].sort();
}

/** What lies in the day, by its id and its time; each id once. */
function timed(fields: Fields, least: number) {
  const id = fields.text('id', ID, 'an id', LONGEST_ID);
  const from = fields.whole('from', 0, DAY_MINUTES - GRID, GRID);
  const minutes = fields.whole('minutes', least, DAY_MINUTES, GRID);
  if (id === undefined || from === undefined || minutes === undefined) return undefined;
  if (from + minutes > DAY_MINUTES) return fields.refuse('minutes', 'over by midnight');
  return { id, from, minutes };
}

function eventOf(value: unknown, where: string, faults: Fault[]): DaySketch['events'][number] | undefined {
  const fields = fieldsOf(value, where, faults, ['id', 'from', 'minutes']);
  return fields && timed(fields, GRID);
}

function momentOf(value: unknown, where: string, faults: Fault[]): DaySketch['moments'][number] | undefined {
  const fields = fieldsOf(value, where, faults, [
    ...['id', 'from', 'minutes', 'procedure', 'weight', 'freeHands', 'wish', 'grownUp'],
  ]);
  if (!fields) return undefined;
  const time = timed(fields, GRID);
  if (!time) return undefined;
  // a hard moment that is half read stays: as one that weighs most, with no hand free
  const wish = fields.has('wish') ? fields.choice('wish', WISHES) : undefined;
  const grownUp = fields.has('grownUp') ? fields.yes('grownUp') : undefined;
  return {
    ...time,
    procedure: fields.choice('procedure', PROCEDURES) ?? 'other',
    weight: fields.choice('weight', LEVELS) ?? 3,
    freeHands: fields.choice('freeHands', HANDS) ?? 0,
    ...(wish ? { wish } : {}),
    ...(grownUp === undefined ? {} : { grownUp }),
  };
}

function energyOf(value: unknown, where: string, faults: Fault[]): DaySketch['energy'][number] | undefined {
  const fields = fieldsOf(value, where, faults, ['from', 'energy']);
  const from = fields?.whole('from', 0, DAY_MINUTES - GRID, GRID);
  const energy = fields?.choice('energy', LEVELS);
  return from === undefined || energy === undefined ? undefined : { from, energy };
}

function sketchOf(fields: Fields | undefined): DaySketch | undefined {
  if (!fields) return undefined;
  const wake = fields.whole('wake', PLAY_FROM, PLAY_UNTIL, GRID);
  const lightsOut = fields.whole('lightsOut', PLAY_FROM, PLAY_UNTIL, GRID);
  if (wake === undefined || lightsOut === undefined) return undefined;
  if (wake >= lightsOut) return fields.refuse('lightsOut', 'after waking');
  const stretches = (name: string) => fields.list(name, MOST.stretches, readStretch).sort(byTime);
  const events = eachOnce(fields.list('events', MOST.events, eventOf), idOf, fields, 'events');
  const moments = eachOnce(fields.list('moments', MOST.moments, momentOf), idOf, fields, 'moments');
  return {
    ...{ wake, lightsOut },
    events: events.sort(byTime),
    moments: moments.sort(byTime),
    propped: stretches('propped'),
    quiet: stretches('quiet'),
    grownUp: stretches('grownUp'),
    energy: fields.list('energy', MOST.energy, energyOf).sort(byTime),
  };
}

function placementOf(own: readonly OwnIdea[]) {
  return (value: unknown, where: string, faults: Fault[]): Placement | undefined => {
    const fields = fieldsOf(value, where, faults, ['idea', 'window', 'from', 'minutes']);
    if (!fields) return undefined;
    const idea = fields.text('idea', ID, 'the id of an idea', LONGEST_ID);
    const window = fields.text('window', ID, 'the id of a window', LONGEST_ID);
    const from = fields.whole('from', 0, DAY_MINUTES - GRID, GRID);
    const minutes = fields.whole('minutes', GRID, DAY_MINUTES, GRID);
    if (idea === undefined || window === undefined || from === undefined || minutes === undefined)
      return undefined;
    if (from + minutes > DAY_MINUTES) return fields.refuse('minutes', 'over by midnight');
    if (OWN_ID.test(idea) && !own.some(({ id }) => id === idea))
      return fields.refuse('idea', 'an own idea that is there');
    return { idea, window, from, minutes };
  };
}

const KEY = ({ from, idea, window, minutes }: Placement) => [from, idea, window, minutes].join(' ');

function placementsIn(fields: Fields, name: string, own: readonly OwnIdea[]): Placement[] {
  const found = new Map<string, Placement>();
  for (const one of fields.list(name, MOST.placements, placementOf(own))) found.set(KEY(one), one);
  return [...found.values()].sort((a, b) => a.from - b.from || (KEY(a) < KEY(b) ? -1 : 1));
}

/** What the child chooses for, as far as it can be read; a slot that is not marked is only planned. */
function choosesIn(fields: Fields, own: readonly OwnIdea[]): ChildChooses[] {
  const found = fields.list('childChooses', MOST.placements, (value, where, faults) => {
    const one = fieldsOf(value, where, faults, ['idea', 'or']);
    const idea = one?.text('idea', ID, 'the id of an idea', LONGEST_ID);
    const or = one?.text('or', ID, 'the id of an idea', LONGEST_ID);
    if (!one || idea === undefined || or === undefined) return undefined;
    if (or === idea) return one.refuse('or', 'another idea');
    const isThere = (id: string) => !OWN_ID.test(id) || own.some((mine) => mine.id === id);
    if (!isThere(idea)) return one.refuse('idea', 'an own idea that is there');
    return isThere(or) ? { idea, or } : one.refuse('or', 'an own idea that is there');
  });
  const each = eachOnce(found, ({ idea }) => idea, fields, 'childChooses');
  return each.sort((a, b) => (a.idea < b.idea ? -1 : 1));
}

const FIELDS = [
  ...(['shape', 'day', 'child', 'freeHands', 'room', 'eating', 'permissions', 'sketch', 'limits'] as const),
  ...(['bored', 'notToday', 'own', 'pins', 'history', 'done', 'plan'] as const),
  ...(['fears', 'wordless', 'loudest', 'eatingUnsaid', 'childChooses', 'taken'] as const),
] satisfies (keyof PlayBed)[];

/**
 * A bed out of what a device kept, this version's or an older one's, or out of a stranger's text.
 *
 * Shape: any value -> the bed, and everything in it that could not be read, with where, rule and what was seen. Lists of
 * words come in the order of the alphabet, what has a time in the order of the day. Where a yes or a number cannot be
 * read, the bed has the more careful one: no hand free, no eating, no screen, breath-borne isolation, things into the
 * mouth, nobody who speaks the child's language, no sound.
 * Units: minutes since the ward's midnight on the grid of five; waking and lights-out between 06:00 and 22:00.
 * Errors: no bed without its shape, its day, the child's age, waking and lights-out; all else goes alone.
 * Not: whether ideas and things are known, and whether the day can be planned; `windowsOf` and the planner say so.
 *
 * @example readBed(null) // { faults: [{ where: 'bed', rule: 'a thing with fields', seen: null }] }
 */
export function readBed(value: unknown): { bed?: PlayBed; faults: Fault[] } {
  const faults: Fault[] = [];
  const fields = fieldsOf(value, 'bed', faults, FIELDS);
  if (!fields) return { faults };
  const shape = fields.choice('shape', BED_SHAPES);
  const day = fields.day('day');
  const child = fields.inner('child', ['ageMonths', 'mouths', 'likes', 'dislikes', 'never', 'lacks']);
  const ageMonths = child?.whole('ageMonths', AGE_MONTHS.least, AGE_MONTHS.most);
  const sketch = sketchOf(
    fields.inner('sketch', [
      ...['wake', 'lightsOut', 'events', 'moments', 'propped', 'quiet', 'grownUp', 'energy'],
    ]),
  );
  const room = fields.inner('room', ['shared', 'isolation', 'things', 'usedElsewhere']);
  const limits = fields.inner('limits', ['screenMinutes', 'grownUpMinutes']);
  const history = fields.has('history') ? fields.inner('history', ['yesterday', 'lastThreeDays']) : undefined;
  const own = eachOnce(fields.list('own', MOST.own, readOwnAt), idOf, fields, 'own');
  const yesterday = history ? wordsIn(history, 'yesterday') : [];
  const before = history ? wordsIn(history, 'lastThreeDays') : [];
  const childChooses = choosesIn(fields, own);
  const freeHands = fields.choice('freeHands', HANDS) ?? 0;
  const rest = {
    eating: fields.yes('eating') ?? false,
    // of a bed that may eat it says nothing
    ...(fields.raw('eating') === false && fields.has('eatingUnsaid') && fields.yes('eatingUnsaid')
      ? { eatingUnsaid: true as const }
      : {}),
    permissions: wordsIn(fields, 'permissions', PERMISSIONS) as Permission[],
    bored: fields.yes('bored') ?? false,
    notToday: wordsIn(fields, 'notToday'),
    own: own.sort((a, b) => a.id.length - b.id.length || (a.id < b.id ? -1 : 1)),
    pins: placementsIn(fields, 'pins', own),
    // what was done yesterday was done in the last three days
    history: { yesterday, lastThreeDays: [...new Set([...before, ...yesterday])].sort() },
    done: placementsIn(fields, 'done', own),
    ...heededIn(fields),
    ...(childChooses.length ? { childChooses } : {}),
    ...(fields.has('plan') ? { plan: placementsIn(fields, 'plan', own) } : {}),
    ...(fields.has('taken') && fields.yes('taken') ? { taken: true as const } : {}),
  };
  const asked = {
    mouths: child?.yes('mouths') ?? true,
    likes: child ? wordsIn(child, 'likes') : [],
    dislikes: child ? wordsIn(child, 'dislikes') : [],
    never: child ? wordsIn(child, 'never') : [],
    lacks: child ? (wordsIn(child, 'lacks', NEEDS) as Need[]) : [],
  };
  const place = {
    shared: room?.yes('shared') ?? true,
    isolation: room?.choice('isolation', ISOLATIONS) ?? 'breath',
    things: room ? wordsIn(room, 'things') : [],
    usedElsewhere: room ? wordsIn(room, 'usedElsewhere') : [],
  };
  const allowed = {
    screenMinutes: limits?.whole('screenMinutes', 0, DAY_MINUTES) ?? 0,
    grownUpMinutes: limits?.whole('grownUpMinutes', 0, DAY_MINUTES) ?? 0,
  };
  if (!shape || !day || ageMonths === undefined || !sketch) return { faults };
  const bed: PlayBed = {
    ...{ shape, day, child: { ageMonths, ...asked }, freeHands, room: place, sketch, limits: allowed },
    ...rest,
  };
  return { bed, faults };
}
