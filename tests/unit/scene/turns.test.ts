import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawScene, layoutScene } from '#scene/paths.ts';
import { distance, pointsOf } from '#scene/shapes.ts';
import { DRAWN_AGES, NEUTRAL, type SceneSpec } from '#scene/spec.ts';
import { turnEdges } from '#scene/parts/turns.ts';
import { KNEE } from '#scene/whole/leg.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('the turns of the leg bandage', () => {
  test('each covers half of the one below: the last one shows two halves, every other shows one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 200, noNaN: true }),
        fc.double({ min: 20, max: 400, noNaN: true }),
        fc.double({ min: 4, max: 60, noNaN: true }),
        (knee, length, pitch) => {
          const foot = knee + length;
          const edges = turnEdges(knee, foot, pitch);
          const half = foot - edges.at(-1)!;
          expect(edges[0]! - knee).toBeCloseTo(2 * half, 6);
          edges.slice(1).forEach((edge, i) => expect(edge - edges[i]!).toBeCloseTo(half, 6));
          expect(half * (edges.length + 2)).toBeCloseTo(length, 6);
          // never fewer than three halves; with more, the pitch asked for is met to a fifth
          if (edges.length > 1) expect(Math.abs(half - pitch) / pitch).toBeLessThanOrEqual(0.2);
        },
      ),
    );
  });
});

describe('on the bed from the side', () => {
  const whole: SceneSpec = { ...NEUTRAL, camera: 'whole', side: 'right' };
  const geometry = (spec: SceneSpec) => {
    const found = layoutScene(spec);
    if (found.camera !== 'whole') throw new Error(`asked for the bed from the side, saw ${found.camera}`);
    return found;
  };

  test('the knee stays bare, above and below, however the bandage has slipped', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...DRAWN_AGES),
        share,
        share,
        fc.constantFrom(0 as const, 2 as const),
        (age, bandTop, bandFoot, bandTight) => {
          const spec = { ...whole, age, bandTop, bandFoot, bandTight };
          const g = geometry(spec);
          const length = distance(g.hipNear, g.ankle);
          // how far along the leg from hip (0) to ankle (1) a point of the picture lies
          const alongLeg = (p: { x: number; y: number }) =>
            ((p.x - g.hipNear.x) * (g.ankle.x - g.hipNear.x) +
              (p.y - g.hipNear.y) * (g.ankle.y - g.hipNear.y)) /
            length ** 2;
          const cloth = drawScene(spec).shapes.filter((s) => s.fill === 'band' || s.fill === 'band-shade');
          expect(cloth.length).toBeGreaterThan(2);
          const nearest = Math.min(...cloth.flatMap((s) => pointsOf(s.d)).map(alongLeg));
          expect(nearest).toBeGreaterThan(KNEE + 0.05);
        },
      ),
      { numRuns: 60 },
    );
  });
});
