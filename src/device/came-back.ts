/** A page that the browser had put by, and shows again as it was left, heard nothing of what was kept or erased meanwhile. */

/** Calls back when this page is shown again like that. Returns a way to stop. */
export function onCameBack(listener: () => void): () => void {
  const shown = ({ persisted }: PageTransitionEvent) => persisted && listener();
  addEventListener('pageshow', shown);
  return () => removeEventListener('pageshow', shown);
}
