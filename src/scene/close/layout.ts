import type { SceneSpec } from '../spec.ts';

export function layoutClose(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type CloseGeometry = ReturnType<typeof layoutClose>;
