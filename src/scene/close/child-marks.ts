/** What tells of a change around the child: breath, shaking, sweat, rays, a call without an answer. */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, plus, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { headForm } from '../parts/head.ts';
import { arc, limb, points } from '../parts/points.ts';
import { drawProfile } from '../parts/person.ts';
import type { ChildGeometry } from './child-layout.ts';

const mark = (d: string, weight = 4): Shape => ({ d, line: 'mark', weight });

/** A point of the head, in half face heights, wherever the head is and however it lies. */
const onHead = (g: ChildGeometry, x: number, y: number): Point =>
  turn(plus(g.head, at(x * g.radius, y * g.radius)), g.head, g.tilt);

export function breathMarks(spec: SceneSpec, g: ChildGeometry): Shape[] {
  if (spec.breath === 0) return [];
  const { chest, shoulder: w } = g;
  const middle = at(chest.x, chest.y + 30);
  const beside = (r: number, span: number) =>
    arc(middle, r, -span, span) + arc(middle, r, 180 - span, 180 + span);
  if (spec.breath === 1) return [mark(beside(w + 36, 20), 3.4)];
  const rib = (half: number, row: number) => {
    const y = chest.y + 58 + row * 15;
    return smooth(
      points([half * w * 0.2, y - 8, half * w * 0.46, y - 3, half * w * 0.74, y + 9], at(chest.x, 0)),
    );
  };
  const hollow = points([-15, 4, 0, 9, 15, 4, 6, 24, 0, 29, -6, 24], at(chest.x, chest.y - 2));
  const form = headForm(spec.age);
  const nostril = (half: number, out: number) =>
    smooth(
      [-0.1, 0, 0.11].map((dy, i) =>
        onHead(g, half * (0.17 + out + (i === 1 ? 0.07 : 0)), form.nose + 0.06 + dy),
      ),
    );
  return [
    { d: smooth(hollow, true), fill: 'skin-shade', line: 'ink', weight: 2 },
    { d: hatch(hollow, 5, 90), line: 'ink', weight: 1.4 },
    {
      d: [1, -1].flatMap((half) => [0, 1, 2].map((row) => rib(half, row))).join(''),
      line: 'ink',
      weight: 3.2,
    },
    mark([1, -1].map((half) => nostril(half, 0) + nostril(half, 0.13)).join(''), 3.2),
    mark(beside(w + 34, 28) + beside(w + 52, 32), 5.4),
  ];
}

/** A drop hanging with its point up. */
function drop(p: Point, size: number): string {
  const on = (...flat: number[]) => points(flat, p, size).map((q) => `${q.x.toFixed(1)} ${q.y.toFixed(1)}`);
  const [top, a, b, c, d, low, e, f, g, h] = on(
    ...[
      0, -1.5, 0.25, -0.8, 0.72, -0.3, 0.72, 0.2, 0.72, 0.65, 0, 0.9, -0.72, 0.65, -0.72, 0.2, -0.72, -0.3,
      -0.25, -0.8,
    ],
  );
  return `M${top}C${a} ${b} ${c}C${d} ${d} ${low}C${e} ${e} ${f}C${g} ${h} ${top}Z`;
}

const drops = (places: readonly (readonly [Point, number])[]): Shape => ({
  d: places.map(([p, size]) => drop(p, size)).join(''),
  fill: 'tear',
  line: 'ink',
  weight: 2,
});

function rays(center: Point, rx: number, ry: number, angles: readonly number[], length: number): string {
  return angles
    .map((degrees) => {
      const a = (degrees * Math.PI) / 180;
      const [c, s] = [Math.cos(a), Math.sin(a)];
      return straight([
        at(center.x + rx * c, center.y + ry * s),
        at(center.x + (rx + length) * c, center.y + (ry + length) * s),
      ]);
    })
    .join('');
}

/** A trembling line along an arc: small waves, or sharp teeth. */
function tremble(
  center: Point,
  rx: number,
  ry: number,
  from: number,
  to: number,
  swing: number,
  teeth: number,
  sharp: boolean,
): string {
  const line = Array.from({ length: teeth + 1 }, (_, i) => {
    const a = ((from + ((to - from) * i) / teeth) * Math.PI) / 180;
    const k = i % 2 === 0 ? 0 : swing;
    return at(center.x + (rx + k) * Math.cos(a), center.y + (ry + k) * Math.sin(a));
  });
  return sharp ? straight(line) : smooth(line);
}

export function changeMarks(spec: SceneSpec, g: ChildGeometry): Shape[] {
  const { chest, shoulder: w, belly, radius: r } = g;
  const body = at(chest.x, 232);
  switch (spec.mark) {
    case 'shiver-arcs':
      return [
        mark(
          [0, 16]
            .map(
              (out) =>
                tremble(body, w + 32 + out, 110 + out, -40, 36, 9, 8, false) +
                tremble(body, w + 32 + out, 110 + out, 220, 144, 9, 8, false),
            )
            .join('') +
            tremble(g.head, r * 1.28, r * 1.22, -30, 12, 8, 5, false) +
            tremble(g.head, r * 1.28, r * 1.22, 210, 168, 8, 5, false),
          4,
        ),
      ];
    case 'fit-arcs':
      return [
        mark(
          [0, 18]
            .map(
              (out) =>
                tremble(body, w + 44 + out, 96 + out, -46, 40, 12, 8, true) +
                tremble(body, w + 44 + out, 96 + out, 226, 140, 12, 8, true),
            )
            .join('') +
            tremble(g.head, r * 1.26, r * 1.2, -36, 20, 12, 6, true) +
            tremble(g.head, r * 1.26, r * 1.2, 216, 160, 12, 6, true),
          4.4,
        ),
      ];
    case 'sweat-drops': {
      const head = (x: number, y: number, size: number) => [onHead(g, x, y), size] as const;
      return [
        drops([
          head(-0.5, -0.24, 8),
          head(0.02, -0.3, 7),
          head(0.56, -0.2, 8),
          head(-0.72, 0.44, 8),
          head(0.7, 0.5, 8),
          head(0.3, 0.86, 6),
          head(1.16, -0.3, 12),
          head(-1.2, -0.22, 12),
          head(1.3, 0.34, 10),
          head(-1.3, 0.42, 10),
          [at(chest.x - 12, chest.y + 14), 6],
          [at(chest.x + 14, chest.y + 20), 6],
        ]),
      ];
    }
    case 'belly-rays': {
      const [rx, ry] = [g.bellyRadius + 10, 70];
      return [mark(rays(belly, rx, ry, [-12, -34, -58, -90, -122, -146, -168], 26), 5.5)];
    }
    case 'head-rays':
      return [
        mark(
          rays(g.head, r * 1.06, r * 1.2, [-18, 196], 30) +
            rays(g.head, r * 1.24, r * 1.2, [-40, 220], 26) +
            rays(g.head, r, r * 1.06, [-64, 244], 22),
          5.5,
        ),
      ];
    case 'wild-arcs':
      return [
        mark(
          [0, 14].map((out) => arc(at(chest.x - w - 22, 92), 36 + out, 130, 226)).join('') +
            [0, 15].map((out) => arc(at(chest.x + w + 84, 206), 60 + out, -46, 34)).join('') +
            arc(g.head, r * 1.3, -58, -14) +
            arc(g.head, r * 1.3, 196, 240),
          4.6,
        ),
      ];
    default:
      return [];
  }
}

/** A grown-up leans in with a hand on the child's shoulder and calls; nothing comes back. */
export function grownUpCalling(g: ChildGeometry): Shape[] {
  const hand = at(g.chest.x + g.shoulder + 8, g.chest.y + 26);
  const arm = limb(points([448, 214, 404, 246, 356, 236, hand.x + 4, hand.y + 4]), [30, 24, 17, 14]);
  const mouth = at(364, 120);
  return [
    {
      d:
        smooth(points([480, 166, 452, 172, 416, 190, 402, 236, 410, 300, 420, 360, 480, 360]), false, 0.8) +
        'Z',
      fill: 'bag',
      line: 'ink',
    },
    { d: smooth(arm, true, 0.8), fill: 'hand', line: 'ink' },
    ...drawHand(hand, 46, 196, 'rest', -1, 'hand'),
    {
      d: smooth(
        points([480, 190, 440, 204, 400, 222, 376, 224, 374, 262, 404, 272, 444, 264, 480, 250]),
        false,
        0.8,
      ),
      fill: 'bag',
      line: 'ink',
    },
    ...drawProfile(at(416, 106), 57, { facing: -1, mouth: 'calling', hair: 'short' }),
    mark([16, 34, 52].map((r) => arc(mouth, r, 148, 212)).join(''), 4.6),
  ];
}
