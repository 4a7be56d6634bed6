export type ReviewStatus = 'reviewed' | 'draft' | 'stale';
export interface AreaReview {
  keys: number;
  missing: number;
  unreviewed: number;
  stale: number;
  status: ReviewStatus;
}
/** `source` and `text`: hashes of the English and of the translation when stamped or signed. */
export interface ReviewRecord {
  source: string;
  text: string;
  by: string | null;
  on: string | null;
}
export type Area = { readonly [key: string]: string | Area };
export type Texts = Record<string, string>;

export const SAFETY_AREAS: readonly string[];
export function areasOf(root: string, lang: string): string[];
export function languages(root: string): string[];
export function readArea(root: string, lang: string, area: string): Area;
export function flatten(area: Area, prefix?: string): Texts;
export function sourceHash(text: string): string;
export function textsOf(root: string, lang: string): Texts;
export function sourceKeyOf(key: string, english: Texts): string | undefined;
export function dueKeys(lang: string, english: Texts): string[];
export function readReview(root: string, lang: string): Record<string, ReviewRecord>;
export function reviewOf(root: string): Record<string, Record<string, AreaReview>>;
export function stamp(
  root: string,
  lang: string,
  options?: { renew?: readonly string[] },
): { added: number; refreshed: number; removed: number; kept: number };
export function sign(
  root: string,
  lang: string,
  entry: { area?: string; keys?: readonly string[]; by: string; on: string },
): number;
export function shownLanguages(
  root: string,
  options?: { hideUnreviewed?: boolean; always?: string },
): string[];
export function readable(text: string): string;
