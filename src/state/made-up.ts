/** The made-up child to try the pages with: written into places of her own, gone with one tap. */
import { encodeBedCard } from '#domain/bed-card/code.ts';
import { browserNoteStore } from '#device/note-store.ts';
import { browserCardPlace } from '#device/card-place.ts';
import { beginMadeUp, endMadeUpPlaces } from '#device/made-up-place.ts';
import { isMadeUp } from '#device/note-place.ts';
import { browserPreferences } from '#device/preferences.ts';
import { familyOf } from './card.svelte.ts';
import { offsetAt, readMoment } from './now.svelte.ts';

/** Whether this device shows the made-up child. */
export const isTrying = (): boolean => isMadeUp();

/** False where the browser refused; nothing is then left of her. The page must be loaded anew afterwards. */
export async function startMadeUp(locale: string): Promise<boolean> {
  const { madeUpCard, madeUpNotes } = await import('#content/made-up.ts');
  const kept = browserPreferences().read();
  if (!beginMadeUp()) return false;
  const now = readMoment();
  const card = madeUpCard(now, offsetAt(now));
  const { light } = kept;
  const choices = { ...familyOf(card), locale, role: 'grown-up', ...(light ? { light } : {}) };
  const wrote =
    browserCardPlace().write({ code: encodeBedCard(card) }) &&
    browserPreferences().write(choices) &&
    (await browserNoteStore().addAll(madeUpNotes(now, offsetAt(now)))).ok;
  if (!wrote) await endMadeUpPlaces();
  return wrote;
}

/** Takes everything of hers off this device. The page must be loaded anew afterwards. */
export const endMadeUp = (): Promise<void> => endMadeUpPlaces();
