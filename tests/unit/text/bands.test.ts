import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { FOG_PL_BANDS, fogPlBand, INFLESZ_BANDS, inflesz, LIX_BANDS, lixBand } from '#domain/text/bands.ts';

describe('bands of a scale', () => {
  it.each([
    [39.9, 'very-hard'],
    [40, 'rather-hard'],
    [55, 'normal'],
    [64.99, 'normal'],
    [65, 'quite-easy'],
    [80, 'quite-easy'],
    [80.01, 'very-easy'],
  ] as const)('INFLESZ %d is %s', (value, band) => {
    expect(inflesz(value)).toBe(band);
  });

  it.each([
    [6, 'very-simple'],
    [6.5, 'simple'],
    [9, 'simple'],
    [9.01, 'fairly-simple'],
    [13, 'fairly-hard'],
    [17, 'hard'],
    [18, 'very-hard'],
  ] as const)('Polish FOG %d is %s', (value, band) => {
    expect(fogPlBand(value)).toBe(band);
  });

  it.each([
    [29.9, 'very-easy'],
    [30, 'easy'],
    [40, 'medium'],
    [50, 'hard'],
    [60, 'very-hard'],
  ] as const)('LIX %d is %s', (value, band) => {
    expect(lixBand(value)).toBe(band);
  });

  it('a harder value never has an easier band', () => {
    const value = fc.double({ min: -50, max: 250, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(INFLESZ_BANDS.indexOf(inflesz(low))).toBeLessThanOrEqual(INFLESZ_BANDS.indexOf(inflesz(high)));
        expect(FOG_PL_BANDS.indexOf(fogPlBand(low))).toBeLessThanOrEqual(
          FOG_PL_BANDS.indexOf(fogPlBand(high)),
        );
        expect(LIX_BANDS.indexOf(lixBand(low))).toBeLessThanOrEqual(LIX_BANDS.indexOf(lixBand(high)));
      }),
    );
  });
});
