/** Topics that leg and pull tell themselves. The head lies at the left: the leg near us is the right one. */
import { type Shape } from '../shapes.ts';
import { mirrored } from '../parts/points.ts';
import { callButton } from '../things/handset.ts';
import { bedFromSide, whole } from './bed.ts';
import { bareFoot, nearBandage, pullRight } from './leg.ts';
import type { Side } from '../spec.ts';
import { ink, moved, type SetUpPart, type TopicShape } from './page.ts';
import { figure, head } from './people.ts';
import { box } from '../play/brush.ts';
import { arcs, arrow, clock, door, hands, handset, room, toes, weight } from './things.ts';

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
    ...[y - 28, y + 30].flatMap((top) => [ink.stroke(wave(top), 9), ink.stroke(wave(top), 4.6, 'red')]),
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

/** The call button in a hand of the family. */
export const pressed = (scale: number, x: number, y: number): TopicShape[] =>
  moved(callButton(), scale, x, y).map((s) => (s.fill === 'hand' ? { ...s, fill: 'skin' } : s));

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
    ...pressed(1.9, -6, 60),
    arcs(100, 124, [50, 66, 82], -66, -8, 5),
  ];
};
