// The nurse's card on a phone: taken, said to be still right, and what lay there before.
import { afterEach, describe, expect, test, vi } from 'vitest';
import { startCard, type BedCard } from '#domain/bed-card/card.ts';
import { encodeBedCard } from '#domain/bed-card/code.ts';
import { instant, minutes } from '#domain/units.ts';
import { WARD } from '#content/ward.ts';

const NOW = 29_900_000;
const codeOf = (side: BedCard['side']) =>
  encodeBedCard({
    ...startCard(WARD),
    ...({ side, bell: 'button', age: { years: 6 }, head: 'flat', atNight: 'grown-up' } as const),
    ...{ madeAt: instant(NOW - 60), off: minutes(0) },
  });
const [LEFT, RIGHT] = [codeOf('left'), codeOf('right')];
const KEY = 'bare-toes:card';
const ASIDE = 'bare-toes:card:unread';

/** A page that was just loaded on a phone with this on it. */
async function phone(kept: Record<string, string> = {}) {
  const device = new Map(Object.entries(kept));
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => device.get(name) ?? null,
    setItem: (name: string, text: string) => device.set(name, text),
    removeItem: (name: string) => device.delete(name),
  });
  vi.resetModules();
  const card = await import('#state/card.svelte.ts');
  card.loadCard();
  return { device, ...card };
}
afterEach(() => vi.unstubAllGlobals());

describe('a card is taken where one lies that this version cannot read', () => {
  test.each(['{"half":', '7', '{"code":"0000"}', JSON.stringify({ code: LEFT.slice(0, -2) })])(
    '%s is put aside first, and is spoken of no more',
    async (text) => {
      const { device, cardUnreadable, takeCard, currentCard } = await phone({ [KEY]: text });
      expect([cardUnreadable(), currentCard()]).toEqual([true, undefined]);
      expect(takeCard(RIGHT)).toEqual({ ok: true });
      expect(JSON.parse(device.get(ASIDE)!)).toEqual([text]);
      expect([cardUnreadable(), currentCard()?.side]).toEqual([false, 'right']);
    },
  );

  test('which the browser will not put aside: it stays, and the new one is not taken', async () => {
    const { device, takeCard, currentCard } = await phone({ [KEY]: '7' });
    const set = localStorage.setItem.bind(localStorage);
    localStorage.setItem = (name, text) => void (name === ASIDE || set(name, text));
    expect(takeCard(RIGHT)).toEqual({ ok: false, reason: 'not-kept' });
    expect([device.get(KEY), currentCard()]).toEqual(['7', undefined]);
  });

  test('a card that can be read gives way without a copy', async () => {
    const { device, takeCard } = await phone({ [KEY]: JSON.stringify({ code: LEFT }) });
    expect(takeCard(RIGHT)).toEqual({ ok: true });
    expect([...device.keys()].sort()).toEqual([KEY, 'bare-toes:family']);
  });

  test('erased, nothing of either is left', async () => {
    const { device, takeCard, forgetCard, cardUnreadable } = await phone({ [KEY]: '7' });
    takeCard(RIGHT);
    device.set(KEY, '8');
    expect([forgetCard(), cardUnreadable()]).toEqual([true, false]);
    expect([...device.keys()]).toEqual(['bare-toes:family']);
  });
});

describe('"still right"', () => {
  test('is kept beside the card', async () => {
    const { device, confirmCard, cardAsks } = await phone({ [KEY]: JSON.stringify({ code: LEFT }) });
    const later = instant(NOW + 3 * 1440);
    expect([cardAsks(later), confirmCard(later), cardAsks(later)]).toEqual([true, true, false]);
    expect(JSON.parse(device.get(KEY)!)).toEqual({ code: LEFT, confirmedAt: later });
  });

  test('said of the card on this page holds for no other that was taken in another tab meanwhile', async () => {
    const { device, confirmCard } = await phone({ [KEY]: JSON.stringify({ code: LEFT }) });
    device.set(KEY, JSON.stringify({ code: RIGHT }));
    expect(confirmCard(instant(NOW))).toBe(false);
    expect(JSON.parse(device.get(KEY)!)).toEqual({ code: RIGHT });
  });
});
