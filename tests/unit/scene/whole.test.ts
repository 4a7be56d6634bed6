import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import type { Degrees } from '#domain/units.ts';
import { drawScene, layoutScene } from '#scene/paths.ts';
import { distance, pointsOf, VIEW } from '#scene/shapes.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, type SceneChange, type SceneSpec } from '#scene/spec.ts';
import { BED, FLOOR, SLIDE } from '#scene/whole/layout.ts';
import { HALF } from '#scene/whole/on-floor.ts';

const whole: SceneSpec = { ...NEUTRAL, camera: 'whole' };
const deg = (value: number) => value as Degrees;
const degrees = (min: number, max: number) => fc.integer({ min, max }).map(deg);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const grade = fc.constantFrom(0, 1, 2);
const yes = fc.constantFrom(0, 1);
const CORDS = [
  'on-wheel',
  'off-wheel',
  'frayed',
  'knot-at-wheel',
  'under-blanket',
  'toy-on-cord',
  'caught',
] as const;
const MARKS = [
  'none',
  'numb-dots',
  'heel-rays',
  'skin-patch',
  'burn-rays',
  'itch-dots',
  'jump-zigzag',
  'shiver-arcs',
  'fit-arcs',
  'wild-arcs',
  'no-answer',
  'sweat-drops',
  'belly-rays',
  'head-rays',
  'other-leg',
] as const;

const anyWhole: fc.Arbitrary<SceneSpec> = fc
  .record({
    side: fc.constantFrom('left', 'right'),
    age: fc.constantFrom(...DRAWN_AGES),
    hair: fc.constantFrom(...HAIRS),
    toneShift: fc.constantFrom('none', 'paler', 'blue-grey', 'dusky-dark', 'blotched'),
    swell: grade,
    footPitch: degrees(-10, 45),
    legRoll: degrees(-10, 45),
    bandTop: share,
    bandFoot: share,
    bandWrinkle: grade,
    bandGap: grade,
    bandTight: grade,
    bandWet: share,
    bandStain: fc.constantFrom('none', 'red', 'yellow-brown'),
    smell: yes,
    plateTilt: degrees(-30, 30),
    plateGap: share,
    heelGap: share,
    slide: share,
    bedRaise: share,
    headRaise: share,
    cord: fc.constantFrom(...CORDS),
    loadHeight: share,
    loadTouch: fc.constantFrom('none', 'floor', 'bed-end', 'other'),
    loadSwing: yes,
    face: fc.constantFrom('calm', 'sore', 'crying', 'scared', 'flushed', 'drowsy', 'drained', 'away'),
    breath: grade,
    belly: yes,
    thigh: fc.constantFrom('usual', 'thick', 'bent', 'stained'),
    mark: fc.constantFrom(...MARKS),
    offLine: share,
  } as const)
  .map((change) => ({ ...whole, ...change }) as SceneSpec);

const geometry = (change: Partial<SceneSpec> = {}) => {
  const found = layoutScene({ ...whole, ...change });
  if (found.camera !== 'whole') throw new Error(`asked for the bed from the side, saw ${found.camera}`);
  return found;
};
const drawn = (change: Partial<SceneSpec> = {}) =>
  drawScene({ ...whole, ...change }).shapes.map((shape) => JSON.stringify(shape));

describe('the bed from the side', () => {
  test('every point of every picture lies inside the view, and none is lost', () => {
    fc.assert(
      fc.property(anyWhole, (spec) => {
        const shapes = drawScene(spec).shapes;
        expect(shapes.length).toBeGreaterThan(60);
        expect(shapes.filter((shape) => !/^[MLCQZ0-9 .-]+$/.test(shape.d))).toEqual([]);
        const out = (x: number, y: number) => !(x >= 0 && x <= VIEW.width && y >= 0 && y <= VIEW.height);
        expect(shapes.flatMap((shape) => pointsOf(shape.d)).filter((p) => out(p.x, p.y))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('the child lies with its head at the other end for the other leg, point for point', () => {
    fc.assert(
      fc.property(anyWhole, (spec) => {
        const right = drawScene({ ...spec, side: 'right' });
        const left = drawScene({ ...spec, side: 'left' });
        const mirrored = right.shapes.map((shape) =>
          pointsOf(shape.d).map((p) => `${(VIEW.width - p.x).toFixed(1)} ${p.y.toFixed(1)}`),
        );
        expect(
          left.shapes.map((shape) => pointsOf(shape.d).map((p) => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`)),
        ).toEqual(mirrored);
      }),
      { numRuns: 60 },
    );
    expect(drawScene({ ...whole, side: 'right' }).spots!.child!.x).toBeLessThan(VIEW.width / 2);
    expect(drawScene({ ...whole, side: 'left' }).spots!.child!.x).toBeGreaterThan(VIEW.width / 2);
  });

  const changes: SceneChange[] = [
    { toneShift: 'paler' },
    { swell: 1 },
    { footPitch: deg(30) },
    { legRoll: deg(30) },
    { bandTop: 0.5 },
    { bandFoot: 0.5 },
    { bandWrinkle: 1 },
    { bandGap: 1 },
    { bandTight: 1 },
    { bandWet: 0.5 },
    { bandStain: 'yellow-brown' },
    { smell: 1 },
    { plateTilt: deg(15) },
    { plateGap: 0.3 },
    { heelGap: 0.3 },
    { slide: 0.3 },
    { bedRaise: 0.5 },
    { headRaise: 0.5 },
    { loadHeight: 0.8 },
    { loadTouch: 'floor' },
    { loadTouch: 'bed-end' },
    { loadTouch: 'other' },
    { loadSwing: 1 },
    { face: 'crying' },
    { breath: 1 },
    { belly: 1 },
    { thigh: 'thick' },
    { thigh: 'bent' },
    { thigh: 'stained' },
    { offLine: 0.3 },
    ...CORDS.slice(1).map((cord) => ({ cord })),
    ...MARKS.slice(1).map((mark) => ({ mark })),
  ];
  test.each(changes.map((change) => [Object.entries(change).flat().join(' '), change] as const))(
    'a change is seen: %s',
    (_, change) => {
      expect(drawn(change)).not.toEqual(drawn());
    },
  );

  test('what cannot be seen from the side leaves the picture alone', () => {
    expect(drawn({ coolMark: 2, prop: 'bowl-used', soreness: 'rising', lift: 'empty' })).toEqual(drawn());
  });

  test('each sign told from the side keeps the bed, the head or the leg it does not speak of', () => {
    for (const picture of Object.values(SIGN_PICTURES)) {
      if (picture.camera !== 'whole') continue;
      const usual = new Set(drawn(picture.usual));
      const different = drawn({ ...picture.usual, ...picture.different });
      expect(different.some((shape) => usual.has(shape))).toBe(true);
      expect(different.some((shape) => !usual.has(shape))).toBe(true);
    }
  });
});

describe('the one cord', () => {
  test('keeps its length while the body slides, the bed sinks and the foot plate moves', () => {
    fc.assert(
      fc.property(anyWhole, (spec) => {
        const g = geometry(spec);
        const still = geometry({ ...spec, slide: 0, bedRaise: 1, offLine: 0, headRaise: 0 });
        expect(g.cord.length).toBeCloseTo(still.cord.length, 6);
        // a bag held up by its wheel is the one thing that could shorten the way down
        const held = g.cord.toBag <= 14.000001;
        if (!held) expect(g.cord.toWheel + g.cord.toBag + g.cord.slack).toBeCloseTo(g.cord.length, 6);
        expect(g.cord.toWheel).toBeCloseTo(distance(g.plate.tie, g.overWheel), 6);
      }),
    );
  });

  test('a child who slides lowers the bag by as much, until it stands on the floor', () => {
    const [start, some, far] = [geometry(), geometry({ slide: 0.4 }), geometry({ slide: 0.9 })];
    expect(some.bag.y - start.bag.y).toBeCloseTo(0.4 * SLIDE, 0);
    expect(start.resting).toBe(false);
    expect(far.resting).toBe(true);
    expect(distance(far.plate.tie, far.wheel)).toBeLessThan(distance(start.plate.tie, start.wheel) / 2);
  });

  test('the bag never sinks into the floor and hangs below the wheel', () => {
    fc.assert(
      fc.property(anyWhole, (spec) => {
        const g = geometry(spec);
        expect(g.room).toBeGreaterThanOrEqual(0);
        expect(g.bag.y).toBeGreaterThan(g.wheel.y);
        expect(g.bag.y).toBeLessThan(FLOOR);
      }),
    );
  });

  test('on the usual bed, and on a level one, the bag hangs free for every child', () => {
    for (const age of DRAWN_AGES) {
      expect(geometry({ age }).room).toBeGreaterThan(30);
      expect(geometry({ age, bedRaise: 0 }).resting).toBe(false);
      expect(geometry({ age, loadTouch: 'floor' }).resting).toBe(true);
      expect(geometry({ age, loadTouch: 'other' }).resting).toBe(true);
    }
  });
});

describe('the hill', () => {
  test('the foot end lies higher than the head end only when it is raised', () => {
    const raised = geometry();
    const level = geometry({ bedRaise: 0 });
    expect(raised.flat(40, 0, 0).y - raised.flat(390, 0, 0).y).toBeGreaterThan(30);
    expect(level.flat(40, 0, 0).y).toBeCloseTo(level.flat(390, 0, 0).y, 6);
  });
});

describe('a child who left the bed', () => {
  const { usual, different } = SIGN_PICTURES['fell-or-climbing'];
  const shapesOf = (change: Partial<SceneSpec>) => drawScene({ ...whole, side: 'right', ...change }).shapes;
  const pointsIn = (change: Partial<SceneSpec>, fill: string) =>
    shapesOf(change)
      .filter((shape) => shape.fill === fill)
      .map((shape) => pointsOf(shape.d));
  const lowest = (points: readonly { y: number }[]) => Math.max(...points.map((p) => p.y));

  test.each(DRAWN_AGES)('at age %i is seen in two halves: over the edge, and down on the floor', (age) => {
    const left = { age, ...usual, ...different };
    const edge = geometry({ side: 'right', ...left }).flat(BED.head, 0, 0).y;
    // the trunk is the one large field of the gown; sleeves are smaller
    const trunks = pointsIn(left, 'gown')
      .filter((field) => lowest(field) - Math.min(...field.map((p) => p.y)) > 60)
      .map((field) => ({ x: Math.min(...field.map((p) => p.x)), low: lowest(field) }));
    expect(trunks).toHaveLength(2);
    const [climbing, fallen] = trunks as [(typeof trunks)[0], (typeof trunks)[0]];
    expect(climbing.x).toBeLessThan(HALF);
    expect(climbing.low).toBeLessThan(edge);
    expect(fallen.x).toBeGreaterThan(HALF);
    expect(fallen.low).toBeGreaterThan(edge + 60);
    expect(pointsIn({ age, ...usual }, 'gown').every((field) => lowest(field) < edge)).toBe(true);
  });

  test.each(DRAWN_AGES)('at age %i keeps leg bandage and foot plate, and nothing red is seen', (age) => {
    const left = { age, ...usual, ...different };
    const after = (fill: string) => pointsIn(left, fill).filter((field) => field.every((p) => p.x > HALF));
    expect(after('plate').length).toBeGreaterThan(0);
    expect(after('band').length).toBeGreaterThan(1);
    expect(pointsIn(left, 'red')).toEqual([]);
  });
});

describe('the parts to touch', () => {
  test('lie inside the picture and far enough apart for a thumb, for every child', () => {
    for (const age of DRAWN_AGES) {
      for (const side of ['left', 'right'] as const) {
        const spots = Object.entries(drawScene({ ...whole, age, side }).spots!);
        expect(spots.map(([id]) => id).sort()).toEqual(
          ['bandage', 'child', 'cord', 'skin', 'straight', 'thigh', 'toes', 'weight'].sort(),
        );
        for (const [id, a] of spots) {
          expect(a.x).toBeGreaterThan(a.r / 2);
          expect(a.x).toBeLessThan(VIEW.width - a.r / 2);
          for (const [other, b] of spots) if (id < other) expect(distance(a, b)).toBeGreaterThanOrEqual(44);
        }
      }
    }
  });
});
