import type { SceneSpec } from '../spec.ts';
import { at, plus, type Picture, type Point, type Shape, type View, tenth } from '../shapes.ts';
import type { WholeGeometry } from './layout.ts';
import { drawBedBehind, drawBedFront } from './bed.ts';
import {
  drawBlanket,
  drawFarArm,
  drawHeadAndNeck,
  drawNearArm,
  drawToy,
  drawTrunk,
  headCenter,
} from './body.ts';
import { drawOtherLeg, drawPulledLeg, KNEE, legFrame } from './leg.ts';
import { drawBag, drawBagGround, drawCord, drawPlate, drawWheel } from './pull.ts';
import { drawOnFloor } from './on-floor.ts';
import { drawMark, drawSlid, drawSmellAndBreath } from './marks.ts';

const EDGE = 1;

/** Every point onto its side of the body, and inside the picture. */
function place(p: Point, view: View, flip: boolean): Point {
  const x = Math.min(view.width - EDGE, Math.max(EDGE, p.x));
  const y = Math.min(view.height - EDGE, Math.max(EDGE, p.y));
  return at(tenth(flip ? view.width - x : x), tenth(y));
}

function placeShape(shape: Shape, view: View, flip: boolean): Shape {
  const d = shape.d.replace(/(-?\d+(?:\.\d+)?) (-?\d+(?:\.\d+)?)/g, (_, x: string, y: string) => {
    const p = place(at(Number(x), Number(y)), view, flip);
    return `${p.x} ${p.y}`;
  });
  return { ...shape, d };
}

/** Places to touch on the home picture; far enough apart for a thumb. */
function spotsOf(spec: SceneSpec, g: WholeGeometry): Record<string, { x: number; y: number; r: number }> {
  const leg = legFrame(spec, g);
  const spots = {
    child: headCenter(g),
    thigh: leg.line(0.12, -12),
    straight: leg.line(KNEE, 20),
    bandage: leg.line(0.708, -17),
    toes: plus(g.ankle, at(13, -40 * g.build.foot)),
    skin: plus(g.ankle, at(17, 26)),
    cord: g.wheel,
    weight: plus(g.bag, at(0, 34)),
  };
  return Object.fromEntries(
    Object.entries(spots).map(([id, p]) => [
      id,
      { ...place(p, g.view, g.flip), r: id === 'child' ? g.build.head : 22 },
    ]),
  );
}

/** The whole picture as shapes from back to front. */
export function drawWhole(spec: SceneSpec, g: WholeGeometry, view: View): Picture {
  // a child who left the bed is drawn twice: the second half lies over the foot end of the first
  const climbing = g.climbing > 0.5;
  const shapes: Shape[] = [
    ...drawBedBehind(spec, g),
    ...(climbing ? [] : [...drawBagGround(spec, g), ...drawWheel(g)]),
    ...(climbing ? [] : drawOtherLeg(spec, g)),
    ...drawHeadAndNeck(spec, g),
    ...(climbing ? [] : drawPlate(g)),
    ...drawPulledLeg(spec, g),
    ...(climbing ? drawOtherLeg(spec, g) : []),
    ...drawTrunk(spec, g),
    ...(climbing ? [] : [...drawBlanket(g), ...drawFarArm(g)]),
    ...drawToy(g),
    ...drawBedFront(g),
    ...(climbing ? drawFarArm(g) : []),
    ...drawNearArm(g),
    ...(climbing ? [] : [...drawCord(spec, g), ...drawBag(spec, g)]),
    ...drawSmellAndBreath(spec, g),
    ...drawSlid(spec, g),
    ...drawMark(spec, g),
    ...(climbing ? drawOnFloor(spec, g) : []),
  ];
  return { ...view, shapes: shapes.map((shape) => placeShape(shape, view, g.flip)), spots: spotsOf(spec, g) };
}
