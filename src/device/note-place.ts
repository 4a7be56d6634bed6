/** Where notes stand in IndexedDB: one record for each UTC day. */
export const DATABASE = 'bare-toes';
export const TABLE = 'notes';
export const DAY_PREFIX = 'day-';
