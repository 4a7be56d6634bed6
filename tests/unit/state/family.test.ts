import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stillHolds } from '#domain/bed-card/holds.ts';
import { instant, minutes } from '#domain/units.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, SKIN_TONES } from '#scene/spec.ts';
import { bedsideAsks, readFamily, type Family } from '#state/family.svelte.ts';

const START = readFamily({});
const OTHER: Family = {
  side: 'right',
  age: 14,
  skin: 'umber',
  hair: 'scarf',
  under3: true,
  canTell: 'partly',
  light: 'night',
  wardLanguage: 'pl',
  role: 'grown-up',
  locale: 'ar',
  bed: {
    secondStep: 'go-to-desk',
    secondStepMinutes: minutes(7),
    medicineWaitMinutes: minutes(60),
    compare: false,
    numbingUntil: instant(29_000_000),
    madeAt: instant(28_999_000),
  },
  shared: true,
  writer: 'grown-up-b',
  eraseFrom: instant(29_100_000),
};

describe('this family’s choices, read back', () => {
  test('nothing kept: the neutral drawing, and no side is guessed', () => {
    expect(START).toMatchObject({
      side: undefined,
      age: NEUTRAL.age,
      skin: NEUTRAL.skin,
      hair: NEUTRAL.hair,
    });
    expect(START).toMatchObject({ under3: false, canTell: 'yes', light: 'clock', role: undefined });
  });

  test('each choice comes back as it was kept', () => {
    expect(readFamily(JSON.parse(JSON.stringify(OTHER)) as Record<string, unknown>)).toEqual(OTHER);
  });

  test.each(Object.keys(OTHER) as (keyof Family)[])(
    'a damaged %s falls back by itself and takes no other with it',
    (key) => {
      const damaged = readFamily({ ...OTHER, [key]: { odd: 1 } });
      expect(damaged).toEqual({ ...OTHER, [key]: START[key] });
    },
  );

  test('whatever lies there, every value is one that can be drawn', () => {
    const anyKept = fc.record(
      Object.fromEntries(
        Object.entries(OTHER).map(([key, value]) => [
          key,
          fc.oneof(fc.constant<unknown>(value), fc.anything()),
        ]),
      ),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(anyKept, (kept) => {
        const family = readFamily(kept);
        expect(['left', 'right', undefined]).toContain(family.side);
        expect(DRAWN_AGES).toContain(family.age);
        expect(SKIN_TONES).toContain(family.skin);
        expect(HAIRS).toContain(family.hair);
        expect(typeof family.under3).toBe('boolean');
        expect(['yes', 'partly', 'no']).toContain(family.canTell);
        expect(['clock', 'day', 'night']).toContain(family.light);
        expect(['grown-up', 'child', 'staff', undefined]).toContain(family.role);
        for (const code of [family.locale, family.wardLanguage])
          expect(code ?? 'en').toMatch(/^[a-zA-Z-]{2,8}$/);
      }),
      { numRuns: 500 },
    );
  });
});

describe('the page’s foot asks whether the nurse’s card is still right', () => {
  test('exactly when the card’s own page asks, also where a clock was put back; without a card never', () => {
    const HOUR = 60;
    // the edges: 48 hours behind, one hour ahead, each to the minute
    const edges = [48 * HOUR, -HOUR].flatMap((at) => [at - 1, at, at + 1]);
    const anyAge = fc.oneof(fc.constantFrom(...edges), fc.integer({ min: -99 * HOUR, max: 99 * HOUR }));
    fc.assert(
      fc.property(fc.integer({ min: 28_000_000, max: 32_000_000 }), anyAge, (made, age) => {
        const card = { madeAt: instant(made) };
        const now = instant(made + age);
        expect(bedsideAsks(card, now)).toBe(stillHolds(card, now) === 'ask');
        expect(bedsideAsks({}, now)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });

  test('nothing is asked where no card was taken, or none that says when it was made', () => {
    expect(bedsideAsks(undefined, instant(29_000_000))).toBe(false);
    expect(bedsideAsks({}, instant(29_000_000))).toBe(false);
  });
});
