import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';

export function layoutBedEnd(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type BedEndGeometry = ReturnType<typeof layoutBedEnd>;
export function drawBedEnd(_spec: SceneSpec, _g: BedEndGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
