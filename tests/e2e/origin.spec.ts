/** Nothing leaves the device, nothing foreign is loaded, nothing that identifies a child is kept. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { built, LANGUAGES, resultAddress, scriptRuns, words } from '../helpers/pages.ts';

test('every built page carries the policy that forbids other origins, and names no other address', () => {
  const pages = readdirSync(built, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  expect(pages.length).toBeGreaterThan(300);
  for (const name of pages) {
    const html = readFileSync(path.join(built, name), 'utf8');
    const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1];
    if (name === '404.html') {
      // it has no script and asks for nothing but the icon, wherever the wrong address was
      expect(policy, name).toContain("default-src 'none'; img-src 'self';");
      expect(html, name).not.toMatch(/<script/i);
      for (const language of LANGUAGES) expect(html).toContain(words(language)['common:review.draft']!);
    } else {
      expect(policy, name).toContain("default-src 'self'");
      expect(policy, name).toMatch(/script-src 'self'( 'sha256-[^']+')*(;|$)/);
      expect(policy, name).toContain("object-src 'none'");
    }
    expect(policy, name).toContain("base-uri 'none'");
    // no hole in it
    expect(policy, name).not.toMatch(/\*|https?:|unsafe-eval|script-src[^;]*unsafe-inline/);
    const links = [...html.matchAll(/\b(?:src|href|action|srcset|poster)="((?:https?:)?\/\/[^"]*)"/g)].map(
      (match) => match[1],
    );
    expect(links, name).toEqual([]);
  }
});

test('no two pages have one title', () => {
  const pagesOf: Record<string, string[]> = {};
  for (const name of readdirSync(built, { recursive: true, encoding: 'utf8' }).filter((one) =>
    one.endsWith('.html'),
  )) {
    const title = /<title>([^<]*)<\/title>/.exec(readFileSync(path.join(built, name), 'utf8'))![1]!;
    expect(title, name).toMatch(/\S/);
    // Source: WCAG 2.2, 2.4.2. Two languages may share a word; the chooser and the page for a wrong address, the name alone.
    if (name.includes(path.sep)) (pagesOf[`${name.split(path.sep)[0]}: ${title}`] ??= []).push(name);
  }
  expect(Object.keys(pagesOf).length).toBeGreaterThan(600);
  expect(Object.values(pagesOf).filter((pages) => pages.length > 1)).toEqual([]);
});

test('the languages in the foot of a page lead to the same page', () => {
  const pages = readdirSync(built, { recursive: true, encoding: 'utf8' })
    .map((name) => name.split(path.sep).join('/'))
    .filter((name) => /^\w+\/.*index\.html$/.test(name));
  let linked = 0;
  for (const name of pages) {
    const [, language, here] = /^([^/]+)\/(.*)index\.html$/.exec(name)!;
    const links = [...readFileSync(path.join(built, name), 'utf8').matchAll(/<a[^>]* hreflang="\w+"[^>]*>/g)];
    // a child's page has none
    if (!links.length) continue;
    const led = links.map(
      ([link]) => new URL(/href="([^"]*)"/.exec(link)![1]!, `https://x/${name}`).pathname,
    );
    expect(led, name).toEqual(
      LANGUAGES.filter((other) => other !== language).map((other) => `/${other}/${here}`),
    );
    linked++;
  }
  expect(linked).toBeGreaterThan(600);
});

test('what is kept on the device is choices and coded notes, and no key for anything else', async ({
  page,
  context,
}) => {
  await page.goto('/en/#choose');
  await scriptRuns(page);
  await page.locator('main a[href*="look"]').first().tap();
  await page.goto('/en/look/drawing/');
  await page.locator('input[name="side"]').first().check();
  await page.locator('input[name="skin"]').nth(4).check();
  await page.goto(resultAddress('en', 'toes-colour'));
  await page.locator('[data-action="bell"]').tap();
  await expect(page.locator('[data-pressed]')).toBeVisible();
  await page.goto(resultAddress('en', 'toes-swollen', 'cannot-move'));
  await expect(page.locator('[data-note="written"]')).toBeVisible();

  const kept = await page.evaluate(async () => {
    const databases = await indexedDB.databases();
    const rows = await new Promise<[string, unknown][]>((resolve, reject) => {
      const opening = indexedDB.open('bare-toes');
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const store = opening.result.transaction('notes').objectStore('notes');
        const [keys, values] = [store.getAllKeys(), store.getAll()];
        values.onsuccess = () =>
          resolve(keys.result.map((key, index) => [String(key), values.result[index]]));
      };
    });
    return {
      local: Object.entries(localStorage).filter(([key]) => !key.startsWith('sveltekit:')),
      otherLocal: Object.keys(localStorage).filter((key) => key.startsWith('sveltekit:')),
      session: Object.keys(sessionStorage).filter((key) => !key.startsWith('sveltekit:')),
      databases: databases.map((database) => database.name),
      rows,
    };
  });
  const copies = kept.local.filter(([key]) => key.startsWith('bare-toes:copy:'));
  const [choices, ...more] = kept.local.filter((one) => !copies.includes(one));
  expect([choices![0], ...more]).toEqual(['bare-toes:family']);
  // the copy says the same as the notes, to the letter, and nothing of the phone
  const days = kept.rows.filter(([key]) => key !== 'device');
  expect(
    copies.map(([key, text]) => [key.slice('bare-toes:copy:'.length), JSON.parse(text) as unknown]),
  ).toEqual(days);
  expect(kept.otherLocal).toEqual([]);
  expect(kept.session).toEqual([]);
  expect(kept.databases).toEqual(['bare-toes']);
  const CHOICES = [
    'side',
    'age',
    'skin',
    'hair',
    'under3',
    'canTell',
    'light',
    'wardLanguage',
    'role',
    'locale',
    'shared',
  ];
  const family = JSON.parse(choices![1]) as Record<string, unknown>;
  expect(Object.keys(family).filter((key) => !CHOICES.includes(key))).toEqual([]);
  expect(family.skin).toBe('chestnut');
  const FIELDS = ['id', 't', 'off', 'kind', 'sign', 'answer', 'details'];
  for (const [key, value] of kept.rows) {
    expect(key).toMatch(/^(device|day-\d{4}-\d\d-\d\d)$/);
    if (key === 'device') {
      // 24 bits: too few to follow anyone
      expect(Object.keys(value as object).sort()).toEqual(['count', 'id']);
      expect((value as { id: string }).id).toMatch(/^[0-9a-f]{6}$/);
      continue;
    }
    for (const entry of value as Record<string, unknown>[]) {
      expect(Object.keys(entry).filter((field) => !FIELDS.includes(field))).toEqual([]);
      // no free text: ids and codes only
      for (const text of Object.values(entry).filter((field) => typeof field === 'string'))
        expect(text).toMatch(/^[a-z0-9-]{2,24}$/);
    }
  }
  expect(await context.cookies()).toEqual([]);
});
