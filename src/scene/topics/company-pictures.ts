/** Topics of the long days: company, feelings, rest, and the way home. */
import { at, oval, straight, type Shape } from '../shapes.ts';
import { bedFromSide, whole } from './bed.ts';
import { ink, type TopicShape } from './page.ts';
import { figure, handFrom, head, lying } from './people.ts';
import {
  arcs,
  box,
  bubble,
  bulb,
  curtain,
  door,
  moon,
  mug,
  rail,
  room,
  sun,
  toy,
  windowOf,
} from './things.ts';

/** Arms wide, the free foot, the breath: what may move is lit; the pulled leg keeps still. */
export const moveTheRest = (): TopicShape[] => {
  const b = bedFromSide({ y: 22, mouth: 'smile', near: [132, 222, 70], far: [66, 70, -110] });
  const free = b.p(290, 78, 70);
  return [
    ...whole(b),
    arcs(66, 66, [30, 42], -150, -30, 4.4),
    arcs(132, 226, [26, 38], 20, 140, 4.4),
    arcs(free.x, free.y + 16, [26, 37], -120, -30, 4.4),
  ];
};

/** From light to dark over the bed; the phone lies face down, the toy is in the arm. */
export const sleep = (): TopicShape[] => {
  const c = lying({
    x: 200,
    y: 160,
    r: 42,
    bed: [86, 314],
    hem: 246,
    eyes: 'shut',
    tilt: -12,
    left: [176, 262, 40],
  });
  return [
    { d: straight([at(200, 0), at(400, 0), at(400, 300), at(200, 300)], true), fill: 'scarf' },
    { ...ink.stroke([30, 110, 80, 44, 200, 20, 320, 44, 370, 110], 3, 'mark'), dash: '8 8' },
    ...sun(56, 72, 20),
    moon(342, 74, 0.46),
    ...c.behind,
    ...toy(262, 232, 0.42),
    ...c.arms,
    ink.flat(box(322, 236, 398, 246), 'plate', 2.4),
    ink.flat([336, 226, 384, 226, 386, 236, 334, 236], 'ink', 2.4),
  ];
};

/** A long day: a shelf of things one may choose from, and a child who looks and thinks. */
export const boredom = (): TopicShape[] => {
  const c = lying({
    x: 112,
    y: 168,
    r: 40,
    bed: [14, 210],
    hem: 254,
    eyes: 'right',
    right: [152, 214, -118, 'fist'],
  });
  const s = 88;
  return [
    ...windowOf(24, 16, 104, 84),
    ...sun(52, 40, 9),
    ink.flat(box(176, s, 396, s + 10), 'plate', 2.6),
    ink.flat(box(236, 206, 396, 216), 'plate', 2.6),
    ink.flats([box(190, 40, 206, s), box(208, 32, 222, s), box(224, 46, 240, s)], 'scarf', 2.4),
    ink.flats([box(256, 62, 282, s), box(284, 62, 310, s), box(270, 36, 296, 62)], 'band', 2.6),
    ink.ring([352, 64, 24, 24], 'red', 2.6),
    ink.strokes(
      [
        [330, 56, 352, 64, 374, 56],
        [352, 40, 346, 64, 352, 88],
      ],
      2,
    ),
    ink.flat([250, 160, 300, 176, 350, 160, 336, 206, 264, 206], 'white', 2.6),
    ink.flat([276, 168, 300, 126, 324, 168, 300, 176], 'white', 2.6),
    ink.flat(box(364, 150, 372, 206), 'red', 2.4),
    ink.flat(box(376, 158, 384, 206), 'wet', 2.4),
    ink.flat([358, 180, 392, 180, 388, 206, 362, 206], 'band', 2.6),
    ...c.behind,
    ...c.arms,
  ];
};

/** Four ways a body shows it: curled up, fists, hiding, loose. */
export const sadAngry = (): TopicShape[] => [
  ink.flats(
    [box(6, 6, 196, 146), box(204, 6, 394, 146), box(6, 154, 196, 294), box(204, 154, 394, 294)],
    'white',
    2.6,
  ),
  // curled up, seen from behind
  ink.soft([12, 108, 14, 52, 60, 40, 110, 50, 114, 108], 'pillow', 2.6, 0.6),
  ink.ring([66, 78, 27, 27], 'hair', 2.6),
  ink.soft([8, 145, 30, 112, 70, 92, 124, 66, 170, 84, 188, 120, 194, 145], 'blanket', 2.6, 0.7),
  ink.strokes(
    [
      [72, 118, 112, 104, 140, 122, 138, 142],
      [100, 128, 122, 134, 118, 144],
    ],
    2,
  ),
  // fists
  ...handFrom('child', 'fist', [270, 92, 42, -70], [222, 142], -1),
  ...handFrom('child', 'fist', [328, 92, 42, -110], [376, 142], 1),
  ink.rule(
    [
      [286, 36, 282, 20],
      [314, 36, 318, 20],
      [300, 30, 300, 12],
      [256, 50, 244, 40],
      [344, 50, 356, 40],
    ],
    4,
    'mark',
  ),
  // hiding: hair and fingers over the hem
  ink.soft([34, 248, 36, 186, 60, 170, 142, 170, 166, 186, 168, 248], 'pillow', 2.6, 0.6),
  ink.ring([101, 216, 33, 34], 'hair', 2.6),
  ink.soft([8, 293, 20, 236, 64, 220, 101, 224, 140, 220, 184, 236, 194, 293], 'blanket', 2.6, 0.5),
  ink.ring(
    [62, 224, 6, 9, 74, 222, 6, 9, 86, 223, 6, 9, 116, 223, 6, 9, 128, 222, 6, 9, 140, 224, 6, 9],
    'skin',
    2.2,
  ),
  // loose: the arms lie open
  ...loose(),
];

function loose(): Shape[] {
  const c = figure({
    who: 'child',
    x: 299,
    y: 206,
    r: 24,
    hem: 293,
    eyes: 'shut',
    left: [234, 258, 150],
    right: [364, 258, 30],
  });
  return [
    ink.soft([246, 230, 248, 178, 268, 166, 330, 166, 350, 178, 352, 230], 'pillow', 2.6, 0.6),
    ...c.body,
    ink.soft([208, 293, 222, 276, 299, 272, 378, 276, 392, 293], 'blanket', 2.6, 0.4),
    ...c.arms,
  ];
}

/** Where small ones stand: by the pillow, on their two marks, with something to give. */
export const brothersSisters = (): TopicShape[] => {
  const b = bedFromSide({ x: 6, y: -12, scale: 0.8, eyes: 'down', tilt: 16 });
  const f = figure({ who: 'sibling', x: 92, y: 190, r: 27, hem: 268, behind: true, right: [116, 176, -80] });
  return [
    ...whole(b),
    ink.ring([70, 284, 15, 9, 114, 284, 15, 9], 'scarf', 2.4),
    ...f.body,
    ink.rule(
      [
        [78, 262, 76, 280],
        [106, 262, 108, 280],
      ],
      17,
    ),
    ink.rule(
      [
        [78, 262, 76, 280],
        [106, 262, 108, 280],
      ],
      11.6,
      'bag',
    ),
    ink.ring([74, 284, 10, 6, 110, 284, 10, 6], 'ink', 2),
    ...f.arms,
    ink.flat([104, 128, 152, 122, 158, 166, 110, 172], 'white', 2.6),
    ...sun(122, 142, 6),
    ink.strokes([[114, 164, 126, 152, 138, 160, 152, 156]], 2.4, 'wet'),
  ];
};

/** Two visitors on two chairs at the head; one waves, a bag stands on the floor. */
export const visitors = (): TopicShape[] => {
  const c = lying({
    x: 92,
    y: 104,
    r: 38,
    bed: [6, 178],
    hem: 196,
    eyes: 'right',
    mouth: 'smile',
    right: [172, 132, -70, 'spread'],
  });
  const a = figure({
    who: 'other',
    x: 240,
    y: 84,
    r: 27,
    hem: 214,
    left: [204, 96, -110, 'spread'],
    right: [262, 196, 120],
    mouth: 'smile',
    eyes: 'left',
  });
  const b = figure({
    who: 'grown',
    x: 338,
    y: 80,
    r: 27,
    hem: 214,
    left: [318, 196, 60],
    right: [356, 196, 120],
    eyes: 'left',
  });
  const seat = (x: number) => [
    ink.flat(box(x - 44, 128, x + 44, 214), 'frame', 2.6),
    ink.rule(
      [
        [x - 38, 214, x - 42, 292],
        [x + 38, 214, x + 42, 292],
      ],
      9,
    ),
    ink.rule(
      [
        [x - 38, 214, x - 42, 292],
        [x + 38, 214, x + 42, 292],
      ],
      4,
      'frame',
    ),
  ];
  const lap = (x: number, fill: string) => [
    ink.soft([x - 36, 222, x - 34, 196, x, 190, x + 34, 196, x + 36, 222, x, 228], fill, 2.6, 0.5),
    ink.flats([box(x - 30, 218, x - 8, 280), box(x + 8, 218, x + 30, 280)], fill, 2.6),
    ink.ring([x - 19, 284, 15, 8, x + 19, 284, 15, 8], 'ink', 2),
  ];
  return [
    ...c.behind,
    ...c.arms,
    ...seat(240),
    ...seat(338),
    ...a.body,
    ...b.body,
    ...lap(240, 'soft'),
    ...lap(338, 'scarf'),
    ...a.arms,
    ...b.arms,
    ink.flat(box(274, 252, 306, 292), 'band', 2.6),
    ink.stroke([280, 252, 282, 238, 298, 238, 300, 252], 3),
  ];
};

/** A board over the lap, a book, a pencil; somebody from school beside it. */
export const school = (): TopicShape[] => {
  const t = figure({
    who: 'other',
    x: 322,
    y: 78,
    r: 32,
    hem: 304,
    left: [238, 204, 168, 'point'],
    eyes: 'left',
    mouth: 'speaking',
  });
  const c = figure({
    who: 'child',
    x: 146,
    y: 84,
    r: 36,
    hem: 230,
    eyes: 'down',
    left: [84, 208, 30],
    right: [204, 218, 150, 'fist'],
  });
  return [
    ink.soft([58, 196, 60, 52, 84, 30, 208, 30, 232, 52, 234, 196], 'pillow', 2.6, 0.5),
    ...t.body,
    ...c.body,
    ink.flat([-2, 304, -2, 188, 290, 188, 290, 304], 'blanket', 2.6),
    ink.flat([46, 188, 252, 188, 276, 264, 22, 264], 'plate', 2.8),
    ink.flat([22, 264, 276, 264, 276, 276, 22, 276], 'frame', 2.6),
    ink.flats(
      [
        [146, 202, 88, 198, 74, 246, 146, 252],
        [146, 202, 204, 198, 220, 246, 146, 252],
      ],
      'white',
      2.6,
    ),
    ink.rule(
      [
        [98, 210, 134, 212],
        [94, 221, 132, 223],
        [92, 232, 118, 234],
        [158, 212, 184, 210],
        [160, 223, 178, 222],
      ],
      2.2,
      'soft',
    ),
    ...c.arms,
    ink.rule([[186, 236, 218, 186]], 9),
    ink.rule([[190, 230, 217, 188]], 4.4, 'band'),
    ...t.arms,
  ];
};

/** Three of the staff at the end of the bed, one with papers; the child has words of its own. */
export const doctorsRound = (): TopicShape[] => {
  const c = lying({ x: 78, y: 154, r: 36, bed: [2, 154], hem: 236, eyes: 'right', mouth: 'speaking' });
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
      mouth: 'speaking',
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
    // a sign: an eye that is shut
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
