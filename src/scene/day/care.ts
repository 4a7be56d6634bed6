/** What staff do, and who comes. Nobody else touches weight, cord, bandage or leg; no needle is seen. */
import { nearHand } from '../play/arms.ts';
import { box } from '../play/brush.ts';
import { childInBed } from '../play/child.ts';
import { grownUp } from '../play/grown-up.ts';
import type { Shape } from '../shapes.ts';
import { ink, small } from '../topics/page.ts';
import { figure } from '../topics/people.ts';
import { toes, toy } from '../topics/things.ts';
import { BESIDE, bubble, inBed, plaster, pulledBed, roll, together, tube } from './parts.ts';

/** A nurse brings a small cup and a glass of water on a tray. */
export const medicineVisit = (): Shape[] => [
  ...figure({
    ...{ who: 'staff', x: 60, y: 34, r: 20, hem: 124 },
    // the hands are behind the tray
    ...{ left: [28, 92, 20, 'none'], right: [92, 92, 160, 'none'] },
  }).all,
  ink.flat([8, 92, 112, 92, 108, 101, 12, 101], 'metal'),
  ink.flat([26, 68, 52, 68, 48, 92, 30, 92], 'white'),
  ink.flat([28, 79, 50, 79, 48, 91, 30, 91], 'red', 2),
  ink.flat([70, 58, 94, 58, 91, 92, 73, 92], 'white'),
  ink.flat([71, 70, 93, 70, 91, 91, 73, 91], 'tear', 2),
];

/** The leg lies straight; two nurse's hands wind the bandage. */
export const bandageCare = (): Shape[] => [
  ink.flat([1.2, 98, 118.8, 98, 118.8, 110, 1.2, 110], 'sheet'),
  ink.soft([-6, 58, 40, 60, 78, 66, 92, 66, 92, 94, 78, 92, 40, 100, -6, 104], 'skin', 3, 0.7),
  ink.soft([84, 68, 90, 48, 96, 36, 106, 34, 108, 48, 106, 66, 112, 84, 104, 96, 84, 94], 'skin', 3, 0.8),
  ink.strokes([[97, 44, 104, 43]], 2),
  ink.soft([18, 58, 50, 60, 78, 65, 79, 93, 50, 100, 18, 102], 'band', 3, 0.3),
  ink.strokes(
    [
      [30, 59, 28, 80, 34, 101],
      [42, 60, 40, 80, 46, 100],
      [54, 61, 52, 80, 58, 98],
      [66, 63, 64, 80, 70, 95],
    ],
    2.4,
  ),
  ink.flat([50, 24, 62, 22, 70, 63, 54, 61], 'band', 2.4),
  ...roll(48, 28, 0.4),
  ...nearHand(['nurse', 'rest', 92, 20, 34, 172, -1]),
  ...nearHand(['nurse', 'rest', 36, 116, 30, -70, 1]),
];

/** A hand lies on a sheet, a plaster on it; a nurse has a soft swab. */
export const needle = (): Shape[] => [
  ink.flat([1.2, 66, 118.8, 66, 118.8, 119, 1.2, 119], 'sheet'),
  ...nearHand(['child', 'rest', 20, 74, 58, 0, -1]),
  ...plaster(46, 74, 0.3, 80),
  ...nearHand(['nurse', 'rest', 104, 32, 40, 160, -1]),
  ink.soft([52, 38, 60, 32, 70, 36, 74, 46, 68, 56, 58, 56, 51, 48], 'white', 2.6, 0.9),
];

/** A nurse brings folded sheets. */
export const sheets = (): Shape[] => {
  const nurse = figure({
    who: 'staff',
    x: 60,
    y: 32,
    r: 19,
    hem: 124,
    left: [26, 104, 10],
    right: [94, 104, 170],
  });
  return [
    ...nurse.body,
    ink.flats(
      [74, 86, 98].map((y) => box(22, y, 98, y + 12)),
      'white',
      2.8,
    ),
    ink.rule(
      [
        [84, 80, 98, 80],
        [84, 92, 98, 92],
        [84, 104, 98, 104],
      ],
      2,
    ),
    ink.soft([28, 73, 30, 60, 60, 56, 90, 60, 92, 73], 'pillow', 2.8, 0.6),
    ...nurse.arms,
  ];
};

/** Three of the staff stand at the end of the bed. */
export const round = (): Shape[] => {
  const [a, b, c] = [
    figure({ who: 'doctor', x: 24, y: 42, r: 15, hem: 124, facing: 1 }),
    figure({ who: 'doctor', x: 98, y: 42, r: 15, hem: 124, facing: -1, speaking: true }),
    figure({ who: 'staff', x: 61, y: 36, r: 16, hem: 124, left: [48, 78, 30], right: [76, 78, 150] }),
  ];
  return [
    ...a.body,
    ...c.body,
    ...b.body,
    ink.flat([42, 62, 82, 62, 84, 86, 40, 86], 'white', 2.6),
    ink.rule(
      [
        [50, 69, 76, 69],
        [54, 77, 70, 77],
      ],
      2,
      'soft',
    ),
    ...c.arms,
    ink.soft([1.2, 98, 30, 93, 60, 100, 90, 93, 118.8, 98, 118.8, 119, 1.2, 119], 'blanket', 3, 0.8),
  ];
};

/** A picture is taken over the bed; the bone is seen on a dark sheet. */
export const xRay = (): Shape[] => [
  ...pulledBed(small(58, 66, 0.92)),
  ink.rule([[118, 10, 66, 10]], 8),
  ink.rule([[118, 10, 66, 10]], 3.4, 'metal'),
  ink.soft([56, 6, 88, 6, 90, 24, 82, 36, 62, 36, 54, 24], 'metal', 2.6, 0.4),
  ink.ring([72, 20, 6, 6], 'pad', 2.2),
  { ...ink.rule([[64, 38, 56, 54]], 2.2, 'mark'), dash: '4 4' },
  { ...ink.rule([[80, 38, 86, 50]], 2.2, 'mark'), dash: '4 4' },
  ink.flat(box(4, 4, 42, 50), 'ink'),
  small(23, 27, 0.38).soft(
    [
      44, 8, 60, 16, 76, 8, 82, 22, 70, 34, 68, 88, 80, 100, 74, 114, 60, 106, 46, 114, 40, 100, 52, 88, 50,
      34, 38, 22,
    ],
    'sheet',
    2,
    0.8,
  ),
];

/** Two fists hold a stick up. */
const stickUp = (left: number, right: number, y: number, fill: string): Shape[] => [
  ...tube([left - 9, y, right + 9, y], 6, 'red'),
  ink.dots([left, y, right, y], 13),
  ink.dots([left, y, right, y], 8.8, fill),
];

/** Somebody of the staff shows how a stick goes up; the child does the same, and the legs lie still. */
export const physio = (): Shape[] => [
  ...figure({
    who: 'staff',
    x: 88,
    y: 48,
    r: 14,
    hem: 124,
    left: [68, 18, -90, 'none'],
    right: [108, 18, -90, 'none'],
  }).all,
  ...stickUp(68, 108, 14, 'hand'),
  ...inBed(
    { x: 34, y: 80, r: 17, eyes: 'right', left: [12, 46, -90, 'none'], right: [56, 46, -90, 'none'] },
    70,
  ),
  ...stickUp(12, 56, 42, 'skin'),
  ink.rule(
    [
      [22, 31, 22, 20],
      [34, 29, 34, 15],
      [46, 31, 46, 20],
    ],
    3.4,
    'mark',
  ),
];

/** A nurse bends over bare toes and looks. */
export const nurseLook = (): Shape[] => {
  const n = grownUp({ x: 88, y: 34, r: 21, nurse: true, bow: 24 });
  return [
    { ...ink.flat([82, 44, 93, 44, 95, 68, 84, 70], 'hand'), line: '' },
    ...n.behind,
    ...toes(26, 76, 0.66, -1, 2.6),
    ...toes(66, 76, 0.66, 1, 2.6),
    ink.soft([1.2, 100, 24, 92, 46, 98, 68, 92, 92, 98, 118.8, 96, 118.8, 119, 1.2, 119], 'blanket', 3, 0.7),
  ];
};

/** A nurse tells of something that is still in its box: a plain one, so that nobody expects a present. */
export const surprise = (): Shape[] => [
  ...together({ x: 32, y: 80, r: 17, eyes: 'up' }, { x: 98, y: 66, nurse: true, mouth: 'speaking' }),
  ...bubble('say', [54, 31, 106, 59], [80, 74]),
  ink.flat([32, 30, 76, 30, 74, 55, 34, 55], 'plate'),
  ink.flat([30, 22, 78, 10, 80, 18, 33, 31], 'band'),
  ink.rule(
    [
      [90, 26, 98, 23],
      [89, 36, 97, 38],
      [19, 36, 11, 38],
    ],
    3.4,
    'mark',
  ),
];

/** Under the lamp of the operating room: a cap for the child, cap and mask for who looks after it. */
export const operationDay = (): Shape[] => [
  ink.rule([[32, 0, 32, 12]], 6),
  { ...ink.flat([16, 26, 48, 26, 60, 60, 4, 60], 'band'), line: '' },
  ink.soft([8, 26, 18, 10, 46, 10, 56, 26], 'metal', 3, 0.6),
  ink.dots([20, 23, 32, 23, 44, 23], 7, 'white'),
  ...figure({ who: 'doctor', x: 92, y: 38, r: 19, hem: 124, eyes: 'left' }).body,
  ink.soft([72, 30, 75, 14, 92, 9, 109, 14, 112, 30, 92, 25], 'wet', 2.6, 0.7),
  ink.flat([76, 46, 108, 46, 104, 56, 92, 61, 80, 56], 'sheet', 2.4),
  ...inBed({ x: 38, y: 76, r: 18, eyes: 'right' }, 84),
  ink.soft([17, 74, 20, 54, 38, 48, 56, 54, 59, 74, 38, 66], 'tear', 2.6, 0.7),
];

/** Both legs are free; one of the staff has taken the cord and the weight away. */
export const comingOut = (): Shape[] => {
  const child = figure({
    who: 'child',
    x: 34,
    y: 30,
    r: 18,
    hem: 78,
    left: [14, 70, 80],
    right: [54, 70, 100],
  });
  const nurse = figure({ who: 'staff', x: 84, y: 34, r: 16, hem: 124, right: [108, 58, -60, 'fist'] });
  return [
    ink.flat([1.2, 72, 66, 72, 66, 88, 1.2, 88], 'mattress'),
    ...child.body,
    ...tube([25, 80, 25, 106], 11, 'skin'),
    ...tube([44, 80, 44, 106], 11, 'skin'),
    ink.soft([16, 66, 54, 66, 55, 86, 34, 80, 14, 86], 'gown', 2.6, 0.4),
    ink.ring([23, 111, 10, 6, 46, 111, 10, 6], 'skin', 2.6),
    ...child.arms,
    ...nurse.all,
    ink.stroke([108, 52, 108, 80], 2.6, 'cord'),
    ink.flat([102, 80, 114, 80, 118, 104, 98, 104], 'bag', 2.6),
  ];
};

/** A woman of the staff. */
export const womanNurse = (): Shape[] => [
  ink.soft([34, 34, 28, 62, 36, 86, 84, 86, 92, 62, 86, 34], 'hair', 3, 0.8),
  ...figure({ who: 'staff', x: 60, y: 50, r: 27, hem: 124, left: [34, 112, 60], right: [86, 112, 120] }).all,
];

/** A man of the staff. */
export const manNurse = (): Shape[] => [
  ...figure({ who: 'doctor', x: 60, y: 44, r: 28, hem: 124, left: [32, 110, 60], right: [88, 110, 120] }).all,
  ink.soft(
    [39, 48, 44, 61, 60, 58, 76, 61, 81, 48, 80, 65, 70, 77, 60, 80, 50, 77, 40, 65],
    'hair',
    2.4,
    0.7,
  ),
  ink.soft([51, 63, 60, 61, 69, 63, 60, 67], 'mouth', 1.8, 0.8),
];

/** One of the staff explains the set-up on a picture of it, and is listened to. */
export const explainToMe = (): Shape[] => [
  ...childInBed({ x: 32, y: 82, r: 17, eyes: 'up' }, 14, BESIDE).behind,
  ...grownUp({ x: 98, y: 66, nurse: true, mouth: 'speaking' }).behind,
  ...bubble('say', [54, 30, 106, 56], [80, 74]),
  ...pulledBed(small(52, 28, 0.56)),
];

/** What the child's eyes do while staff work at the arm. */
const atTheArm = (eyes: 'right' | 'left', tilt: number, more: Shape[] = []): Shape[] => [
  ...inBed({ x: 48, y: 48, r: 24, eyes, tilt, right: [90, 84, 20] }),
  ...plaster(90, 86, 0.16, 20),
  ...nearHand(['nurse', 'rest', 112, 66, 24, 150, -1]),
  ...more,
];

/** The eyes go to where staff work. */
export const watch = (): Shape[] => atTheArm('right', 14);
/** The eyes go to the toy on the other side. */
export const lookAway = (): Shape[] => [...atTheArm('left', -16, toy(18, 78, 0.36))];
