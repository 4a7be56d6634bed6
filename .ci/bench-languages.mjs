// What a language adds: the site built with one language and with all of them, in one run on one machine.
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { weigh } from './bench-tools.mjs';
import { built, root, withSources } from './install.mjs';

const KIB = 1024;
const settings = JSON.parse(readFileSync(path.join(root, 'src/content/ward.json'), 'utf8'));

/** Builds a copy of the sources for these languages. */
const builtWith = (languages) =>
  withSources((folder) => {
    const ward = path.join(folder, 'ward.json');
    writeFileSync(ward, JSON.stringify({ ...settings, languages }));
    const start = performance.now();
    if (!built(folder, { BARE_TOES_WARD: ward }))
      throw new Error(`bench › build with ${languages.join(', ')}: failed`);
    const seconds = (performance.now() - start) / 1000;
    return { seconds, bytes: weigh(path.join(folder, 'build')) };
  });

/** Seconds and KiB that each language beyond the first adds to a build, beside the build with one language. */
export function languageFigures() {
  const { languages } = settings;
  const one = builtWith(languages.slice(0, 1));
  const all = builtWith(languages);
  const added = languages.length - 1;
  return [
    { name: `build with ${languages[0]} alone`, value: one.seconds, unit: 's', digits: 1 },
    { name: `build with ${languages.length} languages`, value: all.seconds, unit: 's', digits: 1 },
    {
      name: 'build, each added language',
      value: (all.seconds - one.seconds) / added,
      unit: 's',
      digits: 1,
      reference: `build with ${languages[0]} alone`,
    },
    { name: 'build, all files, one language', value: one.bytes / KIB, unit: 'KiB', digits: 0 },
    {
      name: 'build, each added language',
      value: (all.bytes - one.bytes) / added / KIB,
      unit: 'KiB',
      digits: 0,
      reference: 'build, all files, one language',
    },
  ];
}
