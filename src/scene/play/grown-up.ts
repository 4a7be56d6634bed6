/** The grown-up beside the bed, or a nurse, from the side and turned to the child. */
import { at, smooth, turn, type Shape } from '../shapes.ts';
import { points } from '../parts/points.ts';
import { arm, type Reach } from './arms.ts';
import { brush, dots } from './brush.ts';

export interface GrownLook {
  /** Middle of the head; at the right edge, level with the child, where left out. */
  x?: number;
  y?: number;
  /** Half the height of the head. */
  r?: number;
  /** The child from the side, on a pillow. */
  young?: true;
  mouth?: 'shut' | 'speaking' | 'wide' | 'blowing';
  /** How far the head is bowed over the bed, in degrees. */
  bow?: number;
  eyes?: 'open' | 'shut';
  hand?: Reach;
  /** A nurse is known by the plain tunic and the knot of hair. */
  nurse?: true;
  /** The face is not seen: a cloth is in front of it. */
  hidden?: true;
  /** The child leans on the grown-up and is drawn over them. */
  held?: true;
}

const LIPS = {
  shut: [-0.8, 0.36, -0.74, 0.43, -0.8, 0.5],
  speaking: [-0.83, 0.34, -0.6, 0.43, -0.77, 0.55],
  wide: [-0.82, 0.26, -0.4, 0.42, -0.72, 0.68],
  blowing: [-1.0, 0.36, -0.88, 0.43, -0.98, 0.52],
} as const;

/** The grown-up at the right side of the bed, from the side, turned to the child. */
export function grownUp(g: GrownLook): { behind: Shape[]; arm: Shape[] } {
  const { x = 99, y = 42, bow = 0, r = 18, mouth: lips = 'shut' } = g;
  const p = brush();
  const center = at(x, y);
  const put = (flat: readonly number[]) => points(flat, center, r).map((q) => turn(q, center, -bow));
  const cloth = g.nurse ? 'wet' : g.young ? 'gown' : 'bag';
  const skin = g.nurse ? 'hand' : 'skin';
  const drop = lips === 'wide' ? 0.12 : 0;
  const face = [
    0.34,
    1.05,
    0.4,
    0.5,
    0.4,
    -0.7,
    -0.4,
    -0.85,
    -0.7,
    -0.42,
    -0.7,
    -0.08,
    -0.92,
    0.18,
    -0.76,
    0.27,
    ...LIPS[lips],
    -0.72,
    0.82 + drop,
    -0.5,
    0.96 + drop,
    -0.24,
    0.86 + drop,
    -0.2,
    1.1,
  ];
  const hair = g.young
    ? [
        0.02, 0.06, 0.3, 0.42, 0.58, 0.34, 0.9, -0.2, 0.68, -0.9, 0, -1.14, -0.6, -0.94, -0.8, -0.52, -0.3,
        -0.44, -0.06, -0.2,
      ]
    : g.nurse
      ? [
          0.06, 0.3, 0.4, 0.5, 0.8, 0.36, 0.98, -0.2, 0.66, -0.92, 0, -1.14, -0.6, -0.92, -0.76, -0.5, -0.14,
          -0.5, 0.04, -0.16,
        ]
      : [
          0.1, 0.12, 0.34, 0.4, 0.64, 0.66, 0.94, 0, 0.68, -0.9, 0, -1.14, -0.6, -0.94, -0.8, -0.56, -0.1,
          -0.52, 0.02, -0.16,
        ];
  const eye = put([-0.46, -0.1]);
  const reach = g.hand;
  const shoulder = at(Math.min(x + 3, 108), y + 40);
  return {
    behind: [
      ...(g.young
        ? [
            p.soft(
              [
                x - r * 1.3,
                119,
                x - r * 0.6,
                y + r * 1.3,
                x + r * 0.2,
                y - r * 1.2,
                117,
                y - r * 1.4,
                119,
                119,
              ],
              'pillow',
              2.4,
              0.4,
            ),
          ]
        : []),
      p.soft(
        [
          x - r * 0.5,
          119,
          x - r * 0.67,
          y + r * 2.55,
          x - r * 0.44,
          y + r * 1.44,
          x + r * 0.22,
          y + r * 1.1,
          Math.min(x + r, 118.8),
          y + r * 1.44,
          118.8,
          y + r * 2.2,
          118.8,
          119,
        ],
        cloth,
        2.6,
        0.5,
      ),
      ...(g.nurse ? [p.ring([x + 20, y - 6, 5.4, 6.2], 'hair', 2.2)] : []),
      { d: smooth(put(face), false, 0.8), fill: skin, line: 'ink', weight: 2.2 },
      { d: smooth(put(hair), true, 0.9), fill: 'hair', line: 'ink', weight: 2.2 },
      ...(g.hidden
        ? []
        : g.eyes === 'shut'
          ? [{ d: smooth(put([-0.62, -0.08, -0.48, 0, -0.34, -0.08])), line: 'ink', weight: 1.7 }]
          : [dots(eye, r * (g.young ? 0.22 : 0.17))]),
      { d: smooth(put([-0.34, -0.32, -0.48, -0.38, -0.64, -0.32])), line: 'ink', weight: 1.6 },
    ],
    arm: reach ? arm(shoulder, reach, 1, 11, { cloth, skin }) : [],
  };
}
