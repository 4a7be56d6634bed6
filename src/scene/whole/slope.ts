/** How far a raised foot end tilts a bed: what balances the pull, and what is drawn. */
import { degrees, type Degrees } from '#domain/units.ts';

/**
 * The tilt at which a body's own weight along the bed equals a hanging weight, without friction.
 * Shape: hanging weight as a share of body weight, 0–1. Units: degrees.
 * Not: no advice; staff set the bed and the hanging weight, and a mattress holds the body, too.
 * Source: OpenStax, University Physics 1, inclined plane: along the slope a weight pulls with m·g·sin θ.
 *
 * @example slopeForLoad(0.1) // 5.739
 */
export const slopeForLoad = (share: number): Degrees => degrees((Math.asin(share) * 180) / Math.PI);

/** Common practice: the hanging weight is about a tenth of the body weight (content/trade-facts.ts). */
const USUAL_SHARE = 0.1;
/** The bed is drawn steeper than it stands, so that the tilt is seen in a small picture. */
export const DRAWN_EXAGGERATION = 1.3;
/** The drawn tilt of a foot end raised as staff set it, in whole half degrees. */
export const DRAWN_TILT = degrees(Math.round(slopeForLoad(USUAL_SHARE) * DRAWN_EXAGGERATION * 2) / 2);
