/** Everything that may stand in a child's day, by id, and what is known of each. Ids never change once shipped. */
import type { AgeMode } from './modes.ts';

export const DAY_EVENT_IDS = [
  'wake',
  'medicine-visit',
  'toes-hello',
  'wash',
  'teeth',
  'bandage-care',
  'needle',
  'sheets',
  'breakfast',
  'lunch',
  'supper',
  'snack',
  'drink',
  'toilet',
  'round',
  'x-ray',
  'physio',
  'nurse-look',
  'play-visit',
  'play',
  'school',
  'quiet-hour',
  'nap',
  'visitor',
  'call-home',
  'screen',
  'choice',
  'story',
  'song',
  'curtain-time',
  'goodnight',
  'surprise',
  'operation-day',
  'coming-out',
  'free-time',
  'night',
] as const;
export type DayEventId = (typeof DAY_EVENT_IDS)[number];

/** What fills the day where nothing else stands; nobody puts these into it. */
const FILLER_IDS = ['free-time', 'quiet-hour', 'night'] as const satisfies readonly DayEventId[];
export type FillerId = (typeof FILLER_IDS)[number];
/** Whether nobody puts it into a day: it is what is left. */
export const isFiller = (kind: DayEventId): kind is FillerId => FILLER_IDS.some((id) => id === kind);
/** What may be put into a day. */
export const ADDABLE = DAY_EVENT_IDS.filter((kind) => !isFiller(kind));

export const EVENT_GROUPS = ['care', 'food', 'body', 'people', 'play', 'rest', 'rare'] as const;
export type EventGroup = (typeof EVENT_GROUPS)[number];

export interface DayEventRow {
  group: EventGroup;
  /** Usual length; the day may say another. */
  minutes: number;
  /** `fixed`: the ward says when, and what is movable makes room. `movable`: the family may put it elsewhere. */
  place: 'fixed' | 'movable';
  /** Age modes whose strip shows it with its own picture; elsewhere it is open time. */
  modes: readonly AgeMode[];
  /** "Ask about medicine" stands before it. */
  hurts: boolean;
  /** Whether the child may push its picture through the door. Nobody asks that of what grown-ups do. */
  pushedBy: 'child' | 'nobody';
}
export type DayEventTable = Readonly<Record<DayEventId, DayEventRow>>;
