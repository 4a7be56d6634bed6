/** What another tab of this browser did to the choices, or to which child this device is about. */
import { onCameBack } from './came-back.ts';
import { familyKey, isMadeUp, MADE_UP_KEY } from './note-place.ts';

/**
 * `changed`: other choices were kept. `gone`: everything was erased, or the made-up child came or went; what this tab
 * still holds is about a child who is no longer here.
 */
export type OtherTab = 'changed' | 'gone';

/** Whose choices lie on this device; nobody's where there are none. */
function whose(): 'real' | 'made-up' | undefined {
  try {
    if (localStorage.getItem(familyKey()) === null) return undefined;
  } catch {
    return undefined;
  }
  return isMadeUp() ? 'made-up' : 'real';
}

/**
 * Calls back when another tab, or another page while this one was put by, has changed or taken away what this device
 * keeps. Returns a way to stop.
 */
export function onOtherTab(listener: (what: OtherTab) => void): () => void {
  const heard = ({ key, newValue }: StorageEvent) => {
    if (key === null || key === MADE_UP_KEY || (key === familyKey() && newValue === null)) listener('gone');
    else if (key === familyKey()) listener('changed');
  };
  let left = whose();
  const leaves = () => {
    left = whose();
  };
  const stopCameBack = onCameBack(() => listener(left && left !== whose() ? 'gone' : 'changed'));
  addEventListener('storage', heard);
  addEventListener('pagehide', leaves);
  return () => {
    stopCameBack();
    removeEventListener('storage', heard);
    removeEventListener('pagehide', leaves);
  };
}
