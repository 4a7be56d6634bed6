/** A handful of choices that must be known before the first paint: kept in localStorage, or not at all. */
import { familyKey } from './note-place.ts';

export interface Preferences {
  read(): Record<string, unknown>;
  /** Writes these beside what else is kept. False where the browser refused. */
  write(values: Record<string, unknown>): boolean;
  /** False where they are still there. */
  clear(): boolean;
}

/** The choices in this browser, the made-up child's in a place of their own. */
export function browserPreferences(): Preferences {
  return {
    read() {
      try {
        const value: unknown = JSON.parse(localStorage.getItem(familyKey()) ?? '{}');
        return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
      } catch {
        return {};
      }
    },
    write(values) {
      try {
        localStorage.setItem(familyKey(), JSON.stringify({ ...this.read(), ...values }));
        return true;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(familyKey());
        return localStorage.getItem(familyKey()) === null;
      } catch {
        return false;
      }
    },
  };
}
