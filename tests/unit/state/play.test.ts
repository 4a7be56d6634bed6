// The beds of one phone in two tabs, where its browser may refuse to keep a change.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const KEY = 'bare-toes:play';
const BED: PlayBed = { ...TYPICAL, day: '2026-11-25', bored: false };
const textOf = (bed: PlayBed) => JSON.stringify({ open: bed.shape, beds: [bed] });

let hear: (event: Partial<StorageEvent>) => void;
let kept: string;
let refuses: boolean;
/** Another tab keeps this, and this one hears of it. */
function otherTab(bed: PlayBed) {
  kept = textOf(bed);
  hear({ key: KEY, newValue: kept });
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 10, 25, 14, 0) });
  [kept, refuses] = [textOf(BED), false];
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => (name === KEY ? kept : null),
    setItem: (_: string, text: string) => {
      if (refuses) throw new Error('full');
      kept = text;
    },
  });
  vi.stubGlobal('addEventListener', (type: string, listener: typeof hear) => {
    // the beds listen after the child's day
    if (type === 'storage') hear = listener;
  });
  vi.resetModules();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('what another tab keeps is here at once', async () => {
  const { openPlay, tickedBed } = await import('#state/play.svelte.ts');
  openPlay();
  otherTab({ ...BED, freeHands: 0 });
  expect(tickedBed()).toEqual({ ...BED, freeHands: 0 });
});

test('a change that the browser refused to keep is nowhere but here, and stays', async () => {
  const { openPlay, tickedBed, changeBed, playNotKept } = await import('#state/play.svelte.ts');
  openPlay();
  refuses = true;
  changeBed({ bored: true });
  expect(playNotKept()).toBe(true);
  otherTab({ ...BED, freeHands: 0 });
  expect(tickedBed()).toEqual({ ...BED, bored: true });
});
