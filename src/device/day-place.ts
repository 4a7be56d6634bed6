/** The child's day on this device, as plain JSON; what it means is read elsewhere. */
import { dayKey } from './note-place.ts';

export interface DayPlace {
  /** Nothing where nothing was kept; the text itself where it is no JSON. */
  read(): unknown;
  /** False where the browser refused, or gives back something else than was written. */
  write(value: unknown): boolean;
  /** False where it is still there. */
  clear(): boolean;
  /** Calls back when another tab has written. Returns a way to stop. */
  onOtherTab(listener: () => void): () => void;
}

export function browserDayPlace(): DayPlace {
  return {
    read() {
      try {
        const text = localStorage.getItem(dayKey());
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
        localStorage.setItem(dayKey(), text);
        return localStorage.getItem(dayKey()) === text;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(dayKey());
        return localStorage.getItem(dayKey()) === null;
      } catch {
        return false;
      }
    },
    onOtherTab(listener) {
      const heard = ({ key, newValue }: StorageEvent) => {
        if (key === dayKey() && newValue !== null) listener();
      };
      addEventListener('storage', heard);
      return () => removeEventListener('storage', heard);
    },
  };
}
