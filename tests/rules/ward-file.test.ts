// The one file a ward writes: wrong, it stops the build with its name, the place, the rule and what was seen; right, phones get the values alone.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import type { Plugin } from 'vite';
import { WARD } from '#content/ward.ts';
import { WARD_DAY } from '#content/ward-day.ts';
import { rowsOf } from '#i18n/locales.ts';
import { checkedWard, wardPlugin } from '../../.ci/ward-plugin.mjs';
import { languageData } from '../../.ci/languages-plugin.mjs';
import { readJson } from '../helpers/locales.ts';

const ours = readJson('src/content/ward.json') as Record<string, unknown>;
const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-ward-'));
const file = path.join(folder, 'ward.json');
/** As a ward would have it: its own file, beside the program. */
const write = (text: string) => {
  writeFileSync(file, text);
  process.env.BARE_TOES_WARD = file;
};
afterEach(() => {
  delete process.env.BARE_TOES_WARD;
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Hook = (this: unknown, ...given: unknown[]) => unknown;
/** The plugin as the build drives it; `warned`: what it says without stopping. */
function driven(command: 'build' | 'serve') {
  const plugin = wardPlugin() as Plugin &
    Record<'configResolved' | 'buildStart' | 'load' | 'resolveId', Hook>;
  const warned: string[] = [];
  const self = { warn: (text: string) => warned.push(text), addWatchFile: () => undefined };
  plugin.configResolved.call(self, { command });
  const call = (hook: 'buildStart' | 'load' | 'resolveId', ...given: unknown[]) =>
    plugin[hook].call(self, ...given);
  return { call, warned };
}

describe('a ward’s file that is wrong', () => {
  it('stops the build before anything is built, with every place in both halves named', async () => {
    write(
      JSON.stringify({
        ...ours,
        secondStepMinutes: 45,
        languages: ['en', 'xx'],
        day: { ...(ours.day as object), lightsOut: '23:30' },
      }),
    );
    const shown = path.relative(path.resolve(import.meta.dirname, '../..'), file);
    const { call } = driven('build');
    const said = await Promise.resolve(call('buildStart')).then(
      () => '',
      (error: Error) => error.message,
    );
    expect(said.split('\n').slice(1)).toEqual([
      `${shown} › languages › 1: one of en|ar|es|pl, saw "xx"`,
      `${shown} › secondStepMinutes: whole minutes from 2 to 10, saw 45`,
      `${shown} › day › lightsOut: a time from 06:00 to 22:00 in steps of five minutes, saw "23:30"`,
    ]);
  });

  it.each(['', '{ "wardLanguage": "en", }', 'press the button', '[', 'null', '7', '[]', '"en"'])(
    'is named where it holds no settings at all: %s',
    async (text) => {
      write(text);
      await expect(Promise.resolve(driven('build').call('buildStart'))).rejects.toThrow(/ward\.json › /);
    },
  );

  it('that is not there is named, too', async () => {
    process.env.BARE_TOES_WARD = path.join(folder, 'not-there.json');
    await expect(Promise.resolve(driven('build').call('buildStart'))).rejects.toThrow(/not-there\.json › /);
  });
});

describe('a ward’s file that is right', () => {
  it('gives phones the same values that the pages were made with, and none of the code that checks them', async () => {
    const { call, warned } = driven('build');
    await call('buildStart');
    for (const [name, value] of Object.entries({ WARD, WARD_DAY })) {
      const id = `/anywhere/src/content/${name.toLowerCase().replace('_', '-')}.ts`;
      const code = String(await call('load', id, { ssr: false }));
      expect(code.startsWith(`export const ${name} = {`)).toBe(true);
      expect(JSON.parse(code.replace(/^.*? = |;$/g, ''))).toEqual(value);
      expect(await call('load', id, { ssr: true })).toBeUndefined();
    }
    expect(await call('load', '/anywhere/src/content/signs.ts', { ssr: false })).toBeUndefined();
    expect(warned).toEqual([]);
  });

  it('may lie anywhere: the pages are made with the same file', async () => {
    write(JSON.stringify({ ...ours, secondStepMinutes: 3 }));
    const { call } = driven('build');
    expect(call('resolveId', './ward.json', '/x/src/content/ward.ts')).toBe(file);
    expect(call('resolveId', './ward.json', '/x/src/content/ward-day.ts')).toBe(file);
    expect(call('resolveId', './signs.ts', '/x/src/content/ward.ts')).toBeUndefined();
    expect((await checkedWard()).WARD).toMatchObject({ secondStepMinutes: 3 });
  });

  it('offers its languages in its order, and no others', () => {
    write(JSON.stringify({ ...ours, wardLanguage: 'pl', languages: ['ar', 'pl'] }));
    const { shown } = languageData();
    expect(shown).toEqual(['ar', 'pl']);
    expect(rowsOf(shown).map(({ code, direction }) => [code, direction])).toEqual([
      ['ar', 'rtl'],
      ['pl', 'ltr'],
    ]);
  });

  it('with words about the bell in some languages, the build says which are without', async () => {
    write(JSON.stringify({ ...ours, bell: { pl: { where: 'Na ścianie.' } } }));
    const { call, warned } = driven('build');
    await call('buildStart');
    await call('buildStart');
    expect(warned).toEqual([expect.stringMatching(/missing in en, es, ar$/)]);
  });
});
