/** Addresses inside the site; every page ends in a slash. */
import { base } from '$app/paths';

export const pagePath = (locale: string, ...segments: string[]): string =>
  `${base}/${[locale, ...segments].map(encodeURIComponent).join('/')}/`;

export const resultPath = (locale: string, part: string, sign: string, answer?: string): string =>
  answer ? pagePath(locale, 'look', part, sign, answer) : pagePath(locale, 'look', part, sign);
