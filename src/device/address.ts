/** What a link brought behind the mark of its address: a nurse's card, a bed with its plan. */

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
