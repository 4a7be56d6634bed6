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
const suffix = () => (isMadeUp() ? '-made-up' : '');

/** Notes in IndexedDB: one record for each UTC day. */
export const databaseName = (): string => `bare-toes${suffix()}`;
export const TABLE = 'notes';
export const DAY_PREFIX = 'day-';
export const familyKey = (): string => `bare-toes:family${suffix()}`;
export const cardKey = (): string => `bare-toes:card${suffix()}`;
export const playKey = (): string => `bare-toes:play${suffix()}`;
export const dayKey = (): string => `bare-toes:day${suffix()}`;
export const channelName = (): string => `bare-toes:notes${suffix()}`;
