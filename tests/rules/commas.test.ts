/** A comma is a mark of one language: between two things that a page shows the language sets its own (`inARow`). */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../helpers/locales.ts';

/** Two shown values with a comma of ours between them; between objects in code stand spaces. */
const BETWEEN = /\S\}, \$?\{\S/;
const shown = ['src/ui', 'src/routes'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(svelte|ts)$/.test(name))
    .map((name) => path.join(folder, name)),
);

it('no page sets a comma between two things that it shows', () => {
  expect(shown.length).toBeGreaterThan(150);
  expect(shown.filter((name) => BETWEEN.test(readFileSync(path.join(root, name), 'utf8')))).toEqual([]);
});

it('a comma that is planted there is found, and one between two objects is not', () => {
  for (const planted of ['<p>{day(at)}, {time(at)}</p>', 'made = `${day(at)}, ${time(at)}`'])
    expect(planted).toMatch(BETWEEN);
  expect('put({ day: at }, { from })').not.toMatch(BETWEEN);
});
