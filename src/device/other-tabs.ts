/** What another tab of this browser did to the choices, or to which child this device is about. */
import { familyKey, MADE_UP_KEY } from './note-place.ts';

/**
 * `changed`: other choices were kept. `gone`: everything was erased, or the made-up child came or went; what this tab
 * still holds is about a child who is no longer here.
 */
export type OtherTab = 'changed' | 'gone';

/** Calls back when another tab has changed or taken away what this device keeps. Returns a way to stop. */
export function onOtherTab(listener: (what: OtherTab) => void): () => void {
  const heard = ({ key, newValue }: StorageEvent) => {
    if (key === null || key === MADE_UP_KEY || (key === familyKey() && newValue === null)) listener('gone');
    else if (key === familyKey()) listener('changed');
  };
  addEventListener('storage', heard);
  return () => removeEventListener('storage', heard);
}
