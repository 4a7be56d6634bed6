/** Morning, quiet, evening and night; doors, sun and moon. */
import { box } from '../play/brush.ts';
import { childInBed } from '../play/child.ts';
import { story } from '../play/paper-things.ts';
import type { Shape } from '../shapes.ts';
import { callButton } from '../things/handset.ts';
import { ink, small } from '../topics/page.ts';
import { curtain, door, lamp, moon as sickle, rail, sun as disc, toy, windowOf } from '../topics/things.ts';
import { nearHand } from '../play/arms.ts';
import { dusk, inBed, note, shutDoor, together, tube } from './parts.ts';

/** Arms reach up, the sun is in the window. */
export const wake = (): Shape[] => [
  ...windowOf(80, 4, 36, 38),
  ...disc(98, 23, 6),
  ...inBed({ x: 42, y: 64, r: 21, left: [12, 26, -104, 'fist'], right: [68, 22, -82, 'fist'] }),
];

/** The window's curtain is shut by day; one lies awake and rests. */
export const quietHour = (): Shape[] => [
  ...windowOf(28, 2, 64, 44),
  ...rail(16, 104, 6),
  ...curtain(22, 56, 8, 52, 3),
  ...curtain(64, 98, 8, 52, 3),
  ...inBed({ x: 60, y: 76, r: 18, eyes: 'up', left: [52, 106, 20], right: [68, 106, 160] }),
];

/** Asleep by day, the toy in the arm. */
export const nap = (): Shape[] => [
  ...windowOf(76, 4, 40, 38),
  ...disc(96, 23, 7),
  ...inBed({ x: 46, y: 54, r: 24, eyes: 'shut', tilt: -10, right: [66, 102, 150] }),
  ...toy(80, 86, 0.4),
];

/** Somebody reads from a book. */
export const storyTime = (): Shape[] =>
  together(
    { x: 34, y: 56, r: 20, eyes: 'right' },
    { x: 99, y: 40, mouth: 'speaking', bow: 10, hand: [86, 90, 190] },
    story(small(62, 88, 0.5)),
  );

/** Somebody sings. */
export const song = (): Shape[] =>
  together(
    { x: 34, y: 72, r: 20, eyes: 'shut', mouth: 'speaking' },
    { x: 98, y: 58, mouth: 'wide', eyes: 'shut' },
    [...note(22, 26, 0.34), ...note(64, 24, 0.38), ...note(66, 72, 0.22)],
  );

/** The curtain goes round the bed for the evening. */
export const curtainTime = (): Shape[] => [
  dusk,
  sickle(104, 24, 0.26),
  ...inBed({ x: 80, y: 66, r: 20, eyes: 'left' }),
  ...rail(0, 120, 8),
  ...curtain(2, 56, 10, 112, 3),
  ...nearHand(['grown', 'fist', 40, 76, 28, 0, -1]),
];

/** A hand on the blanket, the moon, good night. */
export const goodnight = (): Shape[] => [
  dusk,
  sickle(20, 22, 0.3),
  ...together(
    { x: 36, y: 58, r: 20, eyes: 'shut', tilt: -6 },
    { x: 94, y: 40, bow: 20, eyes: 'shut', hand: [56, 92, 180] },
  ),
];

/** Arms behind the head, a look at the clouds: nothing has to be. */
export const freeTime = (): Shape[] => {
  const [pillow, ...rest] = childInBed({ x: 46, y: 68, r: 20, eyes: 'up' }, 5, 118.8).behind;
  return [
    ...windowOf(62, 2, 56, 40),
    ink.soft([78, 32, 81, 24, 90, 18, 101, 23, 105, 32], 'white', 2.4, 0.9),
    pillow!,
    ...tube([28, 94, 8, 76, 30, 60], 10, 'gown'),
    ...tube([64, 94, 84, 76, 62, 60], 10, 'gown'),
    ...rest,
  ];
};

/** Night: the moon in the dark window, a small lamp, a child asleep. */
export const night = (): Shape[] => [
  dusk,
  ink.flat(box(18, 6, 66, 50), 'frame'),
  ink.flat(box(24, 12, 60, 44), 'ink', 2),
  sickle(42, 28, 0.24),
  ...lamp(100, 42, 0.36),
  ink.flat([84, 61, 119, 61, 119, 67, 84, 67], 'plate'),
  ...inBed({ x: 50, y: 82, r: 17, eyes: 'shut', tilt: -8 }),
];

/** A resting child, near. */
export const restingChild = (): Shape[] => [
  dusk,
  ...inBed({ x: 58, y: 50, r: 31, eyes: 'shut', tilt: -12, left: [44, 106, 30], right: [78, 108, 160] }),
];

/** A book in which it is night. */
export const bedtimeStory = (): Shape[] => [
  dusk,
  ink.flat([4, 28, 60, 42, 116, 28, 116, 98, 60, 112, 4, 98], 'blanket'),
  ink.flats(
    [
      [11, 24, 60, 36, 60, 104, 11, 92],
      [109, 24, 60, 36, 60, 104, 109, 92],
    ],
    'sheet',
  ),
  sickle(35, 60, 0.36),
  ink.rule(
    [
      [67, 60, 67, 92],
      [102, 66, 102, 84],
    ],
    5,
    'frame',
  ),
  ink.flat([67, 76, 102, 69, 102, 78, 67, 86], 'plate', 2.4),
  ink.soft([78, 74, 80, 62, 92, 58, 102, 62, 102, 70], 'gown', 2.4, 0.6),
  ink.ring([74, 68, 6, 6], 'skin', 2.4),
];

/** The floor before a door. */
const room = (): Shape => ink.flat([1.2, 106, 118.8, 106, 118.8, 118.8, 1.2, 118.8], 'floor', 2.4);
/** Later, or next. */
export const doorClosed = (): Shape[] => [room(), ...shutDoor(32, 12, 88, 107)];
/** Now. */
export const doorOpen = (): Shape[] => [room(), ...door(24, 12, 56, 107, 0.4)];

/** How far the day is. */
export const sun = (): Shape[] => disc(60, 60, 29);
/** How far the night is. */
export const moon = (): Shape[] => [dusk, sickle(60, 60, 0.9)];

/** The product's own picture of the call button, in a hand of the family. */
export const callButtonInHand = (): Shape[] =>
  callButton().map((s) => (s.fill === 'hand' ? { ...s, fill: 'skin' } : s));
