/** Everything off this device, and a look at whether it is gone. */
import { placesLeft, type Place } from '#device/places-left.ts';
import { forgetCard } from './card.svelte.ts';
import { forgetDay } from './day.svelte.ts';
import { forgetFamily } from './family.svelte.ts';
import { eraseNotes } from './notes.svelte.ts';
import { forgetPlay } from './play.svelte.ts';

/** What is still there after erasing; nothing where the device was found empty. */
export type Left = Place;

/**
 * Erases the notes, the card, the days of play, the child's day and the choices, then looks into the device itself.
 * Shape: the names of what could not be erased, empty where all is gone.
 */
export async function eraseEverything(): Promise<Left[]> {
  const notes = await eraseNotes();
  const card = forgetCard();
  const play = forgetPlay();
  const day = forgetDay();
  const choices = forgetFamily();
  const left = await placesLeft();
  const refused: Left[] = [
    ...(notes.ok ? [] : ['notes' as const]),
    ...(card ? [] : ['card' as const]),
    ...(play ? [] : ['play' as const]),
    ...(day ? [] : ['day' as const]),
    ...(choices ? [] : ['choices' as const]),
  ];
  return [...left, ...refused.filter((what) => !left.includes(what))];
}
