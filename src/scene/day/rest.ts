/** Morning, quiet, evening and night; doors, sun and moon. */
import { box } from '../play/brush.ts';
import { story } from '../play/paper-things.ts';
import type { Shape } from '../shapes.ts';
import { callButton } from '../things/handset.ts';
import { ink, small } from '../topics/page.ts';
import { curtain, door, lamp, moon as sickle, rail, sun as disc, toy, windowOf } from '../topics/things.ts';
import { nearHand } from '../play/arms.ts';
import { dusk, inBed, note, shutDoor, together, tube } from './parts.ts';

/** Arms reach up, the sun is in the window. */
export const wake = (): Shape[] => [
  ...windowOf(76, 6, 38, 40),
  ...disc(95, 26, 7),
  ...inBed({
    x: 44,
    y: 66,
    r: 21,
    mouth: 'wide',
    left: [14, 24, -100, 'fist'],
    right: [70, 26, -80, 'fist'],
  }),
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
  together({ x: 34, y: 70, r: 20, eyes: 'right', mouth: 'wide' }, { x: 98, y: 56, mouth: 'wide' }, [
    ...note(22, 24, 0.34),
    ...note(66, 26, 0.4),
    ...note(64, 74, 0.24),
  ]);

/** The curtain goes round the bed for the evening. */
export const curtainTime = (): Shape[] => [
  ...inBed({ x: 82, y: 52, r: 19, eyes: 'left' }),
  sickle(106, 20, 0.2),
  ...rail(0, 120, 8),
  ...curtain(2, 58, 10, 114, 4),
  ...nearHand(['grown', 'fist', 42, 72, 32, 0, -1]).slice(0, 2),
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
export const freeTime = (): Shape[] => [
  ...windowOf(62, 4, 54, 46),
  ink.soft([76, 36, 80, 26, 90, 20, 102, 26, 106, 36], 'white', 2.4, 0.9),
  ...inBed({ x: 40, y: 70, r: 19, eyes: 'up', left: [40, 104, 20, 'none'], right: [42, 104, 160, 'none'] }),
  ...tube([22, 92, 6, 76, 24, 60], 9, 'gown'),
];

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
  ...story(small(60, 66, 0.9)).slice(0, 2),
  sickle(34, 62, 0.3),
  ink.rule(
    [
      [72, 78, 72, 88],
      [100, 68, 100, 84],
    ],
    5,
    'frame',
  ),
  ink.flat([70, 76, 102, 70, 102, 78, 70, 85], 'blanket', 2.4),
  ink.ring([78, 70, 6, 6], 'skin', 2.4),
];

const room = (): Shape => ink.flat([1.2, 106, 118.8, 106, 118.8, 118.8, 1.2, 118.8], 'floor', 2.4);
export const doorClosed = (): Shape[] => [room(), ...shutDoor(32, 12, 88, 107)];
export const doorOpen = (): Shape[] => [room(), ...door(24, 12, 56, 107, 0.4)];

export const sun = (): Shape[] => disc(60, 60, 29);
export const moon = (): Shape[] => [dusk, sickle(60, 60, 0.9)];

export const callButtonInHand = (): Shape[] =>
  callButton().map((s) => (s.fill === 'hand' ? { ...s, fill: 'skin' } : s));
