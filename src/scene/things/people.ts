/** People at the bed: grown-up, child, nurse. A nurse is known by the plain tunic. */
import { at, oval, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { drawHead, type HeadLook } from '../parts/head.ts';
import { drawProfile } from '../parts/person.ts';
import { arc } from '../parts/points.ts';
import { BOLD, FINE, pen } from './pen.ts';

const grown = (look: Partial<HeadLook> = {}): HeadLook => ({
  face: 'calm',
  hair: 'curls',
  age: 14,
  skin: 'hand',
  ...look,
});

/** A nurse standing, small; `neck` is where the head sits. */
export function standingNurse(neck: Point, scale: number): Shape[] {
  const p = pen({ x: neck.x, y: neck.y, scale });
  return [
    p.soft(
      [
        50, 70, 40, 74, 34, 92, 32, 112, 38, 114, 44, 96, 44, 132, 76, 132, 76, 96, 82, 114, 88, 112, 86, 92,
        80, 74, 70, 70, 60, 76,
      ],
      'wet',
      BOLD,
      0.6,
    ),
    p.strokes([[60, 76, 64, 92, 62, 130]], FINE),
    ...drawHead(at(neck.x, neck.y - 8 * scale), 22 * scale, 0, grown({ hair: 'short' })),
  ];
}

/** Head and shoulders from the front. */
function bust(cloth: string, look: Partial<HeadLook>, angle = 0): Shape[] {
  const p = pen();
  return [
    p.soft([50, 62, 50, 78, 60, 84, 70, 78, 70, 62], 'hand', BOLD, 0.7),
    p.soft(
      [50, 75, 34, 80, 20, 92, 15, 118.5, 105, 118.5, 100, 92, 86, 80, 70, 75, 66, 84, 60, 87, 54, 84],
      cloth,
      BOLD,
      0.7,
    ),
    ...drawHead(at(60, 42), 31, angle, grown(look)),
  ];
}

/** A grown-up, for the door of the grown-ups. */
export function whoGrownUp(): Shape[] {
  const p = pen();
  return [
    // the back of the chair
    p.soft([24, 118.5, 20, 72, 26, 62, 94, 62, 100, 72, 96, 118.5], 'plate', BOLD, 0.5),
    p.strokes(
      [
        [30, 72, 31, 112],
        [90, 72, 89, 112],
      ],
      FINE,
    ),
    ...bust('bag', { hair: 'curls' }),
    p.strokes(
      [
        [30, 98, 34, 118],
        [90, 98, 86, 118],
      ],
      FINE,
    ),
  ];
}

/** A child, for the door of the child. */
export function whoChild(): Shape[] {
  const p = pen();
  return [
    p.soft(
      [8, 14, 30, 7, 60, 9, 90, 7, 112, 14, 114, 44, 110, 76, 88, 84, 60, 80, 32, 84, 10, 76, 6, 44],
      'pillow',
      BOLD,
      0.8,
    ),
    p.soft([50, 72, 30, 80, 22, 96, 22, 118, 98, 118, 98, 96, 90, 80, 70, 72, 60, 80], 'gown', BOLD, 0.7),
    ...drawHead(at(60, 46), 32, 0, { face: 'calm', hair: 'short', age: 5 }),
    p.soft([1.5, 100, 28, 94, 60, 97, 92, 94, 118.5, 100, 118.5, 118.5, 1.5, 118.5], 'blanket', BOLD, 0.5),
    p.strokes([[2, 108, 30, 103, 60, 106, 90, 103, 118, 108]], FINE),
    ...drawHand(at(36, 90), 17, 62, 'rest', 1, 'skin'),
    ...drawHand(at(84, 90), 17, 118, 'rest', -1, 'skin'),
  ];
}

/** Somebody of the ward, for the door of the staff. */
export function whoStaff(): Shape[] {
  const p = pen();
  return [
    { d: oval(at(60, 9), 13, 8), fill: 'hair', line: 'ink', weight: BOLD },
    ...bust('wet', { hair: 'short' }),
    // a plain tunic: crossed front, one pocket with a pen
    p.strokes(
      [
        [52, 82, 66, 100, 68, 118],
        [70, 78, 60, 91],
      ],
      2.4,
    ),
    p.flat([76, 98, 92, 98, 91, 114, 77, 114], 'wet', 2.2),
    p.stroke([86, 104, 87, 91], 3.4),
    p.strokes([[28, 98, 32, 118]], FINE),
  ];
}

/** Calling out loud, a hand at the mouth, beside the bed. */
export function callOut(): Shape[] {
  const p = pen();
  return [
    p.soft([4, 118.5, 6, 92, 18, 78, 40, 74, 56, 82, 62, 100, 62, 118.5], 'bag', BOLD, 0.7),
    ...drawProfile(at(39, 44), 32, { facing: 1, mouth: 'calling', hair: 'short' }),
    p.soft([48, 118, 62, 100, 56, 78, 63, 70, 72, 76, 78, 100, 70, 118.5], 'bag', BOLD, 0.7),
    ...drawHand(at(67, 80), 25, -96, 'rest', -1, 'hand'),
    { d: [14, 26, 38].map((r) => arc(at(72, 46), r, -38, 26)).join(''), line: 'mark', weight: 4.6 },
    p.soft([76, 118.5, 78, 98, 90, 92, 118.5, 92, 118.5, 118.5], 'blanket', BOLD, 0.4),
    p.strokes([[80, 106, 96, 101, 118, 102]], FINE),
  ];
}

/** A hand to the cheek and raised brows. */
export function worried(): Shape[] {
  const p = pen();
  return [
    ...bust('bag', { hair: 'scarf', worried: true }, -7),
    p.soft([74, 118.5, 80, 96, 84, 78, 94, 80, 98, 98, 96, 118.5], 'bag', BOLD, 0.7),
    ...drawHand(at(88, 84), 31, -104, 'rest', -1, 'hand'),
  ];
}

/** Looking at the bed, a hand at the chin: something is there, and has no name yet. */
export function cannotNameIt(): Shape[] {
  const p = pen();
  return [
    p.soft([4, 118.5, 6, 92, 16, 80, 34, 74, 52, 82, 58, 98, 58, 118.5], 'bag', BOLD, 0.7),
    ...drawProfile(at(36, 42), 30, { facing: 1, mouth: 'shut', hair: 'short', bow: 10 }),
    p.soft([60, 118.5, 64, 98, 78, 88, 100, 84, 118.5, 86, 118.5, 118.5], 'blanket', BOLD, 0.6),
    p.soft([28, 118.5, 40, 106, 46, 92, 56, 88, 64, 95, 60, 112, 50, 118.5], 'bag', BOLD, 0.7),
    ...drawHand(at(55, 94), 27, -98, 'fist', -1, 'hand'),
    { d: oval(at(96, 86), 15, 15), line: 'ink', weight: 3.6, dash: '6 7' },
    p.strokes([[76, 46, 84, 54, 90, 64]], 2.6),
  ];
}
