import type { SceneSpec } from '../spec.ts';
import type { Picture } from '../shapes.ts';
import type { CloseGeometry } from './layout.ts';

export function drawClose(_spec: SceneSpec, _geometry: CloseGeometry, view: { width: number; height: number }): Picture {
  return { ...view, shapes: [] };
}
