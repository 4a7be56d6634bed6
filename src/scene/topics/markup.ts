/** A topic's picture as SVG text. */
import { pathMarkup, plainMarkup } from '../plain-markup.ts';
import { TOPIC_VIEW, type TopicShape } from './page.ts';

/** The line of the whole picture. */
const USUAL = 2.6;

const path = (shape: TopicShape): string =>
  shape.reach ? `<path d="${shape.d}" class="spot-reach" stroke="none"/>` : pathMarkup(shape, USUAL);

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
  return plainMarkup('data-topic-picture', TOPIC_VIEW, USUAL, text + (open ? '</g>' : ''), label);
}
