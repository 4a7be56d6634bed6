/** One bare foot: leg, instep, five toes with their nails, and the changes that show on its skin. */
import type { SceneSpec, ToneShift } from '../spec.ts';
import {
  at,
  between,
  distance,
  hatch,
  pointsOf,
  ring,
  smooth,
  straight,
  type Point,
  type Shape,
} from '../shapes.ts';
import { bend, coarse, curves, onward } from './curves.ts';
import type { Foot, Toe } from './layout.ts';

export interface FootLook {
  shift: ToneShift;
  swell: SceneSpec['swell'];
  numb: boolean;
  cold: 0 | 1 | 2;
  young: boolean;
}

/** Round dots as one path: a line of no length with a round end. */
export const dots = (points: readonly Point[]): string =>
  points
    .map((p) => at(Math.round(p.x), Math.round(p.y)))
    .map((p) => straight([p, p]))
    .join('');

const inside = (polygon: readonly Point[], p: Point): boolean => {
  let odd = false;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a.y <= p.y !== b.y <= p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  });
  return odd;
};

/** Places of an even, shifted grid inside a polygon. */
function stipple(polygon: readonly Point[], gap: number): Point[] {
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
  [0, 0.22, 0.4, 15, 20],
  [0, -0.42, 0.5, 13, -15],
  [1, -0.3, 0.42, 18, 10],
  [2, 0.34, 0.44, 13, 0],
  [3, -0.42, 0.75, 14, 30],
  [4, 0.4, 0.42, 12, 0],
] as const;

const blotches = (foot: Foot): Point[][] =>
  BLOTCHES.map(([index, along, share, high, lean]) => {
    const toe = foot.toes[index]!;
    const center = between(toe.base, toe.tip, along);
    // an even oval would look like a thing laid on the foot
    return ring(center, toe.width * share, high, lean, 9).map((p, i) =>
      between(center, p, [1, 0.84, 1.08][i % 3]!),
    );
  });

/** A change of colour is told by its own hatching too, so that it shows without colour. */
function shiftHatch(foot: Foot, shift: ToneShift): Shape[] {
  switch (shift) {
    case 'none':
      return [];
    case 'paler':
      return [{ d: hatch(foot.front, 8, 90), line: 'ink', weight: 1.3, dash: '7 6' }];
    case 'blue-grey':
      return [{ d: hatch(foot.front, 6, 45), line: 'ink', weight: 2 }];
    case 'dusky-dark':
      return [{ d: hatch(foot.front, 6, 40) + hatch(foot.front, 6, -40), line: 'ink', weight: 1.5 }];
    case 'blotched':
      return blotches(foot).flatMap((patch) => [
        { d: smooth(patch, true), fill: 'shift' },
        { d: hatch(patch, 5.5, 20), line: 'ink', weight: 1.4 },
      ]);
  }
}

/** Hatching that ends before the outline, for lines which are not ink. */
const shortened = (hatching: string, by: number): string => {
  const ends = pointsOf(hatching);
  const lines = ends.flatMap((a, i) => (i % 2 ? [] : [[a, ends[i + 1]!] as const]));
  return lines
    .filter(([a, b]) => distance(a, b) > by * 3)
    .map(([a, b]) =>
      coarse(straight([between(a, b, by / distance(a, b)), between(b, a, by / distance(a, b))])),
    )
    .join('');
};

/** A foot seen from its toes: skin, nails, and the hatching that tells a changed colour in grey. */
export function drawFoot(foot: Foot, look: FootLook): Shape[] {
  const whole = look.shift !== 'none' && look.shift !== 'blotched';
  const roots = foot.toes.map((toe) => between(toe.base, toe.tip, 0.35));
  const each = (part: (toe: Toe) => string) => foot.toes.map(part).join('');
  const skinLines = look.young ? foot.folds : foot.tendons;
  const body = smooth(foot.inner) + onward(straight(roots)) + onward(smooth(foot.outer.slice().reverse()));
  const shapes: Shape[] = [
    { d: coarse(smooth(foot.shadow)) + 'Z', fill: 'floor' },
    // the line along the roots of the toes goes under the toes
    { d: body, fill: 'skin', line: 'ink' },
  ];
  if (whole) {
    const field = [...foot.outer.slice(-4), ...roots.slice().reverse(), ...foot.inner.slice(-4).reverse()];
    shapes.push({ d: straight(field) + onward(smooth(foot.front.slice(-5))) + 'Z', fill: 'shift' });
    shapes.push({ d: smooth(foot.outer.slice(-4)) + smooth(foot.inner.slice(-4)), line: 'ink' });
  }
  shapes.push(
    {
      d: each((toe) => curves(toe.shape)),
      fill: whole ? 'shift' : 'skin',
      line: 'ink',
      ...(look.numb ? { dash: '5 5' } : {}),
    },
    ...(whole ? [] : [{ d: each((toe) => bend(toe.pad)), line: 'sole', weight: 3.4 }]),
    ...shiftHatch(foot, look.shift),
  );
  if (look.cold === 1)
    shapes.push({ d: each((toe) => shortened(hatch(toe.outline, 11, 0), 2.6)), line: 'wet', weight: 2.4 });
  if (look.cold === 2) shapes.push({ d: shortened(hatch(foot.front, 10.5, 0), 3), line: 'wet', weight: 3.2 });
  if (look.numb) {
    const prickly = dots(stipple(foot.front, 12.5));
    // the light rim keeps the dots plain on dark skin
    shapes.push({ d: prickly, line: 'sole', weight: 6.6 }, { d: prickly, line: 'ink', weight: 4 });
  }
  shapes.push(
    { d: each((toe) => curves(toe.nail) + 'Z'), fill: whole ? 'shift' : 'nail', line: 'ink', weight: 1.5 },
    { d: each((toe) => bend(toe.nailEdge)), line: 'white', weight: 1.7 },
  );
  if (look.swell > 0) {
    shapes.push({ d: each((toe) => bend(toe.shine)), line: 'white', weight: look.swell === 2 ? 4 : 3 });
  } else {
    shapes.push(
      { d: each((toe) => toe.creases.map(bend).join('')), line: 'ink', weight: 1.3 },
      { d: skinLines.map(bend).join(''), line: 'skin-shade', weight: 1.8 },
    );
  }
  shapes.push({ d: foot.ankleLines.map(bend).join(''), line: 'skin-shade', weight: 2.2 });
  return shapes;
}
