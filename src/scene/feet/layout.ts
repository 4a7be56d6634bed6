import type { SceneSpec } from '../spec.ts';

export function layoutFeet(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type FeetGeometry = ReturnType<typeof layoutFeet>;
