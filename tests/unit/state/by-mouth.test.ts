// "Nothing by mouth" where the child's day says it: play on the same phone heeds it, whatever was ticked at the bed.
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { encodeBedCard } from '#domain/bed-card/code.ts';
import { startCard } from '#domain/bed-card/card.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { instant, minutes } from '#domain/units.ts';
import { DAY_EVENTS } from '#content/day-events.ts';
import { WARD } from '#content/ward.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const NOW = Date.UTC(2026, 10, 25, 14, 0);
const TODAY = '2026-11-25';
const [first, second] = TYPICAL.plan!;
const BED: PlayBed = {
  ...TYPICAL,
  day: TODAY,
  plan: [{ ...first!, idea: 'soup-breath' }, second!],
  pins: [],
  done: [],
};

const listeners = new Set<(event: Partial<StorageEvent>) => void>();
let device: Map<string, string>;
/** Another tab writes there, and this one hears of it. */
function otherTab(name: string, value: unknown) {
  device.set(name, JSON.stringify(value));
  for (const hear of listeners) hear({ key: name, newValue: device.get(name)! });
}

/** A page of play that was just opened on a phone with this on it. */
async function phone(kept: Record<string, unknown>) {
  device = new Map(
    Object.entries({ play: { open: BED.shape, beds: [BED] }, ...kept }).map(([name, value]) => [
      `bare-toes:${name}`,
      JSON.stringify(value),
    ]),
  );
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => device.get(name) ?? null,
    setItem: (name: string, text: string) => device.set(name, text),
    removeItem: (name: string) => device.delete(name),
  });
  vi.resetModules();
  const play = await import('#state/play.svelte.ts');
  const day = await import('#state/day.svelte.ts');
  const { nothingByMouthNow } = await import('#state/by-mouth.svelte.ts');
  play.openPlay();
  const offered = () => ({
    held: nothingByMouthNow(),
    eating: play.problemNow()!.eating,
    planned: play.openBed()!.plan!.map(({ idea }) => idea),
  });
  return { play, day, offered };
}
const FREE = { held: false, eating: true, planned: ['soup-breath', second!.idea] };
const HELD = { held: true, eating: false, planned: [second!.idea] };
const word = { nothingByMouth: { since: NOW / 60_000 - 30 }, ways: {} };

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: NOW });
  listeners.clear();
  vi.stubGlobal('addEventListener', (_: string, hear: () => void) => listeners.add(hear));
  vi.stubGlobal('removeEventListener', (_: string, hear: () => void) => listeners.delete(hear));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('a child of whom the day says nothing by mouth', () => {
  test('is offered nothing with food, and the bed stays as it was ticked and planned', async () => {
    const { play, offered } = await phone({ day: word });
    expect(offered()).toEqual(HELD);
    expect(play.tickedBed()).toEqual(BED);
    // what else is ticked leaves that alone
    play.changeBed({ bored: !BED.bored });
    expect(play.tickedBed()).toEqual({ ...BED, bored: !BED.bored });
    expect(JSON.parse(device.get('bare-toes:play')!)).toMatchObject({ beds: [{ eating: true }] });
  });

  test('nor where what was kept of the day breaks off behind it', async () => {
    const { offered } = await phone({ day: '{"nothingByMouth":{"si' });
    expect(offered()).toEqual(HELD);
  });

  test('said on this phone or in another tab, it holds at once, and is over when a nurse ends it', async () => {
    const { day, offered } = await phone({});
    expect(offered()).toEqual(FREE);
    day.openDay();
    day.holdEating(true);
    expect(offered()).toEqual(HELD);
    // the bed says nothing of it by itself: ended, nothing holds it
    day.holdEating(false);
    expect(offered()).toEqual(FREE);
    expect(day.cardForDay().facts).toEqual({});
    otherTab('bare-toes:day', word);
    expect(offered()).toEqual(HELD);
  });

  test('which the browser refuses to keep, it holds while the page stands', async () => {
    const { play, day, offered } = await phone({});
    day.openDay();
    vi.stubGlobal('localStorage', { ...localStorage, setItem: () => undefined });
    day.holdEating(true);
    expect(day.dayNotKept()).toBe(true);
    play.openPlay();
    expect(offered()).toEqual(HELD);
  });

  const now = NOW / 60_000;
  const card = {
    code: encodeBedCard({
      ...startCard(WARD),
      ...({ side: 'left', bell: 'button', age: { years: 6 }, head: 'flat', atNight: 'grown-up' } as const),
      ...{ madeAt: instant(now - 60), off: minutes(0), nothingByMouthUntil: instant(now + 60) },
    }),
  };

  test('as the nurse’s card says until a time, and then in words without an end: no meal stands at that time either', async () => {
    const { day } = await phone({ card });
    day.openDay();
    const meals = () => day.dayNow()!.tiles.filter(({ kind }) => DAY_EVENTS[kind].group === 'food');
    expect(meals().every(({ from }) => from >= now + 60)).toBe(true);
    expect(meals().length).toBeGreaterThan(0);
    day.holdEating(true);
    day.followDay();
    expect(day.cardForDay().facts).toEqual({ eatingFrom: 'not-today', notEatingSince: now });
    expect(meals().filter(({ from }) => from >= now)).toEqual([]);
  });

  test('as the nurse’s card says until a time, it is over at that time', async () => {
    const { play, offered } = await phone({ card });
    expect(offered()).toEqual(HELD);
    vi.setSystemTime(NOW + 60 * 60_000);
    play.openPlay();
    expect(offered()).toEqual(FREE);
  });

  test('or of whom the bed says so, nothing planned before is offered with food', async () => {
    const { offered } = await phone({ play: { open: BED.shape, beds: [{ ...BED, eating: false }] } });
    expect(offered()).toEqual({ ...HELD, held: false });
  });
});
