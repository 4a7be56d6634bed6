/** A spec becomes a picture here: each camera has its own layout (numbers) and paths (lines and fields). */
import type { SceneSpec } from './spec.ts';
import { VIEW, type Picture } from './shapes.ts';
import { layoutWhole } from './whole/layout.ts';
import { drawWhole } from './whole/paths.ts';
import { layoutFeet } from './feet/layout.ts';
import { drawFeet } from './feet/paths.ts';
import { layoutClose } from './close/layout.ts';
import { drawClose } from './close/paths.ts';

/** The geometry of a spec: named points and lengths of the camera it asks for, all in scene units. */
export function layoutScene(spec: SceneSpec) {
  switch (spec.camera) {
    case 'whole':
      return { camera: 'whole' as const, ...layoutWhole(spec, VIEW) };
    case 'feet':
      return { camera: 'feet' as const, ...layoutFeet(spec, VIEW) };
    case 'close':
      return { camera: 'close' as const, ...layoutClose(spec, VIEW) };
  }
}

/** The picture of a spec: shapes from back to front. */
export function drawScene(spec: SceneSpec): Picture {
  switch (spec.camera) {
    case 'whole':
      return drawWhole(spec, layoutWhole(spec, VIEW), VIEW);
    case 'feet':
      return drawFeet(spec, layoutFeet(spec, VIEW), VIEW);
    case 'close':
      return drawClose(spec, layoutClose(spec, VIEW), VIEW);
  }
}
