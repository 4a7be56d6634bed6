// Source: OpenStax, University Physics 1, 6.1 (skier on a slope): 60.0 kg, 25°, g 9.80 m/s²: 4.14 m/s², with friction 45.0 N 3.39.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { degrees, type Degrees } from '#domain/units.ts';
import { TRADE_FACTS } from '#content/trade-facts.ts';
import { layoutScene } from '#scene/paths.ts';
import { DRAWN_AGES, NEUTRAL, type SceneSpec } from '#scene/spec.ts';
import { DRAWN_EXAGGERATION, DRAWN_TILT, slopeForLoad } from '#scene/whole/slope.ts';
import { root } from '../helpers/locales.ts';

const G = 9.8;
/** How much higher the foot end of a tilted bed stands than its head end, in the unit of its length. */
const riseOfBed = (length: number, slope: Degrees) => length * Math.sin((slope * Math.PI) / 180);
/** Along the slope a body is pulled with m·g·sin θ; `riseOfBed` of length 1 is that sine. */
const alongSlope = (angle: number) => G * riseOfBed(1, degrees(angle));

describe('the inclined plane', () => {
  test('at 25° a body without friction gains 4.14 m/s each second, with 45.0 N of friction on 60.0 kg 3.39', () => {
    expect(alongSlope(25)).toBeCloseTo(4.14, 2);
    expect(alongSlope(25) - 45 / 60).toBeCloseTo(3.39, 2);
  });

  test('a tenth of the body weight is balanced at 5.739°', () => {
    expect(slopeForLoad(0.1)).toBeCloseTo(5.739, 3);
    expect(slopeForLoad(TRADE_FACTS.loadShareOfBodyWeight.value)).toBe(slopeForLoad(0.1));
    expect(slopeForLoad(0)).toBe(0);
    expect(slopeForLoad(1)).toBeCloseTo(90, 9);
  });

  test('a bed 2.00 m long then stands 20.0 cm higher at its foot end', () => {
    expect(riseOfBed(2, slopeForLoad(0.1))).toBeCloseTo(0.2, 12);
  });

  test('the pull of the tilt is the pull of the hanging weight, for any share', () => {
    for (const share of [0.05, 0.08, 0.1, 0.12, 0.15])
      expect(riseOfBed(1, slopeForLoad(share))).toBeCloseTo(share, 12);
  });
});

describe('the drawn bed', () => {
  /** Measured on the picture's own mattress line, against the flat bed. */
  const tiltOf = (change: Partial<SceneSpec>) => {
    const g = layoutScene({ ...NEUTRAL, camera: 'whole', ...change });
    if (g.camera !== 'whole') throw new Error(`asked for the bed from the side, saw ${g.camera}`);
    const [head, foot] = [g.flat(20, 0, 0), g.flat(390, 0, 0)];
    return (Math.atan2(head.y - foot.y, foot.x - head.x) * 180) / Math.PI;
  };

  test('a raised foot end stands higher, for every child, and a level one is level', () => {
    for (const age of DRAWN_AGES) {
      expect(tiltOf({ age, bedRaise: 1 })).toBeCloseTo(DRAWN_TILT, 6);
      expect(tiltOf({ age, bedRaise: 0 })).toBeCloseTo(0, 6);
    }
  });

  test('is tilted as the pull asks for, or up to 1.6 times as much so that it is seen, never less', () => {
    const drawn = tiltOf({}) / slopeForLoad(TRADE_FACTS.loadShareOfBodyWeight.value);
    expect(drawn).toBeGreaterThanOrEqual(1);
    expect(drawn).toBeLessThanOrEqual(1.6);
    expect(drawn).toBeCloseTo(DRAWN_EXAGGERATION, 1);
  });

  test('says in its code that it is drawn steeper than it stands', () => {
    const code = readFileSync(path.join(root, 'src/scene/whole/slope.ts'), 'utf8');
    expect(code).toMatch(/drawn steeper than it stands/);
    expect(readFileSync(path.join(root, 'src/scene/whole/layout.ts'), 'utf8')).toContain(
      '-DRAWN_TILT * raise',
    );
  });
});
