// What `npm run build` leaves beside each text: the same text, packed, and nothing of an older build.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { precompress } from '../../.ci/precompress.mjs';

const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-packed-'));
const at = (name: string) => path.join(folder, name);
const long = (word: string) => `${word} `.repeat(300);
const TEXTS = [
  'index.html',
  'en/look/index.html',
  'app.js',
  'app.css',
  'words.json',
  'icon.svg',
  'manifest.webmanifest',
];

let sum: Awaited<ReturnType<typeof precompress>>;
beforeAll(async () => {
  mkdirSync(at('en/look'), { recursive: true });
  for (const name of TEXTS) writeFileSync(at(name), long(`تمهّل ${name}`));
  writeFileSync(at('icon.png'), long('a picture is packed already'));
  writeFileSync(at('short.json'), '{}');
  writeFileSync(at('offline-switch.json'), long('{ "offline": true }'));
  writeFileSync(at('gone.html.gz'), 'of an older build');
  await precompress(folder);
  // once more: what was packed is not packed again
  sum = await precompress(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('each text has two packed copies that come out as it is, smaller and of the same time', () => {
  for (const name of TEXTS) {
    const plain = readFileSync(at(name));
    expect([name, gunzipSync(readFileSync(at(`${name}.gz`))).equals(plain)]).toEqual([name, true]);
    expect([name, brotliDecompressSync(readFileSync(at(`${name}.br`))).equals(plain)]).toEqual([name, true]);
    for (const kind of ['gz', 'br']) {
      expect(statSync(at(`${name}.${kind}`)).size).toBeLessThan(plain.length);
      expect(Math.abs(statSync(at(`${name}.${kind}`)).mtimeMs - statSync(at(name)).mtimeMs)).toBeLessThan(2);
    }
  }
  expect(sum.files).toBe(TEXTS.length);
  expect(sum.bytes).toBe(TEXTS.reduce((all, name) => all + statSync(at(name)).size, 0));
});

it('nothing else is packed: no picture, nothing short, nothing twice, and nothing of an older build is left', () => {
  const packed = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.(gz|br)$/.test(name),
  );
  expect(packed.sort()).toEqual(
    TEXTS.flatMap((name) => [`${path.normalize(name)}.br`, `${path.normalize(name)}.gz`]).sort(),
  );
});

it('the switch that a ward sets by hand has no packed copy that would go on saying the old', () => {
  expect(existsSync(at('offline-switch.json.gz'))).toBe(false);
});
