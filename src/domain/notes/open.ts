import type { Instant } from '../units.ts';
import type { Entry } from './entries.ts';
import { sightingsOf } from './sightings.ts';

/** Signs no nurse has looked at yet, newest first, each once. */
export function openSigns(entries: readonly Entry[], now?: Instant): string[] {
  const open = sightingsOf(entries, now).filter((sighting) => sighting.lookedAt === undefined);
  return [...new Set(open.map((sighting) => sighting.sign).reverse())];
}
