/** The beds and their days of play on this device, as plain JSON; what it means is read elsewhere. */
import { playKey } from './note-place.ts';

export interface PlayPlace {
  read(): unknown;
  /** False where the browser refused, or gives back something else than was written. */
  write(value: unknown): boolean;
  /** False where it is still there. */
  clear(): boolean;
}

export function browserPlayPlace(): PlayPlace {
  return {
    read() {
      try {
        return JSON.parse(localStorage.getItem(playKey()) ?? 'null') as unknown;
      } catch {
        return undefined;
      }
    },
    write(value) {
      try {
        const text = JSON.stringify(value);
        localStorage.setItem(playKey(), text);
        return localStorage.getItem(playKey()) === text;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(playKey());
        return localStorage.getItem(playKey()) === null;
      } catch {
        return false;
      }
    },
  };
}
