/** One bare foot: leg, instep, five toes with their nails, and the changes that show on its skin. */
import type { SceneSpec, ToneShift } from '../spec.ts';
import { at, between, hatch, ring, smooth, straight, type Point, type Shape } from '../shapes.ts';
import type { Foot, Toe } from './layout.ts';

export interface FootLook {
  shift: ToneShift;
  swell: SceneSpec['swell'];
  numb: boolean;
  cold: 0 | 1 | 2;
  young: boolean;
}

/** Round dots as one path: a line of no length with a round end. */
export const dots = (points: readonly Point[]): string => points.map((p) => straight([p, p])).join('');

const inside = (polygon: readonly Point[], p: Point): boolean => {
  let odd = false;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a.y <= p.y !== b.y <= p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  });
  return odd;
};

/** Places of an even, shifted grid inside a polygon. */
export function stipple(polygon: readonly Point[], gap: number): Point[] {
  const [xs, ys] = [polygon.map((p) => p.x), polygon.map((p) => p.y)];
  const found: Point[] = [];
  let row = 0;
  for (let y = Math.min(...ys) + gap / 2; y < Math.max(...ys); y += gap * 0.87, row++)
    for (let x = Math.min(...xs) + (row % 2 ? gap / 2 : 0); x < Math.max(...xs); x += gap)
      if (inside(polygon, at(x, y))) found.push(at(x, y));
  return found;
}

/** Patches of changed colour on toes and forefoot: toe, place along it, half width as a share, half height. */
const BLOTCHES = [
  [0, 0.3, 0.36, 13, 20],
  [0, -0.36, 0.42, 11, -15],
  [1, -0.3, 0.38, 15, 10],
  [2, 0.38, 0.4, 12, 0],
  [3, -0.4, 0.62, 11, 30],
  [4, 0.45, 0.38, 11, 0],
] as const;

const blotches = (foot: Foot): Point[][] =>
  BLOTCHES.map(([index, along, share, high, lean]) => {
    const toe = foot.toes[index]!;
    return ring(between(toe.base, toe.tip, along), toe.width * share, high, lean, 9);
  });

/** A change of colour is told by its own hatching too, so that it shows without colour. */
function shiftHatch(foot: Foot, shift: ToneShift): Shape[] {
  switch (shift) {
    case 'none':
      return [];
    case 'paler':
      return [{ d: hatch(foot.front, 8, 90), line: 'ink', weight: 1.3, dash: '7 6' }];
    case 'blue-grey':
      return [{ d: hatch(foot.front, 6, 45), line: 'ink', weight: 1.5 }];
    case 'dusky-dark':
      return [{ d: hatch(foot.front, 6, 40) + hatch(foot.front, 6, -40), line: 'ink', weight: 1.5 }];
    case 'blotched':
      return blotches(foot).flatMap((patch) => [
        { d: smooth(patch, true), fill: 'shift', line: 'ink', weight: 1.2, dash: '3 3' },
        { d: hatch(patch, 5, 20), line: 'ink', weight: 1.5 },
      ]);
  }
}

/** A path that goes on where another ended. */
export const onward = (d: string): string => 'L' + d.slice(1);

export function drawFoot(foot: Foot, look: FootLook): Shape[] {
  const whole = look.shift !== 'none' && look.shift !== 'blotched';
  const toeFill = whole ? 'shift' : 'skin';
  const outline: Pick<Shape, 'line' | 'dash'> = look.numb ? { line: 'ink', dash: '5 5' } : { line: 'ink' };
  const roots = foot.toes.map((toe) => between(toe.base, toe.tip, 0.35));
  const body = smooth(foot.inner) + onward(straight(roots)) + onward(smooth(foot.outer.toReversed())) + 'Z';
  const each = (part: (toe: Toe) => string) => foot.toes.map(part).join('');
  const skinLines = look.young ? foot.folds : foot.tendons;
  const shapes: Shape[] = [
    { d: smooth(foot.shadow) + 'Z', fill: 'floor' },
    { d: body, fill: 'skin' },
  ];
  if (whole) {
    const back = foot.front.slice(-5);
    const field = [...foot.outer.slice(-4), ...roots.toReversed(), ...foot.inner.slice(-4).reverse()];
    shapes.push({ d: straight(field) + onward(smooth(back)) + 'Z', fill: 'shift' });
  }
  shapes.push(
    { d: smooth(foot.inner) + smooth(foot.outer), line: 'ink' },
    { d: each((toe) => smooth(toe.outline) + 'Z'), fill: toeFill },
    { d: each((toe) => smooth(toe.pad, true)), fill: whole ? 'shift' : 'sole' },
    ...shiftHatch(foot, look.shift),
  );
  if (look.cold === 1) shapes.push({ d: each((toe) => hatch(toe.outline, 8, 0)), line: 'wet', weight: 2.6 });
  if (look.cold === 2) shapes.push({ d: hatch(foot.front, 8, 0), line: 'wet', weight: 3.6 });
  if (look.numb) shapes.push({ d: dots(stipple(foot.front, 11)), line: 'ink', weight: 4 });
  shapes.push(
    { d: each((toe) => smooth(toe.outline)), ...outline },
    { d: each((toe) => smooth(toe.nail, true, 0.8)), fill: whole ? 'shift' : 'nail' },
    { d: each((toe) => smooth(toe.nailEdge)), line: 'white', weight: 3 },
    { d: each((toe) => smooth(toe.nail, true, 0.8)), line: 'ink', weight: 1.5 },
  );
  if (look.swell > 0) {
    shapes.push({ d: each((toe) => smooth(toe.shine)), line: 'white', weight: look.swell === 2 ? 4 : 3 });
  } else {
    shapes.push(
      { d: each((toe) => toe.creases.map((crease) => smooth(crease)).join('')), line: 'ink', weight: 1.3 },
      { d: skinLines.map((line) => smooth(line)).join(''), line: 'skin-shade', weight: 1.8 },
    );
  }
  shapes.push({ d: foot.ankleLines.map((line) => smooth(line)).join(''), line: 'skin-shade', weight: 2.2 });
  return shapes;
}
