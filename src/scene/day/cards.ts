/** Cards to hold up: for who is older, without a word. */
import { box } from '../play/brush.ts';
import type { Shape } from '../shapes.ts';
import { ink } from '../topics/page.ts';
import { figure } from '../topics/people.ts';
import { curtain, rail } from '../topics/things.ts';
import { basin, cloth, drops, inBed, pan, paperRoll } from './parts.ts';

/** The curtain is shut; who came to visit waits outside. */
export const withoutVisitors = (): Shape[] => [
  ...inBed({ x: 32, y: 62, r: 17, eyes: 'left' }, 66, 14),
  ...figure({ who: 'other', x: 98, y: 46, r: 14, hem: 94, feet: 116, behind: true }).all,
  ...rail(54, 86, 6),
  ...curtain(60, 82, 8, 116, 2),
];

/** A pad in its opened wrapper, and a drop. */
export const period = (): Shape[] => [
  ink.flat(box(6, 12, 114, 112), 'gown'),
  ink.flat(box(6, 12, 114, 28), 'scarf', 2.4),
  ink.soft(
    [
      ...[43, 46, 52, 36, 68, 36, 77, 46, 76, 58, 96, 64, 96, 80, 76, 86, 77, 100, 68, 109],
      ...[52, 109, 43, 100, 44, 86, 24, 80, 24, 64, 44, 58],
    ],
    'white',
    2.8,
    0.6,
  ),
  { ...ink.soft([53, 50, 60, 44, 67, 50, 67, 95, 60, 101, 53, 95], 'sheet', 1.8, 0.8), dash: '3 3' },
  ink.soft([60, 58, 69, 76, 60, 86, 51, 76], 'red', 2.2, 0.8),
];

/** A shut curtain with a sign on it. */
const behindCurtain = (things: Shape[]): Shape[] => [
  ...rail(0, 120, 8),
  ...curtain(4, 116, 10, 92, 6),
  ...things,
];

/** Behind it: pan and paper. */
export const toiletAlone = (): Shape[] => [
  ...behindCurtain([
    ink.flat(box(32, 30, 98, 84), 'white'),
    ...pan(56, 62, 0.36),
    ...paperRoll(82, 46, 0.22),
  ]),
];
/** Behind it: basin and cloth. */
export const washAlone = (): Shape[] => [
  ...behindCurtain([
    ink.flat(box(28, 30, 92, 84), 'white'),
    ...basin(58, 60, 0.46),
    ...cloth(78, 48, 0.2, 'gown'),
    ...drops([[44, 44]]),
  ]),
];

/** The curtain is shut all round the bed. */
export const curtainClosed = (): Shape[] => [
  ink.rule(
    [
      [18, 96, 18, 112],
      [102, 96, 102, 112],
    ],
    7,
    'frame',
  ),
  ink.ring([18, 113, 5, 5, 102, 113, 5, 5], 'metal', 2.4),
  ...rail(0, 120, 10),
  ...curtain(6, 61, 12, 100, 4),
  ...curtain(59, 114, 12, 100, 4),
];

/** The child needs a moment first; the nurse waits at the clock. */
export const notNow = (): Shape[] => [
  ink.ring([26, 24, 20, 20], 'white'),
  ink.soft([26, 24, 26, 8, 38, 12, 42, 24], 'band', 1.8, 0.6),
  ink.rule([[26, 8, 26, 24, 42, 24]], 3),
  ...figure({
    who: 'doctor',
    x: 98,
    y: 46,
    r: 15,
    hem: 124,
    left: [92, 98, 30],
    right: [104, 100, 150],
  }).all,
  ...inBed({ x: 40, y: 74, r: 18, eyes: 'shut' }, 78, 14),
];
