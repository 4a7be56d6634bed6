/** A picture as SVG text. Numbers and token names only; the label is the one text, and it is escaped. */
import { drawScene } from './paths.ts';
import { INK, type Picture } from './shapes.ts';
import type { SceneSpec } from './spec.ts';
import { drawThing, type ThingId } from './things.ts';

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escape = (text: string) => text.replace(/[&<>"]/g, (c) => ESCAPES[c]!);

export function pictureMarkup(picture: Picture, label: string, attributes: string): string {
  const paths = picture.shapes.map((shape) => {
    const classes = (shape.fill ? `f-${shape.fill}` : 'f-none') + (shape.line ? ` l-${shape.line}` : '');
    const weight = shape.line && shape.weight && shape.weight !== INK ? ` stroke-width="${shape.weight}"` : '';
    const dash = shape.dash ? ` stroke-dasharray="${shape.dash}"` : '';
    return `<path d="${shape.d}" class="${classes}"${weight}${dash}/>`;
  });
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  return `<svg class="scene" viewBox="0 0 ${picture.width} ${picture.height}" ${name} ${attributes}>${paths.join('')}</svg>`;
}

export const sceneMarkup = (spec: SceneSpec, label: string): string =>
  pictureMarkup(
    drawScene(spec),
    label,
    `data-camera="${spec.camera}" data-skin="${spec.skin}" data-shift="${spec.toneShift}" data-lamp="${spec.lamp}"`,
  );

export const thingMarkup = (id: ThingId, label: string): string => pictureMarkup(drawThing(id), label, 'data-thing');
