/**
 * The child close up in numbers: named points for the left side. For the right, child.ts mirrors every point of
 * every path.
 */
import type { DrawnAge, SceneSpec } from '../spec.ts';
import { at, turn, type Point, type View } from '../shapes.ts';
import type { HandPose } from '../parts/hand.ts';

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

/** Middle line of the child lying straight. */
export const MIDDLE = 172;

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
    return {
      near: line(-1, [shoulder + 26, 262], [74, chest.y + 94], 236, 'rest', -1),
      far: line(1, [shoulder + 26, 262], [74, chest.y + 94], 236, 'rest', 1),
    };
  switch (spec.mark) {
    case 'wild-arcs':
      return {
        near: line(-1, [shoulder + 34, 176], [shoulder + 20, 104], -80, 'spread', -1),
        far: line(1, [shoulder + 40, 226], [shoulder + 84, 204], -14, 'spread', -1),
      };
    case 'no-answer':
      // the arm has slipped over the edge of the bed and hangs
      return { near: line(-1, [shoulder + 36, 252], [shoulder + 46, 304], 84), far: resting(1) };
    case 'fit-arcs':
      return {
        near: line(-1, [shoulder + 38, 272], [shoulder - 22, 232], 252, 'fist', -1),
        far: line(1, [shoulder + 38, 272], [shoulder - 22, 232], 252, 'fist', 1),
      };
    case 'shiver-arcs':
      return {
        near: line(-1, [shoulder + 12, 254], [6, 238], 200, 'rest', -1),
        far: line(1, [shoulder + 12, 262], [2, 258], 196, 'rest', 1),
      };
    case 'belly-rays':
      return {
        near: line(-1, [shoulder + 34, 260], [54, 290], 190, 'rest', 1),
        far: line(1, [shoulder + 34, 260], [54, 290], 190, 'rest', -1),
      };
    case 'head-rays':
      return { near: resting(-1), far: line(1, [shoulder + 50, 216], [66, 122], 232, 'rest', -1) };
    default:
      return { near: resting(-1), far: resting(1) };
  }
}

/** Named points and lengths of the child close up, for the left side. */
export function layoutChild(spec: SceneSpec, view: View) {
  const build = BUILD[spec.age];
  const chest = at(MIDDLE, build.shoulderY - (spec.breath === 2 ? 14 : 0));
  const tilt =
    spec.face === 'drowsy' ? -24 : spec.mark === 'fit-arcs' ? 14 : spec.mark === 'wild-arcs' ? 13 : 0;
  const bowed = spec.prop === 'bowl-used' ? 8 : 0;
  // the head rolls about the neck, not about its own middle
  const head = turn(at(MIDDLE, build.headY + bowed), at(MIDDLE, build.shoulderY), tilt);
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
