/** The five ways in which a child's day is shown, by age: how many doors, which steps, what is left to the child. */

export const AGE_MODES = ['one-picture', 'three-doors', 'path', 'clock', 'list'] as const;
export type AgeMode = (typeof AGE_MODES)[number];

export interface ModeRow {
  /** Completed months from which it holds. */
  fromMonths: number;
  /** Pictures at once: now; or now, next and later. A list has no doors. */
  doors: 0 | 1 | 3;
  /** The way of the whole day step by step: never, when it is asked for, or always. */
  path: 'never' | 'when-asked' | 'always';
  /** What shows how far the day is: sun and moon, or a clock. */
  shows: 'sun' | 'clock';
  /** Beside the pictures; nothing needs reading where there are none. */
  words: 'none' | 'few' | 'plain';
  /** Minutes ahead at which a care that hurts is told by its own picture; absent: the whole day. */
  tellAheadMinutes?: number;
  /** Two pictures to choose from. */
  choices: boolean;
  /** Whether "neither" may be chosen, too. */
  neither: boolean;
  /** Whether the child may put movable parts of the day elsewhere. */
  ownPlan: boolean;
  jobs: boolean;
  /** Cards to hold up, and parts of the day that are nobody else's. */
  privateCorner: boolean;
  /** A picture for each day behind: placed for everyone, or only where it is wanted. */
  dayPicture: 'placed' | 'where-wanted';
}

/** Source: design 5-day (age modes) and 4-play, 5.7 (how far ahead a hard moment is told; the ward decides). */
export const MODES = {
  'one-picture': {
    ...{ fromMonths: 0, doors: 1, path: 'never', shows: 'sun', words: 'none', tellAheadMinutes: 0 },
    ...{ choices: false, neither: false, ownPlan: false, jobs: false, privateCorner: false },
    dayPicture: 'placed',
  },
  'three-doors': {
    ...{ fromMonths: 36, doors: 3, path: 'when-asked', shows: 'sun', words: 'none', tellAheadMinutes: 10 },
    ...{ choices: true, neither: false, ownPlan: false, jobs: false, privateCorner: false },
    dayPicture: 'placed',
  },
  path: {
    ...{ fromMonths: 72, doors: 3, path: 'always', shows: 'sun', words: 'few', tellAheadMinutes: 30 },
    ...{ choices: true, neither: true, ownPlan: false, jobs: false, privateCorner: false },
    dayPicture: 'placed',
  },
  clock: {
    ...{ fromMonths: 108, doors: 3, path: 'always', shows: 'clock', words: 'plain' },
    ...{ choices: true, neither: true, ownPlan: true, jobs: true, privateCorner: false },
    dayPicture: 'placed',
  },
  list: {
    ...{ fromMonths: 156, doors: 0, path: 'always', shows: 'clock', words: 'plain' },
    ...{ choices: true, neither: true, ownPlan: true, jobs: false, privateCorner: true },
    dayPicture: 'where-wanted',
  },
} as const satisfies Record<AgeMode, ModeRow>;

/** From the eighth birthday on there is a clock beside the sun. Source: design 5-day. */
const CLOCK_FROM_MONTHS = 96;

/**
 * How the day of a child of this age is shown, where the family has chosen nothing else.
 *
 * Units: completed months; a mode holds to the day before the birthday of the next.
 * @example modeOf(40) // 'three-doors'
 */
export function modeOf(ageMonths: number): AgeMode {
  return AGE_MODES.filter((mode) => ageMonths >= MODES[mode].fromMonths).at(-1) ?? 'one-picture';
}

/** What of a mode a page reads, whatever the mode. */
export const modeRow = (mode: AgeMode): ModeRow => MODES[mode];

/**
 * Whether a clock is shown: from the eighth birthday on, whatever else the mode shows.
 * @example showsClock('path', 100) // true
 */
export const showsClock = (mode: AgeMode, ageMonths: number): boolean =>
  MODES[mode].shows === 'clock' || (mode === 'path' && ageMonths >= CLOCK_FROM_MONTHS);
