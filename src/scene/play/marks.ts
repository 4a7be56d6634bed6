/** What moves, sounds, comes back or is still to come: arcs, arrows, dashes, light. */
import { arc } from '../parts/points.ts';
import { at } from '../shapes.ts';
import { box, type Brush, type Drawing } from './brush.ts';

const arcs = (p: Brush, radii: readonly number[], from: number, to: number, weight: number) => {
  const c = p.put([60, 60])[0]!;
  return {
    d: radii.map((r) => arc(at(c.x, c.y), r * p.scale, from + p.turned, to + p.turned)).join(''),
    line: 'mark',
    weight: weight * Math.max(0.62, Math.min(1, p.scale * 1.1)),
  };
};

export const MARKS = {
  /** Sound or touch that goes out to the right. */
  sound: (p) => [arcs(p, [18, 34, 50], -32, 32, 5)],
  tap: (p) => [
    p.rule(
      [
        [60, 44, 60, 14],
        [42, 50, 22, 26],
        [78, 50, 98, 26],
      ],
      5,
      'mark',
    ),
  ],
  breath: (p) => [
    p.strokes(
      [
        [8, 42, 34, 36, 62, 44, 84, 38],
        [8, 60, 44, 64, 80, 58, 112, 62],
        [8, 78, 34, 84, 62, 76, 84, 82],
      ],
      4,
      'mark',
    ),
  ],
  arrow: (p) => [
    p.rule(
      [
        [8, 60, 108, 60],
        [84, 38, 110, 60, 84, 82],
      ],
      6,
      'mark',
    ),
  ],
  both: (p) => [
    p.rule(
      [
        [8, 60, 112, 60],
        [30, 42, 8, 60, 30, 78],
        [90, 42, 112, 60, 90, 78],
      ],
      6,
      'mark',
    ),
  ],
  round: (p) => [arcs(p, [42], -250, 40, 7), p.rule([[72, 82, 92, 88, 98, 66]], 7, 'mark')],
  swap: (p) => [
    p.strokes(
      [
        [12, 48, 60, 18, 106, 44],
        [108, 72, 60, 102, 14, 76],
      ],
      6,
      'mark',
    ),
    p.rule(
      [
        [84, 46, 108, 46, 106, 22],
        [36, 74, 12, 74, 14, 98],
      ],
      6,
      'mark',
    ),
  ],
  warm: (p) => [
    p.strokes(
      [
        [30, 100, 40, 74, 24, 46, 34, 18],
        [60, 100, 70, 74, 54, 46, 64, 18],
        [90, 100, 100, 74, 84, 46, 94, 18],
      ],
      5,
      'mark',
    ),
  ],
  shine: (p) => [
    p.rule(
      [
        [60, 8, 60, 40],
        [60, 80, 60, 112],
        [8, 60, 40, 60],
        [80, 60, 112, 60],
      ],
      6,
      'mark',
    ),
  ],
  dashes: (p) => [p.dashed([10, 96, 40, 60, 76, 76, 112, 24], 5, 'mark')],
  around: (p) => [
    { ...arcs(p, [46], -80, 250, 6), dash: '6 6' },
    p.rule([[26, 26, 46, 14, 52, 36]], 6, 'mark'),
  ],
  no: (p) => [
    p.rule(
      [
        [20, 20, 100, 100],
        [100, 20, 20, 100],
      ],
      12,
      'mark',
    ),
  ],
  oval: (p) => [{ ...p.ring([60, 60, 50, 50], 'white', 5), fill: '', line: 'mark' }],
  pause: (p) => [p.flats([box(20, 20, 46, 100), box(74, 20, 100, 100)], 'ink', 2)],
  beam: (p) => [{ ...p.flat([42, 116, 78, 116, 118, 2, 2, 2], 'band'), line: 'band' }],
  hatching: (p) => [
    p.rule(
      [
        [10, 30, 30, 10],
        [10, 60, 60, 10],
        [10, 90, 90, 10],
        [20, 110, 110, 20],
        [50, 110, 110, 50],
        [80, 110, 110, 80],
      ],
      4,
    ),
  ],
  /** What is not named. */
  open: (p) => [p.dots([20, 60, 60, 60, 100, 60], 20)],
  spot: (p) => [p.ring([60, 60, 46, 40], 'band', 2.4), p.ring([60, 60, 28, 24], 'white', 2)],
  /** Back along the dial: before it was thought to come. */
  ahead: (p) => [
    p.strokes([[96, 16, 62, 6, 28, 18]], 6, 'mark'),
    p.rule([[42, 4, 26, 18, 44, 28]], 6, 'mark'),
  ],
  /** A clock whose hand goes back: from when it was to be, to sooner. */
  sooner: (p) => [
    p.ring([60, 60, 54, 54], 'white', 7),
    p.rule(
      [
        [60, 114, 60, 104],
        [6, 60, 16, 60],
        [114, 60, 104, 60],
      ],
      6,
    ),
    p.dashed([60, 60, 96, 54], 7),
    p.rule([[60, 60, 32, 30]], 9),
    p.strokes([[92, 34, 80, 22, 58, 22]], 8, 'mark'),
    p.rule([[72, 10, 54, 22, 70, 36]], 8, 'mark'),
  ],
} as const satisfies Record<string, Drawing>;
