/** Topics of the leg in its pull: bare toes, the heel, a wet bandage, hands off, and the leg afterwards. */
import { at, oval } from '../shapes.ts';
import { bedFromSide } from './bed.ts';
import { nearLeg, plateRight } from './leg.ts';
import { ink, small, type TopicShape } from './page.ts';
import { pressed } from './pull-pictures.ts';
import { figure, handFrom } from './people.ts';
import { box } from '../play/brush.ts';
import { arrow, room, toes } from './things.ts';

/** A blanket over a frame stands clear of both bare feet. */
export const toesBare = (): TopicShape[] => [
  ink.soft([14, 272, 26, 96, 84, 34, 316, 34, 374, 96, 386, 272], 'blanket', 2.6, 0.5),
  ink.soft([58, 272, 66, 128, 108, 82, 292, 82, 334, 128, 342, 272], 'ground', 2.6, 0.5),
  { ...ink.stroke([50, 272, 58, 122, 102, 74, 298, 74, 342, 122, 350, 272], 5, 'metal') },
  ink.strokes(
    [
      [40, 110, 36, 180, 30, 262],
      [360, 110, 364, 180, 370, 262],
      [110, 44, 104, 58, 108, 70],
      [290, 44, 296, 58, 292, 70],
    ],
    2,
  ),
  ...toes(138, 190, 1.25, -1, 2.8),
  ...toes(262, 190, 1.25, 1, 2.8),
  ink.flat([2, 246, 398, 246, 398, 276, 2, 276], 'sheet', 2.6),
  ink.flat([2, 276, 398, 276, 398, 299, 2, 299], 'mattress', 2.6),
];

/** One hand holds the child's, the other rests in the lap; the ring round the pull says: staff only. */
export const yourHandsOff = (): TopicShape[] => {
  const b = bedFromSide({ y: -18, eyes: 'right', tilt: 14, near: [104, 178, 40], inRoom: true });
  const g = figure({ who: 'grown', x: 158, y: 104, r: 32, hem: 286, left: [116, 184, 186] });
  return [
    ...b.bed,
    ...b.body,
    ...b.front,
    { d: oval(at(300, 142), 97, 136), line: 'mark', weight: 4, dash: '12 10' },
    ...g.body,
    ink.soft([98, 304, 104, 250, 136, 234, 180, 234, 212, 250, 220, 304], 'soft', 2.6, 0.5),
    ...g.arms,
    ...handFrom('grown', 'rest', [180, 246, 38, 160], [200, 188], 1),
  ];
};

/** The heel hangs free over its thin pad. */
export const skinHeel = (): TopicShape[] => [
  ink.flat(box(0, 236, 400, 256), 'sheet', 2.6),
  ink.flat(box(0, 256, 400, 299), 'mattress', 2.6),
  ink.soft([40, 236, 50, 210, 100, 202, 170, 204, 200, 214, 208, 236], 'pad', 2.6, 0.5),
  ...nearLeg({ from: -10, to: 264, y: 158, half: 54, band: [0.16, 0.78], foot: 2.6 }),
  ...plateRight(264, 160, 2.5, 400),
  { ...ink.rule([[236, 214, 340, 214]], 3, 'mark'), dash: '7 6' },
  ...arrow([290, 233, 290, 219], 3.6, 'mark', 7),
];

/** Water on the bandage: the button is pressed, hands stay away. */
export const bandageWet = (): TopicShape[] => [
  ink.flat(box(0, 190, 400, 206), 'sheet', 2.6),
  ink.flat(box(0, 206, 400, 299), 'mattress', 2.6),
  ...nearLeg({ from: -10, to: 288, y: 138, half: 50, band: [0.18, 0.84], wet: 0.5, foot: 2.2 }),
  ...plateRight(288, 140, 2.2, 400),
  small(170, 46, 0.5).soft([60, 6, 92, 70, 84, 100, 60, 112, 36, 100, 28, 70], 'tear', 4, 0.7),
  small(222, 62, 0.36).soft([60, 6, 92, 70, 84, 100, 60, 112, 36, 100, 28, 70], 'tear', 4, 0.7),
  small(204, 26, 0.26).soft([60, 6, 92, 70, 84, 100, 60, 112, 36, 100, 28, 70], 'tear', 4, 0.7),
  ...pressed(0.95, 10, 186),
];

/** On the edge of the bed for the first time, staff at both sides; one leg has grown thin and is worth as much. */
export const comingOut = (): TopicShape[] => {
  const [a, b] = [
    figure({ who: 'staff', x: 62, y: 56, r: 27, hem: 226, feet: 292, eyes: 'right', right: [146, 150, 10] }),
    figure({ who: 'staff', x: 338, y: 56, r: 27, hem: 226, feet: 292, eyes: 'left', left: [254, 150, 170] }),
  ];
  const c = figure({
    who: 'child',
    x: 200,
    y: 80,
    r: 33,
    hem: 190,
    left: [172, 184, 80],
    right: [228, 184, 100],
  });
  const shin = (x: number, w: number) =>
    ink.soft(
      [x - w, 190, x + w, 190, x + w, 216, x + w * 0.7, 256, x - w * 0.7, 256, x - w, 216],
      'skin',
      2.6,
      0.5,
    );
  return [
    ...room(262),
    ink.flat(box(70, 172, 330, 190), 'sheet', 2.6),
    ink.flat(box(70, 190, 330, 210), 'mattress', 2.6),
    ink.flat(box(70, 210, 330, 220), 'frame', 2.6),
    ...c.body,
    shin(178, 11),
    shin(222, 16),
    ink.ring([177, 262, 16, 9, 223, 262, 17, 9], 'skin', 2.6),
    ink.rule(
      [169, 174, 179, 184, 215, 220, 226, 231].map((x) => [x, 264, x, 270]),
      1.6,
    ),
    ink.soft([158, 174, 200, 168, 242, 174, 244, 204, 200, 196, 156, 204], 'gown', 2.6, 0.5),
    ink.strokes(
      [
        [170, 220, 178, 224, 186, 220],
        [171, 246, 178, 249, 185, 246],
      ],
      2,
      'skin-shade',
    ),
    ...c.arms,
    ...a.body,
    ...b.body,
    ...a.arms,
    ...b.arms,
  ];
};
