/** The words of a care picture, as a table of steps says them. */
import type { Camera, Focus, SceneChange } from '../spec.ts';
import type { ThingId } from '../things.ts';
import type { TopicPictureId } from '../topics/pictures.ts';
import type { CareMark } from './marks.ts';

export type { CareMark };

/** A scene: the camera, what it looks at, the state against the neutral scene, and what it points at. */
export interface CareScene {
  camera: Camera;
  focus: Focus;
  shows: SceneChange;
  points?: CareMark;
  /** No pen line yet: staff draw it when the bandage is on. */
  unmarked?: true;
}
/** What a step shows: the scene, or where the scene has none of it, the picture of an explanation or of a thing. */
export type CarePicture =
  CareScene | { topic: TopicPictureId } | { thing: ThingId } | { own: 'two-for-nappies' };
