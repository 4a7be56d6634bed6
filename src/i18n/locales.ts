/** The languages of the site: own name, in its own script, and reading direction. No flags: a flag is not a language. */
import { dev } from '$app/environment';
import { shown } from 'virtual:languages';

export interface LocaleRow {
  code: string;
  /** The language's own name, in its own script. */
  name: string;
  direction: 'ltr' | 'rtl';
}

const ROWS: readonly LocaleRow[] = [
  { code: 'en', name: 'English', direction: 'ltr' },
  { code: 'es', name: 'Español', direction: 'ltr' },
  { code: 'pl', name: 'Polski', direction: 'ltr' },
  { code: 'ar', name: 'العربية', direction: 'rtl' },
];

/** English stretched and bracketed, and English read from the right: to find fixed words and widths. */
const PSEUDO_ROWS: readonly LocaleRow[] = [
  { code: 'en-XA', name: '[Ēñĝļîšħ]', direction: 'ltr' },
  { code: 'en-XB', name: '[Right to left]', direction: 'rtl' },
];

/** In the ward's order. */
export const rowsOf = (codes: readonly string[]): LocaleRow[] =>
  codes.flatMap((code) => ROWS.filter((row) => row.code === code));

export const LOCALES: readonly LocaleRow[] = [...rowsOf(shown), ...(dev ? PSEUDO_ROWS : [])];

/** Whether this build shows the language. */
export const isLocale = (code: string): boolean => LOCALES.some((row) => row.code === code);
const localeRow = (code: string): LocaleRow | undefined => LOCALES.find((row) => row.code === code);
/** The reading direction; from the left for what is not known. */
export const directionOf = (code: string): 'ltr' | 'rtl' => localeRow(code)?.direction ?? 'ltr';
/** The language's own name; its code for what is not known. */
export const nameOf = (code: string): string => localeRow(code)?.name ?? code;
