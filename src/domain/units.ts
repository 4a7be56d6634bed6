/**
 * Units that cannot be mixed by accident. Each is a plain number at run time; the brand exists only for
 * the type checker, so everything stays JSON.
 */
declare const unit: unique symbol;
type Unit<Name extends string> = number & { readonly [unit]: Name };

/** A length of time in whole or part minutes. */
export type Minutes = Unit<'minutes'>;
/** A moment: whole minutes since 1970-01-01T00:00Z, universal time. */
export type Instant = Unit<'instant'>;
/** Mass in kilograms. */
export type Kilograms = Unit<'kilograms'>;
/** An angle in degrees; positive turns are described where they are used. */
export type Degrees = Unit<'degrees'>;

/** A day of the wall, where no clock is changed in it. */
export const DAY_MINUTES = 1440;

/** Says that a number is a length of time. Units: minutes. */
export const minutes = (value: number) => value as Minutes;
/** Says that a number is a moment. Units: whole universal minutes since 1970. */
export const instant = (value: number) => value as Instant;
/** Says that a number is a mass. Units: kilograms. */
export const kilograms = (value: number) => value as Kilograms;
/** Says that a number is an angle. Units: degrees. */
export const degrees = (value: number) => value as Degrees;
