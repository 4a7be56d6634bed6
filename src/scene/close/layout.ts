/** Named points of one part seen large: one pair of functions per focus. Built for the left leg, then mirrored. */
import type { SceneSpec } from '../spec.ts';
import type { View } from '../shapes.ts';
import { layoutBandage } from './bandage.ts';
import { layoutBedEnd } from './bed-end.ts';
import { layoutChild } from './child-layout.ts';
import { layoutFoot } from './foot.ts';
import { layoutHeel } from './heel.ts';
import { layoutKnee } from './knee.ts';
import { otherSide, settled } from '../parts/sides.ts';
import { layoutThigh } from './thigh.ts';

function layoutLeft(spec: SceneSpec, view: View) {
  switch (spec.focus) {
    case 'foot':
      return { focus: spec.focus, part: layoutFoot(spec) };
    case 'bandage':
      return { focus: spec.focus, part: layoutBandage(spec, view) };
    case 'heel':
      return { focus: spec.focus, part: layoutHeel(spec, view) };
    case 'knee':
      return { focus: spec.focus, part: layoutKnee(spec, view) };
    case 'thigh':
      return { focus: spec.focus, part: layoutThigh(spec, view) };
    case 'bed-end':
      return { focus: spec.focus, part: layoutBedEnd(spec) };
    case 'child':
      return { focus: spec.focus, part: layoutChild(spec, view) };
  }
}

/** Numbers of a close picture, for the leg that is pulled. */
export function layoutClose(spec: SceneSpec, view: View) {
  const geometry = layoutLeft(spec, view);
  // the child's own picture knows about sides itself
  if (geometry.focus === 'child') return geometry;
  const left = settled(geometry);
  return spec.side === 'left' ? left : otherSide(left, view.width);
}
export type CloseGeometry = ReturnType<typeof layoutClose>;
