/** Topics of care: what staff do, where the family is, and what a child may need by day and by night. */
import { at, oval, smooth } from '../shapes.ts';
import { bedFromSide, whole } from './bed.ts';
import { nearLeg } from './leg.ts';
import { ink, small, type TopicShape } from './page.ts';
import { figure, handFrom, head, lying, profile } from './people.ts';
import { apple, arrow, box, curtain, door, glass, lamp, rail, room, straw, windowOf } from './things.ts';

/** A stair that darkens step by step, without a face; the child points at a step and a nurse brings a cup. */
export const soreness = (): TopicShape[] => {
  const c = lying({
    x: 96,
    y: 108,
    r: 40,
    bed: [6, 186],
    hem: 206,
    eyes: 'right',
    right: [196, 176, -22, 'point'],
  });
  const steps = [0, 1, 2, 3, 4];
  return [
    ...c.behind,
    ink.flat(box(200, 40, 392, 220), 'white', 2.6),
    ...steps.map((i) =>
      ink.flat(box(212 + i * 34, 186 - i * 32, 246 + i * 34, 208), i % 2 ? 'pad' : 'band-shade', 2.4),
    ),
    ink.rule(
      steps.flatMap((i) =>
        Array.from({ length: i }, (_, j) => {
          const x = 212 + i * 34 + (34 / (i + 1)) * (j + 1);
          return [x, 190 - i * 32, x, 204];
        }),
      ),
      2.2,
    ),
    ...c.arms,
    ...handFrom('staff', 'fist', [318, 268, 36, 184], [404, 284], -1),
    ink.flat([278, 240, 306, 240, 302, 278, 282, 278], 'white', 2.6),
    ink.flat([281, 258, 303, 258, 301, 276, 283, 276], 'red', 1.6),
  ];
};

/** The ward at night: a small lamp, a grown-up asleep on a chair, a nurse who looks in. */
export const firstNight = (): TopicShape[] => {
  const b = bedFromSide({ x: 42, y: 62, scale: 0.7, eyes: 'shut' });
  const nurse = figure({ who: 'staff', x: 346, y: 84, r: 15, hem: 160 });
  return [
    ...room(256, 'scarf'),
    ...windowOf(130, 22, 92, 76, true),
    ...door(316, 52, 60, 200, 0.26),
    ...nurse.all,
    ...lamp(26, 150, 0.52),
    ink.flat(box(2, 180, 52, 190), 'plate', 2.4),
    ink.flat(box(8, 190, 46, 256), 'frame', 2.4),
    ...b.bed,
    ...b.body,
    ...b.front,
  ];
};

/** The curtain is drawn, a sheet covers the child, a nurse brings pan and bottle. */
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
    ...curtain(0, 66, 22, 232, 3),
    ...curtain(338, 400, 22, 296, 3),
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
    ink.rule([[286, 176, 286, 268]], 10),
    ink.rule([[286, 176, 286, 268]], 5, 'metal'),
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
  ...head('child', { x: 74, y: 96, r: 36, tilt: -14, eyes: 'left' }),
  ...profile('grown', 26, 56, 26, { facing: 1, mouth: 'speaking', bow: 20 }),
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
  const b = bedFromSide({ y: 18, eyes: 'right' });
  const nurse = figure({ who: 'staff', x: 156, y: 52, r: 24, hem: 150 });
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
    ...handFrom('staff', 'rest', [roll.x + 2, roll.y - 34, 28, 96], [150, 112], 1),
  ];
};

/** Belly and what helps it: water, fruit; what is in it goes its slow way. */
export const poo = (): TopicShape[] => {
  const gut = [
    122, 196, 118, 158, 128, 148, 150, 152, 190, 152, 206, 158, 208, 178, 196, 186, 160, 178, 142, 186, 150,
    204, 186, 204, 198, 214, 186, 230, 166, 234,
  ];
  return [
    ink.flat(box(0, 30, 250, 300), 'sheet', 2.6),
    ink.soft([74, 40, 100, 22, 226, 22, 250, 40, 246, 100, 78, 100], 'pillow', 2.6, 0.6),
    ink.soft([140, 94, 106, 106, 92, 140, 92, 270, 236, 270, 236, 140, 222, 106, 188, 94], 'gown', 2.6, 0.5),
    ...head('child', { x: 164, y: 62, r: 36, eyes: 'down' }),
    ink.stroke(gut, 19),
    ink.stroke(gut, 14, 'nail'),
    ink.dots([128, 150, 152, 152, 172, 152], 9, 'brown'),
    ink.soft([-4, 254, 90, 244, 236, 244, 260, 254, 260, 304, -4, 304], 'blanket', 2.6, 0.4),
    ...arrow([204, 122, 222, 142, 220, 168], 4, 'mark', 8),
    ink.flat(box(262, 226, 398, 240), 'plate', 2.6),
    ...glass(296, 184, 0.74, 0.7),
    ...apple(358, 192, 0.5),
    ink.soft(
      [270, 100, 300, 128, 350, 128, 380, 100, 372, 96, 346, 112, 304, 112, 280, 94],
      'band',
      2.6,
      0.7,
    ),
    ink.flat(box(262, 128, 398, 140), 'plate', 2.6),
  ];
};

/** A row of cups through the day, and the bottle that shows what comes out. */
export const weeDrink = (): TopicShape[] => {
  const cups = [0, 1, 2, 3, 4, 5];
  return [
    ink.flat(box(0, 118, 400, 130), 'plate', 2.6),
    ...cups.flatMap((i) => glass(38 + i * 65, 82, 0.6, i < 3 ? 0 : 0.75)),
    ...head('child', { x: 104, y: 204, r: 44, mouth: 'blowing', eyes: 'right' }),
    ink.soft([24, 304, 34, 270, 66, 254, 104, 264, 142, 254, 174, 270, 184, 304], 'gown', 2.6, 0.5),
    ...straw(152, 238, 0.7),
    ...glass(168, 264, 0.7, 0.5),
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
    ink.ring([92, 52, 13, 13, 128, 30, 9, 9, 116, 70, 8, 8], 'tear', 2.2),
    ...c.arms,
    ...handFrom('grown', 'rest', [50, 214, 40, 20], [26, 150], -1),
    ...handFrom('staff', 'rest', [360, 232, 44, 184], [404, 262], 1),
    small(302, 208, 0.26, 12).flat(box(8, 38, 112, 84), 'band', 8),
    ink.dots([302, 208], 7, 'white'),
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
