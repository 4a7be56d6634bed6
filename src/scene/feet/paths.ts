import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';
import type { FeetGeometry } from './layout.ts';

export function drawFeet(_spec: SceneSpec, _geometry: FeetGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
