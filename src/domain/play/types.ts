/**
 * What the planner of a day of play reads and gives back. Everything is plain JSON; times are minutes since the ward's
 * midnight, on a grid of five.
 */

/** Minutes since the ward's midnight. */
export type DayMinute = number;

/** The kinds of ideas, each in one of the five families; a good day meets each of them. */
export const FAMILIES = {
  make: 'hands',
  draw: 'hands',
  talk: 'words',
  pretend: 'words',
  imagine: 'words',
  listen: 'listening',
  read: 'listening',
  music: 'listening',
  puzzle: 'puzzles',
  world: 'puzzles',
  screen: 'puzzles',
  calm: 'calm',
  body: 'calm',
  sense: 'calm',
} as const;
export type Kind = keyof typeof FAMILIES;
export const KINDS = Object.keys(FAMILIES) as readonly Kind[];

export const FAMILY_NAMES = [...new Set(Object.values(FAMILIES))];
/** How many families there are. */
export const FAMILY_COUNT = FAMILY_NAMES.length;

/**
 * What a grown-up has to watch. The two letters are the design's.
 *
 * `small-parts` SP · `cord` CD (cords, leads, ribbons, short bandages) · `throwing` TH (tempts to throw; nothing leaves
 * the hand) · `shaking` SH (arms only, stop if the hanging weight swings) · `above-waist` CU · `light` LT · `scissors` SC ·
 * `food` FD (barred while nothing may be eaten) · `ears` EA · `water` WT · `not-in-mouth` NM · `feelings` EM ·
 * `screen` XX · `breath` BR (one child only) · `bits` BT (bits in the bed mark the skin: look at the sheet after).
 */
export const CAUTIONS = [
  'small-parts',
  'cord',
  'throwing',
  'shaking',
  'above-waist',
  'light',
  'scissors',
  'food',
  'ears',
  'water',
  'not-in-mouth',
  'feelings',
  'screen',
  'breath',
  'bits',
] as const;
export type Caution = (typeof CAUTIONS)[number];

/** What bars an idea for everyone, whoever wrote it. The library holds none of these; an own idea may answer yes. */
export const BARRED = [
  'throws',
  'ties-to-bed-or-cord',
  'shakes-the-bed',
  'balloon',
  'magnet-or-button-cell',
  'swells-in-water',
  'flame-or-laser',
  'over-the-bed',
] as const;
export type Barred = (typeof BARRED)[number];

/** What an idea asks of the child that some children lack. */
export type Need = 'sight' | 'hearing' | 'speech' | 'learning';
/** What a ward allows only by its own word; off unless it says so. */
export type Permission = 'plants' | 'free-ankle' | 'hand-massage';
/** `other` stands for any hard moment that has no marks of its own; an idea must be marked for both to serve it. */
export type Procedure = 'needle' | 'bandage' | 'other';
/** What the child wants at a hard moment. */
export type Wish = 'watch' | 'look-away' | 'choose-then';

/** One idea of the library, or a play specialist's own. */
export interface Idea {
  /** Kebab-case; never changes once shipped. */
  id: string;
  kind: Kind;
  /** Shortest and longest minutes it is worth starting for. */
  minutes: readonly [least: number, most: number];
  /** Completed years, both included: [2, 12] ends the day before the thirteenth birthday. */
  ages: readonly [from: number, to: number];
  /** Narrows the beginning for the smallest: completed months. */
  fromMonths?: number;
  /** `propped` needs the head up; `flat` and `both` are possible lying flat. */
  position: 'flat' | 'propped' | 'both';
  hands: 0 | 1 | 2;
  energy: 1 | 2 | 3;
  mess: 0 | 1 | 2;
  noise: 0 | 1 | 2;
  /** Who makes it happen; `adult` is "not without a grown-up". */
  who: 'alone' | 'adult' | 'either';
  /** Things to fetch, as ids; empty for none. A torch is `torch`: it is barred where others sleep. */
  things: readonly string[];
  /** `yes` wiped clean or nothing used · `leave` stays with this child · `no` shared, cannot be wiped. */
  wipe: 'yes' | 'leave' | 'no';
  /** Hard moments it serves. */
  moments: readonly ('needle' | 'bandage')[];
  /** Which wish it serves at a hard moment: eyes free to watch, or eyes kept elsewhere. Empty where `moments` is. */
  suits: readonly ('watch' | 'look-away')[];
  /** It stands on the tray, so never during a hard moment. */
  tray: boolean;
  /** `call` with home is no screen time; `yes` counts. */
  screen: 'no' | 'yes' | 'call';
  /** Suits a dark room in which others sleep. */
  dark: boolean;
  needs: readonly Need[];
  cautions: readonly Caution[];
  /** How much of the mind it takes up, for the order of a choice of two; the plan does not count it. */
  absorbs: 1 | 2 | 3;
  /** The idea to offer instead where it must be quiet. */
  quietAlt?: string;
  allowedBy?: Permission;
  /** Any one of these and the idea is never placed. */
  barred?: readonly Barred[];
}

/** An open stretch of the day. */
export interface OrdinaryWindow {
  kind: 'ordinary';
  id: string;
  from: DayMinute;
  minutes: number;
  /** 1 tired or sore, 3 wide awake. */
  energy: 1 | 2 | 3;
  /** The bed card allows the head up now. */
  propped: boolean;
  quiet: boolean;
  grownUp: boolean;
}

/** A needle, bandage care or another hard moment, with its expected length. */
export interface HardMoment {
  kind: 'hard';
  id: string;
  from: DayMinute;
  minutes: number;
  energy: 1 | 2 | 3;
  propped: boolean;
  quiet: boolean;
  grownUp: boolean;
  procedure: Procedure;
  weight: 1 | 2 | 3;
  /** Hands the child has free during it; the needle arm counts 0. */
  freeHands: 0 | 1 | 2;
  wish?: Wish;
}
export type PlayWindow = OrdinaryWindow | HardMoment;

/** One idea at one time. */
export interface Placement {
  idea: string;
  window: string;
  from: DayMinute;
  minutes: number;
}

/** Parts of the objective that can be left out; the rest always counts. */
export interface Terms {
  novelty: boolean;
  wish: boolean;
  minutes: boolean;
  /** Kinds that follow one another, families met, grown-up minutes, mess before an event, empty windows. */
  day: boolean;
}

/** Everything known about one bed and one day. */
export interface DayProblem {
  ideas: readonly Idea[];
  child: {
    /** Completed months; 12 × years where only years are known. */
    ageMonths: number;
    /** Puts things into the mouth. */
    mouths: boolean;
    /** Kinds or idea ids; an idea's own word outranks its kind's. */
    likes: readonly string[];
    dislikes: readonly string[];
    /** Kinds or idea ids the family wants never. */
    never: readonly string[];
    /** What the child cannot be asked for. */
    lacks: readonly Need[];
  };
  freeHands: 0 | 1 | 2;
  room: {
    shared: boolean;
    isolation: 'none' | 'contact' | 'breath';
    things: readonly string[];
    /** Things that another bed had today and nobody wiped. */
    usedElsewhere: readonly string[];
  };
  eating: boolean;
  permissions: readonly Permission[];
  lightsOut: DayMinute;
  /** In order of time, none overlapping. */
  windows: readonly PlayWindow[];
  /** Starts of fixed events that are no hard moments: wash, meals, rounds. Hard moments count by themselves. */
  events: readonly DayMinute[];
  limits: { screenMinutes: number; grownUpMinutes: number };
  /** Idea ids. `lastThreeDays` includes yesterday. */
  history: { yesterday: readonly string[]; lastThreeDays: readonly string[] };
  bored: boolean;
  pins: readonly Placement[];
  /** What was done or begun already: it stays, whatever the rules say now. */
  done?: readonly Placement[];
  /** Nothing new starts before this. */
  notBefore?: DayMinute;
  terms?: Terms;
  /** Most placements in an ordinary window; 3 unless said otherwise. */
  perWindow?: 1 | 2 | 3;
}

/** Why something may not stand where it was put. */
export type RuleId =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'H5'
  | 'H6'
  | 'H7'
  | 'H8'
  | 'H9'
  | 'H10'
  | 'H11'
  | 'H12'
  | 'H13'
  | 'H14'
  | 'H15'
  | 'H16'
  | 'H17'
  | 'H18'
  | 'barred'
  | 'unknown';

/** Something in the problem that cannot be used; it was left out and the rest kept. */
export interface Fault {
  /** Path of the field, as `windows › w3 › from`. */
  where: string;
  rule: string;
  seen: unknown;
}

/** A stretch nobody planned. */
export interface FreeTime {
  window: string;
  from: DayMinute;
  minutes: number;
}

export interface Plan {
  kind: 'plan';
  /** In order of time. */
  placements: readonly Placement[];
  score: number;
  /** No plan is better than this; equal to `score` when the plan is proven best. */
  bound: number;
  free: readonly FreeTime[];
  grownUpMinutes: number;
  /** Proven: no plan worth as much asks fewer minutes of a grown-up. */
  leastGrownUp: boolean;
  /** Pins that could not stay, each with the rules it breaks. */
  refused: readonly { pin: Placement; rules: readonly RuleId[] }[];
  faults: readonly Fault[];
  /** Work done, in nodes of the search: the same on every engine. */
  nodes: number;
}

/** What would open a hard moment for which nothing fits, one thing at a time. */
export interface Relaxation {
  /** A shorter or later moment is not ours to propose; age, isolation, small parts and cords never give way. */
  change: 'grown-up' | 'head-up' | 'hand-free' | 'fetch' | 'eating' | 'never';
  /** The thing to fetch or the word to take back. */
  what?: string;
  /** Ideas it would open. */
  opens: readonly string[];
}

/** A hard moment is left without any idea; the rest of the day is planned. */
export interface Impossible {
  kind: 'impossible';
  moments: readonly { window: string; relaxations: readonly Relaxation[] }[];
  rest: Plan;
}
