/** Scenes 7, 8, 22 and 23 of the design (1-job.md, section 2): the nurse sets up, the family's phone takes it over. */
import { expect, test, type Browser, type Locator, type Page } from '@playwright/test';
import type { BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';
import { ALPHABET } from '#domain/bed-card/letters.ts';
import { instant } from '#domain/units.ts';
import { WARD } from '#content/ward.ts';
import { cardMade, ofLaterVersion, readFromScreen } from '../helpers/codes.ts';
import { chosen, keptNotes, LANGUAGES, scriptRuns, Taps, words } from '../helpers/pages.ts';

const english = words('en');
const MADE = new Date('2026-01-15T10:05:00Z');
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** Values stand apart from the sentence by invisible characters. */
const seen = (text: string) => text.replace(/[\u2066-\u2069]/g, '');
const plain = async (place: Locator) => seen(await place.innerText());

const chip = (page: Page, field: string, value: string) =>
  page.locator(`[data-field="${field}"] label`, { has: page.locator(`input[value="${value}"]`) });
const fold = (page: Page, name: string) => page.locator(`[data-fold="${name}"] > summary`);
const remark = (page: Page, id: string) => page.locator(`[data-remark="${id}"]`);
const makes = (page: Page) => page.locator('[data-action="make-code"]');
const picture = (page: Page) => page.locator('[data-code]');

/** Opens the device's list and points at a line of it: two taps. */
async function fromList(taps: Taps, field: string, label: string | { index: number }) {
  taps.count += 2;
  await taps.page
    .locator(`select[name="${field}"]`)
    .selectOption(typeof label === 'string' ? { label } : label);
}

async function cardOnScreen(page: Page): Promise<BedCard> {
  const read = decodeBedCard((await picture(page).getAttribute('data-code'))!);
  if (!read.ok) throw new Error(`the code on the screen cannot be read: ${read.reason}`);
  return read.card;
}

const keptCard = (page: Page) =>
  page.evaluate(
    () => JSON.parse(localStorage.getItem('bare-toes:card') ?? 'null') as { code: string } | null,
  );

/** Everything this phone keeps beside its notes, once it has kept the page's language as every page does. */
async function kept(page: Page) {
  const all = () => page.evaluate(() => ({ ...localStorage }) as Record<string, string>);
  await expect.poll(async () => (await all())['bare-toes:family']).toContain('"locale":"en"');
  return all();
}

/** The nurse's page with the two needed answers, and the fold with the checks open. */
async function setUpWith(page: Page, numbers: { age?: number; weight?: string; load?: string }) {
  await page.goto('/en/bed-card/');
  await scriptRuns(page);
  await chip(page, 'side', 'left').tap();
  await chip(page, 'bell', 'button').tap();
  await fold(page, 'check').tap();
  await expect(page.locator('[data-check]')).toBeVisible();
  if (numbers.age)
    await page.locator('select[name="age-again"]').selectOption({
      label: english['card:age.years_other']!.replace('{{count}}', String(numbers.age)),
    });
  if (numbers.weight) await page.locator('input[name="weightKg"]').fill(numbers.weight);
  if (numbers.load) await page.locator('input[name="loadKg"]').fill(numbers.load);
}

/** Another phone, with the clock at a moment of ours. */
async function phone(browser: Browser, at: Date, family: Record<string, unknown> = {}) {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.clock.install({ time: at });
  if (Object.keys(family).length) await chosen(page, family);
  return page;
}

async function takes(page: Page, card: BedCard) {
  await page.goto(`/en/bed-card/take/#${encodeBedCard(card)}`);
  await page.locator('[data-action="take"]').tap();
  await expect(page.locator('[data-action="onward"]')).toBeVisible();
}

test.describe('the nurse sets up', () => {
  test('a phone whose clock is a century ahead: no code, and the page says what and where', async ({
    page,
  }) => {
    await page.clock.setFixedTime(new Date('2126-01-15T10:05:00Z'));
    await page.goto('/en/bed-card/');
    await scriptRuns(page);
    await chip(page, 'side', 'right').tap();
    await chip(page, 'bell', 'cord').tap();
    await makes(page).tap();
    const said = page.locator('[data-not-made]');
    await expect(said).toBeVisible();
    expect(await plain(said)).toMatch(/Nothing was handed over.*bed-card › madeAt: .*, saw \d+$/);
    await expect(picture(page)).toHaveCount(0);
    // another answer is another card: of that one nothing was said yet
    await chip(page, 'bell', 'button').tap();
    await expect(said).toHaveCount(0);
    await page.clock.setFixedTime(MADE);
    await makes(page).tap();
    await expect(picture(page)).toBeVisible();
  });

  test('whoever made the code hears of it first, and whoever changes it begins at the top again', async ({
    page,
  }) => {
    await page.goto('/en/bed-card/');
    await scriptRuns(page);
    await chip(page, 'side', 'right').tap();
    await chip(page, 'bell', 'cord').tap();
    await makes(page).tap();
    await expect(page.locator('h1')).toHaveText(english['card:code.title']!);
    await expect(page.locator('h1')).toBeFocused();
    await page.getByRole('button', { name: english['card:code.change']! }).tap();
    await expect(page.locator('h1')).toHaveText(english['common:areas.bed-card']!);
    await expect(page.locator('h1')).toBeFocused();
    await expect(chip(page, 'side', 'right').locator('input')).toBeChecked();
  });

  test('side and bell alone make a code, in four taps at most', async ({ page }) => {
    await page.goto('/en/bed-card/');
    await scriptRuns(page);
    const taps = new Taps(page);
    await taps.on(chip(page, 'side', 'right'));
    await taps.on(chip(page, 'bell', 'cord'));
    await taps.on(makes(page));
    await expect(picture(page)).toBeVisible();
    expect(taps.count).toBeLessThanOrEqual(4);
    const card = await cardOnScreen(page);
    expect(card).toMatchObject({ side: 'right', bell: 'cord', secondStep: WARD.secondStep });
    expect(card.secondStepMinutes).toBe(WARD.secondStepMinutes);
    expect(card.age).toBeUndefined();
    // what the code holds is read back in words: a wrong leg is seen before it is handed over
    const holds = page.locator('[data-holds]');
    await expect(holds.locator('strong')).toHaveText(english['card:side.right']!);
    for (const key of ['card:bell.cord', 'card:hands.name', 'card:nothingByMouth.name'])
      await expect(holds.getByRole('listitem').filter({ hasText: english[key]! })).toHaveCount(1);
  });

  test('in every language what the code holds is read back in rows without a colon behind a question', async ({
    page,
  }) => {
    for (const language of LANGUAGES) {
      await page.goto(`/${language}/bed-card/`);
      await scriptRuns(page);
      await chip(page, 'side', 'left').tap();
      await chip(page, 'bell', 'button').tap();
      await makes(page).tap();
      const rows = page.locator('[data-holds] li');
      await expect(rows).toHaveCount(4);
      for (const row of await rows.allInnerTexts()) expect(row, language).not.toMatch(/[?؟]\s*:/);
    }
  });

  test('without them there is no code, and the page names what is missing', async ({ page }) => {
    await page.goto('/en/bed-card/');
    await scriptRuns(page);
    const missing = page.locator('[data-missing]');
    await makes(page).tap();
    await expect(missing).toHaveAttribute('data-missing', 'side bell');
    await expect(missing).toContainText(english['card:side.name']!);
    await chip(page, 'bell', 'desk').tap();
    await makes(page).tap();
    await expect(missing).toHaveAttribute('data-missing', 'side');
    await expect(picture(page)).toHaveCount(0);
  });

  test('every answer about the child and the bed, in eighteen taps at most; the ward’s own settings stay', async ({
    page,
  }) => {
    await page.clock.install({ time: MADE });
    await page.goto('/en/bed-card/');
    await scriptRuns(page);
    const taps = new Taps(page);
    await taps.on(chip(page, 'side', 'left'));
    await taps.on(chip(page, 'bell', 'desk'));
    await taps.on(fold(page, 'rest'));
    await fromList(taps, 'age', '6 years');
    await taps.on(chip(page, 'canTell', 'partly'));
    await taps.on(chip(page, 'head', 'propped'));
    await fromList(taps, 'numbingUntil', `${english['card:numbing.until']} 13:00`);
    await fromList(taps, 'nothingByMouthUntil', `${english['card:nothingByMouth.until']} 16:30`);
    await taps.on(chip(page, 'set', 'taped'));
    await taps.on(chip(page, 'atNight', 'nobody'));
    await taps.on(chip(page, 'compare', 'no'));
    await taps.on(chip(page, 'hands', 'left'));
    await taps.on(chip(page, 'drip', 'right'));
    await taps.on(chip(page, 'ownThingsOnly', 'own'));
    await taps.on(makes(page));
    await expect(picture(page)).toBeVisible();
    expect(taps.count).toBeLessThanOrEqual(18);

    const at = (time: string) => instant(Date.parse(`2026-01-15T${time}:00Z`) / MINUTE);
    expect(await cardOnScreen(page)).toEqual({
      side: 'left',
      bell: 'desk',
      secondStep: WARD.secondStep,
      secondStepMinutes: WARD.secondStepMinutes,
      age: { years: 6 },
      head: 'propped',
      canTell: 'partly',
      numbingUntil: at('13:00'),
      set: 'taped',
      atNight: 'nobody',
      compare: false,
      noWeeHours: 8,
      medicineWaitMinutes: WARD.medicineWaitMinutes,
      nothingByMouthUntil: at('16:30'),
      ownThingsOnly: true,
      hands: 'left',
      drip: 'right',
      wardLanguage: WARD.wardLanguage,
      madeAt: at('10:00'),
      off: 0,
    });
  });

  test('scene 7: 57 at eight years with 2.6: one tap takes 25.9, both numbers stand there in words', async ({
    page,
  }) => {
    await setUpWith(page, { age: 8, weight: '57', load: '2.6' });
    await makes(page).tap();
    await expect(page.locator('[data-missing]')).toHaveAttribute('data-missing', 'check');
    await expect(picture(page)).toHaveCount(0);

    // the offer stands before every question that it answers
    await expect(page.locator('[data-remark]').first()).toHaveAttribute('data-remark', 'pounds');
    const offer = await plain(remark(page, 'pounds'));
    expect(offer).toContain('57 lb');
    expect(offer).toContain('25.9 kg');
    await page.locator('[data-take]').tap();
    await expect(page.locator('input[name="weightKg"]')).toHaveValue('25.9');
    // 2.6 of 25.9 is a tenth, and 25.9 lies among the weights of children of eight
    await expect(remark(page, 'none')).toContainText(english['card:check.nothing']!);
    expect(await plain(page.locator('[data-in-words]'))).toContain(
      'Body weight: 25.9 kilograms. Hanging weight: 2.6 kilograms.',
    );
    await makes(page).tap();
    await expect(picture(page)).toBeVisible();
    expect((await cardOnScreen(page)).age).toEqual({ years: 8 });
    // neither number is in what the page shows now, nor kept anywhere on this device
    const left = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
    for (const number of ['25.9', '2.6', '57']) {
      expect(await plain(page.locator('main'))).not.toContain(number);
      expect(left).not.toContain(number);
    }
  });

  for (const [weight, question] of [
    ['40', 'card:check.near40'],
    ['40.0', 'card:check.near40'],
    ['39.8', 'card:check.near40'],
    ['45', 'card:check.strongEnd'],
  ] as const)
    test(`at ${weight} kg the code waits until somebody has answered for the foot end`, async ({ page }) => {
      await setUpWith(page, { age: 12, weight, load: '4' });
      await expect(remark(page, 'strong-end')).toContainText(english[question]!);
      await makes(page).tap();
      await expect(page.locator('[data-missing]')).toHaveAttribute('data-missing', 'check');
      // "checked" is no answer here
      await expect(remark(page, 'strong-end').locator('[data-checked]')).toHaveCount(0);
      await remark(page, 'strong-end')
        .getByRole('button', {
          name: english[weight === '39.8' ? 'card:check.strongAgreed' : 'card:check.strongFitted']!,
        })
        .tap();
      await makes(page).tap();
      await expect(picture(page)).toBeVisible();
    });

  test('39.5 kg asks nothing about the foot end, a strong end at 45 kg neither', async ({ page }) => {
    await setUpWith(page, { age: 12, weight: '39.5', load: '4' });
    await expect(page.locator('[data-in-words]')).toBeVisible();
    await expect(remark(page, 'strong-end')).toHaveCount(0);
    await page.locator('input[name="weightKg"]').fill('45');
    await expect(remark(page, 'strong-end')).toHaveCount(1);
    await chip(page, 'bedEnd', 'strong').tap();
    await expect(remark(page, 'strong-end')).toHaveCount(0);
  });

  test('an answer given for one number does not hold for another', async ({ page }) => {
    await setUpWith(page, { age: 12, weight: '41', load: '4.1' });
    await remark(page, 'strong-end').getByRole('button').first().tap();
    await page.locator('input[name="weightKg"]').fill('42');
    await makes(page).tap();
    await expect(page.locator('[data-missing]')).toHaveAttribute('data-missing', 'check');
  });

  test('a weight few children have is to be typed again, the same; another one is not taken', async ({
    page,
  }) => {
    // 16 kg at eight years: below every weight of the table, and no slip explains it
    await setUpWith(page, { age: 8, weight: '16', load: '1.6' });
    await expect(remark(page, 'unusual-weight')).toHaveAttribute('data-level', 'retype');
    await page.locator('[data-checked]').tap();
    await makes(page).tap();
    await expect(page.locator('[data-missing]')).toHaveAttribute('data-missing', 'check');
    await page.locator('input[name="again-weightKg"]').fill('15');
    await page.locator('[data-checked]').tap();
    await makes(page).tap();
    await expect(picture(page)).toHaveCount(0);
    await page.locator('input[name="again-weightKg"]').fill('16');
    await page.locator('[data-checked]').tap();
    await makes(page).tap();
    await expect(picture(page)).toBeVisible();
  });

  test('numbers are taken as people write them; words are not, and hold the code back', async ({ page }) => {
    await setUpWith(page, { age: 8, load: '2.6' });
    const weight = page.locator('input[name="weightKg"]');
    for (const typed of ['25,9', '25.9', '٢٥٫٩', '٢٥,٩', '۲۵٫۹', ' 25.9 ']) {
      await weight.fill(typed);
      await expect(page.locator('[data-in-words]'), typed).toBeVisible();
      expect(await plain(page.locator('[data-in-words]')), typed).toContain('25.9 kilograms');
      await expect(remark(page, 'not-a-number')).toHaveCount(0);
    }
    for (const typed of ['about 26', '25.9 kg', '2 5', '1,234.5', '-26', '1e2', '<b>26</b>', '０x1A']) {
      await weight.fill(typed);
      expect(await plain(remark(page, 'not-a-number')), typed).toContain(`“${typed}”`);
      await makes(page).tap();
      await expect(page.locator('[data-missing]')).toHaveAttribute('data-missing', 'check');
    }
    await weight.fill('');
    await makes(page).tap();
    await expect(picture(page)).toBeVisible();
  });

  for (const light of ['day', 'night'] as const)
    test(`by ${light}, a camera reads the same link that the page holds`, async ({ page, context }) => {
      await chosen(page, { light });
      await page.goto('/en/bed-card/');
      await scriptRuns(page);
      await expect(page.locator('html')).toHaveAttribute('data-light', light);
      await chip(page, 'side', 'left').tap();
      await chip(page, 'bell', 'button').tap();
      await makes(page).tap();
      const link = await picture(page).getAttribute('data-link');
      expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#[0-9A-Z-]{29,39}$/);
      expect(await readFromScreen(context, picture(page).locator('svg'))).toBe(link);
      expect((await plain(page.locator('[data-letters]'))).split(/\s+/).join('-')).toBe(
        await picture(page).getAttribute('data-code'),
      );
      expect(link!.length, 'sixty bytes at most, on an address of the length of a ward’s').toBeLessThan(70);
    });
});

test.describe('the family’s phone takes it over', () => {
  for (const [name, family] of [
    ['a new phone chooses its language first', {}],
    ['a phone that knows its language goes straight there', { locale: 'es', role: 'grown-up' }],
  ] as const)
    test(`scene 8: ${name}; then it shows that leg`, async ({ browser, baseURL }) => {
      const link = `${baseURL}/#${encodeBedCard(cardMade(MADE, { side: 'right' }))}`;
      const page = await phone(browser, MADE, family);
      const spanish = words('es');
      await page.goto(link);
      const taps = new Taps(page);
      if (!('locale' in family)) await taps.on('li[lang="es"] a');
      await page.waitForURL('**/es/bed-card/take/');
      await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
      await expect(page.locator('main')).toContainText(spanish['card:mine.right']!);
      await expect(page.locator('main .scene-holder')).toHaveAttribute('data-drawn-side', 'right');
      // nothing is taken by looking
      expect(await keptCard(page)).toBeNull();
      await taps.on('[data-action="take"]');
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(spanish['card:take.taken']!);
      await taps.on('[data-action="onward"]');
      await page.waitForURL('**/es/look/');
      expect(taps.count).toBeLessThanOrEqual(4);
      await expect(page.locator('main .scene-holder').first()).toHaveAttribute('data-drawn-side', 'right');
      await page.context().close();
    });

  for (const side of ['left', 'right'] as const)
    test(`from then on the looks draw the ${side} leg and the sentence says ${side}`, async ({ browser }) => {
      const other = side === 'left' ? 'right' : 'left';
      const page = await phone(browser, MADE, { side: other });
      await takes(page, cardMade(MADE, { side }));
      for (const open of ['/en/look/', '/en/look/toes/']) {
        await page.goto(open);
        await scriptRuns(page);
        const drawn = page.locator('main .scene-holder[data-drawn-side]').first();
        await expect(drawn, open).toHaveAttribute('data-drawn-side', side);
      }
      await page.goto('/en/look/toes/toes-colour/');
      await expect(page.locator('[data-say="ward"]')).toHaveText(english[`say:toes-colour_${side}`]!);
      await page.context().close();
    });

  test('a language tapped before script has come keeps the card that came in the link', async ({ page }) => {
    const code = encodeBedCard(cardMade(MADE));
    // the page's own script never arrives; only the small file before the first paint does
    await page.route('**/_app/**', (route) => route.abort());
    await page.goto(`/#${code}`);
    await page.locator('a.language[href$="/pl/"]').tap();
    await page.waitForURL(`**/pl/bed-card/take/#${code}`);
    // the page left behind does not hold it any more
    await page.goBack();
    expect(new URL(page.url()).hash).toBe('');
  });

  for (const [name, family] of [
    ['a new phone', {}],
    ['a phone that knows its language', { locale: 'en', role: 'grown-up' }],
  ] as const)
    test(`${name}: once read, neither the address nor the way back holds the card`, async ({
      browser,
      baseURL,
    }) => {
      const page = await phone(browser, MADE, family);
      const opened: string[] = [];
      page.on('framenavigated', (frame) => opened.push(frame.url()));
      const code = encodeBedCard(cardMade(MADE, { side: 'right' }));
      const holds = async () =>
        [page.url(), await page.evaluate(() => JSON.stringify([location.href, history.state]))].filter(
          (text) => text.includes(code),
        );
      // a page that was opened before would have kept the language
      if ('locale' in family) await page.goto('/en/bell/');
      await page.goto(`${baseURL}/#${code}`);
      if (!('locale' in family)) await page.locator('li[lang="en"] a').tap();
      await expect(page.locator('[data-action="take"]')).toBeVisible();
      expect(opened.some((url) => url.includes(code))).toBe(true);
      expect(await holds()).toEqual([]);
      await page.locator('[data-action="take"]').tap();
      await page.locator('[data-action="onward"]').tap();
      await page.waitForURL('**/en/look/');
      expect(await holds()).toEqual([]);
      // the chooser, which knows the language by now, leads on at once
      for (const before of ['**/en/bed-card/take/', 'locale' in family ? '**/en/bell/' : '**/en/']) {
        await page.goBack();
        await page.waitForURL(before);
        await scriptRuns(page);
        expect(await holds(), before).toEqual([]);
        await expect(page.locator('[data-action="take"]')).toHaveCount(0);
      }
      // another card's link in the same tab is read, and leaves nothing either
      await page.goto('/en/bed-card/take/');
      await scriptRuns(page);
      await page.evaluate((hash) => (location.hash = hash), code);
      await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
      expect(await holds()).toEqual([]);
      await page.context().close();
    });

  test('scene 2: the second step comes after the card’s minutes, and is the card’s', async ({ browser }) => {
    const page = await phone(browser, MADE);
    await takes(page, cardMade(MADE, { secondStepMinutes: 8, secondStep: 'go-to-desk' }));
    // its code holds quarter hours: what is read back is no minute that anybody saw
    await expect(page.locator('[data-card-side]')).toContainText('Made about');
    expect(WARD.secondStepMinutes).not.toBe(8);
    expect(WARD.secondStep).not.toBe('go-to-desk');
    await page.goto('/en/look/toes/toes-colour/');
    await page.locator('[data-action="bell"]').tap();
    await expect(page.locator('[data-pressed]')).toBeVisible();
    const step = page.locator('[data-second-step]');
    await page.clock.fastForward(6 * MINUTE);
    await expect(step).toHaveAttribute('data-second-step', 'waiting');
    await page.clock.fastForward(2 * MINUTE + 15_000);
    await expect(step).toHaveAttribute('data-second-step', 'due');
    await expect(step).toContainText(english['steps:secondStep.go-to-desk']!);
    await page.context().close();
  });

  for (const [bell, bar] of [
    ['desk', 'called:desk.common.bar.worried'],
    ['other', 'called:other.common.bar.worried'],
  ] as const)
    test(`where the nurse is called in another way (${bell}), no page on the way asks for a button`, async ({
      browser,
    }) => {
      const page = await phone(browser, MADE);
      await takes(page, cardMade(MADE, { bell }));
      const asksForIt = /call button|press (?:again|any time|now)|you press/i;
      const all = ['look/toes/toes-colour', 'bell', 'our-day/call/it-hurts'];
      for (const path of bell === 'desk' ? all : ['bell']) {
        await page.goto(`/en/${path}/`);
        if (path.startsWith('our-day'))
          await expect(page.locator('h1')).toHaveText(english['called:any.day.call.press']!);
        else await expect(page.locator('header a').first()).toContainText(english[bar]!);
        if (path === 'look/toes/toes-colour') await expect(page.locator('[data-written]')).toBeVisible();
        expect(await page.locator('body').innerText(), path).not.toMatch(asksForIt);
      }
      await page.goto('/en/look/danger/breath-hard/');
      await expect(page.locator('[data-second-step="at-once"]')).toContainText(
        english[`called:${bell}.steps.secondStep.atOnce`]!,
      );
      await page.goto('/en/bell/');
      await page.locator('[data-action="bell"]').tap();
      await expect(page.locator('[data-pressed]')).toContainText('Nurse called at');
      // the sheet at the foot of the bed says it, too, in both languages
      await page.goto('/en/bed-card/sheet/');
      await expect(page.locator('.worried')).toContainText(english[`card:bell.${bell}`]!);
      expect(await page.locator('main').innerText()).not.toMatch(asksForIt);
      await page.context().close();
    });

  test('scene 22: while the numbing runs, say that too; it explains nothing away, and ends', async ({
    browser,
  }) => {
    const page = await phone(browser, MADE);
    await takes(page, cardMade(MADE, { numbingUntil: instant(MADE.getTime() / MINUTE + 55) }));
    const result = page.locator('article[data-urgency]');
    const line = page.locator('[data-numbing]');
    await page.goto('/en/look/feeling/toes-numb/');
    await expect(page.locator('[data-written]')).toBeVisible();
    await expect(result).toHaveAttribute('data-urgency', 'ring-now');
    await expect(line).toHaveText(english['steps:result.numbing']!);
    // colour has nothing to do with it
    await page.goto('/en/look/toes/toes-colour/');
    await expect(page.locator('[data-written]')).toBeVisible();
    await expect(line).toHaveCount(0);
    await page.clock.fastForward(HOUR);
    await page.goto('/en/look/feeling/toes-numb/');
    await expect(page.locator('[data-written]')).toBeVisible();
    await expect(result).toHaveAttribute('data-urgency', 'ring-now');
    await expect(line).toHaveCount(0);
    await page.context().close();
  });

  test('what a child of this card cannot tell counts: under three, upset is ring now', async ({
    browser,
  }) => {
    const page = await phone(browser, MADE);
    await takes(page, cardMade(MADE, { age: { years: 2, months: 4 } }));
    await page.goto('/en/look/child/very-upset/');
    await expect(page.locator('[data-written]')).toBeVisible();
    await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
    await page.context().close();
  });

  for (const language of LANGUAGES)
    test(`${language}: the family never sees weight, load, block or why things are not shared`, async ({
      browser,
    }) => {
      const own = words(language);
      const page = await phone(browser, MADE);
      const until = instant(MADE.getTime() / MINUTE + 300);
      await page.goto(
        `/${language}/bed-card/take/#${encodeBedCard(
          cardMade(MADE, { age: { years: 8 }, numbingUntil: until, ownThingsOnly: true, compare: false }),
        )}`,
      );
      for (const stage of ['offered', 'taken', 'opened again']) {
        await expect(page.locator('[data-card-side]')).toBeVisible();
        const text = await plain(page.locator('main'));
        for (const key of ['check.weight', 'check.load', 'numbing.name', 'numbing.until', 'ownThings.own'])
          expect(text, `${stage}: ${key}`).not.toContain(own[`card:${key}`]!);
        expect(text, stage).not.toMatch(/\bkg\b|kilogram|كغ|كيلوغرام|kilogramo/i);
        expect(text).toContain(own['card:mine.load']!);
        if (stage === 'offered') await page.locator('[data-action="take"]').tap();
        if (stage === 'offered') await expect(page.locator('[data-action="onward"]')).toBeVisible();
        if (stage === 'taken') await page.goto(`/${language}/bed-card/take/`);
      }
      await page.context().close();
    });
});

test.describe('letters typed by hand', () => {
  const code = encodeBedCard(cardMade(MADE, { side: 'right', age: { years: 5 } }));
  const typed = async (page: Page, text: string) => {
    await page.locator('input[name="letters"]').fill(text);
    await page.locator('[data-action="read"]').tap();
  };
  const fault = (page: Page) => page.locator('[data-fault]');

  test('in small letters, with spaces, with the digits of Arabic: the same card', async ({ page }) => {
    const arabic = code.replace(/\d/g, (digit) => String.fromCharCode(0x660 + Number(digit)));
    for (const text of [code, code.toLowerCase(), code.replaceAll('-', ' '), arabic]) {
      await page.goto('/en/bed-card/take/');
      await scriptRuns(page);
      await typed(page, text);
      await expect(page.locator('[data-card-side]'), text).toHaveAttribute('data-card-side', 'right');
    }
  });

  test('one wrong letter: the page says in which group, and changes nothing', async ({ page }) => {
    await page.goto('/en/bed-card/take/');
    await scriptRuns(page);
    const groups = code.split('-');
    const before = await kept(page);
    for (const [at, group] of groups.entries()) {
      const wrong = ALPHABET[(ALPHABET.indexOf(group[2]!) + 7) % 32]!;
      const slip = [...groups.slice(0, at), group.slice(0, 2) + wrong + group[3]!, ...groups.slice(at + 1)];
      await typed(page, slip.join('-'));
      await expect(fault(page)).toHaveAttribute('data-fault', 'damaged');
      expect(await plain(fault(page))).toBe(
        english['card:take.damaged']!.replace('{{where}}', String(at + 1)),
      );
      await expect(page.locator('[data-card-side]')).toHaveCount(0);
    }
    expect(await kept(page)).toEqual(before);
    expect(await keptCard(page)).toBeNull();
    // put right, it goes
    await typed(page, code);
    await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
  });

  const UNREADABLE = {
    incomplete: code.slice(0, -7),
    foreign: 'WIFI-CODE-OF-THE-CAFE',
    'too-new': ofLaterVersion(code),
    damaged: code.slice(0, -4) + code.slice(-4).split('').reverse().join(''),
  };
  for (const [reason, text] of Object.entries(UNREADABLE))
    test(`${reason}: its own words, and the card that is here stays`, async ({ browser }) => {
      const page = await phone(browser, MADE);
      await takes(page, cardMade(MADE, { side: 'left' }));
      const before = await kept(page);
      await page.goto('/en/bed-card/take/');
      await scriptRuns(page);
      await typed(page, text);
      await expect(fault(page)).toHaveAttribute('data-fault', reason);
      await expect(fault(page)).toHaveText(
        english[reason === 'damaged' ? 'card:take.damagedAll' : `card:take.${reason}`]!,
      );
      // the same, followed as a link
      await page.goto('/en/bed-card/');
      await page.goto(`/en/bed-card/take/#${text}`);
      await expect(fault(page)).toHaveAttribute('data-fault', reason);
      await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'left');
      expect(await kept(page)).toEqual(before);
      await page.context().close();
    });

  test('a kept card that no longer reads is said, not passed over, and another can be taken', async ({
    page,
  }) => {
    await page.addInitScript(
      (bad) => localStorage.setItem('bare-toes:card', bad),
      JSON.stringify({ code: UNREADABLE.damaged }),
    );
    await page.goto('/en/bed-card/take/');
    await scriptRuns(page);
    await expect(page.locator('[data-fault="kept"]')).toHaveText(english['card:mine.unreadable']!);
    await expect(page.locator('[data-card-side]')).toHaveCount(0);
    expect((await keptCard(page))!.code).toBe(UNREADABLE.damaged);
    await typed(page, code);
    await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
    await page.locator('[data-action="take"]').tap();
    await expect(page.locator('[data-action="onward"]')).toBeVisible();
    expect((await keptCard(page))!.code.replaceAll('-', '')).toBe(code.replaceAll('-', ''));
    expect(await page.evaluate(() => localStorage.getItem('bare-toes:card:unread'))).toBe(
      JSON.stringify([JSON.stringify({ code: UNREADABLE.damaged })]),
    );
  });

  test('a camera that is refused or missing leaves the letters as the way', async ({ page }) => {
    for (const [name, reason] of [
      ['NotAllowedError', 'refused'],
      ['NotFoundError', 'none'],
      ['NotReadableError', 'busy'],
    ] as const) {
      await page.goto('/en/bed-card/take/');
      await scriptRuns(page);
      await page.evaluate((error) => {
        const refuse = () => Promise.reject(new DOMException('no', error));
        const devices = { getUserMedia: refuse, enumerateDevices: () => Promise.resolve([]) };
        Object.defineProperty(navigator, 'mediaDevices', { configurable: true, value: devices });
      }, name);
      await page.locator('[data-action="film"]').tap();
      await expect(page.locator('[data-camera]')).toHaveAttribute('data-camera', reason);
      await expect(page.locator('[data-camera]')).toHaveText(english[`card:take.camera-${reason}`]!);
      await typed(page, code);
      await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
    }
  });
});

test.describe('a card that grows old, and a card of an earlier child', () => {
  test('after 48 hours: still right? The nurse’s yes quiets it for 48 more', async ({ browser }) => {
    const page = await phone(browser, MADE);
    await takes(page, cardMade(MADE));
    const ask = page.locator('[data-still-right]');
    const again = async () => {
      await page.goto('/en/bed-card/take/');
      await expect(page.locator('[data-card-side]')).toBeVisible();
    };
    await page.clock.fastForward(47 * HOUR);
    await again();
    await expect(ask).toHaveCount(0);
    await page.clock.fastForward(HOUR);
    await again();
    await expect(ask).toContainText(english['card:mine.stillRight']!);
    await ask.getByRole('button', { name: english['card:mine.nurseSays']! }).tap();
    await expect(ask).toHaveCount(0);
    await again();
    await expect(ask).toHaveCount(0);
    await page.clock.fastForward(49 * HOUR);
    await again();
    await expect(ask).toHaveCount(1);
    // the card goes on holding meanwhile: an old card is better than none
    await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'left');
    await page.context().close();
  });

  for (const shared of [true, false])
    test(`notes of an earlier card are here, on a ${shared ? 'shared tablet' : 'phone of the family'}: ${
      shared ? 'refused until everything is erased' : 'asked whether it is the same child'
    }`, async ({ browser }) => {
      const page = await phone(browser, MADE, { shared });
      await takes(page, cardMade(MADE, { side: 'left' }));
      await page.goto('/en/look/bandage/band-wet/');
      await expect(page.locator('[data-written]')).toBeVisible();
      const before = await keptCard(page);
      await page.goto(`/en/bed-card/take/#${encodeBedCard(cardMade(MADE, { side: 'right' }))}`);
      const refused = page.locator('[data-refused="earlier"]');
      await expect(refused).toContainText(english['card:take.earlier']!);
      await expect(page.locator('[data-action="take"]')).toHaveCount(0);
      await expect(refused.locator('a[href$="/put-away/"]')).toHaveCount(1);
      const same = page.locator('[data-action="same-child"]');
      await expect(same).toHaveCount(shared ? 0 : 1);
      expect(await keptCard(page)).toEqual(before);
      if (!shared) {
        await same.tap();
        await page.locator('[data-action="take"]').tap();
        await expect(page.locator('[data-card-side]')).toHaveAttribute('data-card-side', 'right');
      }
      expect(await keptNotes(page)).toHaveLength(1);
      await page.context().close();
    });
});
