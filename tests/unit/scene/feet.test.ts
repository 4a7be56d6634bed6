import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawScene, layoutScene } from '#scene/paths.ts';
import { pointsOf, type Picture, VIEW } from '#scene/shapes.ts';
import { DRAWN_AGES, NEUTRAL, type Mark, type SceneChange, type SceneSpec } from '#scene/spec.ts';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import type { Degrees } from '#domain/units.ts';

const feet: SceneSpec = { ...NEUTRAL, camera: 'feet' };
const deg = (value: number) => value as Degrees;
const degrees = (min: number, max: number) => fc.integer({ min, max }).map(deg);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const grade = fc.constantFrom(0, 1, 2);
const MARKS: Mark[] = ['none', 'numb-dots', 'heel-rays', 'skin-patch', 'burn-rays', 'itch-dots', 'other-leg'];

const anyFeet: fc.Arbitrary<SceneSpec> = fc
  .record({
    side: fc.constantFrom('left', 'right'),
    age: fc.constantFrom(...DRAWN_AGES),
    lamp: fc.constantFrom('day', 'night'),
    toneShift: fc.constantFrom('none', 'paler', 'blue-grey', 'dusky-dark', 'blotched'),
    coolMark: grade,
    otherCoolMark: grade,
    swell: grade,
    wiggle: share,
    footPitch: degrees(-10, 45),
    lift: fc.constantFrom('not-asked', 'follows', 'empty'),
    legRoll: degrees(-10, 45),
    bandFoot: share,
    bandWrinkle: grade,
    bandGap: grade,
    bandTight: grade,
    bandWet: share,
    bandStain: fc.constantFrom('none', 'red', 'yellow-brown'),
    smell: fc.constantFrom(0, 1),
    plateTilt: degrees(-30, 30),
    plateGap: share,
    cord: fc.constantFrom(
      'on-wheel',
      'off-wheel',
      'frayed',
      'knot-at-wheel',
      'under-blanket',
      'toy-on-cord',
      'caught',
    ),
    mark: fc.constantFrom(...MARKS),
  } as const)
  .map((change) => ({ ...feet, ...change }) as SceneSpec);

const geometry = (spec: SceneSpec) => {
  const found = layoutScene(spec);
  if (found.camera !== 'feet') throw new Error(`asked for the feet, saw ${found.camera}`);
  return found;
};
const shapesOf = (picture: Picture) => picture.shapes.map((shape) => JSON.stringify(shape));
const markup = (picture: Picture) => picture.shapes.reduce((sum, s) => sum + s.d.length + 50, 0);
const toeWidth = (spec: SceneSpec) => geometry(spec).pulled.toes.map((toe) => toe.width);

describe('both bare feet from the foot end', () => {
  test('nothing is ever drawn outside the picture', () => {
    fc.assert(
      fc.property(anyFeet, (spec) => {
        const outside = drawScene(spec).shapes.filter((shape) =>
          pointsOf(shape.d).some((p) => p.x < 0 || p.x > VIEW.width || p.y < 0 || p.y > VIEW.height),
        );
        expect(outside).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('paths hold plain numbers only', () => {
    fc.assert(
      fc.property(anyFeet, (spec) => {
        for (const shape of drawScene(spec).shapes) expect(shape.d).toMatch(/^[MLCQZ0-9 .-]+$/);
      }),
      { numRuns: 60 },
    );
  });

  test('a pulled right leg is the exact mirror of a pulled left leg', () => {
    fc.assert(
      fc.property(anyFeet, (spec) => {
        const [left, right] = [drawScene({ ...spec, side: 'left' }), drawScene({ ...spec, side: 'right' })];
        expect(right.shapes.length).toBe(left.shapes.length);
        left.shapes.forEach((shape, i) => {
          const [a, b] = [pointsOf(shape.d), pointsOf(right.shapes[i]!.d)];
          expect(b.length).toBe(a.length);
          const off = a.filter(
            (p, k) => Math.max(Math.abs(VIEW.width - p.x - b[k]!.x), Math.abs(p.y - b[k]!.y)) > 0.11,
          );
          expect(off).toEqual([]);
        });
      }),
      { numRuns: 60 },
    );
  });

  test("the child's left foot lies on our right", () => {
    const middle = VIEW.width / 2;
    expect(geometry({ ...feet, side: 'left' }).pulled.toes[0]!.tip.x).toBeGreaterThan(middle);
    expect(geometry({ ...feet, side: 'right' }).pulled.toes[0]!.tip.x).toBeLessThan(middle);
  });

  test('each foot has five toes with the big toe on the inner side', () => {
    fc.assert(
      fc.property(anyFeet, (spec) => {
        const { pulled, other } = geometry(spec);
        for (const foot of [pulled, other]) {
          const fromMiddle = foot.toes.map((toe) => Math.abs(toe.base.x - VIEW.width / 2));
          expect(foot.toes).toHaveLength(5);
          expect(fromMiddle).toEqual(fromMiddle.toSorted((a, b) => a - b));
          expect(foot.toes[0]!.width).toBe(Math.max(...foot.toes.map((toe) => toe.width)));
        }
      }),
    );
  });

  const CHANGES: SceneChange[] = [
    ...(['paler', 'blue-grey', 'dusky-dark', 'blotched'] as const).map((toneShift) => ({ toneShift })),
    { coolMark: 1 },
    { coolMark: 2 },
    { otherCoolMark: 1 },
    { otherCoolMark: 2 },
    { swell: 1 },
    { swell: 2 },
    { wiggle: 0 },
    { wiggle: 0.5 },
    { footPitch: deg(45) },
    { footPitch: deg(-10) },
    { lift: 'follows' },
    { lift: 'empty' },
    { legRoll: deg(45) },
    { legRoll: deg(-10) },
    { bandFoot: 0.3 },
    { bandWrinkle: 1 },
    { bandGap: 1 },
    { bandTight: 1 },
    { bandTight: 2 },
    { bandWet: 0.4 },
    { bandWet: 1 },
    { bandStain: 'red' },
    { bandStain: 'yellow-brown' },
    { smell: 1 },
    { plateTilt: deg(20) },
    { plateTilt: deg(-20) },
    { plateGap: 0 },
    ...(['frayed', 'under-blanket', 'toy-on-cord', 'caught'] as const).map((cord) => ({ cord })),
    ...MARKS.filter((mark) => mark !== 'none').map((mark) => ({ mark })),
  ];

  test('every change is seen, and no two changes look alike', () => {
    const usual = JSON.stringify(drawScene(feet));
    const seen = CHANGES.map((change) => JSON.stringify(drawScene({ ...feet, ...change })));
    expect(new Set([usual, ...seen]).size).toBe(CHANGES.length + 1);
  });

  test('ages differ: a young foot is shorter and a grown foot longer', () => {
    const lengths = DRAWN_AGES.map((age) => {
      const g = geometry({ ...feet, age });
      return g.lowestToe - g.ankleY;
    });
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(new Set(lengths).size).toBe(DRAWN_AGES.length);
  });

  test('swollen toes are 1.15 and 1.3 times as wide, and lose their skin lines', () => {
    toeWidth({ ...feet, swell: 1 }).forEach((w, i) => expect(w / toeWidth(feet)[i]!).toBeCloseTo(1.15, 2));
    toeWidth({ ...feet, swell: 2 }).forEach((w, i) => expect(w / toeWidth(feet)[i]!).toBeCloseTo(1.3, 2));
    const creases = (spec: SceneSpec) =>
      drawScene(spec).shapes.filter((s) => s.line === 'ink' && s.weight === 1.3).length;
    expect(creases({ ...feet, swell: 2 })).toBe(creases(feet) - 1);
  });

  test('no colour change comes without hatching', () => {
    for (const toneShift of ['paler', 'blue-grey', 'dusky-dark', 'blotched'] as const) {
      const { shapes } = drawScene({ ...feet, toneShift });
      const last = shapes.findLastIndex((s) => s.fill === 'shift' && !s.line && s.d.includes('C'));
      expect(last).toBeGreaterThan(0);
      const before = shapesOf(drawScene(feet));
      const added = shapes.filter((s) => !before.includes(JSON.stringify(s)) && s.line === 'ink' && !s.fill);
      expect(added.length, toneShift).toBeGreaterThan(0);
    }
    expect(shapesOf(drawScene(feet)).some((s) => s.includes('"shift"'))).toBe(false);
  });

  test('the other foot never changes with what happens to the pulled one', () => {
    const usual = geometry(feet).other;
    fc.assert(
      fc.property(anyFeet, (spec) => {
        expect(geometry({ ...spec, side: 'left', age: feet.age }).other).toEqual(usual);
      }),
    );
  });

  test('a foot plate with all its room stays clear of the toes, and without room touches them', () => {
    for (const age of DRAWN_AGES) {
      const free = geometry({ ...feet, age, plateGap: 1 });
      const pressed = geometry({ ...feet, age, plateGap: 0 });
      expect(free.plate.top - free.lowestToe).toBeGreaterThan(30);
      expect(pressed.plate.top).toBeLessThanOrEqual(pressed.lowestToe);
    }
  });

  test('more room is never drawn as less', () => {
    fc.assert(
      fc.property(anyFeet, share, share, (spec, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const top = (plateGap: number) => geometry({ ...spec, plateGap }).plate.top;
        expect(top(more)).toBeGreaterThanOrEqual(top(less));
      }),
    );
  });

  test('the pen line stays where it was drawn while the bandage edge slips toward the toes', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [g, h] = [
          geometry({ ...feet, bandFoot: Math.min(a, b) }),
          geometry({ ...feet, bandFoot: Math.max(a, b) }),
        ];
        expect(h.penY).toBe(g.penY);
        expect(h.edgeY).toBeGreaterThanOrEqual(g.edgeY);
      }),
    );
  });

  test('a colder foot bears more marks than a cool one', () => {
    const size = (coolMark: 0 | 1 | 2) => markup(drawScene({ ...feet, coolMark }));
    expect(size(1)).toBeGreaterThan(size(0));
    const cold = (coolMark: 1 | 2) =>
      drawScene({ ...feet, coolMark })
        .shapes.filter((s) => s.line === 'wet')
        .map((s) => s.d.length * (s.weight ?? 1));
    expect(cold(2).reduce((a, b) => a + b)).toBeGreaterThan(1.4 * cold(1).reduce((a, b) => a + b));
  });

  test('the drawing of every sign seen from the foot end stays small', () => {
    for (const [id, { camera, usual, different }] of Object.entries(SIGN_PICTURES)) {
      if (camera !== 'feet') continue;
      expect(markup(drawScene({ ...feet, ...usual })), id).toBeLessThan(10_500);
      expect(markup(drawScene({ ...feet, ...usual, ...different })), id).toBeLessThan(14_000);
    }
  });
});
