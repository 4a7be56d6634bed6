/** A topic's picture as SVG text: token names and numbers; the label is the one text. */
import { escape } from '../escape.ts';
import type { TopicShape } from './page.ts';
import { TOPIC_VIEW } from './page.ts';

const tenth = (n: number) => String(Math.round(n * 10) / 10);

/** The line of the whole picture; a path says only what differs from it. */
const USUAL = 2.6;

function path({ d, fill, line, weight = USUAL, dash, reach }: TopicShape): string {
  if (reach) return `<path d="${d}" class="spot-reach" stroke="none"/>`;
  const classes = [fill && `f-${fill}`, line && line !== 'ink' && `l-${line}`].filter(Boolean).join(' ');
  const own = tenth(weight) === tenth(USUAL) ? '' : ` stroke-width="${tenth(weight)}"`;
  return `<path d="${d}"${classes ? ` class="${classes}"` : ''}${line ? own : ' stroke="none"'}${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
}

/** Where parts answer a touch, those of one part that follow one another stand in one group. */
export function writeTopic(shapes: readonly TopicShape[], label: string): string {
  const named = shapes.some((shape) => shape.reach);
  let text = '';
  let open: TopicShape['part'];
  for (const shape of shapes) {
    if (named && shape.part !== open) {
      text += (open ? '</g>' : '') + (shape.part ? `<g data-part-name="${shape.part}">` : '');
      open = shape.part;
    }
    text += path(shape);
  }
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  return `<svg class="scene" viewBox="0 0 ${TOPIC_VIEW.width} ${TOPIC_VIEW.height}" ${name} data-topic-picture><g class="f-none l-ink" stroke-width="${USUAL}">${text}${open ? '</g>' : ''}</g></svg>`;
}
