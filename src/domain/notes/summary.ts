/** What a summary of the notes holds; made by summarise.ts. Facts only, each figure with the notes it comes from. */
import type { Assessment, Because, Context, Urgency } from '../signs/types.ts';
import type { Instant } from '../units.ts';
import type { EntryKind } from './entries.ts';
import type { Count } from './pairs.ts';

/** How a page counts: the rules' context without its moment, and which of the six looks asks about a sign. */
export interface SummarySettings extends Omit<Context, 'now'> {
  lookOf: Readonly<Record<string, string | undefined>>;
}

/** Ids of the notes a figure was counted from, so that the page can show how it was counted. */
export interface Counted {
  from: readonly string[];
}
export type CountedEvents = Count & Counted;

export interface LookAgo extends Counted {
  at: Instant;
  minutes: number;
  /** How many of the six looks were answered in it. */
  looks: number;
}

/** A sign no nurse has looked at since it was seen. */
export interface OpenSign extends Counted {
  sign: string;
  /** The class of this sign by itself; combinations and waiting are in `assessment`. */
  urgency: Urgency;
  /** Sub-answers that give it this class, as `sign/detail`. */
  details?: readonly string[];
  /** Whoever noted it was not sure each time. */
  notSure?: true;
  /** First and last time it was seen since a nurse looked. */
  since: Instant;
  lastSeen: Instant;
  /** The first of each after `since`. */
  bellAt?: Instant;
  wordAt?: Instant;
  nurseCameAt?: Instant;
  /** It was seen again, or for the first time, after the last time anybody was told. */
  untold: boolean;
}

/** A sign that was seen at least twice, or may have been, in the last 24 hours. */
export interface Repeat extends CountedEvents {
  sign: string;
  first: Instant;
  last: Instant;
  nurseLookedBetween: boolean;
  /** Whoever noted it was not sure each time. */
  notSure?: true;
}

export interface SorePoint {
  id: string;
  at: Instant;
  value: number;
  scale: 'numbers' | 'steps';
  when: 'rest' | 'moving';
}
/** How fast soreness rose (above 0) or fell in the last six hours: the straight line nearest to the values. */
export interface Slope extends Counted {
  perHour: number;
  scale: SorePoint['scale'];
}

/** A rule about soreness that holds now, and when what made it hold was last noted: soreness, or asking for medicine. */
export interface SoreFlag extends Because, Counted {
  since: Instant;
}

/** The strongest soreness that no nurse has looked at since. It has no class: no rule is about a single value. */
export interface StrongSoreness extends Counted, Omit<SorePoint, 'id'> {
  /** When strong soreness was first noted since a nurse looked; `at` is when it was last as strong as this. */
  since: Instant;
  /** The first of each after `at`. */
  bellAt?: Instant;
  wordAt?: Instant;
  nurseCameAt?: Instant;
  medicineAt?: Instant;
}

export interface SorenessSummary extends Counted {
  /** The last 24 hours. */
  points: readonly SorePoint[];
  medicine: readonly { id: string; at: Instant }[];
  asked: CountedEvents;
  /** Missing where fewer than two moments were noted on the scale of the last one. */
  slope: { rest?: Slope; moving?: Slope };
  /** The highest of the last six hours, of each scale and moment by itself. */
  highest: readonly SorePoint[];
  strong?: StrongSoreness;
  /** R17–R19, where they hold now. */
  flags: readonly SoreFlag[];
}

/** The last time of something, and how often in 24 hours. `last` is missing where it was never noted. */
export interface Since extends CountedEvents {
  last?: { id: string; at: Instant; minutes: number };
  /** A clock went back since the last time: nobody knows how long ago it was, and `minutes` are the fewest. */
  clockWentBack?: true;
}

export interface PooSince extends Since {
  /** Calendar days by the clocks on the wall, and whole 24 hours. */
  calendarDays?: number;
  wholeDays?: number;
}

export interface SleepSummary extends Counted {
  /**
   * The longest stretch that ended in the last 24 hours, in its whole length. A child who is asleep still has slept
   * until now; where a waking was missed nobody knows how long it was.
   */
  longest?: { from: Instant; to: Instant; minutes: number };
  wakings: CountedEvents;
}

export interface IdeaTried extends Counted {
  idea: string;
  again: number;
  notAgain: number;
}

export interface QuestionShown extends Counted {
  /** One of the fixed questions, or the family's own words. */
  ask?: string;
  own?: string;
  /** The language of own words, as a language tag. */
  in?: string;
  askedAt: Instant;
  answers: readonly { id: string; what: string; at: Instant }[];
  /** `waiting`: no answer; `put-off`: only "later", "ask again" or "the doctor will say". */
  state: 'waiting' | 'put-off' | 'answered';
}

/** A note that was taken back: it counts nowhere and is shown for ever. */
export interface StruckNote {
  id: string;
  /** Missing where the struck note has not reached this phone. */
  kind?: EntryKind;
  at?: Instant;
  struckAt: Instant;
  /** What a struck sign or look would be by itself. */
  urgency?: Urgency;
  /** Ids of the strikes. */
  from: readonly string[];
}

export interface Summary {
  assessment: Assessment;
  lastLook?: LookAgo;
  open: readonly OpenSign[];
  repeats: readonly Repeat[];
  soreness: SorenessSummary;
  /** Quarter cups of the last 24 hours; sips, and drinks of which nobody said how much, are counted, not measured. */
  drinks: Counted & { quarters: Count; sips: Count; unmeasured: Count };
  wee: Since;
  poo: PooSince;
  sleep: SleepSummary;
  play: { tried: CountedEvents; ideas: readonly IdeaTried[]; helped: readonly string[] };
  /** Three at most for the round: without an answer first, then those put off, newest first. */
  questions: { shown: readonly QuestionShown[]; more: number };
  struck: readonly StruckNote[];
  /** Notes from after now: a clock was wrong. They count as seen, and in no sum. */
  ahead: readonly string[];
  /** Since when anything has been noted; "no poo noted" says nothing about the days before. */
  notesSince?: Instant;
}
