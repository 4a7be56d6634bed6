import { describe, expect, test } from 'vitest';
import { SIGN_PICTURES, type SignPicture } from '#content/sign-pictures.ts';
import { SIGN_IDS } from '#domain/signs/ids.ts';
import { drawScene } from '#scene/paths.ts';
import { pointsOf, VIEW } from '#scene/shapes.ts';
import { DRAWN_AGES, NEUTRAL, SKIN_TONES, type ChildLook, type SceneSpec } from '#scene/spec.ts';
import { signSpecs } from '#ui/sign-specs.ts';

const PICTURES: Readonly<Record<string, SignPicture>> = SIGN_PICTURES;
const CHILDREN: readonly ChildLook[] = DRAWN_AGES.flatMap((age) =>
  (['left', 'right'] as const).map((side, i) => ({
    age,
    side,
    skin: SKIN_TONES[(age + i) % 6]!,
    hair: 'short' as const,
  })),
);
const specsOf = (sign: string, child: Partial<ChildLook> = {}) => {
  const specs = signSpecs(sign, child);
  if (!specs) throw new Error(`content/sign-pictures › ${sign}: two pictures, saw none`);
  return specs;
};
/** In which values two pictures differ. */
const changedParameters = (a: SceneSpec, b: SceneSpec) =>
  (Object.keys(NEUTRAL) as (keyof SceneSpec)[]).filter((key) => a[key] !== b[key]);
const drawn = (spec: SceneSpec) => drawScene(spec).shapes.map((shape) => JSON.stringify(shape));

describe.each(SIGN_IDS)('%s', (sign) => {
  const picture = PICTURES[sign]!;

  test('usual and different differ in exactly the values that are listed', () => {
    for (const child of CHILDREN) {
      const { usual, different } = specsOf(sign, child);
      expect([...changedParameters(usual, different)].sort()).toEqual(Object.keys(picture.different).sort());
    }
  });

  test('the usual picture is the neutral one but for what it lists, and each listed value says something', () => {
    const { usual } = specsOf(sign);
    const aim: (keyof SceneSpec)[] = ['camera', 'focus'];
    expect(
      changedParameters(NEUTRAL, usual)
        .filter((key) => !aim.includes(key))
        .sort(),
    ).toEqual(Object.keys(picture.usual).sort());
  });

  test('what is different is seen: lines or fields of the two pictures differ, for every child', () => {
    for (const child of CHILDREN) {
      const { usual, different } = specsOf(sign, child);
      // colour alone is told by the style sheet: the pictures differ then by the hatching beside it
      expect(drawn(different), JSON.stringify(child)).not.toEqual(drawn(usual));
    }
  });

  test('each value that differs changes the picture by itself', () => {
    const { usual } = specsOf(sign);
    for (const [key, value] of Object.entries(picture.different))
      expect(drawn({ ...usual, [key]: value }), `${sign} › ${key}`).not.toEqual(drawn(usual));
  });

  test('both pictures lie inside the view and are drawn in the six letters of a path', () => {
    for (const child of CHILDREN)
      for (const spec of Object.values(specsOf(sign, child)) as SceneSpec[])
        for (const { d } of drawScene(spec).shapes) {
          expect(d).toMatch(/^[MLCQZ0-9 .-]+$/);
          const out = pointsOf(d).filter(
            (p) => !(p.x >= 0 && p.x <= VIEW.width && p.y >= 0 && p.y <= VIEW.height),
          );
          expect(out).toEqual([]);
        }
  });

  test('the child keeps its own leg, age and tone in both', () => {
    const child: ChildLook = { side: 'right', age: 9, skin: 'umber', hair: 'plait' };
    const { usual, different } = specsOf(sign, child);
    expect(usual).toMatchObject(child);
    expect(different).toMatchObject(child);
  });
});

test('no two signs have the same pair of pictures', () => {
  const pairs = SIGN_IDS.map((sign) => JSON.stringify(specsOf(sign)));
  expect(new Set(pairs).size).toBe(SIGN_IDS.length);
  const seen = SIGN_IDS.map((sign) => drawn(specsOf(sign).different).join());
  expect(new Set(seen).size).toBe(SIGN_IDS.length);
});

test('a worry, an unknown sign and the machine’s own names have no picture', () => {
  for (const sign of ['worried', 'toes-glow', 'constructor', '__proto__'])
    expect(signSpecs(sign, {})).toBeUndefined();
});
