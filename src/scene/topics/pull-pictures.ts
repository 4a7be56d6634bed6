/** Topics that leg and pull tell themselves. The head lies at the left: the leg near us is the right one. */
import { at, oval, type Shape } from '../shapes.ts';
import { mirrored } from '../parts/points.ts';
import { callButton } from '../things/handset.ts';
import { bedFromSide, whole } from './bed.ts';
import { bareFoot, nearBandage, nearLeg, plateRight, pullRight } from './leg.ts';
import type { Side } from '../spec.ts';
import { ink, moved, small, type SetUpPart, type TopicShape } from './page.ts';
import { figure, handFrom, head } from './people.ts';
import { arcs, arrow, box, clock, door, hands, handset, room, toes, weight } from './things.ts';

/** A thigh with its bone and muscles; `rest` 0 is pulled together, 1 lies in line. */
function thigh(y: number, rest: 0 | 1): Shape[] {
  const knee = rest ? 232 : 204;
  const ankle = knee + 78;
  const bone = (flat: readonly number[]) => ink.soft(flat, 'white', 2.6, 0.7);
  const [a, b] = rest ? [138, 146] : [140, 116];
  const [up, low] = rest ? [0, 0] : [-9, 9];
  const wave = (top: number) =>
    rest
      ? [16, top, 70, top - 4, 130, top - 5, 190, top - 3, knee - 8, top + 4]
      : Array.from({ length: 13 }, (_, i) => [16 + i * 15, top + (i % 2 ? 7 : -7)]).flat();
  return [
    ink.soft(
      [
        -4,
        y - 46,
        knee * 0.5,
        y - 42,
        knee,
        y - 25,
        knee + 24,
        y - 21,
        ankle + 4,
        y - 12,
        ankle + 4,
        y + 12,
        knee + 24,
        y + 24,
        knee,
        y + 25,
        knee * 0.5,
        y + 42,
        -4,
        y + 48,
      ],
      'skin',
      2.6,
      0.7,
    ),
    ...bareFoot(knee, ankle, y, 1.3),
    bone([
      10,
      y - 11 + up,
      26,
      y - 9 + up,
      a - 8,
      y - 8 + up,
      a,
      y - 2 + up,
      a - 6,
      y + 4 + up,
      a + 2,
      y + 9 + up,
      26,
      y + 9 + up,
      10,
      y + 11 + up,
    ]),
    bone([
      b,
      y - 8 + low,
      b + 6,
      y - 2 + low,
      b,
      y + 4 + low,
      b + 8,
      y + 9 + low,
      knee - 14,
      y + 8 + low * 0.5,
      knee,
      y + 14,
      knee,
      y - 13,
      knee - 14,
      y - 8 + low * 0.6,
    ]),
    { ...ink.stroke(wave(y - 28), rest ? 6 : 7, 'red') },
    { ...ink.stroke(wave(y + 30), rest ? 6 : 7, 'red') },
  ];
}

/** Tight muscles draw the ends of the bone past each other; the gentle pull lets both rest in line. */
export const whyPull = (): TopicShape[] => [
  ink.flat(box(0, 264, 330, 274), 'sheet', 2.2),
  ink.flat(box(0, 274, 330, 290), 'mattress', 2.2),
  ink.flat(box(0, 122, 330, 129), 'sheet', 2.2),
  ...thigh(72, 0),
  ...arrow([52, 14, 92, 14], 4.4),
  ...arrow([196, 14, 156, 14], 4.4),
  ...thigh(212, 1),
  ...nearBandage({ from: 256, to: 310, y: 212, half: 22, band: [0.1, 0.8] }),
  ...pullRight(310, 212, 1.25, 374, 234),
];

/** Where a finger meets a part, and how far round it. */
const reach = (name: SetUpPart, x: number, y: number, r = 24): TopicShape => ({
  ...ink.flat(box(x - r, y - r, x + r, y + r), 'none'),
  part: name,
  reach: true,
});

/** The bed with its pull; each part answers a touch. */
export const mySetUp = (): TopicShape[] => {
  const b = bedFromSide({ y: 4 });
  return [
    ...whole(b),
    ...handset(84, 190, 0.26, 78).map((s): TopicShape => ({ ...s, part: 'call-button' })),
    reach('bandage', 222, 126),
    reach('heel-pad', 244, 160),
    reach('foot-plate', 283, 110),
    reach('cord', 322, 108, 18),
    reach('wheel', 362, 116),
    reach('load', 367, 220, 28),
    reach('foot-end', 330, 190, 28),
    reach('call-button', 84, 190),
  ];
};

/** Somebody from above: shoulders, hair, and two arms to where the hands are. */
function fromAbove(
  who: 'staff' | 'grown',
  x: number,
  y: number,
  tall: boolean,
  to: readonly (readonly [number, number])[],
): Shape[] {
  const cloth = who === 'staff' ? 'wet' : 'bag';
  const skin = who === 'staff' ? 'hand' : 'skin';
  const [rx, ry] = tall ? [17, 38] : [38, 17];
  const shoulder = (i: number) => (tall ? [x, y + (i ? 24 : -24)] : [x + (i ? 24 : -24), y]);
  const lines = to.map((t, i) => [...shoulder(i), ...t]);
  return [
    ink.rule(lines, 15),
    ink.rule(lines, 10, skin),
    ...to.map(([hx, hy]) => ink.ring([hx, hy, 8, 7], skin, 2.4)),
    ink.rule(
      lines.map(([a, b, c, d]) => [a!, b!, (a! + c!) / 2, (b! + d!) / 2]),
      18,
    ),
    ink.rule(
      lines.map(([a, b, c, d]) => [a!, b!, (a! + c!) / 2, (b! + d!) / 2]),
      13,
      cloth,
    ),
    ink.ring([x, y, rx, ry], cloth, 2.6),
    ink.ring([x, y, 17, 18], 'hair', 2.6),
    ...(who === 'staff'
      ? [ink.ring([x + (tall ? 12 : 0), y + (tall ? 0 : y > 150 ? 12 : -12), 7, 7], 'hair', 2.2)]
      : []),
  ];
}

/** The bed from above before the set goes on: the family's place is at the head, three staff are at the leg. */
export const beforeItGoesOn = (): TopicShape[] => [
  ink.flat(box(36, 96, 352, 208), 'frame', 2.6),
  ink.flat(box(44, 102, 344, 202), 'sheet', 2.2),
  ink.soft([56, 112, 120, 112, 124, 152, 120, 192, 56, 192, 52, 152], 'pillow', 2.6, 0.5),
  // arms and trunk, then the legs: one bare, one under the blanket
  ink.soft(
    [116, 132, 136, 122, 190, 124, 212, 128, 212, 176, 190, 180, 136, 182, 116, 172],
    'gown',
    2.6,
    0.6,
  ),
  ink.soft([206, 156, 250, 158, 300, 162, 306, 172, 300, 180, 250, 180, 206, 178], 'skin', 2.6, 0.7),
  ink.soft([298, 160, 318, 158, 324, 168, 318, 182, 300, 182], 'skin', 2.6, 0.8),
  ink.soft([196, 112, 250, 116, 330, 112, 332, 152, 250, 154, 200, 158, 190, 136], 'blanket', 2.6, 0.5),
  ink.strokes([[204, 118, 200, 136, 206, 154]], 1.8),
  ...head('child', { x: 92, y: 152, r: 27, tilt: -90 }),
  ink.rule([[140, 126, 150, 98, 136, 84]], 14),
  ink.rule([[140, 126, 150, 98, 136, 84]], 9.4, 'skin'),
  ink.rule([[138, 130, 146, 112]], 18),
  ink.rule([[138, 130, 146, 112]], 13, 'gown'),
  ...fromAbove('grown', 84, 58, false, [
    [74, 118],
    [130, 82],
  ]),
  ...fromAbove('staff', 376, 168, true, [
    [324, 158],
    [324, 182],
  ]),
  ...fromAbove('staff', 268, 246, false, [
    [244, 186],
    [292, 188],
  ]),
  ...fromAbove('staff', 282, 54, false, [[262, 120]]),
  ink.ring([326, 84, 15, 15], 'band', 2.6),
  ink.stroke([326, 88, 332, 84, 326, 78, 319, 84, 326, 92], 1.8),
];

/** The first hour on a clock: looks at the toes stand close together at first. */
export const firstHour = (side: Side): TopicShape[] => {
  const foot = side === 'right' ? -1 : 1;
  const nurse = figure({
    who: 'staff',
    x: 262,
    y: 62,
    r: 32,
    hem: 230,
    facing: 1,
    bow: 22,
    right: [306, 168, 60],
  });
  return [
    ...clock(104, 150, 92),
    hands(104, 150, 92, 0, 40),
    ...[30, 90, 200, 340].flatMap((degrees) => {
      const a = ((degrees - 90) * Math.PI) / 180;
      return toes(104 + Math.cos(a) * 58, 150 + Math.sin(a) * 58, 0.32, foot, 2);
    }),
    ...nurse.body,
    ...toes(330, 178, 1, foot, 2.8),
    ...nurse.arms,
    ink.soft([206, 236, 260, 222, 300, 220, 360, 222, 404, 234, 404, 304, 206, 304], 'blanket', 2.6, 0.5),
    ink.strokes([[214, 250, 280, 236, 340, 236, 398, 248]], 1.8),
  ];
};

/** The six looks in their order: toes, moving, bandage, straight, cord and weight, the child. */
export const sixLooks = (side: Side): TopicShape[] => {
  const card = (x: number, y: number) => box(x - 60, y - 68, x + 60, y + 68);
  const [a, b, c] = [70, 200, 330] as const;
  // the cards keep their order; what is on them is of the one leg or the other
  const own = (middle: number, shapes: Shape[]) => (side === 'right' ? shapes : mirrored(shapes, 2 * middle));
  return [
    ink.flats(
      [a, b, c].flatMap((x) => [card(x, 78), card(x, 222)]),
      'white',
      2.6,
    ),
    ...toes(a - 28, 74, 0.5, -1, 2.4),
    ...toes(a + 28, 74, 0.5, 1, 2.4),
    ink.flat(box(12, 96, 128, 128), 'blanket', 2.2),
    ...own(b, [...toes(b, 84, 0.72, -1, 2.6), arcs(214, 74, [28, 37], -130, -50, 3.4)]),
    ink.flat(box(144, 115, 256, 134), 'blanket', 2.2),
    ...own(c, [
      ink.soft([274, 60, 382, 68, 386, 84, 382, 98, 274, 114], 'skin', 2.6, 0.2),
      ...nearBandage({ from: 282, to: 370, y: 84, half: 25, band: [0.16, 0.86] }),
    ]),
    // straight: nose, kneecap and foot on one line, seen from above
    ...own(a, [
      ink.soft([50, 184, 90, 184, 94, 224, 46, 224], 'gown', 2.6, 0.5),
      ink.flats([box(48, 222, 68, 270), box(72, 222, 92, 270)], 'skin', 2.4),
      ink.flat(box(47, 240, 69, 262), 'band', 2.4),
      ink.ring([58, 274, 10, 8, 82, 274, 10, 8], 'skin', 2.4),
      ...head('child', { x: 70, y: 178, r: 18 }),
      { ...ink.rule([[58, 206, 58, 286]], 3.4, 'mark'), dash: '7 6' },
    ]),
    // cord over its wheel, weight free of the floor
    ...own(b, [
      ink.ring([198, 190, 15, 15], 'metal', 2.6),
      ink.dots([198, 190], 6),
      ink.rule([[142, 175, 198, 175]], 2.6, 'cord'),
      ink.stroke([198, 175, 209, 179, 213, 190, 213, 208], 2.6, 'cord'),
      ...weight(213, 206, 0.95),
    ]),
    ink.rule([[150, 284, 252, 284]], 3),
    ...head('child', { x: c, y: 214, r: 38 }),
    ink.soft([278, 289, 284, 266, 308, 254, c, 262, 352, 254, 376, 266, 382, 289], 'gown', 2.6, 0.5),
  ];
};

/** The button is pressed, and somebody comes. */
export const calling = (): TopicShape[] => {
  const nurse = figure({
    who: 'staff',
    x: 312,
    y: 78,
    r: 24,
    hem: 190,
    feet: 254,
    left: [282, 160, 100],
    right: [340, 160, 80],
    mouth: 'calm',
  });
  return [
    ...room(244),
    ...door(258, 32, 104, 248, 0.3),
    ...nurse.all,
    ...moved(callButton(), 1.9, -6, 60),
    arcs(100, 124, [50, 66, 82], -66, -8, 5),
  ];
};

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

/** A grown-up whose hands rest in the lap; round the pull a line says: staff only. */
export const yourHandsOff = (): TopicShape[] => {
  const b = bedFromSide({ x: -116, y: -34, scale: 1.06 });
  const g = figure({ who: 'grown', x: 78, y: 110, r: 34, hem: 290 });
  return [
    ...whole(b),
    { d: oval(at(300, 150), 94, 140), line: 'mark', weight: 4, dash: '12 10' },
    ...g.body,
    ink.soft([20, 304, 26, 250, 60, 234, 100, 234, 132, 250, 140, 304], 'soft', 2.6, 0.5),
    ...handFrom('grown', 'rest', [58, 252, 40, 12], [36, 196], -1),
    ...handFrom('grown', 'rest', [100, 250, 40, 166], [122, 196], 1),
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
  ...moved(callButton(), 0.95, 10, 186),
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
