/** The child's day on this device. */
import { jsonPlace, type JsonPlace } from './json-place.ts';
import { dayKey, dayUnreadKey } from './places.ts';

/** The child's day in this browser, the made-up child's in a place of her own. */
export const browserDayPlace = (): JsonPlace => jsonPlace(dayKey, dayUnreadKey);
