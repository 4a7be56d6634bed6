/** Hands of the child and of helpers, from the back, at any size and turned any way. */
import { at, plus, smooth, turn, type Point, type Shape } from '../shapes.ts';
import { points } from './points.ts';

/** Numbers in hand lengths: the wrist at 0, the fingertips near x = 1, the thumb at positive y. */
const OUTLINES = {
  rest: [
    0, -0.27, 0.3, -0.34, 0.58, -0.34, 0.86, -0.3, 0.97, -0.2, 1.05, -0.04, 1.03, 0.1, 0.92, 0.22, 0.72, 0.28,
    0.58, 0.3, 0.66, 0.42, 0.6, 0.52, 0.46, 0.5, 0.26, 0.36, 0, 0.27,
  ],
  spread: [
    0, -0.24, 0.26, -0.34, 0.52, -0.6, 0.63, -0.58, 0.62, -0.46, 0.5, -0.26, 0.58, -0.26, 0.92, -0.44, 1.0,
    -0.36, 0.93, -0.24, 0.62, -0.08, 0.64, -0.05, 1.04, -0.06, 1.08, 0.04, 1.0, 0.1, 0.63, 0.11, 0.62, 0.15,
    0.9, 0.28, 0.92, 0.39, 0.82, 0.41, 0.52, 0.28, 0.42, 0.36, 0.44, 0.62, 0.36, 0.72, 0.25, 0.66, 0.16, 0.4,
    0, 0.24,
  ],
  fist: [
    0, -0.24, 0.2, -0.34, 0.46, -0.36, 0.66, -0.28, 0.7, -0.08, 0.72, 0.1, 0.64, 0.3, 0.42, 0.38, 0.2, 0.34,
    0, 0.24,
  ],
  // one finger out, the others curled
  point: [
    0, -0.24, 0.22, -0.34, 0.5, -0.32, 0.66, -0.3, 1.02, -0.26, 1.1, -0.16, 1.02, -0.06, 0.66, -0.04, 0.68,
    0.1, 0.62, 0.28, 0.42, 0.36, 0.2, 0.34, 0, 0.24,
  ],
} as const;

const LINES = {
  rest: [
    [0.66, -0.17, 1.0, -0.14],
    [0.66, -0.02, 1.04, 0.02],
    [0.64, 0.13, 0.96, 0.16],
  ],
  spread: [],
  point: [
    [0.46, 0.06, 0.66, 0.04],
    [0.44, 0.2, 0.62, 0.18],
    [0.2, 0.16, 0.36, 0.02, 0.56, -0.04],
  ],
  fist: [
    [0.46, -0.2, 0.67, -0.17],
    [0.46, -0.03, 0.7, 0.0],
    [0.44, 0.13, 0.66, 0.16],
    [0.2, 0.2, 0.34, 0.08, 0.52, 0.06],
  ],
} as const;

export type HandPose = keyof typeof OUTLINES;

/**
 * Shapes of a hand whose wrist is at `wrist`. `thumb` −1 puts the thumb on the other side. The wrist end stays
 * open, so that it joins the arm behind it.
 */
export function drawHand(
  wrist: Point,
  length: number,
  angleDegrees: number,
  pose: HandPose,
  thumb: 1 | -1,
  fill: string,
): Shape[] {
  const place = (flat: readonly number[]) =>
    points(flat, at(0, 0), length, thumb * length).map((p) => turn(plus(wrist, p), wrist, angleDegrees));
  const outline = smooth(place(OUTLINES[pose]), false, 0.9);
  const lines = LINES[pose].map((line) => smooth(place(line))).join('');
  return [{ d: outline, fill, line: 'ink' }, ...(lines ? [{ d: lines, line: 'ink', weight: 1.4 }] : [])];
}
