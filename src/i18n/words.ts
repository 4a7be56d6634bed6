/** Loads only the areas of words that a page needs, and makes its translator. */
import { createInstance, type TFunction } from 'i18next';
import { review } from 'virtual:languages';
import type care from '#locales/en/care.json';
import type called from '#locales/en/called.json';
import type card from '#locales/en/card.json';
import type common from '#locales/en/common.json';
import type day from '#locales/en/day.json';
import type dayAdult from '#locales/en/day-adult.json';
import type ideas from '#locales/en/ideas.json';
import type look from '#locales/en/look.json';
import type notes from '#locales/en/notes.json';
import type pages from '#locales/en/pages.json';
import type pass from '#locales/en/pass.json';
import type plans from '#locales/en/plans.json';
import type play from '#locales/en/play.json';
import type say from '#locales/en/say.json';
import type signs from '#locales/en/signs.json';
import type steps from '#locales/en/steps.json';
import type staff from '#locales/en/staff.json';
import type topicsBody from '#locales/en/topics-body.json';
import type topicsEnd from '#locales/en/topics-end.json';
import type topicsLife from '#locales/en/topics-life.json';
import type topicsStart from '#locales/en/topics-start.json';
import type why from '#locales/en/why.json';

export interface Areas {
  called: typeof called;
  card: typeof card;
  care: typeof care;
  common: typeof common;
  day: typeof day;
  'day-adult': typeof dayAdult;
  ideas: typeof ideas;
  look: typeof look;
  notes: typeof notes;
  pages: typeof pages;
  pass: typeof pass;
  plans: typeof plans;
  play: typeof play;
  say: typeof say;
  signs: typeof signs;
  staff: typeof staff;
  steps: typeof steps;
  'topics-body': typeof topicsBody;
  'topics-end': typeof topicsEnd;
  'topics-life': typeof topicsLife;
  'topics-start': typeof topicsStart;
  why: typeof why;
}
export type Area = keyof Areas;

/** Words of the way from a part to an answer: their addresses are known from the first load on. */
const FIRST_FILES = import.meta.glob<{ default: Record<string, unknown> }>(
  '/locales/*/{common,look,steps,signs,say}.json',
);

/**
 * One area of one language.
 * Errors: throws where the build holds no such file. There is no fallback to another language: a half-mixed
 * safety text is worse than none.
 */
export async function loadArea<A extends Area>(locale: string, area: A): Promise<Areas[A]> {
  const source = locale.startsWith('en-X') ? 'en' : locale;
  const name = `/locales/${source}/${area}.json`;
  const file = FIRST_FILES[name] ?? (await import('./word-files.ts')).FILES[name];
  if (!file) throw new Error(`locales › ${locale} › ${area}: no such file in this build`);
  const words = (await file()).default;
  if (import.meta.env.DEV && source !== locale) {
    const { pseudo } = await import('./pseudo.ts');
    return pseudo(words, locale) as Areas[A];
  }
  return words as Areas[A];
}

export interface Words {
  locale: string;
  t: TFunction<Area[]>;
  /** The worst review state of the areas on this page. */
  review: 'reviewed' | 'draft' | 'stale';
}

/** Of a bed without a call button: the text that stands in for a key's own, if any (i18n/called.ts). */
export const standIn: { of?: (locale: string, key: string) => string | undefined } = {};

/** A translator that takes any key. */
type Translate = (key: string, options?: Record<string, unknown>) => string;
/** For keys made from ids: tests/rules check that every id has every key, the type checker cannot. */
export const translate = (words: Words): Translate => words.t as unknown as Translate;

/** A translator for a page with these areas; `common` is always there. */
export async function loadWords(locale: string, areas: readonly Area[]): Promise<Words> {
  const wanted: Area[] = ['common', ...areas];
  const loaded = await Promise.all(wanted.map(async (area) => [area, await loadArea(locale, area)] as const));
  const instance = createInstance();
  await instance.init({
    lng: locale,
    fallbackLng: false,
    ns: wanted,
    defaultNS: 'common',
    resources: { [locale]: Object.fromEntries(loaded) },
    interpolation: { escapeValue: false },
    initAsync: false,
    returnEmptyString: false,
  });
  const source = locale.startsWith('en-X') ? 'en' : locale;
  const first = review[source] ?? {};
  const rest = wanted.every((area) => area in first) ? {} : (await import('./word-files.ts')).review[source];
  const states = wanted.map((area) => first[area] ?? rest?.[area] ?? 'draft');
  const worst = states.includes('stale') ? 'stale' : states.includes('draft') ? 'draft' : 'reviewed';
  const own = instance.t as unknown as Translate;
  const t: Translate = (key, options) => {
    const defaultValue = standIn.of?.(locale, key);
    // a key that no area has: the text given is filled in as its own would be
    return defaultValue ? own('-', { ...options, defaultValue }) : own(key, options);
  };
  return { locale, t: t as unknown as TFunction<Area[]>, review: worst };
}
