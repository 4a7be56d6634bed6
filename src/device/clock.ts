/** The device's clock: the one place that reads the time. */
import { instant, minutes, type Instant, type Minutes } from '#domain/units.ts';

export interface Clock {
  now(): Instant;
  /** Local time minus universal time at a moment. */
  offset(at: Instant): Minutes;
  /** Calls back about every `seconds`, and when the page is looked at again, as long as the document stands. */
  every(seconds: number, tick: () => void): void;
}

/** This device's clock. Not: whether it is right; notes are ordered and flagged where it is not. */
export function browserClock(): Clock {
  return {
    now: () => instant(Math.floor(Date.now() / 60_000)),
    // taken from 0: a bare minus would write −0 into notes made on universal time
    offset: (at) => minutes(0 - new Date(at * 60_000).getTimezoneOffset()),
    every(seconds, tick) {
      setInterval(tick, seconds * 1000);
      // a sleeping phone stops timers: look at the clock as soon as someone looks at the page
      document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && tick());
    },
  };
}
