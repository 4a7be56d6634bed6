// Source of the formula: WCAG 2.2, relative luminance and contrast ratio; `wcag-contrast` is the outside check.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
// @ts-expect-error the package comes without types
import { hex } from 'wcag-contrast';
import { SKIN_TONES, type SkinTone, type ToneShift } from '#scene/spec.ts';

const outsideContrast = hex as (a: string, b: string) => number;

const read = (name: string) => readFileSync(new URL(`../../src/styles/${name}`, import.meta.url), 'utf8');
const css = read('scene-skin.css').replace(/\/\*[\s\S]*?\*\//g, '');
const SHIFTS = ['paler', 'blue-grey', 'dusky-dark', 'blotched'] as const satisfies readonly ToneShift[];
type Values = Record<string, string>;

interface Rule {
  selectors: string[];
  values: Values;
}
const rules: Rule[] = [...css.replace(/@layer tokens \{/, '').matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(
  ([, selector, body]) => ({
    selectors: selector!.split(',').map((s) => s.trim().replace(/\s+/g, ' ')),
    values: Object.fromEntries(
      [...body!.matchAll(/(--[\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, k, v]) => [k!, v!]),
    ),
  }),
);
const valuesOf = (selector: string): Values =>
  Object.assign(
    {},
    ...rules.filter((rule) => rule.selectors.includes(selector)).map((rule) => rule.values),
  ) as Values;

const own = (tone: SkinTone, shift?: ToneShift) =>
  `.scene[data-skin='${tone}']${shift ? `[data-shift='${shift}']` : ''}`;
const root = (tone: SkinTone, shift?: ToneShift) =>
  `:root[data-skin='${tone}'] .scene:not([data-own-skin])${shift ? `[data-shift='${shift}']` : ''}`;
const value = (values: Values, name: string) => {
  const found = values[name];
  if (!found) throw new Error(`styles/scene-skin › ${name}: a colour of six hex digits, saw nothing`);
  return found;
};
const pageInk = /--s-ink:\s*(#[0-9a-f]{6})/.exec(read('scene.css'))![1]!;
const inkOf = (tone: SkinTone) => valuesOf(`${own(tone)}:not([data-lamp='night'])`)['--s-ink'] ?? pageInk;

function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = parseInt(colour.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}
/** Classes, attributes and pseudo-classes of a selector; none here has ids or elements. */
const weight = (selector: string) => (selector.match(/\.[\w-]+|\[[^\]]+\]|:root/g) ?? []).length;

describe.each(SKIN_TONES)('skin tone %s', (tone) => {
  const base = valuesOf(own(tone));
  const skin = value(base, '--s-skin');
  const ink = inkOf(tone);

  test('an ink outline is seen on skin, sole and nail', () => {
    for (const name of ['--s-skin', '--s-sole', '--s-nail'])
      expect(contrast(ink, value(base, name)), name).toBeGreaterThanOrEqual(3);
  });

  test('sole and nail are lighter than the skin around them, shade is darker', () => {
    expect(luminance(value(base, '--s-sole'))).toBeGreaterThan(luminance(skin));
    expect(luminance(value(base, '--s-nail'))).toBeGreaterThan(luminance(value(base, '--s-sole')));
    expect(luminance(value(base, '--s-skin-shade'))).toBeLessThan(luminance(skin));
    expect(contrast(value(base, '--s-skin-shade'), skin)).toBeGreaterThanOrEqual(1.2);
  });

  test('toes that have not changed have the colour of the skin', () => {
    expect(value(base, '--s-shift')).toBe(skin);
  });

  test.each(SHIFTS)('%s toes differ from usual toes without colour, by lightness or by hatching', (shift) => {
    const changed = value(valuesOf(own(tone, shift)), '--s-shift');
    const [byLightness, byHatching] = [contrast(changed, skin) >= 1.15, contrast(ink, changed) >= 3];
    expect(byLightness || byHatching, `${contrast(changed, skin)} and ${contrast(ink, changed)}`).toBe(true);
    expect(contrast(ink, changed)).toBeGreaterThanOrEqual(2);
  });

  test('paler is lighter, dusky-dark is darker, and each kind has its own colour', () => {
    const of = (shift: ToneShift) => value(valuesOf(own(tone, shift)), '--s-shift');
    expect(luminance(of('paler'))).toBeGreaterThan(luminance(skin));
    expect(luminance(of('dusky-dark'))).toBeLessThan(luminance(skin));
    expect(new Set([skin, ...SHIFTS.map(of)]).size).toBe(SHIFTS.length + 1);
  });

  test('paler toes have lost warmth: red is nearer to blue than in the usual skin', () => {
    const warmth = (c: string) =>
      (parseInt(c.slice(1, 3), 16) - parseInt(c.slice(5, 7), 16)) / parseInt(c.slice(1, 3), 16);
    expect(warmth(value(valuesOf(own(tone, 'paler')), '--s-shift'))).toBeLessThan(warmth(skin) * 0.75);
  });

  test("the family's own tone wins over the tone drawn into the page, changed toes too", () => {
    expect(valuesOf(root(tone))).toEqual(base);
    const heaviest = Math.max(...SKIN_TONES.flatMap((t) => SHIFTS.map((s) => weight(own(t, s)))));
    expect(weight(root(tone))).toBeGreaterThan(heaviest);
    for (const shift of SHIFTS) {
      expect(valuesOf(root(tone, shift))).toEqual(valuesOf(own(tone, shift)));
      expect(weight(root(tone, shift))).toBeGreaterThan(weight(root(tone)));
    }
  });
});

describe('the six tones together', () => {
  test('run from very light to very dark and keep clear of one another', () => {
    const skins = SKIN_TONES.map((tone) => value(valuesOf(own(tone)), '--s-skin'));
    skins.slice(1).forEach((skin, i) => {
      expect(luminance(skin)).toBeLessThan(luminance(skins[i]!));
      expect(contrast(skin, skins[i]!)).toBeGreaterThanOrEqual(1.2);
    });
  });

  test('our contrast agrees with the outside one', () => {
    const colours = rules.flatMap((rule) => Object.values(rule.values));
    // the outside formula still has the older threshold 0.03928, which no 8-bit colour can tell apart
    for (const colour of colours)
      expect(contrast(colour, pageInk)).toBeCloseTo(outsideContrast(colour, pageInk), 6);
  });

  test('no tone has a value of its own for the night', () => {
    const night = rules.filter((rule) =>
      rule.selectors.some((s) => s.includes("[data-lamp='night']") && !s.includes(':not([data-lamp')),
    );
    expect(night).toEqual([]);
  });
});
