/** Each import rule of .ci/dependency-cruiser.cjs is seen catching the wrong import it is there for. */
import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const CRUISER = path.join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

/** Right imports, one of each kind; the wrong ones are planted beside them. */
const HOUSE: Readonly<Record<string, string>> = {
  'locales/en/common.json': '{}',
  'src/domain/units.ts': 'export const one = 1;',
  'src/domain/signs/types.ts': `export type Sign = 'a';`,
  'src/content/signs.ts': `import { one } from '#domain/units.ts';\nimport type { Spec } from '#scene/spec.ts';\nexport const SIGNS: Spec[] = [one];`,
  'src/scene/spec.ts': 'export type Spec = number;\nexport const NEUTRAL = 1;',
  'src/scene/paths.ts': `import { one } from '#domain/units.ts';\nexport const draw = () => one;`,
  'src/scene/Thing.svelte': `<script lang="ts">import { first } from 'virtual:first-drawing';</script>{first}`,
  'src/device/clock.ts': `import { one } from '#domain/units.ts';\nexport const now = () => one;`,
  'src/i18n/words.ts': `import words from '#locales/en/common.json';\nexport const t = () => words;`,
  'src/state/notes.svelte.ts': `import { now } from '#device/clock.ts';\nimport { NEUTRAL } from '#scene/spec.ts';\nexport const notes = () => [now(), NEUTRAL];`,
  'src/ui/Banner.svelte': `<script lang="ts">import { t } from '#i18n/words.ts';</script>{t()}`,
  'src/routes/_live/Foot.svelte': `<script lang="ts">import { notes } from '#state/notes.svelte.ts';</script>{notes()}`,
  'tests/helpers/fake.ts': 'export const fake = 1;',
};

/** file, what it wrongly imports, the rule that must say so */
const WRONG = [
  ['src/domain/from-content.ts', '#content/signs.ts', 'domain-alone'],
  ['src/domain/from-scene.ts', '#scene/spec.ts', 'domain-alone'],
  ['src/domain/from-package.ts', 'i18next', 'domain-no-package'],
  ['src/domain/from-node.ts', 'node:fs', 'domain-no-package'],
  ['src/content/from-drawing.ts', '#scene/paths.ts', 'content-tables'],
  ['src/content/from-words.ts', '#i18n/words.ts', 'content-tables'],
  ['src/content/from-package.ts', 'i18next', 'content-no-package'],
  ['src/scene/from-signs.ts', '#domain/signs/types.ts', 'scene-draws'],
  ['src/scene/from-content.ts', '#content/signs.ts', 'scene-draws'],
  ['src/scene/from-package.ts', 'i18next', 'scene-no-package'],
  ['src/scene/Thing.svelte', 'idb-keyval', 'scene-components'],
  ['src/device/from-state.ts', '#state/notes.svelte.ts', 'device-at-the-edge'],
  ['src/device/from-package.ts', 'i18next', 'device-its-package'],
  ['src/state/from-drawing.ts', '#scene/paths.ts', 'state-thin'],
  ['src/state/from-words.ts', '#i18n/words.ts', 'state-thin'],
  ['src/state/from-package.ts', 'idb-keyval', 'state-no-package'],
  ['src/ui/from-state.ts', '#state/notes.svelte.ts', 'ui-props-in-events-out'],
  ['src/ui/Waits.svelte', '#device/clock.ts', 'ui-props-in-events-out'],
  ['src/ui/from-package.ts', 'idb-keyval', 'ui-no-package'],
  ['src/i18n/from-content.ts', '#content/signs.ts', 'i18n-words'],
  ['src/i18n/from-package.ts', 'idb-keyval', 'i18n-its-package'],
  ['src/ui/own-texts.ts', '#locales/en/common.json', 'words-through-i18n'],
  ['src/ui/from-routes.ts', '../routes/_live/Foot.svelte', 'not-to-routes'],
  ['src/routes/from-tests.ts', '../../tests/helpers/fake.ts', 'not-to-tests'],
  ['src/routes/vague.ts', './helpers/any.ts', 'no-vague-folder'],
  ['src/routes/nowhere.ts', './nobody.ts', 'found'],
  ['src/domain/egg.ts', './hen.ts', 'no-circle'],
  ['src/service-worker.ts', '#domain/units.ts', 'worker-alone'],
] as const;

let folder = '';
let caught: ReadonlySet<string> = new Set();

const write = (file: string, text: string) => {
  mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
  writeFileSync(path.join(folder, file), text);
};

/** Every broken rule of a folder, as "file: rule". */
function cruise(): Set<string> {
  const config = path.join(root, '.ci/dependency-cruiser.cjs');
  const args = [CRUISER, '-c', config, '--output-type', 'json', 'src'];
  // a cruise that breaks off throws here; broken rules do not, in this output
  const report = JSON.parse(execFileSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })) as {
    summary: { violations: { from: string; rule: { name: string } }[] };
  };
  return new Set(report.summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`));
}

describe('imports point one way', () => {
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'imports-'));
    symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'junction');
    for (const file of ['package.json', 'tsconfig.json'])
      write(file, readFileSync(path.join(root, file), 'utf8'));
    write('.svelte-kit/tsconfig.json', '{}');
    for (const [file, text] of Object.entries(HOUSE)) write(file, text);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('a house with right imports only is left alone', () => {
    expect([...cruise()]).toEqual([]);
  });

  describe('a wrong import is caught', () => {
    beforeAll(() => {
      write('src/routes/helpers/any.ts', 'export const any = 1;');
      write('src/domain/hen.ts', `import { planted } from './egg.ts';\nexport default planted;`);
      for (const [file, wrong] of WRONG) {
        const line = `import * as wrong from '${wrong}';`;
        write(
          file,
          file.endsWith('.svelte')
            ? `<script lang="ts">${line}</script>{wrong}`
            : `${line}\nexport const planted = wrong;`,
        );
      }
      caught = cruise();
    });

    it.each(WRONG)('%s may not import %s (%s)', (file, _wrong, rule) => {
      expect([...caught]).toContain(`${file}: ${rule}`);
    });

    it('every rule has a wrong import planted for it', () => {
      const { forbidden } = JSON.parse(
        execFileSync(
          process.execPath,
          ['-p', `JSON.stringify(require(${JSON.stringify(path.join(root, '.ci/dependency-cruiser.cjs'))}))`],
          { encoding: 'utf8' },
        ),
      ) as { forbidden: { name: string; comment?: string }[] };
      expect(forbidden.map(({ name }) => name).sort()).toEqual(
        [...new Set(WRONG.map((row) => row[2]))].sort(),
      );
      expect(forbidden.filter(({ comment }) => !comment)).toEqual([]);
    });
  });
});

describe('what the tool does not see', () => {
  const sources = readdirSync(path.join(root, 'src'), { recursive: true, withFileTypes: true });

  it('no folder of src has a name that could hold anything', () => {
    const vague = /^(lib|util|helper|manager|service)s?$/;
    const folders = sources.filter((entry) => entry.isDirectory()).map(({ name }) => name);
    expect(folders).toContain('domain');
    expect(folders.filter((name) => vague.test(name))).toEqual([]);
  });

  it('no component of ui takes even a type from device, state or routes', () => {
    // the tool reads a component after its types are gone
    const components = readdirSync(path.join(root, 'src/ui')).filter((file) => file.endsWith('.svelte'));
    expect(components).not.toEqual([]);
    const wrong = components.filter((file) =>
      /['"(](#(device|state|live)\/|(\.\.\/)+(device|state|routes)\/)/.test(
        readFileSync(path.join(root, 'src/ui', file), 'utf8'),
      ),
    );
    expect(wrong).toEqual([]);
  });
});
