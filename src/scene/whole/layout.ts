import type { SceneSpec } from '../spec.ts';

export function layoutWhole(_spec: SceneSpec, _view: { width: number; height: number }) {
  return {};
}
export type WholeGeometry = ReturnType<typeof layoutWhole>;
