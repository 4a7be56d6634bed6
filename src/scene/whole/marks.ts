/** Lines that tell of a change: rays, arcs, dots and zigzags, each at its place. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  between,
  hatch,
  oval,
  plus,
  ring,
  smooth,
  straight,
  turn,
  type Point,
  type Shape,
} from '../shapes.ts';
import type { WholeGeometry } from './layout.ts';
import { headCenter, trunk } from './body.ts';
import { KNEE, legFrame } from './leg.ts';
import { leftOf, scale, unit } from './limbs.ts';

/** Rays around a place, from `from` to `to` degrees (0 points up, clockwise). */
function rays(
  center: Point,
  inner: number,
  outer: number,
  from: number,
  to: number,
  count: number,
  weight = 3,
): Shape {
  const d = Array.from({ length: count }, (_, i) => {
    const angle = from + ((to - from) * i) / Math.max(1, count - 1);
    return straight([
      turn(plus(center, at(0, -inner)), center, angle),
      turn(plus(center, at(0, -outer)), center, angle),
    ]);
  });
  return { d: d.join(''), line: 'mark', weight };
}

/** Arcs that follow the outside of something that moves, one behind the other. */
function arcs(middle: Point, outward: Point, half: number, count: number, gap = 8): string {
  const side = leftOf(outward);
  return Array.from({ length: count }, (_, i) => {
    const reach = half * (1 - i * 0.2);
    const bend = reach * 1.25;
    const center = plus(middle, scale(outward, i * gap - bend));
    return smooth(
      [-52, -26, 0, 26, 52].map((degrees) => {
        const a = (degrees * Math.PI) / 180;
        return plus(center, plus(scale(side, bend * Math.sin(a)), scale(outward, bend * Math.cos(a))));
      }),
    );
  }).join('');
}

/** What is marked on the whole picture; nothing where nothing is. */
export function drawMark(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const leg = legFrame(spec, g);
  const p = trunk(g);
  const head = headCenter(g);
  const crown = unit(g.neck, head);
  const r = g.build.head;
  const toes = plus(g.ankle, at(12, -36 * g.build.foot));
  const heel = plus(g.ankle, at(6, 15 * g.build.foot));
  const up = at(0, -1);
  switch (spec.mark) {
    case 'none':
      return [];
    case 'numb-dots':
      return [
        {
          d: ring(toes, 19, 17, 0, 12)
            .map((q) => oval(q, 1.8, 1.8))
            .join(''),
          fill: 'mark',
          line: 'mark',
          weight: 1,
        },
      ];
    case 'heel-rays':
      return [rays(heel, 8, 20, 110, 250, 5)];
    case 'skin-patch': {
      const patch = ring(plus(heel, at(-3, -3)), 9, 6.5, 20, 10);
      return [
        { d: smooth(patch, true), fill: 'shift', line: 'ink', weight: 1.6 },
        { d: hatch(patch, 3.4, 45), line: 'ink', weight: 1.1 },
        { d: oval(plus(heel, at(-3, -3)), 14, 11), line: 'mark', weight: 2.6 },
      ];
    }
    case 'burn-rays': {
      const spot = leg.line(0.72, 2);
      return [{ d: oval(spot, 4, 4), fill: 'mark', line: 'mark' }, rays(spot, 8, 19, 0, 315, 8)];
    }
    case 'itch-dots': {
      const dots = [0.58, 0.64, 0.7, 0.76, 0.82].flatMap((s, i) => [
        leg.line(s, i % 2 ? 6 : 2),
        leg.line(s + 0.02, i % 2 ? -3 : -8),
      ]);
      return [{ d: dots.map((q) => oval(q, 1.9, 1.9)).join(''), fill: 'mark', line: 'mark', weight: 1 }];
    }
    case 'jump-zigzag': {
      const zig = [0, 0.07, 0.14, 0.21, 0.28, 0.35].map((s, i) => leg.upper(s + 0.02, i % 2 ? 30 : 14));
      return [{ d: straight(zig), line: 'mark', weight: 3.4 }];
    }
    case 'shiver-arcs': {
      const top = [0.3, 0.65].map((s) => arcs(p(s, 40), leftOf(unit(g.neck, g.hip)), 10, 2, 7)).join('');
      return [
        { d: top + arcs(plus(head, scale(crown, r + 10)), crown, 12, 2, 6), line: 'mark', weight: 2.6 },
      ];
    }
    case 'fit-arcs': {
      const trunkUp = leftOf(unit(g.neck, g.hip));
      const legUp = leftOf(unit(g.hipNear, g.ankle));
      const kneeUp = unit(between(g.otherHip, g.otherAnkle, 0.5), g.knee);
      const lines = [
        arcs(plus(head, scale(trunkUp, r + 13)), trunkUp, 22, 3, 9),
        arcs(p(0.5, 50), trunkUp, 22, 3, 9),
        arcs(plus(g.knee, scale(kneeUp, 28)), kneeUp, 22, 3, 9),
        arcs(plus(between(g.knee, g.otherAnkle, 0.5), at(22, -20)), at(0.75, -0.66), 17, 2, 9),
        arcs(plus(toes, at(4, -26)), at(0.12, -0.99), 17, 3, 8),
        arcs(leg.lower(0.3, 14), scale(legUp, -1), 20, 2, 8),
        arcs(leg.lower(0.74, 18), scale(legUp, -1), 20, 2, 8),
        arcs(p(0.05, -50), scale(trunkUp, -1), 20, 2, 8),
      ];
      return [{ d: lines.join(''), line: 'mark', weight: 3.8 }];
    }
    case 'wild-arcs': {
      const side = leftOf(unit(g.neck, g.hip));
      return [
        {
          d:
            arcs(plus(head, scale(side, r + 10)), side, 13, 3, 8) +
            arcs(p(0.5, 44), side, 14, 3, 8) +
            arcs(plus(g.knee, at(0, -26)), up, 12, 2, 8),
          line: 'mark',
          weight: 3,
        },
      ];
    }
    case 'no-answer': {
      const from = plus(head, at(-4, -r - 14));
      const waves = [0, 9, 18].map((y) =>
        smooth([
          plus(from, at(-10 - y * 0.3, -y - 3)),
          plus(from, at(0, -y)),
          plus(from, at(10 + y * 0.3, -y - 3)),
        ]),
      );
      return [
        { d: waves.join(''), line: 'ink', weight: 2.4 },
        { d: straight([plus(from, at(-15, 4)), plus(from, at(17, -26))]), line: 'mark', weight: 3.2 },
      ];
    }
    case 'sweat-drops': {
      const drop = (q: Point) =>
        smooth([plus(q, at(0, -6)), plus(q, at(3.4, 1)), plus(q, at(0, 4)), plus(q, at(-3.4, 1))], true);
      return [
        {
          d: [at(-r * 0.4, -r - 5), at(r * 0.3, -r - 8), at(r * 0.9, -r - 2), at(-r * 0.95, -r * 0.8)]
            .map((o) => drop(plus(head, o)))
            .join(''),
          fill: 'wet',
          line: 'ink',
          weight: 1.6,
        },
      ];
    }
    case 'belly-rays':
      return [rays(p(0.75, 26), 16, 32, -52, 52, 5)];
    case 'head-rays':
      return [rays(head, r + 8, r + 20, -110, 10, 6)];
    case 'other-leg': {
      const spot = between(g.knee, g.otherAnkle, 0.36);
      return [rays(spot, 25, 48, -8, 92, 6, 4)];
    }
  }
}

/** A body far from its pillow: one long arrow beside it tells the way it went. */
export function drawSlid(spec: SceneSpec, g: WholeGeometry): Shape[] {
  if (spec.slide < 0.3 || g.climbing > 0.4) return [];
  const high = 140;
  const from = g.flat(g.hinge - 92, high, 20);
  const to = g.flat(g.hinge - 92 + 56 + 100 * spec.slide, high, 20);
  const way = unit(from, to);
  const side = leftOf(way);
  const q = (along: Point, back: number, n: number) => plus(plus(along, scale(way, -back)), scale(side, n));
  const arrow = [
    q(from, 0, 8),
    q(to, 30, 8),
    q(to, 30, 22),
    to,
    q(to, 30, -22),
    q(to, 30, -8),
    q(from, 0, -8),
  ];
  return [{ d: straight(arrow, true), fill: 'mark', line: 'ink' }];
}

/** What the nose would notice, and how hard the chest works. */
export function drawSmellAndBreath(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const shapes: Shape[] = [];
  if (spec.smell === 1) {
    const leg = legFrame(spec, g);
    const line = (s: number) =>
      smooth([
        leg.upper(s, 8),
        plus(leg.upper(s, 15), at(4, 0)),
        plus(leg.upper(s, 22), at(-3, 0)),
        plus(leg.upper(s, 30), at(3, 0)),
      ]);
    shapes.push({ d: line(KNEE + 0.14) + line(KNEE + 0.22) + line(KNEE + 0.3), line: 'mark', weight: 2.2 });
  }
  if (spec.breath > 0) {
    const p = trunk(g);
    const side = leftOf(unit(g.neck, g.hip));
    shapes.push({ d: arcs(p(0.3, 38), side, 16, spec.breath + 1, 8), line: 'mark', weight: 2.8 });
  }
  return shapes;
}
