/** Head, trunk in its gown, arms, soft toy and the folded blanket. */
import type { SceneSpec } from '../spec.ts';
import { at, between, distance, oval, plus, smooth, type Point, type Shape } from '../shapes.ts';
import { drawHead } from '../parts/head.ts';
import type { WholeGeometry } from './layout.ts';
import { alongLimb, leftOf, scale, soften, tube, unit } from './limbs.ts';

/** A frame on the trunk: `s` 0 at the neck and 1 at the hip, `n` towards the upper side of the picture. */
export function trunk(g: WholeGeometry) {
  return alongLimb(g.neck, g.hip);
}

/** The middle of the head, a neck's length from the body. */
export function headCenter(g: WholeGeometry): Point {
  return plus(g.neck, scale(unit(g.hip, g.neck), g.build.head * 0.98));
}

/** Head and neck of the child, with the face of the scene. */
export function drawHeadAndNeck(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const center = headCenter(g);
  const way = unit(g.hip, g.neck);
  const angle = (Math.atan2(way.x, -way.y) * 180) / Math.PI;
  const neck = tube([plus(g.neck, scale(way, -12)), plus(g.neck, scale(way, g.build.head * 0.5))], [9.5, 9]);
  // climbing, the head turns towards the edge of the bed
  const lean = g.climbing > 0 ? 10 * g.climbing : 4;
  return [
    { d: smooth(neck, true, 0.6), fill: 'skin', line: 'ink' },
    ...drawHead(center, g.build.head, angle + lean, { face: spec.face, hair: spec.hair, age: spec.age }),
  ];
}

/** The child's body in its gown. */
export function drawTrunk(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const p = trunk(g);
  const wide = 0.78 + 0.22 * g.build.girth;
  const belly = spec.belly * 12;
  const outline = [
    p(0.02, 9),
    p(0.08, 24 * wide),
    p(0.22, 30 * wide),
    p(0.45, 29 * wide + belly * 0.6),
    p(0.7, 28 * wide + belly),
    p(1, 27 * wide + belly * 0.4),
    p(1.22, 20 * wide),
    p(1.3, 2),
    p(1.26, -20 * wide),
    p(1, -29 * wide),
    p(0.7, -28 * wide),
    p(0.42, -28 * wide),
    p(0.2, -29 * wide),
    p(0.08, -23 * wide),
    p(0.02, -9),
  ];
  const collar = [p(-0.02, 11), p(0.08, 5), p(0.1, -4), p(0.04, -12)];
  return [
    { d: smooth(outline, true, 0.95), fill: 'gown', line: 'ink' },
    { d: smooth(collar), line: 'ink', weight: 1.6 },
    // its folds lie under the blanket of a child in bed
    ...(g.climbing > 0.5
      ? [
          {
            d: smooth([p(0.5, 14), p(0.62, 17), p(0.74, 15)]) + smooth([p(0.9, -8), p(0.98, 2), p(1.02, 12)]),
            line: 'soft',
            weight: 1.4,
          },
        ]
      : []),
  ];
}

/** The blanket over the child's body. */
export function drawBlanket(g: WholeGeometry): Shape[] {
  const p = trunk(g);
  const down = at(0, 26);
  const cloth = [
    p(0.5, 31),
    p(0.75, 33),
    p(1.08, 30),
    p(1.16, 10),
    p(1.17, -18),
    plus(p(1.14, -30), at(2, 6)),
    plus(p(1.12, -24), down),
    plus(p(0.85, -26), plus(down, at(0, 2))),
    plus(p(0.5, -25), down),
    p(0.5, -27),
    p(0.5, -6),
    p(0.53, 14),
  ];
  const turned = [
    p(0.5, 31),
    p(0.6, 33),
    p(0.64, 12),
    p(0.6, -10),
    p(0.57, -28),
    plus(p(0.6, -25), down),
    plus(p(0.5, -25), down),
    p(0.5, -27),
    p(0.5, -6),
    p(0.53, 14),
  ];
  return [
    { d: smooth(cloth, true, 0.85), fill: 'blanket', line: 'ink' },
    { d: smooth(turned, true, 0.85), fill: 'sheet', line: 'ink' },
    {
      d:
        smooth([p(1.06, 28), p(1.09, 6), p(1.08, -22), plus(p(1.05, -24), down)]) +
        smooth([p(0.82, -6), p(0.84, -20), plus(p(0.83, -26), at(0, 16))]) +
        smooth([p(0.78, 20), p(0.88, 16), p(0.96, 18)]),
      line: 'soft',
      weight: 1.4,
    },
  ];
}

interface Arm {
  shoulder: Point;
  elbow: Point;
  hand: Point;
}

/** An arm, from shoulder to hand. */
export function drawArm(g: WholeGeometry, arm: Arm): Shape[] {
  const k = 0.7 + 0.3 * g.build.girth;
  const spine = soften(arm.shoulder, arm.elbow, arm.hand);
  const skin = tube(spine, [5.5 * k, 8 * k, 7 * k, 6.6 * k, 5.4 * k]);
  const reach = unit(spine[3]!, arm.hand);
  const palm = plus(arm.hand, scale(reach, 5));
  const side = leftOf(reach);
  const finger = (n: number, long: number) =>
    smooth([
      plus(palm, plus(scale(reach, 2), scale(side, n))),
      plus(palm, plus(scale(reach, long), scale(side, n * 1.05))),
    ]);
  const sleeveEnd = between(arm.shoulder, arm.elbow, 0.62);
  const q = alongLimb(arm.shoulder, sleeveEnd);
  const cuff = [
    [0.96, 9.6],
    [0.86, 11.2],
    [0.5, 11],
    [0.12, 10],
    [-0.14, 6.8],
  ] as const;
  const sleeve = [
    ...cuff.map(([t, n]) => q(t, n * k)),
    q(-0.24, 0),
    ...[...cuff].reverse().map(([t, n]) => q(t, -n * k)),
    q(1, -5 * k),
    q(1, 5 * k),
  ];
  const turn = (Math.atan2(reach.y, reach.x) * 180) / Math.PI;
  return [
    { d: smooth(skin, true, 0.9), fill: 'skin', line: 'ink' },
    {
      d: oval(plus(palm, plus(scale(reach, -1), scale(side, 5.5))), 4.4, 2.5, turn - 30),
      fill: 'skin',
      line: 'ink',
      weight: 1.8,
    },
    { d: oval(palm, 7.6, 5.8, turn), fill: 'skin', line: 'ink', weight: 2 },
    { d: oval(between(arm.hand, palm, 0.2), 5, 4.2, turn), fill: 'skin' },
    { d: finger(2, 7) + finger(-0.6, 7.4) + finger(-3, 6.6), line: 'soft', weight: 1.1 },
    { d: smooth(sleeve, true, 0.8), fill: 'gown', line: 'ink' },
  ];
}

/** The arm that lies on our side of the child. */
export function drawNearArm(g: WholeGeometry): Shape[] {
  const p = trunk(g);
  const out = g.climbing;
  const long = distance(g.neck, g.hip);
  const push = g.flat(g.hinge - 38, 2, -2);
  return drawArm(g, {
    shoulder: p(0.16, -21),
    elbow: between(p(0.5, -33), plus(between(p(0.16, -21), push, 0.52), at(-9, -2)), out),
    hand: between(p(0.6, -33 + long * 0.26), push, out),
  });
}

/** Lying, only the far hand shows, over the toy; climbing, the far arm pushes too. */
export function drawFarArm(g: WholeGeometry): Shape[] {
  const p = trunk(g);
  const out = g.climbing;
  const grip = g.flat(g.hinge + 44, 2, -2);
  return drawArm(g, {
    shoulder: p(0.15, 21),
    elbow: between(p(0.44, 27), plus(between(p(0.15, 21), grip, 0.52), at(9, -2)), out),
    hand: between(p(0.5, 10), grip, out),
  });
}

/** A soft toy in the crook of the arm: any child's, no one's in particular. */
export function drawToy(g: WholeGeometry): Shape[] {
  const c = g.climbing > 0.4 ? g.flat(g.hinge - 64, 10, 40) : trunk(g)(0.33, -2);
  const q = (x: number, y: number) => plus(c, at(x, y));
  return [
    { d: oval(q(9, 9), 8, 9.5, -40), fill: 'pad', line: 'ink', weight: 1.9 },
    { d: oval(q(-6, -9), 3.6, 3.6) + oval(q(6, -9.5), 3.6, 3.6), fill: 'pad', line: 'ink', weight: 1.9 },
    { d: oval(q(0, -1), 9, 8.4), fill: 'pad', line: 'ink', weight: 1.9 },
    { d: oval(q(-3, -2), 0.7, 0.9) + oval(q(3.4, -2), 0.7, 0.9), fill: 'ink', line: 'ink', weight: 1 },
    { d: smooth([q(-2, 2.4), q(0, 3.4), q(2.2, 2.2)]), line: 'ink', weight: 1.2 },
  ];
}
