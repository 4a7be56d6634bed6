/** "Nothing by mouth", as it was said on this device or stands on the nurse's card: the child's day and play both heed it. */
import { nothingByMouth, wordHolds, type MouthWord } from '#domain/day/by-mouth.ts';
import { readKeptDay, usualWays } from '#domain/day/kept-day.ts';
import { browserDayPlace } from '#device/day-place.ts';
import { currentCard, loadCard } from './card.svelte.ts';
import { currentMoment } from './now.svelte.ts';

let said = $state.raw<MouthWord | undefined>(undefined);
let stopHearing: (() => void) | undefined;

/** Takes over what the kept day says of it. */
export const hearWord = (word: MouthWord | undefined): void => {
  said = word;
};
const read = () => hearWord(readKeptDay(browserDayPlace().read(), usualWays(true)).kept.nothingByMouth);

/** Reads it once, and what another tab makes of it; a word that the browser refused to keep holds while the page stands. */
export function loadWord(): void {
  loadCard();
  if (stopHearing) return;
  read();
  stopHearing = browserDayPlace().onOtherTab(read);
}

/** Forgets it with the child's day. */
export function forgetWord(): void {
  hearWord(undefined);
  stopHearing?.();
  stopHearing = undefined;
}

/** The word, as it was said here and still holds, whatever day it is. */
export const wordNow = (): MouthWord | undefined => (wordHolds(said, currentCard()) ? said : undefined);
/** Whether nothing may be eaten now, whatever is ticked at the bed. */
export const nothingByMouthNow = (): boolean => nothingByMouth(said, currentCard(), currentMoment());
