import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slideOf, tiltOf } from '#domain/hill/hill.ts';
import { degrees, kilograms } from '#domain/units.ts';

const hill = fc.record({
  body: fc.double({ min: 5, max: 100, noNaN: true }).map(kilograms),
  bag: fc.double({ min: 0, max: 20, noNaN: true }).map(kilograms),
  tilt: fc.double({ min: 0, max: 45, noNaN: true }).map(degrees),
  friction: fc.double({ min: 0, max: 2, noNaN: true }),
});
/** Towards the head counts as positive. */
const way = { head: 1, stays: 0, foot: -1 } as const;

describe('the hill', () => {
  // OpenStax, University Physics 1, 6.1: a skier of 60.0 kg on 25°: 4.14 m/s² without friction, 3.39 with 45.0 N of it
  it('lets the skier of the textbook slide as fast as the textbook says', () => {
    const skier = { body: kilograms(60), bag: kilograms(0), tilt: degrees(25) };
    expect(slideOf({ ...skier, friction: 0 }).acceleration).toBeCloseTo(4.14, 2);
    const friction = 45 / (60 * 9.8 * Math.cos((25 * Math.PI) / 180));
    expect(slideOf({ ...skier, friction }).acceleration).toBeCloseTo(3.39, 2);
  });

  // worked by hand: asin 0.10 = 5.739°
  it('makes 5.739° of 20 cm on a bed of 2.00 m', () => expect(tiltOf(20, 200)).toBeCloseTo(5.739, 3));

  it('a bag that pulls as the hill does holds the body even on ice', () =>
    fc.assert(
      fc.property(hill, ({ body, tilt }) => {
        const bag = kilograms(body * Math.sin((tilt * Math.PI) / 180));
        // the two pulls differ by no more than rounding
        expect(slideOf({ body, bag, tilt, friction: 1e-9 }).to).toBe('stays');
      }),
    ));

  it('a steeper hill never turns the slide to the foot, a heavier bag never to the head', () =>
    fc.assert(
      fc.property(hill, fc.double({ min: 0, max: 20, noNaN: true }), (one, more) => {
        const from = way[slideOf(one).to];
        const steeper = degrees(Math.min(45, one.tilt + more));
        // with friction a steeper hill may start a slide to the head, and holds less against the bag: compared without
        const bare = { ...one, friction: 0 };
        expect(way[slideOf({ ...bare, tilt: steeper }).to]).toBeGreaterThanOrEqual(way[slideOf(bare).to]);
        expect(way[slideOf({ ...one, bag: kilograms(one.bag + more) }).to]).toBeLessThanOrEqual(from);
      }),
    ));

  it('more friction only ever slows', () =>
    fc.assert(
      fc.property(hill, fc.double({ min: 0, max: 2, noNaN: true }), (one, more) => {
        const rougher = slideOf({ ...one, friction: one.friction + more });
        expect(rougher.acceleration).toBeLessThanOrEqual(slideOf(one).acceleration);
      }),
    ));

  it('says what cannot be', () => {
    expect(() => tiltOf(201, 200)).toThrow('hill › rise: from 0 to 200, got 201');
    expect(() => slideOf({ body: kilograms(0), bag: kilograms(1), tilt: degrees(1), friction: 0 })).toThrow(
      'hill: body above 0',
    );
  });
});
