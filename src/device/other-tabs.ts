/** What another tab of this browser did to the choices, or to which child this device is about. */
import { onCameBack } from './came-back.ts';
import { familyKey, MADE_UP_KEY } from './note-place.ts';

/**
 * `changed`: other choices were kept. `gone`: everything was erased, or the made-up child came or went; what this tab
 * still holds is about a child who is no longer here.
 */
export type OtherTab = 'changed' | 'gone';

/** Whose choices lie on this device, by their place; nobody's where there are none. */
function whose(): string | undefined {
  try {
    return localStorage.getItem(familyKey()) === null ? undefined : familyKey();
  } catch {
    return undefined;
  }
}

/**
 * Calls back when another tab, or another page while this one was put by, has changed or taken away what this device
 * keeps, as long as the document stands.
 */
export function onOtherTab(listener: (what: OtherTab) => void): void {
  let isGone = false;
  /** Gone is said once, though several places go: a page that leaves twice breaks off its own leaving. */
  const say = (what: OtherTab) => {
    if (!isGone) listener(what);
    isGone ||= what === 'gone';
  };
  const heard = ({ key, newValue }: StorageEvent) => {
    if (key === null || key === MADE_UP_KEY || (key === familyKey() && newValue === null)) say('gone');
    else if (key === familyKey()) say('changed');
  };
  let left = whose();
  const leaves = () => {
    left = whose();
  };
  onCameBack(() => say(left && left !== whose() ? 'gone' : 'changed'));
  addEventListener('storage', heard);
  addEventListener('pagehide', leaves);
}
