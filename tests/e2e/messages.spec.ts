/**
 * What a page says after a press, to a reader who hears it (WCAG 2.2, 4.1.3): it comes into a region that stood there and
 * was known before the press, and the focus stays. A warning may come together with its region: Core-AAM 1.2 has an
 * `alert` told when it is shown, and has no such rule for a `status`.
 */
import { expect, test, type Page } from '@playwright/test';
import { fortnight } from '../helpers/fortnight.ts';
import { forgetNotes, leaveNotes } from '../helpers/kept-notes.ts';
import { scriptRuns } from '../helpers/pages.ts';
import { FULL } from '../helpers/play-beds.ts';
import { toldOf } from '../helpers/spoken.ts';

const NOW = new Date('2026-11-25T11:40:00Z');

interface Said {
  at: string;
  /** What has to stand there before the press. */
  first?: string;
  /** Typed into this field before the press. */
  typed?: readonly [string, string];
  press: string;
  /** What says it. */
  says: string;
  /** On a phone that holds no notes. */
  fresh?: true;
  /** The browser keeps nothing any more from here on. */
  refused?: true;
}

const SAID: readonly Said[] = [
  {
    at: 'look/bandage/band-wet/',
    first: '[data-written]',
    press: '[data-action="take-back"]',
    says: '[data-taken-back]',
  },
  {
    at: 'look/cord/load-not-free/',
    first: '[data-written]',
    press: '[data-action="bell"]',
    says: '[data-tap="bell"]',
    refused: true,
  },
  { at: 'bell/', press: '[data-action="bell"]', says: '[data-not-written]', refused: true },
  { at: 'bell/', press: '[data-action="bell"]', says: '[data-pressed]' },
  {
    at: 'look/toes/toes-colour/',
    fresh: true,
    first: '[data-written]',
    press: '[data-action="bell"]',
    says: '[data-pressed]',
  },
  { at: 'our-notes/', press: '[data-note-kind="told"]', says: '[data-told-written] span' },
  { at: 'our-notes/', press: '[data-note-kind="told"]', says: '[data-told-written] span', refused: true },
  {
    at: 'bed-card/take/',
    typed: ['input[name="letters"]', 'ABCDE'],
    press: 'form button',
    says: '[data-fault]',
  },
  { at: 'bed-card/', press: '[data-action="make-code"]', says: '[data-missing]' },
  { at: 'pass-it-on/', press: '[data-action="file"]', says: '[data-shared]' },
  { at: 'pass-it-on/', press: '[data-action="receive"]', says: '[data-camera]' },
  {
    at: 'put-away/',
    typed: ['input[name="home-day"]', '2026-12-01'],
    press: '[data-action="keep-until"]',
    says: '[data-kept-until]',
  },
  { at: 'our-day/grown-up/', press: '[data-comes-now]', says: '[data-came]' },
  { at: 'why-and-how/why-pull/', press: '[data-action="read-together"]', says: '[data-read-together]' },
  {
    at: 'why-and-how/soreness/',
    press: '[data-action="read-together"]',
    says: '[data-not-written]',
    refused: true,
  },
  { at: 'things-to-do/code/', press: '[data-action="send-link"]', says: '[data-sent]' },
];

/** From here on the browser has no room for another note. */
const refuse = (page: Page) =>
  page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });

test('each message after a press comes where the reader is already listening, and the focus stays', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-write']);
  await page.clock.setFixedTime(NOW);
  await leaveNotes(page, fortnight(20, 3, 'likely'), { id: '3fa91c', count: 20 });
  await page.addInitScript(
    (kept) => {
      localStorage.setItem('bare-toes:play', kept);
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
      Object.defineProperty(navigator, 'share', { value: undefined });
    },
    JSON.stringify({ open: FULL.shape, beds: [FULL] }),
  );
  page.setDefaultTimeout(15_000);
  const session = await context.newCDPSession(page);
  const wrong: string[] = [];
  for (const { at, fresh, first, typed, press, says, refused } of SAID) {
    const what = `${at} ${says}`;
    if (fresh) await forgetNotes(page);
    await page.goto(`/en/${at}`);
    await scriptRuns(page);
    if (first) await expect(page.locator(first)).toBeVisible();
    if (typed) await page.locator(typed[0]).fill(typed[1]);
    if (refused) await refuse(page);
    const button = page.locator(`main ${press}`).first();
    // a button that waits for the notes cannot be focused yet
    await expect(button, what).toBeEnabled();
    await button.focus();
    await expect(button, what).toBeFocused();
    await expect(page.locator(`main ${says}`), `${what}, before the press`).toHaveCount(0);
    await page.evaluate(() => {
      const heard = [...document.querySelectorAll('[role="status"], [aria-live="polite"]')];
      Object.assign(window, { heard: new Set(heard), pressed: document.activeElement });
    });
    const known = (await toldOf(session)).some(({ role }) => role === 'status');
    await page.keyboard.press('Enter');
    const message = page.locator(`main ${says}`).first();
    await expect(message, what).toBeVisible();
    const { heard, focus } = await message.evaluate((element) => {
      const { heard, pressed } = window as unknown as { heard: Set<Element>; pressed: HTMLElement };
      const region = element.closest('[role="status"], [role="alert"], [aria-live]');
      const here = document.activeElement;
      const gone = !pressed.isConnected || !pressed.checkVisibility();
      return {
        heard: region !== null && (heard.has(region) || region.matches('[role="alert"]')),
        // a button that went with the press cannot keep it; nothing else may take it then
        focus: here === pressed || (gone && here === document.body),
      };
    });
    if (!known) wrong.push(`${what}: no region was known before`);
    if (!heard) wrong.push(`${what}: not where a reader is listening`);
    if (!focus) wrong.push(`${what}: takes the focus`);
    // whoever goes on by keyboard goes on from there, not from the top of the page
    await page.keyboard.press('Tab');
    const on = await page.evaluate(() => document.activeElement?.closest('main, footer') !== null);
    if (!on) wrong.push(`${what}: the keyboard begins at the top again`);
  }
  expect(wrong).toEqual([]);
});
