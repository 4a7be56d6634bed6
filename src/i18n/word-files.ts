/** The areas of words that no first page needs, apart: the list alone would be a part of every page's first load. */
export const FILES = import.meta.glob<{ default: Record<string, unknown> }>([
  '/locales/*/*.json',
  '!/locales/*/{review,common,look,steps,signs,say}.json',
]);
export { review } from 'virtual:review-of-the-rest';
