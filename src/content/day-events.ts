/**
 * What may stand in a child's day. Words are in locales, pictures in scene; ids are the domain's.
 *
 * Source: design 5-day (events, age modes). What hurts, and so has "ask about medicine" before it, and all lengths are
 * our proposal; the ward decides.
 */
import type { DayEventId, DayEventRow } from '#domain/day/ids.ts';
import { AGE_MODES, type AgeMode } from '#domain/day/modes.ts';
import type { RoutineRow } from '#domain/day/from-bed.ts';

const ALL: readonly AgeMode[] = AGE_MODES;
/** What speaks to smaller children only. */
const SMALL: readonly AgeMode[] = ['one-picture', 'three-doors', 'path'];
/** What asks for more than one picture. */
const FROM_THREE: readonly AgeMode[] = ['three-doors', 'path', 'clock', 'list'];
const FROM_SIX: readonly AgeMode[] = ['path', 'clock', 'list'];
const HURTS = true;
const DOES_NOT = false;

const row = (
  group: DayEventRow['group'],
  minutes: number,
  place: DayEventRow['place'],
  modes: readonly AgeMode[],
  hurts: boolean,
  pushedBy: DayEventRow['pushedBy'],
): DayEventRow => ({ group, minutes, place, modes, hurts, pushedBy });

// A table is read down its columns.
// prettier-ignore
export const DAY_EVENTS = {
  //                      group     min  place      modes       hurts     pushed by
  'wake': row(            'rest',   10,  'movable', ALL,        DOES_NOT, 'child'),
  'medicine-visit': row(  'care',   10,  'fixed',   ALL,        DOES_NOT, 'nobody'),
  'toes-hello': row(      'body',    5,  'movable', SMALL,      DOES_NOT, 'child'),
  'wash': row(            'body',   30,  'fixed',   ALL,        DOES_NOT, 'child'),
  'teeth': row(           'body',   10,  'movable', ALL,        DOES_NOT, 'child'),
  'bandage-care': row(    'care',   30,  'fixed',   ALL,        HURTS,    'nobody'),
  'needle': row(          'care',   15,  'fixed',   ALL,        HURTS,    'nobody'),
  'sheets': row(          'care',   20,  'fixed',   ALL,        HURTS,    'nobody'),
  'breakfast': row(       'food',   30,  'fixed',   ALL,        DOES_NOT, 'child'),
  'lunch': row(           'food',   30,  'fixed',   ALL,        DOES_NOT, 'child'),
  'supper': row(          'food',   30,  'fixed',   ALL,        DOES_NOT, 'child'),
  'snack': row(           'food',   15,  'movable', ALL,        DOES_NOT, 'child'),
  'drink': row(           'food',    5,  'movable', ALL,        DOES_NOT, 'child'),
  'toilet': row(          'body',   15,  'movable', ALL,        DOES_NOT, 'child'),
  'round': row(           'care',   30,  'fixed',   ALL,        DOES_NOT, 'nobody'),
  'x-ray': row(           'care',   40,  'fixed',   ALL,        HURTS,    'nobody'),
  'physio': row(          'care',   20,  'fixed',   ALL,        DOES_NOT, 'child'),
  'nurse-look': row(      'care',   10,  'fixed',   ALL,        DOES_NOT, 'nobody'),
  'play-visit': row(      'people', 30,  'fixed',   ALL,        DOES_NOT, 'child'),
  'play': row(            'play',   20,  'movable', ALL,        DOES_NOT, 'child'),
  'school': row(          'people', 45,  'fixed',   FROM_SIX,   DOES_NOT, 'child'),
  'quiet-hour': row(      'rest',   60,  'fixed',   ALL,        DOES_NOT, 'child'),
  'nap': row(             'rest',   60,  'fixed',   ALL,        DOES_NOT, 'child'),
  'visitor': row(         'people', 60,  'movable', ALL,        DOES_NOT, 'child'),
  'call-home': row(       'people', 15,  'movable', FROM_THREE, DOES_NOT, 'child'),
  'screen': row(          'play',   30,  'movable', FROM_THREE, DOES_NOT, 'child'),
  'choice': row(          'play',    5,  'movable', FROM_THREE, DOES_NOT, 'child'),
  'story': row(           'rest',   15,  'movable', ALL,        DOES_NOT, 'child'),
  'song': row(            'rest',    5,  'movable', SMALL,      DOES_NOT, 'child'),
  'curtain-time': row(    'rest',    5,  'movable', ALL,        DOES_NOT, 'child'),
  'goodnight': row(       'rest',    5,  'movable', ALL,        DOES_NOT, 'child'),
  'surprise': row(        'rare',   30,  'fixed',   ALL,        DOES_NOT, 'nobody'),
  'operation-day': row(   'rare',   60,  'fixed',   ALL,        DOES_NOT, 'nobody'),
  'coming-out': row(      'rare',   60,  'fixed',   ALL,        HURTS,    'nobody'),
  'free-time': row(       'rest',   30,  'movable', ALL,        DOES_NOT, 'child'),
  'night': row(           'rest',  600,  'fixed',   ALL,        DOES_NOT, 'nobody'),
} as const satisfies Record<DayEventId, DayEventRow>;

/** The child's own routine around waking and lights-out. It makes room for everything the ward plans. Source: design 5-day. */
export const ROUTINE: readonly RoutineRow[] = [
  { kind: 'wake', from: 'wake', after: 0 },
  { kind: 'toes-hello', from: 'wake', after: 10 },
  { kind: 'teeth', from: 'lights-out', after: -40 },
  { kind: 'story', from: 'lights-out', after: -30 },
  { kind: 'song', from: 'lights-out', after: -15 },
  { kind: 'curtain-time', from: 'lights-out', after: -10 },
  { kind: 'goodnight', from: 'lights-out', after: -5 },
];
