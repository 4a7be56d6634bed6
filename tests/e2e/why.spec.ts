/** Why & how: found by day or by words, told to one reader, heard, tapped, tilted and printed. */
import { expect, test, type Page } from '@playwright/test';
import { CARE_PICTURES } from '#content/care-pictures.ts';
import { FIRST_TILES, READERS, TOPIC_IDS, type TopicId } from '#content/topics.ts';
import { WARD } from '#content/ward.ts';
import { chosen, keptNotes, scriptRuns, words } from '../helpers/pages.ts';

const english = words('en');
const page1 = '/en/why-and-how/';
const paperOf = async (page: Page) => {
  const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(paper) ?? [];
  return {
    sheets: [...paper.matchAll(/\/Type\s*\/Page(?!s)/g)].length,
    // points of 1/72 inch; ISO 216: A4 is 210 by 297 mm, A5 148 by 210
    millimetres: [width, height].map((points) => Math.round((Number(points) * 25.4) / 72)),
  };
};

test('five tiles for the first day, all thirty-three topics, and a question in plain words finds one', async ({
  page,
}) => {
  await page.goto(page1);
  await scriptRuns(page);
  await expect(page.locator('[data-topic]')).toHaveCount(TOPIC_IDS.length);
  await expect(page.locator('.large [data-topic]')).toHaveCount(FIRST_TILES.length);
  await page.locator('[data-action="find"]').fill('why no sock?');
  await expect(page.locator('[data-found]')).toBeVisible();
  await page.locator('[data-topic="toes-bare"]').tap();
  await page.waitForURL('**/en/why-and-how/toes-bare/');
  await expect(page.locator('h1')).toHaveText(english['why:topic.toes-bare.title']!);
});

test('a grown-up reads the grown-up’s text; the cautions stay whoever reads', async ({ page }) => {
  await chosen(page, { role: 'grown-up', locale: 'en', age: 5 });
  await page.goto(`${page1}why-pull/`);
  await scriptRuns(page);
  const told = page.locator('[data-reader]');
  await expect(told).toHaveCount(1);
  await expect(told).toHaveAttribute('data-reader', 'grownUp');
  for (const reader of READERS) {
    await page.locator('select[name="reader"]').selectOption({ label: english[`why:reader.${reader}`]! });
    await expect(told).toHaveAttribute('data-reader', reader);
    await expect(told).toContainText(english[`topics-start:why-pull.${reader}.1`]!);
    await expect(page.locator('[data-cautions]')).toContainText(english['topics-start:why-pull.cautions.1']!);
  }
  // the list, another topic and another language are read with the same child
  await page.locator('select[name="reader"]').selectOption({ label: english['why:reader.from6']! });
  await page.locator('main a[href$="/why-and-how/"]').tap();
  await page.locator('[data-topic="soreness"]').tap();
  await page.waitForURL('**/en/why-and-how/soreness/');
  await expect(told).toHaveAttribute('data-reader', 'from6');
  await page.locator('footer a[lang="pl"]').tap();
  await page.waitForURL('**/pl/why-and-how/soreness/');
  await expect(told).toHaveCount(1);
  await expect(told).toHaveAttribute('data-reader', 'from6');
  await expect(page.locator('select[name="reader"] option:checked')).toHaveText(
    words('pl')['why:reader.from6']!,
  );
  await page.locator('input[type="checkbox"]').check();
  await expect(told).toBeHidden();
  await expect(page.locator('.topic-picture svg').first()).toBeVisible();
});

test('a nurse pins three and no fourth; they stand first when the page is opened again', async ({ page }) => {
  await page.goto(page1);
  await scriptRuns(page);
  await page.locator('summary', { hasText: english['why:pins.open']! }).tap();
  const boxes = page.locator('input[name="pins"]');
  const chip = (topic: TopicId) => page.locator('label', { has: page.locator(`input[value="${topic}"]`) });
  for (const topic of ['sheets', 'poo', 'school'] as const) await chip(topic).tap();
  await expect(page.getByText(english['why:pins.full']!)).toBeVisible();
  await chip('visitors').tap();
  await expect(boxes.and(page.locator(':checked'))).toHaveCount(3);
  await page.reload();
  const pinned = page.locator('[data-pinned] [data-topic]');
  await expect(pinned).toHaveCount(3);
  expect(await pinned.evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.topic))).toEqual([
    'sheets',
    'poo',
    'school',
  ]);
});

test('what is read is not kept; that a nurse read it with the family is, when they say so', async ({
  page,
}) => {
  await chosen(page, { role: 'grown-up', locale: 'en' });
  await page.goto(`${page1}sheets/`);
  await scriptRuns(page);
  // no store for notes was even made
  expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  await page.locator('[data-action="read-together"]').tap();
  await expect(page.locator('[data-read-together]')).toBeVisible();
  expect(await keptNotes(page)).toMatchObject([{ kind: 'care', what: 'explained' }]);
});

test('a child’s phone opens the text of the child’s age', async ({ page }) => {
  await chosen(page, { role: 'child', locale: 'en', age: 5 });
  await page.goto(`${page1}calling/`);
  await scriptRuns(page);
  await expect(page.locator('[data-reader]')).toHaveAttribute('data-reader', 'from3');
});

test('a part that is tapped tells its job, and that only staff touch it', async ({ page }) => {
  await page.goto(`${page1}my-set-up/`);
  await scriptRuns(page);
  await page.locator('[data-part-name="load"]').first().tap();
  const told = page.locator('[data-part-told]');
  await expect(told).toHaveAttribute('data-part-told', 'load');
  await expect(told).toContainText(english['why:part.load']!);
  await expect(told).toContainText(english['why:part.onlyStaff']!);
  await page.getByRole('button', { name: english['why:partName.wheel']! }).tap();
  await expect(told).toHaveAttribute('data-part-told', 'wheel');
});

test('the hill: steeper slides to the head, heavier to the wheel; only staff set the real bed', async ({
  page,
}) => {
  await page.goto(`${page1}hill/`);
  await scriptRuns(page);
  await expect(page.locator('main')).toContainText(english['why:hill.onlyStaff']!);
  const slides = page.locator('[data-slides]');
  await page.locator('[data-slider="friction"]').fill('0');
  await page.locator('[data-slider="rise"]').fill('60');
  await page.locator('[data-slider="bag"]').fill('0');
  await expect(slides).toHaveAttribute('data-slides', 'head');
  await page.locator('[data-slider="bag"]').fill('10');
  await page.locator('[data-slider="rise"]').fill('0');
  await expect(slides).toHaveAttribute('data-slides', 'foot');
  await page.locator('[data-slider="friction"]').fill('1');
  await expect(slides).toHaveAttribute('data-slides', 'stays');
});

test('the bag of the hill hangs free between wheel and floor, before and after it is let go', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${page1}hill/`);
  await scriptRuns(page);
  await page.locator('[data-slider="friction"]').fill('0');
  const box = async (part: string) => (await page.locator(`svg[role="img"] .${part}`).boundingBox())!;
  for (const rise of ['0', '60'])
    for (const bag of ['0.5', '10'])
      for (const body of ['10', '60']) {
        await page.locator('[data-slider="rise"]').fill(rise);
        await page.locator('[data-slider="bag"]').fill(bag);
        await page.locator('[data-slider="body"]').fill(body);
        for (const action of ['again', 'let-go']) {
          await page.locator(`[data-action="${action}"]`).tap();
          const [wheel, hangs, floor] = [await box('wheel'), await box('bag'), await box('floor')];
          expect([rise, bag, body, hangs.y > wheel.y + wheel.height - 1]).toEqual([rise, bag, body, true]);
          expect([rise, bag, body, hangs.y + hangs.height < floor.y + 1]).toEqual([rise, bag, body, true]);
          expect(wheel.y).toBeGreaterThan((await page.locator('svg[role="img"]').boundingBox())!.y);
        }
      }
});

test('on paper: one A4 for each chosen topic in two languages, the care cards one A5 each', async ({
  page,
}) => {
  await page.goto(`${page1}paper/`);
  await scriptRuns(page);
  await page.locator('input[name="languages"][value="two"]').check();
  await expect(
    page.locator('[data-sheet]').first().locator('[lang]:not(.only-print, [data-sheet-draft])'),
  ).toHaveCount(4);
  await expect(page.locator('.topic-picture svg').first()).toBeVisible();
  const topics = await paperOf(page);
  expect(topics.millimetres).toEqual([210, 297]);
  expect(topics.sheets).toBe(FIRST_TILES.length);
  // Source: clear print for adults is 12 points or more (RNIB, Clear Print, from memory); each topic is still one sheet
  await page.locator('input[name="languages"][value="one"]').check();
  await page.locator('details > summary').first().click();
  for (const topic of await page.locator('input[name="topics"]').all()) await topic.check();
  await expect(page.locator('[data-sheet]')).toHaveCount(TOPIC_IDS.length);
  await expect(page.locator('[data-sheet] .topic-picture svg').last()).toBeVisible();
  expect((await paperOf(page)).sheets).toBe(TOPIC_IDS.length);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('[data-sheet] .columns p').last()).toHaveCSS('font-size', `${(12 * 96) / 72}px`);
  await page.emulateMedia({ media: null });

  await page.goto(`${page1}care/`);
  await scriptRuns(page);
  // an English family on an English ward: one language, until a second is asked for
  const told = page.locator('[data-care]').first().locator('[lang]:not(.only-print, [data-sheet-draft])');
  await expect(told).toHaveCount(1);
  await page.locator('select[name="second"]').selectOption({ label: 'Español' });
  await expect(told).toHaveCount(2);
  const cards = await paperOf(page);
  expect(cards.millimetres).toEqual([148, 210]);
  // four for the hour of a care, and one to take home
  expect(cards.sheets).toBe(5);
  await expect(page.locator('[data-care="skin-day"]')).toContainText(`${WARD.medicineWaitMinutes}`);

  // each card goes its own way: each says, in both languages, that nobody has checked it; the page's own line is left out
  await page.emulateMedia({ media: 'print' });
  for (const card of await page.locator('[data-care]').all())
    await expect(card.locator('[data-sheet-draft]:visible')).toHaveText([
      english['common:review.draft']!,
      words('es')['common:review.draft']!,
    ]);
  await expect(page.locator('.ribbon')).toBeHidden();
  await page.emulateMedia({ media: null });
  await expect(page.locator('[data-sheet-draft]:visible')).toHaveCount(0);

  // the steps with their pictures: an A4 for the card that is looked at
  await page.locator('[data-care="putting-on"] [data-show-steps]').click();
  await expect(page.locator('.care-picture[data-drawn]')).toHaveCount(
    CARE_PICTURES['putting-on'].family.length + CARE_PICTURES['putting-on'].staff.length,
  );
  const steps = await paperOf(page);
  expect([...steps.millimetres, steps.sheets]).toEqual([210, 297, 1]);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('a topic is told to every reader, one under another', async ({ page }) => {
    await page.goto(`${page1}soreness/`);
    await expect(page.locator('[data-reader]')).toHaveCount(READERS.length);
    await expect(page.locator('[data-reader="grownUp"]')).toContainText(
      english['topics-start:soreness.grownUp.1']!,
    );
    await page.goto(`${page1}care/steps/`);
    await expect(page.locator('[data-care-steps="toilet"] [data-step]').last()).toHaveText(
      english['care:toilet.staff.8']!,
    );
  });
});
