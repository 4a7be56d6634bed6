import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';

export function layoutKnee(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type KneeGeometry = ReturnType<typeof layoutKnee>;
export function drawKnee(_spec: SceneSpec, _g: KneeGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
