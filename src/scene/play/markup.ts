/** Play pictures as SVG text: token names and numbers; the label is the one text. */
import { escape } from '../escape.ts';
import type { Picture } from '../shapes.ts';
import { drawPlayThing, type PlayThingId } from './compose.ts';
import { drawIdea, type IdeaPictureId } from './ideas.ts';
import { drawMoment, type MomentPictureId } from './moments.ts';

const tenth = (n: number) => String(Math.round(n * 10) / 10);

/** The line of the whole picture; a path says only what differs from it. */
const USUAL = 2;

/**
 * A play picture as SVG text, told to those who cannot see it by its label; without a label it is decoration.
 *
 * Shape: one `svg` of class `scene`, so that the drawing's style sheet colours it; skin is the family's tone.
 * @example playMarkup(drawIdea('hand-in-hand'), 'A hand to hold') // '<svg class="scene" …>'
 */
export function playMarkup(picture: Picture, label: string): string {
  const paths = picture.shapes.map(({ d, fill, line, weight = USUAL, dash }) => {
    const classes = [fill && `f-${fill}`, line && line !== 'ink' && `l-${line}`].filter(Boolean).join(' ');
    const stroke = line
      ? tenth(weight) === tenth(USUAL)
        ? ''
        : ` stroke-width="${tenth(weight)}"`
      : ' stroke="none"';
    return `<path d="${d}"${classes ? ` class="${classes}"` : ''}${stroke}${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
  });
  const name = label ? `role="img" aria-label="${escape(label)}"` : 'aria-hidden="true"';
  return `<svg class="scene" viewBox="0 0 ${picture.width} ${picture.height}" ${name} data-play><g class="f-none l-ink" stroke-width="${USUAL}">${paths.join('')}</g></svg>`;
}

/**
 * A play idea's picture as SVG text.
 * @example ideaMarkup('stack-cups', 'Cup tower') // '<svg class="scene" … aria-label="Cup tower" …>'
 */
export const ideaMarkup = (id: IdeaPictureId, label: string): string => playMarkup(drawIdea(id), label);

/**
 * A thing to be fetched, as SVG text, for "what is in the room".
 * @example playThingMarkup('cups', '') // '<svg class="scene" … aria-hidden="true" …>'
 */
export const playThingMarkup = (id: PlayThingId, label: string): string =>
  playMarkup(drawPlayThing(id), label);

/**
 * A hard moment or a change in the day, as SVG text.
 * @example momentMarkup('again', 'Again') // '<svg class="scene" … aria-label="Again" …>'
 */
export const momentMarkup = (id: MomentPictureId, label: string): string => playMarkup(drawMoment(id), label);
