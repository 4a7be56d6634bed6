/**
 * What several pictures of the day share: the bed, the bubble, things that staff bring. Play keeps its things in tables that
 * are sent as a whole, so the few of them that a day shows are drawn here.
 */
import { at, oval, straight, type Shape } from '../shapes.ts';
import type { DrawnAge } from '../spec.ts';
import { box, type Brush } from '../play/brush.ts';
import { childInBed, type ChildLook } from '../play/child.ts';
import { grownUp, type GrownLook } from '../play/grown-up.ts';
import { ink, small } from '../topics/page.ts';
import { SQUARE } from '../things/pen.ts';

/** The wall of a room at night; ink lines stay seen on it. */
export const dusk: Shape = { ...ink.flat(box(0, 0, SQUARE, SQUARE), 'scarf'), line: '' };

/** An arm, a leg, a pipe: one line in ink and a narrower one in its colour. */
export const tube = (flat: readonly number[], width: number, fill: string): Shape[] => [
  ink.stroke(flat, width + 2.2),
  ink.stroke(flat, width - 2.2, fill),
];

/** The child in bed as one layer; somebody may sit where the bed ends, and something may lie under the arms. */
export function inBed(
  look: ChildLook,
  right = 118.8,
  age: DrawnAge = 5,
  between: readonly Shape[] = [],
): Shape[] {
  const { behind, arms } = childInBed(look, age, right);
  return [...behind, ...between, ...arms];
}

/** The bed ends where a grown-up sits. */
export const BESIDE = 88;

/** The child at the left, somebody at the right beside the bed; what is between them lies under the arms. */
export function together(child: ChildLook, grown: GrownLook, between: Shape[] = [], age: DrawnAge = 5) {
  const bed = childInBed(child, age, BESIDE);
  const other = grownUp(grown);
  return [...bed.behind, ...other.behind, ...between, ...bed.arms, ...other.arm];
}

/** A white field for what is said, its tail at the mouth; or thought, small rounds leading to the head. */
export function bubble(
  kind: 'say' | 'think',
  [x, y, w, h]: readonly [number, number, number, number],
  [toX, toY]: readonly [number, number],
): Shape[] {
  const white = { fill: 'white', line: 'ink', weight: 2 };
  const body = { d: oval(at(x, y), w / 2, h / 2), ...white };
  if (kind === 'think') {
    const [dx, dy] = [toX - x, toY - y];
    return [body, ink.ring([x + dx * 0.76, y + dy * 0.76, 3.4, 3, toX, toY, 2, 2], 'white', 2)];
  }
  const long = Math.hypot(toX - x, toY - y);
  const [nx, ny] = [((toY - y) / long) * 6, ((x - toX) / long) * 6];
  const tail = straight([at(x + nx, y + ny), at(toX, toY), at(x - nx, y - ny)], true);
  return [{ d: tail, ...white }, body, { d: tail, fill: 'white' }];
}

/** A bed whose foot end is raised: the leg straight in its bandage, the cord over its wheel, the weight hanging free. */
export function pulledBed(p: Brush): Shape[] {
  const posts = [
    [7, 46, 7, 106],
    [90, 50, 90, 106],
  ];
  return [
    p.rule(posts, 10),
    p.rule(posts, 5, 'frame'),
    p.flat([4, 76, 93, 64, 93, 76, 4, 90], 'mattress', 2.6),
    p.flat([9, 74, 11, 58, 26, 54, 28, 72], 'pillow', 2.4),
    p.ring([23, 60, 10, 10], 'skin', 2.6),
    p.soft([12, 64, 14, 49, 33, 53, 18, 58], 'hair', 2.4, 0.8),
    p.flat([30, 72, 36, 56, 62, 54, 66, 68], 'blanket', 2.6),
    p.flat([60, 57, 80, 55, 81, 65, 62, 68], 'band', 2.4),
    p.soft([80, 55, 79, 43, 86, 43, 87, 64, 80, 65], 'skin', 2.4, 0.7),
    p.flat([89, 44, 94, 44, 94, 66, 89, 66], 'plate', 2.2),
    p.stroke([92, 64, 105, 60], 5),
    p.stroke([94, 56, 106, 53, 112, 60, 112, 78], 2.4),
    p.ring([105, 60, 6.4, 6.4], 'metal', 2.4),
    p.flat([107, 78, 117, 78, 120, 97, 104, 97], 'bag', 2.4),
  ];
}

/** A note of music. */
export function note(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.ring([30, 94, 18, 14, 88, 84, 18, 14], 'ink', 3),
    p.rule(
      [
        [46, 92, 46, 26],
        [104, 82, 104, 14],
      ],
      7,
    ),
    p.flat([43, 20, 107, 8, 107, 26, 43, 38], 'ink', 3),
  ];
}

/** A roll of bandage, its end hanging out to the right. */
export function roll(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.soft([62, 96, 112, 92, 118, 106, 112, 114, 60, 116], 'sheet', 3, 0.4),
    p.ring([56, 66, 48, 48], 'band', 3),
    p.stroke([56, 82, 74, 74, 70, 48, 44, 44, 32, 66, 44, 92, 76, 94, 90, 66, 76, 34], 2.4),
    p.ring([56, 66, 9, 9], 'white', 2.4),
  ];
}

/** A plaster. */
export function plaster(x: number, y: number, scale: number, turned = 0): Shape[] {
  const p = small(x, y, scale, turned);
  return [
    p.soft([8, 44, 20, 36, 100, 36, 112, 44, 112, 76, 100, 84, 20, 84, 8, 76], 'band', 3.4, 0.6),
    p.flat(box(42, 38, 78, 82), 'sheet', 2.4),
    p.dots([52, 52, 68, 52, 60, 60, 52, 68, 68, 68], 7, 'soft'),
  ];
}

/** A cloth, folded over at one corner. */
export function cloth(x: number, y: number, scale: number, fill = 'white'): Shape[] {
  const p = small(x, y, scale);
  return [
    p.soft(
      [12, 34, 44, 22, 78, 30, 108, 20, 110, 68, 104, 100, 70, 92, 42, 104, 14, 96, 18, 64],
      fill,
      3.4,
      0.6,
    ),
    p.strokes(
      [
        [34, 42, 38, 62, 32, 84],
        [66, 44, 62, 70],
      ],
      2.6,
    ),
  ];
}

/** A basin of water. */
export function basin(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.soft([4, 52, 116, 52, 104, 96, 84, 108, 36, 108, 16, 96], 'metal', 3.4, 0.5),
    p.ring([60, 52, 56, 13], 'tear', 3.4),
    p.strokes([[26, 54, 42, 49, 58, 55, 74, 49, 92, 54]], 3, 'wet'),
  ];
}

/** Drops of water, each by its middle. */
export const drops = (places: readonly (readonly [number, number])[]): Shape[] =>
  places.map(([x, y]) =>
    small(x, y, 0.12).soft([60, 6, 92, 70, 84, 100, 60, 112, 36, 100, 28, 70], 'tear', 3, 0.7),
  );

/** The pan from above: a broad lip, a hole. */
export function pan(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.soft([4, 56, 10, 92, 36, 108, 84, 108, 110, 92, 116, 56], 'metal', 3.4, 0.6),
    p.ring([60, 56, 57, 30], 'sheet', 3.4),
    p.ring([60, 56, 32, 16], 'soft', 3),
  ];
}

/** A roll of paper, its end hanging down. */
export function paperRoll(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.flat([76, 40, 112, 40, 112, 116, 76, 116], 'white', 3.4),
    p.soft([40, 12, 88, 12, 112, 44, 88, 80, 40, 80], 'white', 3.4, 0.5),
    p.ring([40, 46, 26, 34], 'white', 3.4),
    p.ring([40, 46, 9, 13], 'plate', 3),
    p.rule([[82, 92, 106, 92]], 2.4, 'soft'),
  ];
}

/** The bottle with its slanting neck, a little in it. */
export function bottle(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.flat([70, 46, 98, 10, 116, 24, 88, 62], 'tear', 3.4),
    p.soft([14, 44, 80, 42, 92, 56, 90, 104, 82, 112, 12, 112, 4, 104, 4, 56], 'tear', 3.4, 0.4),
    p.flat([6, 80, 90, 80, 89, 106, 82, 111, 12, 111, 6, 104], 'band', 2.4),
  ];
}

/** A ball. */
export function ball(x: number, y: number, r: number): Shape[] {
  return [
    ink.ring([x, y, r, r], 'red', 2.4),
    ink.strokes(
      [
        [x - r * 0.9, y - r * 0.3, x, y + r * 0.1, x + r * 0.9, y - r * 0.3],
        [x - r * 0.1, y - r, x - r * 0.35, y, x - r * 0.1, y + r],
      ],
      2,
      'white',
    ),
  ];
}

/** A pencil, its point down. */
export function pencil(x: number, y: number, scale: number, turned: number): Shape[] {
  const p = small(x, y, scale, turned);
  return [
    p.flat([50, 8, 70, 8, 70, 88, 60, 112, 50, 88], 'blanket', 3.4),
    p.flat([56, 102, 64, 102, 60, 112], 'ink', 2),
    p.rule([[50, 88, 70, 88]], 2.6),
  ];
}

/** What a reporter speaks into. */
export const microphone = (x: number, y: number, scale: number, turned: number): Shape[] => {
  const p = small(x, y, scale, turned);
  return [
    p.flat([50, 40, 70, 40, 67, 118, 53, 118], 'ink', 4),
    p.ring([60, 26, 20, 22], 'metal', 4),
    p.rule(
      [
        [48, 18, 72, 34],
        [48, 34, 72, 18],
      ],
      3,
    ),
  ];
};

/** Sand runs down in a glass: a little time, and then it is over. */
export function sandGlass(x: number, y: number, scale: number): Shape[] {
  const p = small(x, y, scale);
  return [
    p.flat([24, 12, 96, 12, 94, 34, 66, 60, 94, 86, 96, 108, 24, 108, 26, 86, 54, 60, 26, 34], 'white', 4),
    p.flat([36, 34, 84, 34, 60, 56], 'band', 2),
    p.flat([60, 78, 88, 104, 32, 104], 'band', 2),
    p.rule([[60, 56, 60, 80]], 3, 'soft'),
    p.flats([box(12, 2, 108, 14), box(12, 106, 108, 118)], 'frame', 4),
  ];
}

/** A closed door, and one that stands open. */
export const shutDoor = (left: number, top: number, right: number, floor: number): Shape[] => [
  ink.flat(box(left - 6, top - 6, right + 6, floor), 'frame', 2.6),
  ink.flat(box(left, top, right, floor), 'plate', 2.6),
  ink.dots([right - 7, (top + floor) / 2 + 4], 6.4),
];
