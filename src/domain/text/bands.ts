/**
 * Names for stretches of a measure's scale, as their authors drew them. Where a printed scale leaves a gap
 * between two bands, the harder band takes it, so that no text is called easier than it may be.
 */

export const INFLESZ_BANDS = ['very-hard', 'rather-hard', 'normal', 'quite-easy', 'very-easy'] as const;
export type InfleszBand = (typeof INFLESZ_BANDS)[number];

/**
 * INFLESZ band of a Szigriszt value: up to 40 very hard, 55 rather hard, 65 normal, 80 quite easy, above very
 * easy. Lower ends belong to the band they open (65 is quite easy), 80 itself is still quite easy.
 * Source: Barrio-Cantalejo 2008, An Sist Sanit Navar 31(2):135–52 ("<40" … ">80").
 * @example inflesz(65) // 'quite-easy'
 */
export function inflesz(value: number): InfleszBand {
  if (value < 40) return 'very-hard';
  if (value < 55) return 'rather-hard';
  if (value < 65) return 'normal';
  if (value <= 80) return 'quite-easy';
  return 'very-easy';
}

export const FOG_PL_BANDS = [
  'very-simple',
  'simple',
  'fairly-simple',
  'fairly-hard',
  'hard',
  'very-hard',
] as const;
export type FogPlBand = (typeof FOG_PL_BANDS)[number];

/**
 * Band of a Polish FOG value: 1–6 very simple, 7–9 simple, 10–12 fairly simple, 13–15 fairly hard, 16–17 hard,
 * 18 and up very hard. A value between two bands belongs to the harder one.
 * Source: the scale of the Wrocław plain-language group, as quoted by others.
 * @example fogPlBand(9) // 'simple'
 */
export function fogPlBand(value: number): FogPlBand {
  if (value <= 6) return 'very-simple';
  if (value <= 9) return 'simple';
  if (value <= 12) return 'fairly-simple';
  if (value <= 15) return 'fairly-hard';
  if (value <= 17) return 'hard';
  return 'very-hard';
}

export const LIX_BANDS = ['very-easy', 'easy', 'medium', 'hard', 'very-hard'] as const;
export type LixBand = (typeof LIX_BANDS)[number];

/**
 * Band of a LIX value: below 30 very easy (children's books), to 40 easy, to 50 medium, to 60 hard, above very hard.
 * Source: Björnsson 1968.
 * @example lixBand(30) // 'easy'
 */
export function lixBand(value: number): LixBand {
  if (value < 30) return 'very-easy';
  if (value < 40) return 'easy';
  if (value < 50) return 'medium';
  if (value < 60) return 'hard';
  return 'very-hard';
}
