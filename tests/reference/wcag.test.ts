// Source: WCAG 2.2, 1.4.6 (text 7:1), 1.4.11 (edges 3:1), relative luminance; `wcag-contrast` is the outside check.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
// @ts-expect-error the package comes without types
import { hex } from 'wcag-contrast';
import { contrast, luminance } from '../helpers/contrast.ts';
import { root } from '../helpers/locales.ts';

const outsideContrast = hex as (a: string, b: string) => number;

describe('the contrast formula', () => {
  test.each([
    ['#000', 21],
    ['#595959', 7.0047],
    ['#5a5a5a', 6.8969],
    ['#767676', 4.5422],
    ['#777', 4.4781],
    ['#949494', 3.0335],
    ['#959595', 2.9953],
    ['#f00', 3.9985],
    ['#00f', 8.5925],
    ['#008000', 5.1374],
    ['#fff', 1],
  ])('%s on white is %f', (colour, ratio) => {
    expect(contrast(colour, '#ffffff')).toBeCloseTo(ratio, 4);
    expect(contrast('#ffffff', colour)).toBe(contrast(colour, '#ffffff'));
  });

  test('black has no light and white all of it', () => {
    expect(luminance('#000000')).toBe(0);
    expect(luminance('#ffffff')).toBeCloseTo(1, 12);
  });

  test('agrees with the outside one over the whole cube of colours', () => {
    const steps = ['00', '0a', '0b', '33', '66', '99', 'cc', 'ff'];
    const colours = steps.flatMap((r) => steps.flatMap((g) => steps.map((b) => `#${r}${g}${b}`)));
    // the outside formula has the older threshold 0.03928, which no 8-bit colour can tell apart
    for (const colour of colours)
      for (const ground of ['#ffffff', '#15110e'])
        expect(contrast(colour, ground)).toBeCloseTo(outsideContrast(colour, ground), 8);
  });

  test('a colour it cannot read is refused by name', () => {
    expect(() => contrast('brick', '#fff')).toThrow('saw "brick"');
  });
});

const css = readFileSync(path.join(root, 'src/styles/tokens.css'), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
type Values = Readonly<Record<string, string>>;
function valuesOf(selector: string): Values {
  const at = css.indexOf(`${selector} {`);
  if (at < 0) throw new Error(`styles/tokens › ${selector}: a rule, saw nothing`);
  const body = css.slice(css.indexOf('{', at) + 1, css.indexOf('}', at));
  return Object.fromEntries(
    [...body.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name!, value!]),
  );
}
const day = valuesOf('\n  :root');
const night = { ...day, ...valuesOf(":root[data-light='night']") };
const darkDevice = { ...day, ...valuesOf(':root:not([data-early])') };
function colourOf(values: Values, name: string): string {
  const value = values[name];
  const link = /^var\((--[\w-]+)\)$/.exec(value ?? '');
  if (link) return colourOf(values, link[1]!);
  if (!value) throw new Error(`styles/tokens › ${name}: a colour, saw nothing`);
  return value;
}

const GROUNDS = ['--page', '--panel', '--quiet'];
const PAIRS = [
  ...['--text', '--text-soft', '--press'].flatMap((text) =>
    GROUNDS.map((ground) => [text, ground, 7] as const),
  ),
  ['--press-deep', '--page', 7] as const,
  ['--press-deep', '--panel', 7] as const,
  ['--on-press', '--press', 7] as const,
  ['--on-press', '--press-deep', 7] as const,
  ...GROUNDS.map((ground) => ['--edge', ground, 3] as const),
];

describe.each([
  ['by day', day],
  ['by night', night],
  ['on a dark device without script', darkDevice],
] as const)('the colours of the pages %s', (_, values) => {
  test.each(PAIRS)('%s on %s is at least %i:1', (front, ground, least) => {
    const [a, b] = [colourOf(values, front), colourOf(values, ground)];
    expect(contrast(a, b), `${a} on ${b}`).toBeGreaterThanOrEqual(least);
  });
});

test('the dark device’s colours are those of the night', () => {
  expect(darkDevice).toEqual(night);
});

test('the panel under skin colours is light by day and by night', () => {
  for (const values of [day, night, darkDevice])
    expect(luminance(colourOf(values, '--judge'))).toBeGreaterThan(0.8);
});
