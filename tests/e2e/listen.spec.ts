/** Listening: only with a voice of the device's own, sentence by sentence along the text, and silent again at one press. */
import { expect, test, type Page } from '@playwright/test';
import { usualWays } from '#domain/day/kept-day.ts';
import { chosen, scriptRuns, words } from '../helpers/pages.ts';
import { giveVoices, heard, sentenceOver, speaks } from '../helpers/voices.ts';

const english = words('en');
const LOCAL_ENGLISH = { lang: 'en-GB', localService: true };
const button = (page: Page) => page.locator('[data-action="listen"]');
const marked = (page: Page) => page.locator('.thoughts .spoken');
const sentences = (page: Page) => page.locator('.thoughts li > span');

async function opened(page: Page, address: string) {
  await page.goto(address);
  await scriptRuns(page);
}

test.describe('a topic', () => {
  test('is read out sentence by sentence, each marked while it is said, and nothing is said before the press', async ({
    page,
  }) => {
    await giveVoices(page, [{ lang: 'fr-FR', localService: true }, LOCAL_ENGLISH]);
    await chosen(page, { role: 'grown-up', locale: 'en', age: 5 });
    await opened(page, '/en/why-and-how/why-pull/');
    await expect(button(page)).toHaveText(english['why:listen']!);
    expect(await heard(page)).toEqual([]);
    await expect(marked(page)).toHaveCount(0);
    const all = await sentences(page).allTextContents();
    expect(all.length).toBeGreaterThan(5);

    await button(page).tap();
    await expect(button(page)).toHaveText(english['why:stopListening']!);
    for (const [at, sentence] of all.entries()) {
      await expect(marked(page)).toHaveCount(1);
      await expect(sentences(page).nth(at)).toHaveClass(/spoken/);
      expect((await heard(page)).at(-1)).toEqual({ text: sentence, lang: 'en-GB' });
      await sentenceOver(page);
    }
    await expect(button(page)).toHaveText(english['why:listen']!);
    await expect(marked(page)).toHaveCount(0);
    // every word that stands there, in its order, once
    expect((await heard(page)).map(({ text }) => text).join('')).toBe(all.join(''));
  });

  test('the same button stops it at once; pressed again it begins at the beginning', async ({ page }) => {
    await giveVoices(page, [LOCAL_ENGLISH]);
    await opened(page, '/en/why-and-how/why-pull/');
    await button(page).tap();
    await sentenceOver(page);
    await expect(sentences(page).nth(1)).toHaveClass(/spoken/);
    await button(page).tap();
    expect(await speaks(page)).toBe(false);
    await expect(marked(page)).toHaveCount(0);
    await expect(button(page)).toHaveText(english['why:listen']!);
    await button(page).tap();
    await expect(sentences(page).first()).toHaveClass(/spoken/);
    const said = await heard(page);
    expect(said.at(-1)).toEqual(said[0]);
  });

  test('another reader, another topic, another page: the voice is silent, and nothing is marked', async ({
    page,
  }) => {
    await giveVoices(page, [LOCAL_ENGLISH]);
    await opened(page, '/en/why-and-how/why-pull/');
    await button(page).tap();
    await expect(marked(page)).toHaveCount(1);
    await page.locator('select[name="reader"]').selectOption({ label: english['why:reader.from6']! });
    expect(await speaks(page)).toBe(false);
    await expect(marked(page)).toHaveCount(0);

    await button(page).tap();
    await expect(marked(page)).toHaveCount(1);
    await page.locator('[data-next]').tap();
    await expect(page.locator('main[data-topic="why-pull"]')).toHaveCount(0);
    await expect.poll(() => speaks(page)).toBe(false);
    await expect(marked(page)).toHaveCount(0);
    await expect(button(page)).toHaveText(english['why:listen']!);

    await button(page).tap();
    await expect(marked(page)).toHaveCount(1);
    await page.locator('main nav a.plain-link').tap();
    await page.waitForURL('**/en/why-and-how/');
    await expect.poll(() => speaks(page)).toBe(false);
  });

  test('a voice that breaks off leaves the button as it was before, and the whole text', async ({ page }) => {
    await giveVoices(page, [LOCAL_ENGLISH]);
    await opened(page, '/en/why-and-how/why-pull/');
    await button(page).tap();
    await expect(marked(page)).toHaveCount(1);
    await sentenceOver(page, 'onerror');
    await expect(button(page)).toHaveText(english['why:listen']!);
    await expect(marked(page)).toHaveCount(0);
    expect(await speaks(page)).toBe(false);
  });

  test('a voice that comes late is offered when it is there', async ({ page }) => {
    await giveVoices(page, [LOCAL_ENGLISH], 600);
    await opened(page, '/en/why-and-how/why-pull/');
    await expect(button(page)).toBeVisible();
  });

  for (const [what, voices] of [
    ['no voice at all', []],
    ['no voice for Arabic', [LOCAL_ENGLISH]],
    ['only one that sends the words away', [{ lang: 'ar-SA', localService: false }]],
  ] as const)
    test(`${what}: listening is not offered, and the text stands there whole`, async ({ page }) => {
      await giveVoices(page, voices);
      await opened(page, '/ar/why-and-how/why-pull/');
      await expect(page.locator('.thoughts li').first()).toBeVisible();
      // longer than a voice is waited for
      await page.waitForTimeout(1300);
      await expect(button(page)).toHaveCount(0);
    });
});

test.describe('the child’s pages', () => {
  const ways = (page: Page, sound: boolean) =>
    page.addInitScript(
      (value) => localStorage.setItem('bare-toes:day', value),
      JSON.stringify({
        firstDay: '2026-11-20',
        ways: { ...usualWays(false), mode: 'three-doors', sound },
      }),
    );
  const CALL = '/en/our-day/call/it-hurts/';

  test('with sound, the sentence for the nurse is said once in the ward’s language; the button stops it and says it again', async ({
    page,
  }) => {
    await page.clock.install({ time: new Date('2026-11-25T10:00:00Z') });
    await giveVoices(page, [LOCAL_ENGLISH, { lang: 'pl-PL', localService: true }]);
    await chosen(page, { wardLanguage: 'pl', age: 5 });
    await ways(page, true);
    await opened(page, CALL);
    const sentence = { text: words('pl')['say:child.it-hurts']!, lang: 'pl-PL' };
    await expect.poll(() => heard(page)).toEqual([sentence]);
    await expect(button(page)).toHaveAccessibleName(english['day:stop']!);
    await button(page).tap();
    expect(await speaks(page)).toBe(false);
    await expect(button(page)).toHaveAccessibleName(english['day:listen']!);
    await button(page).tap();
    await expect.poll(() => heard(page)).toEqual([sentence, sentence]);
    await sentenceOver(page);
    await expect(button(page)).toHaveAccessibleName(english['day:listen']!);
    await button(page).tap();
    await page.locator('[data-action="back-to-day"]').tap();
    await page.waitForURL('**/en/our-day/');
    await expect.poll(() => speaks(page)).toBe(false);
  });

  test('at night nothing is said by itself, and without sound nothing is offered', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-11-25T23:10:00Z') });
    await giveVoices(page, [LOCAL_ENGLISH]);
    await ways(page, true);
    await opened(page, CALL);
    await expect(button(page)).toBeVisible();
    expect(await heard(page)).toEqual([]);
    await ways(page, false);
    await opened(page, CALL);
    await expect(page.locator('main[data-call="it-hurts"]')).toBeVisible();
    await page.clock.runFor(2000);
    await expect(button(page)).toHaveCount(0);
    expect(await heard(page)).toEqual([]);
  });

  test('a page of the story is read at a press, and a turned page is silent', async ({ page }) => {
    await giveVoices(page, [LOCAL_ENGLISH]);
    await ways(page, true);
    await opened(page, '/en/our-day/story/');
    await button(page).tap();
    await expect.poll(() => heard(page)).toEqual([{ text: english['day:story.1']!, lang: 'en-GB' }]);
    await page.locator('[data-action="next"]').tap();
    await expect.poll(() => speaks(page)).toBe(false);
    await button(page).tap();
    await expect.poll(async () => (await heard(page)).at(-1)?.text).toBe(english['day:story.2']!);
  });
});
