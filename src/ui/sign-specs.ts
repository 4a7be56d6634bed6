/** The two pictures of a sign, drawn as this family's child. */
import { SIGN_PICTURES, type SignPicture } from '#content/sign-pictures.ts';
import { known } from './child-spec.ts';
import { NEUTRAL, type ChildLook, type SceneSpec } from '#scene/spec.ts';

const PICTURES: Readonly<Record<string, SignPicture>> = SIGN_PICTURES;

export interface SignSpecs {
  usual: SceneSpec;
  different: SceneSpec;
}

/** `undefined` for what has no picture: a worry, an unknown sign. */
export function signSpecs(sign: string, child: Partial<ChildLook>): SignSpecs | undefined {
  const picture = Object.hasOwn(PICTURES, sign) ? PICTURES[sign] : undefined;
  if (!picture) return undefined;
  const usual: SceneSpec = {
    ...NEUTRAL,
    ...known(child),
    camera: picture.camera,
    focus: picture.focus,
    ...picture.usual,
  };
  return { usual, different: { ...usual, ...picture.different } };
}
