/** The picture of one step of a care card: the scene in the state the step speaks of, and what it points at. */
import { thingMarkup, pictureMarkup } from '../markup.ts';
import { heldInside, mirrored } from '../parts/points.ts';
import { drawScene } from '../paths.ts';
import { VIEW, type Picture } from '../shapes.ts';
import { NEUTRAL, type Camera, type ChildLook, type SceneSpec } from '../spec.ts';
import { topicMarkup } from '../topics/pictures.ts';
import { drawMark } from './marks.ts';
import type { CarePicture, CareScene } from './spec.ts';
import { twoForNappies } from './two.ts';

/** The scene of a step as this family's child. */
export const careSpec = (picture: CareScene, child: Partial<ChildLook>): SceneSpec => ({
  ...NEUTRAL,
  ...child,
  camera: picture.camera,
  focus: picture.focus,
  ...picture.shows,
});

/** The side that the layouts of a camera are worked out for; the other one is mirrored in numbers. */
const builtFor = (camera: Camera) => (camera === 'whole' ? 'right' : 'left');

/**
 * The scene of a step with what it points at, as shapes from back to front.
 *
 * Shape: 480 × 360 scene units, every point inside.
 * @example drawCare({ camera: 'whole', focus: 'foot', shows: {}, points: 'foot-end' }, { side: 'left' }).width // 480
 */
export function drawCare(picture: CareScene, child: Partial<ChildLook>): Picture {
  const spec = careSpec(picture, child);
  const scene = drawScene(spec);
  const marks = picture.points ? drawMark(picture.points, spec) : [];
  const sided = spec.side === builtFor(spec.camera) ? marks : mirrored(marks, VIEW.width);
  // a pen line lies on a paler one of its own course
  const pen = new Set(scene.shapes.flatMap(({ line, d }) => (picture.unmarked && line === 'pen' ? [d] : [])));
  const shapes = scene.shapes.filter(({ d }) => !pen.has(d));
  return { ...VIEW, shapes: [...shapes, ...heldInside(sided, VIEW.width, VIEW.height)] };
}

/**
 * The picture of a step as SVG text: decoration beside the step's own words, so it has no label.
 *
 * Shape: one `svg` of class `scene`; skin is the family's tone by the style sheet.
 * @example careMarkup({ topic: 'calling' }, { side: 'left' }) // '<svg class="scene" … aria-hidden="true" …>'
 */
export function careMarkup(picture: CarePicture, child: Partial<ChildLook>): string {
  if ('topic' in picture) return topicMarkup(picture.topic, '', child.side ?? NEUTRAL.side);
  if ('thing' in picture) return thingMarkup(picture.thing, '');
  if ('own' in picture) return twoForNappies();
  const { skin, toneShift, camera } = careSpec(picture, child);
  return pictureMarkup(
    drawCare(picture, child),
    '',
    `data-camera="${camera}" data-skin="${skin}" data-shift="${toneShift}" data-lamp="day"`,
  );
}
