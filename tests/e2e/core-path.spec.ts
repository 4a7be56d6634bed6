import { expect, test, type Page } from '@playwright/test';
import { PANEL_PARTS, PART_IDS, SPOT_PARTS } from '#content/parts.ts';
import { SIGNS, detailsOf, offersNotSure, signsOfPart } from '#content/signs.ts';
import { ALL_SIGN_IDS, SIGN_IDS, type SignId } from '#domain/signs/ids.ts';
import { forgetNotes } from '../helpers/kept-notes.ts';
import {
  CORE_SIGNS,
  keptNotes,
  mostTaps,
  RESULTS,
  resultAddress,
  scriptRuns,
  Taps,
  tapTo,
  words,
} from '../helpers/pages.ts';

const english = words('en');

async function expectResult(page: Page, sign: SignId, answer: string, urgency: string, say: string) {
  await page.waitForURL(`**${resultAddress('en', sign, answer)}`);
  const result = page.locator('article[data-urgency]');
  await expect(result).toHaveAttribute('data-answer', answer);
  await expect(page.locator('[data-written]')).toBeVisible();
  await expect(result, `${sign} ${answer}`).toHaveAttribute('data-urgency', urgency);
  await expect(result.locator('[data-say="ward"]')).toHaveText(english[say]!);
}

test('forty signs and three worries are reached, twenty-three of them core', () => {
  expect(SIGN_IDS).toHaveLength(40);
  expect(ALL_SIGN_IDS).toHaveLength(43);
  expect(new Set(CORE_SIGNS).size).toBe(23);
  expect(PART_IDS.flatMap((part) => signsOfPart(part)).sort()).toEqual([...ALL_SIGN_IDS].sort());
});

for (const part of PART_IDS) {
  test(`${part}: every sign says what to do within its taps`, async ({ page }) => {
    for (const sign of signsOfPart(part)) {
      await test.step(sign, async () => {
        // a phone without notes, so that the class is the sign's own
        await forgetNotes(page);
        await page.goto('/en/look/');
        const taps = new Taps(page);
        await tapTo(taps, sign);
        expect(taps.count, `${sign}: taps`).toBeLessThanOrEqual(mostTaps(sign));

        const result = page.locator('article[data-urgency]');
        await expect(result).toHaveAttribute('data-sign', sign);
        const urgency = sign === 'cannot-name-it' ? 'not-sure' : SIGNS[sign].urgency;
        await expect(page.locator('[data-written]')).toBeVisible();
        await expect(result).toHaveAttribute('data-urgency', urgency);
        await expect(result.locator('h1')).toHaveText(english[`common:urgency.${urgency}`]!);
        await expect(result.locator('[data-say="ward"]')).toHaveText(english[`say:${sign}`]!);
        await expect(result.locator('[data-do-not]')).toContainText(english[`signs:${sign}.doNot`]!);
        expect(english[`signs:${sign}.doNot`]!.length).toBeGreaterThan(5);
      });
    }
  });
}

test('a tap on the picture of what is usual says nothing; one on the other picture says it is different', async ({
  page,
}) => {
  await forgetNotes(page);
  await page.goto('/en/look/toes/');
  await scriptRuns(page);
  const panel = page.locator('li:has(> * > a[data-sign="toes-cool"])');
  await panel.locator('figure:not(.different)').tap();
  // somebody who taps it again is not sent on either
  await panel.locator('figure:not(.different) figcaption').tap();
  await expect(page).toHaveURL(/look\/toes\/$/);
  expect(await keptNotes(page)).toEqual([]);
  const { x, y, width, height } = (await panel.locator('figure.different').boundingBox())!;
  await page.touchscreen.tap(x + width / 2, y + height / 2);
  await page.waitForURL(`**${resultAddress('en', 'toes-cool')}`);
});

test('each sub-answer has its own class and sentence', async ({ page }) => {
  for (const { sign, answer, urgency } of RESULTS.filter(
    (row) => row.answer !== 'different' && row.answer !== 'not-sure',
  ))
    await test.step(`${sign}: ${answer}`, async () => {
      await forgetNotes(page);
      await page.goto(resultAddress('en', sign));
      await page.locator(`main a[data-sign="${sign}"][data-detail="${answer}"]`).tap();
      await expectResult(page, sign, answer, urgency, `say:details.${sign}/${answer}`);
    });
});

test('a result read on in another language is the same one: nothing is written again, and what was taken back stays so', async ({
  page,
}) => {
  await page.goto(resultAddress('en', 'leg-jumps'));
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.locator('[data-action="take-back"]').tap();
  await expect(page.locator('[data-taken-back]')).toBeVisible();
  await page.locator('footer a[lang="pl"]').tap();
  await page.waitForURL(`**${resultAddress('pl', 'leg-jumps')}`);
  await expect(page.locator('[data-taken-back]')).toBeVisible();
  expect((await keptNotes(page)).map(({ kind }) => kind)).toEqual(['sign', 'strike']);
  // the answers of a full look go with its page: in another language it begins anew
  await page.goto('/en/look/full/2/');
  await scriptRuns(page);
  await page.locator('footer a[lang="es"]').tap();
  await page.waitForURL('**/es/look/full/');
});

test('in each place, not sure leads to a nurse who looks too', async ({ page }) => {
  for (const part of PART_IDS.filter((id) => signsOfPart(id).some(offersNotSure)))
    await test.step(part, async () => {
      // each page of an answer is read as it lies on the server, without-script.spec.ts; here one is tapped
      const sign = signsOfPart(part).find(offersNotSure)!;
      await forgetNotes(page);
      await page.goto(`/en/look/${part}/`);
      await page.locator(`main a[data-sign="${sign}"][data-answer="not-sure"]`).tap();
      await expectResult(page, sign, 'not-sure', 'not-sure', `say:notSure.${part}`);
    });
});

test('"not sure" is offered on every sign a nurse must hear of, and on no other', async ({ page }) => {
  for (const part of PART_IDS.filter((id) => id !== 'worry')) {
    await page.goto(`/en/look/${part}/`);
    for (const sign of signsOfPart(part))
      await expect(page.locator(`main a[data-sign="${sign}"][data-answer="not-sure"]`)).toHaveCount(
        offersNotSure(sign) ? 1 : 0,
      );
    await expect(page.locator('main a[data-sign="cannot-name-it"]')).toHaveCount(1);
  }
});

test('nothing that a finger may press moves when script and notes arrive', async ({ browser }) => {
  const places = (page: Page) =>
    page.evaluate(() => {
      const times = new Map<string, number>();
      return [...document.querySelectorAll<HTMLElement>('main a, main button, main label')]
        .filter((element) => element.checkVisibility({ visibilityProperty: true }))
        .map((element) => {
          const words =
            element.dataset.action ??
            (element instanceof HTMLAnchorElement ? element.href : element.innerText);
          const time = (times.get(words) ?? 0) + 1;
          times.set(words, time);
          // the same answer stands under more than one question
          return {
            what: `${words}, ${time}`,
            y: Math.round(element.getBoundingClientRect().y + scrollY),
          };
        });
    });
  for (const address of [
    ...RESULTS.filter((row) => row.sign === 'toes-swollen' || row.sign === 'toes-colour').map((row) =>
      resultAddress('en', row.sign, row.answer),
    ),
    resultAddress('en', 'no-poo'),
    resultAddress('en', 'breath-hard'),
    '/en/look/toes/',
    '/en/look/full/1/',
  ]) {
    // a phone without notes: what was reported before would rightly raise the class
    const page = await browser.newPage();
    await page.goto(address, { waitUntil: 'domcontentloaded' });
    // what is measured is the page as it is first painted: with its styles
    await page.waitForFunction(() =>
      [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].every((link) => link.sheet),
    );
    const before = await places(page);
    await scriptRuns(page);
    await expect(page.locator('[data-note="writing"]')).toHaveCount(0);
    await page.waitForTimeout(300);
    const after = new Map((await places(page)).map(({ what, y }) => [what, y]));
    for (const { what, y } of before) expect(after.get(what), `${address} ${what.slice(-40)}`).toBe(y);
    expect(before.length, address).toBeGreaterThan(0);
    await page.close();
  }
});

test('a tap on the drawing opens the place that was tapped', async ({ page }) => {
  for (const [spot, part] of Object.entries(SPOT_PARTS).filter(([spot]) => spot !== 'cord')) {
    await page.goto('/en/look/');
    await scriptRuns(page);
    await page.locator(`main svg [data-spot="${spot}"]`).first().tap({ timeout: 5_000 });
    await page.waitForURL(`**/en/look/${part}/`, { timeout: 5_000 });
  }
});

test('the bell bar comes before everything else on every look page', async ({ page }) => {
  const pages = [
    '/en/look/',
    ...PANEL_PARTS.map((part) => `/en/look/${part}/`),
    '/en/look/full/',
    '/en/look/full/1/',
  ];
  for (const address of [
    ...pages,
    ...ALL_SIGN_IDS.filter((sign) => detailsOf(sign).length).map((s) => resultAddress('en', s)),
  ]) {
    await page.goto(address);
    // the first thing that is seen; the skip link is for the keyboard and out of sight
    const first = page.locator('a:not(.skip), button, h1, h2, p, svg').first();
    await expect(first, address).toHaveAttribute('href', /\/en\/bell\/$/);
    await expect(first).toContainText(english['common:bar.worried']!);
    const box = (await first.boundingBox())!;
    expect(box.y, address).toBeLessThan(4);
    expect(box.width, address).toBeGreaterThan(300);
  }
});
