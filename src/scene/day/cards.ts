/** Cards to hold up: for who is older, without a word. */
import { box } from '../play/brush.ts';
import { childInBed } from '../play/child.ts';
import type { Shape } from '../shapes.ts';
import { ink } from '../topics/page.ts';
import { figure } from '../topics/people.ts';
import { curtain, rail } from '../topics/things.ts';
import { basin, cloth, drops, inBed, pan, paperRoll, sandGlass } from './parts.ts';

/** A nurse is with the child; who came to visit waits with the bag behind the curtain. */
export const withoutVisitors = (): Shape[] => [
  ...figure({ who: 'staff', x: 54, y: 42, r: 14, hem: 124 }).all,
  ...childInBed({ x: 24, y: 78, r: 17, eyes: 'right' }, 14, 66).behind,
  ...figure({ who: 'grown', x: 103, y: 44, r: 14, hem: 124 }).all,
  ...rail(58, 96, 6),
  ...curtain(67, 86, 8, 116, 2),
  ink.flat(box(91, 94, 117, 117), 'plate', 2.8),
  ink.stroke([98, 94, 100, 82, 108, 82, 110, 94], 2.8),
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

/** A shut curtain with a picture on it. */
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

/** The child holds up one finger; the nurse stands with the tray and waits as long as the sand runs. */
export const notNow = (): Shape[] => [
  ...figure({
    who: 'staff',
    x: 97,
    y: 46,
    r: 14,
    hem: 124,
    left: [84, 101, 30, 'none'],
    right: [110, 101, 150, 'none'],
  }).all,
  ink.flat([72, 98, 119, 98, 116, 105, 75, 105], 'metal'),
  ...inBed({ x: 32, y: 78, r: 17, eyes: 'right', right: [64, 72, -90, 'point'] }, 76, 14),
  ...sandGlass(38, 28, 0.42),
];
