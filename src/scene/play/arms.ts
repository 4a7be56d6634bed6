/** Arms and hands of the play pictures: small ones at the bed, large ones close by. */
import { at, distance, plus, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { drawHand, type HandPose } from '../parts/hand.ts';
import { points } from '../parts/points.ts';
import { SQUARE } from '../things/pen.ts';
import { dots } from './brush.ts';

/** Wrist, direction of the fingers in degrees, and what the hand does; a resting hand where left out. */
export type Reach = readonly [x: number, y: number, points: number, pose?: HandPose | 'none'];

/** A hand so small that its fingers would run together. */
const MITT = [
  0, -0.27, 0.5, -0.35, 0.97, -0.22, 1.04, 0.06, 0.78, 0.29, 0.64, 0.32, 0.62, 0.5, 0.42, 0.48, 0, 0.27,
];

function smallHand(
  [x, y, angle, pose = 'rest']: Reach,
  length: number,
  thumb: 1 | -1,
  fill: string,
): Shape[] {
  if (pose === 'none') return [];
  const wrist = at(x, y);
  if (pose !== 'rest')
    return drawHand(wrist, length * 1.15, angle, pose, thumb, fill)
      .slice(0, 1)
      .map((s) => ({ ...s, weight: 2 }));
  const outline = points(MITT, at(0, 0), length, thumb * length).map((p) =>
    turn(plus(wrist, p), wrist, angle),
  );
  return [{ d: smooth(outline, false, 0.9), fill, line: 'ink', weight: 2 }];
}

/** How much farther than the bare arm its sleeve reaches on each side. */
const CUFF = 2.5;

/** The line of an arm from 0 at the shoulder to 1 at the wrist, bent at the elbow. */
function lineOf(shoulder: Point, reach: Reach, side: 1 | -1, width: number): (t: number) => Point {
  const wrist = at(reach[0], reach[1]);
  const long = Math.hypot(wrist.x - shoulder.x, wrist.y - shoulder.y);
  const elbow = at(
    (shoulder.x + wrist.x) / 2 + side * Math.min(9, width * 0.9),
    (shoulder.y + wrist.y) / 2 + Math.max(2, 12 - long * 0.2),
  );
  return (t) =>
    at(
      (1 - t) ** 2 * shoulder.x + 2 * t * (1 - t) * elbow.x + t * t * wrist.x,
      (1 - t) ** 2 * shoulder.y + 2 * t * (1 - t) * elbow.y + t * t * wrist.y,
    );
}

/** Whether all that is bare of an arm lies under the round end of its sleeve, as on an arm that rests. */
export const isSleeved = (shoulder: Point, reach: Reach, side: 1 | -1, width: number): boolean =>
  distance(lineOf(shoulder, reach, side, width)(0.5), at(reach[0], reach[1])) <= CUFF;

/** An arm as two lines, the wide one in ink: bare to the wrist, and over it the sleeve down to the elbow. */
export function arm(
  shoulder: Point,
  reach: Reach,
  side: 1 | -1,
  width: number,
  colours: { cloth: string; skin: string },
): Shape[] {
  const on = lineOf(shoulder, reach, side, width);
  const wrist = at(reach[0], reach[1]);
  const bare = smooth([on(0.3), on(0.65), wrist]);
  const sleeve = smooth([shoulder, on(0.25), on(0.5)]);
  return [
    { d: bare, line: 'ink', weight: width },
    { d: bare, line: colours.skin, weight: width - 4 },
    ...smallHand(reach, width * 1.45, thumbOf(reach, side), colours.skin),
    { d: sleeve, line: 'ink', weight: width + 2 * CUFF },
    { d: sleeve, line: colours.cloth, weight: width + 1 },
  ];
}

/** The thumb lies on the side of the middle of the body. */
const thumbOf = ([, , angle]: Reach, side: 1 | -1): 1 | -1 => {
  const up = Math.sin((angle * Math.PI) / 180) < -0.3;
  return (up ? -side : side) as 1 | -1;
};

/** Whose hand is seen close, which pose, the wrist, its length, where its fingers point. */
export type NearHand = readonly [
  who: 'child' | 'grown' | 'nurse' | 'bare',
  pose: HandPose,
  x: number,
  y: number,
  length: number,
  points: number,
  thumb?: 1 | -1,
];

/** Nails tell the back of a hand from its palm: hand lengths from the wrist, along each finger's end. */
const NAILS: Record<HandPose, readonly number[]> = {
  rest: [0.9, -0.22, 0.99, -0.07, 1, 0.07, 0.89, 0.17],
  spread: [0.58, -0.53, 0.95, -0.35, 1.02, 0.03, 0.85, 0.35, 0.32, 0.65],
  point: [1.03, -0.16],
  fist: [],
};

const SLEEVE = { child: 'gown', grown: 'bag', nurse: 'wet', bare: 'gown' } as const;

/** Hands close by, each with its arm and sleeve coming in from the edge of the picture. */
export function nearHand([who, pose, x, y, length, angle, thumb = 1]: NearHand): Shape[] {
  const wrist = at(x, y);
  const fill = who === 'nurse' ? 'hand' : 'skin';
  const hand = drawHand(wrist, length, angle, pose, thumb, fill).map((s, i): Shape => ({
    ...s,
    weight: i === 0 ? 2.6 : 1.5,
  }));
  const nails = points(NAILS[pose], at(0, 0), length, thumb * length).map((p) =>
    turn(plus(wrist, p), wrist, angle),
  );
  if (nails.length > 0) hand.push(dots(nails, Math.max(2.6, length * 0.08), 'nail'));
  if (who === 'bare') return hand;
  const a = (angle * Math.PI) / 180;
  const along = at(Math.cos(a), Math.sin(a));
  const away = [
    along.x > 0 ? x / along.x : (x - SQUARE) / along.x,
    along.y > 0 ? y / along.y : (y - SQUARE) / along.y,
  ].filter((t) => Number.isFinite(t));
  const edge = Math.min(...away) - 1;
  const quad = (from: number, to: number, half: number, spread = half) =>
    straight(
      [
        [from, -spread],
        [to, -half],
        [to, half],
        [from, spread],
      ].map(([s, t]) => turn(at(x - s!, y + t!), wrist, angle)),
      true,
    );
  const cuff = Math.min(length * 0.22, edge * 0.6);
  const end = edge + length * 0.3;
  return [
    { d: quad(end, -length * 0.14, length * 0.25), fill, line: 'ink', weight: 2.6 },
    ...hand,
    { d: quad(end, cuff, length * 0.36, length * 0.42), fill: SLEEVE[who], line: 'ink', weight: 2.6 },
  ];
}
