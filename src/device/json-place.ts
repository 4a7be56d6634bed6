/** One value on this device as plain JSON in localStorage; what it means is read elsewhere. */
import { onCameBack } from './came-back.ts';
import { putAside } from './put-aside.ts';

export interface JsonPlace {
  /** Nothing where nothing was kept; the text itself where it is no JSON. */
  read(): unknown;
  /** False where the browser refused, or gives back something else than was written. */
  write(value: unknown): boolean;
  /** Copies what lies there beside it, where it cannot be read; false where the browser refused. */
  putAside(): boolean;
  /** What was put aside goes, too. False where anything of it is still there. */
  clear(): boolean;
  /** Calls back when another tab has written there, or may have while this page was put by. Returns a way to stop. */
  onOtherTab(listener: () => void): () => void;
}

/**
 * The place under a name, and the one where what cannot be read is put aside.
 * Shape: both names are asked for each time, since the made-up child has places of her own; without a second one
 * nothing is put aside.
 * Errors: none thrown; a browser that keeps nothing answers as if nothing was there, and refuses to write.
 */
export function jsonPlace(name: () => string, beside?: () => string): JsonPlace {
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
    putAside: () => beside !== undefined && putAside(name(), beside()),
    clear() {
      try {
        const names = beside ? [name(), beside()] : [name()];
        for (const one of names) localStorage.removeItem(one);
        return names.every((one) => localStorage.getItem(one) === null);
      } catch {
        return false;
      }
    },
    onOtherTab(listener) {
      const heard = ({ key, newValue }: StorageEvent) => {
        if (key === name() && newValue !== null) listener();
      };
      const stopCameBack = onCameBack(listener);
      addEventListener('storage', heard);
      return () => {
        stopCameBack();
        removeEventListener('storage', heard);
      };
    },
  };
}
