/** The places that no first page asks for. */
import { named } from './note-place.ts';

/** The nurse's card in localStorage, as plain JSON. */
export const cardKey = named(':card');
/** The beds and their days of play, likewise. */
export const playKey = named(':play');
/** The child's day, likewise. */
export const dayKey = named(':day');
/** What this version could not read of the three, as texts that were put aside before anything was written there. */
export const cardUnreadKey = named(':card:unread');
export const playUnreadKey = named(':play:unread');
export const dayUnreadKey = named(':day:unread');
/** Where tabs of this browser tell each other that notes were written. */
export const channelName = named(':notes');
