/** Notes as an earlier visit, or another phone, might have left them on this one. */
import type { Page } from '@playwright/test';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { instant, minutes } from '#domain/units.ts';

/** A phone's n-th note, so many minutes before a moment; London in winter. */
export function noted(at: Date, minutesBefore: number, what: NewEntry, id: string): Entry {
  return {
    id,
    t: instant(Math.floor(at.getTime() / 60_000) - minutesBefore),
    off: minutes(0),
    ...what,
  } as Entry;
}

/**
 * Puts notes into this browser, a day in a record as the store keeps them, before a page of the site is opened.
 * Shape: `device` is the name this phone has in the notes and how many it has written; without it, it wrote none.
 */
export async function leaveNotes(
  page: Page,
  notes: readonly Entry[],
  device?: { id: string; count: number },
): Promise<void> {
  const days: Record<string, Entry[]> = {};
  for (const note of notes)
    (days[`day-${new Date(note.t * 60_000).toISOString().slice(0, 10)}`] ??= []).push(note);
  await leaveRows(page, { ...days, ...(device && { device }) });
}

/** Puts values into the store as an earlier visit, or a fault, might have left them. */
export async function leaveRows(page: Page, values: Record<string, unknown>): Promise<void> {
  // a page of the same origin that runs nothing
  await page.goto('/icon.svg');
  await page.evaluate(
    (rows) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('bare-toes');
        opening.onupgradeneeded = () => opening.result.createObjectStore('notes');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const write = opening.result.transaction('notes', 'readwrite');
          for (const [key, value] of Object.entries(rows)) write.objectStore('notes').put(value, key);
          write.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    values,
  );
}

/** Takes every note off this browser, as on a phone that was never used; leaves the site's pages. */
export async function forgetNotes(page: Page, origin = ''): Promise<void> {
  await page.goto(`${origin}/icon.svg`);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        // emptied, not deleted: the browser may hold on to the opening of a page that was left at once, and a deletion
        // would wait for it without end
        const opening = indexedDB.open('bare-toes');
        // nothing was there: looking leaves nothing behind
        opening.onupgradeneeded = () => opening.transaction!.abort();
        opening.onerror = () => resolve();
        opening.onsuccess = () => {
          const tables = [...opening.result.objectStoreNames];
          const clearing = opening.result.transaction(tables, 'readwrite');
          for (const table of tables) clearing.objectStore(table).clear();
          clearing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          clearing.onerror = () => reject(clearing.error);
        };
      }),
  );
}
