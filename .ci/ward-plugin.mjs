// Checks the ward's settings before anything is built, and gives phones the values alone, without the code that checks.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { runnerImport } from 'vite';
import { languages } from './locales.mjs';

const root = path.resolve(import.meta.dirname, '..');
const OURS = 'src/content/ward.json';

/** The ward's file: its own where BARE_TOES_WARD names one, else ours. */
const wardFile = () => path.resolve(root, process.env.BARE_TOES_WARD || OURS);

/**
 * What stands in the ward's file.
 * Errors: throws with the file and the place where it is not JSON.
 * @returns {any}
 */
export function wardValues() {
  const file = wardFile();
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new Error(`${path.relative(root, file)} › ${error.message}`, { cause: error });
  }
}

/**
 * What the settings come to, once all of them are right.
 * Errors: throws one message with every wrong place of the file, its rule and what was seen.
 * @param {unknown} [values] for tests
 * @returns {Promise<{ WARD: unknown, WARD_DAY: unknown }>}
 */
export async function checkedWard(values = wardValues()) {
  const load = async (file) =>
    (await runnerImport(path.join(root, 'src/content', file), { root, configFile: false, logLevel: 'error' }))
      .module;
  const [{ readWard }, { readWardDay }] = [await load('ward.ts'), await load('ward-day.ts')];
  const faults = [];
  const read = (part) => {
    try {
      return part();
    } catch (error) {
      faults.push(error.message.replaceAll('content/ward.json', path.relative(root, wardFile())));
      return undefined;
    }
  };
  const WARD = read(() => readWard(values, languages(root)));
  const WARD_DAY = read(() => readWardDay(values?.day));
  if (faults.length > 0) throw new Error(`The ward’s settings are not right:\n${faults.join('\n')}`);
  return { WARD, WARD_DAY };
}

/** A language whose bell page has nothing of the ward's is named: nobody should find out at the bed. */
function bellsLeftOut({ bell, languages: offered }) {
  const left = Object.keys(bell).length > 0 ? offered.filter((code) => !(code in bell)) : [];
  return left.length > 0 ? `bell: the ward's own words are missing in ${left.join(', ')}` : undefined;
}

/** @returns {import('vite').Plugin} */
export function wardPlugin() {
  let building = false;
  let checked;
  return {
    name: 'bare-toes-ward',
    enforce: 'pre',
    configResolved(config) {
      building = config.command === 'build';
    },
    async buildStart() {
      if (!building) return;
      const first = !checked;
      checked ??= checkedWard();
      const left = bellsLeftOut((await checked).WARD);
      if (first && left) this.warn(left);
    },
    resolveId(id, importer) {
      if (!process.env.BARE_TOES_WARD || !/[\\/]src[\\/]content[\\/]ward(-day)?\.ts$/.test(importer ?? ''))
        return undefined;
      return id === './ward.json' ? wardFile() : undefined;
    },
    async load(id, options) {
      const name = { 'ward.ts': 'WARD', 'ward-day.ts': 'WARD_DAY' }[
        /[\\/]src[\\/]content[\\/](ward(?:-day)?\.ts)$/.exec(id)?.[1]
      ];
      if (!building || options?.ssr || !name) return undefined;
      this.addWatchFile(wardFile());
      return `export const ${name} = ${JSON.stringify((await checked)[name])};`;
    },
  };
}
