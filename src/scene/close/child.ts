import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';

export function layoutChild(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type ChildGeometry = ReturnType<typeof layoutChild>;

export function drawChild(_spec: SceneSpec, _geometry: ChildGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
