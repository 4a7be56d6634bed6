// The care cards step by step: each step has its picture, and what a step names is what its picture shows.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CARE_HALVES, CARE_PICTURES, STEP_CARDS } from '#content/care-pictures.ts';
import { CARE_MARKS } from '#scene/care/marks.ts';
import { careMarkup, careSpec, drawCare } from '#scene/care/pictures.ts';
import type { CarePicture, CareScene } from '#scene/care/spec.ts';
import { layoutHeel } from '#scene/close/heel.ts';
import { pointsOf, VIEW } from '#scene/shapes.ts';
import { DRAWN_AGES, type ChildLook, type SceneSpec } from '#scene/spec.ts';
import { layoutWhole, BED } from '#scene/whole/layout.ts';
import { textsOf } from '../../.ci/locales.mjs';
import { root } from '../helpers/locales.ts';

const CHILD: ChildLook = { side: 'left', age: 5, skin: 'clay', hair: 'curls' };
const LANGUAGES = ['en', 'es', 'pl', 'ar'];
const isScene = (picture: CarePicture): picture is CareScene => 'camera' in picture;

const textsIn = (language: string, card: string, half: string): string[] => {
  const texts = textsOf(root, language) as Record<string, string>;
  const own: string[] = [];
  for (let n = 1; texts[`care:${card}.${half}.${n}`] !== undefined; n++)
    own.push(texts[`care:${card}.${half}.${n}`]!);
  return own;
};
const STEPS = STEP_CARDS.flatMap((card) =>
  CARE_HALVES.flatMap((half) =>
    CARE_PICTURES[card][half].map((picture: CarePicture, i) => ({
      where: `${card} › ${half} › ${i + 1}`,
      half,
      picture,
      text: textsIn('en', card, half)[i] ?? '',
    })),
  ),
);
const SCENES = STEPS.flatMap(({ where, picture }) => (isScene(picture) ? [{ where, picture }] : []));

it.each(LANGUAGES)('in %s every step of every card has one picture, and every picture a step', (language) => {
  for (const card of STEP_CARDS)
    for (const half of CARE_HALVES)
      expect([card, half, CARE_PICTURES[card][half].length]).toEqual([
        card,
        half,
        textsIn(language, card, half).length,
      ]);
});

it('two steps that follow one another never show the same', () => {
  for (const card of STEP_CARDS)
    for (const half of CARE_HALVES) {
      const drawn = CARE_PICTURES[card][half].map((picture) => careMarkup(picture, CHILD));
      expect(drawn.filter((one, i) => i > 0 && one === drawn[i - 1])).toEqual([]);
    }
});

/** How far the corner of the bed at the feet stands above the one at the head, in scene units. */
const raised = (spec: SceneSpec) => {
  const { flat } = layoutWhole(spec, VIEW);
  return flat(BED.head, 0, 0).y - flat(BED.foot, 0, 0).y;
};
const topic = (picture: CarePicture, ...ids: string[]) => 'topic' in picture && ids.includes(picture.topic);

/** What the words of a step say must be seen; each is asked of the scene's numbers, not of the table's names. */
const SEEN: [words: RegExp, shown: (picture: CarePicture, spec: SceneSpec | undefined) => boolean][] = [
  [/foot end/i, (_, spec) => spec?.camera === 'whole' && raised(spec) > 30],
  [
    /heel (free|and knee free)/i,
    (_, spec) => {
      if (spec?.camera !== 'close' || spec.focus !== 'heel') return false;
      const heelOf = (one: SceneSpec) => layoutHeel(one, VIEW).foot.heel.y;
      return heelOf({ ...spec, heelGap: 0 }) - heelOf(spec) > 10;
    },
  ],
  [/half overlapped/i, (p, spec) => spec?.focus === 'bandage' && isScene(p) && p.points === 'half-overlap'],
  [
    /gap behind the knee/i,
    (p, spec) => spec?.focus === 'bandage' && spec.bandTop === 0 && isScene(p) && p.points === 'knee-gap',
  ],
  [/two turns at the ankle/i, (_, spec) => spec?.focus === 'bandage' && spec.bandTop > 0.9],
  [
    /hanging weight (free|last)|free of bed and floor/i,
    (_, spec) => spec !== undefined && spec.loadTouch === 'none' && spec.loadHeight > 0.3 && spec.slide === 0,
  ],
  [/cord on the wheel/i, (_, spec) => spec?.focus === 'bed-end' && spec.cord === 'on-wheel'],
  [/kneecap in the middle/i, (_, spec) => spec?.focus === 'knee' && spec.legRoll === 0],
  [/slid down/i, (_, spec) => spec !== undefined && spec.camera === 'whole' && spec.slide > 0.5],
  [/\bwet\b/i, (_, spec) => spec !== undefined && spec.bandWet > 0.5],
  [/burned or pressed/i, (_, spec) => spec?.mark === 'burn-rays'],
  [
    /medicine (first|given)|was medicine given|about medicine first/i,
    (_, spec) => spec?.prop === 'medicine-cup',
  ],
  [/it may hurt/i, (p) => topic(p, 'soreness')],
  [/curtain/i, (p) => topic(p, 'toilet-in-bed', 'your-own-body')],
  [/call button/i, (p) => topic(p, 'calling')],
  [/\brolls?\b/i, (p) => topic(p, 'sheets')],
  [/checks/i, (p) => topic(p, 'first-hour')],
  [/^only staff/i, (p) => topic(p, 'your-hands-off')],
];

describe('what a step names is what its picture shows', () => {
  it.each(SEEN.map(([words, shown]) => ({ words, shown })))('$words', ({ words, shown }) => {
    const own = STEPS.filter(({ text }) => words.test(text));
    expect(own.length).toBeGreaterThan(0);
    const missed = own.filter(
      ({ picture }) => !shown(picture, isScene(picture) ? careSpec(picture, CHILD) : undefined),
    );
    expect(missed.map(({ where, text }) => `${where}: ${text}`)).toEqual([]);
  });

  it('and where the scene is changed, it is no longer so: the questions can be answered with no', () => {
    const at = (words: string) => SEEN.find(([one]) => one.test(words))![1];
    const of = (text: string) => STEPS.find((step) => step.text.startsWith(text))!.picture as CareScene;
    const changed = (text: string, change: Partial<SceneSpec>) =>
      at(text)(of(text), { ...careSpec(of(text), CHILD), ...change });
    expect(changed('Foot end raised', { bedRaise: 0 })).toBe(false);
    expect(changed('Heel free', { heelGap: 0 })).toBe(false);
    expect(changed('Hanging weight last', { loadTouch: 'floor' })).toBe(false);
    expect(changed('Cord on the wheel', { cord: 'off-wheel' })).toBe(false);
    expect(changed('Kneecap in the middle', { legRoll: 20 as SceneSpec['legRoll'] })).toBe(false);
  });
});

describe('the drawing of a step', () => {
  it('stays inside its page at every age, for both legs, in numbers a reader of paths knows', () => {
    for (const { where, picture } of SCENES)
      for (const side of ['left', 'right'] as const)
        for (const age of DRAWN_AGES) {
          const { shapes } = drawCare(picture, { ...CHILD, side, age });
          const outside = shapes.flatMap(({ d }) =>
            pointsOf(d).filter(
              (p) => !(p.x >= -1 && p.x <= VIEW.width + 1 && p.y >= -1 && p.y <= VIEW.height + 1),
            ),
          );
          expect([where, side, age, outside]).toEqual([where, side, age, []]);
        }
  });

  it('every mark is used, adds to the scene, and stands on the other side for the other leg', () => {
    const used = new Set(SCENES.flatMap(({ picture }) => picture.points ?? []));
    expect([...used].sort()).toEqual([...CARE_MARKS].sort());
    fc.assert(
      fc.property(fc.constantFrom(...SCENES), fc.constantFrom(...DRAWN_AGES), ({ picture }, age) => {
        if (!picture.points) return;
        const { points, ...bare } = picture;
        expect(points).toBeTruthy();
        const count = (side: 'left' | 'right', of: CareScene) =>
          drawCare(of, { ...CHILD, side, age }).shapes.length;
        expect(count('left', picture)).toBeGreaterThan(count('left', bare));
        expect(count('left', picture)).toBe(count('right', picture));
      }),
    );
    const ofFootEnd = (side: 'left' | 'right') =>
      drawCare({ camera: 'whole', focus: 'foot', shows: {}, points: 'foot-end-and-load' }, { ...CHILD, side })
        .shapes.filter(({ line }) => line === 'mark')
        .flatMap(({ d }) => pointsOf(d).map((p) => p.x));
    expect(Math.min(...ofFootEnd('left'))).toBeLessThan(60);
    expect(Math.max(...ofFootEnd('right'))).toBeGreaterThan(VIEW.width - 60);
  });

  it('the first half minute is the marked one for both legs: the clock is not mirrored', () => {
    for (const side of ['left', 'right'] as const) {
      const shapes = drawCare(
        { camera: 'whole', focus: 'foot', shows: {}, points: 'half-minute' },
        { ...CHILD, side },
      );
      const xs = (fill: string) => {
        const { d } = shapes.shapes.filter((s) => s.fill === fill).at(-1)!;
        return pointsOf(d).map((p) => p.x);
      };
      const face = xs('sheet');
      const middle = (Math.min(...face) + Math.max(...face)) / 2;
      expect(Math.min(...xs('mark'))).toBeGreaterThan(middle - 2);
    }
  });
});

it('no text for the family tells to touch leg, bandage, cord or hanging weight', () => {
  for (const { half, text, where } of STEPS)
    if (half === 'family')
      expect([
        where,
        /\b(lift|loosen|tighten|unwrap|remove|untie|pull|move|open|dry)\b(?!.*staff)/i.test(text) &&
          !/^only staff/i.test(text),
      ]).toEqual([where, false]);
});
