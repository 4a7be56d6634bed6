/** The time as the page shows it; ticks only while a page asks. */
import { isNight } from '#domain/clock/night.ts';
import { instant, minutes, type Instant, type Minutes } from '#domain/units.ts';
import { browserClock, type Clock } from '#device/clock.ts';

let clock: Clock | undefined;
let now = $state.raw<Instant>(instant(0));

/** The moment the page shows; 1970 until a page reads the clock. */
export const currentMoment = (): Instant => now;
/** Local time minus universal time at a moment. */
export const offsetAt = (at: Instant): Minutes => clock?.offset(at) ?? minutes(0);
/** Whether it is the ward's night. */
export const isNightNow = (): boolean => clock !== undefined && isNight(now, offsetAt(now));

let darkHere = $state(false);
/** A page that is for a dark room although it is not ten yet: a child's night begins at its own lights-out. */
export const wantsDark = (): boolean => darkHere;
/** Says whether the page that is open is for a dark room. */
export const wantDark = (yes: boolean): void => {
  darkHere = yes;
};

/** Starts reading the clock, for as long as the document stands. */
export function watchClock(): void {
  clock ??= browserClock();
  const running = clock;
  now = running.now();
  running.every(10, () => {
    now = running.now();
  });
}

/** The moment right now, read anew. */
export function readMoment(): Instant {
  clock ??= browserClock();
  now = clock.now();
  return now;
}
