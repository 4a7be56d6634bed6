/** What pulls: the leg bandage on the shin, its side strips, the foot plate and the cord that runs down to us. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  between,
  hatch,
  mix,
  oval,
  plus,
  smooth,
  straight,
  turn,
  type Point,
  type Shape,
} from '../shapes.ts';
import { alongSide, MIDDLE, APART, type FeetGeometry } from './layout.ts';
import { bend, onward } from './curves.ts';
import { dots } from './foot.ts';

const QUIET = 1.4;
const centre = MIDDLE + APART;
const beside = (p: Point, dx: number) => at(p.x + dx, p.y);

/** The strips of the bandage that run past both sides of the foot to the ends of the foot plate. */
export function drawStrips(g: FeetGeometry): Shape[] {
  const ends = [-1, 1].map((side) =>
    turn(at(centre + side * (g.plate.half - 6), g.plate.center.y), g.plate.center, g.plate.tilt),
  );
  return ends.flatMap((end, i) => {
    const out = i === 0 ? -1 : 1;
    const line = [
      at(centre + out * 36, g.penY - 12),
      at(centre + out * 62, g.ankleY + 22),
      at(centre + out * 93, g.ankleY + 76),
      beside(end, out * 1),
    ];
    const strip = [...line.map((p) => beside(p, -5)), ...line.map((p) => beside(p, 5)).reverse()];
    return [{ d: straightEnds(strip), fill: 'band', line: 'ink' }];
  });
}
/** Two soft long sides with straight ends. */
const straightEnds = (points: readonly Point[]): string => {
  const half = points.length / 2;
  return smooth(points.slice(0, half)) + smooth(points.slice(half)).replace('M', 'L') + 'Z';
};

/** The foot plate as seen from the bed's end. */
export function drawPlate(g: FeetGeometry): Shape[] {
  const { center, half, height, tilt } = g.plate;
  const spot = (x: number, y: number) => turn(at(center.x + x, center.y + y), center, tilt);
  const h = height / 2;
  const board = [
    [-half + 5, -h],
    [half - 5, -h],
    [half, -h + 4],
    [half, h - 4],
    [half - 5, h],
    [-half + 5, h],
    [-half, h - 4],
    [-half, -h + 4],
  ].map(([x, y]) => spot(x!, y!));
  const grain = [
    [spot(-70, -2), spot(-30, 0), spot(-16, -1)],
    [spot(18, 3), spot(40, 1), spot(72, 3)],
  ];
  const wrap = (x: number) => [
    spot(x - 6, -h - 2),
    spot(x + 6, -h - 2),
    spot(x + 6, h + 2),
    spot(x - 6, h + 2),
  ];
  return [
    { d: straight(board, true), fill: 'plate', line: 'ink' },
    { d: grain.map(bend).join(''), line: 'frame', weight: QUIET },
    { d: straight(wrap(-half + 12), true) + straight(wrap(half - 12), true), fill: 'band', line: 'ink' },
  ];
}

/** The cord from the plate towards the reader. */
export function drawCord(spec: SceneSpec, g: FeetGeometry): Shape[] {
  const from = g.plate.center;
  const to = g.cordEnd;
  const twine = (d: string): Shape[] => [
    { d, line: 'cord', weight: 5.5 },
    { d, line: 'band-shade', weight: 1.6, dash: '3 4' },
  ];
  const knot: Shape = { d: oval(from, 7, 6), fill: 'band-shade', line: 'ink' };
  const half = between(from, to, 0.62);
  switch (spec.cord) {
    case 'frayed': {
      const hairs = [-9, -5, 6, 10].map((dx, i) =>
        smooth([beside(half, dx / 4), plus(half, at(dx * 0.7, 3)), plus(half, at(dx, i % 2 ? 7 : -7))]),
      );
      return [
        { d: straight([from, to]), line: 'cord', weight: 2 },
        ...twine(straight([from, at(from.x, half.y - 9)])),
        { d: hairs.join(''), line: 'ink', weight: 1.6 },
        knot,
      ];
    }
    case 'toy-on-cord': {
      // a ring of wooden beads hung over the cord
      const beads = Array.from({ length: 7 }, (_, i) =>
        turn(at(half.x + 12, half.y + 14), plus(half, at(12, 0)), (i * 360) / 7),
      );
      const ringed = beads.map((p) => at(p.x, Math.min(p.y, 350)));
      return [
        ...twine(straight([from, to])),
        knot,
        { d: ringed.map((p) => oval(p, 6, 6)).join(''), fill: 'plate', line: 'ink' },
      ];
    }
    case 'caught':
      return [
        ...twine(
          smooth([
            from,
            plus(from, at(4, 12)),
            plus(half, at(34, -4)),
            plus(half, at(44, 4)),
            at(to.x + 60, to.y),
          ]),
        ),
        knot,
      ];
    case 'under-blanket':
      return [
        ...twine(straight([from, to])),
        knot,
        {
          d:
            smooth([
              at(centre - 70, 358),
              at(centre - 62, 336),
              at(centre - 20, 331),
              at(centre + 30, 335),
              at(centre + 72, 329),
              at(centre + 84, 358),
            ]) + 'Z',
          fill: 'blanket',
          line: 'ink',
        },
      ];
    default:
      return [...twine(straight([from, to])), knot];
  }
}

/** The leg bandage with all that can be seen on it from here. */
export function drawBandage(spec: SceneSpec, g: FeetGeometry): Shape[] {
  const { inner, outer } = g.pulled;
  const pinch = spec.bandTight * 4;
  const edge = g.edgeY;
  const levels = [0, 0.5, 1].map((t) => t * edge);
  const thick = (y: number) => 5 - pinch * (edge > 0 ? Math.max(0, (y / edge - 0.5) * 2) : 0);
  const left = levels.map((y) => beside(alongSide(inner, y), -thick(y)));
  const right = levels.map((y) => beside(alongSide(outer, y), thick(y)));
  const [endLeft, endRight] = [left[2]!, right[2]!];
  const hem = [0.33, 0.67].map((t) => at(mix(endLeft.x, endRight.x, t), edge + 9 * (1 - (2 * t - 1) ** 2)));
  const outline =
    smooth(left) +
    onward(smooth([endLeft, ...hem, endRight])) +
    onward(smooth(right.slice().reverse())) +
    'Z';
  const wrap = (y: number): Point[] => [
    beside(alongSide(inner, Math.max(1, y - 14)), -4),
    at(centre, Math.max(1, y + 4)),
    beside(alongSide(outer, y), 4),
  ];
  const wraps = [edge - 13, edge - 34, edge - 55, edge - 76, edge - 97].filter((y) => y > 6);
  const shapes: Shape[] = [];
  if (spec.bandTight > 0) shapes.push(...bulge(spec, endLeft, endRight, edge));
  shapes.push({ d: outline, fill: 'band', line: 'ink' });
  shapes.push({ d: wraps.map((y) => bend(wrap(y))).join(''), line: 'band-shade', weight: 2.2 });
  shapes.push(...onBandage(spec, g, edge));
  const line = [alongSide(inner, g.penY), at(centre, g.penY + 8), alongSide(outer, g.penY)];
  const pen = line.map((p, i) => plus(p, at((i - 1) * 9, 4)));
  shapes.push({ d: bend(pen), line: 'pen', weight: 3.4, dash: '9 5' });
  return shapes;
}

/** Skin that swells out below an edge which sits too tight. */
function bulge(spec: SceneSpec, left: Point, right: Point, edge: number): Shape[] {
  const out = 4 + 7 * spec.bandTight;
  const deep = 9 + 6 * spec.bandTight;
  const roll = [
    plus(left, at(2, -2)),
    at(left.x - out, edge + deep * 0.45),
    at(left.x + 2, edge + deep),
    at(centre, edge + deep + 10),
    at(right.x - 2, edge + deep),
    at(right.x + out, edge + deep * 0.45),
    plus(right, at(-2, -2)),
    at(centre, edge + 4),
  ];
  const dents = [-22, -8, 8, 22].map((dx) =>
    straight([at(centre + dx, edge + 12), at(centre + dx * 1.1, edge + 17)]),
  );
  return [
    { d: smooth(roll, true), fill: 'skin', line: 'ink' },
    { d: dents.join(''), line: 'ink', weight: 1.6 },
  ];
}

function onBandage(spec: SceneSpec, g: FeetGeometry, edge: number): Shape[] {
  const shapes: Shape[] = [];
  const mid = Math.max(14, edge * 0.55);
  if (spec.bandWrinkle > 0) {
    const folds = [-20, -4, 12]
      .slice(0, spec.bandWrinkle + 1)
      .map((dx) =>
        smooth([
          at(centre + dx, edge - 20),
          at(centre + dx + 9, edge - 14),
          at(centre + dx + 4, edge - 8),
          at(centre + dx + 14, edge - 2),
        ]),
      );
    shapes.push({ d: folds.join(''), line: 'ink', weight: 1.8 });
  }
  if (spec.bandGap > 0) {
    const gap = oval(at(centre + 4, mid), 12 + 5 * spec.bandGap, 2.5 * spec.bandGap, 8);
    shapes.push({ d: gap, fill: 'skin', line: 'ink', weight: 1.8 });
  }
  if (spec.bandWet > 0) {
    const top = edge - Math.max(10, edge * 0.85) * spec.bandWet;
    const [a, b] = [alongSide(g.pulled.inner, edge - 4), alongSide(g.pulled.outer, edge - 4)];
    const [c, d] = [alongSide(g.pulled.inner, Math.max(3, top)), alongSide(g.pulled.outer, Math.max(3, top))];
    const field = [
      a,
      at(centre, edge + 5),
      b,
      d,
      at(centre + 14, Math.max(3, top + 8)),
      at(centre - 8, Math.max(3, top - 2)),
      c,
    ];
    shapes.push({ d: smooth(field, true, 0.6), fill: 'wet', line: 'ink', weight: QUIET });
    shapes.push({ d: hatch(field, 7, 90), line: 'ink', weight: 1.2, dash: '5 4' });
    const drop = (p: Point) =>
      smooth([at(p.x, p.y - 7), at(p.x + 4.5, p.y + 2), at(p.x, p.y + 6), at(p.x - 4.5, p.y + 2)], true, 0.8);
    const drops = [at(a.x - 14, edge + 18), at(b.x + 15, edge + 12), at(b.x + 22, edge + 32)];
    shapes.push({
      d: drops
        .slice(0, 1 + Math.round(spec.bandWet * 2))
        .map(drop)
        .join(''),
      fill: 'wet',
      line: 'ink',
      weight: 1.6,
    });
  }
  if (spec.bandStain !== 'none') {
    const y = Math.max(16, edge - 17);
    const blot = [
      at(-17, -2),
      at(-8, -12),
      at(4, -8),
      at(15, -10),
      at(18, 2),
      at(9, 10),
      at(-3, 7),
      at(-13, 11),
    ].map((p) => plus(p, at(centre - 3, y)));
    shapes.push({
      d: smooth(blot, true),
      fill: spec.bandStain === 'red' ? 'red' : 'brown',
      line: 'ink',
      weight: 1.6,
    });
    // dried brown is ringed, fresh red is solid
    if (spec.bandStain === 'yellow-brown')
      shapes.push({ d: oval(at(centre - 1, y), 27, 17), line: 'brown', weight: 1.8, dash: '4 4' });
  }
  if (spec.smell === 1) {
    const x = alongSide(g.pulled.outer, edge).x + 20;
    const wave = (k: number) =>
      smooth([0, 1, 2, 3, 4].map((i) => at(x + k * 15 + (i % 2 ? 4.5 : -4.5), 12 + i * 9 + k * 3)));
    shapes.push({ d: [0, 1, 2].map(wave).join(''), line: 'brown', weight: 2.6 });
  }
  if (spec.mark === 'itch-dots') {
    const spots = [
      at(-18, -6),
      at(-7, 5),
      at(4, -9),
      at(14, 3),
      at(-20, 9),
      at(22, -8),
      at(0, 13),
      at(12, -18),
      at(-8, -17),
    ];
    shapes.push({
      d: dots(spots.map((p) => plus(p, at(centre, Math.max(26, edge - 20))))),
      line: 'mark',
      weight: 5,
    });
  }
  if (spec.mark === 'burn-rays') shapes.push(...rays(at(centre, Math.max(26, edge - 18)), 9, 22));
  return shapes;
}

/** Short rays round a place that hurts or burns. */
export function rays(p: Point, from: number, to: number, count = 10, start = 0, sweep = 360): Shape[] {
  const d = Array.from({ length: count }, (_, i) => {
    const angle = start + (i * sweep) / (sweep === 360 ? count : count - 1);
    return straight([turn(at(p.x + from, p.y), p, angle), turn(at(p.x + to, p.y), p, angle)]);
  });
  return [{ d: d.join(''), line: 'mark', weight: 3 }];
}
