import { rankOf } from '../signs/urgency.ts';
import type { SignFacts } from '../signs/types.ts';
import type { Entry } from './entries.ts';
import { sightingsOf } from './sightings.ts';

/** Signs no nurse has looked at yet, newest first, each once; the most urgent first where `signs` is given. */
export function openSigns(entries: readonly Entry[], signs?: Readonly<Record<string, SignFacts>>): string[] {
  const open = sightingsOf(entries).filter((sighting) => sighting.lookedAt === undefined);
  const ids = [...new Set(open.map((sighting) => sighting.sign).reverse())];
  const rank = (id: string) => (signs && Object.hasOwn(signs, id) ? rankOf(signs[id]!.urgency) : 2);
  return signs ? ids.sort((a, b) => rank(b) - rank(a)) : ids;
}
