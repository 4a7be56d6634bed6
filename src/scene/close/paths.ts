/** Lines and fields of one part seen large. */
import type { SceneSpec } from '../spec.ts';
import type { Picture, View } from '../shapes.ts';
import { drawBandage } from './bandage.ts';
import { drawBedEnd } from './bed-end.ts';
import { drawChild } from './child.ts';
import { drawFoot } from './foot.ts';
import { drawHeel } from './heel.ts';
import { drawKnee } from './knee.ts';
import type { CloseGeometry } from './layout.ts';
import { mirrored } from '../parts/points.ts';
import { otherSide } from '../parts/sides.ts';
import { drawThigh } from './thigh.ts';

/** A close picture as shapes from back to front. */
export function drawClose(spec: SceneSpec, geometry: CloseGeometry, view: View): Picture {
  if (geometry.focus === 'child') return drawChild(spec, geometry.part, view);
  if (spec.side === 'left') return drawLeft(spec, geometry, view);
  const left = drawLeft(spec, otherSide(geometry, view.width), view);
  return { ...left, shapes: mirrored(left.shapes, view.width) };
}

function drawLeft(
  spec: SceneSpec,
  geometry: Exclude<CloseGeometry, { focus: 'child' }>,
  view: View,
): Picture {
  switch (geometry.focus) {
    case 'foot':
      return drawFoot(spec, geometry.part, view);
    case 'bandage':
      return drawBandage(spec, geometry.part, view);
    case 'heel':
      return drawHeel(spec, geometry.part, view);
    case 'knee':
      return drawKnee(spec, geometry.part, view);
    case 'thigh':
      return drawThigh(spec, geometry.part, view);
    case 'bed-end':
      return drawBedEnd(spec, geometry.part, view);
  }
}
