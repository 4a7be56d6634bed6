// What a family does, walked the same way in every engine and language. Each gets phones that keep nothing yet.
import { NotThere } from './page.mjs';

const OFFLINE_MS = 180_000;
const must = (holds, what) => {
  if (!holds) throw new Error(what);
};

/** @typedef {{ phone: () => Promise<ReturnType<import('./page.mjs').pageOf>>, language: string, picture: (page: object, name: string) => Promise<void>, offline: () => Promise<void>, width: number, planner: { address: string, days: { problem: object, plan: string }[] } }} Walk */

/** One address of each kind of page. */
const KINDS = [
  ...['', 'bell/', 'our-notes/', 'pass-it-on/', 'put-away/', 'try-it/', 'sources/'],
  ...[
    'look/',
    'look/toes/',
    'look/toes/toes-colour/',
    'look/full/',
    'look/full/1/',
    'look/full/end/',
    'look/drawing/',
  ],
  ...['bed-card/', 'bed-card/take/', 'bed-card/sheet/', 'for-staff/', 'for-staff/ask/', 'for-staff/round/'],
  ...['', 'bed/', 'ideas/', 'moment/', 'night/', 'plan/', 'paper/', 'code/', 'take/'].map(
    (one) => `things-to-do/${one}`,
  ),
  ...['', 'why-pull/', 'hill/', 'care/', 'care/steps/', 'paper/'].map((one) => `why-and-how/${one}`),
  ...['', 'grown-up/', 'private/', 'story/', 'paper/', 'call/it-hurts/'].map((one) => `our-day/${one}`),
];

async function reports(page, language, part, sign) {
  await page.open(`/${language}/look/`);
  await page.tap(`main a[data-part="${part}"]:not(svg a)`);
  await page.arrives(`/look/${part}/`);
  await page.tap(`main a[data-sign="${sign}"][data-answer="different"]`);
  await page.sees('article[data-urgency="ring-now"]');
  await page.sees('[data-written]');
}

async function writes(page, language, kind) {
  await page.open(`/${language}/our-notes/`);
  await page.tap(`[data-writer] [data-note-kind="${kind}"]`);
  await page.sees(`[data-entry="${kind}"]`);
}

export const JOURNEYS = {
  /** @param {Walk} walk */
  async 'quick look, answer, call button'({ phone, language, picture }) {
    const page = await phone();
    await page.open(`/${language}/look/`);
    await page.sees('main svg [data-spot]');
    await picture(page, 'look');
    await reports(page, language, 'toes', 'toes-colour');
    must(await page.text('[data-say="ward"]'), 'the sentence for the nurse is empty');
    await picture(page, 'answer');
    await page.tap(`a[href$="/${language}/bell/"]`);
    await page.arrives('/bell/');
    await page.sees('main svg');
    await picture(page, 'bell');
    await page.tap('[data-action="bell"]');
    await page.sees('[data-pressed]');
  },

  /** @param {Walk} walk */
  async 'full look'({ phone, language }) {
    const page = await phone();
    await page.open(`/${language}/look/full/`);
    await page.tap('main a.button.main');
    for (let step = 1; step <= 6; step += 1) {
      await page.arrives(`/look/full/${step}/`);
      await page.sees('label[data-answer="like-usual"]');
      const signs = await page.run(() =>
        [...document.querySelectorAll('label[data-answer="like-usual"]')].map((label) => label.dataset.sign),
      );
      for (const sign of signs)
        await page.tap(
          `label[data-sign="${sign}"][data-answer="${sign === 'toes-numb' ? 'different' : 'like-usual'}"]`,
        );
      await page.tap('a[data-next]');
    }
    await page.arrives('/look/full/end/');
    await page.sees('article[data-urgency="ring-now"]');
    await page.sees('[data-written]');
  },

  /** @param {Walk} walk */
  async "set-up by the nurse, opened on the family's phone"({ phone, language }) {
    const nurse = await phone();
    await nurse.open(`/${language}/bed-card/`);
    for (const [field, value] of [
      ['side', 'left'],
      ['bell', 'cord'],
    ])
      await nurse.tap(`[data-field="${field}"] label:has(input[value="${value}"])`);
    await nurse.tap('[data-action="make-code"]');
    await nurse.sees('[data-code] svg path');
    const link = new URL(await nurse.attribute('[data-code]', 'data-link'));
    const family = await phone();
    // the card is in the address; a phone without a language is asked for one first
    await family.open(link.pathname + link.hash);
    await family.tap(`main li[lang="${language}"] a`);
    await family.arrives('/bed-card/take/');
    await family.tap('[data-action="take"]');
    await family.sees('[data-action="onward"]');
    const kept = await family.run(() => JSON.parse(localStorage.getItem('bare-toes:card') ?? '{}').code);
    must(link.hash === `#${kept}`, `the phone keeps ${kept}, the link brought ${link.hash}`);
  },

  /** @param {Walk} walk */
  async 'a note written, seen, told'({ phone, language }) {
    const page = await phone();
    await page.open(`/${language}/our-notes/`);
    await page.tap('[data-writer] [data-note-kind="drink"]');
    for (const word of ['half', 'milk']) await page.tap(`[data-form="drink"] [data-value="${word}"]`);
    await page.sees('[data-entry="drink"]');
    await writes(page, language, 'told');
    await page.open(`/${language}/our-notes/`);
    await page.sees('[data-entry="drink"]');
    await page.sees('[data-entry="told"]');
  },

  /** @param {Walk} walk */
  async 'hand-over to staff'({ phone, language }) {
    const page = await phone();
    await reports(page, language, 'toes', 'toes-cool');
    await page.open(`/${language}/for-staff/`);
    await page.sees('[data-open-sign="toes-cool"][data-urgency="ring-now"]');
    must(await page.text('[data-not-record]'), 'that this is no record is not said');
    if (language !== 'en') {
      await page.sees('h1 [lang="en"]');
      must(await page.count(`h1 [lang="${language}"]`), 'the second language is not there');
    }
  },

  /** @param {Walk} walk */
  async 'notes to the other phone'({ phone, language }) {
    const page = await phone();
    await writes(page, language, 'told');
    await page.open(`/${language}/pass-it-on/`);
    await page.tap('[data-action="show"]:not(:disabled)');
    await page.sees('[data-frame] svg path');
    const shown = await page.attribute('[data-frame]', 'data-frame-text');
    await page.wait(
      'the next code',
      (text) => (document.querySelector('[data-frame]')?.dataset.frameText ?? text) !== text,
      shown,
    );
  },

  /** @param {Walk} walk */
  async 'a play plan'({ phone, language, picture }) {
    const page = await phone();
    await page.open(`/${language}/things-to-do/bed/`);
    await page.tap('[data-action="plan"]');
    await page.arrives('/things-to-do/plan/');
    await page.sees('[data-strip] [data-idea]');
    await picture(page, 'plan');
  },

  /** @param {Walk} walk */
  async 'six days planned as anywhere else'({ phone, language, planner }) {
    const page = await phone();
    await page.open(`/${language}/things-to-do/`);
    for (const { problem, plan } of planner.days) {
      const answer = await page.run(
        (address, asked) =>
          new Promise((resolve, reject) => {
            const worker = new Worker(address, { type: 'module' });
            worker.onerror = () => reject(new Error('the planner did not start'));
            worker.onmessage = ({ data }) => {
              if (data.early) return;
              worker.terminate();
              resolve(JSON.stringify(data.result));
            };
            worker.postMessage({ number: 1, problem: asked, stay: [] });
          }),
        planner.address,
        problem,
      );
      must(answer === plan, `another plan than here: ${answer.slice(0, 200)}, not ${plan.slice(0, 200)}`);
    }
  },

  /** @param {Walk} walk */
  async "a five-year-old's day"({ phone, language, picture }) {
    const page = await phone();
    await page.open('/en/our-day/');
    await page.run(() =>
      localStorage.setItem('bare-toes:family', JSON.stringify({ ageMonths: 60, age: '4-5' })),
    );
    await page.open(`/${language}/our-day/`);
    await page.sees('main[data-mode]');
    await page.sees('[data-door="now"] svg');
    await picture(page, 'day');
    // between waking and breakfast there is open time, which nobody pushes away
    if (await page.count('[data-door="now"][data-push]')) {
      await page.tap('[data-door="now"][data-push]');
      await page.sees('[data-action="take-back"]');
    }
    await page.tap('[data-edge="it-hurts"]');
    await page.sees('main[data-call="it-hurts"] svg');
    must(await page.text('[data-say="ward"]'), 'the sentence for the nurse is empty');
  },

  /** @param {Walk} walk */
  async 'direction, width, no fault on any kind of page'({ phone, language, width }) {
    const page = await phone();
    const faults = [];
    for (const kind of KINDS) {
      await page.open(`/${language}/${kind}`);
      await page.pause(300);
      const seen = await page.run(() => ({
        dir: document.documentElement.dir,
        lang: document.documentElement.lang,
        wide: document.scrollingElement.scrollWidth,
        flows: getComputedStyle(document.querySelector('main')).direction,
      }));
      const dir = language === 'ar' ? 'rtl' : 'ltr';
      if (seen.dir !== dir || seen.flows !== dir || seen.lang !== language || seen.wide > width)
        faults.push(`${kind} ${JSON.stringify(seen)}`);
    }
    must(faults.length === 0, faults.join('; '));
  },

  /** What an engine has not is said, or is not offered. @param {Walk} walk */
  async 'what is lacking is said'({ phone, language, has }) {
    const page = await phone();
    await page.open(`/${language}/why-and-how/why-pull/`);
    const found = await page.run(async (code) => {
      const voices = async () => {
        if (typeof speechSynthesis === 'undefined') return [];
        if (speechSynthesis.getVoices().length === 0) await new Promise((done) => setTimeout(done, 1500));
        return speechSynthesis.getVoices();
      };
      return {
        'service worker': 'serviceWorker' in navigator,
        'screen kept on': 'wakeLock' in navigator,
        'camera asked for': Boolean(navigator.mediaDevices?.getUserMedia),
        'own reader of codes': 'BarcodeDetector' in globalThis,
        'share sheet': typeof navigator.share === 'function',
        'lasting storage asked for': typeof navigator.storage?.persist === 'function',
        'own voice': (await voices()).some((one) => one.localService && one.lang.startsWith(code)),
      };
    }, language);
    has(found);
    await page.pause(1500);
    const offered = await page.count('[data-action="listen"]');
    must(
      offered > 0 === found['own voice'],
      `reading aloud offered: ${offered}, voice: ${found['own voice']}`,
    );

    await page.open(`/${language}/bed-card/take/`);
    await page.tap('[data-action="film"]');
    // a machine without a camera, or one that does not let it be used; with one, the picture begins
    await page.wait('the camera, or why not', () => {
      const video = document.querySelector('video');
      const said = document.querySelector('[data-camera]')?.innerText.trim();
      return said || (video && !video.hidden && video.videoWidth > 0);
    });
    must(await page.count('input[name="letters"]'), 'without a camera there is no place for the letters');

    await writes(page, language, 'told');
    await page.open(`/${language}/pass-it-on/`);
    await page.tap('[data-action="file"]:not(:disabled)');
    await page.wait('what became of the file', () =>
      document.querySelector('[data-shared]')?.innerText.trim(),
    );
  },

  /** @param {Walk} walk */
  async 'without network after one visit'({ phone, language, offline }) {
    const page = await phone();
    await page.open(`/${language}/look/`);
    const worker = await page.run(() => 'serviceWorker' in navigator);
    if (!worker) {
      await page.sees('[data-offline="never"]');
      throw new NotThere('this engine gives pages no service worker');
    }
    await page.waitLong('the page to say it is kept', OFFLINE_MS, () =>
      Boolean(document.querySelector('[data-offline="ready"]')),
    );
    await offline();
    await reports(page, language, 'toes', 'toes-colour');
    for (const kind of ['bell/', 'look/full/1/', 'things-to-do/', 'our-day/', 'why-and-how/why-pull/']) {
      await page.open(`/${language}/${kind}`);
      await page.sees('main');
      must((await page.run(() => location.pathname)) === `/${language}/${kind}`, `${kind} is not kept`);
    }
    await page.open(`/${language}/our-notes/`);
    await page.sees('[data-entry="sign"]');
  },
};
