/** What tells of a change around the child: breath, shaking, sweat, rays, a call without an answer. */
import type { SceneSpec } from '../spec.ts';
import { at, between, plus, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { headForm } from '../parts/head.ts';
import { arc, limb, points } from '../parts/points.ts';
import { drawProfile } from '../parts/person.ts';
import type { ChildGeometry } from './child-layout.ts';

const mark = (d: string, weight = 4): Shape => ({ d, line: 'mark', weight });

/** A point of the head, in half face heights, wherever the head is and however it lies. */
const onHead = (g: ChildGeometry, x: number, y: number): Point =>
  turn(plus(g.head, at(x * g.radius, y * g.radius)), g.head, g.tilt);

/** What shows that breathing is hard work; nothing where it is not. */
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
  const mouth = onHead(g, 0, headForm(spec.age).mouth + 0.06);
  const puff = (k: number) => arc(mouth, g.radius * k, -16, 20) + arc(mouth, g.radius * k, 160, 196);
  return [
    {
      d: [1, -1].flatMap((half) => [0, 1, 2, 3].map((row) => rib(half, row))).join(''),
      line: 'ink',
      weight: 3.4,
    },
    mark(puff(0.98) + puff(1.16), 3.6),
    mark(beside(w + 34, 28) + beside(w + 52, 32), 5.6),
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

/** What is marked on the child that is different: shivering, sweat, a fit, a sore place. */
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
                tremble(body, w + 34 + out, 96 + out, -44, 34, 9, 8, false) +
                tremble(body, w + 34 + out, 96 + out, 224, 146, 9, 8, false),
            )
            .join(''),
          4.4,
        ),
        drops([
          [onHead(g, -0.4, -0.22), 7],
          [onHead(g, 0.04, -0.3), 8],
          [onHead(g, 0.46, -0.2), 7],
          [onHead(g, 0.72, 0.06), 6],
          [onHead(g, -0.74, 0.02), 6],
        ]),
      ];
    case 'fit-arcs':
      return [
        mark(
          [0, 18]
            .map(
              (out) =>
                tremble(body, Math.min(w + 60, 138) + out, 92 + out, -34, 24, 13, 5, true) +
                tremble(body, Math.min(w + 60, 138) + out, 92 + out, 214, 156, 13, 5, true) +
                tremble(g.head, r * 1.3 + out, r * 1.24 + out, -40, 26, 14, 5, true) +
                tremble(g.head, r * 1.3 + out, r * 1.24 + out, 220, 154, 14, 5, true),
            )
            .join(''),
          5,
        ),
      ];
    case 'sweat-drops': {
      const head = (x: number, y: number, size: number) => [onHead(g, x, y), size] as const;
      return [
        drops([
          head(-0.48, -0.24, 9),
          head(0, -0.3, 8),
          head(0.5, -0.22, 9),
          head(-0.76, 0.1, 7),
          head(0.76, 0.14, 7),
          head(-0.56, 0.52, 9),
          head(0.54, 0.56, 9),
          [at(chest.x - 11, chest.y + 8), 7],
          [at(chest.x + 12, chest.y + 14), 7],
          [at(chest.x - w - 12, 274), 7],
          [at(chest.x + w + 13, 268), 7],
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
  const hand = at(g.chest.x + g.shoulder + 10, g.chest.y + 30);
  const elbow = at(372, 252);
  const forearm = limb([elbow, between(elbow, hand, 0.5), plus(hand, at(4, 3))], [18, 16, 12]);
  const mouth = at(358, 114);
  const back = [480, 158, 458, 154, 442, 158, 430, 172, 404, 176, 390, 192, 386, 240, 392, 300, 396, 360];
  const sleeve = points([
    412, 184, 396, 190, 376, 214, 350, 236, 344, 262, 366, 276, 396, 272, 420, 252, 436, 228,
  ]);
  return [
    {
      d: smooth(points([394, 132, 398, 156, 396, 196, 446, 196, 444, 156, 446, 120]), false, 0.5),
      fill: 'skin',
      line: 'ink',
    },
    { d: smooth(points(back), false, 0.8) + 'L480 360Z', fill: 'bag', line: 'ink' },
    { d: smooth(forearm, true, 0.7), fill: 'skin', line: 'ink' },
    ...drawHand(hand, 46, 200, 'rest', -1, 'skin'),
    // one cloth with the back: the shoulder end stays open
    { d: smooth(sleeve, true, 0.8), fill: 'bag' },
    { d: smooth(sleeve, false, 0.8), line: 'ink' },
    ...drawProfile(at(412, 98), 56, { facing: -1, mouth: 'calling', hair: 'short', skin: 'skin' }),
    mark([16, 34, 52].map((r) => arc(mouth, r, 148, 212)).join(''), 4.6),
  ];
}
