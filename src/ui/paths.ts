/** Addresses inside the site; every page ends in a slash. */
import { base } from '$app/paths';

/** The address of a page in a language. Segments are ids of our own: no sign in them has to be written otherwise. */
export const pagePath = (...segments: [locale: string, ...string[]]): string =>
  `${base}/${segments.join('/')}/`;

/** The address of what a sign asks for: seen, not sure, or with a sub-answer. */
export const resultPath = (locale: string, part: string, sign: string, answer?: string): string =>
  answer ? pagePath(locale, 'look', part, sign, answer) : pagePath(locale, 'look', part, sign);
