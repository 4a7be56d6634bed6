import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import { degrees } from '#domain/units.ts';
import { layoutScene, drawScene } from '#scene/paths.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, SKIN_TONES, type Focus, type SceneSpec } from '#scene/spec.ts';
import { pointsOf, type Shape, VIEW } from '#scene/shapes.ts';

const FOCUSES = ['foot', 'bandage', 'heel', 'knee', 'thigh', 'bed-end'] as const satisfies readonly Focus[];
const usual = (focus: Focus, change: Partial<SceneSpec> = {}): SceneSpec => ({
  ...NEUTRAL,
  camera: 'close',
  focus,
  ...change,
});
const shapesOf = (spec: SceneSpec): Shape[] => drawScene(spec).shapes;
const drawn = (spec: SceneSpec): string => JSON.stringify(shapesOf(spec));
const part = <T>(spec: SceneSpec): T => (layoutScene(spec) as unknown as { part: T }).part;
type At = { x: number; y: number };

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const steps = fc.constantFrom(0 as const, 1 as const, 2 as const);
const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(degrees);
const anySpec: fc.Arbitrary<SceneSpec> = fc
  .record({
    focus: fc.constantFrom<Focus>(...FOCUSES),
    side: fc.constantFrom('left' as const, 'right' as const),
    age: fc.constantFrom(2 as const, 5 as const, 9 as const, 14 as const),
    hair: fc.constantFrom(...HAIRS),
    skin: fc.constantFrom(...SKIN_TONES),
    toneShift: fc.constantFrom(
      'none' as const,
      'paler' as const,
      'blue-grey' as const,
      'dusky-dark' as const,
      'blotched' as const,
    ),
    coolMark: steps,
    swell: steps,
    wiggle: unit,
    footPitch: angle(-10, 45),
    lift: fc.constantFrom('not-asked' as const, 'follows' as const, 'empty' as const),
    legRoll: angle(-10, 45),
    bandTop: unit,
    bandFoot: unit,
    bandWrinkle: steps,
    bandGap: steps,
    bandTight: steps,
    bandWet: unit,
    bandStain: fc.constantFrom('none' as const, 'red' as const, 'yellow-brown' as const),
    smell: fc.constantFrom(0 as const, 1 as const),
    plateTilt: angle(-30, 30),
    plateGap: unit,
    heelGap: unit,
    slide: unit,
    bedRaise: unit,
    cord: fc.constantFrom(
      'on-wheel' as const,
      'off-wheel' as const,
      'frayed' as const,
      'knot-at-wheel' as const,
      'under-blanket' as const,
      'toy-on-cord' as const,
      'caught' as const,
    ),
    loadHeight: unit,
    loadTouch: fc.constantFrom('none' as const, 'floor' as const, 'bed-end' as const, 'other' as const),
    loadSwing: fc.constantFrom(0 as const, 1 as const),
    thigh: fc.constantFrom('usual' as const, 'thick' as const, 'bent' as const, 'stained' as const),
    mark: fc.constantFrom(
      'none' as const,
      'heel-rays' as const,
      'skin-patch' as const,
      'burn-rays' as const,
      'itch-dots' as const,
      'jump-zigzag' as const,
    ),
  })
  .map((values) => usual(values.focus, values));

describe('a part of the leg seen large', () => {
  it('never leaves the page, whatever is different', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        for (const { d } of shapesOf(spec)) {
          expect(d).not.toMatch(/NaN|Infinity|e-|[^MLCQZ0-9. -]/);
          const stray = pointsOf(d).filter(
            (p) => p.x < 0 || p.x > VIEW.width || p.y < 0 || p.y > VIEW.height,
          );
          expect(stray).toEqual([]);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('shows the right leg as the exact mirror of the left', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        const [left, right] = [shapesOf({ ...spec, side: 'left' }), shapesOf({ ...spec, side: 'right' })];
        expect(right.map(({ d: _d, ...look }) => look)).toEqual(left.map(({ d: _d, ...look }) => look));
        left.forEach((shape, i) => {
          const mirrored = pointsOf(right[i]!.d).map((p) => [Math.round((VIEW.width - p.x) * 10), p.y]);
          expect(mirrored).toEqual(pointsOf(shape.d).map((p) => [Math.round(p.x * 10), p.y]));
        });
      }),
      { numRuns: 120 },
    );
  });

  it('is named in plain numbers, so that it can be stored and compared', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        const geometry = layoutScene(spec);
        expect(JSON.parse(JSON.stringify(geometry))).toEqual(geometry);
      }),
      { numRuns: 60 },
    );
  });

  it('weighs little enough for an old phone', () => {
    for (const { camera, focus, usual: before, different } of Object.values(SIGN_PICTURES)) {
      if (camera !== 'close' || !(FOCUSES as readonly Focus[]).includes(focus)) continue;
      for (const change of [before, { ...before, ...different }]) {
        const markup = shapesOf(usual(focus, change)).reduce((sum, s) => sum + s.d.length + 60, 0);
        expect(markup, focus).toBeLessThan(13_000);
      }
    }
  });
});

describe('what a family may report changes the picture', () => {
  const honoured: Record<(typeof FOCUSES)[number], Partial<SceneSpec>[]> = {
    foot: [
      { footPitch: degrees(38) },
      { lift: 'follows' },
      { lift: 'empty' },
      { plateTilt: degrees(-20) },
      { plateGap: 0 },
      { plateGap: 0.5 },
      { legRoll: degrees(20) },
      { heelGap: 0 },
      { toneShift: 'paler' },
      { toneShift: 'blotched' },
      { swell: 1 },
      { coolMark: 1 },
      { wiggle: 0 },
      { wiggle: 0.5 },
      { bandFoot: 0.4 },
      { bandTight: 1 },
      { bandWrinkle: 1 },
      { bandWet: 0.5 },
      { bandStain: 'red' },
      { slide: 0.5 },
      { age: 2 },
    ],
    bandage: [
      { bandTop: 0.3 },
      { bandFoot: 0.3 },
      { bandWrinkle: 1 },
      { bandGap: 1 },
      { bandTight: 1 },
      { bandWet: 0.2 },
      { bandStain: 'red' },
      { bandStain: 'yellow-brown' },
      { smell: 1 },
      { mark: 'burn-rays' },
      { mark: 'itch-dots' },
      { legRoll: degrees(30) },
      { heelGap: 0 },
      { age: 14 },
    ],
    heel: [
      { heelGap: 0.5 },
      { heelGap: 0 },
      { mark: 'heel-rays' },
      { mark: 'skin-patch' },
      { footPitch: degrees(30) },
      { bandFoot: 0.5 },
      { bandTight: 2 },
      { plateTilt: degrees(10) },
      { plateGap: 0.3 },
      { legRoll: degrees(20) },
      { age: 2 },
    ],
    knee: [
      { legRoll: degrees(38) },
      { legRoll: degrees(-10) },
      { footPitch: degrees(40) },
      { swell: 2 },
      { toneShift: 'dusky-dark' },
      { bandTop: 0.6 },
      { bandFoot: 0.5 },
      { bandTight: 2 },
      { plateTilt: degrees(20) },
      { plateGap: 0 },
      { heelGap: 0 },
      { coolMark: 2 },
      { slide: 0.5 },
      { age: 14 },
    ],
    thigh: [
      { thigh: 'thick' },
      { thigh: 'bent' },
      { thigh: 'stained' },
      { mark: 'jump-zigzag' },
      { legRoll: degrees(38) },
      { bandTop: 0.5 },
      { bandTight: 1 },
      { slide: 1 },
      { age: 2 },
    ],
    'bed-end': [
      { loadHeight: 0 },
      { loadHeight: 1 },
      { loadTouch: 'floor' },
      { loadTouch: 'bed-end' },
      { loadTouch: 'other' },
      { loadSwing: 1 },
      { slide: 0.4 },
      { bedRaise: 0 },
      { cord: 'off-wheel' },
      { cord: 'frayed' },
      { cord: 'knot-at-wheel' },
      { cord: 'under-blanket' },
      { cord: 'toy-on-cord' },
      { cord: 'caught' },
      { plateTilt: degrees(20) },
      { plateGap: 0 },
      { footPitch: degrees(38) },
      { heelGap: 0 },
      { toneShift: 'paler' },
      { age: 9 },
    ],
  };
  for (const focus of FOCUSES) {
    it(`on the ${focus} picture, each thing by itself`, () => {
      for (const change of honoured[focus]) {
        expect(drawn(usual(focus, change)), JSON.stringify(change)).not.toBe(drawn(usual(focus)));
      }
    });
  }
});

describe('laws of the set-up', () => {
  it('a foot plate may touch the toes but never stands inside the foot', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        const g = part<{ plate: At[]; foot: { outline: At[] } }>({ ...spec, focus: 'foot', side: 'left' });
        const [a, , , d] = g.plate as [At, At, At, At];
        for (const p of g.foot.outline) {
          // on the leg's side of the plate's near face
          const side = (d.x - a.x) * (p.y - a.y) - (d.y - a.y) * (p.x - a.x);
          expect(side / Math.hypot(d.x - a.x, d.y - a.y)).toBeGreaterThan(-1);
        }
      }),
    );
  });

  it('the pen line stays where staff drew it when the bandage edge slides', () => {
    const lines = (change: Partial<SceneSpec>) =>
      shapesOf(usual('bandage', change))
        .filter((s) => s.line === 'pen')
        .map((s) => s.d);
    expect(lines({ bandTop: 0.7 })[0]).toBe(lines({})[0]);
    const edge = (change: Partial<SceneSpec>) => part<{ edgeTop: At }>(usual('bandage', change)).edgeTop.x;
    expect(edge({ bandTop: 0.3 }) - edge({})).toBeGreaterThan(30);
  });

  it('fingers that want to scratch stay in the air, whoever’s they are', () => {
    for (const age of DRAWN_AGES)
      for (const side of ['left', 'right'] as const) {
        const before = new Set(shapesOf(usual('bandage', { age, side })).map((s) => s.d));
        const after = shapesOf(usual('bandage', { age, side, mark: 'itch-dots' }));
        const cloth = after.findIndex((s) => s.fill === 'band');
        // what came in before the bandage is child, arm and hand; what came after lies on the cloth
        const child = after.slice(0, cloth).filter((s) => !before.has(s.d) && s.fill === 'skin');
        const top = Math.min(
          ...after.flatMap((s) => (s.fill === 'band' ? pointsOf(s.d) : [])).map((p) => p.y),
        );
        const beyondKnee = child
          .flatMap((s) => pointsOf(s.d))
          .filter((p) => (side === 'left' ? p.x : VIEW.width - p.x) > 160);
        expect(beyondKnee.length).toBeGreaterThan(20);
        expect(Math.max(...beyondKnee.map((p) => p.y))).toBeLessThan(top - 4);
      }
  });

  it('the weight sinks as far as the body slides, until the floor holds it', () => {
    fc.assert(
      fc.property(unit, unit, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const y = (slide: number) => part<{ bag: { seat: At } }>(usual('bed-end', { slide })).bag.seat.y;
        expect(y(more)).toBeGreaterThanOrEqual(y(less));
        const moved =
          part<{ plateMiddle: At }>(usual('bed-end', { slide: 0.2 })).plateMiddle.x -
          part<{ plateMiddle: At }>(usual('bed-end')).plateMiddle.x;
        expect(y(0.2) - y(0)).toBeCloseTo(moved, 1);
      }),
    );
  });

  it('a kneecap on a leg rolled outward looks to the outer side of its own leg', () => {
    fc.assert(
      fc.property(angle(1, 45), (legRoll) => {
        const cap = (side: 'left' | 'right') => {
          const g = part<{ kneecap: At; kneecapRest: At }>(usual('knee', { legRoll, side }));
          return g.kneecap.x - g.kneecapRest.x;
        };
        expect(cap('left')).toBeGreaterThan(0);
        expect(cap('right')).toBeLessThan(0);
      }),
    );
  });

  it('a free heel leaves daylight, a heel that lies does not', () => {
    const sheet = 286;
    for (const age of [2, 5, 9, 14] as const) {
      const lowest = (heelGap: number) =>
        Math.max(
          ...part<{ foot: { outline: At[] } }>(usual('heel', { heelGap, age })).foot.outline.map((p) => p.y),
        );
      expect(sheet - lowest(1)).toBeGreaterThan(20);
      expect(lowest(0)).toBeGreaterThan(sheet);
    }
  });

  it('toes far from the nose belong to a foot that droops', () => {
    const tip = (pitch: number) =>
      part<{ foot: { toeTip: At } }>(usual('foot', { footPitch: degrees(pitch) })).foot.toeTip.x;
    expect(tip(38) - tip(-5)).toBeGreaterThan(60);
  });
});
