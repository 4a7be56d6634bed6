/** A handful of choices that must be known before the first paint: kept in localStorage, or not at all. */
import { familyKey, familyUnreadKey } from './note-place.ts';
import { putAside } from './put-aside.ts';

export interface Preferences {
  read(): Record<string, unknown>;
  /** Whether what lies there are choices at all. */
  readable(): boolean;
  /** Writes these beside what else is kept. False where the browser refused. */
  write(values: Record<string, unknown>): boolean;
  /** False where they are still there. */
  clear(): boolean;
}

/** The choices in this browser, the made-up child's in a place of their own. */
export function browserPreferences(): Preferences {
  /** Nothing where it is no thing with fields. */
  function choices(): Record<string, unknown> | undefined {
    try {
      const value: unknown = JSON.parse(localStorage.getItem(familyKey()) ?? '{}');
      const isChoices = typeof value === 'object' && value !== null && !Array.isArray(value);
      return isChoices ? (value as Record<string, unknown>) : undefined;
    } catch {
      return undefined;
    }
  }
  return {
    read: () => choices() ?? {},
    readable: () => choices() !== undefined,
    write(values) {
      try {
        if (!choices() && !putAside(familyKey(), familyUnreadKey())) return false;
        localStorage.setItem(familyKey(), JSON.stringify({ ...this.read(), ...values }));
        return true;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        const names = [familyKey(), familyUnreadKey()];
        for (const one of names) localStorage.removeItem(one);
        return names.every((one) => localStorage.getItem(one) === null);
      } catch {
        return false;
      }
    },
  };
}
