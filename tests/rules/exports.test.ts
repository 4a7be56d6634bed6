/**
 * What a file gives out, another file takes. An export that nobody takes is dead, or a promise nobody asked for.
 * A file takes a name where it names the giving file in a string (an import, or a path that a tool loads) and has
 * the name in its code. Not: a name that such a file uses for a thing of its own, and default exports.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../helpers/locales.ts';

/** Read by name by the framework or a tool; a `.d.mts` tells the types of its `.mjs`; growth.mjs writes a file. */
const READ_BY_NAME =
  /(^|\/)\+|^src\/(hooks|params|service-worker)|[.]d[.]m?ts$|^\.ci\/(mutate-log|growth)[.]mjs$/;
const COMMENTS = /\/\*[^]*?\*\/|(?<![:'"`\\])\/\/.*$/gm;
const GIVEN = /^\s*export (?:async )?(const|let|function\*?|class|interface|type|enum) ([\w$]+)/gm;
const NAMED = /['"`]([^'"`\n]*[.](?:[cm]?[jt]s|svelte))['"`]/g;

/** "file: name" of what no other file takes. A type may stay to name what its own file gives or asks for. */
function untaken(house: ReadonlyMap<string, string>): string[] {
  const takers = new Map<string, string[]>([...house.keys()].map((file) => [file, []]));
  const codes = new Map([...house].map(([file, text]) => [file, text.replace(COMMENTS, '')]));
  const words = new Map([...codes].map(([file, code]) => [file, new Set(code.match(/[A-Za-z_$][\w$]*/g))]));
  for (const [file, text] of house)
    for (const [, named] of text.matchAll(NAMED)) {
      const whole = named!
        .replace(/^#live\//, 'src/routes/_live/')
        .replace(/^(#(?=\w)|\/)/, (at) => (at === '#' ? 'src/' : ''));
      for (const place of new Set([path.posix.join(path.posix.dirname(file), named!), whole]))
        if (place !== file) takers.get(place)?.push(file);
    }
  return [...codes].flatMap(([file, code]) =>
    [...code.matchAll(GIVEN)]
      .filter(([, , name]) => !takers.get(file)!.some((taker) => words.get(taker)!.has(name!)))
      .filter(
        ([, kind, name]) => !/interface|type/.test(kind!) || code.split(RegExp(`\\b${name}\\b`)).length < 3,
      )
      .map(([, , name]) => `${file}: ${name}`),
  );
}

describe('every export is taken by another file', () => {
  it('in src, .ci and tests', () => {
    const files = ['src', '.ci', 'tests'].flatMap((folder) =>
      readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => /[.]([cm]?[jt]s|svelte)$/.test(name))
        .map((name) => `${folder}/${name.replaceAll(path.sep, '/')}`),
    );
    expect(files.length).toBeGreaterThan(500);
    const read = (file: string) => [file, readFileSync(path.join(root, file), 'utf8')] as const;
    const found = untaken(new Map([...files, 'vite.config.ts', 'svelte.config.js'].map(read)));
    expect(found.filter((row) => !READ_BY_NAME.test(row.split(':')[0]!))).toEqual([]);
  });

  it('what is planted and taken by nobody is found, and nothing besides', () => {
    const house = {
      'src/ui/a.ts':
        'export const taken = 1;\nexport const spare = 2;\nexport type Given = typeof taken;\nexport type No = 1;',
      'src/ui/b.ts': `// spare\nimport * as a from './a.ts';\nexport const b = (): a.Given => a.taken;`,
      'src/ui/C.svelte': `<script module>\nexport function c() {}\n</script>{c(import('#ui/b.ts').b)}`,
      'tests/d.ts': `const spare = 1;\nexport async function d(g: No) {}`,
    };
    expect(untaken(new Map(Object.entries(house)))).toEqual(
      ['src/ui/a.ts: spare', 'src/ui/a.ts: No', 'src/ui/C.svelte: c', 'tests/d.ts: d'], // prettier-ignore
    );
  });
});
