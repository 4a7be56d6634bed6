/** Topics of care: what staff do, where the family is, and what a child may need by day and by night. */
import { box } from '../play/brush.ts';
import { at, oval, smooth } from '../shapes.ts';
import { bedFromSide, whole } from './bed.ts';
import { nearLeg } from './leg.ts';
import { ink, small, type TopicShape } from './page.ts';
import { figure, handFrom, head, lying, profile } from './people.ts';
import { apple, arrow, curtain, door, glass, lamp, moon, rail, room, straw } from './things.ts';

/** A stair of plain steps, no faces on it: the child points out how sore it is, and a nurse brings a small cup. */
export const soreness = (): TopicShape[] => {
  const c = lying({
    x: 92,
    y: 96,
    r: 38,
    bed: [6, 178],
    hem: 188,
    eyes: 'right',
    tilt: 4,
    right: [186, 158, -14, 'point'],
  });
  const step = (i: number) => [212 + i * 34, 190 - i * 28, 246 + i * 34, 190 - i * 28] as const;
  const steps = [step(0), step(1), step(2), step(3), step(4)];
  return [
    ...c.behind,
    // where it is sore, under the blanket
    ink.rule(
      [
        [58, 250, 38, 238],
        [66, 236, 56, 216],
        [84, 230, 84, 208],
        [102, 236, 112, 216],
        [110, 250, 130, 238],
      ],
      4,
      'mark',
    ),
    ink.flat(box(196, 36, 396, 222), 'white', 2.6),
    ink.flat([...steps.flat(), 382, 208, 212, 208], 'pad', 2.8),
    ink.rule(steps, 6, 'plate'),
    // the higher the step, the more it hurts: the same rays as over the leg, one more each time
    ink.rule(
      steps.flatMap(([x, y], i) =>
        Array.from({ length: i }, (_, j) => {
          const a = ((j - (i - 1) / 2) * 38 - 90) * (Math.PI / 180);
          const [c2, s2] = [Math.cos(a), Math.sin(a)];
          return [x + 17 + 9 * c2, y - 3 + 9 * s2, x + 17 + 20 * c2, y - 3 + 20 * s2];
        }),
      ),
      3,
      'mark',
    ),
    ...c.arms,
    ...handFrom('staff', 'fist', [324, 266, 36, 184], [404, 284], -1),
    ink.flat([284, 238, 312, 238, 308, 276, 288, 276], 'white', 2.6),
    ink.flat([287, 256, 309, 256, 307, 274, 289, 274], 'red', 1.6),
  ];
};

/** The ward at night: a small lamp, a grown-up asleep on a chair, a nurse who looks in. */
export const firstNight = (): TopicShape[] => {
  const b = bedFromSide({ x: 62, y: 68, scale: 0.68, eyes: 'shut', inRoom: true });
  const nurse = figure({ who: 'staff', x: 346, y: 82, r: 15, hem: 170 });
  const parent = figure({ who: 'kin', x: 36, y: 182, r: 19, hem: 256, eyes: 'shut', tilt: 16 });
  return [
    ...room(264, 'scarf'),
    ink.flat(box(166, 20, 246, 92), 'frame', 2.6),
    ink.flat(box(173, 27, 239, 85), 'ink', 2),
    moon(212, 54, 0.36),
    ...door(318, 50, 58, 220, 0.24),
    ...nurse.all,
    ...lamp(58, 92, 0.56),
    ink.flat(box(24, 124, 94, 132), 'plate', 2.4),
    ...b.bed,
    ...b.body,
    ...b.front,
    ink.flat(box(4, 176, 68, 290), 'frame', 2.6),
    ...parent.body,
    ink.soft([6, 300, 8, 246, 36, 238, 66, 246, 70, 300], 'soft', 2.6, 0.4),
  ];
};

/** The curtain is closed all round, a sheet covers the child, a nurse brings pan and bottle. */
export const toiletInBed = (): TopicShape[] => {
  const c = lying({ x: 150, y: 116, r: 34, bed: [62, 240], hem: 190, eyes: 'right', tucked: true });
  const nurse = figure({
    who: 'staff',
    x: 284,
    y: 84,
    r: 28,
    hem: 300,
    left: [240, 198, 150],
    right: [312, 204, 130],
  });
  return [
    ...rail(0, 400, 20),
    // one cloth from edge to edge, behind bed and nurse
    ...curtain(-8, 408, 22, 292, 9),
    ...c.behind,
    ...nurse.body,
    // the pan with its flat lip, and the bottle with its slanting neck
    ink.soft(
      [212, 206, 236, 198, 318, 198, 330, 208, 322, 236, 300, 246, 250, 246, 226, 236],
      'sheet',
      2.8,
      0.5,
    ),
    ink.ring([276, 210, 34, 9], 'pad', 2.4),
    ...nurse.arms,
    ink.soft([24, 250, 72, 246, 78, 256, 76, 290, 20, 292, 16, 262], 'tear', 2.6, 0.4),
    ink.flat([62, 250, 92, 226, 102, 238, 76, 262], 'tear', 2.6),
  ];
};

/** Half sitting, as far as the nurse set the head of the bed, with a tray, a spoon and a beaker. */
export const eatingLying = (): TopicShape[] => {
  const b = bedFromSide({
    x: -14,
    y: -4,
    scale: 1.04,
    change: { headRaise: 0.85 },
    eyes: 'right',
    tilt: 26,
    near: [176, 158, -36],
  });
  return [
    ...whole(b),
    // the table stands beside the bed and reaches over it
    ink.rule([[286, 176, 286, 302]], 10),
    ink.rule([[286, 176, 286, 302]], 5, 'metal'),
    ink.flat(box(160, 168, 300, 178), 'plate', 2.6),
    ink.ring([226, 164, 30, 6], 'white', 2.6),
    ...apple(216, 150, 0.22),
    ink.soft([228, 160, 232, 146, 246, 146, 250, 160], 'band', 2.4, 0.6),
    ...straw(276, 128, 0.42),
    ...glass(274, 144, 0.44),
  ];
};

/** Skin day: one of the staff holds the foot, one washes; the family is at the head. */
export const washBandageDay = (): TopicShape[] => [
  ink.flat(box(0, 208, 400, 222), 'sheet', 2.6),
  ink.flat(box(0, 222, 400, 299), 'mattress', 2.6),
  ink.soft([-6, 40, 60, 30, 128, 44, 134, 110, 110, 140, -6, 146], 'pillow', 2.6, 0.6),
  ...head('child', { x: 84, y: 100, r: 34, tilt: -14, eyes: 'left' }),
  ...profile('grown', 24, 50, 26, { facing: 1, mouth: 'speaking', bow: 24 }),
  ink.soft([-4, 96, 14, 82, 36, 90, 44, 130, 40, 208, -4, 208], 'bag', 2.6, 0.6),
  ink.soft([-4, 150, 40, 128, 100, 130, 140, 152, 152, 212, -4, 212], 'blanket', 2.6, 0.6),
  ...nearLeg({ from: 130, to: 318, y: 164, half: 34, foot: 1.5 }),
  ...handFrom('staff', 'rest', [352, 178, 44, 196], [404, 200], 1),
  ...handFrom('staff', 'rest', [252, 112, 46, 112], [292, 10], 1),
  small(232, 158, 0.46).soft(
    [12, 34, 44, 22, 78, 30, 108, 20, 110, 68, 104, 100, 70, 92, 42, 104, 14, 96, 18, 64],
    'white',
    4,
    0.6,
  ),
  ink.ring([196, 152, 6, 6, 270, 184, 7, 7, 208, 186, 5, 5], 'tear', 2),
  ink.soft([40, 236, 200, 236, 188, 276, 166, 288, 74, 288, 52, 276], 'metal', 2.6, 0.4),
  ink.ring([120, 238, 78, 10], 'tear', 2.4),
  ink.ring([290, 260, 28, 28], 'band', 2.8),
  ink.stroke([290, 270, 302, 262, 294, 246, 276, 250, 274, 270, 292, 280, 308, 270], 2),
];

/** New sheets come in from the head end as a roll; the child lifts a little. */
export const sheets = (): TopicShape[] => {
  const b = bedFromSide({ y: 8, eyes: 'right' });
  const nurse = figure({ who: 'staff', x: 156, y: 42, r: 24, hem: 140 });
  const roll = b.p(118, 10, 0);
  return [
    ...nurse.body,
    ...b.bed,
    ...b.body,
    ...b.front,
    {
      d: smooth(
        [
          b.p(20, 2, 2),
          b.p(60, 3, 0),
          at(roll.x, roll.y - 4),
          at(roll.x, roll.y + 14),
          b.p(60, -12, 0),
          b.p(20, -12, 0),
        ],
        true,
        0.2,
      ),
      fill: 'white',
      line: 'ink',
    },
    { d: oval(roll, 17, 17), fill: 'white', line: 'ink' },
    ink.stroke(
      [
        roll.x,
        roll.y + 8,
        roll.x + 9,
        roll.y,
        roll.x,
        roll.y - 9,
        roll.x - 10,
        roll.y,
        roll.x - 2,
        roll.y + 13,
        roll.x + 13,
        roll.y + 4,
      ],
      2,
    ),
    ...arrow([roll.x + 26, roll.y + 36, roll.x + 60, roll.y + 31, roll.x + 92, roll.y + 27]),
    ...handFrom('staff', 'rest', [roll.x + 2, roll.y - 34, 28, 96], [150, 102], 1),
  ];
};

/** What is in the belly goes its slow way; drinking and fruit help it along. */
export const poo = (): TopicShape[] => {
  const gut = [
    ...[122, 204, 118, 160, 130, 148, 160, 152, 190, 148, 208, 158, 208, 178, 190, 186],
    ...[160, 178, 144, 190, 156, 206, 188, 204, 200, 216, 186, 232, 164, 232],
  ];
  return [
    ink.flat(box(-4, 60, 262, 304), 'sheet', 2.2),
    ink.soft([74, 40, 100, 22, 226, 22, 250, 40, 246, 100, 78, 100], 'pillow', 2.6, 0.6),
    ink.soft([140, 94, 106, 106, 92, 140, 92, 270, 236, 270, 236, 140, 222, 106, 188, 94], 'gown', 2.6, 0.5),
    ...head('child', { x: 164, y: 62, r: 36, eyes: 'down' }),
    ink.stroke(gut, 20),
    ink.stroke(gut, 15, 'nail'),
    ink.dots([122, 172, 140, 149, 162, 152], 9, 'brown'),
    ...arrow([186, 149, 203, 153, 208, 168], 3.4, 'mark', 7),
    ...arrow([194, 206, 199, 218, 184, 231], 3.4, 'mark', 7),
    ink.soft([-4, 254, 90, 246, 236, 246, 262, 254, 262, 304, -4, 304], 'blanket', 2.6, 0.4),
    ink.flat(box(280, 232, 400, 246), 'plate', 2.6),
    ...glass(314, 186, 0.78, 0.7),
    ...apple(372, 202, 0.46),
    ink.flat(box(280, 112, 400, 126), 'plate', 2.6),
    ink.soft([294, 84, 386, 84, 376, 106, 358, 112, 322, 112, 304, 106], 'white', 2.6, 0.4),
    ...apple(320, 70, 0.3),
    ink.soft([346, 84, 342, 66, 352, 52, 362, 52, 374, 66, 370, 84], 'band', 2.6, 0.8),
    ink.strokes([[357, 52, 360, 42]], 3),
    ink.soft([294, 84, 386, 84, 376, 106, 358, 112, 322, 112, 304, 106], 'white', 2.6, 0.4),
  ];
};

/** A row of cups through the day, and the bottle that shows what comes out. */
export const weeDrink = (): TopicShape[] => {
  const cups = [0, 1, 2, 3, 4, 5];
  return [
    ink.flat(box(0, 118, 400, 130), 'plate', 2.6),
    ...cups.flatMap((i) => glass(38 + i * 65, 82, 0.6, i < 3 ? 0 : 0.75)),
    ...head('child', { x: 110, y: 200, r: 44, mouth: 'blowing', eyes: 'right', tilt: 6 }),
    ink.soft([24, 304, 34, 270, 66, 254, 104, 264, 142, 254, 174, 270, 184, 304], 'gown', 2.6, 0.5),
    ink.rule([[113, 229, 140, 228, 160, 292]], 9),
    ink.rule([[113, 229, 140, 228, 160, 292]], 4, 'white'),
    ...glass(162, 262, 0.74, 0.5),
    ...arrow([216, 232, 250, 232], 5, 'mark', 11),
    ink.soft([280, 220, 350, 214, 358, 228, 354, 284, 272, 288, 268, 232], 'tear', 2.8, 0.4),
    ink.flat([336, 218, 368, 186, 384, 200, 356, 240], 'tear', 2.8),
    ink.soft([274, 252, 355, 250, 352, 281, 274, 285], 'band', 2, 0.3),
    ink.rule(
      [
        [290, 262, 304, 262],
        [290, 246, 304, 246],
        [290, 278, 304, 278],
      ],
      2.2,
    ),
  ];
};

/** A hard moment: somebody holds and counts with the child, who blows; a plaster lies ready on the hand. */
export const painOfCare = (): TopicShape[] => {
  const c = lying({
    x: 152,
    y: 122,
    r: 40,
    bed: [58, 300],
    hem: 216,
    mouth: 'blowing',
    eyes: 'left',
    tilt: -8,
    left: [74, 208, 120],
    right: [282, 206, 10],
  });
  return [
    ...c.behind,
    ...figure({ who: 'grown', x: 40, y: 62, r: 32, hem: 304, facing: 1, bow: 12 }).body,
    ink.ring([112, 142, 8, 8, 98, 112, 12, 12, 122, 84, 10, 10, 100, 66, 7, 7], 'tear', 2.2),
    ...c.arms,
    ...handFrom('grown', 'rest', [50, 214, 40, 20], [26, 150], -1),
    ...handFrom('staff', 'rest', [360, 232, 44, 184], [404, 262], 1),
    ink.soft([288, 194, 308, 198, 306, 220, 286, 216], 'band', 2.2, 0.5),
    ink.dots([297, 207], 8, 'white'),
  ];
};

/** A picture is taken over the bed; the weight stays where staff put it, and a picture of the bone is shown. */
export const xRayTrip = (): TopicShape[] => {
  const b = bedFromSide({ y: 26, eyes: 'shut' });
  const bone = (x: number, y: number, turned: number) =>
    small(x, y, 0.5, turned).soft(
      [44, 8, 60, 16, 76, 8, 82, 22, 70, 34, 68, 92, 60, 100, 52, 92, 50, 34, 38, 22],
      'pad',
      4,
      0.8,
    );
  const aim = b.p(216, 30, 40);
  return [
    ink.flat(box(12, 14, 104, 116), 'ink', 2.6),
    bone(50, 44, -4),
    bone(62, 84, 176),
    ...b.bed,
    ...b.body,
    ink.rule([[400, 12, 200, 12]], 12),
    ink.rule([[400, 12, 200, 12]], 6, 'metal'),
    {
      d: smooth([at(188, 72), at(206, 72), at(aim.x + 34, aim.y), at(aim.x - 34, aim.y)], true, 0),
      line: 'mark',
      weight: 2.6,
      dash: '7 6',
    },
    ink.soft([168, 18, 228, 18, 230, 52, 216, 72, 180, 72, 166, 52], 'metal', 2.8, 0.3),
    ink.ring([198, 44, 12, 12], 'pad', 2.4),
    ...b.front,
  ];
};
