/** Twelve small things of equal worth, one for each day behind: nothing is won by them. */
import { box } from '../play/brush.ts';
import type { Shape } from '../shapes.ts';
import { ink } from '../topics/page.ts';

const kite = (): Shape[] => [
  ink.flat([60, 6, 96, 42, 60, 92, 24, 42], 'red'),
  ink.flat([60, 6, 96, 42, 60, 42], 'band', 2.4),
  ink.flat([24, 42, 60, 42, 60, 92], 'band', 2.4),
  ink.stroke([60, 92, 50, 102, 66, 108, 58, 118], 2.6),
  ink.flats(
    [
      [50, 102, 40, 96, 42, 108],
      [66, 108, 76, 102, 76, 114],
    ],
    'scarf',
    2.2,
  ),
];

const boat = (): Shape[] => [
  ink.flat([54, 8, 54, 76, 14, 76], 'white'),
  ink.flat([64, 20, 102, 76, 64, 76], 'blanket'),
  ink.rule([[59, 6, 59, 84]], 4),
  ink.soft([6, 82, 114, 82, 98, 108, 22, 108], 'plate', 3, 0.3),
  ink.stroke([2, 112, 20, 106, 40, 114, 60, 106, 80, 114, 100, 106, 118, 112], 4.4, 'wet'),
];

const lemon = (): Shape[] => [
  ink.soft([6, 76, 16, 60, 40, 40, 72, 34, 94, 36, 106, 28, 108, 44, 98, 66, 72, 92, 38, 96, 18, 84], 'band'),
  ink.dots([44, 62, 60, 54, 58, 72, 76, 62, 40, 78], 3.4, 'soft'),
  ink.soft([84, 36, 76, 14, 50, 8, 62, 28], 'wet', 3, 0.8),
  ink.strokes([[80, 32, 68, 18]], 2),
];

const snail = (): Shape[] => [
  ink.soft([4, 104, 10, 94, 70, 94, 84, 62, 96, 54, 108, 64, 104, 96, 92, 108], 'band', 3, 0.7),
  ink.ring([46, 64, 36, 34], 'blanket'),
  ink.stroke([46, 98, 70, 78, 60, 46, 34, 46, 28, 70, 46, 80, 54, 64, 44, 60], 3),
  ink.rule(
    [
      [92, 54, 86, 32],
      [102, 56, 108, 34],
    ],
    3.4,
  ),
  ink.dots([86, 31, 108, 33], 7),
];

const kettle = (): Shape[] => [
  ink.stroke([28, 46, 32, 14, 74, 14, 80, 46], 6),
  ink.soft([84, 62, 102, 50, 108, 34, 116, 38, 112, 60, 92, 86], 'wet', 3, 0.5),
  ink.soft([16, 104, 16, 64, 30, 46, 78, 46, 92, 64, 92, 104, 84, 110, 24, 110], 'wet', 3, 0.5),
  ink.flat(box(36, 36, 72, 46), 'scarf'),
  ink.dots([54, 31], 9),
  ink.strokes([[28, 68, 28, 94]], 3, 'white'),
];

const umbrella = (): Shape[] => [
  ink.stroke([60, 20, 60, 100, 66, 110, 78, 108, 80, 98], 5),
  ink.soft(
    [4, 64, 16, 30, 60, 12, 104, 30, 116, 64, 96, 56, 78, 64, 60, 56, 42, 64, 24, 56],
    'scarf',
    3,
    0.7,
  ),
  ink.strokes(
    [
      [60, 12, 44, 32, 42, 64],
      [60, 12, 76, 32, 78, 64],
    ],
    2.4,
  ),
  ink.rule([[60, 12, 60, 4]], 5),
];

const drum = (): Shape[] => [
  ink.soft([14, 46, 14, 96, 40, 110, 80, 110, 106, 96, 106, 46], 'red', 3, 0.6),
  ink.rule([[14, 54, 36, 104, 60, 62, 84, 104, 106, 54]], 3, 'band'),
  ink.ring([60, 46, 46, 15], 'sheet'),
  ink.rule(
    [
      [24, 8, 54, 42],
      [100, 12, 70, 46],
    ],
    5,
    'ink',
  ),
  ink.ring([54, 42, 4, 4, 70, 46, 4, 4], 'plate', 2.4),
];

const key = (): Shape[] => [
  ink.flat([50, 52, 112, 52, 112, 82, 100, 82, 100, 66, 92, 66, 92, 78, 82, 78, 82, 66, 50, 66], 'plate'),
  ink.ring([34, 60, 28, 28], 'plate'),
  ink.ring([32, 60, 12, 12], 'white'),
];

const bucket = (): Shape[] => [
  ink.stroke([20, 44, 30, 8, 90, 8, 100, 44], 4.4),
  ink.flat([14, 42, 106, 42, 92, 112, 28, 112], 'blanket'),
  ink.ring([60, 42, 46, 12], 'band'),
  ink.soft([26, 42, 44, 24, 62, 20, 82, 28, 94, 42, 60, 50], 'band', 2.6, 0.7),
  ink.rule([[22, 74, 98, 74]], 3),
];

const hat = (): Shape[] => [
  ink.soft([20, 84, 24, 48, 60, 26, 96, 48, 100, 84], 'gown', 3, 0.9),
  ink.strokes(
    [
      [40, 40, 36, 60, 36, 84],
      [60, 28, 60, 84],
      [80, 40, 84, 60, 84, 84],
    ],
    2.2,
  ),
  ink.soft([12, 82, 60, 78, 108, 82, 110, 104, 60, 110, 10, 104], 'scarf', 3, 0.5),
  ink.ring([60, 20, 15, 14], 'white'),
];

const fish = (): Shape[] => [
  ink.soft([6, 32, 34, 52, 62, 28, 98, 38, 114, 60, 98, 84, 62, 94, 34, 68, 6, 90, 18, 60], 'wet', 3, 0.6),
  ink.strokes(
    [
      [74, 42, 66, 60, 74, 80],
      [56, 50, 50, 60, 56, 72],
    ],
    2.6,
  ),
  ink.dots([94, 54], 8),
];

const can = (): Shape[] => [
  ink.stroke([70, 46, 112, 30, 112, 84, 88, 92], 5),
  ink.flat([40, 80, 14, 40, 22, 34, 46, 66], 'metal'),
  ink.flat([2, 40, 26, 18, 32, 28, 10, 48], 'metal'),
  ink.flat([38, 46, 90, 46, 96, 108, 34, 108], 'metal'),
  ink.ring([64, 46, 26, 8], 'soft'),
  ink.rule([[36, 92, 94, 92]], 2.6),
];

export const DAYS = {
  'day-1': kite,
  'day-2': boat,
  'day-3': lemon,
  'day-4': snail,
  'day-5': kettle,
  'day-6': umbrella,
  'day-7': drum,
  'day-8': key,
  'day-9': bucket,
  'day-10': hat,
  'day-11': fish,
  'day-12': can,
};
