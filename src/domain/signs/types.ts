import type { Instant, Minutes } from '../units.ts';

/**
 * What a family answered about one sign. In order of urgency: `like-usual` and `not-looked` weigh the same
 * (nothing), `not-sure` more, `different` most. Not looked is never a good sign.
 */
export type Answer = 'not-looked' | 'like-usual' | 'not-sure' | 'different';

/** The four classes. `not-sure` ranks with `tell-nurse`; only its words differ. */
export type UrgencyClass = 'next-visit' | 'not-sure' | 'tell-nurse' | 'ring-now';
/** `none`: nothing was reported. It says nothing about how the leg is. */
export type Urgency = 'none' | UrgencyClass;

/** Group A is foot and leg, B bandage and skin, C the pull. */
export type SignGroup = 'A' | 'B' | 'C';

/** A sub-answer: "it is right off", "it wakes the child". It can only raise. */
export interface DetailFacts {
  atLeast: UrgencyClass;
  /** The sub-answer is itself this other sign. */
  alsoSign?: string;
}

/** The clinical facts of one sign that the rules work with. */
export interface SignFacts {
  /** Its class when it alone is different. */
  urgency: Exclude<UrgencyClass, 'not-sure'>;
  group?: SignGroup;
  details?: Readonly<Record<string, DetailFacts>>;
  /** No minutes are waited: call out at once, beside pressing the button. */
  callOut?: true;
  /** Coming back is common for it and says little, so R13 leaves it out. */
  oftenReturns?: true;
}

/** One time the family saw something. */
export interface Sighting {
  sign: string;
  answer: Answer;
  details?: readonly string[];
  at: Instant;
  /** A nurse was told about it; it stays open until a nurse looked. */
  toldAt?: Instant;
  /** A nurse looked at it: only this closes it, never time. */
  lookedAt?: Instant;
  /** The clock went back since: `at` is the latest it can have been, and every wait counts as over. */
  clockWentBack?: true;
}

export interface SorenessNote {
  at: Instant;
  /** 0–10, or 0–3 on the four steps none, a little, more, a lot. */
  value: number;
  scale: 'numbers' | 'steps';
  when: 'rest' | 'moving';
}

/** What soreness is judged by. All times are instants. */
export interface SorenessPart {
  soreness: readonly SorenessNote[];
  /** Marks of "the nurse said: medicine given". */
  medicineAt: readonly Instant[];
  /** Those of them since which the clock went back: the wait for the dose to work counts as over. */
  medicineWaitUnknown?: readonly Instant[];
  /** Times medicine was asked for before it was due. */
  askedEarlyAt: readonly Instant[];
}

/** Everything the family noted that bears on urgency. All times are instants. */
export interface Report extends Partial<SorenessPart> {
  /** Answers given now, by sign id. A sign that is left out was not looked at. */
  answers?: Readonly<Record<string, Answer>>;
  /** Sub-answers given now, as `sign/detail`. */
  details?: readonly string[];
  /** Sightings of at least the last day; those no nurse looked at count as present, however old. */
  sightings?: readonly Sighting[];
  /** Where notes lie ahead of now: soreness as it is where this clock went back since. Both readings count. */
  otherReading?: SorenessPart;
}

/** What the ward sets. Every value is bounded, so that no setting can make an answer less urgent than ours. */
export interface WardRules {
  /** Signs this ward wants in a higher class. A lower class than ours has no effect. */
  raise: Readonly<Record<string, UrgencyClass>>;
  /** R16: 2–10, default 5. */
  secondStepMinutes: Minutes;
  /** R14: 5–15, default 15. */
  tellAgainMinutes: Minutes;
  /** R15: 60–240, default 240. */
  visitAgainMinutes: Minutes;
  /** R17: 30–90, default 45. */
  medicineWaitMinutes: Minutes;
}

export interface ChildFacts {
  under3: boolean;
  /** `partly` counts as `no` in the rules. */
  canTell: 'yes' | 'partly' | 'no';
}

export interface Context {
  now: Instant;
  /** Local time minus universal time, in minutes; for the night that R15 does not count. */
  offsetMinutes: Minutes;
  child: ChildFacts;
  signs: Readonly<Record<string, SignFacts>>;
  ward: WardRules;
}

export type RuleId =
  | 'R1'
  | 'R2'
  | 'R3'
  | 'R4'
  | 'R5'
  | 'R6'
  | 'R7'
  | 'R8'
  | 'R9'
  | 'R10'
  | 'R11'
  | 'R12'
  | 'R13'
  | 'R14'
  | 'R15'
  | 'R16'
  | 'R17'
  | 'R18'
  | 'R19'
  | 'R20'
  | 'detail'
  | 'ward'
  | 'unknown';

/** One rule that holds, the signs that made it hold, and the class it asks for at least. */
export interface Because {
  rule: RuleId;
  signs: readonly string[];
  atLeast: UrgencyClass;
  /** R14 and R15: not by minutes that passed, but since a clock went back and nobody knows how many did. */
  clockWentBack?: true;
}

/** R16: what to do when nobody comes. `at-once` waits no minutes; `waiting` shows when it falls due. */
export interface SecondStep {
  state: 'waiting' | 'due' | 'at-once';
  dueAt: Instant;
}

export interface Assessment {
  urgency: Urgency;
  because: readonly Because[];
  /** Known signs nobody answered. */
  notLooked: readonly string[];
  /** True where not one sign was answered: the page then says so. */
  nothingLooked: boolean;
  /** Ids in the notes that this version does not know. They count as tell-nurse. */
  unknown: readonly string[];
  /** Since when it has been this urgent, as far as the notes tell. */
  since?: Instant;
  secondStep?: SecondStep;
}
