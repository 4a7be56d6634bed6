/** The other half of a picture of a child who left the bed: the same child beside it, on the floor. */
import type { SceneSpec } from '../spec.ts';
import { at, between, plus, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { drawArm, drawHeadAndNeck, drawTrunk, trunk } from './body.ts';
import { BED, BUILDS, type WholeGeometry } from './layout.ts';
import { drawOtherLeg, drawPulledLeg } from './leg.ts';
import { drawPlate } from './pull.ts';

/** Where this half begins, towards the foot end; the climbing child is before it. */
export const HALF = 262;
/** The ground on which the child sits, and the line where floor and wall meet. */
const GROUND = 326;
const WALL = 290;

/** The joints of the same child, sitting on the floor with the bandaged leg straight ahead. */
function sitting(g: WholeGeometry): WholeGeometry {
  const k = g.build.leg / BUILDS[5].leg;
  const hip = at(303, GROUND - 14);
  const ankle = at(hip.x + 6 + 122 * k, GROUND - 9);
  const center = plus(ankle, at(g.soleDepth + 9, -5));
  return {
    ...g,
    hip,
    neck: plus(hip, at(10, -g.build.torso * 0.88)),
    hipNear: plus(hip, at(4, 2)),
    ankle,
    otherHip: plus(hip, at(6, -6)),
    knee: plus(hip, at(52 * k, -46 * k - 4)),
    otherAnkle: at(hip.x + 78 * k, GROUND - 22),
    plate: { center, angle: 4, tie: plus(center, at(5, 0)) },
  };
}

/** The near side of the bed, from one edge of this half to the other. */
function bedSide(g: WholeGeometry): Shape[] {
  const to = g.view.width - 1;
  const line = (h: number, d: number): [Point, Point] => {
    const [a, b] = [g.flat(0, h, d), g.flat(BED.foot, h, d)];
    const on = (x: number) => between(a, b, (x - a.x) / (b.x - a.x));
    return [on(HALF), on(to)];
  };
  const band = (a: readonly [Point, Point], b: readonly [Point, Point], fill: string): Shape => ({
    d: straight([a[0], a[1], b[1], b[0]], true),
    fill,
    line: 'ink',
  });
  const [far, edge, low] = [line(0, BED.depth), line(0, 0), line(-BED.thick, 0)];
  const x = 424;
  const box = (half: number, top: number, bottom: number, fill: string): Shape => ({
    d: straight([at(x - half, top), at(x + half, top), at(x + half, bottom), at(x - half, bottom)], true),
    fill,
    line: 'ink',
  });
  return [
    box(4.5, g.flat(x, -BED.thick, 0).y, GROUND - 24, 'metal'),
    box(19, GROUND - 26, GROUND - 18, 'frame'),
    band(far, edge, 'sheet'),
    band(edge, low, 'mattress'),
    band(low, line(-BED.thick - 9, 0), 'frame'),
  ];
}

/** The blanket went over the edge with the child. */
function fallenBlanket(g: WholeGeometry): Shape[] {
  const top = g.flat(352, 2, 30);
  const q = (x: number, y: number) => plus(top, at(x, y));
  const cloth = [
    q(-22, 0),
    q(8, -8),
    q(40, -2),
    q(46, 46),
    q(40, 92),
    q(24, 78),
    q(6, 94),
    q(-14, 80),
    q(-26, 88),
  ];
  return [
    { d: smooth(cloth, true, 0.8), fill: 'blanket', line: 'ink' },
    {
      d: smooth([q(-6, 14), q(-8, 44), q(-10, 70)]) + smooth([q(20, 10), q(22, 40), q(22, 66)]),
      line: 'soft',
      weight: 1.6,
    },
  ];
}

/** The way the child took: over the edge and down. */
function wayDown(): Shape[] {
  const way = [at(322, 106), at(352, 92), at(384, 108), at(396, 146), at(394, 196)];
  const tip = at(392, 226);
  const head = straight([plus(tip, at(-19, -28)), plus(tip, at(21, -27)), tip], true);
  return [
    { d: smooth(way), line: 'ink', weight: 15 },
    { d: head, fill: 'mark', line: 'ink' },
    { d: smooth(way), line: 'mark', weight: 10.4 },
  ];
}

/**
 * The child on the floor beside the bed, in a frame of its own. Nobody is seen hurt: the bandaged leg lies
 * straight, the cord is slack.
 *
 * Shape: drawn over the foot end of the bed, for a head at the left of the picture; back to front.
 */
export function drawOnFloor(spec: SceneSpec, bed: WholeGeometry): Shape[] {
  const g = sitting(bed);
  const { width, height } = g.view;
  const from = (top: number) =>
    straight([at(HALF, top), at(width - 1, top), at(width - 1, height - 1), at(HALF, height - 1)], true);
  const { tie } = g.plate;
  const slack = [
    tie,
    plus(tie, at(8, 14)),
    plus(tie, at(-10, 22)),
    at(width - 6, GROUND + 14),
    at(width - 3, GROUND - 60),
  ];
  const p = trunk(g);
  const [near, far] = [p(0.14, -26), p(0.16, 20)];
  const floor = at(HALF + 15, GROUND + 4);
  return [
    // a wall of a colour that the night changes, too
    { d: from(1), fill: 'pillow' },
    { d: from(WALL), fill: 'floor' },
    ...bedSide(g),
    ...fallenBlanket(g),
    { d: smooth(slack), line: 'cord', weight: 2.2 },
    ...drawHeadAndNeck(spec, { ...g, climbing: 0 }),
    ...drawOtherLeg(spec, g),
    ...drawPlate(g),
    ...drawPulledLeg(spec, g),
    ...drawTrunk(spec, g),
    ...drawArm(g, { shoulder: far, elbow: plus(p(0.62, 34), at(0, 4)), hand: plus(g.knee, at(-4, 20)) }),
    ...drawArm(g, { shoulder: near, elbow: plus(between(near, floor, 0.5), at(-9, 0)), hand: floor }),
    ...wayDown(),
    { d: from(1), line: 'ink', weight: 3 },
  ];
}
