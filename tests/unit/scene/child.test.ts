import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import { drawScene } from '#scene/paths.ts';
import {
  DRAWN_AGES,
  HAIRS,
  NEUTRAL,
  type Face,
  type Mark,
  type Prop,
  type SceneSpec,
  type SorenessSteps,
} from '#scene/spec.ts';
import { pointsOf, type Shape, VIEW } from '#scene/shapes.ts';

const child = (change: Partial<SceneSpec> = {}): SceneSpec => ({
  ...NEUTRAL,
  camera: 'close',
  focus: 'child',
  ...change,
});
const shapesOf = (spec: SceneSpec): Shape[] => drawScene(spec).shapes;
const drawn = (spec: SceneSpec): string => JSON.stringify(shapesOf(spec));

const FACES: Face[] = ['calm', 'sore', 'crying', 'scared', 'flushed', 'drowsy', 'drained', 'away'];
const MARKS: Mark[] = [
  'none',
  'shiver-arcs',
  'fit-arcs',
  'wild-arcs',
  'no-answer',
  'sweat-drops',
  'belly-rays',
  'head-rays',
];
const PROPS: Prop[] = [
  'none',
  'medicine-cup',
  'bottle-used',
  'bottle-empty-clock',
  'cup-sipped',
  'cup-full-clock',
  'bowl-clean',
  'bowl-used',
  'pan-today',
  'pan-three-days',
];
const STAIRS: SorenessSteps[] = ['none', 'falling', 'flat', 'rising'];

const anyChild: fc.Arbitrary<SceneSpec> = fc
  .record({
    side: fc.constantFrom('left' as const, 'right' as const),
    age: fc.constantFrom(...DRAWN_AGES),
    hair: fc.constantFrom(...HAIRS),
    face: fc.constantFrom(...FACES),
    mark: fc.constantFrom(...MARKS),
    prop: fc.constantFrom(...PROPS),
    soreness: fc.constantFrom(...STAIRS),
    breath: fc.constantFrom(0 as const, 1 as const, 2 as const),
    belly: fc.constantFrom(0 as const, 1 as const),
  })
  .map(child);

describe('the child seen close up', () => {
  it('never leaves the page, whatever is different', () => {
    fc.assert(
      fc.property(anyChild, (spec) => {
        for (const { d } of shapesOf(spec)) {
          expect(d).not.toMatch(/NaN|Infinity|e-|[^MLCQZ0-9. -]/);
          const stray = pointsOf(d).filter(
            (p) => p.x < 0 || p.x > VIEW.width || p.y < 0 || p.y > VIEW.height,
          );
          expect(stray).toEqual([]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('lies the other way round when the other leg is pulled, and only the clock stays as it is', () => {
    fc.assert(
      fc.property(anyChild, (spec) => {
        const [left, right] = [shapesOf({ ...spec, side: 'left' }), shapesOf({ ...spec, side: 'right' })];
        expect(right.map(({ d: _d, ...look }) => look)).toEqual(left.map(({ d: _d, ...look }) => look));
        if (/clock|medicine|bottle|cup/.test(spec.prop)) return;
        left.forEach((shape, i) => {
          const mirrored = pointsOf(right[i]!.d).map((p) => [Math.round((VIEW.width - p.x) * 10), p.y]);
          expect(mirrored).toEqual(pointsOf(shape.d).map((p) => [Math.round(p.x * 10), p.y]));
        });
      }),
      { numRuns: 120 },
    );
  });

  it('shows every face, mark, thing and step of soreness in its own way', () => {
    for (const [key, values] of Object.entries({ face: FACES, mark: MARKS, prop: PROPS, soreness: STAIRS })) {
      const pictures = new Set(values.map((value) => drawn(child({ [key]: value }))));
      expect(pictures.size, key).toBe(values.length);
    }
    expect(drawn(child({ breath: 1 }))).not.toBe(drawn(child()));
    expect(drawn(child({ breath: 2 }))).not.toBe(drawn(child({ breath: 1 })));
    expect(drawn(child({ belly: 1 }))).not.toBe(drawn(child()));
  });

  it('never smiles where something is wrong', () => {
    for (const [id, { focus, usual, different }] of Object.entries(SIGN_PICTURES)) {
      if (focus !== 'child') continue;
      expect({ ...usual, ...different }, id).toHaveProperty('face');
    }
  });

  it('weighs little enough for an old phone', () => {
    for (const [id, { focus, usual, different }] of Object.entries(SIGN_PICTURES)) {
      if (focus !== 'child') continue;
      for (const change of [usual, { ...usual, ...different }]) {
        const markup = shapesOf(child(change)).reduce((sum, s) => sum + s.d.length + 60, 0);
        expect(markup, id).toBeLessThan(17_500);
      }
    }
  });
});
