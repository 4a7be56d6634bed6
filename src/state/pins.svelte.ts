/** The explanations on this phone: those a nurse pinned, and whom the family reads them with. */
import { browserPreferences } from '#device/preferences.ts';
import { READERS, TOPIC_IDS, readerAt, type Reader, type TopicId } from '#content/topics.ts';
import { currentCard, loadCard } from './card.svelte.ts';
import { currentFamily, loadFamily } from './family.svelte.ts';

/** More would be a list again. Source: our proposal. */
export const MOST_PINS = 3;

let pins = $state.raw<readonly TopicId[]>([]);

/** What is pinned, in the order of the topics. */
export const pinnedTopics = (): readonly TopicId[] => pins;

/** Reads what is pinned; what this version does not know is left out. */
export function loadPins(): void {
  const kept = browserPreferences().read().pins;
  const known = Array.isArray(kept) ? TOPIC_IDS.filter((topic) => kept.includes(topic)) : [];
  pins = known.slice(0, MOST_PINS);
}

/** Pins these and no others: the first three. What the browser refuses to keep holds until the page is left. */
export function pinTopics(topics: readonly TopicId[]): void {
  pins = topics.slice(0, MOST_PINS);
  browserPreferences().write({ pins });
}

let chosen = $state.raw<Reader>();

/** Who was chosen, or who holds the phone; nobody before `loadReader`. */
export const readWith = (): Reader | undefined => chosen;

/** Reads who was chosen. A child's phone opens a child's text, whatever a grown-up chose there before. */
export function loadReader(): void {
  // a page opened by its address is there before the layout has read what this phone keeps
  loadFamily();
  loadCard();
  const { role, age } = currentFamily();
  const kept = browserPreferences().read().reader;
  const before = READERS.find((reader) => reader === kept && (role !== 'child' || reader !== 'grownUp'));
  // the nurse's card knows the age; what was chosen for the drawing is a near one
  chosen = before ?? (role === 'child' ? readerAt(currentCard()?.age?.years ?? age) : 'grownUp');
}

/** Reads with these from now on. What the browser refuses to keep holds until the page is left. */
export function chooseReader(reader: Reader): void {
  chosen = reader;
  browserPreferences().write({ reader });
}
