/**
 * What a plan's code of version 1 holds, in this order, for ever: what was sent once must be read in every later version.
 *
 * One description writes and reads (`notes/coder.ts`). Ideas and things are their places in lists that only grow at the
 * end; how long the lists were stands in the code. All else is a place in the tables below, which are not the lists of
 * today: those may grow, and then there is a version 2.
 */
import { Damaged, type Coder } from '../notes/coder.ts';
import { PLAY_FROM } from '../play/feasible.ts';
import type { Placement } from '../play/types.ts';
import type { OwnIdea, PlayBed } from './bed.ts';

export const TABLES = {
  shapes: 'circle square triangle star drop moon leaf house boat fish cup sun'.split(' '),
  events:
    'breakfast wash medicine round school physio x-ray sheets lunch nap snack visitor supper other'.split(
      ' ',
    ),
  kinds: 'make draw talk pretend imagine listen read music puzzle world screen calm body sense'.split(' '),
  needs: ['sight', 'hearing', 'speech', 'learning'],
  permissions: ['plants', 'free-ankle', 'hand-massage'],
  isolations: ['none', 'contact', 'breath'],
  procedures: ['needle', 'bandage', 'other'],
  wishes: ['watch', 'look-away', 'choose-then'],
  positions: ['flat', 'propped', 'both'],
  who: ['alone', 'adult', 'either'],
  wipes: ['yes', 'leave', 'no'],
  moments: ['needle', 'bandage'],
  questions: (
    'small-parts cord scissors food water near-mouth sound screen feelings breath bits ' + 'arms-move'
  ).split(' '),
  barred: (
    'throws ties-to-bed-or-cord shakes-the-bed balloon magnet-or-button-cell swells-in-water ' +
    'flame-or-laser over-the-bed'
  ).split(' '),
} as const satisfies Record<string, readonly string[]>;
/** What ids of hard moments often begin with; any other id is spelled out. */
const MOMENT_NAMES = ['moment', 'needle', 'bandage', 'other', 'hard'];

const GRID = 5;
/** More than any list may hold; what says more was never written by us. */
const LONGEST_LIST = 250;
const IDEA_BITS = 10;
const OWN_BITS = 7;
const FIRST_YEAR = 2020;

/** A later list of ideas, things or choices: the code is whole, but this phone cannot read it. */
export class TooNew extends Error {
  readonly where: string;
  constructor(where: string) {
    super(where);
    this.where = where;
  }
}

export interface Lists {
  ideaIds: readonly string[];
  thingIds: readonly string[];
}

/** The coder with words of a bed. Writing has the bed and reading has none; every line below does both. */
export class Told {
  private readonly coder: Coder;
  private readonly lists: Lists;
  constructor(coder: Coder, lists: Lists) {
    this.coder = coder;
    this.lists = lists;
  }

  flag = (about: string, wanted: boolean | undefined) => this.coder.flag(about, wanted ?? false);
  count = (about: string, wanted: number | undefined) => this.coder.count(about, wanted ?? 0);
  /** A number of so many bits, counted from `first`. */
  number = (about: string, bits: number, wanted: number | undefined, first = 0) =>
    first + this.coder.choice(about, bits, (wanted ?? first) - first);
  fives = (about: string, wanted: number | undefined) => GRID * this.count(about, (wanted ?? 0) / GRID);
  shiftOfFives = (about: string, wanted: number | undefined) =>
    GRID * this.coder.shift(about, (wanted ?? 0) / GRID);
  text = (about: string, wanted: string | undefined) => this.coder.text(about, wanted ?? '');

  one(about: string, bits: number, table: readonly string[], wanted: string | undefined): string {
    const place = this.placeIn(about, table, wanted);
    const found = table[this.coder.choice(about, bits, place)];
    if (found === undefined) throw new TooNew(about);
    return found;
  }

  private placeIn(about: string, table: readonly string[], wanted: string | undefined): number {
    const place = wanted === undefined ? 0 : table.indexOf(wanted);
    if (place < 0) throw new Error(`play-bed › ${about}: one that a code can tell, saw "${wanted}"`);
    return place;
  }

  many<T, R>(about: string, wanted: readonly T[] | undefined, each: (one: T | undefined) => R): R[] {
    const length = this.count(`${about} many`, wanted?.length);
    if (length > LONGEST_LIST) throw new Damaged('a list beyond every bed');
    return Array.from({ length }, (_, n) => each(wanted?.[n]));
  }

  /** Which of a table; `length` is how long the table was for the writer. */
  some(
    about: string,
    table: readonly string[],
    wanted: readonly string[] | undefined,
    length = table.length,
  ): string[] {
    wanted?.forEach((word) => this.placeIn(about, table, word));
    const told: string[] = [];
    for (let n = 0; n < length; n++) {
      if (!this.flag(about, wanted?.includes(table[n]!))) continue;
      if (n >= table.length) throw new TooNew(about);
      told.push(table[n]!);
    }
    return told;
  }

  /** Ideas, own ones among them, and kinds where those may be named. */
  words(about: string, ideas: number, wanted: readonly string[] | undefined, kinds: boolean): string[] {
    const own = wanted?.filter(isOwn);
    const named = kinds ? wanted?.filter((word) => TABLES.kinds.includes(word)) : [];
    const rest = wanted?.filter((word) => !isOwn(word) && !named?.includes(word));
    return [
      ...(kinds ? this.some(`${about} kinds`, TABLES.kinds, named) : []),
      ...this.some(about, this.lists.ideaIds, rest, ideas),
      ...this.many(`${about} own`, own, (one) => this.own(about, one)),
    ];
  }

  own = (about: string, wanted: string | undefined) =>
    `own-${this.number(`${about} own`, OWN_BITS, wanted === undefined ? 0 : Number(wanted.slice(4)))}`;

  idea(wanted: string | undefined): string {
    if (this.flag('own', wanted !== undefined && isOwn(wanted))) return this.own('placed', wanted);
    return this.one('ideas', IDEA_BITS, this.lists.ideaIds, wanted);
  }

  /** An id that often is a known word, alone or with a number. */
  name(about: string, table: readonly string[], wanted: string | undefined): string {
    const [, start, number] = /^(.+?)(?:-([1-9]\d{0,5}))?$/.exec(wanted ?? '') ?? [];
    const known = start !== undefined && table.includes(start);
    const form = this.number(`${about} form`, 2, !known ? 2 : number === undefined ? 0 : 1);
    if (form > 1) return this.text(about, wanted);
    const word = this.one(about, 5, table, start);
    return form ? `${word}-${this.count(`${about} number`, Number(number))}` : word;
  }
}

const isOwn = (id: string) => /^own-[1-9]\d?$/.test(id);
const two = (value: number) => `${value}`.padStart(2, '0');
const clockName = (minute: number) => `w-${two(Math.floor(minute / 60))}${two(minute % 60)}`;

function dayTold(told: Told, wanted: string | undefined): string {
  const [year, month, day] = wanted?.split('-').map(Number) ?? [];
  const parts = [told.number('year', 7, year, FIRST_YEAR), told.number('month', 4, month)];
  return [...parts, told.number('day', 5, day)].map(two).join('-');
}

type Timed = { from: number; minutes: number };
/** From the end of what came before; nothing lies far from it. */
function timeTold(told: Told, about: string, wanted: Timed | undefined, before: { end: number }): Timed {
  const from = before.end + told.shiftOfFives(`${about} from`, wanted && wanted.from - before.end);
  const minutes = told.fives(`${about} minutes`, wanted?.minutes);
  before.end = from + minutes;
  return { from, minutes };
}

function sketchTold(told: Told, wanted: PlayBed['sketch'] | undefined) {
  const clock = (about: string, minute: number | undefined) =>
    PLAY_FROM + GRID * told.number(about, 8, minute === undefined ? 0 : (minute - PLAY_FROM) / GRID);
  const wake = clock('wake', wanted?.wake);
  const lightsOut = clock('lights-out', wanted?.lightsOut);
  const last = { end: wake };
  const events = told.many('events', wanted?.events, (one) => ({
    id: told.name('event', TABLES.events, one?.id),
    ...timeTold(told, 'event', one, last),
  }));
  last.end = wake;
  const moments = told.many('moments', wanted?.moments, (one) => {
    const id = told.name('moment', MOMENT_NAMES, one?.id);
    const time = timeTold(told, 'moment', one, last);
    const wish = told.number('wish', 2, one?.wish ? 1 + TABLES.wishes.indexOf(one.wish) : 0);
    const grownUp = told.number('moment grown-up', 2, one?.grownUp === undefined ? 0 : one.grownUp ? 2 : 1);
    return {
      ...{ id, ...time },
      procedure: told.one('procedure', 2, TABLES.procedures, one?.procedure),
      weight: told.number('weight', 2, one?.weight),
      freeHands: told.number('moment hands', 2, one?.freeHands),
      ...(wish ? { wish: TABLES.wishes[wish - 1] } : {}),
      ...(grownUp ? { grownUp: grownUp === 2 } : {}),
    };
  });
  const stretches = (name: 'propped' | 'quiet' | 'grownUp') => {
    let at = wake;
    return told.many(name, wanted?.[name], (one) => {
      const from = at + told.shiftOfFives('stretch from', one && one.from - at);
      at = from + told.fives('stretch', one && one.until - one.from);
      return { from, until: at };
    });
  };
  const rest = { propped: stretches('propped'), quiet: stretches('quiet'), grownUp: stretches('grownUp') };
  let at = wake;
  const energy = told.many('energy', wanted?.energy, (one) => {
    at += told.shiftOfFives('energy from', one && one.from - at);
    return { from: at, energy: told.number('energy', 2, one?.energy) as 1 | 2 | 3 };
  });
  return { wake, lightsOut, events, moments, ...rest, energy };
}

/** How a placement names its window: as the one before, by the clock, as a hard moment, or spelled out. */
const FORMS = ['before', 'clock', 'moment', 'text'] as const;
type Form = (typeof FORMS)[number];

function placementsTold(
  told: Told,
  wake: number,
  moments: readonly string[],
  wanted: readonly Placement[] | undefined,
): Placement[] {
  const last = { end: wake };
  let before = '';
  const formOf = ({ window }: Placement): Form => {
    if (window === before) return 'before';
    if (moments.includes(window)) return 'moment';
    return clockOf(window) === undefined ? 'text' : 'clock';
  };
  return told.many('placements', wanted, (one) => {
    const idea = told.idea(one?.idea);
    const time = timeTold(told, 'placement', one, last);
    const form = told.one('window form', 2, FORMS, one && formOf(one)) as Form;
    const clock = one && clockOf(one.window);
    if (form === 'clock')
      before = clockName(
        time.from - told.shiftOfFives('into window', clock === undefined ? 0 : time.from - clock),
      );
    if (form === 'moment') {
      const place = told.number('window moment', 4, one ? Math.max(0, moments.indexOf(one.window)) : 0);
      if (place >= moments.length) throw new Damaged('a moment that is not there');
      before = moments[place]!;
    }
    if (form === 'text') before = told.text('window', one?.window);
    return { idea, window: before, ...time };
  });
}

/** The minute that a window's name tells, if it is one of the grid. */
function clockOf(window: string): number | undefined {
  const [, hours, minutes] = /^w-(\d\d)(\d\d)$/.exec(window) ?? [];
  const minute = Number(hours) * 60 + Number(minutes);
  return minute % GRID === 0 && clockName(minute) === window ? minute : undefined;
}

function ownTold(told: Told, one: OwnIdea | undefined) {
  const id = told.own('written', one?.id);
  const least = told.count('own least', one?.minutes[0]);
  return {
    id,
    title: told.text('title', one?.title),
    kind: told.one('own kind', 4, TABLES.kinds, one?.kind),
    minutes: [least, least + told.count('own most', one && one.minutes[1] - one.minutes[0])],
    position: told.one('own position', 2, TABLES.positions, one?.position),
    hands: told.number('own hands', 2, one?.hands),
    energy: told.number('own energy', 2, one?.energy),
    noise: told.number('own noise', 2, one?.noise),
    mess: told.number('own mess', 2, one?.mess),
    who: told.one('own who', 2, TABLES.who, one?.who),
    wipe: told.one('own wipe', 2, TABLES.wipes, one?.wipe),
    moments: told.some('own moments', TABLES.moments, one?.moments),
    tray: told.flag('own tray', one?.tray),
    cautions: told.some('own cautions', TABLES.questions, one?.cautions),
    barred: told.some('own barred', TABLES.barred, one?.barred),
  };
}

const equal = (a: Placement) => (b: Placement) =>
  a.idea === b.idea && a.window === b.window && a.from === b.from && a.minutes === b.minutes;

/**
 * Writes a bed to the coder, or reads one from it.
 *
 * Shape: to write, a bed as `readBed` gives it; to read, none. What was read is anything until `readBed` has read it, too.
 * Errors: throws for an idea or a thing that is not in the lists; while reading, `TooNew` and `Damaged`.
 */
export function bedTold(coder: Coder, lists: Lists, bed?: PlayBed): unknown {
  const told = new Told(coder, lists);
  const ideas = told.number('ideas known', IDEA_BITS, lists.ideaIds.length);
  const things = told.number('things known', IDEA_BITS, lists.thingIds.length);
  const shape = told.one('shape', 5, TABLES.shapes, bed?.shape);
  const day = dayTold(told, bed?.day);
  const child = {
    ageMonths: told.number('age', 8, bed?.child.ageMonths),
    mouths: told.flag('mouths', bed?.child.mouths),
    likes: told.words('likes', ideas, bed?.child.likes, true),
    dislikes: told.words('dislikes', ideas, bed?.child.dislikes, true),
    never: told.words('never', ideas, bed?.child.never, true),
    lacks: told.some('lacks', TABLES.needs, bed?.child.lacks),
  };
  const freeHands = told.number('hands', 2, bed?.freeHands);
  const room = {
    shared: told.flag('shared', bed?.room.shared),
    isolation: told.one('isolation', 2, TABLES.isolations, bed?.room.isolation),
    things: told.some('things', lists.thingIds, bed?.room.things, things),
    usedElsewhere: told.some('used elsewhere', lists.thingIds, bed?.room.usedElsewhere, things),
  };
  const eating = told.flag('eating', bed?.eating);
  const permissions = told.some('permissions', TABLES.permissions, bed?.permissions);
  const limits = {
    screenMinutes: told.count('screen minutes', bed?.limits.screenMinutes),
    grownUpMinutes: told.count('grown-up minutes', bed?.limits.grownUpMinutes),
  };
  const bored = told.flag('bored', bed?.bored);
  const notToday = told.words('not today', ideas, bed?.notToday, true);
  const lastThreeDays = told.words('three days', ideas, bed?.history.lastThreeDays, false);
  const yesterday = lastThreeDays.filter((id) => told.flag('yesterday', bed?.history.yesterday.includes(id)));
  const sketch = sketchTold(told, bed?.sketch);
  const own = told.many('own ideas', bed?.own, (one) => ownTold(told, one));
  const moments = sketch.moments.map(({ id }) => id);
  const list = (wanted: readonly Placement[] | undefined) =>
    placementsTold(told, sketch.wake, moments, wanted);
  const planned = told.flag('planned', bed?.plan !== undefined);
  const plan = planned ? list(bed?.plan) : [];
  // most of what is pinned or done stands in the plan
  const partOf = (about: string, wanted: readonly Placement[] | undefined): Placement[] => {
    const inPlan = plan.filter((one) => told.flag(about, wanted?.some(equal(one))));
    return [...inPlan, ...list(wanted?.filter((one) => !plan.some(equal(one))))];
  };
  return {
    ...{ shape, day, child, freeHands, room, eating, permissions, sketch, limits, bored, notToday, own },
    pins: partOf('pinned', bed?.pins),
    history: { yesterday, lastThreeDays },
    done: partOf('done', bed?.done),
    ...(planned ? { plan } : {}),
  };
}
