/**
 * Every text of the locales is asked for by something in src; one that is not would be translated, read and signed for
 * nobody. A key is asked for where src has it as a whole, or a template that it fits, such as `ideas:${id}.name`, and
 * what fills the template's gaps is a word of src, too: an id, the name of a field, or a number.
 * Not: whether a page that asks for a key is ever shown.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { english, root } from '../helpers/locales.ts';

const COMMENTS = /\/\*[^]*?\*\/|(?<![:'"`\\])\/\/.*$/gm;
const GAP = /\$\{[^{}`]*\}/g;
/** Plurals, and what is said differently of the left and the right leg: the translator finds these by itself. */
const FORMS = /_(zero|one|two|few|many|other|left|right)$/;
/** Texts that are counted from 1 hang on the key that is asked for (ui/topic-words.ts). */
const COUNTED = '(?:[.]\\d+)?';

/**
 * Read as a whole: what to say, by sign and by child's picture (ui/say.ts; content.test.ts names each of its keys), and
 * what stands in where there is no call button (i18n/called.ts; called.test.ts finds each of its keys).
 */
const READ_WHOLE = /^(?:say|called):/;

/** Every key that no code asks for. */
function deadKeys(keys: readonly string[], source: string): string[] {
  const code = source.replace(COMMENTS, '');
  const quoted = [/'([^'\n]*)'/g, /"([^"\n]*)"/g, /`([^`\n]*)`/g].flatMap((pattern) =>
    [...code.matchAll(pattern)].map(([, text]) => text!),
  );
  const names = [...code.matchAll(/([\w-]+)['"]?[?]?:|[{,]\s*(\w+)(?=\s*[,}])/g)].map(([, a, b]) => a ?? b!);
  const words = new Set([...names, ...quoted.flatMap((text) => text.split(/[\s|]+/))]);
  const isWord = (fill: string) => /^\d+$/.test(fill) || words.has(fill);
  const isMade = (fill: string, gaps: number): boolean =>
    gaps === 1
      ? fill.split(/[./]/).every(isWord)
      : [...fill].some((_, at) => isWord(fill.slice(0, at)) && isMade(fill.slice(at), gaps - 1));

  const whole = new Set(quoted.map((text) => (text.includes(':') ? text : `common:${text}`)));
  const templates = [...new Set(code.match(/(?<=`)(?:[\w:./-]|\$\{[^{}`]*\})+(?=`)/g))].flatMap((text) => {
    // one letter a gap
    const form = text.replace(GAP, '\0');
    const key = form.includes(':') ? form : `common:${form}`;
    // with nothing but gaps behind the area it would fit everything
    if (!/:.*\w/s.test(key) && !/:\0[.]\0/.test(key)) return [];
    const gaps = [...key.matchAll(/\0+/g)].map(([run]) => run.length);
    const pattern = key.replaceAll(/[./]/g, '[$&]').replaceAll(/\0+/g, '([^:]+?)');
    return gaps.length > 0 ? [{ pattern: RegExp(`^${pattern}${COUNTED}$`), gaps }] : [];
  });
  return keys.filter((key) => {
    const asked = key.replace(FORMS, '');
    if (whole.has(key) || whole.has(asked)) return false;
    return !templates.some(({ pattern, gaps }) =>
      pattern
        .exec(asked)
        ?.slice(1)
        .every((fill, at) => isMade(fill, gaps[at]!)),
    );
  });
}

describe('every text is asked for', () => {
  it('in src', () => {
    const source = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
      .filter((file) => /[.](ts|svelte|json)$/.test(file))
      .map((file) => readFileSync(path.join(root, 'src', file), 'utf8'))
      .join('\n');
    const keys = Object.keys(english).filter((key) => !READ_WHOLE.test(key));
    expect(deadKeys(keys, source)).toEqual([]);
    // the same keys under other names, each of which nobody can ask for
    const strange = keys.map((key) => `${key.replace(FORMS, '')}Nobody`);
    expect(deadKeys(strange, source)).toEqual(strange);
  });

  it.each([
    ['look:parts.toes', `t('look:parts.toes')`, true],
    ['look:parts.toes', `t('look:parts.toe')`, false],
    ['look:parts.toes', '// look:parts.toes', false],
    ['common:written.done', `t('written.done')`, true],
    ['steps:since_other', `t('steps:since', { count })`, true],
    ['ideas:dot-grid.name', 'const IDS = ["dot-grid"]; t(`ideas:${id}.name`)', true],
    ['ideas:dot-grid.name', 'const IDS = ["dot-grids"]; t(`ideas:${id}.name`)', false],
    ['ideas:dot-grid.2', 't(`ideas:${id}.${step}`, { "dot-grid": 1 })', true],
    ['play:own.noise2', `const name = 'noise'; t(\`play:own.\${name}\${value}\`)`, true],
    ['play:own.noise2', 't(`play:own.${name}`)', false],
    ['why:toes.child.3', `told(\`why:\${topic}.\${reader}\`, { toes: 'child' })`, true],
  ])('"%s" is asked for by %s: %s', (key, source, asked) => {
    expect(deadKeys([key], source)).toEqual(asked ? [] : [key]);
  });
});
