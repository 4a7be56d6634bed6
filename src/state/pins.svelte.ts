/** The explanations a nurse pinned for this family, on this phone. */
import { browserPreferences } from '#device/preferences.ts';
import { TOPIC_IDS, type TopicId } from '#content/topics.ts';

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
