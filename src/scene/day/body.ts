/** The body: washing, toilet, toes, and how it feels. The whole child is seen from above; the pulled leg lies straight. */
import { nearHand } from '../play/arms.ts';
import { box } from '../play/brush.ts';
import { childHead } from '../play/child.ts';
import type { Shape } from '../shapes.ts';
import { ink } from '../topics/page.ts';
import { head, type HeadLook } from '../topics/people.ts';
import { arcs, curtain, rail, toes, toy } from '../topics/things.ts';
import { basin, bottle, bubble, cloth, drops, inBed, pan, paperRoll, tube } from './parts.ts';

/** The child looks down at ten bare toes that move. */
export const toesHello = (): Shape[] => [
  ink.soft([22, 30, 24, 6, 42, 2, 78, 2, 96, 6, 98, 30], 'pillow', 2.6, 0.6),
  ...head('child', { x: 60, y: 26, r: 18, eyes: 'down' }),
  ink.soft([8, 104, 14, 60, 40, 46, 80, 46, 106, 60, 112, 104], 'blanket', 3, 0.6),
  ...toes(34, 84, 0.62, -1, 2.6),
  ...toes(86, 84, 0.62, 1, 2.6),
  arcs(40, 84, [20, 27], -130, -70, 3.4),
  arcs(80, 84, [20, 27], -110, -50, 3.4),
  ink.flat([1.2, 108, 118.8, 108, 118.8, 119, 1.2, 119], 'sheet'),
];

/** A wet cloth at the cheek, a basin of water. */
export const wash = (): Shape[] => [
  ...childHead({ x: 46, y: 42, r: 30, eyes: 'shut', mouth: 'calm', tilt: 6 }, 5),
  ...nearHand(['child', 'rest', 102, 50, 34, 176, -1]),
  ...cloth(70, 52, 0.34, 'sheet'),
  ...basin(54, 90, 0.66),
  ...drops([
    [34, 76],
    [88, 80],
    [64, 80],
  ]),
];

/** The brush is at the teeth. */
export const teeth = (): Shape[] => [
  ...childHead({ x: 50, y: 50, r: 42, eyes: 'down' }, 5),
  ink.ring([50, 78, 17, 12], 'mouth'),
  ink.flat([37, 70, 63, 70, 61, 77, 39, 77], 'white', 2),
  ...tube([38, 86, 62, 86, 120, 100], 6.4, 'scarf'),
  ink.flat(box(36, 77, 58, 84), 'sheet', 2),
  ink.rule(
    [44, 50].map((x) => [x, 78, x, 83]),
    1.6,
  ),
  ...nearHand(['child', 'fist', 114, 104, 30, 192, 1]),
];

/** Pan, bottle and paper stand ready, the curtain is drawn. */
export const toilet = (): Shape[] => [
  ...rail(0, 120, 10),
  ...curtain(4, 116, 12, 70, 5),
  ink.flat([1.2, 94, 118.8, 94, 118.8, 114, 1.2, 114], 'plate'),
  ...paperRoll(96, 46, 0.3),
  ...pan(40, 74, 0.6),
  ...bottle(94, 86, 0.34),
];

/** The child thinks of pan and paper. */
export const needToilet = (): Shape[] => [
  ...inBed({ x: 38, y: 66, r: 20, eyes: 'up', left: [34, 110, 20], right: [50, 110, 160] }),
  ...bubble('think', [82, 34, 72, 64], [56, 52]),
  ...pan(74, 42, 0.36),
  ...paperRoll(102, 28, 0.22),
];

/** Rays round the place where it is sore, under the blanket; the light field keeps them seen on a bad print. */
const sore = (x: number, y: number): Shape[] => {
  const rays = [-70, -35, 0, 35, 70].map((degrees) => {
    const a = ((degrees - 90) * Math.PI) / 180;
    const [c, s] = [Math.cos(a), Math.sin(a)];
    return [x + c * 8, y + s * 8, x + c * 19, y + s * 19];
  });
  // light edges, so that they are seen on any blanket
  return [ink.rule(rays, 9.5, 'sheet'), ink.rule(rays, 4.6, 'mark')];
};

/** The mouth of somebody who is sad or sore, instead of the calm one. */
const downMouth = (x: number, y: number, w: number): Shape[] => [
  ink.dots([x - w * 0.3, y, x + w * 0.3, y], w * 1.3, 'skin'),
  ink.strokes([[x - w, y + w * 0.4, x, y - w * 0.2, x + w, y + w * 0.4]], 2.4),
];

/** It is sore under the blanket. */
export const itHurts = (): Shape[] => [
  ...inBed(
    { x: 46, y: 42, r: 25, eyes: 'down', mouth: 'speaking', left: [26, 96, 60], right: [72, 90, 30] },
    118.8,
    5,
    sore(92, 106),
  ),
  ...drops([[31, 58]]),
];

/** A bare foot with a feeling in its toes that does not belong there. */
export const toesFeelFunny = (): Shape[] => [
  ...toes(60, 66, 1.16, -1, 3),
  ink.strokes(
    [
      [6, 62, 11, 52, 17, 60, 22, 50],
      [24, 50, 30, 40, 36, 48, 42, 38],
      [44, 42, 50, 32, 56, 40, 62, 30],
      [68, 34, 76, 20, 84, 32, 92, 18],
      [98, 36, 106, 26, 112, 36, 117, 28],
    ],
    3.8,
    'mark',
  ),
  ink.soft([1.2, 104, 30, 98, 60, 102, 90, 98, 118.8, 104, 118.8, 119, 1.2, 119], 'blanket', 3, 0.6),
];

interface Body {
  look: Omit<HeadLook, 'x' | 'y' | 'r'>;
  /** From shoulder to hand. */
  arms: readonly (readonly number[])[];
  fists?: true;
  /** The free leg, from hip to ankle. */
  leg?: readonly number[];
  more?: Shape[];
}

const [HEAD_X, HEAD_Y, HEAD_R] = [60, 25, 16];
const EYES = [HEAD_X - 6, HEAD_Y + 2.6, HEAD_X + 6, HEAD_Y + 2.6];

/** The child on the bed, seen from above: the right leg in its pull, all else as it feels. */
function whole({ look, arms, fists, leg = [68, 72, 70, 90, 71, 104], more = [] }: Body): Shape[] {
  const hands = arms.flatMap((flat) => flat.slice(-2));
  const foot = leg.slice(-2) as [number, number];
  return [
    ink.flat(box(14, 2, 106, 114), 'frame'),
    ink.flat(box(19, 6, 101, 110), 'sheet', 2.2),
    ink.soft([28, 12, 60, 7, 92, 12, 95, 26, 92, 40, 60, 43, 28, 40, 25, 26], 'pillow', 2.4, 0.6),
    ...tube([52, 72, 51, 90, 50, 104], 12, 'skin'),
    ...tube(leg, 12, 'skin'),
    ink.ring([50, 106, 6, 5.4, ...foot, 6, 5.4], 'skin', 2.4),
    ink.flat([44, 86, 57, 86, 56, 102, 44, 102], 'band', 2.2),
    ink.rule([[50, 112, 50, 120]], 2.4, 'cord'),
    ink.flat(box(42, 109, 58, 113), 'plate', 2.2),
    ink.soft([50, 40, 44, 46, 44, 76, 60, 80, 76, 76, 76, 46, 70, 40], 'gown', 2.6, 0.6),
    ...head('child', { x: HEAD_X, y: HEAD_Y, r: HEAD_R, ...look }),
    ...arms.flatMap((flat) => tube(flat, 10, 'skin')),
    ...(hands.length > 0
      ? [ink.dots(hands, fists ? 15 : 12), ink.dots(hands, fists ? 10.6 : 7.6, 'skin')]
      : []),
    ...arms.flatMap(([x, y, a, b]) => tube([x!, y!, (x! + a!) / 2, (y! + b!) / 2], 12, 'gown')),
    ...more,
  ];
}

/** Turned in on itself, as far as the pull lets it: arms round the toy, the free knee drawn up. */
export const curledUp = (): Shape[] =>
  whole({
    look: { eyes: 'shut', tilt: 24 },
    arms: [
      [46, 48, 40, 60, 56, 64],
      [74, 48, 80, 62, 64, 66],
    ],
    leg: [68, 74, 86, 78, 74, 94],
    more: toy(61, 58, 0.2),
  });

/** Fists up, a mouth that may shout. */
export const fists = (): Shape[] =>
  whole({
    look: { mouth: 'wide', eyes: 'shut' },
    fists: true,
    arms: [
      [46, 48, 32, 56, 30, 36],
      [74, 48, 88, 56, 90, 36],
    ],
    leg: [68, 74, 84, 82, 80, 100],
    more: [
      ink.rule(
        [
          [24, 26, 21, 20],
          [32, 24, 32, 17],
          [88, 24, 88, 17],
          [96, 26, 99, 20],
        ],
        3.4,
        'mark',
      ),
    ],
  });

/** Only hair and fingers look out from the blanket; below are the feet. */
export const hiding = (): Shape[] => [
  ...whole({ look: {}, arms: [] }),
  ink.ring([60, 24, 17, 17], 'hair', 2.6),
  ink.soft([20, 34, 40, 22, 60, 26, 80, 22, 100, 34, 102, 88, 80, 93, 40, 88, 18, 84], 'blanket', 3, 0.5),
  ink.strokes(
    [
      [40, 36, 46, 52, 42, 76],
      [80, 36, 74, 56, 80, 78],
      [56, 42, 60, 60],
    ],
    2,
  ),
  ink.dots([38, 25, 45, 24, 75, 24, 82, 25], 8),
  ink.dots([38, 25, 45, 24, 75, 24, 82, 25], 4.6, 'skin'),
];

/** Arms and free leg lie as they fell. */
export const loose = (): Shape[] =>
  whole({
    look: { eyes: 'shut' },
    arms: [
      [46, 48, 36, 58, 26, 72],
      [74, 48, 84, 58, 94, 72],
    ],
    leg: [68, 74, 76, 88, 82, 102],
  });

/** Eyes wide open, arms up, the free foot on the move. */
export const wideAwake = (): Shape[] =>
  whole({
    look: {},
    arms: [
      [46, 48, 32, 38, 28, 18],
      [74, 48, 88, 38, 92, 18],
    ],
    leg: [68, 74, 86, 76, 94, 90],
    more: [
      ink.dots(EYES, 8.4),
      ink.dots(EYES, 6, 'white'),
      ink.dots(EYES, 3.6),
      arcs(92, 92, [12, 18], -20, 60, 3),
    ],
  });

/** Sadness sits on the shoulders. */
export const sad = (): Shape[] => [
  ...inBed({ x: 58, y: 44, r: 26, eyes: 'down', tilt: -10, right: [82, 64, -104] }, 118.8, 14),
  ...downMouth(61, 60, 7),
  ...drops([[42, 62]]),
];

/** As the edge of the strip, for who is older. */
export const cardItHurts = (): Shape[] => [
  ...inBed(
    { x: 40, y: 42, r: 23, eyes: 'shut', tilt: 8, left: [24, 96, 60], right: [72, 92, 10, 'point'] },
    118.8,
    14,
    sore(96, 106),
  ),
  ...downMouth(38, 57, 6),
];
