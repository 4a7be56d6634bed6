/** The hanging weight: a bag on the cord, free above the floor or resting where it should not. */
import type { SceneSpec } from '../spec.ts';
import { at, mix, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { arc, inked, quiet, rays } from './strokes.ts';

/** Where the floor lies in the picture of the bed's end, from the top. */
export const FLOOR = 334;
/** The side of the end board that looks at the bag, from the left. */
export const BOARD_FACE = 240;
/** How far the bag hangs higher at `loadHeight` 1 than at 0. */
const RANGE = 90;
/** Page units of a unit of the bag's outline. */
const SIZE = 1.2;
/** From the ring at the top to the bottom. */
const TALL = 84 * SIZE;
type Load = Pick<SceneSpec, 'loadHeight' | 'loadTouch' | 'loadSwing' | 'slide'>;

/** The bag below the wheel, upright: middle top is the ring the cord is tied to. */
const HANGING: readonly (readonly [number, number])[] = [
  [-8, 17],
  [-11, 23],
  [-25, 31],
  [-33, 50],
  [-34, 70],
  [-27, 82],
  [0, 84],
  [27, 82],
  [34, 70],
  [33, 50],
  [25, 31],
  [11, 23],
  [8, 17],
];
/** The same bag, its weight on something: low, wide and folded. */
const SLUMPED: readonly (readonly [number, number])[] = [
  [-15, 34],
  [-17, 41],
  [-32, 44],
  [-48, 54],
  [-53, 70],
  [-48, 81],
  [-20, 84],
  [24, 84],
  [50, 82],
  [55, 68],
  [46, 55],
  [24, 47],
  [2, 42],
  [-2, 36],
];

/** Where the bag hangs under the wheel, and where the floor is. */
export function layoutBag(spec: Load, x: number, wheelY: number, slideLength: number) {
  const wanted = FLOOR - 3 - spec.loadHeight * RANGE + spec.slide * slideLength;
  const sunk = Math.max(0, wanted - (FLOOR - 3));
  const onFloor = spec.loadTouch === 'floor' || sunk > 0;
  const leans = spec.loadTouch === 'bed-end' && !onFloor;
  const onStool = spec.loadTouch === 'other' && !onFloor;
  const resting = onFloor || onStool;
  const bottom = onFloor
    ? FLOOR + 8
    : leans
      ? Math.max(wanted, 300)
      : onStool
        ? Math.min(wanted, FLOOR - 34)
        : wanted;
  const ring = leans ? at(BOARD_FACE + 56, bottom - TALL) : at(x, bottom - TALL);
  const angle = leans ? 14 : spec.loadSwing === 1 && !resting ? -11 : 0;
  const pivot = leans ? ring : at(x, wheelY);
  const place = ([a, b]: readonly [number, number]) =>
    turn(at(ring.x + a * SIZE, ring.y + b * SIZE), pivot, angle);
  return {
    tied: resting ? at(ring.x - 9 * SIZE, ring.y + 33 * SIZE) : place([0, 6]),
    outline: (resting ? SLUMPED : HANGING).map(place),
    neck: (
      (resting
        ? [
            [-18, 39],
            [-9, 41],
            [0, 40],
          ]
        : [
            [-12, 21],
            [0, 24],
            [12, 21],
          ]) as [number, number][]
    ).map(place),
    seam: (
      (resting
        ? [
            [-44, 66],
            [-10, 72],
            [20, 66],
            [47, 68],
          ]
        : [
            [-31, 62],
            [-10, 67],
            [10, 67],
            [31, 62],
          ]) as [number, number][]
    ).map(place),
    folds: (
      (resting
        ? [
            [-8, 46, -20, 56, -36, 60],
            [0, 46, 14, 56, 34, 58],
          ]
        : [
            [-4, 28, -12, 40, -15, 52],
            [5, 28, 11, 38, 13, 47],
          ]) as number[][]
    ).map((f) => [place([f[0]!, f[1]!]), place([f[2]!, f[3]!]), place([f[4]!, f[5]!])]),
    resting,
    touch: leans ? at(BOARD_FACE + 6, bottom - 52) : onFloor ? at(ring.x, bottom) : at(ring.x, bottom),
    shadow: at(ring.x, FLOOR),
    seat: at(ring.x, bottom),
    middle: at(ring.x, ring.y + 54 * SIZE),
  };
}
export type BagGeometry = ReturnType<typeof layoutBag>;

/** The bag with its mark, and what it touches where it does not hang free. */
export function drawBag(spec: Load, g: BagGeometry): Shape[] {
  const shapes = [
    inked(smooth(g.outline, true, 0.9), 'bag'),
    quiet(g.folds.map((f) => smooth(f)).join(''), 'ink', 1.5),
    { d: smooth(g.seam), line: 'sheet', weight: 2, dash: '5 5' },
    { d: smooth(g.neck), line: 'cord', weight: 5 },
  ];
  if (!g.resting) shapes.push(inked(loop(g.tied), undefined, 3));
  if (spec.loadTouch !== 'none' || g.resting) shapes.push(...drawTouch(spec, g));
  return shapes;
}

const loop = (p: Point): string => smooth(arc(at(p.x, p.y + 4), 6, -90, 270, 8), true);

/** Something holds the weight that should hold nothing. */
function drawTouch(spec: Load, g: BagGeometry): Shape[] {
  if (!g.resting) return [inked(rays(at(g.touch.x, g.touch.y), 14, 44, 140, 250, 4, 12), 'mark', 1.4)];
  const spread = spec.loadTouch === 'other' ? 70 : 76;
  const strokes = [-1, 1].flatMap((way) =>
    [0, 1, 2].map((i) =>
      straight([
        at(g.touch.x + way * (spread + i * 4), g.touch.y - 6 - i * 11),
        at(g.touch.x + way * (spread + 16 + i * 3), g.touch.y - 8 - i * 17),
      ]),
    ),
  );
  return [{ d: strokes.join(''), line: 'mark', weight: 4.4 }];
}

/** A stool someone left under the weight. */
export function drawStool({ seat: s }: BagGeometry): Shape[] {
  const legs = [-1, 1]
    .map((way) =>
      straight(
        [
          at(s.x + way * 42, s.y + 9),
          at(s.x + way * 34, s.y + 9),
          at(s.x + way * 42, FLOOR + 8),
          at(s.x + way * 50, FLOOR + 8),
        ],
        true,
      ),
    )
    .join('');
  return [
    inked(legs, 'plate'),
    inked(straight([at(s.x - 40, mix(s.y, FLOOR, 0.55)), at(s.x + 40, mix(s.y, FLOOR, 0.55))]), undefined, 5),
    inked(
      straight(
        [at(s.x - 60, s.y - 1), at(s.x + 60, s.y - 1), at(s.x + 56, s.y + 10), at(s.x - 56, s.y + 10)],
        true,
      ),
      'plate',
    ),
  ];
}

/** Lines of a bag that swings. */
export function drawSwing(g: BagGeometry): Shape[] {
  const c = at(g.middle.x, g.middle.y);
  const arcs = [-1, 1].flatMap((way) =>
    [0, 1, 2].map((i) => {
      const x = c.x + way * (66 + i * 13) + 10;
      return smooth([at(x - way * 5, c.y - 20 - i * 5), at(x, c.y), at(x - way * 5, c.y + 20 + i * 5)]);
    }),
  );
  return [{ d: arcs.join(''), line: 'mark', weight: 3.4 }];
}
