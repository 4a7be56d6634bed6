/** The back of a grown-up's hand that feels how warm the toes are, with marks of cold. */
import type { SceneSpec } from '../spec.ts';
import { at, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { inked } from './strokes.ts';

const HAND: readonly (readonly [number, number])[] = [
  [-96, -40],
  [-60, -34],
  [-40, -30],
  [-24, -24],
  [-10, -17],
  [0, -7],
  [1, 3],
  [-7, 9],
  [-18, 8],
  [-26, 15],
  [-40, 17],
  [-58, 12],
  [-70, 4],
  [-96, 0],
];

/** The hand comes from the head of the bed and rests the backs of its fingers on `toes`. */
export function drawCold({ coolMark }: Pick<SceneSpec, 'coolMark'>, toes: Point, size: number): Shape[] {
  const lay = (x: number, y: number) => turn(at(toes.x + x * size, toes.y + y * size), toes, 18);
  const hand = HAND.map(([x, y]) => lay(x, y));
  const fingers = [
    [-6, -14, -18, -4, -24, 8],
    [-19, -22, -31, -10, -36, 4],
  ].map(([a, b, c, d, e, f]) => smooth([lay(a!, b!), lay(c!, d!), lay(e!, f!)]));
  const flakes = [
    [20, -28],
    [44, -12],
    [34, 18],
  ]
    .slice(0, coolMark === 2 ? 3 : 1)
    .map(([x, y]) => flake(at(toes.x + x! * size, toes.y + y! * size), 12 * size));
  return [
    inked(smooth(hand), 'hand'),
    inked(fingers.join(''), undefined, 1.6),
    { d: flakes.join(''), line: 'ink', weight: 2.6 },
  ];
}

const flake = (c: Point, r: number): string =>
  [0, 60, 120].map((a) => straight([turn(at(c.x - r, c.y), c, a), turn(at(c.x + r, c.y), c, a)])).join('');
