/** Grown-ups beside the bed: a head from the side, to lean, speak and call. */
import { oval, smooth, turn, type Point, type Shape } from '../shapes.ts';
import { points } from './points.ts';

export interface ProfileLook {
  /** 1 looks toward larger x. */
  facing: 1 | -1;
  mouth: 'shut' | 'speaking' | 'calling';
  hair: 'bun' | 'short';
  /** How far the head is bowed, in degrees. */
  bow?: number;
  /** Token of the skin; a grown-up of the child's family has the child's. */
  skin?: 'skin' | 'hand';
}

const FACE = {
  shut: [0.82, 0.35, 0.75, 0.42, 0.81, 0.49, 0.74, 0.56],
  speaking: [0.83, 0.34, 0.62, 0.42, 0.77, 0.53, 0.72, 0.58],
  calling: [0.8, 0.28, 0.84, 0.34, 0.76, 0.39, 0.54, 0.44, 0.68, 0.58, 0.76, 0.63, 0.7, 0.7],
} as const;

/** Shapes of a head from the side; `radius` is half its height. */
export function drawProfile(center: Point, radius: number, look: ProfileLook): Shape[] {
  const bow = (look.bow ?? 0) * look.facing;
  const put = (flat: readonly number[]) =>
    points(flat, center, look.facing * radius, radius).map((p) => turn(p, center, bow));
  const drop = look.mouth === 'calling' ? 0.1 : 0;
  const weight = Math.max(1.6, Math.min(3, radius * 0.06));
  const skull = [
    -0.3,
    1.02,
    -0.36,
    0.66,
    -0.8,
    0.3,
    -0.86,
    -0.2,
    -0.62,
    -0.76,
    -0.06,
    -1,
    0.46,
    -0.86,
    0.7,
    -0.46,
    0.72,
    -0.2,
    0.72,
    -0.06,
    0.83,
    0.08,
    0.92,
    0.17,
    0.88,
    0.24,
    0.76,
    0.26,
    ...FACE[look.mouth],
    0.74,
    0.8 + drop,
    0.56,
    0.96 + drop,
    0.26,
    0.86 + drop,
    0.2,
    1.04,
  ];
  const hair =
    look.hair === 'bun'
      ? [
          -0.04, 0.3, -0.3, 0.5, -0.72, 0.42, -0.96, 0.1, -0.98, -0.4, -0.68, -0.9, -0.06, -1.14, 0.5, -0.98,
          0.76, -0.54, 0.5, -0.62, 0.14, -0.5, -0.04, -0.16,
        ]
      : [
          -0.12, 0.1, -0.34, 0.36, -0.62, 0.62, -0.9, 0.2, -0.96, -0.36, -0.68, -0.9, -0.06, -1.14, 0.5, -1.0,
          0.8, -0.6, 0.56, -0.56, 0.1, -0.52, -0.02, -0.16,
        ];
  return [
    ...(look.hair === 'bun'
      ? [{ d: oval(put([-1.02, -0.3])[0]!, radius * 0.32, radius * 0.36), fill: 'hair', line: 'ink' }]
      : []),
    { d: smooth(put(skull), false, 0.8), fill: look.skin ?? 'hand', line: 'ink' },
    { d: smooth(put(hair), true, 0.9), fill: 'hair', line: 'ink' },
    {
      d: smooth(put([-0.02, -0.04, 0.12, -0.06, 0.14, 0.14, 0.02, 0.26, -0.06, 0.12]), true),
      fill: look.skin ?? 'hand',
      line: 'ink',
      weight: Math.min(2.4, weight),
    },
    { d: oval(put([0.48, -0.1])[0]!, radius * 0.07, radius * 0.1), fill: 'ink' },
    { d: smooth(put([0.34, -0.32, 0.5, -0.38, 0.64, -0.32])), line: 'ink', weight },
  ];
}
