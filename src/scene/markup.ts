/** A picture as SVG text. Numbers and token names only; the label is the one text, and it is escaped. */
import { escape } from './escape.ts';
import { drawScene } from './paths.ts';
import { INK, type Picture } from './shapes.ts';
import type { SceneSpec } from './spec.ts';
import { drawThing, type ThingId } from './things.ts';

/** Small things keep their tenths: their pictures are drawn larger than their units. */
const COARSE_FROM = 300;
/** Share of the picture's height that the touch map leaves out at the top. */
const MAP_CROP = 0.2;

/** A scene on half units: less than a fifth of a pixel off on a phone, and a seventh lighter to send. */
const halves = (d: string) => d.replace(/\d+\.\d/g, (n) => String(Math.round(Number(n) * 2) / 2));

/** Where a touch on a part of the picture leads, by the part's spot: relative addresses. */
export type SpotLinks = Readonly<Record<string, string>>;

/** A picture as one `svg`; with links, its spots are there to be touched. */
export function pictureMarkup(
  picture: Picture,
  label: string,
  attributes: string,
  links: SpotLinks = {},
): string {
  const paths = picture.shapes.map((shape) => {
    const classes = (shape.fill ? `f-${shape.fill}` : 'f-none') + (shape.line ? ` l-${shape.line}` : '');
    const weight =
      shape.line && shape.weight && shape.weight !== INK ? ` stroke-width="${shape.weight}"` : '';
    const dash = shape.dash ? ` stroke-dasharray="${shape.dash}"` : '';
    return `<path d="${picture.width >= COARSE_FROM ? halves(shape.d) : shape.d}" class="${classes}"${weight}${dash}/>`;
  });
  // The same places stand below the picture as a list, so the spots stay out of the way of keyboard and reader.
  const spots = Object.entries(picture.spots ?? {}).flatMap(([id, spot]) => {
    const href = Object.hasOwn(links, id) ? links[id] : undefined;
    if (!href) return [];
    const [x, y] = [spot.x.toFixed(1), spot.y.toFixed(1)];
    return `<a href="${escape(href)}" tabindex="-1" aria-hidden="true" data-spot="${id}"><circle cx="${x}" cy="${y}" r="40" class="spot-reach"/><circle cx="${x}" cy="${y}" r="9" class="spot"/></a>`;
  });
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  // With spots the picture is a map to touch: the empty room above the bed, kept for climbing, is left out.
  const top = spots.length > 0 ? picture.height * MAP_CROP : 0;
  const box = `viewBox="0 ${top} ${picture.width} ${picture.height - top}"`;
  // a picture with a name holds nothing to press, so a map names its drawing and leaves the spots beside it
  return spots.length > 0
    ? `<svg class="scene" ${box} ${attributes}><g ${name}>${paths.join('')}</g>${spots.join('')}</svg>`
    : `<svg class="scene" ${box} ${name} ${attributes}>${paths.join('')}</svg>`;
}

/** A scene as SVG text, with the values its style sheet looks at. */
export const sceneMarkup = (spec: SceneSpec, label: string, links?: SpotLinks): string =>
  pictureMarkup(
    drawScene(spec),
    label,
    `data-camera="${spec.camera}" data-skin="${spec.skin}" data-shift="${spec.toneShift}" data-lamp="${spec.lamp}"`,
    links,
  );

/** A small picture as SVG text. */
export const thingMarkup = (id: ThingId, label: string): string =>
  pictureMarkup(drawThing(id), label, 'data-thing');
