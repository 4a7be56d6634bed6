/** One bed as the play specialist ticks it: shapes for names, a day sketched in stretches, the plan made from it. */
import type { DaySketch } from '../play/day.ts';
import type { DayMinute, DayProblem, Idea, Placement } from '../play/types.ts';
import { DAY_MINUTES } from '../units.ts';

/** What a bed is called: no name, no number. */
export const BED_SHAPES = [
  'circle',
  'square',
  'triangle',
  'star',
  'drop',
  'moon',
  'leaf',
  'house',
  'boat',
  'fish',
  'cup',
  'sun',
] as const;
export type BedShape = (typeof BED_SHAPES)[number];

/** Fixed events of a ward's day; an event's id begins with its kind. */
export const EVENT_KINDS = [
  'breakfast',
  'wash',
  'medicine',
  'round',
  'school',
  'physio',
  'x-ray',
  'sheets',
  'lunch',
  'nap',
  'snack',
  'visitor',
  'supper',
  'other',
] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

/** In the order of the day; without one of these it would promise a child nothing to eat. */
export const MEALS = ['breakfast', 'lunch', 'supper'] as const satisfies readonly EventKind[];

/** The kind an event was made as; what is not known counts as `other`. */
export function eventKind(id: string): EventKind {
  return EVENT_KINDS.find((kind) => id === kind || id.startsWith(`${kind}-`)) ?? 'other';
}

/**
 * An id for something new: its kind and the first number that nothing in the list bears.
 * @example freeId('visitor', bed.sketch.events) // 'visitor-1'
 */
export function freeId(kind: string, used: readonly { id: string }[]): string {
  for (let n = 1; ; n++) if (!used.some(({ id }) => id === `${kind}-${n}`)) return `${kind}-${n}`;
}

/** What "I want to be alone" places: the one idea that is no pastime. */
export const ALONE = 'do-nothing';

/** What may frighten a child; a plan leaves out what touches it. */
export const FEARS = ['masks', 'noise', 'dark', 'water', 'strangers', 'needles'] as const;
export type Fear = (typeof FEARS)[number];

/** A slot of the day in which the child chooses between two ideas. */
export interface ChildChooses {
  /** What is planned there, and pinned. */
  idea: string;
  /** The other one. */
  or: string;
}

export interface PlayBed {
  shape: BedShape;
  /** The ward's day it was ticked for, as 2026-01-31. */
  day: string;
  child: DayProblem['child'];
  freeHands: 0 | 1 | 2;
  room: DayProblem['room'];
  eating: boolean;
  /** Nobody has said yet whether the child may eat: no food in the plan, and no meal of the day taken away either. */
  eatingUnsaid?: true;
  permissions: DayProblem['permissions'];
  sketch: DaySketch;
  limits: DayProblem['limits'];
  bored: boolean;
  /** What frightens the child; absent where nothing was ticked. */
  fears?: readonly Fear[];
  /** Nobody at the bed speaks the child's language; absent where somebody does. */
  wordless?: boolean;
  /** The loudest that play may be, all day, as an idea's `noise`; absent for no limit. */
  loudest?: Idea['noise'];
  /** Ideas or kinds that are out for today only. */
  notToday: readonly string[];
  /** A play specialist's own; ids `own-1`, `own-2` … */
  own: readonly OwnIdea[];
  pins: readonly Placement[];
  /** Slots that the child chooses for, each idea once; absent where none is marked. See `child-chooses.ts`. */
  childChooses?: readonly ChildChooses[];
  history: DayProblem['history'];
  /** What was done today, so that it stays where it was. */
  done: readonly Placement[];
  /** The plan as it was last made; absent until one was. */
  plan?: readonly Placement[];
  /** It came to this device as a code: whoever plans play has it on another one. No code tells that. */
  taken?: true;
}

/** Whether somebody said of this bed that the child may not eat now; a bed of which nobody spoke says nothing. */
export const holdsEating = ({ eating, eatingUnsaid }: Pick<PlayBed, 'eating' | 'eatingUnsaid'>): boolean =>
  !eating && !eatingUnsaid;

/** What a play specialist answers about an idea of their own, before it gets its cautions. */
export const CAUTION_QUESTIONS = {
  'small-parts': 'small-parts',
  cord: 'cord',
  scissors: 'scissors',
  food: 'food',
  water: 'water',
  'near-mouth': 'not-in-mouth',
  sound: 'ears',
  screen: 'screen',
  feelings: 'feelings',
  breath: 'breath',
  bits: 'bits',
  'arms-move': 'shaking',
} as const satisfies Record<string, Idea['cautions'][number]>;
export type CautionQuestion = keyof typeof CAUTION_QUESTIONS;

/** An idea in someone's own words. It has no picture of its own and travels with the plan. */
export interface OwnIdea {
  id: string;
  /** 2–60 characters; quoted, never calculated with. */
  title: string;
  kind: Idea['kind'];
  /** 5–60. */
  minutes: readonly [least: number, most: number];
  position: Idea['position'];
  hands: Idea['hands'];
  energy: Idea['energy'];
  noise: Idea['noise'];
  mess: Idea['mess'];
  who: Idea['who'];
  wipe: Idea['wipe'];
  moments: Idea['moments'];
  tray: boolean;
  cautions: readonly CautionQuestion[];
  /** Any one of these and it is never placed. */
  barred: NonNullable<Idea['barred']>;
}

/** Minutes of screen a day by age, where the family has set none. Source: who-screens-2019 below five; above, our proposal. */
export function usualScreenMinutes(ageMonths: number): number {
  if (ageMonths < 24) return 0;
  if (ageMonths < 60) return 30;
  if (ageMonths < 108) return 45;
  return ageMonths < 156 ? 60 : 90;
}

/** Months below which a child is taken to put things in the mouth. */
export const UNDER_THREE = 36;

/** When a child sleeps, by age alone. Source: our proposal, held against AASM 2016. */
function lightsOutByAge(ageMonths: number): DayMinute {
  if (ageMonths < 72) return 19 * 60 + 30;
  return ageMonths < 156 ? 20 * 60 + 30 : 21 * 60 + 30;
}

/**
 * When the light goes out, where nobody has set it for this bed: by age, but not before the last meal is over, nor after the
 * ward's room is dark.
 *
 * Shape: `events` are the day's, of which only meals count; `dark` is the ward's lights-out.
 */
export function usualLightsOut(
  ageMonths: number,
  { events, lightsOut: dark = DAY_MINUTES }: Pick<DaySketch, 'events'> & { lightsOut?: DayMinute },
): DayMinute {
  const meals = events.filter(({ id }) => MEALS.some((meal) => meal === eventKind(id)));
  const fed = meals.map(({ from, minutes }) => from + minutes);
  return Math.min(dark, Math.max(lightsOutByAge(ageMonths), ...fed));
}
