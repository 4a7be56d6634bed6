/** Pictures without spots as SVG text: token names and numbers; the label is the one text. */
import { escape } from './escape.ts';
import { tenth, type Shape, type View } from './shapes.ts';

/** One path; it says only what differs from the `usual` line of its picture. Units: line widths in scene units. */
export function pathMarkup({ d, fill, line, weight, dash }: Shape, usual: number): string {
  const classes = [fill && `f-${fill}`, line && line !== 'ink' && `l-${line}`].filter(Boolean).join(' ');
  const width = tenth(weight ?? usual);
  const stroke = !line ? ' stroke="none"' : width === tenth(usual) ? '' : ` stroke-width="${width}"`;
  return `<path d="${d}"${classes ? ` class="${classes}"` : ''}${stroke}${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
}

/**
 * Paths as one `svg` of class `scene`, so that the drawing's style sheet colours it; told to those who cannot see it by
 * its label, and decoration without one.
 *
 * Shape: `kind` is the attribute by which tests and styles know the picture; `usual` the line of the whole picture.
 * @example plainMarkup('data-play', { width: 120, height: 120 }, 2, paths, 'Cup tower') // '<svg class="scene" …>'
 */
export function plainMarkup(
  kind: 'data-day-picture' | 'data-topic-picture' | 'data-play',
  { width, height }: View,
  usual: number,
  paths: string,
  label: string,
): string {
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  return `<svg class="scene" viewBox="0 0 ${width} ${height}" ${name} ${kind}><g class="f-none l-ink" stroke-width="${usual}">${paths}</g></svg>`;
}
