/** For staff, the round and the paper at the bed end: scenes 9, 15 and 23 of the design (1-job.md, section 2). */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { encodeBedCard } from '#domain/bed-card/code.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import { QUESTIONS } from '#domain/notes/kinds.ts';
import { instant, minutes } from '#domain/units.ts';
import { madeUpNotes } from '#content/made-up.ts';
import { LOOKS } from '#content/signs.ts';
import { STAFF_QUESTIONS } from '#content/staff-questions.ts';
import { cardMade } from '../helpers/codes.ts';
import { leaveNotes, noted } from '../helpers/kept-notes.ts';
import { chosen, directionOf, keptNotes, LANGUAGES, scriptRuns, Taps, words } from '../helpers/pages.ts';

const english = words('en');
const NOW = new Date('2026-01-15T14:20:00Z');
const HOUR = 60;
const seen = (text: string) => text.replace(/[\u2066-\u2069]/g, '');
const recent = (page: Page) => page.locator('[data-staff="recent"] [data-entry]');

/** A phone that was written on, with its clock at our moment. */
async function writtenOn(page: Page, notes: readonly Entry[], family: Record<string, unknown> = {}) {
  await page.clock.install({ time: NOW });
  if (Object.keys(family).length) await chosen(page, family);
  await leaveNotes(page, notes);
}

/** Everything said twice in this place, as language, direction and text. */
const saidIn = (place: Locator) =>
  place.locator('[lang]').evaluateAll((spans) =>
    spans.map((span) => ({
      language: span.getAttribute('lang')!,
      direction: getComputedStyle(span).direction,
      text: (span as HTMLElement).innerText.replace(/[\u2066-\u2069]/g, ''),
    })),
  );

/** Sheets of a print, each with its size in points. Source: ISO 32000, the page tree and its boxes. */
async function sheets(page: Page) {
  const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const boxes = [...paper.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)];
  return {
    count: [...paper.matchAll(/\/Type\s*\/Page\b/g)].length,
    sizes: boxes.map(([, width, height]) => [Math.round(Number(width)), Math.round(Number(height))]),
  };
}
/** 210 × 297 mm in points of 1/72 inch. Source: ISO 216. */
const A4 = [595, 842];

async function expectOneSheet(page: Page, what: string) {
  const { count, sizes } = await sheets(page);
  expect(count, `${what}: sheets`).toBe(1);
  for (const size of sizes)
    for (const side of [0, 1]) expect(Math.abs(size[side]! - A4[side]!), what).toBeLessThanOrEqual(1);
}

/** A busy twelve hours: a note every twenty minutes, of every daily kind, and six signs that nobody has looked at. */
const BUSY: readonly NewEntry[] = [
  { kind: 'drink', amount: 'half', what: 'water' },
  { kind: 'wee', into: 'bottle', amount: 'usual' },
  { kind: 'sore', value: 8, scale: 'numbers', when: 'rest' },
  { kind: 'food', amount: 'some' },
  { kind: 'mood', picture: 'curled-up' },
  { kind: 'medicine-told' },
  { kind: 'care', what: 'sheets' },
  { kind: 'sleep', what: 'nap' },
  { kind: 'poo', what: 'none-today' },
];
const OPEN = ['toes-cool', 'foot-droops', 'band-wet', 'heel-sore', 'no-poo', 'very-upset'];
const busyDay = (numberOf = (at: number) => 11 - at): Entry[] => [
  ...Array.from({ length: 36 }, (_, at) =>
    noted(NOW, 5 + at * 20, BUSY[at % BUSY.length]!, `aaaaaa-${100 - at}`),
  ),
  ...OPEN.map((sign, at) =>
    noted(NOW, 30 + at * 50, { kind: 'sign', sign, answer: 'different' }, `bbbbbb-${numberOf(at)}`),
  ),
  ...QUESTIONS.slice(0, 5).map((ask, at) =>
    noted(NOW, 300 + at, { kind: 'question', ask }, `bbbbbb-${5 - at}`),
  ),
];

test.describe('the staff’s page', () => {
  for (const [family, ward] of [
    ['pl', 'en'],
    ['es', 'ar'],
    ['en', 'pl'],
  ] as const)
    test(`scene 9: a family that reads ${family} on a ward that reads ${ward}: both, the ward’s first`, async ({
      page,
    }) => {
      await writtenOn(
        page,
        [
          noted(NOW, 50, { kind: 'wee', into: 'pan', amount: 'large' }, 'aaaaaa-1'),
          noted(NOW, 40, { kind: 'sign', sign: 'band-wet', answer: 'different' }, 'aaaaaa-2'),
        ],
        { wardLanguage: ward, side: 'left' },
      );
      await page.goto(`/${family}/look/`);
      const taps = new Taps(page);
      await scriptRuns(page);
      await taps.on(`footer a[href$="/${family}/for-staff/"]`);
      await page.waitForURL(`**/${family}/for-staff/`);
      await expect(recent(page)).toHaveCount(2);
      await expect(recent(page).first().locator('[lang]')).toHaveCount(2);
      for (const place of await page.locator('h1, [data-not-record], [data-entry], [data-staff] h2').all()) {
        const twice = await saidIn(place);
        expect(twice.map(({ language }) => language)).toEqual([ward, family]);
        expect(twice.map(({ direction }) => direction)).toEqual([directionOf(ward), directionOf(family)]);
      }
      const wee = await saidIn(recent(page).and(page.locator('[data-entry="wee"]')));
      for (const { language, text } of wee) {
        const own = words(language);
        expect(text).toContain(own['notes:kind.wee']!);
        expect(text).toContain(own['notes:choice.wee.into.pan']!);
        // a later choice goes on in small letters
        expect(text.toLocaleLowerCase(language)).toContain(
          own['notes:choice.wee.amount.large']!.toLocaleLowerCase(language),
        );
      }
      const open = await saidIn(page.locator('[data-open-sign="band-wet"]'));
      for (const language of [ward, family])
        expect(open.filter((said) => said.language === language)[0]!.text).toContain(
          words(language)['signs:band-wet.name']!,
        );
      // a nurse who holds the family's phone reads what can be pressed, and what the marks mean
      for (const place of await page
        .locator('.tools .button, [data-picture] h2, [data-picture] .button, [data-picture] .key li')
        .all())
        expect((await saidIn(place)).map(({ language }) => language)).toEqual([ward, family]);
      // the line of time goes as the ward reads, with an arrow and now at its end
      await expect(page.locator('.no-print > [data-time-runs]')).toHaveAttribute(
        'data-time-runs',
        directionOf(ward) === 'rtl' ? 'left' : 'right',
      );
      await expect(page.locator('.no-print > [data-time-runs] text').last()).toHaveText(
        words(ward)['notes:picture.now']!,
      );
      await taps.on(page.locator(`main a[href$="/for-staff/ask/"]`));
      await expect(page.locator('[data-staff-question]')).toHaveCount(12);
      expect(taps.count).toBeLessThanOrEqual(2);
    });

  test('what is open stands first, the most urgent on top; under it the last twelve hours, newest first', async ({
    page,
  }) => {
    const sign = (name: string): NewEntry => ({ kind: 'sign', sign: name, answer: 'different' });
    await writtenOn(page, [
      noted(NOW, 13 * HOUR, { kind: 'food', amount: 'most' }, 'aaaaaa-1'),
      noted(NOW, 3 * HOUR, sign('toes-cool'), 'aaaaaa-2'),
      noted(NOW, 2 * HOUR, sign('band-wet'), 'aaaaaa-3'),
      noted(NOW, 90, { kind: 'wee', into: 'pan', amount: 'small' }, 'bbbbbb-1'),
      noted(NOW, 60, sign('no-poo'), 'aaaaaa-4'),
      noted(NOW, 20, { kind: 'poo', what: 'soft' }, 'bbbbbb-2'),
    ]);
    await page.goto('/en/for-staff/');
    await expect(recent(page)).toHaveCount(5);
    const parts = page.locator('[data-staff]');
    await expect(parts.first()).toHaveAttribute('data-staff', 'open');
    await expect(parts.last()).toHaveAttribute('data-staff', 'recent');
    expect(
      await page
        .locator('[data-open-sign]')
        .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.openSign)),
    ).toEqual(['toes-cool', 'band-wet', 'no-poo']);
    await expect(page.locator('[data-open-sign="toes-cool"]')).toHaveAttribute('data-urgency', 'ring-now');
    expect(
      await recent(page).evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.entry)),
    ).toEqual(['poo', 'sign', 'wee', 'sign', 'sign']);
    // a nurse looked: nothing is open, and the page does not call that well
    await page.goto('/en/look/toes/toes-cool/');
    await page.locator('[data-action="nurse-looked"]').tap();
    await expect(page.locator('[data-action="nurse-looked"]')).toHaveCount(0);
    await page.goto('/en/for-staff/');
    await expect(page.locator('[data-staff="open"]')).toContainText(english['notes:sum.openNone']!);
    await expect(page.locator('[data-open-sign]')).toHaveCount(0);
  });

  for (const language of LANGUAGES)
    test(`${language}: the heading says that these are no record, before anything else and in both languages`, async ({
      page,
    }) => {
      await writtenOn(page, busyDay(), { wardLanguage: language === 'en' ? 'pl' : 'en' });
      await page.goto(`/${language}/for-staff/`);
      await expect(page.locator('[data-open-sign]')).toHaveCount(OPEN.length);
      const warning = page.locator('[data-not-record]');
      for (const code of [language, language === 'en' ? 'pl' : 'en'])
        await expect(warning.locator(`[lang="${code}"]`)).toHaveText(words(code)['staff:notRecord']!);
      const boxes = await Promise.all(
        [warning, page.locator('[data-open-sign]').first()].map((at) => at.boundingBox()),
      );
      expect(boxes[0]!.y).toBeLessThan(boxes[1]!.y);
      expect(boxes[0]!.y + boxes[0]!.height, 'seen without scrolling').toBeLessThan(740);
    });

  test('in Arabic the page runs from the right, its second language from the left', async ({ page }) => {
    await writtenOn(page, busyDay(), { wardLanguage: 'en' });
    for (const address of [
      '/ar/for-staff/',
      '/ar/for-staff/round/',
      '/ar/for-staff/ask/',
      '/ar/bed-card/sheet/',
    ]) {
      await page.goto(address);
      await expect(page.locator('html')).toHaveAttribute('dir', 'rtl');
      await expect(page.locator('main [lang="en"]:not([data-sheet-draft])').first()).toBeVisible();
      const twice = await saidIn(page.locator('main'));
      expect(new Set(twice.map(({ language }) => language)), address).toEqual(new Set(['ar', 'en']));
      for (const { language, direction } of twice) expect(direction, address).toBe(directionOf(language));
      // all that heads a part begins at the page's own edge
      for (const heading of await page.locator('main :is(h1, h2):visible').all())
        await expect(heading, address).toHaveCSS('direction', 'rtl');
    }
  });

  test('how fast soreness changed stands there in the ward’s language, and full days without poo', async ({
    page,
  }) => {
    await writtenOn(
      page,
      [
        noted(NOW, 41 * HOUR, { kind: 'poo', what: 'soft' }, 'aaaaaa-1'),
        noted(NOW, 4 * HOUR, { kind: 'sore', value: 2, scale: 'numbers', when: 'rest' }, 'aaaaaa-2'),
        noted(NOW, 2 * HOUR, { kind: 'sore', value: 4, scale: 'numbers', when: 'rest' }, 'aaaaaa-3'),
      ],
      { wardLanguage: 'pl' },
    );
    await page.goto('/en/for-staff/');
    const sore = page.locator('[data-figure="sore"]');
    await expect(sore.locator('dt [lang]')).toHaveCount(2);
    const [line, ...more] = await saidIn(sore.locator('dd'));
    expect(more).toEqual([]);
    expect(line).toMatchObject({
      language: 'pl',
      text: 'Gdy leży bez ruchu, najsilniejszy ból: 4 z 10 · Gdy leży bez ruchu: rośnie o 1 z 10 w ciągu godziny',
    });
    await expect(page.locator('[data-staff="figures"]')).toContainText(/24 godziny: .1/);
    // the round says each figure in the same words
    const figures = () =>
      page
        .locator('[data-figure]')
        .evaluateAll((all) =>
          all.map((one) => [
            (one as HTMLElement).dataset.figure!,
            one.textContent.replace(/\s+/g, ' ').trim(),
          ]),
        );
    const onThePage = await figures();
    expect(onThePage.map(([which]) => which)).toEqual(['sore', 'drinks', 'wee', 'poo']);
    await page.goto('/en/for-staff/round/');
    await expect(page.locator('[data-figure="poo"]')).toBeVisible();
    await expect(page.locator('[data-figure="poo"] dt [lang]')).toHaveCount(2);
    const onTheRound = await figures();
    expect(onTheRound.map(([which]) => which)).toEqual(['sleep', 'poo']);
    expect(onTheRound[1]).toEqual(onThePage[3]);
    await page.goto('/en/our-notes/');
    const row = page.locator('[data-sum="sore"]');
    await expect(row.locator('dd').first()).toContainText('up');
    await row.locator('summary').click();
    await expect(row.locator('details')).toContainText('It does not say why. From 2 notes');
    await expect(page.locator('[data-sum="poo"] dd').first()).toContainText('full 24 hours');
  });

  test('the other language is one tap of a list away', async ({ page }) => {
    await writtenOn(page, busyDay());
    await page.goto('/en/for-staff/');
    await expect(recent(page)).toHaveCount(busyDay().length);
    // a family that reads the ward's language: nobody needs another until somebody asks for it
    expect(await page.locator('main [data-staff] .other-language').count()).toBe(0);
    await page.locator('select[name="second"]').selectOption({ label: 'العربية' });
    await expect(recent(page).first().locator('[lang="ar"]')).toHaveCount(1);
    await expect(page.locator('h1 [lang="ar"]')).toHaveText(words('ar')['common:areas.for-staff']!);
    // what was chosen stays on the pages that follow
    for (const area of ['round', 'ask']) {
      await page.locator(`main a[href$="/for-staff/${area}/"]`).tap();
      await page.waitForURL(`**/en/for-staff/${area}/`);
      await expect(page.locator('h1 [lang="ar"]')).toHaveCount(1);
      await expect(page.locator('h1 [lang]')).toHaveCount(2);
      await page.goBack();
      await page.waitForURL('**/en/for-staff/');
      await expect(page.locator('h1 [lang="ar"]')).toHaveText(words('ar')['common:areas.for-staff']!);
    }
    await page.locator('select[name="second"]').selectOption({ label: 'English' });
    await expect(page.locator('main .other-language')).toHaveCount(0);
  });

  test('own words stand there once, in quotes, with their language, and that nobody translated them', async ({
    page,
  }) => {
    await writtenOn(page, [noted(NOW, 30, { kind: 'question', own: 'Czy to boli?', in: 'pl' }, 'aaaaaa-1')], {
      wardLanguage: 'en',
    });
    await page.goto('/pl/for-staff/');
    const questions = page.locator('[data-staff="questions"] li');
    await expect(questions).toHaveCount(1);
    await expect(page.locator('h1 [lang]')).toHaveCount(2);
    const text = seen(await questions.innerText());
    expect(text.match(/Czy to boli\?/g)).toHaveLength(1);
    expect(text).toContain(
      english['notes:question.quotedIn']!.replace('{{text}}', 'Czy to boli?').replace(
        '{{language}}',
        'Polish',
      ),
    );
  });
});

test.describe('asking', () => {
  test('twelve questions, each with answers to point at, and nothing of it is written down', async ({
    page,
  }) => {
    await writtenOn(page, []);
    await chosen(page, { wardLanguage: 'en' });
    await page.goto('/es/for-staff/ask/');
    await scriptRuns(page);
    const questions = Object.keys(STAFF_QUESTIONS) as (keyof typeof STAFF_QUESTIONS)[];
    expect(questions).toHaveLength(12);
    await expect(page.locator('[data-staff-question] [lang="es"]')).toHaveCount(12);
    await expect(page.locator('main')).toContainText(words('es')['staff:notInterpreter']!);
    for (const question of questions) {
      await page.locator(`[data-staff-question="${question}"]`).tap();
      // the other language is loaded when the page is there
      await expect
        .poll(() => saidIn(page.locator('h1')))
        .toEqual(
          ['en', 'es'].map((language) => ({
            language,
            direction: 'ltr',
            text: words(language)[`staff:questions.${question}`]!,
          })),
        );
      const answers = page.locator('[data-staff-answer]');
      if (question === 'sore-now')
        for (const step of ['0', '1', '2', '3'])
          await expect(answers.filter({ hasText: words('es')[`notes:sore.steps.${step}`]! })).not.toHaveCount(
            0,
          );
      await expect(answers).toHaveCount(STAFF_QUESTIONS[question].length);
      if (question === 'where') await expect(page.locator('main svg').first()).toBeVisible();
      else {
        await expect(page.locator('[data-staff-answer][aria-pressed="true"]')).toHaveCount(0);
        await answers.last().tap();
        await expect(answers.last()).toHaveAttribute('aria-pressed', 'true');
      }
      await page.getByRole('button', { name: words('es')['staff:backToQuestions']! }).tap();
      await expect(page.locator('[data-staff-question]')).toHaveCount(12);
    }
    expect(await keptNotes(page)).toEqual([]);
  });
});

test.describe('the round', () => {
  test('scene 15: one tap away; three questions at most, those without an answer first', async ({ page }) => {
    await writtenOn(
      page,
      QUESTIONS.slice(0, 5).map((ask, at) =>
        noted(NOW, 300 - at, { kind: 'question', ask }, `aaaaaa-${at + 1}`),
      ),
    );
    await page.goto('/en/for-staff/');
    await expect(page.locator('[data-staff="questions"] li')).toHaveCount(3);
    await page.locator('main a[href$="/for-staff/round/"]').tap();
    const rows = page.locator('[data-round] > li');
    await expect(rows).toHaveCount(3);
    const texts = async () => (await rows.locator('strong [lang="en"]').allInnerTexts()).map(seen);
    const first = await texts();
    expect(first.every((text) => QUESTIONS.some((ask) => english[`notes:question.${ask}`] === text))).toBe(
      true,
    );
    // answered in a word: it makes room for one that still waits
    await rows.first().locator('summary').tap();
    await rows.first().locator('[data-round-answer="later"]').tap();
    await expect(async () => {
      const now = await texts();
      expect(now).toHaveLength(3);
      expect(now[0]).not.toBe(first[0]);
    }).toPass({ timeout: 5000 });
    const answer = (await keptNotes(page)).find((note) => note.kind === 'answer');
    expect(answer).toMatchObject({
      kind: 'answer',
      what: 'later',
      question: expect.stringMatching(/^aaaaaa-\d$/),
    });
  });

  test('what is open stands on the round as on the first page: boxed, how urgent, when it was seen', async ({
    page,
  }) => {
    await writtenOn(
      page,
      [noted(NOW, 40, { kind: 'sign', sign: 'toes-cool', answer: 'different' }, 'aaaaaa-1')],
      {
        wardLanguage: 'pl',
      },
    );
    const told = async (area: string) => {
      await page.goto(`/en/${area}/`);
      const row = page.locator('[data-open-sign="toes-cool"]');
      await expect(row.locator('[lang]')).toHaveCount(4);
      return seen(await row.innerText());
    };
    const round = await told('for-staff/round');
    await expect(page.locator('[data-raised]')).toHaveCount(0);
    expect(round).toContain(english['common:urgencyShort.ring-now']!);
    expect(round).toContain(`${english['notes:kind.sign']} 13:40`);
    expect(round).toBe(await told('for-staff'));
    await expect(page.locator('[data-open-sign="toes-cool"]')).toHaveCSS('border-top-width', '7px');
    await page.goto('/en/our-notes/');
    const own = page.locator('[data-sum="open"] [data-open-sign="toes-cool"]');
    await expect(own).toHaveCSS('border-top-width', '7px');
    expect(seen(await own.innerText())).toContain(`${english['notes:kind.sign']} 13:40`);
  });

  test('a single note of strong soreness waits; together, what tells to be told straight away may be more urgent', async ({
    page,
  }) => {
    const strong: NewEntry = { kind: 'sore', value: 3, scale: 'steps', when: 'rest' };
    await writtenOn(page, [noted(NOW, 70, strong, 'aaaaaa-1')]);
    for (const area of ['our-notes', 'for-staff', 'for-staff/round']) {
      await page.goto(`/en/${area}/`);
      const row = page.locator('[data-strong-sore]');
      await expect(row).toContainText('How sore: A lot, lying still');
      expect(seen(await row.innerText()), area).toMatch(/13:10 · no nurse noted since/);
      await expect(page.locator('main')).not.toContainText(english['notes:sum.openNone']!);
    }
    await leaveNotes(page, [
      noted(NOW, 70, strong, 'aaaaaa-1'),
      noted(NOW, 65, { kind: 'nurse-looked' }, 'aaaaaa-2'),
      noted(NOW, 9, { kind: 'sign', sign: 'band-moved', answer: 'different' }, 'aaaaaa-3'),
      noted(NOW, 8, { kind: 'sign', sign: 'band-tight', answer: 'different' }, 'aaaaaa-4'),
      noted(NOW, 7, { kind: 'sign', sign: 'toes-swollen', answer: 'not-sure' }, 'aaaaaa-5'),
    ]);
    await page.goto('/en/for-staff/');
    await expect(page.locator('[data-raised="ring-now"]')).toContainText(english['steps:reasons.R5']!);
    await expect(page.locator('[data-strong-sore]')).toHaveCount(0);
    await expect(page.locator('[data-open-sign][data-urgency="ring-now"]')).toHaveCount(0);
    await expect(page.locator('[data-open-sign="toes-swollen"]')).toContainText(
      'Toes: Thicker than before (Not sure)',
    );
  });

  test('with nothing asked yet, one tap on one of the twenty-four asks it', async ({ page }) => {
    await writtenOn(page, [noted(NOW, 10, { kind: 'poo', what: 'soft' }, 'aaaaaa-1')]);
    await page.goto('/en/for-staff/round/');
    await expect(page.locator('[data-ask]')).toHaveCount(QUESTIONS.length);
    await page.locator('[data-ask="walk-when"]').tap();
    await expect(page.locator('[data-round] > li')).toHaveCount(1);
    expect((await keptNotes(page)).at(-1)).toMatchObject({ kind: 'question', ask: 'walk-when' });
  });
});

test('with many signs open one reason stands there, the others behind a tap', async ({ page }) => {
  await writtenOn(page, busyDay());
  await page.goto('/en/look/toes/toes-cool/');
  const more = page.locator('[data-more-reasons]');
  await expect(page.locator('[data-because] > ul > li')).toHaveCount(1);
  await expect(more.locator('li').first()).toBeHidden();
  await more.locator('summary').tap();
  await expect(more.locator('li').first()).toBeVisible();
});

test.describe('on paper', () => {
  const days = {
    'a busy twelve hours': () => busyDay(),
    // a phone that numbered its notes against its clock: the clock went back
    'a busy twelve hours in which a clock went back': () => busyDay((at) => 6 + at),
    'the made-up child': () => madeUpNotes(instant(NOW.getTime() / 60_000), minutes(0)),
    'no note at all': () => [],
  };
  for (const [name, notes] of Object.entries(days))
    test(`${name}: the staff’s page and the round’s page are one A4 sheet each, in every language`, async ({
      page,
    }) => {
      await writtenOn(page, notes());
      for (const language of LANGUAGES)
        for (const area of ['for-staff', 'for-staff/round']) {
          await page.goto(`/${language}/${area}/`);
          await expect(page.locator('main [lang]').first()).toBeAttached();
          await page.locator('select[name="second"]').selectOption(language === 'en' ? '3' : '1');
          await expect(page.locator('h1 [lang]')).toHaveCount(2);
          await expectOneSheet(page, `${language}/${area}`);
        }
    });

  test('a sheet in two languages says in both that nobody has checked it', async ({ page }) => {
    await writtenOn(page, busyDay(), { wardLanguage: 'pl' });
    for (const address of ['for-staff/', 'for-staff/round/', 'bed-card/sheet/', 'things-to-do/paper/']) {
      await page.emulateMedia({ media: null });
      await page.goto(`/en/${address}`);
      await scriptRuns(page);
      await page.emulateMedia({ media: 'print' });
      const drafts = page.locator('[data-sheet-draft]');
      await expect(drafts, address).toHaveCount(2);
      const said = await Promise.all(
        (await drafts.all()).map(async (at) => [await at.getAttribute('lang'), await at.textContent()]),
      );
      expect(new Set(said.map(([language]) => language)).size, address).toBe(2);
      for (const [language, text] of said) expect(text).toBe(words(language!)['common:review.draft']);
      await expect(drafts.first(), address).toBeVisible();
      await expect(page.locator('.ribbon'), address).toBeHidden();
    }
  });

  test('what a sheet has no room for is counted on it, and what is open is never left out', async ({
    page,
  }) => {
    await writtenOn(page, busyDay());
    await page.goto('/en/for-staff/');
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('[data-open-sign]:visible')).toHaveCount(OPEN.length);
    const printed = await recent(page).locator('visible=true').count();
    expect(printed).toBeGreaterThanOrEqual(24);
    // the picture takes the width of the sheet
    const [chart, sheet] = await Promise.all(
      [page.locator('[data-picture] .drawn > svg:visible'), page.locator('main')].map((at) =>
        at.boundingBox(),
      ),
    );
    expect(chart!.width).toBeGreaterThan(0.85 * sheet!.width);
    await expect(page.locator('[data-not-printed]')).toHaveText(`+${busyDay().length - printed}`);
    await page.emulateMedia({ media: 'screen' });
    await expect(recent(page).locator('visible=true')).toHaveCount(busyDay().length);
    await expect(page.locator('[data-not-printed]')).toBeHidden();
  });

  for (const language of LANGUAGES)
    test(`scene 23, ${language}: the sheet for the bed end is one A4: six looks with pictures, the sentence in both languages`, async ({
      page,
    }) => {
      const other = language === 'en' ? 'pl' : 'en';
      const card = cardMade(NOW, {
        side: 'right',
        atNight: 'nobody',
        age: { years: 6 },
        wardLanguage: other,
      });
      await page.goto(`/${language}/bed-card/sheet/#${encodeBedCard(card)}`);
      await expect(page.locator(`h1 [lang="${other}"]`)).toHaveText(words(other)['card:sheet.title']!);
      await expect(page.locator('[data-look]')).toHaveCount(6);
      for (const look of LOOKS) {
        const place = page.locator(`[data-look="${look}"]`);
        await expect(place.locator('svg')).toBeVisible();
        await expect(place.locator('.scene-holder')).toHaveAttribute('data-drawn-side', 'right');
        for (const code of [language, other])
          await expect(place.locator(`h3 [lang="${code}"]`)).toHaveText(
            words(code)[`steps:full.looks.${look}`]!,
          );
      }
      for (const code of [language, other]) {
        const main = page.locator(`main [lang="${code}"]`);
        await expect(main.filter({ hasText: words(code)['say:worried']! })).toHaveCount(1);
        await expect(main.filter({ hasText: words(code)['card:sheet.staffNight']! })).toHaveCount(1);
        await expect(main.filter({ hasText: words(code)['card:sheet.handsOff']! })).toHaveCount(1);
      }
      await expectOneSheet(page, language);
      // the print keeps what the screen has: nothing that matters is hidden on paper
      await page.emulateMedia({ media: 'print' });
      for (const look of LOOKS) await expect(page.locator(`[data-look="${look}"] svg`)).toBeVisible();
      await expect(page.locator('[data-look] h3 [lang]')).toHaveCount(12);
      if (language !== 'en') return;
      // a browser prints the address beside the sheet; opened anew, no other child's card stands in for this one
      expect(page.url()).not.toContain(encodeBedCard(card));
      await page.evaluate(
        (code) => localStorage.setItem('bare-toes:card', JSON.stringify({ code })),
        encodeBedCard({ ...card, side: 'left' }),
      );
      await page.reload();
      await expect(page.locator('[data-fault]')).toHaveText(words('en')['card:sheet.again']!);
      await expect(page.locator('main')).not.toContainText(words('en')['card:sheet.staffNight']!);
      // the kept one is shown to whoever asks for it, and is not taken for the one before
      await page.emulateMedia({ media: 'screen' });
      await page.locator('[data-action="kept-card"]').click();
      await expect(page.locator('[data-fault]')).toHaveCount(0);
      await expect(page.locator('[data-look="toes"] .scene-holder')).toHaveAttribute(
        'data-drawn-side',
        'left',
      );
      await expect(page.locator('main')).toContainText(words('en')['card:sheet.staffNight']!);
      await expect(page.getByRole('button', { name: words('en')['card:sheet.print']! })).toBeFocused();
      // on a phone that keeps none there is only the way to where a card is made
      await page.evaluate(() => localStorage.removeItem('bare-toes:card'));
      await page.reload();
      await expect(page.locator('[data-fault="gone"]')).toBeVisible();
      await expect(page.locator('[data-action="kept-card"]')).toHaveCount(0);
      await expect(page.locator('main a[href$="/bed-card/"]')).toBeVisible();
    });
});
