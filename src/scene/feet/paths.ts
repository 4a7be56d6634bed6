import type { SceneSpec } from '../spec.ts';
import { at, smooth, straight, type Picture, type Shape } from '../shapes.ts';
import { mirrored, type FeetGeometry } from './layout.ts';
import { drawFoot } from './foot.ts';
import { drawBandage, drawCord, drawPlate, drawStrips } from './pull.ts';
import { drawCold, drawLift, drawPlaces, drawPrickles, drawWaving } from './marks.ts';

/** Mirrors a path at the points: every first number of a pair is an x. */
function mirrorPath(d: string, width: number): string {
  let isX = false;
  return d.replace(/-?\d+(?:\.\d+)?/g, (value) => {
    isX = !isX;
    return isX ? String(Math.round((width - Number(value)) * 10) / 10) : value;
  });
}
const mirrorShapes = (shapes: Shape[], width: number): Shape[] =>
  shapes.map((shape) => ({ ...shape, d: mirrorPath(shape.d, width) }));

export function drawFeet(
  spec: SceneSpec,
  geometry: FeetGeometry,
  view: { width: number; height: number },
): Picture {
  // hands and marks are placed as for a left leg and mirrored with it, so that both sides are one drawing
  const g = geometry.side === 'right' ? mirrored(geometry, view.width) : geometry;
  const young = spec.age === 2;
  const flip = (shapes: Shape[]) => mirrorShapes(shapes, view.width);
  const otherAsPulled = mirrored(g.other, view.width);
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
  const blanket = [
    at(0, 0),
    at(0, 15),
    at(60, 19),
    at(130, 13),
    at(240, 18),
    at(350, 13),
    at(420, 19),
    at(width, 15),
    at(width, 0),
  ];
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
    ...pulled,
    ...drawBandage(spec, g),
    { d: smooth(blanket, true, 0.6), fill: 'blanket', line: 'ink' },
    ...drawWaving(spec, g.pulled),
    ...(spec.mark === 'numb-dots' ? drawPrickles(g.pulled) : []),
    ...drawPlaces(spec, g),
    ...drawLift(spec),
    ...(spec.otherCoolMark > 0 ? flip(drawCold(otherAsPulled, spec.otherCoolMark)) : []),
    ...(spec.coolMark > 0 ? drawCold(g.pulled, spec.coolMark) : []),
  ];
  return { ...view, shapes: geometry.side === 'right' ? flip(shapes) : shapes };
}
