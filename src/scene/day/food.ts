/** Food and drink, each meal with the light of its time of day in the window. */
import { childHead } from '../play/child.ts';
import { nearHand } from '../play/arms.ts';
import { box } from '../play/brush.ts';
import type { Shape } from '../shapes.ts';
import { ink } from '../topics/page.ts';
import { apple, glass, moon, mug, sun } from '../topics/things.ts';
import { bubble, drops, inBed, tube } from './parts.ts';

const table: Shape = ink.flat([1.2, 96, 118.8, 96, 118.8, 108, 1.2, 108], 'plate');

/** A wide window over the table. */
const sky = (fill: string, light: Shape[]): Shape[] => [
  ink.flat(box(16, 4, 104, 46), 'frame'),
  ink.flat(box(22, 10, 98, 40), fill, 2.2),
  ...light,
];

const spoon = (x: number, y: number, tipX: number, tipY: number): Shape[] => [
  ink.rule([[x, y, tipX, tipY]], 5.4),
  ink.rule([[x, y, tipX, tipY]], 1.6, 'metal'),
];

/** Porridge and a warm mug; the sun comes up. */
export const breakfast = (): Shape[] => [
  ...sky('tear', [
    ink.rule(
      [
        [42, 30, 47, 30],
        [46, 18, 50, 22],
        [60, 12, 60, 17],
        [74, 18, 70, 22],
        [78, 30, 73, 30],
      ],
      3,
    ),
    ink.ring([60, 31, 9.6, 9.6], 'band', 2.6),
    ink.soft([22, 40, 22, 36, 48, 32, 74, 36, 98, 33, 98, 40], 'wet', 2.2, 0.5),
  ]),
  table,
  ...spoon(66, 50, 44, 66),
  ink.soft([10, 66, 70, 66, 64, 88, 52, 96, 28, 96, 16, 88], 'scarf', 3, 0.5),
  ink.ring([40, 66, 30, 8], 'band', 2.6),
  ...mug(94, 74, 0.4),
];

/** A full plate; the sun stands high. */
export const lunch = (): Shape[] => [
  ...sky('tear', sun(60, 25, 7)),
  ink.ring([60, 88, 56, 26], 'white', 3),
  ink.ring([60, 87, 40, 17], 'sheet', 2),
  ink.soft([30, 88, 34, 74, 48, 70, 58, 78, 58, 92, 42, 98], 'band', 2.6, 0.8),
  ink.soft([60, 96, 64, 84, 84, 82, 90, 92, 76, 101], 'red', 2.6, 0.8),
  ink.dots([68, 74, 77, 75, 72, 80, 84, 78], 8),
  ink.dots([68, 74, 77, 75, 72, 80, 84, 78], 5, 'wet'),
  ...spoon(114, 62, 106, 104),
  ink.ring([105, 108, 5, 8], 'metal', 2.4),
];

/** Soup and bread; the moon is there. */
export const supper = (): Shape[] => [
  ...sky('scarf', [moon(60, 25, 0.22)]),
  table,
  ink.soft([62, 66, 66, 56, 78, 52, 104, 56, 112, 70, 108, 96, 70, 96, 66, 78], 'brown', 3, 0.5),
  ink.soft([68, 68, 72, 60, 80, 58, 102, 62, 106, 72, 103, 91, 75, 91, 72, 78], 'band', 1.8, 0.5),
  ink.soft([6, 68, 66, 68, 60, 88, 48, 97, 24, 97, 12, 88], 'wet', 3, 0.5),
  ink.ring([36, 68, 30, 8], 'blanket', 2.6),
  ink.strokes(
    [
      [26, 58, 30, 53, 26, 49],
      [42, 58, 46, 53, 42, 49],
    ],
    2.6,
    'soft',
  ),
];

/** An apple and a biscuit. */
export const snack = (): Shape[] => [
  ink.ring([60, 92, 56, 20], 'white', 3),
  ...apple(40, 58, 0.58),
  ink.ring([84, 80, 22, 18], 'plate', 3),
  ink.dots([76, 74, 88, 72, 94, 82, 82, 86, 74, 84], 5, 'brown'),
];

/** Lying, one drinks through a straw. */
export const drink = (): Shape[] => [
  ...childHead({ x: 60, y: 36, r: 33, eyes: 'down', mouth: 'blowing' }, 5),
  ...nearHand(['child', 'rest', 18, 98, 34, -4, -1]),
  ...nearHand(['child', 'rest', 102, 98, 34, 184, 1]),
  ...glass(60, 90, 0.62, 0.66),
  ...tube([66, 116, 60, 58], 7, 'white'),
  ink.rule(
    [70, 82, 94, 106].map((y) => [59, y, 66, y - 4]),
    3.4,
    'red',
  ),
];

/** A dry mouth, and the thought of a glass of water. */
export const thirsty = (): Shape[] => [
  ...inBed({ x: 38, y: 66, r: 21, eyes: 'up', mouth: 'speaking', right: [82, 100, -30] }),
  ...bubble('think', [86, 36, 62, 64], [60, 52]),
  ...glass(88, 38, 0.44, 0.75),
  ...drops([
    [66, 30],
    [72, 46],
  ]),
];
