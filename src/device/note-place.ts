/** Where things stand on this device, and which child they are about: the real one, or the made-up one to try. */
export const MADE_UP_KEY = 'bare-toes:made-up';

/** The made-up child has places of its own throughout, so that nothing of hers can mix with a real child's notes. */
export function isMadeUp(): boolean {
  try {
    return localStorage.getItem(MADE_UP_KEY) === 'yes';
  } catch {
    return false;
  }
}
/** Of each name the real child's, or the made-up one's while she is being tried. */
export const named = (name: string) => (): string => `bare-toes${name}${isMadeUp() ? '-made-up' : ''}`;

/** Notes in IndexedDB: one record for each UTC day. */
export const databaseName = named('');
export const TABLE = 'notes';
export const DAY_PREFIX = 'day-';
/** The family's choices in localStorage, as plain JSON. */
export const familyKey = named(':family');
/** What this version could not read of them, as texts that were put aside before anything was written there. */
export const familyUnreadKey = named(':family:unread');
/** Before the name of a day: the copy of its notes in localStorage. */
export const copyPrefix = (): string => `${named(':copy')()}:`;
