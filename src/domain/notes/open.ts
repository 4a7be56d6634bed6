import type { Entry } from './entries.ts';
import { sightingsOf } from './sightings.ts';

/** Signs no nurse has looked at yet, newest first, each once. */
export function openSigns(entries: readonly Entry[]): string[] {
  const open = sightingsOf(entries).filter((sighting) => sighting.lookedAt === undefined);
  return [...new Set(open.map((sighting) => sighting.sign).reverse())];
}
