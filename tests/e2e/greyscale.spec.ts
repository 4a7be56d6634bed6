/**
 * Every sign is told apart without colour: the usual and the different picture, 160 pixels wide, in the greys of
 * WCAG's luminance. Six tones, and both lamps for the toes' colour.
 */
import { expect, test, type Page } from '@playwright/test';
import { sceneStyles } from '../../.ci/contact-sheet.mjs';
import { SIGN_PICTURES, type SignPicture } from '#content/sign-pictures.ts';
import { SIGN_IDS } from '#domain/signs/ids.ts';
import { drawScene } from '#scene/paths.ts';
import { sceneMarkup } from '#scene/markup.ts';
import { NEUTRAL, SKIN_TONES, type SceneSpec, type SkinTone } from '#scene/spec.ts';

const WIDTH = 160;
const HEIGHT = 120;
/** A pixel counts as changed from this difference of greys on, of 255. */
const SEEN = 12;
/** So many pixels of 160 × 120 must have changed, a square of twelve … */
const LEAST_PIXELS = 150;
/** … and on average by a tenth of the way from black to white. */
const LEAST_DIFFERENCE = 25;

const PICTURES: Readonly<Record<string, SignPicture>> = SIGN_PICTURES;
const specs = (sign: string, skin: SkinTone): [SceneSpec, SceneSpec] => {
  const picture = PICTURES[sign]!;
  const usual: SceneSpec = {
    ...NEUTRAL,
    skin,
    camera: picture.camera,
    focus: picture.focus,
    ...picture.usual,
  };
  return [usual, { ...usual, ...picture.different }];
};

interface Measure {
  pixels: number;
  difference: number;
}
interface Row extends Measure {
  sign: string;
  skin: SkinTone;
}

/** Draws both pictures in the page's own canvas and compares their greys there. */
async function compare(page: Page, pairs: readonly (readonly [string, string])[]): Promise<Measure[]> {
  await page.setContent(
    `<!doctype html><meta charset="utf-8"><style>${sceneStyles()}
    body { margin: 0 } svg { display: block; inline-size: ${WIDTH}px; block-size: ${HEIGHT}px }</style>
    ${pairs.map(([usual, different]) => `<div class="pair">${usual}${different}</div>`).join('')}`,
  );
  return page.evaluate(
    async ({ width, height, seen }) => {
      const PAINT = [
        'fill',
        'stroke',
        'stroke-width',
        'stroke-dasharray',
        'stroke-linecap',
        'stroke-linejoin',
        'opacity',
        'fill-rule',
        'fill-opacity',
        'stroke-opacity',
        'vector-effect',
      ];
      const greys = async (svg: SVGElement): Promise<number[]> => {
        const copy = svg.cloneNode(true) as SVGElement;
        const from = [...svg.querySelectorAll('path')];
        // a picture inside an image knows no style sheet, so it takes its computed paint along
        copy.querySelectorAll('path').forEach((path, i) => {
          const style = getComputedStyle(from[i]!);
          path.setAttribute(
            'style',
            PAINT.map((name) => `${name}:${style.getPropertyValue(name)}`).join(';'),
          );
        });
        copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
        copy.setAttribute('width', String(width));
        copy.setAttribute('height', String(height));
        const image = new Image();
        image.src = `data:image/svg+xml,${encodeURIComponent(copy.outerHTML)}`;
        await image.decode();
        const canvas = new OffscreenCanvas(width, height);
        const context = canvas.getContext('2d', { willReadFrequently: true })!;
        context.fillStyle = getComputedStyle(svg).getPropertyValue('--s-ground') || 'white';
        context.fillRect(0, 0, width, height);
        context.drawImage(image, 0, 0, width, height);
        const { data } = context.getImageData(0, 0, width, height);
        return Array.from(
          { length: width * height },
          (_, i) => 0.2126 * data[4 * i]! + 0.7152 * data[4 * i + 1]! + 0.0722 * data[4 * i + 2]!,
        );
      };
      const measures: { pixels: number; difference: number }[] = [];
      for (const pair of document.querySelectorAll('.pair')) {
        const [a, b] = await Promise.all([...pair.querySelectorAll('svg')].map((svg) => greys(svg)));
        const changed = a!.map((grey, i) => Math.abs(grey - b![i]!)).filter((d) => d >= seen);
        const sum = changed.reduce((total, d) => total + d, 0);
        measures.push({ pixels: changed.length, difference: changed.length ? sum / changed.length : 0 });
      }
      return measures;
    },
    { width: WIDTH, height: HEIGHT, seen: SEEN },
  );
}

const tooWeak = ({ pixels, difference }: Measure) => pixels < LEAST_PIXELS || difference < LEAST_DIFFERENCE;
const told = ({ sign, skin, pixels, difference }: Row) =>
  `${sign} ${skin}: ${pixels} pixels, by ${difference.toFixed(1)}`;
/** Nearest to failing first. */
const strength = (row: Measure) => Math.min(row.pixels / LEAST_PIXELS, row.difference / LEAST_DIFFERENCE);

for (const skin of SKIN_TONES)
  test(`${skin}: every sign is seen in greys, as wide as a thumb`, async ({ page }) => {
    const pairs = SIGN_IDS.map(
      (sign) => specs(sign, skin).map((spec) => sceneMarkup(spec, '')) as [string, string],
    );
    const rows = (await compare(page, pairs)).map((measure, i) => ({ sign: SIGN_IDS[i]!, skin, ...measure }));
    const weakest = [...rows].sort((a, b) => strength(a) - strength(b)).slice(0, 5);
    console.log(`weakest in greys:\n  ${weakest.map(told).join('\n  ')}`);
    expect(rows.filter(tooWeak).map(told)).toEqual([]);
  });

test('two like pictures and a faint change are not taken for a sign', async ({ page }) => {
  const usual = sceneMarkup(specs('toes-cool', 'honey')[0], '');
  const field = (grey: string) =>
    `<svg class="scene" viewBox="0 0 480 360"><path d="M0 0L480 0L480 360L0 360Z" style="fill:${grey}"/></svg>`;
  const [same, faint, clear] = await compare(page, [
    [usual, usual],
    [field('#808080'), field('#848484')],
    [field('#808080'), field('#202020')],
  ]);
  expect(same).toEqual({ pixels: 0, difference: 0 });
  expect(tooWeak(faint!)).toBe(true);
  expect(clear).toMatchObject({ pixels: WIDTH * HEIGHT });
  expect(clear!.difference).toBeCloseTo(96, 0);
});

test('a change of colour comes with hatching: more ink lines, not only another paint', () => {
  const shifted = SIGN_IDS.filter((sign) => 'toneShift' in PICTURES[sign]!.different);
  expect(shifted).toContain('toes-colour');
  const inkLines = (spec: SceneSpec) =>
    drawScene(spec)
      .shapes.filter((shape) => shape.line && !shape.fill)
      .flatMap((shape) => shape.d.split('M').slice(1)).length;
  for (const sign of shifted)
    for (const toneShift of ['paler', 'blue-grey', 'dusky-dark', 'blotched'] as const) {
      const [usual, different] = specs(sign, 'honey');
      expect(
        inkLines({ ...different, toneShift }) - inkLines(usual),
        `${sign} ${toneShift}`,
      ).toBeGreaterThanOrEqual(5);
    }
});
