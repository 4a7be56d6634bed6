/**
 * The child close up: head, chest and belly lying back on the pillow, with room at one side for a thing that
 * tells part of the story. Built for the left side; for the right every point of every path is mirrored.
 */
import type { DrawnAge, SceneSpec } from '../spec.ts';
import {
  at,
  hatch,
  oval,
  plus,
  ring,
  smooth,
  straight,
  type Picture,
  type Point,
  type Shape,
} from '../shapes.ts';
import { drawHand, type HandPose } from '../parts/hand.ts';
import { drawHead, skinOf } from '../parts/head.ts';
import { limb, mirrored, points } from '../parts/points.ts';
import { breathMarks, changeMarks, grownUpCalling } from './child-marks.ts';
import { childProp, sorenessSteps } from './child-props.ts';

interface View {
  width: number;
  height: number;
}

/** Where an arm runs, from the shoulder, and what its hand does. */
export interface ArmLine {
  shoulder: Point;
  elbow: Point;
  wrist: Point;
  /** Direction of the fingers on the page. */
  points: number;
  pose: HandPose;
  thumb: 1 | -1;
}

const BUILD: Record<
  DrawnAge,
  { radius: number; headY: number; shoulderY: number; shoulder: number; neck: number; arm: number }
> = {
  2: { radius: 76, headY: 98, shoulderY: 186, shoulder: 80, neck: 25, arm: 17 },
  5: { radius: 69, headY: 92, shoulderY: 180, shoulder: 86, neck: 23, arm: 15.5 },
  9: { radius: 63, headY: 86, shoulderY: 174, shoulder: 90, neck: 22, arm: 14.5 },
  14: { radius: 58, headY: 81, shoulderY: 168, shoulder: 96, neck: 22, arm: 14.5 },
};

const MIDDLE = 172;

function armLines(spec: SceneSpec, chest: Point, shoulder: number): { near: ArmLine; far: ArmLine } {
  const joint = (half: number) => at(chest.x + half * (shoulder - 8), chest.y + 10);
  const line = (
    half: 1 | -1,
    elbow: readonly [number, number],
    wrist: readonly [number, number],
    points: number,
    pose: HandPose = 'rest',
    thumb: 1 | -1 = half,
  ): ArmLine => ({
    shoulder: joint(half),
    elbow: at(chest.x + half * elbow[0], elbow[1]),
    wrist: at(chest.x + half * wrist[0], wrist[1]),
    points: half === 1 ? points : 180 - points,
    pose,
    thumb,
  });
  const low = spec.belly === 1 ? 12 : 0;
  const resting = (half: 1 | -1) => line(half, [shoulder + 24 + low, 258], [shoulder + 6 + low, 312], 112);
  if (spec.prop === 'bowl-used')
    return { near: resting(-1), far: line(1, [shoulder + 40, 284], [shoulder + 42, 262], 190, 'rest', -1) };
  switch (spec.mark) {
    case 'wild-arcs':
      return {
        near: line(-1, [shoulder + 34, 176], [shoulder + 20, 104], -80, 'spread', -1),
        far: line(1, [shoulder + 40, 226], [shoulder + 84, 204], -14, 'spread', -1),
      };
    case 'fit-arcs':
      return {
        near: line(-1, [shoulder + 24, 232], [shoulder + 34, 290], 78, 'fist'),
        far: line(1, [shoulder + 24, 232], [shoulder + 34, 290], 78, 'fist'),
      };
    case 'shiver-arcs':
      return {
        near: line(-1, [shoulder + 12, 254], [6, 238], 200, 'rest', -1),
        far: line(1, [shoulder + 12, 262], [2, 258], 196, 'rest', 1),
      };
    case 'belly-rays':
      return {
        near: line(-1, [shoulder + 30, 254], [48, 284], 190, 'rest', 1),
        far: line(1, [shoulder + 30, 254], [48, 284], 190, 'rest', -1),
      };
    case 'head-rays':
      return { near: resting(-1), far: line(1, [shoulder + 40, 206], [70, 112], 222, 'rest', -1) };
    default:
      return { near: resting(-1), far: resting(1) };
  }
}

/** Named points and lengths of the child close up, for the left side. */
export function layoutChild(spec: SceneSpec, view: View) {
  const build = BUILD[spec.age];
  const sick = spec.prop === 'bowl-used';
  // who fights for breath pulls up the shoulders
  const chest = at(MIDDLE, build.shoulderY - (spec.breath === 2 ? 8 : 0));
  const tilt = sick ? -30 : spec.mark === 'wild-arcs' ? 13 : spec.face === 'drowsy' ? 9 : 0;
  const head = plus(at(MIDDLE, build.headY), sick ? at(34, 12) : tilt > 0 ? at(-4, 0) : at(0, 0));
  const bed = { left: 14, right: 330, hem: 324 };
  const arms = armLines(spec, chest, build.shoulder);
  return {
    ...build,
    head,
    tilt,
    chest,
    belly: at(MIDDLE, 276),
    bellyRadius: spec.belly === 1 ? build.shoulder * 0.98 : build.shoulder * 0.7,
    bed,
    arms,
    /** The bedside table, and the places on and above it. */
    table: { left: 344, right: 474, top: 308 },
    upper: { left: 342, right: 472, top: 12, bottom: 144 },
    lower: { left: 342, right: 472, top: 156, bottom: 308 },
    view,
  };
}
export type ChildGeometry = ReturnType<typeof layoutChild>;

function bedding({ bed, table, view, head, radius }: ChildGeometry): Shape[] {
  const pillow = points(
    [
      -142, -46, -120, -66, 0, -72, 120, -66, 142, -46, 148, 10, 140, 62, 118, 76, 0, 82, -118, 76, -140, 62,
      -148, 10,
    ],
    at(MIDDLE, 92),
  );
  return [
    {
      d: straight([at(0, 0), at(view.width, 0), at(view.width, view.height), at(0, view.height)], true),
      fill: 'ground',
    },
    {
      d: straight([at(0, 338), at(view.width, 338), at(view.width, view.height), at(0, view.height)], true),
      fill: 'floor',
    },
    {
      d: smooth(
        points([
          bed.left + 6,
          view.height,
          bed.left,
          40,
          bed.left + 10,
          10,
          bed.right - 10,
          10,
          bed.right,
          40,
          bed.right - 6,
          view.height,
        ]),
        false,
        0.5,
      ),
      fill: 'sheet',
      line: 'ink',
    },
    { d: smooth(pillow, true, 0.8), fill: 'pillow', line: 'ink' },
    {
      d:
        smooth([at(head.x - radius - 26, 60), at(head.x - radius - 34, 90), at(head.x - radius - 28, 124)]) +
        smooth([at(head.x + radius + 26, 60), at(head.x + radius + 32, 92), at(head.x + radius + 26, 122)]) +
        smooth(points([bed.left + 18, 214, bed.left + 34, 236, bed.left + 32, 268])) +
        smooth(points([bed.right - 16, 222, bed.right - 32, 244, bed.right - 30, 270])),
      line: 'soft',
      weight: 1.4,
    },
    {
      d: straight(
        points([
          table.left + 12,
          table.top + 14,
          table.left + 12,
          view.height,
          table.right - 12,
          view.height,
          table.right - 12,
          table.top + 14,
        ]),
        true,
      ),
      fill: 'mattress',
      line: 'ink',
    },
    {
      d: straight(
        points([
          table.left,
          table.top,
          table.right,
          table.top,
          table.right,
          table.top + 14,
          table.left,
          table.top + 14,
        ]),
        true,
      ),
      fill: 'plate',
      line: 'ink',
    },
  ];
}

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

function blanket({ bed, view, belly, bellyRadius: r }: ChildGeometry, swollen: boolean): Shape[] {
  const hem = swollen
    ? points([
        bed.left + 4,
        320,
        belly.x - r - 16,
        322,
        belly.x - r * 0.6,
        336,
        belly.x,
        344,
        belly.x + r * 0.6,
        336,
        belly.x + r + 16,
        322,
        bed.right - 4,
        320,
      ])
    : points([bed.left + 4, 320, belly.x - r, 324, belly.x, 328, belly.x + r, 324, bed.right - 4, 320]);
  const fold = hem.map((p) => at(p.x, Math.min(view.height - 3, p.y + 15)));
  return [
    {
      d: smooth(hem) + `L${bed.right - 5} ${view.height}L${bed.left + 5} ${view.height}Z`,
      fill: 'blanket',
      line: 'ink',
    },
    { d: smooth(fold), line: 'ink', weight: 1.4 },
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
