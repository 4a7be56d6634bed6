/** What staff do, and who comes. Nobody else touches weight, cord, bandage or leg; no needle is seen. */
import { nearHand } from '../play/arms.ts';
import { box } from '../play/brush.ts';
import { grownUp } from '../play/grown-up.ts';
import type { Shape } from '../shapes.ts';
import { ink, small } from '../topics/page.ts';
import { figure } from '../topics/people.ts';
import { toes, toy } from '../topics/things.ts';
import { bubble, cloth, inBed, plaster, pulledBed, roll, together, tube } from './parts.ts';

/** A nurse brings a small cup and a glass of water on a tray. */
export const medicineVisit = (): Shape[] => [
  ...figure({ who: 'staff', x: 60, y: 34, r: 20, hem: 124, left: [28, 92, 20], right: [92, 92, 160] }).all,
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
  ...roll(48, 26, 0.34),
  ...nearHand(['nurse', 'rest', 78, 18, 34, 172, -1]),
  ...nearHand(['nurse', 'rest', 36, 116, 30, -70, 1]),
];

/** A hand lies on a sheet, a plaster on it; a nurse has a soft swab. */
export const needle = (): Shape[] => [
  ink.flat([1.2, 84, 118.8, 84, 118.8, 119, 1.2, 119], 'sheet'),
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
    figure({ who: 'doctor', x: 24, y: 42, r: 15, hem: 124 }),
    figure({ who: 'doctor', x: 98, y: 42, r: 15, hem: 124 }),
    figure({ who: 'staff', x: 61, y: 36, r: 16, hem: 124, left: [50, 84, 30], right: [74, 84, 150] }),
  ];
  return [
    ...a.body,
    ...c.body,
    ...b.body,
    ink.stroke([14, 58, 14, 74, 24, 84, 34, 74, 34, 58], 2.4),
    ink.ring([24, 86, 4.4, 4.4], 'metal', 2),
    ink.flat([44, 70, 80, 70, 82, 92, 42, 92], 'white', 2.6),
    ink.rule(
      [
        [50, 77, 74, 77],
        [50, 84, 68, 84],
      ],
      2,
      'soft',
    ),
    ...b.arms,
    ink.rule([[2, 92, 118, 92]], 7, 'frame'),
    ink.soft([1.2, 96, 30, 90, 60, 98, 90, 90, 118.8, 96, 118.8, 119, 1.2, 119], 'blanket', 3, 0.8),
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

/** Arms up, and out with the breath; somebody of the staff shows how. */
export const physio = (): Shape[] => {
  const f = figure({
    who: 'staff',
    x: 97,
    y: 44,
    r: 15,
    hem: 124,
    left: [80, 16, -100],
    right: [113, 16, -80],
  });
  return [
    ...inBed(
      { x: 38, y: 62, r: 19, mouth: 'blowing', eyes: 'right', left: [12, 24, -100], right: [64, 24, -80] },
      78,
    ),
    ...f.all,
  ];
};

/** A nurse bends over bare toes and looks. */
export const nurseLook = (): Shape[] => {
  const n = grownUp({ x: 86, y: 36, r: 24, nurse: true, bow: 24 });
  return [
    ...n.behind,
    ...toes(26, 76, 0.66, -1, 2.6),
    ...toes(66, 76, 0.66, 1, 2.6),
    ink.soft([1.2, 100, 24, 92, 46, 98, 68, 92, 92, 98, 118.8, 96, 118.8, 119, 1.2, 119], 'blanket', 3, 0.7),
  ];
};

/** A nurse tells of something that is still under a cloth. */
export const surprise = (): Shape[] => [
  ...together(
    { x: 32, y: 76, r: 18, eyes: 'right' },
    { x: 98, y: 62, r: 18, nurse: true, mouth: 'speaking' },
    [],
  ),
  ...bubble('say', [56, 28, 104, 50], [80, 70]),
  ...cloth(56, 28, 0.42, 'gown'),
  ink.ring([56, 10, 3, 3], 'gown', 2),
];

/** Under the lamp of the operating room: a cap for the child, cap and mask for who looks after it. */
export const operationDay = (): Shape[] => [
  ink.rule([[34, 0, 34, 12]], 6),
  { ...ink.flat([16, 26, 52, 26, 62, 62, 4, 62], 'band'), line: '' },
  ink.soft([8, 26, 18, 10, 50, 10, 60, 26], 'metal', 3, 0.6),
  ink.dots([20, 23, 34, 23, 48, 23], 7, 'white'),
  ...figure({ who: 'doctor', x: 92, y: 36, r: 18, hem: 124, eyes: 'left' }).body,
  ink.soft([72, 34, 74, 16, 92, 8, 110, 16, 112, 34], 'wet', 2.6, 0.7),
  ink.flat([77, 40, 107, 40, 105, 52, 92, 58, 79, 52], 'sheet', 2.4),
  ...inBed({ x: 38, y: 76, r: 18, eyes: 'right', right: [64, 100, 160] }, 84),
  ink.soft([17, 74, 20, 54, 38, 48, 56, 54, 59, 74, 38, 66], 'tear', 2.6, 0.7),
  ...toy(64, 100, 0.28),
];

/** Both legs are free; one of the staff has taken the cord and the weight away. */
export const comingOut = (): Shape[] => {
  const child = figure({
    who: 'child',
    x: 36,
    y: 30,
    r: 18,
    hem: 78,
    left: [16, 70, 80],
    right: [56, 70, 100],
  });
  const nurse = figure({
    who: 'staff',
    x: 92,
    y: 32,
    r: 16,
    hem: 124,
    left: [84, 72, 150],
    right: [108, 88, 140],
  });
  return [
    ink.flat([1.2, 72, 72, 72, 72, 88, 1.2, 88], 'mattress'),
    ...child.body,
    ...tube([27, 80, 27, 106], 11, 'skin'),
    ...tube([46, 80, 46, 106], 11, 'skin'),
    ink.soft([18, 66, 56, 66, 57, 86, 36, 80, 16, 86], 'gown', 2.6, 0.4),
    ink.ring([25, 111, 10, 6, 48, 111, 10, 6], 'skin', 2.6),
    ...child.arms,
    ...nurse.all,
    ink.stroke([84, 76, 78, 84, 84, 92], 2.4, 'cord'),
    small(84, 102, 0.3).soft(
      [40, 8, 80, 8, 104, 50, 106, 100, 86, 116, 34, 116, 14, 100, 16, 50],
      'bag',
      3,
      0.7,
    ),
  ];
};

/** The nurse whom the child would like to come. */
const nurse = (who: 'staff' | 'doctor', more: Shape[] = []): Shape[] => [
  ...figure({ who, x: 60, y: 50, r: 27, hem: 124, left: [34, 112, 60], right: [86, 112, 120] }).all,
  ...more,
];

export const womanNurse = (): Shape[] => [
  ink.soft([34, 34, 28, 62, 36, 86, 84, 86, 92, 62, 86, 34], 'hair', 3, 0.8),
  ...nurse('staff'),
];

export const manNurse = (): Shape[] => [
  ...nurse('doctor', [
    ink.soft(
      [40, 54, 45, 66, 60, 63, 75, 66, 80, 54, 79, 70, 70, 82, 60, 85, 50, 82, 41, 70],
      'hair',
      2.4,
      0.7,
    ),
    ink.soft([51, 68, 60, 66, 69, 68, 60, 72], 'mouth', 1.8, 0.8),
  ]),
];

/** One of the staff explains the set-up on a picture of it, and is listened to. */
export const explainToMe = (): Shape[] => [
  ...together(
    { x: 32, y: 80, r: 17, eyes: 'up' },
    { x: 98, y: 66, r: 18, nurse: true, mouth: 'speaking' },
    [],
    14,
  ),
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

export const watch = (): Shape[] => [
  ...atTheArm('right', 14),
  { ...ink.rule([[66, 60, 84, 76]], 3, 'mark'), dash: '4 5' },
];
export const lookAway = (): Shape[] => [...atTheArm('left', -16, toy(18, 78, 0.36))];
