// The beds of one phone in two tabs, where its browser may refuse to keep a change.
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { BedShape, PlayBed } from '#domain/play-bed/bed.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const KEY = 'bare-toes:play';
const BED: PlayBed = { ...TYPICAL, shape: 'circle', day: '2026-11-25', bored: false };
const STAR: PlayBed = { ...BED, shape: 'star' };
const textOf = (...beds: PlayBed[]) => JSON.stringify({ open: beds[0]!.shape, beds });
const bedsOf = (text: string) => (JSON.parse(text) as { beds: PlayBed[] }).beds;
/** A tab that was just opened. */
async function tab() {
  vi.resetModules();
  const play = await import('#state/play.svelte.ts');
  play.openPlay();
  return play;
}

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

test('whatever two tabs change at two beds, neither takes the other’s change away, though it has not heard of it', async () => {
  const shapes = ['circle', 'star'] as const;
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.record({ at: fc.constantFrom(...shapes), freeHands: fc.constantFrom(0, 1, 2) }), {
        minLength: 2,
        maxLength: 8,
      }),
      async (taps) => {
        kept = textOf(BED, STAR);
        const tabs: Record<(typeof shapes)[number], Awaited<ReturnType<typeof tab>>> = {
          circle: await tab(),
          star: await tab(),
        };
        for (const shape of shapes) tabs[shape].chooseBed(shape);
        const hands: Partial<Record<BedShape, number>> = { circle: BED.freeHands, star: STAR.freeHands };
        for (const { at, freeHands } of taps) {
          tabs[at].changeBed({ freeHands: freeHands as 0 | 1 | 2 });
          hands[at] = freeHands;
        }
        expect(bedsOf(kept)).toEqual([
          { ...BED, freeHands: hands.circle },
          { ...STAR, freeHands: hands.star },
        ]);
      },
    ),
    { numRuns: 30 },
  );
});

test('a bed that another tab took away is not brought back, and what was meant for it falls on no other bed', async () => {
  kept = textOf(BED, STAR);
  const { changeBed, tickedBed } = await tab();
  kept = textOf(STAR);
  changeBed({ bored: true });
  expect(bedsOf(kept)).toEqual([STAR]);
  expect(tickedBed()).toEqual(STAR);
});

test('a bed that another tab added stays when one is chosen, added or taken away here', async () => {
  kept = textOf(BED);
  const { addBed, removeBed, chooseBed } = await tab();
  kept = textOf(BED, STAR);
  chooseBed('circle');
  expect(bedsOf(kept)).toEqual([BED, STAR]);
  kept = textOf(BED, { ...STAR, shape: 'square' });
  addBed();
  expect(bedsOf(kept).map(({ shape }) => shape)).toEqual(['circle', 'square', 'triangle']);
  kept = textOf(BED, STAR);
  removeBed('circle');
  expect(bedsOf(kept)).toEqual([STAR]);
});

test('while one bed cannot be kept, the other is as the other tab left it, and goes on so once there is room', async () => {
  kept = textOf(BED, STAR);
  const { changeBed, playBeds, playNotKept } = await tab();
  refuses = true;
  changeBed({ bored: true });
  expect(playNotKept()).toBe(true);
  const others = { ...STAR, freeHands: 0 as const };
  kept = textOf(BED, others);
  hear({ key: KEY, newValue: kept });
  expect(playBeds()).toHaveLength(2);
  expect(playBeds()).toEqual(expect.arrayContaining([{ ...BED, bored: true }, others]));
  refuses = false;
  changeBed({ eating: BED.eating });
  expect(bedsOf(kept)).toEqual(expect.arrayContaining([{ ...BED, bored: true }, others]));
  expect(playNotKept()).toBe(false);
});
