import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instant, minutes } from '#domain/units.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, SKIN_TONES } from '#scene/spec.ts';
import { readFamily, type Family } from '#state/family.svelte.ts';

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
