/** The child's day on this device. */
import { jsonPlace, type JsonPlace } from './json-place.ts';
import { dayKey } from './note-place.ts';

export interface DayPlace extends JsonPlace {
  /** Calls back when another tab has written. Returns a way to stop. */
  onOtherTab(listener: () => void): () => void;
}

/** The child's day in this browser, the made-up child's in a place of her own. */
export const browserDayPlace = (): DayPlace => ({
  ...jsonPlace(dayKey),
  onOtherTab(listener) {
    const heard = ({ key, newValue }: StorageEvent) => {
      if (key === dayKey() && newValue !== null) listener();
    };
    addEventListener('storage', heard);
    return () => removeEventListener('storage', heard);
  },
});
