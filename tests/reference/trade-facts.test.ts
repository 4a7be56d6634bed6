/** Common practice of the trade, with no published source we could read (10-facts.md, section 2). */
import { describe, expect, test } from 'vitest';
import { TRADE_FACTS } from '#content/trade-facts.ts';
import { layoutScene } from '#scene/paths.ts';
import { drawScene } from '#scene/paths.ts';
import { DRAWN_AGES, NEUTRAL, type Focus, type SceneSpec } from '#scene/spec.ts';
import { pointsOf } from '#scene/shapes.ts';

const close = (focus: Focus, change: Partial<SceneSpec> = {}): SceneSpec => ({
  ...NEUTRAL,
  camera: 'close',
  focus,
  ...change,
});
const part = (spec: SceneSpec) => (layoutScene(spec) as unknown as { part: Record<string, unknown> }).part;
type At = { x: number; y: number };

test('every fact says that it is common practice and no more', () => {
  expect(Object.values(TRADE_FACTS).map((fact) => fact.basis)).toEqual(
    Object.keys(TRADE_FACTS).map(() => 'common-practice'),
  );
});

test('the facts are those of the trade', () => {
  const values = Object.fromEntries(Object.entries(TRADE_FACTS).map(([name, fact]) => [name, fact.value]));
  expect(values).toEqual({
    loadShareOfBodyWeight: 0.1,
    strongBedEndAboveKg: 40,
    firstChecksAfterMinutes: [5, 30],
    laterChecksEveryMinutes: 60,
    bandageOverlapShare: 0.5,
    gapBehindKnee: true,
  });
});

describe('the drawn leg bandage', () => {
  /** Where the turns' edges cross the middle of the leg, from the quiet lines over the bandage. */
  const turnsOf = (spec: SceneSpec): number[] => {
    const starts = drawScene(spec)
      .shapes.filter((shape) => shape.line === 'soft' && shape.weight === 1.7 && !shape.fill)
      .flatMap((shape) => shape.d.split('M').slice(1))
      .map((d) => pointsOf(`M${d}`))
      .map((points) => (points[0]!.x + points.at(-1)!.x) / 2);
    return starts.sort((a, b) => a - b);
  };

  test.each(DRAWN_AGES)(
    'age %i: turns lie evenly, so that each covers the same share of the one before',
    (age) => {
      const turns = turnsOf(close('bandage', { age, side: 'right' }));
      expect(turns.length).toBeGreaterThanOrEqual(5);
      const pitches = turns.slice(1).map((x, i) => x - turns[i]!);
      for (const pitch of pitches) expect(pitch).toBeCloseTo(pitches[0]!, 0);
    },
  );

  test('is on the leg in one direction, from the foot up: every turn leans the same way', () => {
    const leans = drawScene(close('bandage'))
      .shapes.filter((shape) => shape.line === 'soft' && shape.weight === 1.7 && !shape.fill)
      .flatMap((shape) => shape.d.split('M').slice(1))
      .map((d) => pointsOf(`M${d}`))
      .map((points) => Math.sign(points.at(-1)!.x - points[0]!.x));
    expect(new Set(leans).size).toBe(1);
  });
});

describe('the hollow behind the knee is free of the leg bandage', () => {
  test.each(DRAWN_AGES)('age %i: on the picture of the bandage', (age) => {
    const g = part(close('bandage', { age })) as unknown as { kneecap: At; edgeTop: At };
    // the kneecap is 58 wide; the hollow lies under it
    expect(g.edgeTop.x - g.kneecap.x).toBeGreaterThan(58);
  });

  test.each(DRAWN_AGES)('age %i: on the picture of the thigh', (age) => {
    const g = part(close('thigh', { age })) as unknown as { kneeBack: At; bandEdge: At };
    expect(g.bandEdge.x - g.kneeBack.x).toBeGreaterThan(25);
  });

  test.each(DRAWN_AGES)('age %i: on the picture of the knee', (age) => {
    const g = part(close('knee', { age })) as unknown as {
      kneecapRest: At;
      kneecapHeight: number;
      bandEdge: At;
    };
    expect(g.bandEdge.y).toBeGreaterThan(g.kneecapRest.y + g.kneecapHeight);
  });
});
