import type { SceneSpec } from '../spec.ts';
import { at, smooth, straight, type Picture, type Shape, type View } from '../shapes.ts';
import { otherSide } from '../parts/sides.ts';
import type { FeetGeometry } from './layout.ts';
import { moved, onward } from './curves.ts';
import { drawFoot } from './foot.ts';
import { drawBandage, drawCord, drawPlate, drawStrips } from './pull.ts';
import {
  drawCold,
  drawLift,
  drawPlaces,
  drawPrickles,
  drawOtherWaving,
  drawSoreOther,
  drawWaving,
} from './marks.ts';

const mirrorShapes = (shapes: Shape[], width: number): Shape[] =>
  shapes.map((shape) => ({ ...shape, d: moved(shape.d, (x, y) => [width - x, y]) }));

/** Bends may swing a little past the edge of the picture; nothing is drawn there. */
const keepInside = (shapes: Shape[], width: number, height: number): Shape[] =>
  shapes.map((shape) => ({
    ...shape,
    d: moved(shape.d, (x, y) => [Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))]),
  }));

/** Both feet from the bed's end as shapes from back to front. */
export function drawFeet(spec: SceneSpec, geometry: FeetGeometry, view: View): Picture {
  // hands and marks are placed as for a left leg and mirrored with it, so that both sides are one drawing
  const g = geometry.side === 'right' ? otherSide(geometry, view.width) : geometry;
  const young = spec.age === 2;
  const flip = (shapes: Shape[]) => mirrorShapes(shapes, view.width);
  const otherAsPulled = otherSide(g.other, view.width);
  const other = drawFoot(otherAsPulled, {
    shift: 'none',
    swell: 0,
    numb: false,
    cold: spec.otherCoolMark,
    young,
  });
  const pulled = drawFoot(g.pulled, {
    shift: spec.toneShift,
    swell: spec.swell,
    numb: spec.mark === 'numb-dots',
    cold: spec.coolMark,
    young,
  });
  const { width, height } = view;
  const fold = [at(0, 15), at(110, 14), at(240, 18), at(370, 14), at(width, 15)];
  const shapes: Shape[] = [
    {
      d: straight([at(0, 0), at(width, 0), at(width, height), at(0, height)], true),
      fill: spec.lamp === 'night' ? 'white' : 'sheet',
    },
    {
      d: smooth([at(24, 322), at(70, 314), at(120, 320)]) + smooth([at(60, 338), at(116, 331), at(190, 339)]),
      line: 'mattress',
      weight: 2.4,
    },
    ...drawStrips(g),
    ...drawPlate(g),
    ...drawCord(spec, g),
    ...flip(other),
    ...(spec.mark === 'other-leg' ? flip(drawSoreOther(otherAsPulled)) : []),
    ...pulled,
    ...drawBandage(spec, g),
    {
      d: straight([at(0, 0)]) + onward(smooth(fold)) + onward(straight([at(width, 0)])) + 'Z',
      fill: 'blanket',
    },
    { d: smooth(fold), line: 'ink' },
    ...flip(drawOtherWaving(spec, otherAsPulled)),
    ...drawWaving(spec, g.pulled),
    ...(spec.mark === 'numb-dots' ? drawPrickles(g.pulled) : []),
    ...drawPlaces(spec, g),
    ...drawLift(spec),
    ...(spec.otherCoolMark !== 0 ? flip(drawCold(otherAsPulled, spec.otherCoolMark)) : []),
    ...(spec.coolMark !== 0 ? drawCold(g.pulled, spec.coolMark) : []),
  ];
  const kept = keepInside(shapes, width, height);
  return { ...view, shapes: geometry.side === 'right' ? flip(kept) : kept };
}
