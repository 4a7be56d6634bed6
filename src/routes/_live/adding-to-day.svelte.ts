/** What is to be added to the day of the open bed, and what stood in its way. */
import { clashOf, type Clash } from '#domain/play-bed/clash.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { tickedBed } from '#state/play.svelte.ts';

export type DayPart = 'events' | 'moments';

export interface AddingToDay {
  /** Whether it can stand there; if not, its form says why, and no other form does any more. */
  fits(part: DayPart, wanted: { from: number; minutes: number }): boolean;
  /** What its form has to say; nothing once the day is another, or its time was changed. */
  clash(part: DayPart): Clash | undefined;
  /** Another time was chosen in a form. */
  forget(): void;
}

/** One for a page, however many forms on it add to the same day. */
export function addingToDay(): AddingToDay {
  let told = $state.raw<{ part: DayPart; clash: Clash; day: PlayBed['sketch'] } | undefined>(undefined);
  return {
    fits(part, wanted) {
      const day = tickedBed()?.sketch;
      const clash = day && clashOf(day, wanted);
      told = day && clash && { part, clash, day };
      return !clash;
    },
    clash: (part) => (told?.part === part && told.day === tickedBed()?.sketch ? told.clash : undefined),
    forget() {
      told = undefined;
    },
  };
}
