/** Seconds that go by while a page is open; no time of day, and not stopped by a clock that is set anew. */

/**
 * Starts to count.
 * Units: whole and part seconds since it was started.
 */
export function startStopwatch(): () => number {
  const begin = performance.now();
  return () => (performance.now() - begin) / 1000;
}

/** Calls back once after so many seconds; returns a way to stop. */
export function afterSeconds(seconds: number, then: () => void): () => void {
  const timer = setTimeout(then, seconds * 1000);
  return () => clearTimeout(timer);
}
