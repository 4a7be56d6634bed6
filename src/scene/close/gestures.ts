/** Hands of the child above the leg: one finger that points to a place, and one held back from scratching. */
import { at, between, INK, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { points } from '../parts/points.ts';
import { strip } from './strokes.ts';

interface Gesture {
  outline: readonly number[];
  lines: readonly (readonly number[])[];
}

/** In hand lengths, the wrist at 0, fingers toward positive x; back of the hand at negative y. */
const POINTING: Gesture = {
  outline: [
    0, -0.24, 0.24, -0.33, 0.48, -0.34, 0.64, -0.29, 0.9, -0.27, 1.14, -0.25, 1.22, -0.17, 1.14, -0.09, 0.9,
    -0.09, 0.7, -0.08, 0.75, 0.02, 0.72, 0.11, 0.71, 0.2, 0.62, 0.27, 0.5, 0.36, 0.36, 0.36, 0.18, 0.32, 0,
    0.24,
  ],
  lines: [
    [0.7, -0.08, 0.56, -0.07, 0.48, -0.03],
    [0.72, 0.1, 0.6, 0.09, 0.52, 0.1],
    [0.64, 0.25, 0.56, 0.21, 0.5, 0.21],
    [0.2, 0.1, 0.36, -0.02, 0.5, -0.04],
  ],
};
const HELD_BACK: Gesture = {
  outline: [
    0, -0.22, 0.32, -0.31, 0.64, -0.26, 0.88, -0.08, 0.99, 0.16, 0.98, 0.36, 0.88, 0.38, 0.82, 0.24, 0.75,
    0.1, 0.79, 0.3, 0.77, 0.48, 0.67, 0.49, 0.62, 0.32, 0.57, 0.16, 0.59, 0.36, 0.56, 0.53, 0.46, 0.53, 0.42,
    0.36, 0.38, 0.18, 0.33, 0.36, 0.26, 0.47, 0.17, 0.43, 0.16, 0.28, 0, 0.22,
  ],
  lines: [
    [0.66, -0.14, 0.74, -0.06, 0.78, 0.04],
    [0.5, -0.12, 0.56, -0.04, 0.58, 0.06],
    [0.36, -0.08, 0.4, 0, 0.4, 0.08],
  ],
};

function drawGesture(
  { outline, lines }: Gesture,
  wrist: Point,
  length: number,
  degrees: number,
  elbow: Point,
): Shape[] {
  const place = (flat: readonly number[]) => points(flat, wrist, length).map((p) => turn(p, wrist, degrees));
  const way = turn(at(1, 0), at(0, 0), degrees);
  const inside = at(wrist.x + way.x * 2, wrist.y + way.y * 2);
  const cuff = at(wrist.x - way.x * 16, wrist.y - way.y * 16);
  const arm = strip(cuff, inside, length * 0.45);
  const [far, near, nearer, farther] = strip(elbow, cuff, length * 0.66) as [Point, Point, Point, Point];
  const sleeve = straight([fromEdge(near, far), near, nearer, fromEdge(nearer, farther)]);
  return [
    { d: smooth(place(outline), false, 0.9), fill: 'skin', line: 'ink', weight: INK },
    { d: straight(arm, true), fill: 'skin' },
    { d: straight([arm[0]!, arm[1]!]) + straight([arm[3]!, arm[2]!]), line: 'ink' },
    { d: lines.map((line) => smooth(place(line))).join(''), line: 'ink', weight: 1.5 },
    // the arm comes in over the upper edge of the page, so the sleeve has no end there
    { d: sleeve, fill: 'gown', line: 'ink' },
  ];
}

/** Where the line from `inner` to `outer` crosses the upper edge of the page. */
const fromEdge = (inner: Point, outer: Point): Point =>
  inner.y <= 0 ? at(inner.x, 0) : between(inner, outer, Math.min(1, inner.y / (inner.y - outer.y)));

const REACH = 240;

function drawHandOver(gesture: Gesture, wrist: Point, length: number, degrees: number): Shape[] {
  const way = turn(at(1, 0), at(0, 0), degrees);
  return drawGesture(gesture, wrist, length, degrees, at(wrist.x - way.x * REACH, wrist.y - way.y * REACH));
}

/** Points from the upper left to a place, without touching it. */
export function drawPointing(place: Point): Shape[] {
  const length = 70;
  const degrees = 50;
  const reach = turn(at(1.34 * length, -0.17 * length), at(0, 0), degrees);
  return drawHandOver(POINTING, at(place.x - reach.x, place.y - reach.y), length, degrees);
}

/** Bent fingers that scratch to and fro in the air; the upper arm comes up from behind the leg. */
export function drawScratching(shoulder: Point, elbow: Point, wrist: Point): Shape[] {
  const length = 74;
  const { outline, lines } = HELD_BACK;
  const place = (flat: readonly number[]) => points(flat, wrist, length).map((p) => turn(p, wrist, 24));
  const arm = strip(elbow, wrist, length * 0.42);
  const [near, far] = [strip(shoulder, elbow, length * 0.66), strip(elbow, wrist, length * 0.6)];
  const cuff = [between(far[0]!, far[1]!, 0.46), between(far[3]!, far[2]!, 0.46)] as const;
  return [
    // forearm and hand are one skin, open where the sleeve lies over it
    { d: smooth([arm[3]!, ...place(outline), arm[0]!], false, 0.9), fill: 'skin', line: 'ink' },
    { d: lines.map((line) => smooth(place(line))).join(''), line: 'ink', weight: 1.5 },
    {
      d: smooth([near[0]!, near[1]!, cuff[0], cuff[1], near[2]!, near[3]!], true, 0.5),
      fill: 'gown',
      line: 'ink',
    },
  ];
}
