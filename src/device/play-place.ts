/** The beds and their days of play on this device. */
import { jsonPlace, type JsonPlace } from './json-place.ts';
import { playKey, playUnreadKey } from './places.ts';

/** The beds in this browser, the made-up child's in a place of her own. */
export const browserPlayPlace = (): JsonPlace => jsonPlace(playKey, playUnreadKey);
