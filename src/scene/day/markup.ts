/** A picture of the day as SVG text: token names and numbers; the label is the one text. */
import { escape } from '../escape.ts';
import type { Shape } from '../shapes.ts';
import { DAY_SIZE } from './page.ts';

const tenth = (n: number) => String(Math.round(n * 10) / 10);

/** The line of the whole picture; a path says only what differs from it. */
const USUAL = 2.6;

function path({ d, fill, line, weight = USUAL, dash }: Shape): string {
  const classes = [fill && `f-${fill}`, line && line !== 'ink' && `l-${line}`].filter(Boolean).join(' ');
  const own = tenth(weight) === tenth(USUAL) ? '' : ` stroke-width="${tenth(weight)}"`;
  return `<path d="${d}"${classes ? ` class="${classes}"` : ''}${line ? own : ' stroke="none"'}${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
}

/** Shapes from back to front, told to those who cannot see them by the label; without one they are decoration. */
export function writeDay(shapes: readonly Shape[], label: string): string {
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  return `<svg class="scene" viewBox="0 0 ${DAY_SIZE} ${DAY_SIZE}" ${name} data-day-picture><g class="f-none l-ink" stroke-width="${USUAL}">${shapes.map(path).join('')}</g></svg>`;
}
