/** Topics of staff and grown-ups beside the bed, and of the way home. */
import { at, oval, straight, type Shape } from '../shapes.ts';
import { ink, type TopicShape } from './page.ts';
import { figure, head, lying } from './people.ts';
import { box } from '../play/brush.ts';
import { bubble, bulb, curtain, door, moon, mug, rail, room, sun, toy } from './things.ts';

/** Three of the staff at the end of the bed, one with papers; the child has words of its own. */
export const doctorsRound = (): TopicShape[] => {
  const c = lying({ x: 78, y: 154, r: 36, bed: [2, 154], hem: 236, eyes: 'right' });
  const three = [
    figure({ who: 'doctor', x: 212, y: 120, r: 25, hem: 304 }),
    figure({ who: 'doctor', x: 352, y: 124, r: 25, hem: 304 }),
    figure({
      who: 'staff',
      x: 282,
      y: 112,
      r: 26,
      hem: 304,
      eyes: 'left',

      left: [264, 226, 30],
      right: [302, 226, 150],
    }),
  ];
  return [
    ...c.behind,
    ...c.arms,
    ...bubble(82, 46, 124, 68, 88, 112),
    ink.dots([52, 46, 82, 46, 112, 46], 13, 'mark'),
    ...three.flatMap((f) => f.body),
    ink.stroke([196, 146, 192, 176, 204, 192], 3.4),
    ink.stroke([228, 146, 232, 176, 214, 192], 3.4),
    ink.ring([208, 196, 7, 7], 'metal', 2.4),
    ...bubble(256, 34, 80, 46, 276, 82),
    ink.strokes(
      [
        [232, 30, 244, 34, 256, 30, 268, 34, 280, 30],
        [238, 42, 250, 46, 262, 42],
      ],
      2.6,
    ),
    ...bubble(352, 40, 70, 42, 350, 94),
    ink.strokes([[330, 36, 342, 40, 354, 36, 366, 40, 374, 37]], 2.6),
    ink.flat([256, 196, 312, 196, 316, 260, 252, 260], 'band-shade', 2.6),
    ink.flat([262, 204, 306, 204, 309, 252, 259, 252], 'white', 2),
    ink.rule(
      [
        [268, 216, 300, 216],
        [268, 228, 300, 228],
        [267, 240, 290, 240],
      ],
      2.2,
      'soft',
    ),
    ...three.flatMap((f) => f.arms),
  ];
};

/** The curtain is shut; a nurse waits outside and asks; bowl and towel stand ready. */
export const yourOwnBody = (): TopicShape[] => {
  const n = figure({
    who: 'staff',
    x: 336,
    y: 92,
    r: 30,
    hem: 304,
    facing: -1,
    speaking: true,
    right: [352, 214, 150],
  });
  return [
    ...rail(0, 400, 22),
    ...curtain(10, 262, 24, 282, 6),
    // a notice: an eye that is shut
    ink.flat(box(82, 84, 184, 168), 'white', 2.8),
    ink.stroke([100, 118, 116, 136, 133, 141, 150, 136, 166, 118], 4),
    ink.rule(
      [
        [110, 133, 102, 146],
        [124, 141, 120, 155],
        [142, 141, 146, 155],
        [156, 133, 164, 146],
      ],
      4,
    ),
    ink.stroke([98, 84, 133, 66, 168, 84], 2.6),
    ...n.body,
    ...n.arms,
    ink.flat(box(318, 226, 386, 244), 'white', 2.6),
    ink.flat(box(322, 210, 382, 226), 'tear', 2.6),
  ];
};

/** Two grown-ups, two cups on the bed table; one leans the head on a hand. */
export const parentsToo = (): TopicShape[] => {
  const a = figure({
    who: 'grown',
    x: 112,
    y: 104,
    r: 38,
    hem: 250,
    eyes: 'down',
    tilt: -8,
    left: [66, 150, -72],
    right: [150, 226, 20],
  });
  const b = figure({
    who: 'other',
    x: 290,
    y: 98,
    r: 38,
    hem: 250,
    eyes: 'left',
    left: [176, 162, 186],
    right: [314, 226, 150],
  });
  return [
    ...a.body,
    ...b.body,
    ...a.arms,
    ...b.arms,
    ink.flat(box(20, 240, 380, 254), 'plate', 2.8),
    ink.rule(
      [
        [52, 254, 52, 300],
        [348, 254, 348, 300],
      ],
      10,
    ),
    ink.rule(
      [
        [52, 254, 52, 300],
        [348, 254, 348, 300],
      ],
      5,
      'metal',
    ),
    ...mug(184, 208, 0.56),
    ...mug(244, 208, 0.56),
  ];
};

/** From the bed three ways go on, none of them wider: more days of pull, the operating room, a hard cast. */
export const whatNext = (): TopicShape[] => {
  const ways = [52, 150, 248];
  return [
    ...ways.map((y) =>
      ink.stroke([112, 150, 150, 150, 180, (150 + y) / 2, 200, y, 250, y], 16, 'band-shade'),
    ),
    ...ways.map((y) => bulb(306, y, 174, 94)),
    ...bedIcon(6, 106, 1),
    ...bedIcon(244, 22, 0.86),
    ...sun(282, 18, 6),
    moon(318, 20, 0.17),
    // the lamp of the operating room, and somebody with cap and mask
    ink.rule([[266, 106, 266, 120]], 4),
    { ...ink.flat([246, 132, 288, 132, 304, 186, 234, 186], 'band', 1.8), line: 'band' },
    ink.soft([242, 134, 250, 120, 284, 120, 292, 134], 'metal', 2.4, 0.6),
    ink.dots([255, 133, 267, 133, 279, 133], 7, 'white'),
    ...head('doctor', { x: 338, y: 150, r: 25 }),
    ink.soft([312, 144, 316, 122, 338, 112, 360, 122, 364, 144], 'wet', 2.4, 0.7),
    ink.flat([320, 160, 356, 160, 353, 174, 338, 180, 323, 174], 'sheet', 2.2),
    // a hard cast from the middle down over one leg, on a lying child
    ink.soft([226, 236, 228, 222, 256, 220, 258, 262, 228, 262], 'pillow', 2.4, 0.6),
    ink.soft([256, 228, 262, 220, 296, 220, 298, 268, 260, 266], 'gown', 2.4, 0.5),
    ...head('child', { x: 246, y: 242, r: 15, tilt: -90 }),
    ink.flat(
      [288, 218, 308, 218, 348, 222, 350, 240, 312, 242, 366, 250, 368, 270, 300, 272, 288, 270],
      'sheet',
      2.6,
    ),
    ink.strokes(
      [
        [298, 220, 300, 244, 298, 270],
        [330, 222, 332, 240],
        [340, 247, 338, 270],
      ],
      1.8,
      'soft',
    ),
    ink.soft([350, 223, 366, 222, 376, 220, 380, 230, 374, 238, 350, 239], 'skin', 2.2, 0.6),
    ink.soft([367, 252, 380, 250, 384, 260, 380, 270, 367, 269], 'skin', 2.2, 0.6),
  ];
};

/** A bed with its pull, no larger than a word. */
function bedIcon(x: number, y: number, k: number): Shape[] {
  const p = (flat: readonly number[]) => flat.map((v, i) => (i % 2 ? y : x) + v * k);
  return [
    ink.rule([p([6, 20, 2, 66]), p([96, 6, 96, 66])], 6 * k + 1),
    ink.flat(p([2, 50, 98, 38, 98, 50, 2, 62]), 'mattress', 2.4),
    ink.ring([x + 16 * k, y + 36 * k, 10 * k, 10 * k], 'skin', 2.4),
    ink.soft(p([8, 33, 10, 25, 18, 24, 24, 30, 16, 29]), 'hair', 2),
    ink.soft(p([26, 36, 40, 28, 66, 26, 66, 40, 28, 46]), 'blanket', 2.4, 0.5),
    ink.flat(p([62, 30, 84, 28, 84, 38, 62, 40]), 'band', 2.2),
    ink.soft(p([84, 28, 84, 14, 90, 14, 92, 36, 84, 38]), 'skin', 2.2, 0.6),
    ink.rule([p([92, 28, 106, 26, 108, 30, 108, 40])], 2),
    ink.flat(p([102, 40, 114, 40, 116, 56, 100, 56]), 'bag', 2.2),
  ];
}

/** The door is open, the way leads home; a grown-up pushes the chair, the leg rests on its board. */
export const goingHome = (): TopicShape[] => {
  const g = figure({
    who: 'grown',
    x: 84,
    y: 66,
    r: 27,
    hem: 206,
    feet: 284,
    facing: 1,
    right: [128, 158, 20],
  });
  return [
    ...room(256, ''),
    ...door(270, 40, 104, 256, 0.18),
    { d: straight([at(272, 190), at(372, 190), at(372, 254), at(272, 254)], true), fill: 'wet' },
    ink.soft([300, 255, 318, 222, 316, 196, 332, 196, 340, 222, 366, 255], 'floor', 2, 0.4),
    ...sun(294, 68, 10),
    ink.flat([302, 140, 330, 112, 358, 140], 'red', 2.4),
    ink.flat(box(308, 140, 352, 192), 'band', 2.4),
    ink.flat(box(322, 164, 336, 192), 'plate', 2),
    ...g.body,
    // the chair on wheels
    ink.rule([[120, 158, 140, 160, 146, 222, 204, 222]], 7),
    ink.rule([[200, 222, 258, 212]], 9),
    ink.soft([146, 190, 150, 150, 182, 148, 190, 196, 188, 220, 148, 220], 'gown', 2.6, 0.5),
    ...head('child', { x: 168, y: 122, r: 27, eyes: 'right', mouth: 'smile' }),
    ink.soft([158, 200, 196, 196, 244, 196, 250, 206, 244, 214, 196, 218, 160, 220], 'soft', 2.6, 0.6),
    ink.soft([240, 197, 244, 172, 254, 170, 258, 192, 256, 210, 242, 212], 'skin', 2.6, 0.7),
    { d: oval(at(166, 248), 38, 38), line: 'ink', weight: 8 },
    { d: oval(at(166, 248), 38, 38), line: 'metal', weight: 3 },
    ink.dots([166, 248], 10),
    ink.ring([222, 274, 13, 13], 'metal', 3),
    ink.rule([[214, 224, 222, 262]], 6),
    ...g.arms,
    ...toy(204, 182, 0.28),
  ];
};
