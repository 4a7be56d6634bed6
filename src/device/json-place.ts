/** One value on this device as plain JSON in localStorage; what it means is read elsewhere. */

export interface JsonPlace {
  /** Nothing where nothing was kept; the text itself where it is no JSON. */
  read(): unknown;
  /** False where the browser refused, or gives back something else than was written. */
  write(value: unknown): boolean;
  /** False where it is still there. */
  clear(): boolean;
  /** Calls back when another tab has written there. Returns a way to stop. */
  onOtherTab(listener: () => void): () => void;
}

/**
 * The place under a name.
 * Shape: the name is asked for each time, since the made-up child has places of her own.
 * Errors: none thrown; a browser that keeps nothing answers as if nothing was there, and refuses to write.
 */
export function jsonPlace(name: () => string): JsonPlace {
  return {
    read() {
      try {
        const text = localStorage.getItem(name());
        if (text === null) return undefined;
        try {
          return JSON.parse(text) as unknown;
        } catch {
          return text;
        }
      } catch {
        return undefined;
      }
    },
    write(value) {
      try {
        const text = JSON.stringify(value);
        localStorage.setItem(name(), text);
        return localStorage.getItem(name()) === text;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(name());
        return localStorage.getItem(name()) === null;
      } catch {
        return false;
      }
    },
    onOtherTab(listener) {
      const heard = ({ key, newValue }: StorageEvent) => {
        if (key === name() && newValue !== null) listener();
      };
      addEventListener('storage', heard);
      return () => removeEventListener('storage', heard);
    },
  };
}
