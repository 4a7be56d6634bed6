/** The site as a browser test meets it: addresses, taps that are counted, notes as they lie in the browser. */
import path from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { textsOf } from '../../.ci/locales.mjs';
import { root } from './locales.ts';
import { SIGN_ROWS, SIGNS, detailsOf, offersNotSure } from '#content/signs.ts';
import { PART_IDS } from '#content/parts.ts';
import { ALL_SIGN_IDS, type SignId } from '#domain/signs/ids.ts';

export const LANGUAGES = ['en', 'es', 'pl', 'ar'] as const;
export type Language = (typeof LANGUAGES)[number];
export const directionOf = (language: string) => (language === 'ar' ? 'rtl' : 'ltr');

/** The built folder that .ci/playwright.config.mjs serves. */
export const built = path.join(root, 'build');

export const words = (language: string) => textsOf(root, language);

/** The twenty-three core signs of the design (2-signs.md, 3.2), written out so that content cannot move them. */
export const CORE_SIGNS: readonly SignId[] = [
  ...(['toes-cool', 'both-feet-cool', 'toes-colour', 'toes-swollen', 'toes-numb', 'toes-still'] as const),
  ...([
    'foot-droops',
    'thigh-changed',
    'sore-after-medicine',
    'sore-rising',
    'band-tight',
    'band-moved',
  ] as const),
  ...(['band-wet', 'band-stained', 'heel-sore', 'skin-mark', 'burning-spot', 'load-not-free'] as const),
  ...(['cord-trouble', 'cord-touched', 'slid-down', 'plate-crooked', 'leg-rolled'] as const),
];
/** Breathing, waking, shaking, fall and pale-sweaty have a button of their own on the first screen. */
const DANGER_SIGNS: readonly SignId[] = [
  'breath-hard',
  'hard-to-wake',
  'shaking-fit',
  'fell-or-climbing',
  'pale-sweaty',
];
export const mostTaps = (sign: SignId): number =>
  CORE_SIGNS.includes(sign) || DANGER_SIGNS.includes(sign) ? 2 : 3;

/** Every page that shows a sign: its answer "different", "not sure" where offered, and its sub-answers. */
export const RESULTS = ALL_SIGN_IDS.flatMap((sign) =>
  ['different', ...(offersNotSure(sign) ? ['not-sure'] : []), ...detailsOf(sign)].map((answer) => ({
    sign,
    answer,
    part: SIGNS[sign].part,
    urgency: classOf(sign, answer),
  })),
);

function classOf(sign: SignId, answer: string): string {
  if (answer === 'not-sure' || sign === 'cannot-name-it') return 'not-sure';
  return SIGN_ROWS[sign]!.details?.[answer]?.atLeast ?? SIGNS[sign].urgency;
}

export const resultAddress = (language: string, sign: SignId, answer = 'different'): string =>
  `/${language}/look/${SIGNS[sign].part}/${sign}/${answer === 'different' ? '' : `${answer}/`}`;

/** One address of every kind of route, and each class of result; without the language chooser at `/`. */
export const routesOf = (language: string): string[] => [
  `/${language}/#choose`,
  `/${language}/look/`,
  // the worries stand on the first screen itself
  ...PART_IDS.filter((part) => part !== 'worry').map((part) => `/${language}/look/${part}/`),
  resultAddress(language, 'toes-colour'),
  resultAddress(language, 'load-not-free'),
  resultAddress(language, 'breath-hard'),
  resultAddress(language, 'band-wet'),
  resultAddress(language, 'toes-colour', 'not-sure'),
  resultAddress(language, 'no-poo'),
  resultAddress(language, 'cannot-name-it'),
  resultAddress(language, 'toes-swollen', 'cannot-move'),
  `/${language}/look/full/`,
  ...[1, 2, 3, 4, 5, 6].map((step) => `/${language}/look/full/${step}/`),
  `/${language}/look/full/end/`,
  `/${language}/look/drawing/`,
  `/${language}/bell/`,
  `/${language}/our-notes/`,
  `/${language}/sources/`,
  `/${language}/bed-card/`,
  `/${language}/bed-card/take/`,
  `/${language}/bed-card/sheet/`,
  `/${language}/for-staff/`,
  `/${language}/for-staff/ask/`,
  `/${language}/for-staff/round/`,
  `/${language}/pass-it-on/`,
  `/${language}/put-away/`,
  `/${language}/try-it/`,
  ...['', 'bed/', 'plan/', 'ideas/', 'night/', 'code/', 'take/', 'moment/', 'paper/'].map(
    (page) => `/${language}/things-to-do/${page}`,
  ),
  ...['', 'why-pull/', 'my-set-up/', 'going-home/', 'hill/', 'paper/', 'care/', 'care/steps/'].map(
    (page) => `/${language}/why-and-how/${page}`,
  ),
  ...['grown-up/', 'paper/', 'private/'].map((page) => `/${language}/our-day/${page}`),
  ...['', 'call/it-hurts/', 'call/please-come/', 'story/'].map((page) => `/${language}/our-day/${page}`),
];

/** One address for what is built alike: one place, one step. */
export const kindsOf = (language: string): string[] =>
  routesOf(language).filter((one) => !/look\/full\/[2-6]|look\/(?!toes|full|drawing)[a-z]+\/$/.test(one));

/** Waits until script has taken the page over. */
export async function scriptRuns(page: Page): Promise<void> {
  await page.locator('html[data-script]').waitFor({ state: 'attached' });
}

/** What pushes the page wider than the screen: nothing, or the width and the innermost guilty element. */
export const sideways = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.scrollingElement!.scrollWidth;
    if (wide <= innerWidth) return [];
    const guilty = [...document.querySelectorAll('body *')].filter(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 || element.getBoundingClientRect().left < -1,
    );
    return [`${wide} px: ${guilty.map((e) => e.outerHTML.slice(0, 80)).slice(-1)}`];
  });

/** Words that stand in more than one line, so that a reader has to put them together. */
export const brokenWords = (place: Locator): Promise<string[]> =>
  place.evaluateAll((elements) =>
    elements.flatMap((element) => {
      const broken: string[] = [];
      const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode() as Text | null; text; text = texts.nextNode() as Text | null)
        for (const { 0: word, index } of text.data.matchAll(/\p{L}+/gu)) {
          const range = document.createRange();
          range.setStart(text, index);
          range.setEnd(text, index + word.length);
          const lines = [...range.getClientRects()].filter(({ width }) => width > 0.5);
          if (new Set(lines.map(({ top }) => Math.round(top))).size > 1) broken.push(word);
        }
      return broken;
    }),
  );

/** Counts what a hand does. */
export class Taps {
  count = 0;
  constructor(readonly page: Page) {}
  async on(target: string | Locator): Promise<void> {
    this.count += 1;
    const place = typeof target === 'string' ? this.page.locator(target) : target;
    await place.first().tap();
  }
}

/** From the first screen to a sign's result, as a family would tap. */
export async function tapTo(
  taps: Taps,
  sign: SignId,
  answer: 'different' | 'not-sure' = 'different',
): Promise<void> {
  const { part } = SIGNS[sign];
  if (part === 'more') await taps.on('main a[data-part="child"]');
  if (part !== 'worry') await taps.on(`main a[data-part="${part}"]:not(svg a)`);
  await taps.on(`main a[data-sign="${sign}"][data-answer="${answer}"]`);
  await taps.page.waitForURL(
    `**${resultAddress(new URL(taps.page.url()).pathname.split('/')[1]!, sign, answer)}`,
  );
}

/** Puts this family's choices on the phone before the first page is opened. */
export async function chosen(page: Page, family: Record<string, unknown>): Promise<void> {
  await page.addInitScript((value) => {
    if (!localStorage.getItem('bare-toes:family')) localStorage.setItem('bare-toes:family', value);
  }, JSON.stringify(family));
}

export interface Kept {
  id: string;
  t: number;
  off: number;
  kind: string;
  sign?: string;
  strikes?: string;
}

/** Every note in the browser's store, in the order it was kept. The page must be on the site. */
export async function keptNotes(page: Page): Promise<Kept[]> {
  return page.evaluate(
    () =>
      new Promise<Kept[]>((resolve, reject) => {
        const opening = indexedDB.open('bare-toes');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          if (!database.objectStoreNames.contains('notes')) return resolve([]);
          const store = database.transaction('notes').objectStore('notes');
          const keys = store.getAllKeys();
          const values = store.getAll();
          values.onerror = () => reject(values.error);
          values.onsuccess = () => {
            database.close();
            resolve(keys.result.flatMap((key, index) => (key === 'device' ? [] : values.result[index])));
          };
        };
      }),
  );
}
