/** What stands behind the mark of an address: a nurse's card, a bed with its plan, the place on a page. */

/**
 * The letters behind the address, which then holds them no longer, and neither does the way back: nobody who uses the
 * phone later finds a child there. The framework's own way would write the old address into the entry it leaves.
 *
 * Shape: `leaves` stands there instead, so that a page opened anew knows that there were letters.
 * Errors: none; a link changed on its way may hold signs that stand for nothing, and is given as it came.
 * Not: the browser's own list of what was ever opened, which no page reaches.
 */
export function takeLetters(leaves = ''): string {
  const letters = location.hash.slice(1);
  if (letters === '' || letters === leaves) return letters;
  try {
    history.replaceState(
      history.state,
      '',
      `${location.pathname}${location.search}${leaves && `#${leaves}`}`,
    );
  } catch {
    // a browser that was asked a hundred times in a minute refuses; the letters are read all the same
  }
  try {
    return decodeURIComponent(letters);
  } catch {
    return letters;
  }
}

/** Behind the address of a sign's page: it was open in another language just now, and nobody saw the sign again. */
export const SAME_SIGHT = 'same';

/**
 * Changes where the foot's languages lead from this page, in the moment one of them is tapped; gives what ends that.
 * Not: before script has come. They then lead to this page as it begins.
 */
export function otherLanguages(change: (link: HTMLAnchorElement) => void): () => void {
  const onTap = ({ target }: Event) => {
    const link = (target as Element).closest<HTMLAnchorElement>('a[hreflang]');
    if (link) change(link);
  };
  addEventListener('click', onTap, true);
  return () => removeEventListener('click', onTap, true);
}
