/** People who come, play, and the child's own part in the day. */
import { nearHand } from '../play/arms.ts';
import { box } from '../play/brush.ts';
import { childAtTray } from '../play/child.ts';
import { story } from '../play/paper-things.ts';
import { softToy } from '../play/toy-things.ts';
import type { Shape } from '../shapes.ts';
import { ink, small } from '../topics/page.ts';
import { figure, head, headBehind } from '../topics/people.ts';
import { arcs, clock, curtain, hands, rail, sun, toes, toy, windowOf } from '../topics/things.ts';
import { ball, bubble, microphone, pencil, together } from './parts.ts';

/** Somebody comes with a box of things to play with. */
export const playVisit = (): Shape[] => {
  const f = figure({
    who: 'other',
    x: 60,
    y: 26,
    r: 18,
    hem: 124,
    left: [14, 106, -10],
    right: [106, 106, 190],
  });
  return [
    ...f.body,
    ink.flat(box(66, 54, 80, 90), 'band', 2.4),
    ...toy(52, 68, 0.4),
    ...ball(78, 76, 11),
    ink.flat([14, 84, 106, 84, 102, 117, 18, 117], 'plate'),
    ...f.arms,
  ];
};

/** Things to play with. */
export const play = (): Shape[] => [
  ...softToy(small(40, 46, 0.68)),
  ink.flat(box(70, 58, 96, 84), 'wet'),
  ink.flat(box(76, 32, 102, 58), 'band'),
  ...ball(34, 102, 15),
  ink.flat([64, 98, 72, 86, 96, 86, 102, 98, 114, 98, 114, 110, 64, 110], 'scarf', 2.6),
  ink.ring([76, 111, 6, 6, 102, 111, 6, 6], 'ink', 2),
];

/** A book, a pencil, a board over the lap. */
export const school = (): Shape[] => {
  const c = childAtTray(
    { x: 60, y: 30, r: 20, eyes: 'down', right: [86, 84, 150, 'fist'], left: [28, 92, 20] },
    9,
  );
  return [...c.behind, ...story(small(56, 92, 0.5)), ...c.arms, ...pencil(76, 80, 0.3, 30)];
};

/** Two from home come in: one waves, one has brought a bag. */
export const visitor = (): Shape[] => {
  const f = figure({ who: 'grown', x: 76, y: 40, r: 19, hem: 124, right: [106, 94, 80] });
  const s = figure({ who: 'sibling', x: 34, y: 70, r: 17, hem: 124, left: [12, 46, -100, 'spread'] });
  return [
    ...f.all,
    ink.flat(box(94, 98, 118, 118), 'plate', 2.8),
    ink.stroke([100, 98, 102, 88, 110, 88, 112, 98], 2.8),
    ...s.all,
  ];
};

/** The phone with a face from home. */
export const callHome = (): Shape[] => [
  ink.soft([30, 4, 86, 4, 90, 8, 90, 110, 86, 114, 30, 114, 26, 110, 26, 8], 'ink', 3, 0.4),
  ink.flat(box(33, 14, 83, 102), 'tear', 2),
  ...head('grown', { x: 58, y: 52, r: 19, mouth: 'speaking' }),
  ink.soft([34, 101, 36, 88, 50, 76, 58, 80, 66, 76, 80, 88, 82, 101], 'bag', 2.4, 0.6),
  ...nearHand(['child', 'rest', 104, 104, 38, 220, 1]),
  arcs(90, 30, [10, 18, 26], -40, 30, 3.6),
];

/** A film, and who looks at it. */
export const screen = (): Shape[] => [
  ink.flat(box(10, 6, 110, 74), 'ink', 4),
  ink.flat(box(16, 12, 104, 68), 'tear', 2),
  ...sun(86, 26, 6),
  ink.soft([14, 50, 40, 44, 70, 52, 104, 46, 104, 68, 16, 68], 'wet', 2, 0.7),
  ink.flat([44, 20, 44, 44, 26, 44], 'white', 2.2),
  ink.flat([49, 24, 64, 44, 49, 44], 'red', 2.2),
  ink.flat([22, 48, 68, 48, 60, 58, 30, 58], 'plate', 2.4),
  ink.soft([16, 119, 20, 100, 34, 92, 86, 92, 100, 100, 104, 119], 'pillow', 2.6, 0.6),
  ...headBehind('child', 60, 92, 21),
];

/** Two pictures, neither of them marked; a finger has not decided yet. */
export const choice = (): Shape[] => [
  ink.flats([box(5, 10, 56, 70), box(64, 10, 115, 70)], 'white'),
  ...ball(30, 40, 17),
  ...story(small(90, 40, 0.34)),
  ...nearHand(['child', 'point', 60, 112, 38, -90, 1]),
];

/** Sun, cloud, rain behind a window; the child tells of it. */
export const weatherReporter = (): Shape[] => [
  ...windowOf(34, 6, 80, 78),
  ...sun(54, 28, 7),
  ink.soft([66, 38, 70, 24, 84, 18, 98, 24, 104, 38], 'white', 2.4, 0.9),
  ink.rule(
    [
      [76, 56, 72, 70],
      [88, 56, 84, 70],
      [100, 56, 96, 70],
    ],
    3,
    'wet',
  ),
  ...microphone(34, 76, 0.5, 40),
  ...nearHand(['child', 'fist', 14, 108, 34, -50, 1]),
];

/** Toes are asked, too. */
export const toeReporter = (): Shape[] => [
  ...toes(34, 52, 0.62, -1, 2.6),
  ...toes(86, 52, 0.62, 1, 2.6),
  ink.soft([1.2, 80, 30, 70, 60, 76, 90, 70, 118.8, 80, 118.8, 119, 1.2, 119], 'blanket', 3, 0.6),
  arcs(40, 50, [20, 27], -130, -70, 3.2),
  arcs(80, 50, [20, 27], -110, -50, 3.2),
  ...microphone(60, 86, 0.44, 0),
  ...nearHand(['child', 'fist', 62, 118, 30, -96, 1]),
];

/** The child puts up a hand and asks from its list; a doctor bows to listen. */
export const questionKeeper = (): Shape[] => {
  const asks = figure({
    who: 'child',
    x: 36,
    y: 44,
    r: 20,
    hem: 124,
    mouth: 'speaking',
    eyes: 'right',
    left: [11, 28, -90, 'point'],
    right: [80, 100, 120],
  });
  return [
    ...figure({ who: 'doctor', x: 98, y: 46, r: 17, hem: 124, facing: -1, bow: 12 }).all,
    ...asks.body,
    ink.flat([34, 72, 84, 78, 80, 118, 28, 114], 'white'),
    ink.dots([41, 82, 40, 92, 39, 102], 5.4, 'mark'),
    ink.rule(
      [
        [50, 83, 73, 86],
        [49, 93, 72, 96],
        [48, 103, 60, 104.5],
      ],
      3,
    ),
    ...asks.arms,
    ...bubble('say', [82, 14, 50, 22], [56, 48]),
    ink.dots([70, 14, 82, 14, 94, 14], 6, 'mark'),
  ];
};

/** Who has the clock tells what comes next. */
export const timeKeeper = (): Shape[] => {
  const c = figure({
    who: 'child',
    x: 60,
    y: 26,
    r: 19,
    hem: 124,
    left: [24, 84, -20],
    right: [96, 84, 200],
  });
  return [...c.body, ...clock(60, 82, 34), hands(60, 82, 34, 300, 60), ...c.arms];
};

/** A page about today. */
export const dayWriter = (): Shape[] => [
  ink.flat([4, 22, 60, 32, 116, 22, 116, 96, 60, 106, 4, 96], 'wet'),
  ink.flats(
    [
      [10, 18, 60, 28, 60, 98, 10, 88],
      [110, 18, 60, 28, 60, 98, 110, 88],
    ],
    'white',
  ),
  ...sun(34, 48, 8),
  ink.stroke([16, 78, 28, 70, 40, 80, 54, 76], 3, 'wet'),
  ink.rule(
    [
      [68, 42, 102, 36],
      [68, 54, 102, 48],
      [68, 66, 88, 62],
    ],
    3,
    'soft',
  ),
  ...nearHand(['child', 'fist', 110, 108, 32, 215, 1]),
  ...pencil(86, 80, 0.36, 44),
];

/** One, two, three: aloud, in no language. */
const counted = (x: number, y: number): Shape[] => [ink.dots([x - 18, y, x, y, x + 18, y], 9, 'mark')];

/** The child's fingers and voice; the grown-up listens. */
export const childCounts = (): Shape[] => [
  ...together({ x: 46, y: 72, r: 19, mouth: 'speaking', left: [15, 66, -96, 'spread'] }, { x: 102, y: 62 }),
  ...bubble('say', [56, 20, 68, 32], [48, 50]),
  ...counted(56, 20),
];
/** The grown-up's fingers and voice. */
export const grownUpCounts = (): Shape[] => [
  ...together(
    { x: 30, y: 80, r: 17, eyes: 'right' },
    { x: 100, y: 62, mouth: 'speaking', hand: [66, 64, -96, 'spread'] },
  ),
  ...bubble('say', [44, 20, 68, 32], [82, 50]),
  ...counted(44, 20),
];

/** The child's own two hands as it sees them: one squeezes, the other lies still. */
const squeezing = (x: number, other: number, thumb: 1 | -1): Shape[] => [
  ink.soft([1.2, 66, 30, 58, 60, 62, 90, 58, 118.8, 66, 118.8, 119, 1.2, 119], 'blanket', 3, 0.6),
  ...nearHand(['child', 'rest', other, 92, 40, -90, -thumb as 1 | -1]),
  ink.ring([x, 46, 23, 21], 'band'),
  ...nearHand(['child', 'fist', x, 92, 54, -90, thumb]),
  ink.rule(
    [
      [x - 26, 30, x - 33, 24],
      [x, 18, x, 9],
      [x + 26, 30, x + 33, 24],
    ],
    4,
    'mark',
  ),
];
/** The left one squeezes. */
export const leftHand = (): Shape[] => squeezing(34, 92, 1);
/** The right one squeezes. */
export const rightHand = (): Shape[] => squeezing(86, 28, -1);

/** Someone to talk to, and nobody else. */
export const talkAlone = (): Shape[] => [
  ...rail(0, 120, 8),
  ...curtain(4, 116, 10, 76, 5),
  ...together(
    { x: 32, y: 72, r: 18, mouth: 'speaking', eyes: 'right' },
    { x: 98, y: 62, nurse: true, bow: 8 },
    [],
    14,
  ),
  ...bubble('say', [46, 30, 56, 32], [38, 56]),
  ink.dots([32, 30, 46, 30, 60, 30], 7, 'mark'),
];
