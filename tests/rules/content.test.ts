import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { PANEL_PARTS, PART_IDS, SPOT_PARTS } from '#content/parts.ts';
import { RULES } from '#content/rules.ts';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import {
  detailsOf,
  isSignId,
  LOOKS,
  offersNotSure,
  SIGN_ROWS,
  SIGNS,
  signsOfLook,
  signsOfPart,
} from '#content/signs.ts';
import { SOURCES } from '#content/sources.ts';
import { TRADE_FACTS } from '#content/trade-facts.ts';
import { CALLS } from '#domain/day/touch.ts';
import { ALL_SIGN_IDS, SIGN_IDS, WORRY_IDS, type SignId } from '#domain/signs/ids.ts';
import { drawScene } from '#scene/paths.ts';
import { DRAWN_AGES, NEUTRAL } from '#scene/spec.ts';
import { everyLanguage, root } from '../helpers/locales.ts';

const BASES = new Set<string>([...Object.keys(SOURCES), 'common-practice', 'our-proposal']);
const basisFaults = (where: string, basis: readonly string[]): string[] =>
  basis.length === 0
    ? [`${where}: at least one basis, saw none`]
    : basis.filter((id) => !BASES.has(id)).map((id) => `${where}: a source of content/sources, saw "${id}"`);

describe('where it comes from', () => {
  it('every sign, rule and trade fact names a source that exists, common practice or our proposal', () => {
    const rows: Record<string, readonly string[]> = {
      ...Object.fromEntries(Object.entries(SIGN_ROWS).map(([id, row]) => [`signs › ${id}`, row.basis])),
      ...Object.fromEntries(Object.entries(RULES).map(([id, row]) => [`rules › ${id}`, row.basis])),
      ...Object.fromEntries(
        Object.entries(TRADE_FACTS).map(([id, row]) => [`trade-facts › ${id}`, [row.basis]]),
      ),
    };
    expect(Object.keys(rows)).toHaveLength(43 + 20 + Object.keys(TRADE_FACTS).length);
    expect(Object.entries(rows).flatMap(([where, basis]) => basisFaults(where, basis))).toEqual([]);
    expect(basisFaults('x', ['hearsay'])).toHaveLength(1);
    expect(basisFaults('x', [])).toHaveLength(1);
  });

  it('every source is used by a sign, a rule or the rules of play, and what these name is there', () => {
    const play = readdirSync(path.join(root, 'src/domain/play')).flatMap((file) =>
      [
        ...readFileSync(path.join(root, 'src/domain/play', file), 'utf8').matchAll(
          /Source:[^;.\n]*?\b([a-z]+(?:-[a-z]+)*-\d{4})\b/g,
        ),
      ].map((match) => match[1]!),
    );
    expect(new Set(play)).toEqual(new Set(['who-screens-2019', 'aasm-sleep-2016']));
    const used = new Set<string>([
      ...[...Object.values(SIGN_ROWS), ...Object.values(RULES)].flatMap((row) => [...row.basis]),
      ...play,
    ]);
    expect(play.filter((id) => !BASES.has(id))).toEqual([]);
    expect(Object.keys(SOURCES).filter((id) => !used.has(id))).toEqual([]);
  });
});

describe('signs', () => {
  it('are forty and three worries, each in a part, and each part has some', () => {
    expect([SIGN_IDS.length, WORRY_IDS.length]).toEqual([40, 3]);
    expect(Object.keys(SIGNS).sort()).toEqual([...ALL_SIGN_IDS].sort());
    expect(PART_IDS.flatMap((part) => signsOfPart(part)).sort()).toEqual([...ALL_SIGN_IDS].sort());
    for (const part of [...PANEL_PARTS, 'more', 'danger', 'worry'] as const)
      expect(signsOfPart(part).length, part).toBeGreaterThan(0);
    for (const look of LOOKS) expect(signsOfLook(look).length, look).toBeGreaterThan(0);
  });

  it('have two pictures, but for the worries', () => {
    expect(Object.keys(SIGN_PICTURES).sort()).toEqual([...SIGN_IDS].sort());
  });

  it('are all in a part that the first screen opens, or the drawer behind the child', () => {
    const opened = new Set<string>([...PANEL_PARTS, 'danger', 'worry', 'more']);
    expect(ALL_SIGN_IDS.filter((id) => !opened.has(SIGNS[id].part))).toEqual([]);
    expect(new Set(Object.values(SPOT_PARTS))).toEqual(
      new Set(PANEL_PARTS.filter((part) => part !== 'feeling')),
    );
  });

  it('that a sub-answer also is exist', () => {
    const also = Object.values(SIGN_ROWS).flatMap((row) =>
      Object.values(row.details ?? {}).map((d) => d.alsoSign),
    );
    expect(also.filter((id) => id !== undefined && !isSignId(id))).toEqual([]);
  });
});

describe('places to touch', () => {
  it.each(DRAWN_AGES)('are drawn for every place that opens a part, and no other: age %i', (age) => {
    for (const side of ['left', 'right'] as const) {
      const picture = drawScene({ ...NEUTRAL, camera: 'whole', side, age });
      expect(Object.keys(picture.spots ?? {}).sort()).toEqual(Object.keys(SPOT_PARTS).sort());
      for (const [id, spot] of Object.entries(picture.spots ?? {})) {
        expect(spot.x, id).toBeGreaterThan(0);
        expect(spot.x, id).toBeLessThan(picture.width);
      }
    }
  });
});

/** The keys one language must have for the ids, no more and no fewer. */
function wantedKeys(): { signs: string[]; say: string[]; reasons: string[] } {
  const signs = ALL_SIGN_IDS.flatMap((id) => {
    const row = SIGN_ROWS[id]!;
    const names = ['name', 'doNot', 'why'];
    if (row.part !== 'worry') names.push('ask', 'usual', 'shows');
    if (row.note) names.push('note');
    if (row.darker) names.push('darker');
    if (!row.adultOnly) names.push('child');
    return names.map((name) => `signs:${id}.${name}`);
  });
  const details = ALL_SIGN_IDS.flatMap((id) => detailsOf(id).map((detail) => `details.${id}/${detail}`));
  const doubtful = new Set(ALL_SIGN_IDS.filter(offersNotSure).map((id) => SIGNS[id].part));
  return {
    signs: [...signs, ...details.map((key) => `signs:${key}`)],
    say: [
      ...ALL_SIGN_IDS.flatMap((id) => (SIGN_ROWS[id]!.sided ? [id, `${id}_left`, `${id}_right`] : [id])),
      ...details,
      ...[...doubtful].map((part) => `notSure.${part}`),
      ...CALLS.map((call) => `child.${call}`),
      'unknown',
    ].map((key) => `say:${key}`),
    reasons: [...Object.keys(RULES), 'detail', 'ward', 'unknown'].map((rule) => `steps:reasons.${rule}`),
  };
}

describe.each(everyLanguage)('words of %s', (_, texts) => {
  const wanted = wantedKeys();
  const held = (start: string) =>
    Object.keys(texts)
      .filter((key) => key.startsWith(start))
      // a plural's categories are one key here; tests/rules/locales asks for each
      .map((key) => key.replace(/_(?:zero|one|two|few|many|other)$/, ''))
      .filter((key, i, all) => all.indexOf(key) === i)
      .sort();

  it('stand for every sign, with a note, darker skin, child words exactly where the sign says so', () => {
    expect(held('signs:')).toEqual(wanted.signs.sort());
  });

  it('say every sign to the nurse, left and right where the leg matters', () => {
    expect(held('say:')).toEqual(wanted.say.sort());
  });

  it('give a reason for every rule', () => {
    expect(held('steps:reasons.')).toEqual(wanted.reasons.sort());
  });

  it('name every part, and say left and right in different words', () => {
    expect(held('look:parts.')).toEqual(PART_IDS.map((part) => `look:parts.${part}`).sort());
    const sided = ALL_SIGN_IDS.filter((id: SignId) => SIGN_ROWS[id]!.sided);
    for (const id of sided)
      expect(new Set([texts[`say:${id}`], texts[`say:${id}_left`], texts[`say:${id}_right`]]).size, id).toBe(
        3,
      );
  });
});

interface Source {
  file: string;
  text: string;
}
// a route's folder may bear the name of a page: only files are read
const sources: Source[] = readdirSync(path.join(root, 'src'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.(?:ts|svelte|css|html)$/.test(entry.name))
  .map((entry) => path.join(entry.parentPath, entry.name))
  .map((file) => ({
    file: path.relative(path.join(root, 'src'), file).replaceAll(path.sep, '/'),
    text: readFileSync(file, 'utf8'),
  }));
const withoutComments = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|<!--[\s\S]*?-->|^\s*\/\/.*$/gm, '');

/** The theme colour of the page's head is read before any style; it is the page's own cream. */
const HEAD_COLOUR = '<meta name="theme-color" content="#fbf6ec" />';
const colourFaults = ({ file, text }: Source): string[] =>
  file.startsWith('styles/')
    ? []
    : (withoutComments(text)
        .replace(file === 'app.html' ? HEAD_COLOUR : '', '')
        .match(
          /(?<![\w&/])#(?:[0-9a-f]{8}|[0-9a-f]{6}|[0-9a-f]{3,4})(?![\w/-])|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\(/gi,
        )
        ?.map((colour) => `${file}: a token of styles/tokens, saw ${colour}`) ?? []);

const PHYSICAL =
  /(?<![\w-])(?:(?:margin|padding|border|scroll-margin|scroll-padding)-(?:left|right|top|bottom)[\w-]*|border-(?:top|bottom)-(?:left|right)-radius|(?:min-|max-)?(?:width|height)|left|right|top|bottom|overflow-[xy])\s*:|(?:text-align|float|clear)\s*:\s*(?:left|right)/g;
const styleOf = ({ file, text }: Source): string =>
  withoutComments(
    file.endsWith('.css')
      ? text
      : [...text.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, css]) => css!).join('\n'),
  );
const directionFaults = (source: Source): string[] =>
  source.file.startsWith('scene/') || !/\.(?:css|svelte)$/.test(source.file)
    ? []
    : // conditions of the screen have no logical form
      (styleOf(source)
        .replace(/@media[^{]*\{/g, '{')
        .match(PHYSICAL)
        ?.map((found) => `${source.file}: a logical property, saw ${found}`) ?? []);

describe('source files', () => {
  it('are found', () => {
    expect(sources.length).toBeGreaterThan(100);
  });

  it('name no colour outside styles', () => {
    expect(sources.flatMap(colourFaults)).toEqual([]);
    for (const text of [
      'color: #fff',
      "fill: '#1a2b3c'",
      'background: rgb(1 2 3)',
      'border: 1px solid hsl(1, 2%, 3%)',
    ])
      expect(colourFaults({ file: 'ui/A.svelte', text }), text).toHaveLength(1);
    for (const text of ["from '#domain/units.ts'", 'href="#main"', '{#each a as b}', '{#if c}', '&#8211;'])
      expect(colourFaults({ file: 'ui/A.svelte', text }), text).toEqual([]);
  });

  it('know no left and right in their styles, outside the drawing', () => {
    expect(sources.flatMap(directionFaults)).toEqual([]);
    for (const css of [
      'margin-left: 1rem',
      'a{left:0}',
      'text-align: right',
      'padding-top:2px',
      'max-width: 9px',
      'float:left',
    ])
      expect(directionFaults({ file: 'styles/a.css', text: css }), css).toHaveLength(1);
    for (const css of [
      'margin-inline-start: 1rem',
      'text-align: start',
      '@media (max-width: 30rem) { a { gap: 0 } }',
      'line-height: 1',
      'stroke-width: 2',
      'inset-block-start: 0',
    ])
      expect(directionFaults({ file: 'styles/a.css', text: css }), css).toEqual([]);
  });

  it('are short enough to be read: 400 lines at most', () => {
    const long = sources.filter(({ text }) => text.split('\n').length - 1 > 400).map(({ file }) => file);
    expect(long).toEqual([]);
  });
});
