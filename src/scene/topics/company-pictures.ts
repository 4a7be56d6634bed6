/** Topics of the long days: company, feelings, rest, and the way home. */
import { at, straight, type Shape } from '../shapes.ts';
import { bedFromSide, whole } from './bed.ts';
import { ink, type TopicShape } from './page.ts';
import { figure, handFrom, lying } from './people.ts';
import { box } from '../play/brush.ts';
import { arcs, moon, sun, toy, windowOf } from './things.ts';

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
