/** The hill: a body on a tilted bed, a bag on a cord over a wheel, and friction. A model to play with, never a setting. */
import { degrees, type Degrees, type Kilograms } from '../units.ts';

/** m/s². Source: OpenStax, University Physics 1, 5.4. */
const GRAVITY = 9.8;

const radians = (angle: Degrees) => (angle * Math.PI) / 180;

/**
 * The tilt of a bed whose foot end is raised.
 *
 * Units: both lengths in the same unit.
 * Errors: RangeError where the rise is below 0 or more than the length.
 * Source: geometry, the sine of the angle is rise over length.
 *
 * @example tiltOf(20, 200) // 5.739…, in degrees
 */
export function tiltOf(rise: number, length: number): Degrees {
  if (!(rise >= 0 && rise <= length && length > 0))
    throw new RangeError(`hill › rise: from 0 to ${length}, got ${rise}`);
  return degrees((Math.asin(rise / length) * 180) / Math.PI);
}

export interface Hill {
  body: Kilograms;
  /** The bag; 0 where nothing hangs. */
  bag: Kilograms;
  tilt: Degrees;
  /** Coefficient of friction between body and sheet, 0 or more; the same at rest and sliding. */
  friction: number;
}

export interface Slide {
  /** Down the hill is towards the head end: it is the foot end that stands higher. */
  to: 'stays' | 'head' | 'foot';
  /** m/s². */
  acceleration: number;
  /** What the two sides pull with, in newtons: the hill on the body, the bag on the cord, and what friction can hold. */
  pulls: { hill: number; bag: number; friction: number };
}

/**
 * Who slides, and how quickly it starts.
 *
 * Shape: body and bag joined by one cord that does not stretch, over a wheel that turns freely.
 * Units: kilograms, degrees; acceleration in m/s², pulls in newtons.
 * Errors: RangeError where a mass or the friction is below 0, or the body weighs nothing.
 * Not: the leg, the bandage and how muscles pull; and never a load for a real child, which only staff choose.
 * Source: OpenStax, University Physics 1, 6.1 and 6.2: along a slope a weight pulls with m·g·sin θ, friction holds up
 * to μ·m·g·cos θ.
 *
 * @example slideOf({ body: kilograms(60), bag: kilograms(0), tilt: degrees(25), friction: 0 }) // to the head, 4.14 m/s²
 */
export function slideOf({ body, bag, tilt, friction }: Hill): Slide {
  if (!(body > 0) || !(bag >= 0) || !(friction >= 0))
    throw new RangeError(`hill: body above 0, bag and friction 0 or more, got ${body}, ${bag}, ${friction}`);
  const pulls = {
    hill: body * GRAVITY * Math.sin(radians(tilt)),
    bag: bag * GRAVITY,
    friction: friction * body * GRAVITY * Math.cos(radians(tilt)),
  };
  const net = pulls.hill - pulls.bag;
  if (Math.abs(net) <= pulls.friction) return { to: 'stays', acceleration: 0, pulls };
  return {
    to: net > 0 ? 'head' : 'foot',
    acceleration: (Math.abs(net) - pulls.friction) / (body + bag),
    pulls,
  };
}
