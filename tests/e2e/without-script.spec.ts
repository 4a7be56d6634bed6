import { expect, test, type Page } from '@playwright/test';
import { PART_IDS } from '#content/parts.ts';
import { SIGNS, signsOfPart } from '#content/signs.ts';
import {
  directionOf,
  LANGUAGES,
  RESULTS,
  resultAddress,
  routesOf,
  scriptRuns,
  words,
} from '../helpers/pages.ts';

/** Only below "ring now" can a page without script say too little; there, and only there, it says so. */
async function expectLowerBound(page: Page, urgency: string, own: Record<string, string>) {
  const line = page.locator('[data-lower-bound]');
  if (urgency === 'ring-now') {
    await expect(line).toHaveCount(0);
  } else {
    await expect(line).toBeVisible();
    await expect(line).toHaveText(own['steps:result.under3']!);
  }
}

for (const language of LANGUAGES) {
  const own = words(language);
  const ward = words('en');
  const direction = directionOf(language);

  test.describe(`${language}, no script`, () => {
    test.use({ javaScriptEnabled: false, locale: language });

    test('each place leads to each sign and its class by plain links', async ({ page }) => {
      for (const part of PART_IDS) {
        await page.goto(`/${language}/look/`);
        if (part === 'more') await page.locator('main a[data-part="child"]').tap();
        if (part !== 'worry') await page.locator(`main a[data-part="${part}"]`).tap();
        for (const sign of signsOfPart(part)) {
          await page.locator(`main a[data-sign="${sign}"][data-answer="different"]`).tap();
          const result = page.locator('article[data-urgency]');
          const urgency = sign === 'cannot-name-it' ? 'not-sure' : SIGNS[sign].urgency;
          await expect(result, sign).toHaveAttribute('data-sign', sign);
          await expect(result, sign).toHaveAttribute('data-urgency', urgency);
          await expect(result.locator('h1')).toHaveText(own[`common:urgency.${urgency}`]!);
          await expect(result.locator('[data-say="ward"]')).toHaveText(ward[`say:${sign}`]!);
          if (language !== 'en')
            await expect(result.locator('[data-say="family"]')).toHaveText(own[`say:${sign}`]!);
          await expect(result.locator('[data-do-not]')).toContainText(own[`signs:${sign}.doNot`]!);
          await expectLowerBound(page, urgency, own);
          await expect(page.locator('html')).toHaveAttribute('lang', language);
          await expect(page.locator('html')).toHaveAttribute('dir', direction);
          await page.goBack();
        }
      }
    });

    test('"not sure" and sub-answers stand at their class', async ({ page }) => {
      for (const { sign, answer, urgency } of RESULTS.filter((row) => row.answer !== 'different')) {
        await page.goto(resultAddress(language, sign, answer));
        await expect(page.locator('article[data-urgency]'), `${sign} ${answer}`).toHaveAttribute(
          'data-urgency',
          urgency,
        );
        await expectLowerBound(page, urgency, own);
      }
    });

    test('the bell page opens from every look page, and from the language chooser in two taps', async ({
      page,
    }) => {
      await page.goto(`/${language}/look/toes/`);
      await page.locator(`a[href$="/${language}/bell/"]`).first().tap();
      await page.waitForURL(`**/${language}/bell/`);
      await expect(page.locator('main h1')).toHaveText(own['steps:bell.title']!);
      await expect(page.locator('main')).toContainText(own['steps:bell.text']!);
      await expect(page.locator('main svg').first()).toBeVisible();

      await page.goto('/');
      await page.locator(`a[lang="${language}"], [lang="${language}"] a`).first().tap();
      await page.waitForURL(`**/${language}/`);
      await page.locator(`a[href$="/${language}/bell/"], a[href="./bell/"], a[href="bell/"]`).first().tap();
      await page.waitForURL(`**/${language}/bell/`);
    });

    test('every page is stamped with its language and reading direction', async ({ page }) => {
      for (const address of routesOf(language)) {
        await page.goto(address);
        await expect(page.locator('html'), address).toHaveAttribute('lang', language);
        await expect(page.locator('html'), address).toHaveAttribute('dir', direction);
        await expect(page.locator('h1').first(), address).toBeVisible();
        // an area of words that a page forgot to load would show its keys
        expect(await page.locator('body').innerText(), address).not.toMatch(
          /\b[a-zA-Z]+[:.][a-zA-Z]+\.[a-zA-Z-]+\b/u,
        );
        // nothing that needs script stands there as if it worked
        await expect(page.locator('button:visible'), address).toHaveCount(0);
      }
    });
  });
}

test('with script the line that it may be more goes, once script knows what else was noted', async ({
  page,
}) => {
  await page.goto(resultAddress('en', 'band-wet'));
  await scriptRuns(page);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'tell-nurse');
  await expect(page.locator('[data-lower-bound]')).not.toBeVisible();
});
