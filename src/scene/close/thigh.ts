import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';

export function layoutThigh(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type ThighGeometry = ReturnType<typeof layoutThigh>;
export function drawThigh(_spec: SceneSpec, _g: ThighGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
