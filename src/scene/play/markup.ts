/** Play pictures as SVG text. */
import { pathMarkup, plainMarkup } from '../plain-markup.ts';
import type { Picture } from '../shapes.ts';
import { drawPlayThing, type PlayThingId } from './compose.ts';
import { drawIdea, type IdeaPictureId } from './ideas.ts';
import { drawMoment, type MomentPictureId } from './moments.ts';

/** The line of the whole picture. */
const USUAL = 2;

/** A play picture, told to those who cannot see it by its label; without a label it is decoration. */
const playMarkup = (picture: Picture, label: string): string =>
  plainMarkup(
    'data-play',
    picture,
    USUAL,
    picture.shapes.map((shape) => pathMarkup(shape, USUAL)).join(''),
    label,
  );

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
