/** This family's child, drawn: apart from the signs, so that the first page need not load their pictures. */
import { NEUTRAL, type ChildLook, type SceneSpec } from '#scene/spec.ts';

/** What the family has chosen; the rest stays as it is in the neutral picture. */
export function known(child: Partial<ChildLook>): Partial<ChildLook> {
  const { side, age, skin, hair } = child;
  return {
    ...(side ? { side } : {}),
    ...(age ? { age } : {}),
    ...(skin ? { skin } : {}),
    ...(hair ? { hair } : {}),
  };
}

/** The whole child in bed, as it should hang. */
export const wholeSpec = (child: Partial<ChildLook>): SceneSpec => ({ ...NEUTRAL, ...known(child) });
