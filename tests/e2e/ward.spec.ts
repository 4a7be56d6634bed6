/** A ward writes its own file and builds: its words, its times and its raises stand on the pages, in its languages alone. */
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';
import { SIGNS } from '#content/signs.ts';
import { decodeBedCard } from '#domain/bed-card/code.ts';
import { buildForWard, chunksIn, versionOf } from '../helpers/builds.ts';
import { built as underTest, keptNotes, resultAddress, scriptRuns, words } from '../helpers/pages.ts';

const english = words('en');
const MORNING = new Date('2026-01-15T08:40:00Z');
const MINUTE = 60_000;
/** Nothing as in our own file. */
const SETTINGS = {
  languages: ['pl', 'en'],
  wardLanguage: 'pl',
  hideUnreviewed: false,
  raise: { 'itchy-under': 'ring-now' },
  secondStep: 'second-button',
  secondStepMinutes: 3,
  tellAgainMinutes: 7,
  visitAgainMinutes: 61,
  medicineWaitMinutes: 47,
  bell: {
    en: { where: 'A red button on a white cable at the head of the bed.', say: 'Say the name of the bed.' },
    pl: { where: 'Czerwony przycisk na białym kablu.' },
  },
  day: {
    wake: '06:30',
    lightsOut: '20:00',
    quiet: [
      ['12:30', '13:15'],
      ['15:00', '15:20'],
    ],
    events: [
      ['breakfast', '07:10', 20],
      ['lunch', '11:45', 25],
      ['supper', '17:05', 30],
    ],
  },
};

let folder: string;
let built: string;
let server: Awaited<ReturnType<typeof serve>>;
test.describe.configure({ mode: 'serial' });
test.beforeAll(async () => {
  test.setTimeout(240_000);
  folder = await mkdtemp(path.join(tmpdir(), 'bare-toes-ward-'));
  built = await buildForWard(folder, SETTINGS);
  server = await serve(() => built, 0, false);
});
test.afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true, force: true });
});
const open = async (page: Page, address: string) => {
  await page.goto(`http://127.0.0.1:${server.port}${address}`);
  await scriptRuns(page);
};

test('a second build differs in number and in the names of what it changed', async () => {
  expect(await versionOf(built)).not.toBe(await versionOf(underTest));
  const before = await chunksIn(underTest);
  expect([...(await chunksIn(built))].filter((chunk) => !before.has(chunk)).length).toBeGreaterThan(3);
});

test('its languages in its order, and its words about the button beside ours', async ({ page }) => {
  await open(page, '/');
  await expect(page.locator('a.language')).toHaveCount(2);
  expect(
    await page.locator('li[lang]').evaluateAll((all) => all.map((one) => one.getAttribute('lang'))),
  ).toEqual(SETTINGS.languages);
  for (const away of ['es', 'ar']) expect(existsSync(path.join(built, away)), away).toBe(false);
  for (const language of ['en', 'pl'] as const) {
    await open(page, `/${language}/bell/`);
    const own: { where: string; say?: string } = SETTINGS.bell[language];
    await expect(page.locator('[data-bell="where"]')).toHaveText(own.where);
    if (own.say) await expect(page.locator('[data-bell="say"]')).toHaveText(own.say);
    else await expect(page.locator('[data-bell="say"]')).toHaveCount(0);
    // ours stay
    for (const key of ['title', 'text', 'second', 'where'])
      await expect(page.locator('main')).toContainText(words(language)[`steps:bell.${key}`]!);
  }
  // an English family says it in the ward's Polish
  await open(page, '/en/bell/');
  await expect(page.locator('[data-say="ward"]')).toHaveText(words('pl')['say:worried']!);
});

test('a set-up begins with its second step and its minutes, and two answers make the code', async ({
  page,
}) => {
  await open(page, '/en/bed-card/');
  await page.locator('[data-fold="rest"] > summary').tap();
  for (const [name, count] of [
    ['secondStepMinutes', SETTINGS.secondStepMinutes],
    ['medicineWaitMinutes', SETTINGS.medicineWaitMinutes],
  ] as const)
    await expect(page.locator(`select[name="${name}"] option:checked`)).toHaveText(
      english['card:minutes_other']!.replace('{{count}}', String(count)),
    );
  for (const [field, value] of [
    ['side', 'right'],
    ['bell', 'button'],
  ])
    await page
      .locator(`[data-field="${field}"] label`, { has: page.locator(`input[value="${value}"]`) })
      .tap();
  await page.locator('[data-action="make-code"]').tap();
  const read = decodeBedCard((await page.locator('[data-code]').getAttribute('data-code'))!);
  const { secondStep, secondStepMinutes, medicineWaitMinutes, wardLanguage } = SETTINGS;
  expect(read).toMatchObject({
    ok: true,
    card: { side: 'right', secondStep, secondStepMinutes, medicineWaitMinutes, wardLanguage },
  });
  await open(page, '/en/why-and-how/care/');
  await expect(page.locator('[data-care="skin-day"]')).toContainText(String(medicineWaitMinutes));
});

test('a sign it raised rings, with script and without; the second step comes after its minutes', async ({
  page,
  browser,
}) => {
  expect(SIGNS['itchy-under'].urgency).toBe('next-visit');
  const plain = await browser.newContext({ javaScriptEnabled: false });
  const still = await plain.newPage();
  await still.goto(`http://127.0.0.1:${server.port}${resultAddress('en', 'itchy-under')}`);
  await expect(still.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await plain.close();

  await page.clock.install({ time: MORNING });
  await open(page, resultAddress('en', 'itchy-under'));
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-pressed]')).toBeVisible();
  const step = page.locator('[data-second-step]');
  await page.clock.fastForward(2 * MINUTE);
  await expect(step).toHaveAttribute('data-second-step', 'waiting');
  await page.clock.fastForward(MINUTE + 15_000);
  await expect(step).toHaveAttribute('data-second-step', 'due');
  await expect(step).toContainText(english['steps:secondStep.second-button']!);
});

test('what was told and not looked at rings after its minutes', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await open(page, resultAddress('en', 'band-wet'));
  await expect(page.locator('[data-written]')).toBeVisible();
  await page.locator('[data-action="told"]').tap();
  await expect.poll(async () => (await keptNotes(page)).length).toBeGreaterThan(1);
  await page.clock.fastForward(SETTINGS.tellAgainMinutes * MINUTE - 90_000);
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'tell-nurse');
  await page.clock.fastForward(2 * MINUTE);
  await expect(page.locator('article[data-urgency]')).toHaveAttribute('data-urgency', 'ring-now');
});

test('a bed begins with its day', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await open(page, '/en/things-to-do/bed/');
  await page.locator('[data-action="plan"]').tap();
  await page.waitForURL('**/things-to-do/plan/');
  const kept = await page.evaluate(
    () =>
      (
        JSON.parse(localStorage.getItem('bare-toes:play')!) as {
          beds: { sketch: { wake: number; quiet: unknown; events: unknown } }[];
        }
      ).beds[0]!.sketch,
  );
  const at = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
  expect(kept).toMatchObject({
    wake: at('06:30'),
    quiet: SETTINGS.day.quiet.map(([from, until]) => ({ from: at(from!), until: at(until!) })),
    events: SETTINGS.day.events.map(([id, from, minutes]) => ({ id, from: at(from as string), minutes })),
  });
});
