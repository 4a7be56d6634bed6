/**
 * The child close up: head, chest and belly lying back on the pillow, with room at one side for a thing that
 * tells part of the story. Built for the left side; for the right every point of every path is mirrored.
 */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, oval, plus, ring, smooth, type Picture, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { drawHead, skinOf } from '../parts/head.ts';
import { limb, mirrored, points } from '../parts/points.ts';
import { bedding, blanket } from './child-bed.ts';
import type { ArmLine, ChildGeometry, View } from './child-layout.ts';
import { breathMarks, changeMarks, grownUpCalling } from './child-marks.ts';
import { childProp, sorenessSteps } from './child-props.ts';

export { layoutChild, type ChildGeometry } from './child-layout.ts';

function drawArm(arm: ArmLine, width: number, fill: string): Shape[] {
  const bend = [arm.shoulder, arm.elbow, arm.wrist];
  const soft = points(
    [0, 1 / 6, 1 / 3, 1 / 2, 2 / 3, 5 / 6, 1].flatMap((t) => {
      // a quadratic through the elbow keeps the arm one round limb
      const [a, b, c] = bend as [Point, Point, Point];
      const control = at(2 * b.x - (a.x + c.x) / 2, 2 * b.y - (a.y + c.y) / 2);
      const along = (p: number, q: number, r: number) =>
        (1 - t) * (1 - t) * p + 2 * t * (1 - t) * q + t * t * r;
      return [along(a.x, control.x, c.x), along(a.y, control.y, c.y)];
    }),
  );
  const halves = [1.25, 1.18, 1.12, 1.08, 0.98, 0.84, 0.7].map((k) => k * width);
  const sleeve = soft.slice(0, 4);
  return [
    { d: smooth(limb(soft, halves), true, 0.8), fill, line: 'ink' },
    ...drawHand(arm.wrist, width * 2.85, arm.points, arm.pose, arm.thumb, fill),
    {
      d: smooth(
        limb(
          sleeve,
          [1.02, 1.4, 1.46, 1.4].map((k) => k * width),
        ),
        true,
        0.7,
      ),
      fill: 'gown',
      line: 'ink',
    },
  ];
}

function torso(spec: SceneSpec, g: ChildGeometry): Shape[] {
  const { chest, shoulder: w, neck, head, radius } = g;
  const skin = skinOf(spec.face);
  const chin = head.y + radius * 0.86;
  const collar = chest.y + 16;
  const shapes: Shape[] = [
    {
      d: smooth(
        points([
          -neck,
          chin,
          -neck - 1,
          chest.y - 10,
          -w * 0.62,
          chest.y + 6,
          -w * 0.5,
          collar + 34,
          w * 0.5,
          collar + 34,
          w * 0.62,
          chest.y + 6,
          neck + 1,
          chest.y - 10,
          neck,
          chin,
        ]).map((p, i) => at(p.x + (i === 0 || i === 9 ? head.x : chest.x), p.y)),
        false,
        0.6,
      ),
      fill: skin,
      line: 'ink',
    },
  ];
  const gown = points(
    [
      -w * 0.36,
      chest.y - 3,
      -w * 0.7,
      chest.y + 1,
      -w * 0.98,
      chest.y + 15,
      -w,
      chest.y + 46,
      -w * 0.9,
      262,
      -w * 0.92,
      340,
      w * 0.92,
      340,
      w * 0.9,
      262,
      w,
      chest.y + 46,
      w * 0.98,
      chest.y + 15,
      w * 0.7,
      chest.y + 1,
      w * 0.36,
      chest.y - 3,
      w * 0.27,
      collar + 14,
      0,
      collar + 27,
      -w * 0.27,
      collar + 14,
    ],
    at(chest.x, 0),
    1,
  );
  shapes.push({ d: smooth(gown, true, 0.75), fill: 'gown', line: 'ink' });
  // the neckline's second edge and the folds from the shoulders
  shapes.push({
    d:
      smooth(
        points(
          [
            -w * 0.43,
            chest.y - 1,
            -w * 0.33,
            collar + 18,
            0,
            collar + 34,
            w * 0.33,
            collar + 18,
            w * 0.43,
            chest.y - 1,
          ],
          at(chest.x, 0),
        ),
      ) +
      smooth(
        points([-w * 0.72, chest.y + 40, -w * 0.66, chest.y + 62, -w * 0.68, chest.y + 84], at(chest.x, 0)),
      ) +
      smooth(
        points([w * 0.72, chest.y + 40, w * 0.66, chest.y + 62, w * 0.68, chest.y + 84], at(chest.x, 0)),
      ),
    line: 'soft',
    weight: 1.4,
  });
  return shapes;
}

/** The swollen belly: a round tight hill under the gown, hatched where it is stretched. */
function swollenBelly(spec: SceneSpec, { belly, bellyRadius: r }: ChildGeometry): Shape[] {
  if (spec.belly === 0)
    return [{ d: smooth(points([-r * 0.5, 24, 0, 32, r * 0.5, 24], belly)), line: 'soft', weight: 1.4 }];
  const hill = ring(belly, r, 62, 0, 16);
  const flank = (half: number) =>
    points(
      [0.98, -0.1, 0.94, 0.4, 0.74, 0.76, 0.5, 0.94, 0.62, 0.5, 0.76, 0.1].map((v, i) =>
        i % 2 ? v * 62 : v * r * half,
      ),
      belly,
    );
  return [
    { d: smooth(hill, true), fill: 'gown', line: 'ink', weight: 3.4 },
    { d: hatch(flank(1), 6, 60) + hatch(flank(-1), 6, 120), line: 'ink', weight: 1.4 },
    { d: smooth(points([-r * 0.52, -34, -r * 0.3, -46, 0, -50], belly)), line: 'white', weight: 5 },
    { d: oval(plus(belly, at(0, 16)), 4, 5.5), line: 'ink', weight: 2 },
  ];
}

export function drawChild(spec: SceneSpec, geometry: ChildGeometry, view: View): Picture {
  const g = geometry;
  const skin = skinOf(spec.face);
  const behind = spec.mark === 'wild-arcs';
  const arms = [g.arms.near, g.arms.far].flatMap((arm) => drawArm(arm, g.arm, skin));
  const sick = spec.prop === 'bowl-used';
  const mouth = sick ? 'sick' : spec.breath === 2 ? 'gasping' : undefined;
  const head = drawHead(g.head, g.radius, g.tilt, {
    face: spec.face,
    hair: spec.hair,
    age: spec.age,
    ...(mouth && { mouth }),
  });
  const prop = childProp(spec, g);
  const handAtHead = spec.mark === 'head-rays';
  const shapes = [
    ...bedding(g),
    ...(behind ? arms : []),
    ...torso(spec, g),
    ...swollenBelly(spec, g),
    ...blanket(g, spec.belly === 1),
    ...(behind || handAtHead ? [] : arms),
    ...head,
    ...(handAtHead ? arms : []),
    ...breathMarks(spec, g),
    ...changeMarks(spec, g),
    ...prop,
    ...sorenessSteps(spec, g),
    ...(spec.mark === 'no-answer' ? grownUpCalling(g) : []),
  ];
  return { ...view, shapes: spec.side === 'left' ? shapes : mirrored(shapes, view.width) };
}
