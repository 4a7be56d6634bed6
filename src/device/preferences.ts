/** A handful of choices that must be known before the first paint: kept in localStorage, or not at all. */
export interface Preferences {
  read(): Record<string, unknown>;
  /** False where the browser refused. */
  write(values: Record<string, unknown>): boolean;
}

const KEY = 'bare-toes:family';

export function browserPreferences(): Preferences {
  return {
    read() {
      try {
        const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
        return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
      } catch {
        return {};
      }
    },
    write(values) {
      try {
        localStorage.setItem(KEY, JSON.stringify(values));
        return true;
      } catch {
        return false;
      }
    },
  };
}
