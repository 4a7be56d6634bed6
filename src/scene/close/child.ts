/**
 * The child close up: head, chest and belly lying back on the pillow, with room at one side for a thing that
 * tells part of the story. Built for the left side; for the right every point of every path is mirrored.
 */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, smooth, turn, type Picture, type Shape, type View } from '../shapes.ts';
import { drawHead, skinOf } from '../parts/head.ts';
import { heldInside, mirrored, points } from '../parts/points.ts';
import { drawArm } from './child-arm.ts';
import { bedding, blanket } from './child-bed.ts';
import type { ChildGeometry } from './child-layout.ts';
import { breathMarks, changeMarks, grownUpCalling } from './child-marks.ts';
import { childProp } from './child-props.ts';
import { sorenessStair } from './child-stair.ts';

function torso(spec: SceneSpec, g: ChildGeometry): Shape[] {
  const { chest, shoulder: w, neck, head, radius } = g;
  const skin = skinOf(spec.face);
  // a rolled head takes the neck with it
  const chin = turn(at(head.x, head.y + radius * (g.tilt < 0 ? 0.55 : 0.8)), head, g.tilt);
  // under a rolled head its upper end is hidden
  const top = g.tilt < 0 ? neck * 0.5 : neck;
  const collar = chest.y + 16;
  const shapes: Shape[] = [
    {
      d: smooth(
        points([
          -top,
          chin.y,
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
          top,
          chin.y,
        ]).map((p, i) => at(p.x + (i === 0 || i === 9 ? chin.x : chest.x), p.y)),
        false,
        0.6,
      ),
      fill: skin,
      line: 'ink',
    },
  ];
  const full = spec.belly === 1 ? 1.12 : 1;
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
      -w * 0.9 * full,
      270,
      -w * 0.92 * full,
      344,
      w * 0.92 * full,
      344,
      w * 0.9 * full,
      270,
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

/** The swollen belly: the gown stands up over it, hatched where it is stretched. */
function swollenBelly(spec: SceneSpec, { belly, bellyRadius: r }: ChildGeometry): Shape[] {
  if (spec.belly === 0)
    return [{ d: smooth(points([-r * 0.5, 24, 0, 32, r * 0.5, 24], belly)), line: 'soft', weight: 1.4 }];
  const side = (half: number) =>
    points([half * r * 0.52, -44, half * r * 0.8, -20, half * r * 0.9, 14, half * r * 0.84, 46], belly);
  const flank = (half: number) => [
    ...side(half),
    ...points([half * r * 1.1, 44, half * r * 1.14, 6, half * r * 0.96, -28], belly),
  ];
  return [
    { d: hatch(flank(1), 6, 60) + hatch(flank(-1), 6, 120), line: 'ink', weight: 1.4 },
    { d: smooth(side(1)) + smooth(side(-1)), line: 'ink', weight: 3 },
    { d: smooth(points([-r * 0.4, -30, -r * 0.1, -40, r * 0.2, -39], belly)), line: 'white', weight: 5 },
  ];
}

/** The child close by, in bed: how it looks, what stands beside it, what is different. */
export function drawChild(spec: SceneSpec, geometry: ChildGeometry, view: View): Picture {
  const g = geometry;
  const skin = skinOf(spec.face);
  const arms = [g.arms.near, g.arms.far].flatMap((arm) => drawArm(arm, g, skin));
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
    ...bedding(g, spec.soreness === 'none'),
    ...torso(spec, g),
    ...swollenBelly(spec, g),
    ...blanket(g, spec),
    ...(handAtHead || sick ? [] : arms),
    ...head,
    ...(handAtHead ? arms : []),
    ...breathMarks(spec, g),
    ...changeMarks(spec, g),
    ...prop,
    // the hands hold the bowl from the front
    ...(sick ? arms : []),
    ...sorenessStair(spec, g),
    ...(spec.mark === 'no-answer' ? grownUpCalling(g) : []),
  ];
  const page = heldInside(shapes, view.width, view.height);
  return { ...view, shapes: spec.side === 'left' ? page : mirrored(page, view.width) };
}
